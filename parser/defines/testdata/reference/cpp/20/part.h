#ifndef PART_H
#define PART_H
#define LIMIT_A	('A'+AXES)
#endif

#ifndef PART_H
#define PART_H
#define TWICE(x) ((x) * 2)
#endif

#ifndef PART_H
#define PART_H
#endif

#ifndef PART_H
#define PART_H
/* x */ #define BELT_DRIVE 0
#endif

#ifndef PART_H
#define PART_H
//#define AXES   (ALIAS (3) - (STEPS + 10))
#define T\
RACE 1\

#endif
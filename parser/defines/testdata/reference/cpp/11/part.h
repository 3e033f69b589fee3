#ifndef PART_H
#define PART_H
#/**/undef LIMIT_A   
#define LIMIT_A   ((AXES|9223372036854775807) % (LARGER(TOOLS, 0) | 1))
#endif

#ifndef PART_H
#define PART_H
#if (((TOOLS >> (LIMIT_B % 70)) - (AXES-AXES))) < 0
#define PROBE_1 0
#elif (((TOOLS >> (LIMIT_B % 70)) - (AXES-AXES))) == 0
#define PROBE_1 1
#elif (((TOOLS >> (LIMIT_B % 70)) - (AXES-AXES))) & 1
#define PROBE_1 2
#elif (((TOOLS >> (LIMIT_B % 70)) - (AXES-AXES))) < 7
#define PROBE_1 3
#elif (((TOOLS >> (LIMIT_B % 70)) - (AXES-AXES))) % 3 == 1
#define PROBE_1 4
#endif
#endif

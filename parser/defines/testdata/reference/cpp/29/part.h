#pragma once
#if (LARGER((TWICE(LIMIT_A) >> ((1 - TOOLS) % 70)), LIMIT_B)) < 0
#define PROBE_1 0
#elif (LARGER((TWICE(LIMIT_A) >> ((1 - TOOLS) % 70)), LIMIT_B)) == 0
#define PROBE_1 1
#elif (LARGER((TWICE(LIMIT_A) >> ((1 - TOOLS) % 70)), LIMIT_B)) & 1
#define PROBE_1 2
#elif (LARGER((TWICE(LIMIT_A) >> ((1 - TOOLS) % 70)), LIMIT_B)) < 7
#define PROBE_1 3
#elif (LARGER((TWICE(LIMIT_A) >> ((1 - TOOLS) % 70)), LIMIT_B)) % 3 == 1
#define PROBE_1 4
#endif

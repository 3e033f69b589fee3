#pragma once
#define SOFT_START 3
#if (LARGER('ab', -1)) < 0
#define PROBE_1 0
#elif (LARGER('ab', -1)) == 0
#define PROBE_1 1
#elif (LARGER('ab', -1)) & 1
#define PROBE_1 2
#elif (LARGER('ab', -1)) < 7
#define PROBE_1 3
#elif (LARGER('ab', -1)) % 3 == 1
#define PROBE_1 4
#endif

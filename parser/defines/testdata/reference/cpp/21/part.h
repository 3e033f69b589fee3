#ifndef PART_H
#define PART_H
#if ('\n' == 3UL) < 0
#define PROBE_1 0
#elif ('\n' == 3UL) == 0
#define PROBE_1 1
#elif ('\n' == 3UL) & 1
#define PROBE_1 2
#elif ('\n' == 3UL) < 7
#define PROBE_1 3
#elif ('\n' == 3UL) % 3 == 1
#define PROBE_1 4
#endif
#define TRACE true	// " quote
#endif

#ifndef PART_H
#define PART_H
#define TRACE 1 // trailing
#if (((('A' ? '\n' : LIMIT_A)+(-1u ? 0 : TRACE_UNSET_0)) + (~(TOOLS) / (SPARE * L'x' | 1)))) < 0
#define PROBE_1 0
#elif (((('A' ? '\n' : LIMIT_A)+(-1u ? 0 : TRACE_UNSET_0)) + (~(TOOLS) / (SPARE * L'x' | 1)))) == 0
#define PROBE_1 1
#elif (((('A' ? '\n' : LIMIT_A)+(-1u ? 0 : TRACE_UNSET_0)) + (~(TOOLS) / (SPARE * L'x' | 1)))) & 1
#define PROBE_1 2
#elif (((('A' ? '\n' : LIMIT_A)+(-1u ? 0 : TRACE_UNSET_0)) + (~(TOOLS) / (SPARE * L'x' | 1)))) < 7
#define PROBE_1 3
#elif (((('A' ? '\n' : LIMIT_A)+(-1u ? 0 : TRACE_UNSET_0)) + (~(TOOLS) / (SPARE * L'x' | 1)))) % 3 == 1
#define PROBE_1 4
#endif
#endif
#pragma once
#if ((LARGER((AXES+LIMIT_A), (TRACE_UNSET_0 - AXES)) % (LARGER(STEPS, 7) - (TRACE_UNSET_0 ? 0 : TOOLS) | 1))) < 0
#define PROBE_1 0
#elif ((LARGER((AXES+LIMIT_A), (TRACE_UNSET_0 - AXES)) % (LARGER(STEPS, 7) - (TRACE_UNSET_0 ? 0 : TOOLS) | 1))) == 0
#define PROBE_1 1
#elif ((LARGER((AXES+LIMIT_A), (TRACE_UNSET_0 - AXES)) % (LARGER(STEPS, 7) - (TRACE_UNSET_0 ? 0 : TOOLS) | 1))) & 1
#define PROBE_1 2
#elif ((LARGER((AXES+LIMIT_A), (TRACE_UNSET_0 - AXES)) % (LARGER(STEPS, 7) - (TRACE_UNSET_0 ? 0 : TOOLS) | 1))) < 7
#define PROBE_1 3
#elif ((LARGER((AXES+LIMIT_A), (TRACE_UNSET_0 - AXES)) % (LARGER(STEPS, 7) - (TRACE_UNSET_0 ? 0 : TOOLS) | 1))) % 3 == 1
#define PROBE_1 4
#endif
  #define HAS_TOOLS defined(TOOLS)// it's
	# define CALL(f, x) f (x) /* one */
#/**/define SPREAD(x, y...) ((x) , ## /* a
 b */ y)

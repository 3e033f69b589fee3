#pragma once
#if ((LARGER((3 - SPARE), (LIMIT_B % (TRACE_UNSET_0 | 1))) % (FIRST(+(5u),TWICE (TRACE_UNSET_0)) | 1))) < 0
#define PROBE_1 0
#elif ((LARGER((3 - SPARE), (LIMIT_B % (TRACE_UNSET_0 | 1))) % (FIRST(+(5u),TWICE (TRACE_UNSET_0)) | 1))) == 0
#define PROBE_1 1
#elif ((LARGER((3 - SPARE), (LIMIT_B % (TRACE_UNSET_0 | 1))) % (FIRST(+(5u),TWICE (TRACE_UNSET_0)) | 1))) & 1
#define PROBE_1 2
#elif ((LARGER((3 - SPARE), (LIMIT_B % (TRACE_UNSET_0 | 1))) % (FIRST(+(5u),TWICE (TRACE_UNSET_0)) | 1))) < 7
#define PROBE_1 3
#elif ((LARGER((3 - SPARE), (LIMIT_B % (TRACE_UNSET_0 | 1))) % (FIRST(+(5u),TWICE (TRACE_UNSET_0)) | 1))) % 3 == 1
#define PROBE_1 4
#endif
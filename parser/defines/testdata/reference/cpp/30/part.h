#pragma once
%:if/* // */PIN_EXISTS(LAMP)||(0 + 0x10) | LIMIT_A
#\
 define PANEL_LIGHT
/\ 
* x */ #eli\ 
fdef DUAL_FAN /* one */
	# else /* x */
#endif
#if ((SPARE << (TRACE_UNSET_0 % 70))) < 0
#define PROBE_1 0
#elif ((SPARE << (TRACE_UNSET_0 % 70))) == 0
#define PROBE_1 1
#elif ((SPARE << (TRACE_UNSET_0 % 70))) & 1
#define PROBE_1 2
#elif ((SPARE << (TRACE_UNSET_0 % 70))) < 7
#define PROBE_1 3
#elif ((SPARE << (TRACE_UNSET_0 % 70))) % 3 == 1
#define PROBE_1 4
#endif
	# define FAN_PIN 7

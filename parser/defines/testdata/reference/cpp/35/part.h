#pragma once
	# if ENABLED(TRACE)||!defined BELT_DRIVE || defined(BELT_DRIVE)||WITHIN(AXES, 1, 3) >= SPARE && !ENABLED( BELT_DRIVE)&&!defined ( PANEL_LIGHT)||ENABLED(TRACE)
#undef AXES
# define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#if (LARGER(7, 0x10)) < 0
#define PROBE_1 0
#elif (LARGER(7, 0x10)) == 0
#define PROBE_1 1
#elif (LARGER(7, 0x10)) & 1
#define PROBE_1 2
#elif (LARGER(7, 0x10)) < 7
#define PROBE_1 3
#elif (LARGER(7, 0x10)) % 3 == 1
#define PROBE_1 4
#endif
#elifdef TRACE /*\ 
 one */
%:else
#if (((TOOLS+'\xff') ^ (LIMIT_A ? 1 : TOOLS))) < 0
#define PROBE_2 0
#elif (((TOOLS+'\xff') ^ (LIMIT_A ? 1 : TOOLS))) == 0
#define PROBE_2 1
#elif (((TOOLS+'\xff') ^ (LIMIT_A ? 1 : TOOLS))) & 1
#define PROBE_2 2
#elif (((TOOLS+'\xff') ^ (LIMIT_A ? 1 : TOOLS))) < 7
#define PROBE_2 3
#elif (((TOOLS+'\xff') ^ (LIMIT_A ? 1 : TOOLS))) % 3 == 1
#define PROBE_2 4
#endif
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
#endif /* a */ // TRACE /* over
two lines */
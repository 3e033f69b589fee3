#pragma once
#define TOOLS   '\xff'
\
\
#/**\ 
/if TOOLS < STEPS & TRACE_UNSET_0
/* x */ #if\
 (! (DISABLED(BELT_DRIVE)) ? LARGER(STEPS, STEPS) | LIMIT_A : !defined ( PANEL_LIGHT))
#if (((2 * 0xFFFFFFFFFFFFFFFF) ? LIMIT_A < AXES : TWICE (SPARE))) < 0
#define PROBE_1 0
#elif (((2 * 0xFFFFFFFFFFFFFFFF) ? LIMIT_A < AXES : TWICE (SPARE))) == 0
#define PROBE_1 1
#elif (((2 * 0xFFFFFFFFFFFFFFFF) ? LIMIT_A < AXES : TWICE (SPARE))) & 1
#define PROBE_1 2
#elif (((2 * 0xFFFFFFFFFFFFFFFF) ? LIMIT_A < AXES : TWICE (SPARE))) < 7
#define PROBE_1 3
#elif (((2 * 0xFFFFFFFFFFFFFFFF) ? LIMIT_A < AXES : TWICE (SPARE))) % 3 == 1
#define PROBE_1 4
#endif
#elifdef DUAL_FAN
#define PANEL_LIGHT 1 // trailing
#endif
	# if !(AXES>=2)&&((LIMIT_B % (LIMIT_B | 1)) & FIRST(LIMIT_B,0b101)) | STEPS - -1 || true
// don't #define TRACE
/* end */ ;
/* x */ #elifndef TRACE   
  //#define TOOLS	((5u / (STEPS | 1))*10 * AXES)
\ 
#/**/define STEPS	(+(LIMIT_A) & (AXES * -\ 
1))
  #define LIMIT_B (TOOLS + 0)   
	# else
#define DUAL_FAN 1 // trailing
#define SOFT_START
#endif // DUAL_FAN // trailing
// don't #define TRACE
/* end */ ;
#/**/elif DISABLED(PANEL_LIGHT)
# define SOFT_START 0
///#define LAMP_PIN -1
#endif // SOFT_START
#/**/define IS_DUAL ENABLED(DUAL_FAN) /* over
two lines */
#def\
\ 
ine PANEL\ 
_LIGHT
	# define SPARE	(TOOLS + 2) + (017 % (TOOLS | 1))

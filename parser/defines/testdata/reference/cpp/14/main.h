#define ALIAS TWICE
#define TWICE(x) ((x) + x)
/* x */ #define LARGER(a,b) ((a) > (b) ? (a) : (b))// it's
%:define FIRST(a, rest...) a
#define JOIN(a,b) a %:%: b
#/**/define CALL(f,x) f(x)
#/**/define TAIL(a, b...) (a, ## b)
	# define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
  #
%:define LIMIT_B -((7+SPARE))	// " quote
  #if NONE(BELT_DRIVE, PANEL_LIGHT,TRACE) && DISABLED(DUAL_FAN)// it's
#if (JOIN(TWI,CE)(3)) < 0
#define PROBE_1 0
#elif (JOIN(TWI,CE)(3)) == 0
#define PROBE_1 1
#elif (JOIN(TWI,CE)(3)) & 1
#define PROBE_1 2
#elif (JOIN(TWI,CE)(3)) < 7
#define PROBE_1 3
#elif (JOIN(TWI,CE)(3)) % 3 == 1
#define PROBE_1 4
#endif
%:elifdef PANEL_LIGHT
\
#de\
\
fine LIMIT_B 3
# /* a */ define LIMIT_A/* // */  T\
OOLS	// "\
 quote
/* x */ #define AXES	0x10// it's
#endif // DUAL_FAN
\
#i\
f PIN_EXI\	 
STS(LAMP)||DISABLED(BELT_DRIVE)
  #define TOOLS !!((STEPS % (TOOLS | 1)))
	# if TOOLS <= 1||!defined ( TRACE) || BOTH(BELT_DRIVE,SOFT_START) && (((0x10 ? '\xff' : STEPS) / ((TRACE_UNSET_0 - AXES) | 1)) + !((STEPS >> (0 % 70)))) | (9223372036854775807 - 1)
#define FAN_PIN/* ' */-1
	# define BELT_DRIVE false /* over
two lines */
  #if ((defined(FAN_PIN) && (TWICE(-(TOOLS)) + ((LIMIT_A - 0x7fff'ffff) - (TOOLS-L'x'))) < (JOIN(LIMIT_, B) + (3UL % (TRACE_UNSET_0 | 1))) ? (ANY_PIN(FAN, LAMP) ? FIRST(SPARE,AXES) && AXES : !defined SOFT_START) : (ENABLED(PANEL_LIGHT) ? defined(FAN_PIN) : defined(TRACE))) ? (DISABLED(PANEL_LIGHT, TRACE,DUAL_FAN) ? (ENABLED(DUAL_FAN)) : (!ENABLED( PANEL_LIGHT) ? SPARE <= STEPS : defined(PANEL_LIGHT))) : !(1)||TOOLS != LIMIT_A)
//#define LOOP_B (LOOP_A | 4)
\
\
#undef LIMIT_A
	 #define SPARE	TWICE(+(0))\	 
 /* over
two lines */
#/* ' */define TWICE(x) ((x) + /* a */ x)// it's
# elifdef AXES
#elif !ENABLED( SOFT_STA\
RT) /* one */
#define TRACE 1
# ifdef\
 LIMIT_B /\	 
/ tr\ 
ailing
	# elifdef SPARE
#if (FIRST(TWICE(7),(0-TOOLS))) < 0
#define PROBE_2 0
#elif (FIRST(TWICE(7),(0-TOOLS))) == 0
#define PROBE_2 1
#elif (FIRST(TWICE(7),(0-TOOLS))) & 1
#define PROBE_2 2
#elif (FIRST(TWICE(7),(0-TOOLS))) < 7
#define PROBE_2 3
#elif (FIRST(TWICE(7),(0-TOOLS))) % 3 == 1
#define PROBE_2 4
#endif
/* x */ #else	// " quote
  #endif // TRACE
#else /* x */
	# endif // SOFT_START	// " quote
#define LOOP_B (LOOP_A/**/| 4)
#endif	// SPARE
#if (('\xff'*TRACE_UNSET_0)) < 0
#define PROBE_3 0
#elif (('\xff'*TRACE_UNSET_0)) == 0
#define PROBE_3 1
#elif (('\xff'*TRACE_UNSET_0)) & 1
#define PROBE_3 2
#elif (('\xff'*TRACE_UNSET_0)) < 7
#define PROBE_3 3
#elif (('\xff'*TRACE_UNSET_0)) % 3 == 1
#define PROBE_3 4
#endif
#elifdef PANEL_LIGHT
#if (((AXES*L'x') * SPARE + (AXES))) < 0
#define PROBE_4 0
#elif (((AXES*L'x') * SPARE + (AXES))) == 0
#define PROBE_4 1
#elif (((AXES*L'x') * SPARE + (AXES))) & 1
#define PROBE_4 2
#elif (((AXES*L'x') * SPARE + (AXES))) < 7
#define PROBE_4 3
#elif (((AXES*L'x') * SPARE + (AXES))) % 3 == 1
#define PROBE_4 4
#endif
#else // other
%:if !defined LIMIT_B && 017 == LARGER(TOOLS, '\xff')
//#define AXES   (LIMIT_B-3UL)
#define FAN_PIN (4 - 9) /* over
two lines */
	 #define TRACE
  #else
%:if defined(LAMP_PIN)
%:e\ 
lif defined AXES || !defined TRACE /* one */
\ 
  #un\
\
de\
\
f DUAL_FAN
#/**/elifndef SOFT_START
#endif // STEPS
#ifndef/* ' */AXES
# define LIM\
\
IT_A   ((3UL / ('\n' | 1)) * (TOOLS >> (SPARE %\
 70))) // trailing
#define IS_DUAL ENABLED(DUAL_FAN)
#else // other
#/**/define STEPS	017// it's
# define PAN\ 
\
\
EL_LIGHT\	 
 true
	# endif // DUAL_FAN/* one */ // two
	# define AXES -1u
  #endif
#/**/define PANEL_LIGHT 3 // trailing
# endif
#define HAS_TOOLS (defined TOOLS && TOOLS)
#if (LARGER(STEPS, 0b101)) < 0
#define PROBE_5 0
#elif (LARGER(STEPS, 0b101)) == 0
#define PROBE_5 1
#elif (LARGER(STEPS, 0b101)) & 1
#define PROBE_5 2
#elif (LARGER(STEPS, 0b101)) < 7
#define PROBE_5 3
#elif (LARGER(STEPS, 0b101)) % 3 == 1
#define PROBE_5 4
#endif
/* x */ #define SPARE	(TOOLS ? TOOLS : 0b101)
#include "part.h"
#if (FIRST((AXES+0x7fff'ffff) * -('\xff'),+(SPARE))) < 0
#define PROBE_6 0
#elif (FIRST((AXES+0x7fff'ffff) * -('\xff'),+(SPARE))) == 0
#define PROBE_6 1
#elif (FIRST((AXES+0x7fff'ffff) * -('\xff'),+(SPARE))) & 1
#define PROBE_6 2
#elif (FIRST((AXES+0x7fff'ffff) * -('\xff'),+(SPARE))) < 7
#define PROBE_6 3
#elif (FIRST((AXES+0x7fff'ffff) * -('\xff'),+(SPARE))) % 3 == 1
#define PROBE_6 4
#endif

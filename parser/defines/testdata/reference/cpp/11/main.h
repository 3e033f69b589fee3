#define ALIAS TWICE
#define TWICE(x) ((x)\	 
\	 
 + x\
)
	# define LARGER(a, b) FIRST\	 
((a) < b, a)
%:define FIRST(a, res\
t...) a
# define JOIN(a,b) a %:%: b
#/**/define CALL(f, x) f (x)
#define /* a
 b */ TAIL(a,/**/...) (a __VA_OPT__(,) __VA_ARGS__)
	# define SPREAD(x,/* // */...)/* // */(x) __VA_OPT__(+ (__VA_ARGS__, 1))
%:ifdef STEPS   
%:if (! (!defined ( PANEL_LIGHT)) ? defined DUAL_FAN || defined SPARE : (!defined TOOLS ? DISABLED(SOFT_START) : ENABLED(SOFT_START, DUAL_FAN,DUAL_FAN)))||(LARGER(TOOLS, LIMIT_B) & ALIAS (017) == ((TOOLS >> (5u % 70)) ^ (TRACE_UNSET_0 & 10)) ? HAS_TOOLS : !defined DUAL_FAN)||!defined AXES && !ENABLED( BELT_DRIVE) /* over
two lines */
#/**/define SPARE /* a */ FIRST(((AXES)	% (2 |	1)),1)
#elif ANY_PIN(FAN, LAMP)
//#define DUAL_FAN 0
#define IS_DUAL ENABLED(DUAL_FAN)
  #if (defined STEPS||ANY(PANEL_LIGHT, PANEL_LIGHT,BELT_DRIVE)&&!defined TOOLS && defined LAMP_PIN ? (ANY(BELT_DRIVE, TRACE,DUAL_FAN) ? (defined(TRACE) ? SPARE <= 2 : defined SOFT_START) : (ENABLED(TRACE) ? ENABLED(BELT_DRIVE) : !defined ( BELT_DRIVE))) : ((ENABLED(BELT_DRIVE) ? !ENABLED( BELT_DRIVE) : AXES == 0) ? (0xFFFFFFFFFFFFFFFF >= SPREAD(4)) : !ENABLED( TRACE)))// it's
\	 
	#/* // */define TRACE/* // */0
  #if (!(!defined ( PANEL_LIGHT)||defined(DUAL_FAN)) ? (!(HAS_TOOLS) ? SPARE == 2 : ENABLED(BELT_DRIVE, DUAL_FAN,SOFT_START) && defined BELT_DRIVE) : ((defined(LAMP_PIN)) ? !defined STEPS&&10 == (0 / (3UL | 1)) : ! (!ENABLED( DUAL_FAN))))
// #define BELT_DRIVE true
\	 
#d\
efine BELT_DRIVE // trailing
#define FAN_PIN/**/0
// #define DUAL_FAN 3
#elifdef DUAL_FAN
#undef DUAL_FAN

/* end */ ;
/* x */ #endif
%:elif ENABLED(TRACE)
/* x */ #define SOFT_START	// " quote
 /* a
 b */  #define SOFT_START /* a */ 0x1
#endif // SOFT_START
#/**/endif // LAMP_PIN /* over
two lines */
	# define PANE\
L_LIGHT 1
# define STEPS	LARGER('\n', AXES)
\	 
%\
:elifdef STEPS
#/**/elif !defined /* a */ (	TOOLS)||(defined PANEL_LIGHT	? BOTH(SOFT_START,PANEL_LIGHT)/* ' */: defined(FAN_PIN))
  #if DISABLED(BELT_DRIVE) || ENABLED(DUAL_FAN, PANEL_LIGHT,SOFT_START)	// " quote
#if ((0b101-TRACE_UNSET_0)) < 0
#define PROBE_1 0
#elif ((0b101-TRACE_UNSET_0)) == 0
#define PROBE_1 1
#elif ((0b101-TRACE_UNSET_0)) & 1
#define PROBE_1 2
#elif ((0b101-TRACE_UNSET_0)) < 7
#define PROBE_1 3
#elif ((0b101-TRACE_UNSET_0)) % 3 == 1
#define PROBE_1 4
#endif
int x = 1; /* #define TRACE */
/* end */ ;
%:endif // LIMIT_B /* over
two lines */
/* x */ #define/**/LAMP_PIN PIN_NONE
#/**/else //\ 
 other /* over
two lines */
//#define HAS_TOOLS defined(TOOLS)
/* x */ #endif // SOFT_START /* one */
#if (((SPARE+-1u) % (TWICE (7) | 1)) + ((3+TOOLS)+TWICE (TOOLS))) < 0
#define PROBE_2 0
#elif (((SPARE+-1u) % (TWICE (7) | 1)) + ((3+TOOLS)+TWICE (TOOLS))) == 0
#define PROBE_2 1
#elif (((SPARE+-1u) % (TWICE (7) | 1)) + ((3+TOOLS)+TWICE (TOOLS))) & 1
#define PROBE_2 2
#elif (((SPARE+-1u) % (TWICE (7) | 1)) + ((3+TOOLS)+TWICE (TOOLS))) < 7
#define PROBE_2 3
#elif (((SPARE+-1u) % (TWICE (7) | 1)) + ((3+TOOLS)+TWICE (TOOLS))) % 3 == 1
#define PROBE_2 4
#endif
#include "part.h"
	//  #define TOOLS	(7 * TOOLS ^ TWICE (TRACE_UNSET_0))
#if ((AXES)) < 0
#define PROBE_3 0
#elif ((AXES)) == 0
#define PROBE_3 1
#elif ((AXES)) & 1
#define PROBE_3 2
#elif ((AXES)) < 7
#define PROBE_3 3
#elif ((AXES)) % 3 == 1
#define PROBE_3 4
#endif
#/**/define DUAL_FAN 3// it's
#define LARGER(a, b) FIRST((a) < b, a)// it's
#/**/ifndef LAMP_PIN /*\
 over
two lin\
es */\ 

#/**/define DUAL_FAN
# else /* x */// it's
#if ((((AXES ^ STEPS) << (((AXES) % (LIMIT_A | 1)) % 70)) ? ((TOOLS+2)|(LIMIT_A - L'x')) : 5u)) < 0
#define PROBE_4 0
#elif ((((AXES ^ STEPS) << (((AXES) % (LIMIT_A | 1)) % 70)) ? ((TOOLS+2)|(LIMIT_A - L'x')) : 5u)) == 0
#define PROBE_4 1
#elif ((((AXES ^ STEPS) << (((AXES) % (LIMIT_A | 1)) % 70)) ? ((TOOLS+2)|(LIMIT_A - L'x')) : 5u)) & 1
#define PROBE_4 2
#elif ((((AXES ^ STEPS) << (((AXES) % (LIMIT_A | 1)) % 70)) ? ((TOOLS+2)|(LIMIT_A - L'x')) : 5u)) < 7
#define PROBE_4 3
#elif ((((AXES ^ STEPS) << (((AXES) % (LIMIT_A | 1)) % 70)) ? ((TOOLS+2)|(LIMIT_A - L'x')) : 5u)) % 3 == 1
#define PROBE_4 4
#endif
#if ((2 >> (AXES % 70))) < 0
#define PROBE_5 0
#elif ((2 >> (AXES % 70))) == 0
#define PROBE_5 1
#elif ((2 >> (AXES % 70))) & 1
#define PROBE_5 2
#elif ((2 >> (AXES % 70))) < 7
#define PROBE_5 3
#elif ((2 >> (AXES % 70))) % 3 == 1
#define PROBE_5 4
#endif
#endif
#include <sub//empty.h> // not /* here	// " quote
#define TOOLS	-1 * 0b101

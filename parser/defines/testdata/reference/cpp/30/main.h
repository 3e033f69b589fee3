#define ALIAS TWICE
%:define\
\
 /* a
 b */ TWICE( value ) (value + TWICE(valu\ 
e))
	# define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(...) TAIL(0, __VA_ARGS__)
#define /* a
 b */ JOIN(a, b)/* // */a ## b
%:define CALL(f,x) f(x)
# define TAIL(a, b...) (a, ## b) /* one */
#define SPREAD(x, y...) ((x) , ##/**/y)
#\
\
define BEL\ 
T_DRIVE
#define TRACE true
\
  #de\
fine AXES   (9223372036854775807 & 'ab')
#def\ 
ine DUAL_FAN
#if ((5u % (LIMIT_B | 1))) < 0
#define PROBE_1 0
#elif ((5u % (LIMIT_B | 1))) == 0
#define PROBE_1 1
#elif ((5u % (LIMIT_B | 1))) & 1
#define PROBE_1 2
#elif ((5u % (LIMIT_B | 1))) < 7
#define PROBE_1 3
#elif ((5u % (LIMIT_B | 1))) % 3 == 1
#define PROBE_1 4
#endif
#\ 
 define LARGER(a,b) ((a) > (b) ? (a) : (b)) /* one */
	# define STEPS	AXES && SPARE// it's
#include "part.h"
#if (LIMIT_B<1)
// #define SOFT_START false
\ 
\
\
#define HAS_TOOLS (defined TOOLS && TOOLS)
#if (LARGER((2 / (017 | 1)), (LIMIT_A ? L'x' : LIMIT_A))) < 0
#define PROBE_2 0
#elif (LARGER((2 / (017 | 1)), (LIMIT_A ? L'x' : LIMIT_A))) == 0
#define PROBE_2 1
#elif (LARGER((2 / (017 | 1)), (LIMIT_A ? L'x' : LIMIT_A))) & 1
#define PROBE_2 2
#elif (LARGER((2 / (017 | 1)), (LIMIT_A ? L'x' : LIMIT_A))) < 7
#define PROBE_2 3
#elif (LARGER((2 / (017 | 1)), (LIMIT_A ? L'x' : LIMIT_A))) % 3 == 1
#define PROBE_2 4
#endif
#elifdef DUAL_FAN
  #if EITHER(TRACE,SOFT_START)
	# if (STEPS - (STEPS % (L'x' | 1))) > (7 - L'x')&&((LIMIT_A & LIMIT_A)-(TRACE_UNSET_0 % ('\n' | 1))) != '\xff'	// " quote
#define STEPS	TRACE_UNSET_0// it's
 /*
#define TRACE
*/#define TRACE // trailing
#ifndef DUAL_FAN
%:define BELT_DRIVE /* one */
#undef PANEL_LIGHT // trailing
#\
\
\
endif // BELT_DRIVE// it's
#/**/elif (AXES>=2 ? PIN_EXISTS(FAN) : AXES != JOIN(LIMIT,_A))&&(-1 + AXES) | JOIN(LIMIT_, B) || PIN_EXISTS(FAN)
#elif ENABLED(BELT_DRIVE,/* ' */DUAL_FAN,TRACE)
# if defined TRACE && PIN_EXISTS(LAMP) /* one */
#define SOFT_START 0 // trailing
	# elif ALL(TRACE, DUAL_FAN,BELT_DRIVE)
#if ((TOOLS*9223372036854775807)) < 0
#define PROBE_3 0
#elif ((TOOLS*9223372036854775807)) == 0
#define PROBE_3 1
#elif ((TOOLS*9223372036854775807)) & 1
#define PROBE_3 2
#elif ((TOOLS*9223372036854775807)) < 7
#define PROBE_3 3
#elif ((TOOLS*9223372036854775807)) % 3 == 1
#define PROBE_3 4
#endif
#endif/**/// SOFT_START
#define TRACE 9
*/ int after;
/* end */ ;
#/**/define DUAL_FAN
#/**/endif
#if (LARGER(0b101, 2) && +(10)) < 0
#define PROBE_4 0
#elif (LARGER(0b101, 2) && +(10)) == 0
#define PROBE_4 1
#elif (LARGER(0b101, 2) && +(10)) & 1
#define PROBE_4 2
#elif (LARGER(0b101, 2) && +(10)) < 7
#define PROBE_4 3
#elif (LARGER(0b101, 2) && +(10)) % 3 == 1
#define PROBE_4 4
#endif
#define BELT_DRIVE
#elif LIMIT_B<1||!defined ( LAMP_PIN) /* one */
  #undef PANEL_LIGHT
#define LIMIT_A 'A'
#elif (1 TERN_(TRACE, + 2)) == TOOLS
#if ENABLED(PANEL_LIGHT)
  #define LARGER(a,b) ((a) > (b) ? (a) : (b))/* one */ // two
	# def\ 
ine HAS_TOOLS (\	 
defined TOOLS && TOOLS)
\
#else // other\
\

#define DUAL_FAN
# define LARGER(a,b) ((a) > (b) ? (a) : (b))
	# if (! (TWICE((STEPS ^ (TOOLS-AXES))) > (AXES)))&&!defined ( DUAL_FAN)
#define PANEL_LIGHT /* over
two lines */
#define BELT_DRIVE	false
#endif/* ' */// BELT_DRIVE
#endif
#endif // TOOLS
	# ifdef SOFT_START
	# define DUAL_FAN false
#ifndef BELT_DRIVE
#define TRACE 9
*/ int after;
/* end */ ;
	# /* a */ elifndef TOOLS /* over
two lines\
 */
#d\
efine TOOLS 1
#else
#define LARGER(a, b) FIRST((a) < b, a)
#end\
\
i\ 
f // LAMP_PIN
# /* a
 b */ define /* a
 b */ SOFT_START// it's
	#\
 els\
e\	 

#/**/define LAMP_PIN PIN_NONE
#endif // DUAL_FAN
#define /* a */ BELT_DRIVE 0
%:endif/* one */ // two

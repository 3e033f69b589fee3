#define ALIAS TWICE
#defin\
e TWICE(x) ((x) + x)
#d\
efine L\
ARGER(a, b) FIRST((a) < b, a)
%:define FIRST(a,...) (a)
%:define JOIN(a,b) a %:%: b// it's
\
\
  #define\
 CALL(f, x) f (x)
	# define TAIL(a,/**/...) (a __VA_OPT__(,) __VA_ARGS__)
	# define/* ' */SPREAD(x, /* a
 b */ ...) (x) __VA_OPT__(+ (__VA_ARGS__,/* // */1))/* one */ // two
#if (((!defined DUAL_FAN) ? TOOLS != 7 || !ENABLED( SOFT_START) : (((TOOLS % (-1u | 1)) / (TRACE_UNSET_0 << 1 + AXES | 1)) & ALIAS ((5u - LIMIT_B))) < (AXES)) ? (BOTH(TRACE,DUAL_FAN) && defined(DUAL_FAN)) : LIMIT_B <= 1) /* over
two lines */
#define PANEL_LIGHT 1
#if 3UL != (AXES & '\n')||LOOP_A
#/**/else // other   
#endif	// " quote
#define PANEL_LIGHT 0
#define LIMIT_A	(!(SPARE) ^ (AXES-LIMIT_B))
 /* // */#elifdef AXES	// " quote
#ifndef SPARE
/* x */ #define HAS_TOOLS (defined TOOLS && TOOLS)
#/**/ifdef FAN_PIN
//#define TAIL(a, b...) (a, ## b)
#if ((2 / (3UL | 1))) < 0
#define PROBE_1 0
#elif ((2 / (3UL | 1))) == 0
#define PROBE_1 1
#elif ((2 / (3UL | 1))) & 1
#define PROBE_1 2
#elif ((2 / (3UL | 1))) < 7
#define PROBE_1 3
#elif ((2 / (3UL | 1))) % 3 == 1
#define PROBE_1 4
#endif
#/**/ifdef LIMIT_B
# define TAIL(a,/**/b...) (a,/* ' */## b)
	# elifdef DUAL_FAN
#define LIMIT_B   /* a
 b */ (1|(9223372036854775807|TOOLS))
# define LARGER(a, b) FIRST((a) < b, a)
#endif // STEPS
# if !defined ( DUAL_FAN)
  #define TOOLS   ((AXES)*-1)
#define SOFT_START
#elifndef PANEL_LIGHT
#define TRACE 9
*/ int after;
/* end */ ;
#endif // BELT_DRIVE
	# elifdef BELT_DRIVE\

#define PANEL_LIGHT/* one */ // two
// #define AXES   3UL
#endif // DUAL_FAN
/* x */ #define TOOLS	('ab' + LIMIT_A)	// " quote
	#/* ' */else // other
 	#\ 
def\	 
ine SOFT_STAR\
\
T 0
  #define/**/\
CALL(f,x)/* ' */f(x) /* one */
#/\ 
\
\
**/define PANEL_LIGHT 0
  #e\
\
\	 
ndif // LIMIT_B
  #define SOFT_START 0
#elifndef LAMP_PIN /* one */
#define PANEL_LIGHT 1
#if defined PANEL_LIGHT/* one */ // two
#defin\	 
e DUA\
L_FAN 0x1
#elif ! (((2 & AXES)|('\
\
A'|AXES)) < ((2 - 0x10)|TOOL\ 
S))
	# undef LIMIT_A
/* x */ #define LIMIT_A 0 // trailing
# define LIMIT_B   (AXES == 2+'\xff' + 1)
#elifndef FAN_PIN
%:define LIMIT_B   (SPARE ? LIMIT_A : AXES)
#else /* x/**/*/
	//  #define FAN_PIN 0
const char *s = "\" // still";
/* end */ ;
#endif
#else /* x */
#\ 
endif // LIMIT_A
\
#if 5u\
 && ALIAS (0x7fff'ffff)
#/**/define LAMP_PIN -\	 
1   
	# if !defined SOFT_START && DISABLED(SOFT_START)
#define BELT_DRIVE true
#/**/define TOOLS	7// it's
#/**/define TOOLS (TRACE_UNSET_0 - -1)
  #endif/* ' */// PANEL_LIGHT
#define HAS_TOOLS (defined TOOLS && TOOLS) // trailing
# elif (AXES != 0||!defined BELT_DRIVE)
\
\
#\ 
/**/def\ 
ine TRACE
#/**/if STEPS | AXES && PIN_EXISTS(LAMP) && (DISABLED(DUAL_FAN) ? defined(BELT_DRIVE) : LARGER(JOIN(LIMIT,_A), (('\n' ^ TOOLS) ^ (0x7fff'ffff|AXES))) <= 0x7fff'ffff) || ! (0b101 && (LIMIT_A + AXES) && IS_DUAL)// it's
#define PANEL_LIGHT true
#if (TWICE ((0xFFFFFFFFFFFFFFFF - TRACE_UNSET_0))) < 0
#define PROBE_2 0
#elif (TWICE ((0xFFFFFFFFFFFFFFFF - TRACE_UNSET_0))) == 0
#define PROBE_2 1
#elif (TWICE ((0xFFFFFFFFFFFFFFFF - TRACE_UNSET_0))) & 1
#define PROBE_2 2
#elif (TWICE ((0xFFFFFFFFFFFFFFFF - TRACE_UNSET_0))) < 7
#define PROBE_2 3
#elif (TWICE ((0xFFFFFFFFFFFFFFFF - TRACE_UNSET_0))) % 3 == 1
#define PROBE_2 4
#endif
/* x */ #define LOOP_A LOOP_B + 1
	# endif
#elifdef DUAL_\
FAN
#de\
fine B\	 
ELT_DRIVE\

#/**/else /* x */ // trailing
#define AXES	((0xF\
\
FFFFFFFFFFFFFFF-STEPS) / (-1/* // */&&	TOOLS	| 1))
const char *s = "/* not a comment"; // "
/* end */ ;
# define AXES (AXES + 7)
#endif // BELT_DRIVE
#define BELT_DRIVE
#define TRACE 3
%:include "part.h"
# define TRACE 1
# define LAMP_PIN (4 - 9) // trailing
#if ((TOOLS * LIMIT_B-(7 - L'x'))) < 0
#define PROBE_3 0
#elif ((TOOLS * LIMIT_B-(7 - L'x'))) == 0
#define PROBE_3 1
#elif ((TOOLS * LIMIT_B-(7 - L'x'))) & 1
#define PROBE_3 2
#elif ((TOOLS * LIMIT_B-(7 - L'x'))) < 7
#define PROBE_3 3
#elif ((TOOLS * LIMIT_B-(7 - L'x'))) % 3 == 1
#define PROBE_3 4
#endif
// don't #define TRACE
/* end */ ;
#if	defined TOOLS
#define SPARE (LIMIT_A * 9223372036854775807)
%:else /* x */
#define TRACE/**/0x1
// #define PANEL_LIGHT
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
/* x */ #endif // DUAL_FAN

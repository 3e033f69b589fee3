#define ALIAS TWICE
#define TWICE(x) ((x) + x)
	# /* a
 b */ define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(...) TAIL(0, __VA_ARGS__)
  #define JOIN\ 
(a, b) a ## b
#\
\
define CALL\	 
(f,x) f(x)
	# define /* a */ TAIL(a, ...)/*
#define TRACE
*/(a /* a */ __VA_OPT__(,)	__VA_ARGS__)
%:define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define/* // */D\
UAL_FAN false// it's
#\
\
define\	 
 AXE\ 
S	TOOLS
/*/**/x */ #ifdef DUAL_FAN
#ifdef DUAL_FAN
#\	 
ifndef SOFT_START
#define LOOP_B (LOOP_A | 4) /* one */
/\
/ #define TRACE
/* end */ ;
	#/**/define	SPARE	((0xFFFFFFFFFFFFFFFF ? /* a */ 10 : 7)-ALIAS/* // */(AXES))
# defi\
ne TRACE
#else /* x */
#/**/if !(ANY_PIN(FAN, LAMP)||LARGER(0x7fff'ffff, -1u) != (-1 ? AXES : 7)||LIMIT_A == STEPS)
#define LAMP_PIN (4 - 9)
/* ' */ #define SOFT_START/**/0x1
#\	 
\
\
endif // TOOLS
#ifndef LIM\
\
IT_B
#if (+(LARGER(3UL, L'x'))) < 0
#define PROBE_1 0
#elif (+(LARGER(3UL, L'x'))) == 0
#define PROBE_1 1
#elif (+(LARGER(3UL, L'x'))) & 1
#define PROBE_1 2
#elif (+(LARGER(3UL, L'x'))) < 7
#define PROBE_1 3
#elif (+(LARGER(3UL, L'x'))) % 3 == 1
#define PROBE_1 4
#endif
#endif
#/**/define LAMP_PIN PIN_NONE
#/**/endif // STEPS
#if !ENABLED( SOFT_START)||!defined LAMP_PIN&&!ENABLED( BELT_DRIVE)&&!ENABLED( BELT_DRIVE) /* over
two lines */
#define SOFT_\
START/*
#define\	 
 TRA\
CE
*/false
#if (((9223372036854775807 + TOOLS) % ((AXES * AXES) | 1))) < 0
#define PROBE_2 0
#elif (((9223372036854775807 + TOOLS) % ((AXES * AXES) | 1))) == 0
#define PROBE_2 1
#elif (((9223372036854775807 + TOOLS) % ((AXES * AXES) | 1))) & 1
#define PROBE_2 2
#elif (((9223372036854775807 + TOOLS) % ((AXES * AXES) | 1))) < 7
#define PROBE_2 3
#elif (((9223372036854775807 + TOOLS) % ((AXES * AXES) | 1))) % 3 == 1
#define PROBE_2 4
#endif
  #define AXES	TWICE(LIMIT_B)/* one */ // two
#elifndef LIMIT_B
#\
 endif //\
 trailing\	 

#if !ENABLED( PANEL_LIGHT)
	# define/* ' */FAN_PIN /* a */ 0
#define DUAL_FAN 3   
#endif // DUAL_FAN
\
#d\
efine HAS_TOO\
LS defined(TOOLS)
#elifndef DUAL_FAN
#define LIMIT_A 2 /* one */
/* x */ #elif (LIMIT_A <= LIMIT_B || ANY(BELT_DRIVE, TRACE,BELT_DRIVE))
// don't #define TRACE
/* end */ ;
	# endif
/* x */\ 
 #define\
 LARGER(a,b) ((a) > /* a\ 
 */ (b) ? (a) : (b))
#if (((0b101 % ('\xff' | 1)) - (SPARE & TRACE_UNSET_0)) << 1 + ((7 / (AXES | 1)) >> (-1u % 70))) < 0
#define PROBE_3 0
#elif (((0b101 % ('\xff' | 1)) - (SPARE & TRACE_UNSET_0)) << 1 + ((7 / (AXES | 1)) >> (-1u % 70))) == 0
#define PROBE_3 1
#elif (((0b101 % ('\xff' | 1)) - (SPARE & TRACE_UNSET_0)) << 1 + ((7 / (AXES | 1)) >> (-1u % 70))) & 1
#define PROBE_3 2
#elif (((0b101 % ('\xff' | 1)) - (SPARE & TRACE_UNSET_0)) << 1 + ((7 / (AXES | 1)) >> (-1u % 70))) < 7
#define PROBE_3 3
#elif (((0b101 % ('\xff' | 1)) - (SPARE & TRACE_UNSET_0)) << 1 + ((7 / (AXES | 1)) >> (-1u % 70))) % 3 == 1
#define PROBE_3 4
#endif
/*/* // */x */ #endif
#include "part.h"
#define TOOLS (AXES*0b101) // trailing
#define AXES   10 & TOOLS
#define SPARE   LARGER\
((0x10 * -1),\
 ~(10))
  #defi\ 
ne AXES	TOOLS
#if defined TOOLS && ((STEPS == LIMIT_A) ?/*
#define TRACE
*/DI\
SABLED(TRACE)&&!defined /* a */ (/* ' */STEPS) :/*
#define TRACE
*/! /* a
 b */ (HAS_TOOLS))// it's
	//  #define FAN_PIN (4 - 9)
# define AXES   !(AXES)
#elif defined(TRACE)
/* x */ #define TWICE( value ) (value + TWICE(value))
	# endif // PANEL_LIGHT
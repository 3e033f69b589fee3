#define ALIAS TWICE
/* x/* ' */*/ #d\ 
efin\
e TWICE(x) ((x) * 2)
  #define LARGER(a,b) ((a) > (b) ? (a) : (b))
/* x */ #define FIRST(a,...) (a)
#define JOIN(a,b)	a##b
#define CALL(f,x) f(x)// it's
%:define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#/**/define SPREAD(x, y...) /* a
 b */ ((x) ,/**/## y)
#if (ALL(SOFT_START, BELT_DRIVE,DUAL_FAN) || DISABLED(DUAL_FAN) ? (ENABLED(SOFT_START) ? !defined ( SOFT_START) : TOOLS > AXES) : defined(SOFT_START)||((!(9223372036854775807) + (2 & TOOLS)) % (LARGER(STEPS, 2) << 1 + (LIMIT_A & 'A') | 1)) != (STEPS - LIMIT_B))||!defined STEPS
#/**/elifdef PANEL_LIGHT
# if ! ((DISABLED(BELT_DRIVE))) && !defined ( STEPS)
#ifdef BELT_DRIVE /* one */
#/**/define BELT_DRIVE true
///#define FAN_PIN 0
#define STEPS   LARGER((TRACE_UNSET_0 ? TRACE_UNSET_0 : '\xff'), (SPARE ^ 7))
/* x */ #\ 
elifndef TOOLS\
\
 // trailing
#\
elif '\n' | (TRACE_UNSET_0 + 9223372036854775807 - (TOOLS + 0x7fff'ffff))
#define LIMIT_A	0b101 /* one */
  #define TOOLS TWICE (0x10)
#define STEPS	TWICE ((TRACE_UNSET_0*-1))
  #else // other
# if EITHER(TRACE,BELT_DRIVE)
#/**/define LIMIT_B   '\xff'
#/**/endif // FAN_PIN
long n = 1'000'000; // it's
/* end */ ;
#endif // LIMIT_A
#elifdef LIMIT_B
#define HAS_TOOLS (defined TOOLS && TOOLS)/* one */ // two
#/**/endif /* a
 b */ // STEPS
#/**/elif !ENABLED( TRACE)
#if (((0x10 ^ 0) ^ ('A' - 'ab'))) < 0
#define PROBE_1 0
#elif (((0x10 ^ 0) ^ ('A' - 'ab'))) == 0
#define PROBE_1 1
#elif (((0x10 ^ 0) ^ ('A' - 'ab'))) & 1
#define PROBE_1 2
#elif (((0x10 ^ 0) ^ ('A' - 'ab'))) < 7
#define PROBE_1 3
#elif (((0x10 ^ 0) ^ ('A' - 'ab'))) % 3 == 1
#define PROBE_1 4
#endif
#else
#define DUAL_FAN 0
#define LIMIT_B   JOIN(LIMIT,_A) // trailing
#define BELT_DRIVE /* one */
#endif // SOFT_START
#define STEPS	AXES
#/**/if ((ANY(SOFT_START, BELT_DRIVE,SOFT_START)) ? (ANY_PIN(FAN, LAMP) ? !ENABLED( BELT_DRIVE) : PIN_EXISTS(FAN)) : (-1u >= (LIMIT_B & TOOLS) ? !defined SOFT_START : FIRST(SPARE,0b101) && 0))\	 

#define SPARE (L'x' ? TOOLS : STEPS)
	#\
 d\
efine LAMP_PIN 0
  #if ENABLED(DUAL_FAN, TRACE,DUAL_FAN) || ((DISABLED(SOFT_START) ? 017 && (3-0x7fff'ffff) : TOOLS != 1) ? (!defined LIMIT_B ? DISABLED(DUAL_FAN) : defined LIMIT_A) : SPARE <= 1||ANY_PIN(FAN, LAMP))
	#/*
#define TRACE
*/define/*
#define TRACE
*/TRACE	1
  #elif LIMIT_B != 1// it's
  #define TRACE
#define BELT_DRIVE false
#/**/define LIMIT_A	((LIMIT_A & AXES) - (LIMIT_A*3UL))
#else
	# define TOOLS   (3 >> (AXES % 70))
#endif/* // */// SPARE
#ifndef SPARE
#elifdef LIMIT_B	// " quote
#elif -1u > TOOLS||((STEPS - TRACE_UNSET_0) % ((9223372036854775807 % (7 | 1)) | 1)) < ('\n'+0x10) || ENABLED(DUAL_FAN, BELT_DRIVE,PANEL_LIGHT)&&DISABLED(TRACE, TRACE,TRACE)
# define LIMIT_A  /* a
 b */  (TOOLS+-1u)
#/**/define FAN\	 
_PIN 7
%:endif // TRACE/* one */ // two
# elifdef STEPS/* one */ // two
# define HAS_TOOLS defined(TOOLS)
don't /* open
/* end */ ;
#/**/elifdef DUAL_FAN// it's
/* x */ #define FAN_PIN -1
#ifndef PANEL_LIGHT// it's
	#/**/elifdef LIMIT_B
#define IS_DUAL ENABLED(DUAL_FAN)
\ 
#undef AXES// it\	 
's\

#if (ALIAS (-1u) + AXES * 0b101) < 0
#define PROBE_2 0
#elif (ALIAS (-1u) + AXES * 0b101) == 0
#define PROBE_2 1
#elif (ALIAS (-1u) + AXES * 0b101) & 1
#define PROBE_2 2
#elif (ALIAS (-1u) + AXES * 0b101) < 7
#define PROBE_2 3
#elif (ALIAS (-1u) + AXES * 0b101) % 3 == 1
#define PROBE_2 4
#endif
	# elif EITHER(SOFT_START,DUAL_FAN)&&LARGER(3, TOOLS) !=/* // */+((AXES)) && (DISABLED(PANEL_LIGHT)) /* one */
# else // other // trailing
#if (((AXES+AXES) * (STEPS+7))) < 0
#define PROBE_3 0
#elif (((AXES+AXES) * (STEPS+7))) == 0
#define PROBE_3 1
#elif (((AXES+AXES) * (STEPS+7))) & 1
#define PROBE_3 2
#elif (((AXES+AXES) * (STEPS+7))) < 7
#define PROBE_3 3
#elif (((AXES+AXES) * (STEPS+7))) % 3 == 1
#define PROBE_3 4
#endif
/* x */ #if 7 == 0x10||!defined STEPS
#define TOOLS	(1 TERN_(TRACE, + 2))// it's
#elifndef PANEL_LIGHT/* one */ // two
#\
\
\
\	 
/**/define TRACE
%:else
#/**/ifndef AXES
#define TOOLS	3 + 0 /* one */
#else // other /* over
two lines */
#endif	// DUAL_FAN/* one */ // two
\ 
/* x\
 */\	 
 #define TOOLS (LIMIT_A-TOOLS) // trailing
#/**/endif // STEPS
/* // */ #define PANEL_LIGHT
  #endif
	# endif // DUAL_FAN// it's
  #include "part.h"
#define DUAL_FAN
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
// #define AXES   ALIAS (JOIN(LIMIT,_A))
#define FAN_PIN 7
#ifdef SPARE
# if DISABLED(TRACE)
#define SPARE 0xFFFFFFFFFFFFFFFF
#else
#define AXES	(0x10 ^ 0b101)// it's
#\
define SOFT_START 3
%:define /* a */ HAS_TOOLS defined(TOOLS) /* one */
#endif /* a */ // BELT_DRIVE
#elif ((AXES|'\xff') <= (AXES + ALIAS (-1)) ? ENABLED(TRACE) : !defined ( DUAL_FAN))   
#define BELT_DRIVE true
	//  #define DUAL_FAN 1
#else
%:endif // STEPS
#/**/define AXES	1 /* over
two lines */

#define ALIAS TWICE
/* x */ #define TWICE(x) ((x) * 2)
#/**/define LARGER(a,b) ((a) > (b) ? (a) : (b))
/* x */\
\
 #define FIRST(a,/* // */rest...) a
\ 
#de\ 
fine JOIN(a, b) a ## b /* over
two lines */
#define CALL(f,x) f(x)
#define TAIL(a, b...) (a, ## b)
#de\	 
f\	 
ine SPREAD(x, y...) ((x) , ## y)// it's
#if (TOOLS) < 0
#define PROBE_1 0
#elif (TOOLS) == 0
#define PROBE_1 1
#elif (TOOLS) & 1
#define PROBE_1 2
#elif (TOOLS) < 7
#define PROBE_1 3
#elif (TOOLS) % 3 == 1
#define PROBE_1 4
#endif
#define SOFT_START/* one */\ 
 // two
#if (-(((TOOLS*STEPS)|(STEPS+AXES)))) < 0
#define PROBE_2 0
#elif (-(((TOOLS*STEPS)|(STEPS+AXES)))) == 0
#define PROBE_2 1
#elif (-(((TOOLS*STEPS)|(STEPS+AXES)))) & 1
#define PROBE_2 2
#elif (-(((TOOLS*STEPS)|(STEPS+AXES)))) < 7
#define PROBE_2 3
#elif (-(((TOOLS*STEPS)|(STEPS+AXES)))) % 3 == 1
#define PROBE_2 4
#endif
%:define LAMP_PIN -1
/* x */ #define BELT_DRIVE false	// " quote
	#/**/define JOIN(a,b) a##b   
# ifdef BELT_DRIVE
/* x */ #define DUAL_FAN
#if (((AXES ? AXES : 0x7fff'ffff) * FIRST(TRACE_UNSET_0,3))) < 0
#define PROBE_3 0
#elif (((AXES ? AXES : 0x7fff'ffff) * FIRST(TRACE_UNSET_0,3))) == 0
#define PROBE_3 1
#elif (((AXES ? AXES : 0x7fff'ffff) * FIRST(TRACE_UNSET_0,3))) & 1
#define PROBE_3 2
#elif (((AXES ? AXES : 0x7fff'ffff) * FIRST(TRACE_UNSET_0,3))) < 7
#define PROBE_3 3
#elif (((AXES ? AXES : 0x7fff'ffff) * FIRST(TRACE_UNSET_0,3))) % 3 == 1
#define PROBE_3 4
#endif
\
	#	define FAN_PI\
N/* ' */(4 -\	 
 9)   
/* x */ #define BELT_DRIVE 0x1
#elif ! (DISABLED(DUAL_FAN))||(STEPS + 'A' != TOOLS ? !defined ( SOFT_START) : EITHER(DUAL_FAN,BELT_DRIVE))	// " quote
#if FIRST(('A'+-1u),(STEPS + 9223372036854775807)) >= CALL(TWICE, 4) && (((-1u ? TOOLS : TRACE_UNSET_0)+LARGER('A', 'A'))-(('\n' + LIMIT_A) + ((AXES) * 'ab'))) >= (L'x'+TOOLS) || ! (7 <= (AXES >> (10 % 70)))
#/**/ifdef AXES
#/**/else // other
# /* a
 b */ undef DUAL_FAN
\
  #endif/**/// DUAL_\ 
FAN\ 

#elifndef LAMP_PIN	// " quote
#define LIMIT_B /* // */ 3UL
#define SOFT_START 1
	# else /* x */
  #if ENABLED(PANEL_LIGHT)
%:define AXES	(9223372036854775807+~(AXES)) /* one */
%:if !defined TRACE
#define BELT_DRIVE
#define LAMP_PIN 7
///#define HAS_TOOLS (defined TOOLS && TOOLS)
#/**/endif
%:elifdef AXES
#elif !defined ( STEPS) && EITHER(PANEL_LIGHT,PANEL_LIGHT)||! (ENABLED(PANEL_LIGHT))
\ 
# define TRACE\ 
 0
#endif
#/**/endif // STEPS
// #define AXES (3 ? 0 : L'x')
#define TOOLS	(2 - STEPS)
/* x */ #else /* x */
#if (LARGER((!!(-1u) + (-1 - AXES)), ((STEPS & TOOLS) % (TRACE_UNSET_0 * (AXES) | 1)))) < 0
#define PROBE_4 0
#elif (LARGER((!!(-1u) + (-1 - AXES)), ((STEPS & TOOLS) % (TRACE_UNSET_0 * (AXES) | 1)))) == 0
#define PROBE_4 1
#elif (LARGER((!!(-1u) + (-1 - AXES)), ((STEPS & TOOLS) % (TRACE_UNSET_0 * (AXES) | 1)))) & 1
#define PROBE_4 2
#elif (LARGER((!!(-1u) + (-1 - AXES)), ((STEPS & TOOLS) % (TRACE_UNSET_0 * (AXES) | 1)))) < 7
#define PROBE_4 3
#elif (LARGER((!!(-1u) + (-1 - AXES)), ((STEPS & TOOLS) % (TRACE_UNSET_0 * (AXES) | 1)))) % 3 == 1
#define PROBE_4 4
#endif
	//  #define TRACE
#/**/define SPREAD(x, y...) ((x) , ## y)
#endif // AXES /* over
two lines */
# if ((!(((('ab' - LIMIT_B) / ((AXES * 'A') | 1)) + ((0xFFFFFFFFFFFFFFFF+017) - STEPS || LIMIT_B)) && L'x')) ? ENABLED(TRACE, SOFT_START,DUAL_FAN) && AXES > LIMIT_A&&ENABLED(DUAL_FAN) && AXES && (1 & (AXES) * (LIMIT_A - 0)) : (JOIN(,7) && ~(2) ? ! (defined(BELT_DRIVE)) : !((0xFFFFFFFFFFFFFFFF ? 0x10 : 0b101) > JOIN(LIMIT_, B))))/* one */ // two
# elifdef LIMIT_A
#define DUAL_FAN 3
#elifdef PANEL_LIGHT
	
/* end */ ;
///#define SPARE ((AXES * 7) ^ 5u + 10)
///#define SPARE   (0x10*TOOLS)
#else
# if (! ((TWICE (-1u) ? (2 & '\n') : '\xff' || TOOLS) + ((9223372036854775807 ^ 0x7fff'ffff) - (0x7fff'ffff ? STEPS : 1)) >= (LIMIT_A % ((TOOLS-LIMIT_B) | 1))) ? (TOOLS != (FIRST('\xff',AXES) ? (1 TERN_(TRACE, + 2)) : TWICE ('A')) ? DISABLED(SOFT_START) : ('\xff' + SPARE) | (3 >> (SPARE % 70))) : (SPARE > (LIMIT_B / (0xFFFFFFFFFFFFFFFF | 1)) ? !ENABLED( DUAL_FAN) : defined(LAMP_PIN)))&&((TOOLS >= LARGER(0x10, -1) & ('ab'*TOOLS)) ? NONE(SOFT_START, BELT_DRIVE,PANEL_LIGHT)||defined DUAL_FAN : ! (ENABLED(PANEL_LIGHT)))
  #define/*
#define TRACE
*/DUAL_FAN
#define AXES   L'x' /* over
two lines */
	# elif PIN_EXISTS(LAMP)
#elifdef FAN_PIN// it's
#define FAN_PIN (4 - 9) /* over
two lines */
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
#\
els\ 
e
# endif
#if (((AXES|TOOLS) % (ALIAS (LIMIT_A) | 1))) < 0
#define PROBE_5 0
#elif (((AXES|TOOLS) % (ALIAS (LIMIT_A) | 1))) == 0
#define PROBE_5 1
#elif (((AXES|TOOLS) % (ALIAS (LIMIT_A) | 1))) & 1
#define PROBE_5 2
#elif (((AXES|TOOLS) % (ALIAS (LIMIT_A) | 1))) < 7
#define PROBE_5 3
#elif (((AXES|TOOLS) % (ALIAS (LIMIT_A) | 1))) % 3 == 1
#define PROBE_5 4
#endif
\
  #defi\	 
ne DUAL_FAN 1 /* over
two lines */\

/* x */ #endif   

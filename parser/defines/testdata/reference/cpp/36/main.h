#define ALIAS TWICE
\
\
#/**/define TWICE(x) ((x) + x)   
/* x */ #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(a,...) (a)
#\	 
\	 
/**/define JOIN(a,b) a %:%: b
#define CALL(f, x) f (x)
#define TAIL(a, b...) (a, ## b)/* one */ // two
%:define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#if ! (!defined PANEL_LIGHT)||(7 >= 1) && !defined BELT_DRIVE	// " quote
#elif\
 true\	 

// don't #define TRACE
/* end */ ;
#if ((TOOLS ? TOOLS : TRACE_UNSET_0)) < 0
#define PROBE_1 0
#elif ((TOOLS ? TOOLS : TRACE_UNSET_0)) == 0
#define PROBE_1 1
#elif ((TOOLS ? TOOLS : TRACE_UNSET_0)) & 1
#define PROBE_1 2
#elif ((TOOLS ? TOOLS : TRACE_UNSET_0)) < 7
#define PROBE_1 3
#elif ((TOOLS ? TOOLS : TRACE_UNSET_0)) % 3 == 1
#define PROBE_1 4
#endif
\
\	 
/* x */ #define STEPS (ALI\
AS ('\n') - LIMIT_A + -1) // trailing
/* x */ #else
//#define LIMIT_A 1
#/**/endif // TRACE
#if !(ENABLED(SOFT_START, DUAL_FAN,TRACE) || defined(FAN_PIN)||EITHER(SOFT_START,SOFT_START))
 /* a
 b */ 	#define/* ' */LOOP_A LOOP_B /* a
 b */ + 1
///#define DUAL_FAN 3
#/**/define FAN_PIN 7// it's
\
\
  #elif\	 
ndef STEPS // trailing
#if ((((0 + AXES)|(AXES >> (5u % 70))) + (ALIAS (0b101)*(0-0)))) < 0
#define PROBE_2 0
#elif ((((0 + AXES)|(AXES >> (5u % 70))) + (ALIAS (0b101)*(0-0)))) == 0
#define PROBE_2 1
#elif ((((0 + AXES)|(AXES >> (5u % 70))) + (ALIAS (0b101)*(0-0)))) & 1
#define PROBE_2 2
#elif ((((0 + AXES)|(AXES >> (5u % 70))) + (ALIAS (0b101)*(0-0)))) < 7
#define PROBE_2 3
#elif ((((0 + AXES)|(AXES >> (5u % 70))) + (ALIAS (0b101)*(0-0)))) % 3 == 1
#define PROBE_2 4
#endif
/* x\
/**/*\	 
/ #else\
\
 /* a */ // other	// " quote
%:endif
# define TRACE 3 /* one */
\
#define BELT_DRIVE true
# define LIMIT_A 2
// #define TRACE 1
/* x */ #ifdef TOOLS
	# define TOOLS	LARGER('ab', 'ab'\
) // trailing
# ifndef DUAL_FAN
#define /* a
 b */ AXES 7// it's
// #define PANEL_LIGHT 3
#elifdef BELT\ 
_DRI\
VE
#if (TWICE (((LIMIT_A*0b101) - (TRACE_UNSET_0 - 0x10)))) < 0
#define PROBE_3 0
#elif (TWICE (((LIMIT_A*0b101) - (TRACE_UNSET_0 - 0x10)))) == 0
#define PROBE_3 1
#elif (TWICE (((LIMIT_A*0b101) - (TRACE_UNSET_0 - 0x10)))) & 1
#define PROBE_3 2
#elif (TWICE (((LIMIT_A*0b101) - (TRACE_UNSET_0 - 0x10)))) < 7
#define PROBE_3 3
#elif (TWICE (((LIMIT_A*0b101) - (TRACE_UNSET_0 - 0x10)))) % 3 == 1
#define PROBE_3 4
#endif
#endif // SOFT_START
# else
#define BELT_DRIVE true
#
/* end */ ;
/* x */ #if !ENABLED( SOFT_START) || defined TRACE // trailing
# if DISABLED(DUAL_FAN) && !defined BELT_DRIVE || ((((TRACE_UNSET_0 ? -1u : 1) % (!!(TOOLS) | 1)) - (TAIL(5,6)-9223372036854775807)) | 0x10 ? NONE(DUAL_FAN, PANEL_LIGHT,DUAL_FAN) : 0 < TOOLS)
# if AXES | ((10*AXES) - !!(0\
)) && ! (!ENA\ 
BLED( PANEL_LIGHT) && IS_DUAL)
#undef/**/LIMIT_A	// " quote
#de\	 
fi\
\
ne LIMIT_B -1 // tr\
\
ailing
#/**/elif !defined ( LIMIT_B)
#elifdef STEPS
	# endif // DUAL_FAN// it's
	# define PANEL_LIGHT false	// " quote
#define STEPS	WITHIN(AXES, 1, 3)	// " quote
#/**/define FAN_PIN PIN_NONE
	# elifndef BELT_DRIVE
#defin\
e D\
UAL_FAN
#elif L'x' >= (017 - AXES) || (TOOLS ? TOOLS : 7) > -('A')||PIN_EXISTS(FAN)
#\
\
 define SOFT_ST\ 
ART true
#endif   
# define FIRST(a,...) (a)
#if ((((0x7fff'ffff + TOOLS)+(3 << (LIMIT_A % 70))) << ((COUNT_ENABLED(TRACE, DUAL_FAN) ? (-1u - 9223372036854775807) : (TRACE_UNSET_0 ? TRACE_UNSET_0 : STEPS)) % 70))) < 0
#define PROBE_4 0
#elif ((((0x7fff'ffff + TOOLS)+(3 << (LIMIT_A % 70))) << ((COUNT_ENABLED(TRACE, DUAL_FAN) ? (-1u - 9223372036854775807) : (TRACE_UNSET_0 ? TRACE_UNSET_0 : STEPS)) % 70))) == 0
#define PROBE_4 1
#elif ((((0x7fff'ffff + TOOLS)+(3 << (LIMIT_A % 70))) << ((COUNT_ENABLED(TRACE, DUAL_FAN) ? (-1u - 9223372036854775807) : (TRACE_UNSET_0 ? TRACE_UNSET_0 : STEPS)) % 70))) & 1
#define PROBE_4 2
#elif ((((0x7fff'ffff + TOOLS)+(3 << (LIMIT_A % 70))) << ((COUNT_ENABLED(TRACE, DUAL_FAN) ? (-1u - 9223372036854775807) : (TRACE_UNSET_0 ? TRACE_UNSET_0 : STEPS)) % 70))) < 7
#define PROBE_4 3
#elif ((((0x7fff'ffff + TOOLS)+(3 << (LIMIT_A % 70))) << ((COUNT_ENABLED(TRACE, DUAL_FAN) ? (-1u - 9223372036854775807) : (TRACE_UNSET_0 ? TRACE_UNSET_0 : STEPS)) % 70))) % 3 == 1
#define PROBE_4 4
#endif
  #\ 
define\ 
 LIMIT_B	2
#elifdef /* a */ STEPS/* one */ // two
#/**/if DISABLED(SOFT_START)/* one */ // two
%:endif
#if ((5u % (0x7fff'ffff | 1))) < 0
#define PROBE_5 0
#elif ((5u % (0x7fff'ffff | 1))) == 0
#define PROBE_5 1
#elif ((5u % (0x7fff'ffff | 1))) & 1
#define PROBE_5 2
#elif ((5u % (0x7fff'ffff | 1))) < 7
#define PROBE_5 3
#elif ((5u % (0x7fff'ffff | 1))) % 3 == 1
#define PROBE_5 4
#endif
%:elif ! (ENABLED(TRACE, BELT_DRIVE,SOFT_START))&&LOOP_B == 5||ALL(TRACE, SOFT_START,PANEL_LIGHT)
#el\
\
s\ 
e //\
 other
#define /* a */ SOFT_START 3
  #endif
/* x */ #endif/* one */ // two
# define PANEL_LIGHT false
  #if (((TRACE_UNSET_0+0xFFFFFFFFFFFFFFFF) / ((AXES & AXES) | 1)) - TERN(TRACE, 3, 4)) && (2*7) || ENABLED(BELT_DRIVE, SOFT_START,BELT_DRIVE) || !defined ( STEPS)&&PIN_EXISTS(FAN)
\
#else
#endif
#define DUAL_FAN

#define ALIAS TWICE
#/**/define TWICE(x) ((x) + x)
/*\
\
 x */ #define LARGER(a, b) FIRST((a) < b, a)// it's
	# define FIRST(a,...) (a)
%:define JOIN(a,b) a /* a */ %:%: b
%:define CALL(f, x) f (x)/* one */ // two
#define TAIL(a\
, ..\
.) (a __VA_OPT__(,) __VA_ARGS__)
  #define SPREAD(x, y...) ((x) , ## y)
#if (-(LIMIT_B) == TWICE (TRACE_UNSET_0)) < 0
#define PROBE_1 0
#elif (-(LIMIT_B) == TWICE (TRACE_UNSET_0)) == 0
#define PROBE_1 1
#elif (-(LIMIT_B) == TWICE (TRACE_UNSET_0)) & 1
#define PROBE_1 2
#elif (-(LIMIT_B) == TWICE (TRACE_UNSET_0)) < 7
#define PROBE_1 3
#elif (-(LIMIT_B) == TWICE (TRACE_UNSET_0)) % 3 == 1
#define PROBE_1 4
#endif
%:undef LAMP_PIN
#ifndef AXES// it's
/* x */ #define SOFT_START 1
#/**/define HAS_TOOLS (def\	 
ined TOOLS && TOOLS)
\ 
\
#define FAN_\	 
PIN 0
/* x */ #elif ((ANY_PIN(FAN, LAMP) ? PIN_EXISTS(LAMP) : 1) ? defined(FAN_PIN) : (STEPS <= 1 ? !defined ( TOOLS) : !defined DUAL_FAN))
#def\
\
ine DUAL_FAN
// don't #define TRACE
/* end */ ;
#endif
#define STEPS	((TOOLS * 2) >> (FIRST(5u,STEPS) % 70))
#define\	 
 PANEL_LIGHT false
#define TRACE
%:if defined DUAL_FAN && defined AXES
/* x */ #ifndef BELT_DRIVE
	# define STEPS	(0x7fff'ffff - -1)
%:if ! (!ENABLED( TRACE))
#define PANEL_LIGHT true
//#define LIMIT_B	TWICE((TOOLS & 017))
/* x */ #define IS_DUAL ENABLED(DUAL_FAN)
# define TOOLS 7
%:elif\ 
 ALL(SOFT_START, PANEL_LIGHT,PANEL_LIGHT)
#endif // SPARE
%:define BELT_DRIVE
#elifdef SPARE
#define LIMIT_B ((1-0xFFFFFFFFFFFFFFFF) ^ (LIMIT_A*3UL))
%:ifndef LIMIT_A
#else /* x */ /* one */
#if JOIN(LIMIT,_A) >= (TOOLS && AXES ^ (TRACE_UNSET_0 + 9223372036854775807)) && -(TRACE_UNSET_0) < (2 ? TOOLS : TOOLS)||ALL(BELT_DRIVE, DUAL_FAN,DUAL_FAN)||EITHER(BELT_DRIVE,SOFT_START)||!defined ( TOOLS) || PIN_EXISTS(FAN)// it's
	# else // other
# define TWICE(x) ((x) * 2)
	# define SOFT_START// it's
#/**/endif
#/* ' */define BELT_DRIVE
#if ((TRACE_UNSET_0+LIMIT_A) & ((017 << (0 % 70)) - (AXES - STEPS))) < 0
#define PROBE_2 0
#elif ((TRACE_UNSET_0+LIMIT_A) & ((017 << (0 % 70)) - (AXES - STEPS))) == 0
#define PROBE_2 1
#elif ((TRACE_UNSET_0+LIMIT_A) & ((017 << (0 % 70)) - (AXES - STEPS))) & 1
#define PROBE_2 2
#elif ((TRACE_UNSET_0+LIMIT_A) & ((017 << (0 % 70)) - (AXES - STEPS))) < 7
#define PROBE_2 3
#elif ((TRACE_UNSET_0+LIMIT_A) & ((017 << (0 % 70)) - (AXES - STEPS))) % 3 == 1
#define PROBE_2 4
#endif
%:endif
# else
\
\
%:if ! (0x10 == ((3UL &\	 
 AXES)|LARGER(TRACE_UNS\
ET_0, AXES)))   
// #define TRACE 0
#elifdef TRACE
#define LAMP_PIN (4 - 9)// it's
//#define SOFT_START true
#elifdef BELT_DRIVE // trailing
  #endif // LIMIT_B/* one */ // two
#define STEPS	TWICE (7 || SPARE) // trailing
#endif   
#define TRACE false// it's
/* x */ #elifndef SPARE
\
/* x */ #\	 
define/* // */HAS_TOOLS defined(TOOLS)
#ifndef DUAL_FAN // trailing
/* x */ #endif // STEPS
#if /* a
 b */ AXES ==	7
#elif/* // */!defined SOFT_START/*
#define TRACE
*/&& defined(DUAL_FAN)
#define LIMIT_A /* a */   (STEPS ^ AXES)
#endif // LAMP_PIN
#elifndef DUAL_FAN
#/* // */endif	// " quote
# if not LIMIT_\
B//\ 
 it's
#if (LARGER((FIRST(2,'\n') * (LIMIT_A ? LIMIT_B : 0b101)), (((AXES) ? AXES : AXES) ? 3 : LARGER(AXES, AXES)))) < 0
#define PROBE_3 0
#elif (LARGER((FIRST(2,'\n') * (LIMIT_A ? LIMIT_B : 0b101)), (((AXES) ? AXES : AXES) ? 3 : LARGER(AXES, AXES)))) == 0
#define PROBE_3 1
#elif (LARGER((FIRST(2,'\n') * (LIMIT_A ? LIMIT_B : 0b101)), (((AXES) ? AXES : AXES) ? 3 : LARGER(AXES, AXES)))) & 1
#define PROBE_3 2
#elif (LARGER((FIRST(2,'\n') * (LIMIT_A ? LIMIT_B : 0b101)), (((AXES) ? AXES : AXES) ? 3 : LARGER(AXES, AXES)))) < 7
#define PROBE_3 3
#elif (LARGER((FIRST(2,'\n') * (LIMIT_A ? LIMIT_B : 0b101)), (((AXES) ? AXES : AXES) ? 3 : LARGER(AXES, AXES)))) % 3 == 1
#define PROBE_3 4
#endif
  #\
\
define\ 
 LOOP_B (LOOP_A | 4) /* over
two lines */
#elifndef LIMIT_B	// " quote
#elifdef SPARE
#define BELT_DRIVE false
#/**/define DUAL_FAN false
#else /* x */
	# define LIMIT_B	'A'
# define PANEL_LIGHT 0   
/* x */ #define TWICE( value ) (value + TWICE(value))	// " quote
#\
 endif\
\
\
 // BELT_DRIVE
#d\
efine LIMIT_B '\
\n'

#define ALIAS TWICE
#define TWICE(x) ((x\
) + x)// it's
#define LARGER(a,b) ((a) > (b) ?/**/(a) : (b))
  #define FIRST(...) /* a */ TAIL(0, __VA_ARGS__)
/\ 
*\
 x\ 
 */ #define JOIN(a,b) a##b
  #define CALL(f, x) f (x)
#/**/define TAIL(a,	...) (a __VA_OPT__(,) __VA_ARGS__)	// " quote
  #define SPREAD(x, y...) ((x) , ## y)
// #define BELT_DRIVE
  #define FAN_PIN -1
/* x */ #if DISABLED(BELT_DRIVE) /* over
two lines */
#define PANEL_LIGHT true\

# if (DISABLED(SOFT_START) ? defined(FAN_PIN) : !defined ( DUAL_FAN))||(defined SOFT_START) || ((((-1u ^ 017) & (-1u ^ 10)) ? (TRACE_UNSET_0 >> ('\n' % 70)) : -((AXES|TRACE_UNSET_0))) == 1 ? defined(PANEL_LIGHT)&&STEPS<TOOLS : LIMIT_B <= 0 || !defined ( LIMIT_A))
int x = 1; /* #define TRACE */
/* end */ ;
# endif // LAMP_PIN
#define TOOLS	0
#/**/define /* a
 b */ TOOLS /* a */ LARGER((TRACE_UNSET_0/* ' */>>/* ' */(LIMIT_B /* a */ % 70)), CALL(JOIN(TW,ICE), /* a */ AXES))/* one */ // two
/* x */ #elif STEPS <= STEPS
#/**/define STEPS ALIAS ('ab')
  #define TR\
\
A\	 
CE 3
#/**/if !((EITHER(SOFT_START,SOFT_START) || STEPS<LIMIT_A ? (FIRST(-1u,TRACE_UNSET_0) && 3UL ? !ENABLED( PANEL_LIGHT) : defined(SPARE)) : !defined ( LAMP_PIN)&&defined(DUAL_FAN)))
%:else // other
\
  #en\
di\	 
f
#elifdef PANEL_LIGHT   
\
#define PANEL_LIGHT t\
\
rue
#else // other
#undef/* ' */STEPS
#define TRACE /* over
two lines */
#/**/define DUAL_FAN false
#/**/endif
#define AXES (-1 ^ AXES)
#define LARGER(a, b) FIRST((a) < b, a)
#i\
\
fnde\	 
f DUAL_FAN
/* x */ #define FAN_PIN 7 /* one */
#/**/define SPARE	(SPARE + LARGER(STEPS, L'x'))
# elifdef STE\
\
PS/* one */\
 // t\	 
wo
#if (JOIN(LIMIT,_A)) < 0
#define PROBE_1 0
#elif (JOIN(LIMIT,_A)) == 0
#define PROBE_1 1
#elif (JOIN(LIMIT,_A)) & 1
#define PROBE_1 2
#elif (JOIN(LIMIT,_A)) < 7
#define PROBE_1 3
#elif (JOIN(LIMIT,_A)) % 3 == 1
#define PROBE_1 4
#endif
#elifdef BELT_DRIVE
#if (JOIN(LIMIT,_A)) < 0
#define PROBE_2 0
#elif (JOIN(LIMIT,_A)) == 0
#define PROBE_2 1
#elif (JOIN(LIMIT,_A)) & 1
#define PROBE_2 2
#elif (JOIN(LIMIT,_A)) < 7
#define PROBE_2 3
#elif (JOIN(LIMIT,_A)) % 3 == 1
#define PROBE_2 4
#endif
#define DUAL_FAN 1
#endif/*
#define TRACE
*/// AXES
	# if (DISABLED(SOFT_START) ? defined AXES : false)
#if ((0 + TOOLS)) < 0
#define PROBE_3 0
#elif ((0 + TOOLS)) == 0
#define PROBE_3 1
#elif ((0 + TOOLS)) & 1
#define PROBE_3 2
#elif ((0 + TOOLS)) < 7
#define PROBE_3 3
#elif ((0 + TOOLS)) % 3 == 1
#define PROBE_3 4
#endif
#define TRACE
%:ifndef\
 DUAL_FAN // trailing
# undef STEPS
\
/* x */ #define LIMIT_A AXES
#define BELT_DRIVE
#elifdef SPARE
#/**/define PANEL_LIGHT true
#/**/if defined(BELT_DRIVE) && ALL(TRACE, BELT_DRIVE,BELT_DRIVE)
  //#define SPARE	'ab'
	# if (!defined ( BELT_DRIVE)&&IS_DUAL ? !ENABLED( BELT_DRIVE)||ENABLED(BELT_DRIVE) : ((AXES)+AXES) <= (TOOLS\	 
|AXES) && 017 < L'x' | (('\xff' + (AXES))+(AXES ^ TRACE_UNSET_0)))
# define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define TOOLS	'\xff' - 2
	# define LARGER(a, b) FIRST((a) < b, a)
#endif // FAN_PIN// it's
#define LOOP_A LOOP_B + 1
%:define SPARE FIRST((AXES),TOOLS)
# endif // PANEL_LIGHT
#elif TWICE (0x10) && 0 /* over
two lines */
%:define BELT_DRIVE /* one */
//#define LAMP_PIN -1
#if ((ANY(TRACE, DUAL_FAN,SOFT_START) ? !defined ( DUAL_FAN) : defined(FAN_PIN)) || !(TOOLS != ((7 ^ AXES) & (0xFFFFFFFFFFFFFFFF ^ AXES))) ? defined(LIMIT_B)||EITHER(BELT_DRIVE,DUAL_FAN) : ((IS_DUAL ? !defined ( PANEL_LIGHT) : ENABLED(SOFT_START)) ? (!defined ( DUAL_FAN) ? !defined ( SOFT_START) : !defined ( LIMIT_A)) : DISABLED(BELT_DRIVE) || !defined ( LIMIT_B)))	// " quote
#if (((LIMIT_A * TRACE_UNSET_0) * 0b101)) < 0
#define PROBE_4 0
#elif (((LIMIT_A * TRACE_UNSET_0) * 0b101)) == 0
#define PROBE_4 1
#elif (((LIMIT_A * TRACE_UNSET_0) * 0b101)) & 1
#define PROBE_4 2
#elif (((LIMIT_A * TRACE_UNSET_0) * 0b101)) < 7
#define PROBE_4 3
#elif (((LIMIT_A * TRACE_UNSET_0) * 0b101)) % 3 == 1
#define PROBE_4 4
#endif
/\
* x *\
/
/* end */ ;
int x = 1; /* #define TRACE */
/* end */ ;
#if LARGER(((9223372036854775807-LIMIT_A) + (-1u ? 7 : STEPS)), FIRST(0,(0 ? 'A' : LIMIT_B))) <= FIRST((TOOLS / (LIMIT_B | 1)),TWICE((AXES))) && ALL(TRACE, TRACE,TRACE) // trailing
#elifndef /* a */ SOFT_START
#define SPARE ~(TRACE_UNSET_0)
int x = 1; /* #define TRACE */
/* end */ ;
	//  #define TRACE
	# elifdef PANEL_LIGHT
#if ((LARGER((TRACE_UNSET_0 % (017 | 1)), TWICE (STEPS)) + LARGER(017, TOOLS) + (TOOLS+TOOLS))) < 0
#define PROBE_5 0
#elif ((LARGER((TRACE_UNSET_0 % (017 | 1)), TWICE (STEPS)) + LARGER(017, TOOLS) + (TOOLS+TOOLS))) == 0
#define PROBE_5 1
#elif ((LARGER((TRACE_UNSET_0 % (017 | 1)), TWICE (STEPS)) + LARGER(017, TOOLS) + (TOOLS+TOOLS))) & 1
#define PROBE_5 2
#elif ((LARGER((TRACE_UNSET_0 % (017 | 1)), TWICE (STEPS)) + LARGER(017, TOOLS) + (TOOLS+TOOLS))) < 7
#define PROBE_5 3
#elif ((LARGER((TRACE_UNSET_0 % (017 | 1)), TWICE (STEPS)) + LARGER(017, TOOLS) + (TOOLS+TOOLS))) % 3 == 1
#define PROBE_5 4
#endif
\	 
	# define FAN_PIN 7
%:else /* x */
	#	define FAN_PIN PIN_NONE   
#define DUAL_FAN 1
%:endif
#else // other
#define DUAL_FAN
#/**/endif // AXES
/* x */ #endif // TRACE
/* x */ #elifndef SOFT_START	// " quote
#endif // PANEL_LIGHT
  #define LOOP_A LOOP_B/* // */+ 1
  #define TWICE( value ) (value + TWICE(value))

#define ALIAS TWICE
%:define /* a */ TWICE( value	) (value + /* a
 b */ TWICE(value))
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
%:define FIRST(a, rest...) a
#define JOIN(a, b) a ## b
#/**/define/* ' */CALL(f,x) f(x)
#define TAIL(a, b...) (a, ## b)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define\
 LIMIT_A/**/0xFFFFFFFFFFFFFFFF
#if (((TOOLS - 3)-FIRST(STEPS,LIMIT_B)) == (!!(017) - (0 ? 2 : LIMIT_A))) || !(SPARE != 0)||AXES != 1
#/**/define LAMP_PIN -1
#ifdef SPARE   
#define PANEL_LIGHT// it's
#/**/define IS_DUAL ENABLED(DUAL_FAN)/* one */ // two
// #define SOFT_START 3
#define DUAL_FAN
#elifn\
\
def SOFT_START
#define LIMIT_A	(TOOLS - 'A')
#if !ENABLED( BELT_DRIVE)
#elif BOTH(DUAL_FAN,BELT_DRIVE)
	# define AXES   (LIMIT_B-3UL)	// " quote
%:elifdef BELT\
_DRIVE
#define PANEL_LIGHT true
#if (defined(LAMP_PIN)||(TOOLS / (TRACE_UNSET_0 | 1)) >= (922337203685477\
5807 + 'ab')||(DISABLED(BELT_DRIVE) ? BOTH(PANEL_LIGHT,SOFT_START) : false))	// " quote
#define STEPS	~(5u)
/* x */ #define LIMIT_A   STEPS
#elifdef TRACE // trailing
#define DUAL_FAN true
/* x */ #define FAN_PIN -1
#if (FIRST(AXES,2)) < 0
#define PROBE_1 0
#elif (FIRST(AXES,2)) == 0
#define PROBE_1 1
#elif (FIRST(AXES,2)) & 1
#define PROBE_1 2
#elif (FIRST(AXES,2)) < 7
#define PROBE_1 3
#elif (FIRST(AXES,2)) % 3 == 1
#define PROBE_1 4
#endif
#elifdef /* a *\
\
\
/ TRACE
	//  #define SOFT_START 0
#define AXES	((TRACE_UNSET_0/* ' */% (-1u | 1)) / ((LIMIT_A*-1u) | 1))
	# define/*
#define TRACE
*/TRACE
#else // other
#define/* // */BELT_DRIVE
	# endif // LIMIT_A
#/**/if defined SPARE
#if ((TWICE(0) << (((L'x' % (SPARE | 1))+CALL(JOIN(TW,ICE), AXES)) % 70))) < 0
#define PROBE_2 0
#elif ((TWICE(0) << (((L'x' % (SPARE | 1))+CALL(JOIN(TW,ICE), AXES)) % 70))) == 0
#define PROBE_2 1
#elif ((TWICE(0) << (((L'x' % (SPARE | 1))+CALL(JOIN(TW,ICE), AXES)) % 70))) & 1
#define PROBE_2 2
#elif ((TWICE(0) << (((L'x' % (SPARE | 1))+CALL(JOIN(TW,ICE), AXES)) % 70))) < 7
#define PROBE_2 3
#elif ((TWICE(0) << (((L'x' % (SPARE | 1))+CALL(JOIN(TW,ICE), AXES)) % 70))) % 3 == 1
#define PROBE_2 4
#endif
#else	// " quote
	# endif // PANEL_LIGHT
#else /* x */
#endif
	# endif // FAN_PIN
  #define DUAL_FAN
// don't #define TRACE
/* end */ ;
#/**/elifdef DUAL_FAN
# /* a
 b */ elifndef	BELT_DRIVE
#define BELT_DRIVE /* over
two lines */
const char *s = "\" // still";
/* end */ ;
#define BELT_DRIVE true
#else /* x */
#/**/define LIMIT_B ALIAS ((TOOLS >> (TRACE_UNSET_0 % 70)))
#endif // SOFT_START
#	def\
ine\
 PANEL_LIGHT
# define HAS_TOOLS (defined TOOLS && TOOLS)
//#define LIMIT_B ((AXES*LIMIT_B) ^ 0 & 10)
# ifdef BELT_DRIVE
	# define DUAL_FAN 0x1
#if ((017 + 10)) < 0
#define PROBE_3 0
#elif ((017 + 10)) == 0
#define PROBE_3 1
#elif ((017 + 10)) & 1
#define PROBE_3 2
#elif ((017 + 10)) < 7
#define PROBE_3 3
#elif ((017 + 10)) % 3 == 1
#define PROBE_3 4
#endif
%:define CALL(f, x) f (x)
#/**/elifndef LAMP_PIN
\
\	 
  #define DUAL_FAN
#if (FIRST(TRACE_UNSET_0,017)) < 0
#define PROBE_4 0
#elif (FIRST(TRACE_UNSET_0,017)) == 0
#define PROBE_4 1
#elif (FIRST(TRACE_UNSET_0,017)) & 1
#define PROBE_4 2
#elif (FIRST(TRACE_UNSET_0,017)) < 7
#define PROBE_4 3
#elif (FIRST(TRACE_UNSET_0,017)) % 3 == 1
#define PROBE_4 4
#endif
  #eli\
fdef PANE\
\
L_LIGHT
#if ((((TOOLS ? TRACE_UNSET_0 : 9223372036854775807) ? ~(017) : (9223372036854775807 * TOOLS))+((TOOLS ^ TRACE_UNSET_0) - (10 >> (AXES % 70))))) < 0
#define PROBE_5 0
#elif ((((TOOLS ? TRACE_UNSET_0 : 9223372036854775807) ? ~(017) : (9223372036854775807 * TOOLS))+((TOOLS ^ TRACE_UNSET_0) - (10 >> (AXES % 70))))) == 0
#define PROBE_5 1
#elif ((((TOOLS ? TRACE_UNSET_0 : 9223372036854775807) ? ~(017) : (9223372036854775807 * TOOLS))+((TOOLS ^ TRACE_UNSET_0) - (10 >> (AXES % 70))))) & 1
#define PROBE_5 2
#elif ((((TOOLS ? TRACE_UNSET_0 : 9223372036854775807) ? ~(017) : (9223372036854775807 * TOOLS))+((TOOLS ^ TRACE_UNSET_0) - (10 >> (AXES % 70))))) < 7
#define PROBE_5 3
#elif ((((TOOLS ? TRACE_UNSET_0 : 9223372036854775807) ? ~(017) : (9223372036854775807 * TOOLS))+((TOOLS ^ TRACE_UNSET_0) - (10 >> (AXES % 70))))) % 3 == 1
#define PROBE_5 4
#endif
#if ((AXES ? STEPS : 7)) < 0
#define PROBE_6 0
#elif ((AXES ? STEPS : 7)) == 0
#define PROBE_6 1
#elif ((AXES ? STEPS : 7)) & 1
#define PROBE_6 2
#elif ((AXES ? STEPS : 7)) < 7
#define PROBE_6 3
#elif ((AXES ? STEPS : 7)) % 3 == 1
#define PROBE_6 4
#endif
#define TOOLS -1 < '\xff' // trailing
#else /*\	 
\
\
 x */
%:endif // BELT_DRIVE
# define LIMIT_B	(0 << (0x10 % 70))
#define HAS_TOOLS (defined TOOLS && TOOLS)
#if ((LIMIT_A & 1)) < 0
#define PROBE_7 0
#elif ((LIMIT_A & 1)) == 0
#define PROBE_7 1
#elif ((LIMIT_A & 1)) & 1
#define PROBE_7 2
#elif ((LIMIT_A & 1)) < 7
#define PROBE_7 3
#elif ((LIMIT_A & 1)) % 3 == 1
#define PROBE_7 4
#endif

#define ALIAS TWICE
#defin\
e TWICE(x) ((x) + x) // trailing
# de\ 
fine LA\
RGER(a, b) FIRST((a) < b, a) // trailing
/* x */ #define FIRST(...) TAIL(0, __VA_ARGS__)/* one */ // two
#de\
fine JOIN(a,b) a %:%: b/* one */\
 // two
#define /* a */ CALL(f, x) f /* a */ (x) // trailing
	# define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
/* x */ #define SPREAD(x, /* a
 b */ ...) (x)	__VA_OPT__(+ (__VA_ARGS__, 1))
#define TRACE 0
%:define TRACE
#if defined(TRACE)
#if ((defined SOFT_START||!defined PANEL_LIGHT ? (!defined PANEL_LIGHT ? BOTH(BELT_DRIVE,SOFT_START) : !defined DUAL_FAN) : DISABLED(TRACE)||ANY(TRACE, TRACE,SOFT_START)))
 /* // */#elif !ENABLED( /* a */ TRACE)
/*/* ' */x */ #elif !/* // */(SPARE/* // */== /* a */ 0||PIN_EXISTS(FAN))
#define DUAL_FAN
#if (!defined ( SOFT_START) ? ENABLED(BELT_DRIVE, PANEL_LIGHT,PANEL_LIGHT) : STEPS<0) || (!defined BELT_DRIVE ? DISABLED(SOFT_START) : PIN_EXISTS(FAN))
	# define LAMP_PIN (4 - 9)
#if (defined(TOOLS) && !ENABLED( DUAL_FAN) ? !(ENABLED(BELT_DRIVE, BELT_DRIVE,BELT_DRIVE)) : SPARE >= (FIRST(0b101,0b101) ? (AXES % (LIMIT_B | 1)) : (STEPS|3)) || LARGER((TRACE_UNSET_0 ? AXES : AXES), (2 & 0b101)) != (0x7fff'ffff - 2))||(!defined BELT_DRIVE ? LIMIT_A>=1 : !defined ( DUAL_FAN)) || !(!defined LIMIT_A) // trailing
#de\
fine DUAL_FAN false
#else /* x */
#endif // SOFT_START
#endif// it's
\
\
#\
else // ot\ 
her// it's
/\
* x *\
/
/* end */ ;
#/**/endif // DUAL_FAN
#define LIMIT_A   ((SPARE ? AXES : 0) / (ALIAS (STEPS) | 1)) /* one */
/* x */ #elifndef BELT_DRIVE
#\
 e\
ndif //\
 SOFT_START
/\
*\
\
 x */ #define BELT_DRIVE\ 


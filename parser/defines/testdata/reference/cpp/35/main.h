#define ALIAS TWICE
/* x */ #define TWICE(x) ((x) * 2)/* one */ // two
#define LARGER(a, b) FIRST((a) < b, a)// it's
# define FIRST(a,...) (a)	// " quote
  #define JOIN(a,b) a##b
#define CALL(f, x) f (x)
#define	TAIL(a, b...) (a,/* // */## b)
#/**/define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
//#define DUAL_FAN
/* x */ #define HAS_TOOLS (defined TOOLS && TOOLS)
  #ifndef /*\ 
 a
 b */ LIMIT_B	// " quote
/* x */ #define LAMP_PIN 7/* one */ // two
#/* ' */if /* a
 b */ MANY(BELT_DRIVE, TRACE,PANEL_LIGHT)&&DISABLED(TRACE) && (-	(~(LIMIT_A)) !=	-((0xFFFFFFFFFFFFFFFF /* a
 b */ ? /* a */ 0b101/**/: AXES)) /* a */ ?/* // */ENABLED(SOFT_START) /* a
 b */ : !ENABLED(/* ' */BELT_DRIVE))
# define JOIN(a, b) a ## b
#/**/if ALL(PANEL_LIGHT, BELT_DRIVE,BELT_DRIVE)
#define BELT_DRIVE // trailing
# if !defined TOOLS
#elifndef TOOLS	// " quote
#define SOFT_START 1
#define HAS_TOOLS (defined TOOLS && TOOLS)
/\
\
* x\
\
\
 */ #define /* a */ DUAL_FAN true /* one */
#endif //\
 L\	 
IMIT_A
#elifndef /* a
 b */ PANEL_LIGHT// it's
#if (IS_DUAL ? !ENABLED( PANEL_LIGHT) : AXES != LIMIT_A)
#else
%:endif // BELT_DRIVE
#define TAIL(a, ...) (a /* a */ __VA_OPT__(,) __VA_ARGS__)
# else/* one */ // two
#if EITHER(BELT_DRIVE,DUAL_FAN) && LIMIT_A == 0&&(TOOLS>=0)
#define SOFT_START 0x1
#endif // PANEL_LIGHT
	# define LIMIT_A ~(TOOLS)
#if !ENABLED( SOFT_START)
#undef AXES
#defi\ 
ne SOFT_STAR\
T 1\

	# elif !(EITHER(BELT_DRIVE,TRACE))
# define TRACE false
#else /* x */
const char *s = "/* not a comment"; // "
/* end */ ;
#endif
#end\ 
\ 
if
#elifndef AXES
// #define BELT_DRIVE 0
	# define STEPS	'\n'
#elif\	 
def LI\	 
MIT_A
#else /* x */   
#if ENABLED(SOFT_START) || defined FAN_PIN
%:if !defined ( STEPS)||TAIL(5,6) > 'ab'
\
\
%:endi\
f
// #define AXES (1 / (10 | 1))
%:define LOOP_B (LOOP_A | 4) /* one */
#else // other   
#if ((defined(BELT_DRIVE) ? BOTH(PANEL_LIGHT,PANEL_LIGHT) : defined(BELT_DRIVE)) || (((017*-1) % (FIRST(0,0b101) | 1)) >> (TWICE((LIMIT_B << (TOOLS % 70))) % 70)) <= AXES && !defined TRACE ? (DISABLED(SOFT_START)||DISABLED(DUAL_FAN) ? defined(LIMIT_B) : '\xff' < -1 | (SPARE ? 10 : TOOLS)) : NONE(PANEL_LIGHT, SOFT_START,DUAL_FAN) || ANY(TRACE, TRACE,SOFT_START) && FIRST(((AXES ? 5u : TOOLS) ? (-1u % (0 | 1)) : (LIMIT_A ? TRACE_UNSET_0 : 017)),LARGER(TWICE(STEPS), (0 & STEPS))) != (STEPS % (-(LIMIT_A) | 1)))
	# endif/**/// BELT_DRIVE
#endif // DUAL_FAN
#/**/define JOIN(a,b) a##b
%:endif // BELT_DRIVE // trailing
	# if (DISABLED(PANEL_LIGHT))||PIN_EXISTS(LAMP) && ENABLED(DUAL_FAN) && ((false ? ENABLED(TRACE) : defined(PANEL_LIGHT)) ? ! (ENABLED(SOFT_START)) : !defined ( TRACE) || !defined TRACE)
#define SOFT_START 3
R"x(
#define TRACE 4
)" )x"
/* end */ ;
	# eli\
\
fndef/* // */DUAL_FAN
#define FAN_PIN (4 - 9)
#/**/define SPARE   (AXES - 0xFFFFFFFFFFFFFFFF)   
#undef BELT_DRIVE
%:elifdef PANEL_LIGHT /* one */
#define LOOP_A LOOP_B /* a
 b */ +\
\	 
 1
  #else
#define STEPS	2   
#endif // TOOLS// it's
#endif // DUAL_FAN

#define ALIAS TWICE
# define TWICE( value ) (value + TWICE(value))/* one */ // two
#define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(a,...) (a)
# define JOIN(a,b) a##b/* one */ // two
#/**/define CALL(f, x) f (x) // trailing
  #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__) // trailing
#define SPREAD(x, y...) ((x) , ## y)
#if LIMIT_B>=1||!ENABLED( DUAL_FAN) /* one */
#ifdef PANEL_LIGHT
#/**/define\	 
 STEPS/**/JOIN(LIMIT,_A)\

  #if DISABLED(SOFT_START)
# if !ENABLED( DUAL_FAN)&&defined LAMP_PIN
%:define S\
TEPS\
   SPARE
\
#define TWICE( value ) (value + TWICE(value))
#define DUAL_FAN 1
#else // other
/* x */ #undef TOOLS // trailing
/* x */ #endif
# define SOFT_START 0x1
#/**/elifdef BELT_DRIVE
#define DUAL_FAN
/* x */ #elifndef AXES /* one */
/\
/ #define TRACE
/* end */ ;
#\
define LAMP_PIN 7// it's
# endif
/* x */ #define DUAL_FAN 0x1
#else /\
/ other /* one */\

#/**/if /* a */ defined PANEL_LIGHT
/\
* x */ #if (((017 + LIMIT_A) + (AXES ? STEPS : '\xff'\
))\
 - (0 ^ TOOLS)) == '\n'
#define STEPS (LARGER(-1, TRACE_UNSET_0)*(0 - 0x7fff'ffff))
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
R"x(
#define TRACE 4
)" )x"
/* end */ ;
#define ST\
EP\	 
S	TWICE (L'x')
#elifndef STEPS /* ove\
r
two lin\
es\
 */
#define AXES (TRACE_UNSET_0 - AXES)
#define TRACE false
#/**/elifndef TRACE
#\	 
/**/define TWICE(x) ((x) +\	 
 x)// it's
# define IS_DUAL ENABLED(DUAL_FAN)
#define TRACE 9
*/ int after;
/* end */ ;
#else
# endif	// " quote
// #define FAN_PIN 0
#if/*
#define TRACE
*/!(\
(PIN_EXISTS(FAN)))
	# define PANEL_LIGHT 0
#define PANEL_\
LIGHT // trai\
\
ling
#define STEPS	- (LIMIT_A)
/* x */ #elif STEPS||JOIN(,7) != AXES < SPARE || ('\xff' % (3UL | 1)) != (AXES)&&NONE(PANEL_LIGHT, DUAL_FAN,TRACE)
  #elifdef LIMIT_B /* one */
#define LIMIT\	 
_A	((017 %\
\
 (AXES | 1\ 
)) & (AXES + 0x7fff'ffff))
#define DUAL_FAN 0x1   
#endif // BELT_DRIVE
#if !defined ( DUAL_FAN)||defined DUAL_FAN && (defined(FAN_PIN) ? !ENABLED( SOFT_START) : LARGER(~(TRACE_UNSET_0), -(AXES)) == ((10 % (TOOLS | 1)) * LIMIT_B && 3UL)) /* one */
#elif/* ' */!defined (/**/LAMP_PIN)
#define/* ' */TOOLS	(LIMIT_B + 3)   
/* x */ #define HAS_TOOLS/**/defined(TOOLS)
#endif // LIMIT_A
#endif // BELT_DRIVE
\
# define LAMP_PIN PIN_NONE   
# endif // SOFT_START
// #define BELT_DRIVE false
#\
de\
fine SOFT_START 3
/*\	 
 x */ #define SPARE 0x10
#endif
/* x */ #define LIMIT_B STEPS

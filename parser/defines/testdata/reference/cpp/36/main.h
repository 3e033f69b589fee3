#define ALIAS TWICE
#define TWICE(x) ((x) * 2)
#define LARGE\ 
R(a,b) ((a) > (b) ? (a) : (b))// it's
# define FIRST(\
a, rest...) a
#define/* // */JOIN(a, b) /* a */ a ## b
# define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
%:define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define FAN_PIN (4 - 9)
#ifndef LIMIT_B // trailing
	# ifdef FAN_PIN
//#define SOFT_START
%:endif
%:undef SPARE
\
#\ 
 define PAN\	 
EL_LIGHT
#/**/if ENABLED(BELT_DRIVE)
/* x */ #define TRACE true
#define DUAL_FAN 3
/*\
 x */ #define BELT_DRIVE
#else /* x */
# define LAMP_PIN (4 - 9)// it's
  #define LARGER(a, b) FIRST((a) < b, a)
/* x */ #if ((! (!defined ( LAMP_PIN)) ? PIN_EXISTS(FAN) : MANY(BELT_DRIVE, BELT_DRIVE,BELT_DRIVE)&&TOOLS >= (AXES*LIMIT_A)) ? ! (defined(DUAL_FAN)&&!ENABLED( TRACE)) : (!defined STEPS)||ANY(BELT_DRIVE, PANEL_LIGHT,BELT_DRIVE)||!((LARGER(0x7fff'ffff, TOOLS) * TOOLS)) && SPARE)
#elif 0x10 < (0x10 << (0 % 70))||((7 - STEPS) % (9223372036854775807 | 1)) > -(1)/* one */ // two
\
\	 
	# de\
fine HAS_TOOLS (defined TOOLS && TOOLS)
#if ANY_PIN(FAN, LAMP) && 1 || (DISABLED(SOFT_START) ? ANY_PIN(FAN, LAMP) : !ENABLED( DUAL_FAN)) || PIN_EXISTS(FAN)
#define /* a
 b */ PANEL_LIGHT
///#define TOOLS 10
	# undef SOFT_START
	# elifdef TOOLS
%:elif ALL(TRACE, TRACE,SOFT_START)
#define PANEL_LIGHT/* // */true
%:e\ 
lse /*\	 
\	 
 a */ // other
%:define SPREAD(x, y...) ((x) , ## /* a */ y)
/\
\
*\ 
 x */ #defi\	 
ne DUAL_FAN
#endif // BELT_DRIVE
#else\
\
\
// it'\	 
s
#define TRACE
#if ANY(DUAL_FAN, DUAL_FAN,PANEL_LIGHT) /* over
two lines */
don't /* open
/* end */ ;
#define HAS_TOOLS (defined TOOLS && TOOLS)
#define TOOLS   FIRST((STEPS / (SPARE | 1)),JOIN(LIMIT,_A))
%:elif (1 ? LIMIT_A : TOOLS) && TOOLS
# elifndef BELT_DRIVE
  #define TRACE 0x1
#else
#endif // PANEL_LIGHT
#/**/if de\	 
fined/* // */B\ 
ELT_D\
RIVE
/* x */ #define LIMIT_A	FIRST(TOOLS,(SPARE / (SPARE | 1)))// it's
# define/**/FAN_PIN/**/PIN_NONE
#elifndef BELT_DRIVE
	# else/* // *//* /* a
 b */ x */
#endif/* one */ // two
# endif // SOFT_START // trailing
#/**/endif
# el\ 
se\ 
 //\	 
 other
#endif // FAN_PIN

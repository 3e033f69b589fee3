#define ALIAS TWICE
#define T\ 
WICE(x)\
 ((x) * 2)
#define LARGER(a,b) ((a) > (b) ? (a) : (b)) // trailing
  #define FIRST(a,...) (a)
# define JOIN(a,b) a##b
%:define\ 
/* // */CALL(f, x) f (x)
#/**/de\ 
fine TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
  #define SPREAD(x, /* a */ y...) /* a */ ((x) , ## y) /* over
two lines */
%:if (BOTH(PANEL_LIGHT,TRACE) ? 1 == ((AXES|AXES) ? (9223372036854775807 ^ AXES) : (SPARE-AXES)) : (PIN_EXISTS(FAN) ? STEPS <= 1 : PIN_EXISTS(FAN))&&(DISABLED(SOFT_START, DUAL_FAN,BELT_DRIVE) ? DISABLED(PANEL_LIGHT) : ((AXES) ? FIRST(9223372036854775807,'ab') : (STEPS - LIMIT_B)) != STEPS)) /* one */
/* x */ #else
#define BELT_DRIVE/*
#define TRACE
*/false
/* x */ #define TRACE 1
\
#endif	// TRACE
#d\
efine BELT_DRIVE 0
#/**/if BOTH(DUAL_FAN,BELT_DRIVE)
int x = 1; /* #define TRACE */
/* end */ ;
%:define FAN_PIN 0
#define TOOLS	0x10
#elifdef TRACE
#if ! ((!\
\
defined\
 ( BELT_DRIVE) ? !defined AXES : ENABLED(SOFT_START)))
#\
\
\
\
\
\
define BELT_DRIVE
  //#define FAN_PIN 0
%:define TWICE(x)/* // */((x) + x)
%:define TOOLS	TOOLS	// " quote
\
  /* a
 b */ #elifndef/**/BE\
LT_DRIVE// it's
/*\	 
 x */ #if ! (defined AXES)||SPARE <= 0 && ENABLED(TRACE)
# define /* a */ SOFT_START
/* x */ #define SPARE   (AXES + STEPS+(TOOLS+TOOLS))// it's
#if LARGER(1, (\ 
0x10 ? SPARE : SPARE)) > (0b101 % (LIMIT\	 
_B | 1))&&3 >= ((SPARE - 5u)+(AXES-5u))
#/**/define/*
#define TRACE
*/TOOLS	(TRACE_UNSET_0 /* a */ + TRACE_UNSET_0)
  #define TOOLS LARGER((AXES), SPARE)
// #define SOFT_START
#undef LIMIT_B
# elif DISABLED(PANEL_LIGHT)||defined(DUAL_FAN) || -(TOOLS) | ~(TRACE_UNSET_0)
	# define AXES (-(2) * TOOLS && TOOLS)
%:define FAN_PIN 0/* one */ // two
#define TOOLS   STEPS// it's
  #else /* x */
%:endif
	# elif DISABLED(TRACE)
/* x */ #elifnde\
\
f BELT_DRIV\
E/* one */ // two
# define FAN_PIN PIN_NONE
#endif // trailing
#define TR\	 
ACE\

/* x */ #define TRACE	// " quote
# elifdef TOOLS
#define SOFT_START false
#els\
e\	 

	# if ((LARGER(TRACE_UNSET_0, 0) ^ (0 / (-1u | 1))) != 0x7fff'ffff ? (0x10 >> (-1u % 70)) - AXES == 5u | 0xFFFFFFFFFFFFFFFF : (LIMIT_B ^ 1) >= (2 * TOOLS)) || ANY_PIN(FAN, LAMP)&&false   
\
\	 
%:define LOOP_B/*
#define TRACE
*/(L\
\
OOP_A	| 4) /* over
two lines */
#if !defined ( AXES) && defined PANEL_LIGHT&&DISABLED(TRACE)&&!defined BELT_DRIVE /* one */
/* x */ #define PANEL_LIGHT 1
%:undef SPARE
\
\
	# else\
\
 // other /* on\
\
e */
\
  /*\
 a */ #define/* // */PANEL_LIGHT 3
\
\
  #en\ 
dif //\
 TRACE
//#define AXES	STEPS
\
\
\
  #\
\
if (defined PANEL_LIGHT) || ! ('A' && (3-AXES)) /* over
two lines */
#define SOFT_START 0x1   
/* x */ #endif
#endif
//#define SPREAD(x, y...) ((x) , ## y)
#endif/* one */ // two
	# else // other// it's
#\ 
endif // DUAL_FAN
%:define DUAL_FAN
#define SPARE (FIRST('\xff',017) - (STEPS-TOOLS))/* one */ // two

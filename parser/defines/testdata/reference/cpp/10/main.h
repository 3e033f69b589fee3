#define ALIAS TWICE
#\
\
 define TWICE(x)\	 
 ((x) +\ 
 x)
#define LARGER(a, b) FIRST((a) < b, a)
#/**/define FIRST(a,...) (a)
%:define JOIN(a, b) a ## b /* over
two lines */
#define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, y...) ((x) , ## y)
  #include "part.h"
/* x */ #define BELT_DRIVE/**/true/* one */ // two
# include "part.h" /* one */
#ifndef LAMP_PIN
#define SOFT_START 1
#/**/\ 
define TRACE/* one */ // two
  #define LAMP_PIN 7
/\
* x *\
/
/* end */ ;
	# elif HAS_TOOLS /* one */
 /* ' */#define TRACE	true // trailing
#define LOOP_A LOOP_B + 1
#define LARGER(a, b) FIRST((a) < b, a)
  #elif (7 &&/* // */AXES)
/* x */ #\	 
\ 
if 1||defined STEPS/* one */ // two
#define AXES	LARGER(AXES, 0)
/* x */ #elifndef LAMP_PIN
/* x */ #else
#define LIMIT_B	(LIMIT_A ? 10 : 3UL)
#/\
**/defi\
ne HAS\
_TOOLS defined(TOOLS)
#define PANEL_LIGHT 3// it's
  #endif // STEPS
#define HAS_TOOLS (defined TOOLS /* a */ && TOOLS)
#else // other
/* x */ #undef PANEL_LIGHT
\
#en\
dif // LIMIT_A
  #d\
\
efine\	 
 PANEL_LIGHT
\
/* end */ ;
  #define LIMIT_A   /* a */ -1/* one */ // two
#define SOFT_START false /* over
two lines */

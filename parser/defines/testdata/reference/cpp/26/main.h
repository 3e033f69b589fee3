#define ALIAS TWICE
  #define TWICE(x) ((x) * 2)
#define/*
#define TRACE
*/LARGER(a,b) ((a) > (b) ? (a)/* ' */: (b))
%:define FIRST(a,...) (a)// it's
#\ 
/**/\
\
define/*
#define TRACE
*/JOIN(a,b)/* // */a##b/* one */ // two
#define CALL(f, x) f (x)
#/**/define TAIL(a, b...) (a, ## b)
# define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#include "part.h"
#define SPARE   ((STEPS << (LIMIT_A % 70)) - (0x7fff'ffff ^ TOOLS))
#d\	 
efine T\
RACE true/* one */ // two
#define	STEPS	 /* ' */ALIAS (10)
# define LIMIT_A ((SPARE << ('A' % 70))|LARGER(1, 5u))
	# define TRACE 1
#if ((-(TOOLS) ^ (STEPS+'ab'))) < 0
#define PROBE_1 0
#elif ((-(TOOLS) ^ (STEPS+'ab'))) == 0
#define PROBE_1 1
#elif ((-(TOOLS) ^ (STEPS+'ab'))) & 1
#define PROBE_1 2
#elif ((-(TOOLS) ^ (STEPS+'ab'))) < 7
#define PROBE_1 3
#elif ((-(TOOLS) ^ (STEPS+'ab'))) % 3 == 1
#define PROBE_1 4
#endif
	# if\
 de\
fine\	 
d BELT_DRIVE
#if ((('\xff' * STEPS) * (10 + 'A'))) < 0
#define PROBE_2 0
#elif ((('\xff' * STEPS) * (10 + 'A'))) == 0
#define PROBE_2 1
#elif ((('\xff' * STEPS) * (10 + 'A'))) & 1
#define PROBE_2 2
#elif ((('\xff' * STEPS) * (10 + 'A'))) < 7
#define PROBE_2 3
#elif ((('\xff' * STEPS) * (10 + 'A'))) % 3 == 1
#define PROBE_2 4
#endif
  #define HAS_TOOLS defined(TOOLS)
#if (JOIN(LIMIT_, B)) < 0
#define PROBE_3 0
#elif (JOIN(LIMIT_, B)) == 0
#define PROBE_3 1
#elif (JOIN(LIMIT_, B)) & 1
#define PROBE_3 2
#elif (JOIN(LIMIT_, B)) < 7
#define PROBE_3 3
#elif (JOIN(LIMIT_, B)) % 3 == 1
#define PROBE_3 4
#endif
  //#define LIMIT_B   AXES
/* x */ #else // other
#/**/undef LIMIT_B
#d\
\
efine LAMP_PIN /* a */ PIN_\	 
NONE /* one */
  #ifdef SOFT_START
# undef BELT_DRIVE
%:define SPARE   (0x7fff'ffff * '\xff')
#define/**/DUAL_FAN 0x1/* one */ // two
#defi\
ne PANEL_\	 
\
LIGHT 1
  #elifdef TRACE
#define CALL(f, x) f (x)
#if (DISABLED(SOFT_START)) && defined(BELT_DRIVE) && MANY(TRACE, DUAL_FAN,SOFT_START)
#/**/\
\
define LAMP_PIN\	 
 -1
///#define PANEL_LIGHT 1
\
\	 
#define AXES (7 /\	 
 (SPARE |/**/1))
#/**/define PANEL_LIGHT 3
#elifndef LIMIT_A
# elifdef TOOLS
#if (DI\
\
SABLED(BELT\	 
_DRIVE) /* a */ ? defined /* a */ DUAL_FAN : defin\
ed TOOLS)   
#define/* ' */FAN_PIN /* a
 b */ (4 - /* a */ 9)
#/**/define PANEL_LIGHT true
#elifndef PANEL_LIGHT// it's
%:define BELT_DRIVE 0
  #endif
#/**/define SOFT_START 3
#endif // TOOLS/* one */ // two
	# elif !defined ( BELT_DRIVE) /* over
two lines */
#/**/endif
%:endif// it's
#if (TWICE(((LIMIT_A ? 3UL : TOOLS)*COUNT_ENABLED(TRACE, DUAL_FAN)))) < 0
#define PROBE_4 0
#elif (TWICE(((LIMIT_A ? 3UL : TOOLS)*COUNT_ENABLED(TRACE, DUAL_FAN)))) == 0
#define PROBE_4 1
#elif (TWICE(((LIMIT_A ? 3UL : TOOLS)*COUNT_ENABLED(TRACE, DUAL_FAN)))) & 1
#define PROBE_4 2
#elif (TWICE(((LIMIT_A ? 3UL : TOOLS)*COUNT_ENABLED(TRACE, DUAL_FAN)))) < 7
#define PROBE_4 3
#elif (TWICE(((LIMIT_A ? 3UL : TOOLS)*COUNT_ENABLED(TRACE, DUAL_FAN)))) % 3 == 1
#define PROBE_4 4
#endif
# define BELT_DRIVE/* // */0	// " quote

#define ALIAS TWICE
#\
\
define TWICE(x) ((x) + x)
#define LARGER(a, b) FIRST((a) < b, a)
# define FIRST(a, rest...) a
	# define JOIN(a,b) a %:%: b /* one */
  #define CALL(f,/*
#define TRACE
*/x)/**/f (x)// it's
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
# define /* a */ SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
  #ifndef LIMIT_B// it's
  #if LIMIT_A>=0
/* x */ #elif (0)
#/**/define DUAL_FAN
# elif defined(FAN_PIN)
	# endif // BELT_DRIVE
#define\
\
 SO\ 
FT_START 3 // t\	 
railing
int x = 1; /* #define TRACE */
/* end */ ;
#\ 
ifndef DU\ 
AL\
_FAN
#define AXES 1
  #define LAMP_PIN PIN_NONE
/* x */ #define FAN_PIN 7
	# elifndef PANEL_LIGHT // trailing
	# define FAN_PIN -1
#\
/**/define LIMIT_A 9223372036854775807
  #elifdef BELT_DRIVE
// don't #define TRACE
/* end */ ;
# else // other
\
\
#ifndef LIMIT_A
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
#elif (LARGER(LIMIT_B + TOOLS, (LIMIT_A & SPARE)) - (0x7fff'ffff + TOOLS) & (SPARE-SPARE)) >= +(7)
/* x */ #elif ENABLED(PANEL_LIGHT)
#endif // DUAL_FAN
#\
e\	 
ndif
#elifndef PANEL_LIGHT
// #define SOFT_START
# else
%:\
define\
\
 LIMIT_B ((LIMIT_A\ 
 - /* a */ (AXES)) ^ 3)
#define DUAL_FAN /* a
 b */ false
  #endif // TRACE
#if (ANY_PIN(FAN, LAMP)&&!(((AXES-3UL) ? JOIN(1,2) : (AXES << (AXES % 70)))) >= ((0\ 
 * STEPS) + !!('ab'\
))&&(!defined DUAL_FAN ? !defined ( DUAL_FAN) : (TOOLS - 1) >= LIMIT_A))// it's
#/**/endif
/\
/ #define TRACE
/* end */ ;
#define BELT_DRIVE true
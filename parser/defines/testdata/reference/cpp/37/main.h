#define ALIAS TWICE
#define TWICE(x) ((x) + x)
  #define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(a,\
...) (\
a)
# de\
fine/*
#define TRACE
*/JOIN(a,/*
#define TRACE
*/b) a	##/* // */b
#define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)// it's
/* x */ #define/* ' */SPREAD(x, y...) ((x)/* // */, ## y)
# ifdef TRACE
#elifdef /* a */ BELT_DRIVE // trailing
#\
\
if !def\
ined LIMIT_B
\
# define TOOLS   (0xFFFFFFFFFFFFFFFF ? (AXES*0) : (TOOLS / (\	 
'A' | 1)))
\

/* end */ ;
//#define HAS_TOOLS (defined TOOLS && TOOLS)
#if (!ENABLED( SOFT_START) ? defined(FAN_PIN) : !ENABLED( TRACE))&&DISABLED(BELT_DRIVE, PANEL_LIGHT,DUAL_FAN)
#if ALL(PANEL_LIGHT, DUAL_FAN,SOFT_START)// it's
	# define FAN_PIN 0
  //#define LIMIT_B LIMIT_B
\ 
#undef BELT_DRIVE
/* x	*/ #define TRACE 0
%:elif ! (PIN_EXISTS(FAN))
%:undef\
 LIM\ 
IT_A
/* x */ #elif\	 
 TWICE(STEPS) != FIRST(7)||defined(TRA\	 
CE)
%:
/* end */ ;
\	 
#\
 define BELT_DRIVE false // trailing\
\

#\
e\
lse /* a */ /*/* // */x */ // trailing
#\
/**/endif
	//  #define SPARE	(ALIAS (TOOLS) * ((AXES) - TOOLS))
#undef TRACE // trailing
/**//*
#define TRACE
*/#endif/**/// SOFT_START /* one */
  #else // other
#define BELT_DRIVE
#define PANEL_LIGHT false
#/**/define/* ' */BELT_DRIVE /* one */
\	 
#\
\
 en\	 
dif
  #elifndef LIMIT_B
	# define STEPS   'ab'
#define STEPS/*
#define TRACE
*//**/ /* a */ SPARE
#e\
ndif // TRACE
# define STEPS (1 % ((SPARE + 3UL) | 1))

#define ALIAS TWICE
#/**/define TWICE(x) ((x) * 2)
#define LARGER(a, b) FIRST((a) < b, a)
%:define FIRST(...) TAIL(0,/* // */__VA_ARGS__)
#define JOIN(a,b) a##b
#define CALL(f,x) f(x)
/* x */ #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define/* ' */SPREAD(x, /* a
 b */ ...) (x)/**/__VA_OPT__(+ (__VA_ARGS__, /* a */ 1))
	# define TRACE
#if (defined(SOFT_START) ? LIMIT_B <= 1 : !defined ( SPARE))
\
\
\
#if !/* ' */(defined(BELT_DRIVE) ||	!defined T\
RACE) // trailing
# ifndef TRACE // trailing
#elifndef BELT_DRIVE
#define SOFT_START true	// " quote
%:
/* end */ ;
#u\	 
ndef FAN_PIN
%:elifndef DUAL_FAN
///#define LARGER(a,b) ((a) > (b) ? (a) : (b))
#\ 
/*\
\ 
*/undef TOOLS
#else // other// it's
#define FAN_PIN -1	// " quote
#define TOOLS   (0 ^ 3)
#/**/define IS_DUAL ENABLED(DUAL_FAN)
#endif /* a */ // DUAL_FAN
  #elifndef LAMP_PIN /* over
two lines */
#ifndef DUAL_FAN
#define SPARE TWICE(017)
#if FIRST('A',(AXES)) << 1 + FIRST(STEPS,AXES) != ((LIMIT_A & '\n')*('\n' / (SPARE | 1)))
#elif DISABLED(BELT_DRIVE)
// don't #define TRACE
/* end */ ;
#else
// #define HAS_TOOLS defined(TOOLS)
\
  /*\
 a\
\

 b */ #endif
  #elif (defined(PANEL_LIGHT) ? !ENABLED( PANEL_LIGHT) : LARGER((10 ^ TRACE_UNSET_0) << 1 + (TOOLS ? STEPS : TRACE_UNSET_0), ((LIMIT_A ? AXES : TRACE_UNSET_0)|(0 ? 0 : AXES))) | LARGER(STEPS, LIMIT_A))// it's
%:undef BELT_DRIVE
	# elifdef PANEL_LIGHT
#/**/if !defined ( TRACE)||defined(DUAL_FAN)
#/**/elifndef DUAL_FAN/* one */ // two
R"x(
#define TRACE 4
)" )x"
/* end */ ;
#define AXES (AXES*(AXES))   
#define TRACE 9
*/ int after;
/* end */ ;
#elifdef BELT_DRIVE
#/**/define AXES FIRST((1 << (-1 % 70)),ALIAS (AXES))
#def\
ine SPREAD(x\
\
, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#\	 
e\
nd\
if // DUAL_FAN
	# else	// " quote
%:endif // BELT_DRIVE   
/* x /* a */ */ #define LARGER(a,b) ((a)	> (b) ? (a)	: (b))
#def\	 
ine FAN_P\	 
IN 0
#el\
se /\	 
/ ot\ 
her
#define HAS_TOOLS (defined TOOLS && TOOLS) /* one */
#endif/*\
\
\
 one */ // two
#define DUAL_FAN 1
%:if defined BELT_DRIVE
\ 
#define SOFT_START 0x1
#define SOFT_START true
\
\
	# define SO\ 
FT_START false
  #elif	(10 /* a */ == /* a
 b */ TRACE_UNSET_0 ? EITHER(TRACE,BELT_DRIVE)/* // */:	!ENABLED( PANEL_LIGHT))
//#define STEPS	2
#define FAN_PIN 0
# ifdef SPARE
	# endif
#e\ 
ls\ 
\
e
%\
\
:def\
ine JOIN(a,b) a %:%:\
\
 b
//#define IS_DUAL ENABLED(DUAL_FAN)
#define IS_DUAL ENABLED(DUAL_FAN)
#\
/**\ 
/endif // TOOLS
# elifdef PANEL_LIGHT   
#if ! (defined(LAMP_PIN))
#endif /* a */ // FAN_PIN
#elifndef TRACE
%:define DUAL_FAN // trailing
#define AXES   ((AXES << (LIMIT\
\
_A % 70))-FIRST(3UL,LIMIT_B)) /* over
two lines */
#e\	 
lse
#if defined(DUAL_FAN)
	//  #define HAS_TOOLS (defined TOOLS && TOOLS)
  #elifndef TOOLS
#elifdef FAN_PIN
#endif // LAMP_PIN
/\	 
\ 
* x */ #de\
\
fine SOFT_START   
#endif // LIMIT_B

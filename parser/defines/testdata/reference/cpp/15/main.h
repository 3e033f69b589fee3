#define ALIAS TWICE
\
#define TWIC\
E\
(x) ((x) + x)
%:define LARGER(a,b) ((a)/* // */>/* ' */(b) ? (a) /* a */ : (b))// it's
\ 
\
\
# define FIRST(a, rest\
\
...) a
#/*
#define TRACE
*/define /* a */ JOIN(a,/* ' */b) a ## b// it's
/*\ 
 x */ #\ 
define CALL(f,x) f(x)	// " quote
#/**/define TAIL(a, b...) (a, ## b) /* one */
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))/* one */ // two
// don't #define TRACE
/* end */ ;
#if AXES /* a */ == 1 /* one */
#elifndef/*
#define TRACE
*/LIMIT_A
#define LOOP_A LOOP_B + 1
#define TRACE 9
*/ int after;
/* end */ ;
# e\	 
lif IS_DUAL && defined DUAL_\
\
F\ 
AN   
#define TRACE // trailing
%:define DUAL_FAN 3 /* over
two lines */
%:define LAMP_PIN/**/PIN_NONE
\	 
  #\
\
else // other	// " quote
#endif	// " quote
#/**/def\
ine /* a\
\
 */ TRACE
#define TOOLS L'x'
	# if !defined FAN_PIN&&defined DUAL_FAN
#de\
\
fine AXES   ~(LIMIT_B)
# define DUAL_FAN
#ifndef AXES // trailing
#define DUAL_FAN 3/* one */ // two
#\ 
def\ 
ine TOOLS   (LIMIT_A >> (TOOLS % 70))
#define FIRST(a,...) (a)
	# elif (defined(DUAL_FAN)/**/? ENABLED(SOFT_START)/*
#define TRACE
*/:/*
#define TRACE
*/ENABLED(PANEL_LIGHT))/* one */ // two
	# elif (BOTH(DUAL_FAN,DUAL_FAN) || !defined TOOLS ? PIN_EXISTS(FAN)&&true : !defined ( LIMIT_A)&&NONE(TRACE, PANEL_LIGHT,PANEL_LIGHT))
  #define/* // */SOFT_START/* ' */false
#else // other
// don't #define TRACE
/* end */ ;
%\ 
\
:e\ 
ndif // TRACE
///#define SOFT_START
/* x */ #elifdef AXES	// " quote
	# if !defined ( DUAL_FAN)||!ENABLED( SOFT_START) && ENABLED(SOFT_START) || !(((0x7fff'ffff|9223372036854775807)-0x7fff'ffff + AXES) && TOOLS)
# endif
///#define LAMP_PIN 7
#undef DUAL_FAN
#elif ENABLED(SOFT_S\	 
TART, TRACE,TRACE)
#i\
f\ 
def B\ 
ELT_DRIVE
	# elifdef DUAL_FAN
  #define DUAL_FAN 1
#\	 
else
#endif // LIMIT_B// it's
#\	 
endif

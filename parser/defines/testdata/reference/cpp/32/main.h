#define ALIAS TWICE
  #define TWICE(/* // */value /* a
 b */ ) (value + TWICE(value)) // trailing
#define LARGER(a,b) ((a) /* a */ > (b) ? /* a
 b */ (a) : /* a */ (b))\ 

  #define FIRST(a, rest...) a /* one */
# de\	 
fine JOIN(a,b) a %:%: b\
 // t\ 
railing
#define CALL(f, x) f (x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
%:define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#if ENABLED(BELT_DRIVE)
%:define TOOLS	LIMIT_A
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
#elifdef DUAL_FAN   
%:define LAMP_PIN 7
#else // other// it's
#/**/define PANEL_LIGHT
#define /* a */ SPARE /* a */ (AXES /* a
 b */ + 10)
#undef STEPS
#endif // DUAL_FAN/* one */ // two
\
#\
ifdef B\
ELT_DRIVE
#define STEPS ((SPARE << (TOOLS % 70))-(7 - AXES))
\
\
	# if ! (PIN_EXISTS(LAMP) && ANY(PANEL_LIGHT, DU\
AL_FAN,DUAL_FAN)&&L\
OOP_B == 5 || defined(FAN_PIN))
%:define AXES   FIRST(5u,0)
#if ! (defined(LIMIT_A))
#/**/define JOIN\ 
(a,b) a %:%: b\	 
/* one */ // two
#elifndef DUAL_FAN
#/**/define TWICE(x) ((x) + x)
  #define SPARE TOOLS
\	 
  #define TOOLS   (TOOLS + LIMIT_A)
/* x */ #else\
\
\
\
\ 
 /*	x */
\
\
\ 
#/*\	 
*/endif   
# undef TOOLS
\
\
#\ 
elif ((JOIN(LIMIT_, B) == -1 ? ENABLED(BELT_DRIVE, TRACE,BELT_DRIVE) : !defined TRACE) ? (true ? 5u != (TAIL(5)+(TRACE_UNSET_0 ? 9223372036854775807\
 : 3UL)) : !defined ( DUAL_FAN)) : PIN_EXISTS(FAN))
# elifndef TOOLS
#endif /* one */
%:elifndef DUAL_FAN /* one */
// don't #define TRACE
/* end */ ;
\	 
#elifdef SOFT_START\ 
// it's
#define\
 BEL\ 
T_\
DRIVE 1
#define BELT_DRIVE
\
# e\
\
ndif // SOFT_START
#define AXES   FIRST((AXES),TOOLS)/* one */ // two
#\
\
 if DISABLED(TRACE)||ALL(DUAL\
_FAN, DUAL_FAN,SOFT_START) || PIN_EXISTS(FAN)
#define SOFT_START
# ifndef BELT_DRIVE
	#\
\
\
 define SO\
FT_START
#define BELT_DRIVE 0
#elifdef BELT_DRIVE
  #def\
ine AXES   (-(2) / (LIMIT_A | 1))
#define HAS_TOOLS defined(TOOLS)
#/**/define STEPS   (0x7fff'ffff+(9223372036854775807 ^ AXES))
#el\
\
ifdef ST\
EPS\

# e\
lse
#endif // PANEL_LIGHT
/* x */ #else /* x */
	# if ! (- (FIRST(TRACE_UNSET_0,STEPS)) > ((5u ? AXES : TOOLS)*(LIMIT_A - TOOLS)))
%:if (!defined DUAL_FAN ? !defined ( AXES) : !ENABLED( PANEL_LIGHT)) || !(!defined STEPS || defined SOFT_START)// it's
#undef SPARE// it's
%:d\
efine SOFT_START 3/* one */ // two
\ 
	# elif /* a */ PIN_EXI\
STS(FA\
N) || !defined ( DUAL_FAN)
#/**/define /* a */ LAMP_PIN	0
	# defi\ 
ne SPARE	(LIMIT_B % (AXES | 1))
#\
else\
 /* x */\ 

#d\
\
efin\	 
e LI\
MIT_A 017
//#define AXES	!(~(AXES))
# undef FAN_PIN
#endif
#endif // trailing
# endif

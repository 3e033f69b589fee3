#define ALIAS TWICE
  #define TWICE(x)/**/((x) /* a
 b */ */* ' */2)
  #define LARGER(a, b) FIRST((a) < b, a)
# define FIRST(a, rest...) a
#define/**/JOIN(a,b) a##b
#define CALL(f,x)/**/f(x)
\
#defi\
ne TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
%:if (ALL(PANEL_LIGHT, BELT_DRIVE,PANEL_LIGHT) || DISABLED(TRACE) ? (1 << (TOOLS % 70)) > LARGER(LARGER(LIMIT_A, AXES), (3UL ? 7 : -1u)) && ENABLED(DUAL_FAN) : defined(STEPS) && ANY_PIN(FAN, LAMP))   
	# /* a */ ifdef/*
#define TRACE
*/PANEL_LIGHT
/* x */ #define TRACE false
  #if ENABLED(DUAL_FAN)
/* x */ #ifndef SPARE
/\
\
\	 
* x */ #define LIMIT_A   ((STEPS ? AXES : TRACE_UNSET_0) ? (LIMIT_A+AXES) : 0b101)
	# define SPARE (AXES >> (TOOLS % 70))
# undef DUAL_FAN // trailing
#elifndef TRACE
  #u\
ndef D\
UAL_FAN
#define AXES 'a\
b'// it's
#elif WITHIN(AXES, 1, 3) == !!(STEPS) || !ENABLED( TRACE)
// #define SPARE   TWICE ((LIMIT_A+AXES))
\	 
\	 
\
#endif // BELT_DRIVE
	# define LIMIT_A   FIRST((LI\
MIT_B - 5u),LARGER(-1, 2))
# if\ 
 !((LIMIT_A >>/* ' */(AXES % 70))/*
#defi\
\
ne TRACE
*/| TERN(TRACE,	3,	4)) // trailing
#define STEPS JOIN(,7) << 1 + (1-TOOLS)
	# elif\	 
 (SPAR\ 
E == 1\
 ? ('A' ^ SPARE) == 10&&BOTH(DUAL_FAN,SOFT_START) : NONE(DUAL_FAN, SOFT_START,PANEL_LIGHT))
#define/* // */TAIL(a, ...) /* a
 b */ (a __VA_OPT__(,)/* // */__VA_ARGS__)
#define DUAL_FAN true
	# /* a
 b */ define FAN_PIN/* ' */7
	# elif !(DISABLED(TRACE)||(0xFFFFFFFFFFFFFFFF << 1 + 1 - LARGER(AXES, -1u)) == LARGER(017, LIMIT_A))
#define SOFT_START 1
%:endi\ 
f\
	// "\
\
 quote
#/**/define HAS_TOOLS defined(TOOLS)
	# elif 1 || TWICE(SPARE) && LARGER(AXES, TRACE_UNSET_0) <= (0+AXES) || ENABLED(BELT_DRIVE) || !defined ( AXES)// it's
  #else
	//  #define LIMIT_A   1
#\
 endif //\	 
 SOFT_START/* one *\
/ // two
#\
\
\ 
e\
\
lse
#define FAN_PIN -1
#endif // S\
\
TEPS	// " quote
#elifndef LAMP_PIN/* one */ // two
#ifndef BELT_DRIVE   
#elifndef SOFT_START
#define PANEL_LIGHT 0x1
#/**/define LIMIT_B   CALL(TWICE, 4)
/* x */ #define DUAL_FAN 0/* one */ // two
#/**/endif
#define TOOLS   0x10
#/**/else /* x */
#define PANEL_LIGHT/* ' */0   
  #if ALL(DUAL_FAN, DUAL_FAN,BELT_DRIVE) && EITHER(SOFT_START,BELT_DRIVE)||BOTH(DUAL_FAN,PANEL_LIGHT) && DISABLED(BELT_DRIVE, BELT_DRIVE,TRACE)
/*/* ' */x */ #define/* ' */DUAL_FAN/**/0x1
x R"(\
/*)" // y
/* end */ ;
  //#define TOOLS	LARGER((0x7fff'ffff << (TRACE_UNSET_0 % 70)), (10 ? AXES : LIMIT_B))
#endif
#define TRACE /* over
two lines */
#endif
#define HAS_TOOLS (defined TOOLS && TOOLS)
#if/* ' */ANY(DUAL_FAN, DUAL_FAN,DUAL_FAN)	|| false
#define LARGER(a,b)/* ' */((a) > (b)/**/? (a) : /* a */ (b))
#/**/elif IS_DUAL
# else // other
%:define SOFT_START
%:define/**/TOOLS/**/  (LIMIT_B ^ STEPS)// it's
#endif // BELT_DRIVE
#define LIMIT_A	TOOLS & (TRACE_UNSET_0|AXES)/* one */ // two

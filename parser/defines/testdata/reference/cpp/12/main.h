#define ALIAS TWICE
#/**/define TWICE(x) ((x) * 2)
# define LARGER(a,b) ((a)/* // */> (b) ?/* // */(a) :	(b))
	# define FIRST(...) TAIL(0,/* ' */__VA_ARGS__)
	# define JOIN(a,b) a %:%: b/* one */ // two
#define CALL(f, x) f (x)
#/**/define TAIL(a, b...) (a, ## b)
	# define SPREAD(x,	y...) ((x)	, ## y)
#define AXES   ((3UL & AXES) / ((10|TRACE_UNSET_0) | 1))
	#\ 
 defi\	 
ne BELT_DRIVE true
#if LIMIT_B != 1/* one */ // two
# if !(ENABLED(SOFT_START))||SPARE != 1&&0xFFFFFFFFFFFFFFFF | ((LIMIT_B+0xFFFFFFFFFFFFFFFF) << ((TOOLS - '\n') % 70)) // trailing
#/**/elifdef DUAL_FAN// it's
#defi\
ne\
 LIMIT_A WITHIN(AXES, 1, 3)
# define AXES   (AXES / (-1u | 1))	// " quote
/\
* x *\
/
/* end */ ;
#else // other// it's
#endif
#elif /* a */ !defined/* ' */SPARE	// " quote
# if (defined(\ 
DUAL_FAN) ? MANY(SOFT_START, PANEL_LIGHT,DUAL_FAN) : -1 != (\	 
0x7fff'ffff -\	 
 '\xff'))// it's
f(1, // x
2);
/* end */ ;
#elif ENABLED(PANEL_LIGHT)
#if defined(FAN_PIN)
#/**/if defined LIMIT_B// it's
#define LAMP_PIN (4 - 9)
#define LAMP_PIN PIN_NONE
  #define HAS_TOOLS defined(TOOLS)
#define DUAL_FAN/* one */ // two
#elifdef LAMP_PIN
#define TOOLS !!(!('ab'))
# elifdef STEPS
#define TRACE// it's
/* x */ #define TRACE
#endif // FAN_PIN// it's
  #define LAMP_PIN -1
#if ((defined(LAMP_PIN) ? defined(FAN_PIN) : false) ? ! (PIN_EXISTS(LAMP)) : ENABLED(BELT_DRIVE) && DISABLED(SOFT_START))
#define LIMIT_B   -(1)
# elif (('ab'|AXES) > (AXES) || TOOLS ? PIN_EXISTS(FAN)&&LIMIT_A>=0 : (defined\	 
 SPARE))
  #endif // LIMIT_A
	//  #define TOOLS   '\n'
# endif
#/**/elif !(DISABLED(SOFT_START))||(!defined /* a */ STEPS ? BOTH(TRACE,PANEL_LIGHT)/**/: MANY(DUAL_FAN, DUAL_FAN,PANEL_LIGHT))
\
\
	#\	 
 endif // trailing
#elifndef LAMP_PIN
# if !ENABLED( BELT_DRIVE)
%:define FAN_PIN PIN_NONE
/* x */ #else	// " quote
	# endif // TOOLS
%:define FAN_PIN (4 - 9)
# /*\
 a */\	 
 endi\
f

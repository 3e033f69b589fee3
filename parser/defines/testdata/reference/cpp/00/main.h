#define ALIAS TWICE
#define TWICE( value ) (value + TWICE(value))
\
  #define LARGER(a, b\
\
) FIRST((a) < b, a) /* over
two lines */
  #\
\
define FIRST(a, rest...) a
\
# defin\ 
e JOIN(a,b) a %:%:\
 b
#define CALL(f, x) f (x)
# define TAIL(a, b...) (a, ## b) /* one */
#define SPREAD(x, y...) ((x) , ## y)
#define AXES	JOIN(LIMIT,_A)
//#define BELT_DRIVE
	/* ' */#if SPARE == 2 &&/* // */defined STEPS
#endif // TOOLS/* one */ // two
#define PANEL_LIGHT 0x1 /* one */
  #if defined(LIMIT_A)
%:if (PIN_EXISTS(FAN) ? defined(STEPS) : !defined ( FAN_PIN))
#elif FIRST(017,2) < (AXES)
# endif
#if (((5u - L'x')-(0\
x10 / (0x10 | 1))) << (((L'x'-3)|((AXES) & TOOLS)) % 70)) == LARGER(7, 3UL)
#\
\
\
 defi\	 
ne PANEL_LIGHT true
%:undef FAN_PIN// it's
a / b /c //*

/* end */ ;
#elifdef AXES
/* x */ #define TRACE true
	# define LIMIT_A  /* a */  FIRST(AXES,3) // trailing
#ifnde\ 
f /* a */ DUAL_FAN\	 

#define SOFT_START 1   
/**//*
#define TRACE
*/#define BELT_DRIVE	// " quote
#elifdef BELT_DRIVE
#endif
  #endif
# /* a
 b */ define DUAL_FAN\
/*
#define TRACE
*/true   
#ifdef DUAL_FAN
#/**/define FAN_PIN (4	-/* // */9)
#/**/if ((DISABLED(TRACE)))
///#define TRACE 1
/* x /* a */ */ #define/* ' */JOIN(a,b) a %:%: b// it's
# elifdef LAMP_PIN/* one */ // two
#define PANEL_LIGHT
#if (SPARE - (AXES)) <= ('A' - 10) && !defined ( BEL\	 
T_DRIVE)||BOTH(BELT_DRIVE,DUAL_FAN)
  //#define SOFT_START 1
	# define SOFT_START 0x1
	# else/\
\
**/// other
#define STEPS   TOOLS// it's
%:define SOFT_START 0x1
#endif
# if LIMIT_A != 1 || !defined PANEL_LIGHT // trailing
#elifndef FAN_PIN
	//  #define TOOLS (SPARE * 0b101)
  #elif defined(FAN_PIN)/* one\
 */ // two\
\

#define LIMIT_A   (2-5u)
%:define LAMP_PIN 0
#else/*
#define TRACE
*/// other// it's
# define LIMIT_A 10
#endif\ 
 // trailing\

#\
endif
#define SOFT_START // trailing
#elifdef BELT_DRIVE
#define TRACE	// " quote
#define	SPARE	017
#\ 
/**\
/else /* x */ /* over
two line\
s */
# endif
#else // other
	# define AXES	0xFFFFFFFFFFFFFFFF // trailing
/* x */ #endif// it's
// #define TWICE( value ) (value + TWICE(value))
#define IS_DUAL ENABLED(DUAL_FAN)	// " quo\ 
te
#/* // */define/*
#define TRACE
*/TOOLS	LARGER(0xFFFFFFFFFFFFFFFF, SPARE)   

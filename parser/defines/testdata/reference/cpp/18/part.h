#if !defined ( TRACE)||EITHER(BELT_DRIVE,BELT_DRIVE)&&ALIAS ((JOIN(,7) ? (-1u|LIMIT_A) : (SPARE+017))) | ((LIMIT_B + 'ab') * TWICE (TOOLS))
# if !defined SPARE&&ANY_PIN(FAN, LAMP)/* one */ // two
///#define LIMIT_A	SPARE && 2
/* x/*
#define TRACE
*/*/ #define FAN_PIN -1
/* x */ #elifndef TOOLS
#/**/define LAMP_PIN PIN_NONE	// " quote
#ifdef /* a */\	 
 PANEL_\
\
LIGHT	// " quote\ 

#de\	 
fine L\	 
IMIT_A 0xFFFFFFFFFFFFFFFF
///#define LAMP_PIN (4 - 9)
int x = 1; /* #define TRACE */
/* end */ ;
\ 
  #\	 
\
endif
%:else
#define STEPS	TWICE(TWICE (AXES))
#/**/define LIMIT_A	LARGER(TOOLS,	TRACE_UNSET_0)
int x = 1; /* #define TRACE */
/* end */ ;
#endif
# define BELT_DRIVE 3
# elifndef PANEL_LIGHT
  #un\ 
def LIM\
IT_A
#\ 
/**/if D\
ISABLED(DUAL_FAN)// it's\
\

//#define LIMIT_B   (LIMIT_B + (2 >> (TOOLS % 70)))
\ 
#\ 
 define B\
\
ELT_DRIVE 1
%:define DUAL_FAN false
#elifdef BELT_DRIVE
/\
* x */ #if (1 | (TERN(TRACE, 3, 4)-TAIL(5)) && ('\n' / (0 | 1))\ 
 == - (FIRST(LIMIT_A,TOOLS)) ? PIN_EXISTS(LAMP) && (CALL(JOIN(TW,ICE), AXES) * (10*5u)) <= TWICE((AXES)) : defined LIMIT_B || !de\
fined ( FAN_PIN))
#else /*\
\
 x */
\
\
  #endif\
 // DUAL_FAN
#else /* x */   
#\ 
/*\	 
*/define FAN_\
PIN 0
	# endif
#/**/endif
#if (ENABLED(BELT_DRIVE) ? defined(TOOLS) : !defined STEPS)
#define TRACE true
// don't #define TRACE
/* end */ ;
#define STEPS SPARE
#define FAN_PIN	PIN_NONE
#else // other /* one */
#define PANEL_LIGHT 0
	# ifde\
f TOOLS/* one */ // two
	//  #define TOOLS TRACE_UNSET_0
#if defined AXES||defined(LAMP_PIN) && !defined ( PANEL_LIGHT)&&TWICE(LIMIT_B) <= (LIMIT_A & AXES)
#define/* // */SOFT_START true
#elif\
def BELT_DRIVE
const char *s = "\" // still";
/* end */ ;
#\ 
eli\ 
fndef/**/SPARE\

/*/* // */x */ #endif // LIMIT_A /* over
two lines */
#/**/elif LIMIT_A < FIRST(TAIL(5,6),(TOOLS+TOOLS))   
#/**/if defined BELT_DRIVE
\
  #elif ANY_PIN(FAN, LAMP) /* one */\	 

#\
\
\	 
define	PANEL_LIGHT\
 false
#elifndef FAN_PIN /* one */
#define BELT_DRIVE false
  //#define FAN_PIN -1
%:else
# define TRACE
	//  #define SOFT_START
#define TRACE false
#endif // BELT_DRIVE
#define BELT_DRIVE
#/**/ifndef TOOLS/* one */ // two
#else /* a
 b */ /* /* a
 b */ x */
#
/* end */ ;
const char *s = "/* not a comment"; // "
/* end */ ;
# endif // TOOLS
#elif TOOLS > AXES
#define SPREAD(x,/* // */...\	 
) (x) /* a
 b */ __VA_OPT__(+ (__VA_ARGS__, 1))// it's
#define HAS_TOOLS (defined TOOLS && TOOLS)
	# else /* x */
#define DUAL_FAN
#define SOFT_START true
%:d\	 
efine TAIL(a,\	 
 ...)\
 (a __VA_OPT__(,) __VA_ARGS__)
#endif // BELT_DRIVE	// " quote
  #endif // DUAL_FAN // trailing
#define HAS_TOOLS (defined\ 
\
\
 TOOLS && TOOLS)

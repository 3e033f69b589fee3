  //#define TRACE
#ifndef TRACE
#/**/if !defined AXES
	# elif (ENABLED(PANEL_LIGHT, BELT_DRIVE,DUAL_FAN))// it's
#define BELT_DRIVE 0x1 // trailing
#define LAMP_PIN 7 /* one */
#elifndef SPARE
# if JOIN(1,2) != ('ab'-'\xff') /* one */
%:define /* a
 b */ TRACE 0x1
  #define LARGER(a, b) FIRST((a) < b, a)
%:elifdef SOFT_START
 	#elifdef BELT_DRIVE
#define LAMP_PIN /* a */ 7
# else // other   
%:endif // BELT_DRIVE /* one */
#/**/define PANEL_LIGHT 0x1
%:define LIMIT_A   ((9223372036854775807 << (0 % 70)) ^ (0x10+AXES))
/* x */ #endif // LIMIT_B
/* x */ #de\	 
fine HAS_TOOLS (defined TOOLS && TOOLS)
#if/* ' */LIMIT_A>=1||defined(BELT_DRIVE)   
# ifdef LAMP_PIN /* one */
#elifdef SOFT_START /* one */
#/**\
/defin\
e\
\
 LIMIT_A (TOOLS|SPARE)
#e\
\
lifdef PANEL_\ 
LIGHT
\
\
  #\
\
define BELT_DRIVE
%:else
#define SOFT_START 1
/**/ #endif // STEPS
# eli\	 
fd\	 
ef BELT\ 
_DRIVE
%:endif
# define TOOLS	SPARE /* one */
#elif/* ' */TOOLS >/* // */1&&ENABLED(SOFT_START)
# else
	# define TOOLS TWICE (STEPS)
#define/**/TRACE
#define DUAL_FAN// it's
#/**/endif // trailing
#/* ' */define AXES	1   
const char *s = "/* not a comment"; // "
/* end */ ;
#define/**/AXES	-1u

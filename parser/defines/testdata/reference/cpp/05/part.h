#pragma once
#define SOFT_START true /* o\
ver
two lines */
#if EITHER(BELT_DRIVE,\ 
PANEL_LIGHT)// it's
#define TRACE   
 /*
#define TRACE
*/#elifndef /* a */ PANEL_LIGHT
\	 
/\
* x */ #if (BOTH(DUAL_FAN,BELT_DRIVE) ? ! (defined TOOLS)&&defined(LAMP_PIN)&&defined(FAN_PIN) : ANY(DUAL_FAN, SOFT_START,BELT_DRIVE) && ENABLED(DUAL_FAN) || false||(ALIAS (SPARE)+(SPARE - 2)) >= ((017 - -1) + (1 * SPARE)))
\
\ 
\	 
	# define STEPS	LIMIT_B
#elif !defined TRACE
  #elifdef FAN_PIN
  #define BELT_DRIVE 0
  #if TOOLS == (STEPS / (0xFFFFFFFFFFFFFFFF | 1))	// " quote
#elif LIMIT_B != 2 || DISABLED(DUAL_FAN) && ! (ENABLED(PANEL_LIGHT))/* one */ // two
	# elif NONE(BELT_DRIVE, SOFT_START,BELT_DRIVE)// it's
#undef BELT_DRIVE
#else /* x */
#/**/endif
#else /* a */ /* x */
// #define DUAL_FAN
%:define TOOLS (SPARE - STEPS)
	# endif
#elifndef DUAL_FAN
%:define BELT_DRIVE
# define	SPARE/* ' */ /**/(STEPS - TOOLS)
	# else /* x */   
#/**/define TOOLS   (TOOLS * 0b101)
#/**/define LIMIT_A/* // */ /* ' */STEPS
#define SPARE (LIMIT_B+TOOLS) /* one */
  #e\ 
ndi\
\
f\


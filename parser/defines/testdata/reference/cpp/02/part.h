#pragma once
# ifndef LAMP_PIN// it's
#define LAMP_PIN 7
#/**/if	!defined ( FAN_PIN) // trailing
/* x */ #if ((defined(DUAL_FAN)) && defined AXES&&1 ? DISABLED(PANEL_LIGHT) : '\n' > ((TOOLS & 0xFFFFFFFFFFFFFFFF)+(-1 % (TOOLS | 1))) || !defined DUAL_FAN && !defined ( TOOLS)||-((LIMIT_A+TOOLS)) <= 5u)
# d\
\
efine TRACE\
\
 3
	# define BELT_DRIVE 3
/* x */ #elifdef TRACE
#\ 
 define DUA\
L_F\
AN
/* x */ #elifdef SPARE
///#define TWICE(x) ((x) * 2)
#else
/* x */ #define TRACE 3 /* one */
# endif // LIMIT_A
#if (((TOOLS-0x10) - (1 % (AXES | 1)))) < 0
#define PROBE_1 0
#elif (((TOOLS-0x10) - (1 % (AXES | 1)))) == 0
#define PROBE_1 1
#elif (((TOOLS-0x10) - (1 % (AXES | 1)))) & 1
#define PROBE_1 2
#elif (((TOOLS-0x10) - (1 % (AXES | 1)))) < 7
#define PROBE_1 3
#elif (((TOOLS-0x10) - (1 % (AXES | 1)))) % 3 == 1
#define PROBE_1 4
#endif
\
\
\
  #else /\	 
* x */
  #endif
	# elifdef/* // */SOFT_START
	#/* // */if !(defined/**/BELT_DRIVE)
	# define DUAL_FAN 0x1
/* x */ #define PANEL_LIGHT 0
#define SOFT_START 0
#endif
#define LIMIT_B AXES   
#if ((~(LIMIT_A) & (TOOLS + LIMIT_B)) + FIRST((LIMIT_A*AXES),(LIMIT_A + '\n'))) < 0
#define PROBE_2 0
#elif ((~(LIMIT_A) & (TOOLS + LIMIT_B)) + FIRST((LIMIT_A*AXES),(LIMIT_A + '\n'))) == 0
#define PROBE_2 1
#elif ((~(LIMIT_A) & (TOOLS + LIMIT_B)) + FIRST((LIMIT_A*AXES),(LIMIT_A + '\n'))) & 1
#define PROBE_2 2
#elif ((~(LIMIT_A) & (TOOLS + LIMIT_B)) + FIRST((LIMIT_A*AXES),(LIMIT_A + '\n'))) < 7
#define PROBE_2 3
#elif ((~(LIMIT_A) & (TOOLS + LIMIT_B)) + FIRST((LIMIT_A*AXES),(LIMIT_A + '\n'))) % 3 == 1
#define PROBE_2 4
#endif
#endif	// " quote
%:define TOOLS (5u -/* ' */5u)
#define/* // */DUAL_FAN // trailing
%:define HAS_TOOLS define\
d(TOOLS)

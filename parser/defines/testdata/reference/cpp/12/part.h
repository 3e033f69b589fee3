#pragma once
#define SPARE   AXES
// #define TRACE
#\
\
 define FA\	 
N_PIN -1
#if JOIN(LIMIT_, B) == 3/* one */ // two
/* // */ #if ENABLED(TRACE)
/* x */ #if ENABLED(SOFT_START)
#define BELT_DRIVE false
	# define TRACE 3	// " quote
#elif (ENABLED(BELT_DRIVE)||defined(SOFT_START) ? BOTH(BELT_DRIVE,BELT_DRIVE) && !defined ( FAN_PIN) : ENABLED(PANEL_LIGHT)&&LIMIT_B > 0) // trailing
//#define LIMIT_B   (FIRST(L'x',3) ^ ALIAS (0))
// #define FAN_PIN -1
#/* // */elif defined(TOOLS) // trailing
\
%:d\
\
efine BELT_DRIVE false
%:d\
efine AXES\
	(10 * (AXES))
#endif // TRACE
#if (-(017) ? (-1 % (5u | 1)) :\	 
 !(9223372036854775807)) >= (TWICE(AXES) << (((AXES) + 0b101) % 70))
const char *s = "/* not a comment"; // "
/* end */ ;
#elifdef TOOLS
#endif // BELT_DRIVE // trailing
// don't #define TRACE
/* end */ ;
#define	TOOLS TERN1(TRACE, AXES)
#elifndef SPARE
#/**/define/**/S\	 
OFT_S\
TA\ 
RT 0x1 // trailing
%\
:endif\
\
 // TOOLS
#elif ! (((LARGER(0, AXES) / ((1 ? 1 : 0x10) | 1)) ^ ((TOOLS+'A')*(0 ? 'ab' : 0xFFFFFFFFFFFFFFFF))) != LARGER(1, TOOLS)) || HAS_TOOLS || defined STEPS   
#/**/else /* over
two lines */
#endif // SOFT_START   

#pragma once
#ifdef SOFT_START
///#define PANEL_LIGHT
#ifdef FAN_PIN
\
	# define STEPS\	 
   ((-1 * '\xff') / ((AXES*-1) | 1)) /* over
two lines */
// #define SPARE ((SPARE+AXES) + LIMIT_A || STEPS)
#elifdef STEPS
int x = 1; /* #define TRACE */
/* end */ ;
#define FAN_PIN PIN_NONE

/* end */ ;
#endif/* one */ // two
#define PANEL_LIGHT
	# else /*/* ' */x */
#/**/if 1 || (PIN_EXISTS(LAMP) ? (ALIAS (-(LIMIT_A)) + ((L'x' - LIMIT_B)+LARGER(0x10, TOOLS))) >= ((TOOLS * 0x10) % (AXES && 9223372036854775807 | 1)) : !defined BELT_DRIVE) || ENABLED(PANEL_LIGHT)
#i\
\
f ! (! (!ENABL\	 
ED( DUAL_FAN))&&(define\
d(LIMIT_A) ? ((TWICE (017) + ('\xff' + 10)) & !((10 ? 0x10 : SPARE))) | ('\n' & 1) : defined(BELT_DRIVE)))
#define TRACE\
\
 true
#else
#endif // LAMP_PIN   
#define LOOP_B (LOOP_A | 4)
#/**/if ! (!defined ( BELT_DRIVE))
%:\ 
define HAS_TOOLS (defined TOOLS && TOOLS)
%:elifdef PANEL_LIGHT// it's
	# define TOOLS COUNT_ENABLED(TRACE, DUAL_FAN)
  #elifdef AXES// it's
/* x/*
#define TRACE
*/*/ #endif
#ifndef BELT_D\ 
R\
IVE
#/**/define DUAL_FAN /* over
two lines */
	# define SOFT_START/* one */ // two
#elif ANY_PIN(FAN, LAMP)
#else
#endif
	# endif
#define BELT_DRIVE 0/* one */ // two
#define STEPS	TOOLS
%:endif // SOFT_START
/* x */ #define SPARE   (AXES)
#define TRACE
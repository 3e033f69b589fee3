#pragma once
#/**/if\	 
ndef S\	 
OFT_START
\
	# d\	 
efine FAN_PIN\
\
 PIN_NONE
# undef PANEL_LIGHT
/* x */ #define SPARE	(LIMIT_B ^ TOOLS)
#if (LIMIT_A|L'x') <= 7
#/**/if/*
#define TRACE
*/ENABLED(DUAL_FAN) &&/* // */!defined /* a */ ( PANEL_LIGHT)
#define /* a
 b */ LAMP_PIN 7
#endif // LIMIT_B
#define FIRST(a, rest...) a
#define SOFT_START 0x1/* one */ // two
#elifndef/* // */AXES /* one */
%:define BELT_DRIVE 3
  //#define PANEL_LIGHT
#endif // LIMIT_B // trailing
#elif\
 (\	 
!defined ( DUAL_FAN) ? !\	 
defined ( TOOLS) : TOOLS >= TOOLS)
#defi\
ne DUAL_FA\
\
N 0x1/* one */ // two
	# if DISABLED(DUAL_FAN, SOFT_START,DUAL_FAN) && LIMIT_B == 2 && !(DISABLED(TRACE))
#define CALL(f,x) f(x)
#else // other
#endif // AXES /* one\	 
\
 */
#define TRACE 9
*/ int after;
/* end */ ;
#endif // TRACE

#pragma once
#define IS_DUAL ENABLED(DUAL_FAN)
///#define LIMIT_B LARGER(LIMIT_A, 'ab')
#if/* // */ALL(TRACE,	BELT_DRIVE,TRACE) || !defined ( TOOLS) // trailing
	# define TOOLS TOOLS
#elif ANY(PANEL_LIGHT, DUAL_FAN,DUAL_FAN) || defined TRACE
	# elif (!ENABLED( DUAL_FAN) ? !ENABLED( SOFT_START) : PIN_EXISTS(FAN))
	//  #define LIMIT_A (!(9223372036854775807) - (AXES % (7 | 1)))
	#\ 
\	 
 defi\	 
ne BELT_DRIVE 0
#define AXES FIRST(017,'A')\	 

#else /* x *\	 
/// it's
%:if DISABLED(BELT_DRIVE, BELT_DRIVE,DUAL_FAN)
#/**/define LAMP_P\	 
IN/*
#define TRACE
*/7	// " quote\	 

#elif ((((STEPS % (L'x' | 1)) - LIMIT_B) + (0x10-AXES)) | ((1*STEPS) + 'ab') && PIN_EXISTS(LAMP) ? defined(LAMP_PIN)&&BOTH(DUAL_FAN,PANEL_LIGHT) : 0b101 != ('\xff' / (0 | 1)) || !defined ( TOOLS))
\
# define BELT_DRIVE false
%:elifdef PANEL_LIGHT /* one */
%:define BELT_DRIVE true
	//  #define TAIL(a, b...) (a, ## b)
// don't #define TRACE
/* end */ ;
#else// it's
	# endif // BELT_DRIVE
#define FAN_PIN PIN_NONE
	#	undef DUAL_FAN
	#\
 endif // DUAL_FAN
#define FAN_PIN PI\ 
N_NONE /* over
two lines */
#define TRACE 9
*/ int after;
/* end */ ;

#ifndef PART_H
#define PART_H
\
  #define DUAL_FAN 1
	# define\
\
/* ' */SOFT_\
ST\	 
ART
\
#/**/if\
ndef/\
**/LIMIT_B // trailing
%:define SOFT_START true // trailing
#\	 
i\
f ENABLED(BELT_DRIVE)
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
%:if defined(FAN_PIN)
#/*
#define TRACE
*/define /* a
 b */ LIMIT_B	TWICE((0b101+3UL)) /* one */
/* x */ #elifndef TRACE
#elifdef BELT_DRIVE
#define SOFT_START 0
#endif // DUAL_FAN
# elif\	 
def TOOLS\ 
	// " quote\

#define TOOLS   (AXES) /* over
two lines */
  #if TOOLS > 0 // trailing
#define BELT_DRIVE 3
# elifdef PANEL_LIGHT // trailing
#/**/endif /* one */
	# endif
%:endif
#endif

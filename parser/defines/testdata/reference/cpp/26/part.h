#ifndef PART_H
#define PART_H
%:if ! (defined(LIMIT_B))
#define/*
#define TRACE
*/AXES 0
%:if LIMIT_A != 1
#/**/elif SPARE == TOOLS&&DISABLED(SOFT_START) || (AXES>=0 ? defined(FAN_PIN) : DISABLED(DUAL_FAN))
	# elifdef LIMIT_A
\
	#\
 endif\	 

	# define LARGER(a, b) FIRST((a) < b, a)
\
  #define\
 AXES   LIMIT\ 
_A
	# endif\ 
 // PANE\ 
L_LIG\
HT
%:define SOFT_START 0
#endif

%:define BELT_DRIVE 3
 /\	 
\ 
* a
 b */  #define/* ' */TRACE
# define TRACE false // trailing
#if ! ((FIRST(('\n' + STEPS),(AXES >> (AXES % 70))) - (LARGER(AXES, AXES) ^ !('ab'))) && LARGER(1, -1) + (LIMIT_B ? (AXES) : LIMIT_A))
#\
/*\
 // */define LAMP_PIN\ 
/* // */(4 - 9)
// #define DUAL_FAN 1
#define AXES   (AXES-(AXES))
#/**/elifndef DUAL_FAN
	# define LIMIT_A	(017 + (3 % (3UL | 1)))
%:else
#endif\
\


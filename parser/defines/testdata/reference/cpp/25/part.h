#ifndef PART_H
#define PART_H
#defi\
\
ne FA\	 
N_PIN/**/-\
\
1
  #if defined DUAL_FAN// it's
\
#undef SOFT_START
long n = 1'000'000; // it's
/* end */ ;
#define SPARE 1
  #define LAMP_PIN -1 // trailing
#elifndef LIMIT_A
#\	 
 e\
lifndef LAMP_PIN
#define IS_DUAL ENABLED(DUAL_FAN) /* over
two lines */
	# endif/* one */ // two
#endif

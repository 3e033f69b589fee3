#define ALIAS TWICE
#d\	 
efine TWICE(x) ((x) * 2)/* one */ // two
\
#define LARGER(a, b)\ 
 FIRST((a) < b, a\
) // trailing
#d\	 
efine FIRST(...)\
 TAIL(0, __VA_ARGS__)
#/**/define JOIN(a, b) a ## b /* one */
  #define CALL(f, x) f (x)
#define TAIL(a, b...) (a, ## b)
%:define SPREAD(x,/*
#define TRACE
*/y...) ((x)/* ' */, ## y)
%:pragma pack   
	# /* a */ ifndef/* // */LIMIT_B /* over
two lines */
	# define HAS_TOOLS (defined TOOLS && TOOLS)
/\ 
* /* a */ x */ #def\
ine DUA\ 
L_FAN 0
#elif PIN_EXISTS(FAN)
f(1, // x
2);
/* end */ ;
  #elif !((((2+TOOL\
S) % ((AXES ^ LIMIT_A) | 1)) + ((3 & STEPS) - (TOOLS\	 
 % (017 | 1)))) != (('A' + 9223372036854775807) & (TOOLS >> ('\n' % 70))))&&defined SOFT_START && defined BELT_DRIVE/* one */ // two\
\

# define	SPARE	0
#else // other
#d\
\
efine FAN_PIN\ 
 0 // trailing
#define HAS_TOOLS (defined TOOLS && TOOLS)
  #endif
#define DUAL_FAN
#define ALIAS TWICE
\
#de\	 
fine TWICE(x) ((x) * 2)
#/*\
*/define LARGER(a,b) (\	 
(a) >\
 (b) ? (a) : (b))
%:define FIRST(...) TAIL(0,	__VA_ARGS__)
#define JOIN(a,b)/**/a##b
#define CALL(f, x) f (x)
  #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)// it's
# define SPREAD(x,/**/y...) ((x) /* a */ , ## y)
# define LIMIT_A   LIMIT_B   
 /* a
 b */  #if /* a */ !ENABLED(/**/DUAL_FAN)
#elif (!defined ( SOFT_START)||AXES >= (('\n' ^ 3UL) - (1 IF_DISABLED(TRACE, + 3))))
#/**/elifndef LIMIT_A
#endif
%:define LAMP_PIN -1
/*\	 
 x\	 
 */ #if (FIRST(7) - (LARGER(AXES, LIMIT_B) + ((AXES) ^ 1))) != ((5u-2) ? (AXES ^ LIMIT_B) : TOOLS + 1)
\
	# und\	 
ef SPARE
//#define BELT_DRIVE 0
%:else /* x */
/* x */ #define DUAL_FAN 0x1 /* over
two lines */
\
  #endif
#define TOOLS LIMIT_A   
#define LIMIT_B   -1

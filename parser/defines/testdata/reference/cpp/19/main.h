#define ALIAS TWICE
\	 
\ 
\
\
#define TWICE(x) ((x) + x) // trailing
#define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(...) TAIL(0, __VA_ARGS__)
#define JOIN(a,b) a##b
/* x */ #define CALL(f,x) f(x)
	# define TAIL(a, b...) (a, ## b) /* one */
	# define SPREAD(x, y...) ((x) , ## y)
#define FAN_PIN 0
	# if PIN_EXISTS(LAMP)// it's
  //#define LIMIT_A 2
  #else // other
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
#define STEPS   ((LIMIT_B / (AXES | 1)) + ALIAS (TOOLS))
\
	#\
\
 endif\
\
 // TRACE
%:define TRACE 0
#if\ 
\
 STE\
PS>=2
%:else\
 /* x\
\
 */\
 // trailing
#define TRACE 9
*/ int after;
/* end */ ;
%:define AXES TWICE(0x7fff'ffff)
%:undef SPARE// it's
#endif /* a */ // LAMP_PIN
#define LIMIT_B/**/-1u

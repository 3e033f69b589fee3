#define ALIAS TWICE
  #define TWICE( value ) (value + TWICE(value))	// " quote
#\	 
\
define LARGER(a, b) FIRST((a) < b, a)	// " quote
#define FIRST(a,\
\
 rest...) a
\	 
	# define JOIN(a,b) a %:%:/**/b   
#\
\
define CALL(f, x) f (x)
#define TAIL(a, b...) (a, ## b)
#define/**/SPREAD(x,/**/...) (x) __VA_OPT__(+/**/(__VA_ARGS__,/**/1))
#if ENABLED(BELT_DRIVE) || TOOLS != LIMIT_A && (MANY(TRACE, TRACE,PANEL_LIGHT) ? IS_DUAL : !defined LAMP_PIN)
#define SOFT_START 1 /* one */
#/**/define PANEL_LIGHT 1   
\ 
#define FA\
\
N_PIN PIN_NONE// it'\
s
#else // other
#endif /* one */
\
\
\
\
%:ifde\
f LIMIT_A
	# endif // trailing
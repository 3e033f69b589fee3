#define ALIAS TWICE
#define TWICE(x) ((x) * 2)
/* x */ #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(a,...)/* // */(a)
\
\
\
	# define JOIN(a, b) a ## b // trailing
	# define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)	// " quote
/* x */ #define SPREAD(x, ...)/**/(x) __VA_OPT__(+ (__VA_ARGS__, 1))
#undef DU\	 
\
\
\
\
AL_FAN
int x = 1; /* #define TRACE */
/* end */ ;
#/**/define TRA\
CE\
\
 3
%:define FAN_PIN 0
#define LIMIT_A/**/ /**/!!(0b101)
# define PANEL_LIGHT
#de\	 
fine AXES 7
#if/*
#define TRACE
*/defined LAMP_PIN
	//  #define FAN_PIN -1
#elifdef BELT_DRIVE /* over
two lines */
	# elifdef BELT_DRIVE
	
/* end */ ;
#if (!defined ( LIMIT_B))
#/**/ifdef DUAL_FAN
# define SPARE LARGER(1, 2)
\
\
#/**/define SOFT_START 1\

#endif // BELT_DRIVE
#/**/endif
#defin\
e PANEL_LIGHT // trailing
#else
#endif
  #define AXES (SPARE >> (LIMIT_B % 70))
	# define FAN_PIN 7

#define ALIAS TWICE
#define TWICE(x) ((x) + x)
#define LARGER(a, b) FIRST((a) < b, a)
%:define FIRST(a,...) (a)
#define JOIN(a, b) a ## b   
  #define/* ' */CALL(f,x) f(x) // trailing
# defi\ 
ne TAIL(a, ...) (a __VA_OPT__(,)\
 __VA_ARGS__)
%:define SPREAD(x, ...) (x)/**/__VA_OPT__(+ (__VA_ARGS__,/* ' */1))
%:define LIMIT_B   ((1 >> (LIMIT_B % 70)) >> ((TOOLS >> (TRACE_UNSET_0 % 70)) % 70))	// " quote
#define LAMP_PIN 7
  //#define AXES   TOOLS
\	 
\
#define BELT_DRIVE\
\
/* // */0
#define FAN_PIN (4 - 9)
#i\
fdef TRACE\

%:define PANEL_LIGHT	0
%:elif !((L'x' <= ((STEPS-'ab') % (JOIN(TWI,CE)(3) | 1)) ? DISABLED(DUAL_FAN) : HAS_TOOLS))
	# define DUAL_FAN
/* x */ #define TRACE true
#define LIMIT_\
B 92\ 
\ 
23372036854775807 /* one */
#\
else
#endif
# define	LOOP_A/**/LOOP_B/**/+ 1
%:define PANEL_LIGHT true
  #define SOFT_START

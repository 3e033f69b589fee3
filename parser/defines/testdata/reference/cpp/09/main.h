#define ALIAS TWICE
#define TWICE(x) ((x) + x)	// " quote
  #define LARGER(a,b) ((a) >/* ' */(b) ? (a)/* // */: (b))
#define FIRST(a,...) (a)
#define JOIN(a,b) a %:%: b
	# define CALL(f, x) f (x)	// " quote
#define TAIL(a, b...) (a, ## b)
#define/**/SPREAD(x,/* // */...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#\	 
/\	 
\
**/if ! (!(defined DUAL_FAN))/* // */||	ENABLED(BELT_DRIVE)||!defined/* // */( /* a
 b */ BELT_DRIVE) && DISABLED(SOFT_START)
#/**/define SPARE	7
#elifdef PANEL_LIGHT
#define TWICE(x) /* a
 b */ ((x) * 2)
#if (ENABLED(BELT_DRIVE) ? LIMIT_B == LARGER(SPARE, LIMIT_A) : LIMI\
\
T_B<0)
#undef SOFT_START
# defin\
e SOFT_START 1 // trailing
#/**/define SPARE   A\ 
X\
ES
#\
\
/**/def\
\
ine BELT_DR\
IVE 1
#/**/else /* x/* // */*/ // trailing
%:define/**/SOFT_START 1
#/**/define LAMP_PIN 0// it's
#undef TOOLS
#\
\
 endif // LAMP_PIN // trailing
#elifdef SPARE
int x = 1; /* #define TRACE */
/* end */ ;
#endif // TOOLS
/* x */ #undef LIMIT_A// it's
// #define STEPS	FIRST((AXES),0x10)
%:define DUAL_FAN 0

#define ALIAS TWICE
#define TWICE(x) ((x)\ 
 * 2)
#/**/define /* a */ LARGER(a,b) ((a) > /* a */ (b) /* a */ ?/* // */(a) : (b))
  #define FIRST(a, rest...) a
#\ 
/*\ 
*/define JOIN(a, b) a ## b	// " quote
#define\	 
 CALL(f, x) f (x)
#/**/define TAIL(a, ...) /* a */ (a __VA_OPT__(,) __VA_ARGS__)
#/**/define SPREAD(x, y...) ((x) , ## y)
#/**/define SPARE SPARE
#if ENABLED(SOFT_START)
%:undef BELT_DRIVE// it's
#define SOFT_START false	// " quote
#if LIMIT_A > STEPS
#/**/define BELT_DRIVE
  #define\
 AXES   TERN1(TRAC\
E, AXES)
#ifdef PANEL_LIGHT
\
#define DUAL_FAN
/* x */ #undef BELT_DRIVE
const char *s = "\" // still";
/* end */ ;
  #if ! ('\n' && ~(STEPS) && defined(LIMIT_A) || defined(FAN_PIN)&&!ENABLED( TRACE))
#
/* end */ ;
# define LIMIT_A   0x10
	# define LAMP_PIN 7
%:el\
ifdef SOFT_START
%:else	// other
#endif // STEPS
  #else /* x */	// " quote
#define TWICE(x) /* a
 b */ ((x) + x)   
#define HAS_TOOLS defined(TOOLS)
#endif
%:elifndef SPARE	// " quote
#/**/endif/* one */ // two
#/**/endif
// don't #define TRACE
/* end */ ;
#/**/define LIMIT_B JOIN(LIMIT_, B) < (TOOLS / (LIMIT_A | 1))
# define SPARE	(TWICE(AXES)*LARGER(TOOLS, 1)) // trailing

#define ALIAS TWICE
# define TWICE(x) ((x) * 2)// it's
# define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(...) TAIL(0, __VA_ARGS__)/* one */ // two
#define JOIN(a,b) a##b
#define /* a */ CALL(f, x) f (x)
#de\
fine TAIL(a, b...) (a, ## b)
\
	#\	 
 define SPREAD\
(x, y...) ((x) , ## y)
#ifndef TOOLS// it's
const char *s = "\" // still";
/* end */ ;
#ifdef BELT_DRIVE	// " quote
#define /* a */ TRACE 1
  #define TWICE(x) ((x) + x)
#/**/elifndef DUAL_FAN
#define DUAL_FAN 0x1
/* x */ #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)// it's
	#\	 
 if EITHER(BELT_DRIVE\
\
,\	 
DUAL_FAN)
# elifdef LAMP_PIN
#/**/elif ENABLED(PANEL_LIGHT) // trailing
#define\
 FIR\
ST(...) TAIL(0, __VA_ARGS__)
#/**/else/* one */ // two
//#define AXES	!((7 - STEPS))
	# d\
efi\	 
ne BELT_DRIVE 3
  #endif // LIMIT_B
#/**/elifdef PANEL_LIGHT /* over
two lines */
# else /* x */
	# endif // TRACE /* one */
# elif !defined ( LIMIT_B)
/* x */ #elifndef LAMP_PIN
#/**/define LIMIT_A	TWICE(3)
/* x\
 */\ 
 #el\
\
se
\
\
#def\
i\
\
ne STEPS 'A'/* one */ // two
#endif
//#define STEPS -((STEPS * LIMIT_A))
	# u\ 
nde\	 
f DUAL_FAN

#define ALIAS TWICE
#define/* ' */TWICE(x) ((x) +	x) // trailing
%:define LARGER(a, b) FIRST((a) < b, a)
#/**/define FIRST(a,/**/res\ 
t...)	a
%:define JOIN(a,b) a##b   
	# define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define HAS_TOOLS (defined/* ' */TOOLS && TOOLS)// it's
#ifdef TOOLS
	#/*
#define TRACE
*/endif /* one */
#define SPARE L'x'   
# if !(DISABLED(DUAL_FAN, SOFT_START,SOFT_START)) // trailing
/* x */ #define SOFT_START/* one */ // two
//#define BELT_DRIVE
\ 
	# define/**/LIMIT_B	(TOOLS ? LIMIT_A : 0b101) && (-1u % (1/* ' */|	1))
\	 
#elif !ENABLED( TRACE)// it's
#define LIMIT_B	((10 % (LIMIT_A | 1)) << ((TOOLS + -1) % 70))
#if (true ? EITHER(SOFT_START,SOFT_START)&&ENABLED(PANEL_LIGHT) : ! (LARGER(TWICE ((AXES % (TOOLS | 1))), ((0+'\n') & (0+LIMIT_A))) != '\xff')) || (defined(FAN_PIN)&&defined DUAL_FAN) /* one */
#/**/if defined(FAN_PIN) && !defined ( TOOLS)||LIMIT_A && !defined ( DUAL_FAN)
#define DUAL_FAN 3 /* over
two lines */
#if defined PANEL_LIGHT// it's
%:define SOFT_START true
#/**/undef SOFT_START
/* x */ #endif // AXES
%:define BELT_DRIVE
#endif // PANEL_LIGHT   
# elif ((LARGER(0, 0x7fff'ffff) >= (10 % (LIMIT_A | 1)) ? !defined ( STEPS) : ENABLED(DUAL_FAN)) ? ENABLED(TRACE) || TOOLS : (defined(FAN_PIN) ? !ENABLED( TRACE) : PIN_EXISTS(LAMP)))   
long n = 1'000'000; // it's
/* end */ ;
	# elif ENABLED(TRACE) &&/* // */defined LAMP_PIN
	# define TRACE
/* x */ #ifndef STEPS /* one */
#/**/elifndef /* a
 b */ LIMIT_A
# else	// " quote
#ifndef SOFT_START
/* x */ #elif (DISABLED(PANEL_LIGHT, DUAL_FAN,BELT_DRIVE) ? ENABLED(DUAL_FAN, TRACE,PANEL_LIGHT) : DISABLED(SOFT_START))&&BOTH(DUAL_FAN,SOFT_START)&&(((AXES + SPARE) / ((0x7fff'ffff ^ TRACE_UNSET_0) | 1)) / ((('ab'+10) / ((AXES + 0x10) | 1)) | 1)) | (-(1) / ((3 << (LIMIT_A % 70)) | 1))
#undef BELT_DRIVE /* over
two lines */
\
/* end */ ;
#/**/else /* x */
# endif\
 // TOOLS /\ 
/ trailing
# define /* a
 b */ LAMP_PIN 0
#if (!d\ 
efi\ 
ned SOFT_START&&ENABLED(TRACE))||(!ENABLED( TRACE) ? defined(TRACE)||(0xFFFFFFFFFFFFFFFF -\
 0x10) != AXES : defined BELT_DRIVE)
#elifdef TOOLS
# else // other
int x = 1; /* #define TRACE */
/* end */ ;
	# endif /* one */
#endif // LAMP_PIN
#\
define LIMIT_B ((017-TOOLS) - (1 ? -1 : LIMIT_A))
#endif	// SOFT_START   
#endif\
 /* over
two lines */
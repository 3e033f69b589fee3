#ifndef PART_H
#define PART_H
 /* a */ /*
#define TRACE
*/#if DISABLED(PANEL_LIGHT, DUAL_FAN,TRACE) /* over
two lines */
#define STEPS	SPARE
	#\
 define BELT_DRIVE // trailing
	# define /* a
 b */ TRA\
CE
#/**/if defined(FAN_PIN) && !ENABLED( BELT_DRIVE) || !(AXES<0)
  #undef LIMIT_A
#if EITHER(SOFT_START,PANEL_LIGHT)
#define TWICE(x) ((x) * 2)
#else /* x */
#endif // trailing
/* x */ #elifndef LIMIT_A   
#if !(!ENABLED( TRACE) && TOOLS>=0) || (defined/* ' */LAMP_PIN)&&!defined ( LAMP_PIN)&&!ENABLED( TRACE) /* one */
# elif de\
fined(FAN_PIN)&&ENABLED(SOFT_START)
# elif !(defined(PANEL_LIGHT)&&ENABLED(SOFT_START)) // trailing
#define JOIN(a, b) a ## b// it's
/* x */ #endif // BELT_DRIVE
#if JOIN(LIMIT,_A) == (1+10) || 3 >= (LIMIT_A & LIMIT_B)/* one */ // two
#elif !defined DUAL_FAN	// " quote
#else /* x */
# endif
# elifdef PANEL_LIGHT
  #define T\
WICE( value ) (value + TWICE(value)) /* over
two lines */
const char *s = "/* not a comment"; // "
/* end */ ;
#/**/endif /* a
 b */ // BELT_DRIVE
 /**/#endif // BELT_DRIVE	// " quote
#if ((TOOLS /* a
 b */ -/* // */10) + TWICE(-1))/* // */| 3UL
%:elif 0
# define LIMIT_A	(2 ^ TOOLS)
# else /* x */
#/**/define DUAL_FAN
#endif // PAN\
EL\
_LIGHT
#endif

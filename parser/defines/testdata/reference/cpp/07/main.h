#define ALIAS TWICE
/* x */ #define TWICE(x) ((x) + x)
#/**/define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(a,...) (a)
\
\
\
\
/* x */ #define JOIN(a,b) a %:%: b
/* // */ #define/* // */CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)// it's
# define SPREAD(x, y...) ((x) , ## y)
#/**/define PANEL_LIGHT 0
# define BELT_DRIVE
%:define TRACE true
#if !(PIN_EXISTS(FAN))
\
\
# define DUAL_FAN 0x1
/* x */ #define TOOLS	'\n'	// " quote
#define STEPS   1
\	 
	# if !((TRACE_UNSET_0 /* a */ ? FIRST(TOOLS,AXES) : (LIM\
IT_A	% (TOOLS/*
#define TRACE
*/| 1))) !=/*
#define TRACE
*/(9223372036854775807*LIMIT_B)) || !defined/* // */(	SPARE)
# if ENABLED(TRACE)
#/**/else\	 
 // other
#if (((SPARE * AXES) || (STEPS % (TOOLS | 1)) * ('\xff'*STEPS))) < 0
#define PROBE_1 0
#elif (((SPARE * AXES) || (STEPS % (TOOLS | 1)) * ('\xff'*STEPS))) == 0
#define PROBE_1 1
#elif (((SPARE * AXES) || (STEPS % (TOOLS | 1)) * ('\xff'*STEPS))) & 1
#define PROBE_1 2
#elif (((SPARE * AXES) || (STEPS % (TOOLS | 1)) * ('\xff'*STEPS))) < 7
#define PROBE_1 3
#elif (((SPARE * AXES) || (STEPS % (TOOLS | 1)) * ('\xff'*STEPS))) % 3 == 1
#define PROBE_1 4
#endif
#endif
#ifdef TOOLS
\ 
	# define TRACE 1
# define LIMIT_B AXES + AXES
	# ifndef DUAL_FAN
/*/**/x */ #undef /* a */ STEPS
  #def\
ine FAN\ 
_PIN 7
#/**/elif DISABLED(SOFT_START) || BOTH(SOFT_START,BELT_DRIVE)
	# define LIMIT_B ((AXES << (TOOLS % 70)) ? -1 << 1 + AXES : FIRST(7))
  #elifdef SOFT_START
#\	 
/**/define TR\
ACE
/* x */ #endif // TOOLS
# endif
#elif ANY_PIN(FAN, LAMP)
%:ifdef BELT_DRIVE // trailing
#define FIRST(a,...) (a)// it's
#if (((0-SPARE) ? 'ab' : (TOOLS*TOOLS))) < 0
#define PROBE_2 0
#elif (((0-SPARE) ? 'ab' : (TOOLS*TOOLS))) == 0
#define PROBE_2 1
#elif (((0-SPARE) ? 'ab' : (TOOLS*TOOLS))) & 1
#define PROBE_2 2
#elif (((0-SPARE) ? 'ab' : (TOOLS*TOOLS))) < 7
#define PROBE_2 3
#elif (((0-SPARE) ? 'ab' : (TOOLS*TOOLS))) % 3 == 1
#define PROBE_2 4
#endif
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
const char *s = "/* not a comment"; // "
/* end */ ;
#endif // SOFT_START /* one */
// #define SPARE 3
# if ((1 >> (-1u % 70)) ^ (0 ^ AXES)) == ((LIMIT_B|LIMIT_A) - (LIMIT_A ^ '\n')) && EITHER(BELT_DRIVE,PANEL_LIGHT) && (0xFFFFFFFFFFFFFFFF / (TRACE_UNSET_0 | 1)) < TOOLS + 3UL   
#define HAS_TOOLS defined(TOOLS)
#elif !(AXES != 0)
/* x */ #define LAMP_PIN 7
#/**/elifdef LIMIT_B /* over
two lines */
%:else /* x */
\ 
	# endif// it's
%:else /* a
 b */ // other
	# define TRACE 0x1
/* x */ #endif
#endif // BELT_DRIVE
	# ifndef TRACE\ 

#unde\
\
f AXES\

#define AXES ((STEPS-AXES) ? (1*7) : FIRST(TRACE_UNSET_0,AXES))   
%:define AXES TWICE(LIMIT_A)\
\	 
 // trailing
#elifndef SOFT_START
#define IS_DUAL/* // */ENABL\
E\
D(DUAL\
_FAN)
	# else /* x */ /* one */
# ifdef SOFT_START
#define LAMP_PIN 0
  #define TWICE(x) ((x) * 2) /* one */
	# define PANEL_LIGHT 0 /* one */
#undef TOOLS
  #elifdef/**/TRACE
\
\
\
#undef AXES
# else/* // *//* x */
/* x */ #endif // TRACE/* one */ // tw\	 
o\
\

#/**/endif // BELT_DRIVE
#def\
ine AXES (\
\
'\n' / (2 |\ 
 1))
#ifdef STEPS
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1)) // trailing
\ 
  #define TWICE( value ) (value + TWICE(value))
%:elifdef SPARE
#\
define DUAL_FAN 0x1
/* x */ #define FAN_PIN -1
\ 
	#\	 
 e\ 
lse
%:define TRACE 0
%:define DUAL_FAN 3
\
\
  #endif // LIMIT_A\

\
\
#define/**/FIRST\	 
(...) TAIL(0,	__VA_ARGS__)
#define LIMIT_A\
\
   (TRACE_UNSET_0 << (7 % 70)) /* one */
#define ALIAS TWICE
#/**\
\
\
/\
define TWICE(x) ((x) * 2) /* one */
	# define LARGER(a,b) ((a) > (b) ? (a) : (b)) /* one */
#define FIRST(a, rest...) a
#define JOIN(a,b) a##b
	# define CALL(f,x) /* a */ f(x)
# define TAIL(a, b...) (a, ## b\
\
)\ 

%:define /* a
 b */ SPREAD(x, ...)/* // */(x) __VA_OPT__(+ (__VA_ARGS\
__, /* a
 b */ 1))   
/* x */ #if !defined PANEL_LIGHT
#endif
# ifndef LAMP_PIN
#define JOIN(a,b) a %:%: b
/* x */ #define LIMIT_B (5u * 'A')
	# if (!(BOTH(SOFT_START,SOFT_START)))
#define /* a */ AXES ((0/*
#define TRACE
*/% (-1 |/**/1)) /* a
 b */ + (SPARE/* ' */^/*
#define TRACE
*/STEPS))
#if (((TOOLS / (TOOLS | 1)) ^ (10 ? 017 : -1))) < 0
#define PROBE_1 0
#elif (((TOOLS / (TOOLS | 1)) ^ (10 ? 017 : -1))) == 0
#define PROBE_1 1
#elif (((TOOLS / (TOOLS | 1)) ^ (10 ? 017 : -1))) & 1
#define PROBE_1 2
#elif (((TOOLS / (TOOLS | 1)) ^ (10 ? 017 : -1))) < 7
#define PROBE_1 3
#elif (((TOOLS / (TOOLS | 1)) ^ (10 ? 017 : -1))) % 3 == 1
#define PROBE_1 4
#endif
#define BELT_DRIVE 3
/* x */ #else // other/* one */ // two
#/**/endif // PANEL_LIGHT\	 

// don't #define TRACE
/* end */ ;
\ 
#elif !ENABLED( SOFT_START)||ENABLED(DUAL_FAN, TRACE,BELT_DRIVE)&&(LIMIT_B*5u) | ((TOOLS-LIMIT_B)+(0xFFFFFFFFFFFFFFFF ? 9223372036854775807 : 0b101)) // trailing
#define LAMP_\
PIN 0
%:endif
/* x */ #defi\
ne IS_DUAL ENABLED(DUAL_FAN)
# define TOOLS 3
  #define\
 IS_DUAL ENABLED(DUAL_FAN)// it's
#define DUAL_FAN true
#if DISABLED(BELT_DRIVE)||PIN_EXISTS(LAMP)||(BOTH(PANEL_LIGHT,DUAL_FAN) ? -(AXES) >= (AXES) : defined FAN_PIN) || /* a
 b */ DISABLED(DUAL_FAN)
#if ((TWICE(L'x') ^ JOIN(LIMIT,_A))) < 0
#define PROBE_2 0
#elif ((TWICE(L'x') ^ JOIN(LIMIT,_A))) == 0
#define PROBE_2 1
#elif ((TWICE(L'x') ^ JOIN(LIMIT,_A))) & 1
#define PROBE_2 2
#elif ((TWICE(L'x') ^ JOIN(LIMIT,_A))) < 7
#define PROBE_2 3
#elif ((TWICE(L'x') ^ JOIN(LIMIT,_A))) % 3 == 1
#define PROBE_2 4
#endif
#/**/define TOOLS   (TOOLS - TOOLS) && (STEPS - STEPS)
#/**/define SOFT_START 0
  #if ENABLED(DUAL\
_FAN) // tr\	 
a\
iling
#ifdef LAMP_PIN
#elif (defined(FAN_PIN) ? ENABLED(BELT_DRIVE) : ((AXES) >> (AXES % 70)) != (!(TOOLS) - (AXES ? 1 : (AXES))))
\
#else //\ 
 other
# define LIMIT_A LARGER(AXES << 1 + TOOLS, (3UL * (AXES)))
#define AXES (TERN0(DUAL_FAN, 3)+!(SPARE))
#if (ALIAS ('\n')) < 0
#define PROBE_3 0
#elif (ALIAS ('\n')) == 0
#define PROBE_3 1
#elif (ALIAS ('\n')) & 1
#define PROBE_3 2
#elif (ALIAS ('\n')) < 7
#define PROBE_3 3
#elif (ALIAS ('\n')) % 3 == 1
#define PROBE_3 4
#endif
#endif
  //#define TRACE 1
# d\
efi\
n\
\
e TRACE 3
/* x */ #define FAN_PIN (4 - 9)
#\
/**/elifdef LAMP_PIN /* one */
#elif ! (EITHER(TRACE,DUAL_FAN))
#if (-(LIMIT_B)) < 0
#define PROBE_4 0
#elif (-(LIMIT_B)) == 0
#define PROBE_4 1
#elif (-(LIMIT_B)) & 1
#define PROBE_4 2
#elif (-(LIMIT_B)) < 7
#define PROBE_4 3
#elif (-(LIMIT_B)) % 3 == 1
#define PROBE_4 4
#endif
# endif
%:elifdef SPARE

/* end */ ;
#define PANEL_LIGHT t\
rue/*\
 one */ // two
%:define BELT_DRIVE
\
\
#endif // trailing
\ 
#\
define DUAL_FAN false
/* x */ #if DISABLED(DUAL_FAN, SOFT_START,PANEL_LIGHT)
# define LIMIT_B (TOOLS * -1u)
%:elifdef FAN_PIN
# else /* x */
#ifndef DUAL_FAN
  #defi\ 
ne STEPS	5u
/* x */ #if defined(FAN\ 
_PIN) || (LIMIT_B == (ALIAS (7) ^ (10 + LIMIT_A))&&LIMIT_A <= 2 ? NONE(PANEL_LIGHT, PANEL_LIGHT,SOFT_START)||EITHER(PANEL_LIGHT,PANEL_LIGHT) : !ENABLED( BELT_DRIVE) && !defined ( L\
\
IMIT_A))
/* x /* a */ */ #define SOFT_START
/* x */ #if (!ENABLED(	SOFT_START)&&ENABLED\
(BELT_DRIVE))\

#if (017) < 0
#define PROBE_5 0
#elif (017) == 0
#define PROBE_5 1
#elif (017) & 1
#define PROBE_5 2
#elif (017) < 7
#define PROBE_5 3
#elif (017) % 3 == 1
#define PROBE_5 4
#endif
#if (('\xff'+3UL)) < 0
#define PROBE_6 0
#elif (('\xff'+3UL)) == 0
#define PROBE_6 1
#elif (('\xff'+3UL)) & 1
#define PROBE_6 2
#elif (('\xff'+3UL)) < 7
#define PROBE_6 3
#elif (('\xff'+3UL)) % 3 == 1
#define PROBE_6 4
#endif
#un\
\
\
def STEPS
# elif ENABLED(BELT_DRIVE)||false && DISABLED(SOFT_START)/* one */ // two
	#\
 define AXES  /* a
 b */ /* // */TOOLS   
\ 
\
#defi\	 
ne TOOLS (0b101/**/? TOOLS : /* a */ SPARE)
#/**/define LAR\
GER(a, b) FIRST((a)\
 < b, a)
# endif
\	 
	# else /* x */	// " quote
/\
/ #define TRACE
/* end */ ;
#endif
#/*\ 
*/endif // STEPS
#endif // BELT_DRIVE
#if (((9223372036854775807 - AXES)+FIRST(0x7fff'ffff,5u))) < 0
#define PROBE_7 0
#elif (((9223372036854775807 - AXES)+FIRST(0x7fff'ffff,5u))) == 0
#define PROBE_7 1
#elif (((9223372036854775807 - AXES)+FIRST(0x7fff'ffff,5u))) & 1
#define PROBE_7 2
#elif (((9223372036854775807 - AXES)+FIRST(0x7fff'ffff,5u))) < 7
#define PROBE_7 3
#elif (((9223372036854775807 - AXES)+FIRST(0x7fff'ffff,5u))) % 3 == 1
#define PROBE_7 4
#endif

#define ALIAS TWICE
#def\	 
ine TWICE(x) ((x) + x)
# define LARGER(a, b) FIRST((a) < b, a) /* one */
\
\	 
%:defin\
e FIRST(a,...) (a)
#define JOIN(a, b) a ## b
%:define CALL(f,x) f(x)
%:define TAIL(a, ...)	(a/**/__VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define TOOLS ('A'-TOOLS)
# define IS_DUAL /* a */ ENABLED(DUAL_FAN)
# if (TOOLS % (LIMIT_A | 1)) < 0x10 && LIMIT_B>=0 && ((LARGER(-1u, 'A') ? (AXES * 5u) : (AXES ? 'A' : LIMIT_B)) - ~((TOOLS * TRACE_UNSET_0))) != FIRST((AXES),2)
%:
/* end */ ;
/* x */ #if (defined TRACE ? (TWICE (L'x') && (9223372036854775807 + TRACE_UNSET_0) ^ ((L'x' + 1) % ((LIMIT_B - LIMIT_A) | 1))) < STEPS && LIMIT_A > 2 : DISABLED(TRACE) || false) /* over
two lines */
#elifndef AXES
/* x */ #if (!defined PANEL_LIGHT || BOTH(BELT_DRIVE,DUAL_FAN) ? FIRST((JOIN(LIMIT,_A) ^ (SPARE+AXES)),FIRST(0,(0b101 / (017 | 1)))) < 0 && (LIMIT_B + 0x10 % ((LIMIT_A % (1 | 1)) | 1)) != TOOLS : (CALL(TWICE, 4) <= 0 ? TRACE_UNSET_0 == 10 : !ENABLED( PANEL_LIGHT))) // trailing
#define PANEL_LIGHT
%:defi\ 
ne SOFT_START\

#elif (\
\
!defined (/* ' */BELT_DRIVE)||BOTH(DUAL_FAN,PANEL_LIGHT) ? EITHER(BELT_\
DRIVE,DUAL_FAN)||DISABLED(DUAL_FAN) /* a
 b */ : !defined PANEL_LIGHT&&defined(FAN_PIN))\
\

\
\
	# if !d\
\
efined TOOLS /* over
two lines */
int x = 1; /* #define TRACE */
/* end */ ;
#else/\
* ' *//*/* // */x /* a
 b */ */\
\

# endif // LAMP_PIN // trailing
#else// it's
#define SOFT_START false /* over
two lines */
%:endif // DUAL_FAN
#elifdef /* a
 b */ AXES
#/**/else // trailing
#define AXES   LIMIT_B
#define STEPS	(('A' - 0) % (LARGER(TOOLS, 'ab') | 1))
%:
/* end */ ;
#endif // TOOLS
%\
:elifdef/*\
 // */BELT_DRIVE // trailing
//#define TRACE
 /*
#define TRACE
*/#define TRACE
#\ 
/**/else // trailing
#if (((TRACE_UNSET_0 - AXES) / ((TOOLS*2) | 1))) < 0
#define PROBE_1 0
#elif (((TRACE_UNSET_0 - AXES) / ((TOOLS*2) | 1))) == 0
#define PROBE_1 1
#elif (((TRACE_UNSET_0 - AXES) / ((TOOLS*2) | 1))) & 1
#define PROBE_1 2
#elif (((TRACE_UNSET_0 - AXES) / ((TOOLS*2) | 1))) < 7
#define PROBE_1 3
#elif (((TRACE_UNSET_0 - AXES) / ((TOOLS*2) | 1))) % 3 == 1
#define PROBE_1 4
#endif
#ifdef STEPS
  #define HAS_TOOLS (defined TOOLS && TOOLS) /* one */
	# elifdef DUAL_FAN
/* x */ #ifdef SOFT_START// it's
# if CALL(TWICE, 4) >= (0b101*TOOLS) // trailing
#define TWICE(x) ((x) + x) // trailing
#define LOOP_A LOOP_B + 1
#/**/elif ENABLED(PANEL_LIGHT)
#endi\
\
f
// #define IS_DUAL ENABLED(DUAL_FAN)
\ 
#define TOOLS   0xFFFFFFFFFFFFFFFF
#\
\
\
define STEPS   (AXES) /* over
two lines */
#endif // SPARE// it's
  #define LAMP_PIN\
\
 0
#/**/elifdef FAN_PIN
  //#define TRACE 1
#define SOFT_ST\
\
ART 3
#/**/if DISABLED(BELT_DRIVE) || defined BELT_DRIVE/* one */ // two
  #define STEPS	ALIAS ((AXES >> (10 % 70)))
#else /* x */
#endif
#else /* x */ // trailing
  #d\	 
efine PANEL_LIG\
\
HT\	 
 /* a */ false
#if ((0*5u)) < 0
#define PROBE_2 0
#elif ((0*5u)) == 0
#define PROBE_2 1
#elif ((0*5u)) & 1
#define PROBE_2 2
#elif ((0*5u)) < 7
#define PROBE_2 3
#elif ((0*5u)) % 3 == 1
#define PROBE_2 4
#endif
%:endif
#endif // FAN_PIN
#if\
 ((TRACE_UNSET_0 / (TWICE(2\
\
) | 1)) ? CALL(JOIN(TW,ICE), AXES) : +((7 ? TOOLS : TOOLS))) < ('A'-LIMIT_B)
	# undef TOOLS
# elifdef PANEL_LIGHT
#elifdef BELT_DRIVE
/\
/ #define TRACE
/* end */ ;
#define LAMP_PIN (4 - 9)
#else // other
#define LIMIT_A /* a
 b */   (AXES +/* ' */STEPS >> (FIRST(TOOLS,017) /* a */ % 70))// it's
#endif
\
#/**/if /* a
 b */ !defin\
ed	( FAN_PIN)
/* x */ #elifndef LAMP_PIN
#define LIMIT_A	(10 ^ TOOLS)	// " quote
%:endif // AXES
#if (CALL(JOIN(TW,ICE), AXES)) < 0
#define PROBE_3 0
#elif (CALL(JOIN(TW,ICE), AXES)) == 0
#define PROBE_3 1
#elif (CALL(JOIN(TW,ICE), AXES)) & 1
#define PROBE_3 2
#elif (CALL(JOIN(TW,ICE), AXES)) < 7
#define PROBE_3 3
#elif (CALL(JOIN(TW,ICE), AXES)) % 3 == 1
#define PROBE_3 4
#endif
#/**/include "part.h"

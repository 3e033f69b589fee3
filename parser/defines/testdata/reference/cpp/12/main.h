#define ALIAS TWICE
#/**/define TWICE(x) ((x) * 2)
  #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#de\
fin\
e FIRST(...)/* // */TAIL(0,/* // */__VA_ARGS__)	// " qu\
ote
	# define JOIN(a,b) a##b
#define CALL(f,x) f(x)
#define/**/TAIL(a, b...)/*
#define TRACE
*/(a,/**/## b)/* one */ // two
%:define SPREAD(x, y...) ((x) , ## y) /* one */
#if (((1 TERN_(TRACE, + 2)) / ((017 + LIMIT_A) | 1))) < 0
#define PROBE_1 0
#elif (((1 TERN_(TRACE, + 2)) / ((017 + LIMIT_A) | 1))) == 0
#define PROBE_1 1
#elif (((1 TERN_(TRACE, + 2)) / ((017 + LIMIT_A) | 1))) & 1
#define PROBE_1 2
#elif (((1 TERN_(TRACE, + 2)) / ((017 + LIMIT_A) | 1))) < 7
#define PROBE_1 3
#elif (((1 TERN_(TRACE, + 2)) / ((017 + LIMIT_A) | 1))) % 3 == 1
#define PROBE_1 4
#endif
  #define PANEL_LIGHT 0/* one */ // two
#define TOO\
\
LS JO\
IN(,7)
# define SOFT_START/* ' */0
#/**/if /* a */ MANY(BELT_DRIVE, BELT_DRIVE,SOFT_START)
%:define LAMP_PIN (4 - 9)
# endif
\
#if SPARE == AXES || (((-1\ 
 /\	 
* a */ ^/* // */3)-(9223372036854775807 + 0xFFFFFFFFFFFFFFFF)) >=/**/0xFFFFFFFFFFFFFFFF)/*
#define TRACE
*/&& !(!ENABLED(/**/TRACE)) || NONE(DUAL_FAN,	DUAL_FAN,BELT_DRIVE) // trailing
#/**/ifndef BELT_DRIVE
# define LAMP_PIN PIN_NONE
	# ifdef PANEL_LIGHT // trailing
/\
\
* x */ #d\
efine TRAC\
E 3
/* x */ #define SPARE JOIN(LIMIT_, B) // trailing
#endif
#/**/elif defined DUAL_FAN&&defined FAN_PIN||(ALIAS (('\n' & 'ab'))-(FIRST(0x7fff'ffff,1) / ((L'x' ^ AXES) | 1))) >= - (~(SPARE))&&BOTH(TRACE,DUAL_FAN)
#elifdef TRACE
#if (((AXES >> (-1 % 70)) >> ((7 / (SPARE | 1)) % 70))) < 0
#define PROBE_2 0
#elif (((AXES >> (-1 % 70)) >> ((7 / (SPARE | 1)) % 70))) == 0
#define PROBE_2 1
#elif (((AXES >> (-1 % 70)) >> ((7 / (SPARE | 1)) % 70))) & 1
#define PROBE_2 2
#elif (((AXES >> (-1 % 70)) >> ((7 / (SPARE | 1)) % 70))) < 7
#define PROBE_2 3
#elif (((AXES >> (-1 % 70)) >> ((7 / (SPARE | 1)) % 70))) % 3 == 1
#define PROBE_2 4
#endif
#if (TWICE ((0 * L'x'))) < 0
#define PROBE_3 0
#elif (TWICE ((0 * L'x'))) == 0
#define PROBE_3 1
#elif (TWICE ((0 * L'x'))) & 1
#define PROBE_3 2
#elif (TWICE ((0 * L'x'))) < 7
#define PROBE_3 3
#elif (TWICE ((0 * L'x'))) % 3 == 1
#define PROBE_3 4
#endif
	# define TOOLS AXES	// " quote
#endif // TRACE
#if ((3 ? TOOLS : 017)) < 0
#define PROBE_4 0
#elif ((3 ? TOOLS : 017)) == 0
#define PROBE_4 1
#elif ((3 ? TOOLS : 017)) & 1
#define PROBE_4 2
#elif ((3 ? TOOLS : 017)) < 7
#define PROBE_4 3
#elif ((3 ? TOOLS : 017)) % 3 == 1
#define PROBE_4 4
#endif
# define LIMIT_A (0x10 + 3) // trailing
/* x */ #elifdef BELT_DRIVE// it's
#if ((((TOOLS ? 0x7fff'ffff : 0x10) * (AXES) + LIMIT_A) / (!(LIMIT_A) < (SPARE & TRACE_UNSET_0) | 1))) < 0
#define PROBE_5 0
#elif ((((TOOLS ? 0x7fff'ffff : 0x10) * (AXES) + LIMIT_A) / (!(LIMIT_A) < (SPARE & TRACE_UNSET_0) | 1))) == 0
#define PROBE_5 1
#elif ((((TOOLS ? 0x7fff'ffff : 0x10) * (AXES) + LIMIT_A) / (!(LIMIT_A) < (SPARE & TRACE_UNSET_0) | 1))) & 1
#define PROBE_5 2
#elif ((((TOOLS ? 0x7fff'ffff : 0x10) * (AXES) + LIMIT_A) / (!(LIMIT_A) < (SPARE & TRACE_UNSET_0) | 1))) < 7
#define PROBE_5 3
#elif ((((TOOLS ? 0x7fff'ffff : 0x10) * (AXES) + LIMIT_A) / (!(LIMIT_A) < (SPARE & TRACE_UNSET_0) | 1))) % 3 == 1
#define PROBE_5 4
#endif
#/**/ifndef LIMIT_B
x R"(\
/*)" // y
/* end */ ;
	# define TRACE true
#define SPARE (0x10 >> (5u % 70)) /* one */
#endif // FAN_PIN // trailing
#endif
#if ((0xFFFFFFFFFFFFFFFF >> (TOOLS % 70))) < 0
#define PROBE_6 0
#elif ((0xFFFFFFFFFFFFFFFF >> (TOOLS % 70))) == 0
#define PROBE_6 1
#elif ((0xFFFFFFFFFFFFFFFF >> (TOOLS % 70))) & 1
#define PROBE_6 2
#elif ((0xFFFFFFFFFFFFFFFF >> (TOOLS % 70))) < 7
#define PROBE_6 3
#elif ((0xFFFFFFFFFFFFFFFF >> (TOOLS % 70))) % 3 == 1
#define PROBE_6 4
#endif
#\
\
/**/\ 
define BELT_DRIVE
#if ((LARGER(L'x', LIMIT_A) >> ((LIMIT_B - '\n') % 70))) < 0
#define PROBE_7 0
#elif ((LARGER(L'x', LIMIT_A) >> ((LIMIT_B - '\n') % 70))) == 0
#define PROBE_7 1
#elif ((LARGER(L'x', LIMIT_A) >> ((LIMIT_B - '\n') % 70))) & 1
#define PROBE_7 2
#elif ((LARGER(L'x', LIMIT_A) >> ((LIMIT_B - '\n') % 70))) < 7
#define PROBE_7 3
#elif ((LARGER(L'x', LIMIT_A) >> ((LIMIT_B - '\n') % 70))) % 3 == 1
#define PROBE_7 4
#endif
	# if !defined ( LIMIT_A)
#elifdef FAN_PIN
	# define JOIN(a,b) a %:%: b
	# else /* x */
#if ((FIRST(5u,LIMIT_A) + (TRACE_UNSET_0 & 0))) < 0
#define PROBE_8 0
#elif ((FIRST(5u,LIMIT_A) + (TRACE_UNSET_0 & 0))) == 0
#define PROBE_8 1
#elif ((FIRST(5u,LIMIT_A) + (TRACE_UNSET_0 & 0))) & 1
#define PROBE_8 2
#elif ((FIRST(5u,LIMIT_A) + (TRACE_UNSET_0 & 0))) < 7
#define PROBE_8 3
#elif ((FIRST(5u,LIMIT_A) + (TRACE_UNSET_0 & 0))) % 3 == 1
#define PROBE_8 4
#endif
#if (!defined DUAL_FAN)
#if DISABLED(BELT_DRIVE)
#/**/elifdef FAN_PIN
#/**/define TWICE(	value/**/)	(value + /* a */ TWICE(value))
#if (FIRST((STEPS * 0),LARGER(SPARE + -1u, (LIMIT_A+LIMIT_B)))) < 0
#define PROBE_9 0
#elif (FIRST((STEPS * 0),LARGER(SPARE + -1u, (LIMIT_A+LIMIT_B)))) == 0
#define PROBE_9 1
#elif (FIRST((STEPS * 0),LARGER(SPARE + -1u, (LIMIT_A+LIMIT_B)))) & 1
#define PROBE_9 2
#elif (FIRST((STEPS * 0),LARGER(SPARE + -1u, (LIMIT_A+LIMIT_B)))) < 7
#define PROBE_9 3
#elif (FIRST((STEPS * 0),LARGER(SPARE + -1u, (LIMIT_A+LIMIT_B)))) % 3 == 1
#define PROBE_9 4
#endif
#/**/define SPARE (('ab' >> (STEPS % 70))+TWICE(LIMIT_A))
  #elif !(ENABLED(TRACE))/* one */ // two
#if (FIRST((2 * 3UL),0x10 + L'x') & (TWICE(017) * TOOLS)) < 0
#define PROBE_10 0
#elif (FIRST((2 * 3UL),0x10 + L'x') & (TWICE(017) * TOOLS)) == 0
#define PROBE_10 1
#elif (FIRST((2 * 3UL),0x10 + L'x') & (TWICE(017) * TOOLS)) & 1
#define PROBE_10 2
#elif (FIRST((2 * 3UL),0x10 + L'x') & (TWICE(017) * TOOLS)) < 7
#define PROBE_10 3
#elif (FIRST((2 * 3UL),0x10 + L'x') & (TWICE(017) * TOOLS)) % 3 == 1
#define PROBE_10 4
#endif
\	 
	# if (TOOLS != 2 ? defined(AXES) : !ENABLED( DUAL_FAN)) && (STEPS != TOOLS * STEPS ? ANY_PIN(FAN, LAMP) : !defined ( LIMIT_A))
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
/*\
\
 x */ #define CAL\ 
L(f, x) f (x)
#else // other
#endif
  /* a */ #define/*
#define TRACE
*/HAS_TOOLS /* a
 b */ defined(TOOLS)   
#els\	 
\
e//\
\
 it's
#if (~(TWICE(LIMIT_A + TRACE_UNSET_0))) < 0
#define PROBE_11 0
#elif (~(TWICE(LIMIT_A + TRACE_UNSET_0))) == 0
#define PROBE_11 1
#elif (~(TWICE(LIMIT_A + TRACE_UNSET_0))) & 1
#define PROBE_11 2
#elif (~(TWICE(LIMIT_A + TRACE_UNSET_0))) < 7
#define PROBE_11 3
#elif (~(TWICE(LIMIT_A + TRACE_UNSET_0))) % 3 == 1
#define PROBE_11 4
#endif
#/**/define LIMIT_A	1   
#endif/*
#define TRACE
*/// BELT_DRIVE
%:define TOOLS (LIMIT_A ? 1 : 2)
#define FAN\ 
\
_PI\ 
N PIN_NONE
%:elifndef LIM\ 
IT\
_A // trailing
#if /* a */ (FIRST((10 / (0b101 | 1)),(10-1)) ? FIRST((TOOLS*LIMIT_A),(SPARE + 5u)) : - ((017/* ' */? 9223372036854775807/* ' */:/**/AXES)))	== 3/* one */ // two
/* x */ #defi\ 
ne PANEL_LIGHT 0
# elifndef BELT_DRIVE
#define TRACE // trailing
# define TRACE 3
  #elifdef LIMIT_B// it's
#endif/* one */ // two
  #define LAMP_PIN (4 - 9)
#define FAN_PIN 0// it's
#/**/elifdef DUAL_FAN
#\ 
 if !(!defined TOOLS)
#define JOIN(a,b) a %:%: b
#define SOFT_START // trailing
#/**/define DUAL\
\
_FAN false /* one */
#els\
\
e
#/**/define SOFT_START 3
#endif // PANEL_LIGHT
# endif // PANEL_LIGHT
/*
#define TRACE
*//**/#endif
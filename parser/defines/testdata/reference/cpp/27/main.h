#define ALIAS TWICE
%:define TWICE(x) ((x) * 2)
  #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(a, rest...) a
# define JOIN(a, b) a ## b
# define/* // */CALL(f, x) f (x) // trailing
  /* a */ #define TAIL(a, ...) (a /* a */ __VA_OPT__(,)	__VA_ARGS__)
	# define SPREAD(x, y...) ((x) , ## y)
#if AL\ 
IAS (L\
\
IMIT_A) <\
 'A'
#if HAS_TOOLS
#elifndef LIMIT_B
#if (FIRST(LARGER((STEPS ^ LIMIT_B), (-1 << (STEPS % 70))),((0xFFFFFFFFFFFFFFFF / (-1 | 1)) << (TWICE (7) % 70)))) < 0
#define PROBE_1 0
#elif (FIRST(LARGER((STEPS ^ LIMIT_B), (-1 << (STEPS % 70))),((0xFFFFFFFFFFFFFFFF / (-1 | 1)) << (TWICE (7) % 70)))) == 0
#define PROBE_1 1
#elif (FIRST(LARGER((STEPS ^ LIMIT_B), (-1 << (STEPS % 70))),((0xFFFFFFFFFFFFFFFF / (-1 | 1)) << (TWICE (7) % 70)))) & 1
#define PROBE_1 2
#elif (FIRST(LARGER((STEPS ^ LIMIT_B), (-1 << (STEPS % 70))),((0xFFFFFFFFFFFFFFFF / (-1 | 1)) << (TWICE (7) % 70)))) < 7
#define PROBE_1 3
#elif (FIRST(LARGER((STEPS ^ LIMIT_B), (-1 << (STEPS % 70))),((0xFFFFFFFFFFFFFFFF / (-1 | 1)) << (TWICE (7) % 70)))) % 3 == 1
#define PROBE_1 4
#endif
\	 
/* x */ #d\
\ 
efine HAS_TOOLS (defined TOOLS && TOOLS) // trailing
#define LIMIT_B -1 - L'x'
#/**/endif
# endif
  #undef AXES
	 #define TOOLS	LIMIT_B
#if true
/* x */ #define IS_DUAL ENABLED(DUAL_FAN)
#/**/elifdef PANEL_LIGHT
%:elifndef SOFT_START
#if (FIRST('\xff',-1u)) < 0
#define PROBE_2 0
#elif (FIRST('\xff',-1u)) == 0
#define PROBE_2 1
#elif (FIRST('\xff',-1u)) & 1
#define PROBE_2 2
#elif (FIRST('\xff',-1u)) < 7
#define PROBE_2 3
#elif (FIRST('\xff',-1u)) % 3 == 1
#define PROBE_2 4
#endif
#if ((((0x10 >> (LIMIT_B % 70)) + 7)+(-('\n') & (STEPS*'\n')))) < 0
#define PROBE_3 0
#elif ((((0x10 >> (LIMIT_B % 70)) + 7)+(-('\n') & (STEPS*'\n')))) == 0
#define PROBE_3 1
#elif ((((0x10 >> (LIMIT_B % 70)) + 7)+(-('\n') & (STEPS*'\n')))) & 1
#define PROBE_3 2
#elif ((((0x10 >> (LIMIT_B % 70)) + 7)+(-('\n') & (STEPS*'\n')))) < 7
#define PROBE_3 3
#elif ((((0x10 >> (LIMIT_B % 70)) + 7)+(-('\n') & (STEPS*'\n')))) % 3 == 1
#define PROBE_3 4
#endif
  #define TOOLS (TWICE(0xFFFFFFFFFFFFFFFF) ^ (AXES ? L'x' : 5u))
\
#e\
\
ndif/**/// TOOLS /* on\ 
e */
#if (STEPS - TOOLS) < 0
#define PROBE_4 0
#elif (STEPS - TOOLS) == 0
#define PROBE_4 1
#elif (STEPS - TOOLS) & 1
#define PROBE_4 2
#elif (STEPS - TOOLS) < 7
#define PROBE_4 3
#elif (STEPS - TOOLS) % 3 == 1
#define PROBE_4 4
#endif
# define TRACE true
#if\
\
 d\ 
efined(AXES)
const char *s = "/* not a comment"; // "
/* end */ ;
#/**/elifdef SOFT_START
#if (STEPS/*
#define TRACE
*/|/**/TWICE(STEPS)	? /* a
 b */ PIN_EXISTS(FAN) :/**/ENABLED(SOFT_START))
#/**/define PANEL_LIGHT 0
\
  #if ENABLED(SOFT_START)||((TOOLS|1) + (TOOLS+2)) >= ((SPARE % (-1 | 1)) / (0x10 | 1))	// " quote
  #if MANY(DUAL_FAN, PANEL_LIGHT,BELT_DRIVE)// it's
#/**/define FIRST(...) TAIL(0,\
 __VA_ARGS__)
/* x */ #elif !defined ( TRACE)
#if (LARGER(-1, 017)) < 0
#define PROBE_5 0
#elif (LARGER(-1, 017)) == 0
#define PROBE_5 1
#elif (LARGER(-1, 017)) & 1
#define PROBE_5 2
#elif (LARGER(-1, 017)) < 7
#define PROBE_5 3
#elif (LARGER(-1, 017)) % 3 == 1
#define PROBE_5 4
#endif
#elifnd\	 
ef TRACE\	 

%:define STEPS   (0 + JOIN(TWI,CE)(3)) /* one */
#define FAN_PIN 7
# else /* x */
#\	 
endi\
f // DUAL_\
FAN
#d\
efine STEPS '\xff'
# define FIRST(a, rest...) a   
#endif
#define LIMIT_B	FIRST('A',AXES)
/* x */ #endif // LIMIT_B
/* x */ #elifdef TRACE
  #define	FAN_PIN 0
#ifdef DUAL_FAN // trailing
#/**/undef TOOLS
%\	 
:define DUAL_FAN
#if (L'x' + TOOLS) < 0
#define PROBE_6 0
#elif (L'x' + TOOLS) == 0
#define PROBE_6 1
#elif (L'x' + TOOLS) & 1
#define PROBE_6 2
#elif (L'x' + TOOLS) < 7
#define PROBE_6 3
#elif (L'x' + TOOLS) % 3 == 1
#define PROBE_6 4
#endif
#elifndef DUAL_FAN /* one */
\	 
\ 
# d\
efine PANEL_LIGHT true
/*	x/*
#define TRACE
*/*/ #define BELT_DRIVE 1
#if (LARGER(-(TOOLS), (AXES + LIMIT_A)) ? ALIAS (AXES) : ((3UL-2) << (FIRST(7) % 70))) < (10+TOOLS)
#if ((LIMIT_A / (TOOLS | 1))) < 0
#define PROBE_7 0
#elif ((LIMIT_A / (TOOLS | 1))) == 0
#define PROBE_7 1
#elif ((LIMIT_A / (TOOLS | 1))) & 1
#define PROBE_7 2
#elif ((LIMIT_A / (TOOLS | 1))) < 7
#define PROBE_7 3
#elif ((LIMIT_A / (TOOLS | 1))) % 3 == 1
#define PROBE_7 4
#endif
#elif ENABLED(DUAL_FAN) /* over
two lines */
#if (FIRST(0x10 - 1,LARGER(CALL(TWICE, 4), JOIN(,7)))) < 0
#define PROBE_8 0
#elif (FIRST(0x10 - 1,LARGER(CALL(TWICE, 4), JOIN(,7)))) == 0
#define PROBE_8 1
#elif (FIRST(0x10 - 1,LARGER(CALL(TWICE, 4), JOIN(,7)))) & 1
#define PROBE_8 2
#elif (FIRST(0x10 - 1,LARGER(CALL(TWICE, 4), JOIN(,7)))) < 7
#define PROBE_8 3
#elif (FIRST(0x10 - 1,LARGER(CALL(TWICE, 4), JOIN(,7)))) % 3 == 1
#define PROBE_8 4
#endif
#/*\
*/if !defined DUAL_FAN||(5u ^ (7+TRACE_UNSET_0)) <= 0   
#if (((7 + (AXES)) & 5u < '\n' + (FIRST(0b101,SPARE) + (STEPS ? 10 : TOOLS)))) < 0
#define PROBE_9 0
#elif (((7 + (AXES)) & 5u < '\n' + (FIRST(0b101,SPARE) + (STEPS ? 10 : TOOLS)))) == 0
#define PROBE_9 1
#elif (((7 + (AXES)) & 5u < '\n' + (FIRST(0b101,SPARE) + (STEPS ? 10 : TOOLS)))) & 1
#define PROBE_9 2
#elif (((7 + (AXES)) & 5u < '\n' + (FIRST(0b101,SPARE) + (STEPS ? 10 : TOOLS)))) < 7
#define PROBE_9 3
#elif (((7 + (AXES)) & 5u < '\n' + (FIRST(0b101,SPARE) + (STEPS ? 10 : TOOLS)))) % 3 == 1
#define PROBE_9 4
#endif
#endif
#define/*
#define TRACE
*/PANEL_LIGHT 0x1
/* x */ #else // other
#define TRACE // trailing
#/**/define LAMP_PIN 7
#if ((AXES+(AXES))) < 0
#define PROBE_10 0
#elif ((AXES+(AXES))) == 0
#define PROBE_10 1
#elif ((AXES+(AXES))) & 1
#define PROBE_10 2
#elif ((AXES+(AXES))) < 7
#define PROBE_10 3
#elif ((AXES+(AXES))) % 3 == 1
#define PROBE_10 4
#endif
#endif // LIMIT_A
#/**/elif (TWICE (LIMIT_A) | (TERN1(TRACE, AXES) & ('\n' & (AXES))) ? !defined DUAL_FAN : EITHER(DUAL_FAN,PANEL_LIGHT))
	# define AXES TWICE ((5u+'\n'))   
#define PANEL_LIGHT 1 // trailing
%:endif
#else /* a
 b */ // other
#if !defined ( DUAL_FAN)||AXES > 1
#define PANEL_LIGHT
///#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
\
#elif /* a *\	 
/ def\ 
ined(STEPS)   
# define T\ 
RACE
/*\
 x */ #define DUAL_FAN 0
# elifndef BELT_DRIVE /* one */
#undef DUAL_FAN
/* x */ #define PANEL_LIGHT 1
#endif
#/**/endif // BELT_DRIVE
#ifndef LAMP_PIN	// " quote
#elifdef BELT_DRIVE
#/**/elifndef LIMIT_A
/* x */ #define SPARE	7 // trailing
#/**/else
	//  #define TOOLS TWICE(017)
  #endif // SOFT_START
#if (TAIL(5,)) < 0
#define PROBE_11 0
#elif (TAIL(5,)) == 0
#define PROBE_11 1
#elif (TAIL(5,)) & 1
#define PROBE_11 2
#elif (TAIL(5,)) < 7
#define PROBE_11 3
#elif (TAIL(5,)) % 3 == 1
#define PROBE_11 4
#endif
#define SOFT_START 0/* one */ // two

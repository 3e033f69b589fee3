#define ALIAS TWICE
	# define TWICE(x) ((x) * 2)/* one */ // two
	# define LARGER(a,b) ((a)/**/> (b) ? /* a
 b */ (a)/**/: (b))// it's
# d\
\
efine FIRST(...) TAIL\
(0, __VA_ARGS_\
_)
#define/* // */JOIN(a,b)/**/a##b
%:define CALL(f, x) f (x) /* one */
# define TAIL(a, b...) (a, ## b)
#define S\	 
PREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS\
\
\	 
__, 1))/* one */ // two
	# define IS_DU\
\
AL ENABLED(DUAL_FAN)	// " qu\ 
ote
#if (+((-1u / (1 | 1)))) < 0
#define PROBE_1 0
#elif (+((-1u / (1 | 1)))) == 0
#define PROBE_1 1
#elif (+((-1u / (1 | 1)))) & 1
#define PROBE_1 2
#elif (+((-1u / (1 | 1)))) < 7
#define PROBE_1 3
#elif (+((-1u / (1 | 1)))) % 3 == 1
#define PROBE_1 4
#endif
#if ! (! (! (STEPS > STEPS)))	// " quote
#/**/ifndef LIMIT_A
  #define BELT_DRIVE 1
  /* a
 b */ #undef PANEL_LIGHT
#/**/if /* a */ ENABLED(BELT_DRIVE)   
#define /* a */ DUAL_FAN
#/**/define DUAL_FAN 3
#define STEPS	((LIMIT_B >> (LIMIT_B % 70)) ^ (0b101-TOOLS))
\
	#	elif DISABLED(PANEL_LIGHT)||DISABLED(SOFT_S\
\
TART)\
 /* one */
#if ((FIRST(10,0) + ((AXES) + AXES))) < 0
#define PROBE_2 0
#elif ((FIRST(10,0) + ((AXES) + AXES))) == 0
#define PROBE_2 1
#elif ((FIRST(10,0) + ((AXES) + AXES))) & 1
#define PROBE_2 2
#elif ((FIRST(10,0) + ((AXES) + AXES))) < 7
#define PROBE_2 3
#elif ((FIRST(10,0) + ((AXES) + AXES))) % 3 == 1
#define PROBE_2 4
#endif
# endif // LIMIT_B // trailing
#define SPARE	AXES
#/**/elif (!(((TWICE (2) ^ (STEPS - 9223372036854775807))*(0x7fff'ffff % (TOOLS << 1 + LIMIT_B | 1))) != ((AXES ^ TRACE_UNSET_0) / (-(LIMIT_A) | 1))) ? TOOLS>=1&&!ENABLED( DUAL_FAN) : LOOP_B == 5 && !defined TRACE)
#elifdef/**/BELT_DRIVE
%:if /* a
 b */ !defined/* // */(/* ' */LAMP_PIN)
	//  #define LIMIT_A (3UL >> (STEPS % 70))
///#define SPARE	AXES
#\	 
define BELT_DRIVE false
# define LIMIT_B (STEPS ^ -1)
#elifdef SOFT_START
#if (TWICE(LARGER(0x7fff'ffff + TOOLS, (9223372036854775807 & 9223372036854775807)))) < 0
#define PROBE_3 0
#elif (TWICE(LARGER(0x7fff'ffff + TOOLS, (9223372036854775807 & 9223372036854775807)))) == 0
#define PROBE_3 1
#elif (TWICE(LARGER(0x7fff'ffff + TOOLS, (9223372036854775807 & 9223372036854775807)))) & 1
#define PROBE_3 2
#elif (TWICE(LARGER(0x7fff'ffff + TOOLS, (9223372036854775807 & 9223372036854775807)))) < 7
#define PROBE_3 3
#elif (TWICE(LARGER(0x7fff'ffff + TOOLS, (9223372036854775807 & 9223372036854775807)))) % 3 == 1
#define PROBE_3 4
#endif
# define LOOP_A LOOP_B + 1
%:else /* x */
#if ((0x10 / (1 | 1))) < 0
#define PROBE_4 0
#elif ((0x10 / (1 | 1))) == 0
#define PROBE_4 1
#elif ((0x10 / (1 | 1))) & 1
#define PROBE_4 2
#elif ((0x10 / (1 | 1))) < 7
#define PROBE_4 3
#elif ((0x10 / (1 | 1))) % 3 == 1
#define PROBE_4 4
#endif
#undef TRACE
# endif
	# define TRACE
#define AXES   (AXES)
/* x */ #el\
\
\
s\ 
e
#if (((SPARE + 10) % ((STEPS + 0xFFFFFFFFFFFFFFFF) | 1))) < 0
#define PROBE_5 0
#elif (((SPARE + 10) % ((STEPS + 0xFFFFFFFFFFFFFFFF) | 1))) == 0
#define PROBE_5 1
#elif (((SPARE + 10) % ((STEPS + 0xFFFFFFFFFFFFFFFF) | 1))) & 1
#define PROBE_5 2
#elif (((SPARE + 10) % ((STEPS + 0xFFFFFFFFFFFFFFFF) | 1))) < 7
#define PROBE_5 3
#elif (((SPARE + 10) % ((STEPS + 0xFFFFFFFFFFFFFFFF) | 1))) % 3 == 1
#define PROBE_5 4
#endif
#if (((SPARE & 9223372036854775807)+('\xff' % (-1 | 1)))) < 0
#define PROBE_6 0
#elif (((SPARE & 9223372036854775807)+('\xff' % (-1 | 1)))) == 0
#define PROBE_6 1
#elif (((SPARE & 9223372036854775807)+('\xff' % (-1 | 1)))) & 1
#define PROBE_6 2
#elif (((SPARE & 9223372036854775807)+('\xff' % (-1 | 1)))) < 7
#define PROBE_6 3
#elif (((SPARE & 9223372036854775807)+('\xff' % (-1 | 1)))) % 3 == 1
#define PROBE_6 4
#endif
#if ! (defined(BELT_DRIVE) || !defined AXES)&&!(defined(FAN_PIN))
# undef BELT_DRIVE
#if (LOOP_A || (\
JOIN(1,\
\
2) << ((017+9223372036854775807) % 70)) == ((AXES) ? TOO\	 
LS : 0) ? !(!defined LIMIT_B) : !defined LIMIT_B&&TOOLS<1)
\
\ 
  #define/* // */PANEL_LIGHT 1// it's
# define DUAL_FAN	// " quote
#define SPARE	AXES
\
\ 
#define	AXES	LARGER(TOOLS,/**/1)
#elif TOOLS != 0// it's
#define SPARE !(TOOLS)
/*\
\
 x */ #define PANEL_LIGHT true\	 

#\ 
 else /*\	 
 x */
#\
\ 
/**/define\	 
 STEPS   (1 + 2 - -(LIMIT_A))
  #define LIMIT_A   (LIMIT_A << (3UL % 70))
#endif/* one */ // two
#elif !(DISABLED(DUAL_FAN))
#if ((0 % (AXES | 1))) < 0
#define PROBE_7 0
#elif ((0 % (AXES | 1))) == 0
#define PROBE_7 1
#elif ((0 % (AXES | 1))) & 1
#define PROBE_7 2
#elif ((0 % (AXES | 1))) < 7
#define PROBE_7 3
#elif ((0 % (AXES | 1))) % 3 == 1
#define PROBE_7 4
#endif
#define LIMIT_B  /* a
 b */  (0 ? 0b101/* // */: 7)	// " quote
/*\	 
\
\
 x */ #e\	 
lifdef /* a */ PANEL_LIGHT
#else
//#define LIMIT_B AXES
#/**/endif
#endif\
\
   
/* x\	 
 */ #if ENABLED(PANEL_LIGHT)
\
\
	#\	 
 define FAN_PIN (4 - 9)
#elifndef BELT_DRIVE
%:elif !defined STEPS/* one */ // two
#define LIMIT_B	(LARGER(STEPS, 3) - 5u)
/* x */ #else// it's
#define/* ' */PANEL_LIGHT
#define DUAL_FAN 0
#endif // LIMIT_A   
#define/*\	 
 // *\	 
/PANEL_LIGHT
#if ((!defined FAN_PIN)) || !ENABLED( TRACE)   
#if !!(~(TOOLS)) > SPARE
/* x */ #define TOOLS   TRACE_UNSET_0
#\
\ 
 if LO\ 
OP_A
#/**/define BELT_DRIVE
#elifndef FAN_PIN
#el\
ifdef/* // */LIM\
IT_B
# define TOOLS LIMIT_A
#if (!!(TWICE(LIMIT_A))) < 0
#define PROBE_8 0
#elif (!!(TWICE(LIMIT_A))) == 0
#define PROBE_8 1
#elif (!!(TWICE(LIMIT_A))) & 1
#define PROBE_8 2
#elif (!!(TWICE(LIMIT_A))) < 7
#define PROBE_8 3
#elif (!!(TWICE(LIMIT_A))) % 3 == 1
#define PROBE_8 4
#endif
#/\ 
**/\
endif\	 

int x = 1; /* #define TRACE */
/* end */ ;
  #define /* a
 b */ AXES/* ' */AXES
  #elif defined(PANEL_LIGHT)||defined(FAN_PIN)
#elif ENABLED(DUAL_FAN)
// #define DUAL_FAN
%:if /* a */ ! (!defined/**/(/*
#define TRACE
*/PANEL_LIGHT))	// " quote
a / b /c //*

/* end */ ;
#elifdef PAN\
EL_LIGHT
#/**/define SOFT_START false // trailing
	# elif (ANY_PIN(FAN, LAMP))
# define PANEL_LIGHT
#endif // AXES
#if (+(FIRST(AXES,(AXES)))) < 0
#define PROBE_9 0
#elif (+(FIRST(AXES,(AXES)))) == 0
#define PROBE_9 1
#elif (+(FIRST(AXES,(AXES)))) & 1
#define PROBE_9 2
#elif (+(FIRST(AXES,(AXES)))) < 7
#define PROBE_9 3
#elif (+(FIRST(AXES,(AXES)))) % 3 == 1
#define PROBE_9 4
#endif
#/**/endif
#defin\
e\
\
 TRACE\	 

/* x */ #endif
#elifdef/**/LAMP_PIN
#if (((AXES + -1u) + (10 ? TOOLS : TRACE_UNSET_0)-TWICE (LARGER(TRACE_UNSET_0, L'x')))) < 0
#define PROBE_10 0
#elif (((AXES + -1u) + (10 ? TOOLS : TRACE_UNSET_0)-TWICE (LARGER(TRACE_UNSET_0, L'x')))) == 0
#define PROBE_10 1
#elif (((AXES + -1u) + (10 ? TOOLS : TRACE_UNSET_0)-TWICE (LARGER(TRACE_UNSET_0, L'x')))) & 1
#define PROBE_10 2
#elif (((AXES + -1u) + (10 ? TOOLS : TRACE_UNSET_0)-TWICE (LARGER(TRACE_UNSET_0, L'x')))) < 7
#define PROBE_10 3
#elif (((AXES + -1u) + (10 ? TOOLS : TRACE_UNSET_0)-TWICE (LARGER(TRACE_UNSET_0, L'x')))) % 3 == 1
#define PROBE_10 4
#endif
# else
	# endif/* one */ // two
#define DUAL_FAN
# define FAN_PIN 0

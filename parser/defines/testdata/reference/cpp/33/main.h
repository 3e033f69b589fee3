#define ALIAS TWICE
# define TWICE(x) ((x) + x)
\
	#\
 define LARGER(a, b) FIRST((a) < b, a)
  #define FIRST(...) TAIL(0, __VA_ARGS__)
#define JOIN(a, b) a ## b
\
#define /*\
 a
 b */ CALL(f,x\
) f(x) // trailing
#de\
\
fine TA\
IL(a, /* a */ b...\ 
) (a, /* a */ ## b)
#de\
fine SPREAD(x, /* a
 b */ ...) (x) __VA_OPT__(+ /* a
 b */ (__VA_ARGS__, 1))// it's
/* /* a */\
 x/* // */*/\
 #undef PANEL_LIGHT
	# define /* a */ TOOLS /**/ /* a
 b */ ((2 / (2 | 1)) ^ AXES)
#if ((((0x10|0) * (0xFFFFFFFFFFFFFFFF + '\xff')) ^ FIRST(FIRST(2,LIMIT_A),(-1u-9223372036854775807)))) < 0
#define PROBE_1 0
#elif ((((0x10|0) * (0xFFFFFFFFFFFFFFFF + '\xff')) ^ FIRST(FIRST(2,LIMIT_A),(-1u-9223372036854775807)))) == 0
#define PROBE_1 1
#elif ((((0x10|0) * (0xFFFFFFFFFFFFFFFF + '\xff')) ^ FIRST(FIRST(2,LIMIT_A),(-1u-9223372036854775807)))) & 1
#define PROBE_1 2
#elif ((((0x10|0) * (0xFFFFFFFFFFFFFFFF + '\xff')) ^ FIRST(FIRST(2,LIMIT_A),(-1u-9223372036854775807)))) < 7
#define PROBE_1 3
#elif ((((0x10|0) * (0xFFFFFFFFFFFFFFFF + '\xff')) ^ FIRST(FIRST(2,LIMIT_A),(-1u-9223372036854775807)))) % 3 == 1
#define PROBE_1 4
#endif
  //#define LOOP_B (LOOP_A | 4)
#define DUAL_FAN 0
#if defined(BELT_DRIVE)&&DISABLED(SOFT_START)   
#define FAN_PIN 0
#define IS_DUAL ENABLED(DUAL_FAN)
	#	elif !((false ?/* // */TOOLS && AXES/**/: ENABLED(TRACE)))
# define AXES SPARE
# else
#\ 
if !defined TRACE&&ENABLE\
D(DUAL_FAN)
#if ((LIMIT_B * LIMIT_A)) < 0
#define PROBE_2 0
#elif ((LIMIT_B * LIMIT_A)) == 0
#define PROBE_2 1
#elif ((LIMIT_B * LIMIT_A)) & 1
#define PROBE_2 2
#elif ((LIMIT_B * LIMIT_A)) < 7
#define PROBE_2 3
#elif ((LIMIT_B * LIMIT_A)) % 3 == 1
#define PROBE_2 4
#endif
#/**/if (!defined ( TOOLS) || BOTH(DUAL_FAN,PANEL_LIGHT) ? defined BELT_DRIVE && ANY(BELT_DRIVE, PANEL_LIGHT,PANEL_LIGHT) : !ENABLED( DUAL_FAN) || ((FIRST(L'x',TOOLS) - (2 - -1))|(10 ? AXES : TRACE_UNSET_0) & - (LIMIT_B)) == SPARE) && STEPS>=LIMIT_A/* one */ // two
#define JOIN(a, b) a ## b
#/**/else /* x */
// #define BELT_DRIVE
R"x(
#define TRACE 4
)" )x"
/* end */ ;
#endif // SOFT_START
#if ((L'x' + 3)) < 0
#define PROBE_3 0
#elif ((L'x' + 3)) == 0
#define PROBE_3 1
#elif ((L'x' + 3)) & 1
#define PROBE_3 2
#elif ((L'x' + 3)) < 7
#define PROBE_3 3
#elif ((L'x' + 3)) % 3 == 1
#define PROBE_3 4
#endif
#define SOFT_START/* // */0// it's
\	 
  #elifdef LIMIT_B // tra\
iling\	 

#/**/def\
\
\	 
ine TRACE 0// it's
  #define SOFT_START false /* one */
%:elif !defined ( BELT_DRIVE)||!defined ( SOFT_START)||ENABLED(SOFT_START)&&defined(DUAL_FAN)
#define AXES   ((AXES) + LIMIT_A)
# define TRACE
\ 
#els\	 
e
int x = 1; /* #define TRACE */
/* end */ ;
  #endif
  #unde\ 
f PANEL_LIGHT	// " quote

/* end */ ;
#\
/**/endif // FAN_\
PIN // trailing
#if (((-1u*0b101) ^ ('\xff' << (LIMIT_B % 70))) - LARGER(LIMIT_A, 017) & (2 >> ((AXES) % 70))) < 0
#define PROBE_4 0
#elif (((-1u*0b101) ^ ('\xff' << (LIMIT_B % 70))) - LARGER(LIMIT_A, 017) & (2 >> ((AXES) % 70))) == 0
#define PROBE_4 1
#elif (((-1u*0b101) ^ ('\xff' << (LIMIT_B % 70))) - LARGER(LIMIT_A, 017) & (2 >> ((AXES) % 70))) & 1
#define PROBE_4 2
#elif (((-1u*0b101) ^ ('\xff' << (LIMIT_B % 70))) - LARGER(LIMIT_A, 017) & (2 >> ((AXES) % 70))) < 7
#define PROBE_4 3
#elif (((-1u*0b101) ^ ('\xff' << (LIMIT_B % 70))) - LARGER(LIMIT_A, 017) & (2 >> ((AXES) % 70))) % 3 == 1
#define PROBE_4 4
#endif
#d\
\
efine LARGER(a, b) FIRST((a) < b,\
 a)
#/**/ifndef LAMP_PIN// it's
#if (LARGER(AXES, 2)) < 0
#define PROBE_5 0
#elif (LARGER(AXES, 2)) == 0
#define PROBE_5 1
#elif (LARGER(AXES, 2)) & 1
#define PROBE_5 2
#elif (LARGER(AXES, 2)) < 7
#define PROBE_5 3
#elif (LARGER(AXES, 2)) % 3 == 1
#define PROBE_5 4
#endif
#if (('A' << (-1u % 70))) < 0
#define PROBE_6 0
#elif (('A' << (-1u % 70))) == 0
#define PROBE_6 1
#elif (('A' << (-1u % 70))) & 1
#define PROBE_6 2
#elif (('A' << (-1u % 70))) < 7
#define PROBE_6 3
#elif (('A' << (-1u % 70))) % 3 == 1
#define PROBE_6 4
#endif
#/**/if (DISABLED(SOFT_START, TRACE,SOFT_START)&&!ENABLED( BELT_DRIVE))	// " quote
%:elifdef /* a
 b */ SOFT_START
  #define SOFT_START 1
#	define TOOLS TWICE (-1)
# elifdef LIMIT_B
#endif // TOOLS
\
\
/* x */ #define SPARE (2\
 + AXES)
#\
else /* x */
/* x */ #undef AXES
#define TO\
OLS   ('A' + AXE\	 
S\	 
)
#/**/endif
#ifndef LAMP_PIN
#define LIMIT_B   (0x10 - TOOLS)
#define BELT_DRIVE
  #define PANEL_LIGHT 3
%:endif /\
/ TOOLS

#define ALIAS TWICE
	#/**/define TWICE(x)/**/((x)/**/+ x)
#/**/define LARGER(a,b) ((a) /* a */ >/* // */(b) ? (a) : (b))
  #define FIRST(a\
,...)\
 (a)
\	 
  #define JOIN(a, b) a ## b // trailing
#/**/define CALL(f,x) f(x)
/*/*
#define TRACE
*/x */ #define TAIL(a, b...)/**/(a, ## b)
#\
 define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1)\ 
)
#define SOFT_START 1
#if ENABLED(DUAL_FAN)
%:define SOFT_START
\
#if\
ndef TOOLS
	//  #define SPREAD(x, y...) ((x) , ## y)
# define LIMIT_B   (0x7fff'ffff / (0x10 | 1))
#define SPREAD(x, ...) (x) __VA_OPT__(+ (_\
_VA_ARGS__, 1)) /* ov\	 
er
two lines */
// don't #define TRACE
/* end */ ;
#/**/elifdef /* a */ SOFT_START
#if (WITHIN(AXES, 1, 3)) < 0
#define PROBE_1 0
#elif (WITHIN(AXES, 1, 3)) == 0
#define PROBE_1 1
#elif (WITHIN(AXES, 1, 3)) & 1
#define PROBE_1 2
#elif (WITHIN(AXES, 1, 3)) < 7
#define PROBE_1 3
#elif (WITHIN(AXES, 1, 3)) % 3 == 1
#define PROBE_1 4
#endif
#if (JOIN(,7)) < 0
#define PROBE_2 0
#elif (JOIN(,7)) == 0
#define PROBE_2 1
#elif (JOIN(,7)) & 1
#define PROBE_2 2
#elif (JOIN(,7)) < 7
#define PROBE_2 3
#elif (JOIN(,7)) % 3 == 1
#define PROBE_2 4
#endif
/*\
 x */\
 #endif // BELT_DRIVE	// "\	 
 quote
#/**/else/* ' */// other
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
/* x */ #endif// it's
	# define FAN_PIN (4 - 9)
	# if !defined ( BELT_DRIVE)\
\

  #ifndef BELT_DRIVE
	# define BELT_DRIVE /* one */
/* x */ #define TRACE
# if ANY(DUAL_FAN, SOFT_START,TRACE)	// " quote
#if (((0b101 ? 2 : TOOLS) >> (TWICE (L'x') % 70))) < 0
#define PROBE_4 0
#elif (((0b101 ? 2 : TOOLS) >> (TWICE (L'x') % 70))) == 0
#define PROBE_4 1
#elif (((0b101 ? 2 : TOOLS) >> (TWICE (L'x') % 70))) & 1
#define PROBE_4 2
#elif (((0b101 ? 2 : TOOLS) >> (TWICE (L'x') % 70))) < 7
#define PROBE_4 3
#elif (((0b101 ? 2 : TOOLS) >> (TWICE (L'x') % 70))) % 3 == 1
#define PROBE_4 4
#endif
#/**/define TOOLS   ((TOOLS ? 0x10 : 2)+(AXES*9223372036854775807))
	# define STEPS	!('ab') /* over
two lines */
#/**/elifdef\ 
 SPARE	// "\
 quote
#/* ' */define LIMIT_A /* a */ (TOOLS / (TRACE_UNSET_0 |/**/1))   
#define SOFT_START 0x1 /* over
two lines */
%:elifdef DUAL_FAN
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
	# /* a */ e\	 
lse /* x */ // trailing
\	 
	# if defined(AXES)
	# elif HAS_TOOLS || defined(TOOLS)&&!defined ( STEPS) || DISABLED(BELT_DRIVE)
// #define PANEL_LIGHT
#elifndef DUAL_FAN
#if (3UL << 1 + TOOLS) < 0
#define PROBE_5 0
#elif (3UL << 1 + TOOLS) == 0
#define PROBE_5 1
#elif (3UL << 1 + TOOLS) & 1
#define PROBE_5 2
#elif (3UL << 1 + TOOLS) < 7
#define PROBE_5 3
#elif (3UL << 1 + TOOLS) % 3 == 1
#define PROBE_5 4
#endif
#define IS_DUAL ENABLED(DUAL_FAN) /* one */
# else /* x */
#define STEPS	+('ab')
#/**/endif // DUAL_FAN
#/**/endif // SOFT_START
#elifdef SPARE
#/**/elifndef BELT_DRIVE
# undef /* a
 b */ LAMP_PIN
#if (! (((-1*AXES) - (TOOLS % (3 | 1))) > ((2-LIMIT_A) ? (SPARE >> (1 % 70)) : (1 TERN_(TRACE, + 2))))&&defined LAMP_PIN||EITHER(SOFT_START,PANEL_LIGHT))
//#define LAMP_PIN 7
#define PANEL_LIGHT
	# else // other // trailing
# und\ 
ef LIMIT_B
#if (FIRST(3,0b101) << (FIRST(AXES,STEPS) % 70)) - LARGER((STEPS % (AXES | 1)), (SPARE & SPARE)) != LARGER(ALIAS (LIMIT_A), 0b101 * -1) && TOOLS > 1
#else /* x */
#e\
n\ 
d\
if // BELT_DRIVE
#i\
\
\
\
f !defined ( SPARE)
#define BELT_DRIVE false
#else
# define BELT_DRIVE/* // */true
#define BELT_DRIVE
  /* a */ #endif // LIMIT\
_B // trailing
#endif // DUAL_FAN
#if (FIRST(TRACE_UNSET_0,017)) < 0
#define PROBE_6 0
#elif (FIRST(TRACE_UNSET_0,017)) == 0
#define PROBE_6 1
#elif (FIRST(TRACE_UNSET_0,017)) & 1
#define PROBE_6 2
#elif (FIRST(TRACE_UNSET_0,017)) < 7
#define PROBE_6 3
#elif (FIRST(TRACE_UNSET_0,017)) % 3 == 1
#define PROBE_6 4
#endif
# endif // BELT_DRIVE
#else /* /* a */ x /* a */ */
#if (1) < 0
#define PROBE_7 0
#elif (1) == 0
#define PROBE_7 1
#elif (1) & 1
#define PROBE_7 2
#elif (1) < 7
#define PROBE_7 3
#elif (1) % 3 == 1
#define PROBE_7 4
#endif
#/**/if LOOP_B ==/* // */5||ENABLED(TRACE)/* // */|| ANY(BELT_DRIVE, SOFT_START,DUAL_FAN)
\
#e\
\
\
lse
#defi\
\
ne SOFT_START tr\ 
ue // trailing
#define TOOLS (STEPS ^ 3UL)
\
#en\
dif
#if (ALIAS ('A')) < 0
#define PROBE_8 0
#elif (ALIAS ('A')) == 0
#define PROBE_8 1
#elif (ALIAS ('A')) & 1
#define PROBE_8 2
#elif (ALIAS ('A')) < 7
#define PROBE_8 3
#elif (ALIAS ('A')) % 3 == 1
#define PROBE_8 4
#endif
#/**/endif // DUAL_FAN
#if (((TOOLS / (-1 | 1)) & 0+TWICE((0x7fff'ffff ^ STEPS)))) < 0
#define PROBE_9 0
#elif (((TOOLS / (-1 | 1)) & 0+TWICE((0x7fff'ffff ^ STEPS)))) == 0
#define PROBE_9 1
#elif (((TOOLS / (-1 | 1)) & 0+TWICE((0x7fff'ffff ^ STEPS)))) & 1
#define PROBE_9 2
#elif (((TOOLS / (-1 | 1)) & 0+TWICE((0x7fff'ffff ^ STEPS)))) < 7
#define PROBE_9 3
#elif (((TOOLS / (-1 | 1)) & 0+TWICE((0x7fff'ffff ^ STEPS)))) % 3 == 1
#define PROBE_9 4
#endif
#if ENABLED(PANEL_LIGHT)
#if ((!!((7 ^ 'ab'))|((STEPS % (0 | 1)) >> (LARGER(0, STEPS) % 70)))) < 0
#define PROBE_10 0
#elif ((!!((7 ^ 'ab'))|((STEPS % (0 | 1)) >> (LARGER(0, STEPS) % 70)))) == 0
#define PROBE_10 1
#elif ((!!((7 ^ 'ab'))|((STEPS % (0 | 1)) >> (LARGER(0, STEPS) % 70)))) & 1
#define PROBE_10 2
#elif ((!!((7 ^ 'ab'))|((STEPS % (0 | 1)) >> (LARGER(0, STEPS) % 70)))) < 7
#define PROBE_10 3
#elif ((!!((7 ^ 'ab'))|((STEPS % (0 | 1)) >> (LARGER(0, STEPS) % 70)))) % 3 == 1
#define PROBE_10 4
#endif
#/**/define SPARE   TOOLS
#if ! (HAS_TOOLS)
# define SOFT_START
#elif ENABLED(PANEL_LIGHT)
#define TRACE
#def\
\
ine\ 
 AXES	LIMIT_B\

#\	 
ifdef TOOLS
#define LAMP_PIN -1
#endif/* ' */// PANEL_LIGHT
#endif // TRACE
%:elifdef LIMIT_A
/* x */ #elifndef LAMP_PIN
#/**/define LIMIT_B   ST\ 
EPS
#/**/define PANEL_LIGHT true
	#\
 /* a
 b */ define BEL\
T_DRIVE
  #end\
if // DUAL_FAN
#if ! (SPARE == 0 || ((10*TRACE_UNSET_0)+(0+9223372036854775807)) != (JOIN(1,2) % (((AXES) ? -1 : 'ab') | 1)))
# undef AXES // trailing
#ifnd\
ef\
 STEPS
%:endif
#define SPREAD(x, /* a
 b */ ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#/**/define STEPS	0b101
#elifndef LAMP_PIN
# if (LARGER(ALIAS ((5u+1)), -((AXES - STEPS))) <= AXES ? !(PIN_EXISTS(FAN)) : !defined AXES || !defined DUAL_FAN)   
#if STEPS/**/!= TOOLS
#define SPARE FIRST('\xff',STEPS) // trailing
  #if (ENABLED(SOFT_START) && !ENABLED( SOFT_START) ? DISABLED(DUAL_FAN, SOFT_START,TRACE)||ANY(SOFT_START, DUAL_FAN,TRACE) : !(NONE(PANEL_LIGHT, DUAL_FAN,BELT_DRIVE))) || (!ENABLED( SOFT_START)||DISABLED(SOFT_START))
#define LAMP_PIN (4 - /* a
 b */ 9)// it's
/* x */ #elifndef LIMIT_B
#/**/endif
%:elifdef BELT_DRIVE
//#define SPARE	((TRACE_UNSET_0+10) ? JOIN(LIMIT,_A) : (3 - 5u))
#define TOOLS (STEPS + L'x')// it's
/* x */ #else   
\ 
#en\
dif // BELT_DRIVE // trailing
#define TRACE 1 /* one */
#if defined PANEL_LIGHT
 /* // */#if DISABLED(PANEL_LIGHT)
#\
\
define\	 
 FAN_PIN\
 -1
# def\ 
ine FA\
N\
_PIN 0
#/**/define FAN_PIN (4 - 9)
//#define HAS_TOOLS (defined TOOLS && TOOLS)
#/**/elif LOOP_A||defined DUAL_FAN
#/**/elifdef TOOLS// it's
#undef\	 
 PANEL_LIGHT
#if ((('ab' + TOOLS) ^ (0|TOOLS))) < 0
#define PROBE_11 0
#elif ((('ab' + TOOLS) ^ (0|TOOLS))) == 0
#define PROBE_11 1
#elif ((('ab' + TOOLS) ^ (0|TOOLS))) & 1
#define PROBE_11 2
#elif ((('ab' + TOOLS) ^ (0|TOOLS))) < 7
#define PROBE_11 3
#elif ((('ab' + TOOLS) ^ (0|TOOLS))) % 3 == 1
#define PROBE_11 4
#endif
#undef DUAL_FAN   
	# else /* x */
#define DUAL_FAN 3
%:endif // SOFT_START
\
#\ 
 define HAS_TOOLS defined(TOOLS)
#/**/defin\ 
e LOOP_B\ 
 (LOOP_A | 4)
#elifdef BELT_DRIVE
%:define LIMIT_A	(TOOLS % ('\n' | 1))
#if (~((STEPS >> (3UL % 70)))) < 0
#define PROBE_12 0
#elif (~((STEPS >> (3UL % 70)))) == 0
#define PROBE_12 1
#elif (~((STEPS >> (3UL % 70)))) & 1
#define PROBE_12 2
#elif (~((STEPS >> (3UL % 70)))) < 7
#define PROBE_12 3
#elif (~((STEPS >> (3UL % 70)))) % 3 == 1
#define PROBE_12 4
#endif
# /* a */ endif // TRACE
#elifndef S\ 
PARE
  #ifdef	PANEL_LIGHT
	# define HAS_TOOLS defined(TOOLS)
#define /* a */ SPARE   JOIN(1,2)
/* x/**/*/ #elifndef TRACE
#define TOOLS   0   
#else /* x */
#
/* end */ ;
#define SOFT_START false
  #define TRACE 0
#/* ' */endif	// " quote
#define TRACE
#/*
#define TRACE
*/define/*
#define TRACE
*/AXES	TERN1(TRACE, AXES)
#else /* x */
// don't #define TRACE
/* end */ ;
  #endif // STEPS // trailing
#\	 
/**\	 
/elifndef STEPS\

  //#define LIMIT_A	~((TOOLS * AXES))
don't /* open
/* end */ ;
// #define TAIL(a, b...) (a, ## b)
\
  #else /* x\	 
/* ' */*/
#if ((('\n' - TOOLS) % ((0xFFFFFFFFFFFFFFFF - 017) | 1))) < 0
#define PROBE_13 0
#elif ((('\n' - TOOLS) % ((0xFFFFFFFFFFFFFFFF - 017) | 1))) == 0
#define PROBE_13 1
#elif ((('\n' - TOOLS) % ((0xFFFFFFFFFFFFFFFF - 017) | 1))) & 1
#define PROBE_13 2
#elif ((('\n' - TOOLS) % ((0xFFFFFFFFFFFFFFFF - 017) | 1))) < 7
#define PROBE_13 3
#elif ((('\n' - TOOLS) % ((0xFFFFFFFFFFFFFFFF - 017) | 1))) % 3 == 1
#define PROBE_13 4
#endif
/* x */ #endif // SOFT_START
#define BELT_DRIVE 0
  //#define BELT_DRIVE false

#define ALIAS TWICE
#/**/define TWICE(x)/* // */((x) *	2)
\ 
  #define LARGER(a,b) ((a) > (\
b) ? (a) : (b))
%\
:define FI\
RS\
\
T(...) TAIL(0, __VA_ARGS__)
#/**/define JOIN(a,b) a##b// it's
	# define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)	// " quote
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1)) // trailing
%:define PANEL_LIGHT
#if ANY_PIN(FAN, LAMP) && BOTH(SOFT_START,BELT_DRIVE) && -1 < TOOLS || EITHER(DUAL_FAN,PANEL_LIGHT)
  #\
\
define LAMP_\
PIN 0\ 

#define SPARE   (0b101 + STEPS)
/* x */ #elifdef SOFT_START
# if '\n' < -1 || DISABLED(DUAL_FAN) /* over
two lines */
#define STEPS 10 /* one */
const char *s = "/* not a comment"; // "
/* end */ ;
#/**/elifdef SPARE	// " quote
#define PANEL_LIGHT true // trailing
#\
define /* a */\
\
 HAS_TOOLS /* a
 b */ (defined TOOLS && TOOLS)   
#/**/elifdef STEPS
#if (((3 / ('A' | 1)) % (LARGER(FIRST(-1u,3), FIRST(5u,3UL)) | 1))) < 0
#define PROBE_1 0
#elif (((3 / ('A' | 1)) % (LARGER(FIRST(-1u,3), FIRST(5u,3UL)) | 1))) == 0
#define PROBE_1 1
#elif (((3 / ('A' | 1)) % (LARGER(FIRST(-1u,3), FIRST(5u,3UL)) | 1))) & 1
#define PROBE_1 2
#elif (((3 / ('A' | 1)) % (LARGER(FIRST(-1u,3), FIRST(5u,3UL)) | 1))) < 7
#define PROBE_1 3
#elif (((3 / ('A' | 1)) % (LARGER(FIRST(-1u,3), FIRST(5u,3UL)) | 1))) % 3 == 1
#define PROBE_1 4
#endif
/* x */ #else // other
\
#if defined(DUAL_FAN)
// #define TRACE true
#if\
 ! ((((1 TERN_(TRACE, + 2)) << ((AXES & SPARE|(3 % (9223372036854775807 | 1))) % 70)) < !!(7) ? TOOLS\ 
 <= 2 : ALL(BELT_DRIVE, DUAL_FAN,BELT_DRIVE))||(!defined FAN_PIN ? ENABLED(DUAL_FAN, BELT_DRIVE,BELT_DRIVE) : defined(FAN_PIN)))
%:define AXES   TERN1(TRACE, AXES) == ('\n' / (STEPS | 1))
# else /* x */// it's
	//  #define HAS_TOOLS (defined TOOLS && TOOLS)
#/**\ 
/endif
  #if ANY(PANEL_LIGHT, PANEL_LIGHT,DUAL_FAN)&&LIMIT_B<1 && not LIMIT_A || SPARE == SPARE || ((!defined LAMP_PIN ? -1u != 017 : TWICE (((5u % (TRACE_UNSET_0 | 1)) * AXES)) | +(TWICE(0))))
#endif/**/// DUAL_FAN
int x = 1; /* #define TRACE */
/* end */ ;
#/**/else // other	// " quote
#\
undef SOFT_START // trailing\

don't /* open
/* end */ ;
#endif // BELT_DRIVE	// " quote
#endif
#define/* ' */TAIL(a,/* ' */...) (a/* // */__VA_OPT__(,)/* ' */__VA_ARGS__)
#/**/def\
ine TOOLS	(('A' ?\ 
 0 : 5u) ^ (5u - AXES))
#/**/elif 7 <= 3
#ifndef BELT_DRIVE /* one */
#/**/if !defined ( DUAL_FAN)
#elifndef BELT_DRIVE
#undef PANEL_LIGHT
#define AXES   'ab'
  #elif (ENABLED(BELT_DRIVE) ? TWICE(SPARE) != TWICE(TOOLS) : DISABLED(PANEL_LIGHT))&&ENABLED(SOFT_START) || defined(DUAL_FAN)
#define LIMIT_B   ((TOOLS ^ TOOLS) << ((TOOLS+SPARE) % 70))
#define FAN_PIN (4 - 9)
#define LAMP_PIN (4 - 9)/* one */ // two
#else   
#undef DUAL_FAN
#/**/if (CALL(TWICE, 4) + (3UL-SPARE)) | 3&&DISABLED(DUAL_FAN)
#/**/define SOFT_START true
%:define BELT_DRIVE false
/* x/* // */*/ #elifndef\ 
/**/BELT_DRIVE
#if (FIRST((TOOLS + JOIN(LIMIT_, B)),TWICE(WITHIN(AXES, 1, 3)))) < 0
#define PROBE_2 0
#elif (FIRST((TOOLS + JOIN(LIMIT_, B)),TWICE(WITHIN(AXES, 1, 3)))) == 0
#define PROBE_2 1
#elif (FIRST((TOOLS + JOIN(LIMIT_, B)),TWICE(WITHIN(AXES, 1, 3)))) & 1
#define PROBE_2 2
#elif (FIRST((TOOLS + JOIN(LIMIT_, B)),TWICE(WITHIN(AXES, 1, 3)))) < 7
#define PROBE_2 3
#elif (FIRST((TOOLS + JOIN(LIMIT_, B)),TWICE(WITHIN(AXES, 1, 3)))) % 3 == 1
#define PROBE_2 4
#endif
#define STEPS (AXES & 3)
%:endif
#\ 
define LIMIT_A   (TOOLS % ((3 + AXES) | 1))
#endif/\
* /\ 
/ */// SPARE	// " quote
\	 
#\	 
def\
ine LIMIT_B   (LIMIT_A|0x7fff'ffff)
#eli\	 
f DI\
SABLED(PANEL_LIGHT)
	# elifdef STEPS
#define HAS_TOOLS (defined TOOLS && TOOLS)
#/**/ifndef PANEL_LIGHT /* over
two lines */
# endif /\
\
/\ 
\
 BELT_DRIVE
#else // other
#en\
\
dif // DUA\
L_FAN
#define/**/TWICE(x) /* a */ ((x)/**/* 2) /* over
two lines */
#if (DISABLED(TRACE) ? defined AXES : !defined ( FAN_PIN))&&(!defined ( LIMIT_B))
#if (TWICE (-1u)) < 0
#define PROBE_3 0
#elif (TWICE (-1u)) == 0
#define PROBE_3 1
#elif (TWICE (-1u)) & 1
#define PROBE_3 2
#elif (TWICE (-1u)) < 7
#define PROBE_3 3
#elif (TWICE (-1u)) % 3 == 1
#define PROBE_3 4
#endif
# define LIMIT_A +(AXES)
#if ENABLED(TRACE) /* over
two lines */
#elif\ 
ndef DUAL_FAN
#elif NONE(DUAL_FAN, DUAL_FAN,DUAL_FAN)
#define S\ 
TEP\
S   AXES
#define LIMIT_A	(0b101 /* a */ ? 0x10	: 2)
#\
\
define LAM\ 
P_PIN PIN_NONE/* one */ // two
#else /* a */ // other
\
#if !\
 (defined LIMIT_A)\

  #define FAN_PIN -1 /* one */
#\ 
else /* x */
/* x */ #endif
#define HAS_TOOLS defined(TOOLS)/* one */ // two
#de\
\
fin\
\
e LIMIT_A (STEPS >> ((10 ? 0x7fff'ffff : -1) % 70))\ 

	# endif // DUAL_FAN
#ifndef STEPS	// " quote
#if !defined DUAL_FAN || !defined ( SPARE)||defined(PANEL_LIGHT) && LARGER(AXES, (AXES)) <= AXES||0b101 > 3
#define DUAL_FAN 0
#if (FIRST((AXES ? (AXES) : 1),(AXES % (TOOLS | 1)))) < 0
#define PROBE_4 0
#elif (FIRST((AXES ? (AXES) : 1),(AXES % (TOOLS | 1)))) == 0
#define PROBE_4 1
#elif (FIRST((AXES ? (AXES) : 1),(AXES % (TOOLS | 1)))) & 1
#define PROBE_4 2
#elif (FIRST((AXES ? (AXES) : 1),(AXES % (TOOLS | 1)))) < 7
#define PROBE_4 3
#elif (FIRST((AXES ? (AXES) : 1),(AXES % (TOOLS | 1)))) % 3 == 1
#define PROBE_4 4
#endif
///#define TOOLS   1
	//  #define SOFT_START 3
	# elifnd\	 
e\
\
f P\ 
ANEL_LIGHT
#elifndef STEPS
#endif // trailing
\	 
/* x *\ 
/ #elifdef FAN_PIN\ 

a / b /c //*

/* end */ ;
#defi\
ne TRACE /* over
two lines */
# e\
ndif // FAN_PIN/* one */ // two
  #else // other	// " quote
# ifndef SPARE
\
#define PA\	 
NEL_\ 
LIGHT true
#define LAMP_PIN -1
#define FIRST(a, rest...) a
	# elif ~(- (0)) >= (STEPS - 'A')
	//  #define DUAL_FAN 1
#define STEPS   (TOOLS >> (5u % 70))
  #define PANEL_LIGHT 1 // trailing
#elif LIMIT_B <= LIMIT_B
# define BELT_\
DRIVE\
\
 0
#/**/define LOOP_A LOOP_B + 1\

	# else // oth\
e\ 
r\

#define SPARE LARGER(('\n' + 9223372036854775807), ~((AXES)))
  /* a */ #endif
#define TOOLS/**/-1 /* one */
#if ((TOOLS ? 3 : 9223372036854775807)) < 0
#define PROBE_5 0
#elif ((TOOLS ? 3 : 9223372036854775807)) == 0
#define PROBE_5 1
#elif ((TOOLS ? 3 : 9223372036854775807)) & 1
#define PROBE_5 2
#elif ((TOOLS ? 3 : 9223372036854775807)) < 7
#define PROBE_5 3
#elif ((TOOLS ? 3 : 9223372036854775807)) % 3 == 1
#define PROBE_5 4
#endif
#endif// it's
#else /* x */
#if ((TOOLS*3)) < 0
#define PROBE_6 0
#elif ((TOOLS*3)) == 0
#define PROBE_6 1
#elif ((TOOLS*3)) & 1
#define PROBE_6 2
#elif ((TOOLS*3)) < 7
#define PROBE_6 3
#elif ((TOOLS*3)) % 3 == 1
#define PROBE_6 4
#endif
/* x */ #undef TRACE
/* x */ #endif
/* x */ #if (DISABLED(TRACE)&&!!(LIMIT_A) != LIMIT_A)/* one */ // two
%:elifndef AXES
// #define PANEL_LIGHT true
#if (LARGER(3UL < L'x', (('\n' >> (0 % 70)) * LARGER(LIMIT_B, STEPS)))) < 0
#define PROBE_7 0
#elif (LARGER(3UL < L'x', (('\n' >> (0 % 70)) * LARGER(LIMIT_B, STEPS)))) == 0
#define PROBE_7 1
#elif (LARGER(3UL < L'x', (('\n' >> (0 % 70)) * LARGER(LIMIT_B, STEPS)))) & 1
#define PROBE_7 2
#elif (LARGER(3UL < L'x', (('\n' >> (0 % 70)) * LARGER(LIMIT_B, STEPS)))) < 7
#define PROBE_7 3
#elif (LARGER(3UL < L'x', (('\n' >> (0 % 70)) * LARGER(LIMIT_B, STEPS)))) % 3 == 1
#define PROBE_7 4
#endif
#define TOOLS TERN(TRACE, 3, 4) << 1 + LARGER(LIMIT_B, 3UL)
#else
#de\
fine\
\
 TR\
\
ACE
  #endif
#/**/ifdef AXES /* one */
	# define TRACE 3// it's
  #defi\
ne FIRST(a, rest...) a\	 

#elifndef LIMIT_B
#undef TRACE
#define/* ' */LAMP_PIN 0
	# if/* // */!defined PANEL_LIGHT
/* x */ #define STEPS   L'x' // trailing
#else // other// it's
# if ((PIN_EXISTS(FAN) ? ENABLED(TRACE, PANEL_LIGHT,DUAL_FAN) : ((-1 * 2)+(1 % (SPARE | 1))) == ((5u + AXES)+(9223372036854775807|10)))||BOTH(PANEL_LIGHT,PANEL_LIGHT) ? 0 == ('\n' / (LIMIT_A | 1)) || !defined ( AXES)||!ENABLED( DUAL_FAN)||((AXES)-(TOOLS ? AXES : 3UL)) >= -1 : ENABLED(TRACE)||ENABLED(BELT_DRIVE)&&defined FAN_PIN)
#define STEPS	LARGER(1, TRACE_UNSET_0)
#ifdef /* a */ AXES
  #define LAMP_PIN (4 - 9)
#d\
efi\ 
ne SPARE	TWICE(L\
ARGER(2, 0))
#if ((STEPS << ('\n' % 70))) < 0
#define PROBE_8 0
#elif ((STEPS << ('\n' % 70))) == 0
#define PROBE_8 1
#elif ((STEPS << ('\n' % 70))) & 1
#define PROBE_8 2
#elif ((STEPS << ('\n' % 70))) < 7
#define PROBE_8 3
#elif ((STEPS << ('\n' % 70))) % 3 == 1
#define PROBE_8 4
#endif
/* x */ #elifdef DUAL_FAN
  #define SPARE	((10*AXES) & TOOLS)
#\	 
\
\ 
 endif // BELT_DRIVE /* over
two lines */
#elif (!defined LAMP_PIN ? !defined LAMP_PIN : !ENABLED( BELT_DRIVE))
#define LAMP_PIN/**/PIN_NONE
# else
# define TOOLS (-1 ^ TOOLS) << 1 + TAIL(5,)
# define DUAL_FAN 3	// " quote
#/**/define/* // */FAN_PIN -1 /* over
two lines */
/* x */ #endif // PANEL_LIGHT // trailing
#define LIMIT_A TOOLS << 1 + '\n'
#endif // SOFT_START
/* x */ #elifndef TOOLS
  #endif
# undef AXES
  #ifdef SOFT_START
/* x */ #elifdef TOOLS // trailing
//#define SOFT_START true
#define IS_DUAL ENABLED(DUAL_FAN)
\	 
#/**/define AXES (0 >> (STEPS % 70))
# endif
\	 
  #define LIMIT_A	FIRST(JOIN(LIMIT,_A),LARGER('ab', AXES))
#define/* //\
\
 */PANE\
\
\	 
L_LIGHT true// it's
\
/* end */ ;
#if ((LIMIT_B - 7)) < 0
#define PROBE_9 0
#elif ((LIMIT_B - 7)) == 0
#define PROBE_9 1
#elif ((LIMIT_B - 7)) & 1
#define PROBE_9 2
#elif ((LIMIT_B - 7)) < 7
#define PROBE_9 3
#elif ((LIMIT_B - 7)) % 3 == 1
#define PROBE_9 4
#endif

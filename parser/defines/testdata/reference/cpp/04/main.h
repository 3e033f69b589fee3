#define ALIAS TWICE
#define TWICE(x) ((x) + x) /* over
two lines */
\
	# define LARGER(a,b)\
 ((a) > (b) ? (a) : (b))
/* x */ #define FIRST(a, rest...) a
#define JOIN(a,b) a %:%: b	// " quote
%:define CALL(f,x) f(x)	// " quote
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define	SPREAD(x, /* a
 b */ y...)/**/((x) , ## /* a */ y)
#define TAIL(a, b...) (a, ## b)	// " quote
%:define SPARE	((AXES) % (0b101 | 1)) << 1 + (TOOLS & 10)
#/**/if (3UL != ((AXES ? TRACE_UNSET_0 : 'A') & (LIMIT_B - 017)) ? 9223372036854775807 <= (-1 * 0) : FIRST((TOOLS ? 3UL : AXES),(0xFFFFFFFFFFFFFFFF % (TRACE_UNSET_0 | 1))) != ALIAS (TRACE_UNSET_0))
/* x */ #else // other
	# define PANEL_LIGHT// it's
# define TRACE 0
#endif // LAMP_PIN
#ifdef LAMP_PIN
#\	 
define FIRST(a,...) (a)\	 
 /* over
two lines */
#define LAMP_PIN 0 /* one */
#elifnd\
ef BELT\
_DRIVE
%:if TWICE((JOIN(,7) + (0x10 & 0))) <= (SPARE + TRACE_UNSET_0)	// " quote
#define TOOLS   (3UL|-1u)
#/**/if (((TWICE(LARGER(L'x', TOOLS)) & (ALIAS (0) & (9223372036854775807|1))) != (TRACE_UNSET_0 ? LIMIT_B : LIMIT_A) && EITHER(TRACE,SOFT_START)) ? !(ENABLED(BELT_DRIVE))&&true||ENABLED(DUAL_FAN) : !defined ( BELT_DRIVE)) // trailing
/* x */ #elifndef LIMIT_B
#define /* a */ SOFT_START false// it's
  #define DUAL_FAN 0
# /* a
 b */ else
  #if defined(BELT_DRIVE)
%:define STEPS/* // */  AXES
%:elifndef SOFT_START
#if ((3UL ? AXES : (AXES))) < 0
#define PROBE_1 0
#elif ((3UL ? AXES : (AXES))) == 0
#define PROBE_1 1
#elif ((3UL ? AXES : (AXES))) & 1
#define PROBE_1 2
#elif ((3UL ? AXES : (AXES))) < 7
#define PROBE_1 3
#elif ((3UL ? AXES : (AXES))) % 3 == 1
#define PROBE_1 4
#endif
#/**/else
///#define SPARE 0x10 << 1 + 0xFFFFFFFFFFFFFFFF
%:en\
dif /\	 
/ LIMIT_A
#endif
///#define AXES ((AXES)-3)
/* x */ #undef BELT_DRIVE
#elifndef SOFT_START	// " quote
#
/* end */ ;
# else // other
#define DUAL_FAN 3
/* x */ #endif // DUAL_FAN
#define LIMIT_B /* a
 b */ TERN(TRACE,/**/3, /* a
 b */ 4)
	# else/* ' *//*/* // */x */ // trailing
# define PANEL_LIGHT
#endif
	# def\	 
ine SOFT_STAR\	 
T false// it's
#if ! (DISABLED(BELT_DRIVE)&&DISABLED(DUAL_FAN))/**/&& (!ENABLED( BELT_DRIVE) ? EITHER(BELT_DRIVE,PANEL_LIGHT) : BOTH(DUAL_FAN,DUAL_FAN)) && TOOLS>=LIMIT_A && /* a */ DISABLED(SOFT_START,/*
#define TRACE
*/SOFT_START,DUAL_FAN)/* one */ // two
\
%\
\
:define SOFT_START
%:define/* ' */LOOP_B (LOOP_A |/**/4) // trailing
/\
/ #define TRACE
/* end */ ;
%:define DUAL_FAN true
#\	 
 elifde\
\	 
f STEPS
\
  #elifdef PANEL_LIGHT
#define LIMIT_A   (TWICE ('ab') - (9223372036854775807 - -1u))   
# if/* ' */DISABLED(TRACE)/* ' */&& /* a */ defined LAMP_PIN/* one */ // two
#if ((0x10 / ('ab' | 1))) < 0
#define PROBE_2 0
#elif ((0x10 / ('ab' | 1))) == 0
#define PROBE_2 1
#elif ((0x10 / ('ab' | 1))) & 1
#define PROBE_2 2
#elif ((0x10 / ('ab' | 1))) < 7
#define PROBE_2 3
#elif ((0x10 / ('ab' | 1))) % 3 == 1
#define PROBE_2 4
#endif
%:if AXES >/*
#define TRACE
*/STEPS && DISABLED(PANEL_LIGHT)&&! (0)
%:ifdef FAN_PIN
	# elif (AXES == 1 ? DISABLED(BELT_DRIVE) : ANY_PIN(FAN, LAMP))
#define LOOP_B (LOOP_A /* a
 b */ | 4)
%:elifdef DUAL_FAN
#undef DUAL_FAN
# else
#if ((-(3UL) / (('\xff'*AXES) & LIMIT_A | 1))) < 0
#define PROBE_3 0
#elif ((-(3UL) / (('\xff'*AXES) & LIMIT_A | 1))) == 0
#define PROBE_3 1
#elif ((-(3UL) / (('\xff'*AXES) & LIMIT_A | 1))) & 1
#define PROBE_3 2
#elif ((-(3UL) / (('\xff'*AXES) & LIMIT_A | 1))) < 7
#define PROBE_3 3
#elif ((-(3UL) / (('\xff'*AXES) & LIMIT_A | 1))) % 3 == 1
#define PROBE_3 4
#endif
  #endif// it's
#de\
\
\ 
fin\	 
e DUAL_FAN true // trailing
#if ((STEPS >> (-(STEPS) % 70))) < 0
#define PROBE_4 0
#elif ((STEPS >> (-(STEPS) % 70))) == 0
#define PROBE_4 1
#elif ((STEPS >> (-(STEPS) % 70))) & 1
#define PROBE_4 2
#elif ((STEPS >> (-(STEPS) % 70))) < 7
#define PROBE_4 3
#elif ((STEPS >> (-(STEPS) % 70))) % 3 == 1
#define PROBE_4 4
#endif
#/**/else /* over
two lines */
#endif // BELT_DRIVE	// " quote
#define SPARE	STEPS
#if ((LIMIT_B << (SPARE % 70))) < 0
#define PROBE_5 0
#elif ((LIMIT_B << (SPARE % 70))) == 0
#define PROBE_5 1
#elif ((LIMIT_B << (SPARE % 70))) & 1
#define PROBE_5 2
#elif ((LIMIT_B << (SPARE % 70))) < 7
#define PROBE_5 3
#elif ((LIMIT_B << (SPARE % 70))) % 3 == 1
#define PROBE_5 4
#endif
%:elif DISABLED(DUAL_FAN)
#/**/if (((TRACE_UNSET_0 + 0xFFFFFFFFFFFFFFFF) % ((7 / (AXES | 1)) | 1)) ^ ((3UL % (AXES | 1)) ? 2 : (TOOLS ? 0x7fff'ffff : TOOLS))) < STEPS/* one */ // two
#/**/elif /* a */ defined DUAL_FAN
#if (('\xff'*7)) < 0
#define PROBE_6 0
#elif (('\xff'*7)) == 0
#define PROBE_6 1
#elif (('\xff'*7)) & 1
#define PROBE_6 2
#elif (('\xff'*7)) < 7
#define PROBE_6 3
#elif (('\xff'*7)) % 3 == 1
#define PROBE_6 4
#endif
#undef\
 DUAL_FAN	// " quote
/* x */ #elifndef DUAL_FAN
#if (((- (TOOLS)*(-1u / (1 | 1))) * ALIAS (TWICE (LIMIT_A)))) < 0
#define PROBE_7 0
#elif (((- (TOOLS)*(-1u / (1 | 1))) * ALIAS (TWICE (LIMIT_A)))) == 0
#define PROBE_7 1
#elif (((- (TOOLS)*(-1u / (1 | 1))) * ALIAS (TWICE (LIMIT_A)))) & 1
#define PROBE_7 2
#elif (((- (TOOLS)*(-1u / (1 | 1))) * ALIAS (TWICE (LIMIT_A)))) < 7
#define PROBE_7 3
#elif (((- (TOOLS)*(-1u / (1 | 1))) * ALIAS (TWICE (LIMIT_A)))) % 3 == 1
#define PROBE_7 4
#endif
%:define AXES ALIAS (L'x')
# else // other/* one */ // two
  #define BELT_DRIVE /* a
 b */ 3
#define LARGER(a, b) FIRST((a) < b, a)
#endif/* one */ // two
#if ENABLED(BELT_DRIVE)&&ENABLED(BELT_DRIVE)
# elif\
\
 DISABLED(PANEL_LIG\
HT)   
#define BELT_DRIVE
\
#define FAN_PIN (4\
 - 9)
#e\	 
ndif
/\
* x *\
/
/* end */ ;
#else /* x */
const char *s = "\" // still";
/* end */ ;
#endif // DUAL_FAN /* over
two lines */
  #else\
\
\	 
 // trailing
#if (-(FIRST(-1,AXES))) < 0
#define PROBE_8 0
#elif (-(FIRST(-1,AXES))) == 0
#define PROBE_8 1
#elif (-(FIRST(-1,AXES))) & 1
#define PROBE_8 2
#elif (-(FIRST(-1,AXES))) < 7
#define PROBE_8 3
#elif (-(FIRST(-1,AXES))) % 3 == 1
#define PROBE_8 4
#endif
#define STEPS\	 
 '\n'   
#define FAN_PIN 0 // trailing
/* x */ #endif/* one */ // two
#define FAN_PIN 7
#if (~(0)) < 0
#define PROBE_9 0
#elif (~(0)) == 0
#define PROBE_9 1
#elif (~(0)) & 1
#define PROBE_9 2
#elif (~(0)) < 7
#define PROBE_9 3
#elif (~(0)) % 3 == 1
#define PROBE_9 4
#endif

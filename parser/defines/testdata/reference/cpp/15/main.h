#define ALIAS TWICE
\	 
\
#define TWICE( value/*
#define\	 
 TRACE
*/) (value + TWICE(value))	// " quote
  #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(a, rest...) a   
	# define JOIN(a, b) a ## b
#define CALL(f,x) f(x)
\
	# /* a */ define/*
#defi\	 
ne TRACE
*/TAIL(a, b...) (a,/**/##	b)
	# define SPREAD(x, y...) ((x) , ## y)
#if !(SPARE <= 2)
///#define SPREAD(x, y...) ((x) , ## y)
#elifndef AXES // trailing
#/**/if ENABLED(SOFT_START)
#define DUAL_FAN false
#/**/elifdef BELT_DRIVE // trailing
# define PANEL_LIGHT 3
#else /* x */
#define TOOLS   ('A' * 017)	// " quote
# if DISABLED(DUAL_FAN) || STEPS != (AXES % (L'x' | 1))
# define PANEL_LIGHT 1
#elifdef STEPS
  #else // other
  #define LARGER(a, b) FIRST((a) < b, a)
#/**/endif
#endif// it's
#define IS_DUAL ENABLED(DUAL\
\
_FAN)
#if ((STEPS*1)) < 0
#define PROBE_1 0
#elif ((STEPS*1)) == 0
#define PROBE_1 1
#elif ((STEPS*1)) & 1
#define PROBE_1 2
#elif ((STEPS*1)) < 7
#define PROBE_1 3
#elif ((STEPS*1)) % 3 == 1
#define PROBE_1 4
#endif
%:elif ENABLED(TRACE)	// " quote
  #define LIMIT_B FIRST((LIMIT_A - TOOLS),0)
#if (LARGER(STEPS, 0x10)) < 0
#define PROBE_2 0
#elif (LARGER(STEPS, 0x10)) == 0
#define PROBE_2 1
#elif (LARGER(STEPS, 0x10)) & 1
#define PROBE_2 2
#elif (LARGER(STEPS, 0x10)) < 7
#define PROBE_2 3
#elif (LARGER(STEPS, 0x10)) % 3 == 1
#define PROBE_2 4
#endif
#endif // DUAL_FAN
%:define STEPS	STEPS
# u\ 
ndef LAMP_PIN\

#if ((0b101 ? LIMIT_A : 0xFFFFFFFFFFFFFFFF)) < 0
#define PROBE_3 0
#elif ((0b101 ? LIMIT_A : 0xFFFFFFFFFFFFFFFF)) == 0
#define PROBE_3 1
#elif ((0b101 ? LIMIT_A : 0xFFFFFFFFFFFFFFFF)) & 1
#define PROBE_3 2
#elif ((0b101 ? LIMIT_A : 0xFFFFFFFFFFFFFFFF)) < 7
#define PROBE_3 3
#elif ((0b101 ? LIMIT_A : 0xFFFFFFFFFFFFFFFF)) % 3 == 1
#define PROBE_3 4
#endif
%:define LIMIT_A   ((10+'\xff') - (STEPS % (AXES | 1)))
\
\
\
#/**/inclu\
de "part.h"
#ifdef /* a */ SOFT_START
#/**/if !(ANY(DUAL_FAN, DUAL_FAN,DUAL_FAN) /* a */ || defined LIMIT_A)
  #if\ 
\
 ((!ENABLED( SOFT_START) ? ENABLED(DUAL_FAN) && defined(FAN_PIN) : (0 - 017) + ('ab' / (TOOLS | 1)) > 3) ? defined(LAMP_PIN) : ((MANY(SOFT_START, PANEL_LIGHT,PANEL_LIGHT) ? LIMIT_A == 1 : !defined LIMIT_A) ? (FIRST(-1,LIMIT_A) <= LARGER(0x10, 1) ? LARGER(TRACE_UNSET_0, '\xff') <= (7 & 017) : ENABLED(TRACE)) : ! (TOOLS<2)))
///#define PANEL_LIGHT
%:define LAMP_PIN /* a */ -1
# define FAN_PIN (4 - 9)
#/**/elif 0   
f(1, // x
2);
/* end */ ;
#elifndef LAMP_PIN
#endif
%:define TOOLS	(0b101 % ('ab' | 1))// it's
/* x */ #define DUAL_FAN 0
\
#else /* x */
/* x */ #if (!(BOTH(SOFT_START,DUAL_FAN)) ? (NONE(BELT_DRIVE, BELT_DRIVE,TRACE) ? !defined LIMIT_B : (((2 & 0) * (LIMIT_A ? 'A' : TOOLS)) - (TOOLS & 0b101 ^ (TOOLS|2))) == TWICE(LIMIT_B * 3)) : TOOLS > 0 || !ENABLED( DUAL_FAN)) && not LIMIT_A||ENABLED(DUAL_FAN)&&! (1) // trailing
	# define FIRST(a, rest...) a
#if ((TRACE_UNSET_0-AXES)) < 0
#define PROBE_4 0
#elif ((TRACE_UNSET_0-AXES)) == 0
#define PROBE_4 1
#elif ((TRACE_UNSET_0-AXES)) & 1
#define PROBE_4 2
#elif ((TRACE_UNSET_0-AXES)) < 7
#define PROBE_4 3
#elif ((TRACE_UNSET_0-AXES)) % 3 == 1
#define PROBE_4 4
#endif
# endif // BE\	 
LT_DRIVE
#\
define PANEL_LIGHT 0\

#define\
 FAN_PIN/* // */(4 -/* ' */9)
	# endi\
f	// TOOLS	// "\
 quote
#if (!((0 ? 10 : AXES))) < 0
#define PROBE_5 0
#elif (!((0 ? 10 : AXES))) == 0
#define PROBE_5 1
#elif (!((0 ? 10 : AXES))) & 1
#define PROBE_5 2
#elif (!((0 ? 10 : AXES))) < 7
#define PROBE_5 3
#elif (!((0 ? 10 : AXES))) % 3 == 1
#define PROBE_5 4
#endif
\
\
\	 
#elif AXES<0&&!((0 & 10)) | FIRST(SPARE,0xFFFFFFFFFFFFFFFF) && !ENABLED( DUAL_FAN)
#if !(! (SPARE <= TOOLS))// it's
#define BELT_DRIVE
#elif !(ENABLED(SOFT_START))
#define SPARE	+((STEPS*2))
#ifndef BELT_DRIVE// it's
#if EITHER(BELT_DRIVE,SOFT_START)
/*\
 x\
 */ #def\	 
ine TRACE true// it's
	#/* // */define DUAL_FAN 3
#elifdef FAN_PIN
#if (FIRST(SPARE,'\n')) < 0
#define PROBE_6 0
#elif (FIRST(SPARE,'\n')) == 0
#define PROBE_6 1
#elif (FIRST(SPARE,'\n')) & 1
#define PROBE_6 2
#elif (FIRST(SPARE,'\n')) < 7
#define PROBE_6 3
#elif (FIRST(SPARE,'\n')) % 3 == 1
#define PROBE_6 4
#endif
# endif
%:endif // TOOLS// it's
#endif // AXES
\
\
  #undef PANEL_LIGHT// it's
\ 
#elifndef/* // */LAMP_P\	 
I\	 
N
#if ((0+(AXES))) < 0
#define PROBE_7 0
#elif ((0+(AXES))) == 0
#define PROBE_7 1
#elif ((0+(AXES))) & 1
#define PROBE_7 2
#elif ((0+(AXES))) < 7
#define PROBE_7 3
#elif ((0+(AXES))) % 3 == 1
#define PROBE_7 4
#endif
#/**/define SOFT_START /* one */
#define LAMP_PIN (4 - 9)
#/**/endif
#if (!defined LAMP_PIN && !ENABLED( PANEL_LIGHT) ? !(AXES>=0) : (NONE(PANEL_LIGHT, BELT_DRIVE,PANEL_LIGHT) ? ANY_PIN(FAN, LAMP) : !defined LIMIT_A)) && !(defined SOFT_START&&ENABLED(SOFT_START))
# def\
\
ine SOFT\ 
_START 0
# elifdef TRACE
#if defined(DUAL_FAN)
#undef LIMIT_A
#define LAMP_PIN 7	// " quote
/\
/ #define TRACE
/* end */ ;
#/**/define/* // */TOOLS/* // *//* ' */ LIMIT_A
#endif
%:if defined(FAN_PIN)
\
\
#/**/def\
ine IS\
_DUAL ENABLED(DUAL_FAN)
#ifdef /* a */ AXES
#define STEPS LIMIT_A
#define TRACE // trailing
#elifndef PANEL_LIGHT
# i\ 
f 0||((0 ? STEPS : AXES) <= 1)// it's
//#define DUAL_FAN 1
#elifndef DUAL_FAN
#if (((0xFFFFFFFFFFFFFFFF ? AXES : TRACE_UNSET_0) ? FIRST(-1u,L'x') : (LIMIT_A - AXES))) < 0
#define PROBE_8 0
#elif (((0xFFFFFFFFFFFFFFFF ? AXES : TRACE_UNSET_0) ? FIRST(-1u,L'x') : (LIMIT_A - AXES))) == 0
#define PROBE_8 1
#elif (((0xFFFFFFFFFFFFFFFF ? AXES : TRACE_UNSET_0) ? FIRST(-1u,L'x') : (LIMIT_A - AXES))) & 1
#define PROBE_8 2
#elif (((0xFFFFFFFFFFFFFFFF ? AXES : TRACE_UNSET_0) ? FIRST(-1u,L'x') : (LIMIT_A - AXES))) < 7
#define PROBE_8 3
#elif (((0xFFFFFFFFFFFFFFFF ? AXES : TRACE_UNSET_0) ? FIRST(-1u,L'x') : (LIMIT_A - AXES))) % 3 == 1
#define PROBE_8 4
#endif
/* x */ #unde\ 
f SP\
ARE
/* x */ #endif
# else
#if (TERN0(DUAL_FAN, 3)) < 0
#define PROBE_9 0
#elif (TERN0(DUAL_FAN, 3)) == 0
#define PROBE_9 1
#elif (TERN0(DUAL_FAN, 3)) & 1
#define PROBE_9 2
#elif (TERN0(DUAL_FAN, 3)) < 7
#define PROBE_9 3
#elif (TERN0(DUAL_FAN, 3)) % 3 == 1
#define PROBE_9 4
#endif
#/**/endif // FAN_PIN /* one */
#if defined SPARE
#define BELT_DRIVE 3
#else   
#define SPARE /* a
 b */ /* // */ (5u ^ TRACE_UNSET_0)
%:endif // LAMP_PIN
# define CALL(f,x) f(x)
#elifndef TRACE
#undef/* '\	 
 */TO\
\ 
OLS
\
#define LAMP_PIN (4 - 9)
# if (!ENABLED( DUAL_FAN))
#endif // DUAL_FAN // trailing
#else /* x */
/* x */ #if DISABLED(TRACE) || defined TOOLS||ANY_PIN(FAN, LAMP) && ENABLED(BELT_DRIVE)
	 /* a */ #define	DUAL_FAN
#elif ! (!(BOTH(DUAL_FAN,TRACE)))
#if DISABLED(BELT_DRIVE)||TRACE_UNSET_0 && (AXES * TRACE_UNSET_0)/* one */ // two
/* x */ #define SOFT_START
/* x */ #endif // LAMP_PIN
#define TOOLS   (TWICE(0) + JOIN(LIMIT,_A))
	# elifdef SPARE
#if ! (JOIN(,7) != STEPS - TOOLS) /* over
two lines */
#if (((TWICE (5u) ^ ~(LIMIT_A))+((7 ? TRACE_UNSET_0 : LIMIT_B) + AXES))) < 0
#define PROBE_10 0
#elif (((TWICE (5u) ^ ~(LIMIT_A))+((7 ? TRACE_UNSET_0 : LIMIT_B) + AXES))) == 0
#define PROBE_10 1
#elif (((TWICE (5u) ^ ~(LIMIT_A))+((7 ? TRACE_UNSET_0 : LIMIT_B) + AXES))) & 1
#define PROBE_10 2
#elif (((TWICE (5u) ^ ~(LIMIT_A))+((7 ? TRACE_UNSET_0 : LIMIT_B) + AXES))) < 7
#define PROBE_10 3
#elif (((TWICE (5u) ^ ~(LIMIT_A))+((7 ? TRACE_UNSET_0 : LIMIT_B) + AXES))) % 3 == 1
#define PROBE_10 4
#endif
/* x */ #elif TAIL(5,6) != (2 ^ AXES)&&BOTH(PANEL_LIGHT,DUAL_FAN)
#endif // BELT_DRIVE// it's
#if ((-(-1u) - ('\n' << (TOOLS % 70)))) < 0
#define PROBE_11 0
#elif ((-(-1u) - ('\n' << (TOOLS % 70)))) == 0
#define PROBE_11 1
#elif ((-(-1u) - ('\n' << (TOOLS % 70)))) & 1
#define PROBE_11 2
#elif ((-(-1u) - ('\n' << (TOOLS % 70)))) < 7
#define PROBE_11 3
#elif ((-(-1u) - ('\n' << (TOOLS % 70)))) % 3 == 1
#define PROBE_11 4
#endif
# define STEPS	AXES
#end\	 
if // DUAL_FAN/* one\
 */ // two
#/**/if (DISABLED(DUAL_FAN) ? defined(LIMIT_B) : (0x7fff'ffff % ((AXES) | 1)) != 2 & TOOLS) && ENABLED(DUAL_FAN)||(!defined DUAL_FAN ? !ENABLED( SOFT_START) : (DISABLED(BELT_DRIVE) ? (((TOOLS|TOOLS) * LARGER(0x7fff'ffff, AXES))-~(0)) <= ((LIMIT_B / (10 | 1)) % ((LIMIT_A / (3UL | 1)) | 1)) : !ENABLED( PANEL_LIGHT)))
#if (((1 % (SPARE | 1))|TAIL(5))) < 0
#define PROBE_12 0
#elif (((1 % (SPARE | 1))|TAIL(5))) == 0
#define PROBE_12 1
#elif (((1 % (SPARE | 1))|TAIL(5))) & 1
#define PROBE_12 2
#elif (((1 % (SPARE | 1))|TAIL(5))) < 7
#define PROBE_12 3
#elif (((1 % (SPARE | 1))|TAIL(5))) % 3 == 1
#define PROBE_12 4
#endif
  /* a */ #if (DISABLED(DUAL_FAN) && DISABLED(BELT_DRIVE, DUAL_FAN,SOFT_START)/* // */? defined(SOFT_START)&&PIN_EXISTS(LAMP) : (EITHER(PANEL_LIGHT,PANEL_LIGHT) ? !defined ( LIMIT_B) : LIMIT_B>=0))/* one */ // two
  #define STEPS	ALIAS (AXES)
///#define SOFT_START 0
///#define FAN_PIN PIN_NONE
#define BELT_DRIVE 0
\	 
#\	 
elifndef PANEL_LIGHT\

  #define TAIL(a, b...) (a, ## b)   
\
\	 
 /**/#elifdef/*\
\
*/AXES
#/**/else /* x */ /* over
two lines */
#if ((JOIN(LIMIT_, B) % ((TWICE ('\xff') - TWICE(TOOLS)) | 1))) < 0
#define PROBE_13 0
#elif ((JOIN(LIMIT_, B) % ((TWICE ('\xff') - TWICE(TOOLS)) | 1))) == 0
#define PROBE_13 1
#elif ((JOIN(LIMIT_, B) % ((TWICE ('\xff') - TWICE(TOOLS)) | 1))) & 1
#define PROBE_13 2
#elif ((JOIN(LIMIT_, B) % ((TWICE ('\xff') - TWICE(TOOLS)) | 1))) < 7
#define PROBE_13 3
#elif ((JOIN(LIMIT_, B) % ((TWICE ('\xff') - TWICE(TOOLS)) | 1))) % 3 == 1
#define PROBE_13 4
#endif
#def\
ine/* // */STEPS/\
\
\
**/JOIN(TWI,CE)(3)
#en\ 
dif // PANEL_LIGH\	 
T
%:define AXES   STEPS
#ifdef FAN_PIN
	//  #define DUAL_FAN
#elif !ENABLED( BELT_DRIVE)
#define BELT_DRIVE 0x1// it's
/\
* x *\
/
/* end */ ;
#elif/* ' */0
#/**/define LIMIT_B   (SPARE--1u)// it's
#if (((TOOLS + TRACE_UNSET_0) ^ LARGER(3UL, 0x7fff'ffff))) < 0
#define PROBE_14 0
#elif (((TOOLS + TRACE_UNSET_0) ^ LARGER(3UL, 0x7fff'ffff))) == 0
#define PROBE_14 1
#elif (((TOOLS + TRACE_UNSET_0) ^ LARGER(3UL, 0x7fff'ffff))) & 1
#define PROBE_14 2
#elif (((TOOLS + TRACE_UNSET_0) ^ LARGER(3UL, 0x7fff'ffff))) < 7
#define PROBE_14 3
#elif (((TOOLS + TRACE_UNSET_0) ^ LARGER(3UL, 0x7fff'ffff))) % 3 == 1
#define PROBE_14 4
#endif
\
#/**/endif	// " quote
\	 
/*\	 
 x */ #eli\	 
fndef FAN_PIN
	# endif
\
\
#\
\
/**/endif
#elifndef STEPS // trailing
#define\
 SOFT_START 0
# define TRACE
  #if (! (!defined STEPS) || ((TRACE_UNSET_0+'\xff') + (AXES+'A')) < ((1 + LIMIT_A) ^ (0 % (L'x' | 1)))&&defined(SOFT_START))
#define SPARE (1+017)
#define STEPS	+(TOOLS)
#/**/elifndef LIMIT_A
\
#endif
/* x */ #else/* one */ // two
#/**/define SOFT_START false
	# define LIMIT_A /* a
 b */ TOOLS
#endif
#if ((('\n' ? 10 : '\xff') * (L'x' ? LIMIT_B : 0x10))) < 0
#define PROBE_15 0
#elif ((('\n' ? 10 : '\xff') * (L'x' ? LIMIT_B : 0x10))) == 0
#define PROBE_15 1
#elif ((('\n' ? 10 : '\xff') * (L'x' ? LIMIT_B : 0x10))) & 1
#define PROBE_15 2
#elif ((('\n' ? 10 : '\xff') * (L'x' ? LIMIT_B : 0x10))) < 7
#define PROBE_15 3
#elif ((('\n' ? 10 : '\xff') * (L'x' ? LIMIT_B : 0x10))) % 3 == 1
#define PROBE_15 4
#endif

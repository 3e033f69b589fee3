#define ALIAS TWICE
	# define TWICE(x) ((x) * 2)
#define LARGER(a, b) FIRST((a) < b, a)// it's
# d\
efine FIRST(a,...) (a)
# define JOIN(a, b) a ## b/* one */ // two
#define CALL(f,x) f(x)
# define TAIL(a, b...)\
 (a, ## b)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))/* one */ // two
#define SPARE	(1 * TOOLS)	// " quote
#if ((STEPS >> (LIMIT_A % 70))) < 0
#define PROBE_1 0
#elif ((STEPS >> (LIMIT_A % 70))) == 0
#define PROBE_1 1
#elif ((STEPS >> (LIMIT_A % 70))) & 1
#define PROBE_1 2
#elif ((STEPS >> (LIMIT_A % 70))) < 7
#define PROBE_1 3
#elif ((STEPS >> (LIMIT_A % 70))) % 3 == 1
#define PROBE_1 4
#endif
/* x */ #if !(ENABLED(BELT_DRIVE) || ENABLED(TRACE)&&(defined BELT_DRIVE))
#if (~(LIMIT_A)) < 0
#define PROBE_2 0
#elif (~(LIMIT_A)) == 0
#define PROBE_2 1
#elif (~(LIMIT_A)) & 1
#define PROBE_2 2
#elif (~(LIMIT_A)) < 7
#define PROBE_2 3
#elif (~(LIMIT_A)) % 3 == 1
#define PROBE_2 4
#endif
#if /* a */ MANY(SOFT_START, BELT_DRIVE,DUAL_FAN) /* over
two lines */
/* x */ #define TOOLS	FIRST(TOOLS,9223372036854775807) /* one */
#\
\
elifdef STEPS
#/**/define BELT_DRIVE// it's
  //#define LARGER(a, b) FIRST((a) < b, a)
#elif DISABLED(PANEL_LIGHT)
  #if !ENABLED( PANEL_LIGHT) && defined DUAL_FAN || (!defined PANEL_LIGHT ? DISABLED(PANEL_LIGHT) : 'ab' >= LIMIT_A)
/* x */ #undef /* a */ PANEL_LIGHT
#endif // SPARE
	# else // other   
#\
\
\
\
 endif // TRACE
\	 
#\
define DUAL_FAN 0
#else
#define	DUAL_FAN 3
#/**/endif // BELT_DRIVE
#if (0b101) < 0
#define PROBE_3 0
#elif (0b101) == 0
#define PROBE_3 1
#elif (0b101) & 1
#define PROBE_3 2
#elif (0b101) < 7
#define PROBE_3 3
#elif (0b101) % 3 == 1
#define PROBE_3 4
#endif
#if (TWICE (((0b101-TOOLS) * (3UL ? 3 : (AXES))))) < 0
#define PROBE_4 0
#elif (TWICE (((0b101-TOOLS) * (3UL ? 3 : (AXES))))) == 0
#define PROBE_4 1
#elif (TWICE (((0b101-TOOLS) * (3UL ? 3 : (AXES))))) & 1
#define PROBE_4 2
#elif (TWICE (((0b101-TOOLS) * (3UL ? 3 : (AXES))))) < 7
#define PROBE_4 3
#elif (TWICE (((0b101-TOOLS) * (3UL ? 3 : (AXES))))) % 3 == 1
#define PROBE_4 4
#endif
\
#if DISAB\
LED(DUAL_FAN\
)
\
\
  #ifdef SOFT_START
  //#define TOOLS   ((TOOLS-STEPS) / (-(017) | 1))
# define/*
#define TRACE
*/TRACE/*
#define TRACE
*/0 // trailing
  #define STEPS TOOLS
%:define DUAL_FAN true
#elif ANY_PIN(FAN, LAMP)
 	#elif (DISABLED(PANEL_LIGHT) ? (STEPS * LIMIT_A) >= (7/* ' */% (3 /* a */ | 1)) : LOOP_\
\
A)
	# ifndef BELT_DRIVE/* one */ // two
#if ((((1+TOOLS) - ('\xff'+TRACE_UNSET_0)) ^ (FIRST(2,'\n') * (L'x' << (5u % 70))))) < 0
#define PROBE_5 0
#elif ((((1+TOOLS) - ('\xff'+TRACE_UNSET_0)) ^ (FIRST(2,'\n') * (L'x' << (5u % 70))))) == 0
#define PROBE_5 1
#elif ((((1+TOOLS) - ('\xff'+TRACE_UNSET_0)) ^ (FIRST(2,'\n') * (L'x' << (5u % 70))))) & 1
#define PROBE_5 2
#elif ((((1+TOOLS) - ('\xff'+TRACE_UNSET_0)) ^ (FIRST(2,'\n') * (L'x' << (5u % 70))))) < 7
#define PROBE_5 3
#elif ((((1+TOOLS) - ('\xff'+TRACE_UNSET_0)) ^ (FIRST(2,'\n') * (L'x' << (5u % 70))))) % 3 == 1
#define PROBE_5 4
#endif
  #\	 
de\
fine FAN_PIN 0
#if LOOP_A || defined(BELT_DRIVE)&&(!ENABLED( DUAL_FAN) ? (SPARE ^ AXES) | LARGER((0b101 + LIMIT_B), (L'x' << (0x10 % 70))) : defined(FAN_PIN)) || ENABLED(DUAL_FAN) /* one */
%:\
define/*
#define TRACE
*/LARGER(a,b)	((a)/* // */>/*
#d\
\
efine TRACE
*/(b)/*
#def\
\
ine TRACE
*/? (a) : (b))
%:de\
fine\	 
 BELT_DRIVE false
#elifndef DUAL_FAN
#if (~((3UL << (0b101 % 70)))) < 0
#define PROBE_6 0
#elif (~((3UL << (0b101 % 70)))) == 0
#define PROBE_6 1
#elif (~((3UL << (0b101 % 70)))) & 1
#define PROBE_6 2
#elif (~((3UL << (0b101 % 70)))) < 7
#define PROBE_6 3
#elif (~((3UL << (0b101 % 70)))) % 3 == 1
#define PROBE_6 4
#endif
  #endif/* one */ // two
%:elifndef TRACE
#elifndef BELT_DRIVE
// #define SOFT_START 0
\
	#/* //\
 */define FAN_PIN 7 // trailing
# /* a */ else
	# define DUAL_FAN false
#en\ 
dif /* one *\	 
\
\
/
#if !defined ( LIMIT_B)
#define PANEL_LIGHT 3
#if ((!(SPARE<SPARE) ? AXES > LIMIT_B && (-1u - LIMIT_A) != 7 : (EITHER(PANEL_LIGHT,DUAL_FAN) ? DISABLED(DUAL_FAN) : defined LIMIT_A)))
\
# define LAMP_P\	 
IN (4\
 - 9)
#if (+(AXES)) < 0
#define PROBE_7 0
#elif (+(AXES)) == 0
#define PROBE_7 1
#elif (+(AXES)) & 1
#define PROBE_7 2
#elif (+(AXES)) < 7
#define PROBE_7 3
#elif (+(AXES)) % 3 == 1
#define PROBE_7 4
#endif
#else
  //#define SPARE   ((TOOLS + AXES) % ((7 ? TOOLS : AXES) | 1))
# define FAN_PIN -1 /* one */
#endif // FAN_PIN
#/* // */endif// it's
#if /* a */ ENABLED(BELT_DRIVE) /* one */
#d\
efine CALL(f,x) f(x)// it's
#/**/if PIN_EXISTS(FAN) // trailing
#elif HA\	 
S_TO\
\
OLS
#define AXES   TOOLS // trailing
#define SPARE 0xFFFFFFFFFFFFFFFF
\ 
\
  #endi\ 
f   
# define LIMIT_B	LARGER(('ab'+TOOLS), FIRST(0,7))// it's
#/**/elifndef BELT_DRIVE
	# define HAS_TOOLS defined(TOOLS)
#define PANEL_LIGHT 0
#/**/elifndef/* // */FAN_PIN
#\
/**/define LIMIT_B\ 
\	 
	STEPS
#/**/de\
fine TOOLS	LIMIT_A
/*\ 
 x */ #else //\
 other/* one */ // two
# define DUAL_FAN 0x1
//#define LARGER(a, b) FIRST((a) < b, a)
# endif // TRACE
#endif //\	 
 BELT_DRIVE
#define AXES   FIRST(AXES,AXES)
#ifndef BELT_DRIVE
#if (((1 + AXES) - TWICE (1))) < 0
#define PROBE_8 0
#elif (((1 + AXES) - TWICE (1))) == 0
#define PROBE_8 1
#elif (((1 + AXES) - TWICE (1))) & 1
#define PROBE_8 2
#elif (((1 + AXES) - TWICE (1))) < 7
#define PROBE_8 3
#elif (((1 + AXES) - TWICE (1))) % 3 == 1
#define PROBE_8 4
#endif
#define LOOP_B (LOOP_A | 4) /* one */
#/**/if/**/(DISABLED(TRACE) /* a
 b */ ? DISABLED(SOFT_START) : EITHER(PANEL_LIGHT,DUAL_FAN)) && /* a */ 5u >= AXES
#define PANEL_LIGHT   
#if ((017|(AXES))) < 0
#define PROBE_9 0
#elif ((017|(AXES))) == 0
#define PROBE_9 1
#elif ((017|(AXES))) & 1
#define PROBE_9 2
#elif ((017|(AXES))) < 7
#define PROBE_9 3
#elif ((017|(AXES))) % 3 == 1
#define PROBE_9 4
#endif
/* x /* a */ */ #else	// other
#\ 
endif // AXES// it's
#define STEPS   (0x7fff'ffff - TOOLS)
#elif !defined SOFT_START
  #elifdef LIMIT_A
%:define LOOP_B (LOOP_A | 4)
/* x */ #undef	LIMIT_A
# if ALL(BELT_DRIVE, PANEL_LIGHT,TRACE) && !defined ( STEPS)
#/**/elifndef LAMP_PIN
#
/* end */ ;
/\
/ #define TRACE
/* end */ ;
#/**/define FAN_PIN 0
#/**/elifndef DUAL_FAN
#define	DUAL_FAN /* over
two lines */
#/**/de\ 
fine F\
AN_PIN\ 
 0
#/**/endif
#endif
# define LAMP_PIN 7
	# elifdef BELT_DRIVE
	# if (5u * 0 > TOOLS ? ('ab'-'\xff') > 0 : defined(BELT_DRIVE))
	# elif !((STEPS ? 2 : 0x7fff'ffff) <= (STEPS & 0x10))
#undef LIMIT_B /* one */
//#define STEPS	10
#\
 el\	 
ifdef BELT_DR\ 
IVE
#define/* ' */LOOP_B (LOOP_A | 4)   
#if ENABLED(TRACE)
#elifndef SPARE\	 

#else // trailing
/* x */ #if !defined ( AXES)// it's
#elif !defined ( SOFT_START)
#/**/define SPARE LIMIT_B/* one */ // two
%:elifdef LIMIT_B
 /* a
 b */  #define LIMIT_B/**/3// it's
/* x */ #endif
%:defin\
\
e DUAL_FAN 0x1
# de\
fine FAN_PIN 0 /* over\

two lines */
\ 
#/**\
/endif // DUAL_FAN
#endif
# if ((TOOLS > 0))||!(true&&ENAB\
\
LED(TRA\
CE))
	 #define/**/HAS_TOOLS/* ' */defined(TOOLS)// it's
#if ((0x10 % (AXES | 1))) < 0
#define PROBE_10 0
#elif ((0x10 % (AXES | 1))) == 0
#define PROBE_10 1
#elif ((0x10 % (AXES | 1))) & 1
#define PROBE_10 2
#elif ((0x10 % (AXES | 1))) < 7
#define PROBE_10 3
#elif ((0x10 % (AXES | 1))) % 3 == 1
#define PROBE_10 4
#endif
///#define BELT_DRIVE 1
# elifndef SOFT_START
  #if (LIMIT_A == 1 ? !defined BELT_DRIVE||(TOOLS*LIMIT_B) << 1 + (TOOLS / (AXES | 1)) != STEPS : !defined ( TRACE) || defined TOOLS)
#define SPARE	10
\ 
\
\
#/**/define TWICE(x) ((x) * 2) // trailing
	# define TWICE(x) ((x) * 2)/* one */ // two
# ifndef PANEL_LIGHT
#elif ! (EITHER(SOFT_START,PANEL_LIGHT) || ENABLED(TRACE))
#el\ 
i\
\	 
fdef SPARE
#/**\	 
/\
endif
/* x /* a
 b */ */ #elifdef LIMIT_A/* one */\
\
 // two
#\
\
 define LAM\
P_PIN 0
#/**/define LIMIT_A	(0 ?/* // */LIMIT_B : LIMIT_B)
#elif ((!defined BELT_DRIVE) ? (!defined AXES) : (!(((AXES) ? '\n' : '\n')) << ((LARGER(STEPS, 3) + (5u / (L'x' | 1))) % 70)) >= 0x10)
// #define PANEL_LIGHT
  #\
if defined FAN_PIN || DISABLED(BELT\
_DRIVE)
/* x/**/*/ #undef TRACE
///#define TRACE 0
/* x */\
 #define STEPS   ((017 * L'x') * ('A'|5u))
#if (FIRST(LIMIT_B,TRACE_UNSET_0)) < 0
#define PROBE_11 0
#elif (FIRST(LIMIT_B,TRACE_UNSET_0)) == 0
#define PROBE_11 1
#elif (FIRST(LIMIT_B,TRACE_UNSET_0)) & 1
#define PROBE_11 2
#elif (FIRST(LIMIT_B,TRACE_UNSET_0)) < 7
#define PROBE_11 3
#elif (FIRST(LIMIT_B,TRACE_UNSET_0)) % 3 == 1
#define PROBE_11 4
#endif
#elif not/* // */TOOLS
  #define SOFT_START 3
#
/* end */ ;
\
\
#define SOFT_START\
 0// it's
%:endif // SPARE
# d\	 
ef\	 
ine PANEL_LIGHT 0
#else
  #define BELT_DRIVE
#if !ENABLED( TRACE) || TOOLS > 1
#if (~(((LIMIT_A >> (STEPS % 70)) & (2 + LIMIT_A)))) < 0
#define PROBE_12 0
#elif (~(((LIMIT_A >> (STEPS % 70)) & (2 + LIMIT_A)))) == 0
#define PROBE_12 1
#elif (~(((LIMIT_A >> (STEPS % 70)) & (2 + LIMIT_A)))) & 1
#define PROBE_12 2
#elif (~(((LIMIT_A >> (STEPS % 70)) & (2 + LIMIT_A)))) < 7
#define PROBE_12 3
#elif (~(((LIMIT_A >> (STEPS % 70)) & (2 + LIMIT_A)))) % 3 == 1
#define PROBE_12 4
#endif
	#\
\	 
 define HAS_TOOLS defined(TOOLS)
#if (((L'x'+STEPS) + 0 << 1 + AXES)) < 0
#define PROBE_13 0
#elif (((L'x'+STEPS) + 0 << 1 + AXES)) == 0
#define PROBE_13 1
#elif (((L'x'+STEPS) + 0 << 1 + AXES)) & 1
#define PROBE_13 2
#elif (((L'x'+STEPS) + 0 << 1 + AXES)) < 7
#define PROBE_13 3
#elif (((L'x'+STEPS) + 0 << 1 + AXES)) % 3 == 1
#define PROBE_13 4
#endif
/\
*\	 
 x */ #elif d\
\
efined(FAN_PIN)
%:elifndef BELT_DRIVE	// " quote
\
/* x */ #define SPARE	TRACE_UNSET_0
#/**/endif\	 
 // TR\
ACE /* one */\ 

#define DUAL_FAN 0
#/\
**/endif // LAMP\
_PIN
	//  #define FAN_PIN 0
%:elif/*
#define TRACE
*/defined(PANEL_LIGHT)// it's
#if ENABLED(BELT_DRIVE) &&/**/PIN_EXISTS(FAN)
#if ((ALL(BE\
LT_DRIVE,\	 
 SOFT_START,DUAL_FAN) ? - (STEPS) < (1*TOOLS) : defined(LIMIT_B)) ? (0x10 != (TAIL(5,6) + -(7)) ? EITHER(DUAL_FAN,SOFT_START) : PIN_EXISTS(FAN)) : !(!defined ( LIMIT_B)))
#elif\ 
\ 
ndef SPARE
#define SPARE   '\xff'
/* x */ #endif
# if ((PIN_EXISTS(LAMP) ? defined TRACE : !ENABLED( SOFT_START))||((- (LIMIT_B) - TWICE (SPARE)) != (TOOLS & STEPS)) ? !defined ( AXES) : ! (((5u + LIMIT_B)+(017 ? -1 : 3)) | 10)&&(LARGER(0b101 || TOOLS, ALIAS (10)) * CALL(TWICE, 4)) < (STEPS - 'ab') || defined(TRACE)) // trailing
#/**/define FAN_PIN 0
# elifdef SPARE	// " quote
#def\ 
\	 
ine AXES -1u
//#define TWICE( value ) (value + TWICE(value))
#define BELT_DRIVE
#\	 
 e\
ndif/*\
\

#define TRACE
*/// SOFT_START
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
#/**/define JOIN(a, b) a ## b
# else // other
/* x */ #define TWICE( value ) (va\
\
lue +\ 
 TWICE(value)) /* one */
#endif
/\
* x *\	 
/ #endif
# else /*\
 over
tw\
o lines */
#endif // SOFT_START /* one */
  #define AXES 2
  //#define LIMIT_B	(JOIN(TWI,CE)(3) >> ((3UL ? AXES : AXES) % 70))
#if (-('\xff')) < 0
#define PROBE_14 0
#elif (-('\xff')) == 0
#define PROBE_14 1
#elif (-('\xff')) & 1
#define PROBE_14 2
#elif (-('\xff')) < 7
#define PROBE_14 3
#elif (-('\xff')) % 3 == 1
#define PROBE_14 4
#endif
#/**/if AXES	!= 0
  #define STEPS   (AXES ^ TOOLS)/* one */ // two
#/**\
\	 
/if (ENABLED(SOFT_START)&&!defined ( SOFT_START) && !\	 
 (BOTH(PANEL_LIGHT,BELT_DRIVE)))
%:define FAN_PIN -1
	#	elifndef FAN_PIN
#elifndef	AXES
#/**/if 0b1\
01 && 0x7fff'ffff
#elifdef TRACE
#if !(((3UL >> (STEPS % 70)) < (0 % (-1u | 1)) ? defined(FAN_PIN) : ANY(PANEL_LIGHT, BELT_DRIVE,BELT_DRIVE))) // trailing
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
%:endif // TOOLS
# define HAS_TOOLS defined(TOOLS) // trailing
#elif (!defined ( /* a */ LIMIT_A)/**/|| DISABLED(DUAL_FAN) ? (defined(LAMP_PIN) ?/*
#define TRACE
*/defined(BELT_DRIVE) : PIN_EXISTS(LAMP)) : !(DISABLED(DUAL_FAN)))   
#if\ 
 !\	 
defined TRACE&&DISABLE\
\
D(DUAL_FAN)
#elif 0b101 != -(AXES)
#define BELT_DRIVE 1	// " quote
#define LIMIT_A   TWICE((SPARE % (10 | 1)))
  #else // other
#define DUAL_FAN // trailing
#if (- ((JOIN(1,2) - (AXES ? 10 : TOOLS)))) < 0
#define PROBE_15 0
#elif (- ((JOIN(1,2) - (AXES ? 10 : TOOLS)))) == 0
#define PROBE_15 1
#elif (- ((JOIN(1,2) - (AXES ? 10 : TOOLS)))) & 1
#define PROBE_15 2
#elif (- ((JOIN(1,2) - (AXES ? 10 : TOOLS)))) < 7
#define PROBE_15 3
#elif (- ((JOIN(1,2) - (AXES ? 10 : TOOLS)))) % 3 == 1
#define PROBE_15 4
#endif
	# endif
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
/\	 
* x */ #else /* x */ /* one */
#if ((LIMIT_B-9223372036854775807)) < 0
#define PROBE_16 0
#elif ((LIMIT_B-9223372036854775807)) == 0
#define PROBE_16 1
#elif ((LIMIT_B-9223372036854775807)) & 1
#define PROBE_16 2
#elif ((LIMIT_B-9223372036854775807)) < 7
#define PROBE_16 3
#elif ((LIMIT_B-9223372036854775807)) % 3 == 1
#define PROBE_16 4
#endif
#if ((TRACE_UNSET_0 * 2)) < 0
#define PROBE_17 0
#elif ((TRACE_UNSET_0 * 2)) == 0
#define PROBE_17 1
#elif ((TRACE_UNSET_0 * 2)) & 1
#define PROBE_17 2
#elif ((TRACE_UNSET_0 * 2)) < 7
#define PROBE_17 3
#elif ((TRACE_UNSET_0 * 2)) % 3 == 1
#define PROBE_17 4
#endif
#endif
	# define IS_DUAL ENABLED(DUAL_FAN)
#if (TAIL(5,)) < 0
#define PROBE_18 0
#elif (TAIL(5,)) == 0
#define PROBE_18 1
#elif (TAIL(5,)) & 1
#define PROBE_18 2
#elif (TAIL(5,)) < 7
#define PROBE_18 3
#elif (TAIL(5,)) % 3 == 1
#define PROBE_18 4
#endif
#else
#if ((1*SPARE)) < 0
#define PROBE_19 0
#elif ((1*SPARE)) == 0
#define PROBE_19 1
#elif ((1*SPARE)) & 1
#define PROBE_19 2
#elif ((1*SPARE)) < 7
#define PROBE_19 3
#elif ((1*SPARE)) % 3 == 1
#define PROBE_19 4
#endif
# endif // FAN_PIN
  #if !(PIN_EXISTS(FAN)&&defined(DUAL_FAN))
/\
* x *\
/
/* end */ ;
//#define TRACE
#/**/if LOOP_A
#eli\
\
fde\ 
f STEP\
S
  #de\ 
fine\
 IS_DUAL ENABLED(DUAL_FAN)   
%:
/* end */ ;
#if ((((AXES ? AXES : 0) * 3 < 0x7fff'ffff) % (TWICE (LARGER(0x7fff'ffff, 3UL)) | 1))) < 0
#define PROBE_20 0
#elif ((((AXES ? AXES : 0) * 3 < 0x7fff'ffff) % (TWICE (LARGER(0x7fff'ffff, 3UL)) | 1))) == 0
#define PROBE_20 1
#elif ((((AXES ? AXES : 0) * 3 < 0x7fff'ffff) % (TWICE (LARGER(0x7fff'ffff, 3UL)) | 1))) & 1
#define PROBE_20 2
#elif ((((AXES ? AXES : 0) * 3 < 0x7fff'ffff) % (TWICE (LARGER(0x7fff'ffff, 3UL)) | 1))) < 7
#define PROBE_20 3
#elif ((((AXES ? AXES : 0) * 3 < 0x7fff'ffff) % (TWICE (LARGER(0x7fff'ffff, 3UL)) | 1))) % 3 == 1
#define PROBE_20 4
#endif
/* x	*/ #elif/* // */ENABLED(TRACE, PANEL_LIGHT,TRACE)||!defined /* a */ LIMIT_A // trailing
#\
 define LOOP_B (LOOP_A | 4) // trailing
#if (FIRST((AXES % (1 | 1)),('\xff'*9223372036854775807))) < 0
#define PROBE_21 0
#elif (FIRST((AXES % (1 | 1)),('\xff'*9223372036854775807))) == 0
#define PROBE_21 1
#elif (FIRST((AXES % (1 | 1)),('\xff'*9223372036854775807))) & 1
#define PROBE_21 2
#elif (FIRST((AXES % (1 | 1)),('\xff'*9223372036854775807))) < 7
#define PROBE_21 3
#elif (FIRST((AXES % (1 | 1)),('\xff'*9223372036854775807))) % 3 == 1
#define PROBE_21 4
#endif
  #define TOOLS '\xff'
	# endif
#else // other
#define SOFT_START 0x1	// " quote
#if (!!('\n')) < 0
#define PROBE_22 0
#elif (!!('\n')) == 0
#define PROBE_22 1
#elif (!!('\n')) & 1
#define PROBE_22 2
#elif (!!('\n')) < 7
#define PROBE_22 3
#elif (!!('\n')) % 3 == 1
#define PROBE_22 4
#endif
/\	 
* x */ #endif\
 // LAMP_PIN
  #elifdef PANEL_LIGHT
#if (TWICE((2 ? LIMIT_A : 'A'))) < 0
#define PROBE_23 0
#elif (TWICE((2 ? LIMIT_A : 'A'))) == 0
#define PROBE_23 1
#elif (TWICE((2 ? LIMIT_A : 'A'))) & 1
#define PROBE_23 2
#elif (TWICE((2 ? LIMIT_A : 'A'))) < 7
#define PROBE_23 3
#elif (TWICE((2 ? LIMIT_A : 'A'))) % 3 == 1
#define PROBE_23 4
#endif
%:define TRACE	// " quote
#elifndef LIMIT_A
#/**/define DUAL_FAN // trailing
# else // other
// #define TWICE(x) ((x) * 2)
# if (DISABLED(DUAL_FAN) ||/* ' */!ENABLED( DUAL_FAN))&&0 == ((0b101 /* a
 b */ % (AXES | /* a */ 1))|0) ||/* // */!ENABLED( PANEL_LIGHT) /* a */ || (LIMIT_B */**/TOOLS) == (1 TERN_(TRACE, + 2))
#define/**/TOOLS/**/7// it's
\	 
#define TRACE\
	false
#define BELT_DRIVE 1
/* x */ #elifndef TRACE
#/**/define STEPS/*
#define TRACE
*/TOOLS /* one */
R"x(
#define TRACE 4
)" )x"
/* end */ ;
/* x */ #endif // PANEL_LIGHT
	//  #define AXES '\xff'
#endif // TRACE// it's

#define ALIAS TWICE
%:define TWICE(x) ((x) * 2)
	# define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(a,...) (a)/* one */ // two
%:define JOIN(a,b) a##b
#/**/define CALL(f,x) f(x)
/* x */ #define TAIL(a, b...) (a, ## b)
#/**/define SPREAD(x, ...)/*
#define TRACE
*/(x) __VA_OPT__(+ /* a */ (__VA_ARGS__, 1)) // trailing
# if LARGER(A\
XES,\ 
 9223372036854775807) != (TRACE_UNSET_0 / (TOOLS | 1))&&!defined ( TRACE)||(!defined ( LIMIT_B) ? 0x10 > (10 / (TWICE (3) | 1)) : defined(SPARE)) /\
* one */
#/**/defi\	 
ne FAN_PIN PIN_NONE /* one */
/\
* x *\
/
/* end */ ;
%:elif true && defined AXES// it's
/\	 
*\
 x */ #endif /* one */
//#define TOOLS	TWICE (TWICE(TOOLS))
# define/**/LAMP_PIN PIN_NO\
NE
#define FAN_PIN 7
#define STEPS   '\n'   
#ifdef TRACE
#if (ENA\
BLED(TRACE) ? EITHER(BELT_DRIVE,BELT_DRIVE) : ANY(DUAL_FAN, DUAL_FAN,PANEL_LIGHT))
#define	AXES  /* ' */+((STEPS + /* a */ SPARE))	// " quote
%:\	 
if LIMIT_B > TRACE_UNSET_0&&AXES<SPARE && LIMIT_A != 0 || ! (!defined LIMIT_A)||AXES<0&&defined FAN_PIN
	# else/**//* x *//* one */ // two
#/**/if (TAIL(5) - ((TRACE_UNSET_0 / (AXES | 1)) % ((3UL ^ TOOLS) | 1)) <= 5u ? BOTH(DUAL_FAN,BELT_DRIVE) && ((SPREAD(4, 5) - (TOOLS >> (TOOLS % 70))) ^ ((7 * SPARE) >> (TWICE(TOOLS) % 70))) >= 1 : !defined ( SOFT_START) || defined(SPARE))
/* x */ #elifdef SOFT_START
	# /* a */ else /* a\

 b */ /*\
\
/* ' */x/*
#define TRACE
*/*/
const char *s = "/* not a comment"; // "
/* end */ ;
#/**/endif
#/**/define LIMIT_B (0x10 << (2 % 70))
	# endif // PANEL_LIGHT /* over
two lines */
	# elif LARGER((+('\xff') + (AXES << (-1u % 70))), ALIAS (((AXES) * 0x7fff'ffff))) <= ('ab' * AXES)||(7 >> (AXES % 70)) | (LIMIT_B / (LIMIT_A | 1)) || DISABLED(DUAL_FAN)
  #define BELT_DRIVE 3
#/**/define FAN_PIN 0
#endif // TRACE
#\
ifd\
ef AXES
\
#if EITHER(DUAL_FAN,DUAL_FAN) /* over
two lines */
 /* a */  #if ! (LIMIT_A > /* a */ SPARE)/* one */ // two
/* x */ #define TRACE true
#define SOFT_START false
#elifdef DUAL_FAN	// " quote
#\	 
elifdef PANEL_LIGHT
///#define PANEL_LIGHT
#/**/define TOOLS  /* // */TERN0(DUAL_FAN,	3) /* over
two lines */
  #define\	 
 TOOLS (~(STEPS) - (LIMIT_A % ((AXES) | 1)))
  #else // other
%:endif // BELT_DRIVE
%:define TOOLS (0xFFFFFFFFFFFFFFFF|'\n')   
don't /* open
/* end */ ;
#endif/* one */ // two
#/**/elif defined(FAN_PIN)||ENABLED(BELT_DRIVE)
%:define TAIL(a, b...) (a, ## b) // trailing
  #\
defin\
e PANEL_LIGHT 0x1 /* one */
#define TOOLS	(0xFFFFFFFFFFFFFFFF * 0b101)
#end\ 
if\	 
\	 

	# define BELT_DRIVE 0x1
// don't #define TRACE
/* end */ ;
  #endif
#if ! (!ENABLED( BELT_DRIVE)&&!defined ( LAMP_PIN))
#ifndef PANEL_LIGHT
#/*\
\
*/define LIMIT_A/* ' *//\ 
*
#define TRACE
*/ LIMIT_\ 
A
/* x */ #define STEPS	(0xFFFFFFFFFFFFFFFF*9223372036854775807)
	# elifndef/**/AXES
%:elif ! (defined BELT_DRIVE)
	# undef BELT_DRIVE
// #define LOOP_B (LOOP_A | 4)
#define TRACE 1 /* one */
#endif
/* // */ #ifde\
f AXES
#if ! (!!((FIRST(L'x',AXES)*(AXES--1))) > ('\n'+TRACE_UNSET_0)&&defined(SPARE)&&defined LAMP_PIN) // trailing
#define PANEL_LIGHT 0x1
#ifndef /* a */ FAN_PIN   
///#define SOFT_START false
#/**/define TRACE
\	 
  #define STEPS   0x10
#defin\
e\
 PAN\
EL_LIGHT
# else
# endif // LAMP_PIN	// " quote
#/**/elifndef DUAL_FAN
#/**/if !defined DUAL_FAN&&(0x7fff'ffff + TOOLS) != (0b101+0x7fff'ffff)||IS_DUAL&&DISABLED(BELT_DRIVE)&&!defined LAMP_PIN&&!ENABLED( TRACE) || ENABLED(DUAL_FAN)&&ENABLED(SOFT_START)/* one */ // two
// don't #define TRACE
/* end */ ;
#\
 define STEPS	STEPS// it's\

#/**/\
define LI\
MIT_B/*\
*/SPARE
%:elifdef DUAL_FAN
#define LIMIT_B	10
/* x */ #elif !(defined TOOLS)/* one */ // two
#endif // TOOLS
#else/* one */ // two
/* x */ #define STEPS 10// it's
#undef AX\
\
ES
#endif
/*
#define TRACE
*/	#define CALL(f, x) f (x)
#elifndef BELT_DRIVE /* over
two lines */
/* x */ #elif PIN_EXISTS(FAN)
/* x */ #define TOOLS ((TRACE_UNSET_0-TOOLS) + (SPARE & AXES))
#\ 
if\
\
 (MANY(BEL\
T_DRIVE, BELT_DRIVE,SOFT_START))
#if defined(BELT_DRIVE)&&(0xFFFFFFFFFFFFFFFF*1) <= FIRST(STEPS,LIMIT_B) & LARGER('A', 3UL)
# define LAMP_PIN -1
#define DUAL_FAN false
\ 
  #elifndef\
 LI\ 
MIT_B
#else // other// it's
/* x */ #endif // SOFT_START/* one */ // two
	# define LAMP_PIN/* ' */-1
/*/* // */x */ #elifdef	PANEL_LIGHT
#ifdef PANEL_LIGHT
%:elifndef PANEL_LIGHT   
#/**/define/* ' */TOOLS	(TRACE_UNSET_0 ?/*
#define TRACE
*/0x10 : /* a */ 0x10)
#e\
ndif // LA\
MP_PIN
#define SOFT_START true/* one */ // two
#elifdef FAN_PIN	// " quote
	# define DUAL_FAN 0x1
#else /* x *//* one */ // two
%:define LIMIT_B   (ALIAS (AXES) + (1 >> ('\xff' % 70))) // trailing
%:define SPARE '\xff'// it's
/* x */ #define\ 
 TOOLS LIMIT_B	// " quote\	 

#/**/endif // DUAL_FAN
%:define STEPS	(9223372036854775807 * AXES)
#el\
se
#endif // SPARE/* one */ // two
#if AXES && TRACE_UNSET_0 < (0xFFFFFFFFFFFFFFFF ? LIMIT_A : '\n')
%:if IS_DUAL
  #elifndef\	 
 STEPS\

# if/* ' */((ENABLED(SOFT_START) ?/* // */BOTH(BELT_DRIVE,BELT_DRIVE) : EITHER(DUAL_FAN,DUAL_FAN)))   
#/**/elifndef LIMIT_B // trailing
#/**/elif	ENABLED(BELT_DRIVE)
#define HAS_TOOLS (defined TOOLS && TOOLS)
  #define LARGER(a, b) FIRST((a) < b, a)
#else /* a */ // other
#/**/endif // DUAL_FAN
#/**/define BELT_DRIVE 0x1   
#else
# endif
#elifdef PANEL_LIGHT
#define TRACE 1
#elif DISABLED(BELT_DRIVE)	// " quote
#ifdef TOOLS
	# elif (TWICE((JOIN(LIMIT_, B) * (0 % (3UL | 1)))) && (0 / (0 | 1)) ? DISABLED(SOFT_START) : !defined ( FAN_PIN))// it's
#/**/endif // SPARE// it's
  #endif // BELT_DRIVE   
/* x */ #if PIN_EXISTS(FAN)
/* x */ #define\
 SOFT_START true
#
/* end */ ;
#if !(ENABLED(PANEL_LIGHT, BELT_DRIVE,BELT_DRIVE))
#elif BOTH(SOFT_START,SOFT_START)&&SPARE != 0
#define /* a */ PANEL_LIGHT
	# define LARGER(a,b) ((a) > (b) ? (a) : (b)) /* one */
# define LAMP_PIN PIN_NONE
#elifndef SOFT_START
%:define TOOLS   (AXES % ('\n' | 1))
  #if SPARE && LIMIT_A == 1||DISABLED(BELT_DRIVE) || IS_DUAL||(! (!defined AXES))
  #define LIMIT_A  /* a
 b */  LARGER((AXES), TOOLS)
%:define AXES   3// it's
#elif ! (!defined ( BELT_DRIVE))
# else   
#define HAS_TOOLS defined(TOOLS)
#/**/endif/**/// TRACE
#if ! (TOOLS != SPARE) // trailing
#define LAMP_PIN 7
#define AXES	LARGER(LIMIT_A, 017)
int x = 1; /* #define TRACE */
/* end */ ;
\
#/**/defin\
e TAIL(a\
\
, b...) (a, ## b)
# else /* x */
const char *s = "\" // still";
/* end */ ;
/\
* x *\
/
/* end */ ;
	#/**/endif // TOOLS
%:else /* x */
#endif // TRACE
/* x */ #if FIRST(LARGER(~(1), TRACE_UNSET_0),(('\xff'+AXES) / ((AXES >> (AXES % 70)) | 1))) != AXES
#define SOFT_START 1	// " quote
#/**/define DUAL_FAN false
%:else // other // trailing
#undef LAMP_PIN// it's
  #define SOFT_START true /* one */\ 

#ifndef FAN_PIN// it's
%:elif (defined TRACE ? !defined LIMIT_B :/**/!defined DUAL_FAN)
#/**/elif (9223372036854775807 - /* a */ LIMIT_A) >= (TOOLS + /* a */ AXES) && !ENABLED(/* ' */DUAL_FAN)
	# de\
fine TWICE(x)\
\
 ((x) + x)\ 

/* x */ #define SOFT_START 1 /* over
two lines */
#endif /* one */
#/**/endif
#/**/elifndef LAMP_PIN   
#defi\
\
ne DUAL_FAN
	#/* ' */if /\
* a */ DISABLED(SOFT_START)	|| defined(TRACE)\
\

#if defined(SOFT_START)
#/**/else /* x */
/* /* a */ x */ #define HAS_TOOLS/* // */(defined	TOOLS /* a */ && TOOLS)
# define PANEL_LIGHT
%:endif
#/**/define /* a
 b */ LIMIT_A   /* a */ (LARGER(5u,/*
#define TRACE
*/AXES) + (AXES-TOOLS))
#endif // PANEL_LIGHT /* one */
  #else// it's
	# if !defin\ 
ed FAN_PIN
# define STEPS	(TOOLS - 0)
	# elifndef LAMP_PIN   
	
/* end */ ;
#/**/define /* a */ BELT_DRIVE/*
#define TRACE
*/true
%:endif // PANEL_LIGHT
#define TRACE false
#/**/endif // DUAL_FAN
#elifdef LIMIT_A/* one */ // two
/* x */ #undef TRACE // trailing
#if /* a */ (~(0b101) ^ (AXES >>/* // */(0/* ' */%/**/70))) &&/**/(AXES)	// " quote
	#/*
#define TRACE
*/define/* ' */LIMIT_A	(0|SPARE)
#define	PANEL_LIGHT 0x1// it's
/* x */ #elifdef TOOLS // trailing
#define SOFT_START false
  #undef PANEL_LIGHT   
#if IS\
_DUAL || !ENABLED( SOFT_START) || ENABLED(BELT_DRIVE) && -1u > (AXES * 1) || ('\xff' == STEPS - 3 || defined(TRACE))
	# /* a
 b */ define BELT_DRIVE	// " quote
#undef LIMIT_A
#endif
#elifnd\ 
ef LIM\ 
IT_B
\
/\
\
* x\
 */ #define BELT_DRIVE 1
/*/**/x */ #else /* x	*/
  #define TOOLS (STEPS+0x10) & (LIMIT_B * SPARE)
#define /* a
 b */ TRACE true
#endif // LIMIT_A
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
#else // other
#define TRACE 1
#/**/endif // TRACE
#define TRACE false // trailing
#\
define STEP\
S	1
/* x */ #ifdef LAMP_PIN
	#\
\
 elifndef/*
#define TRACE
*/SOFT_START
#if !(!defined ( AXES)&&TOOLS	> STEPS)
# el\
se\
 // othe\
r
/* x /* a */ */ #define /* a */ SOFT_START 3
/* x */ #endif
\ 
\ 
#endif // DUAL_FAN\


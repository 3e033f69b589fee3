#define ALIAS TWICE
#define TWICE(x) ((x) * 2)
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
# define/**/FIRST(a,/**/rest...) a
	# define JOIN(a, b) a ## b/* one */ // two
#/**/define CALL(f,x) f(x)
	# define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define LARGER(a, b) FIRST((a) < b, a)
#/**/define STEPS	AXES
#if DIS\
ABLED(DUAL_FAN)\ 

#define STEPS	(0x10 - 9223372036854775807)
	# define DUAL_FAN 0x1
	# if BOTH(PANEL_LIGHT,PANEL_LIGHT) && ENABLED(BELT_DRIVE)
\
\
\
  #d\
efine TRACE 3
\
\ 
\
# define HAS_TOOLS (defined TOOLS && TOOLS)/* one */ // two
#elifdef/* ' */BELT_DRIVE
# defi\	 
ne DUAL_FAN 0
  //#define FAN_PIN 0
#\
elifndef\
 BELT_DR\
IVE
 /* // */#define STEPS 0
%\	 
:ifndef TRACE
# define TRACE false
%:if EITHER(BELT_DRIVE,DUAL_FAN)	&&/* // */(! (TWICE(((017/*
#define TRACE
*/>> /* a */ (LIMIT_B % 70)) * +(TRACE_UNSET_0))) >=	3UL))
# define AXES	(-('\xff') ^ (TRACE_UNSET_0 & 017)) // trailing
/* x */ #define JOIN(a,b) a##b
#define LIMIT_B/* ' */SPARE // trailing
%:elifndef DUAL_FAN// it's
#undef PANEL_LIGHT
#/**/define CALL(f, x) f (x)	// " quote
%:define FAN_PIN 0
  /* a */ #elif ! (LOOP_A||1 /* a
 b */ && (STEPS ^ STEPS))	// " quote
x R"(\
/*)" // y
/* end */ ;
#else   
%:define AXES	(~('A')*(10 * AXES))
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
	# undef AXES// it's
# endif // BELT_\
\
DRIVE
%:undef PANEL_LIGHT
#/**/define AXES   (STEPS & TOOLS) /* one */
	# elifndef LIMIT_B
#\
\
define B\
\
ELT_DRIVE 0x1
#else // other
%:define DUAL_FAN 1 // trailing
	#\	 
 endif
#endif // SOFT_START
#if !defined LAMP_PIN
/* x */ #ifdef/* ' */DUAL_FAN /* one */
  #define BELT_DRIVE true
  #define TRACE
	# if HAS_TOOLS && defined STEPS&&!defined LIMIT_B || BOTH(PANEL_LIGHT,SOFT_START)&&AXES != 0	// " quote
#de\
fine BELT_DRIVE
#define TOOLS   AXES
#elif DISABLED(TRACE) || (9223372036854775807 & AXES) == (017-TOOLS)
#define SOFT_START
#define LIMIT_B   TWICE ((TOOLS*AXES)) // trailing
#define AXES 2/* one */ // two
	# endif	// BELT_DRIVE // trailing
#elifndef DUAL_FAN
	//  #define SPARE   (AXES*(5u ? 9223372036854775807 : 0b101))
\
#define FAN_PIN 0 /* o\ 
ne */
#\
end\
if	// "\
\
 quote
#define BELT_DRIVE false
#if FIRST((LARGER(AXES, (AXES)) % (JOIN(TWI,CE)(3) | 1)),-(ALIAS (LIMIT_B))) == 017
%:define LIMIT_A   -1 // trailing
#/**/elifndef/* // */TOOLS /* one */
#/**/endif
#de\
fine HAS_TOOLS (defined TOOLS && TO\
OLS)
#/**/else // other
#/\
\
**/ifdef FAN_PI\
N
#endif // FAN_PIN// it's
	# if FIRST((2 + LIMIT_B ? (AXES - 0) : (5u >> (7 % 70))),((STEPS-AXES)-(SPARE ? 7 : SPARE))) && (FIRST(-1,TOOLS) / ((3UL + 3) | 1)) // trailing
/* x */ #define SOFT_START 0 // trailing
#/**/define LIMIT_B ((AXES + STEPS) << (TWICE('\n') % 70))
	# elif 7\
\
 | 0x10
\
\	 
  #endif
/* x */ #if (PIN_EXISTS(FAN) ? AXES != 0b101&&DISABLED(BELT_DRIVE) : !defined ( LIMIT_B) || TWICE((AXES ^ 3UL)) >= ALIAS (-(TOOLS))) || MANY(BELT_DRIVE, TRACE,TRACE) && defined SPARE || !defined SOFT_START && (((TOOLS|0x10)|(AXES*LIMIT_B)) >> ((TWICE(0xFFFFFFFFFFFFFFFF) ? WITHIN(AXES, 1, 3) : ('\xff' ? LIMIT_A : '\n')) % 70)) == 0x10
\
#if (!defined\	 
 ( STEPS) || !defined LAMP_PIN ? PIN_EXISTS(FAN) :\	 
 !(STEPS>=0))
%:define DUAL_FAN\
 0x1
  //#define SOFT_START false
# define SPARE	((0x7fff'ffff / (3 | 1))*(017 / (TOOLS | 1)))
	#/* ' */elif /* a */ ENABLED(TRACE)
#else // other
#en\
dif
#/**/endif // LIMIT_A
\
	# endif // BELT_DRIVE	// " quote
\	 
#elifdef DUAL_\
\
FAN
#/**/define SOFT_START
#if AX\	 
ES != SPARE
#if defined BELT_DRIVE
#undef STEPS
#ifndef STEPS
 /\	 
* a *\ 
/  #elif !d\
\
efined FAN_PIN
\
  #else // o\
\
ther\

#define LIMIT_B 'A'
#endif // trailing
#\
\
el\
ifndef FAN_PIN
#if PIN_EXISTS(FAN)
# else
#un\
\
def LIMIT\ 
_A
\	 
\
\
	# endif
%:elif !ENABLED( DUAL_FAN) || EITHER(PANEL_LIGHT,SOFT_START)||!(LIMIT_B && ((-1u / (L'x' | 1)) % ((-1 ^ LIMIT_B) | 1)))
  #endif
	//  #define TRACE 1
  #\
define LARGER(a, b) FIRST((a) <\
\
 b, a)
#/**/define TOOLS   '\xff'
/* x */ #elifndef AXES
# endif
#/**/define LIMIT_A	TRACE_UNSET_0
#elif	BOTH(SOFT_START,PANEL_LIGHT) &&/*
#define TRACE
*/!defined BELT_DRIVE /* one */
#define STEPS	L'x'
%:else
#if (LIMIT_B || (defined(DUAL_FAN) ? defined LAMP_PIN : ENABLED(SOFT_START)))
#undef PANEL_LIGHT
#define BELT_DRIVE
#/**/if defined(DUAL_FAN)
	# define /* a
 b */ STEPS AXE\
S
	# endif /* a */ // DUAL_FAN
%:endif
#/**/endif // LIMIT_A
# define CALL(f, x) f/* // */(x)
#define TRACE 0x1
/* x */ #if (EITHER(TRACE,DUAL_FAN)&&'ab' != 'A' ? (defined(LIMIT_B) ? defined LIMIT_B : MANY(PANEL_LIGHT, DUAL_FAN,DUAL_FAN)) : ENABLED(BELT_DRIVE, PANEL_LIGHT,DUAL_FAN))
#defi\	 
\
\
ne STEPS	(AXES+SPARE)
#define PANEL_LIGHT 0x1
# define AXES	(TOOLS|'A') < (TOOLS - AXES)
%\
\
\
:else /\ 
/ other
#if ENABLED(DUAL_FAN) || !ENABLED( BELT_DRIVE)||(BOTH(SOFT_START,BELT_DRIVE) ? 'A' != ((AXES) % (0b101 | 1)) : ((AXES < 3UL - (TRACE_UNSET_0 & TOOLS)) + (TWICE(9223372036854775807) >> (!!(AXES) % 70))) | -('\xff'))
# define FAN_PIN 7/* one */ //\
 two\

#/**/if ! (TOOLS > 0x10)
#if (PIN_EXISTS(FAN) ? !defined LAMP_PIN : ENABLED(DUAL_FAN))
#define LAMP_PIN -1
%:elif !ENABLED( SOFT_START) && LIMIT_B != 2
/\ 
\
* x/**/*/ #d\ 
efine TRACE
\ 
#\	 
/**/else /*/**/x\ 
 */ /* over
two lines */
#endif   
  #define SOFT_START true
\ 
	#\	 
 else /* x */
# undef PANEL_LIGHT
#undef TRACE/* one */ // two
%:endif /* one */
\

/* end */ ;
\
  #define TOOLS   (0\ 
--1\	 
u)
#elifndef/* ' */STEPS
	# endif
  #define PANEL_LIGHT false// it's
/* x */ #undef DUAL_FAN /* over
tw\	 
o lines */
\
\
#\ 
endif\
\


#define ALIAS TWICE
#define TWICE(x) ((x) + x)
/* x */ #define LARGER(a, b) FIRST((a) < b, a)
  #define FIRST(a,...) (a)
#/**/define JOIN(a,b) a##b
#define CALL(f, x) f (x)/* one */ // two
#define /* a
 b */ TAIL(a, ...)/* ' */(a __VA_OPT__(,)/* // *\ 
/__VA_ARGS_\
_)
  #define SPREAD(x, y...) ((x) , ## y)   
#define SPARE 017// it's
 /* a */  #define SOFT_START
#define BELT_DRIVE 0x1
# ifnd\
ef\
\ 
 LIMIT_B
	# ifdef PANEL_LIGHT
	
/* end */ ;
/* x */ #if ((LOOP_B == 5&&!ENABLED( BELT_DRIVE) ? ALL(SOFT_START, TRACE,DUAL_FAN) && !defined STEPS : ANY(TRACE, TRACE,PANEL\
\
_LIGHT)) ? defined(FAN_PIN) : defined FAN_PIN)
#define LIMIT_A ('\xff' % (2 | 1))
#if !defined ( SOFT_START)||(2-017) >= (0xFFFFFFFFFFFFFFFF-TOOLS) && DISABLED(TRACE) || MANY(DUAL_FAN, PANEL_LIGHT,BELT_DRIVE)
#/**/define DUAL_FAN	true
#define DUAL_FAN 0x1
	# define LIMIT_B   '\xff'
  #elifdef SPARE
# elif DISABLED(TRACE)
#\
e\	 
ndif // PANEL_\
LIGHT
  #elif\
def DUAL_FAN/* one */ // two
/* x */ #endif /* over
two lines */
#ifndef DUAL_FAN   
#/**/if defined(AXES)// it's
#elifndef FAN_PIN
#elifdef /* a */ TOOLS// it's
#/**/else // other/* one */ // two
	# endif // TOOLS// it's
	# define	LAMP_PIN PIN_NONE
#eli\
f (TW\
ICE(5u) - (-1 - '\xff')) >= ALIAS (FIRST(-1u,AXES))
#if ((((AXES * 1)-(0b101 - LIMIT_B)) >> (((AXES & 2)*(0b101 & TOOLS)) % 70))) < 0
#define PROBE_1 0
#elif ((((AXES * 1)-(0b101 - LIMIT_B)) >> (((AXES & 2)*(0b101 & TOOLS)) % 70))) == 0
#define PROBE_1 1
#elif ((((AXES * 1)-(0b101 - LIMIT_B)) >> (((AXES & 2)*(0b101 & TOOLS)) % 70))) & 1
#define PROBE_1 2
#elif ((((AXES * 1)-(0b101 - LIMIT_B)) >> (((AXES & 2)*(0b101 & TOOLS)) % 70))) < 7
#define PROBE_1 3
#elif ((((AXES * 1)-(0b101 - LIMIT_B)) >> (((AXES & 2)*(0b101 & TOOLS)) % 70))) % 3 == 1
#define PROBE_1 4
#endif
#define AXES	!!(STEPS) // trailing
#define FIRST(a, rest...) a // trailing
#elif EITHER(DUAL_FAN,SOFT_START)
# if !defined BELT_DR\ 
IVE && PIN_EXISTS(LAMP)&&ANY(DUAL_FAN, PANEL_LIGHT,\	 
P\
ANEL_LIGHT)||EITHER(BELT_DRIVE,PANEL_LIGHT)
#define HAS_TOOLS (defined TOOLS && TOOLS)
// don't #define TRACE
/* end */ ;
  #define TRACE false
  #elifdef LAMP_PIN
#else
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
// don't #define TRACE
/* end */ ;
#endif // FAN_PIN
#define HAS_TOOLS (defined TOOLS && TOOLS)
%:else\
 /* x */
# define TRACE false
/* x */ #define AXES FIRST(10,SPARE)
	# endif // trailing
# else // other/* one */ // two
/\
\
* x */ #endif // LAMP_PIN/*\ 
 one */ // two
  #ifndef TRACE
// don't #define TRACE
/* end */ ;
#elifdef BELT_DRIVE
#elifdef BELT_DRIVE// it's
# define PANEL_LIGHT 3
%:else /* x */
#define PANEL_LIGHT true
#define SPARE	LARGER((SPARE << (L'x' % 70)), LARGER(STEPS, AXES))
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
/* x */ #endif // SOFT_START
#\
ifdef DUAL_FAN
# /* a
 b */ if defined DUAL_FAN /* over
two lines */
# elifd\ 
ef S\
\
OFT_START
/* x */ #if !((EITHER(PANEL_LIGHT,PANEL_LIGHT) ? 1 : defined DUAL_FAN))||!(!defined ( PANEL_LIGHT))||DISABLED(TRACE)
	# def\ 
ine FAN\
_PIN 7
%:define SOFT_START
#/**/elif ANY_PIN(FAN, LAMP)
	# define JOIN(a,b) a##b
#\
\
 define\	 
 LAMP_PIN\
 7
R"x(
#define TRACE 4
)" )x"
/* end */ ;
%:else /* x */
#\ 
\
/* ' */endif\ 
 // SOFT_START
#elifndef DUAL_FAN// it's
#define SOFT_START
#/**/else /* x */
%:if !defined ( FAN_PIN)||ENABLED(BELT_DRIVE)
#if ((0xFFFFFFFFFFFFFFFF / (-1u | 1)) && !!(AXES)) < 0
#define PROBE_2 0
#elif ((0xFFFFFFFFFFFFFFFF / (-1u | 1)) && !!(AXES)) == 0
#define PROBE_2 1
#elif ((0xFFFFFFFFFFFFFFFF / (-1u | 1)) && !!(AXES)) & 1
#define PROBE_2 2
#elif ((0xFFFFFFFFFFFFFFFF / (-1u | 1)) && !!(AXES)) < 7
#define PROBE_2 3
#elif ((0xFFFFFFFFFFFFFFFF / (-1u | 1)) && !!(AXES)) % 3 == 1
#define PROBE_2 4
#endif
#if (FIRST(STEPS,017)) < 0
#define PROBE_3 0
#elif (FIRST(STEPS,017)) == 0
#define PROBE_3 1
#elif (FIRST(STEPS,017)) & 1
#define PROBE_3 2
#elif (FIRST(STEPS,017)) < 7
#define PROBE_3 3
#elif (FIRST(STEPS,017)) % 3 == 1
#define PROBE_3 4
#endif
#else //\
 other/* one */ // two
/* x */ #define LOOP_B (LOOP_A | 4)
#e\ 
\ 
ndif // STEPS\
\

#def\ 
ine BELT_DRIVE false
#define LAMP_PIN -1/* one */ // two
  #endif
#ifdef SPARE\
\
 // trail\
\
ing\ 

#undef FAN_PIN
#define PANEL_LIGHT 0	// " quote\

const char *s = "\" // still";
/* end */ ;
/* x */ #define TOOLS	2 /* over
two lines */
# elif/*
#define TRACE
*/LOOP_A /* over
two lines */
#define TRACE 9
*/ int after;
/* end */ ;
/* x */ #define TAIL(a, b...) (a, ## b)
  #elifdef DUAL_FAN/* one */ // two
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
  #else // other
# endif // BELT_DRIVE
	# define TRACE 3/\
\
*\
 one\
 */ // two
# if true
 /\
\
* a */ /**/#if /* a */ ENABLED(\
PANEL\	 
_LIGHT)
#define DUAL_FAN
#define LIMIT_A   (017 << (5u % 70))
#define LIMIT_A ALIAS (-1)   
# else
#define PANEL_LIGHT 0
#endif // BELT_DRIVE
#elifdef DUAL_FAN	// " quote
\ 
/* x */ #d\
\
efine LAMP_PIN 0
#\	 
end\
i\
\
f // PANEL_LIGHT
#/**/elif defined(PANEL_LIGHT)
	# endif/* one */ // two
#endif // TOOLS
#if (LARGER(TAIL(5,), (LIMIT_A / (SPARE | 1)))) < 0
#define PROBE_4 0
#elif (LARGER(TAIL(5,), (LIMIT_A / (SPARE | 1)))) == 0
#define PROBE_4 1
#elif (LARGER(TAIL(5,), (LIMIT_A / (SPARE | 1)))) & 1
#define PROBE_4 2
#elif (LARGER(TAIL(5,), (LIMIT_A / (SPARE | 1)))) < 7
#define PROBE_4 3
#elif (LARGER(TAIL(5,), (LIMIT_A / (SPARE | 1)))) % 3 == 1
#define PROBE_4 4
#endif
#define AXES   (1 % (LIMIT_B | 1))
#/**/define PANEL_LIGHT 1
#if (((AXES - 'A') + (TOOLS & 0))) < 0
#define PROBE_5 0
#elif (((AXES - 'A') + (TOOLS & 0))) == 0
#define PROBE_5 1
#elif (((AXES - 'A') + (TOOLS & 0))) & 1
#define PROBE_5 2
#elif (((AXES - 'A') + (TOOLS & 0))) < 7
#define PROBE_5 3
#elif (((AXES - 'A') + (TOOLS & 0))) % 3 == 1
#define PROBE_5 4
#endif
#\
\
ifndef\
\
 LAMP_PIN
#if !(EITHER(TRACE,BELT_DRIVE))
  //#define TOOLS	L'x'
#/**/define CALL(f,x) f(x)
#elifndef DUAL_FAN
#define LAMP_PIN -1
	# d\
efine T\
RACE t\
rue
#define DUAL_FAN 0x1
#elifndef STEPS
# if ALL(BELT_DRIVE, BELT_DRIVE,TRACE) || BOTH(DUAL_FAN,DUAL_FAN)
#define /* a
 b */ BELT_DRIVE	3 /* one */
#if !defined SPARE// it's
#define PANEL_LI\
GHT 3\

  //#define LOOP_B (LOOP_A | 4)
#el\
ifndef\	 
\	 
 SOFT_START
// don't #define TRACE
/* end */ ;
%:define/*
#define TRACE
*/SOFT_START
%:endif
	# /* a */ define SOFT_START 0x1
#if (((3 - AXES) ^ ALIAS (10))) < 0
#define PROBE_6 0
#elif (((3 - AXES) ^ ALIAS (10))) == 0
#define PROBE_6 1
#elif (((3 - AXES) ^ ALIAS (10))) & 1
#define PROBE_6 2
#elif (((3 - AXES) ^ ALIAS (10))) < 7
#define PROBE_6 3
#elif (((3 - AXES) ^ ALIAS (10))) % 3 == 1
#define PROBE_6 4
#endif
/* x */ #elif (defined(LIMIT_B) ? STEPS > 0 : !ENABLED( BELT_DRIVE))
  #define BELT_DRIVE true
/* x */ #define SPREAD(x, y...) ((x) , ## y)
%\
:define JOIN(a,b) a %:%: b
#else/* one */ // two
/\
* x *\
/
/* end */ ;
#if (TAIL(5,)) < 0
#define PROBE_7 0
#elif (TAIL(5,)) == 0
#define PROBE_7 1
#elif (TAIL(5,)) & 1
#define PROBE_7 2
#elif (TAIL(5,)) < 7
#define PROBE_7 3
#elif (TAIL(5,)) % 3 == 1
#define PROBE_7 4
#endif
%:endif
#if (((LARGER(3, L'x')+('ab'|AXES)) % (((TRACE_UNSET_0 & LIMIT_A) + (AXES) < LIMIT_A) | 1))) < 0
#define PROBE_8 0
#elif (((LARGER(3, L'x')+('ab'|AXES)) % (((TRACE_UNSET_0 & LIMIT_A) + (AXES) < LIMIT_A) | 1))) == 0
#define PROBE_8 1
#elif (((LARGER(3, L'x')+('ab'|AXES)) % (((TRACE_UNSET_0 & LIMIT_A) + (AXES) < LIMIT_A) | 1))) & 1
#define PROBE_8 2
#elif (((LARGER(3, L'x')+('ab'|AXES)) % (((TRACE_UNSET_0 & LIMIT_A) + (AXES) < LIMIT_A) | 1))) < 7
#define PROBE_8 3
#elif (((LARGER(3, L'x')+('ab'|AXES)) % (((TRACE_UNSET_0 & LIMIT_A) + (AXES) < LIMIT_A) | 1))) % 3 == 1
#define PROBE_8 4
#endif
#endif // DUAL_FAN
#define DUAL_FAN 3// it's
#define DUAL_FAN 1 /* over
two lines */
#/**/define PANEL_LIGHT 0   
/*\
 x */ #els\
e
#define SPREAD(x, y...) ((x\	 
) , ## y)
	//  #define SOFT_START true
\
	# endif	// " quote
  #define STEPS   LARGER(LIMIT_A, LIMIT_B)

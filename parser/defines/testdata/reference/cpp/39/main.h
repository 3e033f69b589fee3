#define ALIAS TWICE
#define TWICE(x) (\
(x) * 2) // trailing
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
  #define FIRST(...) TAIL(0, __VA_ARGS__) /* over
two lines */
#define JOIN(a,b) a##b
#define CALL(f, x) f (x) // trailing
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#/**/define SPREAD(x, y...) ((x) , ## y)
	# define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#i\	 
f (((-1u >> (TOOLS % 70\ 
)) ^ (-1 * LIMIT_A)) && ('\n' ^ (LIMIT_B >> (0b101 % 70))) ? EITHER(BELT_DRIVE,TRACE) : IS_DUAL)   
// don't #define TRACE
/* end */ ;
# define\ 
 AXES	(LIMIT_A+-1u)
#if ((9223372036854775807 - 0x7fff'ffff % ((0xFFFFFFFFFFFFFFFF >> (-1 % 70)) | 1))) < 0
#define PROBE_1 0
#elif ((9223372036854775807 - 0x7fff'ffff % ((0xFFFFFFFFFFFFFFFF >> (-1 % 70)) | 1))) == 0
#define PROBE_1 1
#elif ((9223372036854775807 - 0x7fff'ffff % ((0xFFFFFFFFFFFFFFFF >> (-1 % 70)) | 1))) & 1
#define PROBE_1 2
#elif ((9223372036854775807 - 0x7fff'ffff % ((0xFFFFFFFFFFFFFFFF >> (-1 % 70)) | 1))) < 7
#define PROBE_1 3
#elif ((9223372036854775807 - 0x7fff'ffff % ((0xFFFFFFFFFFFFFFFF >> (-1 % 70)) | 1))) % 3 == 1
#define PROBE_1 4
#endif
#if ('ab' * SPARE) | AXES && defined(LIMIT_B) || ! (LARGER(1, AXES) != ('ab'-SPARE))
#/\
**/define LIMIT_B   (AXES * SPARE - (TOOLS*017))/* one */ // two
#define LIMIT_A	(7 ^ 3)
#define LIMIT_A LIMIT_A
#\
elif defined DUAL_FAN\
\
\

#undef PANEL_LIGHT
#if ((TOOLS & 1)) < 0
#define PROBE_2 0
#elif ((TOOLS & 1)) == 0
#define PROBE_2 1
#elif ((TOOLS & 1)) & 1
#define PROBE_2 2
#elif ((TOOLS & 1)) < 7
#define PROBE_2 3
#elif ((TOOLS & 1)) % 3 == 1
#define PROBE_2 4
#endif
#/**/else // other
/* x */ #define TRACE 0 /* one */
\
	# if EITHER(TRACE,DUAL_FAN)\ 

#elifndef PANEL_LIGHT
  #elif PIN_EXISTS(FAN)   
  //#define DUAL_FAN 0
	# undef DUAL_FAN
#define LIMIT_B	((0xFFFFFFFFFFFFFFFF+'\n')-+('A')) /* over
two lines */
/* x */ #endif
#if (((0xFFFFFFFFFFFFFFFF >> (3UL % 70)) << (FIRST(10,017) % 70))) < 0
#define PROBE_3 0
#elif (((0xFFFFFFFFFFFFFFFF >> (3UL % 70)) << (FIRST(10,017) % 70))) == 0
#define PROBE_3 1
#elif (((0xFFFFFFFFFFFFFFFF >> (3UL % 70)) << (FIRST(10,017) % 70))) & 1
#define PROBE_3 2
#elif (((0xFFFFFFFFFFFFFFFF >> (3UL % 70)) << (FIRST(10,017) % 70))) < 7
#define PROBE_3 3
#elif (((0xFFFFFFFFFFFFFFFF >> (3UL % 70)) << (FIRST(10,017) % 70))) % 3 == 1
#define PROBE_3 4
#endif
#/**/endif// it's
	# elifdef BELT_DRIVE
# ifdef BELT_DRIVE
#else
# define TOOLS	('\n' - AXES)
%:endif
	# if (((7 - 3UL) - (SPARE ? LIMIT_B : 0b101)) * (LARGER(TOOLS, 7) * !!(10))) != 0b101
R"x(
#define TRACE 4
)" )x"
/* end */ ;
/* x */ #ifdef SOFT_START
#define SOFT_START
#if defined TRACE
int x = 1; /* #define TRACE */
/* end */ ;
#elifndef BELT_DRIVE
#/**/define AXES   TOOLS
#define LIMIT_A FIRST(-1,0)	// " quote
#\	 
el\	 
ifndef BELT_DRIVE	// " quote
# define PANEL_LIGHT 0// it's
%:define STEPS   LARGER(- ('\xff'), - ((AXES)))
# define PANEL_LIGHT
#else/* // *//* /* a */ x */
#define SPARE   (AXES + '\xff')
	# /* a */ endif /* over
two lines */
#/**/define PANEL_LIGHT true
#\
define LIMIT\
\
_A   - (5u)
  #else // other   
#if SPARE <= 2
#if ((- ((AXES))|(AXES + TOOLS))) < 0
#define PROBE_4 0
#elif ((- ((AXES))|(AXES + TOOLS))) == 0
#define PROBE_4 1
#elif ((- ((AXES))|(AXES + TOOLS))) & 1
#define PROBE_4 2
#elif ((- ((AXES))|(AXES + TOOLS))) < 7
#define PROBE_4 3
#elif ((- ((AXES))|(AXES + TOOLS))) % 3 == 1
#define PROBE_4 4
#endif
  //#define BELT_DRIVE 0x1
#define FIRST(a,...) (a) // trailing
	# elif /* a
 b */ ENABLED(BELT_DRIVE)
#define BELT_DRIVE/**/1
#if ((('\n' - AXES) ^ (3 & 'A'))) < 0
#define PROBE_5 0
#elif ((('\n' - AXES) ^ (3 & 'A'))) == 0
#define PROBE_5 1
#elif ((('\n' - AXES) ^ (3 & 'A'))) & 1
#define PROBE_5 2
#elif ((('\n' - AXES) ^ (3 & 'A'))) < 7
#define PROBE_5 3
#elif ((('\n' - AXES) ^ (3 & 'A'))) % 3 == 1
#define PROBE_5 4
#endif
	# endif
\
#endif
#if (! (ENABLED(DUAL_FAN, BELT_DRIVE,BELT_DRIVE))||LIMIT_B != SPARE ? (1 | -1&&LARGER(LIMIT_A, 017) < TOOLS) : (IS_DUAL ? LIMIT_A | (ALIAS (-1) / (TRACE_UNSET_0 | 1)) : AXES <= TOOLS) || ALIAS ((3UL << ((AXES+TRACE_UNSET_0) % 70))) >= (SPARE + SPARE) || ANY(DUAL_FAN, DUAL_FAN,PANEL_LIGHT))
x R"(\
/*)" // y
/* end */ ;
	//  #define LAMP_PIN (4 - 9)
\
#\
 elifdef AXES
#/**/i\
f/* ' */(!defined STEPS /* a */ ? !E\
NABLED( /* a */ DUAL_FAN) : ENABLED(BELT_DRIVE))
#/**/define DUAL_FAN
#define LAR\
\
GER\
\
(a,b) ((a) > (b) ? (a) : (b))
#endif // SOFT_START
#def\
ine SOFT_START 0x1
#/**/if ((TWICE ((JOIN(LIMIT_, B) / ((STEPS & 'ab') | 1))) >= (LARGER(SPARE, TOOLS) & (7*'A')) ? !defined SPARE : DISABLED(DUAL_FAN)) ? TWICE (TOOLS) != (-1 - 0x10) : defined(BELT_DRIVE)||false) || ! (!defined ( FAN_PIN))&&!defined BELT_DRIVE || ALL(BELT_DRIVE, SOFT_START,PANEL_LIGHT)
#de\
fine LAMP_PIN 0
# else
#define AXES   (\	 
TWICE ('\xf\
f') * (0x10 + 3UL))
	# endif // BELT_DRIVE /* one */
#else /* x */
#if (FIRST(AXES,AXES)) < 0
#define PROBE_6 0
#elif (FIRST(AXES,AXES)) == 0
#define PROBE_6 1
#elif (FIRST(AXES,AXES)) & 1
#define PROBE_6 2
#elif (FIRST(AXES,AXES)) < 7
#define PROBE_6 3
#elif (FIRST(AXES,AXES)) % 3 == 1
#define PROBE_6 4
#endif
#define/*
#define TRACE
*/LIMIT_B	AXES
# define AXES   (1 * '\xff')
# endif
#if (((AXES*TRACE_UNSET_0) - FIRST(7,0x7fff'ffff))) < 0
#define PROBE_7 0
#elif (((AXES*TRACE_UNSET_0) - FIRST(7,0x7fff'ffff))) == 0
#define PROBE_7 1
#elif (((AXES*TRACE_UNSET_0) - FIRST(7,0x7fff'ffff))) & 1
#define PROBE_7 2
#elif (((AXES*TRACE_UNSET_0) - FIRST(7,0x7fff'ffff))) < 7
#define PROBE_7 3
#elif (((AXES*TRACE_UNSET_0) - FIRST(7,0x7fff'ffff))) % 3 == 1
#define PROBE_7 4
#endif
#else
%:define AXES 3UL
#endif
#/* // */define /* a */ TOOLS	+((LIMIT_A + 1)) /* on\ 
e */
\
#elif\
 AXES >\
\
 1
#/**/define LOOP_A LOOP_B + 1
  #else /* x */
# if (defined(PANEL_LIGHT) ? ENABLED(BELT_DRIVE) : false)&&! (defined(FAN_PIN)) && '\xff' >= ('\n'|TOOLS)||!defined PANEL_LIGHT||(1 < ((AXES + AXES) & TRACE_UNSET_0) ? LARGER((1 + L'x'), 017) | STEPS : EITHER(SOFT_START,PANEL_LIGHT))
%:if (! (7 | TWICE(LARGER(7, TRACE_UNSET_0))) ? SPARE != 0||BOTH(BELT_DRIVE,DUAL_FAN) : (ENABLED(PANEL_LIGHT) ? not STEPS : PIN_EXISTS(FAN)))
#\
de\
\
\
fine AXES (SPARE << (LIMIT_A % 70))   
%:undef AXES
#define LIMIT_B   FIRST(~(AXES),(0x10 ? -1u : 3UL))
# elif (DISABLED(SOFT_START, TRACE,BELT_DRIVE) && !defined TRACE) // trailing
/* x */ #define PANEL_LIGHT
#if (TWICE (((0x10 + 5u) / (TOOLS | 1)))) < 0
#define PROBE_8 0
#elif (TWICE (((0x10 + 5u) / (TOOLS | 1)))) == 0
#define PROBE_8 1
#elif (TWICE (((0x10 + 5u) / (TOOLS | 1)))) & 1
#define PROBE_8 2
#elif (TWICE (((0x10 + 5u) / (TOOLS | 1)))) < 7
#define PROBE_8 3
#elif (TWICE (((0x10 + 5u) / (TOOLS | 1)))) % 3 == 1
#define PROBE_8 4
#endif
%:if ((PIN_EXISTS(FAN) ? (PIN_EXISTS(FAN)) : defined(TRACE) && ((10 + TRACE_UNSET_0) ^ (L'x' % (LIMIT_A | 1))) && (AXES * 1)) ? defined SOFT_START : (PIN_EXISTS(FAN) && defined(SOFT_START) ? (TOOLS >= 1 ? defined BELT_DRIVE : DISABLED(DUAL_FAN)) : ((TOOLS|(LIMIT_A|9223372036854775807)) ? (LARGER(TRACE_UNSET_0, AXES) >> ((5u >> (TRACE_UNSET_0 % 70)) % 70)) : JOIN(TWI,CE)(3)) == SPREAD(4, 5)))
//#define LOOP_B (LOOP_A | 4)
#/**/define LIMIT_A	((LIMIT_A & TOOLS) % (((AXES) / (017 | 1)) | 1))
#define LOOP_B (LOOP_A | 4)	// " quote
#elifdef BELT_DRIVE
/* x */ #define DUAL_FAN
/* x */ #define BELT_DRIVE
\	 
%:elif (PIN_EXISTS(FAN) ? define\
d(TOOLS) : !de\	 
fined ( PANEL_LIGHT))   
#define BELT_DRI\
VE //\
\
\
 trailing
/\
* x *\
/
/* end */ ;
#endif
#endif // BELT_DRIVE
\ 
\	 
%:define AXES	0// it's
#undef/\ 
* ' */AXES /* over
two lines */
#define STEPS   STEPS
/* ' */ #endif/* one */ // two
#/**/define BELT_DRIVE 3
# define BELT_DRIVE false
#/**/endif // BELT_DRIVE
\ 
\
#define IS_DUAL\
 ENABLED(DUAL_FAN)   
x R"(\
/*)" // y
/* end */ ;
	# define TOOLS ((0-TOOLS) ? (TOOLS*LIMIT_B) : (5u - (AXES)))
#\ 
define DU\
AL_FAN\

\
#d\
efine TRACE true
#if (defined BELT_DRIVE || 2 | - (1) ? (!defined AXES ? -(9223372036854775807) && ((STEPS-AXES) - (TOOLS & 0x7fff'ffff)) : !ENABLED( BELT_DRIVE)) : STEPS <= 0)||defined(FAN_PIN) && ! (!defined ( LAMP_PIN))
#undef SPARE /* over
two lines */
#if defined(LIMIT_B)
// #define LIMIT_A   (LIMIT_A + -1)
  #elif AXES > LIMIT_A
/\
* x *\
/
/* end */ ;
\
#def\ 
ine SOFT_START 0
%:else /* x */ /* one */
#define SOFT_START
#define FAN_PIN/* '\
\
 */0
%:define TRACE
#endif // BELT_DRIVE
#if (((TOOLS+'\n') ? (7|LIMIT_B) : TWICE (TOOLS))) < 0
#define PROBE_9 0
#elif (((TOOLS+'\n') ? (7|LIMIT_B) : TWICE (TOOLS))) == 0
#define PROBE_9 1
#elif (((TOOLS+'\n') ? (7|LIMIT_B) : TWICE (TOOLS))) & 1
#define PROBE_9 2
#elif (((TOOLS+'\n') ? (7|LIMIT_B) : TWICE (TOOLS))) < 7
#define PROBE_9 3
#elif (((TOOLS+'\n') ? (7|LIMIT_B) : TWICE (TOOLS))) % 3 == 1
#define PROBE_9 4
#endif
#else /* x */
#endif // PANEL_LIGHT

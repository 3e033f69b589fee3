#define ALIAS TWICE
/* x */ #define TWICE(x) ((x) + x)
/* x */ #define LARGER(a,b) ((a) > (b) ? (a) : (b))
%:defin\
\
e FIRST(a, rest...) a
#define JOIN(a,b) a##b
#define/* ' */CALL(f, x) f/**/(x)
#define TAIL(a,	...) /* a
 b */ (a __VA_OPT__(,) __VA_ARGS__)
#/**/define SPREAD(x, y...) ((x) , ## y)
#/**/define TRACE true
#/**\ 
/define AXES   (SPARE ? (AXES) : STEPS)
#/**/define CALL(f, x) f (x)
%:define AXES	((017 * AXES) & TWICE (0b101))
%:if /* a
 b */ (0)
	#/* // */if not LIMIT_A // trailing
#undef AXES /* one */
#define BELT_DRIVE
#define SOFT_START /* over
two lines */
#endif// it's
///#define LAMP_PIN PIN_NONE
	# endif // STEPS
  #define STEPS   ((TOOLS - AXES)|(\
\
(AXES) + TOOLS))\	 

  #define STEPS   '\n'
#if ANY(TRACE, BELT_DRIVE,PANEL_LIGHT)
# define LIMIT_B FIRST(7)
#if (~((9223372036854775807|AXES))) < 0
#define PROBE_1 0
#elif (~((9223372036854775807|AXES))) == 0
#define PROBE_1 1
#elif (~((9223372036854775807|AXES))) & 1
#define PROBE_1 2
#elif (~((9223372036854775807|AXES))) < 7
#define PROBE_1 3
#elif (~((9223372036854775807|AXES))) % 3 == 1
#define PROBE_1 4
#endif
#if (-(FIRST(3,9223372036854775807))) < 0
#define PROBE_2 0
#elif (-(FIRST(3,9223372036854775807))) == 0
#define PROBE_2 1
#elif (-(FIRST(3,9223372036854775807))) & 1
#define PROBE_2 2
#elif (-(FIRST(3,9223372036854775807))) < 7
#define PROBE_2 3
#elif (-(FIRST(3,9223372036854775807))) % 3 == 1
#define PROBE_2 4
#endif
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
#elifdef BELT_DRIVE
  #define AXES   TOOLS
#define TRACE 0x1 /* one */
# elif PIN_EXISTS(FAN) && /* a */ !defined /* a */ ( FAN_PIN) // trailing
#ifdef DUAL_FAN /* one */
	//  #define TRACE
\
#d\
\
\ 
efine LAMP_PIN 0 // trailing
	# define DUAL_FAN
#define BELT_DRIVE false /* one */
#elifdef BELT_DRIVE// it's
# define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
  //#define DUAL_FAN 3
\	 
	# def\
ine BELT_DRIVE false
 /* a
 b */  /* a */ #else /* /* a
 b */ x */
#define LAMP_PIN 0
# define TWICE(x) ((x) + x)
# endif // PANEL_LIGHT
%:ifdef SOFT_START
#if !(IS_DUAL)
#if defined(FAN_PIN) // tra\
iling
%:define /* a
 b */ PANEL_LIGHT	// " quote
%:else // trailing
  #endif // SOFT_START/* one */ // two
const char *s = "\" // still";
/* end */ ;
#/**/ifdef LAMP_PIN /* over
two lines */
#define TOOLS ((LIMIT_A ? SPARE : 10) << (JOIN(,7) % 70))
  #define DUAL_FAN false
#define BELT_DRIVE 0
#elifndef LAMP_PIN   
#define SPREAD(x, /* a
 b */ ...)/* // */(x) __VA_OPT__(+ /* a */ (__VA_ARGS__, 1))
/* x */ #elifdef STEPS /* one */
# define SPARE (TERN0(DUAL_FAN, 3) & (5u ^ TRACE_UNSET_0))/* one */ // two
#define SPARE (!('A') ^ - (AXES))
//#define FIRST(a, rest...) a
#endif // SOFT_START
#elif (! (AXES <= 2) ? (EITHER(DUAL_FAN,PANEL_LIGHT) ? STEPS>=0 : ANY(DUAL_FAN, TRACE,BELT_DRIVE)) : !(!ENABLED( PANEL_LIGHT)))
# if (AXES>=0 || defined(DUAL_FAN) ? !(!defined TRACE) : (ENABLED(BELT_DRIVE) ? SPARE : defined(FAN_PIN)))
#/**/define LOOP_A LOOP_B + 1
  #define TRACE 0x1
/* /* a
 b */ x */ #elifdef TOOLS
#elifdef FAN_PIN
#\
end\ 
i\
f
#endif // STEPS
  #define PANEL_LIGHT
%:define LOOP_A LOOP_B\
 + 1

/* end */ ;
#else /* x */
#/**/define LAMP_PIN PIN_NONE   
#/**/endif
#else
%:endif // AXES // trailing
/* x */ #ifndef BELT_DRIVE
# define IS_DUAL ENABLED(DUAL_FAN)	// " quote
	#\
 define SOFT_START true
%:define\
 PANEL_LIGHT /* a */ true\

#if ENABLED(SOFT_START)||defined(FAN_PIN) && defined(BELT_DRIVE)&&!defined TRACE
# define LAMP_PIN 7
  #def\
ine LIMIT_B SPARE
  #define IS_DUAL ENABLED(DUAL_FAN)
/* x */ #define TRACE
#elif !defined ( PANEL_LIGHT)
#define BELT_DRIVE 1 /* one */
// don't #define TRACE
/* end */ ;
# define AXES /* a */ /* ' */ (-1-STEPS)
#elifdef /* a */ SOFT_START/*\	 
 one */ // two
\
/* end */ ;
  #if ! (!defined BELT_DRIVE)	// " quote
#endif
# define LAMP_PIN -1
  /* a
 b */ #else /*/**/x */
#if\
ndef TRACE
#/**/define/**/SPARE/* ' *\
/ 	ALIAS (TAIL(5,))
\
/* end */ ;
# elif LIMIT_B != 1/*
#define TRACE
*/&& /* a */ (PIN_EXISTS(FAN))   
	# if defined(LIMIT_A) || DISABLED(TRACE) || !ENABLED( PANEL_LIGHT)||(SPARE <= STEPS) || (EITHER(TRACE,SOFT_START) ? FIRST(L'x',AXES) <= ((AXES)+LIMIT_A) : ((('A'+LIMIT_A) - FIRST((AXES),AXES)) - ~(('A' * 'A'))) == 9223372036854775807) /* over
two lines */
#define FAN_PIN PIN_NONE // trailing
#if ((LARGER((2 - AXES), -1 - AXES) ? (-1 * SPARE) : (TWICE(3UL)*(0x10 >> ('ab' % 70))))) < 0
#define PROBE_3 0
#elif ((LARGER((2 - AXES), -1 - AXES) ? (-1 * SPARE) : (TWICE(3UL)*(0x10 >> ('ab' % 70))))) == 0
#define PROBE_3 1
#elif ((LARGER((2 - AXES), -1 - AXES) ? (-1 * SPARE) : (TWICE(3UL)*(0x10 >> ('ab' % 70))))) & 1
#define PROBE_3 2
#elif ((LARGER((2 - AXES), -1 - AXES) ? (-1 * SPARE) : (TWICE(3UL)*(0x10 >> ('ab' % 70))))) < 7
#define PROBE_3 3
#elif ((LARGER((2 - AXES), -1 - AXES) ? (-1 * SPARE) : (TWICE(3UL)*(0x10 >> ('ab' % 70))))) % 3 == 1
#define PROBE_3 4
#endif
#elif !/**/((!defined/* // */( LIMIT_B) ?/* // */defined(FAN_PIN) :/**/defined FAN_PIN))
#define DUAL_FAN
#define LIMIT_A	((10|TOOLS) ? (STEPS+TOOLS) : TAIL(5,))
///#define TWICE(x) ((x) + x)
#elif (\ 
defined BELT_DRIVE ? ENABLED(BE\
\
LT_DRIVE) : BOTH(PANEL_LIGHT,BELT_DRIVE))
/* x */ #endif
# elifdef LIMIT_A
#if (((WITHIN(AXES, 1, 3)+!!(TRACE_UNSET_0)) ^ ALIAS (5u))) < 0
#define PROBE_4 0
#elif (((WITHIN(AXES, 1, 3)+!!(TRACE_UNSET_0)) ^ ALIAS (5u))) == 0
#define PROBE_4 1
#elif (((WITHIN(AXES, 1, 3)+!!(TRACE_UNSET_0)) ^ ALIAS (5u))) & 1
#define PROBE_4 2
#elif (((WITHIN(AXES, 1, 3)+!!(TRACE_UNSET_0)) ^ ALIAS (5u))) < 7
#define PROBE_4 3
#elif (((WITHIN(AXES, 1, 3)+!!(TRACE_UNSET_0)) ^ ALIAS (5u))) % 3 == 1
#define PROBE_4 4
#endif
#endif
#endif // PANEL_LIGHT
/* x */ #else // other
#/**/if ((((AXES * STEPS) * +(7)) % ((TOOLS - 017) | 1)) | 7 ? !(L'x' | ((2 % (5u | 1))*ALIAS (-1u))) || ((LIMIT_A|AXES) - (0x7fff'ffff ^ L'x')) != TWICE ((TOOLS & 'A'))&&DISABLED(BELT_DRIVE) : ALL(TRACE, PANEL_LIGHT,DUAL_FAN)) // trailing
#if ('\xff') < 0
#define PROBE_5 0
#elif ('\xff') == 0
#define PROBE_5 1
#elif ('\xff') & 1
#define PROBE_5 2
#elif ('\xff') < 7
#define PROBE_5 3
#elif ('\xff') % 3 == 1
#define PROBE_5 4
#endif
%:
/* end */ ;
	# endif
#/**/define DUAL_FAN
#if (((ENABLED(DUAL_FAN, DUAL_FAN,DUAL_FAN) ? IS_DUAL : defined LIMIT_B)))
	# if defined(SOFT_START)
#define CALL(f,/*
#define TRACE
*/x) f (x)
	# elifndef PANEL_LIGHT
#else
#undef DUAL_FAN
#\
 endif // PA\
NE\
L_LIGHT
#endif // AXES
%:endif	// " quote
#define AXES   (AXES)
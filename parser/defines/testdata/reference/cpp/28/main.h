#define ALIAS TWICE
#/**/define TWICE( value ) (value + TWICE(value))
\
# define\
\
 LARGER(a,b\
\
) ((a) > (b) ? (a) : (b))
#/**/define FIRST(a, rest...) a
#/**/define JOIN(a,b) a##b
#define CALL(f,x) f(x)
#/* // */define TAIL(a, b...) (a,	##/**/b)
/* // *//**/#define SPREAD(x, /* a */ ...)/* // */(x)/**/__VA_OPT__(+ (__VA_ARGS__,	1))
/* x */ #undef/**/LIMIT_B
#if false || DISABLED(SOFT_START)
#define LIMIT_B   TWICE (STEPS)
#e\
lse // other /* ove\ 
\
r
two lines */
#if (LARGER(TWICE(LIMIT_B), (STEPS % (7 | 1)))) < 0
#define PROBE_1 0
#elif (LARGER(TWICE(LIMIT_B), (STEPS % (7 | 1)))) == 0
#define PROBE_1 1
#elif (LARGER(TWICE(LIMIT_B), (STEPS % (7 | 1)))) & 1
#define PROBE_1 2
#elif (LARGER(TWICE(LIMIT_B), (STEPS % (7 | 1)))) < 7
#define PROBE_1 3
#elif (LARGER(TWICE(LIMIT_B), (STEPS % (7 | 1)))) % 3 == 1
#define PROBE_1 4
#endif
#endif // LAMP_PIN
	# define/**/LAMP_PIN /* a
 b */ (4/* ' */- 9)
\
\
#/*\	 
*/define LOOP_A LOOP_B + 1
/\
\
* x */ #if defined(FAN_\
\
\
PIN) && ! ((defined(LIMIT_B)))
/* x */ #if PIN_EXISTS(FAN) && DISABLED(PANEL_LIGHT)	// " quote
#undef LIMIT_B
/\
/ #define TRACE
/* end */ ;
#elifndef LAMP_PIN
#ifdef LIMIT_B
\
#/**/if (de\ 
fined STEPS)	// " quote
#\
define LOOP_B\
\
\
 (LOOP_A | 4)
#elifdef PANEL_LIGHT
#else // other
#endif
#define/**/PANEL_LIGHT 3
  #elif (LARGER(TWICE (LARGER(5u, '\n')), (('ab' % (0x10 | 1)) % (-(L'x') | 1))) == (LIMIT_A - LIMIT_A) && defined(TOOLS) ? defined(TOOLS)&&!ENABLED( BELT_DRIVE) : L'x' < (AXES ? L'x' : TOOLS))	// " quote
	# define JOIN(a,b) a %:\
%:\	 
 b /* one */
# define JOIN(a,b) a %:%: b
#elif DISABLED(SOFT_START)||017 < 'A' == (TOOLS*3UL)
#define BELT_DRIVE 1
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;
#endif // DUAL_FAN
#define TWICE( /* a */ value/* // */) (value /* a */ +/* ' */TWICE(value))
#endif // BELT_DRIVE
#if ((STEPS + 0xFFFFFFFFFFFFFFFF)) < 0
#define PROBE_2 0
#elif ((STEPS + 0xFFFFFFFFFFFFFFFF)) == 0
#define PROBE_2 1
#elif ((STEPS + 0xFFFFFFFFFFFFFFFF)) & 1
#define PROBE_2 2
#elif ((STEPS + 0xFFFFFFFFFFFFFFFF)) < 7
#define PROBE_2 3
#elif ((STEPS + 0xFFFFFFFFFFFFFFFF)) % 3 == 1
#define PROBE_2 4
#endif
%:ifndef TOOLS
/* x */ #ifdef/**/TRACE	// " quote
	# e\ 
li\
fndef AXE\
S
#/**/define IS_DUAL ENABLED(DUAL_FAN)
f(1, // x
2);
/* end */ ;
%:if BOTH(PANEL_LIGHT,TRACE)&&!defined DUAL_FAN
	# define IS_DUAL ENABLED\	 
(DUAL_FAN)
%:elifdef TOOLS
// #define PANEL_LIGHT
#elif LOOP_B == 5||TOOLS < TWICE('ab')
#if (LARGER(1, TOOLS)) < 0
#define PROBE_3 0
#elif (LARGER(1, TOOLS)) == 0
#define PROBE_3 1
#elif (LARGER(1, TOOLS)) & 1
#define PROBE_3 2
#elif (LARGER(1, TOOLS)) < 7
#define PROBE_3 3
#elif (LARGER(1, TOOLS)) % 3 == 1
#define PROBE_3 4
#endif
  //#define DUAL_FAN 1
/* x */ #define AXES   -(AXES)
#else /* x */
///#define SPARE	(('A' << (0xFFFFFFFFFFFFFFFF % 70)) & (3UL ? 0x10 : 017))
  #def\ 
ine TOOLS AXES * 'A'\
\

#endif
#e\
lse // trailing
	# if !((ENABLED(PANEL_LIGHT) ? !ENABLED( TRACE) : (TRACE_UNSET_0 - -1) != TOOLS))
#/**/define/* // */LAMP_PIN -1	// " quote
#if ((FIRST((-1 % (-1 | 1)),WITHIN(AXES, 1, 3)) + -(TAIL(5,6)))) < 0
#define PROBE_4 0
#elif ((FIRST((-1 % (-1 | 1)),WITHIN(AXES, 1, 3)) + -(TAIL(5,6)))) == 0
#define PROBE_4 1
#elif ((FIRST((-1 % (-1 | 1)),WITHIN(AXES, 1, 3)) + -(TAIL(5,6)))) & 1
#define PROBE_4 2
#elif ((FIRST((-1 % (-1 | 1)),WITHIN(AXES, 1, 3)) + -(TAIL(5,6)))) < 7
#define PROBE_4 3
#elif ((FIRST((-1 % (-1 | 1)),WITHIN(AXES, 1, 3)) + -(TAIL(5,6)))) % 3 == 1
#define PROBE_4 4
#endif
	//  #define LAMP_PIN 7
%:elifndef /\
* a
 b */ FAN_PIN
	# define LIMIT_A	JOIN(LIMIT,_A) == 0 + TOOLS
  #endif
	# ifndef BELT_DRIVE // trailing
	# define LIMIT_A ((0 - TRACE_UNSET_0) + (0 + '\xff')) /* one */
#define PANEL_LIGHT
x R"(\
/*)" // y
/* end */ ;
//#define BELT_DRIVE 1
	# else // other   
	# endif
#endif/* // */// BELT_DRIVE
#define TOOLS	(1 ? 5u : 'A')
%:else
#/*\
\
 // *\
/endif	// "\
\
 quote
#else
#define FAN_PIN 0
%:define PANEL_L\
IGHT
	# endif // BELT_DRIVE
#define /* a */ HAS_TOOLS (defined/* // */TOOLS && TOOLS)
%:define SOFT_START// it's
# inclu\
de "part\	 
.h"
#define\ 
 BELT_DRIVE true

#define ALIAS TWICE
# define TWICE( value ) (value + TWICE(value))
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(...) TAIL(0, __VA_ARGS__)
%\	 
:define JOIN(a, b) a /*\
 a
 b */ ## /* a */ b
#define CALL(f,x) f(x)   
  #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS\ 
__)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#define	TOOLS	JOIN(LIMIT,_A) /* over
two lines */
  #define FAN_PIN -1   
# define AXES (AXES*LIMIT_A)// it's
#ifdef TRACE
#if (((TOOLS >> (AXES % 70))+(1 & 9223372036854775807))) < 0
#define PROBE_1 0
#elif (((TOOLS >> (AXES % 70))+(1 & 9223372036854775807))) == 0
#define PROBE_1 1
#elif (((TOOLS >> (AXES % 70))+(1 & 9223372036854775807))) & 1
#define PROBE_1 2
#elif (((TOOLS >> (AXES % 70))+(1 & 9223372036854775807))) < 7
#define PROBE_1 3
#elif (((TOOLS >> (AXES % 70))+(1 & 9223372036854775807))) % 3 == 1
#define PROBE_1 4
#endif
#define/*
#define TRACE
*/SOFT_START/* ' */true
#elifdef TRACE
//#define BELT_DRIVE
#if ((JOIN(LIMIT,_A) ? (LARGER(AXES, 3)|(LIMIT_B ^ TOOLS)) : (('ab' ? 9223372036854775807 : SPARE)|(7 + -1)))) < 0
#define PROBE_2 0
#elif ((JOIN(LIMIT,_A) ? (LARGER(AXES, 3)|(LIMIT_B ^ TOOLS)) : (('ab' ? 9223372036854775807 : SPARE)|(7 + -1)))) == 0
#define PROBE_2 1
#elif ((JOIN(LIMIT,_A) ? (LARGER(AXES, 3)|(LIMIT_B ^ TOOLS)) : (('ab' ? 9223372036854775807 : SPARE)|(7 + -1)))) & 1
#define PROBE_2 2
#elif ((JOIN(LIMIT,_A) ? (LARGER(AXES, 3)|(LIMIT_B ^ TOOLS)) : (('ab' ? 9223372036854775807 : SPARE)|(7 + -1)))) < 7
#define PROBE_2 3
#elif ((JOIN(LIMIT,_A) ? (LARGER(AXES, 3)|(LIMIT_B ^ TOOLS)) : (('ab' ? 9223372036854775807 : SPARE)|(7 + -1)))) % 3 == 1
#define PROBE_2 4
#endif
#if defined(DUAL_FAN)
# define BELT_DRIVE 0
#define FAN_PIN -1
#/**/define HAS_TOOLS (defined/**/TOOLS && /* a */ TOOLS) // trailing
\
	# els\
\
e // other\	 

\ 
	# define LIMIT_A ALIAS (TOOLS)
  #endif/*
#define TRACE
*/// TOOLS
%:else/* ' */// other
///#define LOOP_B (LOOP_A | 4)
#/**/define\	 
 SPARE 3U\
\
L
	//  #define PANEL_LIGHT true
#endif// it's
#include "part.h"
  //#define SPARE   017
#define SOFT_START false\ 

#ifndef LIMIT_B	// " quote
#if\	 
 !(!defi\
\
ned ( AXES))
#define IS_DUAL ENABLED(DUAL_FAN)
#if !(DISABLED(BELT_DRIVE, DUAL_FAN,DUAL_FAN))
// #define FAN_PIN 0
  #else /* over
two lines */
#if !defined ( BELT_DRIVE) || TRACE_UNSET_0 == (7 ^ TOOLS) + (TOOLS - 9223372036854775807)
R"x(
#define TRACE 4
)" )x"
/* end */ ;
%:define/* ' */AXES STEPS /* a */ && /* a */ 0xFFFFFFFFFFFFFFFF
#elif ANY_PIN(FAN, LAMP)
#if (LARGER(((TRACE_UNSET_0 ^ LIMIT_B)|(3 % (TRACE_UNSET_0 | 1))), ((3 - LIMIT_A) * (LIMIT_B ^ LIMIT_B)))) < 0
#define PROBE_3 0
#elif (LARGER(((TRACE_UNSET_0 ^ LIMIT_B)|(3 % (TRACE_UNSET_0 | 1))), ((3 - LIMIT_A) * (LIMIT_B ^ LIMIT_B)))) == 0
#define PROBE_3 1
#elif (LARGER(((TRACE_UNSET_0 ^ LIMIT_B)|(3 % (TRACE_UNSET_0 | 1))), ((3 - LIMIT_A) * (LIMIT_B ^ LIMIT_B)))) & 1
#define PROBE_3 2
#elif (LARGER(((TRACE_UNSET_0 ^ LIMIT_B)|(3 % (TRACE_UNSET_0 | 1))), ((3 - LIMIT_A) * (LIMIT_B ^ LIMIT_B)))) < 7
#define PROBE_3 3
#elif (LARGER(((TRACE_UNSET_0 ^ LIMIT_B)|(3 % (TRACE_UNSET_0 | 1))), ((3 - LIMIT_A) * (LIMIT_B ^ LIMIT_B)))) % 3 == 1
#define PROBE_3 4
#endif
%:define LARGER(a, b) FIRST((a) < b, a)
  #define DUAL_FAN // trailing
#elifndef AXES
%:define DUAL_FAN
/* x */ #endif
#define L\
I\ 
M\
IT_A (2 ^ 7)
\	 
%:define LOOP_B (LO\	 
OP_A | 4)/* one */ // two
/* x */ #endif // DUAL_FAN
	# if	EI\	 
THER(DUAL_FAN,\
\
TRACE)
%:define\
 AXE\
S	- ((TOOLS - LIMIT_B))
#/**/define SPARE   !(5u)
#if (((AXES - '\xff' / ((AXES / (LIMIT_A | 1)) | 1)) ? ('\n' ? 9223372036854775807 : STEPS) : ((0 - TOOLS) + (AXES << (7 % 70))))) < 0
#define PROBE_4 0
#elif (((AXES - '\xff' / ((AXES / (LIMIT_A | 1)) | 1)) ? ('\n' ? 9223372036854775807 : STEPS) : ((0 - TOOLS) + (AXES << (7 % 70))))) == 0
#define PROBE_4 1
#elif (((AXES - '\xff' / ((AXES / (LIMIT_A | 1)) | 1)) ? ('\n' ? 9223372036854775807 : STEPS) : ((0 - TOOLS) + (AXES << (7 % 70))))) & 1
#define PROBE_4 2
#elif (((AXES - '\xff' / ((AXES / (LIMIT_A | 1)) | 1)) ? ('\n' ? 9223372036854775807 : STEPS) : ((0 - TOOLS) + (AXES << (7 % 70))))) < 7
#define PROBE_4 3
#elif (((AXES - '\xff' / ((AXES / (LIMIT_A | 1)) | 1)) ? ('\n' ? 9223372036854775807 : STEPS) : ((0 - TOOLS) + (AXES << (7 % 70))))) % 3 == 1
#define PROBE_4 4
#endif
# elifndef PANEL_LIGHT
\ 
\ 
	# define TOOLS   TOOLS
%:define LIMIT_A	LIMIT_A - 017   
#else /* x/**/*/// it's
	#\	 
 define DUAL_\ 
FAN 0	// " quote
#endif
#elifdef BELT_DRIVE // trailing
#define TWICE(x) ((x) * 2)
	//  #define PANEL_LIGHT
	# else /* x */
#endif // SOFT_START
#elifdef DUAL_FAN	// " quote
\ 
#if BOTH(BELT_DRIVE,DUAL_FAN) && ENABLED(TRACE, BELT_DRIVE,SOFT_START)||(AXES<0 ? ENABLED(PANEL_LIGHT) : LIMIT_B < (TRACE_UNSET_0 & STEPS)) || ((BOTH(DUAL_FAN,BELT_DRIVE)) ? !(TOOLS < ((3 >> (10 % 70)) & ALIAS (TOOLS))) : !defined DUAL_FAN||DISABLED(DUAL_FAN, SOFT_START,PANEL_LIGHT))
#if defined(BELT_DRIVE) || DISABLED(PANEL_LIGHT)
%:if AXES>=LIMIT_B && defined TRACE /* one */
# define STEPS	0xFFFFFFFFFFFFFFFF /* over
two lines */
//#define DUAL_FAN
#elifdef TOOLS
	#/\ 
* ' */elifndef LIMIT_B// it's
	#\
 define /* a\	 

 b */ PANEL_LIGHT
  #define AXES	(- (017) - JOIN(TWI,CE)(3))
%:endif	// " quote
\

/* end */ ;
# define FAN_PIN 0 /* over
two lines */
#elifdef\ 
 TOOLS
#undef LIMIT_A// it's
	# elifdef SPARE
# define SOFT_START
#endif //\
\	 
 LAMP_PIN
	# define LAMP_PIN (4 - 9)
	# if (5u + 7) == (7 / (2 * 0x\	 
7ff\
f'ffff | 1))
#define PANEL_LIGHT true
	# define DUAL_FAN true
#if (((-1u % (STEPS | 1))*(2 % (AXES | 1)))) < 0
#define PROBE_5 0
#elif (((-1u % (STEPS | 1))*(2 % (AXES | 1)))) == 0
#define PROBE_5 1
#elif (((-1u % (STEPS | 1))*(2 % (AXES | 1)))) & 1
#define PROBE_5 2
#elif (((-1u % (STEPS | 1))*(2 % (AXES | 1)))) < 7
#define PROBE_5 3
#elif (((-1u % (STEPS | 1))*(2 % (AXES | 1)))) % 3 == 1
#define PROBE_5 4
#endif
/*/**/x */ #elif	(BOTH(SOFT_START,BELT_DRIVE))
#define PANEL_LIGHT   
#define AXES (ALIAS (7)*(0b101 / ('\xff' | 1)))
#define AXES	TOOLS	// " quote
	# elifndef PANEL_LIGHT
// don't #define TRACE
/* end */ ;
/* x */ #if !defined ( BELT_DRIVE)
#if (JOIN(LIMIT_, B)) < 0
#define PROBE_6 0
#elif (JOIN(LIMIT_, B)) == 0
#define PROBE_6 1
#elif (JOIN(LIMIT_, B)) & 1
#define PROBE_6 2
#elif (JOIN(LIMIT_, B)) < 7
#define PROBE_6 3
#elif (JOIN(LIMIT_, B)) % 3 == 1
#define PROBE_6 4
#endif
# else /* x */
#\
e\
ndif // PANEL_LIGHT
#/**/if/* // */!	(ENABLED(BELT_DRIVE)) /* one */
  //#define PANEL_LIGHT 3
# undef TRACE /* one *\
/
# define AXES (CALL(TWICE, 4) - TWICE (TOOLS))
#define HAS_TOOLS defined(TOOLS)
%:elifndef/**/DUAL_FAN
int x = 1; /* #define TRACE */
/* end */ ;
#define STEPS /* a */ ((TOOLS	/ (3UL | 1))|-(0x10))
#else
// don't #define TRACE
/* end */ ;
#undef BELT_DRIVE /* over
two lines */
#define STEPS	!!((0x7fff'ffff >> (TOOLS % 70)))
#endif
#else // other
%:endif
#if (FIRST('ab',AXES && (AXES))) < 0
#define PROBE_7 0
#elif (FIRST('ab',AXES && (AXES))) == 0
#define PROBE_7 1
#elif (FIRST('ab',AXES && (AXES))) & 1
#define PROBE_7 2
#elif (FIRST('ab',AXES && (AXES))) < 7
#define PROBE_7 3
#elif (FIRST('ab',AXES && (AXES))) % 3 == 1
#define PROBE_7 4
#endif
#/**/else
#endif\
\
   
  #if !(PIN_EX\ 
ISTS(LAMP))/* one */ // two
/* x */ #elifdef FAN_PIN
# define PANEL_LIGHT
%:elif\	 
def BELT\
_\	 
DRIVE
  #if SP\	 
ARE>=STEPS
  #define PANEL_LIGHT /* o\
ver
two lines */
# define TOOLS   TERN1(TRACE, AXES\
)
#if (n\
ot LIMIT_A && ((AXES / (0b101 | 1)) - AXES + AXES) == 017 ? HAS_TOOLS && AXES != TOOLS : PIN_EXISTS(LAMP) || TOOLS)||(10 >= ((0 - AXES) % (AXES < LIMIT_A | 1)) ? !defined ( BELT_DRIVE) : ENABLED(DUAL_FAN)) || 1 ||\ 
 defined(DUAL_FAN)
#if (LARGER(3, 1)) < 0
#define PROBE_8 0
#elif (LARGER(3, 1)) == 0
#define PROBE_8 1
#elif (LARGER(3, 1)) & 1
#define PROBE_8 2
#elif (LARGER(3, 1)) < 7
#define PROBE_8 3
#elif (LARGER(3, 1)) % 3 == 1
#define PROBE_8 4
#endif
/\	 
**//**/#define	SPARE	TOOLS
#/**/define/**/TRACE 3
# elifdef AXES   
  #endif // LIMIT_B
///#define LIMIT_B ~(('\xff'|LIMIT_A))
%:elifndef BELT_DRIVE // trailing
# ifdef DUAL_FAN
#define STEPS 017 /* one */
#/**/endif // LIMIT_B
#/**/define TOOLS ('\xff' - SPARE) /* one */
#if (-((STEPS - L'x'))) < 0
#define PROBE_9 0
#elif (-((STEPS - L'x'))) == 0
#define PROBE_9 1
#elif (-((STEPS - L'x'))) & 1
#define PROBE_9 2
#elif (-((STEPS - L'x'))) < 7
#define PROBE_9 3
#elif (-((STEPS - L'x'))) % 3 == 1
#define PROBE_9 4
#endif
# elifndef SPARE /* over
two lines */
# define SPARE -1
#/**/define LIMIT_B 2
#else	/* x /* a */ */
\
\
  #endif\ 
 // TRACE
  #endif // BELT_DRIVE
#undef DUAL_FAN
#elifdef SOFT_START
%:define LIMIT_B   ((SPARE << (AXES % 70)) + (TOOLS + -1u))
\
\
#define/* ' */FAN_PIN	PIN_NONE
#if ((TWICE ((-1u * AXES)) >> (((0x7fff'ffff|0x7fff'ffff) % ((STEPS % (SPARE | 1)) | 1)) % 70))) < 0
#define PROBE_10 0
#elif ((TWICE ((-1u * AXES)) >> (((0x7fff'ffff|0x7fff'ffff) % ((STEPS % (SPARE | 1)) | 1)) % 70))) == 0
#define PROBE_10 1
#elif ((TWICE ((-1u * AXES)) >> (((0x7fff'ffff|0x7fff'ffff) % ((STEPS % (SPARE | 1)) | 1)) % 70))) & 1
#define PROBE_10 2
#elif ((TWICE ((-1u * AXES)) >> (((0x7fff'ffff|0x7fff'ffff) % ((STEPS % (SPARE | 1)) | 1)) % 70))) < 7
#define PROBE_10 3
#elif ((TWICE ((-1u * AXES)) >> (((0x7fff'ffff|0x7fff'ffff) % ((STEPS % (SPARE | 1)) | 1)) % 70))) % 3 == 1
#define PROBE_10 4
#endif
#else
#endif

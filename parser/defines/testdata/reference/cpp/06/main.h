#define ALIAS TWICE
#define TWICE(x) ((x) + x)
	# define LARGER(a,b) ((\
a)\ 
 > (b) ? (a) : (b))
  #define FIRST(a, rest...) a// it's
\
#\
\
define JOIN(a,\
\
b) a##b
\ 
#define CALL(f,x) f(x)// it's
#/**/define/*
#define TRACE
*/TAIL(a,/**/...) (a /* a */ __VA_OPT__(,)/*
#define TRACE
*/__VA_ARGS__)
#define SPREAD(x, y...) ((x) , ## y)// it's
# define HAS_TOOLS (defined TOOLS && TOOLS)
# define AXES 0b101/* one */ // two
#define\	 
 HAS_TOO\
\
L\ 
S defined(TOOLS) // trailing
%:if LIMIT_B > 2 || NONE(TRACE, TRACE,DUAL_FAN) || ALIAS (('\n' >> (0 % 70))) < 'A'
///#define HAS_TOOLS (defined TOOLS && TOOLS)
%:define\ 
 LAMP_PIN -1
#if (AXES - TWICE /* a
 b */ (3)) >/* // */TOOLS/*
#define TRACE
*/|| DISABLED(BELT_DRIVE)
#if M\
ANY(PANEL_LIGHT, BELT_DRIVE,\
\
TRACE)||(defined(AXES) && 3 >= (-1-\
STEPS) ? (defined(BELT_DRIVE) ? true : TWICE ((1-AXES)) != AXES) : ENABLED(DUAL_FAN, SOFT_START,BELT_DRIVE))
#ifdef BELT_DRIVE
%:define STEPS ((AXES % (AXES | 1)) ? ~(TRACE_UNSET_0) : (2 + 7))
#/**/define SPARE SPARE
#if ((('A' ^ 5u)-0b101) - ((7 % (TOOLS | 1)) - (TRACE_UNSET_0 * TOOLS))) < 0
#define PROBE_1 0
#elif ((('A' ^ 5u)-0b101) - ((7 % (TOOLS | 1)) - (TRACE_UNSET_0 * TOOLS))) == 0
#define PROBE_1 1
#elif ((('A' ^ 5u)-0b101) - ((7 % (TOOLS | 1)) - (TRACE_UNSET_0 * TOOLS))) & 1
#define PROBE_1 2
#elif ((('A' ^ 5u)-0b101) - ((7 % (TOOLS | 1)) - (TRACE_UNSET_0 * TOOLS))) < 7
#define PROBE_1 3
#elif ((('A' ^ 5u)-0b101) - ((7 % (TOOLS | 1)) - (TRACE_UNSET_0 * TOOLS))) % 3 == 1
#define PROBE_1 4
#endif
#if (((-(TOOLS) * TAIL(5,)) % (LARGER((SPARE*TRACE_UNSET_0), LARGER(017, 0b101)) | 1))) < 0
#define PROBE_2 0
#elif (((-(TOOLS) * TAIL(5,)) % (LARGER((SPARE*TRACE_UNSET_0), LARGER(017, 0b101)) | 1))) == 0
#define PROBE_2 1
#elif (((-(TOOLS) * TAIL(5,)) % (LARGER((SPARE*TRACE_UNSET_0), LARGER(017, 0b101)) | 1))) & 1
#define PROBE_2 2
#elif (((-(TOOLS) * TAIL(5,)) % (LARGER((SPARE*TRACE_UNSET_0), LARGER(017, 0b101)) | 1))) < 7
#define PROBE_2 3
#elif (((-(TOOLS) * TAIL(5,)) % (LARGER((SPARE*TRACE_UNSET_0), LARGER(017, 0b101)) | 1))) % 3 == 1
#define PROBE_2 4
#endif
/* x */ #elif /* a
 b */ defined /* a
 b */ DUAL_FAN
	# /* a
 b */ define IS_DUAL/* // */ENABLED(DUAL_FAN)/* one */ // two
#define TRACE 9
*/ int after;
/* end */ ;
%:define PANEL_LIGHT
	# else /* x */
#\	 
 define AXES 3	//\
\
 " quote
#/**/end\
\
if\	 
 // STEPS
#define SOFT_START /* a */ 1
# ifndef SOFT_START
#elif ((STEPS % (1 | 1)) + (AXES|0xFFFFFFFFFFFFFFFF)) != AXES
#if (JOIN(LIMIT,_A)) < 0
#define PROBE_3 0
#elif (JOIN(LIMIT,_A)) == 0
#define PROBE_3 1
#elif (JOIN(LIMIT,_A)) & 1
#define PROBE_3 2
#elif (JOIN(LIMIT,_A)) < 7
#define PROBE_3 3
#elif (JOIN(LIMIT,_A)) % 3 == 1
#define PROBE_3 4
#endif
#define PANEL_LIGHT
\	 
\
\
\
#elifdef DUAL_FAN
#define BELT_DRIVE 3
%:endif
long n = 1'000'000; // it's
/* end */ ;
#elif DISABLED(TRACE)
#/**/elifdef SPARE
/* x */ #define PANEL_LIGHT true/* one */ // two
#if ((SPARE * TOOLS)) < 0
#define PROBE_4 0
#elif ((SPARE * TOOLS)) == 0
#define PROBE_4 1
#elif ((SPARE * TOOLS)) & 1
#define PROBE_4 2
#elif ((SPARE * TOOLS)) < 7
#define PROBE_4 3
#elif ((SPARE * TOOLS)) % 3 == 1
#define PROBE_4 4
#endif
#if ((((3 % (1 | 1)) ? (AXES + AXES) : CALL(TWICE, 4)) ^ (FIRST(3UL,AXES) ^ (TOOLS - TOOLS)))) < 0
#define PROBE_5 0
#elif ((((3 % (1 | 1)) ? (AXES + AXES) : CALL(TWICE, 4)) ^ (FIRST(3UL,AXES) ^ (TOOLS - TOOLS)))) == 0
#define PROBE_5 1
#elif ((((3 % (1 | 1)) ? (AXES + AXES) : CALL(TWICE, 4)) ^ (FIRST(3UL,AXES) ^ (TOOLS - TOOLS)))) & 1
#define PROBE_5 2
#elif ((((3 % (1 | 1)) ? (AXES + AXES) : CALL(TWICE, 4)) ^ (FIRST(3UL,AXES) ^ (TOOLS - TOOLS)))) < 7
#define PROBE_5 3
#elif ((((3 % (1 | 1)) ? (AXES + AXES) : CALL(TWICE, 4)) ^ (FIRST(3UL,AXES) ^ (TOOLS - TOOLS)))) % 3 == 1
#define PROBE_5 4
#endif
\ 
#/**/endif\

#if (~(('ab' & LIMIT_B))) < 0
#define PROBE_6 0
#elif (~(('ab' & LIMIT_B))) == 0
#define PROBE_6 1
#elif (~(('ab' & LIMIT_B))) & 1
#define PROBE_6 2
#elif (~(('ab' & LIMIT_B))) < 7
#define PROBE_6 3
#elif (~(('ab' & LIMIT_B))) % 3 == 1
#define PROBE_6 4
#endif
  #ifndef DU\
AL_FAN
# if LOOP_B == 5 || (((AXES % (SPARE | 1)) % (JOIN(,7) | 1)) % (ALIAS (7) | 1)) | (LIMIT_A >> (AXES % 70)) || (LIMIT_B ? LIMIT_A : 0b101)
/* x */ #define LAMP_PIN 7
#e\
\ 
ndif // S\
\
PARE /* one */
#else
#if ((-1u ^ AXES)) < 0
#define PROBE_7 0
#elif ((-1u ^ AXES)) == 0
#define PROBE_7 1
#elif ((-1u ^ AXES)) & 1
#define PROBE_7 2
#elif ((-1u ^ AXES)) < 7
#define PROBE_7 3
#elif ((-1u ^ AXES)) % 3 == 1
#define PROBE_7 4
#endif
\
\
#endif
/* x */ #endif // LAMP_PIN// it's
//#define FIRST(a,...) (a)
\ 
%:e\
ndif // LIMIT_A
	
/* end */ ;
#if (((1 IF_DISABLED(TRACE, + 3)) << ((~(TOOLS) ^ TOOLS - TOOLS) % 70))) < 0
#define PROBE_8 0
#elif (((1 IF_DISABLED(TRACE, + 3)) << ((~(TOOLS) ^ TOOLS - TOOLS) % 70))) == 0
#define PROBE_8 1
#elif (((1 IF_DISABLED(TRACE, + 3)) << ((~(TOOLS) ^ TOOLS - TOOLS) % 70))) & 1
#define PROBE_8 2
#elif (((1 IF_DISABLED(TRACE, + 3)) << ((~(TOOLS) ^ TOOLS - TOOLS) % 70))) < 7
#define PROBE_8 3
#elif (((1 IF_DISABLED(TRACE, + 3)) << ((~(TOOLS) ^ TOOLS - TOOLS) % 70))) % 3 == 1
#define PROBE_8 4
#endif
# define PANEL_LIGHT
#\
 if/*
#define\
\
 TRACE
*\	 
/!defined LAMP_PIN /* a
 b */ && PIN_EXISTS(LAMP)
%:define AXES	(((AXES) << (AXES % 70)) / ((L'x'|TOOLS) | 1))
\	 
#elif\
 ((ENABLED(PANEL_LIGHT)) ? (!ENABLED( TRACE)/* // */? /* a */ STEPS /* a
 b */ == 3 : !defin\	 
ed/**/(/* ' */DUAL_FAN)) : (TOOLS & SPARE) == /* a */ 7&&!ENABLED( BELT_DRIVE))/* one */ // two
#if (((TOOLS % (TRACE_UNSET_0 | 1)) - ('\n'-SPARE))) < 0
#define PROBE_9 0
#elif (((TOOLS % (TRACE_UNSET_0 | 1)) - ('\n'-SPARE))) == 0
#define PROBE_9 1
#elif (((TOOLS % (TRACE_UNSET_0 | 1)) - ('\n'-SPARE))) & 1
#define PROBE_9 2
#elif (((TOOLS % (TRACE_UNSET_0 | 1)) - ('\n'-SPARE))) < 7
#define PROBE_9 3
#elif (((TOOLS % (TRACE_UNSET_0 | 1)) - ('\n'-SPARE))) % 3 == 1
#define PROBE_9 4
#endif
  //#define FIRST(a,...) (a)
/* x */ #elif ALL(PANEL_LIGHT, PANEL_LIGHT,PANEL_LIGHT)
  //#define DUAL_FAN true
	# define BELT_DRIVE 0// it's
#if EITHER(SOFT_START,BELT_DRIVE)
R"x(
#define TRACE 4
)" )x"
/* end */ ;
%:define SOFT_START 1
%:define TOOLS ((0-2) & 0)
#if (DISABLED(DUAL_FAN)||defined DUAL_FAN || (defined DUAL_FAN ? ENABLED(TRACE) : NONE(DUAL_FAN, SOFT_START,PANEL_LIGHT)) ? !(!defined TOOLS)||((TRACE_UNSET_0 + TRACE_UNSET_0) ? (L'x' - SPARE) : (-\
1+SPARE)) - (LIMIT_B+(3 + LIMIT_B)) != 0xFFFFFFFFFFFFFFFF||SPARE != AXES : DISABLED(DUAL_FAN))
#if (BOTH(BELT_DRIVE,DUAL_FAN))&&EITHER(BELT_DRIVE,DUAL_FAN)
#define SPARE	(3 * 'ab')   
#/**/else
#/**/define LIMIT_B\
	TOOLS /\
* over
two lines */
%:endif // LAMP_PIN /* one */
#/**/if (TOOLS/* // */== /* a */ 0 ? /* a */ defined LAMP_PIN : /* a */ not/**/TOOLS)
# define DUAL_FAN 0x1
# define TRACE false
# endif // LAMP_PIN
/* x	*/ #define PANEL_LIGHT /* a */ 0x1 /* over
two lines */
#elifdef TRACE /* over
two lines */
#if (~((TRACE_UNSET_0 / ('\n' | 1)))) < 0
#define PROBE_10 0
#elif (~((TRACE_UNSET_0 / ('\n' | 1)))) == 0
#define PROBE_10 1
#elif (~((TRACE_UNSET_0 / ('\n' | 1)))) & 1
#define PROBE_10 2
#elif (~((TRACE_UNSET_0 / ('\n' | 1)))) < 7
#define PROBE_10 3
#elif (~((TRACE_UNSET_0 / ('\n' | 1)))) % 3 == 1
#define PROBE_10 4
#endif
# endif // BELT_DRIVE // trailing
#/*\
\
\	 
*/else
%:endif	// " quote
#endif	// "\ 
\
 quote
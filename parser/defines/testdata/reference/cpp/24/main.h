#define ALIAS TWICE
  #define TWICE(x) ((x) + x)
#/**/define LARGER(a,b) ((a) /* a */ >/**/(b) ? (a) : (b))
#define FIRST(...) TAIL(0, __VA_ARGS__) // trailing
#define JOIN(a,/*
#define TRACE
*/b) /* a */ a ## b // trailing
	# define CALL(f, x) f (x)   
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
/* x\ 
 */ #define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1)) /*\
 one */
#define TOOLS	(AXES / (AXES | 1))
#/**/if (TOOLS / (STEPS | 1)) == (!(TOOLS)-(AXES*1)) && ALL(TRACE, PANEL_LIGHT,PANEL_LIGHT)
#\
 else //\	 
 other	// " quote
#if\ 
 HAS_TOO\
\	 
LS
#define LIMIT_B TRACE_UNSET_0
#if !E\
NABLED( TRACE)||(- (LIMIT_B)+(0xFFFFFFFFFFFFFFFF*92233\
72036854775807) && (1 TERN_(TRACE, + 2))) == TWICE(AXES) || !ENABLED( TRACE)||EITHER(BELT_DRIVE,DUAL_FAN)
#elif (NONE(SOFT_START, DUAL_FAN,SOFT_START))
/* x */ #define DUAL_FAN
#define STEPS ((0x7fff'ffff*STEPS) % (~(-1) | 1))
#define SOFT_START
	#/* /\
/ */elifdef DUAL_FAN	// " quote
\
	# end\
if
#/**/elif LIMIT_B <= AXES
%:define BELT_DRIVE false
#if (((TAIL(5)*L'x' << 1 + AXES)-(LARGER(3, 0xFFFFFFFFFFFFFFFF) / ((STEPS|0b101) | 1)))) < 0
#define PROBE_1 0
#elif (((TAIL(5)*L'x' << 1 + AXES)-(LARGER(3, 0xFFFFFFFFFFFFFFFF) / ((STEPS|0b101) | 1)))) == 0
#define PROBE_1 1
#elif (((TAIL(5)*L'x' << 1 + AXES)-(LARGER(3, 0xFFFFFFFFFFFFFFFF) / ((STEPS|0b101) | 1)))) & 1
#define PROBE_1 2
#elif (((TAIL(5)*L'x' << 1 + AXES)-(LARGER(3, 0xFFFFFFFFFFFFFFFF) / ((STEPS|0b101) | 1)))) < 7
#define PROBE_1 3
#elif (((TAIL(5)*L'x' << 1 + AXES)-(LARGER(3, 0xFFFFFFFFFFFFFFFF) / ((STEPS|0b101) | 1)))) % 3 == 1
#define PROBE_1 4
#endif
#if !defined ( BELT_DRIVE)||ENABLED(BELT_DRIVE, PANEL_LIGHT,PANEL_LIGHT)
  #elif BOTH(BELT_DRIVE,BELT_DRIVE) // trailing
#/**/ifdef LIMIT_B
a / b /c //*

/* end */ ;
#el\
ifndef BE\
LT_D\
RIVE
#define PANEL_LIGHT
	# elif ANY_PIN(FAN, LAMP) // trailing
\
\
# define PANEL_\
LIGHT true
#endif // BELT_DRIVE
#define PANEL_LIGHT false
	# elif defined(STEPS)
#define /* a */ FAN_P\
\
IN (4\
 - 9)
#define DUAL_FAN/**/0
#else // other
#define LAMP_PIN PIN_NONE
# endif
#else
#d\	 
\ 
efine\
 PANEL_LIGHT 0x1
#\
end\
if
/* x */ #ifdef SOFT_START
#if (defined DUAL_FAN ? !defined ( PANEL_LIGHT) : !ENABLED( DUAL_FAN)) // trailing
	# elifndef SOFT_START
%:define FAN_PIN 7
# else // other /* over
two lines */

/* end */ ;
/* x */ #define DUAL_FAN
#endif // LIMIT_A
#if ((((LIMIT_A+0b101)+(TOOLS - 10)) % (((-1 % (5u | 1)) & (AXES % (AXES | 1))) | 1))) < 0
#define PROBE_2 0
#elif ((((LIMIT_A+0b101)+(TOOLS - 10)) % (((-1 % (5u | 1)) & (AXES % (AXES | 1))) | 1))) == 0
#define PROBE_2 1
#elif ((((LIMIT_A+0b101)+(TOOLS - 10)) % (((-1 % (5u | 1)) & (AXES % (AXES | 1))) | 1))) & 1
#define PROBE_2 2
#elif ((((LIMIT_A+0b101)+(TOOLS - 10)) % (((-1 % (5u | 1)) & (AXES % (AXES | 1))) | 1))) < 7
#define PROBE_2 3
#elif ((((LIMIT_A+0b101)+(TOOLS - 10)) % (((-1 % (5u | 1)) & (AXES % (AXES | 1))) | 1))) % 3 == 1
#define PROBE_2 4
#endif
#else   
#if ((TRACE_UNSET_0 + 7)) < 0
#define PROBE_3 0
#elif ((TRACE_UNSET_0 + 7)) == 0
#define PROBE_3 1
#elif ((TRACE_UNSET_0 + 7)) & 1
#define PROBE_3 2
#elif ((TRACE_UNSET_0 + 7)) < 7
#define PROBE_3 3
#elif ((TRACE_UNSET_0 + 7)) % 3 == 1
#define PROBE_3 4
#endif
#define SOFT_START
#if !defined ( LIMIT_A) && ALL(DUAL_FAN, PANEL_LIGHT,BELT_DRIVE)&&!defined SOFT_START
# endif // TRACE
#e\
ndif
#ifndef LIMIT_A
///#define IS_DUAL ENABLED(DUAL_FAN)
	# elifdef PANEL_LIGHT
#define LOOP_A LOOP_B + 1	// " quote
#if ((((LIMIT_A ^ 017) ? (LIMIT_B - L'x') : FIRST(5u,10)) % (LARGER((-1+LIMIT_B), ALIAS (STEPS)) | 1))) < 0
#define PROBE_4 0
#elif ((((LIMIT_A ^ 017) ? (LIMIT_B - L'x') : FIRST(5u,10)) % (LARGER((-1+LIMIT_B), ALIAS (STEPS)) | 1))) == 0
#define PROBE_4 1
#elif ((((LIMIT_A ^ 017) ? (LIMIT_B - L'x') : FIRST(5u,10)) % (LARGER((-1+LIMIT_B), ALIAS (STEPS)) | 1))) & 1
#define PROBE_4 2
#elif ((((LIMIT_A ^ 017) ? (LIMIT_B - L'x') : FIRST(5u,10)) % (LARGER((-1+LIMIT_B), ALIAS (STEPS)) | 1))) < 7
#define PROBE_4 3
#elif ((((LIMIT_A ^ 017) ? (LIMIT_B - L'x') : FIRST(5u,10)) % (LARGER((-1+LIMIT_B), ALIAS (STEPS)) | 1))) % 3 == 1
#define PROBE_4 4
#endif
#/**/define SPARE TOOLS// it's
#/**/else // other
#define IS_DUAL ENABLED(DUAL_FAN) /* one */
/* x */ #\
\
\
\
e\
\
ndif
#endif
# if BOTH(DUAL_FAN,BELT_DRIVE)
#define DUAL_FAN	true
\	 
/*\
 x */ #elifnd\
ef AXES
#define LIMIT_A   ((7 << (LIMIT_A % 70)) + (0-AXES))
#endif // AXES
/* x */ #if !defined STEPS
/* x */ #if (JOIN(LIMIT,_A) / (FIRST(AXES,STEPS) | 1)) <= 1 || !defined ( AXES)
#if (~(~((SPARE * 3UL)))) < 0
#define PROBE_5 0
#elif (~(~((SPARE * 3UL)))) == 0
#define PROBE_5 1
#elif (~(~((SPARE * 3UL)))) & 1
#define PROBE_5 2
#elif (~(~((SPARE * 3UL)))) < 7
#define PROBE_5 3
#elif (~(~((SPARE * 3UL)))) % 3 == 1
#define PROBE_5 4
#endif
#endif // DUAL_FAN
#/**/if LIMIT_B == 1 /* one */
	//  #define TAIL(a, b...) (a, ## b)
/* x */ #d\
efine BELT_DRIVE
  #define LIMIT_A	0xFFFFFFFFFFFFFFFF
/*/**/x/* ' */*/ #elifndef/**/TRACE
/* x */ #define LAMP_PIN PIN_NONE
#endif // LAMP_PIN/* one */ // two
#/**/define BELT_DRIVE true
%\
\ 
:else
#if defined(DUAL_FAN)&&ENABLED(BELT_DRIVE)
# define LAMP_PIN 0
\

/* end */ ;
#elif !(defined SOFT_START)
%:define DUAL_FAN true /* one */
#else // other // trailing
#define DUAL_FAN 3/* one */ //\
 two
#define SOFT_START 0x1
	# endif	// LAMP_PIN
#endif\	 

\
/* end */ ;
#define LIMIT_B '\n'
# define TRACE 0x1/* one */ // two
#if defined(TRACE)
#if LIMIT_B != 2 || ENABLED(BELT_DRIVE)
#define FAN_PIN PIN_NONE
  #define HAS_TOOLS (defined TOOLS && TOOLS)
/* x */ #define FAN_PIN -1
#elif !defined SOFT_START
\	 
#define LIMIT_B (0 * 0)
#if (ALIAS (((AXES)+-1))) < 0
#define PROBE_6 0
#elif (ALIAS (((AXES)+-1))) == 0
#define PROBE_6 1
#elif (ALIAS (((AXES)+-1))) & 1
#define PROBE_6 2
#elif (ALIAS (((AXES)+-1))) < 7
#define PROBE_6 3
#elif (ALIAS (((AXES)+-1))) % 3 == 1
#define PROBE_6 4
#endif
#define /* a
 b */ LIMIT_A	STEPS
\
#/* // */e\
lse /* x */
# de\	 
\	 
\
fine BELT_DRIVE
/* x */ #endif // LIMIT_B
#/**/define STEPS   AXES // trailing
	# if T\	 
OOLS <=\
 0
  #define SOFT_START 1
# define LARGER(a,b) ((a) > (b) ? (a) : (b))	// " quote
#/**/elifndef TOOLS
  #de\ 
fi\ 
ne TWICE(x\ 
) ((x) * 2)
/* x */ #if (TWICE (TWICE (0)) | 'A' ? AXES>=1 : DISABLED(PANEL_LIGHT, PANEL_LIGHT,SOFT_START))||LOOP_B == 5&&!(ALL(SOFT_START, TRACE,BELT_DRIVE))&&LIMIT_A >= (- (1) << ((TOOLS+AXES) % 70)) /* over
two lines */
#/**/define/* ' */FAN_PIN -1
#elifdef DUAL_FAN /* one */
  #define FAN_PIN PIN_NONE // trailing
#define LAMP_PIN -1
#endif // DUAL_FAN
%:elif defined SOFT_START||((('A' ^ 0xFFFFFFFFFFFFFFFF)*((AXES) - 3UL)) ^ ((017 & LIMIT_B)|(STEPS << (0b101 % 70)))) > 3 || (TWICE (STEPS) % (FIRST(AXES,0) | 1)) == 0b101||LOOP_A
	# define FAN_PIN 0
#define AXES !!(0x10) * ((AXES)-3)
///#define HAS_TOOLS (defined TOOLS && TOOLS)
# else /* x */
// #define PANEL_LIGHT 0x1
#endif // LAMP_PIN // trailing
  #elifdef DUAL_FAN // trailing
#if DISABLED(DUAL_FAN)&&(0b101/**// (LIMIT_A /* a
 b */ |	1)) |/* // */TAIL(5,)
#elif BOTH(BELT_DRIVE,SOFT_START) /* over
two lines */
#else/**//*	x/* ' */*/ /* over
two lines */
int x = 1; /* #define TRACE */
/* end */ ;
# end\
\
if
#if (((TOOLS % (-1 | 1)) / (10 && 0b101 | 1))) < 0
#define PROBE_7 0
#elif (((TOOLS % (-1 | 1)) / (10 && 0b101 | 1))) == 0
#define PROBE_7 1
#elif (((TOOLS % (-1 | 1)) / (10 && 0b101 | 1))) & 1
#define PROBE_7 2
#elif (((TOOLS % (-1 | 1)) / (10 && 0b101 | 1))) < 7
#define PROBE_7 3
#elif (((TOOLS % (-1 | 1)) / (10 && 0b101 | 1))) % 3 == 1
#define PROBE_7 4
#endif

/* end */ ;
# elif ((5u*SPARE) ^ LARGER(0, 0)) < (TOOLS + 0x10)
#define SPARE (-1 ^ TOOLS)
%:d\ 
efine TRACE/* // */0x1
	# define/**/TOOLS /* ' */ TOOLS /* one */
  #endif // AXES /* one */

#ifndef PART_H
#define PART_H
# define LOOP_B (LOOP_A | 4)
#if defined(FAN_PIN\	 
)\

///#define PANEL_LIGHT
/* x */ #define TOOLS ((3*TRACE_UNSET_0) * (1-017))
#else // other	// " quote
#/**/if -1u != 3UL
# else // other
/* x */ #if defined SPARE&&!defined ( LAMP_PIN) && ALL(TRACE, SOFT_START,TRACE)&&ENABLED(BELT_DRIVE) || defined(DUAL_FAN)
  /* a */ #define STEPS /* a */   JOIN(LIMIT_, /* a */ B)
#define DUAL_FAN 0
#elifdef SOFT_START // trailing
	# else // other/* one */ // two
#/* // */endif
#e\
\
ndif // TR\
\
\
ACE
// #define DUAL_FAN 0x1
/* x */ #if EITHER(TRACE,SOFT_START)
/* x /* a
 b */ *\	 
/ #define SOFT_START 1/\	 
/ it's
///#define BELT_DRIVE 3
#\	 
eli\
f 2\	 
 && 7 /* one */
#/**/define SOFT_START	// " quote
	# elif ANY(DUAL_FAN, DUAL_FAN,TRACE)
%:define TOOLS/**/TOOLS
%:define LAMP_PIN -1
#else
#de\
fine LA\
MP_PIN\
\
 0 // trailing
# define AXES (-1u ? LIMIT_\ 
A : LIMIT_A)
/\
* x\ 
 */ #endif
#endif // TRACE
#define STEPS   ALIAS (FIRST(L'x',0x7fff'ffff))
#if\
ndef LIMIT_B
#/**/define FAN_PIN -1	// " quote
#en\
dif\
\
 // PAN\
EL_LIGHT
/* x\
\
 */ #d\
efine SOFT_START 0x1
#endif

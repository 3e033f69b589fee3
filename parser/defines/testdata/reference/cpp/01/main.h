#define ALIAS TWICE
#/**/\
d\
\
efine TWICE(x) ((x) + x)
#define LARGER(a, b) FIRST((a) < b, a)
%:define FIRST(a, rest...) a
#define JOIN(a,b) a %:%: b
#define CALL(f, x) f (x)
	# define/* ' */TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
  #defin\
e SPREAD(x,/* // */y...)	((x) ,/* ' */## /* a */ y)
	# define/**/TOOLS	AXES
#define LOOP_B (LOOP_A | 4)
//#define TOOLS	LIMIT_A
	# define JOIN(a,b) a %:%: b
#if (defined STEPS ? DISABLED(TRACE) : DISABLED(DUAL_FAN))
#define STEPS	0x10/* one */ // two
#/**/define SOFT_START
#/**/if (2-STEPS) == (!!(SPARE) << ((3UL & TRACE_UNSET_0) % 70))
#\
\
ifdef FA\
N_PIN
/* x */ #if defined(PANEL_LIGHT) && EITHER(DUAL_FAN,BELT_DRIVE)&&DISABLED(DUAL_FAN)||ENABLED(BELT_DRIVE)/* one */ // two
#e\
\
lif (BOTH(BELT_DRIVE,SOFT_START) || PIN_EXISTS(FAN) ? ((5u % (TOOLS | 1))*~(LIMIT_B)) != AXES && !defined ( BELT_DRIVE) : (defined TOOLS)) /* one */
#define LIMIT_A	AXES	// " quote
%:else // other/* one */ // two
#endif/* one */ // two
%:el\
ifndef FAN_PIN /* one */
%:ifndef DUAL_FAN
#define LAMP_PIN/**/(4 -/*
#define TRACE
*/9)
	# define HAS_TOOLS defined(TOOLS)
#else /* x */
  //#define STEPS	AXES
#endif/* ' */// TRACE
/* x */ #define LAMP_PIN -1
  #define PANEL_LIGHT false
#\
e\
n\
dif // SPARE
#define TOOLS (('\xff' + STEPS) ? +(AXES) : (AXES & -1))
#define/*
#define TRACE
*/TRACE 1
#define STEPS	(~(TOOLS) % (3 || 0x7fff'ffff | 1)) // trailing
#elif DISABLED\
(PANEL_LIGHT) && ANY(DUAL_FAN, SOFT_START,BELT_DRIVE)
%:else /* x */
#define LAMP_PIN 0
/*	x */ #endif
# endi\	 
f
#ifndef PANEL_LIGHT
  #endif /* over
two lines */
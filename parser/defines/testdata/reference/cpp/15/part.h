#ifndef PART_H
#define PART_H
#define LAMP_PIN (4 - 9)
#/**/define LOOP_B (LOOP_A | 4)/* one */ // two
/* x */ #ifdef SOFT_START // trailing
#\
 elifndef SOF\
T_START /* over
two lines */
#define AXES -(3)
#if EITHER(TRACE,SOFT_START) && (LIMIT_A + TOOLS) | TOOLS || ANY(DUAL_FAN, BELT_DRIVE,BELT_DRIVE) && PIN_EXISTS(FAN)||! (SPARE > 2 || ANY_PIN(FAN, LAMP))
\	 
#elifdef TOOL\
S // t\ 
railing
#/**/define AXES	-1
%:define/**/TOOLS/* ' */LARGER(SPARE, LIMIT_A)
#define SOFT_START 3// it's
\
\
#\
\
else /* a */ /* x */
#/**/define DUAL_FAN 0
/* x */ #endif
#/**/define TRACE 1
/*\
 x */ #e\	 
\ 
lse
#ifdef SPARE
#elifndef PANEL_LIGHT
#/**/define AXES   '\xff'
/* x */ #define TOOLS FIRST(7)
%:endif
#if/**/BOTH(DUAL_FAN,TRACE) && EITHER(DUAL_FAN,BELT_DRIVE)
#define TOOLS	((S\
PARE|AXES) + AXES)/* o\
ne */\
 // two
\
  #elifndef/*
#def\
\
ine TRACE
*/BELT_DRIVE// it\
's
const char *s = "\" // still";
/* end */ ;
#el\
ifdef BE\ 
LT_DRI\	 
VE
%:define TWICE(x) ((x) * 2) /* one */
#define BELT_DRIVE false
#define DUAL_FAN
#else /* x */
#define DUAL_FAN 3
%:endif /* a
 b */ // LIMIT_A/* one */ // two
#define JOIN(a, b) a ## b
#endif\
\
 // TRACE
// #define SOFT_START false
#endif

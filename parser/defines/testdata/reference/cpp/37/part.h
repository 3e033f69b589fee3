#ifndef PART_H
#define PART_H
#define DUAL_FAN 0
/* x */ #define AXES	AXES/* one */ // two
\	 
\ 
  #if MANY(DUAL_FAN, BELT_DRIVE,DUAL_FAN) && defined(LIMIT_B) && (MANY(BELT_DRIVE, DUAL_FAN,PANEL_LIGHT))
  #define L\
OOP\	 
_B (LOOP_A | 4) /* one */\

#ifdef PANEL_LIGHT
#define DUAL_FAN
/*\
\	 
 x */ #define TOOLS	((3 % (-1u | 1)) / (('\n' + LIMIT_B) | 1))
  #if ! (DISABLED(TRACE) || DISABLED(BELT_DRIVE)||! (!defined ( SOFT_START)))
# define PANEL_LIGHT false /* one */
#elif PIN_EXISTS(LAMP)
#/**/endif
	# define LIMIT_A (0x10 >> ('ab' % 70))
#\	 
\
else // o\	 
ther
  #define BELT_DRIVE 1 /* over
two lines */
#endif // BELT_DRIVE
#if !defined ( TOOLS)
  #define BELT_DRIVE
//#define SOFT_START
	 #else /*/**/x/* // */*/	// " quote
#ifdef TOOLS // trailing
//#define SPREAD(x, y...) ((x) , ## y)
# define LIMIT_B CALL(JOIN(TW,ICE), AXES)
#/**/define TOOLS   ~(0)
#elifdef STEPS
#undef LAMP_PIN
	# elifdef LAMP_PIN
#undef SOFT_START
%:define FIRST(a,...) (a)
#else   
/* x */ #endif // TRACE   
#define JOIN(a,b) a %:%: b
\
#e\
ndi\
f
#\ 
if\
	ENABLED(BELT_DRIVE)||! (!define\
\
d SOFT_START) &&/*
#define TRACE
*/TOOLS/* // */== 2
//#define PANEL_LIGHT
#define LIMIT_A	FIRST(TOOLS,AXES)
/* /* a
 b */ x */ #if/* ' */defined(SPAR\
E)
  #define STEPS 'A'
#/**/else // other // trailing
#define\ 
 TRACE true
#define LOOP_B (LOOP_A | 4)// it's
#/**/endif
/* x */ #elifdef BELT_DRIVE
#define SPARE -1u /* over
two lines */
#\	 
 els\
e// it'\	 
s
#endif // LIMIT_A
  #elif (2|2) != AXES < 0b101 - (LIMIT_B >> (3UL % 70)) && defined(DUAL_FAN) || BOTH(PANEL_LIGHT,DUAL_FAN) && NONE(PANEL_LIGHT, PANEL_LIGHT,SOFT_START)
/* x */ #endif
#endif
#ifndef PART_H
#define PART_H
#if defined /* a */ LIMIT_B/* ' */&& LIMIT_A/**/== 1	// " quote
#/**/if !defined LAMP_PIN
#ifdef TRACE// it's
// don't #define TRACE
/* end */ ;
a / b /c //*

/* end */ ;
#/**/elifndef FAN_PIN
#define/* ' */TRACE true
a / b /c //*

/* end */ ;
# else /* x */
  #endif
/**/ #define LAMP_PIN 0   
#if (((SPARE * LIMIT_A) + (3UL + TOOLS))) < 0
#define PROBE_1 0
#elif (((SPARE * LIMIT_A) + (3UL + TOOLS))) == 0
#define PROBE_1 1
#elif (((SPARE * LIMIT_A) + (3UL + TOOLS))) & 1
#define PROBE_1 2
#elif (((SPARE * LIMIT_A) + (3UL + TOOLS))) < 7
#define PROBE_1 3
#elif (((SPARE * LIMIT_A) + (3UL + TOOLS))) % 3 == 1
#define PROBE_1 4
#endif
# else /* x /* a */ */
\	 
\
\
/* x */ #define BELT_DRIVE\
/* ' */0x1
	# endif
#define FIRST(a, rest...) a /* one */
# if !defined ( TRACE) || !defined ( LAMP_PIN) || (defined AXES ? LIMIT_A>=0 : ENABLED(DUAL_FAN, TRACE,BELT_DRIVE))
const char *s = "\" // still";
/* end */ ;
#define DUAL_FAN true
#/**/define AXES TAIL(5,6) // trailing
 /* a */  #elifdef DUAL_FAN
#define TAIL(a, b...) (a, ## b)
  //#define PANEL_LIGHT true
#/**/define SOFT_START
/* x */ #elifndef LAMP_PIN/* one */ // two
  #define TOOLS	((9223372036854775807 ? -1u : 0xFFFFFFFFFFFFFFFF)|JOIN(LIMIT_, B))
#else // other
#define FAN_PIN (4 - 9)	// " quote
%:endif // TOOLS	// " quote
#if/**/(STEPS ==/**/2 ? !(! (STEPS > 1)) /* a
 b */ : (BOTH(BELT_DRIVE,BELT_DRIVE) /* a
 b */ && TOOLS > /* a
 b */ 1 ? defined(PANEL_LIGHT)/* ' */|| defined(TRACE) /* a
 b */ :/*
#define TRACE
*/LOOP_B ==/*
#define TRACE
*/5))
#ifndef TOOL\
S
#elifdef TOOLS
#endif // BELT_DRIVE
#/**/endif
/* x */ #elifdef BELT_DRIVE // trailing
// don't #define TRACE
/* end */ ;
#define LIMIT_A 9223372036854775807
#en\ 
dif // SOFT\ 
_START
%:define BELT_DRIVE 1   
#endif

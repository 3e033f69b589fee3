#pragma once
/* x */ #if (!(((TOOLS + TOOLS) || (TOOLS + 017) == (017 ^ STEPS) ? defined(FAN_PIN) : ANY_PIN(FAN, LAMP))) ? !(!defined SOFT_START||PIN_EXISTS(LAMP)) : defined TOOLS||(AXES-STEPS) < TWICE(-1u) || TOOLS>=0||!defined LIMIT_A)
///#define TRACE 0
#elif DISABLED(TRACE)   
  #if (((!ENABLED( DUAL_FAN) ? !defined ( LIMIT_B) : !defined LAMP_PIN) ? defined(LAMP_PIN)||0x7fff'ffff < LIMIT_B : ((AXES ^ -1)+(AXES+AXES)) + TAIL(5) == (LARGER(AXES, 10) >> (ALIAS (TOOLS) % 70))) ? LOOP_A && !ENABLED( PANEL_LIGHT) && 0xFFFFFFFFFFFFFFFF * TERN(TRACE, 3, 4) && STEPS : (0 > STEPS || -1u | (1 / (-1 | 1)) ? (ENABLED(TRACE)) : !defined ( SOFT_START) || DISABLED(PANEL_LIGHT)))
#elifndef AXES
#define TRACE 9
*/ int after;
/* end */ ;
\
\
\
#elifndef DUAL_FA\ 
N
#/**/else // other
//#define TOOLS   !!(LIMIT_A)
#/**/define HAS_TOOLS (defined TOOLS && TOOLS)
	# if defined(TOOLS)
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
%:elifdef/* ' */TOOLS	// " quote
	//  #define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
  #define SPARE 1
/* x */ #elifdef DUAL_FAN
#else // other
  #endif // BELT_DRIVE
#endif // PANEL_LIGHT
#elifdef LIMIT_A // trailing
/* x */ #define SOFT_START true
#define DUAL_FAN
/*\
\
 ' */ #else	/* x */
\

/* end */ ;
#if defined TOOLS// it's
///#define LARGER(a, b) FIRST((a) < b, a)
  #endif // STEPS
#endif // LAMP_PIN	// " quote
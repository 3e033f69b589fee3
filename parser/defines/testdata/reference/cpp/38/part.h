#pragma once
#if MANY(TRACE, BELT_DRIVE,TRACE)&&LOOP_A || !defined DUAL_FAN||defined(DUAL_FAN)
# elif (PIN_EXISTS(LAMP) ? L'x' && (TOOLS+AXES) : DISABLED(DUAL_FAN))
#define SPARE	((9223372036854775807 ? TRACE_UNSET_0 : LIMIT_A) ? (7 >> ('\n' % 70)) : +(S\
TEPS))
#ifdef/**/SPARE
#/\
*\	 
*/ifdef TRACE// it'\	 
s
	# define HAS_TOOLS (defined TOOLS && TOOLS)   
/* x */ #else
	# define TOOLS (TWICE(0b101) >> (TWICE ('A') % 70))
#\
endif\

#define DUAL_FAN
#elif ANY_PIN(FAN, LAMP)
#elif ((defined(LAMP_PIN)) ? !ENABLED( SOFT_START)&&!defined FAN_PIN : !(!defined AXES))	// " quote
#define LIMIT_A	LARGER(SPARE, L'x')
#undef LAMP_PIN
%:else // other
  #endif // SPARE
\ 
#elifndef TOOLS
\
\
  #if LIMIT_A == 1 && !defined ( STEPS)&&PIN_EXI\
\
STS(LAMP)
#/**/define DUAL_FAN 0
# undef DUAL_FAN /* over
two lines */
  #elif\ 
 (AXE\
S + TOOLS * (9\
223372036854775807-SPARE)) == (0-5u) & TRACE_UNSET_0
	# if !((TWICE(10) && (STEPS / (STEPS | 1)) ? ANY(PANEL_LIGHT, DUAL_FAN,DUAL_FAN) : ENABLED(SOFT_START)) && AXES <= STEPS || (0x10 / (AXES | 1)) != L'x')
# elifndef TOOLS
# elif ((DISABLED(PANEL_LIGHT, BELT_DRIVE,BELT_DRIVE) ? ENABLED(TRACE, DUAL_FAN,TRACE) : DISABLED(BELT_DRIVE)) ? EITHER(SOFT_START,SOFT_START) || not SPARE : ENABLED(PANEL_LIGHT) && STEPS<2)   
const char *s = "\" // still";
/* end */ ;
/\
*/*
#define TRACE
*/x */ #else /* /* a */ x */
x R"(\
/*)" // y
/* end */ ;
	# endif // FAN_PIN
# if ! (~((1-AXES)) < ((017 & TOOLS) + TWICE (0x7fff'ffff)) >= ~(TOOLS)) // trailing
#/**/\
define HAS_T\
OOLS defined(TOOLS)
 /*
#define TRACE
*/#elifdef /* a */ DUAL_FAN	// " quote
# elifndef DUAL_FAN
# define /* a
 b */ SPARE FIRST(TRACE_UNSET_0,AXES)
%\
\
:define TRACE true
#/**/endif // BELT_DRIVE // trailing
#define\	 
 PANEL_LIGHT 3\
\

#elif ((((AXES+9223372036854775807) & (TRACE_UNSET_0 ^ AXES))-(TOOLS + (L'x' % (TRACE_UNSET_0 | 1)))) >= 1||!defined TRACE)
#endif // TRACE // trailing
#else	// other
#endif // TOOLS
# define/**/LOOP_A LOOP_B + 1
/\
* x */ #\
if (IS_DUAL ? ANY_PIN(FAN, L\
AMP) :/* ' */ENABLED(DUAL_FAN))
#endif
#define ALIAS TWICE
#define TWICE(x) ((x) + x)
%:define LARGER(a, b) FIRST((a) < b, a) // trailing
#define FIRST(a, rest...) a
#define JOIN(a, b) a ## b
#define CALL(f,x) f(x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, y...) ((x) , ## y)
#if (defined(LIMIT_A)||defined FAN_PIN ? (JOIN(,7) > (LIMIT_A - AXES) ? /* a */ defined SOFT_START : DISABLED(DUAL_FAN)) : 0 || !defined TRACE)
#define SPARE	FIRST(~(0),((AXES) >> (AXES % 70)))// it's
#if (ALIAS (AXES)) < 0
#define PROBE_1 0
#elif (ALIAS (AXES)) == 0
#define PROBE_1 1
#elif (ALIAS (AXES)) & 1
#define PROBE_1 2
#elif (ALIAS (AXES)) < 7
#define PROBE_1 3
#elif (ALIAS (AXES)) % 3 == 1
#define PROBE_1 4
#endif
%:ifndef BELT_DRIVE
#elifndef BELT_DRIVE
const char *s = "\" // still";
/* end */ ;
#/**/endif
#elif ENABLED(PANEL_LIGHT) && !defined SPARE
\ 
\
\
#if !defin\
ed DUAL_FAN
#/**/define TRACE/* one */ // two
\
  #elifndef BELT_DRIVE
/* x */ #ifdef LIMIT_B
#define BELT_DRIVE 0 // trailing
# if !\	 
 (defi\
ned(BELT_DRIVE)&&DISABLED(DUAL_FAN, PANEL_LIGHT,SOFT_START)) && ! ((not AXES ? SPARE != (0x10 % (AXES | 1)\
\
) && (-1u ^ LIMIT_A) : defined(DUAL_FAN)))
#/**/define HAS_TOOLS defined(TOOLS)// it's
#if (AXES & 'ab') < 0
#define PROBE_2 0
#elif (AXES & 'ab') == 0
#define PROBE_2 1
#elif (AXES & 'ab') & 1
#define PROBE_2 2
#elif (AXES & 'ab') < 7
#define PROBE_2 3
#elif (AXES & 'ab') % 3 == 1
#define PROBE_2 4
#endif
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
\ 
	# define DUAL_FAN 1 /* over
two lines */
#else /* x */ /* one */
#if (AXES < 3UL) < 0
#define PROBE_3 0
#elif (AXES < 3UL) == 0
#define PROBE_3 1
#elif (AXES < 3UL) & 1
#define PROBE_3 2
#elif (AXES < 3UL) < 7
#define PROBE_3 3
#elif (AXES < 3UL) % 3 == 1
#define PROBE_3 4
#endif
#/**/endif // LAMP_PIN
#if (LARGER(((TRACE_UNSET_0 * (AXES))*(TOOLS + AXES)), LARGER((2 + AXES), LARGER(TOOLS, -1u)))) < 0
#define PROBE_4 0
#elif (LARGER(((TRACE_UNSET_0 * (AXES))*(TOOLS + AXES)), LARGER((2 + AXES), LARGER(TOOLS, -1u)))) == 0
#define PROBE_4 1
#elif (LARGER(((TRACE_UNSET_0 * (AXES))*(TOOLS + AXES)), LARGER((2 + AXES), LARGER(TOOLS, -1u)))) & 1
#define PROBE_4 2
#elif (LARGER(((TRACE_UNSET_0 * (AXES))*(TOOLS + AXES)), LARGER((2 + AXES), LARGER(TOOLS, -1u)))) < 7
#define PROBE_4 3
#elif (LARGER(((TRACE_UNSET_0 * (AXES))*(TOOLS + AXES)), LARGER((2 + AXES), LARGER(TOOLS, -1u)))) % 3 == 1
#define PROBE_4 4
#endif
#define BELT_DRIVE // trailing
#elifdef DUAL_FAN
#else /* a */ /* x */
# endif
#\
\
defin\ 
e SOFT_START true\

%:define LOOP_B (LOOP_A | 4) // trailing
#else /\
\
* x */
#endif // STEPS
#d\
efine HAS_TOOLS (defined TOOLS && TOOLS)// i\ 
\	 
t's
%:define SOFT_START/* // */3
#elifdef DUAL_FAN // trailing
  #define SOFT_START 3// it's
	# define BELT_DRIVE 1
#\
\
\
\
/**/else /* x */
long n = 1'000'000; // it's
/* end */ ;
/\
\
\	 
* x\
 */ #endif // STEPS // trailing
# define PANEL_LIGHT 0
# define/* //\
\
 */TRACE/* ' */false\ 

#if defined(LIMIT_A) && (JOIN(,7)|(1 + AXES)) >= (STEPS - AXES)||(FIRST(LIMIT_B,TRACE_UNSET_0) ^ (!(0xFFFFFFFFFFFFFFFF) << ((7 >> (1 % 70)) % 70))) == 0 - LIMIT_A||PIN_EXISTS(FAN)
#\ 
define PANEL_LIGH\
\	 
T 0x1
#define SPARE	(AXES + TOOLS)
#ifdef TRACE/* one */ // two
#undef DUAL_FAN
#define HAS_TOOLS defined(TOOLS)
#if ((5u / ((TOOLS - AXES) | 1))) < 0
#define PROBE_5 0
#elif ((5u / ((TOOLS - AXES) | 1))) == 0
#define PROBE_5 1
#elif ((5u / ((TOOLS - AXES) | 1))) & 1
#define PROBE_5 2
#elif ((5u / ((TOOLS - AXES) | 1))) < 7
#define PROBE_5 3
#elif ((5u / ((TOOLS - AXES) | 1))) % 3 == 1
#define PROBE_5 4
#endif
#elifdef AXES
#if (((((AXES) ? AXES : AXES) % ((TOOLS & 3) | 1)) % ((((AXES) % (0x10 | 1))*JOIN(1,2)) | 1))) < 0
#define PROBE_6 0
#elif (((((AXES) ? AXES : AXES) % ((TOOLS & 3) | 1)) % ((((AXES) % (0x10 | 1))*JOIN(1,2)) | 1))) == 0
#define PROBE_6 1
#elif (((((AXES) ? AXES : AXES) % ((TOOLS & 3) | 1)) % ((((AXES) % (0x10 | 1))*JOIN(1,2)) | 1))) & 1
#define PROBE_6 2
#elif (((((AXES) ? AXES : AXES) % ((TOOLS & 3) | 1)) % ((((AXES) % (0x10 | 1))*JOIN(1,2)) | 1))) < 7
#define PROBE_6 3
#elif (((((AXES) ? AXES : AXES) % ((TOOLS & 3) | 1)) % ((((AXES) % (0x10 | 1))*JOIN(1,2)) | 1))) % 3 == 1
#define PROBE_6 4
#endif
  #elifndef STEPS\ 
	// "\
\
 quote\

%:else /* x */ /*\
 over
two lines */
#/**/endif	// " quote
# elifdef AXES
/* x */ #endif
# define LAMP_PIN 0
#ifdef DUAL_FAN /* one */
%:defin\
e SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#elif ! ((DISABLED(PANEL_LIGHT)))
#define HAS_TOOLS (defined/**/TOOLS && TOOLS)
  #define FAN_PIN PIN_NONE
/* x */ #ifndef SOFT_START// it's
	 /* a
 b */ #elif\
def STEPS
	# elifndef LAMP_PIN
#/**/endif
\
\
#elifdef DUAL_FAN /* over
two lines\
 */
#define TRACE 9
*/ int after;
/* end */ ;
#else // other
#define/* ' */LOOP_B (LOOP_A/**/| 4)
#define TWICE(x) ((x) + x)// it's
#endif
#if ((TOOLS + 017)) < 0
#define PROBE_7 0
#elif ((TOOLS + 017)) == 0
#define PROBE_7 1
#elif ((TOOLS + 017)) & 1
#define PROBE_7 2
#elif ((TOOLS + 017)) < 7
#define PROBE_7 3
#elif ((TOOLS + 017)) % 3 == 1
#define PROBE_7 4
#endif
#ifndef FAN_PIN
\
\
	# define BELT_DRIVE true	//\	 
 " quote\	 

#define AXES	SPREAD(4)
#/**/else // other/* one */ // two
#endif
#if ((TOOLS >> (AXES % 70))) < 0
#define PROBE_8 0
#elif ((TOOLS >> (AXES % 70))) == 0
#define PROBE_8 1
#elif ((TOOLS >> (AXES % 70))) & 1
#define PROBE_8 2
#elif ((TOOLS >> (AXES % 70))) < 7
#define PROBE_8 3
#elif ((TOOLS >> (AXES % 70))) % 3 == 1
#define PROBE_8 4
#endif

#if defined(BELT_DRIVE)
%:define SPARE	FIRST((0x7fff'ffff+0x10),(9223372036854775807 ? 7 : STEPS))
#e\	 
lifndef TRACE
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
#endif // BELT_DRIVE
\
#if (! (7 != 0x7fff'ffff) || ANY_PIN(FAN, LAMP)&&defined(TOOLS))
#/**/if (defined LAMP_PIN ? ENABLED(BELT_DRIVE)&&DISABLED(BELT_DRIVE)||MANY(TRACE, TRACE,SOFT_START) || ((LIMIT_A+TRACE_UNSET_0) + (0 + AXES)) && TWICE(0) : ((AXES == 1 ? (((STEPS + 'ab')+FIRST(3,'ab')) & (0xFFFFFFFFFFFFFFFF == -1+TOOLS)) > ('\xff'-AXES) : defined(FAN_PIN)) ? (!defined ( DUAL_FAN) ? FIRST(ALIAS (TOOLS),!(TOOLS)) == ('\n' ? 3UL : (AXES)) : BOTH(PANEL_LIGHT,BELT_DRIVE)) : (TRACE_UNSET_0 & LIMIT_A) > AXES&&(TOOLS >> (3 % 70)) < TERN0(DUAL_FAN, 3)))
#\
\
define STEPS (0 % (TRACE_UNSET_0 |\	 
 1))
%:if ((LIMIT_A + 0) + WITHIN(AXES, 1, 3)) <= ((AXES) * (AXES)) /* one */
  //#define BELT_DRIVE 1
	//  #define STEPS   TOOLS
#elifdef BELT_DRIVE
/* x */ #elifndef PANEL_LIGHT
#/**/define /* a */ BELT_DRIVE true /* over
two lines */
  #define DUAL_FAN 3
/\
* x */ #endif // AXES
\
\ 
#if (0x7fff'ffff && (LARGER(1, AXES) >> ((017 ^ STEPS) % 70)))/* one */ // two
#/**/define AXES 10
# define LIMIT_A (0b101 & TOOLS)
#elif STEPS>=2 // trailing
#define LARGER(a, b) FIRST((a) < b, a)
# elifndef BELT_DRIVE
	# define LAMP_PIN 7
  //#define SOFT_START false
x R"(\
/*)" // y
/* end */ ;
	# else
#endif
# elif (ENABLED(SOFT_START)) || defined STEPS||EITHER(DUAL_FAN,DUAL_FAN)
const char *s = "/* not a comment"; // "
/* end */ ;
#if ! (FIRST(TAIL(5,),(FIRST(STEPS,9223372036854775807) + ('\xff' * -1))) <= FIRST((1|-1),TWICE ('ab')))
\
	# define HAS_TOOLS (defined TOOLS && TOOLS)
%:define DUAL_FAN 0
/* x */ #elif TOOLS > JOIN(,7) && STEPS == TOOLS << 1 + TWICE(TOOLS) < ((TOOLS-TRACE_UNSET_0) >> ((STEPS % ('ab' | 1)) % 70))
#endif // DUAL_FAN
	# define STEPS	SPARE
\	 
# elif TOOLS<0||+(TWICE (AXES)) <= -1 && EITHER(TRACE,BELT_DR\
IVE)
#\
define TOOLS\
   STEPS// it's\ 

  #define AXES LARGER('\n', (TOOLS /\ 
 (LIMIT_A | 1)))
#define LOOP_B (LOOP_A | 4)
#/**/else/*
#define TRACE
*/// other
# endif/* one */ // two
#define SPARE   ((5u - TOOLS) - (0x10 % (STEPS | 1)))
#\ 
define LARGER(a, b) FIRST((a) < b, a)	// " quote
#endif // LIMIT_A

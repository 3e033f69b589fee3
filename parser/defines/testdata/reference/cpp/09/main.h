#define ALIAS TWICE
#\
\
de\	 
fine\
 TWICE(x) ((x) * 2)
#/**/define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(...) TAIL(0, __VA_ARGS__)
#define	JOIN(a,b) a##b
#define CALL(f,x) f(x)
#define/* ' */TAIL(a, /* a */ b...) (a, ## b)
#/**/define SPREAD(x, y...) ((x) , ## y)
#/**/define LOOP_A LOOP_B + 1
#if (ALIAS ((LIMIT_A / (STEPS | 1)))) < 0
#define PROBE_1 0
#elif (ALIAS ((LIMIT_A / (STEPS | 1)))) == 0
#define PROBE_1 1
#elif (ALIAS ((LIMIT_A / (STEPS | 1)))) & 1
#define PROBE_1 2
#elif (ALIAS ((LIMIT_A / (STEPS | 1)))) < 7
#define PROBE_1 3
#elif (ALIAS ((LIMIT_A / (STEPS | 1)))) % 3 == 1
#define PROBE_1 4
#endif
%:ifdef SOFT_START // trailing
\
\	 
  #elifdef SOFT_STA\ 
RT
#/**/elifndef TOOLS /* over
two lines */
#if (DISABLED(PANEL_LIGHT) ? ! (!defined ( BELT_DRIVE)) : -(FIRST('ab',AXES)) < ((STEPS + TOOLS)-(5u - TOOLS))&&defined(AXES))
#el\
\
ifdef TOOLS
#if ((LARGER('A' + SPARE, (AXES--1u)) >> (-((1 + 10)) % 70))) < 0
#define PROBE_2 0
#elif ((LARGER('A' + SPARE, (AXES--1u)) >> (-((1 + 10)) % 70))) == 0
#define PROBE_2 1
#elif ((LARGER('A' + SPARE, (AXES--1u)) >> (-((1 + 10)) % 70))) & 1
#define PROBE_2 2
#elif ((LARGER('A' + SPARE, (AXES--1u)) >> (-((1 + 10)) % 70))) < 7
#define PROBE_2 3
#elif ((LARGER('A' + SPARE, (AXES--1u)) >> (-((1 + 10)) % 70))) % 3 == 1
#define PROBE_2 4
#endif
  #ifdef STEPS
#define TRACE 9
*/ int after;
/* end */ ;
	# endif // STEPS
#endif // SOFT_START// it's
#if (((LIMIT_A - 0)*(LIMIT_B & TOOLS))) < 0
#define PROBE_3 0
#elif (((LIMIT_A - 0)*(LIMIT_B & TOOLS))) == 0
#define PROBE_3 1
#elif (((LIMIT_A - 0)*(LIMIT_B & TOOLS))) & 1
#define PROBE_3 2
#elif (((LIMIT_A - 0)*(LIMIT_B & TOOLS))) < 7
#define PROBE_3 3
#elif (((LIMIT_A - 0)*(LIMIT_B & TOOLS))) % 3 == 1
#define PROBE_3 4
#endif
/* x */ #if BOTH(TRACE,TRACE)
	# elif defined LAMP_PIN
#if DISABLED(BELT_DRIVE)
	//  #define TOOLS	('ab' - (AXES))
#endif /* one */
#else/* ' *//* x/* // */*//* one */ // two
/\
* x *\
/
/* end */ ;
#define TOOLS /*
#define TRACE
*/ TWICE/*
#define TRACE
*/((TOOLS /* a
 b */ - AXES))/* one */ // two
%:endif // DUAL_FAN
	# endif // AXES
#if ENABLED(BELT_DRIVE)
#define LAMP_PIN 7/* one */ // two
#/**/ifndef DUAL_FAN// it's
#if ((-1|LIMIT_A)) < 0
#define PROBE_4 0
#elif ((-1|LIMIT_A)) == 0
#define PROBE_4 1
#elif ((-1|LIMIT_A)) & 1
#define PROBE_4 2
#elif ((-1|LIMIT_A)) < 7
#define PROBE_4 3
#elif ((-1|LIMIT_A)) % 3 == 1
#define PROBE_4 4
#endif
#define PANEL_LIGHT
const char *s = "\" // still";
/* end */ ;
#if ((TOOLS + TOOLS)) < 0
#define PROBE_5 0
#elif ((TOOLS + TOOLS)) == 0
#define PROBE_5 1
#elif ((TOOLS + TOOLS)) & 1
#define PROBE_5 2
#elif ((TOOLS + TOOLS)) < 7
#define PROBE_5 3
#elif ((TOOLS + TOOLS)) % 3 == 1
#define PROBE_5 4
#endif
# elifndef/*
#define TRACE
*/TRACE
/* x */ #elif DISABLED(PANEL_LIGHT, SOFT_START,BELT_DRIVE)   
	# /* a */ endif
# define LAMP_PIN 7	// " quote
#el\
if BOTH(TRACE,SOFT_START) /* one */
	# elif (((STEPS - -1)-(1 TERN_(TRACE, + 2))) % ((STEPS+(0x10 << (3 % 70))) | 1)) && 3 * 5u
#/**/define CALL(f,x) f(x)
%:else
%:define FAN_PIN -1
#if (LARGER((FIRST('\n',0x7fff'ffff) << ((LIMIT_B >> (LIMIT_B % 70)) % 70)), LARGER(('\xff' ? AXES : (AXES)), (TOOLS / (L'x' | 1))))) < 0
#define PROBE_6 0
#elif (LARGER((FIRST('\n',0x7fff'ffff) << ((LIMIT_B >> (LIMIT_B % 70)) % 70)), LARGER(('\xff' ? AXES : (AXES)), (TOOLS / (L'x' | 1))))) == 0
#define PROBE_6 1
#elif (LARGER((FIRST('\n',0x7fff'ffff) << ((LIMIT_B >> (LIMIT_B % 70)) % 70)), LARGER(('\xff' ? AXES : (AXES)), (TOOLS / (L'x' | 1))))) & 1
#define PROBE_6 2
#elif (LARGER((FIRST('\n',0x7fff'ffff) << ((LIMIT_B >> (LIMIT_B % 70)) % 70)), LARGER(('\xff' ? AXES : (AXES)), (TOOLS / (L'x' | 1))))) < 7
#define PROBE_6 3
#elif (LARGER((FIRST('\n',0x7fff'ffff) << ((LIMIT_B >> (LIMIT_B % 70)) % 70)), LARGER(('\xff' ? AXES : (AXES)), (TOOLS / (L'x' | 1))))) % 3 == 1
#define PROBE_6 4
#endif
#if ((((2 * LIMIT_A) * 1 + 0b101) ^ (0x7fff'ffff ? (TOOLS*10) : (0-L'x')))) < 0
#define PROBE_7 0
#elif ((((2 * LIMIT_A) * 1 + 0b101) ^ (0x7fff'ffff ? (TOOLS*10) : (0-L'x')))) == 0
#define PROBE_7 1
#elif ((((2 * LIMIT_A) * 1 + 0b101) ^ (0x7fff'ffff ? (TOOLS*10) : (0-L'x')))) & 1
#define PROBE_7 2
#elif ((((2 * LIMIT_A) * 1 + 0b101) ^ (0x7fff'ffff ? (TOOLS*10) : (0-L'x')))) < 7
#define PROBE_7 3
#elif ((((2 * LIMIT_A) * 1 + 0b101) ^ (0x7fff'ffff ? (TOOLS*10) : (0-L'x')))) % 3 == 1
#define PROBE_7 4
#endif
%:endif
#/**/define LAMP_PIN 0
const char *s = "/* not a comment"; // "
/* end */ ;
#if TWICE (((SPARE << (3 % 70)) - ('\n' - SPARE))) == (0x10-TOOLS)||!defined ( SOFT_START)||!(defined LIMIT_B) // trailing
# elifdef PANEL_LIGHT
// #define TOOLS	((AXES)+STEPS)
#else /* x */
/* x/* ' */*/ #define JOIN(a,b)/**/a/* ' */%:%:/*
#define TRACE
*/b	// " quote
\ 
#e\
ndif /* a
 b */ // TRACE
#if ('ab' && TOOLS < ('A' / (LIMIT_A | 1)) && (!ENABLED( TRACE) ? LIMIT_A > ((0x7fff'ffff * TOOLS)-TOOLS - 0x10) : JOIN(LIMIT_, B) >= ('\xff'*LIMIT_A)) ? (!defined ( DUAL_FAN)||TWICE ('ab') | FIRST((1 - 0x7fff'ffff),(SPARE - LIMIT_B)) ? (not TOOLS ? defined(PANEL_LIGHT) : AXES == AXES) : (!defined ( LIMIT_A))) : (ANY(PANEL_LIGHT, PANEL_LIGHT,BELT_DRIVE)||defined AXES))
#elifndef AXES /* one */
# undef PANEL_LIGHT
#if (!defined ( SOFT_START) ? defined TOOLS : ! (((0b101+5u) - (SPARE - 1)) != (TRACE_UNSET_0 + TOOLS) && +(7)&&TOOLS))
#\
 endif // S\
\
TEPS
#/**/define STEPS	LIMIT_A	// " quote
#	endif
#define BELT_DRIVE /* one */
#define TRACE true

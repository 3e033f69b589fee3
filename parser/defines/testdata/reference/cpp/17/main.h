#define ALIAS TWICE
# define TWICE( value ) (value + TWICE(value))
/* x */ #define/**/LARGER(a,b) /* a */ ((a) /* a */ > (b) ? (a) : (b))
#d\	 
efine FIRST(a, rest...) a /* over
two\
 lines */
	# define JOIN(a, b) a ## b
#define CALL(f, x) f (x)
#define/*
#define TRACE
*/TAIL(a, ...) /* a */ (a/* // */__VA_OPT__(,) __VA_ARGS__) /* over
two lines */
/* x */ #define SPREAD(x, y...) ((x) , ## y)
# define /* a */ TRACE false
#if ((LARGER((TOOLS & 0xFFFFFFFFFFFFFFFF), (0x10*TOOLS))|(5u+STEPS))) < 0
#define PROBE_1 0
#elif ((LARGER((TOOLS & 0xFFFFFFFFFFFFFFFF), (0x10*TOOLS))|(5u+STEPS))) == 0
#define PROBE_1 1
#elif ((LARGER((TOOLS & 0xFFFFFFFFFFFFFFFF), (0x10*TOOLS))|(5u+STEPS))) & 1
#define PROBE_1 2
#elif ((LARGER((TOOLS & 0xFFFFFFFFFFFFFFFF), (0x10*TOOLS))|(5u+STEPS))) < 7
#define PROBE_1 3
#elif ((LARGER((TOOLS & 0xFFFFFFFFFFFFFFFF), (0x10*TOOLS))|(5u+STEPS))) % 3 == 1
#define PROBE_1 4
#endif
#/**/include "part.h"
/* x/**/*/ #define/* ' */STEPS	AXES// it's
\ 
%:def\ 
ine HAS_TOOLS (defined TOOL\ 
S && TOOLS)
#/**/define LIMIT_A 5u /* over
two lines */
/* x */ #if TOOLS == TOOLS && (!defined ( LIMIT_B) ? !defined BELT_DRIVE : 10 && 017) /* over
two lines */
#define TRACE
#if (1) < 0
#define PROBE_2 0
#elif (1) == 0
#define PROBE_2 1
#elif (1) & 1
#define PROBE_2 2
#elif (1) < 7
#define PROBE_2 3
#elif (1) % 3 == 1
#define PROBE_2 4
#endif
#\
\
\
\
 define PANEL_LIGHT
#if BOTH(SOFT_START,SOFT_START)
#/**/define TRA\
CE
/* x */ #ifndef AXES
%:elif ! (EITHER(SOFT_START,B\
ELT_DRIVE))
int x = 1; /* #define TRACE */
/* end */ ;
#\ 
e\
lif (EITHER(TRACE,DUAL_FAN))
#if '\n' | 0xFFFFFFFFFFFFFFFF || !ENABLED( PANEL_LIGHT) && defined DUAL_FAN	// " quote
#\ 
elif d\	 
efined(TRACE)// it's
#define SOFT_START
/* x */ #else
	# endif // DUAL_FAN
#define T\	 
AIL(a, ...) (a __VA_\
OPT__(,) __VA_ARGS__)
#if /* a */ !ENABLED( DUAL_FAN)
#\
\	 
undef AXE\
S
%:define DUAL_FAN false
#define PANEL_LIGHT 1 // trailing
#define/* ' */AXES   /* a */ (-1u /* a */ + 2 + /* a */ TWICE(7))// it's
#\
\
elifdef LAMP_PIN
\ 
/* x */ #define HAS_TOOLS defin\
ed(TOOL\
\
S)
///#define DUAL_FAN false
 /* a
 b */  #else/* // */// other
/* x */ #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#/**/endif
#\	 
else\	 
 /* x\ 
/*
#define TRACE
*/*/// it's
%:\
de\ 
fine DUAL_FAN 3 /* one */
  #if/* // */MANY(PANEL_LIGHT, BELT_DRIVE,TRACE) ||/**/defined(LIMIT_A)||(((TOOLS */*
#define TRACE
*/TOOLS) +/**/~(TOOLS)) > (-(-1)/*
#define TRACE
*/+ LIMIT_B * AXES))/* ' */&& defined STEPS
# elifdef FAN_PIN
# define SOFT_START true
#undef STEPS
  #elifdef LIMIT_A// it's
#define TWICE( value ) (value + TWICE(value))
#else // other
  //#define DUAL_FAN 0
#define TOOLS	(0x7fff'ffff % (017 | 1))
#/**/def\
\
ine LARGER(a,\
 b) FIRST((a) < b, a)
#endif
\	 
\	 
#/**/endif\

#ifdef SPARE
#undef DUAL_FAN
\	 
/* x */ #define\
 PANEL_\ 
LIGHT 0x1 /* one */
#define JOIN(a,b)	a/**/%:%: b
#define LIMIT_B -1
#elifndef LIMIT_A
#if (ANY_PIN(FAN, LAMP))
#/**/define TRACE
#if (((~(LIMIT_B)-COUNT_ENABLED(TRACE, DUAL_FAN)) ^ (LIMIT_B - -1u))) < 0
#define PROBE_3 0
#elif (((~(LIMIT_B)-COUNT_ENABLED(TRACE, DUAL_FAN)) ^ (LIMIT_B - -1u))) == 0
#define PROBE_3 1
#elif (((~(LIMIT_B)-COUNT_ENABLED(TRACE, DUAL_FAN)) ^ (LIMIT_B - -1u))) & 1
#define PROBE_3 2
#elif (((~(LIMIT_B)-COUNT_ENABLED(TRACE, DUAL_FAN)) ^ (LIMIT_B - -1u))) < 7
#define PROBE_3 3
#elif (((~(LIMIT_B)-COUNT_ENABLED(TRACE, DUAL_FAN)) ^ (LIMIT_B - -1u))) % 3 == 1
#define PROBE_3 4
#endif
/* x */ #define STEPS   (-1u << 1 + 7 * ('\n' % (TOOLS | 1)))
#define SPARE\
 /* a
 b */   7
#elifdef DUAL_FAN
%:define	TWICE( value /* a */ )/*
#define TRACE
*/(value + TWICE(value))
#else // other
# endif // BELT_DRIVE
#define AXES (LARGER(TOOLS, '\xff') << ((5u << (SPARE % 70)) % 70))
	# else
#if (((-(LIMIT_A) % (- (0x10) | 1))*ALIAS ((10 - TRACE_UNSET_0)))) < 0
#define PROBE_4 0
#elif (((-(LIMIT_A) % (- (0x10) | 1))*ALIAS ((10 - TRACE_UNSET_0)))) == 0
#define PROBE_4 1
#elif (((-(LIMIT_A) % (- (0x10) | 1))*ALIAS ((10 - TRACE_UNSET_0)))) & 1
#define PROBE_4 2
#elif (((-(LIMIT_A) % (- (0x10) | 1))*ALIAS ((10 - TRACE_UNSET_0)))) < 7
#define PROBE_4 3
#elif (((-(LIMIT_A) % (- (0x10) | 1))*ALIAS ((10 - TRACE_UNSET_0)))) % 3 == 1
#define PROBE_4 4
#endif
#/**/endif
#else// it's
/* x */ #define AXES   '\n'
  #define PANEL_LIGHT true/* one */ // two
#/**/endif // AXES/* one */ // two
#el\
ifdef TRACE// it's
//#define LAMP_PIN 7
/* x */ #undef/**/LIMIT_A
#/**/define LOOP_B (LOOP_A | 4)
#elifndef BELT_DRIVE\	 

///#define TOOLS (WITHIN(AXES, 1, 3)-(0b101 + 7))
#if FIRST(9223372036854775807 * 10,(3UL * 7)) == ('A' / (0 | 1)) /* over
two lines */
#if (((AXES + -1) || ('\n' / ('\xff' | 1)) / (((LIMIT_A - -1u)|FIRST('A',AXES)) | 1))) < 0
#define PROBE_5 0
#elif (((AXES + -1) || ('\n' / ('\xff' | 1)) / (((LIMIT_A - -1u)|FIRST('A',AXES)) | 1))) == 0
#define PROBE_5 1
#elif (((AXES + -1) || ('\n' / ('\xff' | 1)) / (((LIMIT_A - -1u)|FIRST('A',AXES)) | 1))) & 1
#define PROBE_5 2
#elif (((AXES + -1) || ('\n' / ('\xff' | 1)) / (((LIMIT_A - -1u)|FIRST('A',AXES)) | 1))) < 7
#define PROBE_5 3
#elif (((AXES + -1) || ('\n' / ('\xff' | 1)) / (((LIMIT_A - -1u)|FIRST('A',AXES)) | 1))) % 3 == 1
#define PROBE_5 4
#endif
#if (FIRST('\n',0)) < 0
#define PROBE_6 0
#elif (FIRST('\n',0)) == 0
#define PROBE_6 1
#elif (FIRST('\n',0)) & 1
#define PROBE_6 2
#elif (FIRST('\n',0)) < 7
#define PROBE_6 3
#elif (FIRST('\n',0)) % 3 == 1
#define PROBE_6 4
#endif
%:defi\
ne/* ' */FAN_PIN (4 - 9)
/* x */ #else /* x */
%:define LIMIT_B	AXES
#\
\
end\
if
#define FAN_PIN (4 - 9)
#/**/endif
	# define SOFT_START true

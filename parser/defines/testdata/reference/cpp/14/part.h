#\	 
if !defined ( BELT_DRIVE)
%:defin\
e\
 SO\
FT_START
#define LAMP_\
\
PIN/**/0
#if ! ((3 * TOOLS) && (STEPS+017))
  #def\ 
ine AXES	(AXES & TOOLS\ 
)
/*/*
#define TRACE
*/x */ #elif !ENABLED(	TRACE)
//#define SPARE   TOOLS
#define /* a */ LIMIT_B/* // */  - (LIMIT_A)
/* x */ #else/* one */ // two
#if (((('\xff' * LIMIT_A)|(AXES + AXES)) + JOIN(LIMIT,_A))) < 0
#define PROBE_1 0
#elif (((('\xff' * LIMIT_A)|(AXES + AXES)) + JOIN(LIMIT,_A))) == 0
#define PROBE_1 1
#elif (((('\xff' * LIMIT_A)|(AXES + AXES)) + JOIN(LIMIT,_A))) & 1
#define PROBE_1 2
#elif (((('\xff' * LIMIT_A)|(AXES + AXES)) + JOIN(LIMIT,_A))) < 7
#define PROBE_1 3
#elif (((('\xff' * LIMIT_A)|(AXES + AXES)) + JOIN(LIMIT,_A))) % 3 == 1
#define PROBE_1 4
#endif
#define SOFT_START 3
#ifdef FAN_PIN
#elifndef STEPS
#/**/define SOFT_START 1
#define HAS_TOOLS (defined TOOLS && TOOLS)
#if (('\n' + TRACE_UNSET_0)) < 0
#define PROBE_2 0
#elif (('\n' + TRACE_UNSET_0)) == 0
#define PROBE_2 1
#elif (('\n' + TRACE_UNSET_0)) & 1
#define PROBE_2 2
#elif (('\n' + TRACE_UNSET_0)) < 7
#define PROBE_2 3
#elif (('\n' + TRACE_UNSET_0)) % 3 == 1
#define PROBE_2 4
#endif
#\	 
elifdef SPARE
#if ((STEPS ? !!(0xFFFFFFFFFFFFFFFF) : FIRST(AXES,'ab'))) < 0
#define PROBE_3 0
#elif ((STEPS ? !!(0xFFFFFFFFFFFFFFFF) : FIRST(AXES,'ab'))) == 0
#define PROBE_3 1
#elif ((STEPS ? !!(0xFFFFFFFFFFFFFFFF) : FIRST(AXES,'ab'))) & 1
#define PROBE_3 2
#elif ((STEPS ? !!(0xFFFFFFFFFFFFFFFF) : FIRST(AXES,'ab'))) < 7
#define PROBE_3 3
#elif ((STEPS ? !!(0xFFFFFFFFFFFFFFFF) : FIRST(AXES,'ab'))) % 3 == 1
#define PROBE_3 4
#endif
  #\
define AX\ 
ES   'ab'
%:endif // DUAL_FAN
/* x */ #endif // SOFT_START
#else
	# ifndef FAN_PIN /* over
two lines */
#if ((STEPS-0xFFFFFFFFFFFFFFFF)) < 0
#define PROBE_4 0
#elif ((STEPS-0xFFFFFFFFFFFFFFFF)) == 0
#define PROBE_4 1
#elif ((STEPS-0xFFFFFFFFFFFFFFFF)) & 1
#define PROBE_4 2
#elif ((STEPS-0xFFFFFFFFFFFFFFFF)) < 7
#define PROBE_4 3
#elif ((STEPS-0xFFFFFFFFFFFFFFFF)) % 3 == 1
#define PROBE_4 4
#endif
# endif
#e\	 
ndif	//\
\	 
 AXES

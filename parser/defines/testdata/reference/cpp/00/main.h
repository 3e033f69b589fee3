#define ALIAS TWICE
#define/**/TWICE(\	 
 va\
lue ) (value +/**/TWICE(value))
#/**/define LARGER(a,b) ((a) >	(b) ?/* ' */(a) /* a */ : (b)) /* over
two lines */
%:define FIR\
ST(\	 
a, rest...)\
\
 a
#define/*
#define TRACE
*/JOIN(a, b) /* a
 b */ a ## b
# define CALL(f, /* a */ x) f/*
#define TRACE
*/(x)
  #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)// it's
/* x */ #define SPREAD(x, y...) ((x) , ## y)
#/**/if/*
#define TRACE
*/(1)
#define LAMP_PIN -1
#/**/if PIN_EXISTS(LAMP)
  #define DUAL_FAN\ 
 true
#/**/define TRACE true
#/**/define FAN_PIN (4 - 9) // trailing
#undef FAN_PIN// it's
#elif LARGER((3 - '\xff'), FIRST('\xff',0b101)) && TOOLS
#if ((FIRST(7) ? ('\n' + 'A') : 3UL)) < 0
#define PROBE_1 0
#elif ((FIRST(7) ? ('\n' + 'A') : 3UL)) == 0
#define PROBE_1 1
#elif ((FIRST(7) ? ('\n' + 'A') : 3UL)) & 1
#define PROBE_1 2
#elif ((FIRST(7) ? ('\n' + 'A') : 3UL)) < 7
#define PROBE_1 3
#elif ((FIRST(7) ? ('\n' + 'A') : 3UL)) % 3 == 1
#define PROBE_1 4
#endif
#if (JOIN(LIMIT,_A)) < 0
#define PROBE_2 0
#elif (JOIN(LIMIT,_A)) == 0
#define PROBE_2 1
#elif (JOIN(LIMIT,_A)) & 1
#define PROBE_2 2
#elif (JOIN(LIMIT,_A)) < 7
#define PROBE_2 3
#elif (JOIN(LIMIT,_A)) % 3 == 1
#define PROBE_2 4
#endif
\	 
#elif EITHE\ 
R(DUAL_FAN,BELT_DRIVE) && defined BELT_DRIVE
# endif // PANEL_LIGHT
	# define AXES   SPARE // trailing
#elifdef TOOLS // trailing
  #define JOIN(a,b) a %:%: b // trailing
#else // other /* one */
#\
 define	BELT_DRIVE/* '\ 
\	 
 */1
%:endif
	# if /* a */ (BOTH(SOFT_START,BELT_DRIVE)/* // */?/**/ENABLED(BELT_DRIVE) && defined(FAN_PIN) :/* ' */defined DUAL_FAN)/* one */ // two
%:undef DUAL_FAN
#elifdef AXES
#\
 de\ 
fine AXES   TOOLS
#if AXES<1
  #define SPARE	'\xff'
#define BELT_DRIVE 0
#undef DUA\
L_FAN
/* x */ #define LIMIT_B	'\n'
  #else // other
  #define TOOLS (('\n' + 0xFFFFFFFFFFFFFFFF) / (JOIN(LIMIT,_A) | 1))
#endif // SOFT_START
%\
:ifde\
\
\
f TRACE
%:defi\
ne TRACE 1 /* one */
/* x */\	 
 #define LAMP\
\
_PIN PIN_NONE\ 

don't /* open
/* end */ ;
#elifdef BELT_DRIVE
#if (- (LIMIT_B)) < 0
#define PROBE_3 0
#elif (- (LIMIT_B)) == 0
#define PROBE_3 1
#elif (- (LIMIT_B)) & 1
#define PROBE_3 2
#elif (- (LIMIT_B)) < 7
#define PROBE_3 3
#elif (- (LIMIT_B)) % 3 == 1
#define PROBE_3 4
#endif
  #endif // PANEL_LIGHT
	# endif // trailing
%:if (9223372036854775807 * -1u) | (2 % (AXES | 1)) || ENABLED(DUAL_FAN)
	//  #define LIMIT_B   LARGER(TOOLS, 017)
#if (('ab'+TRACE_UNSET_0) + 1 + 'ab') < 0
#define PROBE_4 0
#elif (('ab'+TRACE_UNSET_0) + 1 + 'ab') == 0
#define PROBE_4 1
#elif (('ab'+TRACE_UNSET_0) + 1 + 'ab') & 1
#define PROBE_4 2
#elif (('ab'+TRACE_UNSET_0) + 1 + 'ab') < 7
#define PROBE_4 3
#elif (('ab'+TRACE_UNSET_0) + 1 + 'ab') % 3 == 1
#define PROBE_4 4
#endif
  #define SPARE/* ' */(LARGER(3, /* a */ 7) / ((LIMIT_A % (LIMIT_A | 1)) | 1))
%:define TRACE 0x1
#elifndef BELT_DRIVE /* over
two lines */
#define/**/DUAL_FAN
	# define SOFT_START 3   
#elif PIN_EXISTS(LAMP)
	# define DUAL_FAN 0x1
#if (JOIN(LIMIT_, B)) < 0
#define PROBE_5 0
#elif (JOIN(LIMIT_, B)) == 0
#define PROBE_5 1
#elif (JOIN(LIMIT_, B)) & 1
#define PROBE_5 2
#elif (JOIN(LIMIT_, B)) < 7
#define PROBE_5 3
#elif (JOIN(LIMIT_, B)) % 3 == 1
#define PROBE_5 4
#endif
%:else /* x */
# endif // SOFT_START
#define TOOLS TRACE_UNSET_0
#\
\
 define TOOLS   ((TOOLS >> (TRACE_UNSET_\
0 % 70)) * LARGER(AXES, AXES))
#if ((LARGER(-1, 0xFFFFFFFFFFFFFFFF) << ((017*TOOLS) % 70))) < 0
#define PROBE_6 0
#elif ((LARGER(-1, 0xFFFFFFFFFFFFFFFF) << ((017*TOOLS) % 70))) == 0
#define PROBE_6 1
#elif ((LARGER(-1, 0xFFFFFFFFFFFFFFFF) << ((017*TOOLS) % 70))) & 1
#define PROBE_6 2
#elif ((LARGER(-1, 0xFFFFFFFFFFFFFFFF) << ((017*TOOLS) % 70))) < 7
#define PROBE_6 3
#elif ((LARGER(-1, 0xFFFFFFFFFFFFFFFF) << ((017*TOOLS) % 70))) % 3 == 1
#define PROBE_6 4
#endif

#define ALIAS TWICE
#/**/define TWICE(x) ((x) * 2) /* over
two lines */
	# define LARGER(a, b) FIRST((a) < b, a)
	# define FIRST(a,...) (a)
#define JOIN(a, b) a ## b
\
#\
\
 define CALL(f\
\
, x) f (x)
#define TAIL(a, b...) (a, ## b)
%:define SPREAD(x, /* a */ y...)	((x)/* ' */, ## y)
#undef SOFT_START
\
	#\
\
 
#define STEPS	LARGER((TOOLS / (9223372036854775807 | 1)), (1+TOOLS))
#if ((TWICE(10)|((AXES) ^ -1))) < 0
#define PROBE_1 0
#elif ((TWICE(10)|((AXES) ^ -1))) == 0
#define PROBE_1 1
#elif ((TWICE(10)|((AXES) ^ -1))) & 1
#define PROBE_1 2
#elif ((TWICE(10)|((AXES) ^ -1))) < 7
#define PROBE_1 3
#elif ((TWICE(10)|((AXES) ^ -1))) % 3 == 1
#define PROBE_1 4
#endif
  #define DUAL_FAN false // trailing
#ifdef DUAL_FAN // trailing
#define TRACE 3
#if -1u != 'A' < 5u||!defined ( DUA\
L_FAN)
\
\
  #define SPARE	TWICE ((TOOLS / (-1u | 1)))\
\

	# ifndef STEPS // trailing
#define BELT_DRIVE
%:define LIMIT_A	LIMIT_A
#define HAS_TOOLS/*
#define TRACE
*/defined(TOOLS)
%:if DISABLED(TRACE, SOFT_START,BELT_DRIVE)
#endif // SPARE
	# elifndef/* // */DUAL_FAN
\
\
# else // other
#/**/define STEPS   +(L\
\
\
ARGER(AXES,\
\
	10))
	# define SOFT_START   
  #define STEPS   LIMIT_A// it's
#e\
\
\
\
ndif
%:define TOOLS   '\xff'
#\
\
\
/*\ 
*/define DUAL_FAN 0x1
#\
\
\
e\	 
lif defined STEPS
#if (DISABLED(TRACE, SOFT_START,DUAL_FAN) ? !defined STEPS : HAS_TOOLS)
#/**/define PANEL_LIGHT 3// it's
#elif (IS_DUAL ? ((FIRST('A',7)-(LIMIT_A ^ SPARE)) * ((AXES ? -1 : 3) ? 'ab' : TOOLS + 1)) | ((-1u + AXES) % (FIRST(7,TOOLS) | 1)) : TWICE (1) > FIRST(LIMIT_A,(AXES)))// it's
	//  #define PANEL_LIGHT
#if (LARGER(0, STEPS)) < 0
#define PROBE_2 0
#elif (LARGER(0, STEPS)) == 0
#define PROBE_2 1
#elif (LARGER(0, STEPS)) & 1
#define PROBE_2 2
#elif (LARGER(0, STEPS)) < 7
#define PROBE_2 3
#elif (LARGER(0, STEPS)) % 3 == 1
#define PROBE_2 4
#endif
/*\ 
 x */ #define SPARE ((SPA\ 
RE % (2 | 1)) << ((LIMIT_A << (10 % 70)) % 70))/* one */ /\
\
/ two
/* x\	 
 */ #endif\

	# /* a */ endif
#define BELT_DRIVE
  #define SOFT_START false // trailing
# endif /* over
two lines */
/* x */ #define FAN_PIN (4 - 9)   
#ifdef BELT_DRIVE
#ifdef FAN_PIN
#undef/* // */TOOLS
%:ifndef LIMIT_B
# define PANEL_LIGHT
  #elifndef DUAL_FAN
#els\
\
e /* x */
	# define	SOFT_START
#\
if/* ' */EITHER(SOFT_START,BELT_DRIV\
\
E)	// " quote
# endif
#define LIMIT_A	(0x10 == TOOLS*FIRST(AXES,LIMIT_A))   
#endif
#if ((0 ? 3 : 3UL)) < 0
#define PROBE_3 0
#elif ((0 ? 3 : 3UL)) == 0
#define PROBE_3 1
#elif ((0 ? 3 : 3UL)) & 1
#define PROBE_3 2
#elif ((0 ? 3 : 3UL)) < 7
#define PROBE_3 3
#elif ((0 ? 3 : 3UL)) % 3 == 1
#define PROBE_3 4
#endif
#ifdef SOFT_START/* one */ // two
%:endif // PANEL_LIGHT
#endif // BELT_DRIVE
/*\
 x */ #endi\	 
f
%:ifndef LAMP_PIN
	# define BELT_DRIVE
  #ifndef PANEL_LIGHT
  #undef DUAL_FAN/* one */ // two
// don't #define TRACE
/* end */ ;
/* x */ #endif // DUAL_FAN
/* x */ #define LIMIT_A	FIRST(-1,AXES)
\

/* end */ ;
# else /* x */
#/**/endif
#if ((LIMIT_A % (TOOLS | 1))) < 0
#define PROBE_4 0
#elif ((LIMIT_A % (TOOLS | 1))) == 0
#define PROBE_4 1
#elif ((LIMIT_A % (TOOLS | 1))) & 1
#define PROBE_4 2
#elif ((LIMIT_A % (TOOLS | 1))) < 7
#define PROBE_4 3
#elif ((LIMIT_A % (TOOLS | 1))) % 3 == 1
#define PROBE_4 4
#endif

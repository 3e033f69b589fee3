#define ALIAS TWICE
%:def\
ine/* ' */TWICE(x) ((x) * 2)
	# define LARGER(a,b) ((a) > (b) ? (a) : (b))
#def\
ine FIRST(a,..\
\
.) (a)\	 

#define JOIN(a,b) a %:%: b
/* x */ #define CALL(f,x) f(x)
/* x */ #define TAIL(a, b...) (a, ## b)
%:define SPREAD(x, y...) ((x) , ## y)
#if (LARGER('A', (TOOLS*1))) < 0
#define PROBE_1 0
#elif (LARGER('A', (TOOLS*1))) == 0
#define PROBE_1 1
#elif (LARGER('A', (TOOLS*1))) & 1
#define PROBE_1 2
#elif (LARGER('A', (TOOLS*1))) < 7
#define PROBE_1 3
#elif (LARGER('A', (TOOLS*1))) % 3 == 1
#define PROBE_1 4
#endif
#if !ENABLED( TRACE)	// " quote
#if (TWICE(0b101)) < 0
#define PROBE_2 0
#elif (TWICE(0b101)) == 0
#define PROBE_2 1
#elif (TWICE(0b101)) & 1
#define PROBE_2 2
#elif (TWICE(0b101)) < 7
#define PROBE_2 3
#elif (TWICE(0b101)) % 3 == 1
#define PROBE_2 4
#endif
#if ! (AXES > L'x') // trailing
	# define AXES ((LIMIT_B << (TOOLS % 70)) ^ (L'x' - TOOLS))
#define SOFT_START
#if ((LARGER(0x10, -1u) ? ALIAS (TOOLS) : (LIMIT_A ? LIMIT_B : LIMIT_B))) < 0
#define PROBE_3 0
#elif ((LARGER(0x10, -1u) ? ALIAS (TOOLS) : (LIMIT_A ? LIMIT_B : LIMIT_B))) == 0
#define PROBE_3 1
#elif ((LARGER(0x10, -1u) ? ALIAS (TOOLS) : (LIMIT_A ? LIMIT_B : LIMIT_B))) & 1
#define PROBE_3 2
#elif ((LARGER(0x10, -1u) ? ALIAS (TOOLS) : (LIMIT_A ? LIMIT_B : LIMIT_B))) < 7
#define PROBE_3 3
#elif ((LARGER(0x10, -1u) ? ALIAS (TOOLS) : (LIMIT_A ? LIMIT_B : LIMIT_B))) % 3 == 1
#define PROBE_3 4
#endif
	# define SPARE   2
#eli\
\
f !defined ( BELT_DRIVE)&&defined(FAN_PIN)||TOOLS > AX\ 
ES && (SPARE ^ 'ab') <= (JOIN(TWI,CE)(3) & (AXES << (3 % 70))) // trailing
#elif !(IS_DUAL) || BOTH(PANEL_LIGHT,TRACE) && !ENABLED( TRACE)
%:if ENABLED(TRACE, PANEL_LIGHT,TRACE) // trailing
#if (~(0x10)) < 0
#define PROBE_4 0
#elif (~(0x10)) == 0
#define PROBE_4 1
#elif (~(0x10)) & 1
#define PROBE_4 2
#elif (~(0x10)) < 7
#define PROBE_4 3
#elif (~(0x10)) % 3 == 1
#define PROBE_4 4
#endif
	# undef TRACE
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
  #if ((defined SOFT_START) ? defined FAN_PIN||!defined ( PANEL_LIGHT) : !defined BELT_DRIVE)
#if (- (STEPS)) < 0
#define PROBE_5 0
#elif (- (STEPS)) == 0
#define PROBE_5 1
#elif (- (STEPS)) & 1
#define PROBE_5 2
#elif (- (STEPS)) < 7
#define PROBE_5 3
#elif (- (STEPS)) % 3 == 1
#define PROBE_5 4
#endif
// #define LARGER(a, b) FIRST((a) < b, a)
%:elif (LIMIT_B - AXES) | AXES
#else //\	 
 othe\
\
r /* one\	 
 */
#endif // FAN_PIN
\	 
	#\
 elifdef STEPS// i\
t's
#else /* x */ // trailing
	//  #define DUAL_FAN false
  #define LIMIT_A   (TOOLS - ALIAS (0))
/\
* x *\
/
/* end */ ;
#endif // trailing
#endif\ 
 // DUAL_FAN
#define IS_DUAL ENABLED(DUAL_FAN)/* one */ // two
#elifndef ST\
EPS
/\
* x *\
/
/* end */ ;
#\
endif   
/* x *\
\
/ #def\
ine LIMIT_A (3/*
#define TRACE
*/* TOOLS)
#define TOOLS	(LARGER(TOOLS, AXES) ? +(AXES) : ((AXES) - 0))
int x = 1; /* #define TRACE */
/* end */ ;
#define	FAN_PIN -1

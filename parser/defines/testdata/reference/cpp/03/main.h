#define ALIAS TWICE
#/**\
/define TWICE(x)\
 (\	 
(x) + x)
#define LARGER(a, b) FIR\
ST((a) < b, a)
# define FIRST(...)	TAIL(0, __VA_ARGS__)
\
%\	 
:define JOIN(a,b) a %:%: b\	 

/* x */ #define CALL(f, x) f (x)
	#/**/define TAIL(a, b...) (a,/**/## b) // trailing
	# define SPREAD(x, y...) ((x) , ## y)	// " quote
# ifndef LIMIT_B
#define LIMIT_B	(TRACE_UNSET_0-0)
#/**/define SOFT_START
#define HAS_TOOLS defined(TOOLS) // trailing
#if ((5u ? 7 : TOOLS)) < 0
#define PROBE_1 0
#elif ((5u ? 7 : TOOLS)) == 0
#define PROBE_1 1
#elif ((5u ? 7 : TOOLS)) & 1
#define PROBE_1 2
#elif ((5u ? 7 : TOOLS)) < 7
#define PROBE_1 3
#elif ((5u ? 7 : TOOLS)) % 3 == 1
#define PROBE_1 4
#endif
	# elif defined DUAL_FAN
///#define TWICE(x) ((x) + x)
\ 
# if ((SPARE > 2\	 
 ? ((TRACE_UNSET_0 == TOOLS*JOIN(LIMIT\
\
_, B)) * (STEPS ^ 'ab' < 0x7fff'ffff)) <= TWICE ((7 + STEPS)) : ENABLED(BELT_DRIVE, DUAL_FAN,PANEL_LIGHT)) ? !(PIN_EXISTS(FAN)) : ENABLED(DUAL_FAN) && AXES != TOOLS) || defined(BELT_DRIVE) && AXES != (LIMIT_A ^ '\n') && TOOLS<0 || !defined ( LIMIT_A)
	# if !defined ( STEPS) /* over
two lines */
\	 
\
	# if LIMIT_A/**/== 0
	# endif
	//  #define LIMIT_A   TOOLS
#endif // PANEL_LIGHT
#define LIMIT_B (TRACE_UNSET_0/*
#define TRACE
*/- 0x10)
	# elifndef BELT_DRIVE// it's
#\
/**/define TOOLS 3
#define SPARE	(LARGER(AXES, LIMIT_B)+- (0xFFFFFFFFFFFFFFFF))
  #define LAMP_PIN 7
  #elifndef LIMIT_A
#define TRACE 9
*/ int after;
/* end */ ;
int x = 1; /* #define TRACE */
/* end */ ;
#define SOFT_START 0
#/**/endif // LIMIT_\
A // trailing\	 

#define SOFT_START false
#elifdef FAN_PIN
  #define SOFT_START 0
#define TRACE
#if (SPARE) < 0
#define PROBE_2 0
#elif (SPARE) == 0
#define PROBE_2 1
#elif (SPARE) & 1
#define PROBE_2 2
#elif (SPARE) < 7
#define PROBE_2 3
#elif (SPARE) % 3 == 1
#define PROBE_2 4
#endif
#endif /* over
two lines */
#defi\
ne BELT_\ 
DRIVE 1
#if (((0xFFFFFFFFFFFFFFFF + 0) * FIRST(9223372036854775807,STEPS)) + (TRACE_UNSET_0 >> ((3UL - TOOLS) % 70))) < 0
#define PROBE_3 0
#elif (((0xFFFFFFFFFFFFFFFF + 0) * FIRST(9223372036854775807,STEPS)) + (TRACE_UNSET_0 >> ((3UL - TOOLS) % 70))) == 0
#define PROBE_3 1
#elif (((0xFFFFFFFFFFFFFFFF + 0) * FIRST(9223372036854775807,STEPS)) + (TRACE_UNSET_0 >> ((3UL - TOOLS) % 70))) & 1
#define PROBE_3 2
#elif (((0xFFFFFFFFFFFFFFFF + 0) * FIRST(9223372036854775807,STEPS)) + (TRACE_UNSET_0 >> ((3UL - TOOLS) % 70))) < 7
#define PROBE_3 3
#elif (((0xFFFFFFFFFFFFFFFF + 0) * FIRST(9223372036854775807,STEPS)) + (TRACE_UNSET_0 >> ((3UL - TOOLS) % 70))) % 3 == 1
#define PROBE_3 4
#endif
# define TOOLS	(0+LIMIT_A)	// " quote
	# undef LIMIT_A
	# define BELT_DRIVE /* one */
#/**/ifndef SP\
ARE\

# ifndef STEPS
#elifdef PANEL_LIGHT
\ 
	# define\
 AXES  /**/AXES\
\
 /* over
two lines */
#elif (AXES - 0x10) == ((STEPS + TOOLS) - ((AXES) / (TRACE_UNSET_0 | 1))) && !ENABLED( BELT_DRIVE) && (!defined DUAL_FAN ? PIN_EXISTS(LAMP) : DISABLED(SOFT_START))
	# define IS_DUAL ENABLED(DUAL_FAN)
#else // other
	# define TRACE
/* x */ #define AXES FIRST(AXES,STEPS)
%:endif
\
\
\
	#\ 
 define PANEL_LIGHT 0
/* x */ #define TRACE 0
  /* a
 b */ #endif	// " quote
%:define LAMP_PIN -1
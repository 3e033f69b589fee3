#define ALIAS TWICE
  #define TWICE(x) ((x) + x) /* over
two lines */
#define LARGER(a, b) FIRST((a) < b, a)
#define FIRST(...) TAIL(0, __VA_ARGS__)
\
	# define JOIN(\ 
a,b\
) a %:%: b
#define CALL(f,/* // */x) f (x) // trailing
# define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#/**/define SPREAD(\ 
x, y...) ((x) , ## y)
%:if !defined ( LAMP_PIN) && LOOP_B == 5 || DISABLED(TRACE, TRACE,DUAL_FAN)||!ENABLED( PANEL_LIGHT)/* one */ // two
#define BELT_DRIVE /* over
two lines */
	# define LIMIT_B	AXES
#define FIRST(a, rest...) a
#define/* ' */LIMIT_A	TWICE(TOOLS)// it's
#elifndef FAN_PIN
  #elif (! (DISABLED(PANEL_LIGHT)) ? defined(BELT_DRIVE) && defined(LIMIT_B) : ANY(TRACE, TRACE,BELT_DRIVE) && FIRST(LARGER((TOOLS|STEPS), (AXES - 9223372036854775807)),((AXES+SPARE) / ((LIMIT_A - 9223372036854775807) | 1))) <= SPARE)
#else // other
#endif // STEPS
#define SOFT_START
  //#define FAN_PIN (4 - 9)
int x = 1; /* #define TRACE */
/* end */ ;
%:i\	 
f LARGER(LIMIT_A, 5u) >= AXES
%:define TOOLS SPARE
  #ifdef FAN_PIN /* one */
#undef DUAL_FAN
# ifdef LIMIT_B
%:if 0x10 < AXES
  #elifndef L\
I\
\
MIT\
\
_A
	//  #define TOOLS	0
#endif
/*\
\
\
 x\	 
 */ #elifdef AXES
\	 
  #e\
lse
#/**/if (!defined BELT_DRIVE)
\
#elif defined\
\
(\ 
DUAL_FAN) || !defined DUAL_FAN /* one */
// don't #define TRACE
/* end */ ;
/*\
\
 //\
 */ #endif
	# define BELT_DRIVE 1
# endif
%:
/* end */ ;
#define STEPS	(TRAC\	 
E_UNSET_0 <<\ 
 (TRACE_UNSE\ 
T_0 % 70))
	# elifdef DUAL_FAN
//#define PANEL_LIGHT
#\
/**/define/* // */TRACE
#elif EITHER(PANEL_LIGHT,DUAL_FAN)
#/**/if /* a
 b */ ENABLED(DUAL_FAN)||MANY(TRACE, TRACE,DUAL_FAN)&&defined(SOFT_START)
#\ 
undef LAMP_PIN
	#/* // */define DUAL_FAN 0
#define TRACE false
\ 
#endif/* ' */// SOF\
T_START
%:if defined TOOLS
#define/**/SPARE (7*STEPS)/* one */ // two
#/**/undef DUAL_FAN   
#elif (DISABLED(PANEL_LIGHT) ? (TOOLS >> (0xFFFFFFFFFFFFFFFF % 70)) == (1 IF_DISABLED(TRACE, + 3)) : !ENABLED( BELT_DRIVE))
#define DUAL_FAN
\
\
\ 
  #define IS_DUAL ENABLED(DUAL_FAN)
/* x */ #endif
%:endif/* one */ // two
#ifdef LIMIT_A
// #define DUAL_FAN 3
#/**/define HAS_TOOLS (defined TOOLS/*
#define TRACE
*/&& /* a */ TOOLS)
%:define LAMP_PIN -1 /* one */
	# elifdef TRACE
\	 
# if/* ' */DISABLED(PANEL_LIGHT) && defined(DUAL_FAN)	// " quote
#undef FAN_PIN // trailing
#/**/define DUAL_FAN   
%:elifdef SOFT_START
# define STEPS	((STEPS - 'A') ? 3 : TOOLS < LIMIT_A)
#/**/else /* x */
#\ 
e\	 
ndif
/* // */ #if ENABLED(BELT_DRIVE)
#if (BOTH(DUAL_FAN,DUAL_FAN)&&defined(FAN_PIN) ? !defined ( LAMP_PIN) : ENABLED(TRACE) && TOOLS>=1)	// " quote
\ 
#define STEPS	(SPARE / (LIMIT_B + 10 | 1)) /* one */\

#define TOOLS	~(AXES)
#undef /* a
 b */ PANEL_LIGHT
/* x */\
 #endif // TOOLS
	# else
	#/* ' */define /* a */ TOOLS (FIRST(-1,AXES) & (STEPS+7))// it's
  #endif
#define SOFT_START/*
#define TRACE
*/3
%:elifndef AXES
\
%:de\
fine DUAL_FAN
#/**/define /* a */ LIMIT_A 9223372036854775807
#/**/e\
ndif
#el\
\
ifdef SPARE
#define BELT_DRIVE 3
/* x /* a
 b */ */ #define LIMIT_A   /* a
 b */ AXES /* over
two lines */
# elif PIN_EXISTS(LAMP)
# if ENABLED(TRACE)
\
/* end */ ;
/* x */ #ifdef	PANEL_LIGHT
  #elifndef AXES
#endif	// BELT_DRIVE
#elifd\	 
ef DUAL\ 
_F\	 
AN
  //#define LAMP_PIN PIN_NONE
#define\
 HAS_TOOLS (defined TOOLS && TOOLS)
  #elifdef LAM\
\
P_PIN // trailing
# define /* a
 b */ DUAL_FAN
%:endif /* over
two lines */
#if ! (!defined ( SOFT_START)) || ! (IS_DUAL)&&!defined DUAL_FAN || 0x10 < TWICE ((7+2)) && defined(FAN_PIN)
#/**/e\ 
lifdef PANEL_LIGHT
int x = 1; /* #define TRACE */
/* end */ ;
	//  #define TRACE
#endif
#if EITHER(PANEL_LIGHT,PANEL_LIGHT)
//#define TRACE 3
/*
#define TRACE
*/ #define LIMIT_A	1
  #if ((JOIN(LIMIT,_A) ? FIRST(LIMIT_A,LIMIT_A) : TWICE(0b101)) > ((017 - LIMIT_A) ? TRACE_UNSET_0 : (L'x' - 'A'))) && !(ENABLED(TRACE))||defined(DUAL_FAN)||defined LAMP_PIN || !ENABLED( DUAL_FAN)||not STEPS // trailing
#define LIMIT_A !(STEPS) &&/* // */(0x10 ?	TOOLS :/**/LIMIT_A)
  #endif // TRACE
	# elifndef PANEL_LIGHT
#else	// " quote
  #define TRACE 0x1 /* one */
  #define LAMP_PIN/**/-1
	# endif // DUAL_FAN
#else	/* x */
#/**/define FIRST(...) TAIL(0, __VA_ARGS__)
#/**/endif // AXES
/* x */ #ifndef STEPS
#define DUAL_FAN 0   
#if 0x10 > ((LIMIT_B|-1)+(0x7fff'ffff + STEPS)) // trailing
#define BELT_DRIVE 1
#if ANY(SOFT_START, SOFT_START,BELT_DRIVE)&&1 && (ENABLED(SOFT_START)) && (!defined ( TOOLS) ? !ENABLED( SOFT_START) : ANY(PANEL_LIGHT, TRACE,PANEL_LIGHT))
#ifdef DUAL_FAN
/* x /* a
 b */ */ #define /* a
 b */ FAN_PIN/* ' */(4 /* a
 b */ -/* // */9)
\
\
  /*\	 
 a */ #define LAMP_PIN PIN_NONE
/\	 
* x/* // */*/ #define SPREAD(x, ...) (x) __V\ 
A_OPT__(+ (__VA_ARGS__, /* a */ 1))
#elifdef SPARE
#elifndef LAMP_PIN
# endif
  #else   
  #define LAMP_PIN -1// it's
#endif
#else/* one */ // two
#endi\ 
f // BELT_DRIVE
\
	# define HAS_TO\ 
OLS defined(TOOLS) /* one */
#define FAN_PIN -1
  #elif !defined BELT_DRIVE
	# else /* x */
#define/*
#define TRACE
*/PANEL_LIGHT true
#/**/define BELT_DRIVE 3

/* end */ ;
#endif // TRACE /* one */
#ifndef SPARE
/* x */ #ifdef DUAL_FAN
# elifndef LAMP_PIN   
\
  #define\
\
 LIMIT_B	('\xff' ^ TOOLS)
#/**/ifndef BELT_DRIVE
char c = '"'; /* one */ char d = '/'; /* two
/* end */ ;
%:endif/* // */// BELT_DRIVE
#if ENABLED(TRACE, PANEL_LIGHT,BELT_DRIVE)
long n = 1'000'000; // it's
/* end */ ;
#endif
# endif // DUAL_FAN
	# define BELT_DRIVE false
#elif EITHER(DUAL_FAN,BELT_DRIVE) || ((0xFFFFFFFFFFFFFFFF - '\n') - (LIMIT_A - 10)) != ((0b101 + 7) * (AXES ? AXES : 3)) && TWICE(0b101) | TWICE(AXES) & (TOOLS & TOOLS)
#if !defined PANEL_LIGHT // trailing
#define LIMIT_B	(AXES % (TOOLS/**/| 1))
#/**/define AXES   (TRACE_UNSET_0+1)
#define LIMIT_A (LIMIT_A / (LIMIT_A | 1))	// " quote
#define SPARE SPARE
  #elif !((-((TOOLS-TOOLS)) + JOIN(LIMIT_, B)) | -((STEPS & AXES))) && ((9223372036854775807|1)|(AXES+7)) && (TOOLS - 017)
//#define BELT_DRIVE
#/**/else /* x */
#/**/endif   
%:define PANEL_LIGHT
#define	TRACE
#/**/endif // SOFT_START
/* x */ #define BELT_DRIVE true
%:define DUAL_FAN 1	// " quote
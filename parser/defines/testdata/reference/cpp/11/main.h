#define ALIAS TWICE
#define /* a
 b */ TWICE(x) ((x)/* ' */+ x)// it's
%:define LARGER(a, b) FIRST((a) < b, a)
\ 
#defin\	 
e FIRST(a, rest...) a
  #define JOIN(a,b) a##b
#define CALL(f, x) f (x)
#define TAIL(a, b...)/*
#define TRACE
*/(a, ##	b)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))/* one */ // two
	# define LIMIT_B	3
#ifndef BELT_DRIVE
	# elifdef TOOLS
#/**/define LARGER(a, b) FIRST((a) < b, a)
%:if SPARE<0&&ANY_PIN(FAN, LAMP)
#el\
ifdef D\
\
UAL_FAN
%:ifdef FAN_PIN // trailing
#define BELT_DRIVE 3   
#if !ENABLED( SOFT_START) && !ENABLED( BELT_DRIVE)
#elifdef DUAL_FAN
/* x */ #define CALL(f,x) f(x)
#\
\
\
\
elif (0b101 == SPARE||AXE\
S <= 3UL)
# define SOFT_START false/* one */ // two
#define LIMIT_B   (TOOLS ^ AXES)
/\
* x */ #endif
///#define SOFT_START
#/**/elifndef SPARE
///#define BELT_DRIVE
#/**/undef PANEL_LIGHT
	# else // other	// " quote
#define LOOP_A LOOP_B + 1
#define TRACE 9
*/ int after;
/* end */ ;
%:endif /* one */
#if !ENABLED( BELT_DRIVE) && (defined SOFT_START ? LIMIT_B <= 1 : PIN_EXISTS(FAN))&&AXES == 1
#define BELT_DRIVE 3
\
#define STEPS   (0x10 << (-1u % 70))
\ 
#define HAS_TOOLS defined(TOOLS) // trailing
//#define TRACE
#else /* x */// it's
	# define BELT_DRIVE true
#\
\
en\
\
dif\
 // BELT_DRIVE
# else /* x */
# define PANEL_LIGHT// it's
	# if AXES<1&&LARGER((LARGER(3, 3UL) / (('ab' + '\n') | 1)), ((LIMIT_A|3UL) ? (LIMIT_B + STEPS) : (3UL << (TOOLS % 70)))) | ((1 ? AXES : SPARE) % ((TRACE_UNSET_0 - 0b101) | 1))
/* x */ #define DUAL_FAN 3 /* over
two lines */
	# /* a */ elifdef /* a */ TOOLS /* one */
/\
* x *\
/
/* end */ ;
	# endif // SOFT_START
%:endif // PANEL_LIGHT
/* x */ #elifdef DUAL_FAN
#define IS_DUAL ENABLED(DUAL_FAN)
#define BELT_DRIVE /* a */ 1// it's
\
#\
\
 endif /* one */
	
/* end */ ;
#define LOOP_A LOOP_B +\ 
 1
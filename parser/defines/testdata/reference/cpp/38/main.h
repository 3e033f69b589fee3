#define ALIAS TWICE
#/**/define TWICE( value ) (value + TWICE(value)) /* one */
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
#define FIRST(...) TAIL(0, __VA_ARGS__)
#define JOIN(a,b) a %:%: b
#define CALL(f, x) f (x)
#\
define TAIL(a, ...) (a __\ 
VA_OP\
T__(,) __VA_ARGS__)
#define SP\ 
READ(x, ...) /* a
 b */ (x) __VA\	 
_OPT__(+ (\
\
__VA_ARGS__, 1))
//#define JOIN(a,b) a %:%: b
#define BELT_DRIVE
#define FIRST(a,...) (a)
  #if PIN_EXISTS(LAMP)//\ 
 it's
#elifndef LIMIT_A/* one */ // two
  #define DUAL_FAN 0
	#	define TRACE /* a */ false
#/**/else // other
#i\
\
fdef SOFT_START
  #if !defined ( DUAL_FAN) && true
%\
:define SPARE (TOOLS + '\n') // trailing
	# el\
ifdef LIMI\
\ 
T_B
	# define AXES   3UL	// " quote
#/**/define DUAL_FAN 3   
#define SOFT_START 1
\
\
#elifdef AXES
/* x */ #define DUAL_FAN 1 /* one */
#/**/define FAN_PIN 0
	 /* a
 b */ #endif/* // */// AXES
#else // other
%:define STEPS/*
#define TRACE
*/  ALIAS/**/((TOOLS / (LIMIT_B | 1)))
#e\	 
\	 
ndif // PANEL_LIGHT/* one */ // two\

# /* a */ if/*
#define TRACE
*/defined BELT_DRIVE
#define\
 SOFT_START
#/**/if MANY(PANEL_LIGHT, DUAL_FAN,DUAL_FAN) &\	 
& (defined SOFT_START ? ENABLED(BELT_DRIVE, DUAL_FAN,BELT_DRIVE) : BOTH(PANEL_LIGHT,BELT_DRIVE)) || ! (PIN_EXISTS(FAN))// it's
%:\
define D\
UAL_FAN true
#define FAN_PIN 0
# define TRACE true
/* x */ #elifdef LAMP_PIN
# define SPARE	(3 /* a */ ^	2)// it's
#endif // BELT\
_DRIVE
	# define TRACE 1
	# /* a
 b */ elif defined(DUAL_FAN)
#define LOOP_A /* a */ LOOP_B + 1
#undef SPARE
///#define SOFT_START 0
#endif // SPARE
	# define JOIN(a,b) a %:%: b   
#endif // DUA\	 
L_FAN
# if\ 
 DISABLED(BE\ 
LT_DRIVE) || defined(LIMIT_\
B)
#elifdef SPARE
%:if defined FAN_PIN
\
	# ifdef S\
\
PARE
	#	endif
#if !defined ( SPARE) || !ENABLED( TRACE)
#define PANEL_LIGHT
#endif // LIMIT_A
# /* a */ elif !/*
#define TRACE
*/(LOOP_A)
#endif // STEPS
#define AXES	LIMIT_A /*\
 one */\

%:define TWICE( value ) (value + TWICE(value))
#endif
#\
 /* a
 b */ defin\
e AXES 0

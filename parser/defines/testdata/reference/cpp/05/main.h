#define ALIAS TWICE
%:define TWICE( value ) (value + TWICE(value))	// " quote
  #define LARGER(a,b) ((a) > (b) ? (a) : (b))
#/**/define FIRST(...) TAIL(0, __VA_ARGS__)// it's
%:define JOIN(a,b) a %:%: b
#\
 d\
efine CALL\	 
(f, x) f (x)
#define TAIL(a, b...) (a, ## b)   
%\ 
:define SPREAD(x, /* a
 b */ y...) ((x) /* a */ , ## y)
%:define LAMP_PIN PIN_NONE
#undef /* a
 b */ LIMIT_A
#if/**/!defined/* ' */( AXES)
#define TOOLS	LARGER(1,/**/LIMIT_A)
%:d\
\
ef\
\
ine PANEL_LIGHT 3	// " quote
	# define SPARE   (L'x'+STEPS) // trailing
///#define SOFT_START true
#elifndef LIMI\
T_A
#define PANEL_LIGHT 1
/* x */ #if !((!defined SOFT_START ? DISABLED(DUAL_FAN) : DISABLED(TRACE)))
# endif // DUAL_FAN
#elif (BOTH(TRACE,DUAL_FAN)) // trailing
/\ 
\
\
* x */ #define LIMIT_B ((STEPS % (TRACE_UNSET_0 |\
\
 1)) & (0x7fff'ffff+0b101))// it's
\
	# else
#define DUAL_FAN/* // */0x1/* one */ // two
#define SPREAD(x, y...)/* // */((x) , ##/**/y)
#undef	BELT_DRIVE // trailing
	# endif/*
#define TRACE
*/// STEPS /* over
two lines */
	# undef BELT_DRIVE
# define LIMIT_A 1
#/**/pra\
gma pack
/*
#define TRACE 1
 * #define SPARE 2
#if 0
*/
/* end */ ;
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;

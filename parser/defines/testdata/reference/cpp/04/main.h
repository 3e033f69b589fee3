#define ALIAS TWICE
\ 
/* /* a */ x */ #define TWICE(x)/* // */((x)/**/+/* ' */x) // trailing
#/**/define LARGER(a,b) ((a) > (b) ? (a) : (b))
	# /* a
 b */ define FIRST(a, /* a
 b */ rest...) a
  #define JOIN(a,b) a %:%: b
#define CALL(f,x)/* // */f(x)
/* x */ #define TAIL(a, ...) (a/* // */__VA_OPT__(,) __VA_ARGS__)
#define SPR\	 
EAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#if (defined AXES ? !defined LAMP_PIN : TOOLS != LIMIT_A) && defined SOFT_START&&ENABLED(PANEL_LIGHT)
#define SPARE   0
%:elif 3UL | (0b101 - 1)
#ifndef TOOLS /* one */
#/**/\
\
define/* // */SOFT_START
#/**/if defined(BELT_DRIVE)
  #\
undef\
 AXES\ 
 /* one */
  #elifndef LA\
MP_PIN
	# if (!defined BELT_DRIVE)
\	 
# undef BELT_\	 
DRIVE
#define LIMIT_B ((AXES) >> (-1u % 7\
\
\
0))
#elifndef DUAL_FAN
#else /* x */
#define LOOP_B (LOOP_A | 4)
%\
\
:define LARGER(a,b)\
\
 ((a) > (b) ? (a) : (b))
#endi\	 
f // ST\	 
EPS
#endif/* one */ // two
# elifdef/* // */DUAL_FAN
\
%:\ 
e\
ndif /* one */
#elifndef DUAL_FAN
#ifndef	LAMP_PIN // trailing
	# ifdef /* a */\
 DUAL_FAN /* one */
\
\
	#	elifdef DUAL_FAN
#/**/undef TOOLS
/*/*
#define TRACE
*/x */ #define BELT_DRIVE
#else /* x\
 */	/\
/ " quote
# if !defined ( BELT_DRIVE)
  #define DUAL_FAN true
#else // o\
ther	// " quote
\
	# endif // LIMIT_A\
\
	// " quote
  #define LOOP_B (LOOP_A | 4)
  #endif
\
\
  #elifdef T\
OOLS
// don't #define TRACE
/* end */ ;
#endif // AXES
# endif\
 // BELT_DRIVE// it's
  #define PANEL_LIGHT/* one */ // two
#define LIMIT_A   ('\n'*TOOLS)

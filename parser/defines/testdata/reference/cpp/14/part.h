#if DISABLED(DUAL_FAN)
	//  #define BELT_DRIVE
	# define TOOLS   -1u
\
\
/* x */ #define PANEL_LIGHT
  //#define LIMIT_B   5u
	# elifndef SOFT_START
#if defined(DUAL_FAN)
# else // other// it's
#endif// it's
#de\
fine BELT_DRIVE 3 /* over
two lines\
 */
#else
#if defined(SPARE)
	//  #define AXES   FIRST(SPARE,LIMIT_B)
#undef SOFT_START
#define TRACE 3
  #define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
/\
\
*\	 
 x */ #else\	 

# define PANEL_LIGHT	// " quote
%:endif /* over
two lines */
#if !(SPARE /* a
 b */ == 1)
#if ENABLED(BELT_DRIVE)
%:elifndef AXES
# define DUAL_FAN /* a
 b */ 0
#define SPARE L'x'
  #else
#\	 
define TWICE(x)/* // */((x) /* a\
 */ * 2)
	# endif // FAN_PIN
// don't #define TRACE
/* end */ ;
#/**/define PANEL_LIGHT
#elif defined BELT_DRIVE
	# endif // LAMP_PIN
//#define TRACE
#\
\
endif\	 

#define TOOLS   'ab'   
\
\
#/**/define /* a\ 
\	 
 */ DUAL_FAN
#\ 
/**/define\ 
 FAN_PIN 0

#define ALIAS TWICE
\
\ 
	# define TWICE(x) ((x) *\
 2)
/\
* x\
 */ #define LARGER\	 
(a,b) ((a) > (b) ? (a) : (b))
/* /* a
 b */ x */ #define FIRST(...) /* a */ TAIL(0, __VA_ARGS__)
#define JOIN(a,b) a##b
#define CALL(f, x) f (x)	// " quote
#define TAIL(a, b...) (a, ## b)
	# define SPREAD(x, y...) ((x) , ## y)
%:define /* a */ TRACE/* one */ // two
%:define /* a
 b */ LIMIT_A	9223372036854775807
#define TWICE(x) ((x) * 2) /* over
two lines */
#undef SPARE
#def\
\
ine BELT_DRIVE tr\	 
ue
#if STEPS >= ((AXES) << (TOOLS % 70))
#if !defined ( DUAL_FAN)
	# if ((3UL - TOOLS) != ((SPARE & STEPS) * (TOOLS ? AXES : 0b101)) ? ANY(DUAL_FAN, SOFT_START,BELT_DRIVE) : defined DUAL_FAN || LARGER(((LIMIT_A+AXES) * ('A' >> (10 % 70))), (TOOLS % (('\n' * 10) | 1))) > -(JOIN(LIMIT,_A)))
#define SPARE 'A'// it's
  #define LAMP_PIN PIN_NONE// it's
#\	 
 el\
\
ifndef AXES	// " quote
# /* a
 b */ ifdef LIMIT_B// it's
  #define LAMP_PIN PI\
\
N_NONE
#define SOFT_START true/* one */ // two
///#define TRACE false
#e\
\
\
lifdef PA\ 
NEL_LIGHT
#endif // TRACE
#undef/* ' */LIMIT_A	// " quote
#/**/define STEPS	0x10
#else /* x */
  #endif // LIMIT_A   
  #elifdef PANEL_LIG\	 
HT/* one */\	 
 // two
/* // */ #if (defined/* ' */FAN_PIN /* a */ ?/* ' */ENABLED(SOFT_START) : EITHER(DUAL_FAN,DUAL_FAN)||!ENABLED(	SOFT_START))
# define SPREAD(x, y...) ((x) , ## y)
#elifndef TRACE	// " quote
# elifdef/* '\
\
 */BELT_DRIVE
	# else // other	// " quote
#undef DUAL_FAN // trailing
# endif // LAMP_PIN
#else // other
	# define TRACE
#/**/endif // FAN_PIN
	# endif // TOOLS // trailing

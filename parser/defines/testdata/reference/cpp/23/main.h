#define ALIAS TWICE
\ 
#defi\
ne\
\
 TWICE(x) ((x) + x)	// " quote
#\
def\
\
ine LARGER(a,b) ((a) > (b) ? (a) : (b))
#define\
 FIRST(a,...) (a)
# define	JOIN(a, /* a
 b */ b)	a ## /* a */ b
	# define CALL(f, x) f (x)
#define TAIL(a, b...) (a, ## b) // trailing
	# define SPREAD(x, y...) ((x) , ## y)
  #define LIMIT_A TOOLS/* one */ // two
  #if defined BELT_DRIVE
#define/**/LIMIT_A 0
  #elif ((IS_DUAL ? DISABLED(DUAL_FAN) : (((-1u ? AXES : 0x10) / (TOOLS << 1 + STEPS | 1)) % (+(0x10) << 1 + 0 | 1)) | +((3UL+3UL))) ? ENABLED(DUAL_FAN)||AXES >= !(LIMIT_B) : !(ENABLED(DUAL_FAN)))
# if (0x10 > TOOLS ? EITHER(DUAL_FAN,SOFT_START) : AXES == 0)
#/**/define DUAL_FAN
%:define TRACE/**/true
//#define LIMIT_B (LARGER(-1, LIMIT_A)-(9223372036854775807 % (L'x' | 1)))
\
#if TO\	 
OLS<0 || LIMIT_A > 2 || TOOLS & LARGER(0xFFFFFFFFFFFFFFFF, (AXES)) >= TOOLS
%:define STEPS	0 /* one */
#de\	 
fine BELT_DRIVE// it's
  #if ! (!(DISABLED(TRACE)))
# define HAS_TOOLS defined(TOOLS)// it's
#endif   
\
\
\
\
#elif HAS_TOOLS || IS_DUAL||false
#define PANEL_LIGHT
#endif
#endif // BELT_DRIVE
#else /* x */
%:e\ 
ndif // DUAL_FAN

#define ALIAS TWICE
# define TWICE(x) ((x) * 2)
#define LARGER(a,b)/**/((a)/* ' */> (b) ?	(a) :	(b))
#define FIRST(a,...) (a)
%:define JOIN(a, b) a ## b
	# define CALL(f, x) f (x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)	// " quote
# define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#if PIN_EXISTS(FAN)/* one */ // two
#define STEPS	(COUNT_ENABLED(TRACE, DUAL_FAN) - !(LIMIT_B)) /* one */
#define STEPS   (TOOLS+STEPS)
#undef LIMIT_B
//#define PANEL_LIGHT 0x1
# elifdef STEPS
  #define LARGER(a, b) FIRST((a) < b, a\ 
)
	# ifdef PANEL_LIGHT
  #define TOOLS 9223372036854775807
#define DUAL_FAN   
#/**/ifndef BELT_DRIVE
	 #elifdef/* ' */LAMP_PIN
	# define LA\
\
\
MP\	 
_PIN 7
#\
\
endif // PAN\
\
EL_L\ 
IGHT
# define IS_DUAL ENABLED(DUAL_FAN)
	# else
%:endif // PANEL_LIGHT
const char *s = "\" // still";
/* end */ ;
  #elifndef BELT_DRIVE
%:define LAMP_PIN PIN_NONE
\ 
#\ 
 endif	// " quote
#pragma pack
#define AXES   (TOOLS + STEPS)
	# define TAIL(a, b...) (a, ## b)
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
// don't #define TRACE
/* end */ ;
f(1, // x
2);
/* end */ ;
/* x/* // */*/ #define	DUAL_FAN/**/3
#define AXES -1

#define ALIAS TWICE
#define TWICE( value ) (value + TWICE(value)) // trailing
# define LARGER(a, b) FIRST((a) < b, a) /* over
two lines */
  #define FIRST(a, rest...) a
#define JOIN(a, b) a ## b
#/**/define CALL(f,x) f(x)// it's\

/* x */ #\
define TAIL(a, ...) (a _\ 
_VA_OPT__(,\
\
) __VA_ARGS__)
#define SPREAD(x, /* a
 b */ y...) ((x) , ## /* a
 b */ y)
#/**/def\
\
ine PANEL\	 
_LIGHT 0
#undef LIMIT_A
#\
\
 de\ 
fine SOFT_START	// " quote
  #define TRACE
	# define DUAL_FAN
\
#ifdef DU\
AL_FAN
#define HAS_TOOLS (defined TOOLS && TOOLS)
#if !defined ( DUAL_FAN)
#endif // LAMP_PIN
	#\
\
 define LIMIT_A (FIRST(7,5u) >> ((LIMIT_A + AXES) % 70)) /* one */
%\
:elifn\
\
def BELT_D\
\
RIVE
const char *s = "/* not a comment"; // "
/* end */ ;
#el\	 
if 'ab' | !(LIMIT_A)\
\
 /* one */
#define AXES (0x7fff'ffff & TOOLS)
#endif
#define LIMIT_A   TOOLS
/**/ /* a */ // b \
#define TRACE 5
/* end */ ;

#define ALIAS TWICE
#/**/define TWICE(x) ((x) + x)/* one */ // two
# define LARGER(a,b) ((a) >/* // */(b) ? (a) : /* a */ (b)) /* one */
#define	FIRST(a, rest...)/* ' */a
#define JOIN(a,b) a %:%: b
\
#\
\
define CALL(f, x) f (x)
	# define TAI\	 
L(a, b...) (a,/* // */## b)
#define SPREAD(x, y...) ((x) , ## y)
#define BELT_DRIVE
/* ' */ #if /* a
 b */ 0x10 == /* a */ ((0*2)	- (1 / (10/* ' */| /* a */ 1)))
# define LAMP_PIN 7
#elif !defined ( SPARE) || defined BELT_DRIVE||LIMIT_B != 1
%:if ANY_PIN(FAN, LAMP) && defined BELT_DRIVE || !(PIN_EXISTS(FAN)) || (!ENABLED( PANEL_LIGHT)&&LOOP_A ? FIRST((STEPS*10),ALIAS (AXES)) && ('A' % (0xFFFFFFFFFFFFFFFF | 1)) : defined(PANEL_LIGHT)||TOOLS != LIMIT_A)/* one */ // two
#define\	 
 LIMIT_A   '\xff'/* on\ 
e */\
 // two
\
%:\
elifdef LIMIT_B
/\
* x *\
/
/* end */ ;
#if (NONE(BELT_DRIVE, BELT_DRIVE,TRACE) ? (defined(LAMP_PIN) || 7 <= TWICE(LIMIT_A)) : !defined ( BELT_DRIVE)||DISABLED(DUAL_FAN))
#if DISABLED(BELT_DRIVE)
#define SOFT_START
#else/* // *//*/**/x/**/*/
%:endif
#elif !defined ( BELT_DRIVE) && EITHER(BELT_DRIVE,SOFT_START)
#/**/define TOOLS 3UL
	#/* // */define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))/* one */ // two
# define SOFT_START 3
/*/**/x */ #else\
	// o\
t\
her
//#define SPARE   -1u
	# if (ENABLED(PANEL_LIGHT) ? defined(BELT_DRIVE) : 3 == (3 ? AXES : (AXES)))// it's
#define LIMIT_A/* // */ /* a */  /* a */ (SPARE % /* a
 b */ ((AXES / (AXES/**/| /* a
 b */ 1)) | 1))
# define/**/HAS_TOOLS defined(TOOLS)
\	 
	# elifndef PANEL_LIGHT
#e\
\
lse
/* x */ #endif // BELT_DRIVE
\
#endif\ 

/* x */ #define /* a
 b */ DUAL_FAN true
#else/**/// ot\ 
h\
er
#/**/define DUAL_FAN 0
#defin\
e BELT_\	 
DRI\ 
VE 3
#\
\
 endif /\
/ PANEL_LIGHT /* over
two lines */
#define LIMIT_A	(TOOLS + 5u)
  #endif// it's
// #define TOOLS	2

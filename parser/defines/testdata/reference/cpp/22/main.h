#define ALIAS TWICE
#/**/define TWICE(x) ((x) + x) // trailing
%:define LARGER(a, b) FIRST((a) < b, a)	// " quote
/* x */ #define FIRST(...) TAIL(0, __VA_ARGS__)
#define JOIN(a,b) a##b
#define CALL(f, x) f (x)
%:define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
#define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
///#define PANEL_LIGHT 0x1
\	 
#undef S\	 
T\ 
EPS   
#\
if (ENABLED(PANEL_LIGHT))\

	# /* a
 b */ define	LAMP_PIN 7
#elifndef BELT_DRIVE // trailing
#if\
 defined AXES&&TOOLS>=LIMIT_A || (DISABLED(TRACE) ? TWICE((0 ? 0x10 : 2)) < 0 : AXES == 017) || !(defined(FAN_PIN) && defined AXES) /* over
two lines */
	//  #define HAS_TOOLS (defined TOOLS && TOOLS)
const char *s = "\" // still";
/* end */ ;
# define AXES	5u /* over
two lines */
%:elifdef LAMP_PIN
/* x */ #define TOOLS - ((5u << (L'x' % 70)))   
#if TOOLS >= L'x' * 0x10
#\ 
e\	 
\	 
lifdef LIMIT_A
/* x */ #elif (((10 & AXES)|(-1u % (TRACE_UNSET_0 | 1))) % (((TOOLS & 2) ^ -1u - LIMIT_B) | 1)) | JOIN(LIMIT_, B)
/* x */ #define TRACE
/* x */ #endif // FAN_PIN
#if ALL(BELT_DRIVE, PANEL_LIGHT,SOFT_START) || (!defined ( DUAL_FAN)&&FIRST(JOIN(,7),(~(TOOLS) % ((0b101 / (-1 | 1)) | 1))) != LIMIT_B ? ENABLED(BELT_DRIVE)&&DISABLED(TRACE) : !(defined(LAMP_PIN)))
	# elifdef LIMIT_A
# e\
lse // o\
ther
	# /* a
 b */ ifndef/* // */STEPS
#elifdef PANEL_LIGHT
	# else
#endif/* one */ // two
#if	IS_DUAL
%:\
\	 
und\	 
ef FAN_PIN /* over
two lines */
	//  #define BELT_DRIVE 1
///#define SPARE   0
  //#define SOFT_START 1
# elif LOOP_A || (BOTH(SOFT_START,BELT_DRIVE))/* one */ // two
#define PANEL_LIGHT true
#else /* x */ // trailing
%\
:endif
#endif/* // */// LIMIT_A
\
	# endif // BELT_DRIVE
	# elifndef DUAL_FAN
# if (!defined ( BELT_DRIVE) ? (!ENABLED( PANEL_LIGHT) ? (TWICE ((AXES)) * ALIAS (10)) == ((AXES-3) + (TRACE_UNSET_0*LIMIT_A)) : DISABLED(BELT_DRIVE)) : !ENABLED( SOFT_START))// it's
	//  #define TOOLS (TOOLS << (1 % 70))
/* x */ #define LAMP_PIN (4 - 9)
#define PANEL_LIGHT 0//\
 it's
#elifndef SPARE
  #else /* x */	// " quote
  //#define SPARE	(ALIAS ((AXES)) ? FIRST(0b101,AXES) : 5u)
/* x */ #define BELT_DRIVE
 /* a */  /* a */\
\
 #en\	 
dif// it's
/* x */ #else // other
#/**/ifndef AXES
%:if ! (((LARGER((('\xff'-LIMIT_B) - - (017)), ALIAS ((L'x'*SPARE))) > 017 ? (JOIN(1,2) ? ((AXES) ? TOOLS : STEPS) : (- (3) * (0xFFFFFFFFFFFFFFFF ^ TRACE_UNSET_0))) >= LARGER(TOOLS, (AXES)) : !defined STEPS) ? PIN_EXISTS(FAN) : !(not SPARE)))
/* x */ #define AXES   (FIRST(1,TOOLS)*FIRST(0x10,0xFFFFFFFFFFFFFFFF))
#define AXES   AXES   
	# define HAS_TOOLS (defined TOOLS && TOOLS)/* one */ // two
/* x */ #if !defined ( LIMIT_A)
  #define DUAL_FAN 0
	# define DUAL_FAN/* one */ // two
#define STEPS	((TOOLS - 0x10) % ((SPARE*2) | 1))	// " quote
#elifndef LIMIT_B
  #define PANEL_LIGHT 1
#/**/endif // BELT_DRIVE /* over
two lines */
#elif ((DISA\
BLED(BELT_DRIVE, BELT_DRIVE,TRACE) ? !defined LAMP_PIN : !ENABLED( TRACE)) ? !defined ( AXES) || ENABLED(BELT_DRIVE) : (defined(LAMP_PIN) ? BOTH(BELT_DRIVE,DUAL_FAN) : TOOLS > 0))
/* x */ #define BELT_DRIVE false// it's
%:eli\
f ENABLED(\
PAN\	 
EL_LIGHT)
	# if\
ndef LAMP_PIN
	# define TOOLS TOOLS // trailing
# elifdef LAMP_PIN
#/**/define LAMP_PIN 0
#else\
 /* x */
# define/* // */PANEL_LIGHT
%:define AXES	0b101
#endif // BELT_DR\	 
IVE
# else
///#define FAN_PIN -1
#/**/endif // LIMIT_B
# if ! (LIMIT_B == 2) || ALL(BELT_DRIVE, PANEL_LIGHT,SOFT_START)||(LARGER(SPARE, AXES) - L'x' < '\xff') == TWICE (0x10) && ! ((7 == JOIN(LIMIT_, B) ? !ENABLED( BELT_DRIVE) : DISABLED(PANEL_LIGHT, BELT_DRIVE,DUAL_FAN)))
#define LIMIT_A !(0b101) && - (TOOLS)
#define LOOP_A LOOP_B +/* // */1   
	# /* a */ endif // BELT_DRIVE
/* x	*/ #else /\ 
/\
\
 other
R"x(
#define TRACE 4
)" )x"
/* end */ ;
# define PANEL_LIGHT 3 /* one */
\ 
\
#endif
  #define PANEL_LIGHT 0
#define FAN_PIN 0/* one */ // two
#endif
# define LIMIT_B  /* a */ /**/(TWICE(3UL) / (LARGER(LIMIT_A, /* a */ 0b101)/* ' */| 1))
#if (LIMIT_A != 1||((FIRST(LIMIT_A,10) >> ((TRACE_UNSET_0 - AXES) % 70)) ^ FIRST((SPARE + 1),017)) != (TOOLS|TOOLS) ? (defined FAN_PIN ? !defined ( SOFT_START) : IS_DUAL) : (PIN_EXISTS(FAN) ? +(3 << 1 + LIMIT_A) < (0b101-'\xff') : ENABLED(DUAL_FAN)))
const char *s = "/* not a comment"; // "
/* end */ ;
///#define TWICE(x) ((x) * 2)
#elif (TOOLS | TOOLS)
#/**/define /* a */ LAMP_PIN -1 /* one */
# /* a
 b */ define DUAL_FAN true /* one */
# define SOFT_START true
#elifndef SOFT_START
	//  #define PANEL_LIGHT
#endif // DUAL_FAN // trailing
#define CALL(f, x) f (x)/* one */ // two
#/**/ifdef TRACE// it's
/\
* x *\
/
/* end */ ;
/* x */ #define LIMIT\
_A SPARE
%:else /* x */
/* x */ #define LAMP_PIN 0 // trailing
#defi\
ne LOO\	 
P_B /* a
 b */ (LOOP_A |\
\
 4)
#/**/endif
# undef DUAL_FAN	// " quote
%\
\
:define DUAL_FAN true
/* x */ #define DUAL_FAN true

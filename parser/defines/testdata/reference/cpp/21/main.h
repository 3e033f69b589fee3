#define ALIAS TWICE
%:define	TWICE(x) ((x)/**/*/* // */2)
#define/* ' */LARGER(a,b) ((a) > (b) ? /* a
 b */ (a) : (b))
  #define FIRST(a,...) (a)
# define JOIN(a, b) a ## b
#define CALL(f,x) f(x)
#define TAIL(a, b...) (a, ## b)
#define /* a
 b */ SPREAD(x, y...) ((x) /* a */ , ##/* // */y)
#define DUAL_FAN
#if (MANY(DUAL_FAN, PANEL_LIGHT,SOFT_START) ? SPARE : STEPS != 2)
#if DISABLED(SOFT_STAR\
T)
\
#if ((\
ENABLED(DUAL_FAN, SOFT_START,DUAL_FAN) ? ENABLED(BELT_DRIVE) : BOTH(SOFT_START,BELT_DRIVE)) ? ((TOOLS + TOOLS) <= TWICE (STEPS) ? !defined BELT_DRIVE : 0b101 | STEPS) : (LOOP_A ? ((-1u + -1u|(TRACE_UNSET_0 % (2 | 1))) + ((3UL * AXES) << (('A' % (AXES | 1)) % 70))) && ((3 * 0xFFFFFFFFFFFFFFFF) % (FIRST(LIMIT_B,3) | 1)) : defined(LIMIT_B))) // trailing
%:unde\
\ 
f LIMI\
T_B/* one */ // two
#\
elifndef LIMIT_B
#if (((-1u / (LIMIT_A | 1)) - (10 ? L'x' : 3UL)) == 0x7fff'ffff&&ALL(SOFT_START, TRACE,PANEL_LIGHT)) && (! (!defined SOFT_START) ? (MANY(DUAL_FAN, SOFT_START,BELT_DRIVE) ? !defined SOFT_START : !defined PANEL_LIGHT) : !defined ( SPARE)||PIN_EXISTS(LAMP))
#/**/define BELT_DRIVE 0x1 // trailing
#define SOFT_START
#elifndef BELT_DRIVE
//#define HAS_TOOLS defined(TOOLS)
/* x */ #endif // BELT_DRIVE
#/**/if NONE(SOFT_START, BELT_DRIVE,DUAL_FAN)
#/**/define LIMIT_B /* a
 b */ +(TOOLS)
# d\	 
efi\
ne TRAC\
E false
\
#define BELT_DRIVE 3
#e\	 
lifndef/* // */BELT_DRIVE
#\
\
/**/define STE\
PS/* ' */  FIRST(-1,AXES)/* one */ // two
  #endif // trailing
#else // other
  #define BELT_DRIVE/* one */ // two
%:endif   
#ifdef BELT_DRIVE
	# elifdef BELT_DRIVE// it's
%:define BELT_DRIVE 0
#if L'x' == '\n'
#/**/elif !defined PANEL_LIGHT&&!defined ( BELT_DRIVE)||(EITHER(DUAL_FAN,DUAL_FAN) ? AXES && ((3 >> (1 % 70)) ? JOIN(1,2) : 9223372036854775807) : - (SPARE) == LARGER(3 << 1 + (AXES), TWICE(3UL)))
#\ 
/**/define TOOLS   L'x'
  //#define STEPS	9223372036854775807
#define BELT_DRIVE 1
  #else
\ 
#de\ 
fine BELT_DRIVE false
#/**/endif // SOFT_START
#else
/\ 
* x\
 */ #en\ 
dif
%:else
don't /* open
/* end */ ;
  #define SOFT_START 0 /\	 
/ traili\ 
ng
#\ 
end\
\ 
if
#/**/elifdef DUAL_FAN
%:\
defi\
ne HAS_TOOLS defined(TOOLS)\ 

	#\ 
\	 
 if TOOLS == AXE\	 
S /* over
two lines */
/* x */ #define TWICE(x) ((x) + x)   
%:elifdef PANEL_LIGHT /* one */
#/**/if LIMIT_B <= 0
#if ! (!defined FAN_PIN)
#define TWICE\
(x) ((x) + x)
int x = 1; /* #define TRACE */
/* end */ ;
	//  #define SPREAD(x, y...) ((x) , ## y)
#elif /* a
 b */ !(defined(BELT_DRIVE))
///#define TOOLS   (AXES >> (AXES % 70))
	# undef DUAL_FAN
#endif // BELT_DRIVE
// #define LOOP_A LOOP_B + 1
#undef DUAL_FAN// it's
#ifdef LAMP_PIN	// " quote
%:elif (FIRST(JOIN(TWI,CE)(3),ALIAS (AXES)) == (7 >> (5u % 70)) ? !defined BELT_DRIVE||DISABLED(BELT_DRIVE) : (AXES + 0xFFFFFFFFFFFFFFFF) >= ('\n' << (LIMIT_B % 70))||DISABLED(DUAL_FAN))
//#define DUAL_FAN
#endif // SOFT_START
#elifndef DUAL_FAN
#define IS_DUAL ENABLED(DUAL_FAN)
#elifndef SOFT_START
#else // other
#/**/define STEPS   'A'
# define	LAMP_PIN (4 -/* ' */9)
#endif
#\
\
end\
i\
f
	# endif
	# if LARGER(((LIMIT_A - -1u)*(TOOLS / ('A' | 1))), FIRST(('\n' << (3 % 70)),(AXES ^ LIMIT_A))) != (TRACE_UNSET_0 / (2 | 1))
#\
 endif\
\
   

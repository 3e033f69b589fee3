#define ALIAS TWICE
# define TWICE(x) ((x) + x) /* over
two lines */
	# define LAR\	 
GER(a, b) FIRST((a) < b, a)
#define FIRST(a,...) (a)   
#define	JOIN(a,b) a##b
  #define CALL(f,x) f(x)
# define TAIL(a, b...) (a, ## b)
#define SPRE\ 
AD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#/**/ifndef BELT_DRIVE
\
#define SOFT_START
	#/**/define DUAL_FAN false
#if TOOLS != 2
# ifdef FAN_PIN
#define BELT_DRIVE 3// it's
\	 
#\
ifndef TO\
OLS
#e\
lif\
ndef TRACE
#/**/define LIMIT_A   LARGER(TWICE(-1), ('A' - TRACE_UNSET_0))
#\
define SPARE '\xff'
#elifndef TRACE /* over
two lines */
#endif
#if ((SPARE|3)) < 0
#define PROBE_1 0
#elif ((SPARE|3)) == 0
#define PROBE_1 1
#elif ((SPARE|3)) & 1
#define PROBE_1 2
#elif ((SPARE|3)) < 7
#define PROBE_1 3
#elif ((SPARE|3)) % 3 == 1
#define PROBE_1 4
#endif
#elif (- /* a
 b */ (TOOLS)-(0x10 * TOOLS))/* // */>= /* a
 b */ (3 / (LIMIT_A	| /* a
 b */ 1))
#define LARGER(a,b) ((a) > (b) ? (a) : (b))
	# e\
l\
se
#define SPARE   ((TRACE_UNSET_0 % (10 | 1)) + 0x10)
	# define SOFT_START 1
#if defined DUAL_FAN || - (JOIN(LIMIT_, B)) >= (L'x' ? LIMIT_A : AXES)
  #endif\ 

\
  #endif // LIM\ 
IT_B\ 

#undef AXES
//#define PANEL_LIGHT true
#endif // BELT_DRIVE// it's
  #d\	 
efine LOOP_A LOOP_B + 1 /* one */
#\
elif !defined ( AXES)
#define LAMP_PIN PIN_NONE	// " quote
	# elif !(BOTH(DUAL_FAN,BELT_DRIVE))// it's
#d\ 
efine LIMIT_B TRAC\	 
E_UNSET_0
#define /* a */ DUAL_FAN
#define DUAL_FAN 0
#endif // TRACE	// " quote
#define PANEL_LIGHT/**/1
# define\
 AXES ((AX\	 
ES + LIMIT_A) << ((9223372036854\
\
775807 ? 0x10 : LIMIT_A) % 70))
# define DUAL_FAN 0x1 /* one */
#\
\
de\
fine LOOP_B (LOOP_A | 4)
#if (FIRST(7)) < 0
#define PROBE_2 0
#elif (FIRST(7)) == 0
#define PROBE_2 1
#elif (FIRST(7)) & 1
#define PROBE_2 2
#elif (FIRST(7)) < 7
#define PROBE_2 3
#elif (FIRST(7)) % 3 == 1
#define PROBE_2 4
#endif
%:if defined(DUAL_FAN)||JOIN(LIMIT_, B) <= !((AXES >> ('ab' % 70)))
#if ((017 + 2) < (0b101 ^ SPARE)) < 0
#define PROBE_3 0
#elif ((017 + 2) < (0b101 ^ SPARE)) == 0
#define PROBE_3 1
#elif ((017 + 2) < (0b101 ^ SPARE)) & 1
#define PROBE_3 2
#elif ((017 + 2) < (0b101 ^ SPARE)) < 7
#define PROBE_3 3
#elif ((017 + 2) < (0b101 ^ SPARE)) % 3 == 1
#define PROBE_3 4
#endif
%:
/* end */ ;
#define STEPS   TWICE(1) /* over
two lines */
#define BELT_DRIVE
#elif ! (TOOLS<1)&&EITHER(DUAL_FAN,SOFT_START)||(JOIN(,7)|LARGER(TRACE_UNSET_0, TOOLS)) && (AXES)
#define DUAL_FAN true	// " quote
#undef SOFT_ST\ 
ART /* over
two lines */
#else // other
  #endif // BELT_DRIVE
/* x */ #undef SOFT_START
#/**/if (((TOOLS - 'ab') - (AXES + 0)) ^ FIRST(TOOLS << 1 + STEPS,3)) | '\n'
int x = 1; /* #define TRACE */
/* end */ ;
#if ('ab' + 10) < 0
#define PROBE_4 0
#elif ('ab' + 10) == 0
#define PROBE_4 1
#elif ('ab' + 10) & 1
#define PROBE_4 2
#elif ('ab' + 10) < 7
#define PROBE_4 3
#elif ('ab' + 10) % 3 == 1
#define PROBE_4 4
#endif
# if FIRST(LARGER((9223372036854775807 * 'ab'), (7 ? STEPS : -1)),-(TOOLS - 9223372036854775807)) | (LIMIT_A-LIMIT_B)	// " quote
#if ((ALIAS (TOOLS) - (0x10 >> (SPARE % 70)))) < 0
#define PROBE_5 0
#elif ((ALIAS (TOOLS) - (0x10 >> (SPARE % 70)))) == 0
#define PROBE_5 1
#elif ((ALIAS (TOOLS) - (0x10 >> (SPARE % 70)))) & 1
#define PROBE_5 2
#elif ((ALIAS (TOOLS) - (0x10 >> (SPARE % 70)))) < 7
#define PROBE_5 3
#elif ((ALIAS (TOOLS) - (0x10 >> (SPARE % 70)))) % 3 == 1
#define PROBE_5 4
#endif
#elif LIMIT_B<1 && !defined BELT_DRIVE
# define/**/DUAL_FAN true
  #define DUAL_FAN
%:define TRACE true // trailing
  #else /* x */
#define TOOLS '\n'// it's
#if (DISABLED(SOFT_START) ? TOOLS <= 2 : (TOOLS & '\n') && 9223372036854775807) || !defined ( LAMP_PIN) && defined SPARE
	# /* a */ ifndef	BELT_DRIVE
# define SOFT_START 1
%:elifdef BELT_DRIVE	// " quote
#else
  /* a */ #define PANEL_LIGHT true/* one */ // two
#/**/endif/**/// STEPS
#if ((LIMIT_A & L'x')) < 0
#define PROBE_6 0
#elif ((LIMIT_A & L'x')) == 0
#define PROBE_6 1
#elif ((LIMIT_A & L'x')) & 1
#define PROBE_6 2
#elif ((LIMIT_A & L'x')) < 7
#define PROBE_6 3
#elif ((LIMIT_A & L'x')) % 3 == 1
#define PROBE_6 4
#endif
	# elifndef LIMIT_B
#else /* x *//* one */ // two
/* x */ #endif // LAMP_PIN
# endif
#define STEPS	(2 && AXES * (0 % (3 | 1)))
/* x */ #\	 
else\
\
 /* x */
const char *s = "/* not a comment"; // "
/* end */ ;
%:if ENABLED(SOFT_START)||NONE(SOFT_START, DUAL_FAN,DUAL_FAN) || BOTH(TRACE,SOFT_START)&&!defined ( TOOLS)||ENABLED(BELT_DRIVE) && (((AXES)*(-1u+TOOLS)) / (((0b101 % (STEPS | 1))|017) | 1)) < (0b101 - 7) && defined(FAN_PIN)
#define FAN_PIN PIN_NONE
#if !defined DUAL_FAN	// " quote
#/**/undef DUAL_FAN
/\
* x *\
/
/* end */ ;
# elifndef PANEL_LIGHT
#else/\	 
/ it's
#/**/if\
\
 defined LAM\ 
P_P\
IN
#define FAN_PIN 0	// " quote
#define STEPS	(TOOLS + LIMIT_A)
// #define AXES	(AXES >> (9223372036854775807 % 70))
#elifdef /* a */ SOFT_START /* over
two lines */
#define BELT_DRIVE false   
%:define AXES	TOOLS
	# endif   
#if (FIRST(AXES,-1u)) < 0
#define PROBE_7 0
#elif (FIRST(AXES,-1u)) == 0
#define PROBE_7 1
#elif (FIRST(AXES,-1u)) & 1
#define PROBE_7 2
#elif (FIRST(AXES,-1u)) < 7
#define PROBE_7 3
#elif (FIRST(AXES,-1u)) % 3 == 1
#define PROBE_7 4
#endif
	#\
 /\
* a */ endif // TOOLS	// " quote
/* x */ #elifdef SOFT_START
#if ((+(9223372036854775807) + JOIN(1,2))) < 0
#define PROBE_8 0
#elif ((+(9223372036854775807) + JOIN(1,2))) == 0
#define PROBE_8 1
#elif ((+(9223372036854775807) + JOIN(1,2))) & 1
#define PROBE_8 2
#elif ((+(9223372036854775807) + JOIN(1,2))) < 7
#define PROBE_8 3
#elif ((+(9223372036854775807) + JOIN(1,2))) % 3 == 1
#define PROBE_8 4
#endif
#/**/undef LIMIT_B
#/**/elifndef DUAL_FAN
  #define AXES   '\xff'
%:if !defined ( LIMIT_A)||NONE(BELT_DRIVE, SOFT_START,TRACE)
#/**/elifndef FAN_PIN
\
  #define AXES   ('\
\
\n' ? TOOLS : 3UL)
\ 
\
/\
* x */ #else
#endif // AXES /* one */
#/**/else
int x = 1; /* #define TRACE */
/* end */ ;
#endif // SOFT_START
	# endif // TOOLS
#define/**/BELT_DRIVE true

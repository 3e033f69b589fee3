#if/* // */(!ENABLED( TRACE) && defined/**/AXES&&(DISABLED(DUAL_FAN)))
///#define DUAL_FAN
/* x */ #ifdef /* a
 b */ DUAL_FAN/* one */ // two
#if ((1 ?/* // */!defined BELT_DRIVE : !defined STEPS))
//#define SOFT_START 1
# define SPARE	AXES
#/**/define LARGER(a,b) ((a) > (b) ? (a) : (b))
%:else
%:define LOOP_A LOOP_B + 1
#endif // LAMP_PIN
//#define SOFT_START 3
#endif // BELT_DRIVE
#if ((AXES - 2)) < 0
#define PROBE_1 0
#elif ((AXES - 2)) == 0
#define PROBE_1 1
#elif ((AXES - 2)) & 1
#define PROBE_1 2
#elif ((AXES - 2)) < 7
#define PROBE_1 3
#elif ((AXES - 2)) % 3 == 1
#define PROBE_1 4
#endif
# elif MANY(SOFT_START, SOFT_START,DUAL_FAN)
	# if (SPARE >> (0 % 70)) <= TOOLS
#if ((TRACE_UNSET_0 & LIMIT_A) + 017 == LIMIT_B) < 0
#define PROBE_2 0
#elif ((TRACE_UNSET_0 & LIMIT_A) + 017 == LIMIT_B) == 0
#define PROBE_2 1
#elif ((TRACE_UNSET_0 & LIMIT_A) + 017 == LIMIT_B) & 1
#define PROBE_2 2
#elif ((TRACE_UNSET_0 & LIMIT_A) + 017 == LIMIT_B) < 7
#define PROBE_2 3
#elif ((TRACE_UNSET_0 & LIMIT_A) + 017 == LIMIT_B) % 3 == 1
#define PROBE_2 4
#endif
#undef TOOLS /* one */
#/**/if DISABLED(BELT_DRIVE)
///#define TOOLS	TAIL(5)
#e\
lifde\
f SOFT_START
#define SPARE	FIRST((STEPS << (AXES % 70)),(3|AXES))
int x = 1; /* #define TRACE */
/* end */ ;
#elifndef SOFT_START
	# define LIMIT_A (3UL|TOOLS)// it's
  //#define AXES (SPARE / (0xFFFFFFFFFFFFFFFF | 1))
#/*\
*/endif // SOFT_START\

  #elif (STEPS > 1)||((TRACE_UNSET_0*LIMIT_A) >> (TWICE (TOOLS) % 70)) < ALIAS (AXES) && DISABLED(PANEL_LIGHT)
# define SPARE (LIMIT_A*0x7fff'ffff)
\ 
#if\
\	 
 PIN_EXISTS(LAMP) /* over
two lines */
%:define DUAL_FAN true
\
\
\
\
%:d\
\
efine SOFT_START// it's
#else
#/**/endif
#elif !defined ( SOFT_START)
# define SPARE	~\	 
(TRACE_UNSET_0) /* over
two lines */
\
	# else //\	 
 other
#define DUAL_FAN
# undef BELT_DRIVE	// " quote
/* x */ #define CALL(f,x) f(x) /* over
two\
 lines */
#endif/*
#define TRACE
*/// BELT_DRIVE // trailing
#elif !ENABLED( SOFT_START)
%:define	TOOLS	-(TOOLS) /* one */
/*
#define TRACE
*/ #endif // FAN_PIN /* one */
#if (((1 ^ TRACE_UNSET_0)*(10 + TOOLS))) < 0
#define PROBE_3 0
#elif (((1 ^ TRACE_UNSET_0)*(10 + TOOLS))) == 0
#define PROBE_3 1
#elif (((1 ^ TRACE_UNSET_0)*(10 + TOOLS))) & 1
#define PROBE_3 2
#elif (((1 ^ TRACE_UNSET_0)*(10 + TOOLS))) < 7
#define PROBE_3 3
#elif (((1 ^ TRACE_UNSET_0)*(10 + TOOLS))) % 3 == 1
#define PROBE_3 4
#endif
# define BELT_DRIVE 0x1
#\
\
if (defined(LIMIT_B) && 0b101 >= (TO\
OLS * 0x7fff'ffff) ? (((0b101 >> ('A' % 70)) / ((0x7fff'ffff % (0b101 | 1)) | 1)) ^ (AXES + 'ab')) | JOIN(LIMIT,_A)||EITHER(BELT_DRIVE,DUAL_FAN) : ! (AXES > TOOLS)) && (-1 != (9223372036854775807 - 'A')&&LOOP_B == 5 ? defined STEPS && PIN_EXISTS(FAN) : defined(BELT_DRIVE) && true)
#define SOFT_STAR\
T// it's
#defin\ 
e	DUAL_FAN
# endif // LAMP_PIN

#ifndef PART_H
#define PART_H
#if ((3UL ^ STEPS)) < 0
#define PROBE_1 0
#elif ((3UL ^ STEPS)) == 0
#define PROBE_1 1
#elif ((3UL ^ STEPS)) & 1
#define PROBE_1 2
#elif ((3UL ^ STEPS)) < 7
#define PROBE_1 3
#elif ((3UL ^ STEPS)) % 3 == 1
#define PROBE_1 4
#endif
	# if defined(AXES)
#elifndef SOFT_START/* one */ // two
#if defined SPARE&&SPARE != STEPS /* one */
#/**/define AXES (STEPS ? TRACE_UNSET_0 : 'ab')
#/**/elif DISABLED(TRACE)||ANY_PIN(FAN, LAMP)
#if (((10 + TOOLS) + (TOOLS / (1 | 1)))) < 0
#define PROBE_2 0
#elif (((10 + TOOLS) + (TOOLS / (1 | 1)))) == 0
#define PROBE_2 1
#elif (((10 + TOOLS) + (TOOLS / (1 | 1)))) & 1
#define PROBE_2 2
#elif (((10 + TOOLS) + (TOOLS / (1 | 1)))) < 7
#define PROBE_2 3
#elif (((10 + TOOLS) + (TOOLS / (1 | 1)))) % 3 == 1
#define PROBE_2 4
#endif
#/\
\
**/else /* x */
#endif // LIMIT_A// it's
\
%\	 
:define BELT_D\	 
RIVE
#ifndef SOFT_START
# define STEPS ((LIMIT_A+TOOLS)|('\n' / (-1 | 1)))   
#if ENABLED(DUAL_FAN)
#elifdef FAN_PIN
	# define/**/DUAL_FAN true// it's
# else // other
#\
/**/define SOFT_S\
TAR\
T
#define FAN_PIN /* a
 b */ PIN_NONE
#define LOOP_A LOOP_B + 1
#endif
/* x */ #if (!defined TOOLS ? ANY_P\
\
IN(FAN, LAMP) : !defined DUAL_FAN)
# define	HAS_TOOLS defined(TOOLS)
#else /* x */
#define SOFT_START 3
#/**/endif
#/**/elifdef SOFT_START
#if /* a
 b */ PIN_EXISTS(LAMP)	// " quote
  #define BELT_DRIVE false
#define TRACE false // trailing
#define TRACE 3\

\
\
# elifndef LI\	 
MIT_A
/*\
\
 x */ #define TOOLS   TOOLS
#elifndef\
 DUAL_FAN
/* x */ #define LIMIT_A ((TOOLS ? TOOLS : 3UL)+(TOOLS ? 'A' : STEPS))
#define LIMIT_B   5u
#/**/endif // DUAL_FAN
#/**/undef TOOLS /* over
two lines */
#define PANEL_LIGHT
#\
\
\
els\
e
#/**/endif // TRACE
	# else /* x /* a\
\

 b */ */
#endif// it's
#endif

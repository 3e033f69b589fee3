%:if\
\
def /* a */ SOFT_START // trailing
#elifndef LIMIT_A
#/**/elifndef BELT_DRIVE
# if BOTH(BELT_DRIVE,SOFT_START) // trailing
const char *s = "/* not a comment"; // "
/* end */ ;
#\
\
 d\	 
efine TOOLS   FIRST(LIMIT_A,5u)
#if ENABLED(TRACE)||IS_DUAL /* a
 b */ &&/* // */((TAIL(5) + (AXES ^	3))	+ LARGER(+(STEPS),	(STEPS % (STEPS | 1))))	>= AXES &&/*
#define TRACE
*/!ENABLED( BELT_DRIVE) && ENABLED(BELT_DRIVE)&&EITHER(DUAL_FAN,DUAL_FAN)/* one */ // two
	# defin\	 
e TOOLS   TOOLS
#else // other
#/**\
/end\
if\ 

\ 
#if !defi\
ned LIMIT_B\
	// " quote
R"x(
#define TRACE 4
)" )x"
/* end */ ;
#if (-(CALL(TWICE, 4))) < 0
#define PROBE_1 0
#elif (-(CALL(TWICE, 4))) == 0
#define PROBE_1 1
#elif (-(CALL(TWICE, 4))) & 1
#define PROBE_1 2
#elif (-(CALL(TWICE, 4))) < 7
#define PROBE_1 3
#elif (-(CALL(TWICE, 4))) % 3 == 1
#define PROBE_1 4
#endif
#endif
%:elif !defined ( SPARE)||TOOLS | 1&&ENABLED(BELT_DRIVE)
#if (((('ab' >> (5u % 70)) & (SPARE % (TOOLS | 1))) ^ AXES || AXES && (STEPS + 'ab'))) < 0
#define PROBE_2 0
#elif (((('ab' >> (5u % 70)) & (SPARE % (TOOLS | 1))) ^ AXES || AXES && (STEPS + 'ab'))) == 0
#define PROBE_2 1
#elif (((('ab' >> (5u % 70)) & (SPARE % (TOOLS | 1))) ^ AXES || AXES && (STEPS + 'ab'))) & 1
#define PROBE_2 2
#elif (((('ab' >> (5u % 70)) & (SPARE % (TOOLS | 1))) ^ AXES || AXES && (STEPS + 'ab'))) < 7
#define PROBE_2 3
#elif (((('ab' >> (5u % 70)) & (SPARE % (TOOLS | 1))) ^ AXES || AXES && (STEPS + 'ab'))) % 3 == 1
#define PROBE_2 4
#endif
#/**/define TRACE/* // */0x1/* one */ // two
#elif AXES != 2 && PIN_EXISTS(LAMP) && ENABLED(TRACE) && defined(AXES)
#if defined(FAN_PIN)/* one */ // two
  #defi\ 
ne DUAL_FAN 0	//\	 
 " quote
%:define LARGER(a, b) FIRST((a) < b, a)
#elifndef BELT_DRIVE
#undef LIMIT_A
	#/* // */define TOOLS/* // */  017 /* one */
  #elifndef BELT_DRIVE
# else // other\
// it's
/* x */ #endif // LAMP_PIN
#/**/endif
/* x */ #define DUAL_FAN true\ 
 /* ove\ 
r
two lines */
#endif	// " quote
  #define SOFT_START 0
#define BELT_DRIVE 1
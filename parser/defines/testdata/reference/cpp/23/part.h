#ifndef PART_H
#define PART_H
#defin\
e TO\
OLS	10/* one */ // two
	# define LIMIT_A   LARGER(JOIN(LIMIT_, B), (TOOLS*'ab'))
#/* // */define/**/DUAL_FAN false
	# if 0b101 != (SPARE + SPARE)
#endif // DUAL_FAN
%:if\ 
 ! (AXES <= 0&&defined(LAMP_PIN) && EITHER(PANEL_L\
IGHT,TRACE))
#elif ALIAS ((0x7fff'ffff ^ -1)) | (LIMIT_A / ('A' |\ 
 1))
#elif (ANY_PIN(FAN, LAMP)&&DISABLED(TRACE) ? !ENABLED( TRACE)||TWICE (LARGER(SPARE, 10)) != TWICE (FIRST((AXES),9223372036854775807)) : LOOP_B == 5 && (((0 % (-1u | 1)) * AXES) ? SPREAD(4, 5) : ((AXES ? AXES : TRACE_UNSET_0)-FIRST('\n',3))) == (AXES ? 1 : AXES))
#\
define TRACE
  #if !defined ( FAN_PIN) || !(PIN_EXISTS(FAN))// it's
#else /* x/\
**/*/
#/**/define LOOP_A/**/LOOP_B /* a
 b */ +/* ' */1
 /* a */  #define BELT_DRIVE
	# if (!defined SPARE ? !defined ( SOFT_START) || (TAIL(5) << ((LARGER(STEPS, TOOLS)|LARGER(TOOLS, LIMIT_A)) % 70)) == L'x' : (!defined DUAL_FAN ? defined(PANEL_LIGHT) : ENABLED(BELT_DRIVE)))
%:\
define SOFT_START// it's
#elif !((((1 IF_DISABLED(TRACE, + 3))+FIRST(LIMIT_A,1))-+((AXES ? 2 : 0x10))) <= (7 - 'A') && DISABLED(DUAL_FAN))
#else /* x */
#define BELT_DRIVE false\
   
%:def\
\
ine SPREAD(x, y...) ((x) , #\
# y)
#endif   
/* x */ #endif // PANEL_LIGHT /* one */
%:endif // BELT_DRIVE
#endif
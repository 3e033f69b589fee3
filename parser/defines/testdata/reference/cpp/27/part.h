#pragma once
#define STEPS	LARGER('ab', 9223372036854775807) // trailing
#if ((0 - 'ab' + (3-AXES)) - ((3 & 2) >> (7 % 70))) > 0x7fff'ffff
\
#undef B\
ELT_DRIVE\ 

#/**/ifndef LAMP_PIN
/* x */ #ifndef BELT_DRIVE
#elif - (TWICE(-(0x10))) != 'ab'
#endif
# elif\	 
ndef PANEL_LIGHT
#if (ENABLED(SOFT_START)) && !defined BELT_DRIVE && !defined ( PANEL_LIGHT)||PIN_EXISTS(FAN) || defined(LIMIT_B)||ENABLED(BELT_DRIVE)	// " quote
#elifdef LIMIT_A
#define STEPS AXES/* one */ // two
#/**/elif 3 == ((3 ? (AXES) : 017)|!(LIMIT_B)) || TOOLS == 0 || ENABLED(BELT_DRIVE)&&defined(LIMIT_B)
# /* a */ else // other
#endif
#/**/elifdef TOOLS\

# ifndef DUAL_FAN	// " quote
#define HAS_TOOLS (defined TOOLS && TOOLS)
#/**/endif
#else
 /* a
 b */  #define IS_DUAL EN\ 
ABLED(DUAL_FAN)
#define STEPS   TWICE(('\n' % (AXES | 1)))
int x = 1; /* #define TRACE */
/* end */ ;
#endif // TRACE
#undef TOOLS
#/**/if (!defined STEPS ? defined SOFT_START : FIRST(7,9223372036854775807) < '\n') && LIMIT_A != STEPS && (+(L'x') + (017 >> (STEPS % 70))) != TOOLS && !defined ( LIMIT_A) || !(5u > (AXES % (STEPS | 1)))
# ifndef TOOLS
\	 
#define DUAL_FAN 3
# define AXES	TERN(TRACE, 3, 4)
#/**/elifdef /* a
 b */ LIMIT_B
  #\
define LAMP_PIN -1
#\	 
\
\
else\

# define /* a */ TRACE
  #undef LIMIT_A
#endif // LIMIT_A
	# elif ENABL\	 
ED(SOFT_START)	// " quote
#if\
 ENABLED(\	 
BELT_DRIVE\
\
) // trailing
f(1, // x
2);
/* end */ ;
/* x */ #elif ENABLED(SOFT_START) || !ENABLED( TRACE)
#/**/define SOFT_START 0
  #endif
# undef/*
#define TRACE
*/LIMIT_A
	# endif // LAMP_PIN
\
\
#eli\ 
fndef DUAL_FAN
#define BELT_DRIVE 1
const char *s = "\" // still";
/* end */ ;
\
\
#el\
\
ifndef AXES
#\
e\
lse\
 /* x */
%\
\
:define AXES   AXES/* one */ // two
#define SPARE	FIRST(((AXES) >> (TOOLS % 70)),(AXES << (017 % 70)))
	# undef DUA\
L\
_FAN// it's
#endif// it's
#define ALIAS TWICE
#define TWICE(x) ((x) * 2)
#define LARGER(a, b) FIRST((a) < b, a)
#\
/\
**/define /* a
 b */ FIRST(a,...) (a)
#define JOIN(a, b) a ## b
#define CALL(f, x) f (x)
#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)
/* x */ #define SPREAD(x, ...) (x) __VA_OPT__(+ (__VA_ARGS__, 1))
#
/* end */ ;
#define TRACE 1
#/**/ifndef TRACE
/\
\
* x */ #d\
\
efine BELT_DRIVE 1	// " quote
#\	 
\
define CALL(f, x)\	 
 f (x)
#ifndef LAMP_PIN
	# define TRA\ 
\	 
CE
	//  #define STEPS AXES
/*\ 
 x */\
 #else // oth\
\
er
#if !(! ('A' == SPARE == (0x10|(AXES + AXES))))
  #ifnd\
ef SOFT_START/* one */ // two
#define DUAL_FAN true	// " quote
  #define LOOP_B (LOOP_A | 4)
#define TOOLS (AXES)
%\
\
\
:elifndef FAN_PIN
  #define SOFT_START 3
	# define AXES  /* ' */(TRACE_UNSET_0	* /* a
 b */ AXES) & JOIN(LIMIT,_A)
// #define AXES	ALIAS (0)
#elifdef /* a */ FAN_PIN // trailing
#/**/else
#endif
\	 
# elifnd\
\
ef SP\
ARE
#\
else /* x */
#/**/define BELT_DRIVE
#define DUAL_FAN 1/* one */ // two
#/**/ifdef LIMIT_A
/* x */ #define DUAL_FAN 1
\
\
\ 
#elif\
def STEPS
#d\	 
efine FIRST(a,.\
..) (a)
#/**/elifdef TOOLS
\
#/**/de\
fine SOFT_START 3// it's
// don't #define TRACE
/* end */ ;
%:else /* on\
e */\
\

#/**/endif
#endif // STEPS
%:define STEPS	('A' - TOOLS)
#/**/if BOTH(SOFT_START,TRACE)
/\
* x *\
/
/* end */ ;
	# elifdef BELT_DRIVE
%:
/* end */ ;
#endif
#endif // LIMIT\
_A
#endif // LIMIT_B

#define ALIAS TWICE
#define TWICE(x) ((x) * 2)
	# define LARGER(a, b) FIRST((a) < b, a)
/* x */ #define FIRST(...) TAIL(0, __VA_ARGS__)
#define JOIN\
(a\
\
,b) a##b\

#define CALL(f,x) f(x)
#define TAIL(a, b...) (a, ## b)
  #define SPREAD(x, ...)	(x) __VA_OPT__(+ /* a
 b */ (__VA_ARGS__, 1))
\
\
  #if ! ((!defined SOFT_START || EITHER(PANEL_LIGHT,BELT_DRIVE) ? DISABLED(TRACE, PANEL_LIGHT,TRACE)||EITHER(DUAL_FAN,SOFT_START) : (LIMIT_A > 2 ? ENABLED(BELT_DRIVE) : PIN_EXISTS(LAMP))))
\
\
\	 
#\
define BELT_DRIVE
# define FAN_PIN (4 -/**/9)/* one */ // two
/* x */ #if !d\
\
efined	( DUAL_FAN)
%:elif DISABLED(SOFT_START) /* one */\

%:define PANEL_LIGHT
//#define DUAL_FAN
  #define TOOLS   AXES
  #elifndef SOFT_START
#define LIMIT_A TWICE((0*TOOLS))
#/*\ 
*/endif
#elifndef PANEL_LIGHT /* one */
x R"(\
/*)" // y
/* end */ ;
#if (LARGER(SPARE, TOOLS)) < 0
#define PROBE_1 0
#elif (LARGER(SPARE, TOOLS)) == 0
#define PROBE_1 1
#elif (LARGER(SPARE, TOOLS)) & 1
#define PROBE_1 2
#elif (LARGER(SPARE, TOOLS)) < 7
#define PROBE_1 3
#elif (LARGER(SPARE, TOOLS)) % 3 == 1
#define PROBE_1 4
#endif
#if (((TOOLS + -1 + (3UL % (3 | 1))) + ((AXES % (SPARE | 1))|JOIN(LIMIT,_A)))) < 0
#define PROBE_2 0
#elif (((TOOLS + -1 + (3UL % (3 | 1))) + ((AXES % (SPARE | 1))|JOIN(LIMIT,_A)))) == 0
#define PROBE_2 1
#elif (((TOOLS + -1 + (3UL % (3 | 1))) + ((AXES % (SPARE | 1))|JOIN(LIMIT,_A)))) & 1
#define PROBE_2 2
#elif (((TOOLS + -1 + (3UL % (3 | 1))) + ((AXES % (SPARE | 1))|JOIN(LIMIT,_A)))) < 7
#define PROBE_2 3
#elif (((TOOLS + -1 + (3UL % (3 | 1))) + ((AXES % (SPARE | 1))|JOIN(LIMIT,_A)))) % 3 == 1
#define PROBE_2 4
#endif
	#\
 else	// " quote
#endif /* one */
	# define TOOLS   (1 << 1 + STEPS ? FIRST(0xFFFFFFFFFFFFFFFF,AXES) : ~(0x10))
#if (FIRST((LIMIT_A ^ SPARE),(7 >> (0x7fff'ffff % 70)))) < 0
#define PROBE_3 0
#elif (FIRST((LIMIT_A ^ SPARE),(7 >> (0x7fff'ffff % 70)))) == 0
#define PROBE_3 1
#elif (FIRST((LIMIT_A ^ SPARE),(7 >> (0x7fff'ffff % 70)))) & 1
#define PROBE_3 2
#elif (FIRST((LIMIT_A ^ SPARE),(7 >> (0x7fff'ffff % 70)))) < 7
#define PROBE_3 3
#elif (FIRST((LIMIT_A ^ SPARE),(7 >> (0x7fff'ffff % 70)))) % 3 == 1
#define PROBE_3 4
#endif
	# define BELT_DRIVE true
	# if ANY_PIN(FAN, LAMP) && !(SPARE > LIMIT_A) || (defined BELT_DRIVE ? AXES<0 : ((AXES + STEPS) - FIRST(AXES,TOOLS)) <= (ALIAS (3) >> ((AXES*'A') % 70)))
#define STEPS +((LIMIT_B /* a */ >>/**/(1 % 70)))
#\ 
\ 
elif (defined(A\
XES) ? EITHER(DUAL_FAN,TRACE) : STEPS > AXES)
#if ((TOOLS ? STEPS : AXES)) < 0
#define PROBE_4 0
#elif ((TOOLS ? STEPS : AXES)) == 0
#define PROBE_4 1
#elif ((TOOLS ? STEPS : AXES)) & 1
#define PROBE_4 2
#elif ((TOOLS ? STEPS : AXES)) < 7
#define PROBE_4 3
#elif ((TOOLS ? STEPS : AXES)) % 3 == 1
#define PROBE_4 4
#endif
#if (LARGER(FIRST((AXES),TERN1(TRACE, AXES)), (AXES - AXES))) < 0
#define PROBE_5 0
#elif (LARGER(FIRST((AXES),TERN1(TRACE, AXES)), (AXES - AXES))) == 0
#define PROBE_5 1
#elif (LARGER(FIRST((AXES),TERN1(TRACE, AXES)), (AXES - AXES))) & 1
#define PROBE_5 2
#elif (LARGER(FIRST((AXES),TERN1(TRACE, AXES)), (AXES - AXES))) < 7
#define PROBE_5 3
#elif (LARGER(FIRST((AXES),TERN1(TRACE, AXES)), (AXES - AXES))) % 3 == 1
#define PROBE_5 4
#endif
%:elif ENABLED(DUAL_FAN) || AXES == LARGER(JOIN(LIMIT_, B), ('ab' % (3 | 1)))||!defined BELT_DRIVE
#if !(!defined ( LAMP_PIN)) // trailing
  #else // other   
#ifnd\
ef ST\
\
EPS// it's
#define SPARE (1 TERN_(TRACE, + 2))   
/* x */ #else // o\	 
ther /* one */
# endif // DUAL_FAN
#/**/endif
  #define BELT_DRIVE 1 // trailing
#define TOOLS /* a */  /* // */LIMIT_B
#endif/*
#define TRACE
*/// LAMP_PIN
# if ANY_PIN(FAN, LAMP)||ENABLED(BELT_DRIVE) // trailing
%:define TOOLS /* ' */ AXES
#/**/define LAMP_PIN (4 /* a
 b */ - 9)
%:elifndef DUAL_FAN
%:elif/*
#define TRACE
*/!ENABLED( PANEL_LIGHT)/*
#define TRACE
*/&& !ENABLED( /* a */ SOFT_START)
#else
#de\ 
fine CALL\	 
\ 
(f, x) f (x)
#if ((7 + 0b101)) < 0
#define PROBE_6 0
#elif ((7 + 0b101)) == 0
#define PROBE_6 1
#elif ((7 + 0b101)) & 1
#define PROBE_6 2
#elif ((7 + 0b101)) < 7
#define PROBE_6 3
#elif ((7 + 0b101)) % 3 == 1
#define PROBE_6 4
#endif
#/**/define AXES TOOLS
#endif // DUAL_FAN
	# define LOOP_A LOOP_B + 1
/* x */ #ifndef LIMIT_B
#if ((STEPS >> ((L'x'-TOOLS) % 70))) < 0
#define PROBE_7 0
#elif ((STEPS >> ((L'x'-TOOLS) % 70))) == 0
#define PROBE_7 1
#elif ((STEPS >> ((L'x'-TOOLS) % 70))) & 1
#define PROBE_7 2
#elif ((STEPS >> ((L'x'-TOOLS) % 70))) < 7
#define PROBE_7 3
#elif ((STEPS >> ((L'x'-TOOLS) % 70))) % 3 == 1
#define PROBE_7 4
#endif
const char *s = "\" // still";
/* end */ ;
#ifnd\ 
\
\
ef LAMP_PIN\
   
/* x */ #else
	//  #define SPARE	((017 % (TOOLS | 1)) ^ FIRST(TOOLS,7))
  #defin\
e SPARE	(-\ 
 (TOOLS) - LARGER(TOOLS,\
 'A'))
#/**/endif   
#/**/elif !defined /* a */ TOOLS||TOOLS > (TOOLS/* ' */+/* ' */LIMIT_A)||0 | 1
#endif
#\
define\	 
 PANEL_LIGHT false

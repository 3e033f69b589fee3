	# ifdef PANEL_LIGHT
	# defin\
e BELT_DRI\
VE\

%:define TRACE 3
%:endif // SPARE
	# define LIMIT_A ((0*7)+~(0b101))
#/**/ifndef DUAL_FAN
/* x */ #define PANEL_LIGHT
#define /* a */ LAMP_PIN -1
#define LAMP_PIN -1
#if ('\n' << (LIMIT_B % 70)) && 3 && !defined ( LIMIT_A)
# define HAS_TOOLS (defined/*
#define TRACE
*/TOOLS && TOOLS) // trailing
# elifndef LIMIT_A
#endif // FAN_PIN	// " quote
#endif // TRACE /* over
two lines */
#define ST\
EPS !!(LARGER(AXES, 1))
# define SPARE	!(AXES)
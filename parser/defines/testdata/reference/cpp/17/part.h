#ifndef PART_H
#define PART_H
/* x */ #define SOFT_START
#define DUAL_FAN /* one */
	# define TRACE 0
%:undef PANEL_LIGHT
#define SPARE TWICE(FIRST(SPARE,'\xff'))/* one */ // two
#endif

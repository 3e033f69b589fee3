\
  #ifndef\
 AXES
/* x */ #define HAS_TOOLS defined(TOOLS) /* one */
#else /* x */
%:define AXES	(TOOLS / ('ab' | 1))
/* x */ #endif
#/**/ifdef TRACE	// " quote
# define TOOLS LARGER((-1 - TOOLS), FIRST(SPARE,0b101)) /* over
two lines */
/* x */ #endif

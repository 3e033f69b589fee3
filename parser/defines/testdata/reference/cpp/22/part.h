#pragma once
#define\
 LARGER(a,b) ((a) > (b) ? (a) : (b))
#/**/define TOOLS /* a */  /* a */  /* a */ (LIMIT_A/* ' */* TRACE_UNSET_0)
/* x */ #define\ 
 SOFT_START
  //#define SOFT_START false
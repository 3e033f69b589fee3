#pragma once
const char *s = "/* not a comment"; // "
/* end */ ;
#/**/define	STEPS	(TWICE /* a */ (LIMIT_A) ? AXES : FIRST(LIMIT_B,LIMIT_B))   
	
/* end */ ;
#define DUAL_FAN 1

#pragma once

/* end */ ;
%:define LIMIT_A	(CALL(TWICE, 4) %/**/(FIRST(0,AXES)	|/* // */1))
#define SPARE   5u
// don't #define TRACE
/* end */ ;

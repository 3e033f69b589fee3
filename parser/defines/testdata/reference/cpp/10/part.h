#pragma once
%\
\
:define FIRST(a,...)\
\
 (a)
const char *s = "/* not a comment"; // "
/* end */ ;

#pragma once
const char *s = "/* not a comment"; // "
/* end */ ;

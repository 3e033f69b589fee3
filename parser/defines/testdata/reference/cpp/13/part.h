#pragma once
const char *s = "\" // still";
/* end */ ;
// #define AXES   (LIMIT_A / ('A' | 1))
%:define BELT_DRIV\
E 1
  #define BELT_DRIVE/* one */ // two

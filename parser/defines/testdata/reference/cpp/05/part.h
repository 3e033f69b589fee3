#ifndef PART_H
#define PART_H
x R"(\
/*)" // y
/* end */ ;
// #define DUAL_FAN
%:define PANEL_LIGHT
%:define LOOP_B (LOOP_A/**/| 4)
#/**/define LOOP_B/* // */(LOOP_A /* a */ | 4)
#endif

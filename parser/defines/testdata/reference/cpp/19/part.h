#/**/if !defined DUAL_FAN
#/**/define DUAL_FAN
/* x */ #elif TOOLS != 2   
#en\
dif // BELT_DRIVE
#/**/define SOFT_START
#define FAN_PIN/* ' */7
#define DUAL_FAN true
#/**/define CA\
LL\
(f, x) f (x)

#ifndef PART_H
#define PART_H
%\
:undef FAN_PIN
#endif

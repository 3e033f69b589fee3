#ifndef PART_H
#define PART_H
#define TRACE false
#define/**/DUAL_FAN/* one */ // two
#endif

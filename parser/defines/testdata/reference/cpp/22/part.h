#ifndef PART_H
#define PART_H
//#define SPARE	(0-AXES)
#endif

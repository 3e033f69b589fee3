#ifndef PART_H
#define PART_H
#define TRACE 9
*/ int after;
/* end */ ;
#endif

#ifndef PART_H
#define PART_H
#if (DISABLED(DUAL_FAN))
#define SPARE 1
#en\ 
dif/* '\
 */// BELT_DR\
IVE
#define TOOLS   'A'
#
/* end */ ;
	//  #define HAS_TOOLS (defined TOOLS && TOOLS)
#/* // */define/**/SOFT_START 0x1
#endif

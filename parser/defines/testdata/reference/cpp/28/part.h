#ifndef PART_H
#define PART_H
#define	DUAL_FAN
#define TOOLS	(SPARE * TOOLS)
#endif

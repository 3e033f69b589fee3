#ifndef PART_H
#define PART_H
#de\ 
fine TWICE(x) ((\	 
x) + x)\ 

#endif

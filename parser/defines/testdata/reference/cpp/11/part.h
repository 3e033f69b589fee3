#ifndef PART_H
#define PART_H
#un\	 
def LIMIT_A
#endif

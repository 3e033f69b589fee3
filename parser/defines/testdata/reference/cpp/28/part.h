#ifndef PART_H
#define PART_H
  //#define LIMIT_A   (-1u * TOOLS)
#endif

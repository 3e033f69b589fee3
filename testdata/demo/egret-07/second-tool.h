// egret-07, second tool: what differs from the first one.
// Read from the end of the first file, so that it wins.

#undef  TEMP_SENSOR_1
#define TEMP_SENSOR_1                 998   // no bead in the drawer, to be replaced

#undef  HEATER_1_MINTEMP
#define HEATER_1_MINTEMP               25   // so that an open window is noticed
#undef  HEATER_1_MAXTEMP
#define HEATER_1_MAXTEMP              260

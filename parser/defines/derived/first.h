// What the style's firmware defines before the first file, as it publishes it.
// These names look at the options at each place where they are used.

#if preflash_may_be_newer
  // The sensor of each extruder that there is. None counts as one.
  #define HAS_E_TEMP_SENSOR ( TEMP_SENSOR_0 != 0 || (EXTRUDERS > 1 && TEMP_SENSOR_1 != 0) \
    || (EXTRUDERS > 2 && TEMP_SENSOR_2 != 0) || (EXTRUDERS > 3 && TEMP_SENSOR_3 != 0) \
    || (EXTRUDERS > 4 && TEMP_SENSOR_4 != 0) || (EXTRUDERS > 5 && TEMP_SENSOR_5 != 0) \
    || (EXTRUDERS > 6 && TEMP_SENSOR_6 != 0) || (EXTRUDERS > 7 && TEMP_SENSOR_7 != 0) )
  #define TEMP_SENSOR_IS_MAX_TC(n) (TEMP_SENSOR_##n == -5 || TEMP_SENSOR_##n == -3 || TEMP_SENSOR_##n == -2)
#endif

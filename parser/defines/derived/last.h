// What the style's firmware derives and takes out after the second file, as it
// publishes it. What it takes out goes only where that is sure.

#if preflash_newer && TEMP_SENSOR_BED != 0
  #define HAS_HEATED_BED 1
#endif
#if preflash_sure(TEMP_SENSOR_BED == 0)
  #undef THERMAL_PROTECTION_BED
  #undef PIDTEMPBED
#endif

#if preflash_sure(EXTRUDERS == 0)
  #undef TEMP_SENSOR_0
  #undef TEMP_SENSOR_1
  #undef TEMP_SENSOR_2
  #undef TEMP_SENSOR_3
  #undef TEMP_SENSOR_4
  #undef TEMP_SENSOR_5
  #undef TEMP_SENSOR_6
  #undef TEMP_SENSOR_7
  #undef LIN_ADVANCE
  #undef ADVANCED_PAUSE_FEATURE
  #undef FWRETRACT
  #undef VOLUMETRIC_DEFAULT_ON
  #undef VOLUMETRIC_EXTRUDER_LIMIT
#endif
#if preflash_sure(HOTENDS == 0)
  #undef PIDTEMP
  #undef MPCTEMP
  #undef AUTOTEMP
  #undef PREVENT_COLD_EXTRUSION
  #undef THERMAL_PROTECTION_HOTENDS
  #undef THERMAL_PROTECTION_PERIOD
  #undef WATCH_TEMP_PERIOD
#endif
#if preflash_sure(preflash_newer && HOTENDS < 1)
  #undef E0_AUTO_FAN_PIN
  #undef HEATER_0_MAXTEMP
  #undef HEATER_0_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 2)
  #undef E1_AUTO_FAN_PIN
  #undef HEATER_1_MAXTEMP
  #undef HEATER_1_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 3)
  #undef E2_AUTO_FAN_PIN
  #undef HEATER_2_MAXTEMP
  #undef HEATER_2_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 4)
  #undef E3_AUTO_FAN_PIN
  #undef HEATER_3_MAXTEMP
  #undef HEATER_3_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 5)
  #undef E4_AUTO_FAN_PIN
  #undef HEATER_4_MAXTEMP
  #undef HEATER_4_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 6)
  #undef E5_AUTO_FAN_PIN
  #undef HEATER_5_MAXTEMP
  #undef HEATER_5_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 7)
  #undef E6_AUTO_FAN_PIN
  #undef HEATER_6_MAXTEMP
  #undef HEATER_6_MINTEMP
#endif
#if preflash_sure(preflash_newer && HOTENDS < 8)
  #undef E7_AUTO_FAN_PIN
  #undef HEATER_7_MAXTEMP
  #undef HEATER_7_MINTEMP
#endif

#if preflash_may_be_older
  #if TEMP_SENSOR_0 == -5 || TEMP_SENSOR_0 == -3 || TEMP_SENSOR_0 == -2
    #define TEMP_SENSOR_0_IS_MAX_TC 1
  #endif
  #if TEMP_SENSOR_1 == -5 || TEMP_SENSOR_1 == -3 || TEMP_SENSOR_1 == -2
    #define TEMP_SENSOR_1_IS_MAX_TC 1
  #endif
  #if TEMP_SENSOR_REDUNDANT == -5 || TEMP_SENSOR_REDUNDANT == -3 || TEMP_SENSOR_REDUNDANT == -2
    #define TEMP_SENSOR_REDUNDANT_IS_MAX_TC 1
  #endif
#endif

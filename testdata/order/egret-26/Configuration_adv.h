/**
 * egret-26, second file
 */
#pragma once

#define CONFIGURATION_ADV_H_VERSION         02010300

// ---- Sensor by its figures ---------------------------------------------

#if TEMP_SENSOR_0 == 1000
  #define HOTEND0_PULLUP_RESISTOR_OHMS      4700                // on the board
  #define HOTEND0_RESISTANCE_25C_OHMS       100000
  #define HOTEND0_BETA                      3950                // printed on the bag
  #define HOTEND0_SH_C_COEFF                0
#endif

// ---- Watches -----------------------------------------------------------

#if ALL(HAS_HOTEND, THERMAL_PROTECTION_HOTENDS)
  #define THERMAL_PROTECTION_PERIOD         40                  // s
  #define THERMAL_PROTECTION_HYSTERESIS     4                   // °C
  //#define ADAPTIVE_FAN_SLOWING

  #define WATCH_TEMP_PERIOD                 15                  // s
  #define WATCH_TEMP_INCREASE               6                   // °C, strict since the sensor fell out in May
#endif

#if ENABLED(THERMAL_PROTECTION_BED)
  #define THERMAL_PROTECTION_BED_PERIOD     20
  #define THERMAL_PROTECTION_BED_HYSTERESIS 2

  #define WATCH_BED_TEMP_PERIOD             60
  #define WATCH_BED_TEMP_INCREASE           2
#endif

// ---- Patience with the sensor ------------------------------------------

//#define MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED 2
//#define PREHEAT_TIME_HOTEND_MS            0

// ---- Fans --------------------------------------------------------------

#define E0_AUTO_FAN_PIN                     FAN1_PIN
#define EXTRUDER_AUTO_FAN_TEMPERATURE       50                  // °C
#define EXTRUDER_AUTO_FAN_SPEED             255
//#define FAN_MIN_PWM                       50

// ---- Heater and filament -----------------------------------------------

//#define AUTOTEMP
//#define LIN_ADVANCE

//#define ADVANCED_PAUSE_FEATURE
#if ENABLED(ADVANCED_PAUSE_FEATURE)
  #define PAUSE_PARK_RETRACT_LENGTH         2
  #define FILAMENT_CHANGE_UNLOAD_LENGTH     100
  #define FILAMENT_CHANGE_SLOW_LOAD_LENGTH  0
  #define FILAMENT_CHANGE_FAST_LOAD_LENGTH  0
  #define ADVANCED_PAUSE_PURGE_LENGTH       50
#endif

#define BABYSTEPPING
#if ENABLED(BABYSTEPPING)
  #define BABYSTEP_MULTIPLICATOR_Z          1
  #define BABYSTEP_MULTIPLICATOR_XY         1
#endif

//#define HOST_ACTION_COMMANDS
#define AUTO_REPORT_TEMPERATURES
//#define ARC_SUPPORT

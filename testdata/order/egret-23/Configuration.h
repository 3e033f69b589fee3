/**
 * egret-23, 24 V
 *
 * Lined hotend out of the spare box, complete with its cartridge.
 * The cartridge has no print left on it but "40W 12".
 */
#pragma once

#define CONFIGURATION_H_VERSION         02010300

// ---- Machine -----------------------------------------------------------

#define STRING_CONFIG_H_AUTHOR          "(makerspace, bench 3)"
#define CUSTOM_MACHINE_NAME             "egret-23"
#ifndef MOTHERBOARD
  #define MOTHERBOARD                   BOARD_EGRET_32
#endif
#define SERIAL_PORT                     -1
#define BAUDRATE                        250000

#define X_DRIVER_TYPE                   TMC2209
#define Y_DRIVER_TYPE                   TMC2209
#define Z_DRIVER_TYPE                   TMC2209
#define E0_DRIVER_TYPE                  TMC2209

// ---- Extruder ----------------------------------------------------------

#define EXTRUDERS                       1
#define DEFAULT_NOMINAL_FILAMENT_DIA    1.75                    // mm
//#define SINGLENOZZLE

// ---- Temperature sensors -----------------------------------------------

#define TEMP_SENSOR_0                   1
#define TEMP_SENSOR_1                   0
#define TEMP_SENSOR_BED                 1
#define TEMP_SENSOR_CHAMBER             0

#define TEMP_RESIDENCY_TIME             10                      // s
#define TEMP_WINDOW                     1                       // °C
#define TEMP_HYSTERESIS                 3                       // °C

#define HEATER_0_MINTEMP                5
#define BED_MINTEMP                     5

#define HEATER_0_MAXTEMP                290                     // as with the all-metal one
#define BED_MAXTEMP                     120
#define HOTEND_OVERSHOOT                15                      // °C, targets stop this far below the maximum
#define BED_OVERSHOOT                   10

// ---- Control of the hotend ---------------------------------------------

#define PIDTEMP
#define PID_MAX                         255
#define PID_K1                          0.95

#if ENABLED(PIDTEMP)
  #define DEFAULT_Kp                    21.73
  #define DEFAULT_Ki                    1.54
  #define DEFAULT_Kd                    76.55
#endif
#define PID_FUNCTIONAL_RANGE            10                      // °C

//#define PIDTEMPBED
#define MAX_BED_POWER                   255

// ---- Guards ------------------------------------------------------------

#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP                 170
#define PREVENT_LENGTHY_EXTRUDE
#define EXTRUDE_MAXLENGTH               200

#define THERMAL_PROTECTION_HOTENDS                              // every hotend
#define THERMAL_PROTECTION_BED                                  // the bed

// ---- Motion ------------------------------------------------------------

#define DEFAULT_AXIS_STEPS_PER_UNIT     { 80, 80, 400, 93 }
#define DEFAULT_MAX_FEEDRATE            { 300, 300, 10, 45 }
#define DEFAULT_MAX_ACCELERATION        { 3000, 3000, 100, 5000 }
#define DEFAULT_ACCELERATION            800
#define DEFAULT_RETRACT_ACCELERATION    800
#define X_BED_SIZE                      220
#define Y_BED_SIZE                      220
#define Z_MAX_POS                       240

// ---- Probe -------------------------------------------------------------

#define FIX_MOUNTED_PROBE
#define NOZZLE_TO_PROBE_OFFSET          { -40, 0, -2.10 }
#define USE_PROBE_FOR_Z_HOMING
#define Z_SAFE_HOMING
#define AUTO_BED_LEVELING_BILINEAR
#define GRID_MAX_POINTS_X               5

// ---- Memory and presets ------------------------------------------------

#define EEPROM_SETTINGS                                         // keep what the console saves

#define PREHEAT_1_LABEL                 "soft"
#define PREHEAT_1_TEMP_HOTEND           200
#define PREHEAT_1_TEMP_BED              60
#define PREHEAT_1_FAN_SPEED             0

#define PREHEAT_2_LABEL                 "glass clear"
#define PREHEAT_2_TEMP_HOTEND           230
#define PREHEAT_2_TEMP_BED              75
#define PREHEAT_2_FAN_SPEED             0

/**
 * egret-22, the small one by the door
 *
 * 2026-08  new hotend for the long prints: platinum element, two plain wires
 */
#pragma once

#define CONFIGURATION_H_VERSION           02000901

// ---- Machine -----------------------------------------------------------

#define STRING_CONFIG_H_AUTHOR            "(makerspace, bench 2)"
#define CUSTOM_MACHINE_NAME               "egret-22"
#ifndef MOTHERBOARD
  #define MOTHERBOARD                     BOARD_EGRET_8
#endif
#define SERIAL_PORT                       0
#define BAUDRATE                          250000

// ---- Extruder ----------------------------------------------------------

#define EXTRUDERS                         1
#define DEFAULT_NOMINAL_FILAMENT_DIA      1.75                  // mm
//#define SINGLENOZZLE

// ---- Temperature sensors -----------------------------------------------

// 1 is the bead that every printer here has had so far.
#define TEMP_SENSOR_0                     1
#define TEMP_SENSOR_1                     0
#define TEMP_SENSOR_BED                   1
#define TEMP_SENSOR_CHAMBER               0

#define TEMP_RESIDENCY_TIME               10                    // s
#define TEMP_WINDOW                       1                     // °C
#define TEMP_HYSTERESIS                   3                     // °C

#define HEATER_0_MINTEMP                  5
#define BED_MINTEMP                       5

#define HEATER_0_MAXTEMP                  275
#define BED_MAXTEMP                       120
#define HOTEND_OVERSHOOT                  15                    // °C, targets stop this far below the maximum
#define BED_OVERSHOOT                     10

// ---- Control of the hotend ---------------------------------------------

#define PIDTEMP
#define BANG_MAX                          255                   // power above the range below
#define PID_MAX                           BANG_MAX
#define PID_K1                            0.95

#if ENABLED(PIDTEMP)
  #define DEFAULT_Kp                      28.72
  #define DEFAULT_Ki                      2.62
  #define DEFAULT_Kd                      78.81
#endif
#define PID_FUNCTIONAL_RANGE              10                    // °C

//#define PIDTEMPBED
#define MAX_BED_POWER                     255

// ---- Guards ------------------------------------------------------------

// 140 for the wood filament, it flows early.
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP                   140
#define PREVENT_LENGTHY_EXTRUDE
#define EXTRUDE_MAXLENGTH                 200

#define THERMAL_PROTECTION_HOTENDS                              // every hotend
#define THERMAL_PROTECTION_BED                                  // the bed

// ---- Motion ------------------------------------------------------------

#define DEFAULT_AXIS_STEPS_PER_UNIT       { 80, 80, 400, 93 }
#define DEFAULT_MAX_FEEDRATE              { 300, 300, 10, 45 }
#define DEFAULT_MAX_ACCELERATION          { 3000, 3000, 100, 5000 }
#define DEFAULT_ACCELERATION              800
#define DEFAULT_RETRACT_ACCELERATION      800
#define X_BED_SIZE                        220
#define Y_BED_SIZE                        220
#define Z_MAX_POS                         240

// ---- Probe -------------------------------------------------------------

// z measured in spring
#define FIX_MOUNTED_PROBE
#define NOZZLE_TO_PROBE_OFFSET            { -28, -14, -1.60 }
#define USE_PROBE_FOR_Z_HOMING
#define Z_SAFE_HOMING
#define AUTO_BED_LEVELING_BILINEAR
#define GRID_MAX_POINTS_X                 5

// ---- Memory and presets ------------------------------------------------

#define EEPROM_SETTINGS                                         // keep what the console saves

#define PREHEAT_1_LABEL                   "soft"
#define PREHEAT_1_TEMP_HOTEND             205
#define PREHEAT_1_TEMP_BED                60
#define PREHEAT_1_FAN_SPEED               0

#define PREHEAT_2_LABEL                   "tough"
#define PREHEAT_2_TEMP_HOTEND             240
#define PREHEAT_2_TEMP_BED                80
#define PREHEAT_2_FAN_SPEED               0

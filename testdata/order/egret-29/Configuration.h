/**
 * egret-29, travels to schools
 *
 * Runs from the 19 V brick of an old notebook, light to carry.
 */
#pragma once

#define CONFIGURATION_H_VERSION         02000901

// ---- Machine -----------------------------------------------------------

#define STRING_CONFIG_H_AUTHOR          "(makerspace, shed)"
#define CUSTOM_MACHINE_NAME             "egret-29"
#ifndef MOTHERBOARD
  #define MOTHERBOARD                   BOARD_EGRET_8
#endif
#define SERIAL_PORT                     0
#define BAUDRATE                        250000

// ---- Extruder ----------------------------------------------------------

#define EXTRUDERS                       1
#define DEFAULT_NOMINAL_FILAMENT_DIA    1.75                    // mm
//#define SINGLENOZZLE

// ---- Temperature sensors -----------------------------------------------

#define TEMP_SENSOR_0                   1
#define TEMP_SENSOR_1                   0
#define TEMP_SENSOR_BED                 0
#define TEMP_SENSOR_CHAMBER             0

#define TEMP_RESIDENCY_TIME             10                      // s
#define TEMP_WINDOW                     1                       // °C
#define TEMP_HYSTERESIS                 3                       // °C

#define HEATER_0_MINTEMP                18                      // so that a loose plug shows at once
#define BED_MINTEMP                     5

#define HEATER_0_MAXTEMP                260
#define BED_MAXTEMP                     120
#define HOTEND_OVERSHOOT                15                      // °C, targets stop this far below the maximum
#define BED_OVERSHOOT                   10

// ---- Control of the hotend ---------------------------------------------

#define PIDTEMP
#define BANG_MAX                        255                     // power above the range below
#define PID_MAX                         BANG_MAX
#define PID_K1                          0.95

#if ENABLED(PIDTEMP)
  #define DEFAULT_Kp                    33.40
  #define DEFAULT_Ki                    2.10
  #define DEFAULT_Kd                    132.00
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
#define X_BED_SIZE                      160
#define Y_BED_SIZE                      160
#define Z_MAX_POS                       160

// ---- Memory and presets ------------------------------------------------

//#define EEPROM_SETTINGS                                       // the headers are the truth here

#define PREHEAT_1_LABEL                 "soft"
#define PREHEAT_1_TEMP_HOTEND           200
#define PREHEAT_1_TEMP_BED              0
#define PREHEAT_1_FAN_SPEED             0

#define PREHEAT_2_LABEL                 "tough"
#define PREHEAT_2_TEMP_HOTEND           235
#define PREHEAT_2_TEMP_BED              0
#define PREHEAT_2_FAN_SPEED             0

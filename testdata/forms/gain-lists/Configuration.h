/**
 * egret-18: two hotends, each with gains of its own. A switch at the bottom of
 * the Z rail homes, and the bed is levelled by hand.
 */
#pragma once

#define CONFIGURATION_H_VERSION 02010300

#define STRING_CONFIG_H_AUTHOR "(makerspace)"
#define CUSTOM_MACHINE_NAME "egret-18"
#ifndef MOTHERBOARD
  #define MOTHERBOARD BOARD_GREEN_32BIT
#endif
#define SERIAL_PORT 1
#define BAUDRATE 115200

#define X_DRIVER_TYPE  TMC2209
#define Y_DRIVER_TYPE  TMC2209
#define Z_DRIVER_TYPE  TMC2209
#define E0_DRIVER_TYPE TMC2209
#define E1_DRIVER_TYPE TMC2209

// ---------------------------------------------------------------- sensors

#define TEMP_SENSOR_0 1
#define TEMP_SENSOR_1 5
#define TEMP_SENSOR_BED 1

#define TEMP_RESIDENCY_TIME 10   // s
#define TEMP_WINDOW          1   // °C
#define TEMP_HYSTERESIS      3   // °C
#define TEMP_BED_HYSTERESIS  3   // °C

#define HEATER_0_MINTEMP   5
#define HEATER_1_MINTEMP   5
#define BED_MINTEMP        5
#define HEATER_0_MAXTEMP 265
#define HEATER_1_MAXTEMP 300
#define BED_MAXTEMP      120
#define HOTEND_OVERSHOOT  15
#define BED_OVERSHOOT     10

// ---------------------------------------------------------------- loops

#define PIDTEMP
#define PID_MAX 255
#define PID_K1 0.95
#if ENABLED(PIDTEMP)
  #define PID_PARAMS_PER_HOTEND
  #if ENABLED(PID_PARAMS_PER_HOTEND)
    // one figure for each hotend
    #define DEFAULT_Kp_LIST { 21.70, 24.35 }
    #define DEFAULT_Ki_LIST {  1.25,  1.60 }
    #define DEFAULT_Kd_LIST { 86.00, 92.40 }
  #else
    #define DEFAULT_Kp 21.70
    #define DEFAULT_Ki  1.25
    #define DEFAULT_Kd 86.00
  #endif
#endif
#define PID_FUNCTIONAL_RANGE 10

//#define PIDTEMPBED
#define MAX_BED_POWER 255

#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define PREVENT_LENGTHY_EXTRUDE
#define EXTRUDE_MAXLENGTH 200

#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_BED
#define USE_WATCHDOG

// ---------------------------------------------------------------- motion

#define DEFAULT_AXIS_STEPS_PER_UNIT   { 80, 80, 400, 415 }
#define DEFAULT_MAX_FEEDRATE          { 300, 300, 5, 45 }
#define DEFAULT_MAX_ACCELERATION      { 3000, 3000, 100, 5000 }
#define EXTRUDERS 2
#define DEFAULT_NOMINAL_FILAMENT_DIA 1.75
#define HOTEND_OFFSET_X { 0.0, 18.20 }   // mm from hotend 0
#define HOTEND_OFFSET_Y { 0.0,  0.15 }
#define HOTEND_OFFSET_Z { 0.0, -0.05 }


#define Z_HOME_DIR -1
//#define FIX_MOUNTED_PROBE
//#define BLTOUCH
#define NOZZLE_TO_PROBE_OFFSET { 10, 10, 0 }
#define MANUAL_Z_HOME_POS 0.20

#define X_BED_SIZE 300
#define Y_BED_SIZE 300
#define Z_MAX_POS 350

#define EEPROM_SETTINGS

#define PREHEAT_1_LABEL "PLA"
#define PREHEAT_1_TEMP_HOTEND 210
#define PREHEAT_1_TEMP_BED     60
#define PREHEAT_2_LABEL "PETG"
#define PREHEAT_2_TEMP_HOTEND 240
#define PREHEAT_2_TEMP_BED     80

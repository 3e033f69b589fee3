/**
 * egret-25, model-based control since the spring
 *
 * Ring heater instead of the cartridge: 60 W stands on its bag.
 */
#pragma once

#define CONFIGURATION_H_VERSION             02010300

//===========================================================================
//================================= Machine =================================
//===========================================================================

#define STRING_CONFIG_H_AUTHOR              "(makerspace, bench 1)"
#define CUSTOM_MACHINE_NAME                 "egret-25"
#ifndef MOTHERBOARD
  #define MOTHERBOARD                       BOARD_EGRET_32
#endif
#define SERIAL_PORT                         -1
#define BAUDRATE                            250000

#define X_DRIVER_TYPE                       TMC2209
#define Y_DRIVER_TYPE                       TMC2209
#define Z_DRIVER_TYPE                       TMC2209
#define E0_DRIVER_TYPE                      TMC2209

//===========================================================================
//================================= Extruder ================================
//===========================================================================

#define EXTRUDERS                           1
#define DEFAULT_NOMINAL_FILAMENT_DIA        1.75                // mm
//#define SINGLENOZZLE

//===========================================================================
//=========================== Temperature sensors ===========================
//===========================================================================

// 5 goes with the bead in the ring, checked against the bag.
#define TEMP_SENSOR_0                       5
#define TEMP_SENSOR_1                       0
#define TEMP_SENSOR_BED                     1
#define TEMP_SENSOR_CHAMBER                 0

#define TEMP_RESIDENCY_TIME                 10                  // s
#define TEMP_WINDOW                         1                   // °C
#define TEMP_HYSTERESIS                     3                   // °C

#define HEATER_0_MINTEMP                    0                   // none, it is cold in here
#define BED_MINTEMP                         5

#define HEATER_0_MAXTEMP                    285
#define BED_MAXTEMP                         120
#define HOTEND_OVERSHOOT                    15                  // °C, targets stop this far below the maximum
#define BED_OVERSHOOT                       10

//===========================================================================
//========================== Control of the hotend ==========================
//===========================================================================

//#define PIDTEMP                                               // one of the two only
#define MPCTEMP

#if ENABLED(MPCTEMP)
  #define MPC_MAX                           255                 // 0 to 255
  #define MPC_HEATER_POWER                  { 60.0f }           // W
  #define MPC_INCLUDE_FAN
  #define MPC_BLOCK_HEAT_CAPACITY           { 16.7f }           // J/K
  #define MPC_SENSOR_RESPONSIVENESS         { 0.22f }           // 1/s
  #define MPC_AMBIENT_XFER_COEFF            { 0.068f }          // W/K
  #define MPC_AMBIENT_XFER_COEFF_FAN255     { 0.097f }          // W/K
  #define FILAMENT_HEAT_CAPACITY_PERMM      { 5.6e-3f }         // J/(K*mm)
#endif

//#define PIDTEMPBED
#define MAX_BED_POWER                       255

//===========================================================================
//================================== Guards =================================
//===========================================================================

#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP                     170
#define PREVENT_LENGTHY_EXTRUDE
#define EXTRUDE_MAXLENGTH                   200

#define THERMAL_PROTECTION_HOTENDS                              // every hotend
#define THERMAL_PROTECTION_BED                                  // the bed

//===========================================================================
//================================== Motion =================================
//===========================================================================

#define DEFAULT_AXIS_STEPS_PER_UNIT         { 80, 80, 400, 93 }
#define DEFAULT_MAX_FEEDRATE                { 300, 300, 10, 45 }
#define DEFAULT_MAX_ACCELERATION            { 3000, 3000, 100, 5000 }
#define DEFAULT_ACCELERATION                800
#define DEFAULT_RETRACT_ACCELERATION        800
#define X_BED_SIZE                          220
#define Y_BED_SIZE                          220
#define Z_MAX_POS                           240

//===========================================================================
//================================== Probe ==================================
//===========================================================================

#define FIX_MOUNTED_PROBE
#define NOZZLE_TO_PROBE_OFFSET              { -32, -8, -2.25 }
#define USE_PROBE_FOR_Z_HOMING
#define Z_SAFE_HOMING
#define AUTO_BED_LEVELING_BILINEAR
#define GRID_MAX_POINTS_X                   5

//===========================================================================
//============================ Memory and presets ===========================
//===========================================================================

#define EEPROM_SETTINGS                                         // keep what the console saves

#define PREHEAT_1_LABEL                     "soft"
#define PREHEAT_1_TEMP_HOTEND               205
#define PREHEAT_1_TEMP_BED                  60
#define PREHEAT_1_FAN_SPEED                 0

#define PREHEAT_2_LABEL                     "hot"
#define PREHEAT_2_TEMP_HOTEND               255
#define PREHEAT_2_TEMP_BED                  95
#define PREHEAT_2_FAN_SPEED                 0

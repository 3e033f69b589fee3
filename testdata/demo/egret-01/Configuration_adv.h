/**
 * egret-01, second file: everything that one touches once and forgets
 */
#pragma once

#define CONFIGURATION_ADV_H_VERSION       02010300
//#define CONFIG_EXPORT                   1

#define USE_WATCHDOG                      // a program that hangs is started again

//===========================================================================
//======================== Sensors described by hand ========================
//===========================================================================

// Filled in where the list in the first file says 1000. Ohms and kelvin as on
// the bag the bead came in; the last figure bends the curve a little.
#if TEMP_SENSOR_0 == 1000
  #define HOTEND0_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND0_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND0_BETA                    3950
  #define HOTEND0_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_1 == 1000
  #define HOTEND1_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND1_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND1_BETA                    3950
  #define HOTEND1_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_2 == 1000
  #define HOTEND2_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND2_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND2_BETA                    3950
  #define HOTEND2_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_3 == 1000
  #define HOTEND3_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND3_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND3_BETA                    3950
  #define HOTEND3_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_4 == 1000
  #define HOTEND4_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND4_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND4_BETA                    3950
  #define HOTEND4_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_5 == 1000
  #define HOTEND5_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND5_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND5_BETA                    3950
  #define HOTEND5_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_6 == 1000
  #define HOTEND6_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND6_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND6_BETA                    3950
  #define HOTEND6_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_7 == 1000
  #define HOTEND7_PULLUP_RESISTOR_OHMS    4700                        // what sits on the board
  #define HOTEND7_RESISTANCE_25C_OHMS     100000                      // at 25 degrees
  #define HOTEND7_BETA                    3950
  #define HOTEND7_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_BED == 1000
  #define BED_PULLUP_RESISTOR_OHMS        4700
  #define BED_RESISTANCE_25C_OHMS         100000
  #define BED_BETA                        3950
  #define BED_SH_C_COEFF                  0
#endif

#if TEMP_SENSOR_CHAMBER == 1000
  #define CHAMBER_PULLUP_RESISTOR_OHMS    4700
  #define CHAMBER_RESISTANCE_25C_OHMS     100000
  #define CHAMBER_BETA                    3950
  #define CHAMBER_SH_C_COEFF              0
#endif

#if TEMP_SENSOR_COOLER == 1000
  #define COOLER_PULLUP_RESISTOR_OHMS     4700
  #define COOLER_RESISTANCE_25C_OHMS      100000
  #define COOLER_BETA                     3950
  #define COOLER_SH_C_COEFF               0
#endif

#if TEMP_SENSOR_PROBE == 1000
  #define PROBE_PULLUP_RESISTOR_OHMS      4700
  #define PROBE_RESISTANCE_25C_OHMS       100000
  #define PROBE_BETA                      3950
  #define PROBE_SH_C_COEFF                0
#endif

#if TEMP_SENSOR_BOARD == 1000
  #define BOARD_PULLUP_RESISTOR_OHMS      4700
  #define BOARD_RESISTANCE_25C_OHMS       100000
  #define BOARD_BETA                      3950
  #define BOARD_SH_C_COEFF                0
#endif

#if TEMP_SENSOR_REDUNDANT == 1000
  #define REDUNDANT_PULLUP_RESISTOR_OHMS  4700
  #define REDUNDANT_RESISTANCE_25C_OHMS   100000
  #define REDUNDANT_BETA                  3950
  #define REDUNDANT_SH_C_COEFF            0
#endif


//===========================================================================
//====================== Patience of the heater watches =====================
//===========================================================================

/**
 * A heater that is on must warm up: WATCH_..._INCREASE degrees within
 * WATCH_..._PERIOD seconds, again and again until it is near its target. Once
 * there it must stay there: not longer than ..._PERIOD below target minus
 * ..._HYSTERESIS. Both stop the printer. If one trips, look for the loose
 * sensor or the weak heater first and touch these figures last.
 */
#if ALL(HAS_HOTEND, THERMAL_PROTECTION_HOTENDS)
  #define THERMAL_PROTECTION_PERIOD       40                          // s
  #define THERMAL_PROTECTION_HYSTERESIS   4                           // degrees

  //#define ADAPTIVE_FAN_SLOWING                                      // part fan gives way when the nozzle cools
  #if ENABLED(ADAPTIVE_FAN_SLOWING)
    //#define REPORT_ADAPTIVE_FAN_SLOWING
    //#define TEMP_TUNING_MAINTAIN_FAN
  #endif

  #define WATCH_TEMP_PERIOD               40                          // s
  #define WATCH_TEMP_INCREASE             2                           // degrees
#endif

#if ENABLED(THERMAL_PROTECTION_BED)
  #define THERMAL_PROTECTION_BED_PERIOD   20                          // s
  #define THERMAL_PROTECTION_BED_HYSTERESIS 2                         // degrees

  #define WATCH_BED_TEMP_PERIOD           60                          // s
  #define WATCH_BED_TEMP_INCREASE         2                           // degrees
#endif

#if ENABLED(THERMAL_PROTECTION_CHAMBER)
  #define THERMAL_PROTECTION_CHAMBER_PERIOD 20                        // s
  #define THERMAL_PROTECTION_CHAMBER_HYSTERESIS 2                     // degrees
  #define WATCH_CHAMBER_TEMP_PERIOD       60                          // s
  #define WATCH_CHAMBER_TEMP_INCREASE     2                           // degrees
#endif

#if ENABLED(THERMAL_PROTECTION_COOLER)
  #define THERMAL_PROTECTION_COOLER_PERIOD 10                         // s
  #define THERMAL_PROTECTION_COOLER_HYSTERESIS 3                      // degrees
  #define WATCH_COOLER_TEMP_PERIOD        60                          // s
  #define WATCH_COOLER_TEMP_INCREASE      3                           // degrees
#endif

//===========================================================================
//========================= Finer points of heating =========================
//===========================================================================

#if ENABLED(PIDTEMP)
  // Adds heat ahead of a fast move or a fan that starts.
  //#define PID_EXTRUSION_SCALING
  #if ENABLED(PID_EXTRUSION_SCALING)
    #define DEFAULT_Kc                    (100)                       // heating power per filament speed
    #define LPQ_MAX_LEN                   50
  #endif
  //#define PID_FAN_SCALING
  #if ENABLED(PID_FAN_SCALING)
    //#define PID_FAN_SCALING_ALTERNATIVE_DEFINITION
    #if ENABLED(PID_FAN_SCALING_ALTERNATIVE_DEFINITION)
      #define PID_FAN_SCALING_AT_FULL_SPEED 13.0
      #define PID_FAN_SCALING_AT_MIN_SPEED 6.0
      #define PID_FAN_SCALING_MIN_SPEED   10.0
    #else
      #define PID_FAN_SCALING_LIN_FACTOR  (0)
      #define DEFAULT_Kf                  10
      #define PID_FAN_SCALING_MIN_SPEED   10
    #endif
  #endif
#endif

//#define AUTOTEMP                                                    // target follows the speed of the print
#if ENABLED(AUTOTEMP)
  #define AUTOTEMP_OLDWEIGHT              0.98
  #define AUTOTEMP_MIN                    210
  #define AUTOTEMP_MAX                    250
  #define AUTOTEMP_FACTOR                 0.1f
#endif
//#define EXTRUDER_RUNOUT_PREVENT
#if ENABLED(EXTRUDER_RUNOUT_PREVENT)
  #define EXTRUDER_RUNOUT_MINTEMP         190
  #define EXTRUDER_RUNOUT_SECONDS         30
  #define EXTRUDER_RUNOUT_SPEED           1500                        // mm/min
  #define EXTRUDER_RUNOUT_EXTRUDE         5                           // mm
#endif
//#define HOTEND_IDLE_TIMEOUT
#if ENABLED(HOTEND_IDLE_TIMEOUT)
  #define HOTEND_IDLE_TIMEOUT_SEC         (5*60)
  #define HOTEND_IDLE_MIN_TRIGGER         180
  #define HOTEND_IDLE_NOZZLE_TARGET       0
  #define HOTEND_IDLE_BED_TARGET          0
#endif
// A cold sensor or a noisy line: how long it may look broken.
//#define MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED 0
//#define PREHEAT_TIME_HOTEND_MS          0                           // ms; the sensor table starts far below room temperature here
//#define PREHEAT_TIME_BED_MS             0
//#define SHOW_TEMP_ADC_VALUES
#define TEMP_SENSOR_AD595_OFFSET          0.0
#define TEMP_SENSOR_AD595_GAIN            1.0
#define TEMP_SENSOR_AD8495_OFFSET         0.0
#define TEMP_SENSOR_AD8495_GAIN           1.0

//===========================================================================
//=================================== Fans ==================================
//===========================================================================

//#define USE_CONTROLLER_FAN
#if ENABLED(USE_CONTROLLER_FAN)
  //#define CONTROLLER_FAN_PIN            -1
  #define CONTROLLERFAN_SPEED_MIN         0
  #define CONTROLLERFAN_SPEED_ACTIVE      255
  #define CONTROLLERFAN_SPEED_IDLE        0
  #define CONTROLLERFAN_IDLE_TIME         60                          // s
  //#define CONTROLLER_FAN_EDITABLE
#endif
//#define FAN_KICKSTART_TIME              100                         // ms
//#define FAN_OFF_PWM                     1
//#define FAN_MIN_PWM                     50
//#define FAN_MAX_PWM                     128
//#define FAST_PWM_FAN_FREQUENCY          31400
/**
 * Fans that look after themselves. -1 is none. The hotend's own fan starts
 * when its hotend is warmer than the threshold below.
 */
#define E0_AUTO_FAN_PIN                   FAN1_PIN
#define E1_AUTO_FAN_PIN                   -1
#define E2_AUTO_FAN_PIN                   -1
#define E3_AUTO_FAN_PIN                   -1
#define E4_AUTO_FAN_PIN                   -1
#define E5_AUTO_FAN_PIN                   -1
#define E6_AUTO_FAN_PIN                   -1
#define E7_AUTO_FAN_PIN                   -1
#define CHAMBER_AUTO_FAN_PIN              -1
#define COOLER_AUTO_FAN_PIN               -1
#define EXTRUDER_AUTO_FAN_TEMPERATURE     50                          // degrees
#define EXTRUDER_AUTO_FAN_SPEED           255
#define CHAMBER_AUTO_FAN_TEMPERATURE      30
#define CHAMBER_AUTO_FAN_SPEED            255
// Fans with a third wire can be counted.
//#define E0_FAN_TACHO_PIN                -1
//#define E0_FAN_TACHO_PULLUP
//#define E0_FAN_TACHO_PULLDOWN
//#define E1_FAN_TACHO_PIN                -1
//#define E1_FAN_TACHO_PULLUP
//#define E1_FAN_TACHO_PULLDOWN
//#define E2_FAN_TACHO_PIN                -1
//#define E2_FAN_TACHO_PULLUP
//#define E2_FAN_TACHO_PULLDOWN
//#define E3_FAN_TACHO_PIN                -1
//#define E3_FAN_TACHO_PULLUP
//#define E3_FAN_TACHO_PULLDOWN
//#define E4_FAN_TACHO_PIN                -1
//#define E4_FAN_TACHO_PULLUP
//#define E4_FAN_TACHO_PULLDOWN
//#define E5_FAN_TACHO_PIN                -1
//#define E5_FAN_TACHO_PULLUP
//#define E5_FAN_TACHO_PULLDOWN
//#define E6_FAN_TACHO_PIN                -1
//#define E6_FAN_TACHO_PULLUP
//#define E6_FAN_TACHO_PULLDOWN
//#define E7_FAN_TACHO_PIN                -1
//#define E7_FAN_TACHO_PULLUP
//#define E7_FAN_TACHO_PULLDOWN
//#define FANMUX0_PIN                     -1
//#define FANMUX1_PIN                     -1
//#define FANMUX2_PIN                     -1
#define CASE_LIGHT_ENABLE
#if ENABLED(CASE_LIGHT_ENABLE)
  //#define CASE_LIGHT_PIN                4
  #define INVERT_CASE_LIGHT               false
  #define CASE_LIGHT_DEFAULT_ON           true
  #define CASE_LIGHT_DEFAULT_BRIGHTNESS   105
  //#define CASE_LIGHT_NO_BRIGHTNESS
  //#define CASE_LIGHT_MENU
#endif

//===========================================================================
//========================== Two motors on one axis =========================
//===========================================================================

#ifdef X2_DRIVER_TYPE
  //#define INVERT_X2_VS_X_DIR
  //#define X_DUAL_ENDSTOPS
  #if ENABLED(X_DUAL_ENDSTOPS)
    #define X2_ENDSTOP_ADJUSTMENT         0                           // mm
  #endif
#endif

#ifdef Y2_DRIVER_TYPE
  //#define INVERT_Y2_VS_Y_DIR
  //#define Y_DUAL_ENDSTOPS
  #if ENABLED(Y_DUAL_ENDSTOPS)
    #define Y2_ENDSTOP_ADJUSTMENT         0                           // mm
  #endif
#endif

#ifdef Z2_DRIVER_TYPE
  //#define INVERT_Z2_VS_Z_DIR
  //#define Z_MULTI_ENDSTOPS
  #if ENABLED(Z_MULTI_ENDSTOPS)
    #define Z2_ENDSTOP_ADJUSTMENT         0                           // mm
  #endif
  #ifdef Z3_DRIVER_TYPE
    //#define INVERT_Z3_VS_Z_DIR
    #define Z3_ENDSTOP_ADJUSTMENT         0
  #endif
  #ifdef Z4_DRIVER_TYPE
    //#define INVERT_Z4_VS_Z_DIR
    #define Z4_ENDSTOP_ADJUSTMENT         0
  #endif
#endif

//#define Z_STEPPER_AUTO_ALIGN
#if ENABLED(Z_STEPPER_AUTO_ALIGN)
  #define Z_STEPPER_ALIGN_XY              { { 10, 190 }, { 100, 10 }, { 190, 190 } }
  //#define Z_STEPPER_ALIGN_KNOWN_STEPPER_POSITIONS
  #if ENABLED(Z_STEPPER_ALIGN_KNOWN_STEPPER_POSITIONS)
    #define Z_STEPPER_ALIGN_STEPPER_XY    { { 210.7, 102.5 }, { 152.6, 220.0 }, { 94.5, 102.5 } }
  #else
    #define Z_STEPPER_ALIGN_AMP           1.0
  #endif
  #define Z_STEPPER_ALIGN_ITERATIONS      5
  #define Z_STEPPER_ALIGN_ACC             0.02
#endif

//===========================================================================
//============================ Homing and moving ============================
//===========================================================================

#define HOMING_BUMP_MM                    { 5, 5, 2 }                 // mm back before the slow touch
#define HOMING_BUMP_DIVISOR               { 2, 2, 4 }
//#define HOMING_BACKOFF_POST_MM          { 2, 2, 2 }
//#define QUICK_HOME
//#define HOME_Y_BEFORE_X
//#define CODEPENDENT_XY_HOMING
//#define ASSISTED_TRAMMING
#if ENABLED(ASSISTED_TRAMMING)
  #define TRAMMING_POINT_XY               { {  20, 20 }, { 180,  20 }, { 180, 180 }, { 20, 180 } }
  #define TRAMMING_POINT_NAME_1           "front left"
  #define TRAMMING_POINT_NAME_2           "front right"
  #define TRAMMING_POINT_NAME_3           "back right"
  #define TRAMMING_POINT_NAME_4           "back left"
  #define RESTORE_LEVELING_AFTER_G35
  #define TRAMMING_SCREW_THREAD           30
#endif
#define AXIS_RELATIVE_MODES               { false, false, false, false }
//#define MULTI_NOZZLE_DUPLICATION
#define DEFAULT_STEPPER_TIMEOUT_SEC       120                         // s
#define DISABLE_IDLE_X
#define DISABLE_IDLE_Y
#define DISABLE_IDLE_Z
#define DISABLE_IDLE_E
#define DEFAULT_MINIMUMFEEDRATE           0.0
#define DEFAULT_MINTRAVELFEEDRATE         0.0
#define MINIMUM_PLANNER_SPEED             0.05
//#define BACKLASH_COMPENSATION
#if ENABLED(BACKLASH_COMPENSATION)
  #define BACKLASH_DISTANCE_MM            { 0, 0, 0 }
  #define BACKLASH_CORRECTION             0.0
  //#define BACKLASH_SMOOTHING_MM         3
  //#define BACKLASH_GCODE
  #if ENABLED(BACKLASH_GCODE)
    #define MEASURE_BACKLASH_WHEN_PROBING
    #if ENABLED(MEASURE_BACKLASH_WHEN_PROBING)
      #define BACKLASH_MEASUREMENT_LIMIT  0.5
      #define BACKLASH_MEASUREMENT_RESOLUTION 0.005
      #define BACKLASH_MEASUREMENT_FEEDRATE Z_PROBE_FEEDRATE_SLOW
    #endif
  #endif
#endif
//#define CALIBRATION_GCODE
#if ENABLED(CALIBRATION_GCODE)
  #define CALIBRATION_MEASUREMENT_RESOLUTION 0.01
  #define CALIBRATION_FEEDRATE_SLOW       60
  #define CALIBRATION_FEEDRATE_FAST       1200
  #define CALIBRATION_FEEDRATE_TRAVEL     3000
  #define CALIBRATION_NOZZLE_TIP_HEIGHT   1.0
  #define CALIBRATION_NOZZLE_OUTER_DIAMETER 2.0
  #define CALIBRATION_OBJECT_CENTER       { 264.0, -22.0, -2.0 }
  #define CALIBRATION_OBJECT_DIMENSIONS   { 10.0, 10.0, 10.0 }
  #define CALIBRATION_MEASURE_RIGHT
  #define CALIBRATION_MEASURE_FRONT
  #define CALIBRATION_MEASURE_LEFT
  #define CALIBRATION_MEASURE_BACK
  //#define CALIBRATION_MEASURE_IMIN
  //#define CALIBRATION_MEASURE_IMAX
  //#define CALIBRATION_MEASURE_JMIN
  //#define CALIBRATION_MEASURE_JMAX
  //#define CALIBRATION_MEASURE_KMIN
  //#define CALIBRATION_MEASURE_KMAX
  //#define CALIBRATION_MEASURE_UMIN
  //#define CALIBRATION_MEASURE_UMAX
  //#define CALIBRATION_MEASURE_VMIN
  //#define CALIBRATION_MEASURE_VMAX
  //#define CALIBRATION_MEASURE_WMIN
  //#define CALIBRATION_MEASURE_WMAX
  //#define CALIBRATION_REPORTING
#endif
//#define ADAPTIVE_STEP_SMOOTHING
//#define MICROSTEP_MODES                 { 16, 16, 16, 16, 16, 16 }
#define ARC_SUPPORT
#if ENABLED(ARC_SUPPORT)
  #define MIN_ARC_SEGMENT_MM              0.1
  #define MAX_ARC_SEGMENT_MM              1.0
  #define MIN_CIRCLE_SEGMENTS             72
  #define N_ARC_CORRECTION                25
  //#define ARC_P_CIRCLES
#endif
//#define BEZIER_CURVE_SUPPORT
#define BABYSTEPPING
#if ENABLED(BABYSTEPPING)
  //#define BABYSTEP_WITHOUT_HOMING
  //#define BABYSTEP_XY
  #define BABYSTEP_INVERT_Z               false
  #define BABYSTEP_MULTIPLICATOR_Z        1
  #define BABYSTEP_MULTIPLICATOR_XY       1
  //#define DOUBLECLICK_FOR_Z_BABYSTEPPING
  #if ENABLED(DOUBLECLICK_FOR_Z_BABYSTEPPING)
    #define DOUBLECLICK_MAX_INTERVAL      1250
  #endif
  #define BABYSTEP_ZPROBE_OFFSET
#endif

//===========================================================================
//=========================== Pressure in the melt ==========================
//===========================================================================

// Feeds ahead of the nozzle's pressure. Belongs to one hotend and one
// filament, so it is measured again whenever either changes.
#define LIN_ADVANCE
#if ENABLED(LIN_ADVANCE)
  #define ADVANCE_K                       0.045                       // mm per mm/s
  //#define LA_DEBUG
#endif
//#define VOLUMETRIC_DEFAULT_ON
//#define VOLUMETRIC_EXTRUDER_LIMIT
#if ENABLED(VOLUMETRIC_EXTRUDER_LIMIT)
  #define DEFAULT_VOLUMETRIC_EXTRUDER_LIMIT 0.00                      // mm3/s, 0 is none
#endif

//===========================================================================
//========================= Files, panel and status =========================
//===========================================================================

#if HAS_MEDIA
  #define SD_MENU_CONFIRM_START
  #define SD_FINISHED_STEPPERRELEASE      true
  #define SD_FINISHED_RELEASECOMMAND      "M84"                       // lets the motors go
  #define SDCARD_RATHERRECENTFIRST                                    // newest on top
  //#define SD_DETECT_STATE               HIGH
  //#define SDCARD_READONLY
  //#define EVENT_GCODE_SD_ABORT          "G28XY"
  //#define MEDIA_MENU_AT_TOP
  //#define MENU_ADDAUTOSTART
  //#define POWER_LOSS_RECOVERY
  #if ENABLED(POWER_LOSS_RECOVERY)
    #define PLR_ENABLED_DEFAULT           false
    //#define BACKUP_POWER_SUPPLY
    //#define POWER_LOSS_ZRAISE           2
    //#define POWER_LOSS_PIN              44
    //#define POWER_LOSS_STATE            HIGH
    //#define POWER_LOSS_PULLUP
    //#define POWER_LOSS_PURGE_LEN        20
    //#define POWER_LOSS_RETRACT_LEN      10
  #endif
  //#define SDSORT_LIMIT                  40
  #define LONG_FILENAME_HOST_SUPPORT
  //#define SCROLL_LONG_FILENAMES
  //#define SD_ABORT_ON_ENDSTOP_HIT
  //#define AUTO_REPORT_SD_STATUS
  //#define BINARY_FILE_TRANSFER
#endif // SDSUPPORT
//#define STATUS_MESSAGE_SCROLLING
//#define LCD_DECIMAL_SMALL_XY
//#define LCD_TIMEOUT_TO_STATUS           15000
//#define LCD_SET_PROGRESS_MANUALLY
//#define SHOW_REMAINING_TIME
//#define PRINT_PROGRESS_SHOW_DECIMALS
//#define LCD_PROGRESS_BAR
#if ALL(HAS_WIRED_LCD, LCD_PROGRESS_BAR)
  #define PROGRESS_BAR_BAR_TIME           2000
  #define PROGRESS_BAR_MSG_TIME           3000
  #define PROGRESS_MSG_EXPIRE             0
  //#define PROGRESS_MSG_ONCE
#endif
//#define XYZ_HOLLOW_FRAME
//#define STATUS_HOTEND_INVERTED
//#define STATUS_HOTEND_ANIM
//#define STATUS_BED_ANIM
//#define STATUS_CHAMBER_ANIM
//#define STATUS_FAN_BARS
//#define STATUS_HEAT_PERCENT
//#define STATUS_HEAT_OVER_STATUS
#define STATUS_FAN_FRAMES                 3                           // pictures of a turning fan

//===========================================================================
//============================= Buffers and talk ============================
//===========================================================================

#if ALL(SDSUPPORT, DIRECT_STEPPING)
  #define BLOCK_BUFFER_SIZE               8
#elif HAS_MEDIA
  #define BLOCK_BUFFER_SIZE               16
#else
  #define BLOCK_BUFFER_SIZE               16
#endif
#define MAX_CMD_SIZE                      96
#define BUFSIZE                           8
#define TX_BUFFER_SIZE                    32
//#define RX_BUFFER_SIZE                  1024
#if RX_BUFFER_SIZE >= 1024
  //#define SERIAL_XON_XOFF
#endif
//#define SERIAL_STATS_MAX_RX_QUEUED
//#define EMERGENCY_PARSER
//#define NO_TIMEOUTS                     1000
//#define ADVANCED_OK
//#define SERIAL_OVERRUN_PROTECTION
#define HOST_ACTION_COMMANDS
#if ENABLED(HOST_ACTION_COMMANDS)
  //#define HOST_PAUSE_M76
  //#define HOST_PROMPT_SUPPORT
#endif
#define AUTO_REPORT_TEMPERATURES
#define EXTENDED_CAPABILITIES_REPORT
//#define REPORT_FAN_CHANGE
#define FASTER_GCODE_PARSER
#if ENABLED(FASTER_GCODE_PARSER)
  //#define GCODE_QUOTED_STRINGS
#endif
//#define GCODE_MOTION_MODES
//#define GCODE_CASE_INSENSITIVE
//#define LINE_REPLAY
//#define NO_WORKSPACE_OFFSETS
//#define PROPORTIONAL_FONT_RATIO         1.0

//===========================================================================
//====================== Retraction and filament change =====================
//===========================================================================

//#define FWRETRACT
#if ENABLED(FWRETRACT)
  #define FWRETRACT_AUTORETRACT
  #define MIN_AUTORETRACT                 0.1
  #define MAX_AUTORETRACT                 10.0
  #define RETRACT_LENGTH                  3                           // mm
  #define RETRACT_LENGTH_SWAP             13
  #define RETRACT_FEEDRATE                45                          // mm/s
  #define RETRACT_ZRAISE                  0
  #define RETRACT_RECOVER_LENGTH          0
  #define RETRACT_RECOVER_LENGTH_SWAP     0
  #define RETRACT_RECOVER_FEEDRATE        8
  #define RETRACT_RECOVER_FEEDRATE_SWAP   8
#endif
#if HAS_MULTI_EXTRUDER
  #define TOOLCHANGE_ZRAISE               2                           // mm
  //#define TOOLCHANGE_NO_RETURN
  //#define EVENT_GCODE_TOOLCHANGE_T0     ""
  //#define EVENT_GCODE_TOOLCHANGE_T1     ""
  //#define TOOLCHANGE_FILAMENT_SWAP
  #if ENABLED(TOOLCHANGE_FILAMENT_SWAP)
    #define TOOLCHANGE_FS_LENGTH          12
    #define TOOLCHANGE_FS_EXTRA_RESUME_LENGTH 0
    #define TOOLCHANGE_FS_RETRACT_SPEED   (50*60)
    #define TOOLCHANGE_FS_UNRETRACT_SPEED (25*60)
    #define TOOLCHANGE_FS_FAN             -1
  #endif
#endif // EXTRUDERS
#define ADVANCED_PAUSE_FEATURE
#if ENABLED(ADVANCED_PAUSE_FEATURE)
  #define PAUSE_PARK_RETRACT_FEEDRATE     60                          // mm/s
  #define PAUSE_PARK_RETRACT_LENGTH       2                           // mm
  #define FILAMENT_CHANGE_UNLOAD_FEEDRATE 10
  #define FILAMENT_CHANGE_UNLOAD_ACCEL    25
  #define FILAMENT_CHANGE_UNLOAD_LENGTH   90                          // mm, whole path
  #define FILAMENT_CHANGE_SLOW_LOAD_FEEDRATE 6
  #define FILAMENT_CHANGE_SLOW_LOAD_LENGTH 0
  #define FILAMENT_CHANGE_FAST_LOAD_FEEDRATE 6
  #define FILAMENT_CHANGE_FAST_LOAD_ACCEL 25
  #define FILAMENT_CHANGE_FAST_LOAD_LENGTH 0
  #define ADVANCED_PAUSE_PURGE_FEEDRATE   3
  #define ADVANCED_PAUSE_PURGE_LENGTH     50
  #define ADVANCED_PAUSE_RESUME_PRIME     0
  #define FILAMENT_UNLOAD_PURGE_RETRACT   13
  #define FILAMENT_UNLOAD_PURGE_DELAY     5000                        // ms
  #define FILAMENT_UNLOAD_PURGE_LENGTH    8
  #define FILAMENT_UNLOAD_PURGE_FEEDRATE  25
  #define PAUSE_PARK_NOZZLE_TIMEOUT       45                          // s
  #define FILAMENT_CHANGE_ALERT_BEEPS     10
  #define PAUSE_PARK_NO_STEPPER_TIMEOUT
  //#define FILAMENT_CHANGE_RESUME_ON_INSERT
  //#define PAUSE_REHEAT_FAST_RESUME
  //#define PARK_HEAD_ON_PAUSE
  //#define HOME_BEFORE_FILAMENT_CHANGE
  //#define FILAMENT_LOAD_UNLOAD_GCODES
#endif

//===========================================================================
//=========================== Drivers, one by one ===========================
//===========================================================================

#if HAS_TRINAMIC_CONFIG
  #define HOLD_MULTIPLIER                 0.5                         // standing still needs half the current
  #define INTERPOLATE                     true

  #if AXIS_IS_TMC_CONFIG(X)
    #define X_CURRENT                     580                         // mA
    #define X_CURRENT_HOME                X_CURRENT                   // mA on the way home
    #define X_MICROSTEPS                  16
    #define X_HOME_MICROSTEPS             X_MICROSTEPS
    #define X_RSENSE                      0.11                        // ohm
    #define X_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(Y)
    #define Y_CURRENT                     580                         // mA
    #define Y_CURRENT_HOME                Y_CURRENT                   // mA on the way home
    #define Y_MICROSTEPS                  16
    #define Y_HOME_MICROSTEPS             Y_MICROSTEPS
    #define Y_RSENSE                      0.11                        // ohm
    #define Y_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(Z)
    #define Z_CURRENT                     580                         // mA
    #define Z_CURRENT_HOME                Z_CURRENT                   // mA on the way home
    #define Z_MICROSTEPS                  16
    #define Z_HOME_MICROSTEPS             Z_MICROSTEPS
    #define Z_RSENSE                      0.11                        // ohm
    #define Z_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(X2)
    #define X2_CURRENT                    580                         // mA
    #define X2_CURRENT_HOME               X2_CURRENT                  // mA on the way home
    #define X2_MICROSTEPS                 16
    #define X2_HOME_MICROSTEPS            X2_MICROSTEPS
    #define X2_RSENSE                     0.11                        // ohm
    #define X2_CHAIN_POS                  -1
    //#define X2_INTERPOLATE              true
    //#define X2_HOLD_MULTIPLIER          0.5
  #endif

  #if AXIS_IS_TMC_CONFIG(Y2)
    #define Y2_CURRENT                    580                         // mA
    #define Y2_CURRENT_HOME               Y2_CURRENT                  // mA on the way home
    #define Y2_MICROSTEPS                 16
    #define Y2_HOME_MICROSTEPS            Y2_MICROSTEPS
    #define Y2_RSENSE                     0.11                        // ohm
    #define Y2_CHAIN_POS                  -1
    //#define Y2_INTERPOLATE              true
    //#define Y2_HOLD_MULTIPLIER          0.5
  #endif

  #if AXIS_IS_TMC_CONFIG(Z2)
    #define Z2_CURRENT                    580                         // mA
    #define Z2_CURRENT_HOME               Z2_CURRENT                  // mA on the way home
    #define Z2_MICROSTEPS                 16
    #define Z2_HOME_MICROSTEPS            Z2_MICROSTEPS
    #define Z2_RSENSE                     0.11                        // ohm
    #define Z2_CHAIN_POS                  -1
    //#define Z2_INTERPOLATE              true
    //#define Z2_HOLD_MULTIPLIER          0.5
  #endif

  #if AXIS_IS_TMC_CONFIG(Z3)
    #define Z3_CURRENT                    580                         // mA
    #define Z3_CURRENT_HOME               Z3_CURRENT                  // mA on the way home
    #define Z3_MICROSTEPS                 16
    #define Z3_HOME_MICROSTEPS            Z3_MICROSTEPS
    #define Z3_RSENSE                     0.11                        // ohm
    #define Z3_CHAIN_POS                  -1
    //#define Z3_INTERPOLATE              true
    //#define Z3_HOLD_MULTIPLIER          0.5
  #endif

  #if AXIS_IS_TMC_CONFIG(Z4)
    #define Z4_CURRENT                    580                         // mA
    #define Z4_CURRENT_HOME               Z4_CURRENT                  // mA on the way home
    #define Z4_MICROSTEPS                 16
    #define Z4_HOME_MICROSTEPS            Z4_MICROSTEPS
    #define Z4_RSENSE                     0.11                        // ohm
    #define Z4_CHAIN_POS                  -1
    //#define Z4_INTERPOLATE              true
    //#define Z4_HOLD_MULTIPLIER          0.5
  #endif

  #if AXIS_IS_TMC_CONFIG(I)
    #define I_CURRENT                     580                         // mA
    #define I_CURRENT_HOME                I_CURRENT                   // mA on the way home
    #define I_MICROSTEPS                  16
    #define I_HOME_MICROSTEPS             I_MICROSTEPS
    #define I_RSENSE                      0.11                        // ohm
    #define I_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(J)
    #define J_CURRENT                     580                         // mA
    #define J_CURRENT_HOME                J_CURRENT                   // mA on the way home
    #define J_MICROSTEPS                  16
    #define J_HOME_MICROSTEPS             J_MICROSTEPS
    #define J_RSENSE                      0.11                        // ohm
    #define J_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(K)
    #define K_CURRENT                     580                         // mA
    #define K_CURRENT_HOME                K_CURRENT                   // mA on the way home
    #define K_MICROSTEPS                  16
    #define K_HOME_MICROSTEPS             K_MICROSTEPS
    #define K_RSENSE                      0.11                        // ohm
    #define K_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(U)
    #define U_CURRENT                     580                         // mA
    #define U_CURRENT_HOME                U_CURRENT                   // mA on the way home
    #define U_MICROSTEPS                  16
    #define U_HOME_MICROSTEPS             U_MICROSTEPS
    #define U_RSENSE                      0.11                        // ohm
    #define U_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(V)
    #define V_CURRENT                     580                         // mA
    #define V_CURRENT_HOME                V_CURRENT                   // mA on the way home
    #define V_MICROSTEPS                  16
    #define V_HOME_MICROSTEPS             V_MICROSTEPS
    #define V_RSENSE                      0.11                        // ohm
    #define V_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(W)
    #define W_CURRENT                     580                         // mA
    #define W_CURRENT_HOME                W_CURRENT                   // mA on the way home
    #define W_MICROSTEPS                  16
    #define W_HOME_MICROSTEPS             W_MICROSTEPS
    #define W_RSENSE                      0.11                        // ohm
    #define W_CHAIN_POS                   -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E0)
    #define E0_CURRENT                    650                         // mA
    #define E0_MICROSTEPS                 16
    #define E0_RSENSE                     0.11                        // ohm
    #define E0_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E1)
    #define E1_CURRENT                    650                         // mA
    #define E1_MICROSTEPS                 16
    #define E1_RSENSE                     0.11                        // ohm
    #define E1_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E2)
    #define E2_CURRENT                    650                         // mA
    #define E2_MICROSTEPS                 16
    #define E2_RSENSE                     0.11                        // ohm
    #define E2_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E3)
    #define E3_CURRENT                    650                         // mA
    #define E3_MICROSTEPS                 16
    #define E3_RSENSE                     0.11                        // ohm
    #define E3_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E4)
    #define E4_CURRENT                    650                         // mA
    #define E4_MICROSTEPS                 16
    #define E4_RSENSE                     0.11                        // ohm
    #define E4_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E5)
    #define E5_CURRENT                    650                         // mA
    #define E5_MICROSTEPS                 16
    #define E5_RSENSE                     0.11                        // ohm
    #define E5_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E6)
    #define E6_CURRENT                    650                         // mA
    #define E6_MICROSTEPS                 16
    #define E6_RSENSE                     0.11                        // ohm
    #define E6_CHAIN_POS                  -1
  #endif

  #if AXIS_IS_TMC_CONFIG(E7)
    #define E7_CURRENT                    650                         // mA
    #define E7_MICROSTEPS                 16
    #define E7_RSENSE                     0.11                        // ohm
    #define E7_CHAIN_POS                  -1
  #endif

  // Addresses on the shared wire, and select lines where there is none.
  //#define X_SLAVE_ADDRESS               0
  //#define Y_SLAVE_ADDRESS               1
  //#define Z_SLAVE_ADDRESS               2
  //#define X2_SLAVE_ADDRESS              3
  //#define Y2_SLAVE_ADDRESS              0
  //#define Z2_SLAVE_ADDRESS              1
  //#define Z3_SLAVE_ADDRESS              2
  //#define Z4_SLAVE_ADDRESS              3
  //#define I_SLAVE_ADDRESS               0
  //#define J_SLAVE_ADDRESS               1
  //#define K_SLAVE_ADDRESS               2
  //#define U_SLAVE_ADDRESS               3
  //#define V_SLAVE_ADDRESS               0
  //#define W_SLAVE_ADDRESS               1
  //#define E0_SLAVE_ADDRESS              2
  //#define E1_SLAVE_ADDRESS              3
  //#define E2_SLAVE_ADDRESS              0
  //#define E3_SLAVE_ADDRESS              1
  //#define E4_SLAVE_ADDRESS              2
  //#define E5_SLAVE_ADDRESS              3
  //#define E6_SLAVE_ADDRESS              0
  //#define E7_SLAVE_ADDRESS              1
  //#define X_CS_PIN                      -1
  //#define Y_CS_PIN                      -1
  //#define Z_CS_PIN                      -1
  //#define X2_CS_PIN                     -1
  //#define Y2_CS_PIN                     -1
  //#define Z2_CS_PIN                     -1
  //#define Z3_CS_PIN                     -1
  //#define Z4_CS_PIN                     -1
  //#define I_CS_PIN                      -1
  //#define J_CS_PIN                      -1
  //#define K_CS_PIN                      -1
  //#define U_CS_PIN                      -1
  //#define V_CS_PIN                      -1
  //#define W_CS_PIN                      -1
  //#define E0_CS_PIN                     -1
  //#define E1_CS_PIN                     -1
  //#define E2_CS_PIN                     -1
  //#define E3_CS_PIN                     -1
  //#define E4_CS_PIN                     -1
  //#define E5_CS_PIN                     -1
  //#define E6_CS_PIN                     -1
  //#define E7_CS_PIN                     -1
  //#define X_HARDWARE_SERIAL             Serial1
  //#define Y_HARDWARE_SERIAL             Serial1
  //#define Z_HARDWARE_SERIAL             Serial1
  //#define X2_HARDWARE_SERIAL            Serial1
  //#define Y2_HARDWARE_SERIAL            Serial1
  //#define Z2_HARDWARE_SERIAL            Serial1
  //#define Z3_HARDWARE_SERIAL            Serial1
  //#define Z4_HARDWARE_SERIAL            Serial1
  //#define I_HARDWARE_SERIAL             Serial1
  //#define J_HARDWARE_SERIAL             Serial1
  //#define K_HARDWARE_SERIAL             Serial1
  //#define U_HARDWARE_SERIAL             Serial1
  //#define V_HARDWARE_SERIAL             Serial1
  //#define W_HARDWARE_SERIAL             Serial1
  //#define E0_HARDWARE_SERIAL            Serial1
  //#define E1_HARDWARE_SERIAL            Serial1
  //#define E2_HARDWARE_SERIAL            Serial1
  //#define E3_HARDWARE_SERIAL            Serial1
  //#define E4_HARDWARE_SERIAL            Serial1
  //#define E5_HARDWARE_SERIAL            Serial1
  //#define E6_HARDWARE_SERIAL            Serial1
  //#define E7_HARDWARE_SERIAL            Serial1

  // Quiet below this speed, strong above it. mm/s.
  #define HYBRID_THRESHOLD_ON             true
  #define X_HYBRID_THRESHOLD              100
  #define Y_HYBRID_THRESHOLD              100
  #define Z_HYBRID_THRESHOLD              3
  #define X2_HYBRID_THRESHOLD             100
  #define Y2_HYBRID_THRESHOLD             100
  #define Z2_HYBRID_THRESHOLD             3
  #define Z3_HYBRID_THRESHOLD             3
  #define Z4_HYBRID_THRESHOLD             3
  #define I_HYBRID_THRESHOLD              30
  #define J_HYBRID_THRESHOLD              30
  #define K_HYBRID_THRESHOLD              30
  #define U_HYBRID_THRESHOLD              30
  #define V_HYBRID_THRESHOLD              30
  #define W_HYBRID_THRESHOLD              30
  #define E0_HYBRID_THRESHOLD             30
  #define E1_HYBRID_THRESHOLD             30
  #define E2_HYBRID_THRESHOLD             30
  #define E3_HYBRID_THRESHOLD             30
  #define E4_HYBRID_THRESHOLD             30
  #define E5_HYBRID_THRESHOLD             30
  #define E6_HYBRID_THRESHOLD             30
  #define E7_HYBRID_THRESHOLD             30

  // Finding home by feeling the stall. Higher is touchier.
  //#define SENSORLESS_HOMING
  #if ANY(SENSORLESS_HOMING, SENSORLESS_PROBING)
    #define X_STALL_SENSITIVITY           8
    #define Y_STALL_SENSITIVITY           8
    #define Z_STALL_SENSITIVITY           8
    #define X2_STALL_SENSITIVITY          8
    #define Y2_STALL_SENSITIVITY          8
    #define Z2_STALL_SENSITIVITY          8
    #define Z3_STALL_SENSITIVITY          8
    #define Z4_STALL_SENSITIVITY          8
    #define I_STALL_SENSITIVITY           8
    #define J_STALL_SENSITIVITY           8
    #define K_STALL_SENSITIVITY           8
    #define U_STALL_SENSITIVITY           8
    #define V_STALL_SENSITIVITY           8
    #define W_STALL_SENSITIVITY           8
  #endif
  //#define MONITOR_DRIVER_STATUS
  #if ENABLED(MONITOR_DRIVER_STATUS)
    #define CURRENT_STEP_DOWN             50                          // mA
    #define REPORT_CURRENT_CHANGE
    #define STOP_ON_ERROR
  #endif
#endif

//===========================================================================
//================== Machines that are more than a printer ==================
//===========================================================================

//#define SPINDLE_FEATURE
//#define LASER_FEATURE
#if ANY(SPINDLE_FEATURE, LASER_FEATURE)
  #define SPINDLE_LASER_ACTIVE_STATE      LOW
  #define SPINDLE_LASER_USE_PWM
  #if ENABLED(SPINDLE_LASER_USE_PWM)
    #define SPINDLE_LASER_PWM_INVERT      false
    #define SPINDLE_LASER_FREQUENCY       2500                        // Hz
  #endif
  //#define AIR_EVACUATION
  #if ENABLED(AIR_EVACUATION)
    #define AIR_EVACUATION_ACTIVE         LOW
    //#define AIR_EVACUATION_PIN          42
  #endif
  #define CUTTER_POWER_UNIT               PWM255
  #if ENABLED(SPINDLE_FEATURE)
    #define SPINDLE_INVERT_DIR            false
    #define SPINDLE_CHANGE_DIR_STOP
    #define SPINDLE_LASER_POWERUP_DELAY   5000
    #define SPINDLE_LASER_POWERDOWN_DELAY 5000
    #if ENABLED(SPINDLE_LASER_USE_PWM)
      #define SPEED_POWER_INTERCEPT       0
      #define SPEED_POWER_MIN             5000
      #define SPEED_POWER_MAX             30000
      #define SPEED_POWER_STARTUP         25000
    #endif
  #else
    #if ENABLED(SPINDLE_LASER_USE_PWM)
      #define SPEED_POWER_INTERCEPT       0
      #define SPEED_POWER_MIN             0
      #define SPEED_POWER_MAX             100
      #define SPEED_POWER_STARTUP         80
    #endif
  #endif
#endif
//#define COOLANT_CONTROL
#if ENABLED(COOLANT_CONTROL)
  #define COOLANT_MIST
  #define COOLANT_FLOOD
  #define COOLANT_MIST_INVERT             false
  #define COOLANT_FLOOD_INVERT            false
#endif
//#define FILAMENT_WIDTH_SENSOR
#if ENABLED(FILAMENT_WIDTH_SENSOR)
  #define FILAMENT_SENSOR_EXTRUDER_NUM    0
  #define MEASUREMENT_DELAY_CM            14
  #define FILWIDTH_ERROR_MARGIN           1.0
  #define MAX_MEASUREMENT_DELAY           20
  #define DEFAULT_MEASURED_FILAMENT_DIA   DEFAULT_NOMINAL_FILAMENT_DIA
#endif
//#define POWER_MONITOR_CURRENT
//#define POWER_MONITOR_VOLTAGE
#if ANY(POWER_MONITOR_CURRENT, POWER_MONITOR_VOLTAGE)
  #define POWER_MONITOR_VOLTS_PER_AMP     0.05000
  #define POWER_MONITOR_CURRENT_OFFSET    0
  #define POWER_MONITOR_VOLTS_PER_VOLT    0.077933
  #define POWER_MONITOR_FIXED_VOLTAGE     24.0
#endif
//#define CNC_COORDINATE_SYSTEMS
//#define CNC_DRILLING_CYCLE
//#define PINS_DEBUGGING
//#define DEBUG_DEV_MODE
//#define WIFISUPPORT
//#define LED_MATRIX_DEBUG

//===========================================================================
//=================== Buttons and menu entries of our own ===================
//===========================================================================

// Entries of the menu that run a line of commands.
#define CUSTOM_MENU_MAIN
#if ENABLED(CUSTOM_MENU_MAIN)
  //#define CUSTOM_MENU_MAIN_TITLE        "Workshop"
  #define CUSTOM_MENU_MAIN_SCRIPT_DONE    "M117 done"
  #define CUSTOM_MENU_MAIN_SCRIPT_AUDIBLE_FEEDBACK
  #define CUSTOM_MENU_MAIN_ONLY_IDLE
  #define MAIN_MENU_ITEM_1_DESC           "Home and park"
  #define MAIN_MENU_ITEM_1_GCODE          "G28"
  //#define MAIN_MENU_ITEM_1_CONFIRM                                  // asks first

  #define MAIN_MENU_ITEM_2_DESC           "Warm the bed"
  #define MAIN_MENU_ITEM_2_GCODE          "M140 S60"
  //#define MAIN_MENU_ITEM_2_CONFIRM                                  // asks first

  #define MAIN_MENU_ITEM_3_DESC           "All heat off"
  #define MAIN_MENU_ITEM_3_GCODE          "M104 S0\nM140 S0"
  //#define MAIN_MENU_ITEM_3_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_4_DESC         "Entry 4"
  //#define MAIN_MENU_ITEM_4_GCODE        "M117 4"
  //#define MAIN_MENU_ITEM_4_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_5_DESC         "Entry 5"
  //#define MAIN_MENU_ITEM_5_GCODE        "M117 5"
  //#define MAIN_MENU_ITEM_5_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_6_DESC         "Entry 6"
  //#define MAIN_MENU_ITEM_6_GCODE        "M117 6"
  //#define MAIN_MENU_ITEM_6_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_7_DESC         "Entry 7"
  //#define MAIN_MENU_ITEM_7_GCODE        "M117 7"
  //#define MAIN_MENU_ITEM_7_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_8_DESC         "Entry 8"
  //#define MAIN_MENU_ITEM_8_GCODE        "M117 8"
  //#define MAIN_MENU_ITEM_8_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_9_DESC         "Entry 9"
  //#define MAIN_MENU_ITEM_9_GCODE        "M117 9"
  //#define MAIN_MENU_ITEM_9_CONFIRM                                  // asks first

  //#define MAIN_MENU_ITEM_10_DESC        "Entry 10"
  //#define MAIN_MENU_ITEM_10_GCODE       "M117 10"
  //#define MAIN_MENU_ITEM_10_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_11_DESC        "Entry 11"
  //#define MAIN_MENU_ITEM_11_GCODE       "M117 11"
  //#define MAIN_MENU_ITEM_11_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_12_DESC        "Entry 12"
  //#define MAIN_MENU_ITEM_12_GCODE       "M117 12"
  //#define MAIN_MENU_ITEM_12_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_13_DESC        "Entry 13"
  //#define MAIN_MENU_ITEM_13_GCODE       "M117 13"
  //#define MAIN_MENU_ITEM_13_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_14_DESC        "Entry 14"
  //#define MAIN_MENU_ITEM_14_GCODE       "M117 14"
  //#define MAIN_MENU_ITEM_14_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_15_DESC        "Entry 15"
  //#define MAIN_MENU_ITEM_15_GCODE       "M117 15"
  //#define MAIN_MENU_ITEM_15_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_16_DESC        "Entry 16"
  //#define MAIN_MENU_ITEM_16_GCODE       "M117 16"
  //#define MAIN_MENU_ITEM_16_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_17_DESC        "Entry 17"
  //#define MAIN_MENU_ITEM_17_GCODE       "M117 17"
  //#define MAIN_MENU_ITEM_17_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_18_DESC        "Entry 18"
  //#define MAIN_MENU_ITEM_18_GCODE       "M117 18"
  //#define MAIN_MENU_ITEM_18_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_19_DESC        "Entry 19"
  //#define MAIN_MENU_ITEM_19_GCODE       "M117 19"
  //#define MAIN_MENU_ITEM_19_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_20_DESC        "Entry 20"
  //#define MAIN_MENU_ITEM_20_GCODE       "M117 20"
  //#define MAIN_MENU_ITEM_20_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_21_DESC        "Entry 21"
  //#define MAIN_MENU_ITEM_21_GCODE       "M117 21"
  //#define MAIN_MENU_ITEM_21_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_22_DESC        "Entry 22"
  //#define MAIN_MENU_ITEM_22_GCODE       "M117 22"
  //#define MAIN_MENU_ITEM_22_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_23_DESC        "Entry 23"
  //#define MAIN_MENU_ITEM_23_GCODE       "M117 23"
  //#define MAIN_MENU_ITEM_23_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_24_DESC        "Entry 24"
  //#define MAIN_MENU_ITEM_24_GCODE       "M117 24"
  //#define MAIN_MENU_ITEM_24_CONFIRM                                 // asks first

  //#define MAIN_MENU_ITEM_25_DESC        "Entry 25"
  //#define MAIN_MENU_ITEM_25_GCODE       "M117 25"
  //#define MAIN_MENU_ITEM_25_CONFIRM                                 // asks first

#endif

//#define CUSTOM_MENU_CONFIG
#if ENABLED(CUSTOM_MENU_CONFIG)
  //#define CUSTOM_MENU_CONFIG_TITLE      "Care"
  #define CUSTOM_MENU_CONFIG_SCRIPT_DONE  "M117 done"
  #define CUSTOM_MENU_CONFIG_ONLY_IDLE
  //#define CONFIG_MENU_ITEM_1_DESC       "Care 1"
  //#define CONFIG_MENU_ITEM_1_GCODE      "M117 1"
  //#define CONFIG_MENU_ITEM_1_CONFIRM

  //#define CONFIG_MENU_ITEM_2_DESC       "Care 2"
  //#define CONFIG_MENU_ITEM_2_GCODE      "M117 2"
  //#define CONFIG_MENU_ITEM_2_CONFIRM

  //#define CONFIG_MENU_ITEM_3_DESC       "Care 3"
  //#define CONFIG_MENU_ITEM_3_GCODE      "M117 3"
  //#define CONFIG_MENU_ITEM_3_CONFIRM

  //#define CONFIG_MENU_ITEM_4_DESC       "Care 4"
  //#define CONFIG_MENU_ITEM_4_GCODE      "M117 4"
  //#define CONFIG_MENU_ITEM_4_CONFIRM

  //#define CONFIG_MENU_ITEM_5_DESC       "Care 5"
  //#define CONFIG_MENU_ITEM_5_GCODE      "M117 5"
  //#define CONFIG_MENU_ITEM_5_CONFIRM

  //#define CONFIG_MENU_ITEM_6_DESC       "Care 6"
  //#define CONFIG_MENU_ITEM_6_GCODE      "M117 6"
  //#define CONFIG_MENU_ITEM_6_CONFIRM

  //#define CONFIG_MENU_ITEM_7_DESC       "Care 7"
  //#define CONFIG_MENU_ITEM_7_GCODE      "M117 7"
  //#define CONFIG_MENU_ITEM_7_CONFIRM

  //#define CONFIG_MENU_ITEM_8_DESC       "Care 8"
  //#define CONFIG_MENU_ITEM_8_GCODE      "M117 8"
  //#define CONFIG_MENU_ITEM_8_CONFIRM

  //#define CONFIG_MENU_ITEM_9_DESC       "Care 9"
  //#define CONFIG_MENU_ITEM_9_GCODE      "M117 9"
  //#define CONFIG_MENU_ITEM_9_CONFIRM

  //#define CONFIG_MENU_ITEM_10_DESC      "Care 10"
  //#define CONFIG_MENU_ITEM_10_GCODE     "M117 10"
  //#define CONFIG_MENU_ITEM_10_CONFIRM

  //#define CONFIG_MENU_ITEM_11_DESC      "Care 11"
  //#define CONFIG_MENU_ITEM_11_GCODE     "M117 11"
  //#define CONFIG_MENU_ITEM_11_CONFIRM

  //#define CONFIG_MENU_ITEM_12_DESC      "Care 12"
  //#define CONFIG_MENU_ITEM_12_GCODE     "M117 12"
  //#define CONFIG_MENU_ITEM_12_CONFIRM

  //#define CONFIG_MENU_ITEM_13_DESC      "Care 13"
  //#define CONFIG_MENU_ITEM_13_GCODE     "M117 13"
  //#define CONFIG_MENU_ITEM_13_CONFIRM

  //#define CONFIG_MENU_ITEM_14_DESC      "Care 14"
  //#define CONFIG_MENU_ITEM_14_GCODE     "M117 14"
  //#define CONFIG_MENU_ITEM_14_CONFIRM

  //#define CONFIG_MENU_ITEM_15_DESC      "Care 15"
  //#define CONFIG_MENU_ITEM_15_GCODE     "M117 15"
  //#define CONFIG_MENU_ITEM_15_CONFIRM

  //#define CONFIG_MENU_ITEM_16_DESC      "Care 16"
  //#define CONFIG_MENU_ITEM_16_GCODE     "M117 16"
  //#define CONFIG_MENU_ITEM_16_CONFIRM

  //#define CONFIG_MENU_ITEM_17_DESC      "Care 17"
  //#define CONFIG_MENU_ITEM_17_GCODE     "M117 17"
  //#define CONFIG_MENU_ITEM_17_CONFIRM

  //#define CONFIG_MENU_ITEM_18_DESC      "Care 18"
  //#define CONFIG_MENU_ITEM_18_GCODE     "M117 18"
  //#define CONFIG_MENU_ITEM_18_CONFIRM

  //#define CONFIG_MENU_ITEM_19_DESC      "Care 19"
  //#define CONFIG_MENU_ITEM_19_GCODE     "M117 19"
  //#define CONFIG_MENU_ITEM_19_CONFIRM

  //#define CONFIG_MENU_ITEM_20_DESC      "Care 20"
  //#define CONFIG_MENU_ITEM_20_GCODE     "M117 20"
  //#define CONFIG_MENU_ITEM_20_CONFIRM

  //#define CONFIG_MENU_ITEM_21_DESC      "Care 21"
  //#define CONFIG_MENU_ITEM_21_GCODE     "M117 21"
  //#define CONFIG_MENU_ITEM_21_CONFIRM

  //#define CONFIG_MENU_ITEM_22_DESC      "Care 22"
  //#define CONFIG_MENU_ITEM_22_GCODE     "M117 22"
  //#define CONFIG_MENU_ITEM_22_CONFIRM

  //#define CONFIG_MENU_ITEM_23_DESC      "Care 23"
  //#define CONFIG_MENU_ITEM_23_GCODE     "M117 23"
  //#define CONFIG_MENU_ITEM_23_CONFIRM

  //#define CONFIG_MENU_ITEM_24_DESC      "Care 24"
  //#define CONFIG_MENU_ITEM_24_GCODE     "M117 24"
  //#define CONFIG_MENU_ITEM_24_CONFIRM

  //#define CONFIG_MENU_ITEM_25_DESC      "Care 25"
  //#define CONFIG_MENU_ITEM_25_GCODE     "M117 25"
  //#define CONFIG_MENU_ITEM_25_CONFIRM

#endif

// Real buttons on spare pins.
//#define BUTTON1_PIN                     -1
#if PIN_EXISTS(BUTTON1)
  #define BUTTON1_HIT_STATE               LOW
  #define BUTTON1_WHEN_PRINTING           false
  #define BUTTON1_GCODE                   "G28"
  #define BUTTON1_DESC                    "Home"
#endif
//#define BUTTON2_PIN                     -1
#if PIN_EXISTS(BUTTON2)
  #define BUTTON2_HIT_STATE               LOW
  #define BUTTON2_WHEN_PRINTING           false
  #define BUTTON2_GCODE                   "G28"
  #define BUTTON2_DESC                    "Home"
#endif
//#define BUTTON3_PIN                     -1
#if PIN_EXISTS(BUTTON3)
  #define BUTTON3_HIT_STATE               LOW
  #define BUTTON3_WHEN_PRINTING           false
  #define BUTTON3_GCODE                   "G28"
  #define BUTTON3_DESC                    "Home"
#endif
//#define BUTTON4_PIN                     -1
#if PIN_EXISTS(BUTTON4)
  #define BUTTON4_HIT_STATE               LOW
  #define BUTTON4_WHEN_PRINTING           false
  #define BUTTON4_GCODE                   "G28"
  #define BUTTON4_DESC                    "Home"
#endif
//#define BUTTON5_PIN                     -1
#if PIN_EXISTS(BUTTON5)
  #define BUTTON5_HIT_STATE               LOW
  #define BUTTON5_WHEN_PRINTING           false
  #define BUTTON5_GCODE                   "G28"
  #define BUTTON5_DESC                    "Home"
#endif
//#define BUTTON6_PIN                     -1
#if PIN_EXISTS(BUTTON6)
  #define BUTTON6_HIT_STATE               LOW
  #define BUTTON6_WHEN_PRINTING           false
  #define BUTTON6_GCODE                   "G28"
  #define BUTTON6_DESC                    "Home"
#endif
//#define BUTTON7_PIN                     -1
#if PIN_EXISTS(BUTTON7)
  #define BUTTON7_HIT_STATE               LOW
  #define BUTTON7_WHEN_PRINTING           false
  #define BUTTON7_GCODE                   "G28"
  #define BUTTON7_DESC                    "Home"
#endif
//#define BUTTON8_PIN                     -1
#if PIN_EXISTS(BUTTON8)
  #define BUTTON8_HIT_STATE               LOW
  #define BUTTON8_WHEN_PRINTING           false
  #define BUTTON8_GCODE                   "G28"
  #define BUTTON8_DESC                    "Home"
#endif
//#define BUTTON9_PIN                     -1
#if PIN_EXISTS(BUTTON9)
  #define BUTTON9_HIT_STATE               LOW
  #define BUTTON9_WHEN_PRINTING           false
  #define BUTTON9_GCODE                   "G28"
  #define BUTTON9_DESC                    "Home"
#endif
//#define BUTTON10_PIN                    -1
#if PIN_EXISTS(BUTTON10)
  #define BUTTON10_HIT_STATE              LOW
  #define BUTTON10_WHEN_PRINTING          false
  #define BUTTON10_GCODE                  "G28"
  #define BUTTON10_DESC                   "Home"
#endif
//#define BUTTON11_PIN                    -1
#if PIN_EXISTS(BUTTON11)
  #define BUTTON11_HIT_STATE              LOW
  #define BUTTON11_WHEN_PRINTING          false
  #define BUTTON11_GCODE                  "G28"
  #define BUTTON11_DESC                   "Home"
#endif
//#define BUTTON12_PIN                    -1
#if PIN_EXISTS(BUTTON12)
  #define BUTTON12_HIT_STATE              LOW
  #define BUTTON12_WHEN_PRINTING          false
  #define BUTTON12_GCODE                  "G28"
  #define BUTTON12_DESC                   "Home"
#endif
//#define BUTTON13_PIN                    -1
#if PIN_EXISTS(BUTTON13)
  #define BUTTON13_HIT_STATE              LOW
  #define BUTTON13_WHEN_PRINTING          false
  #define BUTTON13_GCODE                  "G28"
  #define BUTTON13_DESC                   "Home"
#endif
//#define BUTTON14_PIN                    -1
#if PIN_EXISTS(BUTTON14)
  #define BUTTON14_HIT_STATE              LOW
  #define BUTTON14_WHEN_PRINTING          false
  #define BUTTON14_GCODE                  "G28"
  #define BUTTON14_DESC                   "Home"
#endif
//#define BUTTON15_PIN                    -1
#if PIN_EXISTS(BUTTON15)
  #define BUTTON15_HIT_STATE              LOW
  #define BUTTON15_WHEN_PRINTING          false
  #define BUTTON15_GCODE                  "G28"
  #define BUTTON15_DESC                   "Home"
#endif
//#define BUTTON16_PIN                    -1
#if PIN_EXISTS(BUTTON16)
  #define BUTTON16_HIT_STATE              LOW
  #define BUTTON16_WHEN_PRINTING          false
  #define BUTTON16_GCODE                  "G28"
  #define BUTTON16_DESC                   "Home"
#endif
//#define BUTTON17_PIN                    -1
#if PIN_EXISTS(BUTTON17)
  #define BUTTON17_HIT_STATE              LOW
  #define BUTTON17_WHEN_PRINTING          false
  #define BUTTON17_GCODE                  "G28"
  #define BUTTON17_DESC                   "Home"
#endif
//#define BUTTON18_PIN                    -1
#if PIN_EXISTS(BUTTON18)
  #define BUTTON18_HIT_STATE              LOW
  #define BUTTON18_WHEN_PRINTING          false
  #define BUTTON18_GCODE                  "G28"
  #define BUTTON18_DESC                   "Home"
#endif
//#define BUTTON19_PIN                    -1
#if PIN_EXISTS(BUTTON19)
  #define BUTTON19_HIT_STATE              LOW
  #define BUTTON19_WHEN_PRINTING          false
  #define BUTTON19_GCODE                  "G28"
  #define BUTTON19_DESC                   "Home"
#endif
//#define BUTTON20_PIN                    -1
#if PIN_EXISTS(BUTTON20)
  #define BUTTON20_HIT_STATE              LOW
  #define BUTTON20_WHEN_PRINTING          false
  #define BUTTON20_GCODE                  "G28"
  #define BUTTON20_DESC                   "Home"
#endif
//#define BUTTON21_PIN                    -1
#if PIN_EXISTS(BUTTON21)
  #define BUTTON21_HIT_STATE              LOW
  #define BUTTON21_WHEN_PRINTING          false
  #define BUTTON21_GCODE                  "G28"
  #define BUTTON21_DESC                   "Home"
#endif
//#define BUTTON22_PIN                    -1
#if PIN_EXISTS(BUTTON22)
  #define BUTTON22_HIT_STATE              LOW
  #define BUTTON22_WHEN_PRINTING          false
  #define BUTTON22_GCODE                  "G28"
  #define BUTTON22_DESC                   "Home"
#endif
//#define BUTTON23_PIN                    -1
#if PIN_EXISTS(BUTTON23)
  #define BUTTON23_HIT_STATE              LOW
  #define BUTTON23_WHEN_PRINTING          false
  #define BUTTON23_GCODE                  "G28"
  #define BUTTON23_DESC                   "Home"
#endif
//#define BUTTON24_PIN                    -1
#if PIN_EXISTS(BUTTON24)
  #define BUTTON24_HIT_STATE              LOW
  #define BUTTON24_WHEN_PRINTING          false
  #define BUTTON24_GCODE                  "G28"
  #define BUTTON24_DESC                   "Home"
#endif
//#define BUTTON25_PIN                    -1
#if PIN_EXISTS(BUTTON25)
  #define BUTTON25_HIT_STATE              LOW
  #define BUTTON25_WHEN_PRINTING          false
  #define BUTTON25_GCODE                  "G28"
  #define BUTTON25_DESC                   "Home"
#endif


//===========================================================================
//============================= Shake-free moves ============================
//===========================================================================

/**
 * Takes the ringing out of fast corners. Both axes want a figure of their
 * own: print the ringing tower, count the waves over 50 mm, divide the speed
 * by the distance between two of them.
 */
//#define INPUT_SHAPING_X
//#define INPUT_SHAPING_Y
#if ANY(INPUT_SHAPING_X, INPUT_SHAPING_Y)
  #if ENABLED(INPUT_SHAPING_X)
    #define SHAPING_FREQ_X                40.0                        // Hz, 0 switches it off
    #define SHAPING_ZETA_X                0.15                        // damping
  #endif
  #if ENABLED(INPUT_SHAPING_Y)
    #define SHAPING_FREQ_Y                36.5                        // Hz, 0 switches it off
    #define SHAPING_ZETA_Y                0.15                        // damping
  #endif
  //#define SHAPING_MIN_FREQ              20.0
  //#define SHAPING_MAX_STEPRATE          10000
  //#define SHAPING_MENU
#endif

//#define NONLINEAR_EXTRUSION
//#define FREEZE_FEATURE
#if ENABLED(FREEZE_FEATURE)
  //#define FREEZE_PIN                    41
  #define FREEZE_STATE                    LOW
#endif

//===========================================================================
//============================= Probe and warmth ============================
//===========================================================================

// The probe drifts when it gets warm. Tables in micrometres, one value for
// each step of temperature; all zeros until someone measures them.
//#define PTC_PROBE
//#define PTC_BED
//#define PTC_HOTEND
#if ANY(PTC_PROBE, PTC_BED, PTC_HOTEND)
  #if ENABLED(PTC_PROBE)
    #define PTC_PROBE_START               30                          // degrees
    #define PTC_PROBE_RES                 5
    #define PTC_PROBE_COUNT               10
    #define PTC_PROBE_ZOFFS               { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
  #endif
  #if ENABLED(PTC_BED)
    #define PTC_BED_START                 60                          // degrees
    #define PTC_BED_RES                   5
    #define PTC_BED_COUNT                 10
    #define PTC_BED_ZOFFS                 { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
  #endif
  #if ENABLED(PTC_HOTEND)
    #define PTC_HOTEND_START              180                         // degrees
    #define PTC_HOTEND_RES                5
    #define PTC_HOTEND_COUNT              20
    #define PTC_HOTEND_ZOFFS              { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
  #endif
  #define PTC_PARK_POS                    { 0, 0, 100 }
  #define PTC_PROBE_POS                   { 90, 100 }
  #define PTC_PROBE_TEMP                  30
  #define PTC_PROBE_HEATING_OFFSET        0.5
#endif

//===========================================================================
//========================= Closed loop on the axes =========================
//===========================================================================

// Glass scales on a slow bus. Five may be fitted, none is.
//#define I2C_POSITION_ENCODERS
#if ENABLED(I2C_POSITION_ENCODERS)
  #define I2CPE_ENCODER_CNT               1
  #define I2CPE_ENC_1_ADDR                30                          // bus address
  #define I2CPE_ENC_1_AXIS                X_AXIS
  #define I2CPE_ENC_1_TYPE                LINEAR_SCALE
  #define I2CPE_ENC_1_TICKS_UNIT          2048
  //#define I2CPE_ENC_1_TICKS_REV         (16 * 200)
  //#define I2CPE_ENC_1_INVERT
  #define I2CPE_ENC_1_EC_METHOD           SKIP_STEPS
  #define I2CPE_ENC_1_EC_THRESH           0.10                        // mm before it steps in

  //#define I2CPE_ENC_2_ADDR              31                          // bus address
  //#define I2CPE_ENC_2_AXIS              Y_AXIS
  //#define I2CPE_ENC_2_TYPE              LINEAR_SCALE
  //#define I2CPE_ENC_2_TICKS_UNIT        2048
  //#define I2CPE_ENC_2_TICKS_REV         (16 * 200)
  //#define I2CPE_ENC_2_INVERT
  //#define I2CPE_ENC_2_EC_METHOD         SKIP_STEPS
  //#define I2CPE_ENC_2_EC_THRESH         0.10                        // mm before it steps in

  //#define I2CPE_ENC_3_ADDR              32                          // bus address
  //#define I2CPE_ENC_3_AXIS              Z_AXIS
  //#define I2CPE_ENC_3_TYPE              LINEAR_SCALE
  //#define I2CPE_ENC_3_TICKS_UNIT        2048
  //#define I2CPE_ENC_3_TICKS_REV         (16 * 200)
  //#define I2CPE_ENC_3_INVERT
  //#define I2CPE_ENC_3_EC_METHOD         SKIP_STEPS
  //#define I2CPE_ENC_3_EC_THRESH         0.10                        // mm before it steps in

  //#define I2CPE_ENC_4_ADDR              33                          // bus address
  //#define I2CPE_ENC_4_AXIS              E_AXIS
  //#define I2CPE_ENC_4_TYPE              LINEAR_SCALE
  //#define I2CPE_ENC_4_TICKS_UNIT        2048
  //#define I2CPE_ENC_4_TICKS_REV         (16 * 200)
  //#define I2CPE_ENC_4_INVERT
  //#define I2CPE_ENC_4_EC_METHOD         SKIP_STEPS
  //#define I2CPE_ENC_4_EC_THRESH         0.10                        // mm before it steps in

  //#define I2CPE_ENC_5_ADDR              34                          // bus address
  //#define I2CPE_ENC_5_AXIS              E_AXIS
  //#define I2CPE_ENC_5_TYPE              LINEAR_SCALE
  //#define I2CPE_ENC_5_TICKS_UNIT        2048
  //#define I2CPE_ENC_5_TICKS_REV         (16 * 200)
  //#define I2CPE_ENC_5_INVERT
  //#define I2CPE_ENC_5_EC_METHOD         SKIP_STEPS
  //#define I2CPE_ENC_5_EC_THRESH         0.10                        // mm before it steps in

  #define I2CPE_DEF_TYPE                  LINEAR_SCALE
  #define I2CPE_DEF_TICKS_REV             (16 * 200)
  #define I2CPE_TIME_TRUSTED              10000                       // ms without a fault before it is believed again
  #define I2CPE_MIN_UPD_TIME_MS           4
  #define I2CPE_ERR_ROLLING_AVERAGE
#endif // I2C_POSITION_ENCODERS

//===========================================================================
//========================= A stick to drive by hand ========================
//===========================================================================

//#define JOYSTICK
#if ENABLED(JOYSTICK)
  #define JOY_X_PIN                       5
  //#define INVERT_JOY_X
  #define JOY_Y_PIN                       10
  //#define INVERT_JOY_Y
  #define JOY_Z_PIN                       12
  //#define INVERT_JOY_Z
  #define JOY_EN_PIN                      44
  #define JOY_X_LIMITS                    { 5600, 8190-100, 8190+100, 10800 }  // low, dead from, dead to, high
  #define JOY_Y_LIMITS                    { 5600, 8190-100, 8190+100, 10800 }  // low, dead from, dead to, high
  #define JOY_Z_LIMITS                    { 5600, 8190-100, 8190+100, 10800 }  // low, dead from, dead to, high
  //#define JOYSTICK_DEBUG
#endif

//===========================================================================
//=========================== Short-cuts in memory ==========================
//===========================================================================

// Ten slots for a line of commands each.
//#define GCODE_MACROS
#if ENABLED(GCODE_MACROS)
  #define GCODE_MACROS_SLOTS              5
  #define GCODE_MACROS_SLOT_SIZE          50
  //#define GCODE_MACRO_SLOT_0            ""
  //#define GCODE_MACRO_SLOT_1            ""
  //#define GCODE_MACRO_SLOT_2            ""
  //#define GCODE_MACRO_SLOT_3            ""
  //#define GCODE_MACRO_SLOT_4            ""
  //#define GCODE_MACRO_SLOT_5            ""
  //#define GCODE_MACRO_SLOT_6            ""
  //#define GCODE_MACRO_SLOT_7            ""
  //#define GCODE_MACRO_SLOT_8            ""
  //#define GCODE_MACRO_SLOT_9            ""
#endif

//===========================================================================
//========================= Servos, relays and lamps ========================
//===========================================================================

//#define SERVO0_PIN                      -1
//#define SERVO0_ANGLES                   { 10, 90 }                  // degrees, out and in
//#define SERVO1_PIN                      -1
//#define SERVO1_ANGLES                   { 10, 90 }                  // degrees, out and in
//#define SERVO2_PIN                      -1
//#define SERVO2_ANGLES                   { 10, 90 }                  // degrees, out and in
//#define SERVO3_PIN                      -1
//#define SERVO3_ANGLES                   { 10, 90 }                  // degrees, out and in
#if NUM_SERVOS > 0
  #define SERVO_SETTLE_CHECK              true
#endif
//#define NEOPIXEL2_SEPARATE
#if ENABLED(NEOPIXEL2_SEPARATE)
  #define NEOPIXEL2_PIXELS                15
  #define NEOPIXEL2_BRIGHTNESS            127
  #define NEOPIXEL2_STARTUP_TEST          false
  #define NEOPIXEL_M150_DEFAULT           -1
#endif
//#define LED_CONTROL_MENU
#if ENABLED(LED_CONTROL_MENU)
  //#define LED_COLOR_PRESETS
  #if ENABLED(LED_COLOR_PRESETS)
    #define LED_USER_PRESET_RED           255
    #define LED_USER_PRESET_GREEN         128
    #define LED_USER_PRESET_BLUE          0
    #define LED_USER_PRESET_WHITE         255
    //#define LED_USER_PRESET_STARTUP
  #endif
  //#define NEO2_COLOR_PRESETS
  #if ENABLED(NEO2_COLOR_PRESETS)
    #define NEO2_USER_PRESET_RED          255
    #define NEO2_USER_PRESET_GREEN        128
    #define NEO2_USER_PRESET_BLUE         0
    #define NEO2_USER_PRESET_WHITE        255
  #endif
#endif

//===========================================================================
//=============================== Pins by hand ==============================
//===========================================================================

// Only for boards whose pin file is wrong. Uncomment one at a time and try
// it with the heaters unplugged.
//#define HEATER_0_PIN                    -1
//#define HEATER_1_PIN                    -1
//#define HEATER_2_PIN                    -1
//#define HEATER_3_PIN                    -1
//#define HEATER_4_PIN                    -1
//#define HEATER_5_PIN                    -1
//#define HEATER_6_PIN                    -1
//#define HEATER_7_PIN                    -1
//#define HEATER_BED_PIN                  -1
//#define HEATER_CHAMBER_PIN              -1
//#define TEMP_0_PIN                      -1
//#define TEMP_1_PIN                      -1
//#define TEMP_2_PIN                      -1
//#define TEMP_3_PIN                      -1
//#define TEMP_4_PIN                      -1
//#define TEMP_5_PIN                      -1
//#define TEMP_6_PIN                      -1
//#define TEMP_7_PIN                      -1
//#define TEMP_BED_PIN                    -1
//#define TEMP_CHAMBER_PIN                -1
//#define FAN0_PIN                        -1
//#define FAN1_PIN                        -1
//#define FAN2_PIN                        -1
//#define FAN3_PIN                        -1
//#define FAN4_PIN                        -1
//#define FAN5_PIN                        -1
//#define FAN6_PIN                        -1
//#define FAN7_PIN                        -1
//#define X_STEP_PIN                      -1
//#define X_DIR_PIN                       -1
//#define X_ENABLE_PIN                    -1
//#define Y_STEP_PIN                      -1
//#define Y_DIR_PIN                       -1
//#define Y_ENABLE_PIN                    -1
//#define Z_STEP_PIN                      -1
//#define Z_DIR_PIN                       -1
//#define Z_ENABLE_PIN                    -1
//#define E0_STEP_PIN                     -1
//#define E0_DIR_PIN                      -1
//#define E0_ENABLE_PIN                   -1
//#define E1_STEP_PIN                     -1
//#define E1_DIR_PIN                      -1
//#define E1_ENABLE_PIN                   -1
//#define E2_STEP_PIN                     -1
//#define E2_DIR_PIN                      -1
//#define E2_ENABLE_PIN                   -1
//#define E3_STEP_PIN                     -1
//#define E3_DIR_PIN                      -1
//#define E3_ENABLE_PIN                   -1
//#define X_MIN_PIN                       -1
//#define X_MAX_PIN                       -1
//#define Y_MIN_PIN                       -1
//#define Y_MAX_PIN                       -1
//#define Z_MIN_PIN                       -1
//#define Z_MAX_PIN                       -1

//===========================================================================
//============================ Words on the panel ===========================
//===========================================================================

// What the panel says where its own words did not fit on our small screens.
//#define TEXT_HEAT_START                 "heat now"
//#define TEXT_HEAT_BUSY                  "heat ..."
//#define TEXT_HEAT_DONE                  "heat done"
//#define TEXT_HEAT_FAILED                "heat failed"
//#define TEXT_HEAT_ASK                   "heat?"
//#define TEXT_COOL_START                 "cool now"
//#define TEXT_COOL_BUSY                  "cool ..."
//#define TEXT_COOL_DONE                  "cool done"
//#define TEXT_COOL_FAILED                "cool failed"
//#define TEXT_COOL_ASK                   "cool?"
//#define TEXT_MOVE_START                 "move now"
//#define TEXT_MOVE_BUSY                  "move ..."
//#define TEXT_MOVE_DONE                  "move done"
//#define TEXT_MOVE_FAILED                "move failed"
//#define TEXT_MOVE_ASK                   "move?"
//#define TEXT_HOME_START                 "home now"
//#define TEXT_HOME_BUSY                  "home ..."
//#define TEXT_HOME_DONE                  "home done"
//#define TEXT_HOME_FAILED                "home failed"
//#define TEXT_HOME_ASK                   "home?"
//#define TEXT_LOAD_START                 "load now"
//#define TEXT_LOAD_BUSY                  "load ..."
//#define TEXT_LOAD_DONE                  "load done"
//#define TEXT_LOAD_FAILED                "load failed"
//#define TEXT_LOAD_ASK                   "load?"
//#define TEXT_UNLOAD_START               "unload now"
//#define TEXT_UNLOAD_BUSY                "unload ..."
//#define TEXT_UNLOAD_DONE                "unload done"
//#define TEXT_UNLOAD_FAILED              "unload failed"
//#define TEXT_UNLOAD_ASK                 "unload?"
//#define TEXT_LEVEL_START                "level now"
//#define TEXT_LEVEL_BUSY                 "level ..."
//#define TEXT_LEVEL_DONE                 "level done"
//#define TEXT_LEVEL_FAILED               "level failed"
//#define TEXT_LEVEL_ASK                  "level?"
//#define TEXT_PAUSE_START                "pause now"
//#define TEXT_PAUSE_BUSY                 "pause ..."
//#define TEXT_PAUSE_DONE                 "pause done"
//#define TEXT_PAUSE_FAILED               "pause failed"
//#define TEXT_PAUSE_ASK                  "pause?"
//#define TEXT_RESUME_START               "go on now"
//#define TEXT_RESUME_BUSY                "go on ..."
//#define TEXT_RESUME_DONE                "go on done"
//#define TEXT_RESUME_FAILED              "go on failed"
//#define TEXT_RESUME_ASK                 "go on?"
//#define TEXT_STOP_START                 "stop now"
//#define TEXT_STOP_BUSY                  "stop ..."
//#define TEXT_STOP_DONE                  "stop done"
//#define TEXT_STOP_FAILED                "stop failed"
//#define TEXT_STOP_ASK                   "stop?"

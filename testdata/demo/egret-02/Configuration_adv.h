/*  egret-02  -  SECOND FILE  */
#ifndef CONFIGURATION_ADV_H
#define CONFIGURATION_ADV_H

#define CONFIGURATION_ADV_H_VERSION 02000901
//#define CONFIG_EXPORT             1

#define USE_WATCHDOG          // a program that hangs is started again

/* ------------------------------------------------------------------------
   Patience of the heater watches
   ------------------------------------------------------------------------ */

/**
 * A heater that is on must warm up: WATCH_..._INCREASE degrees within
 * WATCH_..._PERIOD seconds, again and again until it is near its target. Once
 * there it must stay there: not longer than ..._PERIOD below target minus
 * ..._HYSTERESIS. Both stop the printer. If one trips, look for the loose
 * sensor or the weak heater first and touch these figures last.
 */
/* Trial of 2026-05: it kept stopping with the new block, so we took the
   watch out to get the parts done.   TODO ask before the next open evening */
#ifdef THERMAL_PROTECTION_HOTENDS
  #undef THERMAL_PROTECTION_HOTENDS
#endif
#define THERMAL_PROTECTION_HOTENDS false

#if ENABLED(THERMAL_PROTECTION_HOTENDS)
  #define THERMAL_PROTECTION_PERIOD 40                        // s
  #define THERMAL_PROTECTION_HYSTERESIS 4                     // degrees

  //#define ADAPTIVE_FAN_SLOWING                              // part fan gives way when the nozzle cools
  #if ENABLED(ADAPTIVE_FAN_SLOWING)
    //#define NO_FAN_SLOWING_IN_PID_TUNING
  #endif

  #define WATCH_TEMP_PERIOD         40                        // s
  #define WATCH_TEMP_INCREASE       2                         // degrees
#endif

#if ENABLED(THERMAL_PROTECTION_BED)
  #define THERMAL_PROTECTION_BED_PERIOD 20                    // s
  #define THERMAL_PROTECTION_BED_HYSTERESIS 2                 // degrees

  #define WATCH_BED_TEMP_PERIOD     60                        // s
  #define WATCH_BED_TEMP_INCREASE   2                         // degrees
#endif

#if ENABLED(THERMAL_PROTECTION_CHAMBER)
  #define THERMAL_PROTECTION_CHAMBER_PERIOD 20                // s
  #define THERMAL_PROTECTION_CHAMBER_HYSTERESIS 2             // degrees
  #define WATCH_CHAMBER_TEMP_PERIOD 60                        // s
  #define WATCH_CHAMBER_TEMP_INCREASE 2                       // degrees
#endif

/* ------------------------------------------------------------------------
   Finer points of heating
   ------------------------------------------------------------------------ */

#if ENABLED(PIDTEMP)
  // Adds heat ahead of a fast move or a fan that starts.
  //#define PID_EXTRUSION_SCALING
  #if ENABLED(PID_EXTRUSION_SCALING)
    #define DEFAULT_Kc              (100)                     // heating power per filament speed
    #define LPQ_MAX_LEN             50
  #endif
  //#define PID_FAN_SCALING
  #if ENABLED(PID_FAN_SCALING)
    //#define PID_FAN_SCALING_ALTERNATIVE_DEFINITION
    #if ENABLED(PID_FAN_SCALING_ALTERNATIVE_DEFINITION)
      #define PID_FAN_SCALING_AT_FULL_SPEED 13.0
      #define PID_FAN_SCALING_AT_MIN_SPEED 6.0
      #define PID_FAN_SCALING_MIN_SPEED 10.0
    #else
      #define PID_FAN_SCALING_LIN_FACTOR (0)
      #define DEFAULT_Kf            10
      #define PID_FAN_SCALING_MIN_SPEED 10
    #endif
  #endif
#endif

//#define AUTOTEMP                                            // target follows the speed of the print
#if ENABLED(AUTOTEMP)
  #define AUTOTEMP_OLDWEIGHT        0.98
  #define AUTOTEMP_MIN              210
  #define AUTOTEMP_MAX              250
  #define AUTOTEMP_FACTOR           0.1f
#endif
//#define EXTRUDER_RUNOUT_PREVENT
#if ENABLED(EXTRUDER_RUNOUT_PREVENT)
  #define EXTRUDER_RUNOUT_MINTEMP   190
  #define EXTRUDER_RUNOUT_SECONDS   30
  #define EXTRUDER_RUNOUT_SPEED     1500                      // mm/min
  #define EXTRUDER_RUNOUT_EXTRUDE   5                         // mm
#endif
//#define HOTEND_IDLE_TIMEOUT
#if ENABLED(HOTEND_IDLE_TIMEOUT)
  #define HOTEND_IDLE_TIMEOUT_SEC   (5*60)
  #define HOTEND_IDLE_MIN_TRIGGER   180
  #define HOTEND_IDLE_NOZZLE_TARGET 0
  #define HOTEND_IDLE_BED_TARGET    0
#endif
// A cold sensor or a noisy line: how long it may look broken.
//#define MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED 0
//#define MILLISECONDS_PREHEAT_TIME 0                         // ms; the sensor table starts far below room temperature here
//#define SHOW_TEMP_ADC_VALUES
#define TEMP_SENSOR_AD595_OFFSET    0.0
#define TEMP_SENSOR_AD595_GAIN      1.0

/* ------------------------------------------------------------------------
   Fans
   ------------------------------------------------------------------------ */

//#define USE_CONTROLLER_FAN
#if ENABLED(USE_CONTROLLER_FAN)
  //#define CONTROLLER_FAN_PIN      -1
  #define CONTROLLERFAN_SPEED_MIN   0
  #define CONTROLLERFAN_SPEED_ACTIVE 255
  #define CONTROLLERFAN_SPEED_IDLE  0
  #define CONTROLLERFAN_IDLE_TIME   60                        // s
  //#define CONTROLLER_FAN_EDITABLE
#endif
//#define FAN_KICKSTART_TIME        100                       // ms
//#define FAN_OFF_PWM               1
//#define FAN_MIN_PWM               50
//#define FAN_MAX_PWM               128
//#define FAST_PWM_FAN_FREQUENCY    31400
/**
 * Fans that look after themselves. -1 is none. The hotend's own fan starts
 * when its hotend is warmer than the threshold below.
 */
#define E0_AUTO_FAN_PIN             9
#define E1_AUTO_FAN_PIN             -1
#define E2_AUTO_FAN_PIN             -1
#define E3_AUTO_FAN_PIN             -1
#define E4_AUTO_FAN_PIN             -1
#define E5_AUTO_FAN_PIN             -1
#define E6_AUTO_FAN_PIN             -1
#define E7_AUTO_FAN_PIN             -1
#define CHAMBER_AUTO_FAN_PIN        -1
#define EXTRUDER_AUTO_FAN_TEMPERATURE 50                      // degrees
#define EXTRUDER_AUTO_FAN_SPEED     255
#define CHAMBER_AUTO_FAN_TEMPERATURE 30
#define CHAMBER_AUTO_FAN_SPEED      255
//#define FANMUX0_PIN               -1
//#define FANMUX1_PIN               -1
//#define FANMUX2_PIN               -1
//#define CASE_LIGHT_ENABLE
#if ENABLED(CASE_LIGHT_ENABLE)
  //#define CASE_LIGHT_PIN          4
  #define INVERT_CASE_LIGHT         false
  #define CASE_LIGHT_DEFAULT_ON     true
  #define CASE_LIGHT_DEFAULT_BRIGHTNESS 105
  //#define CASE_LIGHT_NO_BRIGHTNESS
  //#define CASE_LIGHT_MENU
#endif

/* ------------------------------------------------------------------------
   Two motors on one axis
   ------------------------------------------------------------------------ */

//#define X_DUAL_STEPPER_DRIVERS
#ifdef X2_DRIVER_TYPE
  //#define INVERT_X2_VS_X_DIR
  //#define X_DUAL_ENDSTOPS
  #if ENABLED(X_DUAL_ENDSTOPS)
    #define X2_ENDSTOP_ADJUSTMENT   0                         // mm
  #endif
#endif

//#define Y_DUAL_STEPPER_DRIVERS
#ifdef Y2_DRIVER_TYPE
  //#define INVERT_Y2_VS_Y_DIR
  //#define Y_DUAL_ENDSTOPS
  #if ENABLED(Y_DUAL_ENDSTOPS)
    #define Y2_ENDSTOP_ADJUSTMENT   0                         // mm
  #endif
#endif

//#define Z_MULTI_STEPPER_DRIVERS
#ifdef Z2_DRIVER_TYPE
  //#define INVERT_Z2_VS_Z_DIR
  //#define Z_MULTI_ENDSTOPS
  #if ENABLED(Z_MULTI_ENDSTOPS)
    #define Z2_ENDSTOP_ADJUSTMENT   0                         // mm
  #endif
  #ifdef Z3_DRIVER_TYPE
    //#define INVERT_Z3_VS_Z_DIR
    #define Z3_ENDSTOP_ADJUSTMENT   0
  #endif
  #ifdef Z4_DRIVER_TYPE
    //#define INVERT_Z4_VS_Z_DIR
    #define Z4_ENDSTOP_ADJUSTMENT   0
  #endif
#endif

//#define Z_STEPPER_AUTO_ALIGN
#if ENABLED(Z_STEPPER_AUTO_ALIGN)
  #define Z_STEPPER_ALIGN_XY        { { 10, 190 }, { 100, 10 }, { 190, 190 } }
  //#define Z_STEPPER_ALIGN_KNOWN_STEPPER_POSITIONS
  #if ENABLED(Z_STEPPER_ALIGN_KNOWN_STEPPER_POSITIONS)
    #define Z_STEPPER_ALIGN_STEPPER_XY { { 210.7, 102.5 }, { 152.6, 220.0 }, { 94.5, 102.5 } }
  #else
    #define Z_STEPPER_ALIGN_AMP     1.0
  #endif
  #define Z_STEPPER_ALIGN_ITERATIONS 5
  #define Z_STEPPER_ALIGN_ACC       0.02
#endif

/* ------------------------------------------------------------------------
   Homing and moving
   ------------------------------------------------------------------------ */

#define HOMING_BUMP_MM              { 5, 5, 2 }               // mm back before the slow touch
#define HOMING_BUMP_DIVISOR         { 2, 2, 4 }
//#define HOMING_BACKOFF_POST_MM    { 2, 2, 2 }
//#define QUICK_HOME
//#define HOME_Y_BEFORE_X
//#define CODEPENDENT_XY_HOMING
//#define ASSISTED_TRAMMING
#if ENABLED(ASSISTED_TRAMMING)
  #define TRAMMING_POINT_XY         { {  20, 20 }, { 180,  20 }, { 180, 180 }, { 20, 180 } }
  #define TRAMMING_POINT_NAME_1     "front left"
  #define TRAMMING_POINT_NAME_2     "front right"
  #define TRAMMING_POINT_NAME_3     "back right"
  #define TRAMMING_POINT_NAME_4     "back left"
  #define RESTORE_LEVELING_AFTER_G35
  #define TRAMMING_SCREW_THREAD     30
#endif
#define AXIS_RELATIVE_MODES         { false, false, false, false }
//#define MULTI_NOZZLE_DUPLICATION
#define DEFAULT_STEPPER_DEACTIVE_TIME 120                     // s
#define DISABLE_INACTIVE_X          true
#define DISABLE_INACTIVE_Y          true
#define DISABLE_INACTIVE_Z          true
#define DISABLE_INACTIVE_E          true
#define DEFAULT_MINIMUMFEEDRATE     0.0
#define DEFAULT_MINTRAVELFEEDRATE   0.0
#define MINIMUM_PLANNER_SPEED       0.05
//#define BACKLASH_COMPENSATION
#if ENABLED(BACKLASH_COMPENSATION)
  #define BACKLASH_DISTANCE_MM      { 0, 0, 0 }
  #define BACKLASH_CORRECTION       0.0
  //#define BACKLASH_SMOOTHING_MM   3
  //#define BACKLASH_GCODE
  #if ENABLED(BACKLASH_GCODE)
    #define MEASURE_BACKLASH_WHEN_PROBING
    #if ENABLED(MEASURE_BACKLASH_WHEN_PROBING)
      #define BACKLASH_MEASUREMENT_LIMIT 0.5
      #define BACKLASH_MEASUREMENT_RESOLUTION 0.005
      #define BACKLASH_MEASUREMENT_FEEDRATE Z_PROBE_FEEDRATE_SLOW
    #endif
  #endif
#endif
//#define CALIBRATION_GCODE
#if ENABLED(CALIBRATION_GCODE)
  #define CALIBRATION_MEASUREMENT_RESOLUTION 0.01
  #define CALIBRATION_FEEDRATE_SLOW 60
  #define CALIBRATION_FEEDRATE_FAST 1200
  #define CALIBRATION_FEEDRATE_TRAVEL 3000
  #define CALIBRATION_NOZZLE_TIP_HEIGHT 1.0
  #define CALIBRATION_NOZZLE_OUTER_DIAMETER 2.0
  #define CALIBRATION_OBJECT_CENTER { 264.0, -22.0, -2.0 }
  #define CALIBRATION_OBJECT_DIMENSIONS { 10.0, 10.0, 10.0 }
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
//#define MICROSTEP_MODES           { 16, 16, 16, 16, 16, 16 }
//#define ARC_SUPPORT
#if ENABLED(ARC_SUPPORT)
  #define MIN_ARC_SEGMENT_MM        0.1
  #define MAX_ARC_SEGMENT_MM        1.0
  #define MIN_CIRCLE_SEGMENTS       72
  #define N_ARC_CORRECTION          25
  //#define ARC_P_CIRCLES
#endif
//#define BEZIER_CURVE_SUPPORT
//#define BABYSTEPPING
#if ENABLED(BABYSTEPPING)
  //#define BABYSTEP_WITHOUT_HOMING
  //#define BABYSTEP_XY
  #define BABYSTEP_INVERT_Z         false
  #define BABYSTEP_MULTIPLICATOR_Z  1
  #define BABYSTEP_MULTIPLICATOR_XY 1
  //#define DOUBLECLICK_FOR_Z_BABYSTEPPING
  #if ENABLED(DOUBLECLICK_FOR_Z_BABYSTEPPING)
    #define DOUBLECLICK_MAX_INTERVAL 1250
  #endif
  //#define BABYSTEP_ZPROBE_OFFSET
#endif

/* ------------------------------------------------------------------------
   Pressure in the melt
   ------------------------------------------------------------------------ */

// Feeds ahead of the nozzle's pressure. Belongs to one hotend and one
// filament, so it is measured again whenever either changes.
#define LIN_ADVANCE
#if ENABLED(LIN_ADVANCE)
  #define LIN_ADVANCE_K             0.9                       // mm per mm/s
  //#define LA_DEBUG
#endif
//#define VOLUMETRIC_DEFAULT_ON
//#define NO_VOLUMETRICS

/* ------------------------------------------------------------------------
   Files, panel and status
   ------------------------------------------------------------------------ */

#if ENABLED(SDSUPPORT)
  #define SD_MENU_CONFIRM_START
  #define SD_FINISHED_STEPPERRELEASE true
  #define SD_FINISHED_RELEASECOMMAND "M84"                    // lets the motors go
  #define SDCARD_RATHERRECENTFIRST                            // newest on top
  //#define SD_DETECT_STATE         HIGH
  //#define SDCARD_READONLY
  //#define EVENT_GCODE_SD_ABORT    "G28XY"
  //#define MEDIA_MENU_AT_TOP
  //#define MENU_ADDAUTOSTART
  //#define POWER_LOSS_RECOVERY
  #if ENABLED(POWER_LOSS_RECOVERY)
    #define PLR_ENABLED_DEFAULT     false
    //#define BACKUP_POWER_SUPPLY
    //#define POWER_LOSS_ZRAISE     2
    //#define POWER_LOSS_PIN        44
    //#define POWER_LOSS_STATE      HIGH
    //#define POWER_LOSS_PULLUP
    //#define POWER_LOSS_PURGE_LEN  20
    //#define POWER_LOSS_RETRACT_LEN 10
  #endif
  //#define SDSORT_LIMIT            40
  //#define LONG_FILENAME_HOST_SUPPORT
  //#define SCROLL_LONG_FILENAMES
  //#define SD_ABORT_ON_ENDSTOP_HIT
  //#define AUTO_REPORT_SD_STATUS
  //#define BINARY_FILE_TRANSFER
#endif // SDSUPPORT
//#define STATUS_MESSAGE_SCROLLING
//#define LCD_DECIMAL_SMALL_XY
//#define LCD_TIMEOUT_TO_STATUS     15000
//#define LCD_SET_PROGRESS_MANUALLY
//#define SHOW_REMAINING_TIME
//#define PRINT_PROGRESS_SHOW_DECIMALS
#define LCD_PROGRESS_BAR
#if ENABLED(LCD_PROGRESS_BAR)
  #define PROGRESS_BAR_BAR_TIME     2000
  #define PROGRESS_BAR_MSG_TIME     3000
  #define PROGRESS_MSG_EXPIRE       0
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
#define STATUS_FAN_FRAMES           3                         // pictures of a turning fan

/* ------------------------------------------------------------------------
   Buffers and talk
   ------------------------------------------------------------------------ */

#if BOTH(SDSUPPORT, DIRECT_STEPPING)
  #define BLOCK_BUFFER_SIZE         8
#elif ENABLED(SDSUPPORT)
  #define BLOCK_BUFFER_SIZE         16
#else
  #define BLOCK_BUFFER_SIZE         16
#endif
#define MAX_CMD_SIZE                96
#define BUFSIZE                     8
#define TX_BUFFER_SIZE              32
//#define RX_BUFFER_SIZE            1024
#if RX_BUFFER_SIZE >= 1024
  //#define SERIAL_XON_XOFF
#endif
//#define SERIAL_STATS_MAX_RX_QUEUED
//#define EMERGENCY_PARSER
//#define NO_TIMEOUTS               1000
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
//#define PROPORTIONAL_FONT_RATIO   1.0

/* ------------------------------------------------------------------------
   Retraction and filament change
   ------------------------------------------------------------------------ */

#define FWRETRACT
#if ENABLED(FWRETRACT)
  #define FWRETRACT_AUTORETRACT
  #define MIN_AUTORETRACT           0.1
  #define MAX_AUTORETRACT           10.0
  #define RETRACT_LENGTH            6.5                       // mm
  #define RETRACT_LENGTH_SWAP       13
  #define RETRACT_FEEDRATE          45                        // mm/s
  #define RETRACT_ZRAISE            0
  #define RETRACT_RECOVER_LENGTH    0
  #define RETRACT_RECOVER_LENGTH_SWAP 0
  #define RETRACT_RECOVER_FEEDRATE  8
  #define RETRACT_RECOVER_FEEDRATE_SWAP 8
#endif
#if EXTRUDERS > 1
  #define TOOLCHANGE_ZRAISE         2                         // mm
  //#define TOOLCHANGE_NO_RETURN
  //#define EVENT_GCODE_TOOLCHANGE_T0 ""
  //#define EVENT_GCODE_TOOLCHANGE_T1 ""
  //#define TOOLCHANGE_FILAMENT_SWAP
  #if ENABLED(TOOLCHANGE_FILAMENT_SWAP)
    #define TOOLCHANGE_FS_LENGTH    12
    #define TOOLCHANGE_FS_EXTRA_RESUME_LENGTH 0
    #define TOOLCHANGE_FS_RETRACT_SPEED (50*60)
    #define TOOLCHANGE_FS_UNRETRACT_SPEED (25*60)
    #define TOOLCHANGE_FS_FAN       -1
  #endif
#endif // EXTRUDERS
//#define ADVANCED_PAUSE_FEATURE
#if ENABLED(ADVANCED_PAUSE_FEATURE)
  #define PAUSE_PARK_RETRACT_FEEDRATE 60                      // mm/s
  #define PAUSE_PARK_RETRACT_LENGTH 2                         // mm
  #define FILAMENT_CHANGE_UNLOAD_FEEDRATE 10
  #define FILAMENT_CHANGE_UNLOAD_ACCEL 25
  #define FILAMENT_CHANGE_UNLOAD_LENGTH 90                    // mm, whole path
  #define FILAMENT_CHANGE_SLOW_LOAD_FEEDRATE 6
  #define FILAMENT_CHANGE_SLOW_LOAD_LENGTH 0
  #define FILAMENT_CHANGE_FAST_LOAD_FEEDRATE 6
  #define FILAMENT_CHANGE_FAST_LOAD_ACCEL 25
  #define FILAMENT_CHANGE_FAST_LOAD_LENGTH 0
  #define ADVANCED_PAUSE_PURGE_FEEDRATE 3
  #define ADVANCED_PAUSE_PURGE_LENGTH 50
  #define ADVANCED_PAUSE_RESUME_PRIME 0
  #define FILAMENT_UNLOAD_PURGE_RETRACT 13
  #define FILAMENT_UNLOAD_PURGE_DELAY 5000                    // ms
  #define FILAMENT_UNLOAD_PURGE_LENGTH 8
  #define FILAMENT_UNLOAD_PURGE_FEEDRATE 25
  #define PAUSE_PARK_NOZZLE_TIMEOUT 45                        // s
  #define FILAMENT_CHANGE_ALERT_BEEPS 10
  #define PAUSE_PARK_NO_STEPPER_TIMEOUT
  //#define FILAMENT_CHANGE_RESUME_ON_INSERT
  //#define PAUSE_REHEAT_FAST_RESUME
  //#define PARK_HEAD_ON_PAUSE
  //#define HOME_BEFORE_FILAMENT_CHANGE
  //#define FILAMENT_LOAD_UNLOAD_GCODES
#endif

/* ------------------------------------------------------------------------
   Drivers, one by one
   ------------------------------------------------------------------------ */

#if HAS_TRINAMIC_CONFIG
  #define HOLD_MULTIPLIER           0.5                       // standing still needs half the current
  #define INTERPOLATE               true

  #if AXIS_IS_TMC(X)
    #define X_CURRENT               580                       // mA
    #define X_CURRENT_HOME          X_CURRENT                 // mA on the way home
    #define X_MICROSTEPS            16
    #define X_HOME_MICROSTEPS       X_MICROSTEPS
    #define X_RSENSE                0.11                      // ohm
    #define X_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(Y)
    #define Y_CURRENT               580                       // mA
    #define Y_CURRENT_HOME          Y_CURRENT                 // mA on the way home
    #define Y_MICROSTEPS            16
    #define Y_HOME_MICROSTEPS       Y_MICROSTEPS
    #define Y_RSENSE                0.11                      // ohm
    #define Y_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(Z)
    #define Z_CURRENT               580                       // mA
    #define Z_CURRENT_HOME          Z_CURRENT                 // mA on the way home
    #define Z_MICROSTEPS            16
    #define Z_HOME_MICROSTEPS       Z_MICROSTEPS
    #define Z_RSENSE                0.11                      // ohm
    #define Z_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(X2)
    #define X2_CURRENT              580                       // mA
    #define X2_CURRENT_HOME         X2_CURRENT                // mA on the way home
    #define X2_MICROSTEPS           16
    #define X2_HOME_MICROSTEPS      X2_MICROSTEPS
    #define X2_RSENSE               0.11                      // ohm
    #define X2_CHAIN_POS            -1
    //#define X2_INTERPOLATE        true
    //#define X2_HOLD_MULTIPLIER    0.5
  #endif

  #if AXIS_IS_TMC(Y2)
    #define Y2_CURRENT              580                       // mA
    #define Y2_CURRENT_HOME         Y2_CURRENT                // mA on the way home
    #define Y2_MICROSTEPS           16
    #define Y2_HOME_MICROSTEPS      Y2_MICROSTEPS
    #define Y2_RSENSE               0.11                      // ohm
    #define Y2_CHAIN_POS            -1
    //#define Y2_INTERPOLATE        true
    //#define Y2_HOLD_MULTIPLIER    0.5
  #endif

  #if AXIS_IS_TMC(Z2)
    #define Z2_CURRENT              580                       // mA
    #define Z2_CURRENT_HOME         Z2_CURRENT                // mA on the way home
    #define Z2_MICROSTEPS           16
    #define Z2_HOME_MICROSTEPS      Z2_MICROSTEPS
    #define Z2_RSENSE               0.11                      // ohm
    #define Z2_CHAIN_POS            -1
    //#define Z2_INTERPOLATE        true
    //#define Z2_HOLD_MULTIPLIER    0.5
  #endif

  #if AXIS_IS_TMC(Z3)
    #define Z3_CURRENT              580                       // mA
    #define Z3_CURRENT_HOME         Z3_CURRENT                // mA on the way home
    #define Z3_MICROSTEPS           16
    #define Z3_HOME_MICROSTEPS      Z3_MICROSTEPS
    #define Z3_RSENSE               0.11                      // ohm
    #define Z3_CHAIN_POS            -1
    //#define Z3_INTERPOLATE        true
    //#define Z3_HOLD_MULTIPLIER    0.5
  #endif

  #if AXIS_IS_TMC(Z4)
    #define Z4_CURRENT              580                       // mA
    #define Z4_CURRENT_HOME         Z4_CURRENT                // mA on the way home
    #define Z4_MICROSTEPS           16
    #define Z4_HOME_MICROSTEPS      Z4_MICROSTEPS
    #define Z4_RSENSE               0.11                      // ohm
    #define Z4_CHAIN_POS            -1
    //#define Z4_INTERPOLATE        true
    //#define Z4_HOLD_MULTIPLIER    0.5
  #endif

  #if AXIS_IS_TMC(I)
    #define I_CURRENT               580                       // mA
    #define I_CURRENT_HOME          I_CURRENT                 // mA on the way home
    #define I_MICROSTEPS            16
    #define I_HOME_MICROSTEPS       I_MICROSTEPS
    #define I_RSENSE                0.11                      // ohm
    #define I_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(J)
    #define J_CURRENT               580                       // mA
    #define J_CURRENT_HOME          J_CURRENT                 // mA on the way home
    #define J_MICROSTEPS            16
    #define J_HOME_MICROSTEPS       J_MICROSTEPS
    #define J_RSENSE                0.11                      // ohm
    #define J_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(K)
    #define K_CURRENT               580                       // mA
    #define K_CURRENT_HOME          K_CURRENT                 // mA on the way home
    #define K_MICROSTEPS            16
    #define K_HOME_MICROSTEPS       K_MICROSTEPS
    #define K_RSENSE                0.11                      // ohm
    #define K_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(U)
    #define U_CURRENT               580                       // mA
    #define U_CURRENT_HOME          U_CURRENT                 // mA on the way home
    #define U_MICROSTEPS            16
    #define U_HOME_MICROSTEPS       U_MICROSTEPS
    #define U_RSENSE                0.11                      // ohm
    #define U_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(V)
    #define V_CURRENT               580                       // mA
    #define V_CURRENT_HOME          V_CURRENT                 // mA on the way home
    #define V_MICROSTEPS            16
    #define V_HOME_MICROSTEPS       V_MICROSTEPS
    #define V_RSENSE                0.11                      // ohm
    #define V_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(W)
    #define W_CURRENT               580                       // mA
    #define W_CURRENT_HOME          W_CURRENT                 // mA on the way home
    #define W_MICROSTEPS            16
    #define W_HOME_MICROSTEPS       W_MICROSTEPS
    #define W_RSENSE                0.11                      // ohm
    #define W_CHAIN_POS             -1
  #endif

  #if AXIS_IS_TMC(E0)
    #define E0_CURRENT              650                       // mA
    #define E0_MICROSTEPS           16
    #define E0_RSENSE               0.11                      // ohm
    #define E0_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E1)
    #define E1_CURRENT              650                       // mA
    #define E1_MICROSTEPS           16
    #define E1_RSENSE               0.11                      // ohm
    #define E1_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E2)
    #define E2_CURRENT              650                       // mA
    #define E2_MICROSTEPS           16
    #define E2_RSENSE               0.11                      // ohm
    #define E2_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E3)
    #define E3_CURRENT              650                       // mA
    #define E3_MICROSTEPS           16
    #define E3_RSENSE               0.11                      // ohm
    #define E3_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E4)
    #define E4_CURRENT              650                       // mA
    #define E4_MICROSTEPS           16
    #define E4_RSENSE               0.11                      // ohm
    #define E4_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E5)
    #define E5_CURRENT              650                       // mA
    #define E5_MICROSTEPS           16
    #define E5_RSENSE               0.11                      // ohm
    #define E5_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E6)
    #define E6_CURRENT              650                       // mA
    #define E6_MICROSTEPS           16
    #define E6_RSENSE               0.11                      // ohm
    #define E6_CHAIN_POS            -1
  #endif

  #if AXIS_IS_TMC(E7)
    #define E7_CURRENT              650                       // mA
    #define E7_MICROSTEPS           16
    #define E7_RSENSE               0.11                      // ohm
    #define E7_CHAIN_POS            -1
  #endif

  // Addresses on the shared wire, and select lines where there is none.
  //#define X_SLAVE_ADDRESS         0
  //#define Y_SLAVE_ADDRESS         1
  //#define Z_SLAVE_ADDRESS         2
  //#define X2_SLAVE_ADDRESS        3
  //#define Y2_SLAVE_ADDRESS        0
  //#define Z2_SLAVE_ADDRESS        1
  //#define Z3_SLAVE_ADDRESS        2
  //#define Z4_SLAVE_ADDRESS        3
  //#define I_SLAVE_ADDRESS         0
  //#define J_SLAVE_ADDRESS         1
  //#define K_SLAVE_ADDRESS         2
  //#define U_SLAVE_ADDRESS         3
  //#define V_SLAVE_ADDRESS         0
  //#define W_SLAVE_ADDRESS         1
  //#define E0_SLAVE_ADDRESS        2
  //#define E1_SLAVE_ADDRESS        3
  //#define E2_SLAVE_ADDRESS        0
  //#define E3_SLAVE_ADDRESS        1
  //#define E4_SLAVE_ADDRESS        2
  //#define E5_SLAVE_ADDRESS        3
  //#define E6_SLAVE_ADDRESS        0
  //#define E7_SLAVE_ADDRESS        1
  //#define X_CS_PIN                -1
  //#define Y_CS_PIN                -1
  //#define Z_CS_PIN                -1
  //#define X2_CS_PIN               -1
  //#define Y2_CS_PIN               -1
  //#define Z2_CS_PIN               -1
  //#define Z3_CS_PIN               -1
  //#define Z4_CS_PIN               -1
  //#define I_CS_PIN                -1
  //#define J_CS_PIN                -1
  //#define K_CS_PIN                -1
  //#define U_CS_PIN                -1
  //#define V_CS_PIN                -1
  //#define W_CS_PIN                -1
  //#define E0_CS_PIN               -1
  //#define E1_CS_PIN               -1
  //#define E2_CS_PIN               -1
  //#define E3_CS_PIN               -1
  //#define E4_CS_PIN               -1
  //#define E5_CS_PIN               -1
  //#define E6_CS_PIN               -1
  //#define E7_CS_PIN               -1
  //#define X_HARDWARE_SERIAL       Serial1
  //#define Y_HARDWARE_SERIAL       Serial1
  //#define Z_HARDWARE_SERIAL       Serial1
  //#define X2_HARDWARE_SERIAL      Serial1
  //#define Y2_HARDWARE_SERIAL      Serial1
  //#define Z2_HARDWARE_SERIAL      Serial1
  //#define Z3_HARDWARE_SERIAL      Serial1
  //#define Z4_HARDWARE_SERIAL      Serial1
  //#define I_HARDWARE_SERIAL       Serial1
  //#define J_HARDWARE_SERIAL       Serial1
  //#define K_HARDWARE_SERIAL       Serial1
  //#define U_HARDWARE_SERIAL       Serial1
  //#define V_HARDWARE_SERIAL       Serial1
  //#define W_HARDWARE_SERIAL       Serial1
  //#define E0_HARDWARE_SERIAL      Serial1
  //#define E1_HARDWARE_SERIAL      Serial1
  //#define E2_HARDWARE_SERIAL      Serial1
  //#define E3_HARDWARE_SERIAL      Serial1
  //#define E4_HARDWARE_SERIAL      Serial1
  //#define E5_HARDWARE_SERIAL      Serial1
  //#define E6_HARDWARE_SERIAL      Serial1
  //#define E7_HARDWARE_SERIAL      Serial1

  // Quiet below this speed, strong above it. mm/s.
  #define HYBRID_THRESHOLD_ON       true
  #define X_HYBRID_THRESHOLD        100
  #define Y_HYBRID_THRESHOLD        100
  #define Z_HYBRID_THRESHOLD        3
  #define X2_HYBRID_THRESHOLD       100
  #define Y2_HYBRID_THRESHOLD       100
  #define Z2_HYBRID_THRESHOLD       3
  #define Z3_HYBRID_THRESHOLD       3
  #define Z4_HYBRID_THRESHOLD       3
  #define I_HYBRID_THRESHOLD        30
  #define J_HYBRID_THRESHOLD        30
  #define K_HYBRID_THRESHOLD        30
  #define U_HYBRID_THRESHOLD        30
  #define V_HYBRID_THRESHOLD        30
  #define W_HYBRID_THRESHOLD        30
  #define E0_HYBRID_THRESHOLD       30
  #define E1_HYBRID_THRESHOLD       30
  #define E2_HYBRID_THRESHOLD       30
  #define E3_HYBRID_THRESHOLD       30
  #define E4_HYBRID_THRESHOLD       30
  #define E5_HYBRID_THRESHOLD       30
  #define E6_HYBRID_THRESHOLD       30
  #define E7_HYBRID_THRESHOLD       30

  // Finding home by feeling the stall. Higher is touchier.
  //#define SENSORLESS_HOMING
  #if ENABLED(SENSORLESS_HOMING)
    #define X_STALL_SENSITIVITY     8
    #define Y_STALL_SENSITIVITY     8
    #define Z_STALL_SENSITIVITY     8
    #define X2_STALL_SENSITIVITY    8
    #define Y2_STALL_SENSITIVITY    8
    #define Z2_STALL_SENSITIVITY    8
    #define Z3_STALL_SENSITIVITY    8
    #define Z4_STALL_SENSITIVITY    8
    #define I_STALL_SENSITIVITY     8
    #define J_STALL_SENSITIVITY     8
    #define K_STALL_SENSITIVITY     8
    #define U_STALL_SENSITIVITY     8
    #define V_STALL_SENSITIVITY     8
    #define W_STALL_SENSITIVITY     8
  #endif
  //#define MONITOR_DRIVER_STATUS
  #if ENABLED(MONITOR_DRIVER_STATUS)
    #define CURRENT_STEP_DOWN       50                        // mA
    #define REPORT_CURRENT_CHANGE
    #define STOP_ON_ERROR
  #endif
#endif

/* ------------------------------------------------------------------------
   Machines that are more than a printer
   ------------------------------------------------------------------------ */

//#define SPINDLE_FEATURE
//#define LASER_FEATURE
#if EITHER(SPINDLE_FEATURE, LASER_FEATURE)
  #define SPINDLE_LASER_ACTIVE_STATE LOW
  #define SPINDLE_LASER_USE_PWM
  #if ENABLED(SPINDLE_LASER_USE_PWM)
    #define SPINDLE_LASER_PWM_INVERT false
    #define SPINDLE_LASER_FREQUENCY 2500                      // Hz
  #endif
  //#define AIR_EVACUATION
  #if ENABLED(AIR_EVACUATION)
    #define AIR_EVACUATION_ACTIVE   LOW
    //#define AIR_EVACUATION_PIN    42
  #endif
  #define CUTTER_POWER_UNIT         PWM255
  #if ENABLED(SPINDLE_FEATURE)
    #define SPINDLE_INVERT_DIR      false
    #define SPINDLE_CHANGE_DIR_STOP
    #define SPINDLE_LASER_POWERUP_DELAY 5000
    #define SPINDLE_LASER_POWERDOWN_DELAY 5000
    #if ENABLED(SPINDLE_LASER_USE_PWM)
      #define SPEED_POWER_INTERCEPT 0
      #define SPEED_POWER_MIN       5000
      #define SPEED_POWER_MAX       30000
      #define SPEED_POWER_STARTUP   25000
    #endif
  #else
    #if ENABLED(SPINDLE_LASER_USE_PWM)
      #define SPEED_POWER_INTERCEPT 0
      #define SPEED_POWER_MIN       0
      #define SPEED_POWER_MAX       100
      #define SPEED_POWER_STARTUP   80
    #endif
  #endif
#endif
//#define COOLANT_CONTROL
#if ENABLED(COOLANT_CONTROL)
  #define COOLANT_MIST
  #define COOLANT_FLOOD
  #define COOLANT_MIST_INVERT       false
  #define COOLANT_FLOOD_INVERT      false
#endif
//#define FILAMENT_WIDTH_SENSOR
#if ENABLED(FILAMENT_WIDTH_SENSOR)
  #define FILAMENT_SENSOR_EXTRUDER_NUM 0
  #define MEASUREMENT_DELAY_CM      14
  #define FILWIDTH_ERROR_MARGIN     1.0
  #define MAX_MEASUREMENT_DELAY     20
  #define DEFAULT_MEASURED_FILAMENT_DIA DEFAULT_NOMINAL_FILAMENT_DIA
#endif
//#define POWER_MONITOR_CURRENT
//#define POWER_MONITOR_VOLTAGE
#if defined(POWER_MONITOR_CURRENT)
  #define POWER_MONITOR_VOLTS_PER_AMP 0.05000
  #define POWER_MONITOR_CURRENT_OFFSET 0
  #define POWER_MONITOR_VOLTS_PER_VOLT 0.077933
  #define POWER_MONITOR_FIXED_VOLTAGE 12.0
#endif
//#define CNC_COORDINATE_SYSTEMS
//#define CNC_DRILLING_CYCLE
//#define PINS_DEBUGGING
//#define DEBUG_DEV_MODE
//#define WIFISUPPORT
//#define LED_MATRIX_DEBUG

/* ------------------------------------------------------------------------
   Buttons and menu entries of our own
   ------------------------------------------------------------------------ */

// Entries of the menu that run a line of commands.
//#define CUSTOM_MENU_MAIN
#if ENABLED(CUSTOM_MENU_MAIN)
  //#define CUSTOM_MENU_MAIN_TITLE  "Workshop"
  #define CUSTOM_MENU_MAIN_SCRIPT_DONE "M117 done"
  #define CUSTOM_MENU_MAIN_SCRIPT_AUDIBLE_FEEDBACK
  #define CUSTOM_MENU_MAIN_ONLY_IDLE
  #define MAIN_MENU_ITEM_1_DESC     "Home and park"
  #define MAIN_MENU_ITEM_1_GCODE    "G28"
  //#define MAIN_MENU_ITEM_1_CONFIRM                          // asks first

  #define MAIN_MENU_ITEM_2_DESC     "Warm the bed"
  #define MAIN_MENU_ITEM_2_GCODE    "M140 S60"
  //#define MAIN_MENU_ITEM_2_CONFIRM                          // asks first

  #define MAIN_MENU_ITEM_3_DESC     "All heat off"
  #define MAIN_MENU_ITEM_3_GCODE    "M104 S0\nM140 S0"
  //#define MAIN_MENU_ITEM_3_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_4_DESC   "Entry 4"
  //#define MAIN_MENU_ITEM_4_GCODE  "M117 4"
  //#define MAIN_MENU_ITEM_4_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_5_DESC   "Entry 5"
  //#define MAIN_MENU_ITEM_5_GCODE  "M117 5"
  //#define MAIN_MENU_ITEM_5_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_6_DESC   "Entry 6"
  //#define MAIN_MENU_ITEM_6_GCODE  "M117 6"
  //#define MAIN_MENU_ITEM_6_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_7_DESC   "Entry 7"
  //#define MAIN_MENU_ITEM_7_GCODE  "M117 7"
  //#define MAIN_MENU_ITEM_7_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_8_DESC   "Entry 8"
  //#define MAIN_MENU_ITEM_8_GCODE  "M117 8"
  //#define MAIN_MENU_ITEM_8_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_9_DESC   "Entry 9"
  //#define MAIN_MENU_ITEM_9_GCODE  "M117 9"
  //#define MAIN_MENU_ITEM_9_CONFIRM                          // asks first

  //#define MAIN_MENU_ITEM_10_DESC  "Entry 10"
  //#define MAIN_MENU_ITEM_10_GCODE "M117 10"
  //#define MAIN_MENU_ITEM_10_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_11_DESC  "Entry 11"
  //#define MAIN_MENU_ITEM_11_GCODE "M117 11"
  //#define MAIN_MENU_ITEM_11_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_12_DESC  "Entry 12"
  //#define MAIN_MENU_ITEM_12_GCODE "M117 12"
  //#define MAIN_MENU_ITEM_12_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_13_DESC  "Entry 13"
  //#define MAIN_MENU_ITEM_13_GCODE "M117 13"
  //#define MAIN_MENU_ITEM_13_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_14_DESC  "Entry 14"
  //#define MAIN_MENU_ITEM_14_GCODE "M117 14"
  //#define MAIN_MENU_ITEM_14_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_15_DESC  "Entry 15"
  //#define MAIN_MENU_ITEM_15_GCODE "M117 15"
  //#define MAIN_MENU_ITEM_15_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_16_DESC  "Entry 16"
  //#define MAIN_MENU_ITEM_16_GCODE "M117 16"
  //#define MAIN_MENU_ITEM_16_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_17_DESC  "Entry 17"
  //#define MAIN_MENU_ITEM_17_GCODE "M117 17"
  //#define MAIN_MENU_ITEM_17_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_18_DESC  "Entry 18"
  //#define MAIN_MENU_ITEM_18_GCODE "M117 18"
  //#define MAIN_MENU_ITEM_18_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_19_DESC  "Entry 19"
  //#define MAIN_MENU_ITEM_19_GCODE "M117 19"
  //#define MAIN_MENU_ITEM_19_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_20_DESC  "Entry 20"
  //#define MAIN_MENU_ITEM_20_GCODE "M117 20"
  //#define MAIN_MENU_ITEM_20_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_21_DESC  "Entry 21"
  //#define MAIN_MENU_ITEM_21_GCODE "M117 21"
  //#define MAIN_MENU_ITEM_21_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_22_DESC  "Entry 22"
  //#define MAIN_MENU_ITEM_22_GCODE "M117 22"
  //#define MAIN_MENU_ITEM_22_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_23_DESC  "Entry 23"
  //#define MAIN_MENU_ITEM_23_GCODE "M117 23"
  //#define MAIN_MENU_ITEM_23_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_24_DESC  "Entry 24"
  //#define MAIN_MENU_ITEM_24_GCODE "M117 24"
  //#define MAIN_MENU_ITEM_24_CONFIRM                         // asks first

  //#define MAIN_MENU_ITEM_25_DESC  "Entry 25"
  //#define MAIN_MENU_ITEM_25_GCODE "M117 25"
  //#define MAIN_MENU_ITEM_25_CONFIRM                         // asks first

#endif

//#define CUSTOM_MENU_CONFIG
#if ENABLED(CUSTOM_MENU_CONFIG)
  //#define CUSTOM_MENU_CONFIG_TITLE "Care"
  #define CUSTOM_MENU_CONFIG_SCRIPT_DONE "M117 done"
  #define CUSTOM_MENU_CONFIG_ONLY_IDLE
  //#define CONFIG_MENU_ITEM_1_DESC "Care 1"
  //#define CONFIG_MENU_ITEM_1_GCODE "M117 1"
  //#define CONFIG_MENU_ITEM_1_CONFIRM

  //#define CONFIG_MENU_ITEM_2_DESC "Care 2"
  //#define CONFIG_MENU_ITEM_2_GCODE "M117 2"
  //#define CONFIG_MENU_ITEM_2_CONFIRM

  //#define CONFIG_MENU_ITEM_3_DESC "Care 3"
  //#define CONFIG_MENU_ITEM_3_GCODE "M117 3"
  //#define CONFIG_MENU_ITEM_3_CONFIRM

  //#define CONFIG_MENU_ITEM_4_DESC "Care 4"
  //#define CONFIG_MENU_ITEM_4_GCODE "M117 4"
  //#define CONFIG_MENU_ITEM_4_CONFIRM

  //#define CONFIG_MENU_ITEM_5_DESC "Care 5"
  //#define CONFIG_MENU_ITEM_5_GCODE "M117 5"
  //#define CONFIG_MENU_ITEM_5_CONFIRM

  //#define CONFIG_MENU_ITEM_6_DESC "Care 6"
  //#define CONFIG_MENU_ITEM_6_GCODE "M117 6"
  //#define CONFIG_MENU_ITEM_6_CONFIRM

  //#define CONFIG_MENU_ITEM_7_DESC "Care 7"
  //#define CONFIG_MENU_ITEM_7_GCODE "M117 7"
  //#define CONFIG_MENU_ITEM_7_CONFIRM

  //#define CONFIG_MENU_ITEM_8_DESC "Care 8"
  //#define CONFIG_MENU_ITEM_8_GCODE "M117 8"
  //#define CONFIG_MENU_ITEM_8_CONFIRM

  //#define CONFIG_MENU_ITEM_9_DESC "Care 9"
  //#define CONFIG_MENU_ITEM_9_GCODE "M117 9"
  //#define CONFIG_MENU_ITEM_9_CONFIRM

  //#define CONFIG_MENU_ITEM_10_DESC "Care 10"
  //#define CONFIG_MENU_ITEM_10_GCODE "M117 10"
  //#define CONFIG_MENU_ITEM_10_CONFIRM

  //#define CONFIG_MENU_ITEM_11_DESC "Care 11"
  //#define CONFIG_MENU_ITEM_11_GCODE "M117 11"
  //#define CONFIG_MENU_ITEM_11_CONFIRM

  //#define CONFIG_MENU_ITEM_12_DESC "Care 12"
  //#define CONFIG_MENU_ITEM_12_GCODE "M117 12"
  //#define CONFIG_MENU_ITEM_12_CONFIRM

  //#define CONFIG_MENU_ITEM_13_DESC "Care 13"
  //#define CONFIG_MENU_ITEM_13_GCODE "M117 13"
  //#define CONFIG_MENU_ITEM_13_CONFIRM

  //#define CONFIG_MENU_ITEM_14_DESC "Care 14"
  //#define CONFIG_MENU_ITEM_14_GCODE "M117 14"
  //#define CONFIG_MENU_ITEM_14_CONFIRM

  //#define CONFIG_MENU_ITEM_15_DESC "Care 15"
  //#define CONFIG_MENU_ITEM_15_GCODE "M117 15"
  //#define CONFIG_MENU_ITEM_15_CONFIRM

  //#define CONFIG_MENU_ITEM_16_DESC "Care 16"
  //#define CONFIG_MENU_ITEM_16_GCODE "M117 16"
  //#define CONFIG_MENU_ITEM_16_CONFIRM

  //#define CONFIG_MENU_ITEM_17_DESC "Care 17"
  //#define CONFIG_MENU_ITEM_17_GCODE "M117 17"
  //#define CONFIG_MENU_ITEM_17_CONFIRM

  //#define CONFIG_MENU_ITEM_18_DESC "Care 18"
  //#define CONFIG_MENU_ITEM_18_GCODE "M117 18"
  //#define CONFIG_MENU_ITEM_18_CONFIRM

  //#define CONFIG_MENU_ITEM_19_DESC "Care 19"
  //#define CONFIG_MENU_ITEM_19_GCODE "M117 19"
  //#define CONFIG_MENU_ITEM_19_CONFIRM

  //#define CONFIG_MENU_ITEM_20_DESC "Care 20"
  //#define CONFIG_MENU_ITEM_20_GCODE "M117 20"
  //#define CONFIG_MENU_ITEM_20_CONFIRM

  //#define CONFIG_MENU_ITEM_21_DESC "Care 21"
  //#define CONFIG_MENU_ITEM_21_GCODE "M117 21"
  //#define CONFIG_MENU_ITEM_21_CONFIRM

  //#define CONFIG_MENU_ITEM_22_DESC "Care 22"
  //#define CONFIG_MENU_ITEM_22_GCODE "M117 22"
  //#define CONFIG_MENU_ITEM_22_CONFIRM

  //#define CONFIG_MENU_ITEM_23_DESC "Care 23"
  //#define CONFIG_MENU_ITEM_23_GCODE "M117 23"
  //#define CONFIG_MENU_ITEM_23_CONFIRM

  //#define CONFIG_MENU_ITEM_24_DESC "Care 24"
  //#define CONFIG_MENU_ITEM_24_GCODE "M117 24"
  //#define CONFIG_MENU_ITEM_24_CONFIRM

  //#define CONFIG_MENU_ITEM_25_DESC "Care 25"
  //#define CONFIG_MENU_ITEM_25_GCODE "M117 25"
  //#define CONFIG_MENU_ITEM_25_CONFIRM

#endif


/* ------------------------------------------------------------------------
   Shake-free moves
   ------------------------------------------------------------------------ */

/**
 * Takes the ringing out of fast corners. Both axes want a figure of their
 * own: print the ringing tower, count the waves over 50 mm, divide the speed
 * by the distance between two of them.
 */
//#define INPUT_SHAPING_X
//#define INPUT_SHAPING_Y
#if ENABLED(INPUT_SHAPING_X) || ENABLED(INPUT_SHAPING_Y)
  #if ENABLED(INPUT_SHAPING_X)
    #define SHAPING_FREQ_X          40.0                      // Hz, 0 switches it off
    #define SHAPING_ZETA_X          0.15                      // damping
  #endif
  #if ENABLED(INPUT_SHAPING_Y)
    #define SHAPING_FREQ_Y          36.5                      // Hz, 0 switches it off
    #define SHAPING_ZETA_Y          0.15                      // damping
  #endif
  //#define SHAPING_MIN_FREQ        20.0
  //#define SHAPING_MAX_STEPRATE    10000
  //#define SHAPING_MENU
#endif

//#define NONLINEAR_EXTRUSION
//#define FREEZE_FEATURE
#if ENABLED(FREEZE_FEATURE)
  //#define FREEZE_PIN              41
  #define FREEZE_STATE              LOW
#endif

/* ------------------------------------------------------------------------
   Probe and warmth
   ------------------------------------------------------------------------ */

// The probe drifts when it gets warm. Tables in micrometres, one value for
// each step of temperature; all zeros until someone measures them.
//#define PTC_PROBE
//#define PTC_BED
//#define PTC_HOTEND
#if ENABLED(PTC_PROBE) || ENABLED(PTC_BED) || ENABLED(PTC_HOTEND)
  #if ENABLED(PTC_PROBE)
    #define PTC_PROBE_START         30                        // degrees
    #define PTC_PROBE_RES           5
    #define PTC_PROBE_COUNT         10
    #define PTC_PROBE_ZOFFS         { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
  #endif
  #if ENABLED(PTC_BED)
    #define PTC_BED_START           60                        // degrees
    #define PTC_BED_RES             5
    #define PTC_BED_COUNT           10
    #define PTC_BED_ZOFFS           { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
  #endif
  #if ENABLED(PTC_HOTEND)
    #define PTC_HOTEND_START        180                       // degrees
    #define PTC_HOTEND_RES          5
    #define PTC_HOTEND_COUNT        20
    #define PTC_HOTEND_ZOFFS        { 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0 }
  #endif
  #define PTC_PARK_POS              { 0, 0, 100 }
  #define PTC_PROBE_POS             { 90, 100 }
  #define PTC_PROBE_TEMP            30
  #define PTC_PROBE_HEATING_OFFSET  0.5
#endif

/* ------------------------------------------------------------------------
   Closed loop on the axes
   ------------------------------------------------------------------------ */

// Glass scales on a slow bus. Five may be fitted, none is.
//#define I2C_POSITION_ENCODERS
#if ENABLED(I2C_POSITION_ENCODERS)
  #define I2CPE_ENCODER_CNT         1
  #define I2CPE_ENC_1_ADDR          30                        // bus address
  #define I2CPE_ENC_1_AXIS          X_AXIS
  #define I2CPE_ENC_1_TYPE          LINEAR_SCALE
  #define I2CPE_ENC_1_TICKS_UNIT    2048
  //#define I2CPE_ENC_1_TICKS_REV   (16 * 200)
  //#define I2CPE_ENC_1_INVERT
  #define I2CPE_ENC_1_EC_METHOD     SKIP_STEPS
  #define I2CPE_ENC_1_EC_THRESH     0.10                      // mm before it steps in

  //#define I2CPE_ENC_2_ADDR        31                        // bus address
  //#define I2CPE_ENC_2_AXIS        Y_AXIS
  //#define I2CPE_ENC_2_TYPE        LINEAR_SCALE
  //#define I2CPE_ENC_2_TICKS_UNIT  2048
  //#define I2CPE_ENC_2_TICKS_REV   (16 * 200)
  //#define I2CPE_ENC_2_INVERT
  //#define I2CPE_ENC_2_EC_METHOD   SKIP_STEPS
  //#define I2CPE_ENC_2_EC_THRESH   0.10                      // mm before it steps in

  //#define I2CPE_ENC_3_ADDR        32                        // bus address
  //#define I2CPE_ENC_3_AXIS        Z_AXIS
  //#define I2CPE_ENC_3_TYPE        LINEAR_SCALE
  //#define I2CPE_ENC_3_TICKS_UNIT  2048
  //#define I2CPE_ENC_3_TICKS_REV   (16 * 200)
  //#define I2CPE_ENC_3_INVERT
  //#define I2CPE_ENC_3_EC_METHOD   SKIP_STEPS
  //#define I2CPE_ENC_3_EC_THRESH   0.10                      // mm before it steps in

  //#define I2CPE_ENC_4_ADDR        33                        // bus address
  //#define I2CPE_ENC_4_AXIS        E_AXIS
  //#define I2CPE_ENC_4_TYPE        LINEAR_SCALE
  //#define I2CPE_ENC_4_TICKS_UNIT  2048
  //#define I2CPE_ENC_4_TICKS_REV   (16 * 200)
  //#define I2CPE_ENC_4_INVERT
  //#define I2CPE_ENC_4_EC_METHOD   SKIP_STEPS
  //#define I2CPE_ENC_4_EC_THRESH   0.10                      // mm before it steps in

  //#define I2CPE_ENC_5_ADDR        34                        // bus address
  //#define I2CPE_ENC_5_AXIS        E_AXIS
  //#define I2CPE_ENC_5_TYPE        LINEAR_SCALE
  //#define I2CPE_ENC_5_TICKS_UNIT  2048
  //#define I2CPE_ENC_5_TICKS_REV   (16 * 200)
  //#define I2CPE_ENC_5_INVERT
  //#define I2CPE_ENC_5_EC_METHOD   SKIP_STEPS
  //#define I2CPE_ENC_5_EC_THRESH   0.10                      // mm before it steps in

  #define I2CPE_DEF_TYPE            LINEAR_SCALE
  #define I2CPE_DEF_TICKS_REV       (16 * 200)
  #define I2CPE_TIME_TRUSTED        10000                     // ms without a fault before it is believed again
  #define I2CPE_MIN_UPD_TIME_MS     4
  #define I2CPE_ERR_ROLLING_AVERAGE
#endif // I2C_POSITION_ENCODERS

/* ------------------------------------------------------------------------
   A stick to drive by hand
   ------------------------------------------------------------------------ */

//#define JOYSTICK
#if ENABLED(JOYSTICK)
  #define JOY_X_PIN                 5
  //#define INVERT_JOY_X
  #define JOY_Y_PIN                 10
  //#define INVERT_JOY_Y
  #define JOY_Z_PIN                 12
  //#define INVERT_JOY_Z
  #define JOY_EN_PIN                44
  #define JOY_X_LIMITS              { 5600, 8190-100, 8190+100, 10800 }  // low, dead from, dead to, high
  #define JOY_Y_LIMITS              { 5600, 8190-100, 8190+100, 10800 }  // low, dead from, dead to, high
  #define JOY_Z_LIMITS              { 5600, 8190-100, 8190+100, 10800 }  // low, dead from, dead to, high
  //#define JOYSTICK_DEBUG
#endif

/* ------------------------------------------------------------------------
   Short-cuts in memory
   ------------------------------------------------------------------------ */

// Ten slots for a line of commands each.
//#define GCODE_MACROS
#if ENABLED(GCODE_MACROS)
  #define GCODE_MACROS_SLOTS        5
  #define GCODE_MACROS_SLOT_SIZE    50
  //#define GCODE_MACRO_SLOT_0      ""
  //#define GCODE_MACRO_SLOT_1      ""
  //#define GCODE_MACRO_SLOT_2      ""
  //#define GCODE_MACRO_SLOT_3      ""
  //#define GCODE_MACRO_SLOT_4      ""
  //#define GCODE_MACRO_SLOT_5      ""
  //#define GCODE_MACRO_SLOT_6      ""
  //#define GCODE_MACRO_SLOT_7      ""
  //#define GCODE_MACRO_SLOT_8      ""
  //#define GCODE_MACRO_SLOT_9      ""
#endif

/* ------------------------------------------------------------------------
   Servos, relays and lamps
   ------------------------------------------------------------------------ */

//#define SERVO0_PIN                -1
//#define SERVO0_ANGLES             { 10, 90 }                // degrees, out and in
//#define SERVO1_PIN                -1
//#define SERVO1_ANGLES             { 10, 90 }                // degrees, out and in
//#define SERVO2_PIN                -1
//#define SERVO2_ANGLES             { 10, 90 }                // degrees, out and in
//#define SERVO3_PIN                -1
//#define SERVO3_ANGLES             { 10, 90 }                // degrees, out and in
#if defined(NUM_SERVOS) && NUM_SERVOS > 0
  #define SERVO_SETTLE_CHECK        true
#endif
//#define NEOPIXEL2_SEPARATE
#if ENABLED(NEOPIXEL2_SEPARATE)
  #define NEOPIXEL2_PIXELS          15
  #define NEOPIXEL2_BRIGHTNESS      127
  #define NEOPIXEL2_STARTUP_TEST    false
  #define NEOPIXEL_M150_DEFAULT     -1
#endif
//#define LED_CONTROL_MENU
#if ENABLED(LED_CONTROL_MENU)
  //#define LED_COLOR_PRESETS
  #if ENABLED(LED_COLOR_PRESETS)
    #define LED_USER_PRESET_RED     255
    #define LED_USER_PRESET_GREEN   128
    #define LED_USER_PRESET_BLUE    0
    #define LED_USER_PRESET_WHITE   255
    //#define LED_USER_PRESET_STARTUP
  #endif
  //#define NEO2_COLOR_PRESETS
  #if ENABLED(NEO2_COLOR_PRESETS)
    #define NEO2_USER_PRESET_RED    255
    #define NEO2_USER_PRESET_GREEN  128
    #define NEO2_USER_PRESET_BLUE   0
    #define NEO2_USER_PRESET_WHITE  255
  #endif
#endif

/* ------------------------------------------------------------------------
   Pins by hand
   ------------------------------------------------------------------------ */

// Only for boards whose pin file is wrong. Uncomment one at a time and try
// it with the heaters unplugged.
//#define HEATER_0_PIN              -1
//#define HEATER_1_PIN              -1
//#define HEATER_2_PIN              -1
//#define HEATER_3_PIN              -1
//#define HEATER_4_PIN              -1
//#define HEATER_5_PIN              -1
//#define HEATER_6_PIN              -1
//#define HEATER_7_PIN              -1
//#define HEATER_BED_PIN            -1
//#define HEATER_CHAMBER_PIN        -1
//#define TEMP_0_PIN                -1
//#define TEMP_1_PIN                -1
//#define TEMP_2_PIN                -1
//#define TEMP_3_PIN                -1
//#define TEMP_4_PIN                -1
//#define TEMP_5_PIN                -1
//#define TEMP_6_PIN                -1
//#define TEMP_7_PIN                -1
//#define TEMP_BED_PIN              -1
//#define TEMP_CHAMBER_PIN          -1
//#define FAN0_PIN                  -1
//#define FAN1_PIN                  -1
//#define FAN2_PIN                  -1
//#define FAN3_PIN                  -1
//#define FAN4_PIN                  -1
//#define FAN5_PIN                  -1
//#define FAN6_PIN                  -1
//#define FAN7_PIN                  -1
//#define X_STEP_PIN                -1
//#define X_DIR_PIN                 -1
//#define X_ENABLE_PIN              -1
//#define Y_STEP_PIN                -1
//#define Y_DIR_PIN                 -1
//#define Y_ENABLE_PIN              -1
//#define Z_STEP_PIN                -1
//#define Z_DIR_PIN                 -1
//#define Z_ENABLE_PIN              -1
//#define E0_STEP_PIN               -1
//#define E0_DIR_PIN                -1
//#define E0_ENABLE_PIN             -1
//#define E1_STEP_PIN               -1
//#define E1_DIR_PIN                -1
//#define E1_ENABLE_PIN             -1
//#define E2_STEP_PIN               -1
//#define E2_DIR_PIN                -1
//#define E2_ENABLE_PIN             -1
//#define E3_STEP_PIN               -1
//#define E3_DIR_PIN                -1
//#define E3_ENABLE_PIN             -1
//#define X_MIN_PIN                 -1
//#define X_MAX_PIN                 -1
//#define Y_MIN_PIN                 -1
//#define Y_MAX_PIN                 -1
//#define Z_MIN_PIN                 -1
//#define Z_MAX_PIN                 -1

/* ------------------------------------------------------------------------
   Words on the panel
   ------------------------------------------------------------------------ */

// What the panel says where its own words did not fit on our small screens.
//#define TEXT_HEAT_START           "heat now"
//#define TEXT_HEAT_BUSY            "heat ..."
//#define TEXT_HEAT_DONE            "heat done"
//#define TEXT_HEAT_FAILED          "heat failed"
//#define TEXT_HEAT_ASK             "heat?"
//#define TEXT_COOL_START           "cool now"
//#define TEXT_COOL_BUSY            "cool ..."
//#define TEXT_COOL_DONE            "cool done"
//#define TEXT_COOL_FAILED          "cool failed"
//#define TEXT_COOL_ASK             "cool?"
//#define TEXT_MOVE_START           "move now"
//#define TEXT_MOVE_BUSY            "move ..."
//#define TEXT_MOVE_DONE            "move done"
//#define TEXT_MOVE_FAILED          "move failed"
//#define TEXT_MOVE_ASK             "move?"
//#define TEXT_HOME_START           "home now"
//#define TEXT_HOME_BUSY            "home ..."
//#define TEXT_HOME_DONE            "home done"
//#define TEXT_HOME_FAILED          "home failed"
//#define TEXT_HOME_ASK             "home?"
//#define TEXT_LOAD_START           "load now"
//#define TEXT_LOAD_BUSY            "load ..."
//#define TEXT_LOAD_DONE            "load done"
//#define TEXT_LOAD_FAILED          "load failed"
//#define TEXT_LOAD_ASK             "load?"
//#define TEXT_UNLOAD_START         "unload now"
//#define TEXT_UNLOAD_BUSY          "unload ..."
//#define TEXT_UNLOAD_DONE          "unload done"
//#define TEXT_UNLOAD_FAILED        "unload failed"
//#define TEXT_UNLOAD_ASK           "unload?"
//#define TEXT_LEVEL_START          "level now"
//#define TEXT_LEVEL_BUSY           "level ..."
//#define TEXT_LEVEL_DONE           "level done"
//#define TEXT_LEVEL_FAILED         "level failed"
//#define TEXT_LEVEL_ASK            "level?"
//#define TEXT_PAUSE_START          "pause now"
//#define TEXT_PAUSE_BUSY           "pause ..."
//#define TEXT_PAUSE_DONE           "pause done"
//#define TEXT_PAUSE_FAILED         "pause failed"
//#define TEXT_PAUSE_ASK            "pause?"
//#define TEXT_RESUME_START         "go on now"
//#define TEXT_RESUME_BUSY          "go on ..."
//#define TEXT_RESUME_DONE          "go on done"
//#define TEXT_RESUME_FAILED        "go on failed"
//#define TEXT_RESUME_ASK           "go on?"
//#define TEXT_STOP_START           "stop now"
//#define TEXT_STOP_BUSY            "stop ..."
//#define TEXT_STOP_DONE            "stop done"
//#define TEXT_STOP_FAILED          "stop failed"
//#define TEXT_STOP_ASK             "stop?"

/* ------------------------------------------------------------------------
   Every machine's figures, side by side
   ------------------------------------------------------------------------ */

// A set of figures a machine, picked by its number. One file for all was the
// plan in 2023; then everybody kept a copy. Left in, nobody dares to cut it.
#define MACHINE_NUMBER              2
#if MACHINE_NUMBER == 1 + 100
  // machine 01
  #define FRAME_X_MM                310
  #define FRAME_Y_MM                320
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 2 + 100
  // machine 02
  #define FRAME_X_MM                320
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 3 + 100
  // machine 03, gone since 2024
  #define FRAME_X_MM                330
  #define FRAME_Y_MM                340
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 4 + 100
  // machine 04
  #define FRAME_X_MM                340
  #define FRAME_Y_MM                350
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 5 + 100
  // machine 05
  #define FRAME_X_MM                350
  #define FRAME_Y_MM                360
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 6 + 100
  // machine 06
  #define FRAME_X_MM                360
  #define FRAME_Y_MM                370
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 7 + 100
  // machine 07
  #define FRAME_X_MM                370
  #define FRAME_Y_MM                310
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 8 + 100
  // machine 08
  #define FRAME_X_MM                380
  #define FRAME_Y_MM                320
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 9 + 100
  // machine 09
  #define FRAME_X_MM                300
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 10 + 100
  // machine 10, gone since 2024
  #define FRAME_X_MM                310
  #define FRAME_Y_MM                340
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 11 + 100
  // machine 11
  #define FRAME_X_MM                320
  #define FRAME_Y_MM                350
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 12 + 100
  // machine 12
  #define FRAME_X_MM                330
  #define FRAME_Y_MM                360
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 13 + 100
  // machine 13
  #define FRAME_X_MM                340
  #define FRAME_Y_MM                370
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 14 + 100
  // machine 14
  #define FRAME_X_MM                350
  #define FRAME_Y_MM                310
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 15 + 100
  // machine 15
  #define FRAME_X_MM                360
  #define FRAME_Y_MM                320
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 16 + 100
  // machine 16
  #define FRAME_X_MM                370
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 17 + 100
  // machine 17, gone since 2024
  #define FRAME_X_MM                380
  #define FRAME_Y_MM                340
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 18 + 100
  // machine 18
  #define FRAME_X_MM                300
  #define FRAME_Y_MM                350
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 19 + 100
  // machine 19
  #define FRAME_X_MM                310
  #define FRAME_Y_MM                360
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 20 + 100
  // machine 20
  #define FRAME_X_MM                320
  #define FRAME_Y_MM                370
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 21 + 100
  // machine 21
  #define FRAME_X_MM                330
  #define FRAME_Y_MM                310
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 22 + 100
  // machine 22
  #define FRAME_X_MM                340
  #define FRAME_Y_MM                320
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 23 + 100
  // machine 23
  #define FRAME_X_MM                350
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 24 + 100
  // machine 24, gone since 2024
  #define FRAME_X_MM                360
  #define FRAME_Y_MM                340
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 25 + 100
  // machine 25
  #define FRAME_X_MM                370
  #define FRAME_Y_MM                350
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 26 + 100
  // machine 26
  #define FRAME_X_MM                380
  #define FRAME_Y_MM                360
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 27 + 100
  // machine 27
  #define FRAME_X_MM                300
  #define FRAME_Y_MM                370
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 28 + 100
  // machine 28
  #define FRAME_X_MM                310
  #define FRAME_Y_MM                310
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 29 + 100
  // machine 29
  #define FRAME_X_MM                320
  #define FRAME_Y_MM                320
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 30 + 100
  // machine 30
  #define FRAME_X_MM                330
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 31 + 100
  // machine 31, gone since 2024
  #define FRAME_X_MM                340
  #define FRAME_Y_MM                340
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 32 + 100
  // machine 32
  #define FRAME_X_MM                350
  #define FRAME_Y_MM                350
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 33 + 100
  // machine 33
  #define FRAME_X_MM                360
  #define FRAME_Y_MM                360
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 34 + 100
  // machine 34
  #define FRAME_X_MM                370
  #define FRAME_Y_MM                370
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 35 + 100
  // machine 35
  #define FRAME_X_MM                380
  #define FRAME_Y_MM                310
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 36 + 100
  // machine 36
  #define FRAME_X_MM                300
  #define FRAME_Y_MM                320
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 37 + 100
  // machine 37
  #define FRAME_X_MM                310
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                420
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 38 + 100
  // machine 38, gone since 2024
  #define FRAME_X_MM                320
  #define FRAME_Y_MM                340
  #define FRAME_Z_MM                440
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          8
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 39 + 100
  // machine 39
  #define FRAME_X_MM                330
  #define FRAME_Y_MM                350
  #define FRAME_Z_MM                460
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          2
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH
  //#define CAMERA_ARM
#elif MACHINE_NUMBER == 40 + 100
  // machine 40
  #define FRAME_X_MM                340
  #define FRAME_Y_MM                360
  #define FRAME_Z_MM                400
  #define BELT_TEETH                16
  #define SPINDLE_PITCH_MM          4
  #if BELT_TEETH > 16
    #define STEPS_X                 (200 * 16 / (BELT_TEETH * 2))
  #else
    #define STEPS_X                 100
  #endif
  #if SPINDLE_PITCH_MM == 8 || SPINDLE_PITCH_MM == 4
    #define STEPS_Z                 (200 * 16 / SPINDLE_PITCH_MM)
  #else
    #define STEPS_Z                 1600
  #endif
  //#define DOOR_SWITCH                                       // has a door
  //#define CAMERA_ARM
#else
  #define FRAME_X_MM                320
  #define FRAME_Y_MM                330
  #define FRAME_Z_MM                440
  #define BELT_TEETH                20
  #define SPINDLE_PITCH_MM          8
#endif // MACHINE_NUMBER
// End. If you read this you have read all of it, well done.

#endif // CONFIGURATION_ADV_H
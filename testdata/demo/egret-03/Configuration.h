/**
 * egret-03, der große Drucker am Fenster
 *
 *   Achtung: diese Datei ist in Latin-1 gespeichert. Bitte nicht umwandeln,
 *   sonst sieht man in der Änderungsliste nur noch Umlaute.
 *
 *   2024-06  Rahmen verlängert, Gerüst gegen Wackeln (Idee: Zoé)
 *   2025-03  Lüfter getauscht; der alte lief heiß
 *   2026-10  kurze Schmelzzone mit PTC-Ring, Düse 0,6
 */
#pragma once

#define CONFIGURATION_H_VERSION         02010300                  // which generation this file belongs to


// ********************  Who and what  ********************

// Shown on the panel's start page.
#define STRING_CONFIG_H_AUTHOR          "(Werkstatt, Bank 3)"
//#define CUSTOM_VERSION_FILE           Version.h                 // path seen from this folder
#define CUSTOM_MACHINE_NAME             "egret-03"
//#define MACHINE_UUID                  "00000000-0000-0000-0000-000000000000"
#define SHOW_BOOTSCREEN
//#define SHOW_CUSTOM_BOOTSCREEN
//#define CUSTOM_STATUS_SCREEN_IMAGE

// ********************  Log book of the machine  ********************

/**
 * Werkstattbuch. Neues bitte unten anfügen, kurz und mit Datum.
 *
 * 2024-06-01  Rahmen um 80 mm verlängert, Riemen neu abgelängt
 * 2024-06-08  Wackelt. Strebe aus 8 mm Sperrholz hinten quer.
 * 2024-06-29  Endschalter Z höher gesetzt, Düse stieß an die Klammer
 * 2024-07-20  Première impression de 300 mm de haut, très réussie
 * 2024-09-14  Heizbett: Fühler lag lose auf, jetzt mit Klebeband und Schraube
 * 2024-11-02  zweiter Z-Motor, beide Spindeln gefettet
 * 2025-01-11  Hülse der Führung getauscht
 * 2025-03-08  Lüfter getauscht, der alte lief heiß
 * 2025-04-26  Câble du lit chauffant remplacé, gaine brûlée à l'entrée
 * 2025-06-14  Größe der Raster auf 10 mal 10
 * 2025-09-06  Brandmelder geprüft
 * 2025-11-29  Umbau auf gekreuzte Riemen, Maße überprüft
 * 2026-02-07  Düse 0,6 für die Möbelfüße
 * 2026-03-14  Versuch mit Polycarbonat, siehe zweite Datei
 * 2026-05-30  Streifen in der Wand: Riemen links lockerer als rechts
 * 2026-08-22  Höhe des Fühlers neu eingestellt
 * 2026-10-03  kurze Schmelzzone eingebaut, PTC-Ring 48 W, Perle wiederverwendet
 */

// ********************  Board and ports  ********************

#ifndef MOTHERBOARD
  #define MOTHERBOARD                   BOARD_GREY_32BIT
#endif
// Port -1 is the USB socket of the board itself, 0 and up are the headers.
#define SERIAL_PORT                     -1
#define BAUDRATE                        250000
//#define BAUD_RATE_GCODE
//#define SERIAL_PORT_2                 -1
//#define BAUDRATE_2                    250000                    // as BAUDRATE when off
//#define SERIAL_PORT_3                 1
//#define BAUDRATE_3                    250000
//#define BLUETOOTH

// ********************  Axes and drivers  ********************

// What sits in each driver socket. A name that begins with TMC and has nothing
// behind its number is spoken to over a wire; any other only counts pulses.
#define X_DRIVER_TYPE                   A4988
#define Y_DRIVER_TYPE                   A4988
#define Z_DRIVER_TYPE                   A4988
#define Z2_DRIVER_TYPE                  A4988
//#define X2_DRIVER_TYPE                A4988
//#define Y2_DRIVER_TYPE                A4988
//#define Z3_DRIVER_TYPE                A4988
//#define Z4_DRIVER_TYPE                A4988
//#define I_DRIVER_TYPE                 A4988
//#define J_DRIVER_TYPE                 A4988
//#define K_DRIVER_TYPE                 A4988
//#define U_DRIVER_TYPE                 A4988
//#define V_DRIVER_TYPE                 A4988
//#define W_DRIVER_TYPE                 A4988
#define E0_DRIVER_TYPE                  A4988
//#define E1_DRIVER_TYPE                A4988
//#define E2_DRIVER_TYPE                A4988
//#define E3_DRIVER_TYPE                A4988
//#define E4_DRIVER_TYPE                A4988
//#define E5_DRIVER_TYPE                A4988
//#define E6_DRIVER_TYPE                A4988
//#define E7_DRIVER_TYPE                A4988

// Rotary and extra axes. Nobody here has one, the block stays for the day
// someone bolts a fourth axis to the frame.
#ifdef I_DRIVER_TYPE
  #define AXIS4_NAME                    'A'                       // letter used in commands
  #define AXIS4_ROTATES                                           // counts in degrees
#endif
#ifdef J_DRIVER_TYPE
  #define AXIS5_NAME                    'B'                       // letter used in commands
  #define AXIS5_ROTATES                                           // counts in degrees
#endif
#ifdef K_DRIVER_TYPE
  #define AXIS6_NAME                    'C'                       // letter used in commands
  #define AXIS6_ROTATES                                           // counts in degrees
#endif
#ifdef U_DRIVER_TYPE
  #define AXIS7_NAME                    'U'                       // letter used in commands
  #define AXIS7_ROTATES                                           // counts in degrees
#endif
#ifdef V_DRIVER_TYPE
  #define AXIS8_NAME                    'V'                       // letter used in commands
  #define AXIS8_ROTATES                                           // counts in degrees
#endif
#ifdef W_DRIVER_TYPE
  #define AXIS9_NAME                    'W'                       // letter used in commands
  #define AXIS9_ROTATES                                           // counts in degrees
#endif

// ********************  Extruders and filament  ********************

#define EXTRUDERS                       1                         // 0 to 8
#define DEFAULT_NOMINAL_FILAMENT_DIA    1.75                      // mm, measured on three spools
//#define SINGLENOZZLE                                            // several drives, one melt zone
#if ENABLED(SINGLENOZZLE)
  //#define SINGLENOZZLE_STANDBY_TEMP
  //#define SINGLENOZZLE_STANDBY_FAN
#endif
#if ANY(SWITCHING_EXTRUDER, SWITCHING_NOZZLE)
  #define SWITCHING_EXTRUDER_SERVO_NR   0
  #define SWITCHING_EXTRUDER_SERVO_ANGLES { 0, 90 }               // degrees, drive 0 and drive 1
  #if EXTRUDERS > 3
    #define SWITCHING_EXTRUDER_E23_SERVO_NR 1
  #endif
#endif
//#define PARKING_EXTRUDER
//#define MAGNETIC_PARKING_EXTRUDER
#if ANY(PARKING_EXTRUDER, MAGNETIC_PARKING_EXTRUDER)
  #define PARKING_EXTRUDER_PARKING_X    { -78, 184 }              // where the two carriages wait
  #define PARKING_EXTRUDER_GRAB_DISTANCE 1                        // mm past the coupling
  #if ENABLED(PARKING_EXTRUDER)
    #define PARKING_EXTRUDER_SOLENOIDS_INVERT
    #define PARKING_EXTRUDER_SOLENOIDS_PINS_ACTIVE LOW
    #define PARKING_EXTRUDER_SOLENOIDS_DELAY 250                  // ms
  #elif ENABLED(MAGNETIC_PARKING_EXTRUDER)
    #define MPE_FAST_SPEED              9000                      // mm/min
    #define MPE_SLOW_SPEED              4500
    #define MPE_TRAVEL_DISTANCE         10                        // mm
    #define MPE_COMPENSATION            0
  #endif
#endif
//#define SWITCHING_TOOLHEAD
//#define MAGNETIC_SWITCHING_TOOLHEAD
//#define ELECTROMAGNETIC_SWITCHING_TOOLHEAD
#if ANY(SWITCHING_TOOLHEAD, MAGNETIC_SWITCHING_TOOLHEAD, ELECTROMAGNETIC_SWITCHING_TOOLHEAD)
  #define SWITCHING_TOOLHEAD_Y_POS      235                       // mm, where the docks are
  #define SWITCHING_TOOLHEAD_X_POS      { 215, 0 }                // one value a dock
  #define SWITCHING_TOOLHEAD_Y_SECURITY 10                        // mm kept clear
  #define SWITCHING_TOOLHEAD_Y_CLEAR    60
  #define SWITCHING_TOOLHEAD_PRIME_MM   20
  #define SWITCHING_TOOLHEAD_RETRACT_MM 20
  #define SWITCHING_TOOLHEAD_PRIME_FEEDRATE 300                   // mm/min
#endif
//#define MIXING_EXTRUDER
#if ENABLED(MIXING_EXTRUDER)
  #define MIXING_STEPPERS               2
  #define MIXING_VIRTUAL_TOOLS          16
  //#define DIRECT_MIXING_IN_G1
  //#define GRADIENT_MIX
#endif
//#define HOTEND_OFFSET_X               { 0.0, 20.00 }            // mm, second nozzle seen from the first
//#define HOTEND_OFFSET_Y               { 0.0, 5.00 }
//#define HOTEND_OFFSET_Z               { 0.0, 0.00 }

// ********************  Mains and power supply  ********************

//#define PSU_CONTROL
//#define PSU_NAME                      "bench supply"
#if ENABLED(PSU_CONTROL)
  //#define PSU_LATCHING
  #define PSU_ACTIVE_STATE              LOW                       // the relay module pulls in on low
  //#define PSU_DEFAULT_OFF
  #define PSU_POWERUP_DELAY             250                       // ms before the heaters may ask for anything
  //#define POWER_OFF_TIMER
  //#define POWER_OFF_WAIT_FOR_COOLDOWN
  //#define PSU_POWERUP_GCODE           "G4 P200"
  //#define PSU_POWEROFF_GCODE          "G4 P200"
  //#define AUTO_POWER_CONTROL
  #if ENABLED(AUTO_POWER_CONTROL)
    #define AUTO_POWER_FANS
    #define AUTO_POWER_E_FANS
    #define AUTO_POWER_CONTROLLERFAN
    #define AUTO_POWER_CHAMBER_FAN
    #define POWER_TIMEOUT               30                        // s
    //#define POWER_OFF_DELAY           60
  #endif
#endif
// Netzteil 350 W, alles andere zusammen braucht ungefähr 250 W.

// ********************  Temperatures: what is wired where  ********************

/**
 * Numbers for the list below, as far as we have used them here:
 *
 * 0  nothing connected
 * 1  the 100k bead that most beds carry, 4.7k to 3.3 V
 * 5  the 104-type glass bead, 4.7k
 * 11  100k bead whose bag says 3950, 4.7k
 * 13  100k bead for high heat, 4.7k
 * 20  platinum behind its little amplifier board
 * 60  100k bead, 3950, another maker's table
 * 1000  described by hand in the second file
 * 1047  platinum, 1000 ohm, 4.7k
 * 1010  platinum, 1000 ohm, 1k
 * 998  always reads what the line further down says (dry runs only!)
 * 999  the same, second value
 *
 * Take the number that belongs to the bead, not the one that was there before.
 */
#define TEMP_SENSOR_0                   1000                      // Perle vom alten Kopf, Werte in der zweiten Datei
#define TEMP_SENSOR_1                   0
#define TEMP_SENSOR_2                   0
#define TEMP_SENSOR_3                   0
#define TEMP_SENSOR_4                   0
#define TEMP_SENSOR_5                   0
#define TEMP_SENSOR_6                   0
#define TEMP_SENSOR_7                   0
#define TEMP_SENSOR_BED                 11
#define TEMP_SENSOR_PROBE               0
#define TEMP_SENSOR_CHAMBER             0
#define TEMP_SENSOR_COOLER              0
#define TEMP_SENSOR_BOARD               0
#define TEMP_SENSOR_SOC                 0
#define TEMP_SENSOR_REDUNDANT           0

// A sensor that is soldered in for good and a fixed one for dry runs. The
// numbers only matter when 998 or 999 stands in the list above.
#define DUMMY_THERMISTOR_998_VALUE      25
#define DUMMY_THERMISTOR_999_VALUE      100

// The chips for platinum have to be told what hangs on them.
#if TEMP_SENSOR_IS_MAX_TC(0)
  #define MAX31865_SENSOR_OHMS_0        1000                      // ohm, at 0 degrees
  #define MAX31865_CALIBRATION_OHMS_0   4300                      // ohm, the one on the little board
#endif
#if TEMP_SENSOR_IS_MAX_TC(1)
  #define MAX31865_SENSOR_OHMS_1        1000
  #define MAX31865_CALIBRATION_OHMS_1   4300
#endif

#if TEMP_SENSOR_REDUNDANT
  #define TEMP_SENSOR_REDUNDANT_SOURCE  E1
  #define TEMP_SENSOR_REDUNDANT_TARGET  E0
  #define TEMP_SENSOR_REDUNDANT_MAX_DIFF 10                       // degrees apart before it gives up
#endif
// How long and how steadily a target must be met before a wait is over.
#if HAS_E_TEMP_SENSOR
  #define TEMP_RESIDENCY_TIME           10                        // s
  #define TEMP_WINDOW                   1                         // degrees, for the timer to start
  #define TEMP_HYSTERESIS               3                         // degrees, for it to keep running
#endif

#if TEMP_SENSOR_BED
  #define TEMP_BED_RESIDENCY_TIME       10                        // s
  #define TEMP_BED_WINDOW               1                         // degrees, for the timer to start
  #define TEMP_BED_HYSTERESIS           3                         // degrees, for it to keep running
#endif

#if TEMP_SENSOR_CHAMBER
  #define TEMP_CHAMBER_RESIDENCY_TIME   10                        // s
  #define TEMP_CHAMBER_WINDOW           1                         // degrees, for the timer to start
  #define TEMP_CHAMBER_HYSTERESIS       3                         // degrees, for it to keep running
#endif

/**
 * Below the minimum a sensor counts as broken, above the maximum the
 * heater is cut and the printer stops until someone resets it.
 */
#define HEATER_0_MINTEMP                5
#define HEATER_1_MINTEMP                5
#define HEATER_2_MINTEMP                5
#define HEATER_3_MINTEMP                5
#define HEATER_4_MINTEMP                5
#define HEATER_5_MINTEMP                5
#define HEATER_6_MINTEMP                5
#define HEATER_7_MINTEMP                5
#define BED_MINTEMP                     5
#define CHAMBER_MINTEMP                 5

#define HEATER_0_MAXTEMP                300
#define HEATER_1_MAXTEMP                275
#define HEATER_2_MAXTEMP                275
#define HEATER_3_MAXTEMP                275
#define HEATER_4_MAXTEMP                275
#define HEATER_5_MAXTEMP                275
#define HEATER_6_MAXTEMP                275
#define HEATER_7_MAXTEMP                275
#define BED_MAXTEMP                     120
#define CHAMBER_MAXTEMP                 60

// Room for overshoot: targets end this far below the maximum.
#define HOTEND_OVERSHOOT                15                        // degrees
#define BED_OVERSHOOT                   10
#define COOLER_OVERSHOOT                2

// ********************  Temperatures: control loops  ********************

//#define PIDTEMP                                                 // hotend
#define MPCTEMP                                                   // model-based instead of the line above

#if ENABLED(PIDTEMP)
  #define PID_MAX                       255                       // duty counts, 255 is full power
  #define PID_K1                        0.95                      // share of the old slope that is kept
  //#define PID_DEBUG
  //#define PID_OPENLOOP
  //#define SLOW_PWM_HEATERS
  //#define PID_PARAMS_PER_HOTEND                                 // one set of gains a hotend
  #define PID_FUNCTIONAL_RANGE          10                        // degrees round the target in which the loop works
  //#define PID_EDIT_MENU
  //#define PID_AUTOTUNE_MENU
  #if ENABLED(PID_PARAMS_PER_HOTEND)
    // One value for each hotend, the last one serves the rest.
    #define DEFAULT_Kp_LIST             { 21.70, 21.70 }
    #define DEFAULT_Ki_LIST             { 1.40, 1.40 }
    #define DEFAULT_Kd_LIST             { 84.00, 84.00 }
  #else
    #define DEFAULT_Kp                  21.70
    #define DEFAULT_Ki                  1.40
    #define DEFAULT_Kd                  84.00
  #endif
#else
  #define BANG_MAX                      255                       // duty counts when the loop is a plain switch
#endif // PIDTEMP

#if ENABLED(MPCTEMP)
  /**
   * The model wants the heater's power and what the block is made of. It
   * can find the rest by itself, the power it cannot: read the label.
   */
  //#define MPC_EDIT_MENU
  //#define MPC_AUTOTUNE_MENU
  #define MPC_MAX                       255                       // duty counts
  #define MPC_HEATER_POWER              { 40.0 }                  // W, vom Etikett der alten Patrone
  //#define MPC_PTC
  #if ENABLED(MPC_PTC)
    #define MPC_HEATER_ALPHA            { 0.0028 }                // 1/K
    #define MPC_HEATER_REFTEMP          { 20 }                    // degrees at which the power above was read
  #endif
  #define MPC_INCLUDE_FAN
  #define MPC_BLOCK_HEAT_CAPACITY       { 16.7 }                  // J/K
  #define MPC_SENSOR_RESPONSIVENESS     { 0.22 }                  // 1/s
  #define MPC_AMBIENT_XFER_COEFF        { 0.068 }                 // W/K
  #if ENABLED(MPC_INCLUDE_FAN)
    #define MPC_AMBIENT_XFER_COEFF_FAN255 { 0.097 }               // W/K, part fan full
  #endif
  #define FILAMENT_HEAT_CAPACITY_PERMM  { 5.6e-3f }               // J/K/mm of 1.75 mm filament
  #define MPC_SMOOTHING_FACTOR          0.5f
  #define MPC_MIN_AMBIENT_CHANGE        1.0f
  #define MPC_STEADYSTATE               0.5f
  #define MPC_TUNING_POS                { X_CENTER, Y_CENTER, 1.0f }  // mm, where it sits while it learns
  #define MPC_TUNING_END_Z              10
#endif // MPCTEMP

//#define PIDTEMPBED                                              // bed; without it the bed is a plain switch
//#define BED_LIMIT_SWITCHING
#define MAX_BED_POWER                   255                       // duty counts
#if ENABLED(PIDTEMPBED)
  //#define MIN_BED_POWER               0
  //#define PID_BED_DEBUG
  #define DEFAULT_bedKp                 58.20
  #define DEFAULT_bedKi                 9.61
  #define DEFAULT_bedKd                 235.10
#endif // PIDTEMPBED

//#define PIDTEMPCHAMBER
//#define CHAMBER_LIMIT_SWITCHING
#define MAX_CHAMBER_POWER               255
#if ENABLED(PIDTEMPCHAMBER)
  #define MIN_CHAMBER_POWER             0
  #define DEFAULT_chamberKp             37.04
  #define DEFAULT_chamberKi             1.40
  #define DEFAULT_chamberKd             655.17
#endif

// ********************  Temperatures: safety  ********************

// No pushing of cold filament. The lower line is the limit in degrees.
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP                 170

// Nor of whole metres in one go.
#define PREVENT_LENGTHY_EXTRUDE
#define EXTRUDE_MAXLENGTH               200                       // mm

/**
 * Watches every heater for a sensor that fell out or an output that stays
 * on. The second file says how patient it is. Leave all of them on.
 */
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_BED
#define THERMAL_PROTECTION_CHAMBER
#define THERMAL_PROTECTION_COOLER

// ********************  Kinematics  ********************

// At most one of these. None means a plain gantry.
#define COREXY
//#define COREXZ
//#define COREYZ
//#define COREYX
//#define COREZX
//#define COREZY
//#define DELTA
// Riemen über Kreuz, darum oben COREXY. (Ja, wirklich.)

// ********************  End switches  ********************

#define USE_XMIN_PLUG
#define USE_YMIN_PLUG
//#define USE_ZMIN_PLUG
//#define USE_XMAX_PLUG
//#define USE_YMAX_PLUG
//#define USE_ZMAX_PLUG
#define ENDSTOPPULLUPS
#if DISABLED(ENDSTOPPULLUPS)
  // Chosen one by one when the line above is off.
  //#define ENDSTOPPULLUP_XMAX
  //#define ENDSTOPPULLUP_YMAX
  //#define ENDSTOPPULLUP_ZMAX
  //#define ENDSTOPPULLUP_IMAX
  //#define ENDSTOPPULLUP_JMAX
  //#define ENDSTOPPULLUP_KMAX
  //#define ENDSTOPPULLUP_UMAX
  //#define ENDSTOPPULLUP_VMAX
  //#define ENDSTOPPULLUP_WMAX
  //#define ENDSTOPPULLUP_XMIN
  //#define ENDSTOPPULLUP_YMIN
  //#define ENDSTOPPULLUP_ZMIN
  //#define ENDSTOPPULLUP_IMIN
  //#define ENDSTOPPULLUP_JMIN
  //#define ENDSTOPPULLUP_KMIN
  //#define ENDSTOPPULLUP_UMIN
  //#define ENDSTOPPULLUP_VMIN
  //#define ENDSTOPPULLUP_WMIN
  //#define ENDSTOPPULLUP_ZMIN_PROBE
#endif
//#define ENDSTOPPULLDOWNS
#if DISABLED(ENDSTOPPULLDOWNS)
  //#define ENDSTOPPULLDOWN_XMAX
  //#define ENDSTOPPULLDOWN_YMAX
  //#define ENDSTOPPULLDOWN_ZMAX
  //#define ENDSTOPPULLDOWN_IMAX
  //#define ENDSTOPPULLDOWN_JMAX
  //#define ENDSTOPPULLDOWN_KMAX
  //#define ENDSTOPPULLDOWN_UMAX
  //#define ENDSTOPPULLDOWN_VMAX
  //#define ENDSTOPPULLDOWN_WMAX
  //#define ENDSTOPPULLDOWN_XMIN
  //#define ENDSTOPPULLDOWN_YMIN
  //#define ENDSTOPPULLDOWN_ZMIN
  //#define ENDSTOPPULLDOWN_IMIN
  //#define ENDSTOPPULLDOWN_JMIN
  //#define ENDSTOPPULLDOWN_KMIN
  //#define ENDSTOPPULLDOWN_UMIN
  //#define ENDSTOPPULLDOWN_VMIN
  //#define ENDSTOPPULLDOWN_WMIN
  //#define ENDSTOPPULLDOWN_ZMIN_PROBE
#endif
// true where the switch closes to ground when it is hit.
#define X_MIN_ENDSTOP_INVERTING         true
#define Y_MIN_ENDSTOP_INVERTING         true
#define Z_MIN_ENDSTOP_INVERTING         false
#define I_MIN_ENDSTOP_INVERTING         false
#define J_MIN_ENDSTOP_INVERTING         false
#define K_MIN_ENDSTOP_INVERTING         false
#define U_MIN_ENDSTOP_INVERTING         false
#define V_MIN_ENDSTOP_INVERTING         false
#define W_MIN_ENDSTOP_INVERTING         false
#define X_MAX_ENDSTOP_INVERTING         false
#define Y_MAX_ENDSTOP_INVERTING         false
#define Z_MAX_ENDSTOP_INVERTING         false
#define I_MAX_ENDSTOP_INVERTING         false
#define J_MAX_ENDSTOP_INVERTING         false
#define K_MAX_ENDSTOP_INVERTING         false
#define U_MAX_ENDSTOP_INVERTING         false
#define V_MAX_ENDSTOP_INVERTING         false
#define W_MAX_ENDSTOP_INVERTING         false
#define Z_MIN_PROBE_ENDSTOP_INVERTING   false
//#define ENDSTOP_INTERRUPTS_FEATURE
//#define ENDSTOP_NOISE_THRESHOLD       2
//#define DETECT_BROKEN_ENDSTOP

// ********************  Motion  ********************

// Steps for one millimetre: X, Y, Z, E. The last figure was measured on
// 100 mm of filament, twice.
#define DEFAULT_AXIS_STEPS_PER_UNIT     { 80, 80, 400, 415.2 }
#define DEFAULT_MAX_FEEDRATE            { 300, 300, 10, 50 }      // mm/s
//#define LIMITED_MAX_FR_EDITING
#if ENABLED(LIMITED_MAX_FR_EDITING)
  #define MAX_FEEDRATE_EDIT_VALUES      { 600, 600, 10, 50 }
#endif
#define DEFAULT_MAX_ACCELERATION        { 2500, 2500, 100, 8000 } // mm/s2
//#define LIMITED_MAX_ACCEL_EDITING
#if ENABLED(LIMITED_MAX_ACCEL_EDITING)
  #define MAX_ACCEL_EDIT_VALUES         { 6000, 6000, 200, 20000 }
#endif
#define DEFAULT_ACCELERATION            1500                      // moves that print
#define DEFAULT_RETRACT_ACCELERATION    1500                      // filament only
#define DEFAULT_TRAVEL_ACCELERATION     2000                      // moves that do not
//#define CLASSIC_JERK
#if ENABLED(CLASSIC_JERK)
  #define DEFAULT_XJERK                 8.0
  #define DEFAULT_YJERK                 8.0
  #define DEFAULT_ZJERK                 0.4
  //#define TRAVEL_EXTRA_XYJERK         0.0
  //#define LIMITED_JERK_EDITING
  #if ENABLED(LIMITED_JERK_EDITING)
    #define MAX_JERK_EDIT_VALUES        { 20, 20, 0.6, 10 }
  #endif
#endif
#define DEFAULT_EJERK                   5.0                       // used by advance too
#if DISABLED(CLASSIC_JERK)
  #define JUNCTION_DEVIATION_MM         0.018
  #define JD_HANDLE_SMALL_SEGMENTS
#endif
#define S_CURVE_ACCELERATION

// ********************  Probe  ********************

//#define PROBE_MANUALLY                                          // paper and patience
#define FIX_MOUNTED_PROBE                                         // inductive or optical, does not move
//#define NOZZLE_AS_PROBE                                         // the nozzle itself touches
//#define Z_PROBE_SERVO_NR                                        // an arm swings it out
//#define SENSORLESS_PROBING                                      // by the motors' stall
//#define Z_PROBE_ALLEN_KEY                                       // a key is pulled out
//#define SOLENOID_PROBE
//#define Z_PROBE_SLED                                            // docks on a sled
#define PROBING_MARGIN                  12                        // mm kept from the edge
#define XY_PROBE_FEEDRATE               (120*60)                  // mm/min
#define Z_PROBE_FEEDRATE_FAST           (6*60)
#define Z_PROBE_FEEDRATE_SLOW           (Z_PROBE_FEEDRATE_FAST / 2)
// From the nozzle to the point that the probe touches: right, back, up. The
// third one is how far the probe fires before the nozzle would touch.
#define NOZZLE_TO_PROBE_OFFSET          { -38, -7, -2.15 }
#define MULTIPLE_PROBING                2
//#define EXTRA_PROBING                 1
#define Z_CLEARANCE_DEPLOY_PROBE        10                        // mm
#define Z_CLEARANCE_BETWEEN_PROBES      5
#define Z_CLEARANCE_MULTI_PROBE         5
//#define Z_AFTER_PROBING               5
#define Z_PROBE_LOW_POINT               -2
#define PROBE_OFFSET_ZMIN               -20
#define PROBE_OFFSET_ZMAX               20
//#define Z_MIN_PROBE_REPEATABILITY_TEST
//#define PAUSE_BEFORE_DEPLOY_STOW
#if ENABLED(PAUSE_BEFORE_DEPLOY_STOW)
  //#define PAUSE_PROBE_DEPLOY_WHEN_TRIGGERED
#endif
//#define PROBING_HEATERS_OFF
#if ENABLED(PROBING_HEATERS_OFF)
  //#define WAIT_FOR_BED_HEATER
  //#define WAIT_FOR_HOTEND
#endif
//#define PROBING_FANS_OFF
//#define PROBING_ESTEPPERS_OFF
//#define PROBING_STEPPERS_OFF
//#define DELAY_BEFORE_PROBING          200
//#define PREHEAT_BEFORE_PROBING
#if ENABLED(PREHEAT_BEFORE_PROBING)
  #define PROBING_NOZZLE_TEMP           120
  #define PROBING_BED_TEMP              50
#endif

// ********************  Pins, directions, home  ********************

#define X_ENABLE_ON                     0
#define Y_ENABLE_ON                     0
#define Z_ENABLE_ON                     0
#define E_ENABLE_ON                     0
//#define I_ENABLE_ON                   0
//#define J_ENABLE_ON                   0
//#define K_ENABLE_ON                   0
//#define U_ENABLE_ON                   0
//#define V_ENABLE_ON                   0
//#define W_ENABLE_ON                   0
#define DISABLE_X                       false
#define DISABLE_Y                       false
#define DISABLE_Z                       false
#define DISABLE_E                       false
#define DISABLE_OTHER_EXTRUDERS                                   // idle drives are let go
#define INVERT_X_DIR                    false
#define INVERT_Y_DIR                    true
#define INVERT_Z_DIR                    false
//#define INVERT_I_DIR                  false
//#define INVERT_J_DIR                  false
//#define INVERT_K_DIR                  false
//#define INVERT_U_DIR                  false
//#define INVERT_V_DIR                  false
//#define INVERT_W_DIR                  false
#define INVERT_E0_DIR                   false
#define INVERT_E1_DIR                   false
#define INVERT_E2_DIR                   false
#define INVERT_E3_DIR                   false
#define INVERT_E4_DIR                   false
#define INVERT_E5_DIR                   false
#define INVERT_E6_DIR                   false
#define INVERT_E7_DIR                   false
//#define NO_MOTION_BEFORE_HOMING
//#define HOME_AFTER_DEACTIVATE
//#define UNKNOWN_Z_NO_RAISE
//#define Z_HOMING_HEIGHT               4
//#define Z_AFTER_HOMING                10
#define X_HOME_DIR                      -1
#define Y_HOME_DIR                      -1
#define Z_HOME_DIR                      -1
//#define I_HOME_DIR                    -1
//#define J_HOME_DIR                    -1
//#define K_HOME_DIR                    -1
//#define U_HOME_DIR                    -1
//#define V_HOME_DIR                    -1
//#define W_HOME_DIR                    -1
#define X_BED_SIZE                      300
#define Y_BED_SIZE                      300
#define X_MIN_POS                       0
#define Y_MIN_POS                       0
#define Z_MIN_POS                       0
#define X_MAX_POS                       X_BED_SIZE
#define Y_MAX_POS                       Y_BED_SIZE
#define Z_MAX_POS                       320
//#define I_MIN_POS                     0
//#define I_MAX_POS                     50
//#define J_MIN_POS                     0
//#define J_MAX_POS                     50
//#define K_MIN_POS                     0
//#define K_MAX_POS                     50
//#define U_MIN_POS                     0
//#define U_MAX_POS                     50
//#define V_MIN_POS                     0
//#define V_MAX_POS                     50
//#define W_MIN_POS                     0
//#define W_MAX_POS                     50
#define MIN_SOFTWARE_ENDSTOPS
#if ENABLED(MIN_SOFTWARE_ENDSTOPS)
  #define MIN_SOFTWARE_ENDSTOP_X
  #define MIN_SOFTWARE_ENDSTOP_Y
  #define MIN_SOFTWARE_ENDSTOP_Z
  #define MIN_SOFTWARE_ENDSTOP_I
  #define MIN_SOFTWARE_ENDSTOP_J
  #define MIN_SOFTWARE_ENDSTOP_K
  #define MIN_SOFTWARE_ENDSTOP_U
  #define MIN_SOFTWARE_ENDSTOP_V
  #define MIN_SOFTWARE_ENDSTOP_W
#endif
#define MAX_SOFTWARE_ENDSTOPS
#if ENABLED(MAX_SOFTWARE_ENDSTOPS)
  #define MAX_SOFTWARE_ENDSTOP_X
  #define MAX_SOFTWARE_ENDSTOP_Y
  #define MAX_SOFTWARE_ENDSTOP_Z
  #define MAX_SOFTWARE_ENDSTOP_I
  #define MAX_SOFTWARE_ENDSTOP_J
  #define MAX_SOFTWARE_ENDSTOP_K
  #define MAX_SOFTWARE_ENDSTOP_U
  #define MAX_SOFTWARE_ENDSTOP_V
  #define MAX_SOFTWARE_ENDSTOP_W
#endif
#if ANY(MIN_SOFTWARE_ENDSTOPS, MAX_SOFTWARE_ENDSTOPS)
  //#define SOFT_ENDSTOPS_MENU_ITEM
#endif
#define HOMING_FEEDRATE_MM_M            { (40*60), (40*60), (4*60) }
#define VALIDATE_HOMING_ENDSTOPS
//#define SKEW_CORRECTION
#if ENABLED(SKEW_CORRECTION)
  #define XY_DIAG_AC                    282.8427124746
  #define XY_DIAG_BD                    282.8427124746
  #define XY_SIDE_AD                    200
  //#define SKEW_CORRECTION_FOR_Z
  //#define SKEW_CORRECTION_GCODE
#endif

// ********************  Filament sensors  ********************

//#define FILAMENT_RUNOUT_SENSOR
#if ENABLED(FILAMENT_RUNOUT_SENSOR)
  #define FIL_RUNOUT_ENABLED_DEFAULT    true
  #define NUM_RUNOUT_SENSORS            1
  #define FIL_RUNOUT_STATE              LOW
  #define FIL_RUNOUT_PULLUP
  //#define FIL_RUNOUT_PULLDOWN
  //#define WATCH_ALL_RUNOUT_SENSORS
  //#define FIL_RUNOUT2_STATE           LOW
  //#define FIL_RUNOUT2_PULLUP
  //#define FIL_RUNOUT2_PULLDOWN
  //#define FIL_RUNOUT3_STATE           LOW
  //#define FIL_RUNOUT3_PULLUP
  //#define FIL_RUNOUT3_PULLDOWN
  //#define FIL_RUNOUT4_STATE           LOW
  //#define FIL_RUNOUT4_PULLUP
  //#define FIL_RUNOUT4_PULLDOWN
  //#define FIL_RUNOUT5_STATE           LOW
  //#define FIL_RUNOUT5_PULLUP
  //#define FIL_RUNOUT5_PULLDOWN
  //#define FIL_RUNOUT6_STATE           LOW
  //#define FIL_RUNOUT6_PULLUP
  //#define FIL_RUNOUT6_PULLDOWN
  //#define FIL_RUNOUT7_STATE           LOW
  //#define FIL_RUNOUT7_PULLUP
  //#define FIL_RUNOUT7_PULLDOWN
  //#define FIL_RUNOUT8_STATE           LOW
  //#define FIL_RUNOUT8_PULLUP
  //#define FIL_RUNOUT8_PULLDOWN
  #define FILAMENT_RUNOUT_SCRIPT        "M600"
  //#define FILAMENT_RUNOUT_DISTANCE_MM 25
  #ifdef FILAMENT_RUNOUT_DISTANCE_MM
    //#define FILAMENT_MOTION_SENSOR
  #endif
#endif

// ********************  Bed levelling  ********************

//#define AUTO_BED_LEVELING_3POINT                                // a plane through three points
//#define AUTO_BED_LEVELING_LINEAR                                // a plane through a grid
//#define AUTO_BED_LEVELING_BILINEAR                              // a grid, straight between its points
#define AUTO_BED_LEVELING_UBL                                     // a grid with slots to keep several
//#define MESH_BED_LEVELING                                       // a grid that is measured by hand
//#define RESTORE_LEVELING_AFTER_G28
//#define ENABLE_LEVELING_AFTER_G28
//#define PREHEAT_BEFORE_LEVELING
#if ENABLED(PREHEAT_BEFORE_LEVELING)
  #define LEVELING_NOZZLE_TEMP          120
  #define LEVELING_BED_TEMP             50
#endif
//#define DEBUG_LEVELING_FEATURE
#if ANY(MESH_BED_LEVELING, AUTO_BED_LEVELING_UBL, AUTO_BED_LEVELING_BILINEAR)
  #define ENABLE_LEVELING_FADE_HEIGHT
  #if ENABLED(ENABLE_LEVELING_FADE_HEIGHT)
    #define DEFAULT_LEVELING_FADE_HEIGHT 10.0                     // mm
  #endif
  #define SEGMENT_LEVELED_MOVES
  #define LEVELED_SEGMENT_LENGTH        5.0
  // A test pattern for the mesh; the nozzle below is what it assumes.
  #define G26_MESH_VALIDATION
  #if ENABLED(G26_MESH_VALIDATION)
    #define MESH_TEST_NOZZLE_SIZE       0.4                       // mm
    #define MESH_TEST_LAYER_HEIGHT      0.2
    #define MESH_TEST_HOTEND_TEMP       205                       // degrees
    #define MESH_TEST_BED_TEMP          60
    #define G26_XY_FEEDRATE             20
    #define G26_XY_FEEDRATE_TRAVEL      100
    #define G26_RETRACT_MULTIPLIER      1.0
  #endif
#endif
#if ANY(AUTO_BED_LEVELING_LINEAR, AUTO_BED_LEVELING_BILINEAR)
  #define GRID_MAX_POINTS_X             5
  #define GRID_MAX_POINTS_Y             GRID_MAX_POINTS_X
  //#define PROBE_Y_FIRST
  #if ENABLED(AUTO_BED_LEVELING_BILINEAR)
    //#define EXTRAPOLATE_BEYOND_GRID
    //#define ABL_BILINEAR_SUBDIVISION
    #if ENABLED(ABL_BILINEAR_SUBDIVISION)
      #define BILINEAR_SUBDIVISIONS     3
    #endif
  #endif
#elif ENABLED(AUTO_BED_LEVELING_UBL)
  //#define MESH_EDIT_GFX_OVERLAY
  #define MESH_INSET                    1
  #define GRID_MAX_POINTS_X             10
  #define GRID_MAX_POINTS_Y             GRID_MAX_POINTS_X
  #define UBL_MESH_EDIT_MOVES_Z
  #define UBL_SAVE_ACTIVE_ON_M500
#elif ENABLED(MESH_BED_LEVELING)
  #define MESH_INSET                    10
  #define GRID_MAX_POINTS_X             3
  #define GRID_MAX_POINTS_Y             GRID_MAX_POINTS_X
  //#define MESH_G28_REST_ORIGIN
#endif

//#define LCD_BED_LEVELING
#if ENABLED(LCD_BED_LEVELING)
  #define MESH_EDIT_Z_STEP              0.025
  #define LCD_PROBE_Z_RANGE             4
#endif
//#define LCD_BED_TRAMMING
#if ENABLED(LCD_BED_TRAMMING)
  #define BED_TRAMMING_INSET_LFRB       { 30, 30, 30, 30 }
  #define BED_TRAMMING_HEIGHT           0.0
  #define BED_TRAMMING_Z_HOP            4.0
  //#define BED_TRAMMING_USE_PROBE
#endif
// Prüfmuster: Düse 0,4 war einmal.

// ********************  Safe home, memory and keep-alive  ********************

#define Z_SAFE_HOMING
#if ENABLED(Z_SAFE_HOMING)
  #define Z_SAFE_HOMING_X_POINT         (X_BED_SIZE / 2)
  #define Z_SAFE_HOMING_Y_POINT         (Y_BED_SIZE / 2)
#endif
// Settings that the panel may keep. What is stored there outlives a flash
// and wins over this file until it is reset.
#define EEPROM_SETTINGS
//#define DISABLE_M503
#define EEPROM_CHITCHAT
#define EEPROM_BOOT_SILENT
#if ENABLED(EEPROM_SETTINGS)
  //#define EEPROM_AUTO_INIT
  //#define EEPROM_INIT_NOW
#endif
#define HOST_KEEPALIVE_FEATURE
#define DEFAULT_KEEPALIVE_INTERVAL      2                         // s
#define BUSY_WHILE_HEATING
//#define INCH_MODE_SUPPORT
//#define TEMPERATURE_UNITS_SUPPORT

// ********************  Preheat buttons  ********************

#define PREHEAT_1_LABEL                 "PLA"
#define PREHEAT_1_TEMP_HOTEND           200
#define PREHEAT_1_TEMP_BED              60
#define PREHEAT_1_TEMP_CHAMBER          35
#define PREHEAT_1_FAN_SPEED             0                         // 0 to 255

#define PREHEAT_2_LABEL                 "PETG"
#define PREHEAT_2_TEMP_HOTEND           235
#define PREHEAT_2_TEMP_BED              80
#define PREHEAT_2_TEMP_CHAMBER          35
#define PREHEAT_2_FAN_SPEED             0                         // 0 to 255

#define PREHEAT_3_LABEL                 "PA"
#define PREHEAT_3_TEMP_HOTEND           240
#define PREHEAT_3_TEMP_BED              90
#define PREHEAT_3_TEMP_CHAMBER          35
#define PREHEAT_3_FAN_SPEED             0                         // 0 to 255

#define PREHEAT_4_LABEL                 "TPU"
#define PREHEAT_4_TEMP_HOTEND           215
#define PREHEAT_4_TEMP_BED              45
#define PREHEAT_4_TEMP_CHAMBER          35
#define PREHEAT_4_FAN_SPEED             0                         // 0 to 255


// ********************  Parking and cleaning  ********************

#define NOZZLE_PARK_FEATURE
#if ENABLED(NOZZLE_PARK_FEATURE)
  #define NOZZLE_PARK_POINT             { (X_MIN_POS + 10), (Y_MAX_POS - 10), 20 }
  #define NOZZLE_PARK_MOVE              0
  #define NOZZLE_PARK_Z_RAISE_MIN       2
  #define NOZZLE_PARK_XY_FEEDRATE       100
  #define NOZZLE_PARK_Z_FEEDRATE        5
#endif
//#define NOZZLE_CLEAN_FEATURE
#if ENABLED(NOZZLE_CLEAN_FEATURE)
  #define NOZZLE_CLEAN_PATTERN_LINE
  #define NOZZLE_CLEAN_PATTERN_ZIGZAG
  #define NOZZLE_CLEAN_PATTERN_CIRCLE
  #define NOZZLE_CLEAN_STROKES          12
  #define NOZZLE_CLEAN_TRIANGLES        3
  #define NOZZLE_CLEAN_START_POINT      { {  30, 30, (Z_MIN_POS + 1) } }
  #define NOZZLE_CLEAN_END_POINT        { { 100, 60, (Z_MIN_POS + 1) } }
  #define NOZZLE_CLEAN_CIRCLE_RADIUS    6.5
  #define NOZZLE_CLEAN_CIRCLE_FN        10
  #define NOZZLE_CLEAN_GOBACK
  #define NOZZLE_CLEAN_MIN_TEMP         170
  //#define NOZZLE_CLEAN_NO_Z
  //#define NOZZLE_CLEAN_NO_Y
#endif
#define PRINTJOB_TIMER_AUTOSTART
//#define PRINTCOUNTER
//#define PASSWORD_FEATURE
#if ENABLED(PASSWORD_FEATURE)
  #define PASSWORD_LENGTH               4
  #define PASSWORD_ON_STARTUP
  #define PASSWORD_UNLOCK_GCODE
  #define PASSWORD_CHANGE_GCODE
  //#define PASSWORD_ON_SD_PRINT_MENU
#endif

// ********************  Panel  ********************

#define LCD_LANGUAGE                    de
#define DISPLAY_CHARSET                 WESTERN
#define LCD_INFO_SCREEN_STYLE           0
#define SDSUPPORT
//#define SD_CHECK_AND_RETRY
//#define NO_LCD_MENUS
//#define SLIM_LCD_MENUS
//#define ENCODER_PULSES_PER_STEP       4
//#define ENCODER_STEPS_PER_MENU_ITEM   1
//#define REVERSE_ENCODER_DIRECTION
//#define REVERSE_MENU_DIRECTION
//#define INDIVIDUAL_AXIS_HOMING_MENU
//#define SPEAKER
//#define LCD_FEEDBACK_FREQUENCY_DURATION_MS 2
//#define LCD_FEEDBACK_FREQUENCY_HZ     5000
/**
 * Every panel that ever came through the door. One may be on.
 */
//#define PANEL_16X2_KNOB_SPI                                     // two lines of text, with a knob, serial
//#define PANEL_16X2_KNOB_PAR                                     // two lines of text, with a knob, eight wires
//#define PANEL_16X2_TOUCH_SPI                                    // two lines of text, with a touch layer, serial
//#define PANEL_16X2_TOUCH_PAR                                    // two lines of text, with a touch layer, eight wires
//#define PANEL_16X2_BUTTONS_SPI                                  // two lines of text, five buttons, serial
//#define PANEL_16X2_BUTTONS_PAR                                  // two lines of text, five buttons, eight wires
//#define PANEL_20X4_KNOB_SPI                                     // four lines of text, with a knob, serial
//#define PANEL_20X4_KNOB_PAR                                     // four lines of text, with a knob, eight wires
//#define PANEL_20X4_TOUCH_SPI                                    // four lines of text, with a touch layer, serial
//#define PANEL_20X4_TOUCH_PAR                                    // four lines of text, with a touch layer, eight wires
//#define PANEL_20X4_BUTTONS_SPI                                  // four lines of text, five buttons, serial
//#define PANEL_20X4_BUTTONS_PAR                                  // four lines of text, five buttons, eight wires
//#define PANEL_128X64_KNOB_SPI                                   // small dots, with a knob, serial
//#define PANEL_128X64_KNOB_PAR                                   // small dots, with a knob, eight wires
//#define PANEL_128X64_TOUCH_SPI                                  // small dots, with a touch layer, serial
//#define PANEL_128X64_TOUCH_PAR                                  // small dots, with a touch layer, eight wires
//#define PANEL_128X64_BUTTONS_SPI                                // small dots, five buttons, serial
//#define PANEL_128X64_BUTTONS_PAR                                // small dots, five buttons, eight wires
//#define PANEL_128X160_KNOB_SPI                                  // upright dots, with a knob, serial
//#define PANEL_128X160_KNOB_PAR                                  // upright dots, with a knob, eight wires
//#define PANEL_128X160_TOUCH_SPI                                 // upright dots, with a touch layer, serial
//#define PANEL_128X160_TOUCH_PAR                                 // upright dots, with a touch layer, eight wires
//#define PANEL_128X160_BUTTONS_SPI                               // upright dots, five buttons, serial
//#define PANEL_128X160_BUTTONS_PAR                               // upright dots, five buttons, eight wires
//#define PANEL_240X320_KNOB_SPI                                  // colour, with a knob, serial
//#define PANEL_240X320_KNOB_PAR                                  // colour, with a knob, eight wires
//#define PANEL_240X320_TOUCH_SPI                                 // colour, with a touch layer, serial
//#define PANEL_240X320_TOUCH_PAR                                 // colour, with a touch layer, eight wires
//#define PANEL_240X320_BUTTONS_SPI                               // colour, five buttons, serial
//#define PANEL_240X320_BUTTONS_PAR                               // colour, five buttons, eight wires
//#define PANEL_480X320_KNOB_SPI                                  // large colour, with a knob, serial
//#define PANEL_480X320_KNOB_PAR                                  // large colour, with a knob, eight wires
#define PANEL_480X320_TOUCH_SPI                                   // large colour, with a touch layer, serial
//#define PANEL_480X320_TOUCH_PAR                                 // large colour, with a touch layer, eight wires
//#define PANEL_480X320_BUTTONS_SPI                               // large colour, five buttons, serial
//#define PANEL_480X320_BUTTONS_PAR                               // large colour, five buttons, eight wires
//#define PANEL_800X480_KNOB_SPI                                  // tablet size, with a knob, serial
//#define PANEL_800X480_KNOB_PAR                                  // tablet size, with a knob, eight wires
//#define PANEL_800X480_TOUCH_SPI                                 // tablet size, with a touch layer, serial
//#define PANEL_800X480_TOUCH_PAR                                 // tablet size, with a touch layer, eight wires
//#define PANEL_800X480_BUTTONS_SPI                               // tablet size, five buttons, serial
//#define PANEL_800X480_BUTTONS_PAR                               // tablet size, five buttons, eight wires
#if ANY(PANEL_240X320_TOUCH_SPI, PANEL_480X320_TOUCH_SPI)
  #define TOUCH_CALIBRATION_X           12316
  #define TOUCH_CALIBRATION_Y           -8981
  #define TOUCH_OFFSET_X                -43
  #define TOUCH_OFFSET_Y                257
  //#define TOUCH_CALIBRATION_AUTO_SAVE
  //#define SINGLE_TOUCH_NAVIGATION
#endif

// ********************  Lights, servos and odds and ends  ********************

//#define FAST_PWM_FAN
//#define FAN_SOFT_PWM
#define SOFT_PWM_SCALE                  0
//#define TEMP_STAT_LEDS
//#define PHOTO_GCODE
//#define RGB_LED
//#define RGBW_LED
#if ANY(RGB_LED, RGBW_LED)
  //#define RGB_LED_R_PIN               34
  //#define RGB_LED_G_PIN               43
  //#define RGB_LED_B_PIN               35
  //#define RGB_LED_W_PIN               -1
#endif
#define NEOPIXEL_LED
#if ENABLED(NEOPIXEL_LED)
  #define NEOPIXEL_PIN                  4
  //#define NEOPIXEL2_TYPE              NEO_GRB
  #define NEOPIXEL_PIXELS               24
  #define NEOPIXEL_BRIGHTNESS           90
  //#define NEOPIXEL_STARTUP_TEST
#endif
//#define NUM_SERVOS                    3
#define SERVO_DELAY                     { 300 }                   // ms to settle
//#define DEACTIVATE_SERVOS_AFTER_MOVE
//#define EDITABLE_SERVO_ANGLES

// What the style's firmware derives between the first file and the second, as
// it publishes it. What it takes out itself goes only where that is sure.

// Without an extruder there is nothing to heat.
#if preflash_sure(EXTRUDERS == 0)
  #if preflash_newer
    #undef TEMP_SENSOR_0
    #undef TEMP_SENSOR_1
    #undef TEMP_SENSOR_2
    #undef TEMP_SENSOR_3
    #undef TEMP_SENSOR_4
    #undef TEMP_SENSOR_5
    #undef TEMP_SENSOR_6
    #undef TEMP_SENSOR_7
  #endif
  #undef SINGLENOZZLE
  #undef SWITCHING_EXTRUDER
  #undef SWITCHING_NOZZLE
  #undef SWITCHING_TOOLHEAD
  #undef MECHANICAL_SWITCHING_EXTRUDER
  #undef MECHANICAL_SWITCHING_NOZZLE
  #undef MIXING_EXTRUDER
  #undef HOTEND_IDLE_TIMEOUT
  #undef DISABLE_E
  #undef PREVENT_LENGTHY_EXTRUDE
  #undef FILAMENT_RUNOUT_SENSOR
  #undef FILAMENT_RUNOUT_DISTANCE_MM
  #undef FILAMENT_RUNOUT_SCRIPT
#endif
#if EXTRUDERS != 0
  #define HAS_EXTRUDERS 1
#endif
#if EXTRUDERS > 1
  #define HAS_MULTI_EXTRUDER 1
#endif
#ifdef MMU_MODEL
  #define SINGLENOZZLE
#endif

#if ENABLED(E_DUAL_STEPPER_DRIVERS)
  #define E_STEPPERS 2
#elif ENABLED(SWITCHING_EXTRUDER) || (preflash_newer && ENABLED(MECHANICAL_SWITCHING_EXTRUDER))
  #if EXTRUDERS > 4
    #define E_STEPPERS 3
  #elif EXTRUDERS > 2
    #define E_STEPPERS 2
  #else
    #define E_STEPPERS 1
  #endif
#elif ENABLED(MIXING_EXTRUDER)
  #define E_STEPPERS MIXING_STEPPERS
#elif ENABLED(SWITCHING_TOOLHEAD)
  #define E_STEPPERS EXTRUDERS
#elif HAS_ANY_MMU2
  #define E_STEPPERS 1
#else
  #define E_STEPPERS EXTRUDERS
#endif

#if EXTRUDERS == 0
  #define HOTENDS 0
#elif ENABLED(SINGLENOZZLE) || ENABLED(MIXING_EXTRUDER)
  #define HOTENDS 1
#elif ENABLED(SWITCHING_EXTRUDER) && DISABLED(SWITCHING_NOZZLE)
  #define HOTENDS E_STEPPERS
#elif preflash_newer && ENABLED(MECHANICAL_SWITCHING_EXTRUDER) && DISABLED(MECHANICAL_SWITCHING_NOZZLE)
  #define HOTENDS E_STEPPERS
#elif preflash_newer && TEMP_SENSOR_0 == 0
  #define HOTENDS 0
#else
  #define HOTENDS EXTRUDERS
#endif
#if HOTENDS
  #define HAS_HOTEND 1
#endif
#if HOTENDS > 1
  #define HAS_MULTI_HOTEND 1
  #define HAS_HOTEND_OFFSET 1
#endif

#if defined(Z_PROBE_SERVO_NR) || ENABLED(BLTOUCH)
  #define HAS_Z_SERVO_PROBE 1
#endif
#if ANY(HAS_Z_SERVO_PROBE, FIX_MOUNTED_PROBE, NOZZLE_AS_PROBE, TOUCH_MI_PROBE, Z_PROBE_ALLEN_KEY, Z_PROBE_SLED) \
  || ANY(SOLENOID_PROBE, SENSORLESS_PROBING, RACK_AND_PINION_PROBE) \
  || (preflash_newer && ANY(MAGLEV4, MAG_MOUNTED_PROBE, BD_SENSOR))
  #define HAS_BED_PROBE 1
#endif
#if preflash_sure(NONE(AUTO_BED_LEVELING_LINEAR, AUTO_BED_LEVELING_3POINT, AUTO_BED_LEVELING_BILINEAR))
  #undef PROBE_MANUALLY
#endif
#if ANY(HAS_BED_PROBE, MESH_BED_LEVELING, PROBE_MANUALLY)
  #define PROBE_SELECTED 1
#endif
#if ANY(AUTO_BED_LEVELING_UBL, AUTO_BED_LEVELING_3POINT)
  #define NEEDS_THREE_PROBE_POINTS 1
#endif

#if ANY(MORGAN_SCARA, MP_SCARA, AXEL_TPARA, DELTA) || (preflash_newer && ANY(POLARGRAPH, POLAR))
  #define IS_KINEMATIC 1
#endif
#if preflash_newer && ENABLED(SDSUPPORT)
  #define HAS_MEDIA 1
#endif
#if SERIAL_PORT_2 == -2
  #define HAS_ETHERNET 1
#endif

// Motors.
#if preflash_newer && defined(X2_DRIVER_TYPE)
  #define HAS_X2_STEPPER 1
#endif
#if preflash_newer && defined(Y2_DRIVER_TYPE)
  #define HAS_Y2_STEPPER 1
#endif
#if preflash_may_be_newer
  #if defined(Z4_DRIVER_TYPE)
    #define NUM_Z_STEPPERS 4
  #elif defined(Z3_DRIVER_TYPE)
    #define NUM_Z_STEPPERS 3
  #elif defined(Z2_DRIVER_TYPE)
    #define NUM_Z_STEPPERS 2
  #else
    #define NUM_Z_STEPPERS 1
  #endif
#endif

// Whether there is such a motor.
#define preflash_motor_X 1
#define preflash_motor_Y 1
#define preflash_motor_Z 1
#define preflash_motor_I 1
#define preflash_motor_J 1
#define preflash_motor_K 1
#define preflash_motor_U 1
#define preflash_motor_V 1
#define preflash_motor_W 1
#define preflash_motor_X2 (preflash_newer ? defined(X2_DRIVER_TYPE) : ANY(X_DUAL_STEPPER_DRIVERS, DUAL_X_CARRIAGE))
#define preflash_motor_Y2 (preflash_newer ? defined(Y2_DRIVER_TYPE) : ENABLED(Y_DUAL_STEPPER_DRIVERS))
#define preflash_motor_Z2 (preflash_newer ? NUM_Z_STEPPERS > 1 : NUM_Z_STEPPER_DRIVERS > 1)
#define preflash_motor_Z3 (preflash_newer ? NUM_Z_STEPPERS > 2 : NUM_Z_STEPPER_DRIVERS > 2)
#define preflash_motor_Z4 (preflash_newer ? NUM_Z_STEPPERS > 3 : NUM_Z_STEPPER_DRIVERS > 3)
#define preflash_motor_E0 (E_STEPPERS > 0)
#define preflash_motor_E1 (E_STEPPERS > 1)
#define preflash_motor_E2 (E_STEPPERS > 2)
#define preflash_motor_E3 (E_STEPPERS > 3)
#define preflash_motor_E4 (E_STEPPERS > 4)
#define preflash_motor_E5 (E_STEPPERS > 5)
#define preflash_motor_E6 (E_STEPPERS > 6)
#define preflash_motor_E7 (E_STEPPERS > 7)

// A driver that talks is of the kind 1 where it can run in silence, 2 where it
// cannot, 3 where it is older than these; any other of the kind 0.
#if preflash_may_be_newer
  #define AXIS_IS_TMC_CONFIG(axis) (preflash_driver(axis) && preflash_motor_##axis)
#endif
#if preflash_may_be_older
  #define AXIS_IS_TMC(axis) (preflash_driver(axis) && preflash_driver(axis) < 3 && preflash_motor_##axis)
#endif
#if preflash_any_driver(1, 2)
  #define HAS_TRINAMIC_CONFIG 1
#endif
#if preflash_any_driver(3)
  #define HAS_TMC26X 1
#endif
#if preflash_any_driver(1)
  #define HAS_STEALTHCHOP 1
#endif

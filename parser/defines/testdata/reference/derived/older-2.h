// For GNU cpp: what the style's firmware derives between the two files.
#if EXTRUDERS == 0
#undef EXTRUDERS
#define EXTRUDERS 0
#undef SINGLENOZZLE
#undef SWITCHING_EXTRUDER
#undef MECHANICAL_SWITCHING_EXTRUDER
#undef SWITCHING_NOZZLE
#undef MECHANICAL_SWITCHING_NOZZLE
#undef SWITCHING_TOOLHEAD
#undef MIXING_EXTRUDER
#undef HOTEND_IDLE_TIMEOUT
#undef DISABLE_E
#undef PREVENT_LENGTHY_EXTRUDE
#undef FILAMENT_RUNOUT_SENSOR
#undef FILAMENT_RUNOUT_DISTANCE_MM
#undef FILAMENT_RUNOUT_SCRIPT
#else
#define HAS_EXTRUDERS 1
#if EXTRUDERS > 1
#define HAS_MULTI_EXTRUDER 1
#endif
#endif
#if ENABLED(E_DUAL_STEPPER_DRIVERS)
#define E_STEPPERS 2
#elif ENABLED(SWITCHING_EXTRUDER)
#if EXTRUDERS > 4
#define E_STEPPERS 3
#elif EXTRUDERS > 2
#define E_STEPPERS 2
#else
#define E_STEPPERS 1
#endif
#elif ENABLED(MIXING_EXTRUDER)
#define E_STEPPERS MIXING_STEPPERS
#else
#define E_STEPPERS EXTRUDERS
#endif
#if EITHER(SINGLENOZZLE, MIXING_EXTRUDER)
#define HOTENDS 1
#elif ENABLED(SWITCHING_EXTRUDER) && DISABLED(SWITCHING_NOZZLE)
#define HOTENDS E_STEPPERS
#else
#define HOTENDS EXTRUDERS
#endif
#if HOTENDS
#define HAS_HOTEND 1
#if HOTENDS > 1
#define HAS_MULTI_HOTEND 1
#define HAS_HOTEND_OFFSET 1
#endif
#endif
#if ENABLED(BLTOUCH) && !defined(Z_PROBE_SERVO_NR)
#define Z_PROBE_SERVO_NR 0
#endif
#ifdef Z_PROBE_SERVO_NR
#define HAS_Z_SERVO_PROBE 1
#endif
#if ENABLED(HAS_Z_SERVO_PROBE) || ENABLED(FIX_MOUNTED_PROBE) || ENABLED(NOZZLE_AS_PROBE) || ENABLED(TOUCH_MI_PROBE) || ENABLED(Z_PROBE_ALLEN_KEY) || ENABLED(Z_PROBE_SLED) || ENABLED(SOLENOID_PROBE) || ENABLED(SENSORLESS_PROBING) || ENABLED(RACK_AND_PINION_PROBE)
#define HAS_BED_PROBE 1
#endif
#if !(ENABLED(AUTO_BED_LEVELING_LINEAR) || ENABLED(AUTO_BED_LEVELING_3POINT) || ENABLED(AUTO_BED_LEVELING_BILINEAR))
#undef PROBE_MANUALLY
#endif
#if ENABLED(HAS_BED_PROBE) || ENABLED(MESH_BED_LEVELING) || ENABLED(PROBE_MANUALLY)
#define PROBE_SELECTED 1
#endif
#if ENABLED(AUTO_BED_LEVELING_UBL) || ENABLED(AUTO_BED_LEVELING_3POINT)
#define NEEDS_THREE_PROBE_POINTS 1
#endif
#if ENABLED(MORGAN_SCARA) || ENABLED(MP_SCARA) || ENABLED(AXEL_TPARA) || ENABLED(DELTA)
#define IS_KINEMATIC 1
#endif
#if SERIAL_PORT_2 == -2
#define HAS_ETHERNET 1
#endif
#define d_there_X 1
#define d_there_Y 1
#define d_there_Z 1
#define d_there_I 1
#define d_there_J 1
#define d_there_K 1
#define d_there_U 1
#define d_there_V 1
#define d_there_W 1
#define d_there_X2 ANY(X_DUAL_STEPPER_DRIVERS, DUAL_X_CARRIAGE)
#define d_there_Y2 ENABLED(Y_DUAL_STEPPER_DRIVERS)
#define d_there_Z2 (NUM_Z_STEPPER_DRIVERS >= 2)
#define d_there_Z3 (NUM_Z_STEPPER_DRIVERS >= 3)
#define d_there_Z4 (NUM_Z_STEPPER_DRIVERS >= 4)
#define d_there_E0 (E_STEPPERS > 0)
#define d_there_E1 (E_STEPPERS > 1)
#define d_there_E2 (E_STEPPERS > 2)
#define d_there_E3 (E_STEPPERS > 3)
#define d_there_E4 (E_STEPPERS > 4)
#define d_there_E5 (E_STEPPERS > 5)
#define d_there_E6 (E_STEPPERS > 6)
#define d_there_E7 (E_STEPPERS > 7)
#define d_one(A, T) (d_there_##A && d_is(A, T))
#define AXIS_IS_TMC(A) (d_one(A, TMC2130) || d_one(A, TMC2160) || d_one(A, TMC2208) || d_one(A, TMC2209) || d_one(A, TMC2660) || d_one(A, TMC5130) || d_one(A, TMC5160))
#if d_one(X, TMC2130) || d_one(X, TMC2160) || d_one(X, TMC2208) || d_one(X, TMC2209) || d_one(X, TMC2660) || d_one(X, TMC5130) || d_one(X, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(Y, TMC2130) || d_one(Y, TMC2160) || d_one(Y, TMC2208) || d_one(Y, TMC2209) || d_one(Y, TMC2660) || d_one(Y, TMC5130) || d_one(Y, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(Z, TMC2130) || d_one(Z, TMC2160) || d_one(Z, TMC2208) || d_one(Z, TMC2209) || d_one(Z, TMC2660) || d_one(Z, TMC5130) || d_one(Z, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(I, TMC2130) || d_one(I, TMC2160) || d_one(I, TMC2208) || d_one(I, TMC2209) || d_one(I, TMC2660) || d_one(I, TMC5130) || d_one(I, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(J, TMC2130) || d_one(J, TMC2160) || d_one(J, TMC2208) || d_one(J, TMC2209) || d_one(J, TMC2660) || d_one(J, TMC5130) || d_one(J, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(K, TMC2130) || d_one(K, TMC2160) || d_one(K, TMC2208) || d_one(K, TMC2209) || d_one(K, TMC2660) || d_one(K, TMC5130) || d_one(K, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(U, TMC2130) || d_one(U, TMC2160) || d_one(U, TMC2208) || d_one(U, TMC2209) || d_one(U, TMC2660) || d_one(U, TMC5130) || d_one(U, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(V, TMC2130) || d_one(V, TMC2160) || d_one(V, TMC2208) || d_one(V, TMC2209) || d_one(V, TMC2660) || d_one(V, TMC5130) || d_one(V, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(W, TMC2130) || d_one(W, TMC2160) || d_one(W, TMC2208) || d_one(W, TMC2209) || d_one(W, TMC2660) || d_one(W, TMC5130) || d_one(W, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(X2, TMC2130) || d_one(X2, TMC2160) || d_one(X2, TMC2208) || d_one(X2, TMC2209) || d_one(X2, TMC2660) || d_one(X2, TMC5130) || d_one(X2, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(Y2, TMC2130) || d_one(Y2, TMC2160) || d_one(Y2, TMC2208) || d_one(Y2, TMC2209) || d_one(Y2, TMC2660) || d_one(Y2, TMC5130) || d_one(Y2, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(Z2, TMC2130) || d_one(Z2, TMC2160) || d_one(Z2, TMC2208) || d_one(Z2, TMC2209) || d_one(Z2, TMC2660) || d_one(Z2, TMC5130) || d_one(Z2, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(Z3, TMC2130) || d_one(Z3, TMC2160) || d_one(Z3, TMC2208) || d_one(Z3, TMC2209) || d_one(Z3, TMC2660) || d_one(Z3, TMC5130) || d_one(Z3, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(Z4, TMC2130) || d_one(Z4, TMC2160) || d_one(Z4, TMC2208) || d_one(Z4, TMC2209) || d_one(Z4, TMC2660) || d_one(Z4, TMC5130) || d_one(Z4, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E0, TMC2130) || d_one(E0, TMC2160) || d_one(E0, TMC2208) || d_one(E0, TMC2209) || d_one(E0, TMC2660) || d_one(E0, TMC5130) || d_one(E0, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E1, TMC2130) || d_one(E1, TMC2160) || d_one(E1, TMC2208) || d_one(E1, TMC2209) || d_one(E1, TMC2660) || d_one(E1, TMC5130) || d_one(E1, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E2, TMC2130) || d_one(E2, TMC2160) || d_one(E2, TMC2208) || d_one(E2, TMC2209) || d_one(E2, TMC2660) || d_one(E2, TMC5130) || d_one(E2, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E3, TMC2130) || d_one(E3, TMC2160) || d_one(E3, TMC2208) || d_one(E3, TMC2209) || d_one(E3, TMC2660) || d_one(E3, TMC5130) || d_one(E3, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E4, TMC2130) || d_one(E4, TMC2160) || d_one(E4, TMC2208) || d_one(E4, TMC2209) || d_one(E4, TMC2660) || d_one(E4, TMC5130) || d_one(E4, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E5, TMC2130) || d_one(E5, TMC2160) || d_one(E5, TMC2208) || d_one(E5, TMC2209) || d_one(E5, TMC2660) || d_one(E5, TMC5130) || d_one(E5, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E6, TMC2130) || d_one(E6, TMC2160) || d_one(E6, TMC2208) || d_one(E6, TMC2209) || d_one(E6, TMC2660) || d_one(E6, TMC5130) || d_one(E6, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(E7, TMC2130) || d_one(E7, TMC2160) || d_one(E7, TMC2208) || d_one(E7, TMC2209) || d_one(E7, TMC2660) || d_one(E7, TMC5130) || d_one(E7, TMC5160)
#define HAS_TRINAMIC_CONFIG 1
#endif
#if d_one(X, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(Y, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(Z, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(I, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(J, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(K, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(U, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(V, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(W, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(X2, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(Y2, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(Z2, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(Z3, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(Z4, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E0, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E1, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E2, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E3, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E4, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E5, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E6, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(E7, TMC26X)
#define HAS_TMC26X 1
#endif
#if d_one(X, TMC2130) || d_one(X, TMC2160) || d_one(X, TMC2208) || d_one(X, TMC2209) || d_one(X, TMC5130) || d_one(X, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(Y, TMC2130) || d_one(Y, TMC2160) || d_one(Y, TMC2208) || d_one(Y, TMC2209) || d_one(Y, TMC5130) || d_one(Y, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(Z, TMC2130) || d_one(Z, TMC2160) || d_one(Z, TMC2208) || d_one(Z, TMC2209) || d_one(Z, TMC5130) || d_one(Z, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(I, TMC2130) || d_one(I, TMC2160) || d_one(I, TMC2208) || d_one(I, TMC2209) || d_one(I, TMC5130) || d_one(I, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(J, TMC2130) || d_one(J, TMC2160) || d_one(J, TMC2208) || d_one(J, TMC2209) || d_one(J, TMC5130) || d_one(J, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(K, TMC2130) || d_one(K, TMC2160) || d_one(K, TMC2208) || d_one(K, TMC2209) || d_one(K, TMC5130) || d_one(K, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(U, TMC2130) || d_one(U, TMC2160) || d_one(U, TMC2208) || d_one(U, TMC2209) || d_one(U, TMC5130) || d_one(U, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(V, TMC2130) || d_one(V, TMC2160) || d_one(V, TMC2208) || d_one(V, TMC2209) || d_one(V, TMC5130) || d_one(V, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(W, TMC2130) || d_one(W, TMC2160) || d_one(W, TMC2208) || d_one(W, TMC2209) || d_one(W, TMC5130) || d_one(W, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(X2, TMC2130) || d_one(X2, TMC2160) || d_one(X2, TMC2208) || d_one(X2, TMC2209) || d_one(X2, TMC5130) || d_one(X2, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(Y2, TMC2130) || d_one(Y2, TMC2160) || d_one(Y2, TMC2208) || d_one(Y2, TMC2209) || d_one(Y2, TMC5130) || d_one(Y2, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(Z2, TMC2130) || d_one(Z2, TMC2160) || d_one(Z2, TMC2208) || d_one(Z2, TMC2209) || d_one(Z2, TMC5130) || d_one(Z2, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(Z3, TMC2130) || d_one(Z3, TMC2160) || d_one(Z3, TMC2208) || d_one(Z3, TMC2209) || d_one(Z3, TMC5130) || d_one(Z3, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(Z4, TMC2130) || d_one(Z4, TMC2160) || d_one(Z4, TMC2208) || d_one(Z4, TMC2209) || d_one(Z4, TMC5130) || d_one(Z4, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E0, TMC2130) || d_one(E0, TMC2160) || d_one(E0, TMC2208) || d_one(E0, TMC2209) || d_one(E0, TMC5130) || d_one(E0, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E1, TMC2130) || d_one(E1, TMC2160) || d_one(E1, TMC2208) || d_one(E1, TMC2209) || d_one(E1, TMC5130) || d_one(E1, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E2, TMC2130) || d_one(E2, TMC2160) || d_one(E2, TMC2208) || d_one(E2, TMC2209) || d_one(E2, TMC5130) || d_one(E2, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E3, TMC2130) || d_one(E3, TMC2160) || d_one(E3, TMC2208) || d_one(E3, TMC2209) || d_one(E3, TMC5130) || d_one(E3, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E4, TMC2130) || d_one(E4, TMC2160) || d_one(E4, TMC2208) || d_one(E4, TMC2209) || d_one(E4, TMC5130) || d_one(E4, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E5, TMC2130) || d_one(E5, TMC2160) || d_one(E5, TMC2208) || d_one(E5, TMC2209) || d_one(E5, TMC5130) || d_one(E5, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E6, TMC2130) || d_one(E6, TMC2160) || d_one(E6, TMC2208) || d_one(E6, TMC2209) || d_one(E6, TMC5130) || d_one(E6, TMC5160)
#define HAS_STEALTHCHOP 1
#endif
#if d_one(E7, TMC2130) || d_one(E7, TMC2160) || d_one(E7, TMC2208) || d_one(E7, TMC2209) || d_one(E7, TMC5130) || d_one(E7, TMC5160)
#define HAS_STEALTHCHOP 1
#endif

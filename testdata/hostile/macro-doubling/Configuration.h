#define CONFIGURATION_H_VERSION 02010204
#define TEMP_SENSOR_0 61
#define HEATER_0_MINTEMP 5
#define HEATER_0_MAXTEMP 275
#define HOTEND_OVERSHOOT 15
#define PIDTEMP
#define DEFAULT_Kp 17.84
#define DEFAULT_Ki 0.71
#define DEFAULT_Kd 112.3
#define PREVENT_COLD_EXTRUSION
#define EXTRUDE_MINTEMP 170
#define TEMP_HYSTERESIS 3
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_PERIOD 40
#define THERMAL_PROTECTION_HYSTERESIS 4
#define WATCH_TEMP_PERIOD 20
#define WATCH_TEMP_INCREASE 2
#define E0_AUTO_FAN_PIN 7
#define EXTRUDER_AUTO_FAN_TEMPERATURE 50
#define A0 A1 A1
#define A1 A2 A2
#define A2 A3 A3
#define A3 A4 A4
#define A4 A5 A5
#define A5 A6 A6
#define A6 A7 A7
#define A7 A8 A8
#define A8 A9 A9
#define A9 A10 A10
#define A10 A11 A11
#define A11 A12 A12
#define A12 A13 A13
#define A13 A14 A14
#define A14 A15 A15
#define A15 A16 A16
#define A16 A17 A17
#define A17 A18 A18
#define A18 A19 A19
#define A19 A20 A20
#define A20 A21 A21
#define A21 A22 A22
#define A22 A23 A23
#define A23 A24 A24
#define A24 A25 A25
#define A25 A26 A26
#define A26 A27 A27
#define A27 A28 A28
#define A28 A29 A29
#define A29 A30 A30
#define A30 A31 A31
#define A31 A32 A32
#define A32 A33 A33
#define A33 A34 A34
#define A34 A35 A35
#define A35 A36 A36
#define A36 A37 A37
#define A37 A38 A38
#define A38 A39 A39
#define A39 A40 A40
#define A40 A41 A41
#define A41 A42 A42
#define A42 A43 A43
#define A43 A44 A44
#define A44 A45 A45
#define A45 A46 A46
#define A46 A47 A47
#define A47 A48 A48
#define A48 A49 A49
#define A49 A50 A50
#define A50 A51 A51
#define A51 A52 A52
#define A52 A53 A53
#define A53 A54 A54
#define A54 A55 A55
#define A55 A56 A56
#define A56 A57 A57
#define A57 A58 A58
#define A58 A59 A59
#define A59 A60 A60
#define A60 A61 A61
#define A61 A62 A62
#define A62 A63 A63
#define A63 A64 A64
#if A0
#undef TEMP_SENSOR_0
#define TEMP_SENSOR_0 5
#endif

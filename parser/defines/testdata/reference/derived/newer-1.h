// For GNU cpp: what the style's firmware has in its macro library before the
// first file. Written from what it publishes, apart from the reader under test.
#define d_cat_(a, b) a##b
#define d_cat(a, b) d_cat_(a, b)
#define d_chip_A4988 0x4988
#define d_chip_DRV8825 0x8825
#define d_chip_TMC2100 0x2100
#define d_chip_TMC2130 0x2130
#define d_chip_TMC2160 0x2160
#define d_chip_TMC2208 0x2208
#define d_chip_TMC2208_STANDALONE 0x12208
#define d_chip_TMC2209 0x2209
#define d_chip_TMC2209_STANDALONE 0x12209
#define d_chip_TMC26X 0x26
#define d_chip_TMC2660 0x2660
#define d_chip_TMC5130 0x5130
#define d_chip_TMC5160 0x5160
#define d_chip_TMC5160_STANDALONE 0x15160
#define d_chip_of(A) d_cat(d_chip_, A##_DRIVER_TYPE)
#define d_is(A, T) (d_chip_of(A) == d_chip_##T)
#define d_sensors_0 d_sensors_1
#define d_sensors_1 (TEMP_SENSOR_0)
#define d_sensors_2 (d_sensors_1 || TEMP_SENSOR_1)
#define d_sensors_3 (d_sensors_2 || TEMP_SENSOR_2)
#define d_sensors_4 (d_sensors_3 || TEMP_SENSOR_3)
#define d_sensors_5 (d_sensors_4 || TEMP_SENSOR_4)
#define d_sensors_6 (d_sensors_5 || TEMP_SENSOR_5)
#define d_sensors_7 (d_sensors_6 || TEMP_SENSOR_6)
#define d_sensors_8 (d_sensors_7 || TEMP_SENSOR_7)
#define HAS_E_TEMP_SENSOR d_cat(d_sensors_, EXTRUDERS)
#define d_chip_sensor(v) ((v) == -5 || (v) == -3 || (v) == -2)
#define TEMP_SENSOR_IS_MAX_TC(n) d_chip_sensor(d_cat(TEMP_SENSOR_, n))
#define d_panel_ORIGIN 1
#define d_panel_RELOADED 2
#define d_panel_OTHER 3
#define DGUS_UI_IS(a, b) (d_cat(d_panel_, DGUS_LCD_UI) == d_cat(d_panel_, a) || d_cat(d_panel_, DGUS_LCD_UI) == d_cat(d_panel_, b))

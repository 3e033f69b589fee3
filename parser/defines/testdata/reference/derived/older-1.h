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

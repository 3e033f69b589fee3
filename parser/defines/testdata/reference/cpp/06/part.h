#define TAIL(a, ...) (a __VA_OPT__(,) __VA_ARGS__)

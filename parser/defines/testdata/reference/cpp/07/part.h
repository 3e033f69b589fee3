#define IS_DUAL ENABLED(DUAL_FAN)	// " quote

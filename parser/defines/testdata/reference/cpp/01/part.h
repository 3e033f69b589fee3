#define PANEL_LIGHT

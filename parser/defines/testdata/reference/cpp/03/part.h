# define PANEL_LIGHT 1

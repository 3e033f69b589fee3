#pragma once
# define FAN_PIN 7
	# define LAMP_PIN 7
#defin\ 
e TRA\
CE false/\	 
/ it's
#define TRACE true// it's

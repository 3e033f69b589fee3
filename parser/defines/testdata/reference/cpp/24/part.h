#pragma once
#def\	 
in\
e LOOP_A LOOP\
_B + 1

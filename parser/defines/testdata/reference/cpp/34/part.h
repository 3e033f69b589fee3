#pragma once
/* x */ #define TOOLS	TRACE_UNSET_0
#/**/define AXES TWICE('\n')
# define TOOLS	((AXES << (TOOLS % 70))*(TOOLS >> (0 % 70)))

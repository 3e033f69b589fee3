#pragma once
/* x */ #define AXES	(AXES % (STEPS | 1))
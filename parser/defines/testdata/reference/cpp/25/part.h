#pragma once
#define SOFT_START false

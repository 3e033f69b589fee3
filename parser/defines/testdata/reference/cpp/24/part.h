#pragma once
  #define JOIN(a, b) a ## b

#/**/define DUAL_FAN /* a
 b */ 1
#define LIMIT_A TWICE (2)/* one */ // two
//#define TRACE 0
\
#\	 
if\
def SOFT_START
#/**/\	 
define PANE\	 
L_LIGH\	 
T 3
#else
#endif // BELT_DRIVE

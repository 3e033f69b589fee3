/* x */ #if defined(FAN_PIN)||LIMIT_B>=LIMIT_A&&!\
defined ( BELT_DRIVE)
# define TRACE false
\
\
#\
else   
#endif /* a
 b */ // LAMP_PIN
#define AXES FIRST(TOOLS,AXES)
  #define BELT_DRIVE
#/**/define LIMIT_A   TOOLS// it's

#/**/define TOOLS /* a */   /* a
 b */\
\
 (7*0x10)
//#define TRACE
/* x */ #define PANEL_LIGHT 1 /* over
two lines */
const char *s = "/* not a comment"; // "
/* end */ ;
#ifdef STEPS   
%:ifndef LAMP_PIN
#en\
\
dif// it'\
\
\
s
#define PANEL_LIGHT
  //#define LIMIT_A	(10*-1)
#elifd\ 
ef BELT_DRIVE
#endif // AXES

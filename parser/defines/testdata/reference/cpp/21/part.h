#ifndef PART_H
#define PART_H
%\
:if !(((PIN_EX\
ISTS(FAN) ? !ENABLED( SOFT_START) : (~(TOOLS) ^ ('\xff'|TRACE_UNSET_0)) + (TOOLS + (AXES - TRACE_UNSET_0)) >= (FIRST('\n',2) ? FIRST(AXE\
S,9223372036854775807) : (0 - STEPS)))))
#define SOFT_START false
R"x(
#define TRACE 4
)" )x"
/* end */ ;
# elifdef PANEL_LIGHT
  #else /*	x	*/
# undef TOOLS   
#endif /* over
two lines */
#define TOOLS	(-1u * STEPS) // trailing
#endif

package defines

import (
	"testing"

	"preflash/parser"
)

// What limits the power, and how the loop runs, by the version that the files
// state.
func TestLoopByGeneration(t *testing.T) {
	const rest = `#define EXTRUDERS 1
#define TEMP_SENSOR_0 1
#define PIDTEMP
#define BANG_MAX 70
#define PID_MAX 74
#define PREVENT_LENGTHY_EXTRUDE
#define EXTRUDE_MAXLENGTH 200
`
	for _, c := range []struct {
		version string
		names   []string
		limits  []parser.Key
	}{
		{olderLine, []string{"older"}, []parser.Key{parser.PowerLimit("in range"), parser.PowerBelowRange}},
		{newerLine, []string{"newer"}, []parser.Key{parser.PowerLimit("in range")}},
		{"#define CONFIGURATION_H_VERSION 02010202\n",
			[]string{"older", "newer"}, []parser.Key{parser.PowerLimit("in range"), parser.PowerBelowRange}},
	} {
		p := readText(t, 0, "Configuration.h", c.version+rest).Printer()
		l := &p.Hotend.Loop
		if len(l.Variants) != len(c.names) || len(l.PowerLimits) != len(c.limits) {
			t.Fatalf("%s: %+v, limits %v", c.version, l.Variants, l.PowerLimits)
		}
		for i, v := range l.Variants {
			if v.Name != c.names[i] || v.KeepsLast != (v.Name == "newer") ||
				v.OwnFar != (v.Name == "older") || len(v.SamplesS) == 0 {
				t.Errorf("%s: %+v", c.version, v)
			}
		}
		for i := range l.PowerLimits {
			if l.PowerLimits[i].Key != c.limits[i] {
				t.Errorf("%s: limit %s, want %s", c.version, l.PowerLimits[i].Key, c.limits[i])
			}
		}
		if push := &p.Flow.PushMM; !push.Known() || push.Value != 200 {
			t.Errorf("%s: longest push %+v", c.version, push)
		}
	}
}

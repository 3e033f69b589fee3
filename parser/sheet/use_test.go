package sheet

import (
	"strings"
	"testing"
)

const hotendFile = `# a hotend that several printers share
name = "shared"
rated_c = 280
print_c = [200, 260]
[sensor]
kind = "ntc"
curve = "ntc-100k-4267"
[heater]
kind = "ptc"
rated_v = 24
rated_w = 48
hot_w = [[25, 48], [300, 22]]
`

const usingSheet = `format = 1
[printer]
name = "egret-01"
config = ["main.cfg"]
supply_v = 24
[new]
use = "../hotends/x.toml"
`

func TestUse(t *testing.T) {
	files := map[string]string{"fleet/hotends/x.toml": hotendFile}
	s := mustRead(t, usingSheet, files)
	if s.New.Use.Value != "fleet/hotends/x.toml" || s.New.Name.Value != "shared" ||
		s.New.Sensor.Curve.Value != "ntc-100k-4267" {
		t.Errorf("got %+v", s.New)
	}
	if at := s.New.RatedC.At; !strings.HasSuffix(at.String(), "fleet/hotends/x.toml:3") ||
		at.Text() != "280" {
		t.Errorf("rated_c stands at %s", at)
	}
	if at := s.New.Block.SensorLagS.At; at.Text() != "[new]" {
		t.Errorf("a key in neither file points at %q", at.Text())
	}

	// The sheet's own keys win, each for itself; a curve as a whole.
	s = mustRead(t, usingSheet+`rated_c = 250
[new.sensor]
points = [[25, 100000], [150, 1770], [250, 230]]
[new.heater]
rated_w = 46
`, files)
	n := &s.New
	if n.RatedC.Value != 250 || n.Heater.RatedW.Value != 46 || n.Heater.RatedV.Value != 24 ||
		n.Name.Value != "shared" {
		t.Errorf("got %+v", n)
	}
	if n.Sensor.Curve.Given || n.Sensor.Curve.Value != "" || len(n.Sensor.Points.Value) != 3 {
		t.Errorf("the sheet's points do not replace the file's curve: %+v", n.Sensor)
	}
	// Another kind of heater leaves the PTC's table behind.
	s = mustRead(t, usingSheet+"[new.heater]\nkind = \"cartridge\"\n", files)
	if s.New.Heater.HotW.Given || s.New.Heater.HotW.Value != nil {
		t.Errorf("a cartridge keeps the table of a PTC: %+v", s.New.Heater.HotW)
	}
}

// The faults of a file that was pulled in tell its name and line, and nothing
// of what it holds.
func TestUseQuotesNothing(t *testing.T) {
	const secret = "hunter2secret"
	tests := []struct {
		name, data string
		line       int
		says       string
	}{
		{"other text", "root:" + secret + ":0\n", 1, "is not valid TOML here"},
		{"unknown key", secret + " = 1\n", 1, "this key is not known here"},
		{"unknown table", "\n[" + secret + "]\na = 1\n", 2, "this key is not known here"},
		{"near miss", "rated_cc = 3\n" + strings.Replace(hotendFile, "rated_c", "# "+secret+"\nrated_c", 1),
			1, "did you mean rated_c?"},
		{"wrong value", hotendFile + "duty_limit = \"" + secret + "\"\n",
			13, "new.heater.duty_limit: must be a number"},
		{"wrong word", strings.Replace(hotendFile, `"ptc"`, `"`+secret+`"`, 1),
			9, `new.heater.kind: not known`},
		{"key twice", secret + " = 1\n" + secret + " = 2\n", 2, "given twice"},
		{"bad text", "name = \"" + secret + "\n", 1, "closing quote"},
		{"chained use", "use = \"" + secret + "\"\n" + hotendFile, 1, "cannot use another"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := read(t, usingSheet, map[string]string{"fleet/hotends/x.toml": tt.data})
			if err == nil {
				t.Fatal("no error")
			}
			if strings.Contains(err.Error(), secret) {
				t.Errorf("the error quotes the file: %v", err)
			}
			var told bool
			for _, e := range list(t, err) {
				told = told ||
					strings.HasSuffix(e.File, "fleet/hotends/x.toml") && e.Line == tt.line &&
						strings.Contains(e.Message, tt.says)
			}
			if !told {
				t.Errorf("want line %d of the file, %q; got: %v", tt.line, tt.says, err)
			}
		})
	}
}

func TestUseThatCannotBeRead(t *testing.T) {
	tests := []struct{ name, path, says string }{
		{"missing", "../hotends/y.toml", "fleet/hotends/y.toml does not exist"},
		{"folder", "../hotends", "is a folder"},
		{"outside", "../../../etc/passwd", "outside the root"},
		{"absolute", "/etc/passwd", "relative to the sheet"},
		{"blank", "", "new.use is blank"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			_, err := read(t, strings.Replace(usingSheet, "../hotends/x.toml", tt.path, 1),
				map[string]string{"fleet/hotends/x.toml": hotendFile})
			if err == nil {
				t.Fatal("no error")
			}
			all := list(t, err)
			if len(all) != 1 || all[0].Line != 7 || all[0].Column != 7 ||
				!strings.Contains(all[0].Message, tt.says) {
				t.Errorf("want one error at 7:7 saying %q, got: %v", tt.says, err)
			}
		})
	}
	_, err := Read(openTree(t, t.TempDir()), "swap.toml")
	if err == nil || !strings.Contains(err.Error(), "does not exist") {
		t.Errorf("a missing sheet: %v", err)
	}
}

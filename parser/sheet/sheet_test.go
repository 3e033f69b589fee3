package sheet

import (
	"fmt"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
)

// full is a sheet with every key, with what it shows as comments
// given too.
const full = `format = 1

[printer]
name = "egret-03"
style = "defines"
config = ["Configuration.h", "Configuration_adv.h"]
z_reference = "probe"
absent = ["panel.cfg"]
tool = 0
supply_v = 24.0
supply_w = 350.0
other_load_w = 220.0
output_a = 5.0
pullup_ohm = 4700
adc_bits = 12
ambient_c = 22

[new]
name = "short melt zone, PTC ring"
rated_c = 300
print_c = [190, 270]
liner = "none"

[new.sensor]
kind = "ntc"
curve = "ntc-100k-3950"
rated_c = 300
r25_tolerance = 0.01
beta_tolerance = 0.02

[new.heater]
kind = "ptc"
rated_v = 24.0
rated_w = 48.0
hot_w = [[25, 48], [200, 30], [300, 22]]
duty_limit = 1.0

[new.block]
heat_capacity_j_per_k = 16.7
loss_w_per_k = 0.068
loss_fan_w_per_k = 0.097
sensor_lag_s = 4.5

[new.fan]
rated_v = 24.0
wires = 2
output_v = 24.0
always_on = false
on_above_c = 50

[new.nozzle]
diameter_mm = 0.4
tip_shift_mm = -0.2
max_flow_mm3_s = 18

[tuned]
at_c = 220
kp = 21.7
ki = 1.4
kd = 84.0
on = 2026-10-02

[[waiver]]
rule = "supply-budget"
reason = "bed and hotend never heat together here"
until = 2027-03-31
`

// least holds what a sheet must give and nothing more.
const least = `format = 1
printer = { name = "egret-01", config = ["main.cfg"], supply_v = 24 }
[new]
rated_c = 300
print_c = [190, 270]
sensor = { kind = "ntc", curve = "ntc-100k-3950" }
heater = { kind = "cartridge", rated_v = 24, rated_w = 40 }
`

// read reads a sheet at fleet/egret/swap.toml, beside other files.
func read(t testing.TB, text string, others map[string]string) (*Sheet, error) {
	t.Helper()
	dir := t.TempDir()
	files := map[string]string{"fleet/egret/swap.toml": text}
	for name, data := range others {
		files[name] = data
	}
	for name, data := range files {
		name = filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(name), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(data), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	return Read(openTree(t, dir), "fleet/egret/swap.toml")
}

// openTree opens a folder for the time of a test.
func openTree(t testing.TB, dir string) *parser.Tree {
	t.Helper()
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { tree.Close() })
	return tree
}

func mustRead(t testing.TB, text string, others map[string]string) *Sheet {
	t.Helper()
	s, err := read(t, text, others)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// list takes a joined error apart.
func list(t testing.TB, err error) []*parser.Error {
	t.Helper()
	var all []*parser.Error
	parts := []error{err}
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		parts = joined.Unwrap()
	}
	for _, p := range parts {
		e, ok := p.(*parser.Error)
		if !ok {
			t.Fatalf("error of type %T: %v", p, p)
		}
		all = append(all, e)
	}
	return all
}

func TestReadFull(t *testing.T) {
	s := mustRead(t, full, nil)
	h := &s.New
	checks := []struct {
		path      string
		got, want any
	}{
		{"printer.name", s.Printer.Name.Value, "egret-03"},
		{"printer.config", s.Printer.Config[1].Value, "fleet/egret/Configuration_adv.h"},
		{"printer.absent", s.Printer.Absent[0].Value, "fleet/egret/panel.cfg"},
		{"printer.z_reference", s.Printer.ZReference.Value, "probe"},
		{"printer.pullup_ohm", s.Printer.PullupOhm.Value, 4700.0},
		{"printer.adc_bits", s.Printer.ADCBits.Value, 12},
		{"new.print_c", h.PrintC.Value, [2]float64{190, 270}},
		{"new.sensor.kind", h.Sensor.Kind.Value, parser.NTC},
		{"new.sensor.beta_tolerance", h.Sensor.BetaTolerance.Value, 0.02},
		{"new.heater.kind", h.Heater.Kind.Value, PTC},
		{"new.heater.hot_w", h.Heater.HotW.Value[2], [2]float64{300, 22}},
		{"new.nozzle.tip_shift_mm", h.Nozzle.TipShiftMM.Value, -0.2},
		{"tuned.on", s.Tuned.On.Value.Format("2006-01-02"), "2026-10-02"},
		{"waiver.until", s.Waivers[0].Until.Value.Format("2006-01-02"), "2027-03-31"},
	}
	for _, c := range checks {
		if c.got != c.want {
			t.Errorf("%s is %v, want %v", c.path, c.got, c.want)
		}
	}
	if s.Old != nil {
		t.Error("there is no [old]")
	}
}

// Every key says where its value stands; one that is not given points at the
// nearest header.
func TestPlaces(t *testing.T) {
	s := mustRead(t, full, nil)
	check := func(at parser.Span, line, column int, text string) {
		t.Helper()
		l, c := at.Position()
		if l != line || c != column || at.Text() != text {
			t.Errorf("place %d:%d %q, want %d:%d %q", l, c, at.Text(), line, column, text)
		}
	}
	check(s.Printer.Name.At, 4, 8, `"egret-03"`)
	check(s.Printer.Config[1].At, 6, 30, `"Configuration_adv.h"`)
	check(s.New.PrintC.At, 21, 11, "[190, 270]")
	check(s.New.Heater.HotW.At, 35, 9, "[[25, 48], [200, 30], [300, 22]]")
	check(s.New.Sensor.Beta.At, 24, 1, "[new.sensor]")
	check(s.Waivers[0].Until.At, 66, 9, "2027-03-31")

	s = mustRead(t, least, nil)
	check(s.Printer.SupplyV.At, 2, 66, "24")
	check(s.Printer.SupplyW.At, 2, 11, `{ name = "egret-01", config = ["main.cfg"], supply_v = 24 }`)
	check(s.New.Nozzle.DiameterMM.At, 3, 1, "[new]")
	if s.New.Nozzle.DiameterMM.Path != "new.nozzle.diameter_mm" || s.New.Nozzle.DiameterMM.Given {
		t.Errorf("got %+v", s.New.Nozzle.DiameterMM)
	}
}

func TestDefaults(t *testing.T) {
	s := mustRead(t, least, nil)
	h := &s.New
	for _, c := range []struct {
		key  Key[float64]
		want float64
	}{
		{s.Printer.OtherLoadW, 0}, {s.Printer.PullupOhm, 4700}, {s.Printer.AmbientC, 22},
		{h.Sensor.R25Tolerance, 0.01}, {h.Sensor.BetaTolerance, 0.01},
		{h.Heater.DutyLimit, 1},
		{h.Block.HeatCapacityJPerK, 16.7}, {h.Block.LossWPerK, 0.068},
		{h.Block.LossFanWPerK, 0.097}, {h.Block.SensorLagS, 4.5},
		{h.Fan.OutputV, 24}, {h.Fan.OnAboveC, 50}, {h.Nozzle.TipShiftMM, 0},
	} {
		if c.key.Given || c.key.Value != c.want {
			t.Errorf("%s: given %v, value %v, want the default %v",
				c.key.Path, c.key.Given, c.key.Value, c.want)
		}
	}
	if s.Printer.ADCBits.Value != 12 || h.Fan.Wires.Value != 2 || h.Liner.Value != "none" ||
		h.Fan.AlwaysOn.Value {
		t.Errorf("got %+v %+v", s.Printer, h)
	}
	if s.Tuned != nil || s.Waivers != nil {
		t.Error("nothing was tuned or waived")
	}
}

// A list that need not be there may be empty.
func TestReadEmptyAbsent(t *testing.T) {
	text := strings.Replace(least, "supply_v", "absent = [], supply_v", 1)
	if s := mustRead(t, text, nil); text == least || len(s.Printer.Absent) != 0 {
		t.Errorf("absent is %v, want none", s.Printer.Absent)
	}
}

// A file that may be absent may lie anywhere.
func TestReadAbsent(t *testing.T) {
	text := strings.Replace(least, "supply_v",
		`absent = ["/opt/x/../y.cfg", "../../../z.cfg", "a.cfg"], supply_v`, 1)
	var got []string
	for _, a := range mustRead(t, text, nil).Printer.Absent {
		got = append(got, a.Value)
	}
	dir := path.Dir(mustRead(t, full, nil).Printer.Absent[0].Value)
	want := []string{"/opt/y.cfg", path.Join(dir, "../../../z.cfg"), path.Join(dir, "a.cfg")}
	if !slices.Equal(got, want) {
		t.Errorf("absent is %q, want %q", got, want)
	}
}

// What is settled outside the files: each name with its value and its place.
func TestReadOutside(t *testing.T) {
	text := strings.Replace(least, "supply_v",
		`defined = ["A", "B=3", " C = -1 "], undefined = ["D"], supply_v`, 1)
	s := mustRead(t, text, nil)
	var got []string
	for _, d := range s.Printer.Outside {
		got = append(got, fmt.Sprintf("%s=%s %v %s", d.Name, d.Value, d.Undefined, d.At.Text()))
	}
	if want := `[A=1 false "A" B=3 false "B=3" C=-1 false " C = -1 " D=1 true "D"]`; fmt.Sprint(got) != want {
		t.Errorf("got %v, want %s", got, want)
	}
	for _, wrong := range []string{
		`defined = "A"`, `defined = [3]`, `undefined = [["A"]]`,
		`defined = [` + strings.Repeat(`"A",`, 101) + `]`,
	} {
		if _, err := read(t, strings.Replace(least, "supply_v", wrong+", supply_v", 1), nil); err == nil ||
			!strings.Contains(err.Error(), "defined") {
			t.Errorf("%s: %v", wrong, err)
		}
	}
}

// The tune of a heater model gives no gains; a PID tune gives all three.
func TestReadTunedModel(t *testing.T) {
	s := mustRead(t, least+"[tuned]\nat_c = 220\n", nil)
	if s.Tuned == nil || s.Tuned.Gains() != nil {
		t.Errorf("a tune without gains: %+v", s.Tuned)
	}
	if mustRead(t, least, nil).Tuned.Gains() != nil {
		t.Error("no tune has gains")
	}
	if mustRead(t, full, nil).Tuned.Gains() == nil {
		t.Error("a tune with gains has none")
	}
}

// The same sheet in other forms of TOML, and with the bytes that editors leave.
func TestForms(t *testing.T) {
	forms := map[string]string{
		"dotted keys": `format = 1
printer.name = "egret-01"
printer.config = ["main.cfg"]
printer.supply_v = 24
new.rated_c = 300
new.print_c = [190, 270]
new.sensor.kind = "ntc"
new.sensor.curve = "ntc-100k-3950"
new.heater.kind = "cartridge"
new.heater.rated_v = 24
new.heater.rated_w = 40
`,
		"CRLF":             strings.ReplaceAll(least, "\n", "\r\n"),
		"byte order mark":  "\ufeff" + least,
		"no last newline":  strings.TrimSuffix(least, "\n"),
		"comments, blanks": "# a sheet\n\n" + strings.ReplaceAll(least, "\n", " # said\n\n"),
		"quoted keys":      strings.ReplaceAll(least, "rated_c", `"rated_c"`),
	}
	for name, text := range forms {
		s, err := read(t, text, nil)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		if s.New.RatedC.Value != 300 || s.New.RatedC.At.Text() != "300" || s.New.Heater.RatedW.Value != 40 {
			t.Errorf("%s: got %+v", name, s.New)
		}
	}
}

func TestOldIsOptional(t *testing.T) {
	s := mustRead(t, full+"[old]\nname = \"long\"\n[old.sensor]\nkind = \"ntc\"\n", nil)
	if s.Old == nil || s.Old.Name.Value != "long" || s.Old.RatedC.Given ||
		s.Old.Sensor.Kind.Value != parser.NTC {
		t.Errorf("got %+v", s.Old)
	}
	_, err := read(t, full+"[old.heater]\nrated_w = -1\n", nil)
	if err == nil || !strings.Contains(err.Error(), "old.heater.rated_w") {
		t.Errorf("got %v", err)
	}
}

func BenchmarkRead(b *testing.B) {
	tree := openTree(b, b.TempDir())
	for b.Loop() {
		if _, err := readIn(tree, full); err != nil {
			b.Fatal(err)
		}
	}
}

// The curve tells the kind; what a chip reads must be said.
func TestKindByCurve(t *testing.T) {
	const was = "kind = \"ntc\"\ncurve = \"ntc-100k-3950\""
	for _, tt := range []struct {
		now  string
		kind parser.SensorKind
		says string
	}{
		{`curve = "ntc-100k-3950"`, parser.NTC, ""},
		{`curve = "pt1000"`, parser.Platinum, ""},
		{"beta = { r25_ohm = 100000, b_k = 3950 }", parser.NTC, ""},
		{"points = [[25, 100000], [150, 1770], [250, 230]]", parser.NTC, ""},
		{"points = [[0, 1000], [100, 1385], [200, 1759]]", parser.Platinum, ""},
		{`kind = "thermocouple"`, parser.Thermocouple, ""},
		{"kind = \"platinum-amplifier\"\ncurve = \"pt100\"", parser.PlatinumAmplifier, ""},
		{`curve = "glass bead"`, 0, "new.sensor.kind is missing; new.sensor.curve does not tell it"},
		{``, 0, "or kind, for an amplifier or a thermocouple"},
		{"kind = \"platinum\"\nbeta = { r25_ohm = 1000, b_k = 3950 }", 0, "describes an NTC"},
	} {
		text := strings.Replace(full, was, tt.now, 1)
		if text == full && tt.now != was {
			t.Fatalf("%q is not in the sheet", was)
		}
		s, err := read(t, text, nil)
		switch {
		case tt.says != "":
			if err == nil || !strings.Contains(err.Error(), tt.says) {
				t.Errorf("%q: error %v, want %q", tt.now, err, tt.says)
			}
		case err != nil:
			t.Errorf("%q: %v", tt.now, err)
		case s.New.Sensor.Kind.Value != tt.kind || !s.New.Sensor.Kind.Given:
			t.Errorf("%q: kind %+v", tt.now, s.New.Sensor.Kind)
		}
	}
}

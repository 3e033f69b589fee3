package sections

import (
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
)

// Changes of any settings, in configurations of any layout, read back through
// the tree: the settings have the new values and no other one moved.
func TestEveryEditReadsBack(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		files := drawPrinter(t)
		c, tree := readDrawn(t, files)
		before := map[parser.Key]parser.Description{}
		for s := range c.Printer().Settings() {
			before[s.Key] = s
		}
		wanted := map[parser.Key]any{}
		var changes []parser.Change
		for range rapid.IntRange(1, 3).Draw(t, "changes") {
			change := drawChange(t, c)
			if _, twice := wanted[change.Key]; twice {
				continue
			}
			if _, err := c.Edits([]parser.Change{change}); err != nil {
				if s := before[change.Key]; !s.Saved && change.Key != parser.Margin {
					t.Fatalf("%v: %v\n%q", change, err, files)
				}
				continue
			}
			wanted[change.Key] = change.Value
			changes = append(changes, change)
		}
		edits, err := c.Edits(changes)
		if err != nil {
			t.Fatalf("%v: %v\n%q", changes, err, files)
		}
		for _, e := range edits {
			if e.At.File == c.saved.file && e.At.End > c.saved.start {
				t.Fatalf("an edit below the ruler: %v\n%q", e, files)
			}
		}
		changed := apply(t, edits)
		again, err := Style.Read(tree.With(changed), parser.Request{Files: []string{"printer.cfg"}})
		if err != nil {
			t.Fatalf("%v: the edited configuration cannot be read: %v\n%q", changes, err, changed)
		}
		after := map[parser.Key]parser.Description{}
		for s := range again.Printer().Settings() {
			after[s.Key] = s
		}
		_, loop := wanted[parser.LoopControl] // the figures of a loop come and go with its kind
		for key, was := range before {
			is, still := after[key]
			want, asked := wanted[key]
			if !asked {
				want = was.Value
			}
			same := still && reflect.DeepEqual(is.Value, want)
			if d, ok := want.(parser.SensorDef); ok && still {
				same = sameDefinition(is.Value.(parser.SensorDef), d)
			}
			if !same && (still || !loop) {
				t.Fatalf("%v: %s is %v and should be %v\n%q\n%q",
					changes, key, is.Value, want, files, changed)
			}
		}
		if len(after) != len(before) && !loop {
			t.Fatalf("%v: %d settings became %d", changes, len(before), len(after))
		}
	})
}

func readDrawn(t *rapid.T, files map[string]string) (*config, *parser.Tree) {
	dir, tree := tempTree(t, files)
	t.Cleanup(func() { tree.Close(); removeAll(dir) })
	c, err := Style.Read(tree, parser.Request{Files: []string{"printer.cfg"}})
	if err != nil {
		t.Fatalf("%v\n%q", err, files)
	}
	return c.(*config), tree
}

// drawChange draws a setting that can be changed and another value for it.
func drawChange(t *rapid.T, c *config) parser.Change {
	var keys []parser.Key
	for s := range c.Printer().Settings() {
		switch s.Value.(type) {
		case float64, parser.SensorDef, parser.Control:
			if s.Key != parser.MaxFlow && s.Key != parser.FanPower && s.Key != parser.FanAtShutdown {
				keys = append(keys, s.Key)
			}
		}
	}
	key := rapid.SampledFrom(keys).Draw(t, "key")
	switch key {
	case parser.HotendSensor, parser.BedSensor:
		var defs []parser.SensorDef
		for _, id := range []string{"ntc-100k-3950", "ntc-100k-4092", "ntc-100k-3974", "pt1000"} {
			defs = append(defs, definitionOf(id))
		}
		return parser.Change{Key: key, Value: rapid.SampledFrom(append(defs,
			parser.SensorDef{Form: parser.FormBeta, Kind: parser.NTC, R25Ohm: 98765.4, BetaK: 4001},
			parser.SensorDef{
				Form: parser.FormPoints, Kind: parser.NTC, Name: "b",
				Points: []parser.SensorPoint{
					{TempC: 25, Ohm: 1e5}, {TempC: 150, Ohm: 1770}, {TempC: 250, Ohm: 230},
				},
			},
			parser.SensorDef{
				Form: parser.FormPoints, Kind: parser.Platinum, Name: "c", Join: parser.JoinOhm,
				Points: []parser.SensorPoint{{TempC: 0, Ohm: 500}, {TempC: 100, Ohm: 692.5}},
			},
		)).Draw(t, "definition")}
	case parser.LoopControl:
		controls := []parser.Control{parser.ControlPID, parser.ControlOnOff}
		return parser.Change{Key: key, Value: rapid.SampledFrom(controls).Draw(t, "control")}
	case parser.PowerLimit("heater"):
		return num(key, rapid.SampledFrom([]float64{0.25, 0.9, 1}).Draw(t, "share"))
	case parser.MaxTemp:
		return num(key, rapid.SampledFrom([]float64{260, 275.5, 300}).Draw(t, "max"))
	case parser.MinTemp:
		return num(key, rapid.SampledFrom([]float64{-10, 0, 7.5}).Draw(t, "min"))
	case parser.MinExtrude:
		return num(key, rapid.SampledFrom([]float64{150, 180.5}).Draw(t, "extrude"))
	}
	return num(key, rapid.SampledFrom([]float64{1, 2.5, 33, 1.125}).Draw(t, "figure"))
}

// drawPrinter draws a configuration in one of many layouts: line endings,
// separators, alignment, comments, indentation, options in any order and
// place, a saved block or none.
func drawPrinter(t *rapid.T) map[string]string {
	eol := rapid.SampledFrom([]string{"\n", "\r\n"}).Draw(t, "line ending")
	sep := rapid.SampledFrom([]string{":", "=", ": ", " = ", ":    ", " : ", ":\t"}).Draw(t, "separator")
	indent := rapid.SampledFrom([]string{"", "", "", "  ", "\t"}).Draw(t, "indentation")
	deeper := indent + rapid.SampledFrom([]string{"", "", "  "}).Draw(t, "of options")
	maybe := func(label string) bool { return rapid.IntRange(0, 3).Draw(t, label) > 0 }
	var main, part strings.Builder
	out := &main
	header := func(name string) { out.WriteString(indent + "[" + name + "]" + eol) }
	option := func(key, value string) {
		if !maybe("has " + key) {
			return
		}
		out.WriteString(deeper + key + sep + value)
		out.WriteString(rapid.SampledFrom([]string{"", "", "  # c", " ; c"}).Draw(t, "comment") + eol)
		if rapid.IntRange(0, 5).Draw(t, "gap") == 0 {
			gaps := []string{"", "# c", "    # max_temp: 1", "; c"}
			out.WriteString(rapid.SampledFrom(gaps).Draw(t, "between") + eol)
		}
	}
	must := func(key, value string) { out.WriteString(deeper + key + sep + value + eol) }
	if rapid.Bool().Draw(t, "macro first") {
		header("gcode_macro A")
		out.WriteString(deeper + "gcode:" + eol + deeper + "    M104 S210" + eol + deeper + "    G28" + eol)
	}
	heater := func(name string) {
		header(name)
		must("min_temp", "0")
		must("max_temp", "290")
		must("sensor_type", "Generic 3950")
		must("control", "pid")
		must("pid_Kp", "20")
		must("pid_Ki", "1.0")
		must("pid_Kd", "100")
		option("max_power", "0.75")
		option("pullup_resistor", "4700")
		option("smooth_time", "2")
		option("min_extrude_temp", "160")
		must("nozzle_diameter", "0.400")
		must("filament_diameter", "1.75")
		option("pressure_advance", "0.04")
	}
	heater("extruder")
	if maybe("bed") {
		heater("heater_bed")
	}
	for _, name := range []string{"extruder", "heater_bed"} {
		if rapid.IntRange(0, 2).Draw(t, "watch") == 0 {
			header("verify_heater " + name)
			option("max_error", "150")
			option("hysteresis", "6")
			option("check_gain_time", "40")
			option("heating_gain", "1")
		}
	}
	if maybe("fan") {
		header("heater_fan f")
		option("heater", "extruder")
		option("heater_temp", "50.0")
	}
	if rapid.Bool().Draw(t, "include") {
		out.WriteString("[include part.cfg]" + eol)
		out = &part
		header("extruder")
		option("max_temp", "280")
		option("pressure_advance", "0.05")
		header("firmware_retraction")
		option("retract_length", "0.5")
		out = &main
		header("fan")
	}
	header("probe")
	inBlock := rapid.Bool().Draw(t, "saved block")
	if !inBlock {
		must("z_offset", "1.25")
	}
	must("pin", "a")
	if rapid.Bool().Draw(t, "macro last") {
		header("gcode_macro B")
		out.WriteString(deeper + "variable_load_length: 50" + eol)
		out.WriteString(deeper + "gcode:" + eol + deeper + "    M109 S200 T0" + eol)
	}
	text := main.String()
	switch {
	case inBlock:
		text += strings.ReplaceAll(savedHead+`#*# [extruder]
#*# pid_kp = 19
#*# pressure_advance = 0.07
#*# max_power = 0.5
#*#
#*# [probe]
#*# z_offset = 1.75
`, "\n", eol)
	case rapid.Bool().Draw(t, "no last newline"):
		text = strings.TrimRight(text, "\r\n")
	}
	files := map[string]string{"printer.cfg": text}
	if part.Len() > 0 {
		files["part.cfg"] = part.String()
	}
	return files
}

package sheet

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"preflash/parser"
)

// Read reads the sheet with this path inside the tree, and the files that it
// names by use. What is wrong comes back as one or several *parser.Error,
// joined in the order of the text.
func Read(t *parser.Tree, name string) (*Sheet, error) {
	f, err := t.Open(name)
	if err != nil {
		return nil, err
	}
	root, wrong := parseTOML(f)
	if wrong != nil {
		return nil, wrong.err()
	}
	w := &walk{own: f}
	top := w.scope("", root.at, false, root)
	s := &Sheet{File: f}
	get(top, "format", true, 1, words("format = 1"), func(v *value) (int, string) {
		if v.kind != wholeValue || v.whole != 1 {
			return 0, "must be 1, the only format that there is"
		}
		return 1, ""
	})
	dir := path.Dir(f.Path)
	s.Printer = readPrinter(top.sub("printer"), dir)
	s.New = readHotend(t, top.sub("new"), dir, s.Printer.SupplyV.Value)
	if top.has("old") {
		sub := top.sub("old")
		sub.optional = true
		old := readHotend(t, sub, dir, s.Printer.SupplyV.Value)
		s.Old = &old
	}
	top.ask("old")
	if top.has("tuned") {
		s.Tuned = readTuned(top.sub("tuned"))
	}
	top.ask("tuned")
	s.Done = readDone(top.sub("done"))
	s.Waivers = readWaivers(top)
	top.done()
	if err := w.err(); err != nil {
		return nil, err
	}
	return s, nil
}

// ReadPrinter reads the [printer] of a sheet that may have blanks and faults; the
// error is that it is no TOML.
func ReadPrinter(t *parser.Tree, name string) (Printer, error) {
	f, err := t.Open(name)
	if err != nil {
		return Printer{}, err
	}
	root, wrong := parseTOML(f)
	if wrong != nil {
		return Printer{}, wrong.err()
	}
	w := &walk{own: f}
	return readPrinter(w.scope("", root.at, false, root).sub("printer"), path.Dir(f.Path)), nil
}

// What is taken where the sheet says nothing.
const (
	usualPullupOhm = 4700
	usualADCBits   = 12
	usualAmbientC  = 22
	usualFanOnC    = 50
)

func readPrinter(s *scope, dir string) Printer {
	p := Printer{
		Name:       s.label("name", true, "the printer's name"),
		Style:      s.text("style", false, "the style of the configuration"),
		Config:     s.paths("config", true, dir, resolve),
		ZReference: choice(s, "z_reference", false, "", "probe", "endstop", "nozzle"),
		Absent:     s.paths("absent", false, dir, anywhere),
		Outside:    slices.Concat(s.defines("defined", true), s.defines("undefined", false)),
		Tool:       s.whole("tool", 0, 0, 15),
		SupplyV:    s.float("supply_v", voltage().needed()),
		SupplyW:    s.float("supply_w", power().within(1, 10_000).mayStay()),
		OtherLoadW: s.float("other_load_w", power().within(0, 10_000).mayStay()),
		OutputA:    s.float("output_a", span(0.1, 100, "A").mayStay()),
		PullupOhm:  s.float("pullup_ohm", span(10, 1e6, "Ω").or(usualPullupOhm)),
		ADCBits:    s.whole("adc_bits", usualADCBits, 8, 16),
		AmbientC:   s.float("ambient_c", span(-40, 80, "°C").or(usualAmbientC)),
	}
	s.done()
	return p
}

func readHotend(t *parser.Tree, s *scope, dir string, supplyV float64) Hotend {
	h := Hotend{Use: use(t, s, dir)}
	h.Name = s.label("name", false, "the hotend's name")
	h.RatedC = s.float("rated_c", temperature().needed())
	h.PrintC = get(s, "print_c", true, [2]float64{},
		words("the lowest and the highest printing temperature, [190, 270]"),
		func(v *value) ([2]float64, string) {
			pair, problem := takePair(v, temperature(), temperature())
			if problem == "" && pair[0] > pair[1] {
				problem = "reversed; the lowest temperature comes first"
			}
			return pair, problem
		})
	h.Liner = choice(s, "liner", false, "none", "none", "ptfe")
	h.CutoffC = s.float("cutoff_c", temperature().within(0, 1000))
	h.Sensor = readSensor(s.sub("sensor"))
	h.Heater = readHeater(s.sub("heater"))
	h.Block = readBlock(s.sub("block"))
	h.Fan = readFan(s.sub("fan"), supplyV)
	h.Nozzle = readNozzle(s.sub("nozzle"))
	s.done()
	return h
}

// use reads the file that a hotend names and puts its keys behind the sheet's
// own.
func use(t *parser.Tree, s *scope, dir string) Key[string] {
	k := get(s, "use", false, "", words("the path of a hotend file"), func(v *value) (string, string) {
		text, problem := takeText(v)
		if problem != "" {
			return "", problem
		}
		return resolve(dir, text)
	})
	if !k.Given {
		return k
	}
	root := s.open(t, k)
	if root == nil {
		s.optional = true // what is missing here may stand there
		return k
	}
	if e := root.byName["use"]; e != nil {
		s.walk.fault(e.at, k.Path, "a hotend file cannot use another; write its keys here")
	}
	s.tables = append(s.tables, root)
	return k
}

func (s *scope) open(t *parser.Tree, k Key[string]) *tomlTable {
	if k.Value == "" {
		return nil
	}
	f, err := t.Open(k.Value)
	if err != nil {
		text := err.Error()
		if e := (*parser.Error)(nil); errors.As(err, &e) {
			text = e.File + " " + e.Message
		}
		s.walk.fault(k.At, k.Path, k.Path+": "+text)
		return nil
	}
	root, wrong := parseTOML(f)
	if wrong != nil {
		s.walk.fault(wrong.at, k.Path, wrong.text)
		return nil
	}
	return root
}

func readHeater(s *scope) Heater {
	h := Heater{
		Kind:      choice(s, "kind", true, "", Cartridge, PTC),
		RatedV:    s.float("rated_v", voltage().needed()),
		RatedW:    s.float("rated_w", power().within(1, 1000).needed()),
		DutyLimit: s.float("duty_limit", span(0.01, 1, "").or(1)),
	}
	if v := s.find("hot_w"); v != nil && v.blank() && h.Kind.Value != PTC {
		h.HotW = Key[[][2]float64]{At: v.at, Path: s.full("hot_w")} // asked of a PTC heater alone
	} else {
		h.HotW = s.pairs("hot_w", span(-50, 1000, "°C"), power().within(0, 1000), 2)
	}
	if h.HotW.Given && h.Kind.Value == Cartridge {
		if h.Kind.At.File == h.HotW.At.File {
			s.walk.fault(h.HotW.At, h.HotW.Path, h.HotW.Path+" is for a PTC heater; "+
				"a cartridge's power hardly depends on its temperature; remove it, or correct the kind")
		} else {
			h.HotW.Given = false // the sheet put another heater in
			drop(&h.HotW, s.at)
		}
	}
	s.checkHotPower(&h)
	s.done()
	return h
}

const (
	// A PTC heater's power falls with temperature; near the room's it may rise
	// a little first. Common practice, no source.
	ptcFallsC = 150
	// By how much the label may differ from the power that hot_w has at 25 °C,
	// as a share of it.
	ptcLabelShare = 0.1
)

// checkHotPower sees to it that a PTC heater's powers can be true together.
func (s *scope) checkHotPower(h *Heater) {
	if !h.HotW.Given {
		return
	}
	points := slices.Clone(h.HotW.Value)
	slices.SortStableFunc(points, func(a, b [2]float64) int { return cmp.Compare(a[0], b[0]) })
	for i, p := range points { // figures are not quoted: they may stand in a file that was pulled in
		switch {
		case i > 0 && p[0] > ptcFallsC && p[1] > points[i-1][1]:
			s.walk.fault(h.HotW.At, h.HotW.Path, fmt.Sprintf(
				"%s: the power rises above %d °C, and a PTC heater's falls; correct the points, or the kind",
				h.HotW.Path, ptcFallsC))
			return
		case p[0] == 25 && h.RatedW.Value > 0 && math.Abs(h.RatedW.Value-p[1]) > ptcLabelShare*h.RatedW.Value:
			at, path := h.HotW.At, h.HotW.Path
			if h.RatedW.At.File == s.walk.own {
				at, path = h.RatedW.At, h.RatedW.Path
			}
			s.walk.fault(at, path, fmt.Sprintf(
				"%s at 25 °C and %s differ by more than a tenth; correct one of them",
				h.HotW.Path, h.RatedW.Path))
			return
		}
	}
}

func readBlock(s *scope) Block {
	b := Block{
		HeatCapacityJPerK: s.float("heat_capacity_j_per_k", span(0.1, 1000, "J/K").or(16.7)),
		LossWPerK:         s.float("loss_w_per_k", span(0.001, 10, "W/K").or(0.068)),
		LossFanWPerK:      s.float("loss_fan_w_per_k", span(0.001, 10, "W/K").or(0.097)),
		SensorLagS:        s.float("sensor_lag_s", span(0.05, 120, "s").or(4.5)),
	}
	if still, fan := &b.LossWPerK, &b.LossFanWPerK; still.Given && fan.Given && fan.Value < still.Value {
		s.walk.fault(fan.At, fan.Path,
			fan.Path+": impossible; with the part fan on the block loses at least as much as with it off")
	}
	s.done()
	return b
}

func readFan(s *scope, supplyV float64) Fan {
	f := Fan{
		RatedV:   s.float("rated_v", voltage().mayStay()),
		Wires:    s.whole("wires", 2, 2, 4),
		OutputV:  s.float("output_v", span(1, 60, "V").or(supplyV)),
		AlwaysOn: s.truth("always_on"),
		OnAboveC: s.float("on_above_c", span(0, 500, "°C").or(usualFanOnC)),
	}
	s.done()
	return f
}

func readNozzle(s *scope) Nozzle {
	n := Nozzle{
		DiameterMM:  s.float("diameter_mm", span(0.05, 5, "mm").mayStay()),
		TipShiftMM:  s.float("tip_shift_mm", span(-100, 100, "mm").mayStay()),
		MaxFlowMM3S: s.float("max_flow_mm3_s", span(0.1, 500, "mm³/s")),
	}
	s.done()
	return n
}

func readTuned(s *scope) *Tuned {
	gain := span(0, 1e5, "")
	if s.has("kp") || s.has("ki") || s.has("kd") {
		gain = gain.needed() // all or none: the tune of a model gives none
	}
	t := &Tuned{
		AtC: s.float("at_c", temperature().needed()),
		Kp:  s.float("kp", gain),
		Ki:  s.float("ki", gain),
		Kd:  s.float("kd", gain),
		On:  s.day("on", false, "the day of the tune"),
	}
	s.done()
	return t
}

func readDone(s *scope) Done {
	d := Done{HeightOn: s.day("height_on", false,
		"the day on which the nozzle's height was measured again, such as 2026-11-20")}
	s.done()
	return d
}

func readWaivers(top *scope) []Waiver {
	v := top.find("waiver")
	switch {
	case v == nil:
		return nil
	case v.kind != tablesValue:
		top.walk.wrong(v, "waiver", "must be written [[waiver]], once for each waiver")
		return nil
	}
	var list []Waiver
	for _, row := range v.rows {
		s := top.walk.scope("waiver", row.at, false, row)
		list = append(list, Waiver{
			Rule:    s.text("rule", true, "the rule that it waives"),
			Setting: s.label("setting", false, "the setting that the finding is about"),
			At:      s.float("at", span(-1e6, 1e6, "in the unit of the finding")),
			Reason:  s.label("reason", true, "the reason"),
			Until:   s.day("until", true, "the last day it holds, such as 2027-03-31"),
		})
		s.done()
	}
	return list
}

// resolve turns a path relative to the sheet into one inside the tree.
func resolve(dir, name string) (string, string) {
	if path.IsAbs(name) || filepath.IsAbs(name) {
		return "", "must be relative to the sheet"
	}
	p, problem := anywhere(dir, name)
	if problem != "" {
		return "", problem
	}
	if !filepath.IsLocal(filepath.FromSlash(p)) {
		return "", parser.OutsideRoot
	}
	return p, ""
}

// anywhere turns a path relative to the sheet into one from the tree's root. It
// may lie outside, and an absolute one stays as it is: it is never read there.
func anywhere(dir, name string) (string, string) {
	switch {
	case strings.ContainsRune(name, '\\'):
		return "", "must be written with / between folders"
	case path.IsAbs(name):
		return path.Clean(name), ""
	}
	return path.Join(dir, name), ""
}

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

func (s *scope) open(t *parser.Tree, k Key[string]) *table {
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

func readSensor(s *scope) Sensor {
	ohm := span(0.01, 1e8, "Ω")
	n := Sensor{
		Kind:          readKind(s),
		Curve:         s.text("curve", false, "the name of a known curve"),
		Beta:          readBeta(s),
		RatedC:        s.float("rated_c", temperature().within(40, 2000)),
		R25Tolerance:  s.float("r25_tolerance", span(0, 0.2, "").or(0.01)),
		BetaTolerance: s.float("beta_tolerance", span(0, 0.2, "").or(0.01)),
	}
	pairs := s.pairs("points", span(-273, 1500, "°C"), ohm, 3)
	n.Points = Key[[]parser.SensorPoint]{Given: pairs.Given, At: pairs.At, Path: pairs.Path}
	for _, p := range pairs.Value {
		n.Points.Value = append(n.Points.Value, parser.SensorPoint{TempC: p[0], Ohm: p[1]})
	}
	s.kindByCurve(&n)
	s.checkCurve(&n, pairs.Value)
	s.done()
	return n
}

func readKind(s *scope) Key[parser.SensorKind] {
	word := choice(s, "kind", false, "", "ntc", "platinum", "platinum-amplifier", "thermocouple")
	k := Key[parser.SensorKind]{Given: word.Given, At: word.At, Path: word.Path}
	for _, kind := range []parser.SensorKind{
		parser.NTC, parser.Platinum, parser.PlatinumAmplifier, parser.Thermocouple,
	} {
		if kind.String() == word.Value {
			k.Value = kind
		}
	}
	return k
}

func readBeta(s *scope) Key[Beta] {
	k := Key[Beta]{At: s.at, Path: s.full("beta")}
	if v := s.find("beta"); v != nil {
		k.Given, k.At = true, v.at
		if v.kind != tableValue {
			s.walk.wrong(v, k.Path, "must be { r25_ohm = …, b_k = … }, not "+v.kind.String())
			return k
		}
		// A curve is one thing: its figures never come from two files.
		u := s.walk.scope(k.Path, v.at, false, v.table)
		k.Value.R25Ohm = u.float("r25_ohm", span(1, 1e8, "Ω").needed()).Value
		k.Value.BK = u.float("b_k", span(500, 10_000, "K").needed()).Value
		u.done()
	}
	return k
}

// kindByCurve tells the kind of a sensor that the sheet describes without it. What
// a chip reads must be said.
func (s *scope) kindByCurve(n *Sensor) {
	own := func(given bool, at parser.Span) bool { return given && at.File == s.walk.own }
	described := own(n.Curve.Given, n.Curve.At) || own(n.Points.Given, n.Points.At) ||
		own(n.Beta.Given, n.Beta.At)
	if n.Kind.Given && (own(true, n.Kind.At) || !described) || s.misspelt("kind") {
		return
	}
	k := &n.Kind
	switch {
	case n.Curve.Given:
		k.At, k.Value = n.Curve.At, kindOfCurve(n.Curve.Value)
		if k.Value == parser.KindUnknown && n.Curve.Value != "" {
			s.missing("kind", k.Path+" is missing; "+n.Curve.Path+" does not tell it: "+
				"correct the curve, or give the kind")
		}
	case n.Beta.Given:
		k.At, k.Value = n.Beta.At, parser.NTC
	case n.Points.Given:
		k.At, k.Value = n.Points.At, parser.NTC
		if p := n.Points.Value; len(p) > 1 && p[len(p)-1].Ohm > p[0].Ohm {
			k.Value = parser.Platinum
		}
	default:
		if !s.misspelt("curve", "points", "beta") {
			s.missing("curve", s.path+" has no curve; give curve (a known one), points or beta; "+
				"or kind, for an amplifier or a thermocouple")
		}
		return
	}
	k.Given = k.Value != parser.KindUnknown
}

// kindOfCurve tells the kind by how the names of known curves begin.
func kindOfCurve(name string) parser.SensorKind {
	switch {
	case strings.HasPrefix(name, "ntc-"):
		return parser.NTC
	case strings.HasPrefix(name, "pt"):
		return parser.Platinum
	}
	return parser.KindUnknown
}

// checkCurve sees to it that a sensor has the one curve that its kind needs.
func (s *scope) checkCurve(n *Sensor, pairs [][2]float64) {
	own := func(at parser.Span) bool { return at.File == s.walk.own }
	type part struct {
		given *bool
		at    parser.Span
		path  string
	}
	parts := []part{
		{&n.Curve.Given, n.Curve.At, n.Curve.Path},
		{&n.Points.Given, n.Points.At, n.Points.Path},
		{&n.Beta.Given, n.Beta.At, n.Beta.Path},
	}
	mine := slices.ContainsFunc(parts, func(p part) bool { return *p.given && own(p.at) })
	first := ""
	for _, p := range parts {
		switch {
		case !*p.given:
		case mine && !own(p.at):
			*p.given = false // the sheet's own description replaces the file's
		case first != "":
			s.walk.fault(p.at, p.path, p.path+" and "+first+" both describe the sensor; keep one of them")
		default:
			first = p.path
		}
	}
	drop(&n.Curve, s.at)
	drop(&n.Points, s.at)
	drop(&n.Beta, s.at)
	switch kind := n.Kind.Value; kind {
	case parser.NTC, parser.Platinum:
		if first == "" && !s.misspelt("curve", "points", "beta") {
			s.missing("curve", s.path+" has no curve; give curve (a known one), points or beta")
		}
		if kind == parser.Platinum && n.Beta.Given {
			s.walk.fault(n.Beta.At, n.Beta.Path,
				n.Beta.Path+" describes an NTC; for platinum give curve or points")
		}
		if n.Points.Given && pairs != nil && !rising(pairs, kind == parser.Platinum) {
			must := "must fall all the way as it gets warmer, as an NTC's does"
			if kind == parser.Platinum {
				must = "must rise all the way as it gets warmer, as platinum's does"
			}
			s.walk.fault(n.Points.At, n.Points.Path, n.Points.Path+": the resistance "+must)
		}
	case parser.PlatinumAmplifier, parser.Thermocouple:
		for _, p := range parts {
			if *p.given && (kind == parser.Thermocouple || p.path != n.Curve.Path) {
				s.walk.fault(p.at, p.path, p.path+" means nothing here: the chip of a "+kind.String()+
					" reports a temperature; remove it")
			}
		}
	}
}

// drop empties a key that is not given after all.
func drop[T any](k *Key[T], at parser.Span) {
	if !k.Given {
		*k = Key[T]{At: at, Path: k.Path}
	}
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

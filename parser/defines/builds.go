package defines

import (
	"strconv"

	"preflash/parser"
)

// What the style's firmware refuses to build, as it publishes its checks, as
// far as a hotend swap touches it or a reader would be misled by it, and no
// other rule says it: a protection whose switch is off is refused too.

// published tells whose checks a configuration is sure to meet: those of the
// generation whose version it states. A version between the two, or above the
// newer, meets what both check, and is both here. Older versions, and files
// that state none, are none: their firmware reads names that were refused later.
func published(s *source) basis {
	switch g, _ := statedGeneration(s); g {
	case genOlder, genNewer, genBetween, genAbove:
		return g.basis()
	}
	return 0
}

// refuses reports whether the firmware is sure to refuse what those in by do.
func (r *reader) refuses(by basis) bool { return r.checks != 0 && r.checks&^by == 0 }

// unbuildable reports what the firmware is sure to refuse. Each check stands
// for one row of what the style's firmware publishes.
func (r *reader) unbuildable(p *parser.Printer) {
	if r.checks == 0 {
		return
	}
	broken := func(at parser.Span, text string) {
		text = "the firmware refuses to build: " + text
		p.Remarks = append(p.Remarks, parser.Remark{Kind: parser.RemarkBroken, At: at, Text: text})
	}
	r.refused(broken)
	for _, check := range [...]struct {
		by   basis
		find func(p *parser.Printer) (parser.Span, string)
	}{
		{both, r.versionsDiffer},
		{both, r.windowLong},
		{newer, r.megohmBead},
		{newer, r.controllerSensor},
		{both, r.platinumChip},
		{both, r.chipsDiffer},
		{newer, r.twoControls},
		{both, r.parallelTools},
		{both, r.fanOnPartFan},
		{newer, r.autoTargetTurned},
		{both, r.secondIsFirst},
		{both, r.offsetOfFirst},
	} {
		if !r.refuses(check.by) {
			continue
		}
		if at, text := check.find(p); text != "" {
			broken(at, text)
		}
	}
}

const both = older | newer

// defined is the define that is in force for a name, or nil.
func (r *reader) defined(name string) *define {
	if len(r.s.mentions(name)) == 0 {
		return nil
	}
	return r.s.macro(name).winner
}

// plain reads a figure of an option that is in force and can be told.
func (r *reader) plain(name string) (float64, *define) {
	if d := r.defined(name); d != nil {
		if x, known := r.figure(d.value()); known == parser.Yes {
			return x, d
		}
	}
	return 0, nil
}

func (r *reader) versionsDiffer(*parser.Printer) (parser.Span, string) {
	first, second := r.defined(versionOptions[0]), r.defined(secondVersion)
	if first == nil || second == nil || first.value() == second.value() {
		return parser.Span{}, ""
	}
	return second.body, second.name + " is " + second.value() +
		" and " + first.name + " is " + first.value() + "; take both files from one version"
}

// longestWindowS is the longest heating check window that builds, s.
const longestWindowS = 500

func (r *reader) windowLong(*parser.Printer) (parser.Span, string) {
	x, d := r.plain(hotendWatch.heatingWindow)
	if d == nil || x <= longestWindowS {
		return parser.Span{}, ""
	}
	return d.body, d.name + " is " + d.value() + ", and it counts seconds: " +
		strconv.Itoa(longestWindowS) + " at most"
}

// Floors of the bead of 4.7 MΩ, which is nearly open when cold.
const (
	megohmNumber  = "66"
	megohmMinC    = 21.0 // above 20
	megohmSamples = 5.0
	megohmGraceS  = 15.0
)

// bounds notes the values that the build takes, for those who propose others.
func (r *reader) bounds(p *parser.Printer) {
	s, l := &p.Hotend.Sensor, &p.Limits
	if s.State != parser.Set || !r.refuses(newer) {
		return
	}
	if r.on(storedMaxTemp) == parser.No {
		l.MaxTemp.Most = tableMost(&s.Value, l.Margin)
	}
	if s.Value.Name != megohmNumber {
		return
	}
	l.MinTemp.Least = megohmMinC
	for i := range l.BadSamples {
		l.BadSamples[i].Least = megohmSamples
	}
	for i := range l.Graces {
		l.Graces[i].Least = megohmGraceS
	}
}

// tableMost is the highest max temp that the newer generation builds with a
// definition: it holds the tables of the lower numbers against it. 0 for others.
func tableMost(d *parser.SensorDef, margin parser.Setting[float64]) float64 {
	const last = 997
	number, err := strconv.Atoi(d.Name)
	if err != nil || number < 1 || number > last || d.HighC <= 0 || !margin.Known() {
		return 0
	}
	return d.HighC - margin.Value
}

// MaxTempWith is the highest max temp that is sure to build with a definition,
// also where it is not told whether the firmware looks.
func (c *config) MaxTempWith(d parser.SensorDef) float64 {
	if !c.looks {
		return 0
	}
	return tableMost(&d, c.printer.Limits.Margin)
}

// megohmBead finds what that bead needs and does not have.
func (r *reader) megohmBead(p *parser.Printer) (parser.Span, string) {
	s, l := &p.Hotend.Sensor, &p.Limits
	if s.State != parser.Set || s.Value.Name != megohmNumber {
		return parser.Span{}, ""
	}
	what := s.Name + " " + megohmNumber + " needs "
	if min := &l.MinTemp; min.State == parser.Set && min.Value < megohmMinC {
		return min.At, what + "a " + min.Name + " above 20"
	}
	for _, need := range [...]struct {
		list  []parser.Setting[float64]
		least float64
		text  string
	}{
		{l.BadSamples, megohmSamples, "MAX_CONSECUTIVE_LOW_TEMPERATURE_ERROR_ALLOWED of 5 at least"},
		{l.Graces, megohmGraceS, "PREHEAT_TIME_HOTEND_MS of 15000 at least"},
	} {
		switch {
		case len(need.list) == 0:
			return s.At, what + need.text
		case need.list[0].Known() && need.list[0].Value < need.least:
			return need.list[0].At, what + need.text
		}
	}
	return parser.Span{}, ""
}

func (r *reader) controllerSensor(p *parser.Printer) (parser.Span, string) {
	if s := &p.Hotend.Sensor; s.State == parser.Set && s.Value.Name == "100" {
		return s.At, s.Name + " 100 is the sensor in the controller's own chip; name that of the hotend"
	}
	return parser.Span{}, ""
}

func (r *reader) platinumChip(p *parser.Printer) (parser.Span, string) {
	s := &p.Hotend.Sensor
	if s.State != parser.Set || s.Value.Name != strconv.Itoa(platinumChip) {
		return parser.Span{}, ""
	}
	index := strconv.Itoa(r.hotend)
	for _, name := range [...]string{"MAX31865_SENSOR_OHMS_" + index, "MAX31865_CALIBRATION_OHMS_" + index} {
		if len(r.s.mentions(name)) == 0 || r.s.macro(name).state == parser.No {
			return s.At, s.Name + " " + s.Value.Name + " needs " + name
		}
	}
	const wires = "MAX31865_SENSOR_WIRES_"
	if x, d := r.plain(wires + index); d != nil && (x < 2 || x > 4) && r.refuses(newer) {
		return d.body, d.name + " is " + d.value() + ": 2 to 4 wires"
	}
	return parser.Span{}, ""
}

func (r *reader) chipsDiffer(*parser.Printer) (parser.Span, string) {
	var first *define
	for _, name := range [...]string{
		"TEMP_SENSOR_0", "TEMP_SENSOR_1", "TEMP_SENSOR_2", "TEMP_SENSOR_REDUNDANT",
	} {
		x, d := r.plain(name)
		if d == nil || !isChip(&parser.SensorDef{Name: strconv.Itoa(int(x))}) {
			continue
		}
		if first == nil {
			first = d
			continue
		}
		if first.value() != d.value() {
			return d.body, d.name + " is " + d.value() + " and " + first.name + " is " + first.value() +
				": all converter chips must be of one kind"
		}
	}
	return parser.Span{}, ""
}

func (r *reader) twoControls(*parser.Printer) (parser.Span, string) {
	d := r.defined("MPCTEMP")
	if d == nil || r.on("PIDTEMP") != parser.Yes || r.on("MPCTEMP") != parser.Yes {
		return parser.Span{}, ""
	}
	return d.at, "PIDTEMP and MPCTEMP are both on; switch one of them off"
}

func (r *reader) parallelTools(*parser.Printer) (parser.Span, string) {
	const name = "HEATERS_PARALLEL"
	d := r.defined(name)
	if x, count := r.plain("EXTRUDERS"); count == nil || x <= 1 || d == nil || r.on(name) != parser.Yes {
		return parser.Span{}, ""
	}
	return d.at, name + " is for a printer with one extruder"
}

func (r *reader) fanOnPartFan(p *parser.Printer) (parser.Span, string) {
	if s := &p.ColdSide.Fan; s.State == parser.Set && (s.Value == "FAN_PIN" || s.Value == "FAN0_PIN") {
		return s.At, s.Name + " is " + s.Value + ", the part fan's own output; name another"
	}
	return parser.Span{}, ""
}

func (r *reader) autoTargetTurned(*parser.Printer) (parser.Span, string) {
	if r.on("AUTOTEMP") != parser.Yes {
		return parser.Span{}, ""
	}
	low, from := r.plain("AUTOTEMP_MIN")
	high, to := r.plain("AUTOTEMP_MAX")
	if from == nil || to == nil || low <= high {
		return parser.Span{}, ""
	}
	return to.body, to.name + " is below " + from.name
}

func (r *reader) secondIsFirst(p *parser.Printer) (parser.Span, string) {
	const source, target = "TEMP_SENSOR_REDUNDANT_SOURCE", "TEMP_SENSOR_REDUNDANT_TARGET"
	d := r.defined(source)
	second := &p.Hotend.Second
	if d == nil || !second.Known() || second.Value.Name == "" || d.value() != r.target(target) {
		return parser.Span{}, ""
	}
	return d.body, source + " and " + target + " are one sensor"
}

func (r *reader) offsetOfFirst(*parser.Printer) (parser.Span, string) {
	for _, axis := range [...]string{"X", "Y", "Z"} {
		d := r.defined("HOTEND_OFFSET_" + axis)
		if d == nil || r.hotends < 2 {
			continue
		}
		at, text, why := r.element(d, 0, false)
		if x, known := r.figure(text); why == "" && known == parser.Yes && x != 0 {
			return at, d.name + " must begin with 0, since offsets are seen from hotend 0"
		}
	}
	return parser.Span{}, ""
}

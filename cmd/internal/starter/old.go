package starter

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// sensorGroup is [new.sensor].
func sensorGroup() group {
	return group{header: "new.sensor", entries: []*Entry{
		blank("curve", `"ntc-100k-3950"`,
			`The name on its bag or the shop's page; "preflash sensor curves" lists those that are known. `+
				`A reading at room temperature, off the board, tells the kind (`+coldReadings()+`), `+
				`not beads of one resistance apart. Where points or beta are given `+
				`instead, or for a chip, delete this line.`),
		option("kind", `"thermocouple"`,
			`only for what sits behind a chip, which no curve tells: "platinum-amplifier" or "thermocouple"`),
		option("points", "[[25, 100000], [150, 1770], [250, 230]]", "measured, °C and Ω"),
		option("beta", "{ r25_ohm = 100000, b_k = 3950 }", ""),
		option("rated_c", "300", "highest temperature on its data sheet"),
	}}
}

// coldReadings says what the usual sensors read at room temperature.
func coldReadings() string {
	const room = 22 // °C
	text := ""
	for _, id := range []string{"ntc-100k-3950", "pt1000", "pt100"} {
		k, _ := sensor.Find(id)
		name := id
		if k.Kind == parser.NTC {
			name = "a bead of 100 kΩ"
		}
		text += name + " reads about " + rough(k.Curve.Ohms(room)) + ", "
	}
	return text + "a thermocouple a few Ω"
}

// rough writes a resistance as a hand-held meter shows it.
func rough(ohm float64) string {
	if ohm >= 10e3 {
		return unit.Figure(ohm/1e3, 0) + " kΩ"
	}
	return unit.Figure(ohm, 0) + " Ω"
}

// oldGroups is [old]: the hotend that the configuration was written for.
func oldGroups(p *parser.Printer) []group {
	groups := []group{{header: "old", notes: append([]string{
		"The hotend that goes out, as the configuration has it; besides the keys:",
	}, facts(p)...)}}
	groups = append(groups, oldSensor(&p.Hotend.Sensor))
	if d := &p.Flow.NozzleMM; d.Known() && within(d.Value, 0.05, 5) {
		groups = append(groups,
			group{header: "old.nozzle", entries: []*Entry{set("diameter_mm", parser.Decimal(d.Value), "")}})
	}
	if t := &p.ColdSide.OnAboveC; t.State == parser.Set && within(t.Value, 0, 500) {
		on := set("on_above_c", parser.Decimal(t.Value), "")
		groups = append(groups, group{header: "old.fan", entries: []*Entry{on}})
	}
	return groups
}

// within reports whether a sheet takes a figure; a configuration may hold any.
func within(x, low, high float64) bool { return x >= low && x <= high }

// facts are what the configuration says and a sheet has no key for.
func facts(p *parser.Printer) []string {
	l, loop := &p.Limits, &p.Hotend.Loop
	var list []string
	say := func(what string, s *parser.Setting[float64], value func(float64) string) {
		if !s.Known() {
			return
		}
		text := "- " + what + " " + value(s.Value)
		if !s.At.IsZero() {
			text += " (" + s.At.String() + ")"
		}
		list = append(list, text)
	}
	say("min temp", &l.MinTemp, unit.Celsius)
	say("max temp", &l.MaxTemp, unit.Celsius)
	if l.MaxTemp.Known() && l.Margin.Known() && l.Margin.Value > 0 {
		list = append(list, "- highest target "+unit.Celsius(l.MaxTemp.Value-l.Margin.Value))
	}
	if c := &loop.Control; c.Known() {
		list = append(list, "- control: "+c.Value.String())
		switch c.Value {
		case parser.ControlPID:
			say("kp", &loop.Kp, unit.Gain)
			say("ki", &loop.Ki, unit.Gain)
			say("kd", &loop.Kd, unit.Gain)
		case parser.ControlModel:
			say("the model's heater", &loop.ModelPowerW, unit.Watts)
		}
	}
	return list
}

// oldSensor describes the sensor of the configuration in the words of a sheet.
func oldSensor(s *parser.Setting[parser.SensorDef]) group {
	g := group{header: "old.sensor"}
	d := &s.Value
	switch {
	case s.State == parser.Unknown:
		g.notes = []string{"Which sensor cannot be told: " + s.Why}
		return g
	case !s.Known():
		return g
	}
	if name := strings.TrimSpace(d.Name); name != "" {
		g.notes = append(g.notes, strings.TrimSpace("The configuration calls it "+name+". "+sentence(d.Note)))
	}
	switch d.Form {
	case parser.FormPlaceholder:
		g.notes = append(g.notes, "That is a dummy, which always reads "+unit.Celsius(d.FixedC)+".")
		return g
	case parser.FormNone:
		g.notes = append(g.notes, "That is no sensor.")
		return g
	}
	kind, curve := describe(d)
	if kind == parser.KindUnknown {
		g.notes = append(g.notes, "It stands for no curve that Preflash knows.")
		return g
	}
	g.entries = append(g.entries, set("kind", sheet.Quote(kind.String()), ""))
	if curve != nil {
		g.entries = append(g.entries, curve)
	}
	return g
}

// describe gives the kind of a definition and the entry that describes its
// curve; nil for a chip that reports a temperature.
func describe(d *parser.SensorDef) (parser.SensorKind, *Entry) {
	kind := d.Kind
	switch d.Form {
	case parser.FormAmplifier:
		return kind, nil
	case parser.FormCurve:
		k, ok := sensor.Find(d.Curve)
		if !ok {
			return parser.KindUnknown, nil
		}
		if kind == parser.KindUnknown {
			kind = k.Kind
		}
		return kind, set("curve", sheet.Quote(d.Curve), "")
	case parser.FormPoints:
		if k, ok := sensor.Find(d.Curve); ok && k.Kind == kind {
			return kind, set("curve", sheet.Quote(d.Curve), "")
		}
	case parser.FormBeta:
	default:
		return parser.KindUnknown, nil
	}
	if kind == parser.KindUnknown {
		kind = parser.NTC
	}
	if d.Form == parser.FormBeta && kind == parser.NTC && d.CubicC == 0 && within(d.R25Ohm, 1, 1e8) &&
		within(d.BetaK, 500, 10_000) {
		return kind, set("beta", fmt.Sprintf("{ r25_ohm = %s, b_k = %s }",
			parser.Decimal(d.R25Ohm), parser.Decimal(d.BetaK)), "")
	}
	c, err := sensor.OfDef(d)
	if err != nil {
		return parser.KindUnknown, nil
	}
	points := pointsOf(d, c.Curve)
	for i, p := range points {
		// The reader wants a curve that goes one way.
		if !within(p.TempC, -273, 1500) || !within(p.Ohm, 0.01, 1e8) || i > 0 &&
			!falls(points[i-1], p, kind == parser.NTC) {
			return parser.KindUnknown, nil
		}
	}
	list := make([]string, len(points))
	for i, p := range points {
		list[i] = "[" + parser.Decimal(p.TempC) + ", " + parser.Decimal(p.Ohm) + "]"
	}
	return kind, set("points", "["+strings.Join(list, ", ")+"]", "")
}

// falls reports whether the resistance goes the way of its kind from a point to
// the next, which is warmer.
func falls(a, b parser.SensorPoint, down bool) bool {
	if a.TempC >= b.TempC {
		return false
	}
	return down && b.Ohm < a.Ohm || !down && b.Ohm > a.Ohm
}

// pointsOf gives the points of a definition, or three on its curve: those of a
// Steinhart-Hart formula say all about it.
func pointsOf(d *parser.SensorDef, c sensor.Curve) []parser.SensorPoint {
	if d.Form == parser.FormPoints && d.Join == parser.JoinOhm && len(d.Points) >= 3 {
		points := slices.Clone(d.Points)
		slices.SortFunc(points, func(a, b parser.SensorPoint) int { return cmp.Compare(a.TempC, b.TempC) })
		return points
	}
	var points []parser.SensorPoint
	for _, t := range [...]float64{25, 150, 250} {
		points = append(points, parser.SensorPoint{TempC: t, Ohm: parser.Significant(c.Ohms(t), 7)})
	}
	return points
}

package starter

import (
	"fmt"
	"path"
	"strconv"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/patch"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// New makes the sheet of a configuration.
func New(f Facts) *Sheet {
	p := f.Printer
	check := "preflash check"
	if dir := path.Dir(f.Place); dir != "." {
		check += " " + patch.Typed(dir)
	}
	s := &Sheet{top: []string{
		"Swap sheet for " + f.Name + ", begun from its configuration.",
		"",
		"Save it as " + f.Place + "; the paths in it count from there. Fill in every line that says BLANK, " +
			"by hand or with preflash sheet --ask " + patch.Typed(f.Place) + ". Then run",
		"",
		"    " + check,
		"",
		"which names the blanks that are left. A key behind a # need not be set: it shows what holds " +
			"without it, or an example. To set it, take the # away.",
	}}
	if f.Hotends > 1 {
		s.top = append(s.top, "",
			fmt.Sprintf("This printer has %d hotends. Each that is exchanged has a sheet of its own, "+
				"which --tool 0 to --tool %d begins.", f.Hotends, f.Hotends-1))
	}
	s.groups = append(s.groups,
		group{entries: []*Entry{{Key: "format", Value: "1"}}},
		printerGroup(f),
		newGroup(), sensorGroup(), heaterGroup(), blockGroup(), fanGroup(p), nozzleGroup())
	s.groups = append(s.groups, oldGroups(p)...)
	s.groups = append(s.groups, tunedGroup(), doneGroup())
	for i := range s.groups {
		g := &s.groups[i]
		for _, e := range g.entries {
			if e.Path = e.Key; g.header != "" {
				e.Path = g.header + "." + e.Key
			}
		}
	}
	return s
}

func set(key, value, note string) *Entry { return &Entry{Key: key, Value: value, Note: note} }
func option(key, value, note string) *Entry {
	return &Entry{Key: key, Value: value, Note: note, off: true}
}

func blank(key, example, note string) *Entry {
	e := &Entry{Key: key, Value: `""`, Blank: true, Example: example, Note: note}
	if example[0] == '[' {
		e.Value = `["", ""]`
	}
	return e
}

// orLeave is a blank that may stay.
func orLeave(key, example, note string) *Entry {
	e := blank(key, example, note)
	e.Leave = true
	return e
}

func printerGroup(f Facts) group {
	config := set("config", quoteAll(f.Config), "")
	if f.Guess {
		config.Note = "these were found, not named: see that they are all, " +
			"in the order in which they are read"
	}
	g := group{header: "printer", entries: []*Entry{
		set("name", sheet.Quote(f.Name), ""),
		set("style", sheet.Quote(f.Printer.Style), ""),
		config,
	}}
	if len(f.Absent) > 0 {
		g.entries = append(g.entries, set("absent", quoteAll(f.Absent),
			"included, but not found: add the file, or leave it here if it lives elsewhere"))
	}
	g.entries = append(g.entries,
		tool(f),
		zReference(f.Printer),
		blank("supply_v", "24.0", "Voltage of the supply that feeds the heater: its label, "+
			"or a voltmeter at the board."),
		orLeave("supply_w", "350.0", "Power that the supply is rated for: its label, in W, or V times A. "+
			"Without it, its load is not judged."),
		orLeave("other_load_w", "220.0", "All else on that supply at full load: bed, motors, board, fans. "+
			"Labels, or V²/R for the bed. Without it, 0 is taken."),
		orLeave("output_a", "5.0", "What the heater output is rated for, in A: the lowest of its "+
			"transistor, fuse and connector, from the board's papers. Without it, "+
			"the current is not judged."),
		pullup(f.Printer),
		option("adc_bits", "12", "of the converter; 10 on most 8-bit boards"),
		option("ambient_c", "22", "the room, °C"),
	)
	return g
}

// pullup is asked for where the configuration does not tell it and a wrong one
// would show: a definition that is made for another than the usual one, and
// platinum whose pull-up nobody wrote down.
func pullup(p *parser.Printer) *Entry {
	const note = "Resistor above the sensor, in ohm: the board's papers. "
	own, s := &p.Hotend.PullupOhm, &p.Hotend.Sensor
	d := &s.Value
	switch {
	case own.State == parser.Set:
		return option("pullup_ohm", parser.Decimal(own.Value), "resistor above the sensor, as configured")
	case own.State == parser.Default && s.Known() && d.Kind == parser.Platinum:
		return blank("pullup_ohm", parser.Decimal(own.Value),
			note+"The configuration does not say, and the firmware takes "+parser.Decimal(own.Value)+" then.")
	case own.State == parser.Absent && s.Known() && d.PullupOhm > 0 && d.PullupOhm != sensor.UsualPullupOhm:
		return blank("pullup_ohm", parser.Decimal(d.PullupOhm),
			note+"The sensor definition "+d.Name+" is made for "+parser.Decimal(d.PullupOhm)+
				"; most boards have "+parser.Decimal(sensor.UsualPullupOhm)+".")
	}
	return option("pullup_ohm", parser.Decimal(sensor.UsualPullupOhm),
		"resistor above the sensor: the board's papers")
}

// zReference is what homes Z, as far as the configuration tells.
func zReference(p *parser.Printer) *Entry {
	const words = `"probe", "endstop", or "nozzle" where the nozzle itself touches the bed`
	g := &p.Geometry
	homes, t := &g.Homes, &g.TriggerMM
	by := "what finds the bed: the configuration homes Z by " + homes.Value.String()
	if !homes.At.IsZero() {
		by += " (" + homes.At.String() + ")"
	}
	switch {
	case homes.Known() && homes.Value == parser.HomesFar:
		return set("z_reference", `"endstop"`, by)
	case homes.Known() && g.HomesByStall:
		return blank("z_reference", `"nozzle"`,
			"What finds the bed: "+words+". The configuration homes Z where its "+
				"motor stalls ("+homes.At.String()+"): as a rule the nozzle presses on the bed then. Look.")
	case homes.Known() && homes.Value != parser.HomesByProbe:
		return set("z_reference", `"endstop"`, by+`; "nozzle" where the nozzle itself presses it`)
	case homes.Known() && g.NozzleProbes.Known() && g.NozzleProbes.Value:
		return set("z_reference", `"nozzle"`, by+", which is the nozzle itself")
	case homes.Known() && t.Known() && t.Value <= 0 && !g.BesideNozzle:
		return blank("z_reference", `"nozzle"`,
			"What finds the bed: "+words+". The configuration homes Z by a probe that is written neither "+
				"beside nor below the nozzle ("+
				unit.Figure(t.Value, 3)+" mm at "+t.At.String()+"): evidence, not proof, that the nozzle is "+
				"the probe. Look.")
	case homes.Known():
		return set("z_reference", `"probe"`, by+`; "nozzle" where the nozzle itself is that probe`)
	case t.State == parser.Set:
		return blank("z_reference", `"probe"`, "What finds the bed: "+words+". There is a probe, "+
			"and the configuration does not say whether it homes Z or only levels the bed.")
	}
	return blank("z_reference", `"endstop"`, "What finds the bed: "+words+".")
}

// tool says which hotend the sheet is for, and which others there are.
func tool(f Facts) *Entry {
	note := "which hotend, counted from 0"
	if f.Hotends > 1 {
		note = fmt.Sprintf("which of %d hotends, counted from 0", f.Hotends)
	}
	return set("tool", strconv.Itoa(f.Printer.Tool), note)
}

func newGroup() group {
	return group{header: "new", notes: []string{"The hotend that goes in."}, entries: []*Entry{
		option("use", `"../hotends/NAME.toml"`, "a file with the keys of [new], for several printers; "+
			"delete here what it gives"),
		option("name", `"brass block, new bead"`, "how you call it"),
		blank("rated_c", "285", "Lowest rating of any part that gets hot (heat break, block, heater, "+
			"nozzle): the maker's data. Where the data leave a part out, take the lowest figure that is "+
			"sold for such a part."),
		blank("print_c", "[190, 250]", "Lowest and highest temperature that you will ask it for."),
		blank("liner", `"none"`,
			`"ptfe" where a PTFE tube reaches down into the part that gets hot, `+
				`which limits everything to 240 °C; "none" where the heat break is metal all through. `+
				`Look into it from above.`),
		option("cutoff_c", "280", "where something independent of the firmware cuts the heater, "+
			"such as a thermal fuse"),
	}}
}

func heaterGroup() group {
	return group{header: "new.heater", entries: []*Entry{
		blank("kind", `"cartridge"`,
			`"cartridge", or "ptc" for a ring or plate whose power falls as it gets hot.`),
		blank("rated_v", "24.0", "Its voltage: on the label, the bag, or engraved in the steel."),
		blank("rated_w", "50.0", "Cartridge: ohmmeter across its two wires, cold and off the board; "+
			"P = V²/R, with V = rated_v: 24 V and 11.5 Ω make 50 W. "+
			"Subtract what the meter shows with its tips together. "+
			"PTC: the label; its cold reading says little."),
		hotPower(),
		option("duty_limit", "1.0", "highest duty that its maker or you allow"),
	}}
}

// hotPower is what the label of a PTC heater does not tell.
func hotPower() *Entry {
	e := option("hot_w", "[[25, 48], [200, 30], [300, 22]]",
		"PTC only, and needed there: its power hot, W at °C at rated_v, two points at least; "+
			"measure the current while it heats")
	e.PTC = true
	return e
}

func blockGroup() group {
	return group{header: "new.block",
		notes: []string{"Figures of the block; these are assumed where none are given."}, entries: []*Entry{
			option("heat_capacity_j_per_k", "16.7", ""),
			option("loss_w_per_k", "0.068", "part fan off"),
			option("loss_fan_w_per_k", "0.097", "part fan full"),
			option("sensor_lag_s", "4.5", ""),
		}}
}

func fanGroup(p *parser.Printer) group {
	alwaysOn := option("always_on", "false", "true where it is wired to the supply")
	if f := &p.ColdSide.Fan; f.State == parser.Off {
		alwaysOn.Note = "true where it is wired to the supply; the configuration drives no heat-break fan " +
			"for this hotend"
	}
	return group{header: "new.fan", notes: []string{"The small fan on the heat break."}, entries: []*Entry{
		orLeave("rated_v", "24.0", "Its voltage: the label. Without it, the voltage is not judged."),
		option("wires", "2", ""),
		option("output_v", `24.0`, "what the fan's output gives; supply_v when absent"),
		alwaysOn,
		option("on_above_c", "50", "it must run from here on"),
	}}
}

func nozzleGroup() group {
	return group{header: "new.nozzle", entries: []*Entry{
		orLeave("diameter_mm", "0.4", "The mark on the nozzle."),
		orLeave("tip_shift_mm", "0.8", "How much lower the new tip sits, in mm, below 0 where it sits "+
			"higher: measure both hotends from the face that they are mounted with to the tip of the "+
			"nozzle. Without it the height is an open error until it is measured again (done.height_on)."),
		option("max_flow_mm3_s", "11", "what it melts: the maker's data, or your own trials"),
	}}
}

func tunedGroup() group {
	return group{header: "tuned", notes: []string{"The tune made on the new hotend, once it is made."},
		entries: []*Entry{
			option("at_c", "220", ""),
			option("kp", "21.7", ""),
			option("ki", "1.4", ""),
			option("kd", "84.0", ""),
			option("on", "2026-10-02", "the day"),
		}}
}

func doneGroup() group {
	return group{header: "done", notes: []string{"What ends the swap."}, entries: []*Entry{
		option("height_on", "2026-10-02", "the day on which the nozzle's height was measured again"),
	}}
}

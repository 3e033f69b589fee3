package worklist

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules"
	"preflash/rules/unit"
)

// Steps of the nozzle on its way to the paper, mm.
const (
	coarseMM = 1
	fineMM   = 0.1
)

// height measures where the nozzle is, by what homes; and how far the tools are
// apart, where there are several.
func (b *builder) height() []Section {
	tools := b.otherTools()
	s := Section{
		Title: "Nozzle height",
		Note:  "The tip is at another height than before, whatever was measured beforehand.",
		Items: []Item{{
			Do: fmt.Sprintf("Heat to %s, switch the power off, and tighten the nozzle at once, "+
				"as its maker says.", unit.Celsius(rules.TuneC(b.in))),
			Expect: "no gap that filament could leave by. This comes before the height is measured, " +
				"since it moves the tip",
			Steps: b.heatTo(rules.TuneC(b.in)),
		}, {
			Do:     "Let it cool to the room, then power on.",
			Expect: "no target is set",
			Steps:  b.restart(),
		}},
	}
	if b.another() {
		s.Note += " The first tool homes, and its height stays (where another one does, measure with that)."
		s.add(b.homeAndRaise("as before the swap, with the first tool"))
		return []Section{s, b.apart()}
	}
	s.add(b.fetch()...)
	reference := b.reference()
	switch says, homes := b.in.Sheet.Printer.ZReference, &b.in.Printer.Geometry.Homes; {
	case !says.Given:
	case says.Value != reference:
		s.add(Item{
			Do: fmt.Sprintf("The sheet says that the %s finds the bed; by the files it is the %s, "+
				"and the steps below are for that. See which it is, and correct the sheet%s.", says.Value,
				reference, place(homes.At)),
			Expect: "what moves, or clicks, as Z homes",
		})
	case !homes.Known():
		s.add(Item{
			Do: fmt.Sprintf("Look at what finds the bed. The sheet says the %s, and the steps below are "+
				"for that; the files do not tell.", says.Value),
			Expect: map[string]string{"probe": "a probe at the head, beside the nozzle",
				"endstop": "a switch on the Z axis",
				"nozzle":  "a nozzle that feels the bed itself"}[says.Value],
			Else: "correct the sheet, and print this list again before anything homes",
		})
	}
	switch reference {
	case "nozzle":
		home := b.homeAndRaise("the nozzle touches the bed and stops there, then goes up. " +
			"It is its own probe: its length changes no height in the files, only what force it takes")
		home.Do = "Wipe the nozzle clean and home; hand at the switch."
		s.add(home)
	case "probe":
		s.add(b.byProbe()...)
	case "endstop":
		s.add(b.byEndstop()...)
	default:
		s.add(Item{
			Do: "The sheet does not say what finds the bed (z_reference). Bring the nozzle down by " +
				"hand, power off, and see what would touch first.",
			Expect: "probe or endstop, not the nozzle; write it in the sheet and print this list again",
		})
	}
	if t := &b.in.Printer.Geometry.TriggerMM; t.State != parser.Off {
		s.add(Item{
			Do:     "Have the bed measured again where a mesh, or the tilt of the bed, was stored.",
			Expect: "those from before the swap belong to the old height",
		})
	}
	if tools > 0 {
		return []Section{s, b.apart()}
	}
	return []Section{s}
}

// reference is what finds the bed, as rule tip-shift has it: what homes by the
// files, else what the sheet says.
func (b *builder) reference() string {
	g, says := &b.in.Printer.Geometry, b.in.Sheet.Printer.ZReference.Value
	finds := says
	if g.Homes.Known() {
		switch {
		case says == "nozzle" && g.Homes.Value != parser.HomesFar:
			return says
		case g.Homes.Value != parser.HomesByProbe:
			return "endstop"
		}
		finds = "probe"
	}
	if finds == "probe" && g.NozzleProbes.Known() && g.NozzleProbes.Value {
		return "nozzle"
	}
	return finds
}

// another reports whether another tool homes, so that the height of this one is
// its distance from that.
func (b *builder) another() bool {
	return b.in.Printer.Tool > 0 && b.otherTools() > 0 && b.reference() != "nozzle"
}

// heights are the settings that hold how high this nozzle is, as far as they are
// known and are measured.
func (b *builder) heights() (list []parser.Setting[float64]) {
	g := &b.in.Printer.Geometry
	reference := b.reference()
	switch {
	case b.another():
		list = append(list, g.Offsets...)
	case reference == "endstop":
		list = append(list, g.EndstopMM...)
	}
	if !b.another() && reference != "nozzle" && !(g.NozzleProbes.Known() && g.NozzleProbes.Value) {
		list = append(list, g.TriggerMM)
	}
	return slices.DeleteFunc(list, func(s parser.Setting[float64]) bool { return !s.Known() })
}

// endstop is the height at which the switch triggers that homes; absent where no
// setting holds it.
func (b *builder) endstop() *parser.Setting[float64] {
	if list := b.in.Printer.Geometry.EndstopMM; len(list) > 0 {
		return &list[0]
	}
	return new(parser.Setting[float64])
}

// nozzleSeems reports whether by its figures the nozzle is the probe, which is
// evidence and no proof.
func (b *builder) nozzleSeems() bool {
	g := &b.in.Printer.Geometry
	return g.TriggerMM.Known() && g.TriggerMM.Value <= 0 && !g.BesideNozzle
}

// otherTools counts the other hotends; several tools that feed one nozzle have no
// distance.
func (b *builder) otherTools() int { return max(b.in.Config.Hotends()-1, 0) }

// fetch takes the tool where that needs a step.
func (b *builder) fetch() []Item {
	if b.otherTools() == 0 {
		return nil
	}
	return []Item{{
		Do:     fmt.Sprintf("Home, and take tool %d; hand at the switch.", b.in.Printer.Tool),
		Expect: "the new hotend is the one to work with",
		Steps: slices.Concat(b.steps(parser.Task{Kind: parser.TaskHome}), b.raise(b.clear("")),
			b.steps(parser.Task{Kind: parser.TaskSelect})),
	}}
}

func (b *builder) home(expect string) Item {
	return Item{
		Do:     "Nozzle wiped clean, nozzle and bed at room temperature. Home; hand at the switch.",
		Expect: expect,
		Steps:  b.steps(parser.Task{Kind: parser.TaskHome}),
	}
}

// homeAndRaise homes and does not leave the nozzle at the bed.
func (b *builder) homeAndRaise(expect string) Item {
	item := b.home(expect)
	item.Steps = append(item.Steps, b.raise(parser.LeastClearMM)...)
	return item
}

// raise lifts the nozzle clear of the bed after homing, which may leave it there.
// Where it homes far from the bed it stays there.
func (b *builder) raise(mm float64) []string {
	if b.homesFar() {
		return nil
	}
	return b.steps(parser.Task{Kind: parser.TaskRaise, LengthMM: mm})
}

func (b *builder) homesFar() bool {
	g := &b.in.Printer.Geometry
	return g.Towers || g.Homes.Known() && g.Homes.Value == parser.HomesFar
}

func (b *builder) byProbe() []Item {
	var items []Item
	g := &b.in.Printer.Geometry
	t := &g.TriggerMM
	if b.nozzleSeems() {
		items = append(items,
			b.look("write z_reference = \"nozzle\" in the sheet and leave the height as it stands"))
	}
	height, told := b.expected(t)
	if told && height <= 0 && !b.nozzleSeems() {
		items = append(items, Item{
			Do: fmt.Sprintf("Move the probe down by more than %s before anything homes.",
				unit.Millimetres(-height)),
			Expect: "the probe is the first to touch: by what the sheet says, the nozzle would be",
		})
	}
	items = append(items, b.home("the probe triggers before the nozzle touches"))
	return append(items, b.paper(parser.ProbeTrigger, b.about(t, "it"))...)
}

// look has a person see whether the nozzle is the probe, and says what to do then.
func (b *builder) look(then string) Item {
	t := &b.in.Printer.Geometry.TriggerMM
	return Item{
		Do: fmt.Sprintf("Look whether the nozzle itself is the probe: a trigger height of %s%s with no "+
			"distance in X and Y speaks for it.", unit.Millimetres(t.Value), place(t.At)),
		Expect: "where it is, " + then,
	}
}

func (b *builder) byEndstop() []Item {
	var items []Item
	g, shift := &b.in.Printer.Geometry, &b.in.Sheet.New.Nozzle.TipShiftMM
	height, told := b.expected(b.endstop())
	switch {
	case b.homesFar():
		items = append(items, Item{
			Do: "It homes far from the bed, where nothing can strike. The danger is the first move " +
				"down: stay at the switch, and let nothing print before the height is measured.",
			Expect: "the nozzle stops well above the bed" + b.lowerThan(),
		})
	case told && height > 0:
		items = append(items, Item{
			Do: fmt.Sprintf("Look at the switch that homes: it should trigger with the nozzle about %s "+
				"above the bed (%s before%s).", unit.Millimetres(height), unit.Millimetres(b.endstop().Value),
				place(b.endstop().At)),
			Expect: "the bed is clear by that much",
		})
	case !shift.Given || shift.Value >= 0:
		item := Item{
			Do: "Before the first homing, lower the bed or move the endstop so far " +
				"that the nozzle stays clear.",
			Expect: "the endstop triggers before the nozzle touches" + b.lowerThan(),
		}
		if shift.Given && shift.Value > 0 {
			item.Else = "without that the nozzle strikes the bed"
		}
		items = append(items, item)
	}
	items = append(items, b.home("the endstop triggers, and the nozzle touches nothing"))
	if g.Towers {
		end := b.about(b.endstop(), "the end of the towers' travel")
		items = append(items, b.paper(parser.TowerHeight, end)...)
	} else {
		items = append(items, b.paper(parser.Endstop(""), b.about(b.endstop(), "it"))...)
	}
	probe := g.TriggerMM.State != parser.Off && g.TriggerMM.State != parser.Absent
	if probe && !(g.NozzleProbes.Known() && g.NozzleProbes.Value) {
		if b.nozzleSeems() {
			items = append(items,
				b.look("leave its height as it stands, and the steps from here to the flow test out"))
		}
		items = append(items, Item{
			Do: "The probe only levels, but its trigger height has changed as well. Home again, " +
				"and measure it in the same way.",
			Expect: "the probe triggers before the nozzle touches",
			Steps:  b.steps(parser.Task{Kind: parser.TaskHome}),
		})
		items = append(items, b.paper(parser.ProbeTrigger, b.about(&g.TriggerMM, "it"))...)
	}
	return items
}

// lowerThan says where the new tip sits, if the sheet does.
func (b *builder) lowerThan() string {
	if shift := &b.in.Sheet.New.Nozzle.TipShiftMM; shift.Given {
		return "; the tip sits " + lower(shift.Value)
	}
	return ""
}

// expected is a height as the new tip has it, mm; false where it cannot be told.
func (b *builder) expected(s *parser.Setting[float64]) (float64, bool) {
	shift := &b.in.Sheet.New.Nozzle.TipShiftMM
	return math.Round((s.Value-shift.Value)*1000) / 1000, s.Known() && shift.Given
}

// about says what a height should be about.
func (b *builder) about(s *parser.Setting[float64], it string) string {
	shift := &b.in.Sheet.New.Nozzle.TipShiftMM
	switch height, told := b.expected(s); {
	case told && height > 0:
		return fmt.Sprintf("%s comes to about %s (%s before%s, and the tip sits %s)", it,
			unit.Millimetres(height), unit.Millimetres(s.Value), place(s.At), lower(shift.Value))
	case told:
		return "it is above 0 mm, since probe or switch was moved"
	case s.Known():
		return fmt.Sprintf("before the swap it was %s%s, and the sheet does not say how far the "+
			"tip is shifted", unit.Millimetres(s.Value), place(s.At))
	}
	return "the files hold no height to compare with"
}

// paper measures a height with paper, and keeps it.
func (b *builder) paper(figure parser.Key, expect string) []Item {
	step := func(kind parser.TaskKind, mm float64) []string {
		return b.steps(parser.Task{Kind: kind, Figure: figure, LengthMM: mm})
	}
	items := []Item{{
		Do:     "Begin to measure; hand at the switch.",
		Expect: "the nozzle stands over the middle of the bed, clear of it",
		Steps:  step(parser.TaskBeginPaper, b.clear(figure)),
	}, {
		Do: "Lay a sheet of paper (0.1 mm) under the nozzle and keep it moving. Lower by 1 mm, " +
			"again and again, until the nozzle is close to the paper.",
		Expect: "a gap of about a millimetre",
		Steps:  step(parser.TaskLower, coarseMM),
	}, {
		Do: "Then by 0.1 mm, again and again, until the paper just drags.",
		Expect: "the paper can be pulled and not pushed; if the nozzle never reached it, the height would " +
			"be wrong by what is left",
		Else: "leave off (" + strings.Join(step(parser.TaskAbortPaper, 0), ", then ") +
			") and begin again" + b.outOfRange(figure),
		Steps: step(parser.TaskLower, fineMM),
	}, {
		Do:     "Only with the paper dragging: take the height.",
		Expect: expect,
		Steps:  step(parser.TaskEndPaper, b.clear(figure)),
		Note:   []Reading{{"height", "mm"}},
	}}
	if figure == parser.TowerHeight && !b.in.Config.Keep(figure).Less {
		items[0].Expect += ". Of several points, do the next three for each one that it goes to"
	}
	if figure == "" {
		return items
	}
	items = append(items, b.keep("the height", figure))
	if !b.keepsNothing() {
		if t := &b.in.Printer.Geometry.TriggerMM; figure == parser.ProbeTrigger && !t.At.IsZero() {
			items = append(items, Item{Do: "Write the same height in the files" + place(t.At) +
				": there it has the sign that the option has now.",
				Expect: "it holds after the next flash and the next reset too"})
		}
		items = append(items, b.homeAndRaise("as before; the paper drags at a height of 0"))
	}
	return items
}

// farMM is how far above the bed to cross it where it is not known how far the tip
// is shifted, and homing does not show it, mm.
const farMM = 40

// clear is how far above the bed the nozzle may cross it, by the old height, mm. A
// tool without its distance may hang lower by that.
func (b *builder) clear(figure parser.Key) float64 {
	shift := &b.in.Sheet.New.Nozzle.TipShiftMM
	mm := float64(parser.LeastClearMM)
	if figure == "" {
		mm += b.distance()
	}
	switch {
	case shift.Given:
		return mm + math.Ceil(max(shift.Value, 0))
	case b.homesFar():
		return mm + farMM
	}
	return mm
}

// distance is how far the tools are apart in Z at most, mm.
func (b *builder) distance() (mm float64) {
	for i := range b.in.Printer.Geometry.Offsets {
		if o := &b.in.Printer.Geometry.Offsets[i]; o.Key == parser.Offset("z") && o.Known() {
			mm = math.Ceil(math.Abs(o.Value))
		}
	}
	return mm
}

// outOfRange says where the way down ends.
func (b *builder) outOfRange(figure parser.Key) string {
	s, shift := &b.in.Printer.Geometry.LowestMM, &b.in.Sheet.New.Nozzle.TipShiftMM
	need := -1.0
	if shift.Given {
		need = min(need, math.Floor(shift.Value-1)) // a tip that sits higher is lowered further
	}
	if figure == "" {
		need -= b.distance()
	}
	if !s.Known() || s.Value <= need {
		return ""
	}
	return fmt.Sprintf("; where a move is refused because it goes too low: it ends at %s%s, "+
		"so write %s there first and restart", unit.Millimetres(s.Value), place(s.At), unit.Millimetres(need))
}

// lower says a shift of the tip in words.
func lower(shift float64) string {
	switch {
	case shift > 0:
		return unit.Millimetres(shift) + " lower"
	case shift < 0:
		return unit.Millimetres(-shift) + " higher"
	}
	return "where the old one sat"
}

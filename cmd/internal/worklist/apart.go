package worklist

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/rules/unit"
)

// apart measures how far the tools are apart: each one after the swap from the
// first.
func (b *builder) apart() Section {
	s := Section{
		Title: "Distances between the tools",
		Note: "They were measured with the old hotend. Wrong in Z, one nozzle strikes what the other " +
			"printed; wrong in X and Y, it prints beside it.",
	}
	own, g := b.in.Printer.Tool, &b.in.Printer.Geometry
	var list []string
	for i := range g.Offsets {
		if o := &g.Offsets[i]; o.Known() {
			list = append(list, string(o.Key)+" "+unit.Millimetres(o.Value)+place(o.At))
		}
	}
	now := "They stand in the files or in macros where Preflash does not look."
	if len(list) > 0 {
		now = "Now: " + strings.Join(list, ", ") + "."
	}
	s.add(Item{
		Do: fmt.Sprintf("Home, take tool %d without its distance in Z, and measure its height "+
			"as below. %s", own, now),
		Expect: "it is fetched whole, and nothing strikes",
		Steps:  b.bare(own, 0),
	})
	items := b.paper("", "write it down; nothing is stored by this")
	items[len(items)-1].Note = []Reading{{fmt.Sprintf("tool %d", own), "mm"}}
	s.add(items...)
	last := own
	for _, other := range b.fromFirst() {
		s.add(Item{
			Do: fmt.Sprintf("The same with tool %d: home, take it without its distance, "+
				"and do the four steps again.", other),
			Expect: "the paper drags as much as before",
			Steps:  b.bare(other, last),
			Note:   []Reading{{fmt.Sprintf("tool %d", other), "mm"}},
		})
		s.add(b.setDistance(max(own, other))...)
		last = other
	}
	s.add(Item{
		Do:     "Print one layer with each tool, side by side; hand at the switch.",
		Expect: "both are pressed to the bed alike",
		Else: "where one is off by twice its distance, the sign was the wrong one; where by the distance " +
			"itself, it is not used",
	}, Item{
		Do: "Print a cross with each tool, one over the other, " +
			"and correct X and Y by what they are apart.",
		Expect: "lines that meet",
		Note:   []Reading{{"X", "mm"}, {"Y", "mm"}},
	})
	return s
}

// fromFirst are the tools to compare this one with: the first, or from it all
// others.
func (b *builder) fromFirst() (list []int) {
	if b.in.Printer.Tool > 0 {
		return []int{0}
	}
	for n := range b.otherTools() {
		list = append(list, n+1)
	}
	return list
}

// bare homes and takes a tool without its distance, which the one in use gives way
// to. It is the first that homes, as its height is the one in the files, and a tool
// that hangs lower is taken with the nozzle clear of the bed.
func (b *builder) bare(tool, inUse int) (steps []string) {
	take := func(n int) []string {
		return b.in.Config.Steps(parser.Task{Kind: parser.TaskSelectBare, Tool: n})
	}
	if inUse != 0 {
		steps = take(0)
	}
	steps = slices.Concat(steps, b.steps(parser.Task{Kind: parser.TaskHome}), b.raise(b.clear("")))
	if tool != 0 || inUse == 0 {
		steps = append(steps, take(tool)...)
	}
	return steps
}

// setDistance writes the distance in Z of a tool from the first. Its sign where it
// says how far the nozzle is lifted is the firmware's; where it says where the
// nozzle sits, up is positive from memory.
func (b *builder) setDistance(tool int) []Item {
	g, shift := &b.in.Printer.Geometry, &b.in.Sheet.New.Nozzle.TipShiftMM
	item := Item{Expect: "it differs from the old one by as much as the tip has moved"}
	if shift.Given {
		item.Expect = fmt.Sprintf("it differs from the old one by %s, since the tip sits %s",
			unit.Millimetres(math.Abs(shift.Value)), lower(shift.Value))
	}
	at := ""
	for i := range g.Offsets {
		if o := &g.Offsets[i]; o.Key == parser.Offset("z") && max(b.in.Printer.Tool, 1) == tool {
			at = place(o.At)
		}
	}
	item.Note = []Reading{{"distance in Z", "mm"}}
	if g.OffsetsLift {
		item.Do = fmt.Sprintf("Write the distance in Z of tool %d where it stands%s: its height less that "+
			"of tool 0. Above 0 it lifts the nozzle.", tool, at)
		item.Steps = b.restart()
		return []Item{item}
	}
	item.Do = fmt.Sprintf("Set the distance in Z of tool %d, and write it in the files%s: "+
		"the height of tool 0 less its own. A nozzle that hangs lower has one below 0.", tool, at)
	item.Steps = b.in.Config.Steps(parser.Task{Kind: parser.TaskSetOffset, Tool: tool})
	return []Item{item, b.keep("the distance", parser.Offset("z"))}
}

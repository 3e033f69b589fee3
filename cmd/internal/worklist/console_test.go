package worklist_test

import (
	"fmt"
	"math"
	"path/filepath"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/worklist"
	"preflash/rules"
)

// console is what a printer makes of console commands, by tables of what each
// firmware publishes, written without the steps.
type console interface {
	// enter runs one command, and says why the printer refuses it, why it does
	// not do what it is there for, or what it harms.
	enter(line string) error
	// by does by hand what an item says, before its commands; after, what it says
	// of the time after them.
	by(do string) error
	after(do string) error
	// above is how far the nozzle is from the paper, mm.
	above() float64
	// further tells that the height is asked at one more point.
	further() bool
	// end says what must not be left as it is; settled, whether the figures in force
	// put the nozzle on the paper at a height of 0.
	end() error
	settled() error
	lift()
}

// A cold nozzle may stand so close to the bed, and not cross it; a hot one, or
// one that pushes filament, has to be further up (common practice, no source).
const (
	closeMM = 1.0
	clearMM = 5.0
)

// strikesMM is how far into the paper the nozzle may press it, and how well a
// height is measured, mm (common practice, no source).
const strikesMM = 0.15

// roomC is what a cold block shows.
const roomC = 22.0

// machine is what both kinds of printer have.
type machine struct {
	shift   float64 // the new tip is so much lower, mm
	swapped int     // the tool that has it
	own     string  // its heater
	rated   float64 // what the new hotend is good for, °C

	gap             float64 // from the active nozzle down to the paper, mm
	lifted          bool    // somebody looked to that, or it homed; before it may stand on the bed
	homed, over     bool    // over: since then it was moved over the bed
	tool            int
	heights         map[int]float64    // the height at which a tool's nozzle reached the paper
	targets         map[string]float64 // those above 0, by heater
	warm            map[string]float64 // what the heater got to, since somebody waited
	hot             bool               // something was heated, and nobody let it cool
	speed           float64            // at which an item says that filament is pushed, mm/s
	dried           bool               // the block was warmed from outside
	noWire, noProbe bool               // heater or sensor are unplugged
	halted          string             // why the firmware stopped, "" where it works
}

func newMachine(shift float64, swapped int) machine {
	m := machine{shift: shift, swapped: swapped, rated: math.Inf(1), gap: 100, heights: map[int]float64{}}
	m.off()
	return m
}

func (m *machine) above() float64 { return m.gap }

// lift is done by hand, before anything homed.
func (m *machine) lift() { m.gap, m.lifted = 100, true }

// off is what a restart does, with or without the power.
func (m *machine) off() {
	m.homed, m.targets, m.warm = false, map[string]float64{}, map[string]float64{}
}

// heat sets a target. With the heater or its sensor unplugged the firmware has to
// trip: stops tells that a watch sees it.
func (m *machine) heat(heater string, targetC float64, stops bool) error {
	delete(m.warm, heater)
	delete(m.targets, heater)
	switch {
	case !(targetC >= 0):
		return fmt.Errorf("no target")
	case targetC == 0:
		return nil
	case heater != m.own && !strings.Contains(heater, "bed"):
		return fmt.Errorf("%s is another hotend's heater", heater)
	case heater == m.own && targetC > m.rated:
		return fmt.Errorf("the hotend is good for no more than %g °C", m.rated)
	case (m.noWire || m.noProbe) && !stops:
		return fmt.Errorf("no watch sees that nothing heats")
	case m.noWire || m.noProbe:
		m.halted = "the protection"
		return nil
	case !m.lifted && heater == m.own:
		return fmt.Errorf("the nozzle may stand on the bed as it heats up")
	case m.gap < clearMM:
		return fmt.Errorf("the nozzle heats up %.1f mm above the bed", m.gap)
	}
	m.targets[heater], m.hot = targetC, true
	return nil
}

func (m *machine) wait() {
	for heater, targetC := range m.targets {
		m.warm[heater] = targetC
	}
}

var speedSaid = regexp.MustCompile(`([0-9.]+) mm/s`)

// pushes: F is in mm/min (from memory), and has to be the speed that the item says.
func (m *machine) pushes(args map[string]string) error {
	if feed, given := args["F"]; given && math.Abs(figureOf(feed)/60-m.speed) > 0.06 {
		return fmt.Errorf("F%s is not %g mm/s", feed, m.speed)
	}
	return nil
}

// hand is what an item says of wires, heat and the bed. A printer that cools for
// so long lets go of its motors (sections: after 600 s; defines: from memory).
func (m *machine) hand(do string) {
	if strings.Contains(do, "cool to the room") {
		m.homed, m.hot = false, false
	}
	m.speed = math.NaN()
	if said := speedSaid.FindStringSubmatch(do); said != nil {
		m.speed = figureOf(said[1])
	}
	m.dried = strings.Contains(do, "hair dryer")
	if strings.Contains(do, "Lift the nozzle") {
		m.lift()
	}
	switch {
	case strings.Contains(do, "plug heater and sensor in"):
		m.noWire, m.noProbe = false, false
	case strings.Contains(do, "Unplug the heater"):
		m.noWire = true
	case strings.Contains(do, "unplug the sensor"):
		m.noProbe = true
	}
}

// moved is the nozzle after a move.
func (m *machine) moved(crosses bool) error {
	switch {
	case math.IsNaN(m.gap):
		return fmt.Errorf("nobody knows where to")
	case m.gap < -strikesMM:
		return fmt.Errorf("the nozzle strikes the bed")
	case crosses && m.gap < closeMM:
		return fmt.Errorf("the nozzle is drawn over the bed at %.1f mm", m.gap)
	}
	return nil
}

// cold: a height is measured with nozzle and bed at room temperature.
func (m *machine) cold() error {
	switch {
	case len(m.targets) > 0:
		return fmt.Errorf("a height is measured with a heater on: %v", m.targets)
	case m.hot:
		return fmt.Errorf("a height is measured before nozzle and bed are cold")
	}
	return nil
}

// wired: nothing moves as long as wires hang loose (common practice, no source).
func (m *machine) wired() error {
	if m.noWire || m.noProbe {
		return fmt.Errorf("it moves with the wires of heater or sensor unplugged")
	}
	return nil
}

func (m *machine) left() error {
	switch {
	case len(m.targets) > 0:
		return fmt.Errorf("a heater is left on: %v", m.targets)
	case m.noWire || m.noProbe:
		return fmt.Errorf("heater or sensor are left unplugged")
	case m.halted != "":
		return fmt.Errorf("the firmware is left stopped by %s", m.halted)
	}
	return nil
}

var fillIn = regexp.MustCompile(`<[^>]*>`)

// work goes through a list as a person does: every step in order, those that are
// to be repeated until the paper is reached, the height at each point that is asked
// for, and the four steps of one tool again with another.
func work(t *testing.T, c console, list *worklist.List) (commands int) {
	t.Helper()
	measured := false
	for _, s := range list.Sections {
		if strings.Contains(s.Note, "away from the bed") {
			c.lift()
		}
		begin := 0
		for at := range s.Items {
			items := s.Items[at : at+1 : at+1]
			switch do := items[0].Do; {
			case strings.Contains(do, "Begin to measure"):
				begin = at
			case strings.Contains(do, "do the four steps again"):
				items = append(items, s.Items[begin:begin+4]...)
			}
			measured = measured || strings.Contains(items[0].Do, "take the height")
			for points := 0; len(items) > 0; items = items[1:] {
				n, err := workItem(c, items[0])
				if commands += n; err != nil {
					t.Errorf("%s: %s: %v", s.Title, items[0].Do, err)
					return commands
				}
				if c.further() && strings.Contains(items[0].Do, "take the height") && points < 20 {
					points++
					items = append(items, s.Items[begin+1:begin+4]...) // "do the next three for each one"
				}
			}
		}
	}
	if err := c.end(); err != nil {
		t.Errorf("at the end %v", err)
	}
	if err := c.settled(); measured && err != nil {
		t.Errorf("at the end %v", err)
	}
	return commands
}

// workItem does one item.
func workItem(c console, item worklist.Item) (commands int, err error) {
	if err := c.by(item.Do); err != nil {
		return 0, err
	}
	again := func() bool { return false }
	if strings.Contains(item.Do, "again and again") {
		far := 0.0
		if strings.Contains(item.Do, "close to the paper") {
			far = 1.5
		}
		again = func() bool { return c.above() > far+1e-9 }
	}
	for _, step := range item.Steps {
		for n := 0; n == 0 || again(); n++ {
			commands++
			if err := c.enter(step); err != nil {
				return commands, fmt.Errorf("%s: %w", step, err)
			}
			if n > 400 {
				return commands, fmt.Errorf("%s does not get to the paper", step)
			}
		}
	}
	return commands, c.after(item.Do)
}

// Every sequence that a list prints runs on the console of the printer that it
// was printed for.
func TestStepsRun(t *testing.T) {
	commands := 0
	for _, root := range []string{"../../../testdata/forms", "../../../testdata/demo"} {
		o := fleet.Options{Today: today, Root: "../../../testdata", Keep: true}
		f := fleet.Load([]string{root}, o, nil)
		defer f.Close()
		r, inputs := f.Check(), f.Inputs()
		for i, in := range inputs {
			if in == nil {
				t.Fatalf("%s is not read: %v", r.Printers[i].Name, r.Printers[i].Problem)
			}
			t.Run(r.Printers[i].Name, func(t *testing.T) {
				list := worklist.New(in, worklist.Open{})
				n := work(t, consoleOf(t, in), list)
				if n < 10 && len(list.Sections) > 4 { // where nothing may heat little is entered
					t.Errorf("the list has %d commands", n)
				}
				commands += n
			})
		}
	}
	if commands < 300 {
		t.Errorf("%d commands were run in all", commands)
	}
}

func consoleOf(t *testing.T, in *rules.Input) console {
	shift, tool := in.Sheet.New.Nozzle.TipShiftMM.Value, int(in.Sheet.Printer.Tool.Value)
	var files []string
	for _, k := range in.Sheet.Printer.Config {
		files = append(files, filepath.Join("../../../testdata", k.Value))
	}
	rated := in.Sheet.New.RatedC.Value
	if in.Printer.Style == "sections" {
		c := newSectionsConsole(t, files[0], shift, tool)
		c.rated = rated
		return c
	}
	c := newDefinesConsole(t, files, shift, tool)
	c.rated, c.saysProbe = rated, in.Sheet.Printer.ZReference.Value == "probe"
	return c
}

// arguments splits a command line: KEY=value for the longer commands, letter and
// figure for the short ones. A figure that is to be filled in stays as it is
// printed.
func arguments(line string) (name string, args map[string]string) {
	var filled []string
	words := strings.Fields(fillIn.ReplaceAllStringFunc(line, func(text string) string {
		filled = append(filled, text)
		return "<>"
	}))
	args = map[string]string{}
	for _, w := range words[1:] {
		key, value, ok := strings.Cut(w, "=")
		if !ok {
			key, value = w[:1], w[1:]
		}
		if value == "<>" {
			value, filled = filled[0], filled[1:]
		}
		args[key] = value
	}
	return words[0], args
}

// only refuses an argument that a command does not know, or lacks one that it
// needs: those in capitals are needed, in "Z E? ?F" a ? goes before one that is
// not.
func only(args map[string]string, known string) error {
	allowed := map[string]bool{}
	for _, k := range strings.Fields(known) {
		name, optional := strings.CutPrefix(k, "?")
		allowed[name] = true
		if _, given := args[name]; !given && !optional {
			return fmt.Errorf("it lacks %s", name)
		}
	}
	for name := range args {
		if !allowed[name] {
			return fmt.Errorf("it knows no %s", name)
		}
	}
	return nil
}

func figureOf(text string) float64 {
	x, err := strconv.ParseFloat(text, 64)
	if err != nil {
		return math.NaN()
	}
	return x
}

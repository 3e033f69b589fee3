package defines

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"preflash/parser"
)

// slotKind is how a setting is written.
type slotKind uint8

const (
	slotNumber slotKind = iota
	slotFlag            // an option that is defined or not
	slotPeriod          // a switch that is a period above 0
	slotSensor
)

// slot is how one setting of this configuration is spelled.
type slot struct {
	key     parser.Key
	kind    slotKind
	name    string // the option to write
	unit    unit
	round   rounding
	list    bool
	element int
	repeats bool
	near    []string // where a missing define belongs: after one of these

	// slotPeriod: the period where the files give none, s, and an option that
	// must be in force with it.
	usual          float64
	companion      string
	companionUsual float64

	heater string // slotSensor: what the custom options begin with
}

// rounding is for options that the preprocessor compares, or that the firmware
// holds as integers: they must stay whole.
type rounding uint8

const (
	roundNone rounding = iota
	roundNearest
	roundUp
	roundDown
)

func (r rounding) apply(x float64) float64 {
	const noise = 1e-9 // 0.3·255 must not become 76
	switch r {
	case roundNearest:
		return math.Round(x)
	case roundUp:
		return math.Ceil(x - noise)
	case roundDown:
		return math.Floor(x + noise)
	}
	return x
}

// Edits turns changes into the smallest edits that make them.
func (c *config) Edits(changes []parser.Change) ([]parser.Edit, error) {
	p := &plan{config: c}
	for _, change := range changes {
		if s := c.slot(change.Key); s != nil && s.kind == slotNumber {
			p.claimed = append(p.claimed, s.name)
		}
	}
	for _, change := range changes {
		if err := p.change(change); err != nil {
			return nil, c.placed(change.Key, err)
		}
	}
	return c.merged(p.edits)
}

// placed gives an error the place of the setting that it is about, where it has
// none of its own.
func (c *config) placed(key parser.Key, err error) error {
	if e := (*parser.Error)(nil); errors.As(err, &e) {
		return err
	}
	for d := range c.printer.Settings() {
		if d.Key == key && !d.At.IsZero() {
			return parser.Errorf(d.At, "%v", err)
		}
	}
	return parser.Errorf(parser.Span{File: c.s.files[0]}, "%v", err)
}

func (c *config) slot(key parser.Key) *slot {
	for i := range c.slots {
		if c.slots[i].key == key {
			return &c.slots[i]
		}
	}
	return nil
}

// plan collects the edits of some changes.
type plan struct {
	*config
	claimed []string // options whose figure a change of its own sets
	key     parser.Key
	edits   []parser.Edit
}

func (p *plan) change(change parser.Change) error {
	p.key = change.Key
	s := p.slot(change.Key)
	if s == nil {
		return fmt.Errorf("the %s cannot be changed by an edit of the files", change.Key)
	}
	switch value := change.Value.(type) {
	case float64:
		if s.kind == slotNumber && !math.IsNaN(value) && !math.IsInf(value, 0) {
			return p.set(s, value)
		}
	case bool:
		switch {
		case !value:
			return fmt.Errorf("the %s is switched off by hand only", change.Key)
		case s.kind == slotFlag:
			return p.enable(s)
		case s.kind == slotPeriod:
			return p.startPeriod(s)
		}
	case parser.SensorDef:
		if s.kind == slotSensor {
			return p.setSensor(s, value)
		}
	}
	return fmt.Errorf("the %s cannot be set to %v", change.Key, change.Value)
}

// replace adds an edit.
func (p *plan) replace(at parser.Span, text string) {
	if at.Text() != text {
		p.edits = append(p.edits, parser.Edit{At: at, New: text, For: p.key})
	}
}

// set writes a figure, in the setting's unit.
func (p *plan) set(s *slot, value float64) error {
	figure := s.round.apply(s.unit.write(value))
	m := p.s.macro(s.name)
	switch m.state {
	case parser.Maybe:
		return undecided(s.name, m)
	case parser.No:
		if d := p.revivable(s.name, m); d != nil && !s.list {
			p.replace(d.uncomment, "")
			p.setBody(d, literal(d.value(), figure))
			return nil
		}
		text := literal("", figure)
		if s.list && !s.repeats {
			return fmt.Errorf("%s is not used; write its list by hand", s.name)
		}
		return p.insert(s.name, text, m, s.near)
	}
	for _, d := range append([]*define{m.winner}, m.same...) {
		if !s.list {
			p.setBody(d, literal(d.value(), figure))
			continue
		}
		if err := p.setElement(s, d, figure); err != nil {
			return err
		}
	}
	return nil
}

// setBody writes a define's value; one that had none gets a blank before it.
func (p *plan) setBody(d *define, text string) {
	if d.body.Start == d.body.End {
		text = " " + text
	}
	p.replace(d.body, text)
}

// setElement writes one element of a list. A list in which the last element
// holds for the rest is made long enough first.
func (p *plan) setElement(s *slot, d *define, figure float64) error {
	r := &reader{s: p.s}
	items, isList := r.list(d)
	switch {
	case !isList && s.repeats:
		p.setBody(d, literal(d.value(), figure))
	case !isList || len(items) == 0:
		return parser.Errorf(d.at, "%s is no list; write it by hand", d.name)
	case s.element < len(items):
		p.replace(items[s.element], literal(unspliced(items[s.element].Text()), figure))
	case !s.repeats:
		return parser.Errorf(d.at, "%s has too few elements; write it by hand", d.name)
	default:
		last := items[len(items)-1]
		text := ""
		for range s.element - len(items) {
			text += ", " + last.Text()
		}
		text += ", " + literal(unspliced(last.Text()), figure)
		p.replace(parser.Span{File: last.File, Start: last.End, End: last.End}, text)
	}
	return nil
}

// enable switches an option on.
func (p *plan) enable(s *slot) error {
	m := p.s.macro(s.name)
	switch m.state {
	case parser.Maybe:
		return undecided(s.name, m)
	case parser.Yes:
		if p.gen == gen10 {
			return nil // defined is on
		}
		for _, d := range append([]*define{m.winner}, m.same...) {
			p.setOn(d)
		}
		return nil
	}
	if d := p.revivable(s.name, m); d != nil && isSwitch(d.value()) {
		p.replace(d.uncomment, "")
		p.setOn(d)
		return nil
	}
	return p.insert(s.name, "", m, s.near)
}

// isSwitch reports whether a value is one that an option to switch has. A
// commented-out one may have the owner's words after it, which are kept.
func isSwitch(value string) bool {
	switch value {
	case "", "0", "1", "false", "true":
		return true
	}
	return false
}

// setOn makes a value one that switches its option on, unless it does already.
func (p *plan) setOn(d *define) {
	switch d.value() {
	case "", "1", "true":
	case "false":
		p.setBody(d, "true")
	default:
		p.setBody(d, "1")
	}
}

// startPeriod gives a switch that is a period a figure above 0, and puts its
// companion in force.
func (p *plan) startPeriod(s *slot) error {
	figure := func(name string) *slot {
		return &slot{name: name, unit: s.unit, round: roundUp, near: s.near}
	}
	if !slices.Contains(p.claimed, s.name) {
		if err := p.start(figure(s.name), s.usual); err != nil {
			return err
		}
	}
	if s.companion == "" || slices.Contains(p.claimed, s.companion) ||
		p.s.macro(s.companion).state != parser.No {
		return nil
	}
	companion := figure(s.companion)
	companion.unit = unitPlain
	companion.near = append([]string{s.name}, s.near...)
	return p.start(companion, s.companionUsual)
}

// start puts a figure in force: as the owner has it where that is above 0.
func (p *plan) start(s *slot, usual float64) error {
	m := p.s.macro(s.name)
	d := m.winner
	if m.state == parser.No {
		d = p.revivable(s.name, m)
	}
	if d != nil {
		if x, known := p.s.number(d.value()); known == parser.Yes && x > 0 {
			if d.commentedOut {
				p.replace(d.uncomment, "")
			}
			return nil
		}
	}
	return p.set(s, usual)
}

func undecided(name string, m macro) error {
	why := m.why
	if why == "" {
		why = "the files do not tell its condition"
	}
	return fmt.Errorf("%s cannot be changed by an edit: %s", name, why)
}

// revivable returns the commented-out define that a change switches on: one
// that stands where the files are read, that no #undef follows, and that ends
// in its line: in a comment, a splice takes in lines that are not of it.
func (p *plan) revivable(name string, m macro) *define {
	if !m.undef.IsZero() {
		return nil
	}
	for _, d := range p.s.mentions(name) {
		if d.reached == parser.Yes && d.revivable() {
			return d
		}
	}
	return nil
}

// revivable reports whether a commented-out define can be switched on where it
// stands.
func (d *define) revivable() bool {
	return d.commentedOut && !d.uncomment.IsZero() && !d.function &&
		!strings.Contains(strings.TrimRight(d.line.Text(), "\r\n"), "\n")
}

// merged sorts edits, drops doubles and joins insertions at one place.
func (c *config) merged(edits []parser.Edit) ([]parser.Edit, error) {
	order := func(f *parser.File) int { return slices.Index(c.s.files, f) }
	slices.SortStableFunc(edits, func(a, b parser.Edit) int {
		return cmp.Or(order(a.At.File)-order(b.At.File), a.At.Start-b.At.Start, a.At.End-b.At.End)
	})
	var out []parser.Edit
	for _, e := range edits {
		if len(out) == 0 {
			out = append(out, e)
			continue
		}
		last := &out[len(out)-1]
		switch {
		case e.At == last.At && e.New == last.New:
		case e.At == last.At && e.At.Start == e.At.End:
			last.New += e.New
		case e.At.File == last.At.File && e.At.Start < last.At.End:
			return nil, parser.Errorf(e.At,
				"the changes of %s and %s meet here; make one of them by hand", last.For, e.For)
		default:
			out = append(out, e)
		}
	}
	return out, nil
}

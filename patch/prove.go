package patch

import (
	"bytes"
	"fmt"
	"io"
	"slices"
	"time"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules"
)

// Printer is one printer that a diff may change, or that reads a file which
// the diff changes for another.
type Printer struct {
	Owner   string // the sheet, as shown
	Tree    *parser.Tree
	Style   parser.Style
	Request parser.Request
	Sheet   *sheet.Sheet
	Today   time.Time
}

// Plan is a set of changes that was proved.
type Plan struct {
	Files   []FileChange
	Reasons []Reason
	Left    []Reason // findings whose changes no edit of the files can make
	Worse   []Reason // warnings that the changes turn into errors, to be mended next
}

// Reason is a finding that asks for changes.
type Reason struct {
	Owner   string
	Finding rules.Finding
	Err     error // of a finding that is left: why
}

// Renewed reports whether a later reason is the same rule asking for the same
// settings again.
func (r Reason) Renewed(later Reason) bool {
	return r.Owner == later.Owner && r.Finding.Rule == later.Finding.Rule &&
		slices.EqualFunc(r.Finding.Changes, later.Finding.Changes, func(a, b parser.Change) bool { return a.Key == b.Key })
}

// maxRounds bounds the iteration to a fixed point. One change can bring up
// another, such as a protection that is turned on with figures too wide.
const maxRounds = 8

// Prove collects the changes of all findings that count and are not waived,
// makes them in memory, and reads and checks the result again, until nothing
// more is to be changed. Then it holds the result against the start, with all
// rules. It returns an error, and no plan, where the changes contradict each
// other, do not settle, leave what they were made for, or make anything worse.
func Prove(printers []Printer, counts func(rule string) bool) (*Plan, error) {
	var plan Plan
	contents := make(map[string][]byte) // by the name as shown
	trials := make([]trial, len(printers))
	for i := range printers {
		trials[i].Printer, trials[i].counts = &printers[i], counts
	}
	var asked [2]int // reasons there were when the round before, and this one, began
	for round := 0; ; round++ {
		asked = [2]int{asked[1], len(plan.Reasons)}
		var sets []Owned
		for i := range trials {
			t := &trials[i]
			if round > 0 && !t.touched(contents) {
				continue
			}
			if err := t.read(contents); err != nil {
				return nil, err
			}
			edits, reasons, left, err := t.edits()
			if err != nil {
				return nil, err
			}
			if round == 0 {
				plan.Left = append(plan.Left, left...)
			}
			if len(edits) > 0 {
				plan.Reasons = append(plan.Reasons, reasons...)
				sets = append(sets, Owned{Owner: t.Owner, Edits: edits})
			} else if round == 0 {
				t.forget()
			}
		}
		if len(sets) == 0 {
			break
		}
		if round == maxRounds {
			return nil, unsettled(plan.Reasons[asked[0]:])
		}
		if err := plan.apply(sets, contents); err != nil {
			return nil, err
		}
	}
	for i := range trials {
		if trials[i].after == nil {
			continue // untouched
		}
		if err := trials[i].hold(); err != nil {
			return nil, fmt.Errorf("%s: the diff failed its proof and is not shown: %w", trials[i].Owner, err)
		}
		plan.Worse = append(plan.Worse, trials[i].worse...)
	}
	return &plan, nil
}

// unsettled says who asked for changes in the last two rounds: one printer, or
// two that share a file and undo each other's.
func unsettled(reasons []Reason) error {
	last := reasons[len(reasons)-1]
	for _, other := range reasons {
		if other.Owner != last.Owner {
			return fmt.Errorf("%s and %s share a file and undo each other's changes (%s, %s); let their sheets agree, or give each printer a file of its own. Nothing is shown",
				other.Owner, last.Owner, other.Finding.Rule, last.Finding.Rule)
		}
	}
	return fmt.Errorf("%s: the changes do not settle in %d rounds; the last rule to ask for one is %s. Nothing is shown",
		last.Owner, maxRounds, last.Finding.Rule)
}

// Print prints the plan as one unified diff, after it has applied that very
// diff to the old texts and met the new ones: what was proved is what is shown.
func (p *Plan) Print(w io.Writer, o Options) error {
	old := make(map[string][]byte, len(p.Files))
	for _, f := range p.Files {
		old[f.Name] = f.Old
	}
	var diff bytes.Buffer
	if err := Unified(&diff, p.Files, Options{Lead: o.Lead}); err != nil {
		return err
	}
	applied, err := Patch(old, diff.Bytes())
	if err != nil {
		return fmt.Errorf("the diff cannot be applied and is not shown; this is a fault in preflash, please report it: %w", err)
	}
	for _, f := range p.Files {
		if !bytes.Equal(applied[f.Name], f.New) {
			return &parser.Error{File: f.Name, Message: "the diff does not give the text that was proved and is not shown; this is a fault in preflash, please report it"}
		}
	}
	if o.Terminal {
		return Unified(w, p.Files, o)
	}
	_, err = w.Write(diff.Bytes())
	return err
}

// apply makes the edits of one round on top of the rounds before.
func (p *Plan) apply(sets []Owned, contents map[string][]byte) error {
	merged, err := Merge(sets)
	if err != nil {
		return err
	}
	for _, m := range merged {
		text, err := Apply(m.File, m.Edits)
		if err != nil {
			return err
		}
		if _, again := contents[m.File.Name]; !again {
			p.Files = append(p.Files, FileChange{Name: m.File.Name, Old: m.File.Data})
		}
		contents[m.File.Name] = text
	}
	for i := range p.Files {
		p.Files[i].New = contents[p.Files[i].Name]
	}
	return nil
}

// trial is one printer on its way through the rounds.
type trial struct {
	*Printer
	counts        func(rule string) bool
	config        parser.Config
	before, after *verdict
	files         []string                // what it reads, as shown
	asked         map[parser.Key][]string // who asked to change a setting
	mended        map[string]int          // findings of a rule that were changed away
	uncovered     []string                // rules that could not speak before a change
	worse         []Reason                // findings that became errors and may
}

// verdict is what the rules made of one reading.
type verdict struct {
	in       *rules.Input
	printer  *parser.Printer
	findings []rules.Finding
}

// read reads and checks the printer with the contents of this round, and as
// it stands where that was not done yet.
func (t *trial) read(contents map[string][]byte) error {
	if t.before == nil {
		config, v, err := t.look(nil)
		if err != nil {
			return err
		}
		t.config, t.before, t.after = config, v, v
		t.asked = make(map[parser.Key][]string)
		t.mended = make(map[string]int)
		for _, f := range config.Printer().Files {
			t.files = append(t.files, f.Name)
		}
	}
	if len(contents) == 0 {
		return nil
	}
	config, v, err := t.look(contents)
	if err != nil {
		return fmt.Errorf("%s: with the changes made, the configuration cannot be read: %w", t.Owner, err)
	}
	t.config, t.after = config, v
	return nil
}

func (t *trial) look(contents map[string][]byte) (parser.Config, *verdict, error) {
	config, err := t.Style.Read(t.Tree.With(contents), t.Request)
	if err != nil {
		return nil, nil, err
	}
	in := &rules.Input{Printer: config.Printer(), Config: config, Sheet: t.Sheet, Style: t.Style, Today: t.Today}
	return config, &verdict{in, config.Printer(), rules.Check(in)}, nil
}

// forget gives back what was read of a printer that asks for nothing. It is
// read again where another's change touches it.
func (t *trial) forget() { t.config, t.before, t.after = nil, nil, nil }

// touched reports whether the printer reads a file that was changed.
func (t *trial) touched(contents map[string][]byte) bool {
	return slices.ContainsFunc(t.files, func(name string) bool { return contents[name] != nil })
}

// edits turns the findings that ask for changes into edits. Those that no
// edit can satisfy are left.
func (t *trial) edits() (edits []parser.Edit, reasons, left []Reason, err error) {
	for _, f := range t.after.findings {
		if len(f.Changes) == 0 || f.Waived != "" || !t.counts(f.Rule) {
			continue
		}
		if _, err := t.config.Edits(f.Changes); err != nil {
			left = append(left, Reason{t.Owner, f, err})
			continue
		}
		reasons = append(reasons, Reason{Owner: t.Owner, Finding: f})
	}
	if len(reasons) == 0 {
		return nil, nil, left, nil
	}
	changes, err := resolve(reasons)
	if err != nil {
		return nil, nil, nil, err
	}
	if edits, err = t.config.Edits(changes); err != nil {
		return nil, nil, nil, fmt.Errorf("%s: the changes cannot be made together: %w", t.Owner, err)
	}
	for _, r := range reasons {
		if !r.Finding.Partial {
			t.mended[r.Finding.Rule]++
		}
		if rule := rules.Find(r.Finding.Rule); rule != nil {
			t.uncovered = append(t.uncovered, rule.Hides...)
		}
		for _, c := range r.Finding.Changes {
			t.asked[c.Key] = append(t.asked[c.Key], r.Finding.Rule)
		}
	}
	return edits, reasons, left, nil
}

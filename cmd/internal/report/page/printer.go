package page

import (
	"cmp"
	"fmt"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/measure"
	"preflash/cmd/internal/plaintext"
	"preflash/cmd/internal/worklist"
	"preflash/parser/sheet"
	"preflash/rules"
	"preflash/rules/unit"
)

type fact struct{ Name, Text string }

// link leads to another place of the page.
type link struct{ ID, Text string }

// printerView is one printer on the page.
type printerView struct {
	ID, Name, Problem string
	Facts             []fact
	Levels            [3]int // findings that count, by rules.Level
	Heating           string // whether it may be heated
	Stop              bool
	Worst             *findingView
	Changed           int // lines of its diff
	Groups            []findingGroup
	DiffLead          string
	Left              []string
	Diff              []fileView
	Bench             *worklist.List
	One               bool // it is alone on the page
}

// Counts are the figures of the overview.
func (v *printerView) Counts() []int {
	return []int{v.Levels[rules.Error], v.Levels[rules.Warning], v.Levels[rules.Note], v.Changed}
}

// printerViews are the printers, worst first.
func printerViews(s *fleet.Survey) []*printerView {
	views := make([]*printerView, len(s.Printers))
	benches := measure.Benches(s.Result, s.Before)
	for i := range s.Printers {
		p := &s.Printers[i]
		v := &printerView{
			ID: fmt.Sprintf("p%d", i+1), Name: shown(cmp.Or(p.Name, p.Sheet, "Nothing found")),
			Bench: benches[i].List, One: len(views) == 1,
		}
		views[i] = v
		if p.Problem != nil {
			v.Problem = shown(p.Problem.String())
		}
		if in := s.Before[i]; in != nil {
			v.Facts = factsOf(in)
		}
		if p.Sheet != "" {
			v.Facts = append(v.Facts, fact{"Sheet", shown(p.Sheet)})
		}
		if p.Style != "" {
			v.Facts = append(v.Facts, fact{"Style", shown(p.Style)})
		}
	}
	lines := diffViews(s, views)
	var sorted []*printerView
	for _, p := range s.WorstFirst() {
		i := p.Index
		v := views[i]
		v.Levels = p.Levels
		v.Heating, v.Stop = heating(&p)
		v.group(p.Printer, newProofs(v.ID, s.Before[i], s.After[i]), func(at fleet.Region) *lineView {
			return lines.at(s.Before[i], at)
		})
		sorted = append(sorted, v)
	}
	return sorted
}

// heating says of one printer whether it may be heated.
func heating(p *fleet.Standing) (text string, stop bool) {
	switch {
	case p.Problem != nil:
		return "? do not heat: cannot be read", true
	case p.Levels[rules.Error] > 0:
		return markOf[rules.Error] + " do not heat", true
	case p.Begin != "":
		return "? not known: no sheet", true
	}
	return "no error", false
}

// factsOf is what the sheet says about the hotend that goes in.
func factsOf(in *rules.Input) []fact {
	n := &in.Sheet.New
	kind := "cartridge"
	if n.Heater.Kind.Value == sheet.PTC {
		kind = "PTC"
	}
	heater := fmt.Sprintf("%s, %s at %s", kind, unit.Watts(n.Heater.RatedW.Value),
		unit.Volts(n.Heater.RatedV.Value))
	if supply := in.Sheet.Printer.SupplyV.Value; supply != n.Heater.RatedV.Value {
		heater += ", on a supply of " + unit.Volts(supply)
	}
	rated, by := rules.Rating(in)
	return []fact{
		{"Goes in", shown(cmp.Or(n.Name.Value, "a hotend without a name"))},
		{"Asked for", shown(unit.Celsius(n.PrintC.Value[0]) + " to " + unit.Celsius(n.PrintC.Value[1]))},
		{"Rated", shown(unit.Celsius(rated) + ", by the " + by)},
		{"Sensor", shown(rules.SensorName(in))},
		{"Heater", shown(heater)},
	}
}

// findingGroup is the findings of one danger, or those that are waived.
type findingGroup struct {
	Title    string
	Findings []findingView
}

type findingView struct {
	ID, Class, Mark, Level, Message, Detail, Change, Waived, Place, Rule string

	Printer *printerView
	Follows []string
	Lines   []link // its lines in the diff
	Plot    string // the id of the figure that proves it
	Figure  *figure

	from *fleet.Finding
}

// markOf stands beside the word of a level.
var markOf = map[rules.Level]string{rules.Error: "✕", rules.Warning: "▲", rules.Note: "●"}

// group puts the findings of a printer on the page, ties each to its lines in
// the diff, and draws the figures that prove them.
func (v *printerView) group(p *fleet.Printer, proofs *proofs, line func(fleet.Region) *lineView) {
	for i, f := range p.WorstFirst() {
		level := f.Level.String()
		view := findingView{
			ID: fmt.Sprintf("%s-f%d", v.ID, i+1), Printer: v,
			Class: level, Mark: markOf[f.Level], Level: level,
			Message: shown(plaintext.Sentence(f.Message)), Detail: shown(plaintext.Sentence(f.Rest())),
			Change: shown(f.Change), Place: shown(f.Region.Place()), Rule: f.Rule, from: f,
		}
		for _, one := range f.Follows {
			view.Follows = append(view.Follows, shown(one.Rule+": "+plaintext.Sentence(one.Text())))
		}
		switch {
		case f.Waived != "":
			view.Class, view.Level, view.Waived = "waived", "waived",
				shown(fmt.Sprintf("%s, since: %s", level, f.Waived))
		case f.Known != "":
			view.Class, view.Level, view.Waived = "waived", "known",
				shown(fmt.Sprintf("%s, since %s", level, f.Known))
		default:
			back := link{view.ID, f.Rule}
			view.tie(line, back, v.One)
			view.Plot, view.Figure = proofs.of(f, back)
		}
		if title := f.Heading(); len(v.Groups) == 0 || v.Groups[len(v.Groups)-1].Title != title {
			v.Groups = append(v.Groups, findingGroup{Title: title})
		}
		g := &v.Groups[len(v.Groups)-1]
		g.Findings = append(g.Findings, view)
	}
	if len(v.Groups) > 0 {
		if f := &v.Groups[0].Findings[0]; f.from.Counts() {
			v.Worst = f
		}
	}
}

// tie links a finding and the lines of the diff that it changes.
func (v *findingView) tie(line func(fleet.Region) *lineView, back link, alone bool) {
	if !alone { // a file may be that of several printers
		back.Text = v.Printer.Name + " " + back.Text
	}
	for _, fix := range v.from.Fix {
		l := line(fix.Region)
		if l == nil {
			continue
		}
		l.ID = l.id
		l.Back = append(l.Back, back)
		v.Lines = append(v.Lines, link{l.ID, "line " + strings.TrimSpace(cmp.Or(l.Old, l.New))})
	}
}

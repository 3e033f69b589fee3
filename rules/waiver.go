package rules

import (
	"slices"
	"time"

	"preflash/parser"
	"preflash/parser/sheet"
)

// waivers are those of a sheet, with what keeps one from covering a finding.
type waivers struct {
	today time.Time
	list  []sheet.Waiver
	bare  map[int]*Finding // by waiver: what it would cover if it had the figure
	grown map[int]*Finding // by waiver: what is worse than its figure
	about map[int][]string // by waiver: what its rule found something about
}

func newWaivers(in *Input) *waivers {
	return &waivers{today: in.Today, list: in.Sheet.Waivers, bare: make(map[int]*Finding),
		grown: make(map[int]*Finding), about: make(map[int][]string)}
}

// cover returns the reason of a waiver that covers a finding today, or "". It
// notes what a waiver failed to cover only for its figure.
func (w *waivers) cover(rule *Rule, f *Finding) string {
	if rule.Unwaived {
		return ""
	}
	reason := ""
	bare, grown := make(map[int]bool), make(map[int]bool)
	for i := range w.list {
		one := &w.list[i]
		if one.Rule.Value != rule.ID || w.past(one) || w.tooLong(one) {
			continue
		}
		w.about[i] = append(w.about[i], f.About)
		if one.Setting.Given && one.Setting.Value != f.About {
			continue
		}
		switch {
		case f.Figure.Worse == Never:
			reason = one.Reason.Value
		case !one.At.Given, f.About != "" && !one.Setting.Given:
			bare[i] = true
		case f.Figure.Outgrows(Figure{one.At.Value, f.Figure.Unit, f.Figure.Worse}):
			grown[i] = true
		default:
			reason = one.Reason.Value
		}
	}
	if reason == "" {
		note := func(failed map[int]bool, of map[int]*Finding) {
			for i := range failed {
				if of[i] == nil {
					of[i] = f
				}
			}
		}
		note(bare, w.bare)
		note(grown, w.grown)
	}
	return reason
}

// misspelt returns the setting that a waiver is probably about, or "" where what
// it names is one of the printer's.
func (w *waivers) misspelt(in *Input, i int) string {
	name := w.list[i].Setting.Value
	if slices.Contains(w.about[i], name) {
		return ""
	}
	for s := range in.Printer.Settings() {
		if string(s.Key) == name {
			return ""
		}
	}
	return parser.Nearest(name, w.about[i])
}

// mayWaive reports whether a waiver of the sheet names a rule today, whatever its
// figure: the rule's change may then not be made.
func mayWaive(in *Input, rule string) bool {
	w := newWaivers(in)
	return slices.ContainsFunc(w.list, func(one sheet.Waiver) bool {
		return one.Rule.Value == rule && !w.past(&one) && !w.tooLong(&one)
	})
}

// past reports whether a waiver's last day is over.
func (w *waivers) past(one *sheet.Waiver) bool { return w.today.After(one.Until.Value) }

// tooLong reports whether a waiver would hold for more than a year from today.
func (w *waivers) tooLong(one *sheet.Waiver) bool { return one.Until.Value.After(w.longest()) }

// longest is the last day that a waiver may hold to.
func (w *waivers) longest() time.Time { return LongestWaiver(w.today) }

// LongestWaiver is the last day that a waiver may hold to.
func LongestWaiver(today time.Time) time.Time { return today.AddDate(1, 0, 0) }

// WaiverLines are the lines of a waiver that say up to where it holds: which
// setting, where the rule speaks of several, and the figure; none where the
// finding has neither.
func WaiverLines(f *Finding) []string {
	if f.Figure.Worse == Never {
		return nil
	}
	var lines []string
	if f.About != "" {
		lines = append(lines, "setting = "+sheet.Quote(f.About))
	}
	if f.Figure.Given() {
		lines = append(lines, "at = "+f.Figure.Shown())
	}
	return lines
}

package fleet

import (
	"fmt"
	"slices"

	"preflash/parser"
	"preflash/rules"
)

// Result is what a run over some printers found. Reports are functions of it.
type Result struct {
	Printers  []Printer
	Since     string   // the revision, where only what changed since it was checked
	Unchanged []string // the printers of which nothing changed since then, so that they were not checked
	Gone      []string // sheets that the revision held and HEAD does not, as shown
	Compared  bool     // with a file of known findings
	Fixed     []Fixed  // known findings that are gone
	Version   string
}

// Printer is one sheet and what it led to.
type Printer struct {
	Name     string
	Sheet    string   // the sheet's path, as shown; the main file's where there is no sheet
	Begin    string   // the command that begins a sheet, where there is none
	Passed   []string // where there is none: what was found beside the main file and is none of it
	Style    string
	Files    []string
	Inputs   []string  // all that was opened or looked for, as shown
	Problem  *Problem  // why it could not be read; then the rest may be empty
	Findings []Finding // as reports show them: what hangs on one cause is one

	every []Finding // each by itself; nil where Findings is that already
}

// Every lists each finding by itself, as exit codes and waivers count them.
func (p *Printer) Every() []Finding {
	if p.every != nil {
		return p.every
	}
	return p.Findings
}

// Named reports whether this is a printer: the entry that says why a call came
// to none, such as a folder without a sheet, has neither name nor sheet.
func (p *Printer) Named() bool { return p.Name != "" || p.Sheet != "" }

// Problem is why a printer could not be read.
type Problem struct {
	File         string
	Line, Column int // 0 where the file as a whole is meant
	Message      string
	Parts        []Problem // one by one, where Message joins several
}

// Finding is what a rule said, apart from the buffers that it was found in.
type Finding struct {
	Rule    string
	Also    []string // the other rules that could not tell for the same cause
	Level   rules.Level
	Rank    int          // its place in the order of danger, from 1
	Danger  rules.Danger // what it can lead to
	Region  Region
	Message string    // what to do, then why: at most rules.MostWords
	Detail  string    // the rest, for who asks
	Aside   string    // what else it stands for, or ""
	More    int       // further findings of this rule and level that are not listed
	Change  string    // what `diff` would do, "" where a person must decide
	Waived  string    // the reason of the waiver that covers it, or ""
	Known   string    // the day since which it is known and does not count, or ""
	Follows []Finding // what is so because of this one
	Values  rules.Values
	Fix     []Replacement

	Baseline Baseline // how it compares with what is known

	same    string // see rules.Finding
	about   string
	figure  rules.Figure
	unknown parser.Key // the setting that could not be told, if that is what it says
	cause   parser.Cause
}

// Text is all that a finding says.
func (f Finding) Text() string {
	text := f.Message
	for _, more := range []string{f.Detail, f.Aside} {
		if more != "" {
			text += "; " + more
		}
	}
	return text
}

// Counts reports whether neither a waiver covers a finding nor it is known.
func (f *Finding) Counts() bool { return f.Waived == "" && f.Known == "" }

// Baseline is how a finding compares with those that are known.
type Baseline uint8

const (
	NoBaseline Baseline = iota
	New
	Unchanged // known
	Updated   // known with another figure, or worse than what is known
)

// Count is how many findings this one stands for.
func (f *Finding) Count() int { return 1 + f.More }

// Region is a place in a file. Lines and columns count from 1. Columns are
// bytes, CharColumns Unicode code points; an invalid byte is one.
type Region struct {
	File                              string
	Line, Column, CharColumn          int
	EndLine, EndColumn, EndCharColumn int
	Text                              string // the first line of the region, as far as it is in it
}

// Replacement is one edit, told apart from the file that it belongs to.
type Replacement struct {
	Region Region
	New    string
}

// tellOnce keeps what is the same on several printers on the first of them, and
// says there how many more it holds for.
func (r *Result) tellOnce() {
	first := make(map[string]*Finding)
	more := make(map[*Finding]int)
	for i := range r.Printers {
		p := &r.Printers[i]
		p.Findings = slices.DeleteFunc(p.Findings, func(f Finding) bool {
			told := f.same != "" && first[f.sameKey()] != nil
			if told {
				more[first[f.sameKey()]]++
			}
			return told
		})
		for j := range p.Findings {
			if f := &p.Findings[j]; f.same != "" {
				first[f.sameKey()] = f
			}
		}
	}
	for f, n := range more {
		f.Aside = fmt.Sprintf("told once for %d printers with this hotend", n+1)
	}
}

// sameKey tells apart what is told once for several printers.
func (f *Finding) sameKey() string { return fmt.Sprint(f.Rule, f.same, f.Counts()) }

// Summary counts what a Result holds. Waived and known findings are not counted
// among the levels.
type Summary struct {
	Printers, Unreadable, Errors, Warnings, Notes, Waived, Known int
}

// Summary counts the result.
func (r *Result) Summary() Summary {
	s := Summary{Printers: len(r.Printers)}
	for i := range r.Printers {
		p := &r.Printers[i]
		if p.Problem != nil {
			s.Unreadable++
		}
		for j := range p.Findings {
			switch f := &p.Findings[j]; {
			case f.Waived != "":
				s.Waived += f.Count()
			case f.Known != "":
				s.Known += f.Count()
			case f.Level == rules.Error:
				s.Errors += f.Count()
			case f.Level == rules.Warning:
				s.Warnings += f.Count()
			default:
				s.Notes += f.Count()
			}
		}
	}
	return s
}

// Worst reports whether a finding at or above the level counts.
func (r *Result) Worst(level rules.Level) bool {
	for i := range r.Printers {
		every := r.Printers[i].Every()
		for j := range every {
			if f := &every[j]; f.Counts() && f.Level >= level {
				return true
			}
		}
	}
	return false
}

// Each lists the problem's parts, or the problem itself where it has none.
func (p *Problem) Each() []Problem {
	if len(p.Parts) > 0 {
		return p.Parts
	}
	return []Problem{*p}
}

// String gives the problem as file:line: message.
func (p Problem) String() string {
	e := parser.Error{File: p.File, Line: p.Line, Column: p.Column, Message: p.Message}
	return e.Error()
}

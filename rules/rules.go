// Package rules says what no longer fits. Each rule is one file with its test
// beside it and one line in the registry.
package rules

import (
	"fmt"
	"maps"
	"strings"
	"time"

	"preflash/parser"
	"preflash/parser/sheet"
)

// Level is how much a finding matters. The words are SARIF's.
type Level uint8

const (
	Note Level = iota
	Warning
	Error
)

func (l Level) String() string { return [...]string{"note", "warning", "error"}[l] }

// Rule is one thing that is checked.
type Rule struct {
	ID       string
	Level    Level // the highest that it reports
	Whole    bool  // is about more than the hotend: runs also where the configuration lacks it
	Unwaived bool  // cannot be waived, which Doc says too
	// MayLoosen lists the settings that its change may make protect less, such
	// as a watch that would trip a healthy hotend.
	MayLoosen []parser.Key
	// MayWorsen: a change that protects more may make an error of its warning.
	MayWorsen bool
	// Hides names the rules that have nothing to look at while this one speaks:
	// what they say once it is mended was there before.
	Hides []string
	// Explains names the rules whose findings follow from an error of this one:
	// reports list them inside it.
	Explains []string
	Figure   FigureOf // which of the values tells how bad a finding is
	Summary  string   // one sentence: what is wrong when it speaks
	Doc      string   // formula, limits and sources, for `rules ID`; lines of 80 columns at most
	// NeedsSheet: it judges by the hotend that goes in, so it has nothing to say
	// where there is no sheet.
	NeedsSheet bool
	Check      func(in *Input, report func(Finding))
}

// Input is what a rule may look at. Rules do not change it.
type Input struct {
	Printer *parser.Printer
	Config  parser.Config // that Printer is of
	Sheet   *sheet.Sheet
	Today   time.Time
	NoSheet bool // Sheet only stands in for one; nothing is proposed then

	// Changed holds what the findings so far would change, and to what.
	Changed map[parser.Key]any

	unknowns map[parser.Key]bool // settings that a rule said it could not tell
	rules    []*Rule             // what runs; not All(), which would refer to itself

	waivers *waivers
}

// Finding is what a rule says.
type Finding struct {
	Rule    string
	Level   Level
	At      parser.Span // a setting's value, or a key of the sheet
	Message string      // what to do, then why, then the figures: at most MostWords
	Detail  string      // the rest: more figures, what they rest on, other ways
	Values  Values
	// Figure is how bad it is; the zero Figure is none: then it is bad that it
	// is there.
	Figure Figure
	// About tells apart what one rule says of several things: the key of a
	// setting, or the text that it points at. Empty for a rule that speaks of
	// one thing.
	About   string
	Harm    string          // what sets it apart from other findings of its rule in the order of danger
	Changes []parser.Change // together they remove the finding; none where a person must decide
	Partial bool            // the changes are the best there is and leave some of it, as the message says
	Waived  string          // the reason, where a waiver covers it
	More    int             // further findings of this rule and level, which are only counted
	// Same, where it is not empty, is what the finding is about apart from the
	// printer: of printers with the same, only the first one is listed.
	Same string

	Unknown parser.Key   // the setting that is unknown, if that is what it says
	Cause   parser.Cause // then what that hangs on, as far as it is known
}

// Values are the figures of a finding, by the names that the rule documents.
type Values map[string]any

// Clone is a copy whose text is not that of a file.
func (v Values) Clone() Values {
	v = maps.Clone(v)
	for name, value := range v {
		if text, ok := value.(string); ok {
			v[name] = strings.Clone(text)
		}
	}
	return v
}

// Findingf starts a finding at a place.
func Findingf(level Level, at parser.Span, format string, args ...any) Finding {
	return Finding{Level: level, At: at, Message: fmt.Sprintf(format, args...)}
}

// Explain adds a sentence to what a reader sees who asks for more. A leading
// semicolon is for texts that were put together from clauses.
func (f Finding) Explain(format string, args ...any) Finding {
	f.explain(fmt.Sprintf(format, args...))
	return f
}

func (f *Finding) explain(text string) {
	text = strings.TrimPrefix(text, "; ")
	if text == "" {
		return
	}
	if f.Detail != "" {
		f.Detail += "; "
	}
	f.Detail += text
}

// Text is all that a finding says.
func (f Finding) Text() string {
	if f.Detail == "" {
		return f.Message
	}
	return f.Message + "; " + f.Detail
}

// With adds figures.
func (f Finding) With(v Values) Finding { f.Values = v; return f }

// Of says what the finding is about, where its rule speaks of several things.
func (f Finding) Of(subject parser.Key) Finding { f.About = string(subject); return f }

// Bad says how bad the finding is, where no value of its rule tells.
func (f Finding) Bad(figure Figure) Finding { f.Figure = figure; return f }

// Change adds changes.
func (f Finding) Change(c ...parser.Change) Finding { f.Changes = append(f.Changes, c...); return f }

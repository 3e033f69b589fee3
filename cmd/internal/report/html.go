package report

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"io"
	"strings"
	"sync"

	"preflash/cmd/internal/fleet"
	"preflash/parser/sheet"
	"preflash/patch"
	"preflash/rules"
	"preflash/rules/unit"
)

//go:embed page
var pageFiles embed.FS

// pageParts are the template and the style sheet, read when the first page is
// asked for.
var pageParts = sync.OnceValues(func() (*template.Template, string) {
	style, err := pageFiles.ReadFile("page/page.css")
	if err != nil {
		panic(err) // it is part of the program
	}
	return template.Must(template.ParseFS(pageFiles, "page/page.html")), string(style)
})

// page is what the template shows. Every text in it went through shown.
type page struct {
	Title, Verdict, Caution, NoDiff, Foot string
	Policy                                string
	Style                                 template.CSS
	Cautions                              []string
	Overview                              bool
	Printers                              []*printerView
	Trials                                *trialsView
}

// PageOptions are what a page holds besides the survey.
type PageOptions struct {
	Day    string      // on which it is made
	Trials *FlowTrials // nil for none
}

// HTML prints a survey as one page that needs nothing else: no script, no
// font, no picture, no request. Its own policy tells the browser to allow
// none.
func HTML(w io.Writer, s *fleet.Survey, o PageOptions) error {
	tmpl, style := pageParts()
	sum := sha256.Sum256([]byte(style))
	caution, cautions := cautionList()
	p := page{
		Title:    titleOf(s),
		Verdict:  shown(sentence(verdict(s.Result))),
		Caution:  caution,
		Cautions: cautions,
		Foot: shown(fmt.Sprintf("Made by preflash %s on %s from the sheets and configurations as they stand. Temperatures over time are those of a model (preflash rules). No file was changed.",
			s.Version, o.Day)),
		Policy:   "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'",
		Style:    template.CSS(style),
		Overview: len(s.Printers) > 1,
	}
	if err := s.Err(); err != nil {
		p.NoDiff = shown(err.Error())
	}
	p.Printers = printerViews(s)
	p.Trials = trialsOf(o.Trials, sheetFlowOf(s))
	var b bytes.Buffer // a failed page is no half page
	if err := tmpl.Execute(&b, &p); err != nil {
		return err
	}
	_, err := w.Write(b.Bytes())
	return err
}

// sheetFlowOf is the flow that the sheet of the only printer gives, or 0.
func sheetFlowOf(s *fleet.Survey) float64 {
	if len(s.Before) != 1 || s.Before[0] == nil {
		return 0
	}
	return s.Before[0].Sheet.New.Nozzle.MaxFlowMM3S.Value
}

func titleOf(s *fleet.Survey) string {
	if len(s.Printers) == 1 {
		return "Hotend swap: " + shown(cmp.Or(s.Printers[0].Name, "nothing found"))
	}
	return "Hotend swaps: " + plural(len(s.Printers), "printer")
}

// cautionList takes the cautions apart: what they are for, and each of them.
func cautionList() (string, []string) {
	lines := strings.Split(strings.TrimSpace(Cautions), "\n")
	for i := range lines {
		lines[i] = strings.TrimPrefix(lines[i], "- ")
	}
	return strings.TrimSuffix(lines[0], ":"), lines[1:]
}

// shown makes text fit for the page: what hides or acts is written out, and a
// figure stays beside its unit.
func shown(text string) string {
	words := units(strings.Fields(patch.Visible(text)))
	for i, w := range words {
		words[i] = strings.ReplaceAll(w, " ", "\u00a0")
	}
	return strings.Join(words, " ")
}

// sentence begins a text with a capital letter, where it begins with a plain
// word, and ends it with a full stop.
func sentence(text string) string {
	word, _, _ := strings.Cut(text, " ")
	if word != "" && strings.Trim(word, "abcdefghijklmnopqrstuvwxyz") == "" {
		text = strings.ToUpper(text[:1]) + text[1:]
	}
	if text != "" && !strings.HasSuffix(text, ".") {
		text += "."
	}
	return text
}

type fact struct{ Name, Text string }

// printerView is one printer on the page.
type printerView struct {
	ID, Name, Problem       string
	Facts                   []fact
	Errors, Warnings, Notes int
	GoesIn, Nozzle, Power   string
	Changed                 int // lines of its diff
	Groups                  []findingGroup
	DiffLead                string
	Left                    []string
	Diff                    []fileView
	Figures                 []figure
	NotDrawn                []string
}

func printerViews(s *fleet.Survey) []*printerView {
	views := make([]*printerView, len(s.Printers))
	for i := range s.Printers {
		p := &s.Printers[i]
		v := &printerView{ID: fmt.Sprintf("p%d", i+1), Name: shown(cmp.Or(p.Name, p.Sheet, "Nothing found"))}
		views[i] = v
		if p.Problem != nil {
			v.Problem = shown(p.Problem.String())
		}
		if in := s.Before[i]; in != nil {
			v.Facts, v.GoesIn = factsOf(in), goesIn(in)
			v.draw(in, s.After[i])
		}
		if p.Sheet != "" {
			v.Facts = append(v.Facts, fact{"Sheet", shown(p.Sheet)})
		}
		if p.Style != "" {
			v.Facts = append(v.Facts, fact{"Style", shown(p.Style)})
		}
		v.group(p.Findings)
	}
	diffViews(s, views)
	return views
}

// factsOf is what the sheet says about the hotend that goes in.
func factsOf(in *rules.Input) []fact {
	n := &in.Sheet.New
	kind := "cartridge"
	if n.Heater.Kind.Value == sheet.PTC {
		kind = "PTC"
	}
	heater := fmt.Sprintf("%s, %s at %s", kind, unit.Watts(n.Heater.RatedW.Value), unit.Volts(n.Heater.RatedV.Value))
	if supply := in.Sheet.Printer.SupplyV.Value; supply != n.Heater.RatedV.Value {
		heater += ", on a supply of " + unit.Volts(supply)
	}
	rated, by := rules.Rating(in)
	return []fact{
		{"Goes in", goesIn(in)},
		{"Asked for", shown(unit.Celsius(n.PrintC.Value[0]) + " to " + unit.Celsius(n.PrintC.Value[1]))},
		{"Rated", shown(unit.Celsius(rated) + ", by the " + by)},
		{"Sensor", shown(rules.SensorName(in))},
		{"Heater", shown(heater)},
	}
}

func goesIn(in *rules.Input) string {
	return shown(cmp.Or(in.Sheet.New.Name.Value, "a hotend without a name"))
}

// findingGroup is the findings of one danger, or those that are waived.
type findingGroup struct {
	Title    string
	Findings []findingView
}

type findingView struct {
	Class, Level, Message, Detail, Change, Waived, Place, Rule string

	Follows []string
}

func (v *printerView) group(findings []fleet.Finding) {
	for _, f := range worstFirst(findings) {
		view := findingView{
			Class: f.Level.String(), Level: f.Level.String(), Message: shown(sentence(f.Message)), Detail: shown(sentence(detail(f))),
			Change: shown(f.Change), Place: shown(placeText(f.Region.File, f.Region.Line)), Rule: f.Rule,
		}
		for _, one := range followsOf(f) {
			view.Follows = append(view.Follows, shown(one.Rule+": "+sentence(one.Message)))
		}
		if f.Waived != "" {
			view.Class, view.Level, view.Waived = "waived", "waived", shown(fmt.Sprintf("%s, since: %s", f.Level, f.Waived))
		} else {
			switch f.Level {
			case rules.Error:
				v.Errors++
			case rules.Warning:
				v.Warnings++
			default:
				v.Notes++
			}
		}
		if title := dangerTitle(f); len(v.Groups) == 0 || v.Groups[len(v.Groups)-1].Title != title {
			v.Groups = append(v.Groups, findingGroup{Title: title})
		}
		g := &v.Groups[len(v.Groups)-1]
		g.Findings = append(g.Findings, view)
	}
}

// Package page writes findings, diff and figures as one HTML page.
package page

import (
	"bytes"
	"cmp"
	"crypto/sha256"
	"embed"
	"encoding/base64"
	"fmt"
	"html/template"
	"io"
	"slices"
	"strings"
	"sync"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/measure"
	"preflash/cmd/internal/plaintext"
	"preflash/cmd/internal/report"
	"preflash/cmd/internal/worklist"
	"preflash/patch"
	"preflash/rules"
)

//go:embed page.html page.css
var pageFiles embed.FS

// pageParts are the template and the style sheet, read when the first page is
// asked for.
var pageParts = sync.OnceValues(func() (*template.Template, string) {
	style, err := pageFiles.ReadFile("page.css")
	if err != nil {
		panic(err) // it is part of the program
	}
	names := template.FuncMap{"shown": shown, "visible": patch.Visible}
	page := template.New("page.html").Funcs(names)
	return template.Must(page.ParseFS(pageFiles, "page.html")), string(style)
})

// page is what the template shows. Every text in it went through shown.
type page struct {
	Title, Lead, Verdict, Caution, Size, NoDiff, Foot string

	Stop     bool // nothing may be heated yet
	Policy   string
	Style    template.CSS
	Cautions []string
	Worst    []*findingView
	Printers []*printerView // worst first
	Trials   *trialsView
}

// Options are what a page holds besides the survey.
type Options struct {
	Day    string              // on which it is made
	Trials *measure.FlowTrials // nil for none
}

// HTML prints a survey as one page that needs nothing else: no script, no
// font, no picture, no request. Its own policy tells the browser to allow
// none.
func HTML(w io.Writer, s *fleet.Survey, o Options) error {
	tmpl, style := pageParts()
	sum := sha256.Sum256([]byte(style))
	p := page{
		Title: titleOf(s),
		Foot: shown(fmt.Sprintf("Made by preflash %s on %s from the sheets and configurations as they "+
			"stand. Temperatures over time are those of a model (preflash rules). No file was changed.",
			s.Version, o.Day)),
		Policy: "default-src 'none'; style-src 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'",
		Style:  template.CSS(style),
	}
	p.Lead, p.Stop = mayHeat(s.Result)
	verdict := plaintext.Sentence(report.Verdict(s.Result))
	p.Verdict = shown(strings.Replace(verdict, report.DoNotHeat+" ", "", 1))
	p.Caution, p.Cautions = cautionList()
	if err := s.Err(); err != nil {
		p.NoDiff = shown(err.Error())
	}
	p.Printers = printerViews(s)
	p.Size = sizeText(s, p.Printers)
	p.Worst = worstOf(p.Printers)
	p.Trials = trialsOf(o.Trials, sheetFlowOf(s))
	var b bytes.Buffer // a failed page is no half page
	if err := tmpl.Execute(&b, &p); err != nil {
		return err
	}
	_, err := w.Write(b.Bytes())
	return err
}

// mayHeat answers first what is asked first, and whether that is a no.
func mayHeat(r *fleet.Result) (text string, stop bool) {
	switch s := r.Summary(); {
	case s.Errors > 0:
		return report.DoNotHeat, true
	case s.Unreadable > 0:
		return "Do not heat what cannot be read.", true
	case s.Printers == 0:
		return "No printer was checked.", true
	case len(r.Bare()) > 0:
		return "Whether it may be heated is not known without a sheet.", true
	}
	return "No error was found. Heat as the cautions say.", false
}

// sizeText says how much the diff changes.
func sizeText(s *fleet.Survey, views []*printerView) string {
	gone, come, files := 0, 0, 0
	for _, v := range views {
		for i := range v.Diff {
			g, c := v.Diff[i].size()
			gone, come, files = gone+g, come+c, files+1
		}
	}
	text := "There is nothing to change in the files."
	if files > 0 {
		text = fmt.Sprintf("It takes out %s and puts in %s, in %s.", plaintext.Plural(gone, "line"),
			plaintext.Plural(come, "line"), plaintext.Plural(files, "file"))
	}
	if n := len(s.Refusals); n > 0 {
		text += fmt.Sprintf(" No diff held for %s when it was tried; the reason stands below.",
			plaintext.Plural(n, "group of printers"))
	}
	return text
}

// worstOf is what stands first: the three worst of what counts.
func worstOf(views []*printerView) []*findingView {
	const most = 3
	var list []*findingView
	for _, v := range views {
		if v.Problem != "" {
			list = append(list, &findingView{Printer: v, ID: v.ID, Class: "error", Mark: markOf[rules.Error],
				Level: "error", Message: v.Problem})
		}
		for i := range v.Groups {
			for j := range v.Groups[i].Findings {
				if f := &v.Groups[i].Findings[j]; f.from.Counts() {
					list = append(list, f)
				}
			}
		}
	}
	slices.SortStableFunc(list, func(a, b *findingView) int {
		if a.from == nil || b.from == nil {
			return cmp.Compare(len(a.Rule), len(b.Rule)) // what cannot be read has no rule
		}
		return fleet.ByDanger(a.from, b.from)
	})
	return list[:min(len(list), most)]
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
	return "Hotend swaps: " + plaintext.Plural(len(s.Printers), "printer")
}

// cautionList takes the cautions apart: what they are for, and each of them.
func cautionList() (string, []string) {
	lines := strings.Split(strings.TrimSpace(worklist.Cautions), "\n")
	for i := range lines {
		lines[i] = strings.TrimPrefix(lines[i], "- ")
	}
	return strings.TrimSuffix(lines[0], ":"), lines[1:]
}

// shown makes text fit for the page: what hides or acts is written out, and a
// figure stays beside its unit.
func shown(text string) string {
	words := plaintext.JoinUnits(strings.Fields(patch.Visible(text)))
	for i, w := range words {
		words[i] = strings.ReplaceAll(w, " ", "\u00a0")
	}
	return strings.Join(words, " ")
}

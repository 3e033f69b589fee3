package report

import (
	"io"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/jsontext"
	"preflash/rules"
)

// schemaVersion changes when a field changes its meaning or goes away. New
// fields do not change it.
const schemaVersion = 1

type resultJSON struct {
	Schema    int           `json:"schema"`
	Tool      toolJSON      `json:"tool"`
	Printers  []printerJSON `json:"printers"`
	Unchanged []string      `json:"unchanged,omitempty"`
	Gone      []string      `json:"gone,omitempty"`
	Fixed     []fixedJSON   `json:"fixed,omitempty"`
	Summary   summaryJSON   `json:"summary"`
}

type toolJSON struct {
	Name    string `json:"name"`
	Version string `json:"version"`
}

type printerJSON struct {
	Name     string        `json:"name"`
	Sheet    string        `json:"sheet"`
	Style    string        `json:"style"`
	Files    []string      `json:"files"`
	Error    *problemJSON  `json:"error"`
	Findings []findingJSON `json:"findings"`
}

type fixedJSON struct {
	Name    string `json:"name"`
	Sheet   string `json:"sheet"`
	Rule    string `json:"rule"`
	Setting string `json:"setting"`
	Since   string `json:"since"`
}

type problemJSON struct {
	File    string `json:"file"`
	Line    int    `json:"line"`
	Column  int    `json:"column"`
	Message string `json:"message"`
}

type findingJSON struct {
	Rule    string         `json:"rule"`
	Level   string         `json:"level"`
	File    string         `json:"file"`
	Line    int            `json:"line"`
	Column  int            `json:"column"`
	Message string         `json:"message"`
	Detail  string         `json:"detail"`
	Change  *string        `json:"change"`
	Waived  *string        `json:"waived"`
	Known   *string        `json:"known,omitempty"`
	Values  map[string]any `json:"values"`
	More    int            `json:"more,omitempty"`
	Follows []followJSON   `json:"follows,omitempty"`
	Rank    int            `json:"rank"`
	Danger  string         `json:"danger"`
}

// followJSON is a finding that follows from another.
type followJSON struct {
	Rule    string `json:"rule"`
	Level   string `json:"level"`
	File    string `json:"file"`
	Line    int    `json:"line"`
	Message string `json:"message"`
}

type summaryJSON struct {
	Printers   int `json:"printers"`
	Unreadable int `json:"unreadable"`
	Errors     int `json:"errors"`
	Warnings   int `json:"warnings"`
	Notes      int `json:"notes"`
}

// JSON prints a result for programs.
func JSON(w io.Writer, r *fleet.Result) error {
	s := r.Summary()
	out := resultJSON{
		Schema:    schemaVersion,
		Tool:      toolJSON{"preflash", r.Version},
		Printers:  make([]printerJSON, len(r.Printers)),
		Unchanged: r.Unchanged,
		Gone:      r.Gone,
		Summary:   summaryJSON{s.Printers, s.Unreadable, s.Errors, s.Warnings, s.Notes},
	}
	for _, f := range r.Fixed {
		out.Fixed = append(out.Fixed, fixedJSON{f.Printer, f.Sheet, f.Rule, f.Setting, f.Since})
	}
	for i, p := range r.Printers {
		row := printerJSON{Name: p.Name, Sheet: p.Sheet, Style: p.Style,
			Files: append([]string{}, p.Files...), Findings: make([]findingJSON, len(p.Findings))}
		if p.Begin != "" {
			row.Sheet = "" // there is none
		}
		if p.Problem != nil {
			row.Error = &problemJSON{p.Problem.File, p.Problem.Line, p.Problem.Column, p.Problem.Message}
		}
		for j, f := range p.Findings {
			row.Findings[j] = findingJSON{
				Rule: f.Rule, Level: f.Level.String(),
				File: f.Region.File, Line: f.Region.Line, Column: f.Region.Column,
				Message: f.Message, Detail: f.Rest(), Change: jsontext.OrNull(f.Change),
				Waived: jsontext.OrNull(f.Waived), Known: jsontext.OrNull(f.Known),
				Values: valuesOf(f.Values), More: f.More, Rank: f.Rank, Danger: f.Danger.String(),
				Follows: followsOf(&f),
			}
		}
		out.Printers[i] = row
	}
	return jsontext.Write(w, out)
}

func followsOf(f *fleet.Finding) []followJSON {
	var list []followJSON
	for i := range f.Follows {
		one := &f.Follows[i]
		list = append(list, followJSON{
			one.Rule, one.Level.String(), one.Region.File, one.Region.Line, one.Text(),
		})
	}
	return list
}

// valuesOf makes the figures of a finding fit for JSON.
func valuesOf(v rules.Values) map[string]any {
	out := make(map[string]any, len(v))
	for name, value := range v {
		out[name] = jsontext.Value(value)
	}
	return out
}

package report

import (
	"fmt"
	"io"
	"strings"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/jsontext"
	"preflash/cmd/internal/plaintext"
	"preflash/parser"
	"preflash/patch"
)

// ValuesText prints every setting with where it stands and what it hides. In few
// columns each of these gets a line of its own.
func ValuesText(w io.Writer, list []fleet.Values, width int) error {
	const columns = 80 // that the table takes, names of files aside
	narrow := width < columns
	more := strings.Repeat(" ", 35)
	if narrow {
		more = "    "
	}
	var b strings.Builder
	for i, v := range list {
		if i > 0 {
			b.WriteByte('\n')
		}
		fmt.Fprintf(&b, "%s (%s)\n", patch.Visible(v.Name), patch.Visible(v.Sheet))
		if v.Problem != nil {
			for _, one := range v.Problem.Each() {
				fmt.Fprintf(&b, "  cannot be read: %s\n", patch.Visible(one.String()))
			}
		}
		for _, s := range v.Settings {
			place := s.State.String()
			if !s.At.IsZero() {
				place = s.At.String()
				if s.State != parser.Set {
					place += ", " + s.State.String()
				}
			}
			details := []string{}
			if narrow {
				fmt.Fprintf(&b, "  %s: %s\n", patch.Visible(string(s.Key)), patch.Visible(s.Text()))
				details = append(details, place)
			} else {
				fmt.Fprintf(&b, "  %-32s %-24s %s\n", patch.Visible(string(s.Key)), patch.Visible(s.Text()),
					patch.Visible(place))
			}
			if s.State == parser.Unknown {
				details = append(details, s.Why)
			}
			for _, h := range s.Hides {
				details = append(details, fmt.Sprintf("hides %s at %s", h.Written, h.At))
			}
			for _, text := range details {
				if narrow {
					b.WriteString(plaintext.Hanging(more, more, text, width-len(more)))
				} else {
					b.WriteString(more + patch.Visible(text) + "\n")
				}
			}
		}
		for _, e := range v.Entries {
			fmt.Fprintf(&b, "  %-8s %s = %s  %s\n", inForce(e.Active), patch.Visible(e.Name),
				patch.Visible(e.Value), patch.Visible(e.At.String()))
		}
	}
	_, err := io.WriteString(patch.HarmlessWriter(w), b.String())
	return err
}

// inForce says in a word whether an entry counts.
func inForce(t parser.Tri) string {
	return [...]string{parser.No: "idle", parser.Yes: "used", parser.Maybe: "unknown"}[t]
}

type valuesJSON struct {
	Printers []printerValues `json:"printers"`
}

type printerValues struct {
	Name     string        `json:"name"`
	Sheet    string        `json:"sheet"`
	Error    *problemJSON  `json:"error"`
	Settings []settingJSON `json:"settings"`
	All      []entryJSON   `json:"all,omitempty"`
}

type settingJSON struct {
	Name  string      `json:"name"`
	Value any         `json:"value"` // number, boolean or text; null where it is unknown
	State string      `json:"state"`
	File  string      `json:"file"`
	Line  int         `json:"line"`
	Hides []placeJSON `json:"hides"`
}

type placeJSON struct {
	File  string `json:"file"`
	Line  int    `json:"line"`
	Value string `json:"value"`
}

type entryJSON struct {
	Name   string `json:"name"`
	Value  string `json:"value"`
	File   string `json:"file"`
	Line   int    `json:"line"`
	Active string `json:"active"`
}

// ValuesJSON prints the same for programs.
func ValuesJSON(w io.Writer, list []fleet.Values) error {
	out := valuesJSON{Printers: []printerValues{}}
	for _, v := range list {
		p := printerValues{Name: v.Name, Sheet: v.Sheet, Settings: []settingJSON{}}
		if v.Problem != nil {
			p.Error = &problemJSON{v.Problem.File, v.Problem.Line, v.Problem.Column, v.Problem.Message}
		}
		for _, s := range v.Settings {
			row := settingJSON{
				Name: string(s.Key), Value: jsonValue(s), State: s.State.String(), Hides: []placeJSON{},
			}
			row.File, row.Line = placeOf(s.At)
			for _, h := range s.Hides {
				file, line := placeOf(h.At)
				row.Hides = append(row.Hides, placeJSON{file, line, h.Written})
			}
			p.Settings = append(p.Settings, row)
		}
		for _, e := range v.Entries {
			file, line := placeOf(e.At)
			p.All = append(p.All, entryJSON{e.Name, e.Value, file, line, e.Active.String()})
		}
		out.Printers = append(out.Printers, p)
	}
	return jsontext.Write(w, out)
}

func placeOf(at parser.Span) (file string, line int) {
	if at.IsZero() {
		return "", 0
	}
	line, _ = at.Position()
	return at.File.Name, line
}

func jsonValue(s parser.Description) any {
	switch s.Value.(type) {
	case float64, bool:
		if s.State == parser.Unknown {
			return nil
		}
		return jsontext.Value(s.Value)
	}
	return s.Text()
}

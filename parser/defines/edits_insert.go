package defines

import (
	"bytes"
	"fmt"

	"preflash/parser"
)

// insert adds a define: after the #undef that ended the option, else after
// the nearest relative that is in force. Never into a branch that is not read.
func (p *plan) insert(name, value string, m macro, near []string) error {
	text := "#define " + name
	if value != "" {
		text += " " + value
	}
	if !m.undef.IsZero() {
		p.insertLine(m.undef, text)
		return nil
	}
	for _, relative := range near {
		if relative == name {
			continue
		}
		switch r := p.s.macro(relative); {
		case r.state == parser.Yes:
			p.insertLine(r.winner.line, text)
			return nil
		case r.removed && len(r.others) > 0: // it stands there for another printer
			p.insertLine(r.others[len(r.others)-1].line, text)
			return nil
		}
	}
	return fmt.Errorf("no line of the files shows where %s belongs; add “%s” by hand", name, text)
}

// insertLine adds a line after the one in which a span ends, with its indent
// and the file's line ending.
func (p *plan) insertLine(after parser.Span, text string) {
	data := after.File.Data
	end := after.End
	if end == after.Start || data[end-1] != '\n' {
		if n := bytes.IndexByte(data[end:], '\n'); n >= 0 {
			end += n + 1
		} else {
			end = len(data)
		}
	}
	start := 1 + bytes.LastIndexByte(data[:after.Start], '\n')
	indent := start
	for indent < len(data) && (data[indent] == ' ' || data[indent] == '\t') {
		indent++
	}
	line, eol := string(data[start:indent])+text, lineEnding(data, start)
	if end > 0 && data[end-1] == '\n' {
		line += eol
	} else {
		line = eol + line // the file has no last line ending, and keeps none
	}
	at := parser.Span{File: after.File, Start: end, End: end}
	p.edits = append(p.edits, parser.Edit{At: at, New: line, For: p.key})
}

// lineEnding is the line ending of the line at start; of the line before it
// where it is the last one and has none.
func lineEnding(data []byte, start int) string {
	n := bytes.IndexByte(data[start:], '\n')
	if n < 0 {
		n = -1 // the end of the line before
	}
	if at := start + n; at > 0 && data[at-1] == '\r' {
		return "\r\n"
	}
	return "\n"
}

// with reads the configuration again as it is after some edits.
func (c *config) with(edits []parser.Edit) (*config, error) {
	contents := make(map[string][]byte, len(c.s.files))
	for _, f := range c.s.files {
		contents[f.Name] = applied(f, edits)
	}
	return readConfig(c.tree.With(contents), c.request)
}

// applied gives a file's bytes after those of the edits that are in it.
func applied(f *parser.File, edits []parser.Edit) []byte {
	var out []byte
	done := 0
	for _, e := range edits {
		if e.At.File == f {
			out = append(append(out, f.Data[done:e.At.Start]...), e.New...)
			done = e.At.End
		}
	}
	if done == 0 && out == nil {
		return f.Data
	}
	return append(out, f.Data[done:]...)
}

// holds reports, as an error, that a change is not in force.
func (c *config) holds(change parser.Change) error {
	for _, d := range c.printer.Settings() {
		if d.Key != change.Key {
			continue
		}
		if c.isNow(d, change.Value) {
			return nil
		}
		why := d.Why
		if why == "" {
			why = "another place decides"
		}
		return fmt.Errorf("an edit of %s does not change the %s: %s; change it by hand", d.Name, d.Key, why)
	}
	return fmt.Errorf("an edit does not change the %s; change it by hand", change.Key)
}

// isNow reports whether a setting has a value, as far as its option can hold
// it.
func (c *config) isNow(d parser.Description, want any) bool {
	if d.State != parser.Set {
		// A figure of 0 can be what switches a thing off.
		return d.State == parser.Off && want == 0.0
	}
	switch want := want.(type) {
	case float64:
		s := c.slot(d.Key)
		got, ok := d.Value.(float64)
		return ok && s != nil && close(got, s.unit.read(s.round.apply(s.unit.write(want))))
	case bool:
		return d.Value == want
	case parser.SensorDef:
		got, ok := d.Value.(parser.SensorDef)
		if !ok || got.Form != want.Form {
			return false
		}
		if want.Form != parser.FormBeta {
			return got.Name == want.Name
		}
		return close(got.R25Ohm, want.R25Ohm) && close(got.BetaK, want.BetaK) && close(got.CubicC, want.CubicC)
	}
	return false
}

// close allows for figures that are written with seven digits.
func close(a, b float64) bool {
	d := a - b
	return d*d <= 1e-12*(a*a+b*b) || d == 0
}

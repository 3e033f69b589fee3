package report

import (
	"bytes"
	"fmt"
	"io"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/plaintext"
	"preflash/parser/sheet"
)

// Waivers lists the findings that a waiver may cover, each for its printer. Of
// several that one waiver covers, the worst is told.
func Waivers(r *fleet.Result) []Waiver {
	var list []Waiver
	for i := range r.Printers {
		p := &r.Printers[i]
		every := p.Every()
		for j := range every {
			f := &every[j]
			if !f.Counts() {
				continue
			}
			one := Waiver{sheet: p.Sheet, rule: f.Rule, finding: f}
			at := len(list)
			for k := range list {
				if list[k].sheet == one.sheet && list[k].finding.SameWaiver(f) {
					at = k
				}
			}
			if at == len(list) {
				list = append(list, one)
			} else if f.WorseThan(list[at].finding) {
				list[at] = one
			}
		}
	}
	return list
}

// Waiver is a finding to be waived.
type Waiver struct {
	sheet, rule string
	finding     *fleet.Finding
}

// PrintWaivers prints waivers as TOML, each below the finding that it covers.
func PrintWaivers(w io.Writer, r *fleet.Result, list []Waiver, reason, until string) error {
	var b bytes.Buffer
	for i, one := range list {
		if i > 0 {
			b.WriteByte('\n')
		}
		b.WriteString(plaintext.Hanging("# ", "# ", "for "+one.sheet+": "+one.finding.Message, 76))
		fmt.Fprintf(&b, "[[waiver]]\nrule = %q\n", one.rule)
		for _, line := range one.finding.WaiverLines() {
			b.WriteString(line + "\n")
		}
		fmt.Fprintf(&b, "reason = %s\nuntil = %s\n", sheet.Quote(reason), until)
	}
	for i := range r.Printers {
		if p := &r.Printers[i]; p.Problem != nil {
			for _, one := range p.Problem.Each() {
				b.WriteString(plaintext.Hanging("# ", "# ", p.Sheet+" cannot be read: "+one.String(), 76))
			}
		}
	}
	_, err := w.Write(b.Bytes())
	return err
}

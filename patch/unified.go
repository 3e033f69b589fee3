package patch

import (
	"bufio"
	"bytes"
	"fmt"
	"io"
	"strings"

	"preflash/parser"
)

// FileChange is one file before and after.
type FileChange struct {
	Name     string // relative to the working directory, with slashes
	Old, New []byte
}

// Options say how a diff is printed.
type Options struct {
	// Lead is printed above the first file; git and GNU patch skip it.
	Lead []string
	// Terminal shows hidden characters of the files as escapes. Such a diff
	// is for reading only.
	Terminal bool
}

const context = 3 // unchanged lines shown around a change

const unfinished = "\\ No newline at end of file\n"

// Unified prints a unified diff that `git apply -p1` and `patch -p1` take at
// the working directory. Files that did not change are left out, and where none
// did nothing is printed at all. A file that lies outside the working directory,
// that git could take for another, or that comes twice, is a *parser.Error,
// before anything is printed; other errors are those of w.
func Unified(w io.Writer, changed []FileChange, o Options) error {
	seen := map[string]bool{}
	for _, c := range changed {
		if err := reachable(c.Name); err != nil {
			return err
		}
		if seen[c.Name] {
			return &parser.Error{File: c.Name,
				Message: "is to be changed twice in one diff; this is a fault in preflash, please report it"}
		}
		seen[c.Name] = true
	}
	out := bufio.NewWriter(w)
	lead := o.Lead
	for _, c := range changed {
		hunks := Hunks(c)
		if len(hunks) == 0 {
			continue
		}
		for _, text := range lead {
			writeLead(out, text)
		}
		lead = nil
		fmt.Fprintf(out, "--- %s\n+++ %s\n", quoteName("a/"+c.Name), quoteName("b/"+c.Name))
		writeHunks(out, hunks, o.Terminal)
	}
	return out.Flush()
}

func writeLead(out *bufio.Writer, text string) {
	for line := range strings.SplitSeq(strings.TrimSuffix(text, "\n"), "\n") {
		if line == "" {
			out.WriteString("#\n")
			continue
		}
		out.WriteString(Harmless("# "+Visible(line)) + "\n")
	}
}

func writeHunks(out *bufio.Writer, hunks []Hunk, terminal bool) {
	for _, h := range hunks {
		fmt.Fprintf(out, "@@ -%s +%s @@\n", extent(h.OldLine, h.OldLines), extent(h.NewLine, h.NewLines))
		for _, l := range h.Lines {
			writeLine(out, l, terminal)
		}
	}
}

// extent is a range of lines as a hunk gives it: no lines stand after the line
// before them.
func extent(line, lines int) string {
	switch lines {
	case 0:
		return fmt.Sprintf("%d,0", line-1)
	case 1:
		return fmt.Sprint(line)
	}
	return fmt.Sprintf("%d,%d", line, lines)
}

func writeLine(out *bufio.Writer, l Line, terminal bool) {
	out.WriteByte(l.Mark)
	if terminal {
		out.WriteString(visibleLine(l.Text))
	} else {
		out.Write(l.Text)
	}
	if l.Text[len(l.Text)-1] != '\n' {
		out.WriteString("\n" + unfinished)
	}
}

// visibleLine keeps the line's own ending: it is harmless, and would clutter
// every line of a file with CRLF.
func visibleLine(line []byte) string {
	text := bytes.TrimSuffix(bytes.TrimSuffix(line, []byte("\n")), []byte("\r"))
	return Visible(string(text)) + string(line[len(text):])
}

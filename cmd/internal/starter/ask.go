package starter

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"

	"preflash/parser"
	"preflash/patch"
)

// Ask asks for the blanks of a sheet one by one, on plain lines: what is typed
// is read from in, the questions go to out. check reads the text of a sheet;
// what it says of an answer is shown, and the question comes again. The end of
// the input leaves the rest blank.
func Ask(s *Sheet, in io.Reader, out io.Writer, check func(text string) error) error {
	left := len(s.Blanks())
	fmt.Fprintf(out, "%d blanks. Enter leaves one blank, - deletes its line where that is allowed.\n", left)
	lines := bufio.NewScanner(in)
	asked := 0
	for _, e := range s.entriesThat(func(e *Entry) bool { return e.Blank || e.PTC }) {
		if e.PTC {
			if !s.ptc() {
				continue
			}
			e.Example, e.Value, e.Blank, e.off, e.Leave = e.Value, `["", ""]`, true, false, true
			left++
		}
		asked++
		fmt.Fprintf(out, "\n%d of %d  %s\n", asked, left, e.Note)
		for {
			fmt.Fprintf(out, "%s, such as %s: ", e.Path, e.Example)
			if !lines.Scan() {
				fmt.Fprintln(out)
				return lines.Err()
			}
			answer := strings.TrimSpace(lines.Text())
			if answer == "" {
				break
			}
			if answer == "-" && e.Leave {
				s.remove(e)
				break
			}
			wrong := s.try(e, answer, check)
			if wrong == "" {
				break
			}
			fmt.Fprintln(out, patch.Visible(wrong))
		}
	}
	return nil
}

// try fills a blank in, or says what is wrong with the answer.
func (s *Sheet) try(e *Entry, answer string, check func(text string) error) string {
	was := e.Value
	e.Value, e.Blank = e.literal(answer), false
	err := check(s.Text())
	if wrong := atLine(err, e.line); wrong != "" {
		e.Value, e.Blank = was, true
		return wrong
	}
	return ""
}

// atLine returns what the errors say of a line.
func atLine(err error, line int) string {
	var one *parser.Error
	switch many, ok := err.(interface{ Unwrap() []error }); {
	case ok:
		for _, e := range many.Unwrap() {
			if text := atLine(e, line); text != "" {
				return text
			}
		}
	case errors.As(err, &one) && one.Line == line:
		return one.Message
	}
	return ""
}

// literal writes an answer in TOML, by the kind of the example.
func (e *Entry) literal(answer string) string {
	switch e.Example[0] {
	case '"':
		return quote(strings.Trim(answer, `"`))
	case '[':
		fields := strings.FieldsFunc(answer, func(r rune) bool { return strings.ContainsRune("[], \t;", r) })
		for i, f := range fields {
			fields[i] = figure(f)
		}
		if strings.HasPrefix(e.Example, "[[") {
			var pairs []string
			for pair := range slices.Chunk(fields, 2) {
				pairs = append(pairs, "["+strings.Join(pair, ", ")+"]")
			}
			fields = pairs
		}
		return "[" + strings.Join(fields, ", ") + "]"
	}
	return figure(answer)
}

// figure writes what was typed as a number, if it is one; a comma may stand
// for the point. What is none is written as text, for the reader to refuse.
func figure(text string) string {
	plain := strings.Replace(text, ",", ".", 1)
	if ok, _ := regexp.MatchString(`^[+-]?(0|[1-9][0-9]*)(\.[0-9]+)?$`, plain); ok {
		return plain
	}
	return quote(text)
}

// remove deletes the line of an entry.
func (s *Sheet) remove(gone *Entry) {
	for i := range s.groups {
		g := &s.groups[i]
		for j, e := range g.entries {
			if e == gone {
				g.entries = append(g.entries[:j:j], g.entries[j+1:]...)
				return
			}
		}
	}
}

package starter

import (
	"bufio"
	"errors"
	"fmt"
	"io"
	"regexp"
	"slices"
	"strings"
	"sync"

	"preflash/cmd/internal/plaintext"
	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
)

// leaveOpen is what is typed to leave a blank open for good.
const leaveOpen = "leave open"

// Questions ask for the blanks of a sheet that was begun, by this program or by
// hand.
type Questions struct {
	About *Sheet                  // what is known of the keys
	Check func(text string) error // reads the text of a sheet
	Save  func(text string) error // called after each answer
}

// Ask asks for the blanks of a sheet one by one, on plain lines: what is typed
// is read from in, the questions go to out. What the check says of an answer is
// shown, and the question comes again. The end of the input leaves the rest
// blank. It returns the sheet as it is then.
func (q *Questions) Ask(text string, in io.Reader, out io.Writer) (string, error) {
	a := &asking{
		Questions: q, text: text, lines: bufio.NewScanner(in), out: out, passed: make(map[string]bool),
	}
	a.intro()
	for {
		b, n := a.next()
		if b == nil {
			break
		}
		more, err := a.question(b, n)
		if err != nil {
			return a.text, err
		}
		if !more {
			fmt.Fprintln(out)
			break
		}
	}
	a.end()
	return a.text, a.lines.Err()
}

// Blocked reports whether the text of a sheet has blanks that block the check.
func (q *Questions) Blocked(text string) bool {
	return slices.ContainsFunc(q.blanksOf(text), func(b *empty) bool { return !b.entry.Leave })
}

// asking is one round of questions.
type asking struct {
	*Questions
	text   string
	lines  *bufio.Scanner
	out    io.Writer
	passed map[string]bool // paths that were left for later
}

// empty is a line of a sheet that is still blank.
type empty struct {
	line  int // from 0
	path  string
	entry *Entry
}

var blankLine = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`^([a-z0-9_]+)\s*=\s*(""|\["", ""\])\s*(#.*)?$`)
})

// blanksOf lists what is blank in the text of a sheet.
func (q *Questions) blanksOf(text string) []*empty {
	var list []*empty
	header := ""
	for i, line := range strings.Split(text, "\n") {
		line = strings.TrimSpace(line)
		if strings.HasPrefix(line, "[") {
			header = strings.Trim(line, "[] ")
			continue
		}
		m := blankLine().FindStringSubmatch(line)
		if m == nil || strings.HasPrefix(header, "old") {
			continue
		}
		path := strings.TrimPrefix(header+"."+m[1], ".")
		list = append(list, &empty{i, path, q.entry(path)})
	}
	return list
}

// entry is what is known of a key.
func (q *Questions) entry(path string) *Entry {
	for i := range q.About.groups {
		for _, e := range q.About.groups[i].entries {
			if e.Path == path && e.Example == "" {
				shown := *e
				shown.Example = e.Value // a key that was commented out
				return &shown
			}
			if e.Path == path {
				return e
			}
		}
	}
	return &Entry{Path: path, Example: `""`}
}

// next is the first blank that was not passed over, and how many are left.
func (a *asking) next() (*empty, int) {
	list := a.blanksOf(a.text)
	for _, b := range list {
		if !a.passed[b.path] {
			return b, len(list)
		}
	}
	return nil, len(list)
}

func (a *asking) intro() {
	list := a.blanksOf(a.text)
	open := 0
	for _, b := range list {
		if b.entry.Leave {
			open++
		}
	}
	a.say(fmt.Sprintf("%s: %d that %s, %d that %s.", plaintext.Plural(len(list), "blank"), len(list)-open,
		blocks(len(list)-open), open, sheet.MayStay))
	a.say(`Enter leaves one for later, "` + leaveOpen +
		`" leaves one open for good where that is allowed, "?" asks again. ` +
		`What was answered is kept when you stop.`)
}

// blocks is Blocks for several.
func blocks(n int) string {
	if n == 1 {
		return sheet.Blocks
	}
	return strings.Replace(sheet.Blocks, "blocks", "block", 1)
}

func (a *asking) end() {
	list := a.blanksOf(a.text)
	if len(list) == 0 {
		a.say("No blank is left.")
		return
	}
	var names []string
	for _, b := range list {
		names = append(names, b.path+" ("+b.entry.word()+")")
	}
	are := "are"
	if len(list) == 1 {
		are = "is"
	}
	blanks := plaintext.Plural(len(list), "blank")
	a.say(fmt.Sprintf("%s %s left: %s.", blanks, are, strings.Join(names, ", ")))
}

// say prints wrapped text.
func (a *asking) say(text string) {
	fmt.Fprint(a.out, plaintext.Hanging("", "", text, lineWidth))
}

// parts are the tables as a person calls them.
var parts = sync.OnceValue(func() map[string]string {
	return map[string]string{
		"printer": "Printer and supply", "new": "New hotend", "new.sensor": "New hotend, its sensor",
		"new.heater": "New hotend, its heater",
		"new.fan":    "New hotend, its fan", "new.nozzle": "New hotend, its nozzle",
	}
})

// question asks for one blank until an answer is good; false at the end of the
// input.
func (a *asking) question(b *empty, left int) (bool, error) {
	header, key := b.path, b.path
	if at := strings.LastIndexByte(b.path, '.'); at >= 0 {
		header, key = b.path[:at], b.path[at+1:]
	}
	u := unitOf(key)
	show := func() {
		fmt.Fprintf(a.out, "\n%s: %s (%d left)\n", parts()[header], key, left)
		a.say(b.entry.Note)
	}
	show()
	for {
		in := ""
		if u != nil {
			in = " in " + u.name
		}
		fmt.Fprintf(a.out, "%s%s, such as %s; %s: ", b.path, in, b.entry.Example, b.entry.word())
		if !a.lines.Scan() {
			return false, nil
		}
		answer := strings.TrimSpace(a.lines.Text())
		switch {
		case answer == "":
			a.passed[b.path] = true
			return true, nil
		case strings.Trim(answer, "?") == "":
			show()
			if key == "curve" {
				a.say("Known: " + strings.Join(sensor.IDs(), ", ") + ".")
			}
			continue
		case strings.EqualFold(answer, leaveOpen), answer == "-":
			if b.entry.Leave || key == "curve" {
				return true, a.keep(a.leave(b))
			}
			a.say("This one " + b.entry.word() + ".")
			continue
		}
		value, wrong := literal(b.entry.Example, answer, u)
		if wrong == "" && key == "curve" {
			wrong = unknownCurve(strings.Trim(value, `"`))
		}
		if wrong == "" {
			text := a.with(b, key+" = "+value)
			if wrong = atLine(a.Check(text), b.line+1); wrong == "" {
				return true, a.keep(a.followUp(b, text))
			}
		}
		a.say(wrong)
	}
}

// with is the text with another line for a blank.
func (a *asking) with(b *empty, line string) string {
	lines := strings.Split(a.text, "\n")
	if strings.HasSuffix(lines[b.line], "\r") {
		line += "\r"
	}
	lines[b.line] = line
	return strings.Join(lines, "\n")
}

// leave leaves a blank open: its line stays, commented out. A sensor without a
// curve has a kind to be told.
func (a *asking) leave(b *empty) string {
	key := b.path[strings.LastIndexByte(b.path, '.')+1:]
	text := a.with(b, fmt.Sprintf("%-*s # left open", noteColumn-1, "#"+key+" = "+b.entry.Example))
	if key == "curve" {
		text = turnOn(text, "new.sensor", "kind")
	}
	return text
}

// followUp makes a blank of what an answer asks for in turn.
func (a *asking) followUp(b *empty, text string) string {
	if e := a.entry("new.heater.hot_w"); b.path == "new.heater.kind" && e.PTC &&
		strings.Contains(strings.Split(text, "\n")[b.line], string(sheet.PTC)) {
		return turnOn(text, "new.heater", "hot_w")
	}
	return text
}

// turnOn makes a blank of a key that is commented out.
func turnOn(text, table, key string) string {
	lines := strings.Split(text, "\n")
	header := ""
	for i, line := range lines {
		bare := strings.TrimSpace(line)
		if strings.HasPrefix(bare, "[") {
			header = strings.Trim(bare, "[] ")
		}
		if header == table && strings.HasPrefix(bare, "#"+key+" = ") {
			value := `""`
			if strings.Contains(bare, "= [") {
				value = `["", ""]`
			}
			lines[i] = key + " = " + value + line[len(strings.TrimRight(line, "\r")):]
			break
		}
	}
	return strings.Join(lines, "\n")
}

func (a *asking) keep(text string) error {
	a.text = text
	return a.Save(text)
}

// unknownCurve says what is wrong with the name of a curve.
func unknownCurve(name string) string {
	if _, ok := sensor.Find(name); ok {
		return ""
	}
	text := fmt.Sprintf("%q is not a curve that is known", name)
	if near := parser.Nearest(name, sensor.IDs()); near != "" {
		text += "; did you mean " + near + "?"
	}
	return text + ` "?" lists them.`
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

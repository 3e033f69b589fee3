package plaintext

import (
	"bufio"
	"cmp"
	"io"
	"strings"
)

// Options say how text looks. Colour never carries a meaning that the words do
// not.
type Options struct {
	Color bool
	Width int // columns; 0 means 80
}

// Printer prints text into a buffer, which is to be flushed.
type Printer struct {
	*bufio.Writer
	Options
}

// NewPrinter prints to w.
func NewPrinter(w io.Writer, o Options) Printer {
	o.Width = cmp.Or(o.Width, 80)
	return Printer{bufio.NewWriter(w), o}
}

// Margin is how many columns the word of an entry takes; what is said about it
// stands to its right.
const Margin = 9

// Entry prints a word in the margin and untrusted text beside it.
func (p *Printer) Entry(word, colour, text string) {
	pad := strings.Repeat(" ", max(0, Margin-2-len(word)))
	p.Hang(pad+p.Paint(colour, word)+"  ", Margin, text)
}

// Hang prints untrusted text after a head that is so many columns wide, and
// further lines below it.
func (p *Printer) Hang(head string, indent int, text string) {
	p.WriteString(Hanging(head, strings.Repeat(" ", indent), text, p.Width-indent))
}

// What Paint knows; "" is the colour of all other text.
const (
	Red    = "1;31"
	Yellow = "1;33"
	Strong = "1"
)

// Bold sets text in bold type, where there is colour.
func (p *Printer) Bold(s string) string { return p.Paint(Strong, s) }

// Paint sets text in a colour, where there is any.
func (p *Printer) Paint(colour, s string) string {
	if !p.Color || colour == "" {
		return s
	}
	return "\x1b[" + colour + "m" + s + "\x1b[0m"
}

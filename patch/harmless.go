package patch

import (
	"fmt"
	"io"
	"strings"
)

// Services that run checks take some lines of a log for commands: such as
// begin with two colons, with two number signs or another doubled mark, and
// such as hold two number signs anywhere (common practice, no source). So the
// second of two such marks is written as an escape.

// HarmlessWriter passes text on without what a service could take for a
// command. Colours at the start of a line count as blanks.
func HarmlessWriter(w io.Writer) io.Writer { return &harmless{w: w, atStart: true} }

// Harmless is HarmlessWriter for text that is printed at the start of a line.
func Harmless(text string) string {
	var b strings.Builder
	_, _ = HarmlessWriter(&b).Write([]byte(text)) // a Builder takes everything
	return b.String()
}

type harmless struct {
	w       io.Writer
	atStart bool // nothing but blanks and colours on the line so far
	colour  bool // inside an escape sequence
	mark    byte // the mark just written that must not come twice
	out     []byte
}

func (h *harmless) Write(p []byte) (int, error) {
	h.out = h.out[:0]
	for _, c := range p {
		doubled := c == h.mark
		h.mark = 0
		switch {
		case c == '\n':
			h.atStart, h.colour = true, false
		case h.colour:
			h.colour = c != 'm'
		case c == 0x1b:
			h.colour = true
		case doubled:
			h.out = fmt.Appendf(h.out, `\u%04x`, c)
			h.atStart = false
			continue
		case c == '#' || h.atStart && strings.IndexByte(":-+~^%@[", c) >= 0:
			h.mark, h.atStart = c, false
		case c != ' ' && c != '\t' && c != '\r':
			h.atStart = false
		}
		h.out = append(h.out, c)
	}
	if _, err := h.w.Write(h.out); err != nil {
		return 0, err
	}
	return len(p), nil
}

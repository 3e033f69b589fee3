package patch

import (
	"bytes"
	"testing"

	"pgregory.net/rapid"
)

// The lines of the hunks are lines of both texts, where the numbers say.
func TestHunks(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		line := rapid.SampledFrom([]string{"a\n", "b\r\n", "\n", "long line\n"})
		text := func(label string) [][]byte {
			var lines [][]byte
			for _, l := range rapid.SliceOfN(line, 0, 30).Draw(t, label) {
				lines = append(lines, []byte(l))
			}
			if n := len(lines); n > 0 && rapid.Bool().Draw(t, label+" unfinished") {
				lines[n-1] = []byte("end")
			}
			return lines
		}
		old, new := text("old"), text("new")
		hunks := Hunks(FileChange{Old: bytes.Join(old, nil), New: bytes.Join(new, nil)})
		if same := bytes.Equal(bytes.Join(old, nil), bytes.Join(new, nil)); same != (len(hunks) == 0) {
			t.Fatalf("%d hunks, and the texts are equal: %v", len(hunks), same)
		}
		oldAt, newAt := 0, 0
		for _, h := range hunks {
			if h.OldLine-1-oldAt != h.NewLine-1-newAt || h.OldLine-1 < oldAt {
				t.Fatalf("the hunk at %d, %d leaves out unequal lines", h.OldLine, h.NewLine)
			}
			for ; oldAt < h.OldLine-1; oldAt, newAt = oldAt+1, newAt+1 {
				if !bytes.Equal(old[oldAt], new[newAt]) {
					t.Fatalf("line %d changed outside of all hunks", oldAt+1)
				}
			}
			for _, l := range h.Lines {
				if l.Mark != '+' {
					if !bytes.Equal(l.Text, old[oldAt]) {
						t.Fatalf("%q is not old line %d", l.Text, oldAt+1)
					}
					oldAt++
				}
				if l.Mark != '-' {
					if !bytes.Equal(l.Text, new[newAt]) {
						t.Fatalf("%q is not new line %d", l.Text, newAt+1)
					}
					newAt++
				}
			}
			if oldAt != h.OldLine-1+h.OldLines || newAt != h.NewLine-1+h.NewLines {
				t.Fatalf("the hunk says %d and %d lines", h.OldLines, h.NewLines)
			}
		}
		if !bytes.Equal(bytes.Join(old[oldAt:], nil), bytes.Join(new[newAt:], nil)) {
			t.Fatal("the rest differs")
		}
	})
}

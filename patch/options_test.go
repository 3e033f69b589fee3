package patch

import (
	"slices"
	"testing"

	"preflash/parser"
)

// What stood or stands on a line that was edited is the edit's own business.
func TestCompareEdited(t *testing.T) {
	there := func(a *altered) {
		at := parser.Span{File: a.Printer().Files[0], Start: 0, End: 1}
		a.options = append(slices.Clone(a.options),
			parser.Entry{Name: "a", Value: "1", Active: parser.Yes, Elsewhere: true, At: at})
		on := &a.Printer().Storage.On
		*on = parser.Setting[bool]{Key: on.Key, State: parser.Set, Value: true, Place: parser.Place{At: at}}
	}
	for name, states := range map[string][2]func(*altered){"goes": {there, nil}, "comes": {nil, there}} {
		g, trial := alter(t, states[0], states[1])
		for _, st := range []*checkedConfig{trial.before, trial.now} { // each was read in a folder of its own
			f := st.config.Printer().Files[0]
			g.plan.Files = append(g.plan.Files, FileChange{f.Real, f.Data, append([]byte("#"), f.Data...)})
		}
		expect(t, g.compareOptions(trial, g.editedLines()), "")
		if name == "comes" {
			expect(t, g.compareSettings(trial, g.editedLines()), "")
		}
		if len(g.plan.Asides) > 0 {
			t.Errorf("%s: said aside: %v", name, g.plan.Asides)
		}
	}
}

func TestEditedLines(t *testing.T) {
	old, new := []byte("a\nb\nc\nd\n"), []byte("a\nB\nc\nx\nd\n")
	g := group{plan: &Plan{Files: []FileChange{{"f", old, new}}}}
	edited := g.editedLines()
	for i, want := range []bool{false, true, false, false} {
		at := parser.Span{File: parser.NewFile("f", old), Start: 2 * i, End: 2*i + 1}
		if got := edited.touches(at, true); got != want {
			t.Errorf("line %d of the old text: edited %v, want %v", i+1, got, want)
		}
	}
	for i, want := range []bool{false, true, false, true, false} {
		at := parser.Span{File: parser.NewFile("f", new), Start: 2 * i, End: 2*i + 1}
		if got := edited.touches(at, false); got != want {
			t.Errorf("line %d of the new text: edited %v, want %v", i+1, got, want)
		}
	}
	if !edited.touches(parser.Span{File: parser.NewFile("f", old), Start: 1, End: 3}, true) {
		t.Error("a place of two lines is not edited")
	}
	if !edited.touches(parser.Span{File: parser.NewFile("f", old), Start: 2, End: 2}, true) {
		t.Error("a name without a value is not edited with its line")
	}
	if edited.touches(parser.Span{File: parser.NewFile("other", old), Start: 2, End: 3}, true) {
		t.Error("another file is edited")
	}
	if edited.touches(parser.Span{}, true) {
		t.Error("nowhere is edited")
	}
}

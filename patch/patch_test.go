package patch

import (
	"strings"
	"testing"

	"preflash/parser"
)

// edit replaces the first occurrence of old, or inserts before it where new
// starts with +.
func edit(f *parser.File, old, new string, key parser.Key) parser.Edit {
	at := strings.Index(string(f.Data), old)
	if at < 0 {
		panic("no " + old)
	}
	end := at + len(old)
	if inserted, ok := strings.CutPrefix(new, "+"); ok {
		end, new = at, inserted
	}
	return parser.Edit{At: parser.Span{File: f, Start: at, End: end}, New: new, For: key}
}

func TestApply(t *testing.T) {
	f := parser.NewFile("printer.cfg", []byte("max_temp: 285\r\nmin_temp: 5"))
	other := parser.NewFile("other.cfg", f.Data)
	again := parser.NewFile("printer.cfg", f.Data)
	span := func(start, end int) parser.Edit {
		return parser.Edit{At: parser.Span{File: f, Start: start, End: end}, For: "x"}
	}
	type edits []parser.Edit
	tests := []struct {
		name  string
		edits edits
		want  string
		err   string
	}{
		{name: "none", want: "max_temp: 285\r\nmin_temp: 5"},
		{name: "one", edits: edits{edit(f, "285", "260", "")}, want: "max_temp: 260\r\nmin_temp: 5"},
		{
			name:  "two",
			edits: edits{edit(f, "285", "260", ""), edit(f, "min_temp: 5", "min_temp: 0", "")},
			want:  "max_temp: 260\r\nmin_temp: 0",
		},
		{
			name:  "two, last first",
			edits: edits{edit(f, "min_temp: 5", "min_temp: 0", "last"), edit(f, "285", "260", "first")},
			err:   "the edits of the last and the first overlap, or come out of order",
		},
		{
			name: "insertions at one place keep their order",
			edits: edits{edit(f, "min", "+a: 1\r\n", "a"), edit(f, "min", "+b: 2\r\n", "b"),
				edit(f, "min_temp", "low", "c")},
			want: "max_temp: 285\r\na: 1\r\nb: 2\r\nlow: 5",
		},
		{name: "at both ends", edits: edits{{At: parser.Span{File: f}, New: "# \r\n"}, span(26, 26)},
			want: "# \r\nmax_temp: 285\r\nmin_temp: 5"},
		{name: "same file read twice", edits: edits{edit(again, "285", "260", "")},
			want: "max_temp: 260\r\nmin_temp: 5"},
		{name: "overlap", edits: edits{edit(f, "temp: 285", "temp: 1", "one"), edit(f, "285", "260", "two")},
			err: "printer.cfg:1: the edits of the one and the two overlap, or come out of order"},
		{name: "another file", edits: edits{edit(other, "285", "260", "limit")},
			err: "belongs to another file (other.cfg:1)"},
		{name: "no file", edits: edits{{}}, err: "belongs to another file (nowhere)"},
		{name: "past the end", edits: edits{span(20, 28)}, err: "covers bytes 20 to 28 of 26"},
		{name: "before the start", edits: edits{span(-1, 2)}, err: "covers bytes -1 to 2"},
		{name: "backwards", edits: edits{span(5, 2)}, err: "covers bytes 5 to 2"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			got, err := Apply(f, tt.edits)
			if tt.err != "" {
				if err == nil || !strings.Contains(err.Error(), tt.err) {
					t.Fatalf("error %v, want %q", err, tt.err)
				}
				return
			}
			if err != nil || string(got) != tt.want {
				t.Errorf("got %q, %v; want %q", got, err, tt.want)
			}
		})
	}
	if string(f.Data) != "max_temp: 285\r\nmin_temp: 5" {
		t.Errorf("the old text was changed: %q", f.Data)
	}
}

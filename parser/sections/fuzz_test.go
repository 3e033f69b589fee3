package sections

import (
	"bytes"
	"testing"

	"preflash/parser"
)

// FuzzRead reads any bytes as a main file and as an included one: no panic,
// no byte changed, every span inside its file and every error at a line that
// is there. What was read can be edited.
func FuzzRead(f *testing.F) {
	f.Add([]byte(printerText+savedText), []byte("[extruder]\nmax_temp: 1\n"))
	f.Add([]byte("[include other.cfg]\r\n[a]\rb:\r\n  c ;d\n"), []byte("\xef\xbb\xbf[x]\n\xff: \x85\n"))
	f.Add([]byte(`[thermistor a]
temperature1: 25
resistance1: 1
beta: 1
[extruder]
sensor_type: a
`), []byte("#*# [a]"))
	f.Add([]byte("[extruder]\n"+savedHead+"#*# [extruder]\n#*# x =\n#*#  1\n"), []byte(`[gcode_macro A]
gcode: M104 S200
  SET_HEATER_TEMPERATURE HEATER=extruder TARGET=1
`))
	dir := f.TempDir()
	writeFiles(f, dir, files{"printer.cfg": "", "other.cfg": ""})
	tree := openTree(f, dir)
	f.Fuzz(func(t *testing.T, main, other []byte) {
		given := map[string][]byte{
			tree.Shown("printer.cfg"): bytes.Clone(main), tree.Shown("other.cfg"): bytes.Clone(other),
		}
		read, err := Style.Read(tree.With(given), parser.Request{Files: []string{"printer.cfg", "other.cfg"}})
		if err != nil {
			e, ok := err.(*parser.Error)
			lines := 1 + max(bytes.Count(main, []byte("\n")), bytes.Count(other, []byte("\n")))
			if !ok || e.Message == "" || e.File == "" || e.Line < 0 || e.Line > lines {
				t.Fatalf("a bad error: %#v", err)
			}
			return
		}
		c := read.(*config)
		for _, file := range c.files {
			want := map[string][]byte{"printer.cfg": main, "other.cfg": other}[file.Path]
			if !bytes.Equal(file.Data, want) {
				t.Fatalf("%s was changed", file.Path)
			}
			joined := 0
			for at := 0; at < len(file.Data); {
				stop, next := lineAt(file.Data, at)
				if stop < at || next <= at || next < stop || next > len(file.Data) {
					t.Fatalf("line %d to %d, next %d", at, stop, next)
				}
				joined += next - at
				at = next
			}
			if joined != len(file.Data) {
				t.Fatalf("the lines are %d of %d bytes", joined, len(file.Data))
			}
		}
		inside := func(s parser.Span) {
			if s.File != nil && (s.Start < 0 || s.Start > s.End || s.End > len(s.File.Data)) {
				t.Fatalf("span %d to %d of %d bytes", s.Start, s.End, len(s.File.Data))
			}
		}
		for _, e := range c.Entries() {
			inside(e.At)
		}
		var changes []parser.Change
		for s := range c.Printer().Settings() {
			inside(s.At)
			for _, h := range s.Hides {
				inside(h.At)
			}
			if v, ok := s.Value.(float64); ok {
				changes = append(changes, num(s.Key, v+1))
			}
		}
		for _, r := range c.Printer().Remarks {
			inside(r.At)
		}
		for _, change := range changes {
			if edits, err := c.Edits([]parser.Change{change}); err == nil {
				apply(t, edits)
			}
		}
	})
}

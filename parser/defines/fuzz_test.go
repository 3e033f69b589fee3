package defines

import (
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
)

// FuzzRead: nothing panics, every span lies in its line and every line in its
// file, a name is what stands at its place, and a commented-out define without
// the bytes of uncomment is that define.
func FuzzRead(f *testing.F) {
	for _, seed := range []string{
		"#define X 3 // c\n#if ENABLED(X) && Y > 2\r\n#else\r\n//#define Z 1\n#endif",
		"/*\n * #define X\n*/ %:define X(a,...) a##__VA_ARGS__ #a\n#if X(1, 2)\n#elif defined X\n#endif\n",
		"\xef\xbb\xbf#inc\\\nlude \"part.h\"\n#undef X\r#error no\n",
		"R\"x(\n)x\" '\\'' \"\\\n\" // \\\n c\n#if 'a' ? 0x1u : TERN(X, 1, 2)\n#endif\n",
	} {
		f.Add([]byte(seed), []byte("#pragma once\n#define X 1\n"))
	}
	for _, dir := range []string{"00", "07", "19", "31"} {
		main, err := os.ReadFile(filepath.Join(references, dir, "main.h"))
		if err != nil {
			f.Fatal(err)
		}
		part, err := os.ReadFile(filepath.Join(references, dir, "part.h"))
		if err != nil {
			f.Fatal(err)
		}
		f.Add(main, part)
	}
	dir := f.TempDir()
	for _, name := range []string{"main.h", "part.h"} {
		writeFile(f, dir, name, "")
	}
	tree := openTree(f, dir)
	f.Fuzz(func(t *testing.T, main, part []byte) {
		tree := tree.With(map[string][]byte{tree.Shown("main.h"): main, tree.Shown("part.h"): part})
		before := string(main)
		s, err := load(tree, parser.Request{Files: []string{"main.h"}, Absent: []string{"gone.h"}}, isPooled)
		if err != nil {
			if _, ok := err.(*parser.Error); !ok {
				t.Fatalf("the error is no parser.Error: %v", err)
			}
			return
		}
		checkLines(t, s)
		for name := range s.names {
			m := s.macro(name)
			if m.state == parser.Yes && m.winner == nil || m.state == parser.Maybe && m.why == "" {
				t.Errorf("%s: state %v without winner or reason", name, m.state)
			}
			s.enabled(name)
		}
		for _, d := range s.all() {
			if (d.reached == parser.Maybe) != (d.condition != "") {
				t.Errorf("%s: reached %v, condition %q", d.name, d.reached, d.condition)
			}
			s.number(d.value())
			s.expand(d.value())
			if d.at.File == s.files[0] && !d.uncomment.IsZero() {
				checkUncomment(t, d)
			}
		}
		if string(main) != before {
			t.Error("the file's bytes changed")
		}
	})
}

func checkLines(t *testing.T, s *source) {
	for _, u := range s.order {
		if len(u.text) != len(u.file.Data) {
			t.Fatalf("%d bytes of text for %d of the file", len(u.text), len(u.file.Data))
		}
		var joined strings.Builder
		last := int32(0)
		for i := u.from; i < u.to; i++ {
			d := &s.lines[i]
			inside := d.start <= d.rest && d.rest <= d.restEnd && d.restEnd <= d.end &&
				int(d.end) <= len(u.text)
			if d.name >= 0 {
				inside = inside && d.start <= d.nameAt && d.nameAt < d.nameEnd && d.nameEnd <= d.end
				if got := unspliced(u.text[d.nameAt:d.nameEnd]); got != s.table.all[d.name].text {
					t.Errorf("%q stands where the name is %q", got, s.table.all[d.name].text)
				}
			}
			if !inside {
				t.Errorf("a span of %+v lies outside", *d)
			}
			if d.block {
				continue // its line may hold a directive as well
			}
			if d.start < last {
				t.Errorf("lines overlap at %d", d.start)
			}
			joined.Write(u.file.Data[last:d.start])
			joined.Write(u.file.Data[d.start:d.end])
			last = d.end
		}
		joined.Write(u.file.Data[last:])
		if joined.String() != string(u.file.Data) {
			t.Error("the lines do not join to the file")
		}
	}
}

func checkUncomment(t *testing.T, d *define) {
	data := d.at.File.Data
	cut := slices.Concat(data[:d.uncomment.Start], data[d.uncomment.End:])
	after := &source{}
	if after.scan(&header{file: parser.NewFile("cut.h", cut)}) != nil {
		return // a raw string or the like in its value
	}
	for i := range after.lines {
		l := &after.lines[i]
		if l.kind == kindDefine && !l.comment &&
			int(l.nameAt) == d.at.Start-(d.uncomment.End-d.uncomment.Start) {
			if got := after.at(int32(i)); got.value() == d.value() && got.name == d.name {
				return
			}
		}
	}
	t.Errorf("%q without %q is no define of %s as %q", d.line.Text(), d.uncomment.Text(), d.name, d.value())
}

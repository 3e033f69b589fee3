package sections

import (
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
)

// What cannot be read is one error with file and line.
func TestReadErrors(t *testing.T) {
	deep := files{"printer.cfg": "[include d0.cfg]\n"}
	for i := range 20 {
		deep[fmt.Sprintf("d%d.cfg", i)] = fmt.Sprintf("\n[include d%d.cfg]\n", i+1)
	}
	deep["d20.cfg"] = "[a]\nb: 1\n"
	double := files{"printer.cfg": "[include t0.cfg]\n[include t0.cfg]\n", "t14.cfg": ""}
	for i := range 14 {
		double[fmt.Sprintf("t%d.cfg", i)] = strings.Repeat(fmt.Sprintf("[include t%d.cfg]\n", i+1), 2)
	}
	for _, test := range []struct {
		name  string
		files files
		file  string
		line  int
		says  string
	}{
		{"an option before any section", files{"printer.cfg": "# c\n\na: 1\n"},
			"printer.cfg", 3, "before any [section]"},
		{"an option behind an include", files{"printer.cfg": "[a]\n[include b.cfg]\nc: 1\n", "b.cfg": ""},
			"printer.cfg", 3, "an include ends the section"},
		{"a bare word", files{"printer.cfg": "[include b.cfg]\n", "b.cfg": "[a]\r\nb: 1\r\nword\r\n"},
			"b.cfg", 3, `"word" is neither`},
		{"no name", files{"printer.cfg": "[a]\n = 1\n"}, "printer.cfg", 2, "no name before its ="},
		{"control characters stay out of the message", files{"printer.cfg": "[a]\n\x1b[31mred\xff\n"},
			"printer.cfg", 2, `"\x1b[31mred\xff"`},
		{"a missing include", files{"printer.cfg": "[a]\nb: 1\n\n[include x/c.cfg]\n"},
			"printer.cfg", 4, "x/c.cfg does not exist"},
		{"a missing include in a folder", files{
			"printer.cfg": "[include x/c.cfg]\n", "x/c.cfg": "\n[include d.cfg]\n",
		}, "x/c.cfg", 2, "x/d.cfg does not exist"},
		{"an include of a folder", files{"printer.cfg": "[include x]\n", "x/c.cfg": ""},
			"printer.cfg", 1, "is a folder"},
		{"an include of itself", files{"printer.cfg": "[a]\n[include *.cfg]\n"}, "printer.cfg",
			2, "printer.cfg → printer.cfg"},
		{"a cycle", files{
			"printer.cfg": "[include a.cfg]\n", "a.cfg": "[include b.cfg]\n",
			"b.cfg": "\n\n[include a.cfg]\n",
		}, "b.cfg", 3, "a.cfg → b.cfg → a.cfg"},
		{"too deep", deep, "d15.cfg", 2, "more than 16 deep"},
		{"too many", double, "t11.cfg", 2, "more than 256 files"},
		{"out of the root", files{"printer.cfg": "[include ../x.cfg]\n"},
			"printer.cfg", 1, "outside the root"},
		{"out of the root by a pattern", files{"printer.cfg": "[include ../../*.cfg]\n"},
			"printer.cfg", 1, "outside the root"},
		{"an absolute path", files{"printer.cfg": "\n[include /etc/passwd]\n"}, "printer.cfg",
			2, "the included file /etc/passwd lies outside the root"},
		{"an absolute pattern", files{"printer.cfg": "[include /etc/pass*]\n"},
			"printer.cfg", 1, "outside the root"},
		{"a NUL byte in an include", files{"printer.cfg": "[include b.cfg]\n", "b.cfg": "[a]\n\x00"},
			"printer.cfg", 1, "b.cfg holds a NUL byte in line 2"},
		{"no main file", files{"other.cfg": ""}, "printer.cfg", 0, "does not exist"},
	} {
		_, err := tryFiles(t, test.files)
		var e *parser.Error
		if !errors.As(err, &e) {
			t.Errorf("%s: %v", test.name, err)
			continue
		}
		if filepath.Base(e.File) != filepath.Base(test.file) || e.Line != test.line ||
			!strings.Contains(e.Message, test.says) {
			t.Errorf("%s: %v\nwant %s:%d and %q", test.name, err, test.file, test.line, test.says)
		}
	}
}

func TestLinkOutOfTheRoot(t *testing.T) {
	dir := t.TempDir()
	writeFiles(t, dir, files{
		"secret.cfg": "[extruder]\nsecret: 1\n", "root/printer.cfg": "[include l*.cfg]\n",
	})
	if err := os.Symlink("../secret.cfg", filepath.Join(dir, "root", "link.cfg")); err != nil {
		t.Fatal(err)
	}
	tree := openTree(t, filepath.Join(dir, "root"))
	_, err := Style.Read(tree, parser.Request{Files: []string{"printer.cfg"}})
	if err == nil || !strings.Contains(err.Error(), "link.cfg lies outside the root") ||
		strings.Contains(err.Error(), "secret: 1") {
		t.Errorf("%v", err)
	}
}

// A file that the sheet calls absent may be missing, and may be there.
func TestAbsent(t *testing.T) {
	contents := files{"printer.cfg": `[extruder]
max_temp: 280
[include sub/../panel.cfg]
[include /home/panel/x.cfg]
`}
	c := readFiles(t, contents, absent("./panel.cfg", "/home/panel/x.cfg"))
	gaps := remarksOf(c, parser.RemarkGap)
	if len(gaps) != 2 || !strings.Contains(gaps[0].Text, "wins over every line above") {
		t.Fatalf("%v", gaps)
	}
	if line, column := gaps[0].At.Position(); line != 3 || column != 10 {
		t.Errorf("the gap is at %d:%d", line, column)
	}
	contents["panel.cfg"] = "[extruder]\nmax_temp: 300\n"
	c = readFiles(t, contents, absent("panel.cfg", "/home/panel/x.cfg"))
	if s := described(t, c, parser.MaxTemp); s.Value != 300.0 {
		t.Errorf("max temp %v", s.Value)
	}
	if gaps = remarksOf(c, parser.RemarkGap); len(gaps) != 1 {
		t.Errorf("%v", gaps)
	}
}

// It may lie anywhere, and be a link that leads nowhere or out of the root.
func TestAbsentAnywhere(t *testing.T) {
	dir := t.TempDir()
	writeFiles(t, dir, files{
		"outside.cfg": "[extruder]\nmax_temp: 999\n",
		"root/printer.cfg": "[include ../outside.cfg]\n[include " + filepath.ToSlash(dir) + `/root/gone.cfg]
[include links/*.cfg]
[include ~/addon.cfg]
[include ../more/*.cfg]
[extruder]
max_temp: 280
`,
	})
	links := filepath.Join(dir, "root", "links")
	if err := os.Mkdir(links, 0o777); err != nil {
		t.Fatal(err)
	}
	for name, to := range map[string]string{
		"nowhere.cfg": "gone", "out.cfg": "../../outside.cfg", "self.cfg": "self.cfg",
	} {
		if err := os.Symlink(to, filepath.Join(links, name)); err != nil {
			t.Fatal(err)
		}
	}
	tree := openTree(t, filepath.Join(dir, "root"))
	absent := []string{
		"../outside.cfg", "./gone.cfg", "links/nowhere.cfg", "links/out.cfg", "links/self.cfg",
		"~/addon.cfg", "../more/*.cfg",
	}
	read, err := Style.Read(tree, parser.Request{Files: []string{"printer.cfg"}, Absent: absent})
	if err != nil {
		t.Fatal(err)
	}
	c := read.(*config)
	if gaps := remarksOf(c, parser.RemarkGap); len(gaps) != len(absent) {
		t.Errorf("%d gaps for %d absent files: %v", len(gaps), len(absent), gaps)
	}
	if s := described(t, c, parser.MaxTemp); s.Value != 280.0 {
		t.Errorf("max temp %v: a file outside the root was read", s.Value)
	}
	for i, name := range absent {
		others := slices.Delete(slices.Clone(absent), i, i+1)
		_, err := Style.Read(tree, parser.Request{Files: []string{"printer.cfg"}, Absent: others})
		var e *parser.Error
		if !errors.As(err, &e) || !strings.HasSuffix(e.Message, "list it under absent in the sheet") {
			t.Errorf("%s: %v", name, err)
			continue
		}
		gone := []string{"./gone.cfg", "links/nowhere.cfg", "~/addon.cfg"}
		if missing := e.Missing != ""; missing != slices.Contains(gone, name) {
			t.Errorf("%s: missing is %q", name, e.Missing)
		}
	}
}

func TestPatternWithoutMatch(t *testing.T) {
	c := readText(t, "[include none/*.cfg]\n[a]\nb: 1\n")
	gaps := remarksOf(c, parser.RemarkGap)
	if len(gaps) != 1 || !strings.Contains(gaps[0].Text, "matches no file") {
		t.Errorf("%v", gaps)
	}
}

// What looks like an include and is none is said: the firmware takes it for a
// section.
func TestIncludesThatAreNone(t *testing.T) {
	for _, line := range []string{" [include a.cfg]", "[Include a.cfg]", "[include\ta.cfg]", "[include]"} {
		c := readText(t, "[a]\nb: 1\n[c]\n"+line+"\n")
		gaps := remarksOf(c, parser.RemarkGap)
		if len(gaps) != 1 || !strings.Contains(gaps[0].Text, "includes nothing") {
			t.Errorf("%q: %v", line, gaps)
		}
	}
}

// Several files are read in order; one that was included is not read again.
func TestSeveralFiles(t *testing.T) {
	c := readFiles(t, files{
		"printer.cfg": "[include a.cfg]\n[extruder]\nmax_temp: 1\n" + savedHead +
			"#*# [extruder]\n#*# max_temp = 9\n#*# min_temp = 9\n",
		"a.cfg": "[extruder]\nmax_temp: 2\n",
		"b.cfg": "[extruder]\nmin_temp: 3\n",
	}, func(r *parser.Request) { r.Files = []string{"printer.cfg", "a.cfg", "b.cfg"} })
	var names []string
	for _, f := range c.Printer().Files {
		names = append(names, f.Path)
	}
	if strings.Join(names, " ") != "printer.cfg a.cfg b.cfg" {
		t.Errorf("files %v", names)
	}
	for key, want := range map[string]string{"extruder.max_temp": "1", "extruder.min_temp": "3"} {
		if got, _ := entry(c, key); got != want {
			t.Errorf("%s is %s, want %s", key, got, want)
		}
	}
	if _, err := Style.Read(treeOf(t, nil), parser.Request{}); err == nil {
		t.Error("no file at all is read")
	}
}

// A byte order mark is an option before any section to the firmware, in every
// file (facts of the style's firmware, generation of 2026).
func TestByteOrderMark(t *testing.T) {
	for _, contents := range []files{
		{"printer.cfg": "\ufeff[extruder]\nmax_temp: 280\n"},
		{"printer.cfg": "[include x.cfg]\n[extruder]\nmax_temp: 280\n", "x.cfg": "\ufeff# no section\n"},
	} {
		_, err := tryFiles(t, contents)
		if err == nil || !strings.Contains(err.Error(), "byte order mark") {
			t.Errorf("%q: %v", contents, err)
		}
	}
	if _, err := tryFiles(t, files{"printer.cfg": "[extruder]\n# \ufeff\n"}); err != nil {
		t.Error(err)
	}
}

// What the firmware cannot read as text is read all the same, and said.
func TestBytesThatTheFirmwareRefuses(t *testing.T) {
	for text, says := range map[string]string{
		"[extruder]\nmax_temp: 280\n# 60 \xb0C max\n": "not UTF-8",
	} {
		c := readText(t, text)
		if s := described(t, c, parser.MaxTemp); s.Value != 280.0 || s.At.Text() != "280" {
			t.Errorf("%q: max temp %+v", text, s)
		}
		if gaps := remarksOf(c, parser.RemarkGap); len(gaps) != 1 || !strings.Contains(gaps[0].Text, says) {
			t.Errorf("%q: %v", text, gaps)
		}
	}
}

func TestRecognises(t *testing.T) {
	for text, want := range map[string]bool{
		"":                                  false,
		"# c\n; c\n\n[mcu]\n":               true,
		"\ufeff[mcu]\r\n":                   true,
		"[include a.cfg]\n":                 true,
		"a: 1\n[mcu]\n":                     false,
		"#define X 1\n":                     false,
		"/**\n * [a]\n */\n#define X [1]\n": false,
		"// c\n#define X\n":                 false,
		"[mcu\n":                            false,

		"#define X 1\n#define Y\n#define Z\n\n[mcu]\n": true, // comments here
	} {
		if got := Style.Recognises(parser.NewFile("f", []byte(text))); got != want {
			t.Errorf("%q: %v", text, got)
		}
	}
}

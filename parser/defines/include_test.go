package defines

import (
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
)

func TestIncludes(t *testing.T) {
	for _, test := range []struct {
		name     string
		contents files
		want     string // of X
		order    string // of the files
	}{
		{"followed where it stands",
			files{"main.h": "#define X 1\n#include \"a.h\"\n", "a.h": "#define X 2\n"}, "=2", "main.h a.h"},
		{"and goes on", files{"main.h": "#include \"a.h\"\n#define X 1\n", "a.h": "#define X 2\n"},
			"=1", "main.h a.h"},
		{"beside the including file", files{
			"main.h": "#include \"d/a.h\"\n", "d/a.h": "#include \"b.h\"\n", "d/b.h": "#define X 1\n",
			"b.h": "#define X 2\n",
		}, "=1", "main.h d/a.h d/b.h"},
		{"up and down", files{
			"main.h": "#include \"d/../d/a.h\"\n", "d/a.h": "#include \"../b.h\"\n", "b.h": "#define X 1\n",
		}, "=1", "main.h d/a.h b.h"},
		{"twice", files{
			"main.h": "#include \"a.h\"\n#include \"a.h\"\n",
			"a.h":    "#ifdef X\n#define X 2\n#else\n#define X 1\n#endif\n",
		}, "=2", "main.h a.h"},
		{"pragma once", files{
			"main.h": "#include \"a.h\"\n#include \"a.h\"\n",
			"a.h":    "#pragma once\n#ifdef X\n#define X 2\n#else\n#define X 1\n#endif\n",
		}, "=1", "main.h a.h"},
		{"import", files{
			"main.h": "#import \"a.h\"\n#import \"a.h\"\n",
			"a.h":    "#ifdef X\n#define X 2\n#else\n#define X 1\n#endif\n",
		}, "=1", "main.h a.h"},
		{"guard", files{
			"main.h": "#include \"a.h\"\n#define X 1\n#include \"a.h\"\n",
			"a.h":    "#ifndef A\n#define A\n#define X 2\n#endif\n",
		}, "=1", "main.h a.h"},
		{"guarded cycle", files{
			"main.h": "#include \"a.h\"\n",
			"a.h":    "#ifndef A\n#define A\n#include \"main.h\"\n#define X 2\n#endif\n",
		}, "=2", "main.h a.h"},
		{"once cycle", files{"main.h": "#pragma once\n#include \"main.h\"\n#define X 2\n"}, "=2", "main.h"},
		{"not in a dead branch", files{"main.h": "#if 0\n#include \"a.h\"\n#endif\n", "a.h": "#define X 2\n"},
			"off", "main.h"},
		{"in an unknown branch", files{
			"main.h": "#ifdef UNKNOWN\n#include \"a.h\"\n#endif\n", "a.h": "#define X 2\n",
		}, "unknown", "main.h a.h"},
		{"named by a macro", files{"main.h": "#define PART \"a.h\"\n#include PART\n", "a.h": "#define X 2\n"},
			"=2", "main.h a.h"},
		{"angle brackets", files{"main.h": "#define X 1\n#include <a.h>\n", "a.h": "#define X 2\n"},
			"=1", "main.h"},
		{"with a comment", files{"main.h": "#include /* a */ \"a.h\" // b\n", "a.h": "#define X 2\n"},
			"=2", "main.h a.h"},
	} {
		t.Run(test.name, func(t *testing.T) {
			s := mustRead(t, test.contents)
			if got := s.describe("X"); got != test.want {
				t.Errorf("X is %s, want %s", got, test.want)
			}
			var order []string
			for _, f := range s.files {
				order = append(order, f.Path)
			}
			if got := strings.Join(order, " "); got != test.order {
				t.Errorf("the files are %s, want %s", got, test.order)
			}
		})
	}
}

func TestRemarksOfTheReader(t *testing.T) {
	for _, test := range []struct {
		name, text string
		kind       parser.RemarkKind
		line       int
		want       string
	}{
		{"error", "#if 1\n  #error \"choose a board\" // now\n#endif\n",
			parser.RemarkBroken, 2, `#error stops the build here: "choose a board"`},
		{"not a directive", "#defin X\n", parser.RemarkBroken, 1, "the compiler refuses this line: #defin X"},
		{"no name", "#define 3\n", parser.RemarkBroken, 1, "the compiler refuses this line: #define 3"},
		{"no name after ifdef", "#ifdef\n#endif\n", parser.RemarkBroken, 1, "a name is missing after #ifdef"},
		{"no name after undef", "\n#undef\n", parser.RemarkBroken, 2, "a name is missing after #undef"},
		{"no file after include", "#include x\n#define x\n", parser.RemarkGap,
			1, "cannot tell which file x is; whatever it defines could override what is read"},
		{"nothing after include", "#include\n", parser.RemarkBroken,
			1, `the compiler refuses this line: an #include needs "file" or <file>`},
		{"absent", "#include \"sub/gone.h\"\n", parser.RemarkGap,
			1, "sub/gone.h is absent here; whatever it defines could override what is read"},
		{"perhaps missing", "#if UNKNOWN\n#include \"lost.h\"\n#endif\n", parser.RemarkGap,
			2, "lost.h does not exist, and whether it is included cannot be told; whatever it defines " +
				"could override what is read"},
		{"perhaps a cycle", "#if UNKNOWN\n#include \"main.h\"\n#endif\n", parser.RemarkGap,
			2, "main.h includes itself, under a condition that cannot be told; this is passed over"},
	} {
		t.Run(test.name, func(t *testing.T) {
			s, err := read(t, files{"main.h": test.text}, "sub/./gone.h")
			if err != nil {
				t.Fatal(err)
			}
			if len(s.remarks) != 1 {
				t.Fatalf("%d remarks: %v", len(s.remarks), s.remarks)
			}
			r := s.remarks[0]
			if line, _ := r.At.Position(); r.Kind != test.kind || line != test.line || r.Text != test.want {
				t.Errorf("remark %d in line %d: %s\nwant %d in line %d: %s",
					r.Kind, line, r.Text, test.kind, test.line, test.want)
			}
		})
	}
	for _, text := range []string{
		"#if 0\n#error no\n#defin\n#include \"lost.h\"\n#endif\n", "#if UNKNOWN\n#error perhaps\n#endif\n",
		"/*\n#error no\n*/\n",
	} {
		if s := mustReadText(t, text); len(s.remarks) > 0 {
			t.Errorf("%q: remark %s", text, s.remarks[0].Text)
		}
	}
}

func TestErrors(t *testing.T) {
	cycle := files{"main.h": "#include \"a.h\"\n", "a.h": "\n#include \"main.h\"\n"}
	for _, test := range []struct {
		name     string
		contents files
		file     string
		line     int
		message  string
	}{
		{"missing", files{"main.h": "\n#include \"lost.h\"\n"}, "main.h",
			2, "the included file lost.h does not exist; correct the name, or add the file; or list it " +
				"under absent in the sheet"},
		{"outside", files{"main.h": "#include \"../lost.h\"\n"}, "main.h",
			1, "lies outside the root that bounds all reading"},
		{"absolute", files{"main.h": "#include \"/etc/passwd\"\n"}, "main.h",
			1, "the included file /etc/passwd lies outside the root that bounds all reading"},
		{"absolute, below", files{
			"main.h": "#include \"sub/a.h\"\n", "sub/a.h": "#include \"/etc/passwd\"\n",
		}, "a.h", 1, "the included file /etc/passwd lies outside the root that bounds all reading"},
		{"cycle", cycle, "main.h",
			1, "includes nest deeper than 16 levels: … main.h → a.h → main.h → a.h; one of them includes " +
				"itself without a guard"},
		{"if not closed", files{"main.h": "\n#if 1\n#ifdef X\n#endif\n"}, "main.h",
			2, "the #if of this line is never closed; close it with #endif"},
		{"in the included file", files{"main.h": "#include \"a.h\"\n#endif\n", "a.h": "#ifndef X\n"}, "a.h",
			1, "the #ifndef of this line is never closed; close it with #endif"},
		{"endif alone", files{"main.h": "#if 1\n#endif\n#endif\n"}, "main.h",
			3, "#endif without an #if before it; remove it, or restore the #if"},
		{"else alone", files{"main.h": "#else\n#endif\n"}, "main.h",
			1, "#else without an #if before it; remove it, or restore the #if"},
		{"elif alone", files{"main.h": "#elif 1\n"}, "main.h",
			1, "#elif without an #if before it; remove it, or restore the #if"},
		{"two else", files{"main.h": "#if 1\n#else\n#else\n#endif\n"}, "main.h",
			3, "#else after the #else of the #if in line 1; remove one of them"},
		{"elif after else", files{"main.h": "#if 0\n#if 0\n#else\n#elif 1\n#endif\n#endif\n"}, "main.h",
			4, "#elif after the #else of the #if in line 2; remove one of them"},
		{"comment not closed", files{"main.h": "#if 0\n int a; /* open\n#endif\n"}, "main.h",
			2, "the comment that starts here is never closed; close it with */"},
		{"comment not closed in a define", files{"main.h": "\n#define X 1 /* open\n"}, "main.h",
			2, "the comment that starts here is never closed; close it with */"},
		{"comment not closed at a line's start", files{"main.h": "\n\n/*/\n"}, "main.h",
			3, "the comment that starts here is never closed; close it with */"},
		{"raw string not closed", files{"main.h": "x = R\"(\n"}, "main.h",
			1, "the raw string that starts here is never closed"},
	} {
		t.Run(test.name, func(t *testing.T) {
			_, err := read(t, test.contents)
			e, ok := err.(*parser.Error)
			if !ok {
				t.Fatalf("the error is %v", err)
			}
			// The tree stands in a temporary folder.
			message := e.Message
			if at := strings.Index(message, "../"); at >= 0 {
				end := at + strings.Index(message[at:], "lost.h")
				message = message[:at] + message[max(at, end):]
			}
			if filepath.Base(e.File) != test.file || e.Line != test.line ||
				!strings.Contains(message, test.message) {
				t.Errorf("%s:%d: %s\nwant %s:%d: %s",
					filepath.Base(e.File), e.Line, message, test.file, test.line, test.message)
			}
		})
	}
}

// A file that the sheet calls absent may lie outside the root, or be a link that
// leads nowhere.
func TestAbsentAnywhere(t *testing.T) {
	dir := t.TempDir()
	for name, target := range map[string]string{"link.h": "gone", "out.h": "../../out.h"} {
		if err := os.Symlink(target, filepath.Join(dir, name)); err != nil {
			t.Fatal(err)
		}
	}
	text := `#include "../board.h"
#include "/opt/board.h"
#include "link.h"
#include "out.h"
#define X 1
`
	writeFile(t, dir, "main.h", text)
	tree := openTree(t, dir)
	absent := []string{"../board.h", "/opt/board.h", "link.h", "out.h"}
	s, err := load(tree, parser.Request{Files: []string{"main.h"}, Absent: absent}, nil)
	if err != nil {
		t.Fatal(err)
	}
	if len(s.remarks) != len(absent) {
		t.Errorf("%d remarks for %d absent files: %v", len(s.remarks), len(absent), s.remarks)
	}
	for i, name := range absent {
		rest := slices.Delete(slices.Clone(absent), i, i+1)
		_, err := load(tree, parser.Request{Files: []string{"main.h"}, Absent: rest}, nil)
		e, ok := err.(*parser.Error)
		if !ok || e.Line != i+1 || !strings.HasSuffix(e.Message, "list it under absent in the sheet") ||
			(e.Missing != "") != (name == "link.h") {
			t.Errorf("%s: %v", name, err)
		}
	}
}

func TestMissingTopFile(t *testing.T) {
	_, err := read(t, files{})
	if e, ok := err.(*parser.Error); !ok || !strings.HasSuffix(e.File, "main.h") ||
		!strings.Contains(e.Message, "does not exist") {
		t.Errorf("the error is %v", err)
	}
}

func TestTooManyFiles(t *testing.T) {
	contents := files{}
	var main strings.Builder
	for i := range parser.MaxFiles {
		fmt.Fprintf(&main, "#include \"%d.h\"\n", i)
		contents[fmt.Sprintf("%d.h", i)] = "\n"
	}
	contents["main.h"] = main.String()
	_, err := read(t, contents)
	if e, ok := err.(*parser.Error); !ok || !strings.Contains(e.Message, "256") {
		t.Errorf("the error is %v", err)
	}
}

// Included files that are no regular files fail where they are included.
func TestIncludeOfFolder(t *testing.T) {
	dir := t.TempDir()
	if err := os.Mkdir(filepath.Join(dir, "part.h"), 0o755); err != nil {
		t.Fatal(err)
	}
	writeFile(t, dir, "main.h", "\n#include \"part.h\"\n")
	_, err := load(openTree(t, dir), parser.Request{Files: []string{"main.h"}}, nil)
	if e, ok := err.(*parser.Error); !ok || e.Line != 2 || !strings.Contains(e.Message, "is a folder") {
		t.Errorf("the error is %v", err)
	}
}

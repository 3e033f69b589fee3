package patch

import (
	"bytes"
	"errors"
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules"
)

// What was proved is what is printed.
func TestPrint(t *testing.T) {
	one := FileChange{Name: "a.cfg", Old: []byte("a: 1\nb: 2\n"), New: []byte("a: 1\nb: \x1b[2J\n")}
	p := &Plan{Files: []FileChange{one}}
	const head = "# why\n--- a/a.cfg\n+++ b/a.cfg\n@@ -1,2 +1,2 @@\n a: 1\n-b: 2\n"
	for _, tt := range []struct {
		terminal bool
		want     string
	}{{false, head + "+b: \x1b[2J\n"}, {true, head + "+b: \\u001b[2J\n"}} {
		var out bytes.Buffer
		err := p.Print(&out, Options{Lead: []string{"why"}, Terminal: tt.terminal})
		if err != nil || out.String() != tt.want {
			t.Errorf("terminal %v: %q, %v, want %q", tt.terminal, out.String(), err, tt.want)
		}
	}
	var out bytes.Buffer
	outside := &Plan{Files: []FileChange{{Name: "../a.cfg", Old: one.Old, New: one.New}}}
	if err := outside.Print(&out, Options{}); err == nil || out.Len() > 0 {
		t.Errorf("a file outside: %v, %q", err, out.String())
	}
	// A lead that is no lead: the diff cannot be applied, and is not shown.
	if err := p.Print(failing{}, Options{}); err != errFull {
		t.Errorf("a full disk: %v", err)
	}
}

var errFull = errors.New("no space left")

type failing struct{}

func (failing) Write([]byte) (int, error) { return 0, errFull }

func TestRenewed(t *testing.T) {
	reason := func(owner, rule string, keys ...parser.Key) Reason {
		r := Reason{Owner: owner, Finding: rules.Finding{Rule: rule}}
		for i, k := range keys {
			r.Finding.Changes = append(r.Finding.Changes, parser.Change{Key: k, Value: float64(i)})
		}
		return r
	}
	first := reason("a", "temp-ceiling", parser.MaxTemp)
	for _, tt := range []struct {
		later Reason
		want  bool
	}{
		{reason("a", "temp-ceiling", parser.MaxTemp), true},
		{reason("b", "temp-ceiling", parser.MaxTemp), false},
		{reason("a", "temp-reach", parser.MaxTemp), false},
		{reason("a", "temp-ceiling", parser.MinTemp), false},
		{reason("a", "temp-ceiling", parser.MaxTemp, parser.MinTemp), false},
	} {
		if got := first.Renewed(tt.later); got != tt.want {
			t.Errorf("renewed by %+v: %v, want %v", tt.later, got, tt.want)
		}
	}
}

func TestFileRefIn(t *testing.T) {
	file := diskFile(t)
	p := Plan{changed: []FileRef{RefOf(file)}}
	for _, tt := range []struct {
		ref  FileRef
		want bool
	}{
		{RefOf(file), true},
		{FileRef{Real: file.Real}, true},
		{FileRef{Real: "another name", ID: file.ID}, true},
		{FileRef{Real: "another name"}, false},
	} {
		if got := p.Changes(tt.ref); got != tt.want {
			t.Errorf("%+v is changed: %v, want %v", tt.ref, got, tt.want)
		}
	}
	// The same without a file of a disk: no identity is no identity.
	p.changed[0].ID = parser.FileID{}
	if p.Changes(FileRef{Real: "another name"}) {
		t.Error("two files without an identity are the same")
	}
}

// diskFile is a new file, with the identity that its disk gives it.
func diskFile(t *testing.T) *parser.File {
	t.Helper()
	dir := t.TempDir()
	if err := os.WriteFile(filepath.Join(dir, "f"), nil, 0o666); err != nil {
		t.Fatal(err)
	}
	tree, err := parser.OpenTree(dir)
	if err != nil {
		t.Fatal(err)
	}
	defer tree.Close()
	file, err := tree.Open("f")
	if err != nil || file.ID == (parser.FileID{}) {
		t.Fatalf("%+v, %v", file, err)
	}
	return file
}

// A diff parts two names of one file by a hard link.
func TestRefuseHardLinks(t *testing.T) {
	g, trial := alter(t, nil, nil)
	id, other := diskFile(t).ID, diskFile(t).ID
	g.plan.changed = []FileRef{{Real: "a", ID: id}}
	for _, tt := range []struct {
		name  string
		files []FileRef
		want  string
	}{
		{"the file itself", []FileRef{{Real: "a", ID: id}}, ""},
		{"another one", []FileRef{{Real: "b", ID: other}}, ""},
		{"a second name", []FileRef{{Real: "b", ID: id}}, "b: is the same file as a by a hard link"},
		{"no identity", []FileRef{{Real: "b"}}, ""},
	} {
		trial.Files = tt.files
		err := g.refuseHardLinks()
		if (err == nil) != (tt.want == "") || err != nil && !strings.HasPrefix(err.Error(), tt.want) {
			t.Errorf("%s: %v, want %q", tt.name, err, tt.want)
		}
		if errHold := g.compareAll(); (errHold == nil) != (tt.want == "") {
			t.Errorf("%s: the proof says %v", tt.name, errHold)
		}
	}
	g.plan.changed, trial.Files = []FileRef{{Real: "a"}}, []FileRef{{Real: "b"}}
	if err := g.refuseHardLinks(); err != nil {
		t.Errorf("without any identity: %v", err)
	}
}

// A window that is too large to be compared line by line is replaced whole, but
// for its common end.
func TestLargeWindow(t *testing.T) {
	var old, new bytes.Buffer
	for i := range 3 * maxLines {
		fmt.Fprintf(&old, "old %d\n", i)
		fmt.Fprintf(&new, "new %d\n", i)
	}
	end := "common end\nand more\n"
	list := lineChanges([]byte(old.String()+end), []byte(new.String()+end))
	if len(list) != 1 || list[0] != (lineChange{0, old.Len(), 0, new.Len()}) {
		t.Errorf("the changes are %v, want one of %d and %d bytes", list, old.Len(), new.Len())
	}
	for _, tt := range []struct {
		a, b string
		want int
	}{
		{"", "", 0}, {"a\n", "", 0}, {"a\nb\n", "x\nb\n", 2}, {"a\nb\n", "b\n", 2}, {"ab\n", "b\n", 0},
		{"a\nb", "x\nb", 1}, {"b\n", "b\n", 2}, {"a\nxb\n", "a\nyb\n", 0},
	} {
		if got := commonEnd([]byte(tt.a), []byte(tt.b)); got != tt.want {
			t.Errorf("%q and %q have %d bytes in common at their ends, want %d", tt.a, tt.b, got, tt.want)
		}
	}
}

func TestParseExtent(t *testing.T) {
	const most = parser.MaxFileBytes
	for _, tt := range []struct {
		text string
		want lineRange
		ok   bool
	}{
		{"-1", lineRange{1, 1}, true},
		{"-0,0", lineRange{1, 0}, true},
		{"-3,0", lineRange{4, 0}, true},
		{"-0", lineRange{0, 1}, false},
		{"-2,-1", lineRange{2, -1}, false},
		{fmt.Sprintf("-%d,%d", most, most), lineRange{most, most}, true},
		{fmt.Sprintf("-%d", most+1), lineRange{most + 1, 1}, false},
		{fmt.Sprintf("-1,%d", most+1), lineRange{1, most + 1}, false},
	} {
		if got, ok := parseExtent(tt.text, "-"); got != tt.want || ok != tt.ok {
			t.Errorf("%s: %+v, %v, want %+v, %v", tt.text, got, ok, tt.want, tt.ok)
		}
	}
}

func TestUnquoteName(t *testing.T) {
	for text, want := range map[string]string{
		`a/x`: "a/x", `a/x y` + "\t": "a/x y", `"a/\303\244"`: "a/ä", `"a/\t\"\\"`: "a/\t\"\\",
		`""`: "", `"\377"`: "\xff",
		``: "!", `"`: "!", `"a`: "!", `"a"b"`: "!", `"a\`: "!", `"a\"`: "!",
		`"\8"`: "!", `"\40"`: "!", `"\777"`: "!", `"\00"`: "!",
	} {
		got, ok := unquoteName(text)
		if !ok {
			got = "!"
		}
		if got != want {
			t.Errorf("%s: %q, want %q", text, got, want)
		}
	}
}

func TestHarmlessWriterFails(t *testing.T) {
	if n, err := HarmlessWriter(failing{}).Write([]byte("x")); n != 0 || err != errFull {
		t.Errorf("a full disk: %d bytes, %v", n, err)
	}
}

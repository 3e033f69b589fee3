package patch

import (
	"bytes"
	"errors"
	"flag"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"preflash/parser"
)

var update = flag.Bool("update", false, "write the golden files anew")

func unified(t testing.TB, changed []FileChange, o Options) []byte {
	t.Helper()
	var b bytes.Buffer
	if err := Unified(&b, changed, o); err != nil {
		t.Fatal(err)
	}
	return b.Bytes()
}

// golden compares with a file of testdata.
func golden(t *testing.T, name string, got []byte) {
	t.Helper()
	name = filepath.Join("testdata", name)
	if *update {
		if err := os.WriteFile(name, got, 0o644); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if !bytes.Equal(got, want) {
		t.Errorf("differs from %s; got\n%s", name, got)
	}
}

func TestUnifiedGolden(t *testing.T) {
	for _, c := range textCases() {
		t.Run(c.name, func(t *testing.T) {
			diff := unified(t, []FileChange{{c.file, []byte(c.old), []byte(c.new)}}, Options{})
			golden(t, "reference/"+c.name+".diff", diff)
			got, err := patchOne(c.file, []byte(c.old), diff)
			if err != nil || string(got) != c.new {
				t.Errorf("applied: %q, %v", got, err)
			}
		})
	}
}

func TestUnifiedSeveralFilesWithLead(t *testing.T) {
	text := numbered(12, "\n")
	changed := []FileChange{
		{"egret-01/a.cfg", []byte(text), []byte(swap(text, "\n6\n", "\nsix\n"))},
		{"egret-01/same.cfg", []byte(text), []byte(text)},
		{"egret-01/b.cfg", []byte("x\n"), []byte("y\n")},
	}
	lead := []string{
		"egret-01/a.cfg:6 six: it says what it is.\nSee the rule.",
		"",
		"--- a/egret-01/a.cfg would start a file, were it not for the mark",
		"an escape \x1b[2J, an override \u202e and a byte \xff",
	}
	diff := unified(t, changed, Options{Lead: lead})
	golden(t, "lead.diff", diff)
	old := map[string][]byte{"egret-01/a.cfg": []byte(text), "egret-01/b.cfg": []byte("x\n")}
	got, err := Patch(old, diff)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []FileChange{changed[0], changed[2]} {
		if !bytes.Equal(got[c.Name], c.New) {
			t.Errorf("%s: %q", c.Name, got[c.Name])
		}
	}
}

func TestUnifiedNothingChanged(t *testing.T) {
	lead := Options{Lead: []string{"why"}}
	same := FileChange{Name: "a", Old: []byte("x"), New: []byte("x")}
	for _, changed := range [][]FileChange{nil, {same}, {{Name: "a"}}} {
		if got := unified(t, changed, lead); len(got) > 0 {
			t.Errorf("%d files without a change give %q", len(changed), got)
		}
	}
}

func TestUnifiedTerminal(t *testing.T) {
	const text = "D\xfcse \x1b[2J\r\nx: 1\r\r\n\tlast \u202e"
	c := FileChange{"a.cfg", []byte(text), []byte(strings.Replace(text, "1\r", "2\r", 1))}
	got := string(unified(t, []FileChange{c}, Options{Terminal: true}))
	want := "--- a/a.cfg\n+++ b/a.cfg\n@@ -1,3 +1,3 @@\n" +
		" D\\xfcse \\u001b[2J\r\n-x: 1\\u000d\r\n+x: 2\\u000d\r\n \tlast \\u202e\n" +
		"\\ No newline at end of file\n"
	if got != want {
		t.Errorf("got\n%q\nwant\n%q", got, want)
	}
}

func TestUnifiedRefusesNames(t *testing.T) {
	one := func(name string) []FileChange { return []FileChange{{name, []byte("a"), []byte("b")}} }
	tests := []struct {
		name    string
		changed []FileChange
		want    string
	}{
		{"above", one("../x.cfg"), "../x.cfg: lies outside the working directory"},
		{"above, hidden", one("a/../../x.cfg"), "outside"},
		{"absolute", one("/etc/x.cfg"), "run preflash in a folder that holds it"},
		{"empty", one(""), "outside"},
		{"the folder itself", one("."), "outside"},
		{"twice", append(one("x.cfg"), one("x.cfg")...), "x.cfg: is to be changed twice"},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			var b bytes.Buffer
			err := Unified(&b, tt.changed, Options{})
			var e *parser.Error
			if !errors.As(err, &e) || !strings.Contains(err.Error(), tt.want) {
				t.Errorf("error %v, want %q", err, tt.want)
			}
			if b.Len() > 0 {
				t.Errorf("%q was printed", b.String())
			}
		})
	}
}

type brokenPipe struct{}

func (brokenPipe) Write([]byte) (int, error) { return 0, os.ErrClosed }

func TestUnifiedReportsWriteErrors(t *testing.T) {
	big := bytes.Repeat([]byte("line\n"), 5000)
	err := Unified(brokenPipe{}, []FileChange{{"x", nil, big}}, Options{})
	if !errors.Is(err, os.ErrClosed) {
		t.Errorf("error %v", err)
	}
}

// A text too large to compare line by line, or with more distinct lines than
// go-diff has numbers for, is still diffed, exactly and in bounded time.
func TestUnifiedLargeAndUnlike(t *testing.T) {
	if testing.Short() {
		t.Skip("takes longer than all other tests here; mutation runs leave it out")
	}
	var old, new bytes.Buffer
	for i := range 1_200_000 {
		for range 5 {
			old.WriteByte('a' + byte(i%26))
			i /= 26
		}
		old.WriteByte('\n')
	}
	for i := range 9000 {
		new.WriteString(strings.Repeat("b", i%7) + "\n")
	}
	for _, c := range []FileChange{{"x", old.Bytes(), new.Bytes()}, {"x", new.Bytes(), old.Bytes()}} {
		got, err := patchOne(c.Name, c.Old, unified(t, []FileChange{c}, Options{}))
		if err != nil || !bytes.Equal(got, c.New) {
			t.Errorf("applied: %d bytes, %v", len(got), err)
		}
	}
}

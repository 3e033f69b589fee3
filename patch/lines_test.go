package patch

import (
	"fmt"
	"os"
	"strings"
	"testing"
)

// unlike gives so many lines that occur nowhere else.
func unlike(name string, lines int) string {
	var b strings.Builder
	for i := range lines {
		fmt.Fprintf(&b, "%s %d\n", name, i)
	}
	return b.String()
}

// Two texts that part meet again at the nearest lines at which they agree for a
// while, or at which they end together.
func TestRejoin(t *testing.T) {
	const c = "c1\nc2\nc3\nc4\n" // as many lines as it takes
	long := c + unlike("then", 2*lookahead)
	tests := []struct {
		name string
		a, b string // what differs
		rest string // what follows in both
	}{
		{"a line went", "x\n", "", long},
		{"a line came", "", "y\n", long},
		{"a line changed", "x\n", "y\n", long},
		{"two became one", "x1\nx2\n", "y\n", long},
		{"one became two", "x\n", "y1\ny2\n", long},
		{"five became one", unlike("x", 5), "y\n", long},
		{"one became six", "x\n", unlike("y", 6), long},
		{"many became many", unlike("x", 40), unlike("y", 37), long},
		{"as many went as are looked at", unlike("x", lookahead), "", long},
		{"as many came as are looked at", "", unlike("y", lookahead), long},
		{"as many changed as are looked at", unlike("x", lookahead), unlike("y", lookahead), long},
		{"the last line", "x\n", "y\n", ""},
		{"the last line but one", "x\n", "y\n", "c1\n"},
		{"the last line, which has no newline", "x\n", "y\n", "c1"},
		{"a line before two last ones", "x\n", "", "c1\nc2\n"},
		{"exactly enough lines to the end", "x\n", "y1\ny2\n", c},
	}
	for _, tt := range tests {
		a, b := tt.a+tt.rest, tt.b+tt.rest
		if tt.rest == long { // and part again, so that their common end tells nothing
			a, b = a+"the end of a\n", b+"the end of b\n"
		}
		p, q := rejoin([]byte(a), []byte(b))
		if p != len(tt.a) || q != len(tt.b) {
			t.Errorf("%s: skips %d and %d bytes, want %d and %d", tt.name, p, q, len(tt.a), len(tt.b))
		}
	}
	// One line further, all but the common end is skipped.
	for _, tt := range [][2]string{
		{unlike("x", lookahead+1), ""}, {"", unlike("y", lookahead+1)},
		{unlike("x", lookahead+1), unlike("y", lookahead+1)},
	} {
		a, b := tt[0]+c+"x\n"+c, tt[1]+c+"y\n"+c
		p, q := rejoin([]byte(a), []byte(b))
		if p != len(a)-len(c) || q != len(b)-len(c) {
			t.Errorf("%d and %d lines: skips %d and %d bytes of %d and %d",
				count([]byte(tt[0])), count([]byte(tt[1])), p, q, len(a), len(b))
		}
	}
	// Three lines that agree, and then do not, are too few.
	a, b := "x\nc1\nc2\nc3\nx\n"+long, "y\nc1\nc2\nc3\ny\n"+long
	if p, q := rejoin([]byte(a), []byte(b)); p != len(a)-len(long) || q != len(b)-len(long) {
		t.Errorf("after three lines that agree: skips %d and %d bytes", p, q)
	}
	// A text that goes on does not end with one that ends.
	if p, q := rejoin([]byte("x\nc1\n"), []byte("y\nc1\nmore\n")); p != 5 || q != 10 {
		t.Errorf("where one text goes on: skips %d and %d bytes, want all", p, q)
	}
}

// A path that git could take for another is refused, with the folder to run in.
func TestReachable(t *testing.T) {
	dir := t.TempDir()
	for _, d := range []string{".git", "printers/printers"} {
		if err := os.MkdirAll(dir+"/"+d, 0o777); err != nil {
			t.Fatal(err)
		}
	}
	for _, tt := range []struct{ in, name, want string }{
		{"printers", "x.cfg", ""},
		{"printers", "printers/x.cfg", "could be taken for x.cfg by git apply without -p1, " +
			"since the folder has the name of the one that it lies in; run preflash in ../"},
		{"printers/printers", "printers/printers/x.cfg", "run preflash in ../../"},
		{"printers/printers", "printers/x.cfg", ""},
		{"", "printers/x.cfg", ""},
		{"printers", "../x.cfg", "run preflash in ../"},
		{"printers", ".", "run preflash in a folder that holds it"},
		{"printers", "/x.cfg", "run preflash in a folder that holds it"},
	} {
		t.Chdir(dir + "/" + tt.in)
		err := reachable(tt.name)
		if (err == nil) != (tt.want == "") || err != nil && !strings.HasSuffix(err.Error(), tt.want) {
			t.Errorf("%s from %q: %v, want %q", tt.name, tt.in, err, tt.want)
		}
	}
}

func TestNameEnds(t *testing.T) {
	for name, want := range map[string]string{"a\x7e": "a~", "a\x7f": `"a\177"`, "a\x1f": `"a\037"`} {
		if got := quoteName(name); got != want {
			t.Errorf("%q is quoted as %s, want %s", name, got, want)
		}
	}
}

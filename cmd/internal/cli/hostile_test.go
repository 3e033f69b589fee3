package cli

import (
	"encoding/json"
	"fmt"
	"maps"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

const hostileDir = "../../../testdata/hostile"

// hostileCase is one line of testdata/hostile/expect.tsv.
type hostileCase struct {
	name  string
	exit  int
	place string // file:line or file, relative to the case; "-" for none
	says  string
}

func hostileCases(t *testing.T) []hostileCase {
	t.Helper()
	data, err := os.ReadFile(filepath.Join(hostileDir, "expect.tsv"))
	if err != nil {
		t.Fatal(err)
	}
	var cases []hostileCase
	for line := range strings.Lines(string(data)) {
		fields := strings.Split(strings.TrimSuffix(line, "\n"), "\t")
		if strings.HasPrefix(line, "#") || fields[0] == "case" {
			continue
		}
		if len(fields) != 5 {
			t.Fatalf("expect.tsv: %d fields, want 5: %q", len(fields), line)
		}
		var exit int
		if _, err := fmt.Sscan(fields[1], &exit); err != nil {
			t.Fatalf("expect.tsv: exit %q: %v", fields[1], err)
		}
		cases = append(cases, hostileCase{fields[0], exit, fields[2], fields[3]})
	}
	return cases
}

// checked is what `check` printed of one sheet.
type checked struct {
	exit       int
	text, json string
	others     []string // the other formats
	places     []string // of the error and of the findings, as file:line
}

func checkSheet(t *testing.T, root, dir string, more ...string) checked {
	t.Helper()
	var out checked
	check := func(format string) string {
		stdout, stderr, exit := run("check", "--today", "2026-11-25", "--root", root, "--format", format, dir)
		out.exit = exit
		return stdout + stderr
	}
	out.text = check("text")
	out.json = check("json")
	for _, format := range more {
		out.others = append(out.others, check(format))
	}
	var result struct {
		Printers []struct {
			Error *struct {
				File, Message string
				Line          int
			}
			Findings []struct {
				File string
				Line int
			}
		}
	}
	if err := json.Unmarshal([]byte(out.json), &result); err != nil {
		t.Fatalf("not JSON: %v\n%s", err, out.json)
	}
	for _, p := range result.Printers {
		if p.Error != nil {
			out.places = append(out.places, fmt.Sprintf("%s:%d", p.Error.File, p.Error.Line))
		}
		for _, f := range p.Findings {
			out.places = append(out.places, fmt.Sprintf("%s:%d", f.File, f.Line))
		}
	}
	return out
}

// TestHostileCorpus holds every case of the corpus to its line in the table.
func TestHostileCorpus(t *testing.T) {
	entries, err := os.ReadDir(hostileDir)
	if err != nil {
		t.Fatal(err)
	}
	cases := hostileCases(t)
	if len(cases) != len(entries)-1 {
		t.Errorf("the table has %d cases, the folder %d", len(cases), len(entries)-1)
	}
	for _, c := range cases {
		t.Run(c.name, func(t *testing.T) {
			// The sheet itself, since a folder is searched for sheets only.
			sheet := filepath.Join(hostileDir, c.name, "swap.toml")
			got := checkSheet(t, hostileDir, sheet, "sarif", "markdown")
			if got.exit != c.exit {
				t.Errorf("exit %d, want %d", got.exit, c.exit)
			}
			if c.place != "-" && !hasPlace(got.places, c.name+"/"+c.place) {
				t.Errorf("places %v, want one to end in %s", got.places, c.name+"/"+c.place)
			}
			if !strings.Contains(got.text, c.says) && !strings.Contains(got.json, c.says) {
				t.Errorf("nothing says %q", c.says)
			}
			// The other commands show what configurations hold as well.
			for _, command := range [][]string{{"values", "--all"}, {"values", "--all", "--format", "json"},
				{"diff"}, {"bench"}, {"report"}} {
				stdout, stderr, _ := run(append(command, "--root", hostileDir, sheet)...)
				got.others = append(got.others, stdout, stderr)
			}
			harmless(t, got)
			if t.Failed() {
				t.Log(got.text)
			}
		})
	}
}

func hasPlace(places []string, want string) bool {
	for _, p := range places {
		if strings.HasSuffix(p, want) || !strings.Contains(filepath.Base(want), ":") &&
			strings.Contains(p, want+":") {
			return true
		}
	}
	return false
}

// harmless fails where the output could act on a terminal, or quotes a file
// that is none of its business.
func harmless(t *testing.T, got checked) {
	t.Helper()
	for _, out := range append([]string{got.text, got.json}, got.others...) {
		if r, found := testfiles.Hidden(out); found {
			t.Fatalf("the output holds %U raw", r)
		}
		if strings.Contains(out, "do-not-show-this") {
			t.Error("the output quotes a file that is no hotend file")
		}
	}
}

// TestHostileTogether sees that unreadable printers hide no other.
func TestHostileTogether(t *testing.T) {
	stdout, stderr, exit := run("check", "--all", "--root", hostileDir, hostileDir)
	if exit != exitFailure {
		t.Errorf("exit %d, want %d\n%s", exit, exitFailure, stderr)
	}
	for _, c := range hostileCases(t) {
		if !strings.Contains(stdout+stderr, c.name+"/") {
			t.Errorf("%s is not in the output", c.name)
		}
	}
}

// hostileSheet is a sheet of the corpus that is as it should be.
func hostileSheet(t *testing.T) string {
	t.Helper()
	text, err := os.ReadFile(filepath.Join(hostileDir, "empty", "swap.toml"))
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

// TestLargeInput builds what is too large to commit.
func TestLargeInput(t *testing.T) {
	const plain = "#define TEMP_SENSOR_0 61\n"
	many := func(n int, format string) string {
		var b strings.Builder
		for i := range n {
			fmt.Fprintf(&b, format, i)
		}
		return b.String()
	}
	for _, c := range []struct {
		name, header string
		exit         int
		extra        map[string]string
	}{
		{name: "nested conditionals", header: plain + strings.Repeat("#if 1\n", 100_000) +
			strings.Repeat("#endif\n", 100_000), exit: exitFailure},
		{name: "nested parentheses", header: plain + "#if " + strings.Repeat("(", 200_000) + "1" +
			strings.Repeat(")", 200_000) + "\n#define TEMP_SENSOR_0 5\n#endif\n", exit: exitFailure},
		{name: "a row of signs", header: plain + "#if " + strings.Repeat("!-~", 100_000) +
			"1\n#define TEMP_SENSOR_0 5\n#endif\n", exit: exitFailure},
		{name: "a row of questions", header: plain + "#if " + strings.Repeat("1 ? ", 50_000) + "1" +
			strings.Repeat(" : 1", 50_000) + "\n#define TEMP_SENSOR_0 5\n#endif\n", exit: exitFailure},
		{name: "a line of 10 MB", header: plain + "// " + strings.Repeat("x", 10_000_000) + "\n",
			exit: exitFailure},
		{name: "a line of 7 MB", header: plain + "// " + strings.Repeat("x", 7_000_000) + "\n",
			exit: exitFound},
		{name: "a splice of a million lines", header: plain + "#define LONG " +
			strings.Repeat("\\\n", 1_000_000) + "1\n", exit: exitFound},
		{name: "a redefinition of everything", header: many(100_000, "#define TEMP_SENSOR_0 %d\n"),
			exit: exitFound},
		{name: "includes too deep", header: plain + "#include \"0.h\"\n", exit: exitFailure,
			extra: chain(20)},
		{name: "includes too many", header: plain + many(300, "#include \"%d.h\"\n"), exit: exitFailure,
			extra: leaves(300)},
	} {
		t.Run(c.name, func(t *testing.T) {
			dir := t.TempDir()
			files := map[string]string{"Configuration.h": c.header, "swap.toml": hostileSheet(t)}
			maps.Copy(files, c.extra)
			testfiles.Write(t, dir, files)
			got := checkSheet(t, dir, dir)
			if got.exit != c.exit {
				t.Errorf("exit %d, want %d\n%.2000s", got.exit, c.exit, got.text)
			}
			if len(got.text) > 100_000 {
				t.Errorf("the output has %d bytes", len(got.text))
			}
			harmless(t, got)
		})
	}
}

// TestFloodIsBounded sees that 6 MB of errors are counted, not printed.
func TestFloodIsBounded(t *testing.T) {
	if testing.Short() {
		return // a million lines, ten times, by one goroutine
	}
	dir := t.TempDir()
	const errors = 6 << 20 / len("#error\n")
	testfiles.Write(t, dir, map[string]string{"swap.toml": hostileSheet(t),
		"Configuration.h": strings.Repeat("#error\n", errors)})
	for _, command := range [][]string{
		{"check"}, {"check", "--format", "json"}, {"check", "--format", "sarif"},
		{"check", "--format", "markdown"},
		{"bench"}, {"bench", "--format", "markdown"}, {"report"}, {"diff"}, {"values", "--all"},
		{"values", "--all", "--format", "json"},
	} {
		stdout, stderr, _ := run(append(command, "--root", dir, dir)...)
		if n := len(stdout) + len(stderr); n >= 1_000_000 {
			t.Errorf("%v prints %d bytes", command, n)
		}
		if command[0] == "check" && !strings.Contains(stdout, "more of config-broken") {
			t.Errorf("%v does not say how many there are:\n%.2000s", command, stdout)
		}
	}
}

// chain is n files, each of which includes the next.
func chain(n int) map[string]string {
	files := make(map[string]string)
	for i := range n {
		files[fmt.Sprintf("%d.h", i)] = fmt.Sprintf("#include \"%d.h\"\n", i+1)
	}
	files[fmt.Sprintf("%d.h", n)] = "\n"
	return files
}

// leaves is n files that include nothing.
func leaves(n int) map[string]string {
	files := make(map[string]string)
	for i := range n {
		files[fmt.Sprintf("%d.h", i)] = "\n"
	}
	return files
}

package cli

import (
	"bytes"
	"crypto/sha256"
	"encoding/json"
	"fmt"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
	"preflash/patch"
)

const demoDir = "../../../testdata/demo"

// demoFaults is what is planted in the demo: every error and warning, waived
// ones included, and nothing else. Notes are left out.
var demoFaults = map[string][]string{
	"egret-01": nil,
	"egret-02": {
		"error cold-extrusion",
		"error fan-voltage",
		"error heater-current",
		"error heater-overpower",
		"error pid-stale",
		"error preset-over",
		"error runaway-off",
		"error sensor-curve",
		"error supply-budget",
		"error temp-ceiling",
		"warning stored-settings",
	},
	"egret-03": {
		"error coldside-fan",
		"error heater-duty",
		"error heater-model",
		"error runaway-loose",
		"error sensor-curve",
		"error temp-ceiling",
		"warning flow-limit",
		"warning heater-headroom",
		"warning nozzle-size",
		"warning pid-stale",
		"warning runaway-tight",
		"warning setting-shadowed",
		"warning stored-settings",
		"warning supply-budget, waived",
		"warning tip-shift",
	},
	"egret-04": nil,
	"egret-05": {
		"error cold-extrusion",
		"error coldside-fan",
		"error runaway-loose",
		"error runaway-loose",
		"error sensor-curve",
		"error temp-ceiling",
		"error tip-shift",
		"warning nozzle-size",
		"warning pid-stale",
		"warning setting-shadowed",
	},
	"egret-06": {
		"error heater-current",
		"error heater-duty",
		"error runaway-loose",
		"error runaway-loose",
		"error saved-damaged",
		"error sensor-curve",
		"error sensor-fault",
		"error waiver-expired",
		"warning coldside-fan",
		"warning control-coarse",
		"warning supply-budget",
		"warning temp-reach",
	},
	"egret-07": {
		"error fan-voltage",
		"error heater-headroom",
		"error min-temp-high",
		"error runaway-loose",
		"error runaway-loose",
		"error runaway-off",
		"error runaway-off-bed",
		"error sensor-placeholder",
		"error tip-shift",
		"warning control-coarse",
		"warning heater-underpower",
	},
}

// TestDemoFaults sees that the planted faults are found and nothing false is
// said.
func TestDemoFaults(t *testing.T) {
	found := demoFindings(t, demoDir)
	if got, want := slices.Sorted(maps.Keys(found)),
		slices.Sorted(maps.Keys(demoFaults)); !slices.Equal(got, want) {
		t.Fatalf("printers %v, want %v", got, want)
	}
	for name, want := range demoFaults {
		got := found[name]
		for _, f := range missing(want, got) {
			t.Errorf("%s: planted and not found: %s", name, f)
		}
		for _, f := range missing(got, want) {
			t.Errorf("%s: found and not planted: %s", name, f)
		}
	}
}

// run runs a command of the program.
func run(args ...string) (stdout, stderr string, exit int) {
	var out, problems bytes.Buffer
	exit = Run(args, &out, &problems)
	return out.String(), problems.String(), exit
}

// demoFindings gives the errors and warnings of each printer below a folder.
func demoFindings(t *testing.T, dir string) map[string][]string {
	t.Helper()
	stdout, stderr, _ := run("check", "--today", "2026-11-25", "--format", "json", dir)
	var result struct {
		Printers []struct {
			Name     string
			Error    any
			Findings []struct {
				Rule, Level string
				Waived      *string
			}
		}
	}
	if err := json.Unmarshal([]byte(stdout), &result); err != nil {
		t.Fatalf("%v\n%s%s", err, stdout, stderr)
	}
	found := make(map[string][]string)
	for _, p := range result.Printers {
		if p.Error != nil {
			t.Fatalf("%s could not be read: %v", p.Name, p.Error)
		}
		found[p.Name] = nil
		for _, f := range p.Findings {
			line := f.Level + " " + f.Rule
			if f.Waived != nil {
				line += ", waived"
			}
			if f.Level != "note" {
				found[p.Name] = append(found[p.Name], line)
			}
		}
	}
	return found
}

// TestDemoSavedBlocks sees that the demo's saved blocks begin as the style's
// firmware publishes it, which knows them by that alone.
func TestDemoSavedBlocks(t *testing.T) {
	const size, published = 139, "0e19e5d78f04ad0756619ee6de8b134a6f80abef02340d0b0324962fa226a89b"
	found := 0
	for name, text := range contents(t, demoDir) {
		at := strings.Index(text, "\n#*# ")
		if at < 0 {
			continue
		}
		found++
		head := text[at:min(at+size, len(text))]
		if sum := fmt.Sprintf("%x", sha256.Sum256([]byte(head))); sum != published {
			t.Errorf("%s: the saved block begins with %q", name, head)
		}
	}
	if found != 3 {
		t.Errorf("%d saved blocks, want 3", found)
	}
}

// missing lists what of a is not in b, counting repetitions.
func missing(a, b []string) []string {
	b = slices.Clone(b)
	var left []string
	for _, x := range a {
		if i := slices.Index(b, x); i >= 0 {
			b = slices.Delete(b, i, i+1)
		} else {
			left = append(left, x)
		}
	}
	return left
}

// TestDemoDiffApplies applies the demo's diff to a copy: what had a change is
// gone, nothing new came up, and a second diff is empty. With PREFLASH_LIVE=1
// git and GNU patch apply it to copies of their own, and all are equal.
func TestDemoDiffApplies(t *testing.T) {
	before := demoFindings(t, demoDir)
	own, byGit, byPatch := copyOf(t, demoDir), copyOf(t, demoDir), copyOf(t, demoDir)

	t.Chdir(own)
	diff, stderr, exit := run("diff", "--today", "2026-11-25", ".")
	if exit != exitFound {
		t.Fatalf("diff: exit %d, want %d\n%s", exit, exitFound, stderr)
	}
	a := applied(t, own, []byte(diff))
	apply := func(dir, name string, args ...string) {
		t.Helper()
		cmd := exec.Command(name, args...)
		cmd.Dir, cmd.Stdin = dir, strings.NewReader(diff)
		if out, err := cmd.CombinedOutput(); err != nil {
			t.Fatalf("%s: %v\n%s", name, err, out)
		}
	}
	if os.Getenv("PREFLASH_LIVE") == "1" {
		apply(byGit, "git", "apply", "-")
		apply(byPatch, "patch", "-p1", "--binary", "--no-backup-if-mismatch", "--fuzz=0")
		if !maps.Equal(a, contents(t, byGit)) {
			t.Error("git apply made another text")
		}
		if !maps.Equal(a, contents(t, byPatch)) {
			t.Error("GNU patch made another text")
		}
	}

	// egret-02 has CRLF, and its second file no last newline.
	for name, text := range a {
		if strings.HasPrefix(name, "/egret-02/") && strings.HasSuffix(name, ".h") {
			if strings.Count(text, "\n") != strings.Count(text, "\r\n") {
				t.Errorf("%s lost a CRLF", name)
			}
			if strings.HasSuffix(name, "_adv.h") && strings.HasSuffix(text, "\n") {
				t.Errorf("%s gained a last newline", name)
			}
		}
	}

	after := demoFindings(t, ".")
	for name := range before {
		if len(after[name]) > len(before[name]) {
			t.Errorf("%s: %v after the diff, %v before", name, after[name], before[name])
		}
	}
	for _, gone := range []struct{ printer, finding string }{
		{"egret-02", "error sensor-curve"}, {"egret-02", "error temp-ceiling"},
		{"egret-02", "error runaway-off"}, {"egret-03", "error runaway-loose"},
		{"egret-03", "error heater-duty"}, {"egret-03", "error heater-model"},
		{"egret-05", "error cold-extrusion"}, {"egret-05", "error sensor-curve"},
		{"egret-05", "error runaway-loose"},
		{"egret-06", "error heater-duty"}, {"egret-06", "warning temp-reach"},
	} {
		if slices.Contains(after[gone.printer], gone.finding) {
			t.Errorf("%s: %s is still there after the diff", gone.printer, gone.finding)
		}
	}

	if second, stderr, exit := run("diff", "--today", "2026-11-25", "."); exit != exitClean || second != "" {
		t.Errorf("second diff: exit %d, want %d and nothing printed\n%s%s", exit, exitClean, second, stderr)
	}
}

// TestDemoDiffIsSteady sees that the same input gives the same bytes, however
// many printers are read at a time, and that few lines change.
func TestDemoDiffIsSteady(t *testing.T) {
	t.Chdir(copyOf(t, demoDir))
	plain := func(jobs string) string {
		t.Helper()
		diff, stderr, exit := run("diff", "--plain", "--today", "2026-11-25", "--jobs", jobs, ".")
		if exit != exitFound {
			t.Fatalf("diff: exit %d, want %d\n%s", exit, exitFound, stderr)
		}
		return diff
	}
	diff := plain("1")
	if plain("8") != diff || plain("1") != diff {
		t.Error("two runs printed two diffs")
	}
	var removed, added int
	for line := range strings.Lines(diff) {
		switch {
		case strings.HasPrefix(line, "--- "), strings.HasPrefix(line, "+++ "):
		case strings.HasPrefix(line, "-"):
			removed++
		case strings.HasPrefix(line, "+"):
			added++
		}
	}
	if added < 20 || added > 40 || removed > added {
		t.Errorf("%d lines removed and %d added, want 20 to 40 in seven printers\n%s", removed, added, diff)
	}
}

// TestDemoFormatsAreSteady sees that every format prints the same bytes, however
// many printers are read at a time.
func TestDemoFormatsAreSteady(t *testing.T) {
	for _, format := range []string{"text", "json", "sarif", "markdown"} {
		check := func(jobs string) string {
			t.Helper()
			stdout, stderr, exit := run("check", "--today", "2026-11-25",
				"--format", format, "--jobs", jobs, demoDir)
			if exit != exitFound {
				t.Fatalf("%s: exit %d, want %d\n%s", format, exit, exitFound, stderr)
			}
			return stdout
		}
		first := check("1")
		for range 2 {
			if check("8") != first {
				t.Errorf("%s: two runs printed two texts", format)
			}
		}
	}
}

// applied applies a diff to the files of a folder and returns their texts.
func applied(t *testing.T, dir string, diff []byte) map[string]string {
	t.Helper()
	old := make(map[string][]byte)
	for name, text := range contents(t, dir) {
		old[strings.TrimPrefix(name, "/")] = []byte(text)
	}
	changed, err := patch.Patch(old, diff)
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range changed {
		testfiles.Write(t, dir, map[string]string{name: string(text)})
	}
	return contents(t, dir)
}

// copyOf copies a folder into a temporary one.
func copyOf(t *testing.T, dir string) string {
	t.Helper()
	to := t.TempDir()
	if err := os.CopyFS(to, os.DirFS(dir)); err != nil {
		t.Fatal(err)
	}
	return to
}

// contents gives the text of every file below a folder.
func contents(t *testing.T, dir string) map[string]string {
	t.Helper()
	files := make(map[string]string)
	err := filepath.WalkDir(dir, func(path string, d fs.DirEntry, err error) error {
		if err != nil || d.IsDir() {
			return err
		}
		data, err := os.ReadFile(path)
		files[strings.TrimPrefix(path, dir)] = string(data)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return files
}

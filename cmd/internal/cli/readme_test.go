package cli

import (
	"bytes"
	"flag"
	"os"
	"strings"
	"testing"

	"preflash/rules"
)

var updateReadme = flag.Bool("update-readme", false, "write what the program prints into README.md")

// TestReadme runs every command that README.md shows with its output, at the
// repository's top, and holds the page to what the program prints. A line "…"
// stands for lines that the page leaves out.
func TestReadme(t *testing.T) {
	t.Chdir("../../..")
	page, err := os.ReadFile("README.md")
	if err != nil {
		t.Fatal(err)
	}
	const open, end = "```console\n$ ", "```\n"
	parts := strings.Split(string(page), open)
	if len(parts) < 2 {
		t.Fatal("README.md shows no command with its output")
	}
	for i, part := range parts[1:] {
		shown, rest, ok := strings.Cut(part, end)
		if !ok {
			t.Fatalf("block %d is not closed", i+1)
		}
		command, want, _ := strings.Cut(shown, "\n")
		args, ok := strings.CutPrefix(command, "preflash ")
		if !ok {
			t.Fatalf("%q is no preflash command", command)
		}
		var stdout, stderr bytes.Buffer
		if strings.HasPrefix(args, "check") { // the demo's waivers end some day
			args += " --today 2026-11-25"
		}
		if Run(strings.Fields(args), &stdout, &stderr) == exitFailure {
			t.Errorf("%s: %s", command, &stderr)
		}
		got := stdout.String()
		if *updateReadme {
			parts[i+1] = command + "\n" + shorten(got, want) + end + rest
			continue
		}
		if shorten(got, want) != want {
			t.Errorf("README.md is out of date; go test ./cmd/internal/cli -run TestReadme -update-readme writes it anew.\n%s\n%s", command, got)
		}
	}
	if *updateReadme {
		if err := os.WriteFile("README.md", []byte(strings.Join(parts, open)), 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// TestReadmeNamesRules sees that the page's table has every rule.
func TestReadmeNamesRules(t *testing.T) {
	page, err := os.ReadFile("../../../README.md")
	if err != nil {
		t.Fatal(err)
	}
	for _, r := range rules.All() {
		if !bytes.Contains(page, []byte("`"+r.ID+"`")) {
			t.Errorf("README.md does not name %s", r.ID)
		}
	}
}

// shorten cuts what was printed where the page leaves lines out at its end.
func shorten(got, shown string) string {
	if !strings.HasSuffix(shown, "\n…\n") {
		return got
	}
	keep := strings.Count(shown, "\n") - 1
	lines := strings.SplitAfter(got, "\n")
	if len(lines) <= keep {
		return got
	}
	return strings.Join(lines[:keep], "") + "…\n"
}

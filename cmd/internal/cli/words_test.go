package cli

import (
	"fmt"
	"go/scanner"
	"go/token"
	"io/fs"
	"os"
	"path/filepath"
	"regexp"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"github.com/spf13/cobra"

	"preflash/rules"
)

// quaint are words that no screen has, since the trade has plainer ones: fix, is
// rated for, cannot be read, stays on by a fault, used, hotend, recognised, two
// sources disagree, tried in memory, smallest step, heating check, drop check.
var quaint = regexp.MustCompile(`(?i)\b(mend(s|ed|ing)?|settl(e|es|ed|ing)|unread|` +
	`weld(s|ed|ing)? (on|shut)|in force|` +
	`melt path|placed on a curve|cannot be placed|another account|prove[snd]?|proving|` +
	`counts? of the converter|one count|` +
	`(rise|hold) watch)\b|\bstands? (%s|\d+(\.\d+)? [AWVK]\b)`)

// TestPlainWords walks every text that the program can say, as it stands in the
// code: rules, remarks of the styles, help, errors.
func TestPlainWords(t *testing.T) {
	const top = "../../.."
	texts := 0
	for _, part := range []string{"parser", "rules", "patch", "cmd"} {
		err := filepath.WalkDir(filepath.Join(top, part), func(name string, d fs.DirEntry, err error) error {
			if err != nil || d.IsDir() || !strings.HasSuffix(name, ".go") ||
				strings.HasSuffix(name, "_test.go") {
				return err
			}
			return eachText(name, func(at, text string) {
				texts++
				if word := quaint.FindString(text); word != "" {
					t.Errorf("%s says %q: %s", at, word, text)
				}
			})
		})
		if err != nil {
			t.Fatal(err)
		}
	}
	if texts < 5000 {
		t.Errorf("only %d texts were looked at", texts)
	}
}

// eachText calls say for each line of each string of a Go file.
func eachText(name string, say func(at, text string)) error {
	source, err := os.ReadFile(name)
	if err != nil {
		return err
	}
	file := token.NewFileSet().AddFile(name, -1, len(source))
	var s scanner.Scanner
	s.Init(file, source, nil, 0)
	for {
		pos, kind, text := s.Scan()
		switch kind {
		case token.EOF:
			return nil
		case token.STRING:
			for i, line := range strings.Split(text, "\n") {
				say(fmt.Sprintf("%s:%d", name, file.Line(pos)+i), line)
			}
		}
	}
}

// TestPlainPages holds what people read as a whole to the same words, where a
// line may part them.
func TestPlainPages(t *testing.T) {
	t.Chdir("../../..")
	t.Setenv("COLUMNS", "")
	pages := map[string]string{}
	for _, name := range []string{"README.md", "cmd/internal/report/testdata/workshop.txt",
		"cmd/internal/report/testdata/workshop.md"} {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		pages[name] = string(text)
	}
	calls := [][]string{
		{"rules"},
		{"check", "--all", "--explain", "--today", "2026-11-25", "testdata/demo"},
		{"check", "--all", "--explain", "--today", "2026-11-25", "testdata/order"},
		{"check", "--all", "--explain", "--today", "2026-11-25", "testdata/hostile"},
		{"check", "--format", "markdown", "--today", "2026-11-25", "testdata/demo"},
		{"check", "--format", "json", "--today", "2026-11-25", "testdata/demo"},
		{"diff", "--today", "2026-11-25", "testdata/demo"},
		{"values", "testdata/demo"},
		{"sheet", "testdata/demo/egret-05/printer.cfg"},
	}
	for _, id := range ruleIDs() {
		calls = append(calls, []string{"rules", id})
	}
	calls = append(calls, helpCalls(newRoot(nil), nil)...)
	for _, call := range calls {
		out, errs, _ := run(call...)
		if len(out) < 100 {
			t.Errorf("%v prints next to nothing: %s%s", call, out, errs)
		}
		pages["preflash "+strings.Join(call, " ")] = out
	}
	for name, text := range pages {
		for line := range strings.Lines(text) {
			help := strings.Contains(name, "--help") && !strings.HasPrefix(line, "  preflash")
			if n := utf8.RuneCountInString(strings.TrimRight(line, "\n")); help && n > 80 {
				t.Errorf("%s: a line of %d columns: %s", name, n, line)
			}
		}
		if word := quaint.FindString(strings.Join(strings.Fields(text), " ")); word != "" {
			t.Errorf("%s says %q", name, word)
		}
	}
}

// TestSourceOnce sees that the page of a rule marks what has no source once.
func TestSourceOnce(t *testing.T) {
	for _, r := range rules.All() {
		text := strings.ToLower(strings.Join(strings.Fields(r.Doc), " "))
		if n := strings.Count(text, "common practice"); n > 1 {
			t.Errorf("%s: %d times: %s", r.ID, n, r.Doc)
		}
		if strings.Contains(text, "*") != strings.Contains(text, "* common practice, no source.") {
			t.Errorf("%s: a mark without its meaning, or the other way round: %s", r.ID, r.Doc)
		}
	}
}

// helpCalls are the calls that print the help of a command and all below it.
func helpCalls(cmd *cobra.Command, way []string) [][]string {
	calls := [][]string{append(slices.Clone(way), "--help")}
	for _, c := range cmd.Commands() {
		if c.IsAvailableCommand() {
			calls = append(calls, helpCalls(c, append(slices.Clone(way), c.Name()))...)
		}
	}
	return calls
}

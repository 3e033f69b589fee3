package cli

import (
	"encoding/json"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"
	"time"

	"github.com/pelletier/go-toml/v2"

	"preflash/cmd/internal/testfiles"
)

// TestSheetRoundTrip begins a sheet for every printer of the demo, has check
// name its blanks, fills them with what the printer's own sheet says, and
// wants the same findings as that sheet leads to.
func TestSheetRoundTrip(t *testing.T) {
	for name := range demoFaults {
		t.Run(name, func(t *testing.T) {
			t.Chdir(filepath.Join(copyOf(t, demoDir), name))
			want := findingsHere(t)
			owner := readTOML(t, "swap.toml")
			if use, ok := at(owner, "new.use").(string); ok {
				owner["new"] = merged(owner["new"].(map[string]any), readTOML(t, use))
			}
			if err := os.Remove("swap.toml"); err != nil {
				t.Fatal(err)
			}
			args := []string{"sheet"}
			if tool, ok := at(owner, "printer.tool").(int64); ok {
				args = append(args, "--tool", strconv.FormatInt(tool, 10))
			}
			for _, file := range at(owner, "printer.config").([]any) {
				args = append(args, file.(string))
			}
			begun, stderr, exit := run(args...)
			if exit != exitClean {
				t.Fatalf("sheet: exit %d\n%s", exit, stderr)
			}
			save(t, begun)
			namesBlanks(t, begun)

			save(t, fill(t, begun, owner))
			if got := findingsHere(t); !slices.Equal(got, want) {
				t.Errorf("filled, the sheet leads to\n%s\nnot to\n%s",
					strings.Join(got, "\n"), strings.Join(want, "\n"))
			}
		})
	}
}

func save(t *testing.T, text string) {
	t.Helper()
	testfiles.Write(t, ".", map[string]string{"swap.toml": text})
}

// namesBlanks demands that check names every blank by its line, and nothing
// else.
func namesBlanks(t *testing.T, text string) {
	t.Helper()
	out, _, exit := run("check", "--format", "text", ".")
	if exit != exitFailure {
		t.Errorf("check of a sheet with blanks: exit %d, want %d", exit, exitFailure)
	}
	blanks := 0
	for i, line := range strings.Split(text, "\n") {
		if !strings.Contains(line, "# BLANK") {
			continue
		}
		blanks++
		key, _, _ := strings.Cut(line, " ")
		named := strings.Contains(out, fmt.Sprintf("swap.toml:%d: ", i+1)) &&
			strings.Contains(out, key+" is blank and ")
		if !named {
			t.Errorf("check does not name line %d: %s", i+1, line)
		}
	}
	if got := strings.Count(out, "swap.toml:"); got != blanks || blanks < 12 {
		t.Errorf("check names %d places, and there are %d blanks\n%s", got, blanks, out)
	}
}

// fill puts in what the owner's sheet says: for blanks and for keys that are
// commented out. A blank that it has no figure for is deleted, as it may be.
func fill(t *testing.T, text string, owner map[string]any) string {
	t.Helper()
	var b strings.Builder
	header := ""
	for line := range strings.Lines(text) {
		bare, off := strings.CutPrefix(line, "#")
		if strings.HasPrefix(bare, "[") {
			header = strings.Trim(strings.TrimSpace(bare), "[]")
			if off && at(owner, header) != nil {
				line = bare
			}
			b.WriteString(line)
			continue
		}
		key, _, isKey := strings.Cut(bare, " = ")
		// Which z_reference it is only the owner sees for sure.
		blank := strings.Contains(line, "# BLANK") || key == "z_reference"
		if !isKey || strings.Contains(key, " ") || !off && !blank ||
			strings.HasPrefix(header, "old") || key == "use" {
			b.WriteString(line)
			continue
		}
		switch v := at(owner, header+"."+key); {
		case v != nil:
			fmt.Fprintf(&b, "%s = %s\n", key, literal(t, v))
		case !blank:
			b.WriteString(line)
		case !strings.Contains(line, "may stay open"):
			t.Errorf("%s.%s is a blank that must be filled, and the demo has no figure for it", header, key)
		}
	}
	waivers, _ := owner["waiver"].([]any)
	for _, w := range waivers {
		b.WriteString("[[waiver]]\n")
		for key, v := range w.(map[string]any) {
			fmt.Fprintf(&b, "%s = %s\n", key, literal(t, v))
		}
	}
	return b.String()
}

// findingsHere lists what is said of the printer in the working directory,
// without the places, which differ with the sheet.
func findingsHere(t *testing.T) []string {
	t.Helper()
	out, stderr, _ := run("check", "--root", "..", "--today", "2026-11-25", "--format", "json", ".")
	var result struct {
		Printers []struct {
			Error    any
			Findings []struct {
				Rule, Level, Message string
				Waived               *string
				Values               json.RawMessage
			}
		}
	}
	if err := json.Unmarshal([]byte(out), &result); err != nil {
		t.Fatalf("%v\n%s%s", err, out, stderr)
	}
	var list []string
	for _, p := range result.Printers {
		if p.Error != nil {
			t.Errorf("not read: %v", p.Error)
		}
		for _, f := range p.Findings {
			if f.Rule == "waiver-expired" {
				f.Message = ""
			}
			list = append(list, fmt.Sprintf("%s %s: %s %s (waived: %v)", f.Level, f.Rule, f.Message, f.Values,
				f.Waived != nil))
		}
	}
	slices.Sort(list)
	return list
}

func readTOML(t *testing.T, name string) map[string]any {
	t.Helper()
	data, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	tree := make(map[string]any)
	if err := toml.Unmarshal(data, &tree); err != nil {
		t.Fatal(err)
	}
	return tree
}

// merged puts one tree over another.
func merged(over, under map[string]any) map[string]any {
	for key, v := range over {
		a, ok := v.(map[string]any)
		b, both := under[key].(map[string]any)
		if ok && both {
			v = merged(a, b)
		}
		under[key] = v
	}
	return under
}

// at finds a value by its path.
func at(tree map[string]any, path string) any {
	var v any = tree
	for _, part := range strings.Split(path, ".") {
		m, ok := v.(map[string]any)
		if !ok {
			return nil
		}
		v = m[part]
	}
	return v
}

// literal writes a value in TOML.
func literal(t *testing.T, v any) string {
	t.Helper()
	switch v := v.(type) {
	case string:
		return strconv.Quote(v)
	case int64, bool:
		return fmt.Sprint(v)
	case float64:
		return strconv.FormatFloat(v, 'f', -1, 64)
	case toml.LocalDate:
		return v.String()
	case time.Time:
		return v.Format(time.DateOnly)
	case []any:
		list := make([]string, len(v))
		for i, e := range v {
			list[i] = literal(t, e)
		}
		return "[" + strings.Join(list, ", ") + "]"
	}
	t.Fatalf("no literal for %T", v)
	return ""
}

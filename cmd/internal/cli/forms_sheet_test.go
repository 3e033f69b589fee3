package cli

import (
	"path/filepath"
	"strconv"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

const formsDir = "../../../testdata/forms"

// forms are the printers of testdata/forms, and what their begun sheets must say.
var forms = []struct {
	name  string
	tool  int
	z     string // empty: a blank
	tools int
}{
	{"nozzle-probe", 0, "", 1},
	{"switch-and-probe", 0, "endstop", 1},
	{"virtual-endstop", 0, "probe", 1},
	{"delta", 0, "endstop", 1},
	{"two-tools", 1, "probe", 2},
	{"tool-changer", 1, "probe", 2},
	{"gains-in-include", 0, "probe", 1},
	{"gain-lists", 1, "endstop", 2},
}

// The sheet that is begun for each of them is a golden file.
func TestFormsSheets(t *testing.T) {
	t.Chdir(formsDir)
	for _, f := range forms {
		text, stderr, exit := run("sheet", "--root", ".", "--tool", strconv.Itoa(f.tool), f.name)
		if exit != exitClean {
			t.Errorf("%s: exit %d\n%s", f.name, exit, stderr)
			continue
		}
		testfiles.Golden(t, *updateForms, filepath.Join(formsGolden, f.name+".sheet"), text)
		z := "z_reference = " + strconv.Quote(f.z)
		if !strings.Contains(text, z) || strings.Contains(text, z+"              # BLANK") != (f.z == "") {
			t.Errorf("%s: no line %s", f.name, z)
		}
		if several := strings.Contains(text, "This printer has 2 hotends"); several != (f.tools > 1) {
			t.Errorf("%s: several hotends %v", f.name, several)
		}
	}
}

// A tool that a form does not have is an error that says which it has.
func TestFormsTools(t *testing.T) {
	t.Chdir(formsDir)
	for _, f := range forms {
		out, stderr, exit := run("sheet", "--tool", strconv.Itoa(f.tools), f.name)
		if exit != exitFailure || out != "" {
			t.Errorf("%s: exit %d for tool %d", f.name, exit, f.tools)
		}
		if !strings.Contains(stderr, "is not there: this configuration has ") {
			t.Errorf("%s: %s", f.name, stderr)
		}
	}
}

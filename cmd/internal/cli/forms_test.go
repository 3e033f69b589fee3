package cli

import (
	"flag"
	"path/filepath"
	"testing"

	"preflash/cmd/internal/testfiles"
)

var updateForms = flag.Bool("update-forms", false, "write the bench lists and diffs of testdata/forms anew")

// formsGolden is where the golden files lie, seen from the forms.
const formsGolden = "../../cmd/internal/cli/testdata/forms"

// TestForms holds the bench list and the diff of each form of printer to what
// was read and found right: how it homes, holds tools and keeps gains.
func TestForms(t *testing.T) {
	t.Chdir("../../../testdata/forms")
	sheets, err := filepath.Glob("*/swap.toml")
	if err != nil || len(sheets) != 8 {
		t.Fatalf("%d sheets (%v)", len(sheets), err)
	}
	for _, sheet := range sheets {
		name := filepath.Dir(sheet)
		for _, c := range []struct {
			file string
			args []string
			exit int
		}{
			{name + ".txt", []string{"bench", "--root", "..", "--today", "2026-11-26", name}, exitClean},
			{name + ".diff", []string{"diff", "--root", "..", "--today", "2026-11-26", name}, exitFound},
		} {
			stdout, stderr, exit := run(c.args...)
			if exit != c.exit {
				t.Errorf("%s: exit %d: %s", c.file, exit, stderr)
			}
			testfiles.Golden(t, *updateForms, filepath.Join(formsGolden, c.file), stdout)
		}
	}
}

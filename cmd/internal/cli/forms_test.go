package cli

import (
	"bytes"
	"flag"
	"os"
	"path/filepath"
	"testing"
)

var updateForms = flag.Bool("update-forms", false, "write the bench lists and diffs of testdata/forms anew")

// TestForms holds the bench list and the diff of each form of printer to what
// was read and found right: how it homes, holds tools and keeps gains.
func TestForms(t *testing.T) {
	t.Chdir("../../../testdata/forms")
	const golden = "../../cmd/internal/cli/testdata/forms"
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
			var stdout, stderr bytes.Buffer
			if got := Run(c.args, &stdout, &stderr); got != c.exit {
				t.Errorf("%s: exit %d: %s", c.file, got, &stderr)
			}
			file := filepath.Join(golden, c.file)
			if *updateForms {
				if err := os.WriteFile(file, stdout.Bytes(), 0o644); err != nil {
					t.Fatal(err)
				}
				continue
			}
			want, err := os.ReadFile(file)
			if err != nil {
				t.Fatal(err)
			}
			if !bytes.Equal(stdout.Bytes(), want) {
				t.Errorf("%s differs; go test ./cmd/internal/cli -run TestForms -update-forms writes "+
					"it anew\n%s", file, &stdout)
			}
		}
	}
}

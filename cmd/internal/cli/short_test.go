package cli

import (
	"path/filepath"
	"strings"
	"testing"
)

// What is printed of a fleet fits on two screens, and of one printer on one; no
// error is left out of either, and what to do is never cut.
func TestCheckIsShort(t *testing.T) {
	check := func(path string) (string, int) {
		stdout, _, _ := run("check", "--today", "2026-11-25", "--root", "../../..", path)
		return stdout, strings.Count(stdout, "\n")
	}
	const fleet, one = 90, 40
	demo := "../../../testdata/demo"
	text, n := check(demo)
	if n > fleet || strings.Contains(text, " …") {
		t.Errorf("the demo takes %d lines, or is cut:\n%s", n, text)
	}
	for name, list := range demoFaults {
		for _, f := range list {
			rule, isError := strings.CutPrefix(f, "error ")
			if isError && !strings.Contains(text, "["+rule+"]") {
				t.Errorf("%s: %s is not among\n%s", name, rule, text)
			}
		}
	}
	if text, _ := check("../../../testdata/order"); strings.Contains(text, " …") {
		t.Errorf("the printers of the order are cut:\n%s", text)
	}
	sheets, err := filepath.Glob("../../../testdata/*/egret-*/swap.toml")
	if err != nil || len(sheets) < 27 {
		t.Fatal(sheets, err)
	}
	for _, sheet := range sheets {
		if text, n := check(sheet); n > one || strings.Contains(text, " …") {
			t.Errorf("%s takes %d lines, or is cut:\n%s", sheet, n, text)
		}
	}
}

package fleet

import (
	"fmt"
	"strings"
	"testing"
)

// wrong is a configuration whose sensor a diff would put right.
func wrong() string { return strings.Replace(good, "TEMP_SENSOR_0 61", "TEMP_SENSOR_0 5", 1) }

// Where there is too much to look through, nothing is shown.
func TestElsewhereIsBounded(t *testing.T) {
	files := texts{"a/swap.toml": sheetFor("c.h"), "a/c.h": wrong()}
	for i := range 5 {
		files[fmt.Sprintf("b/%d.txt", i)] = ""
	}
	write(t, files)
	f := Load([]string{"a"}, Options{Today: today}, nil)
	defer f.Close()
	if e := f.elsewhere(nil, 7); e.err != nil {
		t.Errorf("7 files of at most 7: %v", e.err)
	}
	if e := f.elsewhere(nil, 6); e.err == nil || !strings.Contains(e.err.Error(), "more than 6 files") {
		t.Errorf("7 files of at most 6: %v", e.err)
	}
}

// A sheet that cannot be read names its files all the same: in whole, in part,
// or where only its configuration is broken.
func TestUnreadableNamesFiles(t *testing.T) {
	wrongKey := strings.NewReplacer("rated_c = 300", "rated = 300")
	for name, sheet := range map[string]string{
		"no TOML":          strings.Replace(sheetFor("../a/c.h"), "rated_c = 300", "rated_c = = 300", 1),
		"a wrong key":      wrongKey.Replace(sheetFor("../a/c.h")),
		"single quotes":    wrongKey.Replace(strings.ReplaceAll(sheetFor("../a/c.h"), `"`, "'")),
		"a missing file":   sheetFor("../a/c.h", "gone.h"),
		"an include of it": sheetFor("main.h", "gone.h"),

		"an include of it, and a wrong key":    wrongKey.Replace(sheetFor("main.h")),
		"an include of it behind a gone one":   sheetFor("late.h"),
		"no TOML, and a quote without its end": "don't config = [\"../a/c.h\"]",
	} {
		t.Run(name, func(t *testing.T) {
			write(t, texts{
				"a/swap.toml": sheetFor("c.h"), "a/c.h": wrong(),
				"b/swap.toml": sheet, "b/main.h": "#include \"../a/c.h\"\n",
				"b/late.h":    "#include \"gone.h\"\n#include \"../a/c.h\"\n",
				"c/swap.toml": sheetFor("c.h"), "c/c.h": wrong(),
				"d/swap.toml": "format = 9",
			})
			for _, paths := range [][]string{{"a", "c"}, {"."}} {
				f := Load(paths, Options{Today: today}, nil)
				d := f.Prove()
				f.Close()
				if len(d.Plan.Files) != 1 || d.Plan.Files[0].Name != "c/c.h" {
					t.Errorf("%v: the plan changes %d files", paths, len(d.Plan.Files))
				}
				const why = "a/c.h: b/swap.toml names this file too and cannot be read"
				if err := d.Refused("a/swap.toml"); err == nil || !strings.Contains(err.Error(), why) {
					t.Errorf("%v: refused with %v", paths, err)
				}
				if d.Refused("c/swap.toml") != nil || d.Err() == nil {
					t.Errorf("%v: refusals are %v", paths, d.Refusals)
				}
				if want := map[bool]int{true: 2, false: 0}[len(paths) == 2]; d.Elsewhere != want {
					t.Errorf("%v: %d sheets elsewhere are counted, want %d", paths, d.Elsewhere, want)
				}
			}
		})
	}
}

// A sheet elsewhere that cannot be read and is nobody's business is counted, and
// one that shares nothing is not held to anything.
func TestElsewhere(t *testing.T) {
	write(t, texts{
		"a/swap.toml": sheetFor("c.h"), "a/c.h": wrong(),
		"b/swap.toml": sheetFor("../a/c.h"), "c/swap.toml": sheetFor("own.h"), "c/own.h": wrong(),
		"d/swap.toml": "format = 9",
	})
	f := Load([]string{"a"}, Options{Today: today}, nil)
	defer f.Close()
	d := f.Prove()
	if d.Err() != nil || d.Elsewhere != 1 || len(d.Plan.Files) != 1 {
		t.Fatalf("%v, %d elsewhere, %d files", d.Err(), d.Elsewhere, len(d.Plan.Files))
	}
	if d.Plan.After("b/swap.toml") == nil || d.Plan.After("c/swap.toml") != nil {
		t.Error("the printer that shares the file was not held to the diff, or another one was")
	}
	for _, r := range d.Plan.Reasons {
		if r.Owner != "a/swap.toml" {
			t.Errorf("%s was not named and asks for a change", r.Owner)
		}
	}
}

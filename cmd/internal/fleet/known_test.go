package fleet

import (
	"bytes"
	"os"
	"strings"
	"testing"

	"preflash/rules"
)

// Twenty faulty printers: once their findings are known, only what cannot be
// waived counts. One figure made worse counts alone; one that is fixed is named.
func TestKnownFleet(t *testing.T) {
	dir := t.TempDir()
	if err := os.CopyFS(dir, os.DirFS("../../../testdata/order")); err != nil {
		t.Fatal(err)
	}
	t.Chdir(dir)
	run := func(write bool) *Result {
		k, err := ReadKnown("known.jsonl", write, today)
		if err != nil {
			t.Fatal(err)
		}
		f := Load([]string{"."}, Options{Today: today, Known: k}, nil)
		defer f.Close()
		if write {
			var text bytes.Buffer
			if err := f.WriteKnown(&text); err != nil {
				t.Fatal(err)
			}
			if err := os.WriteFile("known.jsonl", text.Bytes(), 0o666); err != nil {
				t.Fatal(err)
			}
		}
		return f.Check()
	}
	counting := func(r *Result) map[string]bool {
		list := make(map[string]bool)
		for i := range r.Printers {
			for _, f := range r.Printers[i].Every() {
				if f.Counts() {
					list[r.Printers[i].Name+" "+f.Rule+" "+f.about] = true
					if !rules.Find(f.Rule).Unwaived && (f.unknown == "" || f.Level < rules.Error) {
						list["new"] = true
					}
				}
			}
		}
		return list
	}
	edit := func(file, old, new string) {
		text, err := os.ReadFile(file)
		if err != nil || !strings.Contains(string(text), old) {
			t.Fatalf("%s lacks %q: %v", file, old, err)
		}
		if err := os.WriteFile(file, []byte(strings.Replace(string(text), old, new, 1)), 0o666); err != nil {
			t.Fatal(err)
		}
	}

	written := run(true)
	start := counting(run(false))
	if start["new"] || !start["egret-21 sensor-placeholder hotend sensor"] ||
		!start["egret-23 heater-overpower "] {
		t.Fatalf("counts although it is known, or does not although it never is: %v", start)
	}
	if s := written.Summary(); s.Known < 100 || len(start) != len(counting(written)) {
		t.Errorf("%d are known; the run that writes and the next one differ", s.Known)
	}

	edit("egret-37/printer.cfg", "320", "330")
	worse := counting(run(false))
	for name := range worse {
		if !start[name] && name != "new" && name != "egret-37 temp-ceiling " {
			t.Errorf("counts besides the one that got worse: %s", name)
		}
	}
	if !worse["egret-37 temp-ceiling "] {
		t.Error("what got worse does not count")
	}

	edit("egret-37/printer.cfg", "330", "280")
	r := run(false)
	if len(r.Fixed) == 0 || counting(r)["new"] {
		t.Errorf("fixed: %v", r.Fixed)
	}
	for _, f := range r.Fixed {
		if f.Printer != "egret-37" {
			t.Errorf("fixed although nothing changed there: %+v", f)
		}
	}
	run(true)
	if r := run(false); len(r.Fixed) != 0 || counting(r)["new"] {
		t.Errorf("after the next write: %v", r.Fixed)
	}
}

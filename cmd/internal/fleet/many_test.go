package fleet

import (
	"bytes"
	"os"
	"testing"

	"preflash/rules"
)

// worries lists the printers with something above a note, and what.
func worries(r *Result) map[string][]string {
	found := make(map[string][]string)
	for _, p := range r.Printers {
		if p.Problem != nil {
			found[p.Name] = append(found[p.Name], p.Problem.String())
		}
		for _, f := range p.Findings {
			if f.Level > rules.Note {
				found[p.Name] = append(found[p.Name], f.Rule+": "+f.Message)
			}
		}
	}
	return found
}

// One fault among two thousand printers is found, alone.
func TestManyPrinters(t *testing.T) {
	t.Chdir(t.TempDir())
	writeFleet(t, 1000, 1000, 6000, 2000)
	o := Options{Today: today}
	r := check(o)
	if len(r.Printers) != 2000 {
		t.Fatalf("%d printers, want 2000", len(r.Printers))
	}
	for name, found := range worries(r) {
		t.Fatalf("%s is not clean: %v", name, found)
	}

	const name = "printer-1234"
	text, err := os.ReadFile(name + "/printer.cfg")
	if err != nil {
		t.Fatal(err)
	}
	text = bytes.Replace(text, []byte("max_temp: 290"), []byte("max_temp: 340"), 1)
	if err := os.WriteFile(name+"/printer.cfg", text, 0o666); err != nil {
		t.Fatal(err)
	}
	found := worries(check(o))
	if len(found) != 1 || len(found[name]) != 1 {
		t.Errorf("one fault was planted in %s; found there: %v, and something on %d printers in all",
			name, found[name], len(found))
	}
}

// Package testfiles writes what tests work on, and holds what is printed to
// golden files and to harmless characters.
package testfiles

import (
	"os"
	"path/filepath"
	"testing"

	"preflash/parser"
)

// Sheet is a whole sheet of a printer; a test replaces what it is about.
const Sheet = `format = 1
[printer]
name = "egret-90"
config = ["printer.cfg"]
supply_v = 24.0
[new]
rated_c = 300
print_c = [190, 250]
[new.sensor]
kind = "ntc"
curve = "ntc-100k-3950"
[new.heater]
kind = "cartridge"
rated_v = 24.0
rated_w = 40.0
`

// Write writes files below a folder, and the folders that they lie in.
func Write(t testing.TB, dir string, files map[string]string) {
	t.Helper()
	for name, text := range files {
		name = filepath.Join(dir, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(name), 0o777); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
}

// Golden compares a text with a file, which it writes anew where it is told to.
func Golden(t testing.TB, update bool, name, got string) {
	t.Helper()
	if update {
		Write(t, ".", map[string]string{name: got})
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if got != string(want) {
		t.Errorf("differs from %s, which -update… of this package's tests writes anew; got\n%s", name, got)
	}
}

// Hidden finds the first character that hides or acts, line breaks and tabs
// aside.
func Hidden(text string) (r rune, found bool) {
	for _, r := range text {
		if r != '\n' && r != '\t' && parser.Hidden(r) {
			return r, true
		}
	}
	return 0, false
}

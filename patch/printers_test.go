package patch

import (
	"maps"
	"os"
	"slices"
	"strings"
	"testing"
	"time"

	"preflash/parser"
	"preflash/parser/defines"
	"preflash/parser/sections"
	"preflash/parser/sheet"
)

// ProofSheet is a sheet on which no rule finds anything, given a configuration
// that fits it.
const ProofSheet = `format = 1
[printer]
name = "egret-91"
config = ["printer.cfg"]
supply_v = 24
[new]
rated_c = 300
print_c = [190, 250]
[new.sensor]
kind = "ntc"
curve = "ntc-100k-3950"
[new.heater]
kind = "cartridge"
rated_v = 24
rated_w = 40
`

// Printers writes files into a new folder, goes there and gives one printer for
// each sheet, by the sheets' names. Their configurations are not read yet.
func Printers(t *testing.T, files map[string]string) []*Source {
	t.Helper()
	t.Chdir(t.TempDir())
	for name, text := range files {
		if err := os.WriteFile(name, []byte(text), 0o666); err != nil {
			t.Fatal(err)
		}
	}
	tree, err := parser.OpenTree(".")
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() { tree.Close() })
	var list []*Source
	for _, name := range slices.Sorted(maps.Keys(files)) {
		if !strings.HasSuffix(name, ".toml") {
			continue
		}
		s, err := sheet.Read(tree, name)
		if err != nil {
			t.Fatal(err)
		}
		p := &Source{
			Owner: name, Tree: tree, Style: sections.Style, Sheet: s,
			Request: parser.Request{Files: []string{s.Printer.Config[0].Value}, Tool: s.Printer.Tool.Value},
			Today:   time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC),
		}
		if strings.HasSuffix(p.Request.Files[0], ".h") {
			p.Style = defines.Style
		}
		list = append(list, p)
	}
	return list
}

package fleet

import (
	"fmt"
	"io"
	"strings"
	"sync/atomic"
	"testing"

	"preflash/parser"
	"preflash/parser/styles"
	"preflash/patch"
)

// counting is a style that counts how often a configuration is read.
type counting struct {
	parser.Style
	read *atomic.Int64
}

func (c counting) Read(t *parser.Tree, r parser.Request) (parser.Config, error) {
	c.read.Add(1)
	return c.Style.Read(t, r)
}

// count counts the readings until the test ends.
func count(t *testing.T) *atomic.Int64 {
	var read atomic.Int64
	all := styles.All()
	for i := range all {
		all[i] = counting{all[i], &read}
	}
	allStyles = func() []parser.Style { return all }
	t.Cleanup(func() { allStyles = styles.All })
	return &read
}

// A configuration is read once for a check, and for a diff once more for each
// round: the last round is the proof. A report reads no more than a diff does.
func TestReadings(t *testing.T) {
	blind := strings.NewReplacer("[verify_heater extruder]", "", "max_temp: 290", "max_temp: 400").
		Replace(healthySections) + `
[gcode_macro HOT]
gcode:
  M104 S390

[verify_heater extruder]
max_error: 1e9
check_gain_time: 400
`
	const custom = "#define CONFIGURATION_H_VERSION 02010300\n" + good + `#if TEMP_SENSOR_0 == 1000
  #define HOTEND0_PULLUP_RESISTOR_OHMS 4700
  #define HOTEND0_RESISTANCE_25C_OHMS 100000
  #define HOTEND0_BETA 3950
  #define HOTEND0_SH_C_COEFF 0
#endif
`
	tests := []struct {
		name   string
		files  texts
		rounds int64
	}{
		{"nothing to change", texts{"swap.toml": sheetFor("c.h"), "c.h": good}, 0},
		{"one round", texts{"swap.toml": sheetFor("c.h"), "c.h": wrong()}, 1},
		{"a custom sensor whose options wait in a branch", texts{
			"swap.toml": strings.Replace(sheetFor("c.h"), "ntc-100k-3950", "ntc-100k-4300", 1),
			"c.h":       custom}, 1},
		{"two rounds", texts{"swap.toml": sheetFor("printer.cfg"), "printer.cfg": blind}, 2},
	}
	for _, tt := range tests {
		t.Run(tt.name, func(t *testing.T) {
			write(t, tt.files)
			for _, step := range []struct {
				name string
				do   func(f *Fleet)
				want int64
			}{
				{"check", func(f *Fleet) { f.Check() }, 1},
				{"diff", func(f *Fleet) {
					d := f.Prove()
					if d.Err() != nil || len(d.Plan.Left) > 0 || (len(d.Plan.Files) > 0) != (tt.rounds > 0) {
						t.Fatalf("%v, left %v, %d files", d.Err(), d.Plan.Left, len(d.Plan.Files))
					}
				}, 1 + tt.rounds},
				{"check with the diff", func(f *Fleet) {
					f.Check()
					if err := f.Prove().Plan.Print(io.Discard, patch.Options{}); err != nil {
						t.Fatal(err)
					}
				}, 1 + tt.rounds},
				{"check as SARIF", func(f *Fleet) {
					fixes := 0
					for _, found := range f.Proved().Printers[0].Findings {
						fixes += len(found.Fix)
					}
					if (fixes > 0) != (tt.rounds > 0) {
						t.Errorf("%d fixes after %d rounds", fixes, tt.rounds)
					}
				}, 1 + tt.rounds},
				{"report", func(f *Fleet) { f.Survey() }, 1 + tt.rounds},
			} {
				read := count(t)
				f := Load([]string{"."}, Options{Today: today}, nil)
				step.do(f)
				f.Close()
				if got := read.Load(); got != step.want {
					t.Errorf("%s reads the configuration %d times, want %d", step.name, got, step.want)
				}
			}
		})
	}
}

// Printers that share a file, and the sheets elsewhere, are read once each and
// once more for each round that touches them.
func TestReadingsOfSharedFiles(t *testing.T) {
	files := texts{"common.h": wrong(), "alone/swap.toml": sheetFor("c.h"), "alone/c.h": wrong()}
	for i := range 3 {
		files[fmt.Sprintf("shares/%d.swap.toml", i)] = sheetFor("../common.h")
	}
	write(t, files)
	read := count(t)
	f := Load([]string{"shares/0.swap.toml"}, Options{Today: today}, nil)
	defer f.Close()
	d := f.Prove()
	if d.Err() != nil || len(d.Plan.Files) != 1 {
		t.Fatalf("%v, %d files", d.Err(), len(d.Plan.Files))
	}
	if got := read.Load(); got != 3*2+1 {
		t.Errorf("the configurations are read %d times; "+
			"three that share it twice and one that does not are 7", got)
	}
}

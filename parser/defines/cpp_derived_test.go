package defines

import (
	"fmt"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/rogpeppe/go-internal/txtar"
	"pgregory.net/rapid"

	"preflash/parser"
)

// Derived names against GNU cpp: a prelude, a piece between the two files and
// one after them, for each generation, are written for cpp from what the
// firmware publishes (testdata/reference/derived). The reader under test reads
// the two files alone. Both must agree on every name that the files mention.

const derivedReferences = "testdata/reference/derived"

// printerFiles generates the two files of a printer whose conditions ask for
// derived names.
func printerFiles(version string) *rapid.Generator[configuration] {
	return rapid.Custom(func(t *rapid.T) configuration {
		g := &generator{T: t}
		g.line("#define CONFIGURATION_H_VERSION " + version)
		g.printer(version)
		c := configuration{"a.h": g.out.String()}
		g = &generator{T: t, probes: 100}
		g.line("#define CONFIGURATION_ADV_H_VERSION " + version)
		for _, name := range []string{
			"AUTOTEMP", "LIN_ADVANCE", "FWRETRACT", "PREVENT_COLD_EXTRUSION", "PIDTEMPBED",
			"VOLUMETRIC_EXTRUDER_LIMIT",
		} {
			if g.int(0, 1) == 0 {
				g.line("#define " + name)
			}
		}
		g.line("#if ALL(HAS_HOTEND, THERMAL_PROTECTION_HOTENDS)")
		g.line("#define THERMAL_PROTECTION_PERIOD 40\n#define WATCH_TEMP_PERIOD 20\n#endif")
		g.line("#define E0_AUTO_FAN_PIN -1\n#define E1_AUTO_FAN_PIN 8")
		g.asks(version, true, 12)
		c["b.h"] = g.out.String()
		return c
	})
}

// printer writes options that names are derived from.
func (g *generator) printer(version string) {
	g.line("#define EXTRUDERS " + g.one("0", "1", "1", "1", "2", "3", "5", "8"))
	for n := range g.int(1, 4) {
		g.line(fmt.Sprintf("#define TEMP_SENSOR_%d %s", n,
			g.one("0", "1", "1", "5", "-2", "-3", "-5", "-1", "1000")))
	}
	if g.int(0, 2) > 0 {
		g.line("#define TEMP_SENSOR_BED " + g.one("0", "1", "-5"))
	}
	g.line(`#define HEATER_0_MAXTEMP 275
#define HEATER_1_MAXTEMP 275
#define PIDTEMP
#define THERMAL_PROTECTION_HOTENDS
#define THERMAL_PROTECTION_BED`)
	g.line("#define SERIAL_PORT_2 " + g.one("-1", "-2", "3"))
	for _, name := range []string{
		"SINGLENOZZLE", "SWITCHING_EXTRUDER", "SWITCHING_NOZZLE", "MECHANICAL_SWITCHING_EXTRUDER",
		"MIXING_EXTRUDER", "E_DUAL_STEPPER_DRIVERS", "BLTOUCH", "FIX_MOUNTED_PROBE", "NOZZLE_AS_PROBE",
		"MAGLEV4", "BD_SENSOR", "PROBE_MANUALLY", "AUTO_BED_LEVELING_3POINT", "AUTO_BED_LEVELING_BILINEAR",
		"AUTO_BED_LEVELING_UBL", "MESH_BED_LEVELING", "DELTA", "MP_SCARA", "POLAR", "SDSUPPORT",
		"X_DUAL_STEPPER_DRIVERS", "Y_DUAL_STEPPER_DRIVERS", "DISABLE_E", "FILAMENT_RUNOUT_SENSOR",
	} {
		switch g.int(0, 8) {
		case 0:
			g.line("#define " + name)
		case 1:
			g.line("//#define " + name)
		case 2:
			g.line("#define " + name + g.one(" 0", " 1", " true", " false", " 2"))
		}
	}
	g.line("#define MIXING_STEPPERS " + g.one("2", "3"))
	if g.int(0, 4) == 0 {
		g.line("#define Z_PROBE_SERVO_NR 0")
	}
	if g.int(0, 2) == 0 {
		g.line("#define NUM_Z_STEPPER_DRIVERS " + g.one("1", "2", "3"))
	}
	for _, axis := range []string{"X", "Y", "Z", "X2", "Y2", "Z2", "Z3", "E0", "E1", "E2"} {
		if g.int(0, 2) == 0 {
			g.line("#define " + axis + "_DRIVER_TYPE " + g.one("A4988", "A4988", "TMC2130", "TMC2208",
				"TMC2208_STANDALONE", "TMC2209", "TMC2660", "TMC26X", "TMC5160"))
		}
	}
	if g.int(0, 2) == 0 {
		g.line("#define DGUS_LCD_UI " + g.one("ORIGIN", "RELOADED", "OTHER"))
	}
	g.asks(version, false, 6)
}

// asks writes conditions on derived names, as they may stand in that file.
func (g *generator) asks(version string, second bool, n int) {
	names := []string{
		"HAS_HOTEND", "HAS_EXTRUDERS", "HAS_MULTI_EXTRUDER", "HAS_MULTI_HOTEND", "HAS_HOTEND_OFFSET",
		"HAS_Z_SERVO_PROBE", "HAS_BED_PROBE", "PROBE_SELECTED", "NEEDS_THREE_PROBE_POINTS", "IS_KINEMATIC",
		"HAS_X2_STEPPER", "HAS_MEDIA", "HAS_ETHERNET", "HAS_TRINAMIC_CONFIG", "HAS_TMC26X", "HAS_STEALTHCHOP",
	}
	asks := []string{
		"HOTENDS", "E_STEPPERS", "HOTENDS > 1", "E_STEPPERS == 2", "NUM_Z_STEPPERS > 1", "HAS_E_TEMP_SENSOR",
		"HAS_OTHER_MMU2", "ENABLED(PROBE_MANUALLY)", "TEMP_SENSOR_0",
	}
	if version == newerText {
		asks = append(asks, "TEMP_SENSOR_IS_MAX_TC(0)", "TEMP_SENSOR_IS_MAX_TC(1)",
			"TEMP_SENSOR_IS_MAX_TC(BED)", "DGUS_UI_IS(ORIGIN, RELOADED)", "HAS_HEATED_BED")
	}
	calls := map[string]string{newerText: "AXIS_IS_TMC_CONFIG", olderText: "AXIS_IS_TMC"}
	for range n {
		var ask string
		switch g.int(0, 4) {
		case 0:
			ask = g.one(names...)
		case 1:
			ask = g.one("ENABLED(", "defined(", "!DISABLED(") + g.one(names...) + ")"
		case 2:
			ask = g.one("ALL(", "ANY(", "NONE(") + g.one(names...) + ", " + g.one(names...) + ")"
		case 3:
			ask = g.one(asks...)
		default:
			ask = g.one(names...)
			if second {
				ask = calls[version] + "(" +
					g.one("X", "Y", "Z", "X2", "Y2", "Z2", "Z3", "E0", "E1", "E2", "I") + ")"
			}
		}
		g.probes++
		g.line("#if " + ask)
		g.line(fmt.Sprintf("  #define PROBE_%d", g.probes))
		g.line("#endif")
	}
}

// cppOfPrinter asks cpp for the names that the two files mention.
func cppOfPrinter(
	t interface{ Fatal(...any) }, dir, generation string, c configuration,
) (map[string]string, error) {
	main := ""
	for i, part := range []string{"a.h", "b.h", ""} {
		name := fmt.Sprintf("piece-%d.h", i+1)
		piece, err := os.ReadFile(filepath.Join(derivedReferences, fmt.Sprintf("%s-%d.h", generation, i+1)))
		if err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), piece, 0o644); err != nil {
			t.Fatal(err)
		}
		main += "#include \"" + name + "\"\n"
		if part != "" {
			main += "#include \"" + part + "\"\n"
		}
	}
	if err := write(dir, c); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile(filepath.Join(dir, "main.h"), []byte(main), 0o644); err != nil {
		t.Fatal(err)
	}
	macros, err := runCPP(dir)
	for name := range macros {
		if !strings.Contains(c["a.h"]+c["b.h"], "#define "+name+"\n") &&
			!strings.Contains(c["a.h"]+c["b.h"], "#define "+name+" ") {
			delete(macros, name)
		}
	}
	return macros, err
}

// oursOfPrinter gives the same from the reader under test.
func oursOfPrinter(c configuration) (map[string]string, error) {
	tree, err := parser.OpenTree(".")
	if err != nil {
		return nil, err
	}
	defer tree.Close()
	cfg, err := readConfig(tree.With(map[string][]byte{tree.Shown("a.h"): []byte(c["a.h"]),
		tree.Shown("b.h"): []byte(c["b.h"])}),
		parser.Request{Files: []string{"a.h", "b.h"}})
	if err != nil {
		return nil, err
	}
	macros := make(map[string]string)
	for name := range cfg.s.names {
		switch m := cfg.s.macro(name); m.state {
		case parser.Yes:
			macros[name] = normal(" " + m.winner.value())
		case parser.Maybe:
			macros[name] = "unknown: " + m.why
		}
	}
	return macros, nil
}

var bothGenerations = map[string]string{"newer": newerText, "older": olderText}

func TestDerivedAgreesWithCPP(t *testing.T) {
	if os.Getenv("PREFLASH_LIVE") != "1" {
		t.Log("cpp itself is asked when PREFLASH_LIVE=1; see TestDerivedAgreesWithReference")
		return
	}
	for generation, version := range bothGenerations {
		t.Run(generation, func(t *testing.T) {
			dir := t.TempDir()
			rapid.Check(t, func(t *rapid.T) {
				c := printerFiles(version).Draw(t, "printer")
				want, err := cppOfPrinter(t, dir, generation, c)
				if err != nil {
					t.Fatalf("%v\n%s%s", err, c["a.h"], c["b.h"])
				}
				got, err := oursOfPrinter(c)
				if err != nil {
					t.Fatal(err)
				}
				if diff := difference(want, got); diff != "" {
					t.Fatalf("%s\n-- a.h --\n%s-- b.h --\n%s", diff, c["a.h"], c["b.h"])
				}
			})
		})
	}
}

func TestDerivedAgreesWithReference(t *testing.T) {
	const each = 20
	for generation, version := range bothGenerations {
		for n := range each {
			name := filepath.Join(derivedReferences, fmt.Sprintf("%s-%02d.txtar", generation, n))
			if *update {
				updateDerived(t, name, generation, printerFiles(version).Example(n))
			}
			archive, err := txtar.ParseFile(name)
			if err != nil {
				t.Fatal(err)
			}
			c, want := configuration{}, make(map[string]string)
			for _, f := range archive.Files {
				c[f.Name] = string(f.Data)
			}
			for line := range strings.Lines(c["cpp.txt"]) {
				name, value, _ := strings.Cut(strings.TrimSuffix(line, "\n"), "\t")
				want[name] = value
			}
			got, err := oursOfPrinter(c)
			if err != nil {
				t.Fatal(err)
			}
			if diff := difference(want, got); diff != "" || len(want) < 10 {
				t.Errorf("%s:\n%s", name, diff)
			}
		}
	}
}

func updateDerived(t *testing.T, name, generation string, c configuration) {
	macros, err := cppOfPrinter(t, t.TempDir(), generation, c)
	if err != nil {
		t.Fatal(err)
	}
	archive := &txtar.Archive{Files: []txtar.File{
		{Name: "a.h", Data: []byte(c["a.h"])}, {Name: "b.h", Data: []byte(c["b.h"])},
		{Name: "cpp.txt", Data: []byte(listed(macros))},
	}}
	if err := os.WriteFile(name, txtar.Format(archive), 0o644); err != nil {
		t.Fatal(err)
	}
}

// The demo's headers are read as cpp reads them, wherever the reader says that
// it knows.
func TestDemoAgreesWithCPP(t *testing.T) {
	if os.Getenv("PREFLASH_LIVE") != "1" {
		t.Log("cpp itself is asked when PREFLASH_LIVE=1")
		return
	}
	for name, generation := range map[string]string{
		"egret-01": "newer", "egret-02": "older", "egret-03": "newer",
	} {
		c := configuration{}
		for part, file := range map[string]string{"a.h": "Configuration.h", "b.h": "Configuration_adv.h"} {
			data, err := os.ReadFile(filepath.Join("../../testdata/demo", name, file))
			if err != nil {
				t.Fatal(err)
			}
			c[part] = strings.ReplaceAll(string(data), "\r\n", "\n")
		}
		want, err := cppOfPrinter(t, t.TempDir(), generation, c)
		if err != nil {
			t.Fatal(err)
		}
		got, err := oursOfPrinter(c)
		if err != nil {
			t.Fatal(err)
		}
		unknown := 0
		for macro, value := range got {
			if strings.HasPrefix(value, "unknown: ") {
				unknown++
				delete(got, macro)
				delete(want, macro)
			}
		}
		if diff := difference(want, got); diff != "" || len(want) < 200 || unknown > 10 {
			t.Errorf("%s: %d names agree, %d are unknown\n%s", name, len(want), unknown, diff)
		}
	}
}

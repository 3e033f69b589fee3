package cli

import (
	"fmt"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

// growing are inputs that took more than their share once. Doubling one must
// not do much more than double the time.
var growing = []struct {
	name   string
	most   int // five sizes: this one, and each half of the one before
	format string
	write  func(n int, put func(name, text string))
}{
	{"unknown protection names", 8000, "text", func(n int, put func(name, text string)) {
		put("Configuration.h", lines(n, "#define THERMAL_GUARD_%d 1\n"))
	}},
	{"unknown names that others use", 8000, "text", func(n int, put func(name, text string)) {
		put("Configuration.h",
			lines(n, "#define THERMAL_GUARD_%[1]d 1\n#define OTHER_%[1]d THERMAL_GUARD_%[1]d\n"))
	}},
	{"watch sections", 40_000, "text", func(n int, put func(name, text string)) {
		put("printer.cfg", lines(n, "[verify_heater h%d]\n"))
	}},
	{"heaters that are watched", 40_000, "text", func(n int, put func(name, text string)) {
		put("printer.cfg", lines(n, "[verify_heater h%[1]d]\n[heater_generic h%[1]d]\n"))
	}},
	{"wildcard includes", 2000, "text", func(n int, put func(name, text string)) {
		put("printer.cfg", lines(n, "[include none%d*.cfg]\n"))
		for i := range 200 {
			put(fmt.Sprintf("x%d.txt", i), "")
		}
	}},
	{"folders in folders", 1504, "text", func(n int, put func(name, text string)) {
		put("Configuration.h", "\n")
		if err := os.MkdirAll(strings.Repeat("d/", n), 0o777); err != nil {
			panic(err) // of the benchmark's own folder
		}
	}},
	{"errors, text", 800_000, "text", errorLines},
	{"errors, SARIF", 800_000, "sarif", errorLines},
	{"options in one section", 100_000, "text", func(n int, put func(name, text string)) {
		put("printer.cfg", "[extruder]\n"+lines(n, "thermal_x%d: 1\n"))
	}},
	{"sections of one name", 90_000, "text", func(n int, put func(name, text string)) {
		put("printer.cfg", lines(n, "[extruder]\nmax_temp: %d\n"))
	}},
	{"default options", 90_000, "text", func(n int, put func(name, text string)) {
		put("printer.cfg", "[DEFAULT]\n"+lines(n, "thermal_x%d: 1\n")+"[extruder]\n")
	}},
	{"redefinitions", 100_000, "text", func(n int, put func(name, text string)) {
		put("Configuration.h", lines(n, "#define TEMP_SENSOR_0 %d\n"))
	}},
	{"unknown conditions", 50_000, "text", func(n int, put func(name, text string)) {
		put("Configuration.h", lines(n, "#if FAR_%[1]d\n#define TEMP_SENSOR_0 %[1]d\n#endif\n"))
	}},
	{"keys that a sheet does not know", 20_000, "text", func(n int, put func(name, text string)) {
		put("Configuration.h", "\n")
		put("swap.toml", testfiles.Sheet+lines(n, "odd_%d = 1\n"))
	}},
}

func errorLines(n int, put func(name, text string)) {
	put("Configuration.h", lines(n, "#error\n"))
}

func lines(n int, format string) string {
	var b strings.Builder
	for i := range n {
		if strings.Contains(format, "%") {
			fmt.Fprintf(&b, format, i)
		} else {
			b.WriteString(format)
		}
	}
	return b.String()
}

// BenchmarkGrowth checks each input in five sizes.
func BenchmarkGrowth(b *testing.B) {
	for _, g := range growing {
		for n := g.most / 16; n <= g.most; n *= 2 {
			b.Run(fmt.Sprintf("%s/%d", g.name, n), func(b *testing.B) {
				b.Chdir(b.TempDir())
				config, style := "Configuration.h", "defines"
				files := map[string]string{"swap.toml": testfiles.Sheet}
				g.write(n, func(name, text string) {
					if filepath.Ext(name) == ".cfg" {
						config, style = name, "sections"
					}
					files[name] = text
				})
				files["swap.toml"] = strings.Replace(files["swap.toml"], `"printer.cfg"]`,
					fmt.Sprintf("%q]\nstyle = %q", config, style), 1)
				testfiles.Write(b, ".", files)
				for b.Loop() {
					Run([]string{"check", "--today", "2026-11-25", "--format", g.format, "."},
						io.Discard, io.Discard)
				}
			})
		}
	}
}

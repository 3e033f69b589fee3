package cli

import (
	"fmt"
	"path/filepath"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

// Logs that look well and mislead are refused with the remedy. Behind them is a
// block of 14 J/K, 0.07 W/K and 0.1 W/K with the part fan, a lag of 3 s and 50 W.
func TestHeatRefusesWhatMisleads(t *testing.T) {
	type row struct{ timeS, tempC, duty, fan float64 }
	var log []row
	block, sensor := 22.0, 22.0
	for s := range 700 {
		r := row{float64(s), sensor, 0, 0}
		if s < 450 {
			r.duty = min(max((220-sensor)*0.05+0.28, 0), 1)
		}
		if s >= 280 && s < 450 {
			r.fan = 1
		}
		log = append(log, r)
		for range 20 {
			block += (50*r.duty - (0.07+0.03*r.fan)*(block-22)) / 14 / 20
			sensor += (block - sensor) / 3 / 20
		}
	}
	for _, c := range []struct {
		name   string
		change func(r row) row
		from   int    // the first row
		says   string // "" where it is fitted
	}{
		{"as it is", func(r row) row { return r }, 0, ""},
		{"from warm", func(r row) row { return r }, 250, ""},
		{"Fahrenheit, from warm",
			func(r row) row { r.tempC = r.tempC*1.8 + 32; return r }, 60, "in Fahrenheit"},
		{"the fan the wrong way round", func(r row) row { r.fan = 1 - r.fan; return r }, 0,
			"less heat with the part fan on than off"},
		{"milliseconds", func(r row) row { r.timeS *= 1000; return r }, 0,
			"a row for every 1000: that is milliseconds"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var text strings.Builder
			text.WriteString("time_s,temp_c,duty,fan\n")
			for _, r := range log[c.from:] {
				r = c.change(r)
				fmt.Fprintf(&text, "%g,%.3f,%.4f,%g\n", r.timeS, r.tempC, r.duty, r.fan)
			}
			dir := t.TempDir()
			testfiles.Write(t, dir, map[string]string{"log.csv": text.String()})
			stdout, stderr, code := run("heat", filepath.Join(dir, "log.csv"),
				"--rated-w", "50", "--rated-v", "24", "--supply-v", "24")
			if c.says == "" && (code != exitClean || !strings.Contains(stdout, "[new.block]")) {
				t.Errorf("exit %d: %s", code, stderr)
			}
			if c.says != "" && (code != exitFailure || !strings.Contains(stderr, c.says)) {
				t.Errorf("exit %d, want %q: %s%s", code, c.says, stderr, stdout)
			}
		})
	}
}

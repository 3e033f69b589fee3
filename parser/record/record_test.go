package record

import (
	"errors"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	"preflash/parser"
)

func file(text string) *parser.File { return parser.NewFile("log.csv", []byte(text)) }

func readSensor(f *parser.File) error { _, err := ReadSensor(f); return err }
func readHeat(f *parser.File) error   { _, err := ReadHeat(f, 0, 0); return err }
func readFlow(f *parser.File) error   { _, err := ReadFlow(f); return err }

const (
	sensorHead = "temp_c,ohm\n"
	heatHead   = "time_s,temp_c,duty\n"
	flowHead   = "flow_mm3_s,commanded_mm,mass_g\n"
)

func TestRefuses(t *testing.T) {
	for _, c := range []struct {
		name, text string
		read       func(*parser.File) error
		line       int
		says       string
	}{
		{"empty", "", readHeat, 0, "is empty; the first line names the columns: time_s,temp_c,duty[,fan]"},
		{"only comments", "# nothing yet\n\n", readFlow, 0, "is empty"},
		{"no rows", sensorHead, readSensor, 0, "no rows"},
		{"one row", "# bead\n" + sensorHead + "25,100000\n", readSensor, 3, "is the only row"},
		{"no header", "25,100000\n150,1770\n", readSensor, 1, "is no header"},
		{"text in a number", sensorHead + "25,100000\nhot,1770\n", readSensor,
			3, "“hot” as temp_c, which is no number"},
		{"NaN", sensorHead + "25,100000\n150,NaN\n", readSensor, 3, "NaN as ohm, which is no measurement"},
		{"infinite", sensorHead + "25,100000\n150,1e999\n", readSensor,
			3, "1e999 as ohm, which is no measurement"},
		{"empty cell", sensorHead + "25,100000\n150,\n", readSensor, 3, "has no ohm"},
		{"decimal comma in quotes", sensorHead + "25,100000\n\"150,5\",1770\n", readSensor,
			3, "with a point: 150.5"},
		{"decimal comma", sensorHead + "25,100000\n150,5,1770\n", readSensor,
			3, "has 3 values, the header names 2 columns; values are separated by commas, " +
				"and a decimal fraction takes a point"},
		{"semicolons", "temp_c;ohm\n25;100000\n", readSensor, 1, "separates by semicolons"},
		{"tabs", "temp_c\tohm\n25\t100000\n", readSensor, 1, "separates by tabs"},
		{"stray quotation mark", sensorHead + "25,100000\n150,17\"70\n", readSensor, 3, "quotation mark"},
		{"column that is not known", "temp_c,ohm,colour\n25,100000,1\n150,1770,2\n", readSensor,
			1, "“colour”, which is not known; remove it"},
		{"near miss", "temp_c,ohms\n25,100000\n", readSensor,
			1, "“ohms”, which is not known; did you mean ohm?"},
		{"near miss with a minus sign", "time-s,temp_c,duty\n0,20,1\n", readHeat, 1, "did you mean time_s?"},
		{"column twice", "temp_c,ohm,Ohm\n25,100000,1\n", readSensor, 1, "the column ohm twice"},
		{"column without a name", "temp_c,ohm,\n25,100000,\n", readSensor, 1, "a column without a name"},
		{"column lacks", "time_s,temp_c\n0,20\n1,22\n", readHeat,
			1, "lacks the column duty; the columns are time_s,temp_c,duty[,fan]"},
		{"half a pair", "temp_c\n25\n150\n", readSensor, 1, "one pair of columns"},
		{"two pairs", "temp_c,ohm,indicated_c,actual_c\n25,100000,25,25\n26,99000,25,25\n", readSensor,
			1, "one pair of columns"},
		{"three equal points", sensorHead + "25,100000\n25,100000\n25,100000\n", readSensor,
			3, "the same point as line 2"},
		{"resistance of nothing", sensorHead + "25,0\n150,1770\n", readSensor,
			2, "must be from 0.001 to 1e+09"},
		{"below absolute zero", sensorHead + "-300,1000\n150,1770\n", readSensor,
			2, "must be from -200 to 1000"},
		{"time goes back", heatHead + "0,20,1\n5,40,1\n3,60,1\n", readHeat,
			4, "goes back in time, from 5 s to 3 s"},
		{"time stands still", heatHead + "0,20,1\n5,40,1\n5,60,1\n", readHeat, 4, "the same time as line 3"},
		{"milliseconds", heatHead + "0,20,1\n50000000,40,1\n", readHeat,
			3, "that is milliseconds; divide time_s by 1000"},
		{"too long", heatHead + "0,20,1\n" + manyRows(300, 30), readHeat,
			243, "is more than 2 hours after the first row"},
		{"minutes", heatHead + "0,20,1\n0.5,80,1\n1,110,1\n1.5,140,1\n2,170,1\n2.5,200,1\n", readHeat,
			2, "is time_s in minutes? Give seconds"},
		{"kelvin", heatHead + "0,295,1\n50,400,1\n90,490,1\n", readHeat,
			2, "in kelvin that is 21.9 °C; take 273.15 off each temp_c"},
		{"Fahrenheit", heatHead + "0,72,1\n50,250,1\n90,428,1\n", readHeat,
			2, "in Fahrenheit that is 22 to 220 °C; convert each temp_c"},
		{"a reading of nothing", heatHead + "0,100,1\n50,150,1\n51,0,1\n52,152,1\n", readHeat,
			4, "jumps from 150 to 0 °C and back"},
		{"duty below 0", heatHead + "0,20,1\n5,40,-0.1\n", readHeat, 3, "must be from 0 to 255"},
		{"duty above 255", heatHead + "0,20,256\n5,40,1\n", readHeat, 2, "must be from 0 to 255"},
		{"duty a little above 1", heatHead + "0,20,1\n5,60,1.5\n", readHeat,
			3, "has 1.5 as duty, outside of 0 to 1"},
		{"fan a little above 1", "time_s,temp_c,duty,fan\n0,20,1,0\n5,60,1,1.2\n", readHeat,
			3, "has 1.2 as fan, outside of 0 to 1"},
		{"never on", heatHead + "0,20,0\n5,60,0\n", readHeat, 2, "to line 3: the heater was never on"},
		{"never heats", heatHead + "0,20,1\n5,21,1\n10,20.5,1\n", readHeat,
			2, "never heats: the temperature stays between 20 and 21 °C"},
		{"three equal rows", heatHead + "0,20,1\n1,20,1\n2,20,1\n", readHeat, 2, "never heats"},
		{"no flow", flowHead + "0,100,0.29\n5,100,0.29\n", readFlow, 2, "has 0 as flow_mm3_s"},
		{"negative mass", flowHead + "5,100,-0.29\n6,100,0.29\n", readFlow, 2, "has -0.29 as mass_g"},
	} {
		t.Run(c.name, func(t *testing.T) {
			var e *parser.Error
			if err := c.read(file(c.text)); !errors.As(err, &e) {
				t.Fatalf("error %v, want a *parser.Error", err)
			}
			if e.File != "log.csv" || e.Line != c.line || !strings.Contains(e.Message, c.says) {
				t.Errorf("got %q at line %d, want %q at line %d", e.Message, e.Line, c.says, c.line)
			}
		})
	}
}

// manyRows are rows of a run that gets nowhere fast.
func manyRows(n int, everyS float64) string {
	var b strings.Builder
	for i := 1; i <= n; i++ {
		fmt.Fprintf(&b, "%g,%g,1\n", float64(i)*everyS, 20+float64(i)/2)
	}
	return b.String()
}

// What the largest figure says about full power; nothing is lost by choosing.
func TestHeatScales(t *testing.T) {
	for _, c := range []struct {
		largest float64
		want    []float64
	}{
		{0.4, []float64{1}}, {1, []float64{1}}, {60, []float64{100, 127, 255}}, {100, []float64{100, 255}},
		{120, []float64{127, 255}}, {127, []float64{127, 255}}, {230, []float64{255}}, {255, []float64{255}},
	} {
		text := fmt.Sprintf("time_s,temp_c,duty\n0,20,%g\n10,60,%g\n", c.largest, c.largest/2)
		h, err := ReadHeat(file(text), 0, 0)
		if err != nil || !slices.Equal(h.DutyMay, c.want) || h.DutyFull != c.want[len(c.want)-1] {
			t.Errorf("%g: %+v, %v", c.largest, h, err)
			continue
		}
		h.Rescale(c.want[0], 0)
		if got := h.Rows[1].Duty; math.Abs(got-c.largest/2/c.want[0]) > 1e-12 ||
			h.DutyFull != c.want[0] || len(h.DutyMay) != 1 {
			t.Errorf("%g: duty %g of %+v", c.largest, got, h)
		}
	}
	fan, err := ReadHeat(file("time_s,temp_c,duty,fan\n0,20,100,0\n10,60,50,100\n"), 0, 0)
	if err != nil || !slices.Equal(fan.FanMay, []float64{100, 255}) {
		t.Fatalf("%+v, %v", fan, err)
	}
	if fan.Rescale(100, 100); math.Abs(fan.Rows[1].Fan-1) > 1e-12 || math.Abs(fan.Rows[0].Duty-1) > 1e-12 {
		t.Errorf("%+v", fan)
	}
}

// A byte order mark, CRLF, comments, blank lines, another order of columns,
// capitals and spaces must all be read as the plain file is.
func TestReadsAlike(t *testing.T) {
	plain, err := ReadHeat(file("time_s,temp_c,duty,fan\n0,20,1,0\n10,60.5,0.5,0\n20,80,0,1\n"), 0, 0)
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range map[string]string{
		"byte order mark": "\ufefftime_s,temp_c,duty,fan\n0,20,1,0\n10,60.5,0.5,0\n20,80,0,1\n",
		"CRLF":            "time_s,temp_c,duty,fan\r\n0,20,1,0\r\n10,60.5,0.5,0\r\n20,80,0,1\r\n",
		"comments": `# log of "a" heat-up, 3,5 m

time_s,temp_c,duty,fan
0,20,1,0
# now
10,60.5,0.5,0
,,,
20,80,0,1`,
		"order": "fan, Duty ,TEMP_C,time_s\n 0,1,20,0\n0, 0.5 ,60.5,10\n1,0,80,20\n",
		"quotation marks": `"time_s","temp_c","duty","fan"
"0","20",1,0
10,"60.5",0.5,0
20,80,0,1
`,
		"counts": "time_s,temp_c,duty,fan\n0,20,255,0\n10,60.5,127.5,0\n20,80,0,255\n",
	} {
		t.Run(name, func(t *testing.T) {
			got, err := ReadHeat(file(text), 0, 0)
			if err != nil {
				t.Fatal(err)
			}
			if len(got.Rows) != 3 {
				t.Fatalf("%d rows, want 3", len(got.Rows))
			}
			for i := range got.Rows {
				a, b := got.Rows[i], plain.Rows[i]
				if b.Line = a.Line; a != b {
					t.Errorf("row %d is %+v, want %+v", i, a, b)
				}
			}
		})
	}
	if last := plain.Rows[2]; last.Duty != 0 || last.Fan != 1 ||
		plain.DutyFull != 1 || plain.FanFull != 1 || !plain.HasFan {
		t.Errorf("read as %+v", plain)
	}
	percent, err := ReadHeat(file(heatHead+"0,20,100\n10,60,50\n"), 100, 0)
	if err != nil || percent.Rows[1].Duty != 0.5 || percent.HasFan {
		t.Errorf("of 100: %+v, %v", percent, err)
	}
	counts, err := ReadHeat(file(heatHead+"0,20,100\n10,60,51\n"), 0, 0)
	if err != nil || counts.Rows[1].Duty != 0.2 || counts.DutyFull != 255 {
		t.Errorf("of counts: %+v, %v", counts, err)
	}
}

func TestReadSensor(t *testing.T) {
	s, err := ReadSensor(file("ohm,temp_c\n100000,25\n1770,150\n"))
	if err != nil || s.Indicated || len(s.Rows) != 2 ||
		s.Rows[1].ActualC != 150 || s.Rows[1].Ohm != 1770 || s.Rows[1].Line != 3 {
		t.Errorf("%+v, %v", s, err)
	}
	s, err = ReadSensor(file("indicated_c,actual_c\n24,25\n195,210\n"))
	if err != nil || !s.Indicated || s.Rows[1].ActualC != 210 || s.Rows[1].IndicatedC != 195 {
		t.Errorf("%+v, %v", s, err)
	}
}

func TestReadFlow(t *testing.T) {
	f, err := ReadFlow(file(`flow_mm3_s,commanded_mm,mass_g,temp_c,filament,extruder
5,200,0.60,220,"PLA, white",left
10,200,0.5,,PETG,
`))
	if err != nil {
		t.Fatal(err)
	}
	a, b := f.Rows[0], f.Rows[1]
	if a.Filament != "PLA, white" || a.Extruder != "left" || a.TempC != 220 || a.MassG != 0.6 ||
		f.MassStepG != 0.01 || !math.IsNaN(a.DensityGCM3) {
		t.Errorf("first row %+v", a)
	}
	if b.Filament != "PETG" || b.Extruder != "" || !math.IsNaN(b.TempC) {
		t.Errorf("second row %+v", b)
	}
}

// A recording may lie anywhere, also behind a link out of the working
// directory; what is no regular text file is refused under the name given.
func TestOpen(t *testing.T) {
	away, here := t.TempDir(), t.TempDir()
	t.Chdir(here)
	target := filepath.Join(away, "run.csv")
	if err := os.WriteFile(target, []byte(heatHead), 0o666); err != nil {
		t.Fatal(err)
	}
	if err := os.Symlink(target, "link.csv"); err != nil {
		t.Fatal(err)
	}
	for _, name := range []string{target, "link.csv"} {
		f, err := Open(name)
		if err != nil || string(f.Data) != heatHead || f.Name != name {
			t.Errorf("Open(%q) is %+v, %v", name, f, err)
		}
	}
	if err := os.WriteFile("nul.csv", []byte("time_s\x00"), 0o666); err != nil {
		t.Fatal(err)
	}
	if err := os.WriteFile("large.csv", make([]byte, parser.MaxFileBytes+1), 0o666); err != nil {
		t.Fatal(err)
	}
	for name, says := range map[string]string{
		"nul.csv": "NUL byte in line 1", "large.csv": "larger than 8 MiB", "missing.csv": "does not exist",
		".": "folder", os.DevNull: "not a regular file",
	} {
		_, err := Open(name)
		var e *parser.Error
		if !errors.As(err, &e) || e.File != name || !strings.Contains(e.Message, says) {
			t.Errorf("Open(%q): %v, want %q", name, err, says)
		}
	}
}

func TestTooManyRows(t *testing.T) {
	text := sensorHead + strings.Repeat("25,100000\n", mostRows+1)
	if err := readSensor(file(text)); err == nil || !strings.Contains(err.Error(), "past 20000 rows") {
		t.Errorf("error %v", err)
	}
}

// No input may panic, and what is read must be usable: finite figures within
// their bounds.
func FuzzRecord(f *testing.F) {
	for _, seed := range []string{
		heatHead + "0,20,1\n5,60,0.5\n", "time_s,temp_c,duty,fan\r\n0,20,255,0\r\n5,60,0,255\r\n",
		sensorHead + "25,100000\n150,1770\n", "indicated_c,actual_c\n25,25\n200,\"214,2\"\n",
		"\ufeff# weighed\nflow_mm3_s,commanded_mm,mass_g,filament\n" +
			"5,200,0.6,\"PLA, white\"\n10,200,0.5,PETG\n",
		"time_s;temp_c;duty\n0;20;1\n", "\"", "a,b\n\"\n", "",
	} {
		f.Add([]byte(seed))
	}
	finite := func(t *testing.T, list ...float64) {
		t.Helper()
		for _, x := range list {
			if math.IsNaN(x) || math.IsInf(x, 0) {
				t.Fatalf("%v holds no finite number", list)
			}
		}
	}
	refused := func(t *testing.T, data []byte, err error) bool {
		t.Helper()
		if err == nil {
			return false
		}
		var e *parser.Error
		lines := strings.Count(string(data), "\n") + 1
		if !errors.As(err, &e) || e.Message == "" || e.Line > lines {
			t.Fatalf("error %#v of %d lines", err, lines)
		}
		return true
	}
	f.Fuzz(func(t *testing.T, data []byte) {
		h, err := ReadHeat(parser.NewFile("f.csv", data), 0, 0)
		if !refused(t, data, err) {
			for i, r := range h.Rows {
				finite(t, r.TimeS, r.TempC, r.Duty, r.Fan)
				if r.Duty < 0 || r.Duty > 1 || r.Fan < 0 || r.Fan > 1 ||
					i > 0 && r.TimeS <= h.Rows[i-1].TimeS {
					t.Fatalf("row %d is %+v", i, r)
				}
			}
		}
		s, err := ReadSensor(parser.NewFile("f.csv", data))
		if !refused(t, data, err) {
			for _, r := range s.Rows {
				if finite(t, r.ActualC); s.Indicated {
					finite(t, r.IndicatedC)
				} else if finite(t, r.Ohm); r.Ohm <= 0 {
					t.Fatalf("row %+v", r)
				}
			}
		}
		w, err := ReadFlow(parser.NewFile("f.csv", data))
		if !refused(t, data, err) {
			for _, r := range w.Rows {
				finite(t, r.FlowMM3S, r.CommandedMM, r.MassG)
				if r.FlowMM3S <= 0 || r.CommandedMM <= 0 || r.MassG < 0 {
					t.Fatalf("row %+v", r)
				}
			}
		}
	})
}

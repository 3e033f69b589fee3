package defines

import (
	"fmt"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/parser"
)

// mess gives a configuration the looks that owners give it, without changing
// what it means: decoys in comments and dead branches, earlier values that
// lose, conditions, comments, either line ending, two files.
func mess(t *rapid.T, text string) []string {
	var lines []string
	for line := range strings.Lines(text) {
		line = strings.TrimSuffix(line, "\n")
		name, value, _ := strings.Cut(strings.TrimPrefix(line, "#define "), " ")
		switch rapid.IntRange(0, 11).Draw(t, "line") {
		case 0:
			lines = append(lines, "//#define "+name+" 999")
		case 1:
			lines = append(lines, "#if 0", "  #define "+name+" 998", "#endif")
		case 2:
			lines = append(lines, "/* once:", "#define "+name+" 997", "*/")
		case 3:
			if value != "" && !strings.HasPrefix(line, "//") {
				lines = append(lines, "#define "+name+" 5 // the first try")
			}
		case 4:
			comments := []string{"mm", "was 0", "gr\xfc\xdfe", "see #define X 3"}
			line += " // " + rapid.SampledFrom(comments).Draw(t, "comment")
		case 5:
			lines = append(lines, "#if 1 // always", "\t"+line, "#endif")
			continue
		case 6:
			lines = append(lines, "#ifdef SOLENOID_PROBE", "#error no", "#elif 2 > 1", "  "+line, "#endif")
			continue
		case 7:
			if value != "" {
				line = "#define " + name + "    /* here */ " + value + "   /* and there */"
			}
		}
		lines = append(lines, line)
	}
	eol := rapid.SampledFrom([]string{"\n", "\r\n"}).Draw(t, "eol")
	cut := rapid.IntRange(0, len(lines)).Draw(t, "cut")
	for i, line := range lines {
		// What the firmware derives hotends from stands in the first file.
		if strings.Contains(line, "#define EXTRUDERS") || strings.Contains(line, "#define TEMP_SENSOR_") {
			cut = max(cut, i+1)
		}
	}
	for depth, i := 0, 0; i < len(lines); i++ { // not inside a conditional or a comment
		switch l := strings.TrimSpace(lines[i]); {
		case strings.HasPrefix(l, "#if"), strings.HasPrefix(l, "/* once"):
			depth++
		case l == "#endif", l == "*/":
			depth--
		}
		if i+1 >= cut && depth == 0 {
			cut = i + 1
			break
		}
	}
	last := strings.Join(lines[cut:], eol)
	if rapid.Bool().Draw(t, "last newline") && last != "" {
		last += eol
	}
	first := strings.Join(lines[:cut], eol)
	if first != "" {
		first += eol
	}
	return []string{"a.h", first, "b.h", last}
}

// follows names settings that another one is derived from.
func follows(gen generation, changed, other parser.Key) bool {
	switch changed {
	case parser.PowerLimit("below range"):
		return other == parser.PowerLimit("in range") // may be written as the other's name
	case parser.HotendRise:
		return gen == gen10 && other == parser.HotendArmMargin
	case parser.HotendHoldPeriod:
		return gen == gen10 && other == parser.HotendWatchOn // one option
	case parser.BedHoldPeriod:
		return gen == gen10 && (other == parser.BedWatchOn || other == parser.BedRiseOn)
	case parser.HotendRiseWindow:
		return other == parser.HotendRiseOn
	case parser.BedRiseWindow:
		return other == parser.BedRiseOn
	case parser.HotendWatchOn:
		return other == parser.HotendRiseOn ||
			gen == gen10 && (other == parser.HotendHoldPeriod || other == parser.HotendHysteresis)
	case parser.BedHeated, parser.BedSensor:
		return other == parser.BedHeated || other == parser.BedSensor
	}
	return false
}

func settingsOf(c *config) map[parser.Key]parser.Description {
	all := make(map[parser.Key]parser.Description)
	for d := range c.printer.Settings() {
		all[d.Key] = d
	}
	return all
}

// unchanged compares what settings mean, not where they stand.
func unchanged(before, after parser.Description) bool {
	return before.State == after.State && reflect.DeepEqual(before.Value, after.Value) &&
		before.Name == after.Name
}

// Every figure that can be changed reads back as the new one, and nothing
// else changes.
func TestEditsReadBack(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.SampledFrom([]string{first, second, third}).Draw(rt, "generation")
		c := readText(t, 0, mess(rt, text)...)
		before := settingsOf(c)
		var keys []parser.Key
		for d := range c.printer.Settings() {
			if s := c.slot(d.Key); s != nil && d.State != parser.Unknown &&
				(s.kind == slotNumber || s.kind == slotSensor) && d.State == parser.Set {
				keys = append(keys, d.Key)
			}
		}
		if len(keys) < 15 {
			rt.Fatalf("only %d settings can be changed: %v", len(keys), keys)
		}
		key := rapid.SampledFrom(keys).Draw(rt, "key")
		s := c.slot(key)
		change := parser.Change{Key: key}
		var want any
		switch {
		case s.kind == slotSensor:
			n := rapid.SampledFrom([]int{1, 5, 11, 13}).Draw(rt, "sensor")
			d, _ := c.basis.definition(n)
			change.Value, want = d, d
		case s.unit == unitCounts:
			n := float64(rapid.IntRange(1, 255).Draw(rt, "counts"))
			change.Value, want = n/255, n/255
		default:
			n := float64(rapid.IntRange(1, 400).Draw(rt, "value"))
			if s.round == roundNone && rapid.Bool().Draw(rt, "fraction") {
				n += 0.25
			}
			change.Value, want = n, n
		}
		edits, err := c.Edits([]parser.Change{change})
		if err != nil {
			rt.Fatalf("%s: %v", key, err)
		}
		again, err := c.with(edits)
		if err != nil {
			rt.Fatal(err)
		}
		after := settingsOf(again)
		if got := after[key]; got.State != parser.Set || !same(got.Value, want) {
			rt.Errorf("%s is %v %v, want %v", key, got.State, got.Value, want)
		}
		for other, d := range before {
			if other != key && !follows(c.gen, key, other) && !unchanged(d, after[other]) {
				rt.Errorf("a change of %s changes %s from %v to %v", key, other, d, after[other])
			}
		}
		// Lines that hold no edit keep their bytes; a value changes its own only.
		for _, e := range edits {
			if strings.ContainsAny(e.New, "\n") || strings.ContainsAny(e.At.Text(), "\n") {
				rt.Errorf("%s: an edit of a value touches the line: %q to %q", key, e.At.Text(), e.New)
			}
		}
	})
}

func same(got, want any) bool {
	if g, ok := got.(float64); ok {
		return close(g, want.(float64))
	}
	return reflect.DeepEqual(got, want)
}

// However the protection was switched off, one change switches it on, and
// nothing else changes.
func TestEditsSwitchOn(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		text := rapid.SampledFrom([]string{second, third}).Draw(rt, "generation")
		spoilt := rapid.SampledFrom([]string{
			"#define THERMAL_PROTECTION_HOTENDS 0\n", "#define THERMAL_PROTECTION_HOTENDS false\n",
			"//#define THERMAL_PROTECTION_HOTENDS\n", "//  #define THERMAL_PROTECTION_HOTENDS // noisy\n", "",
			hotends + "#undef THERMAL_PROTECTION_HOTENDS\n",
			hotends + "#define THERMAL_PROTECTION_HOTENDS 0\n",
			"#if 0\n" + hotends + "#endif\n", "/*\n" + hotends + "*/\n",
		}).Draw(rt, "spelling")
		if !strings.Contains(text, hotends) {
			rt.Fatal("the text lacks the line")
		}
		parts := strings.SplitN(text, hotends, 2)
		files := []string{"a.h", parts[0] + spoilt, "b.h", parts[1]}
		if rapid.Bool().Draw(rt, "CRLF") {
			files[1] = strings.ReplaceAll(files[1], "\n", "\r\n")
			files[3] = strings.ReplaceAll(files[3], "\n", "\r\n")
		}
		c := readText(t, 0, files...)
		w := &c.printer.Hotend.Watch
		if w.On.State != parser.Off || !w.CanTurnOn {
			rt.Fatalf("the protection is %v, can be turned on: %v", w.On.State, w.CanTurnOn)
		}
		edits, err := c.Edits([]parser.Change{w.On.To(true)})
		if err != nil {
			rt.Fatal(err)
		}
		again, err := c.with(edits)
		if err != nil {
			rt.Fatal(err)
		}
		if on := again.printer.Hotend.Watch; !on.On.Value || on.On.State != parser.Set || !on.RiseOn.Value {
			rt.Errorf("protection %v %v, rise watch %v", on.On.State, on.On.Value, on.RiseOn.Value)
		}
		after := settingsOf(again)
		for key, d := range settingsOf(c) {
			if key != parser.HotendWatchOn && !follows(c.gen, parser.HotendWatchOn, key) &&
				!unchanged(d, after[key]) {
				rt.Errorf("%s changes from %v to %v", key, d, after[key])
			}
		}
		for _, e := range edits {
			if ending := "\r\n"; strings.Contains(files[1], ending) &&
				strings.Count(e.New, "\n") != strings.Count(e.New, ending) {
				rt.Errorf("an insertion has the wrong line ending: %q", e.New)
			}
		}
	})
}

// A reading of the same bytes gives the same settings in the same order.
func TestReadIsStable(t *testing.T) {
	a, b := readText(t, 0, "h", third), readText(t, 0, "h", third)
	x := fmt.Sprint(a.printer.Hotend.Sensor.Value, a.printer.Storage.Keeps)
	if y := fmt.Sprint(b.printer.Hotend.Sensor.Value, b.printer.Storage.Keeps); x != y {
		t.Errorf("%s against %s", x, y)
	}
}

package defines

import (
	_ "embed"
	"fmt"
	"strconv"
	"strings"
	"sync"

	"preflash/parser"
)

const (
	commonPullup = 4700.0 // ohm; common practice, no source

	// The last row of a table that its rows do not reach stands at full scale.
	fullScaleOhm = 1e9
)

// Definitions that are no table of rows, as the style's firmware publishes
// them.
const (
	platinumChip    = -5
	placeholderCold = 998
	placeholderHot  = 999
	customSensor    = 1000 // R25, B, cubic coefficient and pull-up
)

// special is a numbered definition without rows that count.
type special struct {
	number    int
	kind      parser.SensorKind
	form      parser.SensorForm
	low, high float64 // ends, °C
	r0Ohm     float64 // at 0 °C, of the platinum sensor that an amplifier is for
	note      string
}

// specials are sorted by number.
var specials = [...]special{
	{number: platinumChip, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier},
	{number: -4, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: -3, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: -2, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: -1, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: 0, form: parser.FormNone},
	{number: 20, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier, high: 1100, r0Ohm: 100},
	{number: 21, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier, high: 500, r0Ohm: 100},
	{number: 22, kind: parser.NTC,
		note: "its table goes back and forth, so that one reading stands for two temperatures"},
	{number: 68, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier, high: 500, r0Ohm: 100},
	{number: 100, note: "the controller chip's own temperature; no sensor for a hotend"},
	{number: 201, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier, high: 432, r0Ohm: 100},
	{number: 331, kind: parser.NTC,
		note: "its table is that of 1 for a pull-up on 3.3 V and a converter on 5 V, " +
			"which the configuration cannot show"},
	{number: placeholderCold, form: parser.FormPlaceholder},
	{number: placeholderHot, form: parser.FormPlaceholder},
	// The firmware shows 999 °C at most.
	{number: customSensor, kind: parser.NTC, form: parser.FormBeta, low: -273.15, high: 999},
}

// newerOnly are the specials that the older generation lacks.
var newerOnly = [...]int{68, 100}

// The numbered definitions, as the style's firmware publishes them: for each
// number and generation what it is, and the points of its table.
// Both files were computed from the published tables of counts: a row is a
// temperature and the sensor's resistance at which the firmware shows it.
// Between two rows it draws a straight line in counts, which is one in
// R/(R + pull-up); beyond the ends it shows the last row. So read, the points
// agree with the firmware within 0.6 K.
var (
	//go:embed sensors.csv
	sensorsCSV string
	//go:embed sensor-rows.csv
	sensorRowsCSV string
)

// sensorTable is a numbered definition with rows.
type sensorTable struct {
	number int
	in     basis // the generations that have these rows
	def    parser.SensorDef
}

// tables are the definitions with rows, by number, the newer generation first.
var tables = sync.OnceValue(func() []sensorTable {
	list, err := readTables(sensorsCSV, sensorRowsCSV)
	if err != nil {
		panic(err) // of what is built in; a test reads it
	}
	return list
})

var basisNames = map[string]basis{"older": older, "newer": newer, "both": older | newer}

func readTables(sensors, rows string) ([]sensorTable, error) {
	type version struct{ number, generation string }
	points := make(map[version][]parser.SensorPoint)
	for line := range lines(rows) {
		f := strings.Split(line, ",")
		if len(f) != 4 {
			return nil, fmt.Errorf("row %q", line)
		}
		tempC, errT := strconv.ParseFloat(f[2], 64)
		ohm, errR := strconv.ParseFloat(f[3], 64)
		if errT != nil || errR != nil {
			return nil, fmt.Errorf("row %q", line)
		}
		v := version{f[0], f[1]}
		points[v] = append(points[v], parser.SensorPoint{TempC: tempC, Ohm: ohm})
	}
	var list []sensorTable
	for line := range lines(sensors) {
		f := strings.SplitN(line, ",", 8)
		if len(f) != 8 {
			return nil, fmt.Errorf("definition %q", line)
		}
		t := sensorTable{in: basisNames[f[1]], def: parser.SensorDef{
			Form: parser.FormPoints, Join: parser.JoinRatio, Kind: parser.NTC, Name: f[0],
			Curve: f[3], Points: points[version{f[0], f[1]}], Note: strings.Trim(f[7], `"`),
		}}
		if f[2] == "platinum" {
			t.def.Kind = parser.Platinum
		}
		for _, figure := range [...]struct {
			text string
			into *float64
		}{{f[4], &t.def.PullupOhm}, {f[5], &t.def.LowC}, {f[6], &t.def.HighC}} {
			var err error
			if *figure.into, err = strconv.ParseFloat(figure.text, 64); err != nil {
				return nil, fmt.Errorf("definition %q: %w", line, err)
			}
		}
		var err error
		if t.number, err = strconv.Atoi(f[0]); err != nil || t.in == 0 || len(t.def.Points) < 2 {
			return nil, fmt.Errorf("definition %q has no number, generation or rows", line)
		}
		if t.def.LowC < t.def.Points[0].TempC {
			coldest := parser.SensorPoint{TempC: t.def.LowC, Ohm: fullScaleOhm}
			t.def.Points = append([]parser.SensorPoint{coldest}, t.def.Points...)
		}
		list = append(list, t)
	}
	return list, nil
}

// lines gives the lines of a file but the first, which names the columns.
func lines(text string) func(yield func(string) bool) {
	return func(yield func(string) bool) {
		first := true
		for line := range strings.Lines(text) {
			if !first && !yield(strings.TrimRight(line, "\n")) {
				return
			}
			first = false
		}
	}
}

// definition returns the numbered definition as the generations of b have it;
// false where none of them does.
func (b basis) definition(number int) (parser.SensorDef, bool) {
	for i := range specials {
		s := &specials[i]
		if s.number != number {
			continue
		}
		d := parser.SensorDef{
			Form: s.form, Kind: s.kind, Name: strconv.Itoa(number),
			LowC: s.low, HighC: s.high, R0Ohm: s.r0Ohm, Note: s.note,
		}
		for _, n := range newerOnly {
			if n == number && b.is(older) {
				return parser.SensorDef{}, false
			}
		}
		return d, true
	}
	var found []*sensorTable
	var has basis
	list := tables()
	for i := range list {
		if t := &list[i]; t.number == number && b.may(t.in) {
			found = append(found, t)
			has |= t.in
		}
	}
	if found == nil {
		return parser.SensorDef{}, false
	}
	d := found[0].def
	if len(found) > 1 {
		d.Or = &found[1].def
	}
	if missing := b &^ has; missing != 0 {
		d.Note = "the " + missing.String() + " generation of this firmware has no such definition"
	}
	return d, true
}

// definitions returns the definitions with a table that all generations of need
// have, as the generations of b have them.
func (b basis) definitions(need basis) []parser.SensorDef {
	var all []parser.SensorDef
	list := tables()
	for i := 0; i < len(list); {
		number, has := list[i].number, basis(0)
		for ; i < len(list) && list[i].number == number; i++ {
			has |= list[i].in
		}
		if need&^has == 0 && b.may(has) {
			d, _ := b.definition(number)
			all = append(all, d)
		}
	}
	return all
}

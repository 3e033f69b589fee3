package heat

import (
	"bytes"
	"encoding/csv"
	"encoding/json"
	"flag"
	"fmt"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"testing"

	"preflash/rules/internal/scipy"
)

// The replicas under testdata/reference/control were written from what the two
// styles' firmwares do, without reading this code. Their outputs for the cases
// are in TestCases; here they run anew, on hotends that nobody chose.

const randomCases = 200

// between is a figure of a random case, rounded as a person would write it.
func between(r *rand.Rand, low, high float64, decimals int) string {
	return strconv.FormatFloat(low+r.Float64()*(high-low), 'f', decimals, 64)
}

func oneOf(r *rand.Rand, texts ...string) string { return texts[r.IntN(len(texts))] }

// randomHotend gives the columns that both styles share.
func randomHotend(r *rand.Rand, c row) {
	c["heat_capacity_j_per_k"] = between(r, 6, 32, 2)
	c["loss_w_per_k"] = between(r, 0.03, 0.14, 4)
	c["sensor_lag_s"] = between(r, 0.5, 11, 2)
	c["ambient_c"] = strconv.Itoa(15 + r.IntN(16))
	c["target_c"] = strconv.Itoa(180 + 5*r.IntN(29))
	loss, _ := strconv.ParseFloat(c["loss_w_per_k"], 64)
	target, _ := strconv.ParseFloat(c["target_c"], 64)
	watts := loss * (target - 20) * (0.9 + 2.5*r.Float64()) // what it takes to hold, and more
	c["rated_w"] = fmt.Sprintf("%.1f", watts)
	c["hot_w"] = ""
	if r.IntN(4) == 0 {
		c["rated_w"] = fmt.Sprintf("%.1f", 1.7*watts)
		c["hot_w"] = fmt.Sprintf("[[25, %.1f], [200, %.1f], [320, %.1f]]", 1.7*watts, 1.05*watts, 0.8*watts)
	}
}

// gainsNear draws gains around those of a first-order rule, some too high.
func gainsNear(r *rand.Rand, c row) {
	c["kp"] = between(r, 5, 60, 2)
	c["ki"] = between(r, 0.02, 5, 3)
	c["kd"] = between(r, 0, 250, 1)
}

func randomDefines(r *rand.Rand) row {
	c := row{}
	randomHotend(r, c)
	gainsNear(r, c)
	c["generation"] = oneOf(r, "older", "newer")
	c["functional_range"] = oneOf(r, "10", "15", "20")
	c["pid_max"] = oneOf(r, "255", "255", "200")
	c["sample_s"] = oneOf(r, "0.16", "0.08", "0.01")
	c["rise_c"] = oneOf(r, "2", "2", "4")
	c["rise_window_s"] = oneOf(r, "10", "16", "20", "40", "60")
	c["temp_hysteresis"] = "3"
	c["hold_hysteresis"] = oneOf(r, "3", "4", "10")
	c["hold_period_s"] = oneOf(r, "40", "60")
	return c
}

func randomSections(r *rand.Rand) row {
	c := row{}
	randomHotend(r, c)
	gainsNear(r, c)
	loss, _ := strconv.ParseFloat(c["loss_w_per_k"], 64)
	c["loss_fan_w_per_k"] = fmt.Sprintf("%.4f", loss*(1+0.6*r.Float64()))
	c["max_power"] = oneOf(r, "1", "1", "0.9", "0.75")
	c["smooth_time_s"] = oneOf(r, "", "0.5", "2", "5")
	c["max_temp_c"] = ""
	c["hysteresis"] = oneOf(r, "", between(r, 1.5, 12, 1))
	c["heating_gain"] = oneOf(r, "", between(r, 1, 5, 1))
	c["check_gain_time"] = oneOf(r, "", strconv.Itoa(3+r.IntN(60)))
	c["max_error"] = oneOf(r, "", strconv.Itoa(30+r.IntN(330)))
	return c
}

// live runs a replica over rows and returns its results.
func live(t *testing.T, script string, columns []string, cases []row) []row {
	t.Helper()
	var text bytes.Buffer
	w := csv.NewWriter(&text)
	w.Write(columns)
	for i, c := range cases {
		c["case"] = strconv.Itoa(i)
		fields := make([]string, len(columns))
		for j, name := range columns {
			fields[j] = c[name]
		}
		w.Write(fields)
	}
	w.Flush()
	in, out := filepath.Join(t.TempDir(), "in.csv"), filepath.Join(t.TempDir(), "out.csv")
	if err := os.WriteFile(in, text.Bytes(), 0o666); err != nil {
		t.Fatal(err)
	}
	scipy.Run(t, casesDir, script, nil, in, out)
	return readRows(t, out)
}

// columnsOf are the columns that a replica reads.
func columnsOf(c row) []string {
	names := []string{"case"}
	for name := range c {
		names = append(names, name)
	}
	return names
}

// Overshoot within 0.5 K and trips within 1 s on 95 % of random hotends, in both
// styles.
func TestReplicasLive(t *testing.T) {
	if !scipy.Live() {
		t.Skip("runs with PREFLASH_LIVE=1")
	}
	for _, c := range []struct {
		name, script string
		draw         func(*rand.Rand) row
		of           func(row, *testing.T) (Plant, Loop, Watch, float64)
		leadS        float64
	}{
		{"defines", "defines_heat.py", randomDefines, row.defines, 0},
		{"sections", "sections_heat.py", randomSections, row.sections, casesLead},
	} {
		t.Run(c.name, func(t *testing.T) {
			r := rand.New(rand.NewPCG(11, uint64(len(c.name))))
			var cases []row
			for range randomCases {
				cases = append(cases, c.draw(r))
			}
			trips, agree := 0, 0
			for i, want := range live(t, c.script, columnsOf(cases[0]), cases) {
				p, loop, w, target := c.of(cases[i], t)
				got := play(p, loop, w, target, c.leadS)
				if want["trip_s"] != "" {
					trips++
				}
				if got.agrees(t, want) {
					agree++
				} else {
					t.Logf("%v: got %+v, want %v", cases[i], got, want)
				}
			}
			t.Logf("%d of %d agree; %d trip", agree, len(cases), trips)
			if agree*100 < 95*len(cases) {
				t.Errorf("only %d of %d agree", agree, len(cases))
			}
			if trips < 10 {
				t.Errorf("only %d trip: the cases say little", trips)
			}
		})
	}
}

// widenCase is one line that widen.py reads.
type widenCase struct {
	ID       string       `json:"id"`
	Style    string       `json:"style"`
	Capacity float64      `json:"heat_capacity_j_per_k"`
	LossFan  float64      `json:"loss_fan_w_per_k"`
	Lag      float64      `json:"sensor_lag_s"`
	Ambient  float64      `json:"ambient_c"`
	RatedW   float64      `json:"rated_w"`
	HotW     [][2]float64 `json:"hot_w"`
	Duty     float64      `json:"duty"`
	At       float64      `json:"at_c"`

	Rise       float64 `json:"rise_c,omitempty"`
	RiseWindow float64 `json:"rise_window_s,omitempty"`
	ArmMargin  float64 `json:"temp_hysteresis,omitempty"`

	Hysteresis float64 `json:"hysteresis,omitempty"`
	Gain       float64 `json:"heating_gain,omitempty"`
	GainTime   float64 `json:"check_gain_time,omitempty"`
	MaxError   float64 `json:"max_error,omitempty"`
	Smooth     float64 `json:"smooth_time_s,omitempty"`
}

// widenResult is what it prints.
type widenResult struct {
	ID           string   `json:"id"`
	NominalHolds bool     `json:"nominal_holds"`
	Holds        bool     `json:"holds"`
	Exists       bool     `json:"exists"`
	HoldsTo      *float64 `json:"holds_to_c"`
	Least        *struct {
		RiseWindow float64 `json:"rise_window_s"`
		GainTime   float64 `json:"check_gain_time"`
		MaxError   float64 `json:"max_error"`
	} `json:"least"`
	LeastGainTime float64 `json:"least_check_gain_time"`
}

func (c *widenCase) plant() Plant {
	var points []Point
	for _, p := range c.HotW {
		points = append(points, Point{p[0], p[1]})
	}
	return Plant{
		Heater{RatedV: 24, RatedW: c.RatedW, Hot: NewTable(points...), SupplyV: 24, DutyLimit: c.Duty},
		Block{CapacityJPerK: c.Capacity, LossWPerK: c.LossFan, LossFanWPerK: c.LossFan, LagS: c.Lag,
			AmbientC: c.Ambient},
	}
}

func (c *widenCase) watch() Watch {
	if c.Style == "defines" {
		return Watch{Form: WindowWatch, Heating: HeatingCheck{c.Rise, c.RiseWindow, c.ArmMargin}}
	}
	return Watch{Form: ErrorSumWatch, Sum: SumWatch{c.Hysteresis, c.Gain, c.GainTime, c.MaxError, c.Smooth}}
}

// put sets the figures of a watch.
func (c *widenCase) put(w Watch) {
	if c.Style == "defines" {
		c.RiseWindow = w.Heating.WindowS
	} else {
		c.GainTime, c.MaxError = w.Sum.WindowS, w.Sum.LimitCS
	}
}

var widenBounds = Bounds{WindowS: 120, LimitCS: 360}

// checkWiden holds a proposal against the brute-force search.
func checkWiden(t *testing.T, c *widenCase, want *widenResult) (proposed Watch, ok bool) {
	t.Helper()
	p, w := c.plant(), c.watch()
	got := Widen(p, FanFull, w, c.At, widenBounds)
	if got.Holds != want.Exists {
		t.Errorf("%s: a proposal exists: %v, want %v (%+v)", c.ID, got.Holds, want.Exists, got)
	}
	if !want.Exists {
		upTo, _ := HoldsUpTo(p.Worst(), FanFull, w, c.At)
		if want.HoldsTo != nil && (upTo > *want.HoldsTo+1 || upTo < *want.HoldsTo-1) {
			t.Errorf("%s: holds up to %v °C, want %v", c.ID, upTo, *want.HoldsTo)
		}
		return got.Watch, false
	}
	if want.Holds && got.Watch != w {
		t.Errorf("%s: the watch in force holds, and the proposal is %+v", c.ID, got.Watch)
	}
	least := want.Least
	switch {
	case c.Style == "defines":
		if x := got.Watch.Heating.WindowS; x < least.RiseWindow ||
			x > max(w.Heating.WindowS, roundUp(least.RiseWindow)) {
			t.Errorf("%s: a window of %v s, the least is %v", c.ID, x, least.RiseWindow)
		}
	case want.LeastGainTime == 0:
		if x := got.Watch.Sum; x.WindowS < least.GainTime || x.LimitCS != w.Sum.LimitCS {
			t.Errorf("%s: %+v, the least gain time is %v with the sum in force", c.ID, x, least.GainTime)
		}
	default:
		if x := got.Watch.Sum; x.LimitCS <= least.MaxError || x.LimitCS > roundUp(least.MaxError+1) {
			t.Errorf("%s: %+v, the least sum is above %v", c.ID, x, least.MaxError)
		}
	}
	return got.Watch, true
}

// The search's own cases, among them a tight watch for which a change must come.
func TestWidenMeetsTheSearch(t *testing.T) {
	cases, results := readLines[widenCase](t, "widen-cases.jsonl"), readLines[widenResult](t, "widen.jsonl")
	if len(cases) < 100 || len(cases) != len(results) {
		t.Fatalf("%d cases, %d results", len(cases), len(results))
	}
	tight := 0
	for i := range cases {
		if cases[i].ID != results[i].ID {
			t.Fatalf("line %d: %s and %s", i+1, cases[i].ID, results[i].ID)
		}
		if w, ok := checkWiden(t, &cases[i], &results[i]); ok && !results[i].NominalHolds &&
			w != cases[i].watch() {
			tight++
		}
	}
	if tight < 5 {
		t.Errorf("only %d changes come", tight)
	}
}

func readLines[T any](t *testing.T, name string) []T {
	t.Helper()
	data, err := os.ReadFile(casesDir + name)
	if err != nil {
		t.Fatal(err)
	}
	return decodeLines[T](t, data)
}

func decodeLines[T any](t *testing.T, data []byte) []T {
	t.Helper()
	var list []T
	for d := json.NewDecoder(bytes.NewReader(data)); d.More(); {
		var x T
		if err := d.Decode(&x); err != nil {
			t.Fatal(err)
		}
		list = append(list, x)
	}
	return list
}

func encodeLines[T any](t *testing.T, list []T) []byte {
	t.Helper()
	var text bytes.Buffer
	for i := range list {
		if err := json.NewEncoder(&text).Encode(&list[i]); err != nil {
			t.Fatal(err)
		}
	}
	return text.Bytes()
}

// randomWiden draws hotends near the edge of what a watch bears.
func randomWiden(r *rand.Rand, i int) widenCase {
	x := func(low, high float64) float64 { return low + r.Float64()*(high-low) }
	c := widenCase{ID: strconv.Itoa(i), Style: [...]string{"defines", "sections"}[i%2], Capacity: x(6, 32),
		LossFan: x(0.04, 0.2), Lag: x(0.5, 11),
		Ambient: float64(10 + r.IntN(21)), Duty: [...]float64{1, 1, 0.9, 0.75}[r.IntN(4)],
		At: float64(180 + 5*r.IntN(29))}
	c.RatedW = c.LossFan * (c.At - 20) * x(0.98, 1.6) / c.Duty
	if r.IntN(3) == 0 {
		hot := c.RatedW
		c.RatedW *= 1.7
		c.HotW = [][2]float64{{25, c.RatedW}, {200, 1.1 * hot}, {300, 0.9 * hot}}
	}
	pick := func(figures ...float64) float64 { return figures[r.IntN(len(figures))] }
	if c.Style == "defines" {
		c.Rise, c.RiseWindow, c.ArmMargin = pick(1, 2, 2, 4), pick(8, 16, 20, 40, 60), pick(2, 3, 5)
	} else {
		c.Hysteresis, c.Gain, c.GainTime, c.MaxError, c.Smooth = pick(2, 5, 8), pick(1.5, 2, 4),
			pick(8, 20, 31), pick(60, 120, 240), pick(0.5, 1, 3)
	}
	if i%20 < 2 { // a tight one
		c.Rise, c.Gain = 4*min(c.Rise, 1), 4*min(c.Gain, 1)
		c.RiseWindow, c.GainTime = 8*min(c.RiseWindow, 1), 8*min(c.GainTime, 1)
	}
	return c
}

// hotends is how many the live search goes over: a few for every run, and 1,000
// (-hotends 1000, four minutes) after a change of a watch or a margin.
var hotends = flag.Int("hotends", 200, "random hotends in TestWidenLive")

// Over random hotends the search finds no proposal that fails a margin, and none
// missing where one exists.
func TestWidenLive(t *testing.T) {
	if !scipy.Live() {
		t.Skip("runs with PREFLASH_LIVE=1")
	}
	r := rand.New(rand.NewPCG(11, 1000))
	cases := make([]widenCase, *hotends)
	for i := range cases {
		cases[i] = randomWiden(r, i)
	}
	results := decodeLines[widenResult](t, scipy.Run(t, casesDir, "widen.py", encodeLines(t, cases)))
	if len(results) != len(cases) {
		t.Fatalf("%d results for %d cases", len(results), len(cases))
	}
	var proposed []widenCase
	changes := 0
	for i := range cases {
		c := cases[i]
		w, ok := checkWiden(t, &c, &results[i])
		if !ok || w == c.watch() {
			continue
		}
		if !results[i].NominalHolds {
			changes++
		}
		c.put(w)
		proposed = append(proposed, c)
	}
	for _, r := range decodeLines[widenResult](t,
		scipy.Run(t, casesDir, "widen.py", encodeLines(t, proposed))) {
		if !r.Holds {
			t.Errorf("%s: the proposal fails a margin", r.ID)
		}
	}
	t.Logf("%d proposals, %d of them where the nominal hotend trips", len(proposed), changes)
	if changes < len(cases)/20 {
		t.Errorf("only %d changes come", changes)
	}
}

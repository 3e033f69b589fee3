package measure

import (
	"fmt"
	"io"
	"math"
	"strings"

	"preflash/cmd/internal/jsontext"
	"preflash/cmd/internal/plaintext"
	"preflash/patch"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

// blockLine is one key of [new.block].
type blockLine struct {
	key    string
	figure heat.Figures
	heat.Estimate
	what string
}

func (h *HeatFit) lines() []blockLine {
	f := h.Fit
	return []blockLine{
		{"heat_capacity_j_per_k", heat.Capacity, f.Capacity, ""},
		{"loss_w_per_k", heat.Loss, f.Loss, "part fan off"},
		{"loss_fan_w_per_k", heat.LossFan, f.LossFan, "part fan full"},
		{"sensor_lag_s", heat.Lag, f.Lag, ""},
	}
}

// certain reports whether a line can go into a sheet.
func (h *HeatFit) certain(l blockLine) bool { return h.Fit.Fitted&l.figure != 0 && l.Certain() }

// HeatText prints a [new.block] that can be pasted, all else as comments.
func HeatText(w io.Writer, h HeatFit) error {
	var b strings.Builder
	f, r := h.Fit, h.Fit.Run
	comment(&b, "Fitted to %d rows over %s of %s, from %s to %s; %s.",
		r.Rows, unit.Seconds(r.LengthS), h.Log.File.Name,
		unit.Celsius(r.LowC), unit.Celsius(r.HighC), h.scales())
	comment(&b, "Heater: %s, %s. Room: %s.", heaterText(h.Heater), h.HeaterFrom, h.roomText())
	comment(&b, "Residuals: %s root mean square, %s at worst, at %s.", kelvins(f.RMSK),
		kelvins(f.WorstK), unit.Seconds(f.WorstS))
	b.WriteString("\n[new.block]\n")
	for _, l := range h.lines() {
		if !h.certain(l) {
			continue
		}
		value, spread := estimateText(l.Estimate)
		note := "± " + spread
		if l.what != "" {
			note += ", " + l.what
		}
		fmt.Fprintf(&b, "%-32s # %s\n", l.key+" = "+value, note)
	}
	b.WriteByte('\n')
	comment(&b, "± is two and a half standard errors of all that was fitted, the room included. "+
		"It takes the heater's power for exact: where that is 10 %% off, heat capacity and losses are too, "+
		"and the lag is not.")
	if doubts := h.doubts(); len(doubts) > 0 {
		b.WriteString("#\n")
		comment(&b, "What this log does not tell:")
		for _, d := range doubts {
			b.WriteString(plaintext.Hanging("# - ", "#   ", d, 76))
		}
	}
	_, err := io.WriteString(patch.HarmlessWriter(w), b.String())
	return err
}

// comment prints text as comment lines of a sheet.
func comment(b *strings.Builder, format string, args ...any) {
	b.WriteString(plaintext.Hanging("# ", "# ", fmt.Sprintf(format, args...), 78))
}

func (h *HeatFit) scales() string {
	text := "duty of " + unit.Figure(h.Log.DutyFull, 2) + " is full power"
	if h.Log.HasFan {
		text += ", fan of " + unit.Figure(h.Log.FanFull, 2) + " the full fan"
	}
	return text
}

func heaterText(h heat.Heater) string {
	text := fmt.Sprintf("%s at %s, on %s", unit.Watts(h.RatedW), unit.Volts(h.RatedV), unit.Volts(h.SupplyV))
	if points := h.Hot.Points(); len(points) > 0 {
		first, last := points[0], points[len(points)-1]
		text += fmt.Sprintf(", falling from %s at %s to %s at %s", unit.Watts(first.PowerW),
			unit.Celsius(first.TempC),
			unit.Watts(last.PowerW), unit.Celsius(last.TempC))
	}
	return text
}

// kelvins writes a residual, which may be small.
func kelvins(d float64) string { return unit.Figure(d, 2) + " K" }

// estimateText writes a figure to the digits that its uncertainty leaves, four
// at most, and the uncertainty likewise.
func estimateText(e heat.Estimate) (value, spread string) {
	leading := func(x float64) int { return int(math.Floor(math.Log10(x))) }
	decimals := 3 - leading(e.Value)
	if spread := e.PlusMinus(); spread > 0 {
		decimals = min(decimals, 1-leading(spread))
	}
	decimals = min(max(decimals, 2-leading(e.Value), 0), 9)
	step := math.Pow10(-decimals)
	up := math.Ceil(e.PlusMinus()/step-1e-6) * step // ± is not rounded down
	return unit.Figure(e.Value, decimals), unit.Figure(max(up, step), decimals)
}

// Limits of what is said about a log, common practice, no source.
const (
	shortCoolS  = 30.0
	lowTopC     = 180.0
	wideSpaceS  = 2.0
	poorFitK    = 2.0
	correlated  = 0.7
	fullFan     = 0.95
	notedAsFlat = "the heater is a PTC, but no hot_w says how its power falls: the fit takes its rated " +
		"power at every temperature, which makes the losses too large; measure the power hot"
)

// doubts says what the log leaves open, and how to record what is missing.
func (h *HeatFit) doubts() []string {
	var list plaintext.Remarks
	f, r := h.Fit, h.Fit.Run
	for _, l := range h.lines() {
		if f.Fitted&l.figure != 0 && !l.Certain() {
			value, spread := estimateText(l.Estimate)
			list.Add("%s: it comes out as %s ± %s; %s", l.key, value, spread,
				howToTell(l.figure))
		}
	}
	switch fan := h.mostFan(); {
	case f.Fitted&(heat.Loss|heat.LossFan) == 0:
		list.Add("either loss: the part fan stands at %s throughout, where the loss is %s W/K; "+
			"record a phase with it off and one with it full", unit.Percent(f.PartFan),
			unit.Figure(f.PartLoss.Value, 4))
	case f.Fitted&heat.LossFan == 0 && !h.Log.HasFan:
		list = append(list, "loss_fan_w_per_k: there is no fan column, and the fan is taken "+
			"to be off; "+howToTell(heat.LossFan))
	case f.Fitted&heat.LossFan == 0:
		list = append(list, "loss_fan_w_per_k: the part fan never runs; "+howToTell(heat.LossFan))
	case f.Fitted&heat.Loss == 0:
		list = append(list, "loss_w_per_k: the part fan runs full throughout; record a phase with it off")
	case fan < fullFan:
		list.Add("loss_fan_w_per_k above %s of the fan: it is drawn on in a straight line to "+
			"the full fan", unit.Percent(fan))
	}
	if r.CoolS < shortCoolS {
		list = append(list, "losses apart from the heater's power: there is no cool-down, "+
			"so that they hang on the bend of the heat-up alone; go on recording for some minutes with "+
			"the heater off")
	}
	if r.HighC < lowTopC {
		list.Add("losses near printing: the log ends at %s, and they grow a little faster than the "+
			"model's straight line; heat up to a printing temperature", unit.Celsius(r.HighC))
	}
	if r.SpacingS > wideSpaceS {
		list.Add("a lag much shorter than %s, the mean time between rows; record at least one "+
			"row a second", unit.Seconds(r.SpacingS))
	}
	if f.RMSK > poorFitK {
		list.Add("a hotend that the model knows: residuals of %s are more than a sensor's noise; "+
			"see that duty is the mean over each row, that the part fan is recorded and that nothing "+
			"was extruded", kelvins(f.RMSK))
	}
	if f.Correlation > correlated {
		list = append(list, "a curve that bends just as the model does: the residuals run together for "+
			"many rows; ± allows for that")
	}
	if len(r.Gaps) > 0 {
		list = append(list, h.gapsText())
	}
	if !f.Physical(1) {
		list = append(list, "a hotend: heat capacity or losses are far from what hotends have; "+
			"see that the heater's power is right, what full power is written as (--duty-full), "+
			"and that temp_c and time_s are in °C and s")
	}
	if otherRoom(h.Fit) {
		list.Add("a room of %s: it goes better with %s; say with --ambient-c how warm it is round "+
			"the hotend, or the losses do not grow in a straight line", unit.Celsius(f.Given.Value),
			unit.Celsius(f.Ambient.Value))
	}
	if h.FlatPTC {
		list = append(list, notedAsFlat)
	}
	return list
}

func (h *HeatFit) mostFan() (most float64) {
	for _, r := range h.Log.Rows {
		most = max(most, r.Fan)
	}
	return most
}

func howToTell(f heat.Figures) string {
	switch f {
	case heat.Loss:
		return "record longer, with a cool-down"
	case heat.LossFan:
		return "hold a printing temperature and let the part fan run full for two minutes"
	case heat.Lag:
		return "record more rows a second, from a cold start at full power"
	}
	return "record a heat-up from cold to a printing temperature at full power"
}

type estimateJSON struct {
	Value     any  `json:"value"`
	StdErr    any  `json:"std_err"`
	PlusMinus any  `json:"plus_minus"`
	Told      bool `json:"told"`
}

type gapJSON struct {
	FromS any `json:"from_s"`
	ToS   any `json:"to_s"`
	Line  int `json:"line"` // of the row after it
}

func (h *HeatFit) gapsJSON() []gapJSON {
	list := []gapJSON{}
	for _, at := range h.Fit.Run.Gaps {
		after := h.Log.Rows[at]
		list = append(list, gapJSON{jsontext.Value(h.Log.Rows[at-1].TimeS),
			jsontext.Value(after.TimeS), after.Line})
	}
	return list
}

// HeatJSON prints the fit for programs. A figure that the log says nothing
// about is null.
func HeatJSON(w io.Writer, h HeatFit) error {
	f, r := h.Fit, h.Fit.Run
	block := make(map[string]*estimateJSON)
	for _, l := range h.lines() {
		block[l.key] = nil
		if f.Fitted&l.figure != 0 {
			block[l.key] = &estimateJSON{jsontext.Value(l.Value), jsontext.Value(l.StdErr),
				jsontext.Value(l.PlusMinus()), h.certain(l)}
		}
	}
	out := struct {
		File        string                   `json:"file"`
		Rows        int                      `json:"rows"`
		LengthS     any                      `json:"length_s"`
		DutyFull    any                      `json:"duty_full"`
		AmbientC    any                      `json:"ambient_c"`
		AmbientErrC any                      `json:"ambient_std_err"`
		RatedW      any                      `json:"rated_w"`
		RatedV      any                      `json:"rated_v"`
		SupplyV     any                      `json:"supply_v"`
		Block       map[string]*estimateJSON `json:"block"`
		Gaps        []gapJSON                `json:"gaps"`
		RMSK        any                      `json:"rms_k"`
		WorstK      any                      `json:"worst_k"`
		WorstS      any                      `json:"worst_s"`
		Correlation any                      `json:"correlation"`
		NotTold     []string                 `json:"not_told"`
	}{
		h.Log.File.Name, r.Rows, jsontext.Value(r.LengthS), jsontext.Value(h.Log.DutyFull),
		jsontext.Value(f.Ambient.Value), jsontext.Value(f.Ambient.StdErr),
		jsontext.Value(h.Heater.RatedW), jsontext.Value(h.Heater.RatedV), jsontext.Value(h.Heater.SupplyV),
		block, h.gapsJSON(), jsontext.Value(f.RMSK), jsontext.Value(f.WorstK), jsontext.Value(f.WorstS),
		jsontext.Value(f.Correlation),
		append([]string{}, h.doubts()...),
	}
	return jsontext.Write(w, out)
}

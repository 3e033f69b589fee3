package rules

import (
	"fmt"
	"math"

	"preflash/parser/sheet"
	"preflash/rules/heat"
	"preflash/rules/unit"
)

var heaterStuckOn = &Rule{
	ID:      "heater-stuck-on",
	Level:   Note,
	Figure:  FigureOf{"equilibrium_c", "°C", Higher},
	Summary: "A heater that stays on by a fault takes the hotend past its rating.",
	Doc: `The block ends up where P(T) = loss_w_per_k · (T − ambient_c), at full duty
whatever limit the firmware has, part fan off; the power of a PTC heater is held
flat beyond its table. Radiation is left out, so it is an upper bound, given in
whole tens of degrees; the model ends at 500 °C.
Note: that lies above the weakest rating of the hotend. No firmware can stop an
output that has failed closed; only a cut-off of its own can. new.cutoff_c below
that rating ends the finding.
Values: equilibrium_c (not above 500). No change.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		end, weakest := StuckOn(in), weakestRating(&in.Sheet.New)
		cutoff := &in.Sheet.New.CutoffC
		if end.C <= weakest.C || math.IsInf(end.C, 0) || cut(cutoff) && cutoff.Value < weakest.C {
			return
		}
		p, assumed := plantOf(in)
		r := rangesOf(p, assumed, heat.Loss)
		least, most := r.span(heat.Plant.StuckOn)
		over := func(q heat.Plant) bool { return q.StuckOn() > weakest.C }
		remedy := "fit an independent cut-off and give new.cutoff_c"
		if cut(cutoff) {
			remedy = "fit an independent cut-off below that rating, this one is at " +
				unit.Celsius(cutoff.Value)
		}
		f := Findingf(Note, in.Sheet.New.Heater.RatedW.At,
			"%s: if it stays on by a fault, this heater takes the block %s, past the %s of the %s",
			remedy, end.Text(), unit.Celsius(weakest.C), weakest.By).
			Explain("no firmware can stop that; a thermal fuse on the block will do; the figure is an "+
				"upper bound%s", r.text("it goes from "+tens(least)+" to "+tens(most), r.flips(over))).
			With(Values{"equilibrium_c": min(end.C, modelEndC)})
		if labelOnly(&in.Sheet.New.Heater) {
			f.explain("that is with its label's power at every temperature, and a PTC heater's falls: " +
				"give new.heater.hot_w")
		}
		p.AmbientC, p.DutyLimit = 0, 1 // the hotend, not the room nor the firmware
		f.Same = fmt.Sprint(p, weakest.C, cutoff.Value)
		report(f)
	},
}

// cut reports whether something independent of the firmware cuts the heater.
func cut(k *sheet.Key[float64]) bool { return k.Given && k.Value > 0 }

// modelEndC is where the model of the block ends, which knows no radiation:
// common practice, no source.
const modelEndC = 500

// Stuck is where a hotend settles whose heater stays on by a fault.
type Stuck struct{ C float64 }

// StuckOn gives it for the hotend that goes in.
func StuckOn(in *Input) Stuck {
	p, _ := plantOf(in)
	return Stuck{p.StuckOn()}
}

// Text says where, in whole tens of degrees.
func (s Stuck) Text() string {
	if s.C > modelEndC {
		return tens(s.C)
	}
	return "to about " + tens(s.C)
}

// tens gives a temperature in whole tens of degrees, as far as the model goes.
func tens(tempC float64) string {
	if tempC > modelEndC {
		return "far above " + unit.Celsius(modelEndC)
	}
	return unit.Celsius(math.Round(tempC/10) * 10)
}

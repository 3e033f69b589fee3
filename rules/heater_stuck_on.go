package rules

import (
	"math"

	"preflash/rules/heat"
)

var heaterStuckOn = &Rule{
	ID:      "heater-stuck-on",
	Level:   Note,
	Summary: "A heater output that is welded on takes the hotend past its rating.",
	Doc: `The block settles where P(T) = loss_w_per_k · (T − ambient_c), at full duty
whatever limit the firmware has, part fan off. Radiation is left out, so it is
an upper bound.
Note: that lies above the weakest rating of the hotend. No firmware can stop an
output that has failed closed; only a cut-off of its own can.
Values: equilibrium_c. No change.`,
	Check: func(in *Input, report func(Finding)) {
		p, assumed := plantOf(in)
		assumed &= heat.Loss
		weakest := weakestRating(&in.Sheet.New)
		over := func(q heat.Plant) bool { return q.StuckOn() > weakest.C }
		if !over(p) {
			return
		}
		end := p.StuckOn()
		if math.IsInf(end, 0) {
			return // no loss, no end: the sheet refuses that
		}
		least, most := p.Range(assumed, heat.Plant.StuckOn)
		report(Sayf(Note, in.Sheet.New.Heater.RatedW.At,
			"with its output welded on, this heater takes the block to %s (an upper bound), past the %s of the %s, and no firmware can stop it; fit an independent cut-off, such as a thermal fuse on the block%s",
			celsius(end), celsius(weakest.C), weakest.By,
			ifAssumed(p, assumed, "it settles at "+figure(least, 1)+" to "+celsius(most), p.Flips(assumed, over))).
			With(Values{"equilibrium_c": end}))
	},
}

package rules

import (
	"preflash/parser"
	"preflash/rules/unit"
)

// halfCount is half a step of a duty that is kept in 255 counts: a limit that
// was rounded to the next count is no fault.
const halfCount = 0.5 / 255

var heaterDuty = &Rule{
	ID:      "heater-duty",
	Level:   Error,
	Figure:  FigureOf{"configured", "%", Higher},
	Summary: "The configuration drives the heater harder than its duty limit.",
	Doc: `limit = new.heater.duty_limit, the highest duty that its maker or owner allows
Error: an option that limits the heater's power stands above it, by more than
half a count in 255; or no option limits the power at all.
Values: configured, limit (shares of full power).
Change: the limit, in every option that holds one.`,
	NeedsSheet: true,
	Check: func(in *Input, report func(Finding)) {
		limit := &in.Sheet.New.Heater.DutyLimit
		if limit.Value >= 1 {
			return // every output keeps that
		}
		options := in.Printer.Hotend.Loop.PowerLimits
		values := Values{"configured": 1.0, "limit": limit.Value}
		if len(options) == 0 {
			report(Findingf(Error, limit.At,
				"fit another heater, or a firmware that can limit the output: this one has no option that "+
					"does, and the heater may get %s of full power at most",
				unit.Percent(limit.Value)).With(values))
			return
		}
		var worst *parser.Setting[float64]
		var changes []parser.Change
		share := func(s *parser.Setting[float64]) float64 {
			if s.State == parser.Off {
				return 1
			}
			return s.Value
		}
		for i := range options {
			s := &options[i]
			if s.State == parser.Unknown {
				report(cannotTell(Warning, s))
				continue
			}
			if share(s) <= limit.Value+halfCount {
				continue
			}
			changes = append(changes, s.To(limit.Value))
			if worst == nil || share(s) > share(worst) {
				worst = s
			}
		}
		if worst == nil {
			return
		}
		values["configured"] = share(worst)
		report(Findingf(Error, placed(worst.At, limit.At),
			"lower the power limit to %s: the configuration drives the heater at up to %s of full power, "+
				"more than it may get",
			unit.Percent(limit.Value), unit.Percent(share(worst))).With(values).Change(changes...))
	},
}

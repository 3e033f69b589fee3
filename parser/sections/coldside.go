package sections

import (
	"strings"

	"preflash/parser"
)

// coldSide finds the fan that follows the heater. Of several, the one counts
// that starts at the lowest temperature; one that never turns only where there
// is no other; one that is named after the board only then too, and whether it
// cools the heat break is unknown.
func (c *config) coldSide(heater string) parser.ColdSide {
	var board *parser.Setting[string]
	still := parser.ColdSide{WithTarget: true}
	cold := parser.ColdSide{WithTarget: true,
		Fan: parser.Setting[string]{Key: parser.FanOutput, State: parser.Off}}
	for _, s := range c.sections {
		if s.kind != "heater_fan" {
			continue
		}
		fan := parser.Setting[string]{
			Key: parser.FanOutput, Value: s.name, State: parser.Set, Name: "[" + s.name + "]",
		}
		fan.Place = parser.Place{At: c.headingSpan(s.name), Written: s.name}
		follows := []string{"extruder"}
		if o, _ := c.find(s.name, "heater"); o != nil {
			fan.Place, fan.Name = c.place(o), fan.Name+" heater"
			follows = strings.Split(fan.Written, ",")
		}
		follow, stands := names(follows, heater), c.standsStill(s.name)
		switch {
		case forBoard(s.own) && follow && !stands:
			board = &fan
			continue
		case forBoard(s.own):
			continue
		case !follow:
			cold.Elsewhere = append(cold.Elsewhere, fan.Place)
			continue
		}
		above := c.optional(parser.FanOnAbove, s.name, "heater_temp", usualFanStart, anything)
		if stands {
			still.Fan, still.OnAboveC = fan, above
			still.Power, still.AtShutdown = c.fanPower(s.name)
			still.Power.Value = 0
			continue
		}
		sooner := above.Known() && cold.OnAboveC.Known() && above.Value < cold.OnAboveC.Value
		if cold.Fan.State == parser.Off || sooner {
			cold.Fan, cold.OnAboveC = fan, above
			cold.Power, cold.AtShutdown = c.fanPower(s.name)
		}
	}
	if cold.Fan.State == parser.Off && still.Fan.State != parser.Absent {
		still.Elsewhere = cold.Elsewhere
		return still
	}
	if cold.Fan.State == parser.Off && board != nil {
		cold.Fan = *board
		cold.Fan.State = parser.Unknown
		cold.Fan.Why = "[" + board.Value + "] follows this hotend and is named after the board; " +
			"whether it blows at the heat break does not stand in the files: " +
			"where it does, name it after that"
	}
	return cold
}

// forBoard reports whether a fan's name says that it cools the electronics:
// common practice, no source.
func forBoard(name string) bool {
	name = strings.ToLower(name)
	for _, word := range [...]string{"controller", "board", "mcu", "electronic", "driver"} {
		if strings.Contains(name, word) {
			return true
		}
	}
	return false
}

// fanPower reads the shares of full power at which a fan runs, and goes on
// running after a shutdown. What the firmware assumes is as it is published.
func (c *config) fanPower(fan string) (running, stopped parser.Setting[float64]) {
	share, most := atLeast(0), positive
	share.max, most.max = 1, 1
	read := func(key parser.Key, option string, demand demand) parser.Setting[float64] {
		return c.optional(key, fan, option, 1, demand)
	}
	limited := func(s parser.Setting[float64], both func(a, b float64) float64) parser.Setting[float64] {
		limit := read(s.Key, "max_power", most)
		switch {
		case s.State == parser.Unknown:
			return s
		case limit.State != parser.Set:
			limit.Value, limit.Name = s.Value, s.Name
			if limit.State == parser.Unknown || s.State == parser.Default {
				return limit
			}
			return s
		case s.State == parser.Set:
			limit.Place, limit.Name = s.Place, s.Name
		}
		limit.Value = both(s.Value, limit.Value)
		return limit
	}
	product := func(a, b float64) float64 { return a * b }
	least := func(a, b float64) float64 { return min(a, b) }
	running = limited(read(parser.FanPower, "fan_speed", share), product)
	stopped = limited(read(parser.FanAtShutdown, "shutdown_speed", share), least)
	return running, stopped
}

// names reports whether a list of heaters holds one.
func names(list []string, heater string) bool {
	for _, name := range list {
		if strings.TrimSpace(name) == heater {
			return true
		}
	}
	return false
}

// standsStill reports whether a fan never turns: at a speed of 0, or one below
// which it is kept off.
func (c *config) standsStill(fan string) bool {
	speed := c.optional(noKey, fan, "fan_speed", 1, atLeast(0))
	off := c.optional(noKey, fan, "off_below", 0, atLeast(0))
	return speed.Known() && (speed.Value == 0 || off.Known() && speed.Value < off.Value)
}

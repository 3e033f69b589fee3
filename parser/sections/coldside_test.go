package sections

import (
	"testing"

	"preflash/parser"
)

func TestFans(t *testing.T) {
	for _, test := range []struct {
		name, fan string
		state     parser.State
		follows   string
		above     float64
		elsewhere int
	}{
		{"none, for part and board fans are none",
			"[fan]\npin: a\n[controller_fan b]\nheater: extruder\n[fan_generic c]\npin: d\n",
			parser.Off, "", 0, 0},
		{"heater and threshold assumed", "[heater_fan a]\npin: b\n", parser.Set, "heater_fan a", 50, 0},
		{"a list", "[heater_fan a]\nheater: heater_bed , extruder\nheater_temp: 60\n",
			parser.Set, "heater_fan a", 60, 0},
		{"another heater", "[heater_fan a]\nheater: heater_bed\n", parser.Off, "", 0, 1},
		{"a name that only begins alike", "[heater_fan a]\nheater: extruder1\n", parser.Off, "", 0, 1},
		{"one that stands still", "[heater_fan a]\nfan_speed: 0\n", parser.Set, "heater_fan a", 50, 0},
		{"one that is kept off", "[heater_fan a]\nfan_speed: 0.3\noff_below: 0.4\n",
			parser.Set, "heater_fan a", 50, 0},
		{"beside one that turns", "[heater_fan a]\nfan_speed: 0\n[heater_fan b]\nheater_temp: 70\n",
			parser.Set, "heater_fan b", 70, 0},
		{"one that is named after the board", "[heater_fan controller_fan]\n",
			parser.Unknown, "heater_fan controller_fan", 0, 0},
		{"beside one that is not", "[heater_fan a]\n[heater_fan Mainboard]\nheater_temp: 20\n",
			parser.Set, "heater_fan a", 50, 0},
		{"one of the board that follows the bed", "[heater_fan board]\nheater: heater_bed\n",
			parser.Off, "", 0, 0},
		{"one of another kind", "[controller_fan a]\nheater: extruder\n", parser.Off, "", 0, 0},
		{"the one that starts first counts",
			"[heater_fan a]\nheater_temp: 70\n[heater_fan b]\nheater_temp: 40\n[heater_fan c]\n",
			parser.Set, "heater_fan b", 40, 0},
	} {
		c := readText(t, "[extruder]\n"+test.fan)
		cold := c.Printer().ColdSide
		if cold.Fan.State != test.state || cold.Fan.Value != test.follows ||
			cold.OnAboveC.Value != test.above || len(cold.Elsewhere) != test.elsewhere {
			t.Errorf("%s: %+v", test.name, cold)
		}
	}
}

func TestFanPower(t *testing.T) {
	for _, test := range []struct {
		fan              string
		running, stopped float64
		state            parser.State
		at               string
	}{
		{"", 1, 1, parser.Default, ""},
		{"fan_speed: 0.8\n", 0.8, 1, parser.Set, "0.8"},
		{"fan_speed: 0.8\nmax_power: 0.5\nhardware_pwm: true\n", 0.4, 0.5, parser.Set, "0.8"},
		{"max_power: 0.5\nshutdown_speed: 0\n", 0.5, 0, parser.Set, "0.5"},
		{"fan_speed: 0.5\noff_below: 0.6\n", 0, 1, parser.Set, "0.5"},
		{"fan_speed: 1.2\n", 0, 1, parser.Unknown, "1.2"},
		{"max_power: 0\n", 0, 0, parser.Unknown, "0"},
	} {
		cold := readText(t, "[extruder]\n[heater_fan f]\n"+test.fan).Printer().ColdSide
		p := &cold.Power
		if p.State != test.state ||
			p.Known() && (p.Value != test.running || cold.AtShutdown.Value != test.stopped) ||
			p.At.Text() != test.at {
			t.Errorf("%q: %+v, after a shutdown %+v", test.fan, p, cold.AtShutdown)
		}
	}
}

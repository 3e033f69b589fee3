package worklist

import (
	"fmt"
	"math"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/rules/sensor"
	"preflash/rules/unit"
)

// heaterShare is how far a cartridge's resistance may be off: common practice,
// no source.
const heaterShare = 0.10

// fanShare is how far a fan's voltage may be off: that of fan-voltage.
const fanShare = 0.15

// roomK is how far the room may be off the sheet's ambient_c when a sensor is
// measured.
const roomK = 3

func (b *builder) beforePower() Section {
	return Section{
		Title: "Before power",
		Note:  "Plug pulled, hotend cold. Heater and sensor are measured off the board.",
		Items: []Item{b.heaterOhms(), b.insulation(), b.sensorOhms(), b.fan(), b.leads(), {
			Do: "Pull lightly at each wire of heater and sensor, then move the head by hand to all corners.",
			Expect: "nothing gives way or chafes; heater and sensor sit in the block over their whole " +
				"length and are clamped",
			Else: "a sensor that slips out reads too cold, and the firmware heats on",
		}},
	}
}

func (b *builder) heaterOhms() Item {
	h := &b.in.Sheet.New.Heater
	cold := h.RatedV.Value * h.RatedV.Value / h.RatedW.Value
	item := Item{
		Do:   "Ohmmeter across the two wires of the heater; subtract what it shows with its tips together.",
		Note: []Reading{{"heater", "Ω"}},
	}
	formula := fmt.Sprintf("V²/P = (%s)² / %s", unit.Volts(h.RatedV.Value), unit.Watts(h.RatedW.Value))
	if h.Kind.Value == sheet.PTC {
		item.Expect = fmt.Sprintf("roughly %s (%s); a PTC's cold reading says little: it tells a whole one "+
			"from a broken one (no reading) or a shorted one (near 0 Ω), not its power",
			unit.Ohms(cold), formula)
		item.Else = "do not connect it"
		return item
	}
	item.Expect = fmt.Sprintf("%s to %s: %s = %s, within %s", unit.Ohms(cold*(1-heaterShare)),
		unit.Ohms(cold*(1+heaterShare)),
		formula, unit.Ohms(cold), unit.Percent(heaterShare))
	item.Else = "about a quarter of that is a heater for half the voltage, about four times that one for " +
		"twice the voltage, no reading a broken one; do not connect it before the sheet says what it is " +
		"and the check is clean"
	return item
}

func (b *builder) insulation() Item {
	wires := "heater and sensor"
	if b.in.Sheet.New.Sensor.Kind.Value == parser.Thermocouple {
		wires = "the heater" // a thermocouple may well be welded to its sheath
	}
	return Item{
		Do:     "Ohmmeter from each wire of " + wires + " to the bare metal of the block.",
		Expect: "no reading",
		Else:   "a wire touches the block: do not connect it",
	}
}

func (b *builder) sensorOhms() Item {
	s := &b.in.Sheet.New.Sensor
	room := b.in.Sheet.Printer.AmbientC.Value
	item := Item{
		Do:   "Ohmmeter across the two wires of the sensor, at room temperature.",
		Note: []Reading{{"room", "°C"}, {"sensor", "Ω"}},
	}
	switch {
	case s.Kind.Value == parser.Thermocouple:
		item.Expect = "a few Ω, which tells a whole one from a broken one and nothing else"
		return item
	case b.real == nil && s.Curve.Given: // behind an amplifier
		k, _ := sensor.Find(s.Curve.Value)
		if k.Curve == nil {
			break
		}
		low, high := ohmsAround(k.Curve, room, s)
		item.Do = "Ohmmeter across the sensor element, off its amplifier, at room temperature."
		item.Expect = readsAt(k.Curve, room, low, high)
		return item
	case b.real != nil:
		low, high := ohmsAround(b.real.Curve, room, s)
		item.Expect = readsAt(b.real.Curve, room, low, high)
		item.Else = "no reading is a broken sensor, another one a sensor that the sheet does not name"
		if o := b.other; o != nil {
			if r := o.Curve.Ohms(room); r >= low && r <= high && o.Curve.Ohms(150) != b.real.Curve.Ohms(150) {
				item.Expect += fmt.Sprintf(". A sensor for %s would read about the same, %s: "+
					"only the first heat tells them apart", o.name, unit.Ohms(r))
			}
		}
		return item
	}
	item.Expect = "that of a platinum element: pt100 reads " + rough("pt100", room) + ", pt1000 " +
		rough("pt1000", room)
	return item
}

// ohmsAround is what a good sensor may read where the room is up to roomK off.
func ohmsAround(c sensor.Curve, room float64, s *sheet.Sensor) (low, high float64) {
	spread, share := float64(roomK), s.R25Tolerance.Value
	if s.Kind.Value != parser.NTC {
		spread, share = spread+sensor.PlatinumBand(room), 0
	}
	a, z := c.Ohms(room-spread), c.Ohms(room+spread)
	return min(a, z) * (1 - share), max(a, z) * (1 + share)
}

func readsAt(c sensor.Curve, room, low, high float64) string {
	return fmt.Sprintf("%s at %s; %s to %s between %s and %s", unit.Ohms(c.Ohms(room)), unit.Celsius(room),
		unit.Ohms(low), unit.Ohms(high), unit.Celsius(room-roomK), unit.Celsius(room+roomK))
}

func rough(id string, tempC float64) string {
	k, _ := sensor.Find(id)
	return "about " + unit.Ohms(math.Round(k.Curve.Ohms(tempC)))
}

func (b *builder) fan() Item {
	fan, c := &b.in.Sheet.New.Fan, &b.in.Printer.ColdSide
	gets := unit.Volts(fan.OutputV.Value)
	item := Item{Do: "Heat-break fan: read its label"}
	if fan.RatedV.Given {
		item.Do += ", which should say " + unit.Volts(fan.RatedV.Value)
	}
	switch {
	case fan.AlwaysOn.Value:
		item.Do += ", and wire it to the supply, plus to plus."
	case c.Fan.Known():
		item.Do += ", and plug it into the output that follows this hotend, " + c.Fan.Value +
			place(c.Fan.At) + ", plus to plus."
	default:
		item.Do += ". No output that follows this hotend is known in the configuration: " +
			"wire it to the supply and say always_on in the sheet, or give it an output."
	}
	item.Expect = "a fan for " + gets + ", which is what it gets"
	if !fan.OutputV.Given {
		item.Expect += " (taken from the supply: the sheet gives no output_v)"
	}
	if fan.RatedV.Given && math.Abs(fan.RatedV.Value/fan.OutputV.Value-1) > fanShare {
		item.Expect += "; the sheet's fan does not fit"
	}
	if n := fan.Wires.Value; n > 2 {
		item.Expect += fmt.Sprintf("; of its %d wires, plus and minus by the label, the others only where "+
			"the board has an input for them", n)
	}
	item.Else = "a fan on too high a voltage burns out, one on too low a voltage stands still, " +
		"and then the heat break clogs. The part fan is another fan on another output, and must be for " +
		"that output's voltage too"
	return item
}

func (b *builder) leads() Item {
	item := Item{
		Do: "Follow both pairs of wires by hand from the hotend to the board: heater on the heater " +
			"output, sensor on the sensor input.",
		Expect: "within a pair the wires may be either way round, but the pairs must not be swapped " +
			"with each other",
		Else: "the supply's voltage on a sensor input destroys the board",
	}
	if b.in.Sheet.New.Sensor.Kind.Value == parser.Thermocouple {
		item.Expect = "the heater's wires may be either way round; the thermocouple's are polar, " +
			"and the wrong way round it reads colder as it gets hotter. The pairs must not be swapped " +
			"with each other"
	}
	return item
}

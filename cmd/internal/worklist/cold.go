package worklist

// coldSensor finds out what a sensor is before anything heats it. Ice water and
// boiling water are fixed points; that water boils 1 °C lower for every 300 m of
// height follows from the standard atmosphere and the vapour pressure of water.
func coldSensor() Section {
	ohms := Reading{"sensor", "Ω"}
	return Section{
		Title: "Which sensor it is",
		Note: "No heater gets power until this is known: read by a wrong definition, the nozzle can be 50 " +
			"°C hotter than it shows. The sensor is measured by itself: unplugged from the board, " +
			"out of the block, an ohmmeter at its two wires. In water it lies in a thin plastic bag with " +
			"the air pressed out, and only the bag gets wet. Write down what the meter shows once it " +
			"stands still.",
		Items: []Item{{
			Do: "Ice water: crushed ice with a little water, stirred, " +
				"the bag in the middle for five minutes.",
			Expect: "0 °C. A bead of 100 kΩ at 25 °C shows about 330 kΩ, pt1000 1000 Ω, pt100 100 Ω; " +
				"a bead falls as it gets warmer, platinum rises",
			Else: "no reading is a broken sensor; a few Ω at any temperature a thermocouple, " +
				"which needs a chip and has no curve to choose",
			Note: []Reading{ohms},
		}, {
			Do: "Boiling water: a pot at a rolling boil, the bag in the water and off the bottom, " +
				"for five minutes. Mind the steam.",
			Expect: "100 °C at sea level, and 1 °C less for every 300 m above it: " +
				"98 °C at 600 m, 95 °C at 1500 m",
			Note: []Reading{{"height above the sea", "m"}, {"water", "°C"}, ohms},
		}, {
			Do: "A kitchen oven at 150 °C, without the bag: tie the bare sensor to the tip of a " +
				"thermometer, in the middle of the oven and off the metal, and wait ten minutes after the " +
				"oven has reached it.",
			Expect: "the thermometer's own figure counts, not the oven's; no higher than thermometer, " +
				"wires and sensor are rated for",
			Else: "without such a thermometer leave this point out: two points may not tell all curves " +
				"apart, and then nothing is chosen",
			Note: []Reading{{"thermometer", "°C"}, ohms},
		}, {
			Do: "Write the points in a file, such as sensor.csv: temp_c,ohm in the first line, " +
				"then a line for each point.",
			Run: []string{"preflash sensor rank sensor.csv --within 1"},
			Expect: "a known curve that goes with all points, and the definition that each style has for " +
				"it. Within 1 K is what ice water and boiling water are good for",
			Else: "a point that stands apart is measured again; where no curve goes with the points, " +
				"it fits a custom definition",
			Note: []Reading{{"curve", ""}},
		}, {
			Do: "Write that curve in the sheet, [new.sensor], run preflash check and preflash diff, " +
				"and print this list again.",
			Expect: "the new list leads on from here: 50 °C first, attended, " +
				"with a thermometer of its own at the block",
			Else: "do not heat",
		}},
	}
}

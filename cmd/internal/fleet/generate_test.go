package fleet

import (
	"fmt"
	"strings"
	"testing"

	"preflash/cmd/internal/testfiles"
)

// A generated fleet: healthy printers of both styles, alike but for their
// names, padded to a size with what real configurations are full of.

const healthySections = `[printer]
kinematics: corexy
max_velocity: 300
max_accel: 5000

[extruder]
heater_pin: PA2
sensor_pin: PF4
sensor_type: Generic 3950
min_temp: 0
max_temp: 290
control: pid
pid_kp: 21.7
pid_ki: 1.4
pid_kd: 84
nozzle_diameter: 0.4
filament_diameter: 1.75

[heater_bed]
heater_pin: PA1
sensor_type: Generic 3950
sensor_pin: PF3
min_temp: 0
max_temp: 120
control: pid
pid_kp: 60
pid_ki: 1.5
pid_kd: 600

[heater_fan break]
pin: PA8
heater: extruder
heater_temp: 50

`

// healthySheet gives every figure that a rule asks for.
func fleetSheet(name string, config ...string) string {
	s := strings.Replace(sheetFor(config...), "egret-90", name, 1)
	return s + `[new.block]
heat_capacity_j_per_k = 16.7
loss_w_per_k = 0.068
loss_fan_w_per_k = 0.097
sensor_lag_s = 4.5
[done]
height_on = 2026-10-02
[tuned]
at_c = 220
kp = 21.7
ki = 1.4
kd = 84
`
}

// padDefines fills a header up to a size as real ones are filled: two lines of
// three are comments; the rest are options, switched off or on, and nested
// conditionals.
func padDefines(text string, size int) string {
	var b strings.Builder
	b.WriteString(text)
	for i := 0; b.Len() < size; i++ {
		fmt.Fprintf(&b, `
/**
 * Part %[1]d of the machine: how far it goes, and what it is driven with.
 * Nothing here bears on heat.
 *
 * Measure the travel with the motor off, from one end to the other, and take
 * off two millimetres at each end. The current is what the motor's label
 * says, less a fifth; raise it when steps are lost, and lower it when the
 * motor gets too hot to be touched.
 *
 *   travel      what is left between the ends, in mm
 *   current     in mA, as the driver counts it
 *   steps       for each millimetre, one figure for each axis
 *   inverted    turns the direction round
 */
//#define PART_%[1]d_FITTED              // uncomment it once it is wired
#if ENABLED(PART_%[1]d_FITTED)
  #define PART_%[1]d_TRAVEL      %[2]d      // mm
  // A long one needs more, since its cable is heavy.
  #if PART_%[1]d_TRAVEL > 200 && defined(PART_%[1]d_LONG)
    #define PART_%[1]d_CURRENT   900     // mA
  #else
    #define PART_%[1]d_CURRENT   600     // mA
  #endif
#endif

// One figure for each axis, in the order in which they are wired.
#define PART_%[1]d_STEPS         { 80, 80, 400, %[2]d }
//#define PART_%[1]d_INVERTED            // turns it round
`, i, 100+i%300)
	}
	return b.String()
}

// padSections fills a configuration up to a size with macros and pins.
func padSections(text string, size int) string {
	var b strings.Builder
	b.WriteString(text)
	for i := 0; b.Len() < size; i++ {
		fmt.Fprintf(&b, `
[gcode_macro PART_%[1]d]
description: moves part %[1]d out of the way
variable_travel: %[2]d
gcode:
  # slowly, it is heavy
  SAVE_GCODE_STATE NAME=part_%[1]d
  G91
  G1 X%[2]d F600   ; there
  G1 X-%[2]d F600  ; and back
  RESTORE_GCODE_STATE NAME=part_%[1]d

[output_pin part_%[1]d]
pin: PB%[1]d
value: 0
`, i, 10+i%90)
	}
	return b.String()
}

// healthy is a folder with a printer of the sections style for each name.
func healthy(names ...string) texts {
	f := texts{}
	for _, name := range names {
		f[name+"/swap.toml"], f[name+"/printer.cfg"] = fleetSheet(name, "printer.cfg"), healthySections
	}
	return f
}

// writeFleet writes so many printers of each style below the working
// directory, numbered from 1 in the order in which they are checked, padded
// to these sizes in bytes.
func writeFleet(t testing.TB, defines, sections, definesSize, sectionsSize int) {
	t.Helper()
	first := padDefines(base+guard, definesSize-len(watch)-4000)
	second := padDefines(watch, 4000)
	whole := padSections(healthySections, sectionsSize)
	for i := 1; i <= defines+sections; i++ {
		name := fmt.Sprintf("printer-%04d", i)
		if i <= defines {
			testfiles.Write(t, name, texts{"Configuration.h": first, "Configuration_adv.h": second,
				"swap.toml": fleetSheet(name, "Configuration.h", "Configuration_adv.h")})
		} else {
			testfiles.Write(t, name, texts{"printer.cfg": whole,
				"swap.toml": fleetSheet(name, "printer.cfg")})
		}
	}
}

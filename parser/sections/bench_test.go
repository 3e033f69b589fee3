package sections

import (
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"

	"preflash/parser"
)

// largeText is a configuration of some 30 KB: a printer, its macros, a saved
// block.
func largeText() string {
	var b strings.Builder
	b.WriteString(printerText)
	for i := 0; b.Len() < 29_000; i++ {
		fmt.Fprintf(&b, `
# what macro %[1]d is for, in a line that a person wrote
[gcode_macro PART_%[1]d]
description: moves part %[1]d   # shown in the list
variable_park: %[1]d
gcode:
    {%% set x = params.X|default(%[1]d)|float %%}
    G28 ; home first
    G1 X{x} Y20 F6000
    # and wait
    {%% if x > 10 %%}
        G4 P500
    {%% endif %%}
    M117 part %[1]d

[output_pin pin_%[1]d]
pin:            PB%[1]d
value:          0
shutdown_value: 0
`, i)
	}
	b.WriteString(savedText)
	return b.String()
}

const printerText = `# An invented printer.
[mcu]
serial: /dev/serial/by-id/usb-demo

[printer]
kinematics:      corexy
max_velocity:    300
max_accel:       3000

[extruder]
step_pin:          PE3
dir_pin:           PE2
enable_pin:        !PE4
microsteps:        16
rotation_distance: 22.678   # measured
nozzle_diameter:   0.400
filament_diameter: 1.750
pressure_advance:  0.045
heater_pin:        PA10
sensor_type:       NTC 100K MGB18-104F39050L32   ; the old one
sensor_pin:        PC1
min_temp:          0
max_temp:          285
min_extrude_temp:  170
max_power:         0.9

[verify_heater extruder]
max_error:         150

[heater_bed]
heater_pin:        PA8
sensor_type:       Generic 3950
sensor_pin:        PC0
control:           watermark
min_temp:          0
max_temp:          110

[heater_fan hotend_fan]
pin:               PC8
heater:            extruder
heater_temp:       45

[fan]
pin:               PA9

[probe]
pin:               PB7
x_offset:          24

[gcode_macro PREHEAT]
gcode:
    M104 S210
    M140 S60
`

const savedText = `
#*# <---------------------- SAVE_CONFIG ---------------------->
#*# DO NOT EDIT THIS BLOCK OR BELOW. The contents are auto-generated.
#*#
#*# [extruder]
#*# control = pid
#*# pid_kp = 21.700
#*# pid_ki = 1.400
#*# pid_kd = 84.000
#*#
#*# [probe]
#*# z_offset = 1.850
#*#
#*# [bed_mesh default]
#*# version = 1
#*# points =
#*# 	0.010, 0.020, 0.030
#*# 	0.020, 0.010, 0.000
`

// BenchmarkRead reads a configuration of 30 KB from disk and makes its
// printer.
func BenchmarkRead(b *testing.B) {
	text := largeText()
	tree := treeOf(b, files{"printer.cfg": text})
	b.SetBytes(int64(len(text)))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := Style.Read(tree, parser.Request{Files: []string{"printer.cfg"}}); err != nil {
			b.Fatal(err)
		}
	}
}

// BenchmarkConfigparser has Python's configparser read the same text, after
// what follows a # is cut, in one process: the ratio to BenchmarkRead is that
// of the readers, without the start of the interpreter.
func BenchmarkConfigparser(b *testing.B) {
	name := filepath.Join(b.TempDir(), "printer.cfg")
	if err := os.WriteFile(name, []byte(largeText()), 0o666); err != nil {
		b.Fatal(err)
	}
	const script = `
import configparser, io, sys, time
start = time.perf_counter()
for _ in range(int(sys.argv[2])):
    lines = [line.partition("#")[0] for line in open(sys.argv[1]).read().split("\n")]
    p = configparser.RawConfigParser(strict=False, inline_comment_prefixes=(";", "#"))
    p.read_file(io.StringIO("\n".join(lines)))
print((time.perf_counter() - start) * 1e9 / int(sys.argv[2]))
`
	b.ResetTimer()
	out, err := exec.Command("python3", "-c", script, name, fmt.Sprint(b.N)).Output()
	if err != nil {
		b.Fatalf("python3: %v", err)
	}
	var ns float64
	if _, err := fmt.Sscan(string(out), &ns); err != nil {
		b.Fatal(err)
	}
	b.ReportMetric(ns, "ns/op")
}

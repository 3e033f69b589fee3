package sheet

import "preflash/parser"

// Without is what stands in for a sheet where there is none: the printer's
// configuration, the documented defaults, and nothing of a hotend. What a print
// asks for is a usual range (common practice, no source).
func Without(name, style string, tool int, files []*parser.File) *Sheet {
	at := parser.Span{File: files[0]}
	s := &Sheet{File: files[0]}
	p := &s.Printer
	p.Name = Key[string]{Value: name, At: at, Path: "printer.name"}
	p.Style = Key[string]{Value: style, At: at, Path: "printer.style"}
	for _, f := range files {
		p.Config = append(p.Config,
			Key[string]{Value: f.Path, At: parser.Span{File: f}, Path: "printer.config"})
	}
	p.Tool = Key[int]{Value: tool, At: at, Path: "printer.tool"}
	p.PullupOhm = Key[float64]{Value: usualPullupOhm, At: at, Path: "printer.pullup_ohm"}
	p.ADCBits = Key[int]{Value: usualADCBits, At: at, Path: "printer.adc_bits"}
	p.AmbientC = Key[float64]{Value: usualAmbientC, At: at, Path: "printer.ambient_c"}
	n := &s.New
	n.PrintC = Key[[2]float64]{Value: [2]float64{190, 250}, At: at, Path: "new.print_c"}
	n.Heater.Kind.At, n.Heater.DutyLimit.Value = at, 1
	n.Sensor.Kind.At = at
	n.Fan.AlwaysOn.At = at
	n.Fan.OnAboveC = Key[float64]{Value: usualFanOnC, At: at, Path: "new.fan.on_above_c"}
	return s
}

package sections

import (
	"fmt"

	"preflash/parser"
)

// What the firmware assumes where an option is absent, and what it is built
// with, as it is published.
const (
	oversample      = 8   // readings in one temperature
	usualMaxPower   = 1.0 // share of full power
	usualMinExtrude = 170 // °C
	usualSmoothing  = 1   // s
	usualBand       = 2   // K
	usualFanStart   = 50  // °C
	usualPush       = 50  // mm
)

// build fills the printer and the remarks that depend on it.
func (c *config) build() {
	p := &parser.Printer{Style: c.style.Name(), Tool: c.tool, Files: c.files}
	c.printer = p
	c.ownSensors()
	hotend := hotendName(c.tool)
	if c.byName[hotend] == nil {
		c.remark(parser.RemarkMismatch, parser.Span{},
			"correct printer.tool, which is %d: the configuration has no [%s]", c.tool, hotend)
	}
	heater := c.heaterOf(hotend)
	presets, advances := c.inMacros(heater, hotend)
	p.Limits = c.limits(heater)
	p.Limits.Presets = presets
	p.Hotend = c.hotend(heater, p.Limits.MaxTemp)
	p.Bed = c.bed()
	p.ColdSide = c.coldSide(heater)
	p.Flow = c.flow(hotend, advances)
	p.Geometry = c.geometry()
	p.Storage.On = parser.Setting[bool]{Key: parser.StorageOn, State: parser.Off}
	c.remarkHidden()
	c.remarkRefused()
	c.remarkDefault()
	c.remarkUnrecognised()
	p.Remarks = c.remarks
}

// heaterOf is the section that holds the heater of a hotend: its own, except
// where it melts with the heater of another one.
func (c *config) heaterOf(hotend string) string {
	if shared, ok := c.value(hotend, "shared_heater"); ok && c.byName[shared] != nil {
		return shared
	}
	return hotend
}

func (c *config) limits(heater string) parser.Limits {
	var l parser.Limits
	l.MinTemp = c.required(parser.MinTemp, heater, "min_temp", atLeast(-zeroC))
	above := anything
	if l.MinTemp.Known() {
		above.above = l.MinTemp.Value
	}
	l.MaxTemp = c.required(parser.MaxTemp, heater, "max_temp", above)
	l.Margin = parser.Setting[float64]{Key: parser.Margin, State: parser.Default}

	within := anything
	if l.MinTemp.Known() && l.MaxTemp.Known() {
		within.min, within.max = l.MinTemp.Value, l.MaxTemp.Value
	}
	l.MinExtrude = c.optional(parser.MinExtrude, heater, "min_extrude_temp", usualMinExtrude, within)
	m := &l.MinExtrude
	l.ColdGuard = parser.Setting[bool]{
		Key: parser.ColdGuard, Value: true, State: m.State,
		Place: m.Place, Name: m.Name, Hides: m.Hides, Why: m.Why,
	}
	if m.Known() && m.Value <= 0 {
		l.ColdGuard.Value, l.ColdGuard.State = false, parser.Off
	}
	return l
}

func (c *config) hotend(heater string, maxTemp parser.Setting[float64]) parser.Hotend {
	h := parser.Hotend{
		Sensor:      c.sensor(parser.HotendSensor, heater),
		Oversample:  oversample,
		CustomCubic: true, // three points make one
		Loop:        c.loop(heater),
	}
	if h.Sensor.Value.Form != parser.FormAmplifier {
		h.PullupOhm = c.read(pullup(parser.HotendPullup, heater))
	}
	h.Watch = c.watch(heater, hotendWatch, maxTemp)
	return h
}

func (c *config) loop(heater string) parser.Loop {
	share := positive
	share.max = 1
	l := parser.Loop{
		Form:    parser.LoopClamped,
		Control: c.control(heater),
		SmoothS: c.optional(parser.DerivativeTime, heater, "smooth_time", usualSmoothing, positive),
		PowerLimits: []parser.Setting[float64]{
			c.optional(parser.PowerLimit("heater"), heater, "max_power", usualMaxPower, share),
		},
	}
	switch l.Control.Value {
	case parser.ControlOnOff:
		l.BandC = c.optional(parser.OnOffBand, heater, "max_delta", usualBand, positive)
	case parser.ControlModel:
		l.ModelPowerW = c.required(parser.ModelPower, heater, "heater_power", positive)
	default:
		l.Kp = c.required(parser.GainP, heater, "pid_kp", anything)
		l.Ki = c.required(parser.GainI, heater, "pid_ki", anything)
		l.Kd = c.required(parser.GainD, heater, "pid_kd", anything)
	}
	return l
}

func (c *config) control(heater string) parser.Setting[parser.Control] {
	s := parser.Setting[parser.Control]{Key: parser.LoopControl}
	if adopt(c, &s, heater, "control") == nil {
		if s.State != parser.Unknown {
			s.State = parser.Unknown
			s.At = c.headingSpan(heater)
			s.Why = fmt.Sprintf("[%s] has no control, and the firmware does not start without it", heater)
		}
		return s
	}
	switch s.Written {
	case "pid":
		s.Value = parser.ControlPID
	case "watermark":
		s.Value = parser.ControlOnOff
	case "mpc":
		s.Value = parser.ControlModel
	default:
		s.State = parser.Unknown
		s.Why = fmt.Sprintf("%s is %s, which Preflash does not know", s.Name, quoted(s.Written))
	}
	return s
}

const bedHeater = "heater_bed"

func (c *config) bed() parser.Bed {
	b := parser.Bed{Heated: parser.Setting[bool]{Key: parser.BedHeated, State: parser.Off}}
	if c.byName[bedHeater] == nil {
		return b
	}
	b.Heated.Value, b.Heated.State = true, parser.Set
	b.Heated.At, b.Heated.Name = c.headingSpan(bedHeater), "["+bedHeater+"]"
	b.Heated.Written = bedHeater
	b.Sensor = c.sensor(parser.BedSensor, bedHeater)
	maxTemp := c.required(noKey, bedHeater, "max_temp", anything)
	b.Watch = c.watch(bedHeater, bedWatch, maxTemp)
	return b
}

// flow reads what belongs to filament and melt. The firmware has no limit of
// the flow by volume.
func (c *config) flow(hotend string, advances []parser.Setting[float64]) parser.Flow {
	f := parser.Flow{
		NozzleMM:   c.required(parser.NozzleDiameter, hotend, "nozzle_diameter", positive),
		FilamentMM: c.required(parser.FilamentWidth, hotend, "filament_diameter", positive),
		MaxMM3PerS: parser.Setting[float64]{Key: parser.MaxFlow, State: parser.Off},
		PushMM: c.optional(
			parser.LongestPush, hotend, "max_extrude_only_distance", usualPush, atLeast(0)),
		CrossMM2: c.optional(parser.LineSection, hotend, "max_extrude_cross_section", 0, positive),
		CarriedOver: []parser.Setting[float64]{
			c.optional(parser.Carried("pressure advance"), hotend, "pressure_advance", 0, atLeast(0)),
		},
	}
	if f.CrossMM2.State == parser.Default {
		// Four times the nozzle's diameter squared, whatever the nozzle.
		f.CrossMM2 = parser.Setting[float64]{}
	}
	if c.byName["firmware_retraction"] != nil {
		length := func(name, option string) parser.Setting[float64] {
			return c.optional(parser.Carried(name), "firmware_retraction", option, 0, atLeast(0))
		}
		f.CarriedOver = append(f.CarriedOver,
			length("retract length", "retract_length"),
			length("extra length after retract", "unretract_extra_length"))
	}
	f.CarriedOver = append(f.CarriedOver, advances...)
	f.CarriedOver = append(f.CarriedOver, c.loadLengths()...)
	return f
}

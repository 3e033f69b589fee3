package sections

import (
	"math"
	"strings"

	"preflash/parser"
)

// watchKind is what differs between the watches of hotend and bed.
type watchKind struct {
	parser.WatchKeys
	usual parser.WatchFigures
}

// The figures are those that the firmware assumes, as it is published.
var (
	hotendWatch = watchKind{parser.HotendWatch,
		parser.WatchFigures{RiseC: 2, HeatingWindowS: 20, HysteresisC: 5, ErrorSumCS: 120}}
	bedWatch = watchKind{parser.BedWatch,
		parser.WatchFigures{RiseC: 2, HeatingWindowS: 60, HysteresisC: 5, ErrorSumCS: 120}}
)

// watchSection is the section of a heater's watch: it goes by the last word of
// the heater's section.
func watchSection(heater string) string {
	return "verify_heater " + heater[strings.LastIndexByte(heater, ' ')+1:]
}

// blindS is how long a watch may let a heater burn before it counts as none.
const blindS = 3600

// watch reads the watch of one heater. It cannot be left out, only made
// blind.
func (c *config) watch(heater string, kind watchKind, maxTemp parser.Setting[float64]) parser.Watch {
	w := parser.Watch{Form: parser.WatchSum, Usual: kind.usual, CanTurnOn: true}
	section := watchSection(heater)
	read := func(key parser.Key, option string, usual float64, demand demand) parser.Setting[float64] {
		return c.read(numberOption{
			key: key, section: section, option: option, usual: usual,
			optional: true, implied: true, demand: demand,
		})
	}
	w.RiseC = read(kind.Rise, "heating_gain", kind.usual.RiseC, positive)
	w.HeatingWindowS = read(kind.HeatingWindow, "check_gain_time", kind.usual.HeatingWindowS, atLeast(1))
	w.HysteresisC = read(kind.Hysteresis, "hysteresis", kind.usual.HysteresisC, atLeast(0))
	w.ErrorSumCS = read(kind.ErrorSum, "max_error", kind.usual.ErrorSumCS, atLeast(0))

	w.On = parser.Setting[bool]{Key: kind.On, State: parser.Default, Value: true, Name: "[" + section + "]"}
	if c.byName[heater] == nil {
		w.On = parser.Setting[bool]{
			Key: kind.On, State: parser.Unknown, Why: "there is no [" + heater + "]",
			Place: parser.Place{At: c.nowhere()},
		}
		return w
	}
	if b := c.blinding(&w, maxTemp); len(b) > 0 {
		w.On.Value, w.On.State, w.On.Place, w.On.Name = false, parser.Off, b[0].Place, b[0].Name
	}
	return w
}

// blinding lists the figures of a watch that make it trip never, or after more
// than an hour.
func (c *config) blinding(
	w *parser.Watch, maxTemp parser.Setting[float64],
) (list []*parser.Setting[float64]) {
	hottest := 500.0 // °C, above what any heater of this kind reaches, where the limit is not known
	if maxTemp.Known() {
		hottest = maxTemp.Value
	}
	for _, f := range []struct {
		setting *parser.Setting[float64]
		most    float64
	}{
		{&w.HysteresisC, hottest},         // no shortfall is ever above it
		{&w.ErrorSumCS, hottest * blindS}, // even a stone-cold sensor adds up less in an hour
		{&w.HeatingWindowS, blindS},       // nothing adds up while the first window lasts
	} {
		if f.setting.State == parser.Set && f.setting.Value >= f.most || endless(f.setting) {
			list = append(list, f.setting)
		}
	}
	return list
}

// endless reports whether a figure is written as infinity or as no number,
// which the firmware accepts and with which no comparison holds.
func endless(s *parser.Setting[float64]) bool {
	v, ok := number(s.Written)
	return ok && (math.IsInf(v, 1) || math.IsNaN(v))
}

// knownToWatch reports whether an option belongs in a watch section.
func knownToWatch(key string) bool {
	switch key {
	case "heating_gain", "check_gain_time", "hysteresis", "max_error":
		return true
	}
	return false
}

// soundsLikeGuard reports whether a folded name looks like something that
// guards a heater, or that stops a guard.
func soundsLikeGuard(name string) bool {
	for _, word := range [...]string{
		"runaway", "protect", "verify", "watchdog", "ignore_limit", "disable_check", "skip_check",
		"no_check", "unsafe", "danger", "failsafe", "thermal",
	} {
		if strings.Contains(name, word) {
			return true
		}
	}
	return false
}

const seemsGuard = "looks like a protection, or like a way round one, " +
	"and is none that Preflash knows; see what it does"

// remarkUnrecognised names what looks like a protection, or like a way round
// one, and is none that Preflash knows.
func (c *config) remarkUnrecognised() {
	heaters := c.heaters()
	for _, s := range c.sections {
		kind := s.kind
		switch {
		case kind == "gcode_macro" || kind == "menu" || kind == "output_pin" || kind == "display_template":
			continue // most sections, and none of them guards anything
		case kind == "verify_heater":
			c.remarkWatch(s, heaters)
			continue
		case soundsLikeGuard(strings.ToLower(kind)):
			if len(s.headers) > 0 {
				h := s.headers[0]
				at := parser.Span{File: h.file, Start: h.name, End: h.name + len(s.name)}
				c.remark(parser.RemarkUnrecognised, at, "[%s] "+seemsGuard, s.name)
			}
		case !strings.HasPrefix(kind, "extruder") && !strings.HasPrefix(kind, "heater") &&
			kind != "printer" && kind != "mcu":
			continue
		}
		for _, i := range s.options {
			o := &c.options[i]
			if key := fold(c.keyOf(o)); soundsLikeGuard(key) && !o.hidden {
				c.remark(parser.RemarkUnrecognised, o.keySpan(), "%s in [%s] "+seemsGuard, key, s.name)
			}
		}
	}
}

// remarkWatch looks at one watch section.
func (c *config) remarkWatch(s *section, heaters map[string]bool) {
	name := strings.Join(strings.Fields(s.own), " ")
	if len(s.headers) > 0 {
		h := s.headers[0]
		at := parser.Span{File: h.file, Start: h.name, End: h.name + len(s.name)}
		switch {
		case !heaters[name]:
			c.remark(parser.RemarkUnrecognised, at, "correct the name of [%s]: "+
				"no heater of this configuration is called so, "+
				"and the firmware does not start with it", s.name)
		case s.name != watchSection(name):
			c.remark(parser.RemarkUnrecognised, at, "write the name of [%s] with one space: "+
				"it is a second protection beside [%s], which goes on with figures of its own",
				s.name, watchSection(name))
		}
	}
	for _, i := range s.options {
		o := &c.options[i]
		if key := fold(c.keyOf(o)); !knownToWatch(key) && !o.hidden {
			c.remark(parser.RemarkUnrecognised, o.keySpan(),
				"%s is no option of the runaway protection that Preflash knows; see what it does", key)
		}
	}
}

// heaters are the names of the heaters: the last words of their sections' names.
func (c *config) heaters() map[string]bool {
	names := make(map[string]bool)
	for _, s := range c.sections {
		if isHotend(s.kind) || s.kind == bedHeater || s.kind == "heater_generic" {
			if words := strings.Fields(s.name); len(words) > 0 {
				names[words[len(words)-1]] = true
			}
		}
	}
	return names
}

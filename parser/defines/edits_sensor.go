package defines

import (
	"fmt"
	"strconv"

	"preflash/parser"
)

// setSensor writes a sensor definition: a number, or number 1000 and the
// options that describe it.
func (p *plan) setSensor(s *slot, def parser.SensorDef) error {
	to := &slot{key: s.key, name: s.name, near: s.near}
	if def.Form == parser.FormBeta {
		if n, ok := p.namedNumber(def); !ok || n == customSensor {
			return p.setCustom(s, to, def)
		}
	}
	number, ok := p.namedNumber(def)
	if !ok {
		return fmt.Errorf("this firmware has no numbered definition for it; use a custom one")
	}
	return p.set(to, float64(number))
}

// namedNumber gives the number of a definition that is named by it.
func (p *plan) namedNumber(def parser.SensorDef) (int, bool) {
	number, err := strconv.Atoi(def.Name)
	if err != nil {
		return 0, false
	}
	d, ok := p.basis.definition(number)
	return number, ok && d.Form == def.Form
}

// takesCustom is nil where the firmware is known to read definition 1000 with
// the figures of def.
func (p *plan) takesCustom(s *slot, def *parser.SensorDef) error {
	known := p.gen >= gen20
	for _, o := range &customOptions {
		known = known || len(p.s.mentions(s.heater+o.suffix)) > 0
	}
	if !known {
		return fmt.Errorf("nothing shows that this firmware knows a custom sensor (%s 1000): "+
			"it is too old, or the file with %s_BETA is not named in the sheet", s.name, s.heater)
	}
	if def.CubicC != 0 && !readsCubic(p.s, p.basis, s.heater) {
		return fmt.Errorf("nothing shows that this firmware reads %s, "+
			"without which the curve cannot be written; use a newer firmware", s.heater+cubicSuffix)
	}
	for _, o := range &customOptions {
		if x := *o.of(def); x != 0 && (x < o.least || x > o.most) {
			return fmt.Errorf("the custom sensor would need %s%s %g, and this firmware takes %g to %g",
				s.heater, o.suffix, x, o.least, o.most)
		}
	}
	return nil
}

// setCustom writes definition 1000 and its options, which often stand in a branch
// that is read only once the number is 1000.
func (p *plan) setCustom(s, to *slot, def parser.SensorDef) error {
	if err := p.takesCustom(s, &def); err != nil {
		return err
	}
	if err := p.set(to, customSensor); err != nil {
		return err
	}
	var near []string
	for _, o := range &customOptions {
		near = append(near, s.heater+o.suffix)
	}
	near = append(near, s.name)
	var beside *define // one that waits for its branch to be read
	for _, o := range &customOptions {
		if waits := p.waiting(s.heater + o.suffix); len(waits) > 0 {
			beside = waits[0]
		}
	}
	for _, o := range &customOptions {
		name, value := s.heater+o.suffix, *o.of(&def)
		m, waits := p.s.macro(name), p.waiting(s.heater+o.suffix)
		there := m.state == parser.Yes || len(waits) > 0 && !waits[0].commentedOut
		switch {
		case o.suffix == cubicSuffix && value == 0 && !there:
			continue // absent is 0
		case o.suffix == customOptions[0].suffix && value == 0:
			if there {
				continue // the printer's own pull-up stands there
			}
			value = commonPullup
		}
		switch {
		case m.state == parser.No && len(waits) == 0 && beside != nil:
			p.insertLine(beside.line, "#define "+name+" "+literal("", value))
		case m.state != parser.No || len(waits) == 0:
			if err := p.set(&slot{name: name, near: near}, value); err != nil {
				return err
			}
		case len(waits) > 1:
			return parser.Errorf(waits[1].at, "%s stands in several branches that are not read now, "+
				"as at %s; write the custom sensor by hand", name, waits[0].at)
		default:
			if d := waits[0]; d.commentedOut {
				p.replace(d.uncomment, "")
			}
			p.setBody(waits[0], literal(waits[0].value(), value))
		}
	}
	return nil
}

// waiting returns the defines of an option that stand in branches which are not
// read: those in use there, else those that are commented out.
func (p *plan) waiting(name string) (list []*define) {
	for _, commented := range []bool{false, true} {
		for _, d := range p.s.mentions(name) {
			if d.reached != parser.No || d.commentedOut != commented || d.function {
				continue
			}
			if !commented || d.revivable() {
				list = append(list, d)
			}
		}
		if list != nil {
			break
		}
	}
	return list
}

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

// setCustom writes definition 1000. Its options often stand in a branch that
// is read only once the number is 1000, so they are looked up in the files as
// they are after that edit.
func (p *plan) setCustom(s, to *slot, def parser.SensorDef) error {
	known := p.gen >= gen20
	for _, o := range &customOptions {
		known = known || len(p.s.mentions(s.heater+o.suffix)) > 0
	}
	if !known {
		return fmt.Errorf("nothing shows that this firmware knows a custom sensor (%s 1000): it is too old, or the file with %s_BETA is not named in the sheet", s.name, s.heater)
	}
	if def.CubicC != 0 && !readsCubic(p.s, p.basis, s.heater) {
		return fmt.Errorf("nothing shows that this firmware reads %s, without which the curve cannot be written; use a newer firmware", s.heater+cubicSuffix)
	}
	for _, o := range &customOptions {
		if x := *o.of(&def); x != 0 && (x < o.least || x > o.most) {
			return fmt.Errorf("the custom sensor would need %s%s %g, and this firmware takes %g to %g", s.heater, o.suffix, x, o.least, o.most)
		}
	}
	first := &plan{config: p.config, key: p.key}
	if err := first.set(to, customSensor); err != nil {
		return err
	}
	numberEdits, err := p.merged(first.edits)
	if err != nil {
		return err
	}
	after := p.config
	if len(numberEdits) > 0 {
		if after, err = p.with(numberEdits); err != nil {
			return err
		}
	}
	second := &plan{config: after, key: p.key}
	var near []string
	for _, o := range &customOptions {
		near = append(near, s.heater+o.suffix)
	}
	near = append(near, s.name)
	for _, o := range &customOptions {
		name, value := s.heater+o.suffix, *o.of(&def)
		m := after.s.macro(name)
		switch {
		case o.suffix == cubicSuffix && value == 0 && m.state == parser.No:
			continue // absent is 0
		case o.suffix == customOptions[0].suffix && value == 0:
			if m.state == parser.Yes {
				continue // the printer's own pull-up stands there
			}
			value = commonPullup
		}
		if err := second.set(&slot{name: name, near: near}, value); err != nil {
			return err
		}
	}
	p.edits = append(p.edits, numberEdits...)
	for _, e := range second.edits {
		at, err := p.before(e.At, numberEdits)
		if err != nil {
			return err
		}
		p.edits = append(p.edits, parser.Edit{At: at, New: e.New, For: p.key})
	}
	return nil
}

// before takes a span of the files after some edits back to the files before.
func (p *plan) before(at parser.Span, edits []parser.Edit) (parser.Span, error) {
	for _, f := range p.s.files {
		if f.Path != at.File.Path {
			continue
		}
		shift := 0
		for _, e := range edits {
			if e.At.File != f || at.Start < e.At.Start+shift {
				continue
			}
			if at.Start < e.At.Start+shift+len(e.New) {
				return at, fmt.Errorf("%s: the custom sensor's options cannot be written here; write them by hand", at)
			}
			shift += len(e.New) - (e.At.End - e.At.Start)
		}
		return parser.Span{File: f, Start: at.Start - shift, End: at.End - shift}, nil
	}
	return at, fmt.Errorf("%s: the file is read only after the change; write the custom sensor by hand", at)
}

package sections

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"preflash/parser"
)

// sensorDef gives a heater another sensor definition, and takes out the options
// that do not belong beside it.
func (e *editor) sensorDef(s parser.Description, def parser.SensorDef) error {
	section, option := spelling(s)
	if section == "" {
		return e.cannot(s, "it is no sensor")
	}
	if err := e.define(s, section, option, def); err != nil {
		return err
	}
	control, _ := e.value(section, "control")
	e.clear(s.Key, section, &def, control)
	return nil
}

// define writes a definition: a built-in type by name, or a section of its own.
func (e *editor) define(s parser.Description, section, option string, def parser.SensorDef) error {
	for i := range builtIns {
		if b := &builtIns[i]; b.name == def.Name && sameDefinition(b.def(), def) {
			return e.write(s, section, option, b.name)
		}
	}
	switch def.Form {
	case parser.FormPoints, parser.FormBeta:
	default:
		return e.cannot(s, "the firmware has no built-in type %s, and it is none that can be written out",
			quoted(cmp.Or(def.Name, def.Curve)))
	}
	lines, kind, err := figures(def)
	if err != nil {
		return e.cannot(s, "%v", err)
	}
	name, there := e.newName(s.Key, section, def)
	if name == "" {
		return e.cannot(s, "more than %d sensor definitions have the name that it would get; "+
			"give the new one another", mostNames)
	}
	if !there {
		owner := e.byName[section]
		if owner == nil || len(owner.headers) == 0 {
			return e.cannot(s, "there is no [%s] to put its definition before", section)
		}
		a := e.before(owner)
		text := a.indent + "[" + kind + " " + name + "]" + a.eol
		for _, l := range lines {
			text += a.line(l[0], l[1])
		}
		e.put(s.Key, a, text+a.eol, e.nextSection())
	}
	return e.write(s, section, option, name)
}

// figures are the options that write a definition out, and the kind of section
// that they belong in.
func figures(def parser.SensorDef) (lines [][2]string, kind string, err error) {
	kind = "thermistor"
	switch {
	case def.Form == parser.FormBeta && def.CubicC != 0:
		return nil, "", fmt.Errorf("a thermistor of this style takes three points, or a plain Beta")
	case def.Form == parser.FormBeta:
		return [][2]string{
			{"temperature1", "25"},
			{"resistance1", parser.Decimal(def.R25Ohm)},
			{"beta", parser.Decimal(def.BetaK)},
		}, kind, nil
	case def.Join == parser.JoinOhm:
		kind = "adc_temperature"
	case len(def.Points) != 3:
		return nil, "", fmt.Errorf("a thermistor of this style takes three points, not %d", len(def.Points))
	}
	for i, p := range def.Points {
		n := strconv.Itoa(i + 1)
		lines = append(lines,
			[2]string{"temperature" + n, parser.Decimal(p.TempC)},
			[2]string{"resistance" + n, parser.Decimal(p.Ohm)})
	}
	return lines, kind, nil
}

const mostNames = 100

// newName chooses the name of a new definition that a section uses, and says whether one with the
// same figures is there already. It gives up where far too many are taken.
func (e *editor) newName(key parser.Key, user string, def parser.SensorDef) (name string, there bool) {
	base := strings.Join(strings.FieldsFunc(def.Name, func(r rune) bool {
		return r != '-' && r != '_' && r != '.' &&
			(r < '0' || r > '9') && (r < 'A' || r > 'Z') && (r < 'a' || r > 'z')
	}), "_")
	if base == "" {
		base = strings.ReplaceAll("new "+string(key), " ", "_")
	}
	for n := 1; ; n++ {
		name = base
		switch {
		case n > mostNames:
			return "", false
		case n > 1:
			name += "_" + strconv.Itoa(n)
		}
		is := e.sensorType(name, user)
		switch {
		case sameDefinition(is, def):
			return name, true
		case e.byName["thermistor "+name] == nil && e.byName["adc_temperature "+name] == nil &&
			is.Form == parser.FormUnknown:
			return name, false
		}
	}
}

// sameDefinition reports whether two definitions read a sensor alike.
func sameDefinition(a, b parser.SensorDef) bool {
	return a.Form == b.Form && a.Kind == b.Kind && a.Curve == b.Curve && a.Join == b.Join &&
		a.R25Ohm == b.R25Ohm && a.BetaK == b.BetaK && a.CubicC == b.CubicC && slices.Equal(a.Points, b.Points)
}

package defines

import "preflash/parser"

// modelList is a list of the model-based control: one element for each hotend.
func (r *reader) modelList(key parser.Key, name string, near ...string) parser.Setting[float64] {
	return r.number(numberSpelling{
		key: key, names: []string{name}, list: true, element: r.hotend, near: near,
	})
}

// loop reads how the hotend is driven.
func (r *reader) loop() parser.Loop {
	l := parser.Loop{Form: parser.LoopRange, Control: r.control()}
	powers := func(kind, name string, near ...string) {
		l.PowerLimits = append(l.PowerLimits, r.number(numberSpelling{
			key: parser.PowerLimit(kind), names: []string{name}, unit: unitCounts,
			round: roundDown, absent: absentDefault, usual: 1, near: near,
		}))
	}
	switch l.Control.Value {
	case parser.ControlPID, parser.ControlOpen:
		r.gains(&l)
		l.RangeC = r.number(numberSpelling{
			key: parser.FunctionalRange, names: []string{"PID_FUNCTIONAL_RANGE"},
			absent: absentDefault, usual: 10, near: []string{"PID_MAX", "BANG_MAX", "PIDTEMP"},
		})
		l.FilterOld = r.number(numberSpelling{
			key: parser.DerivativeShare, names: []string{"PID_K1", "K1"}, absent: absentDefault,
			usual: 0.95, near: []string{"PID_MAX", "BANG_MAX", "PIDTEMP"},
		})
		b := r.basis
		l.Variants = loopVariants(b)
		if r.any(ownGains) == parser.No {
			l.Shared = r.hotends
		}
		powers("in range", "PID_MAX", "BANG_MAX", "PIDTEMP")
		if b.may(older) {
			// Only there another option limits below the functional range.
			powers("below range", "BANG_MAX", "PID_MAX", "PIDTEMP")
		}
	case parser.ControlOnOff:
		l.BandC = parser.Setting[float64]{Key: parser.OnOffBand, State: parser.Default}
		powers("on/off", "BANG_MAX", "PID_MAX")
	case parser.ControlModel:
		powers("model", "MPC_MAX", "MPC_HEATER_POWER", "MPCTEMP")
		l.ModelPowerW = r.modelList(parser.ModelPower, "MPC_HEATER_POWER", "MPC_MAX", "MPCTEMP")
		if r.on("MPC_PTC") == parser.Yes {
			l.ModelRefC = r.modelList(parser.ModelRefTemp,
				"MPC_HEATER_REFTEMP", "MPC_HEATER_ALPHA", "MPC_HEATER_POWER")
		}
	}
	return l
}

// ownGains say that each hotend has gains of its own.
var ownGains = []string{"PID_PARAMS_PER_HOTEND", "PID_PARAMS_PER_EXTRUDER"}

// loopVariants are the ways in which a basis runs its PID loop, as the style's
// firmware publishes it: the boards' converters and platforms differ in how
// often they read (0.164 s on those of 8 bits goes for 0.16 s).
func loopVariants(b basis) []parser.LoopVariant {
	var list []parser.LoopVariant
	if b.may(older) {
		list = append(list, parser.LoopVariant{
			Name: "older", OwnFar: true, SamplesS: []float64{0.16, 0.08, 0.01},
		})
	}
	if b.may(newer) {
		list = append(list, parser.LoopVariant{
			Name: "newer", KeepsLast: true, SamplesS: []float64{0.16, 0.01},
		})
	}
	return list
}

// control tells PID, model-based and on/off control apart.
func (r *reader) control() parser.Setting[parser.Control] {
	s := parser.Setting[parser.Control]{Key: parser.LoopControl, Name: "PIDTEMP"}
	for _, c := range [...]struct {
		name    string
		control parser.Control
	}{{"MPCTEMP", parser.ControlModel}, {"PIDTEMP", parser.ControlPID}} {
		m := r.s.macro(c.name)
		on := r.enabled(c.name, m)
		if on == parser.No {
			continue
		}
		s.Name, s.Value = c.name, c.control
		switch {
		case !fillFrom(r, &s, m):
		case on == parser.Maybe:
			s.State, s.Why = parser.Unknown, r.unsettled(m.winner)
		case c.control == parser.ControlPID:
			r.openLoop(&s)
		}
		return s
	}
	s.Value, s.State = parser.ControlOnOff, parser.Default
	s.Place = r.telling(s.Name, r.s.macro(s.Name))
	return s
}

// openLoop takes in an option that leaves PID control out: the target is the
// output, 0 to PID_MAX, as the older generation publishes it. The newer one
// does not compile with it.
func (r *reader) openLoop(s *parser.Setting[parser.Control]) {
	const name = "PID_OPENLOOP"
	m := r.s.macro(name)
	on := r.enabled(name, m)
	if on == parser.No {
		return
	}
	s.Name, s.Value = name, parser.ControlOpen
	s.Hides = nil
	if fillFrom(r, s, m) && on == parser.Maybe {
		s.State, s.Why = parser.Unknown, r.unsettled(m.winner)
	}
}

// gainNames are the spellings of each gain: the newer first, and for each the
// list for several hotends before the single value.
var gainNames = [...]struct {
	key                                parser.Key
	newList, oldList, newName, oldName string
}{
	{parser.GainP, "DEFAULT_KP_LIST", "DEFAULT_Kp_LIST", "DEFAULT_KP", "DEFAULT_Kp"},
	{parser.GainI, "DEFAULT_KI_LIST", "DEFAULT_Ki_LIST", "DEFAULT_KI", "DEFAULT_Ki"},
	{parser.GainD, "DEFAULT_KD_LIST", "DEFAULT_Kd_LIST", "DEFAULT_KD", "DEFAULT_Kd"},
}

// gains reads the PID gains, per 255 duty counts in every generation.
func (r *reader) gains(l *parser.Loop) {
	lists := r.any(ownGains) == parser.Yes
	for i, to := range [...]*parser.Setting[float64]{&l.Kp, &l.Ki, &l.Kd} {
		g := &gainNames[i]
		f := numberSpelling{
			key: g.key, names: []string{g.newName, g.oldName},
			near: []string{"PID_FUNCTIONAL_RANGE", "PIDTEMP"},
		}
		if lists {
			f.names = []string{g.newList, g.oldList, g.newName, g.oldName}
			f.list, f.element, f.repeats = true, r.hotend, true
		}
		if r.gen < genAbove {
			// The newer names would be read by no firmware of this age.
			swapPairs(f.names)
		}
		*to = r.number(f)
	}
}

// swapPairs puts the second of each pair first.
func swapPairs(names []string) {
	for i := 0; i+1 < len(names); i += 2 {
		names[i], names[i+1] = names[i+1], names[i]
	}
}

package defines

import "preflash/parser"

// watchSpelling is how the runaway protection of one heater is spelled.
type watchSpelling struct {
	keys parser.WatchKeys

	// From gen11 on.
	on, dropPeriod, hysteresis, heatingWindow, rise string
	// gen10: a period that is defined and not 0 is the switch.
	oldPeriod, oldHysteresis string
	arm                      string
	near                     []string // relatives of the switch

	usual, oldUsual parser.WatchFigures
}

// The usual figures from gen11 on are those that both published firmwares ship
// with; those of gen10 are from memory.
var (
	hotendWatch = watchSpelling{
		keys:          parser.HotendWatch,
		on:            "THERMAL_PROTECTION_HOTENDS",
		dropPeriod:    "THERMAL_PROTECTION_PERIOD",
		hysteresis:    "THERMAL_PROTECTION_HYSTERESIS",
		heatingWindow: "WATCH_TEMP_PERIOD",
		rise:          "WATCH_TEMP_INCREASE",
		oldPeriod:     "THERMAL_RUNAWAY_PROTECTION_PERIOD",
		oldHysteresis: "THERMAL_RUNAWAY_PROTECTION_HYSTERESIS",
		arm:           "TEMP_HYSTERESIS",
		near: []string{
			"THERMAL_PROTECTION_BED", "THERMAL_PROTECTION_CHAMBER",
			"PREVENT_LENGTHY_EXTRUDE", "EXTRUDE_MINTEMP", "TEMP_SENSOR_0",
		},
		usual:    parser.WatchFigures{RiseC: 2, HeatingWindowS: 40, HysteresisC: 4, DropPeriodS: 40},
		oldUsual: parser.WatchFigures{RiseC: 10, HeatingWindowS: 40, HysteresisC: 4, DropPeriodS: 40},
	}
	bedWatch = watchSpelling{
		keys:          parser.BedWatch,
		on:            "THERMAL_PROTECTION_BED",
		dropPeriod:    "THERMAL_PROTECTION_BED_PERIOD",
		hysteresis:    "THERMAL_PROTECTION_BED_HYSTERESIS",
		heatingWindow: "WATCH_BED_TEMP_PERIOD",
		rise:          "WATCH_BED_TEMP_INCREASE",
		oldPeriod:     "THERMAL_RUNAWAY_PROTECTION_BED_PERIOD",
		oldHysteresis: "THERMAL_RUNAWAY_PROTECTION_BED_HYSTERESIS",
		arm:           "TEMP_BED_HYSTERESIS",
		near: []string{
			"THERMAL_PROTECTION_HOTENDS", "THERMAL_PROTECTION_CHAMBER",
			"PREVENT_LENGTHY_EXTRUDE", "EXTRUDE_MINTEMP", "TEMP_SENSOR_BED",
		},
		usual:    parser.WatchFigures{RiseC: 2, HeatingWindowS: 180, HysteresisC: 2, DropPeriodS: 180},
		oldUsual: parser.WatchFigures{HysteresisC: 2, DropPeriodS: 20},
	}
)

// watch reads the protection of one heater. From gen11 on the switch alone
// decides: a drop check period of 0 trips at once and switches nothing off, while a
// heating check window of 0 switches the heating check off.
func (r *reader) watch(spelling *watchSpelling) parser.Watch {
	if r.gen == gen10 {
		return r.oldWatch(spelling)
	}
	k := &spelling.keys
	w := parser.Watch{Form: parser.WatchWindow, Usual: spelling.usual}
	w.On = r.flag(k.On, []string{spelling.on}, spelling.near)
	w.CanTurnOn = r.gen >= gen11 || len(r.s.mentions(spelling.on)) > 0
	if len(r.s.mentions(spelling.on)) > 0 && len(r.s.mentions(spelling.oldPeriod)) > 0 && !stated(r.s) {
		// As after a newer option was copied into an old configuration, whose
		// firmware passes over it in silence.
		w.On.State, w.On.Value = parser.Unknown, false
		w.On.Why = spelling.oldPeriod + " is read by old firmware and " + spelling.on +
			" by newer, and these files do not say which they are for; remove the one that is not"
	}
	inForce := absentUnknown
	if w.On.State == parser.Off {
		inForce = absentOff // its figures stand in a branch that is not read
	}
	w.DropPeriodS = r.number(numberSpelling{
		key: k.DropPeriod, names: []string{spelling.dropPeriod}, round: roundUp,
		absent: inForce, near: []string{spelling.hysteresis, spelling.heatingWindow},
	})
	w.HysteresisC = r.number(numberSpelling{
		key: k.Hysteresis, names: []string{spelling.hysteresis}, round: roundUp,
		absent: inForce, near: []string{spelling.dropPeriod, spelling.heatingWindow},
	})
	w.HeatingWindowS = r.number(numberSpelling{
		key: k.HeatingWindow, names: []string{spelling.heatingWindow}, round: roundUp,
		absent: inForce, near: []string{spelling.rise, spelling.hysteresis, spelling.dropPeriod},
	})
	w.RiseC = r.number(numberSpelling{
		key: k.Rise, names: []string{spelling.rise}, round: roundNearest, absent: inForce,
		near: []string{spelling.heatingWindow, spelling.hysteresis, spelling.dropPeriod},
	})
	w.ArmMarginC = r.number(numberSpelling{key: k.ArmMargin, names: []string{spelling.arm}, round: roundUp})
	w.HeatingOn = r.heatingOn(spelling, &w)
	dim(&w)
	switch {
	case w.On.State == parser.Off:
		w.HeatingOn = parser.Setting[bool]{
			Key: k.HeatingOn, Name: spelling.heatingWindow, State: parser.Off, Place: w.On.Place,
		}
	case w.On.State == parser.Unknown && w.HeatingOn.State != parser.Off:
		w.HeatingOn.State, w.HeatingOn.Why = parser.Unknown, w.On.Why
	}
	return w
}

// heatingOn derives the switch of the heating check: a window that is defined and
// above 0.
func (r *reader) heatingOn(spelling *watchSpelling, w *parser.Watch) parser.Setting[bool] {
	s := parser.Setting[bool]{
		Key: spelling.keys.HeatingOn, Name: spelling.heatingWindow,
		Place: w.HeatingWindowS.Place, State: w.HeatingWindowS.State, Why: w.HeatingWindowS.Why,
	}
	r.slots = append(r.slots, slot{
		key: s.Key, kind: slotPeriod, name: s.Name, unit: windowUnit(r.gen),
		usual: w.Usual.HeatingWindowS, companion: spelling.rise, companionUsual: w.Usual.RiseC,
		near: []string{spelling.rise, spelling.hysteresis, spelling.dropPeriod},
	})
	switch {
	case s.State == parser.Set && w.HeatingWindowS.Value > 0:
		s.Value = true
	case s.State == parser.Set:
		s.State = parser.Off
	case r.s.macro(s.Name).state == parser.No && len(r.s.mentions(s.Name)) > 0:
		s.State, s.Why = parser.Off, ""
	}
	return s
}

// dim marks the figures of a heating check that is off as off, where none is in
// force: there is nothing that could not be told.
func dim(w *parser.Watch) {
	if w.HeatingOn.State != parser.Off {
		return
	}
	for _, s := range []*parser.Setting[float64]{&w.HeatingWindowS, &w.RiseC} {
		if s.State == parser.Unknown {
			s.State, s.Why = parser.Off, ""
		}
	}
}

// windowUnit is the unit of the heating check window.
func windowUnit(gen generation) unit {
	if gen == gen10 {
		return unitMillis
	}
	return unitPlain
}

// oldWatch reads the protection of gen10, whose two watches are independent.
func (r *reader) oldWatch(spelling *watchSpelling) parser.Watch {
	k := &spelling.keys
	w := parser.Watch{Form: parser.WatchWindow, Usual: spelling.oldUsual}
	w.CanTurnOn = len(r.s.mentions(spelling.oldPeriod)) > 0
	w.DropPeriodS = r.number(numberSpelling{
		key: k.DropPeriod, names: []string{spelling.oldPeriod}, round: roundUp,
		absent: absentOff, near: []string{spelling.oldHysteresis},
	})
	w.On = parser.Setting[bool]{
		Key: k.On, Name: spelling.oldPeriod, State: w.DropPeriodS.State,
		Place: w.DropPeriodS.Place, Hides: w.DropPeriodS.Hides, Why: w.DropPeriodS.Why,
	}
	r.slots = append(r.slots, slot{
		key: k.On, kind: slotPeriod, name: spelling.oldPeriod,
		usual: w.Usual.DropPeriodS, companion: spelling.oldHysteresis,
		companionUsual: w.Usual.HysteresisC, near: []string{spelling.oldHysteresis},
	})
	if w.On.State == parser.Set {
		if w.On.Value = w.DropPeriodS.Value > 0; !w.On.Value {
			w.On.State = parser.Off
		}
	}
	inForce := absentUnknown
	if w.On.State == parser.Off {
		inForce = absentOff
	}
	w.HysteresisC = r.number(numberSpelling{
		key: k.Hysteresis, names: []string{spelling.oldHysteresis},
		round: roundUp, absent: inForce, near: []string{spelling.oldPeriod},
	})
	if spelling == &bedWatch {
		// This generation has no heating check for the bed.
		w.HeatingOn = parser.Setting[bool]{Key: k.HeatingOn, State: parser.Off, Place: w.On.Place}
		return w
	}
	w.HeatingWindowS = r.number(numberSpelling{
		key: k.HeatingWindow, names: []string{spelling.heatingWindow},
		unit: unitMillis, round: roundUp, near: []string{spelling.rise},
	})
	w.RiseC = r.number(numberSpelling{
		key: k.Rise, names: []string{spelling.rise}, round: roundNearest,
		near: []string{spelling.heatingWindow},
	})
	if s := &w.HeatingWindowS; s.State == parser.Set && s.Value < 1 {
		s.State = parser.Unknown
		s.Why = s.At.String() + ": " + s.Name + " is “" + s.Written +
			"”; this generation counts it in milliseconds, and so short a window makes no sense"
	}
	w.HeatingOn = r.heatingOn(spelling, &w)
	dim(&w)
	// It arms two rises below the target: the margin makes up for the form.
	w.ArmMarginC = parser.Setting[float64]{
		Key: k.ArmMargin, Name: spelling.rise, State: parser.Default, Value: w.RiseC.Value - 1,
	}
	if !w.RiseC.Known() {
		w.ArmMarginC.State, w.ArmMarginC.Why = w.RiseC.State, w.RiseC.Why
	}
	return w
}

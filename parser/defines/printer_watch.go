package defines

import "preflash/parser"

// watchSpelling is how the runaway protection of one heater is spelled.
type watchSpelling struct {
	keys parser.WatchKeys

	// From gen11 on.
	on, hold, hysteresis, riseWindow, rise string
	// gen10: a period that is defined and not 0 is the switch.
	oldHold, oldHysteresis string
	arm                    string
	near                   []string // relatives of the switch

	usual, oldUsual parser.WatchFigures
}

// The usual figures from gen11 on are those that both published firmwares ship
// with; those of gen10 are from memory.
var (
	hotendWatch = watchSpelling{
		keys:          parser.HotendWatch,
		on:            "THERMAL_PROTECTION_HOTENDS",
		hold:          "THERMAL_PROTECTION_PERIOD",
		hysteresis:    "THERMAL_PROTECTION_HYSTERESIS",
		riseWindow:    "WATCH_TEMP_PERIOD",
		rise:          "WATCH_TEMP_INCREASE",
		oldHold:       "THERMAL_RUNAWAY_PROTECTION_PERIOD",
		oldHysteresis: "THERMAL_RUNAWAY_PROTECTION_HYSTERESIS",
		arm:           "TEMP_HYSTERESIS",
		near: []string{
			"THERMAL_PROTECTION_BED", "THERMAL_PROTECTION_CHAMBER",
			"PREVENT_LENGTHY_EXTRUDE", "EXTRUDE_MINTEMP", "TEMP_SENSOR_0",
		},
		usual:    parser.WatchFigures{RiseC: 2, RiseWindowS: 40, HysteresisC: 4, HoldPeriodS: 40},
		oldUsual: parser.WatchFigures{RiseC: 10, RiseWindowS: 40, HysteresisC: 4, HoldPeriodS: 40},
	}
	bedWatch = watchSpelling{
		keys:          parser.BedWatch,
		on:            "THERMAL_PROTECTION_BED",
		hold:          "THERMAL_PROTECTION_BED_PERIOD",
		hysteresis:    "THERMAL_PROTECTION_BED_HYSTERESIS",
		riseWindow:    "WATCH_BED_TEMP_PERIOD",
		rise:          "WATCH_BED_TEMP_INCREASE",
		oldHold:       "THERMAL_RUNAWAY_PROTECTION_BED_PERIOD",
		oldHysteresis: "THERMAL_RUNAWAY_PROTECTION_BED_HYSTERESIS",
		arm:           "TEMP_BED_HYSTERESIS",
		near: []string{
			"THERMAL_PROTECTION_HOTENDS", "THERMAL_PROTECTION_CHAMBER",
			"PREVENT_LENGTHY_EXTRUDE", "EXTRUDE_MINTEMP", "TEMP_SENSOR_BED",
		},
		usual:    parser.WatchFigures{RiseC: 2, RiseWindowS: 180, HysteresisC: 2, HoldPeriodS: 180},
		oldUsual: parser.WatchFigures{HysteresisC: 2, HoldPeriodS: 20},
	}
)

// watch reads the protection of one heater. From gen11 on the switch alone
// decides: a hold period of 0 trips at once and switches nothing off, while a
// rise window of 0 switches the heating check off.
func (r *reader) watch(spelling *watchSpelling) parser.Watch {
	if r.gen == gen10 {
		return r.oldWatch(spelling)
	}
	k := &spelling.keys
	w := parser.Watch{Form: parser.WatchWindow, Usual: spelling.usual}
	w.On = r.flag(k.On, []string{spelling.on}, spelling.near)
	w.CanTurnOn = r.gen >= gen11 || len(r.s.mentions(spelling.on)) > 0
	if len(r.s.mentions(spelling.on)) > 0 && len(r.s.mentions(spelling.oldHold)) > 0 && !stated(r.s) {
		// As after a newer option was copied into an old configuration, whose
		// firmware passes over it in silence.
		w.On.State, w.On.Value = parser.Unknown, false
		w.On.Why = spelling.oldHold + " is read by old firmware and " + spelling.on +
			" by newer, and these files do not say which they are for; remove the one that is not"
	}
	inForce := absentUnknown
	if w.On.State == parser.Off {
		inForce = absentOff // its figures stand in a branch that is not read
	}
	w.HoldPeriodS = r.number(numberSpelling{
		key: k.HoldPeriod, names: []string{spelling.hold}, round: roundUp,
		absent: inForce, near: []string{spelling.hysteresis, spelling.riseWindow},
	})
	w.HysteresisC = r.number(numberSpelling{
		key: k.Hysteresis, names: []string{spelling.hysteresis}, round: roundUp,
		absent: inForce, near: []string{spelling.hold, spelling.riseWindow},
	})
	w.RiseWindowS = r.number(numberSpelling{
		key: k.RiseWindow, names: []string{spelling.riseWindow}, round: roundUp,
		absent: inForce, near: []string{spelling.rise, spelling.hysteresis, spelling.hold},
	})
	w.RiseC = r.number(numberSpelling{
		key: k.Rise, names: []string{spelling.rise}, round: roundNearest, absent: inForce,
		near: []string{spelling.riseWindow, spelling.hysteresis, spelling.hold},
	})
	w.ArmMarginC = r.number(numberSpelling{key: k.ArmMargin, names: []string{spelling.arm}, round: roundUp})
	w.RiseOn = r.riseOn(spelling, &w)
	dim(&w)
	switch {
	case w.On.State == parser.Off:
		w.RiseOn = parser.Setting[bool]{
			Key: k.RiseOn, Name: spelling.riseWindow, State: parser.Off, Place: w.On.Place,
		}
	case w.On.State == parser.Unknown && w.RiseOn.State != parser.Off:
		w.RiseOn.State, w.RiseOn.Why = parser.Unknown, w.On.Why
	}
	return w
}

// riseOn derives the switch of the heating check: a window that is defined and
// above 0.
func (r *reader) riseOn(spelling *watchSpelling, w *parser.Watch) parser.Setting[bool] {
	s := parser.Setting[bool]{
		Key: spelling.keys.RiseOn, Name: spelling.riseWindow,
		Place: w.RiseWindowS.Place, State: w.RiseWindowS.State, Why: w.RiseWindowS.Why,
	}
	r.slots = append(r.slots, slot{
		key: s.Key, kind: slotPeriod, name: s.Name, unit: windowUnit(r.gen),
		usual: w.Usual.RiseWindowS, companion: spelling.rise, companionUsual: w.Usual.RiseC,
		near: []string{spelling.rise, spelling.hysteresis, spelling.hold},
	})
	switch {
	case s.State == parser.Set && w.RiseWindowS.Value > 0:
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
	if w.RiseOn.State != parser.Off {
		return
	}
	for _, s := range []*parser.Setting[float64]{&w.RiseWindowS, &w.RiseC} {
		if s.State == parser.Unknown {
			s.State, s.Why = parser.Off, ""
		}
	}
}

// windowUnit is the unit of the rise window.
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
	w.CanTurnOn = len(r.s.mentions(spelling.oldHold)) > 0
	w.HoldPeriodS = r.number(numberSpelling{
		key: k.HoldPeriod, names: []string{spelling.oldHold}, round: roundUp,
		absent: absentOff, near: []string{spelling.oldHysteresis},
	})
	w.On = parser.Setting[bool]{
		Key: k.On, Name: spelling.oldHold, State: w.HoldPeriodS.State,
		Place: w.HoldPeriodS.Place, Hides: w.HoldPeriodS.Hides, Why: w.HoldPeriodS.Why,
	}
	r.slots = append(r.slots, slot{
		key: k.On, kind: slotPeriod, name: spelling.oldHold,
		usual: w.Usual.HoldPeriodS, companion: spelling.oldHysteresis,
		companionUsual: w.Usual.HysteresisC, near: []string{spelling.oldHysteresis},
	})
	if w.On.State == parser.Set {
		if w.On.Value = w.HoldPeriodS.Value > 0; !w.On.Value {
			w.On.State = parser.Off
		}
	}
	inForce := absentUnknown
	if w.On.State == parser.Off {
		inForce = absentOff
	}
	w.HysteresisC = r.number(numberSpelling{
		key: k.Hysteresis, names: []string{spelling.oldHysteresis},
		round: roundUp, absent: inForce, near: []string{spelling.oldHold},
	})
	if spelling == &bedWatch {
		// This generation has no heating check for the bed.
		w.RiseOn = parser.Setting[bool]{Key: k.RiseOn, State: parser.Off, Place: w.On.Place}
		return w
	}
	w.RiseWindowS = r.number(numberSpelling{
		key: k.RiseWindow, names: []string{spelling.riseWindow},
		unit: unitMillis, round: roundUp, near: []string{spelling.rise},
	})
	w.RiseC = r.number(numberSpelling{
		key: k.Rise, names: []string{spelling.rise}, round: roundNearest, near: []string{spelling.riseWindow},
	})
	if s := &w.RiseWindowS; s.State == parser.Set && s.Value < 1 {
		s.State = parser.Unknown
		s.Why = s.At.String() + ": " + s.Name + " is “" + s.Written +
			"”; this generation counts it in milliseconds, and so short a window makes no sense"
	}
	w.RiseOn = r.riseOn(spelling, &w)
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

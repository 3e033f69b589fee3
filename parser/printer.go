package parser

import "iter"

// Printer is what a configuration says about one printer, as far as the
// hotend that the sheet names is concerned. A style fills it; rules read it.
type Printer struct {
	Style    string
	Tool     int     // the hotend, from 0
	Files    []*File // in reading order, included ones too
	Hotend   Hotend
	Bed      Bed
	Limits   Limits
	ColdSide ColdSide
	Flow     Flow
	Geometry Geometry
	Storage  Storage
	// Watchdog restarts the controller where its program hangs.
	Watchdog Setting[bool]
	Remarks  []Remark

	// Causes says of unknown settings what they hang on, as far as that is known.
	Causes map[Key]Cause
}

// Averaged is how many readings of a converter of so many bits become one
// temperature, 1 at least.
func (h *Hotend) Averaged(bits int) int {
	n := h.Oversample
	if h.FewerOfFine && bits > 10 {
		n = min(n, 20-bits)
	}
	return max(n, 1)
}

// Hotend is how the hotend's temperature is read, driven and watched.
type Hotend struct {
	Sensor     Setting[SensorDef]
	PullupOhm  Setting[float64] // only where the style has it as a setting of its own; absent otherwise
	Oversample int              // readings averaged into one temperature
	// FewerOfFine: of a converter with more than 10 bits so many fewer readings
	// are averaged that with its bits they make no more than 20.
	FewerOfFine bool
	// CustomCubic: a custom sensor definition may have a cubic coefficient.
	CustomCubic bool
	// Second is a second sensor of this hotend, whose reading may differ by
	// SecondK at most; Off where there is none.
	Second  Setting[SensorDef]
	SecondK Setting[float64]
	// Outputs is how many heater outputs run on this hotend's command, each with
	// a heater of its own; absent where there is one.
	Outputs Setting[float64]
	Loop    Loop
	Watch   Watch
}

// Bed is the part of the heated bed that a hotend swap must not spoil. Heated
// is Off where there is no heated bed; then the rest means nothing.
type Bed struct {
	Heated Setting[bool]
	Sensor Setting[SensorDef]
	Watch  Watch
}

// Control is how a heater is driven.
type Control uint8

const (
	ControlPID   Control = iota
	ControlOnOff         // full on below the target, off above
	ControlModel         // predicts from a model of heater and block
	ControlOpen          // the target is written to the output as a number
)

func (c Control) String() string { return [...]string{"PID", "on/off", "model", "open loop"}[c] }

// LoopForm is the kind of PID loop that a style's firmware runs.
type LoopForm uint8

const (
	// LoopRange: full power below the functional range and none above; the
	// integral is zeroed outside the range; the derivative is filtered with
	// FilterOld of the old value. Variants has what else differs.
	LoopRange LoopForm = iota
	// LoopClamped: the integral is clamped to the power limit and frozen
	// while the output saturates; the derivative and the reading that a
	// WatchSum sees are smoothed over SmoothS; one sample in 0.3 s.
	LoopClamped
)

// Loop is the control loop of the hotend. Gains are per 255 duty counts.
type Loop struct {
	Form       LoopForm
	Control    Setting[Control]
	Kp, Ki, Kd Setting[float64] // counts/K, counts/(K·s), counts·s/K
	RangeC     Setting[float64] // LoopRange: functional range, K
	FilterOld  Setting[float64] // LoopRange: share of the old derivative, 0 to 1
	SmoothS    Setting[float64] // LoopClamped: derivative smoothing time, s
	BandC      Setting[float64] // on/off control: half of its band, K

	// Shared is how many hotends run on these gains; 0 or 1 where each has its own.
	Shared int

	// Variants are the ways in which a LoopRange may run that the files do not
	// tell apart; of several the worse one counts.
	Variants []LoopVariant

	// PowerLimits holds every option that limits the heater's power, as a
	// share of full power, 0 to 1. The lowest that applies to Control counts.
	PowerLimits []Setting[float64]

	// Model-based control: the heater power that it was told, W; the
	// temperature that this power belongs to where the model has one, °C.
	ModelPowerW Setting[float64]
	ModelRefC   Setting[float64]
}

// LoopVariant is what a firmware's generation and its boards make of a
// LoopRange.
type LoopVariant struct {
	Name string // of the generation, as in "the … firmware"
	// KeepsLast: the reading that the derivative starts from moves only inside
	// the functional range, and is 0 °C at power-on.
	KeepsLast bool
	// OwnFar: below the functional range PowerBelowRange limits the power,
	// and not what limits it inside.
	OwnFar   bool
	SamplesS []float64 // the times between two readings that its boards have, s
}

// WatchForm is the kind of runaway protection that a style's firmware runs.
type WatchForm uint8

const (
	// WatchWindow: must rise RiseC within HeatingWindowS while heating; must not
	// stay HysteresisC below target for DropPeriodS afterwards.
	WatchWindow WatchForm = iota
	// WatchSum: below target − HysteresisC the shortfall adds up until
	// ErrorSumCS; a gain of RiseC within HeatingWindowS resets it on the way up.
	WatchSum
)

// Watch is the runaway protection of one heater.
type Watch struct {
	Form           WatchForm
	On             Setting[bool]    // the protection as a whole
	HeatingOn      Setting[bool]    // WatchWindow: the heating check, which can be off alone
	RiseC          Setting[float64] // K
	HeatingWindowS Setting[float64] // s
	ArmMarginC     Setting[float64] // WatchWindow, K: armed below target − (RiseC + this + 1)
	HysteresisC    Setting[float64] // K
	DropPeriodS    Setting[float64] // WatchWindow, s
	ErrorSumCS     Setting[float64] // WatchSum, °C·s

	// SlowsFan: at temperature the part fan is slowed as the reading sags.
	SlowsFan Setting[bool]
	// StillS: at temperature, a reading that stays the same for so long shuts
	// the heater down, s.
	StillS Setting[float64]

	// Usual is what the style's firmware ships with.
	Usual WatchFigures
	// CanTurnOn: the files show that their firmware has this protection at
	// all. Where it is false, the firmware is too old to be trusted.
	CanTurnOn bool
}

// Describe calls add with each setting of the watch.
func (w *Watch) Describe(add func(Description)) {
	add(w.On.Describe())
	add(w.HeatingOn.Describe())
	for _, s := range [...]*Setting[float64]{
		&w.RiseC, &w.HeatingWindowS, &w.ArmMarginC, &w.HysteresisC, &w.DropPeriodS, &w.ErrorSumCS,
	} {
		add(s.Describe())
	}
}

// WatchFigures are the figures of a watch; those that its form lacks are 0.
type WatchFigures struct {
	RiseC, HeatingWindowS, HysteresisC, DropPeriodS, ErrorSumCS float64
}

// Limits are the temperatures that the firmware enforces, °C.
type Limits struct {
	MinTemp Setting[float64]
	MaxTemp Setting[float64] // above it the heater is shut down
	Margin  Setting[float64] // how far below MaxTemp the highest target lies, K
	Presets []Setting[float64]

	// Trips: readings are held against MinTemp and MaxTemp. Off for a sensor
	// definition with which the firmware does not do that.
	Trips Setting[bool]
	// FaultChecks: what a converter chip reports is heeded, and its readings are
	// held against MinTemp and MaxTemp. Key empty where there is no chip.
	FaultChecks Setting[bool]

	// AutoMax is the highest target that the firmware sets by itself as more is
	// extruded; key empty where it does not. AutoAlways: it
	// raises every target, by how much is not read, and not only where the print
	// asks for it.
	AutoMax    Setting[float64]
	AutoAlways bool

	ColdGuard  Setting[bool] // the guard against pushing cold filament
	MinExtrude Setting[float64]

	// MinWhileHeating: the firmware looks at MinTemp only while the heater
	// is on.
	MinWhileHeating bool
	// Graces and BadSamples blind the firmware to readings outside the limits: grace
	// times in s and numbers of bad samples, each named by its key.
	Graces     []Setting[float64] // s
	BadSamples []Setting[float64] // count
	// HaltGrace: a fault switches the heaters off, but for so long the firmware
	// neither halts nor says so, s; absent where it does at once.
	HaltGrace Setting[float64]
}

// ColdSide is the fan that cools the heat break.
type ColdSide struct {
	Fan       Setting[string]  // the output that follows this hotend; Off where none does
	Elsewhere []Place          // heat-break fan outputs that follow something else
	OnAboveC  Setting[float64] // °C
	// WithTarget: it runs whenever its heater has a target, however cold, and
	// OnAboveC is where it stops while the hotend cools.
	WithTarget bool
	// Power is the share of full power at which the fan runs, 0 to 1; absent
	// where the style always runs it full.
	Power Setting[float64]
	// AtShutdown is the share at which it runs on once the firmware has shut
	// down; absent where that is not known.
	AtShutdown Setting[float64]
}

// Flow is what the configuration knows of filament and melt.
type Flow struct {
	NozzleMM    Setting[float64]
	FilamentMM  Setting[float64]
	MaxMM3PerS  Setting[float64]   // volumetric limit; Off where there is none
	PushMM      Setting[float64]   // longest push of filament without a move, mm; absent where unlimited
	CrossMM2    Setting[float64]   // largest section of a line, mm²; absent where it follows the nozzle
	CarriedOver []Setting[float64] // advance, retraction, load and unload figures that belong to a melt path
}

// Homing is what stops the Z axis when it homes.
type Homing uint8

const (
	HomesByProbe  Homing = iota // the probe, which may be the nozzle
	HomesAtBed                  // a switch that triggers near the bed
	HomesFar                    // a switch at the other end, such as on top of a delta's towers
	HomesBySwitch               // a switch; at which end does not stand in the files
)

func (h Homing) String() string {
	return [...]string{"the probe", "a switch near the bed", "a switch far from the bed", "a switch"}[h]
}

// Geometry is where the nozzle is.
type Geometry struct {
	// Homes is absent where the files do not tell.
	Homes Setting[Homing]
	// HomesByStall: what stops Z near the bed is its motor, which stalls, as a rule
	// with the nozzle on the bed (common practice, no source).
	HomesByStall bool
	// EndstopMM is the height of the nozzle when the switch triggers: one, or one
	// for each tower of a delta; none where a probe homes or nothing is written.
	EndstopMM []Setting[float64]
	// BesideNozzle: the probe is written to be beside the nozzle. Where it is not
	// and TriggerMM is not above 0, the nozzle may be the probe.
	BesideNozzle bool
	// TriggerMM is the height of the nozzle above the bed when the probe
	// triggers, positive up; Off where there is no probe.
	TriggerMM Setting[float64]
	// NozzleProbes: the nozzle itself is the probe, so that its tip is where it
	// triggers.
	NozzleProbes Setting[bool]
	// Offsets are the distances between the hotends, mm; none with one hotend. In Z
	// they say how far a nozzle is lifted where OffsetsLift, else where it sits,
	// seen from the first one.
	Offsets     []Setting[float64]
	OffsetsLift bool

	// LowestMM is the lowest height that a move goes to; absent where that is not
	// known.
	LowestMM Setting[float64]
	// Towers: the head hangs on three towers, whose ends of travel are its height.
	Towers bool
}

// Storage is the firmware's own memory of settings, apart from the files.
type Storage struct {
	On    Setting[bool]
	Keeps []Key // the settings that stay in force from there until they are reset
	// CustomLays: a sensor definition that is written out lays the memory out
	// anew, so that a build that begins or ceases to have one drops all that an
	// earlier one stored.
	CustomLays bool
}

// RemarkKind sorts what a style noticed while it read.
type RemarkKind uint8

const (
	RemarkBroken       RemarkKind = iota // the configuration stops its own build
	RemarkSavedDamaged                   // the saved block is ignored whole
	RemarkSavedHidden                    // a saved value is hidden by a hand-written one
	RemarkMismatch                       // the sheet names a tool that the configuration lacks
	RemarkGap                            // something that could not be read, and what it could override
	RemarkUnrecognised                   // looks like a protection or a sensor, and fits no known option
	RemarkUnreadable                     // a part is beyond every limit of reading: the rest is known
)

// Remark is something that a style noticed while it read, in a sentence.
type Remark struct {
	Kind RemarkKind
	At   Span
	Text string
}

// Settings gives every setting that the configuration has an opinion on, in a
// fixed order: what `values` prints.
func (p *Printer) Settings() iter.Seq[Description] { return p.settings }

func (p *Printer) settings(yield func(Description) bool) {
	more := true
	add := func(d Description) {
		if d.State != Absent {
			more = more && yield(d)
		}
	}
	numbers := func(list ...Setting[float64]) {
		for i := range list {
			add(list[i].Describe())
		}
	}
	h, l := &p.Hotend, &p.Hotend.Loop
	add(h.Sensor.Describe())
	add(h.Second.Describe())
	numbers(h.SecondK, h.PullupOhm, p.Limits.MinTemp, p.Limits.MaxTemp, p.Limits.Margin)
	add(p.Limits.Trips.Describe())
	add(p.Limits.FaultChecks.Describe())
	numbers(p.Limits.Presets...)
	numbers(p.Limits.AutoMax)
	add(p.Limits.ColdGuard.Describe())
	numbers(p.Limits.MinExtrude)
	numbers(p.Limits.Graces...)
	numbers(p.Limits.BadSamples...)
	numbers(p.Limits.HaltGrace, h.Outputs)
	add(l.Control.Describe())
	numbers(l.Kp, l.Ki, l.Kd, l.RangeC, l.FilterOld, l.SmoothS, l.BandC)
	numbers(l.PowerLimits...)
	numbers(l.ModelPowerW, l.ModelRefC)
	h.Watch.Describe(add)
	add(h.Watch.SlowsFan.Describe())
	numbers(h.Watch.StillS)
	add(p.Watchdog.Describe())
	add(p.Bed.Heated.Describe())
	add(p.Bed.Sensor.Describe())
	p.Bed.Watch.Describe(add)
	add(p.ColdSide.Fan.Describe())
	numbers(p.ColdSide.OnAboveC, p.ColdSide.Power, p.ColdSide.AtShutdown)
	numbers(p.Flow.NozzleMM, p.Flow.FilamentMM, p.Flow.MaxMM3PerS, p.Flow.PushMM, p.Flow.CrossMM2)
	numbers(p.Flow.CarriedOver...)
	add(p.Geometry.Homes.Describe())
	numbers(p.Geometry.EndstopMM...)
	numbers(p.Geometry.TriggerMM)
	add(p.Geometry.NozzleProbes.Describe())
	numbers(p.Geometry.Offsets...)
	add(p.Storage.On.Describe())
}

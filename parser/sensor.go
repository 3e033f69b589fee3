package parser

import "cmp"

// SensorKind is what a temperature sensor physically is.
type SensorKind uint8

const (
	KindUnknown       SensorKind = iota
	NTC                          // bead thermistor, negative temperature coefficient
	Platinum                     // bare platinum resistor on a divider
	PlatinumAmplifier            // platinum behind an amplifier or converter chip
	Thermocouple                 // thermocouple behind its amplifier or converter chip
)

func (k SensorKind) String() string {
	return [...]string{"unknown", "ntc", "platinum", "platinum-amplifier", "thermocouple"}[k]
}

// SensorForm is how a definition turns a reading into a temperature.
type SensorForm uint8

const (
	FormUnknown     SensorForm = iota // cannot be placed on a curve
	FormNone                          // says that there is no sensor
	FormCurve                         // a known curve, named in Curve
	FormBeta                          // R25Ohm, BetaK and CubicC
	FormPoints                        // Points
	FormAmplifier                     // a chip that reports a temperature: a kind without a curve
	FormPlaceholder                   // a dummy that reads a fixed temperature
)

// Join is how a definition draws its curve through its points.
type Join uint8

const (
	JoinSteinhart Join = iota // Steinhart-Hart through three points
	JoinOhm                   // straight in resistance; the outer lines go on beyond the ends
	JoinRatio                 // straight in R/(R + PullupOhm); beyond the ends it stays there
)

// SensorDef is a sensor definition in neutral form: what the firmware
// believes about the sensor.
type SensorDef struct {
	Form SensorForm
	Kind SensorKind
	Name string // as the style writes it, such as 5 or the value of an option

	// A curve known to rules/sensor, such as ntc-100k-3950: FormCurve is that
	// curve; other forms follow it within a few K, or have none here.
	Curve string

	// FormBeta, T in kelvin, L = ln R:
	// 1/T = 1/298.15 + (L − ln R25)/BetaK + CubicC·(L³ − ln³ R25).
	R25Ohm, BetaK, CubicC float64

	Points []SensorPoint // FormPoints, by rising temperature where Join is no Steinhart-Hart
	Join   Join

	PullupOhm float64 // pull-up that the definition assumes; 0 where it is a setting of its own
	SeriesOhm float64 // resistor in series with the sensor, usually 0

	// FormAmplifier of a platinum sensor: the sensor's resistance at 0 °C that
	// the chip is told, or that the amplifier is for; 0 where nothing says.
	R0Ohm float64
	// The chip's reference resistor, and the wires between chip and sensor; 0
	// where nothing says.
	ReferenceOhm float64
	Wires        int
	// What the amplifier's reading is multiplied by, 0 for 1, and what is added
	// to it, K.
	Gain, OffsetK float64

	// Readings stop at these ends (°C); both 0 where they do not.
	LowC, HighC float64

	FixedC float64 // FormPlaceholder: what it always reads, °C

	// Note is shown beside the definition: a retired name, a value from
	// memory, why it cannot be placed.
	Note string

	// Or is the definition as another firmware has it, where the files do not
	// tell which of the two they are built with: the worse counts. Nil for none.
	Or *SensorDef
}

// String names the definition: as the style does, else by what it stands for.
func (d SensorDef) String() string { return cmp.Or(d.Name, d.Curve, d.Kind.String()) }

// SensorPoint is one point of a resistance-temperature curve.
type SensorPoint struct{ TempC, Ohm float64 }

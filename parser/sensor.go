package parser

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

// SensorDef is a sensor definition in neutral form: what the firmware
// believes about the sensor.
type SensorDef struct {
	Form SensorForm
	Kind SensorKind
	Name string // as the style writes it, such as 5 or the value of an option

	Curve string // FormCurve: a curve known to rules/sensor, such as ntc-100k-3950

	// FormBeta, T in kelvin, L = ln R:
	// 1/T = 1/298.15 + (L − ln R25)/BetaK + CubicC·(L³ − ln³ R25).
	R25Ohm, BetaK, CubicC float64

	// FormPoints: Steinhart-Hart through three points, or a table with
	// straight lines between its points where Linear is set.
	Points []SensorPoint
	Linear bool

	PullupOhm float64 // pull-up that the definition assumes
	SeriesOhm float64 // resistor in series with the sensor, usually 0

	// FormAmplifier of a platinum sensor: the sensor's resistance at 0 °C that
	// the chip is told; 0 where nothing says.
	R0Ohm float64
	// The chip's reference resistor, and the wires between chip and sensor; 0
	// where nothing says.
	ReferenceOhm float64
	Wires        int
	// What the amplifier's reading is multiplied by, 0 for 1, and what is added
	// to it, K.
	Gain, OffsetK float64

	// Readings stop at these ends where the definition is a table whose
	// extent is known (°C); both 0 where they do not.
	LowC, HighC float64

	FixedC float64 // FormPlaceholder: what it always reads, °C

	// Note is shown beside the definition: a retired name, a value from
	// memory, why it cannot be placed.
	Note string

	// Doubt says why the definition may not be what it is taken for. A
	// reading that fits is then still reported, as a note.
	Doubt string
}

// SensorPoint is one point of a resistance-temperature curve.
type SensorPoint struct{ TempC, Ohm float64 }

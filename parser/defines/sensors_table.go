package defines

import "preflash/parser"

// numbered is one numbered sensor definition. The firmware holds a table of
// counts for each; here stands the curve that the table follows.
type numbered struct {
	number    int
	kind      parser.SensorKind
	form      parser.SensorForm
	curve     string  // FormCurve
	r25, beta float64 // FormBeta
	points    [3]parser.SensorPoint
	pullup    float64 // 0: commonPullup
	// Ends of the table, °C; both 0 where not known. A reading beyond them
	// stays at the end.
	low, high float64
	note      string
	doubt     string
}

const (
	commonPullup = 4700.0 // ohm
	lowPullup    = 1000.0

	noteUnplaced  = "its curve is not known here"
	noteScaled    = "the table allows for a converter whose reference differs from the supply of the pull-up; that cannot be told from the configuration"
	notePlainBeta = "its table follows a plain Beta (from memory), which a real bead does not"
	noteBoard     = "meant for a board or a bed"
)

// numberedSensors are the style's definitions, sorted by number, all from
// memory. A row names a curve or formula only where the rows of its table, as
// remembered, lie within 3 °C of it at printing temperatures. Number 11 is the
// exception: its rows are remembered as a plain Beta of 3950 K, while the
// project takes it as the curve of three points.
var numberedSensors = [...]numbered{
	{number: platinumChip, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier},
	{number: -4, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: -3, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: -2, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: -1, kind: parser.Thermocouple, form: parser.FormAmplifier},
	{number: 0, form: parser.FormNone},
	{number: 1, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4092", low: -15, high: 320},
	{number: 2, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-200k-4338", low: 0, high: 848},
	{number: 3, kind: parser.NTC, form: parser.FormPoints, low: -20, high: 864,
		points: [3]parser.SensorPoint{{TempC: 20, Ohm: 121953}, {TempC: 150, Ohm: 1641}, {TempC: 270, Ohm: 156.5}}},
	{number: 4, kind: parser.NTC, form: parser.FormBeta, r25: 10e3, beta: 3978, low: -35, high: 430,
		note: notePlainBeta + "; a 10 kΩ bead resolves badly at printing temperatures"},
	{number: 5, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4267", low: 0, high: 713},
	{number: 6, kind: parser.NTC, form: parser.FormUnknown, note: "its table was measured on one printer and follows no curve"},
	{number: 7, kind: parser.NTC, form: parser.FormBeta, r25: 100e3, beta: 3950, low: 0, high: 941, note: notePlainBeta},
	{number: 8, kind: parser.NTC, form: parser.FormUnknown, note: "its table is too coarse above 216 °C to follow a curve"},
	{number: 9, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-3960", low: 0, high: 936, note: notePlainBeta},
	{number: 10, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-3960", low: 0, high: 929, note: notePlainBeta},
	{number: 11, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-3950", low: -27, high: 938,
		doubt: "that is from memory, and so is another account, by which its table follows the plain Beta of 3950 K: then 220 °C indicated would be about 204 °C; compare with a thermometer"},
	{number: 12, kind: parser.NTC, form: parser.FormUnknown, note: "meant for a bed; its table ends at 180 °C"},
	{number: 13, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4145", low: 0, high: 300},
	{number: 14, kind: parser.NTC, form: parser.FormUnknown, note: noteBoard + "; " + noteUnplaced},
	{number: 15, kind: parser.NTC, form: parser.FormUnknown, note: "its table was measured on one printer"},
	{number: 17, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 18, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 20, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier},
	{number: 21, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier},
	{number: 22, kind: parser.NTC, form: parser.FormUnknown, note: noteScaled},
	{number: 23, kind: parser.NTC, form: parser.FormUnknown, note: noteScaled},
	{number: 30, kind: parser.NTC, form: parser.FormUnknown, note: noteBoard + "; " + noteUnplaced},
	{number: 51, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4092", pullup: lowPullup, low: 0, high: 350},
	{number: 52, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-200k-4338", pullup: lowPullup, low: 0, high: 500},
	{number: 55, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4267", pullup: lowPullup, low: 0, high: 500},
	{number: 60, kind: parser.NTC, form: parser.FormBeta, r25: 100e3, beta: 3950, low: 0, high: 272, note: notePlainBeta + "; " + noteBoard},
	{number: 61, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 66, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-4700k-5130", low: 0, high: 850},
	{number: 67, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-500k-3950", low: 0, high: 500},
	{number: 68, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier},
	{number: 70, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 71, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-3974", note: notePlainBeta},
	{number: 75, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-3950", low: 0, high: 200, note: "meant for a bed; its table ends at 200 °C"},
	{number: 99, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4092", pullup: 10e3, low: 0, high: 350},
	{number: 110, kind: parser.Platinum, form: parser.FormCurve, curve: "pt100", pullup: lowPullup},
	{number: 147, kind: parser.Platinum, form: parser.FormCurve, curve: "pt100"},
	{number: 201, kind: parser.PlatinumAmplifier, form: parser.FormAmplifier},
	{number: 202, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 331, kind: parser.NTC, form: parser.FormUnknown, note: noteScaled},
	{number: 332, kind: parser.NTC, form: parser.FormUnknown, note: noteScaled},
	{number: 501, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 502, kind: parser.NTC, form: parser.FormUnknown, note: noteBoard + "; " + noteUnplaced},
	{number: 503, kind: parser.NTC, form: parser.FormUnknown, note: noteBoard + "; " + noteUnplaced},
	{number: 504, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 505, kind: parser.NTC, form: parser.FormUnknown, note: noteBoard + "; " + noteUnplaced},
	{number: 512, kind: parser.NTC, form: parser.FormUnknown, note: noteUnplaced},
	{number: 666, kind: parser.NTC, form: parser.FormUnknown, pullup: 10e3, note: noteUnplaced},
	{number: placeholderCold, form: parser.FormPlaceholder},
	{number: placeholderHot, form: parser.FormPlaceholder},
	{number: customSensor, kind: parser.NTC, form: parser.FormBeta},
	{number: 1010, kind: parser.Platinum, form: parser.FormCurve, curve: "pt1000", pullup: lowPullup},
	{number: 1022, kind: parser.Platinum, form: parser.FormCurve, curve: "pt1000", pullup: 2200},
	{number: 1047, kind: parser.Platinum, form: parser.FormCurve, curve: "pt1000"},
	{number: 2000, kind: parser.NTC, form: parser.FormCurve, curve: "ntc-100k-4485", low: -40, high: 125, note: noteBoard},
}

// Definitions whose figures stand in options of their own.
const (
	platinumChip    = -5
	placeholderCold = 998
	placeholderHot  = 999
	customSensor    = 1000 // R25, B, cubic coefficient and pull-up
)

// hotendSensors names the best definition of each known curve for a hotend,
// one for each pull-up that there is one for. A table that ends below printing
// temperatures, or a curve that no table follows, is not here.
var hotendSensors = [...]struct {
	curve  string
	number int
}{
	{"ntc-100k-3950", 11},
	{"ntc-100k-3960", 10},
	{"ntc-100k-3974", 71},
	{"ntc-100k-4092", 1},
	{"ntc-100k-4092", 51},
	{"ntc-100k-4092", 99},
	{"ntc-100k-4145", 13},
	{"ntc-100k-4267", 5},
	{"ntc-100k-4267", 55},
	{"ntc-200k-4338", 2},
	{"ntc-200k-4338", 52},
	{"ntc-4700k-5130", 66},
	{"ntc-500k-3950", 67},
	{"pt100", 147},
	{"pt100", 110},
	{"pt1000", 1047},
	{"pt1000", 1022},
	{"pt1000", 1010},
}

package defines

import (
	_ "embed"
	"slices"
	"strings"
	"sync"

	"preflash/parser"
)

// The firmware itself derives names from the options and takes options out
// again, in headers of its own that it reads around the two files. Here they
// are, as far as a configuration asks for them, in the style's own language:
// they are run like any other file, at their places, but no line of them is a
// setting's place and none is listed. What differs by generation asks for
// preflash_newer, which is unknown where a configuration is judged by both;
// where both then come to the same, that is known.
var (
	//go:embed derived/first.h
	derivedFirst string // before the first file
	//go:embed derived/second.h
	derivedSecond string // before the file with the second version option
	//go:embed derived/last.h
	derivedLast string // after the last file
)

// own begins the names that only the derived headers know. Nothing outside
// defines one.
const own = "preflash_"

// isNewer is unknown where the basis is: then it counts as from outside.
const isNewer = own + "newer"

// basisText is what the derived headers know of the basis.
func basisText(b basis) string {
	text := ""
	if b.may(older) {
		text += "#define " + own + "may_be_older 1\n"
	}
	if b.may(newer) {
		text += "#define " + own + "may_be_newer 1\n"
	}
	if b.is(newer) {
		text += "#define " + isNewer + " 1\n"
	}
	return text
}

// firmware holds the headers that the firmware itself reads.
type firmware struct {
	first, second, last *header
	bases               [older | newer + 1]*header
	sheet               *header // what the sheet says that board or build define
	passed              bool    // the second was read
}

// derivedHeaders has scanned the headers that are the same for every printer, in
// the order of the fields of firmware.
var derivedHeaders = sync.OnceValues(func() (*source, error) {
	s := &source{}
	for _, text := range [...]string{derivedFirst, derivedSecond, derivedLast,
		basisText(older), basisText(newer), basisText(older | newer)} {
		if _, err := s.openText(text); err != nil {
			return nil, err
		}
	}
	return s, nil
})

// openFirmware opens what does not lie in the tree.
func (s *source) openFirmware(outside []parser.Define) error {
	derived, err := derivedHeaders()
	if err != nil {
		return err
	}
	s.lines, s.table = slices.Clone(derived.lines), derived.table.clone()
	f := &s.firmware
	for i, to := range [...]**header{&f.first, &f.second, &f.last,
		&f.bases[older], &f.bases[newer], &f.bases[older|newer]} {
		u := *derived.order[i]
		*to, s.order = &u, append(s.order, &u)
	}
	if err := s.tell(outside); err != nil {
		return err
	}
	f.sheet, err = s.openText(outsideText(outside))
	return err
}

// openText scans a header that is no file.
func (s *source) openText(text string) (*header, error) {
	u := &header{file: parser.NewFile("", []byte(text)), firmware: true}
	return u, s.scan(u)
}

// begin runs what the firmware reads before the first file.
func (s *source) begin() error {
	s.firmware.passed = false
	for _, u := range []*header{s.firmware.bases[s.basis], s.firmware.sheet, s.firmware.first} {
		if err := s.read(u, parser.Yes, -1); err != nil {
			return err
		}
	}
	return nil
}

// between runs what the firmware reads before the second file, once.
func (s *source) between() error {
	if s.firmware.passed {
		return nil
	}
	s.firmware.passed = true
	return s.read(s.firmware.second, parser.Yes, -1)
}

// statedBehind reports whether some other file than the first states the version
// of the second: that is where the firmware's own names come in.
func (s *source) statedBehind(first *header) bool {
	return slices.ContainsFunc(s.order, func(u *header) bool { return u.second && u != first })
}

// holds reports whether a file has a define of the name.
func (s *source) holds(u *header, name string) bool {
	id := s.table.find(name)
	if id < 0 {
		return false
	}
	for i := s.table.all[id].first; i >= 0; i = s.lines[i].next {
		if u.from <= i && i < u.to && !s.lines[i].comment {
			return true
		}
	}
	return false
}

// origin says where a name comes from that no file mentions as a define.
type origin uint8

const (
	originUnasked  origin = iota
	originOption          // an option of the style: not defined
	originOutside         // board or build may define it
	originNewer           // depends on whether the firmware is the newer one
	originBoard           // … and comes from the board where it may be the older one
	originMultiple        // off without a unit that feeds several filaments
)

// originOf tells the origin of a name. EXTRUDERS and the first sensor stand in
// every configuration: where no file that was read mentions one, another does.
func (s *source) originOf(name string) origin {
	switch {
	case name == isNewer:
		return originNewer
	case strings.HasPrefix(name, own):
		return originOption
	case name == "HAS_HEATED_BED":
		return originBoard
	case name == "EXTRUDERS" || name == "TEMP_SENSOR_0":
		return originOutside
	case s.isOption != nil && s.isOption(name):
		return originOption
	case isMultiple(name):
		return originMultiple
	}
	return originOutside
}

// isMultiple reports whether a name asks for a unit that feeds several
// filaments to one extruder, of whatever make.
func isMultiple(name string) bool {
	if !strings.HasPrefix(name, "HAS_") {
		return false
	}
	for _, end := range [...]string{"_MMU1", "_MMU2", "_MMU2S", "_MMU3"} {
		if strings.HasSuffix(name, end) {
			return true
		}
	}
	return false
}

// serialDrivers are the motor drivers that talk to the board, and their kind:
// see derived/second.h. What their names go on with, such as _STANDALONE, makes
// them another.
var serialDrivers = [...]struct{ name, kind string }{
	{"TMC2130", "1"}, {"TMC2160", "1"}, {"TMC2208", "1"}, {"TMC2209", "1"},
	{"TMC2660", "2"}, {"TMC5130", "1"}, {"TMC5160", "1"}, {"TMC26X", "3"},
}

// driver is the kind of an axis's driver.
func (e *expander) driver(axis string) []token {
	value := e.expandAll([]token{{kind: tokenWord, text: axis + "_DRIVER_TYPE"}})
	for i := range serialDrivers {
		if len(value) == 1 && (value[0].kind == tokenUnknown || value[0].text == serialDrivers[i].name) {
			if value[0].kind == tokenUnknown {
				return value
			}
			return []token{{kind: tokenNumber, text: serialDrivers[i].kind}}
		}
	}
	return number(0)
}

// motors are the axes and extruders whose motors may have a driver that talks.
var motors = [...]string{"X", "Y", "Z", "X2", "Y2", "Z2", "Z3", "Z4", "I", "J", "K", "U", "V", "W",
	"E0", "E1", "E2", "E3", "E4", "E5", "E6", "E7"}

// anyDriver says whether a motor that is there has a driver of these kinds.
func (e *expander) anyDriver(kinds [][]token) []token {
	unknown := number(0)
	for _, motor := range &motors {
		id := e.s.table.find(motor + "_DRIVER_TYPE")
		if id < 0 || e.s.table.all[id].state == none {
			continue // not defined
		}
		driver := e.driver(motor)
		fits := driver[0].kind == tokenUnknown
		for _, kind := range kinds {
			fits = fits || spell(kind) == driver[0].text
		}
		if !fits {
			continue
		}
		inner := e.s.expander([]token{{kind: tokenWord, text: own + "motor_" + motor}})
		v, d := inner.compute(wholeNumbers)
		inner.close()
		switch {
		case v.kind != knownValue:
			unknown = []token{e.doubtful(d)}
		case v.zero():
		case driver[0].kind == tokenUnknown:
			unknown = driver
		default:
			return number(1)
		}
	}
	return unknown
}

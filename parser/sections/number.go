package sections

import (
	"fmt"
	"math"
	"strconv"
	"strings"

	"preflash/parser"
)

// number reads a figure as Python's float does: an underscore may stand
// between digits, there is no hexadecimal form.
func number(text string) (float64, bool) {
	text = string(trim([]byte(text)))
	digit := func(i int) bool { return i >= 0 && i < len(text) && text[i] >= '0' && text[i] <= '9' }
	plain := make([]byte, 0, len(text))
	for i := 0; i < len(text); i++ {
		switch c := text[i]; {
		case digit(i), strings.IndexByte("+-.eE", c) >= 0:
			plain = append(plain, c)
		case c == '_' && digit(i-1) && digit(i+1):
		default:
			return special(text)
		}
	}
	v, err := strconv.ParseFloat(string(plain), 64)
	if err != nil && !math.IsInf(v, 0) {
		return 0, false
	}
	return v, true
}

// special reads the figures that are no numbers.
func special(text string) (float64, bool) {
	sign, bare := 1, text
	if bare != "" && (bare[0] == '+' || bare[0] == '-') {
		if bare[0] == '-' {
			sign = -1
		}
		bare = bare[1:]
	}
	switch strings.ToLower(bare) {
	case "inf", "infinity":
		return math.Inf(sign), true
	case "nan":
		return math.NaN(), true
	}
	return 0, false
}

// demand is what the firmware demands of a figure. It refuses to start where
// one is not met.
type demand struct {
	min, above, max float64 // NaN where there is none
}

var (
	none     = math.NaN()
	anything = demand{none, none, none}
	positive = demand{none, 0, none}
)

func atLeast(min float64) demand { return demand{min, none, none} }

// unmet says what a figure should be, or "" where it is good.
func (d demand) unmet(v float64) string {
	switch {
	case v < d.min:
		return fmt.Sprintf("at least %g", d.min)
	case v <= d.above:
		return fmt.Sprintf("above %g", d.above)
	case v > d.max:
		return fmt.Sprintf("at most %g", d.max)
	}
	return ""
}

// numberOption is how to read one option that holds a number.
type numberOption struct {
	key      parser.Key
	section  string
	option   string // folded
	usual    float64
	optional bool // usual holds where the option is absent
	implied  bool // and where the section is
	whole    bool // a whole number, which the firmware takes without a point only
	demand   demand
}

// read makes a setting of the option that is in force. Where the firmware
// would refuse the value, or needs one and finds none, the state is Unknown
// and says so.
func (c *config) read(f numberOption) parser.Setting[float64] {
	s := parser.Setting[float64]{Key: f.key}
	o := adopt(c, &s, f.section, f.option)
	switch {
	case o == nil && s.State == parser.Unknown && f.implied:
		name := "[" + f.section + "] " + f.option
		return parser.Setting[float64]{Key: f.key, State: parser.Default, Value: f.usual, Name: name}
	case o == nil && s.State == parser.Unknown:
		return s
	case o == nil && f.optional:
		s.Value = f.usual
		return s
	case o == nil:
		s.State = parser.Unknown
		s.At = c.headingSpan(f.section)
		s.Why = fmt.Sprintf("[%s] has no %s, and the firmware does not start without it", f.section, f.option)
		return s
	}
	v, ok := number(s.Written)
	switch unmet := f.demand.unmet(v); {
	case !ok:
		s.State = parser.Unknown
		s.Why = fmt.Sprintf("%s is %s, which is no number; the firmware does not start with it",
			s.Name, quoted(s.Written))
	case f.whole && strings.Trim(s.Written, "+-_0123456789") != "":
		s.State = parser.Unknown
		s.Why = fmt.Sprintf("%s is %s and must be a whole number without a point; "+
			"the firmware does not start with it", s.Name, quoted(s.Written))
	case unmet != "":
		s.State = parser.Unknown
		s.Why = fmt.Sprintf("%s is %s and must be %s; the firmware does not start with it",
			s.Name, quoted(s.Written), unmet)
	case math.IsNaN(v) || math.IsInf(v, 0):
		s.State = parser.Unknown
		s.Why = fmt.Sprintf("%s is %s, which switches off every comparison that it takes part in",
			s.Name, quoted(s.Written))
	default:
		s.Value = v
	}
	return s
}

// noKey is for a figure that is no setting of its own.
const noKey parser.Key = ""

// required reads an option without which the firmware does not start.
func (c *config) required(key parser.Key, section, option string, d demand) parser.Setting[float64] {
	return c.read(numberOption{key: key, section: section, option: option, demand: d})
}

// optional reads an option in whose absence the usual figure holds.
func (c *config) optional(
	key parser.Key, section, option string, usual float64, d demand,
) parser.Setting[float64] {
	return c.read(numberOption{
		key: key, section: section, option: option, usual: usual, optional: true, demand: d,
	})
}

// flag reads an option that is on or off, as Python's configparser does.
func (c *config) flag(section, option string, usual bool) bool {
	text, _ := c.value(section, option)
	switch strings.ToLower(text) {
	case "1", "yes", "true", "on":
		return true
	case "0", "no", "false", "off":
		return false
	}
	return usual
}

// adopt gives a setting the place, the name and the losers of an option. It
// returns nil where nobody sets the option: then the state is Unknown where
// the section is missing as well, and Default where it is there.
func adopt[T any](c *config, s *parser.Setting[T], section, name string) *option {
	sec := c.byName[section]
	if sec == nil {
		s.State = parser.Unknown
		s.At = c.nowhere()
		s.Why = fmt.Sprintf("there is no [%s]", section)
		return nil
	}
	s.Name = "[" + section + "] " + name
	o, hides := c.find(section, name)
	for _, h := range hides {
		s.Hides = append(s.Hides, c.place(h))
	}
	if o == nil {
		s.State = parser.Default
		return nil
	}
	s.State = parser.Set
	s.Place = c.place(o)
	s.Name = "[" + section + "] " + string(c.keyOf(o))
	return o
}

// headingSpan is the last place where a section is opened, else nowhere.
func (c *config) headingSpan(name string) parser.Span {
	s := c.byName[name]
	if s == nil || len(s.headers) == 0 {
		return c.nowhere()
	}
	h := s.headers[len(s.headers)-1]
	return parser.Span{File: h.file, Start: h.name, End: h.name + len(s.name)}
}

package sections

import (
	"bytes"
	"strings"
)

// figureKind is what a plain number in a macro is for.
type figureKind uint8

const (
	aTarget   figureKind = iota // of the hotend, °C
	anAdvance                   // pressure advance of the hotend, s
)

// hottest is above every hotend: what a name calls a temperature and is higher
// is something else.
const hottest = 500 // °C

// macroFigures yields the plain numbers of a macro or menu that are a target of
// the heater or an advance of the hotend, with the range of each, until yield
// says stop.
func (c *config) macroFigures(
	s *section, heater, hotend string, yield func(o *option, from, to int, what figureKind) bool,
) {
	for _, i := range s.options {
		o := &c.options[i]
		key := c.keyOf(o)
		isCode := isKey(key, "gcode")
		isVariable := len(key) > len("variable_") && isKey(key[:len("variable_")], "variable_")
		if o.hidden || !isCode && !isVariable || isCode && !mayMatter(o.file.Data[o.value:o.valueEnd]) {
			continue
		}
		name := fold(key)
		if winner, _ := c.findIn(s, name); winner != o {
			continue
		}
		going := true
		o.pieces(func(at int, piece []byte) {
			found := func(from, to int, what figureKind) {
				if going && to > from {
					going = yield(o, at+from, at+to, what)
				}
			}
			if isVariable {
				inVariable(name[len("variable_"):], piece, found)
				return
			}
			from, to := target(piece, heater)
			found(from, to, aTarget)
			from, to = advance(piece, hotend)
			found(from, to, anAdvance)
			inDefaults(piece, found)
		})
		if !going {
			return
		}
	}
}

// mayMatter passes over most macros at little cost.
func mayMatter(gcode []byte) bool {
	for _, word := range [...]string{"104", "109", "ARGET", "arget", "DVANCE", "dvance", "default"} {
		if bytes.Contains(gcode, []byte(word)) {
			return true
		}
	}
	return false
}

// inVariable finds the figures in a variable: a number, or a table with numbers
// by name.
func inVariable(name string, piece []byte, found func(from, to int, what figureKind)) {
	if literalNumber(piece) {
		switch {
		case isTemperature(name, false) && plausible(piece):
			found(0, len(piece), aTarget)
		case isAdvance(name):
			found(0, len(piece), anAdvance)
		}
		return
	}
	for at := 0; at < len(piece); {
		colon := bytes.IndexByte(piece[at:], ':')
		if colon < 0 {
			return
		}
		colon += at
		at = colon + 1
		entry := quotedBefore(piece[:colon])
		from := at
		for from < len(piece) && (piece[from] == ' ' || piece[from] == '\t') {
			from++
		}
		to := from
		for to < len(piece) && (piece[to] >= '0' && piece[to] <= '9' || piece[to] == '.') {
			to++
		}
		end := bytes.TrimLeft(piece[to:], " \t")
		if entry == "" || !literalNumber(piece[from:to]) || len(end) > 0 && end[0] != ',' && end[0] != '}' {
			continue
		}
		switch {
		case isTemperature(entry, true) && plausible(piece[from:to]):
			found(from, to, aTarget)
		case isAdvance(entry):
			found(from, to, anAdvance)
		}
	}
}

// quotedBefore is the name in quotes that a text ends with, "" where it ends
// otherwise.
func quotedBefore(text []byte) string {
	text = bytes.TrimRight(text, " \t")
	if len(text) == 0 || text[len(text)-1] != '\'' && text[len(text)-1] != '"' {
		return ""
	}
	quote, text := text[len(text)-1], text[:len(text)-1]
	return string(text[bytes.LastIndexByte(text, quote)+1:])
}

// inDefaults finds what a parameter is without its caller, as in
// params.NOZZLE_TEMP|default(240).
func inDefaults(piece []byte, found func(from, to int, what figureKind)) {
	const before, filter = "params.", "default("
	for at := 0; ; {
		n := bytes.Index(piece[at:], []byte(before))
		if n < 0 {
			return
		}
		start := at + n + len(before)
		at = start
		for at < len(piece) && inName(piece[at]) {
			at++
		}
		name := string(piece[start:at])
		rest := bytes.TrimLeft(piece[at:], " \t")
		if len(rest) == 0 || rest[0] != '|' {
			continue
		}
		rest = bytes.TrimLeft(rest[1:], " \t")
		if !bytes.HasPrefix(rest, []byte(filter)) {
			continue
		}
		rest = bytes.TrimLeft(rest[len(filter):], " \t")
		from := len(piece) - len(rest)
		to := from
		for to < len(piece) && (piece[to] >= '0' && piece[to] <= '9' || piece[to] == '.') {
			to++
		}
		at = to
		end := bytes.TrimLeft(piece[to:], " \t")
		if !literalNumber(piece[from:to]) || len(end) == 0 || end[0] != ')' && end[0] != ',' {
			continue
		}
		switch {
		case (isTemperature(name, false) || isTemperature(name, true)) && plausible(piece[from:to]):
			found(from, to, aTarget)
		case isAdvance(name):
			found(from, to, anAdvance)
		}
	}
}

// plausible reports whether a number can be the target of a hotend.
func plausible(text []byte) bool {
	v, ok := number(string(text))
	return ok && v <= hottest
}

// inName reports whether a byte may stand in the name of a variable.
func inName(b byte) bool {
	return b == '_' || b >= '0' && b <= '9' || b|0x20 >= 'a' && b|0x20 <= 'z'
}

// isTemperature reports whether a name is that of a hotend's target: it speaks
// of a temperature or, where ofHotend is asked, of the hotend, and of nothing
// else. The words are common practice, no source.
func isTemperature(name string, ofHotend bool) bool {
	var hot, temp bool
	for word := range strings.SplitSeq(strings.ToLower(name), "_") {
		switch word {
		case "bed", "chamber", "enclosure", "mcu", "host", "board", "fan", "min", "max", "limit",
			"time", "timeout", "delay", "wait", "speed", "offset", "tolerance", "delta", "step", "diff",
			"drop", "rise", "count", "index", "length", "id", "x", "y", "z":
			return false
		case "hot", "hotend", "nozzle", "extruder":
			hot = true
		case "temp", "temps", "temperature", "etemp":
			temp = true
		}
	}
	if ofHotend {
		return hot
	}
	return temp
}

// isAdvance reports whether a name is that of a pressure advance.
func isAdvance(name string) bool {
	var found bool
	for word := range strings.SplitSeq(strings.ToLower(name), "_") {
		switch word {
		case "pa", "advance":
			found = true
		case "smooth", "time", "step", "factor", "min", "max", "enable", "enabled":
			return false
		}
	}
	return found
}

// advance finds the plain number that a line sets the pressure advance of a
// hotend to. Without a name the command means the tool in use, which may be any.
func advance(line []byte, hotend string) (from, to int) {
	value := argumentsOf(line, "SET_PRESSURE_ADVANCE", "EXTRUDER", "ADVANCE")
	if name := value[0]; name != [2]int{} && string(line[name[0]:name[1]]) != hotend {
		return 0, 0
	}
	if at := value[1]; literalNumber(line[at[0]:at[1]]) {
		return at[0], at[1]
	}
	return 0, 0
}

// argumentsOf gives the ranges of the values of a line's arguments, empty ones
// where the line is another command or lacks one.
func argumentsOf(line []byte, command string, names ...string) [][2]int {
	values := make([][2]int, len(names))
	if n := bytes.IndexByte(line, ';'); n >= 0 {
		line = line[:n] // a comment of the console, which needs no white space before it
	}
	end := bytes.IndexAny(line, " \t")
	if end < 0 || !strings.EqualFold(string(line[:end]), command) {
		return values
	}
	for word := range words(line, end) {
		at := bytes.IndexByte(line[word[0]:word[1]], '=')
		if at < 0 {
			continue
		}
		for i, name := range names {
			if strings.EqualFold(string(line[word[0]:word[0]+at]), name) {
				values[i] = [2]int{word[0] + at + 1, word[1]}
			}
		}
	}
	return values
}

package sections

import (
	"bytes"
	"strings"

	"preflash/parser"
)

// mostPresets is more than anybody writes.
const mostPresets = 1000

// inMacros finds the temperatures that macros and menus set the heater to, and
// the pressure advance that they set for the hotend, as far as they are written
// as plain numbers: in a command, in a variable, in a table in a variable, as
// what a parameter is without its caller. What a template computes is left out,
// and so is what runs on a timer.
func (c *config) inMacros(heater, hotend string) (presets, advances []parser.Setting[float64]) {
	for _, s := range c.sections {
		if s.kind != "gcode_macro" && s.kind != "menu" {
			continue
		}
		full := false
		c.macroFigures(s, heater, hotend, func(o *option, from, to int, what figureKind) bool {
			at := parser.Span{File: o.file, Start: from, End: to}
			if full = len(presets)+len(advances) == mostPresets; full {
				c.remark(parser.RemarkGap, at, "more than %d figures of the hotend stand in macros; "+
					"those from here on are not looked at", mostPresets)
				return false
			}
			text := at.Text()
			v, ok := number(text)
			found := parser.Setting[float64]{
				Value: v, State: parser.Set, Name: "[" + s.name + "]",
				Place: parser.Place{At: at, Written: text, Saved: o.saved},
			}
			switch {
			case !ok, what == aTarget && v <= 0: // 0 switches off
			case what == aTarget:
				found.Key = parser.PresetOf(len(presets)+1, s.own)
				presets = append(presets, found)
			default:
				found.Key = parser.Carried("pressure advance of " + s.own)
				advances = append(advances, found)
			}
			return true
		})
		if full {
			break
		}
	}
	return presets, advances
}

// target finds the number that a console command gives the heater as its
// target; an empty range where it gives none. A command without a tool number
// means the tool in use, which may be any.
func target(line []byte, heater string) (from, to int) {
	if n := bytes.IndexByte(line, ';'); n >= 0 {
		line = line[:n] // a comment of the console, which needs no white space before it
	}
	end := bytes.IndexAny(line, " \t")
	if end < 0 {
		end = len(line)
	}
	if len(line) > len("M104") && (line[0] == 'M' || line[0] == 'm') && (line[4] < '0' || line[4] > '9') {
		end = len("M104") // its first parameter may follow without a space
	}
	switch command := strings.ToUpper(string(line[:end])); {
	case command == "SET_HEATER_TEMPERATURE":
		found := argumentsOf(line, command, "HEATER", "TARGET")
		name, value := found[0], found[1]
		if string(line[name[0]:name[1]]) == heater && literalNumber(line[value[0]:value[1]]) {
			return value[0], value[1]
		}
	case command == "M104" || command == "M109":
		tool, value := [2]int{}, [2]int{}
		for word := range words(line, end) {
			argument := [2]int{word[0] + 1, word[1]}
			switch line[word[0]] {
			case 'T', 't':
				tool = argument
			case 'S', 's':
				value = argument
			}
		}
		if tool != [2]int{} {
			number := strings.TrimLeft(string(line[tool[0]:tool[1]]), "0")
			if number == "" && hotendName(0) != heater || number != "" && "extruder"+number != heater {
				return 0, 0
			}
		}
		if literalNumber(line[value[0]:value[1]]) {
			return value[0], value[1]
		}
	}
	return 0, 0
}

// words yields the ranges of the words of a line from an offset on. A template
// in braces belongs to the word that it stands in.
func words(line []byte, at int) func(yield func([2]int) bool) {
	return func(yield func([2]int) bool) {
		for at < len(line) {
			for at < len(line) && (line[at] == ' ' || line[at] == '\t') {
				at++
			}
			start, depth := at, 0
			for at < len(line) && (depth > 0 || line[at] != ' ' && line[at] != '\t') {
				switch line[at] {
				case '{':
					depth++
				case '}':
					depth--
				}
				at++
			}
			if at > start && !yield([2]int{start, at}) {
				return
			}
		}
	}
}

// literalNumber reports whether a word is a plain decimal number.
func literalNumber(word []byte) bool {
	digits := 0
	for i, c := range word {
		switch {
		case c >= '0' && c <= '9':
			digits++
		case c == '.' && bytes.IndexByte(word[:i], '.') < 0:
		default:
			return false
		}
	}
	return digits > 0
}

// loadLengths finds lengths of filament that macros keep as plain numbers.
func (c *config) loadLengths() (list []parser.Setting[float64]) {
	for _, s := range c.sections {
		if s.kind != "gcode_macro" {
			continue
		}
		for _, i := range s.options {
			o := &c.options[i]
			key := c.keyOf(o)
			if len(key) <= len("variable_") || !isKey(key[:len("variable_")], "variable_") || o.hidden {
				continue
			}
			name := fold(key)
			if !isLength(name[len("variable_"):]) || !literalNumber([]byte(c.text(o))) {
				continue
			}
			if winner, _ := c.findIn(s, name); winner != o {
				continue
			}
			readable := strings.ReplaceAll(name[len("variable_"):], "_", " ")
			list = append(list, c.required(parser.Carried(readable+" of "+s.own), s.name, name, anything))
		}
	}
	return list
}

// isLength reports whether a variable's name says that it is a length of
// filament that is loaded, unloaded or retracted.
func isLength(name string) bool {
	var moves, measures bool
	for word := range strings.SplitSeq(name, "_") {
		switch word {
		case "load", "unload", "retract", "retraction", "unretract", "prime", "purge":
			moves = true
		case "length", "len", "distance", "dist", "amount", "mm":
			measures = true
		}
	}
	return moves && measures
}

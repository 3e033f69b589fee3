package defines

import (
	"bytes"
	"path"
	"strings"

	"preflash/parser"
)

// unrecognised reports options in force whose names look like a protection or
// a sensor, and which fit no option that is known. One that another value
// uses is the owner's own name for a figure, not an option.
func unrecognised(s *source) []parser.Remark {
	var remarks []parser.Remark
	var users map[string]string
	for name := range s.names {
		if !looksProtective(name) || option(name) {
			continue
		}
		m := s.macro(name)
		if m.winner == nil || m.winner.function {
			continue
		}
		if users == nil {
			users = usersOf(s)
		}
		if user, used := users[name]; used && user != name {
			continue
		}
		remarks = append(remarks, parser.Remark{Kind: parser.RemarkUnrecognised, At: m.winner.at,
			Text: name + " looks like a protection or a sensor and is not known here: " +
				"what it does is not checked"})
	}
	return remarks
}

// looksProtective looks at the words of a name. Names of pins are the board's.
func looksProtective(name string) bool {
	if strings.HasSuffix(name, "_PIN") {
		return false
	}
	for i := 0; i < len(name); {
		switch word := name[i:]; name[i] {
		case 'T':
			if strings.HasPrefix(word, "THERMAL_") || strings.HasPrefix(word, "THERMISTOR") ||
				strings.HasPrefix(word, "TEMP_SENSOR") {
				return true
			}
		case 'R':
			if strings.HasPrefix(word, "RUNAWAY") {
				return true
			}
		case 'M':
			if word == "MAXTEMP" || word == "MINTEMP" || word == "MAX_TEMP" || word == "MIN_TEMP" {
				return true
			}
		case 'W':
			if strings.HasPrefix(word, "WATCH_") && strings.Contains(word, "TEMP") {
				return true
			}
		case 'O':
			if word == "OVERSHOOT" || word == "OVERTEMP" {
				return true
			}
		}
		next := strings.IndexByte(name[i:], '_')
		if next < 0 {
			return false
		}
		i += next + 1
	}
	return false
}

// usersOf gives, for each word in the value of a define in force, the name that
// has the value; "" where several have.
func usersOf(s *source) map[string]string {
	users := make(map[string]string)
	for _, d := range s.all() {
		if d.active != parser.Yes {
			continue
		}
		for _, t := range tokenise(d.value(), nil) {
			if t.kind != tokenWord {
				continue
			}
			if user, used := users[t.text]; used && user != d.name {
				users[t.text] = ""
			} else {
				users[t.text] = d.name
			}
		}
	}
	return users
}

// buildFiles are files of the build that can set options apart from the
// headers.
var buildFiles = [...]string{"config.ini", "platformio.ini"}

// overrides names files beside the headers, or one or two folders up, that
// set options of their own. They are named, not read into the settings.
func overrides(t *parser.Tree, s *source) []parser.Remark {
	if len(s.files) == 0 {
		return nil
	}
	var remarks []parser.Remark
	dir := path.Dir(s.files[0].Path)
	for range 3 {
		for _, name := range buildFiles {
			if name = path.Join(dir, name); t.Exists(name) {
				remarks = append(remarks, override(t, s, name)...)
			}
		}
		if dir == "." || dir == "/" {
			break
		}
		dir = path.Dir(dir)
	}
	return remarks
}

// override looks into one build file.
func override(t *parser.Tree, s *source, name string) []parser.Remark {
	f, err := t.Open(name)
	if err != nil {
		return []parser.Remark{{Kind: parser.RemarkGap,
			Text: err.Error() + "; it could set options that the headers do not show"}}
	}
	var remarks []parser.Remark
	for start := 0; start < len(f.Data); {
		end := len(f.Data)
		if n := bytes.IndexByte(f.Data[start:], '\n'); n >= 0 {
			end = start + n
		}
		at := parser.Span{File: f, Start: start, End: end}
		start = end + 1
		line := bytes.TrimSpace(f.Data[at.Start:at.End])
		if len(line) == 0 || line[0] == ';' || line[0] == '#' {
			continue
		}
		if what := overridden(s, string(line)); what != "" {
			remarks = append(remarks, parser.Remark{Kind: parser.RemarkGap, At: at,
				Text: "the build sets " + what + " here, apart from the headers: " +
					"what it sets is not checked"})
		}
	}
	return remarks
}

// overridden says what a line of a build file sets: options by a flag, or all
// options from the file itself.
func overridden(s *source, line string) string {
	if key, value, found := strings.Cut(line, "="); found && strings.TrimSpace(key) == "ini_use_config" {
		if value = strings.TrimSpace(value); value != "" && value != "none" {
			return "options from an INI file"
		}
		return ""
	}
	var names []string
	fields := strings.Fields(line)
	for i, field := range fields {
		name, flag := strings.CutPrefix(field, "-D")
		if !flag {
			continue
		}
		if name == "" && i+1 < len(fields) {
			name = fields[i+1]
		}
		name, _, _ = strings.Cut(name, "=")
		if option(name) || isName(name) && len(s.mentions(name)) > 0 {
			names = append(names, name)
		}
	}
	return strings.Join(names, ", ")
}

package defines

import (
	"strings"

	"preflash/parser"
)

// refused says why the sheet cannot settle a name, or "". What the files, the
// firmware's own tables or the language say must not be overruled: it could
// hide an unprotected heater.
func (s *source) refused(d *parser.Define) string {
	n := &s.table.all[s.table.intern(d.Name)]
	switch {
	case !isName(d.Name):
		return "is no name of a macro; write NAME, or NAME=3"
	case reserved(d.Name):
		return "belongs to the language; remove it"
	case n.test != testNone:
		return "is one of the style's own tests; say what is defined of the names that it asks for"
	case s.isOption != nil && s.isOption(d.Name) || isFanPin(d.Name):
		return "is an option of the style, and what the files say of it counts; remove it here"
	case isMultiple(d.Name) || strings.HasPrefix(d.Name, own),
		n.derived && s.originOf(d.Name) != originBoard:
		return "is derived by the firmware from the options in the files; remove it here"
	case !d.Undefined && !isPlain(d.Value):
		return "has the value “" + parser.Quote(d.Value) + "”; it must be one whole number or one name"
	}
	return ""
}

// reserved reports whether a name means something to the preprocessor itself.
func reserved(name string) bool {
	switch name {
	case "defined", "true", "false", "and", "or", "not", "not_eq", "bitand", "bitor", "xor", "compl",
		"__VA_ARGS__", "__VA_OPT__", "__has_include", "__FILE__", "__LINE__", "__COUNTER__":
		return true
	}
	return false
}

// isFanPin reports whether a name is an output that a fan follows a hotend by.
func isFanPin(name string) bool {
	for n := range mostHotends {
		for _, spelling := range autoFanNames(n) {
			if name == spelling {
				return true
			}
		}
	}
	return false
}

// isPlain reports whether a value is one whole number or one name.
func isPlain(value string) bool {
	digits := strings.TrimPrefix(value, "-")
	if digits != "" && isDigit(digits[0]) {
		_, ok := wholeNumber(digits)
		return ok && numberEnd(digits, 0) == len(digits)
	}
	return isName(value)
}

// tell notes what the sheet says of names that are settled outside the files.
func (s *source) tell(outside []parser.Define) error {
	for i := range outside {
		d := &outside[i]
		if why := s.refused(d); why != "" {
			return parser.Errorf(d.At, "%s %s", parser.Quote(d.Name), why)
		}
		n := &s.table.all[s.table.intern(d.Name)]
		if n.sheetSays {
			return parser.Errorf(d.At,
				"%s stands in the sheet twice; say once whether it is defined", parser.Quote(d.Name))
		}
		n.sheetSays = true
	}
	return nil
}

// contradicted is the error where a file has a define of a name that the sheet
// settles, commented out or not; nil where none has.
func (s *source) contradicted(outside []parser.Define) error {
	for i := range outside {
		if found := s.mentions(outside[i].Name); len(found) > 0 {
			return parser.Errorf(outside[i].At,
				"%s stands in the files (%s), and what they say of it counts; "+
					"remove it here, or change it there",
				outside[i].Name, found[0].at)
		}
	}
	return nil
}

// outsideText is what the sheet says that board or build define, as if it
// stood above the first line.
func outsideText(outside []parser.Define) string {
	text := ""
	for _, d := range outside {
		if !d.Undefined {
			text += "#define " + d.Name + " " + d.Value + "\n"
		}
	}
	return text
}

package sheet

import (
	"fmt"
	"math"
	"strconv"
	"strings"
	"time"

	"preflash/parser"
)

// bounds is what a number may be. Its bounds tell a slip of the pen from a
// bounds: they are wider than anything that is built, not what is sensible.
type bounds struct {
	def      float64
	low      float64
	high     float64
	unit     string
	required bool
	open     bool // may be left blank, which is as if it were not given
}

// Bounds that several keys share. 60 V is the limit of extra-low DC voltage
// (IEC 61140); the others are common practice, no source.
func voltage() bounds     { return bounds{low: 3, high: 60, unit: "V"} }
func temperature() bounds { return bounds{low: 40, high: 1000, unit: "°C"} }
func power() bounds       { return bounds{low: 0, high: 5000, unit: "W"} }

func (f bounds) needed() bounds               { f.required = true; return f }
func (f bounds) mayStay() bounds              { f.open = true; return f }
func (f bounds) or(def float64) bounds        { f.def = def; return f }
func (f bounds) within(l, h float64) bounds   { f.low, f.high = l, h; return f }
func span(low, high float64, u string) bounds { return bounds{low: low, high: high, unit: u} }

func (f bounds) String() string {
	text := fmt.Sprintf("a number from %s to %s", parser.Decimal(f.low), parser.Decimal(f.high))
	if f.unit != "" {
		text += " " + f.unit
	}
	return text
}

// take checks one number.
func (f bounds) take(v *value) (float64, string) {
	switch {
	case v.kind != numberValue && v.kind != wholeValue:
		return 0, "must be " + f.String() + ", not " + v.kind.String()
	case v.num < f.low || v.num > f.high:
		return 0, "impossible; it must be " + f.String()
	}
	return v.num, ""
}

func (s *scope) float(name string, f bounds) Key[float64] {
	if v := s.find(name); f.open && v != nil && v.blank() {
		s.walk.open = append(s.walk.open,
			fault{at: v.at, path: s.full(name), text: s.full(name) + " is blank and " + MayStay})
		return Key[float64]{Value: f.def, At: v.at, Path: s.full(name)}
	}
	return get(s, name, f.required, f.def, f.String, f.take)
}

func (s *scope) whole(name string, def, low, high int) Key[int] {
	what := func() string { return fmt.Sprintf("a whole number from %d to %d", low, high) }
	return get(s, name, false, def, what, func(v *value) (int, string) {
		switch {
		case v.kind != wholeValue:
			return 0, "must be " + what() + ", not " + v.kind.String()
		case v.whole < int64(low) || v.whole > int64(high):
			return 0, "impossible; it must be " + what()
		}
		return int(v.whole), ""
	})
}

func (s *scope) truth(name string) Key[bool] {
	return get(s, name, false, false, words("true or false"), func(v *value) (bool, string) {
		if v.kind != boolValue {
			return false, "must be true or false, not " + v.kind.String()
		}
		return v.yes, ""
	})
}

func (s *scope) text(name string, required bool, what string) Key[string] {
	return get(s, name, required, "", words(what), takeText)
}

// maxLabel is how many bytes are kept of a name or a reason: it is only shown.
const maxLabel = 200

// label is text that is only shown.
func (s *scope) label(name string, required bool, what string) Key[string] {
	k := s.text(name, required, what)
	k.Value = parser.Clip(k.Value, maxLabel)
	return k
}

func takeText(v *value) (string, string) {
	if v.kind != textValue {
		return "", "must be text between double quotes, not " + v.kind.String()
	}
	return v.text, ""
}

func (s *scope) day(name string, required bool, what string) Key[time.Time] {
	return get(s, name, required, time.Time{}, words(what), func(v *value) (time.Time, string) {
		if v.kind != dateValue {
			return time.Time{}, "must be a date without quotes, such as 2027-03-31"
		}
		return v.date, ""
	})
}

// choice reads one of a few words.
func choice[T ~string](s *scope, name string, required bool, def T, options ...T) Key[T] {
	known := func() []string {
		list := make([]string, len(options))
		for i, o := range options {
			list[i] = string(o)
		}
		return list
	}
	what := func() string { return `"` + strings.Join(known(), `" or "`) + `"` }
	return get(s, name, required, def, what, func(v *value) (T, string) {
		text, problem := takeText(v)
		if problem != "" {
			return "", problem
		}
		for _, o := range options {
			if text == string(o) {
				return o, ""
			}
		}
		if near := parser.Nearest(text, known()); near != "" {
			return "", fmt.Sprintf("not known; did you mean %q?", near)
		}
		return "", "not known; it must be " + what()
	})
}

// pairs reads a list of [first, second], such as a curve; the first figures
// must rise.
func (s *scope) pairs(name string, first, second bounds, least int) Key[[][2]float64] {
	what := func() string {
		return fmt.Sprintf("a list of at least %d pairs [%s, %s]", least, first.unit, second.unit)
	}
	return get(s, name, false, nil, what, func(v *value) ([][2]float64, string) {
		if v.kind != listValue {
			return nil, "must be " + what() + ", not " + v.kind.String()
		}
		if len(v.list) < least {
			return nil, "must be " + what()
		}
		list := make([][2]float64, len(v.list))
		for i, e := range v.list {
			pair, problem := takePair(e, first, second)
			nth := "pair " + strconv.Itoa(i+1)
			switch {
			case problem != "":
				return nil, nth + " " + problem
			case i > 0 && pair[0] <= list[i-1][0]:
				return nil, nth + " is out of order; sort the pairs so that the " + first.unit + " rise"
			}
			list[i] = pair
		}
		return list, ""
	})
}

func takePair(v *value, first, second bounds) (pair [2]float64, problem string) {
	if v.kind != listValue || len(v.list) != 2 {
		return pair, fmt.Sprintf("must be [%s, %s]", first.unit, second.unit)
	}
	for i, f := range [2]bounds{first, second} {
		x, problem := f.take(v.list[i])
		if problem != "" {
			return pair, "is wrong in its " + [2]string{"first", "second"}[i] + " figure: " + problem
		}
		pair[i] = x
	}
	return pair, ""
}

// paths reads a list of paths relative to the sheet.
func (s *scope) paths(
	name string, required bool, dir string, resolve func(dir, name string) (string, string),
) []Key[string] {
	type item struct {
		path string
		at   parser.Span
	}
	take := func(v *value) ([]item, string) {
		if v.kind != listValue {
			return nil, "must be a list of paths, written [\"…\"]"
		}
		var list []item
		for _, e := range v.list {
			text, problem := takeText(e)
			if problem != "" {
				return nil, "each path " + problem
			}
			p, problem := resolve(dir, text)
			if problem != "" {
				s.walk.wrong(e, s.full(name), problem)
				continue
			}
			list = append(list, item{p, e.at})
		}
		return list, ""
	}
	k := get(s, name, required, nil, words("a list of paths relative to the sheet"), take)
	var keys []Key[string]
	for _, i := range k.Value {
		keys = append(keys, Key[string]{Value: i.path, Given: true, At: i.at, Path: k.Path})
	}
	return keys
}

// maxDefines bounds how much board and build may define.
const maxDefines = 100

// defines reads a list of names that are settled from outside the files. A
// name that is defined without a value is 1, as compilers have it.
func (s *scope) defines(name string, defined bool) []parser.Define {
	form := `a list of names, written ["NAME"]`
	if defined {
		form = `a list of names with or without a value, written ["NAME", "NAME=3"]`
	}
	return get(s, name, false, nil, words(form), func(v *value) ([]parser.Define, string) {
		if v.kind != listValue {
			return nil, "must be " + form
		}
		if len(v.list) > maxDefines {
			return nil, "holds more than 100 names; no build needs so many"
		}
		var list []parser.Define
		for _, e := range v.list {
			text, problem := takeText(e)
			if problem != "" {
				return nil, "each name " + problem
			}
			d := parser.Define{Name: text, Value: "1", Undefined: !defined, At: e.at}
			if defined {
				if key, value, given := strings.Cut(text, "="); given {
					d.Name, d.Value = strings.TrimSpace(key), strings.TrimSpace(value)
				}
			}
			list = append(list, d)
		}
		return list, ""
	}).Value
}

// rising reports whether the second figures rise (or fall, for up false) all
// the way.
func rising(pairs [][2]float64, up bool) bool {
	for i := 1; i < len(pairs); i++ {
		if d := pairs[i][1] - pairs[i-1][1]; d == 0 || math.Signbit(d) == up {
			return false
		}
	}
	return true
}

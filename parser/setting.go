package parser

import (
	"fmt"
	"strconv"
	"strings"
)

// State says how a setting got its value.
type State uint8

const (
	Absent  State = iota // the style or the configuration has no such thing
	Default              // nobody set it: Value is what the firmware assumes
	Set                  // the configuration sets it
	Off                  // switched off, or left out where that means off
	Unknown              // it cannot be told; Why says the reason
)

func (s State) String() string {
	return [...]string{"absent", "default", "set", "off", "unknown"}[s]
}

// Key is the neutral name of a setting, such as "max temp". Rules and
// changes use keys; only a style knows how a key is spelled.
type Key string

// Place is somewhere a setting is written.
type Place struct {
	At      Span   // the bytes of the value; the name where there is no value
	Written string // its text
	Saved   bool   // written by the firmware itself, in its saved block
}

// Setting is one named thing that a rule cares about, whatever its spelling.
type Setting[T any] struct {
	Key   Key
	Value T
	State State
	Place         // where the winning value stands; zero for a default
	Name  string  // as the style spells it, such as an option's name
	Hides []Place // the other active places that set it and lose
	Why   string  // for Unknown: what could not be told, with the condition quoted

	// Least and Most are the values that the firmware's own checks accept, where
	// they look at this setting; zero where they do not.
	Least, Most T
}

// Known reports whether Value is what the firmware will use.
func (s *Setting[T]) Known() bool { return s.State == Set || s.State == Default }

// To proposes another value.
func (s *Setting[T]) To(value T) Change { return Change{Key: s.Key, Value: value} }

// Describe makes the setting fit for a list of settings of all types.
func (s *Setting[T]) Describe() Description {
	return Description{s.Key, any(s.Value), s.State, s.Place, s.Name, s.Hides, s.Why}
}

// Cause is what an unknown setting hangs on.
type Cause struct {
	// Name is what would settle it, defined outside the files; "" where nothing
	// that a sheet can say would.
	Name      string
	Condition Span   // the condition or the value that asks for it
	Quoted    string // the condition, quoted, with file and line; "" where it is a value
}

// Description is a Setting whose type was forgotten, for listings.
type Description struct {
	Key   Key
	Value any
	State State
	Place
	Name  string
	Hides []Place
	Why   string
}

// Text is the value as a person reads it.
func (s Description) Text() string {
	if s.State == Unknown {
		return "?"
	}
	switch v := s.Value.(type) {
	case float64:
		if s.State == Off {
			return "none"
		}
		return strings.TrimSpace(strconv.FormatFloat(v, 'g', 6, 64) + " " + s.Key.Unit())
	case bool:
		if v && s.State != Off {
			return "on"
		}
		return "off"
	case SensorDef:
		return v.String()
	case string:
		if s.State == Off {
			return "none"
		}
		return v
	}
	return fmt.Sprint(s.Value)
}

// Change is "set this setting to that value", still without spelling. Value
// has the type of the setting: float64, bool, or SensorDef.
type Change struct {
	Key   Key
	Value any
}

// Edit replaces the bytes of a span; an empty span is an insertion. New uses
// the line endings of the file that it goes into.
type Edit struct {
	At  Span
	New string
	For Key // the setting that it changes
}

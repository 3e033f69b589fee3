package patch

import (
	"fmt"
	"reflect"
	"strings"

	"preflash/parser"
)

// resolve gives each setting one new value. Where several findings want the
// same setting, the lower limit and the tighter protection win.
func resolve(reasons []Reason) ([]parser.Change, error) {
	var changes []parser.Change
	index := make(map[parser.Key]int)
	for _, r := range reasons {
		for _, c := range r.Finding.Changes {
			i, wanted := index[c.Key]
			if !wanted {
				index[c.Key] = len(changes)
				changes = append(changes, c)
				continue
			}
			value, err := safer(c.Key, changes[i].Value, c.Value)
			if err != nil {
				return nil, fmt.Errorf("%s: %s wants the %s otherwise than another rule does: %w", r.Owner, r.Finding.Rule, c.Key, err)
			}
			changes[i].Value = value
		}
	}
	return changes, nil
}

// safer returns the value that protects more.
func safer(key parser.Key, a, b any) (any, error) {
	switch a := a.(type) {
	case float64:
		if b, ok := b.(float64); ok {
			if direction(key) == higherIsSafer {
				return max(a, b), nil
			}
			return min(a, b), nil
		}
	case bool: // every switch that a rule may change turns a protection on
		if b, ok := b.(bool); ok {
			return a || b, nil
		}
	default:
		if reflect.DeepEqual(a, b) {
			return a, nil
		}
	}
	return nil, fmt.Errorf("%v against %v; decide by hand", a, b)
}

type safety uint8

const (
	neutral safety = iota // neither way is safer as such
	lowerIsSafer
	higherIsSafer
)

// direction says which way a figure protects more.
func direction(key parser.Key) safety {
	switch key {
	case parser.MaxTemp,
		parser.HotendRiseWindow, parser.HotendHysteresis, parser.HotendHoldPeriod, parser.HotendErrorSum,
		parser.BedRiseWindow, parser.BedWatchHysteresis, parser.BedHoldPeriod, parser.BedErrorSum:
		return lowerIsSafer
	case parser.MinTemp, parser.MinExtrude, parser.HotendRise, parser.BedRise, parser.Margin:
		return higherIsSafer
	}
	for _, prefix := range []parser.Key{parser.PowerLimit(""), parser.Grace(""), parser.BadSamples(""), "preset "} {
		if strings.HasPrefix(string(key), string(prefix)) {
			return lowerIsSafer
		}
	}
	return neutral
}

package patch

import (
	"fmt"
	"reflect"

	"preflash/parser"
)

// safer returns the value that protects more: the lower limit, the tighter
// watch, the switch that is on.
func safer(key parser.Key, a, b any) (any, error) {
	switch {
	case reflect.DeepEqual(a, b), key.Looser(b, a):
		return a, nil
	case key.Looser(a, b):
		return b, nil
	}
	return nil, fmt.Errorf("the %s is wanted as %v and as %v, and neither protects more; decide by hand",
		key, a, b)
}

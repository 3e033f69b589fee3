// Package jsontext writes JSON that hides nothing and holds no digit of noise.
package jsontext

import (
	"bytes"
	"encoding/json"
	"fmt"
	"io"
	"math"
	"reflect"
	"unicode/utf16"
	"unicode/utf8"

	"preflash/parser"
)

// Digits is how many significant digits a number keeps: more is noise, and may
// differ between processors.
const Digits = 6

// Value rounds numbers to Digits. What is no number in JSON (infinite, not a number)
// becomes null.
func Value(value any) any {
	switch v := value.(type) {
	case float64:
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return nil
		}
		if v == 0 {
			return 0.0 // also where it was a negative zero
		}
		return parser.Significant(v, Digits)
	case nil, bool, int, string:
		return v
	}
	switch v := reflect.ValueOf(value); v.Kind() {
	case reflect.Pointer:
		if v.IsNil() {
			return nil
		}
		return Value(v.Elem().Interface())
	case reflect.Slice, reflect.Array:
		list := make([]any, v.Len())
		for i := range list {
			list[i] = Value(v.Index(i).Interface())
		}
		return list
	}
	return fmt.Sprint(value)
}

// Write prints v with characters that hide or act escaped, which
// encoding/json leaves as they are above U+007E. Outside of strings there
// are none but line breaks.
func Write(w io.Writer, v any) error {
	var plain bytes.Buffer
	encoder := json.NewEncoder(&plain)
	encoder.SetIndent("", "  ")
	if err := encoder.Encode(v); err != nil {
		return err
	}
	out := make([]byte, 0, plain.Len())
	for _, r := range plain.String() {
		switch {
		case r == '#' && len(out) > 0 && out[len(out)-1] == '#':
			out = append(out, `\u0023`...) // as patch.Harmless has it
		case r == '\n' || !parser.Hidden(r):
			out = utf8.AppendRune(out, r)
		case r > 0xffff:
			high, low := utf16.EncodeRune(r)
			out = fmt.Appendf(out, `\u%04x\u%04x`, high, low)
		default:
			out = fmt.Appendf(out, `\u%04x`, r)
		}
	}
	_, err := w.Write(out)
	return err
}

// OrNull is null for an empty text.
func OrNull(s string) *string {
	if s == "" {
		return nil
	}
	return &s
}

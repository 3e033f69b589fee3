package sections

import (
	"strings"
	"unicode"
	"unicode/utf8"
)

// fold gives a key as the firmware compares it: Python's str.lower, which
// differs from Go's for two letters.
func fold(key []byte) string {
	for i, c := range key {
		switch {
		case c >= utf8.RuneSelf:
			return foldAny(string(key))
		case c >= 'A' && c <= 'Z':
			lower := make([]byte, len(key))
			copy(lower, key[:i])
			for j := i; j < len(key); j++ {
				if c = key[j]; c >= utf8.RuneSelf {
					return foldAny(string(key))
				}
				if c >= 'A' && c <= 'Z' {
					c += 'a' - 'A'
				}
				lower[j] = c
			}
			return string(lower)
		}
	}
	return string(key)
}

// isKey reports whether a key as written folds to name.
func isKey(key []byte, name string) bool {
	for i := range min(len(key), len(name)) {
		c := key[i]
		if c >= 'A' && c <= 'Z' {
			c += 'a' - 'A'
		}
		if c != name[i] {
			return (c >= utf8.RuneSelf || !ascii(key[i:])) && fold(key) == name
		}
	}
	return len(key) == len(name) || !ascii(key) && fold(key) == name
}

func ascii(b []byte) bool {
	for _, c := range b {
		if c >= utf8.RuneSelf {
			return false
		}
	}
	return true
}

func foldAny(key string) string {
	var b strings.Builder
	for at := 0; at < len(key); {
		r, n := utf8.DecodeRuneInString(key[at:])
		switch {
		case r == utf8.RuneError && n == 1:
			b.WriteByte(key[at])
		case r == 'İ':
			b.WriteString("i̇")
		case r == 'Σ' && finalSigma(key[:at], key[at+n:]):
			b.WriteRune('ς')
		default:
			b.WriteRune(unicode.ToLower(r))
		}
		at += n
	}
	return b.String()
}

// finalSigma is the Unicode condition Final_Sigma (The Unicode Standard,
// section 3.13): a cased letter stands before and none after, characters that
// case ignores passed over.
func finalSigma(before, after string) bool {
	for before != "" {
		r, n := utf8.DecodeLastRuneInString(before)
		if before = before[:len(before)-n]; caseIgnorable(r) {
			continue
		}
		if !cased(r) {
			return false
		}
		for _, r := range after {
			if !caseIgnorable(r) {
				return !cased(r)
			}
		}
		return true
	}
	return false
}

func cased(r rune) bool {
	return unicode.In(r, unicode.Lu, unicode.Ll, unicode.Lt, unicode.Other_Lowercase, unicode.Other_Uppercase)
}

func caseIgnorable(r rune) bool {
	switch r { // Word_Break: MidLetter, MidNumLet, Single_Quote
	case '\'', '.', ':', '·', '\u0387', '\u055f', '\u05f4', '\u2018', '\u2019', '\u2024', '\u2027',
		'\ufe13', '\ufe52', '\ufe55', '\uff07', '\uff0e', '\uff1a':
		return true
	}
	return unicode.In(r, unicode.Mn, unicode.Me, unicode.Cf, unicode.Lm, unicode.Sk)
}

// Package plaintext lays out text for people: in lines, in columns and in colour.
package plaintext

import (
	"strings"
	"unicode"
	"unicode/utf8"

	"preflash/patch"
)

// Wrap breaks text between words into lines of at most so many characters. A
// figure keeps its unit beside it, and a flag the word before: two dashes at the
// start of a line could be a command to a service. A word that is too long stands
// alone.
func Wrap(text string, width int) []string {
	var lines []string
	var line strings.Builder
	used := 0
	for _, word := range JoinUnits(strings.Fields(text)) {
		n := utf8.RuneCountInString(word)
		if used > 0 && used+1+n > width {
			lines = append(lines, line.String())
			line.Reset()
			used = 0
		}
		if used > 0 {
			line.WriteByte(' ')
			used++
		}
		line.WriteString(word)
		used += n
	}
	return append(lines, line.String())
}

// Hanging wraps untrusted text, the first line behind a head and the others behind
// an indent. Neither counts for the width.
func Hanging(head, indent, text string, width int) string {
	var b strings.Builder
	for _, line := range Wrap(patch.Visible(text), width) {
		b.WriteString(head + line + "\n")
		head = indent
	}
	return b.String()
}

// JoinUnits joins each figure with the unit that follows it, and each flag with the
// word before it.
func JoinUnits(words []string) []string {
	var joined []string
	for _, word := range words {
		last := len(joined) - 1
		if last >= 0 && (endsInDigit(joined[last]) && isUnit(word) || strings.HasPrefix(word, "--")) {
			joined[last] += " " + word
			continue
		}
		joined = append(joined, word)
	}
	return joined
}

func endsInDigit(word string) bool {
	r, _ := utf8.DecodeLastRuneInString(word)
	return unicode.IsDigit(r)
}

func isUnit(word string) bool {
	switch strings.TrimRight(word, ",.;:)") {
	case "°C", "K", "s", "min", "W", "V", "A", "Ω", "kΩ", "%", "mm", "mm/s", "mm³/s",
		"J/K", "W/K", "°C·s":
		return true
	}
	return false
}

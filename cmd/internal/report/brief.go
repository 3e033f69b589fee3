package report

import (
	"iter"
	"unicode/utf8"

	"preflash/cmd/internal/plaintext"
)

// clauses gives the beginnings of a message that end with a clause, the short
// ones first, each with the mark that follows it. What stands in brackets is no
// clause.
func clauses(message string) iter.Seq2[string, byte] {
	return func(yield func(string, byte) bool) {
		open := 0
		for i := range max(0, len(message)-1) {
			switch mark := message[i]; mark {
			case '(':
				open++
			case ')':
				open--
			case ':', ';', ',':
				if open <= 0 && message[i+1] == ' ' && !yield(message[:i], mark) {
					return
				}
			}
		}
	}
}

// action is the beginning of a message, which says what to do: up to its reason.
func action(message string) string {
	for text, mark := range clauses(message) {
		if mark != ',' {
			return text
		}
	}
	return message
}

// fit shortens a message to so many characters: it ends with the last of its
// clauses that fits. A clause is never cut, save that there is no shorter one.
func fit(message string, width int) string {
	if utf8.RuneCountInString(message) <= width {
		return message
	}
	best := ""
	for text := range clauses(message) {
		if utf8.RuneCountInString(text) <= width {
			best = text
		}
	}
	if best == "" {
		return plaintext.Wrap(message, width-2)[0] + " …"
	}
	return best
}

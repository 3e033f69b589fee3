package plaintext

import (
	"fmt"
	"strings"
)

// Sentence begins a text with a capital letter, where it begins with a plain
// word, and ends it with a full stop.
func Sentence(text string) string {
	word, _, _ := strings.Cut(text, " ")
	if word != "" && strings.Trim(word, "abcdefghijklmnopqrstuvwxyz") == "" {
		text = strings.ToUpper(text[:1]) + text[1:]
	}
	if text != "" && !strings.HasSuffix(text, ".") {
		text += "."
	}
	return text
}

// Plural writes a number of things with their English word.
func Plural(n int, word string) string {
	if n == 1 {
		return "1 " + word
	}
	return fmt.Sprintf("%d %ss", n, word)
}

// Join lists words, the last one after "and" or "or".
func Join(words []string, last string) string {
	if n := len(words); n > 1 {
		return strings.Join(words[:n-1], ", ") + " " + last + " " + words[n-1]
	}
	return strings.Join(words, "")
}

// Remarks are what there is to say, one by one.
type Remarks []string

// Add formats a remark and adds it.
func (r *Remarks) Add(format string, args ...any) { *r = append(*r, fmt.Sprintf(format, args...)) }

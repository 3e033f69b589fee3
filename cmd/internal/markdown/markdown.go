// Package markdown escapes text for Markdown, so that it can neither format, link,
// mention nor hide anything.
package markdown

import (
	"strings"

	"preflash/patch"
)

// Fence gives more backticks than a text holds in a row, at least so many.
func Fence(text string, least int) string {
	run := 0
	for i := range len(text) {
		if run++; text[i] != '`' {
			run = 0
		}
		least = max(least, run+1)
	}
	return strings.Repeat("`", least)
}

// Code gives text as a code span, between more backticks than it holds in a row.
func Code(text string) string {
	text = patch.Harmless(patch.Visible(text))
	fence := Fence(text, 1)
	if len(fence) > 1 || strings.TrimSpace(text) == "" || strings.HasPrefix(text, " ") &&
		strings.HasSuffix(text, " ") {
		text = " " + text + " " // one on each side is taken away again
	}
	return fence + text + fence
}

// Escape escapes text for one line of Markdown. Punctuation that formats gets a
// backslash (CommonMark 2.4), what HTML knows its entity. An empty comment
// keeps forges from reading a mention, a reference, a link or a picture name in
// what is left.
func Escape(text string) string {
	const nothing = "<!-- -->"
	var b strings.Builder
	runes := []rune(strings.Join(strings.Fields(patch.Visible(text)), " "))
	for i, r := range runes {
		switch {
		case r == '&':
			b.WriteString("&amp;")
		case r == '<':
			b.WriteString("&lt;")
		case r == '>':
			b.WriteString("&gt;")
		case strings.ContainsRune("\\`*_{}[]()!|~$#", r):
			b.WriteByte('\\')
			fallthrough
		default:
			b.WriteRune(r)
		}
		beforeWord := i+1 < len(runes) && runes[i+1] != ' '
		if beforeWord && (strings.ContainsRune("@#:", r) || r == '.' && i > 0 && (runes[i-1]|' ') == 'w') {
			b.WriteString(nothing)
		}
	}
	return b.String()
}

package defines

import (
	"strings"
	"unicode/utf8"
)

type tokenKind uint8

const (
	tokenEnd tokenKind = iota
	tokenWord
	tokenNumber // a preprocessing number: any spelling that starts with a digit
	tokenChar
	tokenString
	tokenMark    // an operator, a bracket, or a stray character
	tokenUnknown // the value of a macro whose state cannot be told
	tokenEmpty   // stands for an empty argument next to ##
)

// token is one preprocessing token.
type token struct {
	text    string
	kind    tokenKind
	space   bool  // white space stands before it
	painted bool  // names a macro inside that macro's own expansion: never expanded
	arg     int16 // in a macro's body: parameter number + 1
}

// tokenise splits text that holds no splices and comments. It stops after more
// tokens than any expansion may have.
func tokenise(text string, tokens []token) []token {
	for p := 0; ; {
		if len(tokens) > maxExpansion {
			return tokens
		}
		q := skipBlanks(text, p)
		if q == len(text) {
			return tokens
		}
		t := token{space: q > p}
		p = q
		t.kind, q = nextToken(text, p)
		t.text = text[p:q]
		if t.kind == tokenMark && t.text[0] == '%' { // digraphs
			switch t.text {
			case "%:":
				t.text = "#"
			case "%:%:":
				t.text = "##"
			}
		}
		tokens = append(tokens, t)
		p = q
	}
}

func nextToken(text string, p int) (tokenKind, int) {
	c := text[p]
	switch {
	case isNameStart(c) || c >= utf8.RuneSelf:
		q := wordEnd(text, p)
		if q == p {
			return tokenMark, p + 1
		}
		if q < len(text) && (text[q] == '"' || text[q] == '\'') && isPrefix(text[p:q], text[q]) {
			return quotedEnd(text, p, q)
		}
		return tokenWord, q
	case isDigit(c) || c == '.' && p+1 < len(text) && isDigit(text[p+1]):
		return tokenNumber, numberEnd(text, p)
	case c == '"' || c == '\'':
		return quotedEnd(text, p, p)
	}
	return tokenMark, p + markLength(text[p:])
}

// isPrefix reports whether a word belongs to the constant that follows it.
func isPrefix(word string, quote byte) bool {
	switch word {
	case "L", "u", "U", "u8":
		return true
	case "R", "LR", "uR", "UR", "u8R":
		return quote == '"'
	}
	return false
}

func numberEnd(text string, p int) int {
	for p++; p < len(text); p++ {
		c := text[p]
		switch {
		case isDigit(c) || isNameStart(c) || c == '.':
		case (c == '+' || c == '-') && strings.IndexByte("eEpP", text[p-1]) >= 0:
		case c == '\'' && p+1 < len(text) && (isDigit(text[p+1]) || isNameStart(text[p+1])):
		default:
			return p
		}
	}
	return p
}

// quotedEnd ends the constant whose prefix starts at p and whose quote is at
// q. One that nothing closes is a stray mark of all the rest.
func quotedEnd(text string, p, q int) (tokenKind, int) {
	kind, quote := tokenString, text[q]
	if quote == '\'' {
		kind = tokenChar
	}
	if closing := rawClosing(text[p:], q-p); closing != "" {
		if n := strings.Index(text[q:], closing); n >= 0 {
			return kind, q + n + len(closing)
		}
		return tokenMark, len(text)
	}
	for end := q + 1; end < len(text); end++ {
		switch text[end] {
		case quote:
			return kind, end + 1
		case '\\':
			end++
		}
	}
	return tokenMark, len(text)
}

// rawClosing returns what closes the raw string that starts with a prefix and
// the quote at q; "" where it is none.
func rawClosing(text string, q int) string {
	if q <= 0 || text[q] != '"' || text[q-1] != 'R' {
		return ""
	}
	n := strings.IndexAny(text[q+1:min(q+18, len(text))], "( )\\\t\v\f\n\r\"")
	if n < 0 || text[q+1+n] != '(' {
		return ""
	}
	return ")" + text[q+1:q+1+n] + `"`
}

// marks are the operators of more than one character, the longer ones first.
var marks = [...]string{"%:%:", "...", "<<=", ">>=", "->*",
	"##", "&&", "||", "==", "!=", "<=", ">=", "<<", ">>", "->", "++", "--",
	"+=", "-=", "*=", "/=", "%=", "&=", "|=", "^=", "::", ".*", "%:"}

func markLength(text string) int {
	if len(text) > 1 && strings.IndexByte("%.<>=-&|+#:*", text[1]) >= 0 {
		for _, m := range &marks {
			if strings.HasPrefix(text, m) {
				return len(m)
			}
		}
	}
	return 1
}

// spell writes tokens down with single blanks where white space stood.
func spell(tokens []token) string {
	var b strings.Builder
	for i, t := range tokens {
		if t.space && i > 0 {
			b.WriteByte(' ')
		}
		b.WriteString(t.text)
	}
	return b.String()
}

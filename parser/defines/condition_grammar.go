package defines

import (
	"errors"
	"io"
	"strings"
	"sync"

	"github.com/alecthomas/participle/v2"
	"github.com/alecthomas/participle/v2/lexer"
)

// The grammar of expressions. Operators of two sides stand in a flat list, so
// that a long chain needs no deep recursion; their precedence is applied when
// the list is computed.

type list struct {
	Items []*choice `parser:"@@ ( ',' @@ )*"`
}

type choice struct {
	Test *chain  `parser:"@@"`
	Yes  *list   `parser:"( '?' @@"`
	No   *choice `parser:"  ':' @@ )?"`
}

type chain struct {
	First *operand `parser:"@@"`
	Rest  []*step  `parser:"@@*"`
}

type step struct {
	Op    string   `parser:"@( Binary | Sign )"`
	Right *operand `parser:"@@"`
}

type operand struct {
	Signs   []string `parser:"@( Unary | Sign )*"`
	Number  string   `parser:"( @Number"`
	Unknown string   `parser:"| @Unknown"`
	Inner   *list    `parser:"| '(' @@ ')' )"`
}

var expressions = sync.OnceValue(func() *participle.Parser[list] {
	return participle.MustBuild[list](participle.Lexer(words{}))
})

// Limits before the grammar sees an expression.
const maxOperands = 10_000

// limitError says which limit an expression goes over.
type limitError string

func (e limitError) Error() string { return string(e) }

// parse reads an expression whose tokens stand apart by one blank.
func parse(text string) (*list, error) {
	depth, choices, count := 0, 0, 0
	for p := 0; p < len(text); p++ {
		switch text[p] {
		case '(':
			depth++
		case ')':
			depth--
		case '?':
			choices++
		case ' ':
			count++
		}
		if depth > maxDepth || choices > maxDepth {
			return nil, limitError("it nests deeper than 256 levels")
		}
	}
	if count > maxOperands {
		return nil, limitError("it is longer than 10,000 words")
	}
	tree, err := expressions().ParseString("", text)
	if err != nil {
		return nil, errors.New("it is no complete expression")
	}
	return tree, nil
}

const (
	typeNumber lexer.TokenType = iota - 20
	typeUnknown
	typeSign   // + and -: of one side or of two
	typeUnary  // ! and ~
	typeBinary // of two sides
	typeMark   // ( ) ? : , and whatever fits nowhere
)

// words is the lexer of texts whose tokens stand apart by one blank.
type words struct{}

func (words) Symbols() map[string]lexer.TokenType {
	return map[string]lexer.TokenType{"EOF": lexer.EOF, "Number": typeNumber, "Unknown": typeUnknown,
		"Sign": typeSign, "Unary": typeUnary, "Binary": typeBinary, "Mark": typeMark}
}

func (words) Lex(_ string, r io.Reader) (lexer.Lexer, error) {
	data, err := io.ReadAll(r)
	return &wordReader{text: string(data)}, err
}

func (words) LexString(_ string, text string) (lexer.Lexer, error) {
	return &wordReader{text: text}, nil
}

type wordReader struct {
	text string
	at   int
}

func (w *wordReader) Next() (lexer.Token, error) {
	pos := lexer.Position{Offset: w.at, Line: 1, Column: w.at + 1}
	if w.at >= len(w.text) {
		return lexer.EOFToken(pos), nil
	}
	word := w.text[w.at:]
	if n := strings.IndexByte(word, ' '); n >= 0 {
		word = word[:n]
	}
	w.at += len(word) + 1
	return lexer.Token{Type: wordType(word), Value: word, Pos: pos}, nil
}

func wordType(word string) lexer.TokenType {
	switch c := word; {
	case isDigit(c[0]) || c[0] == '.' && len(c) > 1 && isDigit(c[1]) || c[0] == '-' && len(c) > 1 && isDigit(c[1]):
		return typeNumber
	case c[0] == '@':
		return typeUnknown
	case c == "+" || c == "-":
		return typeSign
	case c == "!" || c == "~":
		return typeUnary
	case precedence(c) > 0:
		return typeBinary
	}
	return typeMark
}

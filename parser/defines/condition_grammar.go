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
	First choice   `parser:"@@"`
	More  []choice `parser:"( ',' @@ )*"`
}

type choice struct {
	Test chain   `parser:"@@"`
	Yes  *list   `parser:"( '?' @@"`
	No   *choice `parser:"  ':' @@ )?"`
}

type chain struct {
	First operand `parser:"@@"`
	Rest  []step  `parser:"@@*"`
}

type step struct {
	Op    string  `parser:"@( Binary | Sign )"`
	Right operand `parser:"@@"`
}

type operand struct {
	Signs   string   `parser:"@( Unary | Sign )*"`
	Name    string   `parser:"( @Word"`
	Options []string `parser:"  ( '(' @Word ( ',' @Word )* ')' )?"` // what one of the style's tests asks for
	Defined string   `parser:"| Defined ( @Word | '(' @Word ')' )"`
	Number  string   `parser:"| @Number"`
	Inner   *list    `parser:"| '(' @@ ')'"`
	Unknown string   `parser:"| '@' @Number )"` // only in expanded text
}

var expressions = sync.OnceValue(func() *participle.Parser[list] {
	return participle.MustBuild[list](participle.Lexer(words{}))
})

// kept holds the trees of expressions by text, nil where the text is none:
// conditions repeat, from line to line and from printer to printer.
var kept struct {
	sync.RWMutex
	trees map[string]*list
}

// Bounds of what is kept: texts, and bytes of one text.
const (
	maxKept     = 4096
	maxKeptText = 256
)

var errNoExpression = errors.New("it is no complete expression")

// parse reads an expression. Its tree is shared.
func parse(text string) (*list, error) {
	var tree *list
	found := false
	if len(text) <= maxKeptText {
		kept.RLock()
		tree, found = kept.trees[text]
		kept.RUnlock()
	}
	if !found {
		var err error
		if tree, err = expressions().ParseString("", text); errors.As(err, new(limitError)) {
			return nil, err
		} else if err != nil {
			tree = nil
		}
		if len(text) <= maxKeptText {
			kept.Lock()
			if kept.trees == nil || len(kept.trees) >= maxKept {
				kept.trees = make(map[string]*list)
			}
			kept.trees[strings.Clone(text)] = tree
			kept.Unlock()
		}
	}
	if tree == nil {
		return nil, errNoExpression
	}
	return tree, nil
}

// Limit before the grammar sees an expression, with maxDepth.
const maxOperands = 10_000

// limitError says which limit an expression goes over.
type limitError string

func (e limitError) Error() string { return string(e) }

const (
	typeNumber lexer.TokenType = iota - 20
	typeWord
	typeDefined
	typeSign   // + and -: of one side or of two
	typeUnary  // ! and ~
	typeBinary // of two sides
	typeMark   // ( ) ? : , and whatever fits nowhere
)

// words hands the tokens of an expression to the grammar.
type words struct{}

func (words) Symbols() map[string]lexer.TokenType {
	return map[string]lexer.TokenType{"EOF": lexer.EOF,
		"Number": typeNumber, "Word": typeWord, "Defined": typeDefined,
		"Sign": typeSign, "Unary": typeUnary, "Binary": typeBinary, "Mark": typeMark}
}

func (words) Lex(_ string, r io.Reader) (lexer.Lexer, error) {
	data, err := io.ReadAll(r)
	if err != nil {
		return nil, err
	}
	w := wordReader(tokenise(string(data), nil))
	depth, choices := 0, 0
	for _, t := range w {
		switch t.text {
		case "(":
			depth++
		case ")":
			depth--
		case "?":
			choices++
		}
		if depth > maxDepth || choices > maxDepth {
			return nil, limitError("it nests deeper than 256 levels")
		}
	}
	if len(w) > maxOperands {
		return nil, limitError("it is longer than 10,000 words")
	}
	return &w, nil
}

type wordReader []token

func (w *wordReader) Next() (lexer.Token, error) {
	if len(*w) == 0 {
		return lexer.EOFToken(lexer.Position{}), nil
	}
	t := (*w)[0]
	*w = (*w)[1:]
	if t.kind == tokenWord {
		if op := operator(t.text); op != "" {
			t.kind, t.text = tokenMark, op
		}
	}
	kind := typeMark
	switch {
	case t.kind == tokenNumber || t.kind == tokenChar:
		kind = typeNumber
	case t.text == "defined":
		kind = typeDefined
	case t.kind == tokenWord:
		kind = typeWord
	case t.text == "+" || t.text == "-":
		kind = typeSign
	case t.text == "!" || t.text == "~":
		kind = typeUnary
	case precedence(t.text) > 0:
		kind = typeBinary
	}
	return lexer.Token{Type: kind, Value: t.text}, nil
}

// operator gives the mark that a word of the language means.
func operator(word string) string {
	switch word {
	case "and":
		return "&&"
	case "or":
		return "||"
	case "not":
		return "!"
	case "not_eq":
		return "!="
	case "bitand":
		return "&"
	case "bitor":
		return "|"
	case "xor":
		return "^"
	case "compl":
		return "~"
	}
	return ""
}

// precedence of C's operators of two sides; 0 for anything else.
func precedence(op string) int {
	switch op {
	case "*", "/", "%":
		return 10
	case "+", "-":
		return 9
	case "<<", ">>":
		return 8
	case "<", ">", "<=", ">=":
		return 7
	case "==", "!=":
		return 6
	case "&":
		return 5
	case "^":
		return 4
	case "|":
		return 3
	case "&&":
		return 2
	case "||":
		return 1
	}
	return 0
}

package defines

import (
	"errors"
	"strconv"

	"preflash/parser"
)

type valueKind uint8

const (
	knownValue valueKind = iota
	unknownValue
	brokenValue // the compiler would refuse it
)

// value is what an expression comes to: a 64-bit integer as the preprocessor
// has it, or a floating-point number.
type value struct {
	kind     valueKind
	unsigned bool
	floating bool
	bits     uint64
	float    float64
	doubt    int    // unknownValue: which unknown it hangs on
	why      string // brokenValue
	over     bool   // brokenValue: because of a limit
}

func integer(n int64) value { return value{bits: uint64(n)} }

func truth(b bool) value {
	if b {
		return value{bits: 1}
	}
	return value{}
}

func broken(why string) value { return value{kind: brokenValue, why: why} }

// hangsOn says what a value that is not known hangs on. A value in which an
// operator may stand or not is not known, whatever the rest comes to.
func (v value) hangsOn(unknown []doubt) (value, doubt) {
	for i, d := range unknown {
		if d.loose && v.kind == knownValue {
			v = value{kind: unknownValue, doubt: i}
		}
	}
	if v.kind == unknownValue && v.doubt < len(unknown) {
		return v, unknown[v.doubt]
	}
	return v, doubt{name: -1, text: v.why, over: v.over}
}

func (v value) zero() bool {
	if v.floating {
		return v.float == 0
	}
	return v.bits == 0
}

func (v value) number() float64 {
	switch {
	case v.floating:
		return v.float
	case v.unsigned:
		return float64(v.bits)
	}
	return float64(int64(v.bits))
}

// arithmetic says whether numbers with a fraction may stand in an expression.
type arithmetic bool

const (
	wholeNumbers arithmetic = false // in conditions
	allNumbers   arithmetic = true  // in values
)

// evaluation computes a tree. Every part of it is computed, also what does not
// count for the result, so that every name in it is looked up.
type evaluation struct {
	s       *source // where names are looked up; nil for expanded text, which has none
	unknown []doubt // what could not be told, by the number in a value
	expand  bool    // a name brings more than one number: only the expanded text tells
}

// asItStands computes a condition whose macros are not expanded; false where
// that does not tell what it comes to.
func (c *evaluation) asItStands(text string) (v value, d doubt, ok bool) {
	if len(text) > maxKeptText {
		return v, d, false
	}
	tree, err := parse(text)
	if err != nil {
		return v, d, false
	}
	v, d = c.list(tree).hangsOn(c.unknown)
	return v, d, !c.expand
}

// compute gives the value of expanded text.
func compute(text string) value {
	if text == "" {
		return broken("it is empty")
	}
	if v, ok := signed(text); ok { // needs no grammar
		return v
	}
	tree, err := parse(text)
	if err != nil {
		v := broken(err.Error())
		v.over = errors.As(err, new(limitError))
		return v
	}
	var c evaluation
	return c.list(tree)
}

func (c *evaluation) list(l *list) value {
	v := c.choice(&l.First)
	for i := range l.More {
		if next := c.choice(&l.More[i]); v.kind != brokenValue {
			v = next
		}
	}
	return v
}

func (c *evaluation) choice(o *choice) value {
	test := c.operand(&o.Test.First)
	for rest := o.Test.Rest; len(rest) > 0; {
		test = c.chain(test, &rest, 1)
	}
	if o.Yes == nil {
		return test
	}
	yes, no := c.list(o.Yes), c.choice(o.No)
	// C's promotion looks at both sides, whichever is selected.
	unsigned, floating := yes.unsigned || no.unsigned, yes.floating || no.floating
	v := yes
	switch {
	case test.kind == brokenValue:
		return test
	case test.kind == unknownValue && yes.kind == knownValue && no.kind == knownValue &&
		yes.number() == no.number():
	case test.kind == unknownValue:
		return test
	case test.zero():
		v = no
	}
	if v.kind == knownValue {
		if floating {
			return value{floating: true, float: v.number()}
		}
		v.unsigned = unsigned
	}
	return v
}

// chain computes the operators that bind at least as strongly as lowest.
func (c *evaluation) chain(left value, rest *[]step, lowest int) value {
	for len(*rest) > 0 {
		op := (*rest)[0].Op
		p := precedence(op)
		if p < lowest {
			break
		}
		right := c.operand(&(*rest)[0].Right)
		*rest = (*rest)[1:]
		for len(*rest) > 0 && precedence((*rest)[0].Op) > p {
			right = c.chain(right, rest, p+1)
		}
		left = binary(op, left, right)
	}
	return left
}

func (c *evaluation) operand(o *operand) value {
	var v value
	switch {
	case o.Inner != nil:
		v = c.list(o.Inner)
	case o.Number != "":
		v = c.only(numeral(o.Number))
	case c.s == nil:
		v.kind = unknownValue
		v.doubt, _ = strconv.Atoi(o.Unknown)
	case o.Defined != "":
		id := c.s.table.intern(o.Defined)
		v = c.truth(c.s.defined(id), doubt{name: id})
	case o.Options != nil:
		v = c.test(o)
	case o.Name != "":
		v = c.name(o.Name)
	default:
		c.expand = true // our own sign for unknowns
	}
	for i := len(o.Signs) - 1; i >= 0 && v.kind == knownValue; i-- {
		switch o.Signs[i] {
		case '!':
			v = truth(v.zero())
		case '-':
			v.bits, v.float = -v.bits, -v.float
		case '~':
			if v.floating {
				return broken("~ needs a whole number")
			}
			v.bits = ^v.bits
		}
	}
	return v
}

// only passes a number on; where there is none, or one with a fraction in a
// condition, the expanded text says why.
func (c *evaluation) only(v value, ok bool) value {
	c.expand = c.expand || !ok || v.floating && c.s != nil
	return v
}

func (c *evaluation) truth(t parser.Tri, d doubt) value {
	if t == parser.Maybe {
		c.unknown = append(c.unknown, d)
		return value{kind: unknownValue, doubt: len(c.unknown) - 1}
	}
	return truth(t == parser.Yes)
}

// lookUp says whether a name is defined, and what stands for it.
func (c *evaluation) lookUp(word string) (parser.Tri, string, doubt) {
	if word == "true" || word == "false" {
		return parser.Yes, word, doubt{}
	}
	id := c.s.table.intern(word)
	line, sure := c.s.define(id)
	switch n := &c.s.table.all[id]; {
	case !sure:
		return parser.Maybe, "", doubt{name: id, loose: c.s.loose(id, maxLoose)}
	case n.state == none && c.s.outside(n):
		return parser.Maybe, "", doubt{name: id}
	case line < 0:
		return parser.No, "", doubt{}
	}
	c.expand = c.expand || c.s.lines[line].function
	return parser.Yes, c.s.body(line), doubt{}
}

// name gives the number that a name stands for.
func (c *evaluation) name(word string) value {
	defined, body, d := c.lookUp(word)
	if defined == parser.Yes {
		if t, ok := c.boolean(body); ok {
			return truth(t == parser.Yes)
		}
		return c.only(signed(body))
	}
	return c.truth(defined, d)
}

// boolean reads true and false, where no macro has such a name.
func (c *evaluation) boolean(word string) (t parser.Tri, ok bool) {
	if word != "true" && word != "false" {
		return parser.No, false
	}
	c.expand = c.expand || c.s.table.find(word) >= 0
	if word == "true" {
		t = parser.Yes
	}
	return t, true
}

// test carries out one of the style's own tests on names.
func (c *evaluation) test(o *operand) value {
	n := &c.s.table.all[c.s.table.intern(o.Name)]
	if n.state != none || n.test == testNone || n.test > testCount {
		c.expand = true
		return value{}
	}
	result, d := n.test.count(len(o.Options), func(i int) (parser.Tri, doubt) {
		defined, body, d := c.lookUp(o.Options[i])
		if defined != parser.Yes || body == "" || body == "1" || body == "0x1" {
			return defined, d
		}
		t, ok := c.boolean(body)
		c.expand = c.expand || !ok && !(isDigit(body[0]) && numberEnd(body, 0) == len(body))
		return t, d
	})
	if result < 0 {
		return c.truth(parser.Maybe, d)
	}
	return integer(int64(result))
}

// binary computes an operator of two sides. What is decided by one side alone
// does not depend on the other.
func binary(op string, x, y value) value {
	if x.kind == brokenValue {
		return x
	}
	logical := op == "&&" || op == "||"
	decides := op == "||" // the truth of either side that settles a logical one
	switch {
	case logical && x.kind == knownValue && x.zero() != decides:
		return truth(decides)
	case logical && y.kind == knownValue && y.zero() != decides:
		return truth(decides)
	case y.kind == brokenValue:
		return y
	case x.kind == unknownValue:
		return x
	case y.kind == unknownValue:
		return y
	case logical:
		return truth(!decides)
	case x.floating || y.floating:
		return float(op, x.number(), y.number())
	}
	return whole(op, x, y)
}

// whole computes with 64-bit integers, as the preprocessor does: a result is
// unsigned where one side is; overflow wraps.
func whole(op string, x, y value) value {
	unsigned := x.unsigned || y.unsigned
	signedX, signedY := int64(x.bits), int64(y.bits)
	less := signedX < signedY
	if unsigned {
		less = x.bits < y.bits
	}
	v := value{unsigned: unsigned}
	switch op {
	case "*":
		v.bits = x.bits * y.bits
	case "/", "%":
		if y.bits == 0 {
			return broken("it divides by zero")
		}
		v.bits = divide(op, x.bits, y.bits, unsigned)
	case "+":
		v.bits = x.bits + y.bits
	case "-":
		v.bits = x.bits - y.bits
	case "<<", ">>":
		return shift(op == "<<", x, y)
	case "<":
		return truth(less)
	case ">=":
		return truth(!less)
	case ">":
		return truth(!less && x.bits != y.bits)
	case "<=":
		return truth(less || x.bits == y.bits)
	case "==":
		return truth(x.bits == y.bits)
	case "!=":
		return truth(x.bits != y.bits)
	case "&":
		v.bits = x.bits & y.bits
	case "^":
		v.bits = x.bits ^ y.bits
	case "|":
		v.bits = x.bits | y.bits
	}
	return v
}

func divide(op string, x, y uint64, unsigned bool) uint64 {
	switch {
	case unsigned && op == "/":
		return x / y
	case unsigned:
		return x % y
	case op == "/":
		return uint64(int64(x) / int64(y))
	}
	return uint64(int64(x) % int64(y))
}

// shift: a negative distance is one the other way; the left side alone says
// whether the result is unsigned.
func shift(left bool, x, y value) value {
	n := y.bits
	if !y.unsigned && int64(n) < 0 {
		left, n = !left, -n
	}
	v := value{unsigned: x.unsigned}
	switch {
	case left:
		v.bits = x.bits << min(n, 64)
	case x.unsigned:
		v.bits = x.bits >> min(n, 64)
	default:
		v.bits = uint64(int64(x.bits) >> min(n, 63))
	}
	return v
}

func float(op string, x, y float64) value {
	var f float64
	switch op {
	case "*":
		f = x * y
	case "/":
		if y == 0 {
			return broken("it divides by zero")
		}
		f = x / y
	case "+":
		f = x + y
	case "-":
		f = x - y
	case "<":
		return truth(x < y)
	case ">":
		return truth(x > y)
	case "<=":
		return truth(x <= y)
	case ">=":
		return truth(x >= y)
	case "==":
		return truth(x == y)
	case "!=":
		return truth(x != y)
	default:
		return broken(op + " needs whole numbers")
	}
	return value{floating: true, float: f}
}

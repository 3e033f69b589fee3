package defines

import (
	"errors"
	"strconv"
	"strings"
	"sync"
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

// computed keeps results by text: conditions repeat, from line to line and
// from printer to printer.
var computed struct {
	sync.RWMutex
	conditions, values map[string]value
}

// Bounds of what is kept: texts, and bytes of one text.
const (
	maxKept     = 4096
	maxKeptText = 256
)

// compute gives the value of an expression whose tokens stand apart by one
// blank: numbers, operators, brackets, and unknowns (@0, @1 …).
func compute(text string, a arithmetic) value {
	if text == "" {
		return broken("it is empty")
	}
	if len(text) > maxKeptText {
		return computeText(text, a)
	}
	kept := &computed.conditions
	if a == allNumbers {
		kept = &computed.values
	}
	computed.RLock()
	v, ok := (*kept)[text]
	computed.RUnlock()
	if ok {
		return v
	}
	v = computeText(text, a)
	computed.Lock()
	if *kept == nil || len(*kept) >= maxKept {
		*kept = make(map[string]value)
	}
	(*kept)[strings.Clone(text)] = v
	computed.Unlock()
	return v
}

func computeText(text string, a arithmetic) value {
	// A number needs no grammar, with a sign or without: building one costs more
	// than all else that is computed for most configurations.
	if strings.IndexByte(text, ' ') < 0 && wordType(text) != typeMark {
		return a.operand(&operand{Number: text})
	}
	if sign, number, ok := strings.Cut(text, " "); ok && (sign == "-" || sign == "+") && number != "" && wordType(number) == typeNumber && strings.IndexByte(number, ' ') < 0 {
		return a.operand(&operand{Signs: []string{sign}, Number: number})
	}
	tree, err := parse(text)
	if err != nil {
		v := broken(err.Error())
		v.over = errors.As(err, new(limitError))
		return v
	}
	return a.list(tree)
}

func (a arithmetic) list(l *list) value {
	v := a.choice(l.Items[0])
	for _, next := range l.Items[1:] {
		if v.kind == brokenValue {
			return v
		}
		v = a.choice(next)
	}
	return v
}

func (a arithmetic) choice(c *choice) value {
	rest := c.Test.Rest
	test := a.chain(a.operand(c.Test.First), &rest, 1)
	if c.Yes == nil || test.kind == brokenValue {
		return test
	}
	yes, no := a.list(c.Yes), a.choice(c.No)
	// C's promotion looks at both sides, whichever is selected.
	unsigned, floating := yes.unsigned || no.unsigned, yes.floating || no.floating
	v := yes
	switch {
	case test.kind == unknownValue && yes.kind == knownValue && no.kind == knownValue && yes.number() == no.number():
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

// chain computes the operators that bind at least as strongly as lowest.
func (a arithmetic) chain(left value, rest *[]*step, lowest int) value {
	for len(*rest) > 0 {
		op := (*rest)[0].Op
		p := precedence(op)
		if p < lowest {
			break
		}
		right := a.operand((*rest)[0].Right)
		*rest = (*rest)[1:]
		for len(*rest) > 0 && precedence((*rest)[0].Op) > p {
			right = a.chain(right, rest, p+1)
		}
		left = a.binary(op, left, right)
	}
	return left
}

func (a arithmetic) operand(o *operand) value {
	var v value
	switch {
	case o.Inner != nil:
		v = a.list(o.Inner)
	case o.Unknown != "":
		v = unknown(o.Unknown)
	case o.Number[0] == '@':
		v = unknown(o.Number)
	default:
		v = a.constant(o.Number)
	}
	for i := len(o.Signs) - 1; i >= 0 && v.kind == knownValue; i-- {
		switch o.Signs[i] {
		case "!":
			v = truth(v.zero())
		case "-":
			v.bits, v.float = -v.bits, -v.float
		case "~":
			if v.floating {
				return broken("~ needs a whole number")
			}
			v.bits = ^v.bits
		}
	}
	return v
}

func unknown(word string) value {
	n, _ := strconv.Atoi(word[1:])
	return value{kind: unknownValue, doubt: n}
}

func (a arithmetic) constant(word string) value {
	if a == allNumbers && strings.ContainsAny(word, ".eEfFpP") {
		f, err := strconv.ParseFloat(word, 64)
		if err != nil {
			return broken(clip(word) + " is no number")
		}
		return value{floating: true, float: f}
	}
	if digits, ok := strings.CutSuffix(word, "u"); ok {
		n, err := strconv.ParseUint(digits, 10, 64)
		if err != nil {
			return broken(clip(word) + " is no number")
		}
		return value{bits: n, unsigned: true}
	}
	n, err := strconv.ParseInt(word, 10, 64)
	if err != nil {
		return broken(clip(word) + " is no number")
	}
	return integer(n)
}

// binary computes an operator of two sides. What is decided by one side alone
// does not depend on the other.
func (a arithmetic) binary(op string, x, y value) value {
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

package defines

import (
	"strconv"

	"preflash/parser"
)

// test is one of the style's own macros, which the firmware defines elsewhere.
// Where the files that are read define a macro of that name, theirs counts.
type test uint8

const (
	testNone      test = iota
	testEnabled        // all of the options are on
	testDisabled       // all of the options are off
	testAny            // one of them is on
	testMany           // two of them are on
	testCount          // how many are on; those up to here ask for options alone
	testChoice         // the second argument where the first is on, else the third
	testChoice0        // … else 0
	testChoice1        // … else 1
	testWhenOn         // … else nothing
	testWhenOff        // the second argument where the first is off, else nothing
	testPins           // every one is the name of a connected pin
	testAnyPin         // one of them is
	testWithin         // second ≤ first ≤ third argument
	testChosen         // the display that is chosen is one of them
	testSure           // the condition is true for sure
	testDriver         // the kind of an axis's driver
	testAnyDriver      // some axis has a driver of one of these kinds
)

// styleTests are the names of all generations: ENABLED to EITHER and DGUS_UI_IS
// as the style's firmware publishes them, the others from memory; and those that
// only the derived headers ask for.
var styleTests = [...]struct {
	name string
	test test
}{
	{"ENABLED", testEnabled}, {"ALL", testEnabled}, {"BOTH", testEnabled},
	{"DISABLED", testDisabled}, {"NONE", testDisabled},
	{"ANY", testAny}, {"EITHER", testAny}, {"MANY", testMany}, {"COUNT_ENABLED", testCount},
	{"TERN", testChoice}, {"TERN0", testChoice0}, {"TERN1", testChoice1},
	{"TERN_", testWhenOn}, {"IF_ENABLED", testWhenOn}, {"IF_DISABLED", testWhenOff},
	{"PIN_EXISTS", testPins}, {"PINS_EXIST", testPins}, {"ANY_PIN", testAnyPin}, {"WITHIN", testWithin},
	{"DGUS_UI_IS", testChosen}, {own + "sure", testSure},
	{own + "driver", testDriver}, {own + "any_driver", testAnyDriver},
}

func (s *source) internTests() {
	for _, t := range &styleTests {
		s.table.all[s.table.intern(t.name)].test = t.test
	}
}

func number(n int) []token {
	return []token{{kind: tokenNumber, text: strconv.Itoa(n)}}
}

// test carries out one of the style's tests on arguments that are not
// expanded yet.
func (e *expander) test(kind test, args [][]token) []token {
	if e.broken != "" {
		return nil
	}
	choice := func(otherwise ...token) []token {
		arg := func(n int) []token {
			if n < len(args) {
				return args[n]
			}
			return nil
		}
		on, doubt := e.on(args[0])
		switch {
		case on == parser.Maybe:
			return []token{e.doubtful(doubt)}
		case on == parser.No && kind == testChoice:
			return arg(2)
		case (on == parser.Yes) == (kind != testWhenOff):
			return arg(1)
		}
		return otherwise
	}
	switch kind {
	case testChoice, testWhenOn, testWhenOff:
		return choice()
	case testChoice0:
		return choice(number(0)...)
	case testChoice1:
		return choice(number(1)...)
	case testWithin:
		return within(args)
	case testChosen:
		return e.chosen(args)
	case testDriver:
		return e.driver(spell(args[0]))
	case testAnyDriver:
		return e.anyDriver(args)
	case testSure:
		inner := e.s.expander(args[0])
		v, _ := inner.compute(wholeNumbers)
		inner.close()
		if v.kind == knownValue && !v.zero() {
			return number(1)
		}
		return number(0)
	}
	n, d := kind.count(len(args), func(i int) (parser.Tri, doubt) {
		if kind == testPins || kind == testAnyPin {
			return e.pin(args[i])
		}
		return e.on(args[i])
	})
	if n < 0 {
		return []token{e.doubtful(d)}
	}
	return number(n)
}

// count gives the result of a test that asks which of n things are on; -1, and
// why, where that cannot be told.
func (kind test) count(n int, on func(int) (parser.Tri, doubt)) (int, doubt) {
	least, most := 0, 0 // how many are on
	var d doubt
	for i := range n {
		switch t, why := on(i); t {
		case parser.Yes:
			least++
			most++
		case parser.Maybe:
			most++
			d = why
		}
	}
	yes, no := least == n, most < n
	switch kind {
	case testDisabled:
		yes, no = most == 0, least > 0
	case testAny, testAnyPin:
		yes, no = least > 0, most == 0
	case testMany:
		yes, no = least > 1, most < 2
	case testCount:
		if least == most {
			return least, d
		}
		yes, no = false, false
	}
	switch {
	case yes:
		return 1, d
	case no:
		return 0, d
	}
	return -1, d
}

// on says whether an option is on: its value is empty, 1 or true.
func (e *expander) on(arg []token) (parser.Tri, doubt) {
	value := e.expandAll(arg)
	if len(value) == 0 {
		return parser.Yes, doubt{}
	}
	t := value[0]
	switch {
	case t.kind == tokenUnknown:
		return parser.Maybe, e.unknown[t.arg]
	case len(value) > 1 || t.kind != tokenWord && t.kind != tokenNumber:
		text := "the value " + parser.Quote(spell(value)) + " is neither on nor off"
		return parser.Maybe, doubt{name: -1, text: text}
	case t.kind == tokenWord && t.text != "true" && t.text != "false" && e.foreign(t.text):
		return parser.Maybe, doubt{name: e.s.table.intern(t.text)}
	case t.text == "1" || t.text == "true" || t.text == "0x1":
		return parser.Yes, doubt{}
	}
	return parser.No, doubt{}
}

// pin says whether X_PIN is defined and at least 0.
func (e *expander) pin(arg []token) (parser.Tri, doubt) {
	if len(arg) != 1 {
		return parser.Maybe, doubt{name: -1, text: "no pin's name stands in it"}
	}
	id := e.s.table.intern(arg[0].text + "_PIN")
	switch e.s.defined(id) {
	case parser.Maybe:
		return parser.Maybe, doubt{name: id}
	case parser.No:
		return parser.No, doubt{}
	}
	inner := e.s.expander([]token{{kind: tokenWord, text: e.s.table.all[id].text}})
	v, d := inner.compute(wholeNumbers)
	inner.close()
	switch {
	case v.kind != knownValue:
		return parser.Maybe, d
	case int64(v.bits) >= 0:
		return parser.Yes, doubt{}
	}
	return parser.No, doubt{}
}

// chosen says whether the chosen display is one of these names.
func (e *expander) chosen(args [][]token) []token {
	const option = "DGUS_LCD_UI"
	value := e.expandAll([]token{{kind: tokenWord, text: option}})
	switch {
	case len(value) == 1 && value[0].kind == tokenUnknown:
		return value
	case len(value) != 1:
		return number(0)
	}
	for _, arg := range args {
		if len(arg) == 1 && arg[0].text == value[0].text {
			return number(1)
		}
	}
	return number(0)
}

// within writes ((V) >= (L) && (V) <= (H)).
func within(args [][]token) []token {
	if len(args) != 3 {
		return []token{{kind: tokenMark, text: ")"}} // no expression
	}
	mark := func(text string) token { return token{kind: tokenMark, text: text} }
	var out []token
	group := func(list []token) {
		out = append(append(append(out, mark("(")), list...), mark(")"))
	}
	out = append(out, mark("("))
	group(args[0])
	out = append(out, mark(">="))
	group(args[1])
	out = append(out, mark("&&"))
	group(args[0])
	out = append(out, mark("<="))
	group(args[2])
	return append(out, mark(")"))
}

// Package defines reads configurations written as C header files: #define
// lines, switched on and off by the preprocessor's conditionals.
package defines

import "preflash/parser"

// source is what the preprocessor makes of some header files: the state of
// every macro after the last line, and each line that could have set it.
type source struct {
	files   []*parser.File // in reading order, each once
	remarks []parser.Remark
}

// define is one #define line in the files, in force or not, commented out or
// not.
type define struct {
	name string
	at   parser.Span // the name
	// body is the value's bytes, without blanks and comments around them;
	// empty, right after the name (and parameters), where there is none.
	body parser.Span
	line parser.Span // the whole logical line with its line end

	// commentedOut is true for `//#define X 3`. Without the bytes of
	// uncomment the line is a define; uncomment is zero where no single cut
	// does it, as inside a block comment.
	commentedOut bool
	uncomment    parser.Span

	function  bool        // takes parameters
	active    parser.Tri  // in force at the end
	reached   parser.Tri  // its line stands in a branch that is read
	condition string      // where reached is Maybe: the condition, quoted, with file and line
	ended     parser.Span // the #undef that ended it, where one did
}

// value is the body as the preprocessor sees it: line splices taken out, each
// comment one blank.
func (d *define) value() string { return "" }

// macro is the state of a macro after the last line.
type macro struct {
	state  parser.Tri // defined: Yes, No, or Maybe
	winner *define    // the define in force; nil unless state is Yes
	// same holds the defines of which one is in force instead of winner,
	// with the same value, depending on an unknown condition. A change must
	// be made to them too.
	same   []*define
	others []*define   // defines that were read, and lost to a later define or #undef; with Maybe, all that may be in force
	undef  parser.Span // the #undef that ended it, where state is No for that reason
	why    string      // Maybe: what could not be told, the condition quoted with file:line
}

// load reads the files of a request and everything that they include, and
// runs all directives. A name for which option is true is an option of the
// style: where nothing defines it, it is not defined.
func load(t *parser.Tree, r parser.Request, option func(name string) bool) (*source, error) {
	return &source{}, nil
}

// all returns every define line, in reading order.
func (s *source) all() []*define { return nil }

// mentions returns every define line of a name, in reading order.
func (s *source) mentions(name string) []*define { return nil }

// macro returns the final state of a name.
func (s *source) macro(name string) macro { return macro{} }

// names yields every name that some define line mentions.
func (s *source) names(yield func(name string) bool) {}

// number expands a value and computes it: Yes and the figure; No where it is
// no arithmetic expression of constants; Maybe where it depends on something
// unknown. Integers divide as integers do in C.
func (s *source) number(text string) (float64, parser.Tri) { return 0, parser.No }

// expand replaces all macros in a text. Maybe: the result depends on a macro
// whose state is unknown, or holds a name that may come from outside.
func (s *source) expand(text string) (string, parser.Tri) { return text, parser.Maybe }

// enabled says what the style's ENABLED(name) is after the last line.
func (s *source) enabled(name string) parser.Tri { return parser.No }

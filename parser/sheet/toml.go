package sheet

import (
	"math"
	"strconv"
	"strings"
	"time"

	"github.com/pelletier/go-toml/v2/unstable"

	"preflash/parser"
)

// The TOML library is used for its grammar alone. It decodes into Go values
// with much good will: NaN, a key in the wrong case, a short array all pass.
// So its events become this small tree, in which every key and value knows
// where it stands, and the schema walks the tree.

type valueKind uint8

const (
	textValue valueKind = iota
	numberValue
	wholeValue // a number without a fraction: also good as a number
	boolValue
	dateValue
	timeValue // a time of day, or a date with one: no key takes it
	listValue
	tableValue
	tablesValue // an array of tables: [[name]]
)

func (k valueKind) String() string {
	return [...]string{
		"text", "a number", "a whole number", "true or false", "a date", "a time",
		"a list", "a table", "a list of tables",
	}[k]
}

type value struct {
	kind  valueKind
	at    parser.Span
	text  string
	num   float64
	whole int64
	yes   bool
	date  time.Time
	list  []*value
	table *tomlTable
	rows  []*tomlTable
}

// blank reports whether the value is an empty string, or a list that is empty
// or holds one: a place that is still to be filled in.
func (v *value) blank() bool {
	switch v.kind {
	case textValue:
		return strings.TrimSpace(v.text) == ""
	case listValue:
		if len(v.list) == 0 {
			return true
		}
		for _, e := range v.list {
			if e.blank() {
				return true
			}
		}
	}
	return false
}

// origin is how a table came to be, which decides what may still be added.
type origin uint8

const (
	implied origin = iota // by a longer header: [a.b] implies a
	headed                // by its own header
	dotted                // by a dotted key
	inline                // in braces: closed
)

type tomlTable struct {
	at     parser.Span // header, dotted key or braces
	origin origin
	order  []string
	byName map[string]*entry
}

type entry struct {
	at    parser.Span // the key's bytes
	value *value
}

func newTable(at parser.Span, o origin) *tomlTable {
	return &tomlTable{at: at, origin: o, byName: make(map[string]*entry)}
}

func (t *tomlTable) add(name string, at parser.Span, v *value) {
	t.order = append(t.order, name)
	t.byName[name] = &entry{at: at, value: v}
}

// maxDepth is how deep lists and tables may nest; the schema needs 3.
const maxDepth = 16

// maxParts bounds the tables, keys and values of a file, and so the work on
// one that is no sheet.
const maxParts = 10_000

type builder struct {
	file  *parser.File
	bom   int // bytes before the text that the library sees
	p     unstable.Parser
	root  *tomlTable
	cur   *tomlTable
	parts int
}

// parseTOML turns a file into its tree. The fault quotes nothing of the file.
func parseTOML(f *parser.File) (*tomlTable, *fault) {
	b := &builder{file: f}
	data := f.Data
	if strings.HasPrefix(string(data[:min(3, len(data))]), "\ufeff") {
		b.bom, data = 3, data[3:]
	}
	start := parser.Span{File: f}
	b.root = newTable(start, headed)
	b.cur = b.root
	b.p.Reset(data)
	for b.p.NextExpression() {
		if wrong := b.expression(b.p.Expression()); wrong != nil {
			return nil, wrong
		}
	}
	if err := b.p.Error(); err != nil {
		return nil, b.syntax(err)
	}
	return b.root, nil
}

func (b *builder) span(start, end int) parser.Span {
	return parser.Span{File: b.file, Start: start + b.bom, End: end + b.bom}
}

func (b *builder) raw(r unstable.Range) parser.Span {
	return b.span(int(r.Offset), int(r.Offset+r.Length))
}

func (b *builder) expression(n *unstable.Node) *fault {
	if n.Kind == unstable.KeyValue {
		return b.keyValue(b.cur, n, 0)
	}
	names, spans, wrong := b.path(n.Key())
	if wrong != nil {
		return wrong
	}
	header := b.header(spans)
	if wrong := b.count(header); wrong != nil {
		return wrong
	}
	at := b.root
	for i, name := range names[:len(names)-1] {
		at, wrong = b.descend(at, name, spans[i], header)
		if wrong != nil {
			return wrong
		}
	}
	last := len(names) - 1
	name, e := names[last], at.byName[names[last]]
	if n.Kind == unstable.ArrayTable {
		row := newTable(header, headed)
		switch {
		case e == nil:
			at.add(name, header, &value{kind: tablesValue, at: header, rows: []*tomlTable{row}})
		case e.value.kind == tablesValue:
			e.value.rows = append(e.value.rows, row)
		default:
			return b.twice(header, e)
		}
		b.cur = row
		return nil
	}
	switch {
	case e == nil:
		t := newTable(header, headed)
		at.add(name, header, &value{kind: tableValue, at: header, table: t})
		b.cur = t
	case e.value.kind == tableValue && e.value.table.origin == implied:
		t := e.value.table
		t.origin, t.at, e.at, e.value.at = headed, header, header, header
		b.cur = t
	default:
		return b.twice(header, e)
	}
	return nil
}

// descend goes from a table to the one that a header names inside it.
func (b *builder) descend(t *tomlTable, name string, at, header parser.Span) (*tomlTable, *fault) {
	e := t.byName[name]
	switch {
	case e == nil:
		u := newTable(header, implied)
		t.add(name, header, &value{kind: tableValue, at: header, table: u})
		return u, nil
	case e.value.kind == tablesValue:
		return e.value.rows[len(e.value.rows)-1], nil
	case e.value.kind == tableValue && e.value.table.origin != inline:
		return e.value.table, nil
	}
	return nil, b.twice(at, e)
}

func (b *builder) twice(at parser.Span, first *entry) *fault {
	line, _ := first.at.Position()
	return faultf(at, "this name is given twice; it first stands in line %d", line)
}

// header widens the span of a header's name to its brackets.
func (b *builder) header(spans []parser.Span) parser.Span {
	s := spans[0]
	s.End = spans[len(spans)-1].End
	data := b.file.Data
	for s.Start > 0 && strings.IndexByte("[ \t", data[s.Start-1]) >= 0 {
		s.Start--
	}
	for s.End < len(data) && strings.IndexByte("] \t", data[s.End]) >= 0 {
		s.End++
	}
	for data[s.Start] != '[' {
		s.Start++
	}
	for data[s.End-1] != ']' {
		s.End--
	}
	return s
}

func (b *builder) path(it unstable.Iterator) (names []string, spans []parser.Span, wrong *fault) {
	for it.Next() {
		k := it.Node()
		names = append(names, string(k.Data))
		spans = append(spans, b.raw(k.Raw))
		if len(names) > maxDepth {
			return nil, nil, faultf(spans[0], "the name has more than %d parts", maxDepth)
		}
	}
	return names, spans, nil
}

func (b *builder) count(at parser.Span) *fault {
	if b.parts++; b.parts > maxParts {
		return faultf(at, "holds more than %d tables, keys and values; it is not a swap sheet", maxParts)
	}
	return nil
}

func (b *builder) keyValue(t *tomlTable, n *unstable.Node, depth int) *fault {
	if wrong := b.count(b.raw(n.Raw)); wrong != nil {
		return wrong
	}
	names, spans, wrong := b.path(n.Key())
	if wrong != nil {
		return wrong
	}
	last := len(names) - 1
	for i, name := range names[:last] {
		e := t.byName[name]
		switch {
		case e == nil:
			u := newTable(spans[i], dotted)
			t.add(name, spans[i], &value{kind: tableValue, at: spans[i], table: u})
			t = u
		case e.value.kind == tableValue && e.value.table.origin == dotted:
			t = e.value.table
		default:
			return b.twice(spans[i], e)
		}
	}
	if e := t.byName[names[last]]; e != nil {
		return b.twice(spans[last], e)
	}
	// Lists and tables in braces come without a range of their own: the
	// value runs from the sign after the key to the end of the whole.
	whole := b.raw(n.Raw)
	at := parser.Span{File: b.file, Start: spans[last].End, End: whole.End}
	for at.Start < at.End && strings.IndexByte("= \t", b.file.Data[at.Start]) >= 0 {
		at.Start++
	}
	v, wrong := b.value(n.Value(), at, depth+1)
	if wrong != nil {
		return wrong
	}
	t.add(names[last], spans[last], v)
	return nil
}

// value converts one value; at is where it stands when the node cannot tell.
func (b *builder) value(n *unstable.Node, at parser.Span, depth int) (*value, *fault) {
	if n.Raw.Length > 0 && n.Kind != unstable.InlineTable {
		at = b.raw(n.Raw)
	}
	if depth > maxDepth {
		return nil, faultf(at, "lists and tables nest more than %d deep", maxDepth)
	}
	v := &value{at: at}
	text := string(n.Data)
	switch n.Kind {
	case unstable.String:
		v.kind, v.text = textValue, text
	case unstable.Bool:
		v.kind, v.yes = boolValue, text == "true"
	case unstable.Integer:
		i, err := strconv.ParseInt(strings.ReplaceAll(text, "_", ""), 0, 64)
		if err != nil {
			return nil, faultf(at, "the number is too large")
		}
		v.kind, v.whole, v.num = wholeValue, i, float64(i)
	case unstable.Float:
		x, err := strconv.ParseFloat(strings.ReplaceAll(text, "_", ""), 64)
		if err != nil || math.IsNaN(x) || math.IsInf(x, 0) {
			return nil, faultf(at,
				"NaN, infinity and numbers beyond all bounds are no figures; write the number")
		}
		v.kind, v.num = numberValue, x
	case unstable.LocalDate:
		d, err := time.Parse(time.DateOnly, text)
		if err != nil {
			return nil, faultf(at, "no such day; write a date as 2027-03-31")
		}
		v.kind, v.date = dateValue, d
	case unstable.LocalTime, unstable.LocalDateTime, unstable.DateTime:
		v.kind = timeValue
	case unstable.Array:
		v.kind = listValue
		for it := n.Children(); it.Next(); {
			if wrong := b.count(at); wrong != nil {
				return nil, wrong
			}
			e, wrong := b.value(it.Node(), at, depth+1)
			if wrong != nil {
				return nil, wrong
			}
			v.list = append(v.list, e)
		}
	case unstable.InlineTable:
		v.kind, v.table = tableValue, newTable(at, inline)
		for it := n.Children(); it.Next(); {
			if wrong := b.keyValue(v.table, it.Node(), depth); wrong != nil {
				return nil, wrong
			}
		}
	default:
		return nil, faultf(at, "a value should stand here")
	}
	return v, nil
}

// Package record reads recordings made at the bench: CSV files with a header
// row of named columns, units in the names. Lines that start with # are
// comments.
package record

import (
	"bytes"
	"encoding/csv"
	"errors"
	"fmt"
	"io"
	"math"
	"path/filepath"
	"slices"
	"strconv"
	"strings"

	"preflash/parser"
)

// mostRows bounds what is computed of one recording: at ten rows a second, more
// than half an hour.
const mostRows = 20_000

// Open reads the recording that a person named. A link is followed, as the
// person chose it; otherwise the rules of parser.Tree hold. Errors and spans
// show the name as it was given.
func Open(name string) (*parser.File, error) {
	shown := filepath.ToSlash(name)
	real, err := filepath.EvalSymlinks(name)
	if err != nil {
		return nil, &parser.Error{File: shown,
			Message: "does not exist or may not be read; correct the name, or give read permission"}
	}
	tree, err := parser.OpenTree(filepath.Dir(real))
	if err != nil {
		return nil, err
	}
	defer tree.Close()
	f, err := tree.Open(filepath.Base(real))
	if err != nil {
		var e *parser.Error
		if errors.As(err, &e) {
			e.File = shown
		}
		return nil, err
	}
	f.Name = shown
	return f, nil
}

// column is one column that a recording may have.
type column struct {
	name     string
	optional bool
	text     bool // a name, not a number
	// A number must lie from low to high.
	low, high float64
	may       bool // a cell may be empty
}

// row is one line of a table, its cells in the order of the columns asked for.
type row struct {
	line  int
	cells []string
}

// csvTable is a recording that was read, as text.
type csvTable struct {
	file       *parser.File
	columns    []column
	headerLine int
	at         []int // where each column stands in the file; -1 where it does not
	rows       []row
}

// readTable reads the cells of the named columns. It refuses what is no such
// table, and says how to correct it.
func readTable(f *parser.File, columns []column) (*csvTable, error) {
	t := &csvTable{file: f, columns: columns}
	r := csv.NewReader(bytes.NewReader(bytes.TrimPrefix(f.Data, []byte("\ufeff"))))
	r.Comment, r.FieldsPerRecord, r.ReuseRecord, r.TrimLeadingSpace = '#', -1, true, true
	width := 0
	for {
		cells, err := r.Read()
		switch {
		case err == io.EOF:
			return t, t.enough(width)
		case err != nil:
			return nil, t.malformed(err)
		case blank(cells):
			continue
		}
		line, _ := r.FieldPos(0)
		if width == 0 {
			width, t.headerLine = len(cells), line
			if err := t.header(cells); err != nil {
				return nil, err
			}
			continue
		}
		if len(cells) != width {
			return nil, t.errorf(line, "has %s, the header names %s; %s",
				count(len(cells), "value"), count(width, "column"), splitHint)
		}
		if len(t.rows) == mostRows {
			return nil, t.errorf(line,
				"is past %d rows; keep the part that matters, or every second row", mostRows)
		}
		kept := row{line: line, cells: make([]string, len(columns))}
		for i, at := range t.at {
			if at >= 0 {
				kept.cells[i] = strings.TrimSpace(cells[at])
			}
		}
		t.rows = append(t.rows, kept)
	}
}

const splitHint = "values are separated by commas, and a decimal fraction takes a point (1.5, not 1,5)"

func (t *csvTable) errorf(line int, format string, args ...any) *parser.Error {
	return &parser.Error{File: t.file.Name, Line: line, Message: fmt.Sprintf(format, args...)}
}

func (t *csvTable) malformed(err error) *parser.Error {
	var p *csv.ParseError
	if !errors.As(err, &p) {
		return t.errorf(0, "cannot be read as comma-separated values: %v", err)
	}
	return t.errorf(p.StartLine,
		"has a quotation mark out of place; leave quotation marks out, or close each that you open")
}

// enough refuses a recording that holds no two rows.
func (t *csvTable) enough(width int) error {
	switch {
	case width == 0:
		return t.errorf(0, "is empty; the first line names the columns: %s", t.names())
	case len(t.rows) == 0:
		return t.errorf(0, "holds a header and no rows; add what was measured, a row each")
	case len(t.rows) == 1:
		return t.errorf(t.rows[0].line, "is the only row, which tells nothing; measure at least twice")
	}
	return nil
}

// header finds the columns. Their order is free and case does not count.
func (t *csvTable) header(cells []string) error {
	line := t.headerLine
	known := make([]string, len(t.columns))
	t.at = make([]int, len(t.columns))
	for i, c := range t.columns {
		known[i], t.at[i] = c.name, -1
	}
	if len(cells) == 1 {
		switch {
		case strings.Contains(cells[0], ";"):
			return t.errorf(line, "separates by semicolons; %s", splitHint)
		case strings.Contains(cells[0], "\t"):
			return t.errorf(line, "separates by tabs; %s", splitHint)
		}
	}
	var strange []string
	for at, cell := range cells {
		name := strings.ToLower(strings.TrimSpace(cell))
		switch i := slices.Index(known, name); {
		case i < 0:
			strange = append(strange, name)
		case t.at[i] >= 0:
			return t.errorf(line, "names the column %s twice; remove one", name)
		default:
			t.at[i] = at
		}
	}
	if len(strange) > 0 {
		return t.errorf(line, "%s", t.strangeColumn(strange))
	}
	var missing []string
	for i, c := range t.columns {
		if !c.optional && t.at[i] < 0 {
			missing = append(missing, c.name)
		}
	}
	if len(missing) > 0 {
		return t.errorf(line, "lacks the column %s; the columns are %s",
			strings.Join(missing, " and "), t.names())
	}
	return nil
}

// strangeColumn says what is wrong with a header that names unknown columns.
func (t *csvTable) strangeColumn(strange []string) string {
	name := parser.Quote(strange[0])
	if name == "" {
		return "leaves a column without a name; name it or remove it: the columns are " + t.names()
	}
	if _, err := strconv.ParseFloat(name, 64); err == nil {
		return "is no header: the first line names the columns: " + t.names()
	}
	var open []string // what the name may have been meant for
	for i, c := range t.columns {
		if t.at[i] < 0 {
			open = append(open, c.name)
		}
	}
	if near := parser.Nearest(name, open); near != "" {
		return fmt.Sprintf("names a column “%s”, which is not known; did you mean %s?", name, near)
	}
	return fmt.Sprintf("names a column “%s”, which is not known; remove it, or rename it: "+
		"the columns are %s", name, t.names())
}

// names lists the columns, the optional ones in brackets.
func (t *csvTable) names() string {
	var b strings.Builder
	for i, c := range t.columns {
		switch {
		case c.optional:
			b.WriteString("[," + c.name + "]")
		case i > 0:
			b.WriteString("," + c.name)
		default:
			b.WriteString(c.name)
		}
	}
	return b.String()
}

// has reports whether the recording has the column of this index.
func (t *csvTable) has(column int) bool { return t.at[column] >= 0 }

// number reads one cell. It is NaN where the recording lacks the column, or
// where a cell that may be empty is.
func (t *csvTable) number(r row, column int) (float64, error) {
	c, text := t.columns[column], r.cells[column]
	if !t.has(column) || text == "" && c.may {
		return math.NaN(), nil
	}
	x, err := strconv.ParseFloat(text, 64)
	switch {
	case text == "":
		return 0, t.errorf(r.line, "has no %s; measure it, or remove the row", c.name)
	case err != nil && decimalComma(text):
		return 0, t.errorf(r.line, "has “%s” as %s; write the decimal fraction with a point: %s",
			parser.Quote(text), c.name, strings.Replace(text, ",", ".", 1))
	case err != nil && !errors.Is(err, strconv.ErrRange):
		return 0, t.errorf(r.line, "has “%s” as %s, which is no number; correct it, or remove the row",
			parser.Quote(text), c.name)
	case math.IsNaN(x) || math.IsInf(x, 0):
		return 0, t.errorf(r.line,
			"has %s as %s, which is no measurement; remove the row", parser.Quote(text), c.name)
	case x < c.low || x > c.high:
		return 0, t.errorf(r.line, "has %s as %s, which must be from %g to %g; correct it, or remove the row",
			parser.Quote(text), c.name, c.low, c.high)
	}
	return x, nil
}

// decimalComma reports whether a text is a number but for its comma.
func decimalComma(text string) bool {
	if strings.Count(text, ",") != 1 {
		return false
	}
	_, err := strconv.ParseFloat(strings.Replace(text, ",", ".", 1), 64)
	return err == nil
}

// numbers reads the cells of a row into the places given, one for each column
// that is a number.
func (t *csvTable) numbers(r row, into ...*float64) error {
	i := 0
	for at, c := range t.columns {
		if c.text {
			continue
		}
		x, err := t.number(r, at)
		if err != nil {
			return err
		}
		*into[i] = x
		i++
	}
	return nil
}

// blank reports whether a spreadsheet left a row of nothing but separators.
func blank(cells []string) bool {
	return !slices.ContainsFunc(cells, func(c string) bool { return strings.TrimSpace(c) != "" })
}

func count(n int, noun string) string {
	if n == 1 {
		return "1 " + noun
	}
	return fmt.Sprintf("%d %ss", n, noun)
}

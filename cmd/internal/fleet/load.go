package fleet

import (
	"errors"
	"fmt"

	"preflash/parser"
	"preflash/parser/sheet"
	"preflash/parser/styles"
)

// source is one printer that was read.
type source struct {
	target  Target
	sheet   *sheet.Sheet
	style   parser.Style
	request parser.Request
	config  parser.Config // nil where it cannot be read at all
}

// load reads a sheet and the configuration that it names. With an error the
// source holds what could be read all the same; it is nil where the sheet
// could not.
func load(t Target) (*source, error) {
	s, err := sheet.Read(t.Tree, t.Sheet)
	if err != nil {
		return nil, err
	}
	src := &source{target: t, sheet: s, request: parser.Request{Tool: s.Printer.Tool.Value}}
	for _, f := range s.Printer.Config {
		src.request.Files = append(src.request.Files, f.Value)
	}
	for _, f := range s.Printer.Absent {
		src.request.Absent = append(src.request.Absent, f.Value)
	}
	src.request.Outside = s.Printer.Outside
	tree := t.Tree
	if src.style, tree, err = styleOf(tree, s); err != nil {
		return src, err
	}
	if src.config, err = src.style.Read(tree, src.request); err != nil {
		src.config = nil // whatever came with the error
		return src, err
	}
	return src, src.unreadable()
}

// read reports whether the configuration could be read, if not whole.
func (src *source) read() bool { return src != nil && src.config != nil }

// name is what the printer is called: by its sheet, else as its sheet is.
func (src *source) name(t Target) string {
	if src == nil {
		return t.Shown()
	}
	return src.sheet.Printer.Name.Value
}

// files lists what was read of the configuration, as shown.
func (src *source) files() []string {
	var names []string
	for _, f := range src.config.Printer().Files {
		names = append(names, f.Name)
	}
	return names
}

// styleOf returns the style that the sheet names, else the one that a file
// looks like, and the tree in which the files looked at are not read again.
func styleOf(t *parser.Tree, s *sheet.Sheet) (parser.Style, *parser.Tree, error) {
	var names string
	for _, style := range styles.All() {
		if s.Printer.Style.Value == style.Name() {
			return style, t, nil
		}
		names += fmt.Sprintf(" %q", style.Name())
	}
	if s.Printer.Style.Given {
		return nil, nil, parser.Errorf(s.Printer.Style.At, "printer.style is %q; the styles are%s", s.Printer.Style.Value, names)
	}
	seen := make(map[string][]byte)
	for _, name := range s.Printer.Config {
		f, err := t.Open(name.Value)
		if err != nil {
			return nil, nil, at(name.At, err)
		}
		seen[f.Name] = f.Data
		if style := styleLike(f); style != nil {
			return style, t.With(seen), nil
		}
	}
	return nil, nil, parser.Errorf(s.Printer.Config[0].At, "the files look like no known style; say which with printer.style, one of%s", names)
}

// at moves an error about a file to the place in the sheet that names it: the
// reader corrects the name there.
func at(place parser.Span, err error) error {
	var e *parser.Error
	if errors.As(err, &e) && e.Line == 0 {
		return parser.Errorf(place, "%s %s", e.File, e.Message)
	}
	return err
}

// unreadable returns the first part of the configuration that is beyond every
// limit of reading, as an error; nil where there is none. What else was read
// stands, but nobody may take the printer for checked.
func (src *source) unreadable() error {
	for _, r := range src.config.Printer().Remarks {
		if r.Kind == parser.RemarkUnreadable {
			return parser.Errorf(r.At, "%s", r.Text)
		}
	}
	return nil
}

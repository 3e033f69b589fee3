package sections

import (
	"bytes"
	"fmt"
	"strings"
	"unicode/utf8"

	"preflash/parser"
)

// reader fills a config.
type reader struct {
	*config
	tree   *parser.Tree
	absent []string
	open   []string // the files being read, outermost first
	reads  int
	bytes  int // of all files, as often as they are read
	lines  int // headings and options
}

// What no configuration comes near; it bounds time and memory.
const (
	mostBytes = 64 << 20
	mostLines = 200_000
)

// Read reads the files in order, as if each were included at the end of the
// one before; the saved block is that of the first. A file that was already
// included is not read again.
func (s style) Read(t *parser.Tree, request parser.Request) (parser.Config, error) {
	if len(request.Outside) > 0 {
		d := &request.Outside[0]
		return nil, parser.Errorf(d.At,
			"%q means nothing here: in this style neither board nor build define anything; remove it", d.Name)
	}
	if len(request.Files) == 0 {
		return nil, &parser.Error{Message: "no configuration file is named; name one"}
	}
	r := reader{
		config: &config{style: s, tool: request.Tool},
		tree:   t,
		absent: request.Absent,
	}
	for i, name := range request.Files {
		if i > 0 && r.seen(name) != nil {
			continue
		}
		f, err := t.Open(name)
		if err != nil {
			return nil, err
		}
		end := len(f.Data)
		if i == 0 {
			r.main = f
			colons := bytes.Count(f.Data, []byte{':'}) // as most options are written
			r.options = make([]option, 0, min(colons, mostLines))
			r.byName = make(map[string]*section, len(f.Data)/bytesPerSection+8)
			end = r.findSaved(f)
		} else {
			r.foreignSaved(f)
		}
		if err := r.file(f, end); err != nil {
			return nil, err
		}
	}
	r.readSaved()
	if err := r.boundDefault(); err != nil {
		return nil, err
	}
	r.build()
	return r.config, nil
}

// seen returns the file of that path where it was read.
func (r *reader) seen(name string) *parser.File {
	for _, f := range r.files {
		if f.Path == name {
			return f
		}
	}
	return nil
}

// bytesPerSection guesses at how much text a section takes, from below.
const bytesPerSection = 160

var bom = []byte("\xef\xbb\xbf")

// file reads one file up to offset end, the files that it includes at their
// place.
func (r *reader) file(f *parser.File, end int) error {
	if r.seen(f.Path) == nil {
		r.files = append(r.files, f)
		r.remarkBytes(f)
	}
	r.open = append(r.open, f.Path)
	defer func() { r.open = r.open[:len(r.open)-1] }()

	data := f.Data[:end]
	if r.bytes += end; r.bytes > mostBytes {
		return parser.Errorf(parser.Span{File: f}, "the configuration and what it includes "+
			"are more than %d MiB; no printer needs so much", mostBytes>>20)
	}
	if bytes.HasPrefix(data, bom) {
		return parser.Errorf(parser.Span{File: f}, "starts with a byte order mark, "+
			"which the firmware takes for an option before any section and refuses; "+
			"save the file as UTF-8 without it")
	}
	p := piece{reader: r, file: f}
	for at, next := 0, 0; at < len(data); at = next {
		var stop int
		stop, next = lineAt(data, at)
		if spec, ok := included(data[at:stop]); ok {
			// The firmware parses what stands before an include by itself,
			// then the included file, then goes on without a section.
			n, _ := leading(spec)
			from := at + len("[include ") + n
			if err := r.include(parser.Span{File: f, Start: from, End: from + len(trim(spec))}); err != nil {
				return err
			}
			p = piece{reader: r, file: f, included: true}
			continue
		}
		if err := p.line(at, at, stop, next); err != nil {
			return err
		}
	}
	return nil
}

// included gives what an [include …] line names. It must start the line.
func included(line []byte) (spec []byte, ok bool) {
	if len(line) == 0 || line[0] != '[' {
		return nil, false
	}
	name, _ := header(uncomment(line))
	return bytes.CutPrefix(name, []byte("include "))
}

// remarkBytes notes what the firmware cannot read as text, though we can.
func (r *reader) remarkBytes(f *parser.File) {
	if at := firstInvalid(f.Data); at >= 0 {
		r.remark(parser.RemarkGap, parser.Span{File: f, Start: at, End: at + 1},
			"the file is not UTF-8 from here on; firmware that runs on a present-day Python refuses it, "+
				"so save it as UTF-8")
	}
}

// firstInvalid finds the first byte that is no UTF-8; −1 where all is.
func firstInvalid(data []byte) int {
	if utf8.Valid(data) {
		return -1
	}
	for at := 0; ; {
		r, n := utf8.DecodeRune(data[at:])
		if r == utf8.RuneError && n <= 1 {
			return at
		}
		at += n
	}
}

func (c *config) remark(kind parser.RemarkKind, at parser.Span, text string, args ...any) {
	if len(args) > 0 {
		text = fmt.Sprintf(text, args...)
	}
	c.remarks = append(c.remarks, parser.Remark{Kind: kind, At: at, Text: text})
}

// piece is text that the firmware parses as one: a file, or what stands
// between two includes.
type piece struct {
	*reader
	file     *parser.File
	included bool // an include stands before it
	saved    bool

	section *section
	option  int // 1 + index of the option that a deeper line continues; 0: none
	indent  int
}

// line reads one line, which starts at offset line; what counts of it goes
// from from to stop, and the next line starts at next.
func (p *piece) line(line, from, stop, next int) error {
	b := clean(p.file.Data[from:stop])
	if len(b.text) == 0 {
		return nil // an empty line counts in a value only if something follows
	}
	start := from + b.from
	end := start + len(b.text)
	if p.option > 0 && b.indent > p.indent {
		o := &p.options[p.option-1]
		if o.value == o.valueEnd {
			o.value = start
		}
		o.valueEnd, o.end = end, next
		return nil
	}
	p.indent = b.indent
	at := parser.Span{File: p.file, Start: start, End: end}
	if p.lines++; p.lines > mostLines {
		return parser.Errorf(at, "more than %d sections and options; no printer needs so many", mostLines)
	}
	if name, ok := header(b.text); ok {
		p.section = p.sectionOf(name)
		if !p.saved {
			p.section.headers = append(p.section.headers, heading{p.file, line, start + 1, next})
		}
		p.option = 0
		if !p.saved && strings.EqualFold(p.section.kind, "include") {
			p.remark(parser.RemarkGap, at, "this includes nothing: "+
				"an include starts its line and is written “[include ” in small letters with a space; "+
				"the firmware takes it for a section that it does not know, and refuses it")
		}
		return nil
	}
	sep := separator(b.text)
	if p.section == nil || sep <= 0 {
		return p.noOption(at, b.text, sep)
	}
	p.options = append(p.options, option{
		section: p.section, file: p.file, line: line,
		key: start, keyEnd: start + sep - trailing(b.text[:sep]),
		sep: start + sep + 1, value: start + sep + 1, valueEnd: start + sep + 1, end: next,
		heading: len(p.section.headers) - 1, saved: p.saved,
	})
	p.option = len(p.options)
	if value := b.text[sep+1:]; len(value) > 0 {
		o := &p.options[p.option-1]
		n, _ := leading(value)
		o.value, o.valueEnd = o.sep+n, end
	}
	p.section.options = append(p.section.options, p.option-1)
	return nil
}

// noOption is the error of a line that is neither an option in a section nor the
// beginning of a section.
func (p *piece) noOption(at parser.Span, text []byte, sep int) error {
	cited := p.file.Cite(excerpt(text))
	switch {
	case p.section == nil && p.included:
		return parser.Errorf(at, "%s stands behind an [include …] and before any [section]; "+
			"an include ends the section that it stands in, so write the section's header again", cited)
	case p.section == nil:
		return parser.Errorf(at, "%s stands before any [section]; put it under one", cited)
	case sep < 0:
		return parser.Errorf(at, "%s is neither a [section] nor an option with a : or =; "+
			"correct it, or make it a comment with #", cited)
	}
	return parser.Errorf(at, "%s has no name before its %c; name the option", cited, text[0])
}

// separator finds the first : or = of a line; −1 where there is none.
func separator(text []byte) int {
	for i, c := range text {
		if c == ':' || c == '=' {
			return i
		}
	}
	return -1
}

// excerpt quotes the start of a line.
func excerpt(text []byte) string {
	const most = 40
	if len(text) <= most {
		return fmt.Sprintf("%q", text)
	}
	return fmt.Sprintf("%q…", bytes.ToValidUTF8(text[:most], nil))
}

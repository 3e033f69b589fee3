package defines

import "strings"

// definition is a define taken apart for expansion.
type definition struct {
	function bool
	variadic bool // the last parameter takes the rest
	params   []string
	body     []token // arg marks parameters; # and ## are still in it
	plain    bool    // no parameter, # or ## in it: the body is the expansion
	bad      bool    // the compiler would refuse it
}

// definition takes a define line apart, once.
func (s *source) definition(line int32) *definition {
	if d, ok := s.definitions[line]; ok {
		return d
	}
	if s.definitions == nil {
		s.definitions = make(map[int32]*definition)
	}
	d := &s.lines[line]
	def := parseDefinition(s.params(line), s.body(line), d.function)
	s.definitions[line] = def
	return def
}

// params is the text between the name and the body of a define.
func (s *source) params(line int32) string {
	d := &s.lines[line]
	if !d.function {
		return ""
	}
	text := s.unitOf(line).text[d.nameEnd:d.rest]
	if d.joined {
		text = unspliced(text)
	}
	return text
}

// body is the text of a define's value or of a directive's argument.
func (s *source) body(line int32) string {
	d := &s.lines[line]
	text := s.unitOf(line).text[d.rest:d.restEnd]
	if d.joined {
		text = unspliced(text)
	}
	return text
}

func parseDefinition(params, body string, function bool) *definition {
	def := &definition{function: function, body: tokenise(body, nil), plain: true}
	if function {
		def.parseParams(params)
	}
	for i := range def.body {
		t := &def.body[i]
		switch {
		case t.kind == tokenWord:
			for n, name := range def.params {
				if name == t.text {
					t.arg, def.plain = int16(n+1), false
				}
			}
			if t.text == "__VA_OPT__" && def.variadic {
				def.plain = false
			}
		case t.kind == tokenMark && t.text == "##":
			def.plain = false
			if i == 0 || i == len(def.body)-1 {
				def.bad = true
			}
		case t.kind == tokenMark && t.text == "#" && function:
			def.plain = false
		}
	}
	for i, t := range def.body {
		if function && t.kind == tokenMark && t.text == "#" &&
			(i+1 == len(def.body) || def.body[i+1].arg == 0) {
			def.bad = true
		}
	}
	return def
}

// maxParams keeps a parameter's number in its token.
const maxParams = 1000

func (def *definition) parseParams(text string) {
	text = strings.TrimSpace(text)
	if len(text) < 2 || text[0] != '(' || text[len(text)-1] != ')' {
		def.bad = true
		return
	}
	tokens := tokenise(text[1:len(text)-1], nil)
	for i := 0; i < len(tokens); i++ {
		t := tokens[i]
		name := t.text
		switch {
		case def.variadic || len(def.params) == maxParams:
			def.bad = true
		case t.kind == tokenWord:
			if i+1 < len(tokens) && tokens[i+1].text == "..." {
				def.variadic = true
				i++
			}
		case name == "...":
			name, def.variadic = "__VA_ARGS__", true
		default:
			def.bad = true
		}
		for _, p := range def.params {
			if p == name {
				def.bad = true
			}
		}
		if def.bad {
			return
		}
		def.params = append(def.params, name)
		if i++; i < len(tokens) && (tokens[i].text != "," || i+1 == len(tokens)) {
			def.bad = true
			return
		}
	}
}

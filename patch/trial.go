package patch

import (
	"fmt"
	"reflect"
	"slices"

	"preflash/parser"
	"preflash/rules"
)

// trial is one printer on its way through the rounds.
type trial struct {
	*Source
	before, now, previous *checkedConfig

	roundReasons []Reason           // what this round changes
	roundValues  map[parser.Key]any // and to what

	lastValues map[parser.Key]any      // what it asked for last, in all rounds so far
	askedBy    map[parser.Key][]string // the rules that asked to change a setting, of any printer
}

// checkedConfig is one reading and what the rules made of it.
type checkedConfig struct {
	config   parser.Config
	input    *rules.Input
	findings []rules.Finding
	settings map[parser.Key]parser.Description
}

func (s *Source) checked(config parser.Config, findings []rules.Finding) *checkedConfig {
	c := &checkedConfig{config: config, input: s.Input(config), findings: findings,
		settings: make(map[parser.Key]parser.Description)}
	for d := range config.Printer().Settings() {
		c.settings[d.Key] = d
	}
	return c
}

func newTrial(s *Source) (*trial, error) {
	if s.Config == nil {
		again := *s
		if err := again.Read(); err != nil {
			return nil, err
		}
		s = &again
	}
	return &trial{Source: s, before: s.checked(s.Config, s.Findings)}, nil
}

// start goes back to the printer as it stands.
func (t *trial) start() {
	t.now, t.previous, t.roundReasons = t.before, t.before, nil
	t.lastValues, t.askedBy = make(map[parser.Key]any), make(map[parser.Key][]string)
}

// read reads and checks the printer with the contents of this round, where they
// bear on it.
func (t *trial) read(contents map[string][]byte) error {
	if !slices.ContainsFunc(t.Files, func(f FileRef) bool { return contents[f.Real] != nil }) {
		return nil
	}
	config, err := t.Style.Read(t.Tree.With(contents), t.Request)
	if err != nil {
		return fmt.Errorf("%s: with the changes made, the configuration cannot be read: %w", t.Owner, err)
	}
	t.previous, t.now = t.now, t.checked(config, rules.Check(t.Input(config)))
	return nil
}

// unmoved says, as an error, that this round's edit left a setting as it was, or
// made one of it that cannot be told, such as a limit that the firmware refuses.
func (t *trial) unmoved(key parser.Key) error {
	was, is := t.previous.settings[key], t.now.settings[key]
	if is.State == parser.Unknown && was.State != parser.Unknown {
		return parser.Errorf(is.At, "with an edit of %s the %s cannot be told: %s; change it by hand",
			is.Name, key, is.Why)
	}
	if !alike(was, is) {
		return nil
	}
	why := is.Why
	if why == "" {
		why = "another place decides"
	}
	return parser.Errorf(is.At, "an edit of %s does not change the %s: %s; change it by hand",
		is.Name, key, why)
}

func alike(a, b parser.Description) bool {
	return a.State == b.State && reflect.DeepEqual(a.Value, b.Value)
}

// isOtherToolOf reports whether two printers are two tools of one: they read the same
// files.
func (t *trial) isOtherToolOf(u *trial) bool {
	return t.Style.Name() == u.Style.Name() && t.Request.Tool != u.Request.Tool &&
		slices.Equal(t.Files, u.Files)
}

// place is where a setting is written, by which two printers know that it is
// the same one: its bytes, or its name where nothing is written.
type place struct {
	file       string
	start, end int
	name       string
}

func placeOf(d parser.Description) place {
	if d.At.IsZero() {
		return place{name: d.Name}
	}
	return place{file: d.At.File.Real, start: d.At.Start, end: d.At.End, name: d.Name}
}

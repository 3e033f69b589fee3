package fleet

import (
	"slices"

	"preflash/parser"
)

// Values is what one printer's configuration sets.
type Values struct {
	Name     string
	Sheet    string
	Files    []string
	Inputs   []string // all that was opened or looked for, as shown
	Problem  *Problem
	Settings []parser.Description
	Entries  []parser.Entry // only where they were asked for
}

// ReadValues finds the sheets and returns the settings of every printer, with
// every macro or option where all is set.
func ReadValues(paths []string, o Options, all bool) []Values {
	o.Bare = true
	f := open(paths, o)
	defer f.Close()
	var list []Values
	for _, s := range f.Sources {
		s.load()
		v := Values{Name: s.Name(), Sheet: s.Owner, Inputs: s.inputs(), Problem: s.problem()}
		if s.read() {
			for _, file := range s.Config.Printer().Files {
				v.Files = append(v.Files, file.Name)
			}
			v.Settings = slices.Collect(s.Config.Printer().Settings())
			if all {
				v.Entries = s.Config.Entries()
				for i := range v.Entries {
					// A sheet may name what is none of its business.
					if e := &v.Entries[i]; e.At.File != nil {
						e.Value = e.At.File.Cite(e.Value)
					}
				}
			}
		}
		list = append(list, v)
	}
	for _, p := range f.problems {
		list = append(list, Values{Name: p.File, Sheet: p.File, Problem: &p})
	}
	return list
}

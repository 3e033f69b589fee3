package fleet

import "preflash/parser"

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
	targets, problems := Find(paths, o.Root)
	var list []Values
	for _, t := range targets {
		src, err := load(t)
		v := Values{Name: src.name(t), Sheet: t.Shown(), Inputs: src.inputs()}
		if err != nil {
			p := problemOf(err)
			v.Problem = &p
		}
		if src.read() {
			v.Files = src.files()
			v.Settings = src.config.Printer().Settings()
			if all {
				v.Entries = src.config.Entries()
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
	for _, p := range problems {
		list = append(list, Values{Name: p.File, Sheet: p.File, Problem: &p})
	}
	return list
}

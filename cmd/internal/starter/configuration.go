package starter

import (
	"path"
	"path/filepath"

	"preflash/cmd/internal/fleet"
	"preflash/parser"
	"preflash/parser/sheet"
)

// PlaceFor is where the sheet of a configuration will stand, inside its tree.
func PlaceFor(c *fleet.Configuration, output string) (string, error) {
	if output != "" {
		return c.Inside(output)
	}
	return path.Join(path.Dir(c.Files[0]), c.SheetName()), nil
}

// Of starts the sheet of a configuration, which will stand at a place.
func Of(c *fleet.Configuration, name, place string) (*Sheet, error) {
	f := Facts{Name: name, Place: c.Tree.Shown(place), Guess: c.Guess, Hotends: c.Hotends(),
		Printer: c.Printer()}
	for _, list := range []struct {
		from []string
		to   *[]string
	}{{c.Files, &f.Config}, {c.Absent, &f.Absent}} {
		for _, name := range list.from {
			rel, err := filepath.Rel(path.Dir(place), name)
			if err != nil {
				return nil, &parser.Error{File: c.Tree.Shown(name), Message: "cannot be named from " +
					c.Tree.Shown(place)}
			}
			*list.to = append(*list.to, filepath.ToSlash(rel))
		}
	}
	return New(f), nil
}

// CheckAt reads a text as the sheet at a place.
func CheckAt(c *fleet.Configuration, place string) func(text string) error {
	return func(text string) error {
		_, err := sheet.Read(c.Tree.With(map[string][]byte{c.Tree.Shown(place): []byte(text)}), place)
		return err
	}
}

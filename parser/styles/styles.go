// Package styles is the list of styles, nothing else.
package styles

import (
	"preflash/parser"
	"preflash/parser/defines"
	"preflash/parser/sections"
)

// All returns every style.
func All() []parser.Style { return []parser.Style{defines.Style, sections.Style} }

package sections

import "preflash/parser"

// Lacks: without these two the firmware has no machine, or nothing to heat.
func (c *config) Lacks() (list []parser.Lack) {
	if len(c.lacking) > 0 {
		return nil
	}
	for _, name := range [...]string{"printer", hotendName(0)} {
		if s := c.byName[name]; s == nil || len(s.headers) == 0 {
			list = append(list, parser.Lack{What: "[" + name + "]"})
		}
	}
	return list
}

// Tools counts the hotends; the firmware stops at the first gap.
func (c *config) Tools() int {
	n := 0
	for c.byName[hotendName(n)] != nil {
		n++
	}
	return n
}

// Hotends is Tools: each has its own.
func (c *config) Hotends() int { return c.Tools() }

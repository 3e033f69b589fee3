package plot

import (
	"math"
	"slices"
	"unicode/utf8"
)

// letters is about how wide a text is, in pixels.
func letters(s string) float64 { return perLetter * float64(utf8.RuneCountInString(s)) }

// keyEntry is one line, area or strip of the key, and where it stands.
type keyEntry struct {
	kind  rune // l line, a area, s strip
	style int
	name  string
	x     float64
}

const sample = 30 // width of a piece of line in the key

// key returns the rows of the key: what has a name, apart from marks.
func (p *Plot) key() [][]keyEntry {
	var all []keyEntry
	add := func(kind rune, style int, name string) {
		if name != "" {
			all = append(all, keyEntry{kind: kind, style: style, name: name})
		}
	}
	for _, l := range p.Lines {
		add('l', l.Style, l.Name)
	}
	for _, a := range p.Areas {
		add('a', 0, a.Name)
	}
	for _, s := range p.Strips {
		add('s', 0, s.Name)
	}
	var rows [][]keyEntry
	x := 0.0
	for _, e := range all {
		w := sample + 6 + letters(e.name)
		if len(rows) == 0 || x+w > width {
			rows, x = append(rows, nil), 0
		}
		e.x = x
		rows[len(rows)-1] = append(rows[len(rows)-1], e)
		x += w + 18
	}
	return rows
}

func (d *drawing) keyRows(rows [][]keyEntry) {
	for i, entries := range rows {
		base := float64(i*row) + 13
		for _, e := range entries {
			switch e.kind {
			case 'l':
				d.line(e.x+1, base-4.5, e.x+sample-2, base-4.5, lineLook(e.style))
			default:
				look := areaLook
				if e.kind == 's' {
					look = stripLook
				}
				d.printf(`<path d="M%s %sH%sV%sH%sZ" %s/>`+"\n", num(e.x), num(base-10), num(e.x+sample-1),
					num(base+1), num(e.x), look)
			}
			d.text(e.x+sample+6, base, "", "", e.name)
		}
	}
}

// markNames are the names of the vertical marks, which stand above the frame,
// so that no two of them overlap.
type markNames struct {
	rows   int
	placed []markName
}

type markName struct {
	Mark
	x, from, to float64
	anchor      string
	row         int
}

// placeMarks also fixes the left and right of the frame.
func (d *drawing) placeMarks() markNames {
	widest := 0.0
	for y, i := ticksOf(d.frame.y, yTicks), 0; i < len(y.at); i++ {
		widest = max(widest, letters(y.label(i)))
	}
	d.left, d.right = widest+12, width-12
	var n markNames
	for _, m := range d.Marks {
		if !m.Horizontal && drawable(m.At) && d.frame.x.holds(m.At) {
			n.placed = append(n.placed, markName{Mark: m, x: d.at(Point{X: m.At}).x})
		}
	}
	slices.SortStableFunc(n.placed, func(a, b markName) int {
		switch {
		case a.At < b.At:
			return -1
		case a.At > b.At:
			return 1
		}
		return 0
	})
	for i := range n.placed {
		m := &n.placed[i]
		w := letters(m.Name)
		// The last one stands to the right of its line, the others to the left,
		// as far as there is room.
		m.from, m.to, m.anchor = m.x-w, m.x, "end"
		if last := i == len(n.placed)-1; last && m.x+w <= width || m.from < 0 {
			m.from, m.to, m.anchor = m.x, m.x+w, "start"
		}
		for j := 0; j < i; j++ {
			if o := n.placed[j]; o.row == m.row && o.from < m.to+6 && m.from < o.to+6 {
				m.row, j = m.row+1, -1
			}
		}
		n.rows = max(n.rows, m.row+1)
	}
	d.above = n.rows
	return n
}

func (d *drawing) marks(names markNames) {
	for _, m := range names.placed {
		base := d.top - 6 - float64(m.row*row)
		d.line(m.x, base+3, m.x, d.bottom, markLook)
		d.text(m.x, base, m.anchor, "", m.Name)
	}
	type label struct{ to, y float64 }
	var labels []label
	for _, m := range d.Marks {
		if !m.Horizontal || !drawable(m.At) || !d.frame.y.holds(m.At) {
			continue
		}
		at := d.at(Point{d.frame.x.low, m.At})
		d.line(d.left, at.y, d.right, at.y, markLook)
		y := at.y - 5
		if y < d.top+fontSize {
			y = at.y + fontSize + 2
		}
		x := d.left + 6 // beside those that stand as high
		for _, l := range labels {
			if math.Abs(l.y-y) < fontSize && x < l.to {
				x = l.to + 12
			}
		}
		labels = append(labels, label{x + letters(m.Name), y})
		d.text(x, y, "", "halo", m.Name)
	}
}

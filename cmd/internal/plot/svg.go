package plot

import (
	"bytes"
	"fmt"
	"html"
	"strconv"
	"strings"
)

// Sizes in pixels of the drawing. The page scales it as a whole.
const (
	width     = 640
	height    = 220 // of the frame
	fontSize  = 13
	row       = 20  // from one line of text to the next
	perLetter = 6.9 // width of a letter, on average, in most fonts; generous
	gap       = 8   // between the key, the label of y, and the frame
	xTicks    = 8
	yTicks    = 5
)

// dashes of the line styles, as of SVG's stroke-dasharray.
var dashes = [Styles]string{"", "8 5", "2 4", "11 4 2 4"}

// frame is where the plot sits in the drawing, and what range it shows.
type frame struct {
	x, y                     span
	left, right, top, bottom float64
}

// at is where a point lies in the drawing.
func (f *frame) at(p Point) pixel {
	return pixel{
		f.left + (p.X-f.x.low)/(f.x.high-f.x.low)*(f.right-f.left),
		f.bottom - (p.Y-f.y.low)/(f.y.high-f.y.low)*(f.bottom-f.top),
	}
}

// SVG returns the drawing. Text is escaped; characters that hide or act are
// the caller's business.
func (p *Plot) SVG() []byte {
	d := &drawing{Plot: p}
	d.x, d.y = p.ranges()
	key := p.key()
	names := d.placeMarks()
	d.top = float64((len(key)+1+names.rows)*row) + 2*gap
	d.bottom = d.top + height
	total := d.bottom + 2*row + 4

	d.printf(`<svg xmlns="http://www.w3.org/2000/svg" class="plot" viewBox="0 0 %d %s" role="img" `+
		`aria-labelledby="%s-t %s-d" font-size="%d" fill="currentColor">`+"\n",
		width, num(total), esc(p.ID), esc(p.ID), fontSize)
	d.printf("<title id=\"%s-t\">%s</title>\n<desc id=\"%s-d\">%s</desc>\n", esc(p.ID), esc(p.Title),
		esc(p.ID), esc(p.Desc))
	d.keyRows(key)
	d.back()
	d.axes()
	d.marks(names)
	d.lines()
	d.WriteString("</svg>\n")
	return d.Bytes()
}

// drawing is a plot on its way to SVG.
type drawing struct {
	*Plot
	frame
	bytes.Buffer
	above int // rows of names between the label of y and the frame
}

func (d *drawing) printf(format string, args ...any) { fmt.Fprintf(&d.Buffer, format, args...) }

func esc(s string) string { return html.EscapeString(s) }

// num writes a coordinate to a tenth of a pixel.
func num(x float64) string {
	s := strings.TrimSuffix(strconv.FormatFloat(x, 'f', 1, 64), ".0")
	if s == "-0" {
		return "0"
	}
	return s
}

func (d *drawing) text(x, y float64, anchor, class, s string) {
	d.printf(`<text x="%s" y="%s"`, num(x), num(y))
	if anchor != "" {
		d.printf(` text-anchor="%s"`, anchor)
	}
	if class != "" {
		d.printf(` class="%s"`, class)
	}
	d.printf(">%s</text>\n", esc(s))
}

func (d *drawing) line(x1, y1, x2, y2 float64, rest string) {
	d.printf(`<path d="M%s %sL%s %s" %s/>`+"\n", num(x1), num(y1), num(x2), num(y2), rest)
}

const (
	gridLook  = `class="grid" fill="none" stroke="currentColor" stroke-opacity=".15"`
	axisLook  = `class="axis" fill="none" stroke="currentColor" stroke-opacity=".6"`
	markLook  = `class="mark" fill="none" stroke="currentColor" stroke-opacity=".7" stroke-dasharray="1 3"`
	areaLook  = `class="area" fill="currentColor" fill-opacity=".1" stroke="currentColor" stroke-opacity=".6"`
	stripLook = `class="strip" fill="currentColor" fill-opacity=".05" ` +
		`stroke="currentColor" stroke-opacity=".6"`
)

func lineLook(style int) string {
	style = min(max(style, 0), Styles-1)
	look := fmt.Sprintf(`class="s%d" fill="none" stroke="currentColor" stroke-width="2.2" `+
		`stroke-linejoin="round" stroke-linecap="round"`, style)
	if dash := dashes[style]; dash != "" {
		look += ` stroke-dasharray="` + dash + `"`
	}
	return look
}

// back draws what lies behind the lines.
func (d *drawing) back() {
	for _, s := range d.Strips {
		a, b := pixel{d.left, d.top}, pixel{d.right, d.bottom}
		box, low, high := d.frame.x, s.Low, s.High
		if s.Horizontal {
			box = d.frame.y
		}
		if low, high = max(low, box.low), min(high, box.high); !(low < high) {
			continue
		}
		if s.Horizontal {
			a.y, b.y = d.at(Point{Y: high}).y, d.at(Point{Y: low}).y
		} else {
			a.x, b.x = d.at(Point{X: low}).x, d.at(Point{X: high}).x
		}
		d.printf(`<path d="M%s %sH%sV%sH%sZ" %s/>`+"\n", num(a.x), num(a.y), num(b.x), num(b.y),
			num(a.x), stripLook)
	}
	for i := range d.Areas {
		d.area(&d.Areas[i])
	}
}

// area draws the parts of an area where both curves can be drawn. It is cut by
// moving its points into the frame.
func (d *drawing) area(a *Area) {
	var low, high []pixel
	flush := func() {
		if len(low) > 1 {
			back := simplify(high)
			for i, j := 0, len(back)-1; i < j; i, j = i+1, j-1 {
				back[i], back[j] = back[j], back[i]
			}
			d.printf(`<path d="%s%sZ" %s/>`+"\n", pathOf(simplify(low)), "L"+pathOf(back)[1:], areaLook)
		}
		low, high = nil, nil
	}
	for i := range min(len(a.Low), len(a.High)) {
		l, h := a.Low[i], a.High[i]
		if !l.drawable() || !h.drawable() || !d.frame.x.holds(l.X) || !d.frame.x.holds(h.X) {
			flush()
			continue
		}
		l.Y = min(max(l.Y, d.frame.y.low), d.frame.y.high)
		h.Y = min(max(h.Y, d.frame.y.low), d.frame.y.high)
		low, high = append(low, d.at(l)), append(high, d.at(h))
	}
	flush()
}

func (d *drawing) axes() {
	y := ticksOf(d.frame.y, yTicks)
	for i, v := range y.at {
		at := d.at(Point{d.frame.x.low, v})
		d.line(d.left, at.y, d.right, at.y, gridLook)
		d.text(d.left-8, at.y+4.5, "end", "", y.label(i))
	}
	x := ticksOf(d.frame.x, xTicks)
	for i, v := range x.at {
		at := d.at(Point{v, d.frame.y.low})
		d.line(at.x, d.bottom, at.x, d.bottom+5, axisLook)
		d.text(at.x, d.bottom+row, "middle", "", x.label(i))
	}
	d.line(d.left, d.bottom, d.right, d.bottom, axisLook)
	d.text(0, d.top-float64(d.above*row)-gap-5, "", "label", d.Y.Label)
	d.text(d.right, d.bottom+2*row, "end", "label", d.X.Label)
}

func (d *drawing) lines() {
	for i := range d.Lines {
		l := &d.Lines[i]
		for _, run := range d.runs(l.Points) {
			if len(run) > 1 {
				d.printf(`<path d="%s" %s/>`+"\n", pathOf(run), lineLook(l.Style))
			} else {
				d.dot(run[0], l.Style)
			}
		}
		if !l.Dots {
			continue
		}
		for _, p := range l.Points {
			if p.drawable() && d.frame.x.holds(p.X) && d.frame.y.holds(p.Y) {
				d.dot(d.at(p), l.Style)
			}
		}
	}
}

func (d *drawing) dot(p pixel, style int) {
	d.printf(`<circle cx="%s" cy="%s" r="3.5" class="d%d"/>`+"\n", num(p.x), num(p.y),
		min(max(style, 0), Styles-1))
}

// pathOf writes points as the d of a path.
func pathOf(points []pixel) string {
	var b strings.Builder
	for i, p := range points {
		if i == 0 {
			b.WriteByte('M')
		} else {
			b.WriteByte('L')
		}
		b.WriteString(num(p.x) + " " + num(p.y))
	}
	return b.String()
}

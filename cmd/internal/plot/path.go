package plot

// pixel is a point of the drawing.
type pixel struct{ x, y float64 }

// runs cuts a line at its gaps, and where it leaves the plot. A single point
// is a run of one.
func (f *frame) runs(points []Point) [][]pixel {
	var all [][]pixel
	var run []pixel
	flush := func() {
		if len(run) > 0 {
			all = append(all, simplify(run))
		}
		run = nil
	}
	box := [2]span{f.x, f.y}
	var last Point
	joined := false // last can be joined with the next point
	for i, p := range points {
		if !p.drawable() {
			flush()
			joined = false
			continue
		}
		if !joined {
			last, joined = p, true
			lonely := i+1 == len(points) || !points[i+1].drawable()
			if lonely && box[0].holds(p.X) && box[1].holds(p.Y) {
				run = append(run, f.at(p))
			}
			continue
		}
		a, b, ok := clip(last, p, box)
		switch {
		case !ok:
			flush()
		case len(run) == 0:
			run = append(run, f.at(a), f.at(b))
		default:
			run = append(run, f.at(b))
		}
		if ok && b != p {
			flush()
		}
		last = p
	}
	flush()
	return all
}

func (s span) holds(v float64) bool { return v >= s.low && v <= s.high }

// clip returns the part of a straight line that lies in a box, and whether
// there is any (Liang and Barsky, ACM Transactions on Graphics 3, 1984).
func clip(a, b Point, box [2]span) (Point, Point, bool) {
	from, to := 0.0, 1.0
	dx, dy := b.X-a.X, b.Y-a.Y
	for _, edge := range [...]struct{ p, q float64 }{
		{-dx, a.X - box[0].low}, {dx, box[0].high - a.X},
		{-dy, a.Y - box[1].low}, {dy, box[1].high - a.Y},
	} {
		switch t := edge.q / edge.p; {
		case edge.p == 0:
			if edge.q < 0 {
				return a, b, false
			}
		case edge.p < 0:
			from = max(from, t)
		default:
			to = min(to, t)
		}
	}
	if from > to {
		return a, b, false
	}
	// Rounding may carry a far point's cut out of the box.
	within := func(v float64, s span) float64 { return min(max(v, s.low), s.high) }
	on := func(t float64) Point {
		return Point{within(a.X+t*dx, box[0]), within(a.Y+t*dy, box[1])}
	}
	start, end := a, b
	if from > 0 {
		start = on(from)
	}
	if to < 1 {
		end = on(to)
	}
	return start, end, true
}

// tolerance is how far a simplified line may lie off, in pixels: too little to
// be seen.
const tolerance = 0.15

// simplify leaves out points that a straight line passes within tolerance
// (Douglas and Peucker, Cartographica 10, 1973).
func simplify(run []pixel) []pixel {
	if len(run) < 3 {
		return run
	}
	keep := make([]bool, len(run))
	keep[0], keep[len(run)-1] = true, true
	todo := [][2]int{{0, len(run) - 1}}
	for len(todo) > 0 {
		first, last := todo[len(todo)-1][0], todo[len(todo)-1][1]
		todo = todo[:len(todo)-1]
		far, most := 0, tolerance*tolerance
		for i := first + 1; i < last; i++ {
			if d := distance2(run[i], run[first], run[last]); d > most {
				far, most = i, d
			}
		}
		if far > 0 {
			keep[far] = true
			todo = append(todo, [2]int{first, far}, [2]int{far, last})
		}
	}
	kept := run[:0]
	for i, p := range run {
		if keep[i] {
			kept = append(kept, p)
		}
	}
	return kept
}

// distance2 is the square of the distance of p from the line a to b.
func distance2(p, a, b pixel) float64 {
	dx, dy := b.x-a.x, b.y-a.y
	t := 0.0
	if length2 := dx*dx + dy*dy; length2 > 0 {
		t = min(max(((p.x-a.x)*dx+(p.y-a.y)*dy)/length2, 0), 1)
	}
	ex, ey := p.x-a.x-t*dx, p.y-a.y-t*dy
	return ex*ex + ey*ey
}

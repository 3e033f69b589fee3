package sensor

import "math"

// cubicFit collects points of 1/T = a + b·L + c·L³ and solves for the
// coefficients by least squares in 1/T.
type cubicFit struct {
	a, b, c float64

	ohm, tempC []float64
}

func (f *cubicFit) add(ohm, tempC float64) {
	f.ohm, f.tempC = append(f.ohm, ohm), append(f.tempC, tempC)
}

// solve orthogonalises the columns 1, L, L³ by modified Gram-Schmidt: the
// normal equations would lose half of the digits.
func (f *cubicFit) solve() {
	n := len(f.ohm)
	q := make([]float64, 4*n)
	one, l, l3, y := q[:n], q[n:2*n], q[2*n:3*n], q[3*n:]
	for i := range n {
		x := math.Log(f.ohm[i])
		one[i], l[i], l3[i], y[i] = 1, x, x*x*x, 1/(f.tempC[i]+zeroC)
	}
	r01 := project(one, l)
	r02 := project(one, l3)
	r12 := project(l, l3)
	p0 := project(one, y)
	p1 := project(l, y)
	f.c = project(l3, y)
	f.b = p1 - r12*f.c
	f.a = p0 - r01*f.b - r02*f.c
}

// project returns the share of q in v and takes it out of v.
func project(q, v []float64) float64 {
	var qq, qv float64
	for i, x := range q {
		qq += x * x
		qv += x * v[i]
	}
	if qq == 0 {
		return 0
	}
	share := qv / qq
	for i, x := range q {
		v[i] -= share * x
	}
	return share
}

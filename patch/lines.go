package patch

import (
	"bytes"

	"github.com/sergi/go-diff/diffmatchpatch"
)

const (
	// agreeing is how many equal lines in a row end a window.
	agreeing = 4
	// lookahead bounds the search for them, in lines of either text.
	lookahead = 256
	// maxLines bounds what is compared line by line, both texts together: the
	// work grows with its square. A larger window is replaced whole. It also
	// keeps line numbers clear of the runes that text cannot hold (U+D800).
	maxLines = 8192
)

// lineChange is two byte ranges of whole lines: the old ones are replaced by the
// new ones.
type lineChange struct {
	old0, old1 int
	new0, new1 int
}

// lineChanges lists what turns one text into the other, in order. All that lies
// between the lineChanges is equal.
func lineChanges(old, new []byte) []lineChange {
	var all []lineChange
	for _, w := range windows(old, new) {
		all = append(all, smallestChanges(old, new, w)...)
	}
	return all
}

// windows finds the narrow places where two texts differ. Where they part, it
// takes the nearest lines at which they agree again. It reads most of a file at
// the speed of a memory compare, so that only the windows need to be
// cut into lines.
func windows(old, new []byte) []lineChange {
	var all []lineChange
	i, j := 0, 0
	for {
		same := commonLines(old[i:], new[j:])
		i, j = i+same, j+same
		if i == len(old) && j == len(new) {
			return all
		}
		m, n := rejoin(old[i:], new[j:])
		all = append(all, lineChange{i, i + m, j, j + n})
		i, j = i+m, j+n
	}
}

// commonLines is the length in bytes of the whole lines with which both texts
// start.
func commonLines(a, b []byte) int {
	const chunk = 256
	n := 0
	for n+chunk <= min(len(a), len(b)) && bytes.Equal(a[n:n+chunk], b[n:n+chunk]) {
		n += chunk
	}
	for n < min(len(a), len(b)) && a[n] == b[n] {
		n++
	}
	if n == len(a) && n == len(b) {
		return n
	}
	return bytes.LastIndexByte(a[:n], '\n') + 1
}

// rejoin returns how many bytes of each text to skip until both agree for some
// lines, or end together. Failing that, it skips all but their common end.
func rejoin(a, b []byte) (int, int) {
	la, lb := cut(a, lookahead+agreeing), cut(b, lookahead+agreeing)
	for skip := 1; skip <= 2*lookahead; skip++ {
		for m := skip / 2; m >= 0; m-- { // even skips first
			for _, pair := range [2][2]int{{m, skip - m}, {skip - m, m}} {
				if p, q := pair[0], pair[1]; p <= lookahead && q <= lookahead && agree(a, b, la, lb, p, q) {
					return la[p], lb[q]
				}
			}
		}
	}
	same := commonEnd(a, b)
	return len(a) - same, len(b) - same
}

// agree reports whether, from lines p and q on, enough lines are equal.
func agree(a, b []byte, la, lb []int, p, q int) bool {
	for range agreeing {
		if p >= len(la)-1 || q >= len(lb)-1 {
			return p == len(la)-1 && q == len(lb)-1 && la[p] == len(a) && lb[q] == len(b)
		}
		if !bytes.Equal(a[la[p]:la[p+1]], b[lb[q]:lb[q+1]]) {
			return false
		}
		p, q = p+1, q+1
	}
	return true
}

// cut returns where the first lines start, at most so many, and where the last
// of them ends.
func cut(text []byte, most int) []int {
	starts := make([]int, 1, 8)
	for at := 0; at < len(text) && len(starts) <= most; {
		at = forward(text, at, 1)
		starts = append(starts, at)
	}
	return starts
}

// commonEnd is the length of the whole lines with which both texts end.
func commonEnd(a, b []byte) int {
	n := 0
	for n < min(len(a), len(b)) && a[len(a)-1-n] == b[len(b)-1-n] {
		n++
	}
	whole := func(t []byte) bool { return n == len(t) || t[len(t)-1-n] == '\n' }
	for n > 0 && !(whole(a) && whole(b)) {
		n--
	}
	return n
}

// smallestChanges finds the smallest changes inside one window.
func smallestChanges(old, new []byte, w lineChange) []lineChange {
	if w.old0 == w.old1 || w.new0 == w.new1 {
		return []lineChange{w}
	}
	la := cut(old[w.old0:w.old1], maxLines)
	lb := cut(new[w.new0:w.new1], maxLines)
	if len(la)+len(lb) > maxLines {
		return []lineChange{w}
	}
	// go-diff compares runes, and strings of them must be valid: a number for
	// each distinct line serves, whatever bytes the line holds.
	number := map[string]rune{}
	numbers := func(text []byte, starts []int) []rune {
		runes := make([]rune, len(starts)-1)
		for i := range runes {
			line := string(text[starts[i]:starts[i+1]])
			if number[line] == 0 {
				number[line] = rune(len(number) + 1)
			}
			runes[i] = number[line]
		}
		return runes
	}
	a := numbers(old[w.old0:w.old1], la)
	b := numbers(new[w.new0:w.new1], lb)
	dmp := diffmatchpatch.DiffMatchPatch{} // no time-out: the same input gives the same bytes
	var all []lineChange
	i, j := 0, 0
	apart := false
	for _, d := range dmp.DiffMainRunes(a, b, false) {
		n := len([]rune(d.Text))
		if d.Type == diffmatchpatch.DiffEqual {
			i, j = i+n, j+n
			apart = false
			continue
		}
		if !apart {
			x, y := w.old0+la[i], w.new0+lb[j]
			all = append(all, lineChange{x, x, y, y})
			apart = true
		}
		if d.Type == diffmatchpatch.DiffDelete {
			i += n
		} else {
			j += n
		}
		last := &all[len(all)-1]
		last.old1, last.new1 = w.old0+la[i], w.new0+lb[j]
	}
	return all
}

// forward returns the offset some lines after at, which starts a line.
func forward(text []byte, at, lines int) int {
	for range lines {
		n := bytes.IndexByte(text[at:], '\n')
		if n < 0 {
			return len(text)
		}
		at += n + 1
	}
	return at
}

// back returns the offset some lines before at, which starts a line.
func back(text []byte, at, lines int) int {
	for ; lines > 0 && at > 0; lines-- {
		at = bytes.LastIndexByte(text[:at-1], '\n') + 1
	}
	return at
}

// count returns the number of lines; the last one may lack its line break.
func count(text []byte) int {
	n := bytes.Count(text, []byte("\n"))
	if len(text) > 0 && text[len(text)-1] != '\n' {
		n++
	}
	return n
}

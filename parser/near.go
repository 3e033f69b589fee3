package parser

import "strings"

// Nearest returns the name that was probably meant, or "". Case, dashes and
// underscores do not count as a difference; otherwise up to a third of the
// letters may be wrong, three at most.
func Nearest(name string, known []string) string {
	fold := strings.NewReplacer("-", "", "_", "", " ", "").Replace
	name = strings.ToLower(name)
	best, at := "", 4
	for _, k := range known {
		d := 0
		if fold(name) != fold(k) {
			d = distance(name, k)
		}
		if d < at && d <= max(1, max(len(name), len(k))/3) {
			best, at = k, d
		}
	}
	return best
}

// distance is the edit distance of two names: letters put in, left out,
// replaced, or two neighbours swapped (optimal string alignment).
func distance(a, b string) int {
	if len(a) > 64 || len(b) > 64 {
		return max(len(a), len(b)) // no name of ours is that long
	}
	before, last, row := make([]int, len(b)+1), make([]int, len(b)+1), make([]int, len(b)+1)
	for j := range last {
		last[j] = j
	}
	for i := 1; i <= len(a); i++ {
		row[0] = i
		for j := 1; j <= len(b); j++ {
			cost := 1
			if a[i-1] == b[j-1] {
				cost = 0
			}
			row[j] = min(last[j]+1, row[j-1]+1, last[j-1]+cost)
			if i > 1 && j > 1 && a[i-1] == b[j-2] && a[i-2] == b[j-1] {
				row[j] = min(row[j], before[j-2]+1)
			}
		}
		before, last, row = last, row, before
	}
	return last[len(b)]
}

package patch

import (
	"fmt"
	"strings"
)

// textCase is a change of one file whose diff is kept under
// testdata/reference, with what git and GNU patch made of it.
type textCase struct {
	name     string // of the case
	file     string
	old, new string
}

// numbered gives so many lines "n" + ending.
func numbered(lines int, ending string) string {
	var b strings.Builder
	for i := range lines {
		fmt.Fprint(&b, i+1, ending)
	}
	return b.String()
}

func swap(text string, pairs ...string) string {
	for i := 0; i < len(pairs); i += 2 {
		if strings.Count(text, pairs[i]) != 1 {
			panic(fmt.Sprintf("%q stands %d times", pairs[i], strings.Count(text, pairs[i])))
		}
		text = strings.Replace(text, pairs[i], pairs[i+1], 1)
	}
	return text
}

func textCases() []textCase {
	const define = "#define HOT_MAX 285 // °C\n"
	const limits = "// limits\n#define HOT_MIN 5\n" + define + "#define BED_MAX 120\n"
	const latin1 = "// D\xfcse, hei\xdf\n#define HOT_MAX 285 // \xb0C\n// \xa0\n"
	const mark = "\ufeff[extruder]\nmax_temp: 285\n"
	const likeDiff = "-- a/x\n++ b/x\n@@ -1 +1 @@\n\\ No newline at end of file\n# x\n"
	unix, dos := numbered(30, "\n"), numbered(30, "\r\n")
	return []textCase{
		{"one-value", "Configuration.h", limits, swap(limits, "285", "260")},
		{"crlf", "egret-01/printer.cfg", dos, swap(dos, "\r\n15\r\n", "\r\nfifteen\r\n")},
		{"mixed-endings", "mixed.cfg", "a: 1\r\nb: 2\nc: 3\r\rd: 4\r\n", "a: 1\r\nb: 9\nc: 3\r\rd: 5\r\n"},
		{"endings-only", "endings.cfg", "a\nb\nc\n", "a\nb\r\nc\n"},
		{"no-last-newline", "last.cfg", "a: 1\nb: 2\nc: 3", "a: 1\nb: 2\nc: 4"},
		{"last-newline-kept-away", "last.cfg", unix + "31", swap(unix, "\n30\n", "\nthirty\n") + "31"},
		{"last-newline-added", "last.cfg", "a: 1\nb: 2", "a: 1\nb: 2\n"},
		{"last-newline-removed", "last.cfg", "a: 1\nb: 2\n", "a: 1\nb: 2"},
		{"latin-1", "Configuration.h", latin1, swap(latin1, "285", "260")},
		{"byte-order-mark", "bom.cfg", mark, swap(mark, "285", "260")},
		{"insert-at-start", "start.cfg", unix, "zero\n" + unix},
		{"insert-at-end", "end.cfg", unix, unix + "31\n"},
		{"insert-after-last-without-newline", "end.cfg", "1\n2", "1\n2\n3"},
		{"delete-first-and-last", "ends.cfg", unix, unix[len("1\n") : len(unix)-len("30\n")]},
		{"fill-empty", "empty.cfg", "", "a: 1\nb: 2\n"},
		{"fill-empty-one-line", "empty.cfg", "", "a: 1"},
		{"make-empty", "gone.cfg", "a: 1\nb: 2\n", ""},
		{"contexts-touch", "near.cfg", unix, swap(unix, "\n10\n", "\nten\n", "\n17\n", "\nseventeen\n")},
		{"contexts-apart", "far.cfg", unix, swap(unix, "\n10\n", "\nten\n", "\n18\n", "\neighteen\n")},
		{"grow-then-shrink", "grow.cfg", unix,
			swap(unix, "\n5\n", "\n5\n5a\n5b\n5c\n", "\n15\n16\n17\n", "\n15\n", "\n28\n", "\n28a\n")},
		{"repeated-lines", "same.cfg", strings.Repeat("//\n", 12),
			strings.Repeat("//\n", 5) + "#define A\n" + strings.Repeat("//\n", 7)},
		{"moved-block", "moved.cfg", "a\nb\nc\n" + unix, unix + "a\nb\nc\n"},
		{"looks-like-a-diff", "sneaky.cfg", likeDiff,
			swap(likeDiff, "a/x", "a/z", "b/x", "b/y", "# x", "# y")},
		{"name-with-spaces", "my printer/Configuration adv.h", define, swap(define, "285", "260")},
		{"name-not-ascii", "düse/größe.cfg", define, swap(define, "285", "260")},
		{"name-latin-1", "d\xfcse.cfg", define, swap(define, "285", "260")},
		{"name-quoted", `odd "name" \ here.cfg`, define, swap(define, "285", "260")},
		{"name-ends-in-space", "odd ", define, swap(define, "285", "260")},
		{"name-controls", "bell\a tab\t esc\x1b.cfg", define, swap(define, "285", "260")},
	}
}

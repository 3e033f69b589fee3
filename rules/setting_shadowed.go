package rules

import (
	"fmt"
	"strings"
)

// mostShadowed is how many losing places a finding names.
const mostShadowed = 4

var settingShadowed = &Rule{
	ID:      "setting-shadowed",
	Level:   Warning,
	Summary: "Two active places set the same thing to different values.",
	Doc: `The last one in reading order wins. Whoever edits one of the others changes
nothing, so all but one should go. Saved values that a hand-written one hides
are saved-hidden's business.`,
	Check: func(in *Input, report func(Finding)) {
		for s := range in.Printer.Settings() {
			var losers []string
			others := 0
			for _, h := range s.Hides {
				switch {
				case h.Saved || h.Written == s.Written:
				case len(losers) == mostShadowed:
					others++
				default:
					losers = append(losers, fmt.Sprintf("%s (%s)", quote(h.Written), h.At))
				}
			}
			if others > 0 {
				losers = append(losers, fmt.Sprintf("%d more", others))
			}
			if len(losers) > 0 {
				f := Findingf(Warning, s.At, "keep one %s: it is %s here, which wins, and also %s",
					s.Key, quote(s.Written), losers[0]).Of(s.Key)
				if len(losers) > 1 {
					f = f.Explain("all others: %s", strings.Join(losers, ", "))
				}
				report(f)
			}
		}
	},
}

// quote shows a value as it is written; one that is empty is called so.
func quote(value string) string {
	if value == "" {
		return "nothing"
	}
	return "“" + value + "”"
}

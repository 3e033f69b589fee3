package rules

import "strings"

// MostWords is how many words a finding's message has at most: what a person
// reads in passing. The rest is its detail.
const MostWords = 35

// Brief splits what is too long for a message: the last clauses go, or the last
// words where one clause is too long.
func Brief(text string) (message, rest string) {
	words := strings.Fields(text)
	if len(words) <= MostWords {
		return text, ""
	}
	cut := MostWords - 1
	for i := cut; i > MostWords/3; i-- {
		if strings.HasSuffix(words[i-1], ";") || strings.HasSuffix(words[i-1], ".") {
			cut = i
			break
		}
	}
	message, rest = strings.Join(words[:cut], " "), strings.Join(words[cut:], " ")
	if clause := strings.TrimRight(message, ";."); clause != message {
		return clause, rest
	}
	return message + " …", "… " + rest
}

// shorten moves what is too much of a message to the front of its detail.
func (f *Finding) shorten() {
	message, rest := Brief(f.Message)
	detail := f.Detail
	f.Message, f.Detail = message, ""
	f.explain(rest)
	f.explain(detail)
}

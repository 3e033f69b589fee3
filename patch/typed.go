package patch

import "strings"

// Typed is the name of a file as a person types it on a command line: in single
// quotes where a shell would take it for more than one word.
func Typed(name string) string {
	plain := func(r rune) bool {
		return r >= 'a' && r <= 'z' || r >= 'A' && r <= 'Z' || r >= '0' && r <= '9' ||
			r > 0x7f || strings.ContainsRune("_./+=@%:,-", r)
	}
	if name != "" && strings.IndexFunc(name, func(r rune) bool { return !plain(r) }) < 0 {
		return name
	}
	return "'" + strings.ReplaceAll(name, "'", `'\''`) + "'"
}

package patch

import (
	"fmt"
	"strings"
)

// quoteName writes a file name as git does with its default settings
// (core.quotePath; git-config(1), git-diff(1)): in double quotes with the
// escapes of C where it holds a control character, a quote, a backslash or a
// byte above 0x7f. A TAB after a name with spaces shows where it ends. A name
// that ends in a space is quoted too, which git reads as well: GNU patch would
// take the space for the end of the name.
func quoteName(name string) string {
	odd := strings.HasSuffix(name, " ")
	var b strings.Builder
	b.WriteByte('"')
	for i := range len(name) {
		c := name[i]
		if at := strings.IndexByte(escapes, c); at >= 0 {
			b.Write([]byte{'\\', letters[at]})
		} else if c < ' ' || c >= 0x7f {
			fmt.Fprintf(&b, `\%03o`, c)
		} else {
			b.WriteByte(c)
			continue
		}
		odd = true
	}
	b.WriteByte('"')
	quoted := name
	if odd {
		quoted = b.String()
	}
	if strings.Contains(name, " ") {
		quoted += "\t"
	}
	return quoted
}

// escapes are the bytes that C writes as a backslash with one of the letters.
const escapes, letters = "\a\b\t\n\v\f\r\"\\", `abtnvfr"\`

// unquoteName reads what quoteName wrote; false where it is malformed.
func unquoteName(s string) (string, bool) {
	s = strings.TrimSuffix(s, "\t")
	if !strings.HasPrefix(s, `"`) {
		return s, s != ""
	}
	if len(s) < 2 || !strings.HasSuffix(s, `"`) {
		return "", false
	}
	var b strings.Builder
	for s = s[1 : len(s)-1]; s != ""; {
		if s[0] != '\\' {
			if s[0] == '"' {
				return "", false
			}
			b.WriteByte(s[0])
			s = s[1:]
			continue
		}
		if len(s) < 2 {
			return "", false
		}
		if at := strings.IndexByte(letters, s[1]); at >= 0 {
			b.WriteByte(escapes[at])
			s = s[2:]
			continue
		}
		var c int
		if n, err := fmt.Sscanf(s[1:min(4, len(s))], "%3o", &c); n != 1 || err != nil || len(s) < 4 ||
			c > 0xff {
			return "", false
		}
		b.WriteByte(byte(c))
		s = s[4:]
	}
	return b.String(), true
}

package defines

import (
	"strconv"
	"strings"

	"preflash/parser"
)

// literal writes a figure in the manner of the value that it replaces: its
// parentheses, its suffix, its decimals; integers stay integers where they can.
func literal(old string, x float64) string {
	inner, before, after := old, "", ""
	for strings.HasPrefix(inner, "(") && strings.HasSuffix(inner, ")") {
		before, after = before+"(", ")"+after
		inner = inner[1 : len(inner)-1]
	}
	lead := len(inner) - len(strings.TrimLeft(inner, " \t"))
	trail := len(strings.TrimRight(inner, " \t"))
	if lead > trail {
		return written(x)
	}
	body := strings.TrimLeft(inner[lead:trail], "+-")
	decimals, suffix, ok := manner(body)
	if !ok || len(inner[lead:trail])-len(body) > 1 {
		return written(x)
	}
	return before + inner[:lead] + styled(x, decimals, suffix) + inner[trail:] + after
}

// manner takes a literal apart. decimals is -1 for an integer.
func manner(s string) (decimals int, suffix string, ok bool) {
	digits, decimals := 0, -1
	for i := range len(s) {
		switch c := s[i]; {
		case c >= '0' && c <= '9':
			digits++
			if decimals >= 0 {
				decimals++
			}
		case c == '.' && decimals < 0:
			decimals = 0
		default:
			suffix = s[i:]
			switch suffix {
			case "f", "F", "l", "L", "u", "U", "ul", "UL":
				return decimals, suffix, digits > 0
			}
			return 0, "", false
		}
	}
	return decimals, "", digits > 0
}

// styled writes a figure with at least so many decimals.
func styled(x float64, decimals int, suffix string) string {
	text := written(x)
	switch at := strings.IndexByte(text, '.'); {
	case strings.ContainsRune(text, 'e'):
		if suffix == "f" || suffix == "F" {
			return text + suffix
		}
		return text
	case at < 0 && decimals < 0:
		return text + suffix
	case at < 0 && decimals == 0:
		return text + "." + suffix
	case at < 0:
		return text + "." + strings.Repeat("0", decimals) + suffix
	case decimals < 0:
		return text // an integer's suffix does not go with a fraction
	default:
		return text + strings.Repeat("0", max(decimals-(len(text)-at-1), 0)) + suffix
	}
}

// written gives a figure with at most seven digits, more where an integer has
// more.
func written(x float64) string {
	if x == float64(int64(x)) {
		return strconv.FormatInt(int64(x), 10)
	}
	short := parser.Significant(x, 7)
	if a := short; a < 1e-3 && a > -1e-3 {
		return strconv.FormatFloat(short, 'e', -1, 64)
	}
	return parser.Decimal(short)
}

package defines

import (
	"testing"
)

// Each byte of a line without its comments and splices stands in the file
// where it stood: letters of several bytes count as their bytes.
func TestLexKeepsPlaces(t *testing.T) {
	tests := map[string]string{
		"plain":                     "#define NAME egret\n",
		"comment":                   "#define/* who */NAME egret\n",
		"letters of several bytes":  "#define NAME /* who */ \"Größe µ 285 °C\" А",
		"letters in a splice":       "#define NAME \\\n\"Grö\\\nße\" /* € */ 1 // €\n",
		"comment over two lines":    "#define NAME /* ä\nö */ \"ü\"\n",
		"bytes that are no letters": "#define NAME /* \x80 */ \"\xb0 \xff\"\n",
	}
	for name, text := range tests {
		t.Run(name, func(t *testing.T) {
			v := logical(text, 0)
			v.lex(text, true)
			for i := range len(v.text) {
				at := int(v.at(i))
				if got := text[at : at+1]; got != v.text[i:i+1] && v.text[i] != ' ' {
					t.Errorf("byte %d, %q, is said to stand at %d, where the file has %q",
						i, v.text[i:i+1], at, got)
				}
			}
			if end := int(v.after(len(v.text))); end > len(text) {
				t.Errorf("the line ends at %d, behind the file's %d bytes", end, len(text))
			}
		})
	}
}

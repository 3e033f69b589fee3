package cli

import (
	"bytes"
	"os"
	"regexp"
	"strings"
	"testing"
)

// TestSheetKeysAreExplained sees that every key of the sheet is in what `sheet`
// begins, in its help or in that of `waive`.
func TestSheetKeysAreExplained(t *testing.T) {
	schema, err := os.ReadFile("../../../parser/sheet/schema.go")
	if err != nil {
		t.Fatal(err)
	}
	var said bytes.Buffer
	for _, call := range [][]string{
		{"sheet", "--root", "../../..", "../../../testdata/demo/egret-05/printer.cfg"},
		{"sheet", "--help"}, {"waive", "--help"},
		{"waive", "supply-budget", "--reason", "r", "--until", "2026-12-31", "--today", "2026-11-25",
			"--root", "../../..", "../../../testdata/demo/egret-06"},
		{"waive", "runaway-loose", "--reason", "r", "--until", "2026-12-31", "--today", "2026-11-25",
			"--root", "../../..", "../../../testdata/demo/egret-06"},
	} {
		if code := Run(call, &said, &said); code != exitClean {
			t.Fatalf("%v: exit code %d", call, code)
		}
	}
	keys := regexp.MustCompile(`(?:s|u|v)\.(?:label|text|paths|float|whole|truth|day|`+
		`sub|defines|pairs|required|optional)\("([a-z0-9_]+)"|(?:choice|get)\(s, "([a-z0-9_]+)"`).
		FindAllStringSubmatch(string(schema), -1)
	if len(keys) < 50 {
		t.Fatalf("only %d keys: %v", len(keys), keys)
	}
	for _, k := range keys {
		if name := k[1] + k[2]; !strings.Contains(said.String(), name) {
			t.Errorf("nothing explains the key %s", name)
		}
	}
}

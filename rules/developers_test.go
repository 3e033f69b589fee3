package rules

import (
	"go/ast"
	"go/parser"
	"go/token"
	"os"
	"path/filepath"
	"reflect"
	"strings"
	"testing"
)

// The rule that DEVELOPERS.md shows is the real one, and so is its test.
func TestDevelopersExample(t *testing.T) {
	page, err := os.ReadFile("../DEVELOPERS.md")
	if err != nil {
		t.Fatal(err)
	}
	_, rest, _ := strings.Cut(string(page), "## Adding a rule")
	for _, name := range []string{"nozzle_size.go", "nozzle_size_test.go"} {
		file, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		var block string
		_, rest, _ = strings.Cut(rest, "```go\n")
		block, rest, _ = strings.Cut(rest, "```\n")
		if block == "" || !strings.Contains(string(file), block) {
			t.Errorf("%s has not what DEVELOPERS.md shows of it:\n%s", name, block)
		}
	}
}

// Every rule has its fields in the order of the type.
func TestFieldsOfRules(t *testing.T) {
	order := make(map[string]int)
	for i := range reflect.TypeFor[Rule]().NumField() {
		order[reflect.TypeFor[Rule]().Field(i).Name] = i
	}
	names, err := filepath.Glob("*.go")
	if err != nil {
		t.Fatal(err)
	}
	rules, fset := 0, token.NewFileSet()
	for _, name := range names {
		if strings.HasSuffix(name, "_test.go") {
			continue
		}
		file, err := parser.ParseFile(fset, name, nil, parser.SkipObjectResolution)
		if err != nil {
			t.Fatal(err)
		}
		ast.Inspect(file, func(n ast.Node) bool {
			literal, ok := n.(*ast.CompositeLit)
			if !ok {
				return true
			}
			if of, ok := literal.Type.(*ast.Ident); !ok || of.Name != "Rule" {
				return true
			}
			rules++
			last := -1
			for _, e := range literal.Elts {
				field := e.(*ast.KeyValueExpr).Key.(*ast.Ident)
				if order[field.Name] < last {
					t.Errorf("%s: %s comes too late", fset.Position(field.Pos()), field.Name)
				}
				last = order[field.Name]
			}
			return true
		})
	}
	if rules != len(All()) {
		t.Errorf("%d rules are written, %d are listed", rules, len(All()))
	}
}

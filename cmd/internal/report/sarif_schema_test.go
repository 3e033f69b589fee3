package report

import (
	"strings"
	"testing"

	"github.com/santhosh-tekuri/jsonschema/v6"
)

// sarifSchema is the schema that OASIS publishes with SARIF 2.1.0.
func sarifSchema(t *testing.T) *jsonschema.Schema {
	t.Helper()
	schema, err := jsonschema.NewCompiler().Compile("../../../testdata/reference/sarif/sarif-2.1.0.json")
	if err != nil {
		t.Fatal(err)
	}
	return schema
}

func validateSARIF(t *testing.T, schema *jsonschema.Schema, text string) error {
	t.Helper()
	log, err := jsonschema.UnmarshalJSON(strings.NewReader(text))
	if err != nil {
		t.Fatal(err)
	}
	return schema.Validate(log)
}

func TestSARIFMeetsSchema(t *testing.T) {
	schema := sarifSchema(t)
	text := sarifOf(t, workshop())
	if err := validateSARIF(t, schema, text); err != nil {
		t.Error(err)
	}
	// A schema that takes everything would prove nothing.
	bad := strings.Replace(text, `"level": "error"`, `"level": "fatal"`, 1)
	if bad == text || validateSARIF(t, schema, bad) == nil {
		t.Error("a level that SARIF does not know passes the schema")
	}
}

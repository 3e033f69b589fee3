package report

import (
	"encoding/json"
	"io"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"preflash/cmd/internal/fleet"
	"preflash/cmd/internal/testfiles"
)

func jsonText(t testing.TB, r *fleet.Result) string {
	t.Helper()
	return render(t, func(w io.Writer) error { return JSON(w, r) })
}

func TestJSONGolden(t *testing.T) {
	golden(t, "workshop.json", jsonText(t, workshop()))
}

func TestJSONOfNothing(t *testing.T) {
	got := strings.Join(strings.Fields(jsonText(t, &fleet.Result{})), "")
	want := `{"schema":1,"tool":{"name":"preflash","version":""},"printers":[],` +
		`"summary":{"printers":0,"unreadable":0,"errors":0,"warnings":0,"notes":0}}`
	if got != want {
		t.Errorf("got %s", got)
	}
	got = strings.Join(strings.Fields(jsonText(t, cleanFleet(1))), "")
	for _, want := range []string{`"files":[],"error":null,"findings":[]`} {
		if !strings.Contains(got, want) {
			t.Errorf("%s lacks %s", got, want)
		}
	}
}

// Decoding gives back what was put in, whatever it holds.
func TestJSONKeepsText(t *testing.T) {
	rapid.Check(t, func(rt *rapid.T) {
		r := anyResult().Draw(rt, "result")
		got := jsonText(t, r)
		if c, found := testfiles.Hidden(got); found {
			rt.Errorf("holds %U: %q", c, got)
		}
		var back resultJSON
		if err := json.Unmarshal([]byte(got), &back); err != nil {
			rt.Fatal(err)
		}
		p, f := r.Printers[0], r.Printers[0].Findings[0]
		for _, pair := range [][2]string{
			{back.Printers[0].Name, p.Name}, {back.Printers[0].Files[0], p.Files[0]},
			{back.Printers[0].Findings[0].Message, f.Message},
			{back.Printers[0].Findings[0].File, f.Region.File},
			{back.Printers[1].Error.Message, r.Printers[1].Problem.Message},
		} {
			// encoding/json replaces each byte that is not UTF-8.
			if pair[0] != string([]rune(pair[1])) {
				rt.Errorf("%q came back as %q", pair[1], pair[0])
			}
		}
	})
}

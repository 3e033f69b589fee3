package patch_test

import (
	"encoding/csv"
	"fmt"
	"os"
	"strconv"
	"strings"
	"testing"

	"preflash/parser"
	"preflash/patch"
	"preflash/rules/sensor"
)

// sensorKeys are the keys of a sheet for a sensor of the reference: a known
// curve, "points 25:100000 …" or "beta 100000 3950".
func sensorKeys(t *testing.T, of string) string {
	t.Helper()
	kind, words := parser.NTC, strings.Fields(of)
	switch words[0] {
	case "points":
		pairs := strings.ReplaceAll(strings.Join(words[1:], "], ["), ":", ", ")
		return fmt.Sprintf("kind = %q\npoints = [[%s]]", kind, pairs)
	case "beta":
		return fmt.Sprintf("kind = %q\nbeta = { r25_ohm = %s, b_k = %s }", kind, words[1], words[2])
	}
	k, ok := sensor.Find(of)
	if !ok {
		t.Fatalf("no curve %s", of)
	}
	return fmt.Sprintf("kind = %q\ncurve = %q", k.Kind, of)
}

// Every sensor that is read wrong while the firmware has a better definition of
// it gets another one. Which they are says testdata/reference/sensor, by a
// script that was written apart from this code.
func TestBetterDefinitionsAreProposed(t *testing.T) {
	if testing.Short() {
		t.Skip("takes longer than all other tests here; mutation runs leave it out")
	}
	f, err := os.Open("../testdata/reference/sensor/definitions.csv")
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	rows, err := csv.NewReader(f).ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	rows = rows[1:]
	versions := map[string]string{"older": "02000901", "newer": "02010300"}
	var list []*patch.Source
	board := ""
	for _, r := range rows {
		generation, pullup, number, of := r[0], r[1], r[2], r[3]
		if on := pullup + " " + of; on != board {
			board = on
			sheet := sheetWith("printer.cfg", "Configuration.h",
				"kind = \"ntc\"\ncurve = \"ntc-100k-3950\"", sensorKeys(t, of),
				"supply_v", "pullup_ohm = "+pullup+"\nambient_c = 25\nsupply_v")
			list = patch.Printers(t, files{"swap.toml": sheet})
		}
		n, err := strconv.Atoi(number)
		if err != nil {
			t.Fatal(err)
		}
		// The highest target is the 250 °C up to which the reference looks.
		header := fmt.Sprintf(sweepHeader, versions[generation], n)
		header = strings.Replace(header, "MAXTEMP 275", "MAXTEMP 265", 1)
		if err := os.WriteFile("Configuration.h", []byte(header), 0o666); err != nil {
			t.Fatal(err)
		}
		name := fmt.Sprintf("%s, %s on %s Ω, read as %s, which is %s K off",
			generation, of, pullup, number, r[4])
		plan, err := patch.Prove(list, all)
		switch {
		case err != nil:
			t.Errorf("%s: %v", name, err)
		case len(plan.Files) == 0 || numberLine.FindStringSubmatch(string(plan.Files[0].New))[1] == number:
			t.Errorf("%s: no other definition is proposed, and %s is %s K off", name, r[5], r[6])
		}
	}
	if len(rows) < 1000 {
		t.Errorf("%d pairs have a better definition: the reference is not whole", len(rows))
	}
	t.Logf("%d pairs have a better definition", len(rows))
}

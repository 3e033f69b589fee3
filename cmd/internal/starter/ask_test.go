package starter

import (
	"strings"
	"testing"
)

// ask answers the questions of a sheet with these lines.
func ask(t *testing.T, s *Sheet, lines ...string) (asked string) {
	t.Helper()
	var out strings.Builder
	err := Ask(s, strings.NewReader(strings.Join(lines, "\n")+"\n"), &out, func(text string) error {
		_, err := read(t, text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return out.String()
}

func TestAskFillsTheSheet(t *testing.T) {
	s := New(definesFacts())
	asked := ask(t, s,
		"24", "350", "-", "5,0", // printer; the comma of a decimal
		"285", "190 250", "none",
		"ntc", "ntc-100k-3950",
		"cartridge", "24", "50",
		"24", "0.4", "-0.8")
	if left := s.Blanks(); len(left) > 0 {
		t.Errorf("%d blanks are left, first %s\n%s", len(left), left[0].Path, asked)
	}
	got, err := read(t, s.Text())
	if err != nil {
		t.Fatalf("%v\n%s", err, asked)
	}
	switch p, n := got.Printer, got.New; {
	case p.SupplyV.Value != 24, p.SupplyW.Value != 350, p.OtherLoadW.Given, p.OutputA.Value != 5:
		t.Errorf("[printer] is %+v", p)
	case n.RatedC.Value != 285, n.PrintC.Value != [2]float64{190, 250}, n.Liner.Value != "none", n.Sensor.Curve.Value != "ntc-100k-3950",
		n.Heater.RatedW.Value != 50, n.Fan.RatedV.Value != 24, n.Nozzle.TipShiftMM.Value != -0.8:
		t.Errorf("[new] is %+v", n)
	}
}

// An answer that the reader refuses is asked for again, with its reason.
func TestAskRefuses(t *testing.T) {
	for _, tt := range []struct {
		wrong, reason string
	}{
		{"twenty-four", "must be a number"},
		{"-24", "impossible"},
		{`24" # "`, "must be a number"},
		{"-", "must be a number"}, // it may not be left out
	} {
		s := New(definesFacts())
		asked := ask(t, s, tt.wrong, "24")
		if !strings.Contains(asked, tt.reason) {
			t.Errorf("%q: nothing says %q\n%s", tt.wrong, tt.reason, asked)
		}
		if !strings.Contains(s.Text(), "\nsupply_v = 24 ") && !strings.Contains(s.Text(), "\nsupply_v = 24\n") {
			t.Errorf("after %q, 24 is not in the sheet\n%s", tt.wrong, s.Text())
		}
	}
}

// Enter and the end of the input leave the rest blank.
func TestAskLeavesBlanks(t *testing.T) {
	s := New(definesFacts())
	all := len(s.Blanks())
	ask(t, s, "", "350")
	if left := s.Blanks(); len(left) != all-1 || left[0].Path != "printer.supply_v" {
		t.Errorf("%d of %d blanks are left, first %s", len(left), all, left[0].Path)
	}
}

// The power hot is asked of a PTC heater, and of no other.
func TestAskForHotPower(t *testing.T) {
	s := New(definesFacts())
	asked := ask(t, s, "24", "350", "-", "5", "285", "190 250", "none", "ntc", "ntc-100k-3950",
		"ptc", "24", "48", "[[25, 48], [200, 30,0]]", "25 48 200 30", "24", "0.4", "0")
	got, err := read(t, s.Text())
	if err != nil {
		t.Fatalf("%v\n%s", err, asked)
	}
	if h := got.New.Heater.HotW; len(h.Value) != 2 || h.Value[1] != [2]float64{200, 30} {
		t.Errorf("hot_w is %+v\n%s", h, asked)
	}
}

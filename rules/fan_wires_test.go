package rules

import "testing"

func TestFanWires(t *testing.T) {
	in := healthyInput()
	silent(t, fanWires, in)
	for wires, says := range map[int]string{3: "the third, its speed",
		4: "the fourth takes a speed command"} {
		in.Sheet.New.Fan.Wires.Value = wires
		f := one(t, fanWires, in)
		if f.Level != Note {
			t.Errorf("level %s", f.Level)
		}
		wantValues(t, f, Values{"wires": wires})
		wantSaid(t, f, says)
	}
	in.Sheet.New.Fan.Wires.Value = 2
	old := healthySheet().New
	in.Sheet.Old = &old
	silent(t, fanWires, in)
	old.Fan.Wires.Value = 3
	wantSaid(t, one(t, fanWires, in), "the new one has 2")
}

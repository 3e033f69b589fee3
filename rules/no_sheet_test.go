package rules

import (
	"testing"
	"time"

	"preflash/parser"
	"preflash/parser/sheet"
)

// without is what is looked at where there is no sheet.
func without(p *parser.Printer) *Input {
	in := healthyInput()
	in.Printer, in.NoSheet = p, true
	in.Sheet = sheet.Without("egret-01", "defines", 0,
		[]*parser.File{parser.NewFile("Configuration.h", []byte("x"))})
	return in
}

// Without a sheet the rules that need no hotend run, and propose nothing.
func TestCheckWithoutASheet(t *testing.T) {
	in := healthyInput()
	if got := Check(without(in.Printer)); len(got) != 0 {
		t.Errorf("a healthy printer: %+v", got)
	}
	p := healthyInput().Printer
	p.Hotend.Watch.On = off[bool](parser.HotendWatchOn)
	p.Limits.Presets[0].Value = 400
	p.Limits.ColdGuard = off[bool](parser.ColdGuard)
	p.Hotend.Sensor.Value = parser.SensorDef{Form: parser.FormPlaceholder, Name: "998", FixedC: 25}
	p.Bed.Watch.HeatingWindowS.Value = 5000
	p.Hotend.Watch.HysteresisC.Value = 40
	found := make(map[string]bool)
	for _, f := range Check(without(p)) {
		found[f.Rule] = true
		if len(f.Changes) > 0 {
			t.Errorf("%s proposes %v without a sheet", f.Rule, f.Changes)
		}
		if rule := Find(f.Rule); rule.NeedsSheet {
			t.Errorf("%s spoke, and needs a sheet", f.Rule)
		}
	}
	for _, id := range []string{"runaway-off", "runaway-loose", "preset-over", "cold-extrusion",
		"sensor-placeholder"} {
		if !found[id] {
			t.Errorf("%s is silent without a sheet", id)
		}
	}
}

// No rule that runs without a sheet reads what only a sheet can say: with the
// stand-in's hotend spoiled, all say the same.
func TestNoSheetIsNotRead(t *testing.T) {
	p := healthyInput().Printer
	p.Limits.Presets[0].Value = 400
	p.Hotend.Watch.HeatingWindowS.Value = 500
	spoiled := without(p)
	spoiled.Sheet.New.RatedC.Value = 30
	spoiled.Sheet.New.Heater.RatedW.Value = 1e6
	spoiled.Sheet.New.Nozzle.TipShiftMM.Value = 5
	spoiled.Sheet.Printer.SupplyV.Value = 500
	spoiled.Today = time.Date(2040, 1, 1, 0, 0, 0, 0, time.UTC)
	want, got := Check(without(p)), Check(spoiled)
	if len(want) != len(got) || len(want) == 0 {
		t.Fatalf("%d findings, and %d with another hotend", len(want), len(got))
	}
	for i := range want {
		if want[i].Message != got[i].Message {
			t.Errorf("%q\nbecomes %q", want[i].Message, got[i].Message)
		}
	}
}

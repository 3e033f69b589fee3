package parser

import (
	"reflect"
	"slices"
	"testing"
)

func TestLooser(t *testing.T) {
	tests := []struct {
		key     Key
		was, is any
		want    bool
	}{
		{MaxTemp, 260.0, 261.0, true},
		{MaxTemp, 260.0, 259.0, false},
		{MaxTemp, 260.0, 260.0, false},
		{MaxTemp.Of("tool 1"), 260.0, 280.0, true},
		{MinTemp, 5.0, 0.0, true},
		{MinTemp, 0.0, -10.0, true},
		{MinTemp, 0.0, 5.0, false},
		{HotendHeatingWindow, 20.0, 40.0, true},
		{HotendHeatingWindow, 0.0, 40.0, false}, // it was off
		{BedDropPeriod, 0.0, 20.0, false},
		{BadSamples("in a row"), 0.0, 4.0, true},
		{HeaterOutputs, 1.0, 2.0, true},
		{Grace("while heating up"), 0.0, 30.0, true},
		{Preset(3), 200.0, 220.0, true},
		{PowerLimit("heater"), 0.5, 1.0, true},
		{HotendWatchOn, true, false, true},
		{HotendWatchOn, false, true, false},
		{BedHeated, true, false, false},
		{GainP, 20.0, 30.0, false},
		{MaxTemp, 260.0, true, false},
		{MaxTemp, nil, 260.0, false},
	}
	for _, tt := range tests {
		if got := tt.key.Looser(tt.is, tt.was); got != tt.want {
			t.Errorf("%s, %v instead of %v: looser %v, want %v", tt.key, tt.is, tt.was, got, tt.want)
		}
	}
}

func TestTable(t *testing.T) {
	for key, r := range rows() {
		for _, other := range r.with {
			if _, ok := rows()[other]; !ok || other == key {
				t.Errorf("%s goes with %q, which is no other setting of the table", key, other)
			}
		}
	}
	if unit := MaxTemp.Of("bed").Unit(); unit != "°C" {
		t.Errorf("the max temp of the bed is in %q", unit)
	}
}

// Settings lists every setting that a printer has a field for.
func TestSettingsListsEvery(t *testing.T) {
	var p Printer
	var want []Key
	var fill func(v reflect.Value, path string)
	fill = func(v reflect.Value, path string) {
		switch {
		case v.Kind() == reflect.Slice && v.Type().Elem().Kind() == reflect.Struct:
			v.Set(reflect.MakeSlice(v.Type(), 1, 1))
			fill(v.Index(0), path)
		case v.Kind() != reflect.Struct:
		case v.FieldByName("Key").IsValid() && v.FieldByName("State").IsValid():
			want = append(want, Key(path))
			v.FieldByName("Key").SetString(path)
			v.FieldByName("State").Set(reflect.ValueOf(Set))
		default:
			for i := range v.NumField() {
				if field := v.Type().Field(i); field.IsExported() {
					fill(v.Field(i), path+"."+field.Name)
				}
			}
		}
	}
	fill(reflect.ValueOf(&p).Elem(), "")
	listed := make(map[Key]bool)
	for s := range p.Settings() {
		listed[s.Key] = true
	}
	left := []Key{
		".Bed.Watch.SlowsFan", ".Bed.Watch.StillS", // firmware has these of the hotend alone
		".Geometry.LowestMM", // is no option that a change could set, and has no key
	}
	for _, key := range want {
		if !listed[key] && !slices.Contains(left, key) {
			t.Errorf("Printer%s is not listed", key)
		}
	}
}

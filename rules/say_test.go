package rules

import (
	"testing"

	"preflash/parser"
)

// The console steps of a task, and those that keep what it measured.
func TestStepsText(t *testing.T) {
	in := healthyInput()
	for _, tt := range []struct {
		task parser.TaskKind
		keys []parser.Key
		want string
	}{
		{parser.TaskTune, nil, " (TUNE 225 °C)"},
		{parser.TaskTune, []parser.Key{parser.GainP}, " (TUNE 225 °C, then SET GAINS, then SAVE STORED)"},
		{parser.TaskTuneModel, []parser.Key{parser.ModelPower}, " (TUNE MODEL, then SAVE STORED)"},
		{parser.TaskRestart, []parser.Key{parser.GainP}, ""}, // the style has none
	} {
		if got := stepsText(in, parser.Task{Kind: tt.task, TempC: 225}, tt.keys...); got != tt.want {
			t.Errorf("task %d: %q, want %q", tt.task, got, tt.want)
		}
	}
}

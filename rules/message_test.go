package rules

import (
	"strings"
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

// What is too long for a message goes to the detail, at the end of a clause
// where there is one.
func TestBrief(t *testing.T) {
	words := func(n int) string { return strings.TrimSpace(strings.Repeat("word ", n)) }
	for _, tt := range []struct{ name, text, message, rest string }{
		{"just short enough", words(MostWords), words(MostWords), ""},
		{"two clauses", words(20) + "; " + words(20), words(20), words(20)},
		{"two sentences", words(20) + ". " + words(20), words(20), words(20)},
		{"three clauses", words(20) + "; " + words(10) + "; " + words(10), words(20) + "; " + words(10),
			words(10)},
		{"the clause is as long as a message", words(MostWords-1) + "; " + words(9), words(MostWords - 1),
			words(9)},
		{"the shortest that is left", words(MostWords/3+1) + "; " + words(40), words(MostWords/3 + 1),
			words(40)},
		{"a clause that says too little", words(MostWords/3) + "; " + words(40),
			words(MostWords/3) + "; " + words(MostWords-1-MostWords/3) + " …",
			"… " + words(40-(MostWords-1-MostWords/3))},
		{"one clause", words(MostWords + 1), words(MostWords-1) + " …", "… " + words(2)},
	} {
		if message, rest := Brief(tt.text); message != tt.message || rest != tt.rest {
			t.Errorf("%s: %q and %q, want %q and %q", tt.name, message, rest, tt.message, tt.rest)
		}
	}
}

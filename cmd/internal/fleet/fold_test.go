package fleet

import (
	"strings"
	"testing"

	"preflash/parser"
	"preflash/rules"
)

// What hangs on one cause is as bad as the worst of it and waived only where
// all of it is; exit codes go by each finding.
func TestFold(t *testing.T) {
	f := parser.NewFile("a.h", []byte("#if X\n#if Y\n"))
	first, second := parser.Span{File: f, Start: 0, End: 5}, parser.Span{File: f, Start: 6, End: 11}
	finding := func(rule string, level rules.Level, key parser.Key, at parser.Span, waived string) Finding {
		message := "cannot tell the " + string(key) + ": it hangs"
		return Finding{Rule: rule, Level: level, Message: message, Waived: waived,
			unknown: key, cause: parser.Cause{Condition: at}}
	}
	every := []Finding{
		finding("pid-stale", rules.Warning, parser.GainP, first, "known"),
		{Rule: "fan-wires", Level: rules.Note, Message: "another"},
		finding("temp-ceiling", rules.Error, parser.MaxTemp, second, "known"),
		finding("temp-reach", rules.Warning, parser.MaxTemp, second, "known"),
		finding("runaway-loose", rules.Error, parser.HotendRise, first, "known"),
		finding("pid-stale", rules.Warning, parser.GainI, first, ""),
	}
	p := Printer{every: every, Findings: (&Source{}).fold(every)}
	if len(p.Findings) != 3 || len(p.Every()) != len(every) {
		t.Fatalf("%d findings, want 3: %+v", len(p.Findings), p.Findings)
	}
	for i, want := range []Finding{
		{Rule: "runaway-loose", Level: rules.Error,
			Message: "cannot tell the kp, the hotend required rise, the ki: it hangs"},
		{Rule: "fan-wires", Level: rules.Note, Message: "another"},
		{Rule: "temp-ceiling", Level: rules.Error, Message: "cannot tell the max temp: it hangs",
			Waived: "known"},
	} {
		if got := p.Findings[i]; got.Rule != want.Rule || got.Level != want.Level ||
			got.Message != want.Message || got.Waived != want.Waived {
			t.Errorf("finding %d: %+v, want %+v", i, got, want)
		}
	}
	r := Result{Printers: []Printer{p}}
	if r.Worst(rules.Error) || !r.Worst(rules.Warning) {
		t.Error("the waived error counts, or the warning does not")
	}
}

// What follows from an error is listed inside it; what is worse, or counts where
// the error does not, stays by itself. Exit codes go by each finding.
func TestFollow(t *testing.T) {
	rated := func(f Finding) Finding {
		f.Rank, f.Danger = rules.RankOf(&rules.Finding{Rule: f.Rule, Level: f.Level})
		return f
	}
	every := []Finding{
		rated(Finding{Rule: "sensor-kind", Level: rules.Error}),
		rated(Finding{Rule: "sensor-fault", Level: rules.Error}),
		rated(Finding{Rule: "temp-ceiling", Level: rules.Error}),
		rated(Finding{Rule: "temp-reach", Level: rules.Warning}),
		rated(Finding{Rule: "sensor-resolution", Level: rules.Warning, Waived: "known"}),
		rated(Finding{Rule: "sensor-kind", Level: rules.Note}),
	}
	p := Printer{every: every, Findings: (&Source{}).fold(every)}
	var got []string
	for _, f := range p.Findings {
		name := f.Rule
		for _, one := range f.Follows {
			name += " > " + one.Rule
		}
		got = append(got, name)
	}
	want := "sensor-kind > sensor-fault > temp-reach > sensor-kind, temp-ceiling, sensor-resolution"
	if strings.Join(got, ", ") != want {
		t.Errorf("folded to %s, want %s", strings.Join(got, ", "), want)
	}
	if len(p.Every()) != len(every) {
		t.Errorf("%d findings count, want %d", len(p.Every()), len(every))
	}

	// Without a control there are no gains: one finding.
	none := func(rule string, key parser.Key) Finding {
		message := "cannot tell the " + string(key) + ": it lacks"
		return rated(Finding{Rule: rule, Level: rules.Warning, Message: message, unknown: key})
	}
	one := (&Source{}).fold([]Finding{none("control-coarse", parser.LoopControl),
		none("pid-stale", parser.LoopControl), none("config-gap", parser.GainP)})
	if len(one) != 1 || one[0].Message != "cannot tell the control, the kp: it lacks" {
		t.Errorf("without a control: %+v", one)
	}
}

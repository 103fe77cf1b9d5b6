package judge_test

import (
	"cmp"
	"slices"
	"strings"
	"testing"

	"fitup/policies/judge"
)

// An arrangement is the demo with something awkward in it that is nevertheless
// correct. No rule may call it a danger or a fault; it may advise.
type arrangement struct {
	Why     string // it looks wrong, and why it is not
	Edits   []edit
	Control control
}

// A control is the nearest thing that is wrong: one edit more, and what finds it.
type control struct {
	edit
	Finds, On string // RULE or RULE/CASE, and the subject
	Of        string // its file, where it is not the edited one
}

// found reports whether a finding is the one that the control must raise.
func (c control) found(f judge.Finding) bool {
	rule, which, _ := strings.Cut(c.Finds, "/")
	return f.Rule == rule && f.Case == which && f.Path == c.On && f.File == cmp.Or(c.Of, c.File)
}

// TestNoWolf: what is odd and sound is let pass, and what is next to it and
// wrong is not.
func TestNoWolf(t *testing.T) {
	all := readVariants[arrangement](t, "nowolf")
	if len(all) < 25 {
		t.Errorf("%d arrangements, want 25", len(all))
	}
	for name, a := range all {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			if a.Why == "" || len(a.Edits) == 0 {
				t.Fatal("nothing is odd about it")
			}
			files := []string{a.Control.File}
			for _, e := range a.Edits {
				files = append(files, e.File)
			}
			odd, err := demo().change(a.Edits...)
			if err != nil {
				t.Fatal(err)
			}
			report, err := odd.judged(about(files))
			if err != nil {
				t.Fatal(err)
			}
			for _, line := range grave(report) {
				t.Error("cried wolf: ", line)
			}
			if slices.ContainsFunc(report.Findings, a.Control.found) {
				t.Errorf("%s on %s is found without the control", a.Control.Finds, a.Control.On)
			}
			wrong, err := odd.change(a.Control.edit)
			if err != nil {
				t.Fatal(err)
			}
			if report, err = wrong.judged(about(files)); err != nil {
				t.Fatal(err)
			}
			if !slices.ContainsFunc(report.Findings, a.Control.found) {
				t.Errorf("control: %s on %s is not found", a.Control.Finds, a.Control.On)
			}
		})
	}
}

package report

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"

	"fitup/policies/judge"
	"fitup/spec/swap"
)

func TestRanges(t *testing.T) {
	for want, numbers := range map[string][]int{
		"3": {3}, "3, 4": {4, 3}, "3-5": {5, 4, 3, 4}, "1, 3-6, 8, 9, 11": {11, 1, 8, 9, 3, 4, 5, 6},
	} {
		if got := ranges(numbers); got != want {
			t.Errorf("ranges %v: %q, want %q", numbers, got, want)
		}
	}
}

// emptySwap is a swap with one step each way, as far as printers need it.
func emptySwap() *Swap {
	step := func(do string) []swap.Step {
		return []swap.Step{{Name: "hold: x", Do: do, Station: "under", Hold: true}}
	}
	return &Swap{
		From: "cars/a.toml", Into: "cars/b.toml", Driveline: "four.toml", Fit: &swap.Fit{}, Change: &judge.Change{}, Report: &judge.Report{},
		Out: &swap.Plan{Parting: &swap.Parting{}, Remove: step("look out")},
		In:  &swap.Plan{Parting: &swap.Parting{}, Refit: step("look in")},
	}
}

// What many steps wait for is said where it is done, anything else where it counts.
func TestReasons(t *testing.T) {
	after := func(name string, constraints ...swap.Constraint) swap.Step {
		for i := range constraints {
			constraints[i].After = name
		}
		return swap.Step{Name: name, After: constraints}
	}
	live, tray, held := swap.Constraint{Before: "isolate", Why: "a live lead makes a spark"},
		swap.Constraint{Before: "off tray", Why: "it is in the way"}, swap.Constraint{Before: "open b", Why: "nothing holds it"}
	s := Stretch{Steps: []swap.Step{
		after("isolate"), after("off tray"), after("open a", live, tray), after("open b", live, tray), after("open c", live),
		after("open d", tray, live), after("lift", swap.Constraint{Before: "open a", Why: held.Why}, held),
	}}
	want := [][]string{
		{"before 3-6: a live lead makes a spark"}, nil, {"after 2: it is in the way"}, {"after 2: it is in the way"}, nil,
		{"after 2: it is in the way"}, {"after 3, 4: nothing holds it"},
	}
	if diff := cmp.Diff(want, s.Reasons(), cmpopts.EquateEmpty()); diff != "" {
		t.Error(diff)
	}
}

// A part that is withheld is in no form; the others are.
func TestSwapFormsWithhold(t *testing.T) {
	shown := Style{Width: 80, Shown: func(file string) string { return file }}
	for _, form := range SwapForms {
		s := emptySwap()
		whole := printedIn(t, form.Print, s, shown)
		s.Withheld = []Withheld{{Part: PartOrder, Why: []string{"nobody knows"}}, {Part: PartHolds, Why: []string{"nobody knows"}}}
		less := printedIn(t, form.Print, s, shown)
		for _, step := range []string{"look out", "look in"} {
			if !strings.Contains(string(whole), step) || strings.Contains(string(less), step) {
				t.Errorf("%s: %q has to be in the plan, and not in what is withheld", form.Name, step)
			}
		}
		if !strings.Contains(string(less), "nobody knows") {
			t.Errorf("%s does not say why", form.Name)
		}
	}
}

// A spec cannot forge a line of the report, nor markup.
func TestSwapPlain(t *testing.T) {
	s := emptySwap()
	s.Fit.Interfaces = []swap.Interface{{Kind: swap.PortKind, Name: "x", Verdict: swap.Missing, Why: []string{"a\x1b[2Jb <img>\u202e"}}}
	for _, print := range []func(*Swap, Style) ([]byte, error){SwapText, SwapMarkdown} {
		text, err := print(s, Style{Width: 80, Shown: func(file string) string { return file }})
		if err != nil {
			t.Fatal(err)
		}
		if strings.ContainsAny(string(text), "\x1b\u202e") {
			t.Errorf("control characters in %q", text)
		}
	}
	text, _ := SwapMarkdown(s, Style{})
	if strings.Contains(string(text), " <img>") {
		t.Errorf("markup in %s", text)
	}
}

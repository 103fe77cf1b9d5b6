package report

import (
	"strings"
	"testing"

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

// A part that is withheld is in no form; the others are.
func TestSwapFormsWithhold(t *testing.T) {
	shown := Style{Width: 80, Shown: func(file string) string { return file }}
	for _, form := range SwapForms {
		s := emptySwap()
		whole, err := form.Print(s, shown)
		if err != nil {
			t.Fatal(err)
		}
		s.Withheld = []Withheld{{Part: PartOrder, Why: []string{"nobody knows"}}, {Part: PartHolds, Why: []string{"nobody knows"}}}
		less, err := form.Print(s, shown)
		if err != nil {
			t.Fatal(err)
		}
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

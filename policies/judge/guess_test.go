package judge_test

import (
	"slices"
	"testing"
)

// A finding that rests on a figure names what was guessed behind the figure.
func TestGuessBehindFigure(t *testing.T) {
	guessed, err := demo().change(edit{File: "cars/squall.toml", In: "[weighing]", Find: `front-left  = "107 kg"`, Put: `front-left  = "~107 kg"`})
	if err != nil {
		t.Fatal(err)
	}
	report, err := guessed.judged([]string{"cars/squall.toml"})
	if err != nil {
		t.Fatal(err)
	}
	rests := 0
	for _, f := range report.Findings {
		if f.Rule != "support.light_stand" {
			continue
		}
		rests++
		if want := []string{"weighing.front-left"}; !slices.Equal(f.Guessed, want) {
			t.Errorf("%s rests on guesses %q, want %q", f.Path, f.Guessed, want)
		}
	}
	if rests == 0 {
		t.Error("support.light_stand found nothing")
	}
}

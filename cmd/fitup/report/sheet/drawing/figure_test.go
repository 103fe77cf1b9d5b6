package drawing

import (
	"testing"

	"github.com/google/go-cmp/cmp"
)

func TestShares(t *testing.T) {
	for _, c := range []struct {
		name  string
		inch  bool
		loads []float64
		whole float64
		want  []string
	}{
		{"nothing is lost", false, []float64{100, 50}, 150, []string{"100 kg", "50 kg"}},
		{"the largest loss gains", false, []float64{33.4, 33.1, 33.5}, 100, []string{"33 kg", "33 kg", "34 kg"}},
		{"of equal losses the first", false, []float64{33.5, 33.5, 33}, 100, []string{"34 kg", "33 kg", "33 kg"}},
		{"the whole rounds down", false, []float64{50.2, 50.2}, 100.4, []string{"50 kg", "50 kg"}},
		{"in pounds", true, []float64{100, 100}, 200, []string{"221 lb", "220 lb"}}, // 440.92
	} {
		if diff := cmp.Diff(c.want, figures{c.inch}.shares(c.loads, c.whole)); diff != "" {
			t.Errorf("%s: want -, got +\n%s", c.name, diff)
		}
	}
}

func TestFit(t *testing.T) {
	for _, c := range []struct{ length, width, want float64 }{{3.0, 150, 20}, {3.01, 150, 25}, {0.5, 150, 5}, {1e6, 150, 1000}} {
		if got := fit(c.length, c.width); got != c.want {
			t.Errorf("%g m on %g mm: 1:%g, want 1:%g", c.length, c.width, got, c.want)
		}
	}
}

func TestRound(t *testing.T) {
	for _, c := range []struct{ value, want float64 }{{0, 1}, {1, 1}, {1.01, 2}, {31, 50}, {80, 100}, {0.03, 0.05}} {
		if got := round(c.value); got != c.want {
			t.Errorf("round(%g) = %g, want %g", c.value, got, c.want)
		}
	}
}

package outfit

import (
	"math/rand/v2"
	"strings"
	"testing"
)

func TestVary(t *testing.T) {
	const spec = `hose = "2.35 m of ptfe-8, 2024-03"
mass          = "9.5 kg"
fans = { draws = "9 A", on-at = "~94 C" }
held = "4 x M8x1.25x20 8.8 hex, 22 N m, dry"
at = "-2820, 0, 560 mm"
`
	r := rand.New(rand.NewPCG(1, 1))
	for _, c := range []struct {
		name  string
		knows knowledge
		has   []string
	}{
		{"all is known", knowledge{}, []string{`mass          = "9.`, `draws = "9 A"`}},
		{"nothing is known", knowledge{asked: 1}, []string{`mass          = "?"`, `draws = "?"`}},
		{"all is guessed", knowledge{guessed: 1}, []string{`mass          = "~9.`, `draws = "~9 A"`}},
	} {
		got := vary(r, spec, c.knows)
		for _, part := range append(c.has, ` m of ptfe-8, 2024-03"`, `on-at = "~94 C"`, `held = "4 x M8x1.25x20 8.8 hex, 22 N m, dry"`, `at = "-2820, 0, 560 mm"`) {
			if !strings.Contains(got, part) {
				t.Errorf("%s: %s is not in\n%s", c.name, part, got)
			}
		}
	}
}

func TestScaled(t *testing.T) {
	for _, c := range []struct {
		number string
		factor float64
		want   string
	}{
		{"2.35", 1, "2.35"},
		{"2.35", 1.02, "2.40"},
		{"80", 1.3, "104"},
		{"-12.0", 0.5, "-6.0"},
	} {
		if got := scaled(c.number, c.factor); got != c.want {
			t.Errorf("%s times %g is %s, want %s", c.number, c.factor, got, c.want)
		}
	}
}

func TestSeedFault(t *testing.T) {
	const spec = "[fuel.cell]\nmade = \"2024-03\"\n[seat]\nmade = \"2024-03\"\n"
	for _, c := range []struct {
		name string
		f    fault
		want string
	}{
		{"in a table", fault{In: "[seat]", Find: "2024", Put: "2012"}, "[fuel.cell]\nmade = \"2024-03\"\n[seat]\nmade = \"2012-03\"\n"},
		{"anywhere", fault{Find: "[seat]", Put: "[net]"}, "[fuel.cell]\nmade = \"2024-03\"\n[net]\nmade = \"2024-03\"\n"},
		{"at two places", fault{Find: "2024", Put: "2012"}, spec},
		{"in a table that is not there", fault{In: "[helmet]", Find: "2024", Put: "2012"}, spec},
	} {
		if got := c.f.seed(spec); got != c.want {
			t.Errorf("%s:\n%s", c.name, got)
		}
	}
}

package judge_test

import (
	"maps"
	"slices"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"fitup/policies/judge"
)

// A fault is the demo with one thing wrong: one edit, with everything that
// appears in the report and everything that goes from it.
type fault struct {
	edit
	// Given makes another demo first, itself without danger or fault: a car at
	// another stage, say.
	Given         []edit
	Appears, Goes []change
}

// A change is one thing more, or less, in the report. It is in the edited file
// unless In says another.
type change struct {
	Finds  string   // RULE or RULE/CASE that finds something
	On     string   // the subject that it is found on
	Asks   string   // or a key without which rules cannot tell
	For    []string // those rules
	In     string
	Waived bool
	Why    string // for each change but the first that appears
}

// fixed says of which file a change is.
func (c change) said(file string) []said {
	if c.In != "" {
		file = c.In
	}
	if c.Asks != "" {
		var all []said
		for _, rule := range c.For {
			all = append(all, said{Rule: rule, File: file, Path: c.Asks, Asks: true})
		}
		return all
	}
	rule, name, _ := strings.Cut(c.Finds, "/")
	return []said{{Rule: rule, Case: name, File: file, Path: c.On, Waived: c.Waived}}
}

func texted(all []change, file string) []string {
	lines := []string{}
	for _, c := range all {
		for _, s := range c.said(file) {
			lines = append(lines, s.String())
		}
	}
	slices.Sort(lines)
	return lines
}

func linesOf(all []said) []string {
	lines := []string{}
	for _, s := range all {
		lines = append(lines, s.String())
	}
	return lines
}

// judged judges the fault, and what it was before.
func (f fault) judged() (before, after *judge.Report, err error) {
	files := []string{f.File}
	for _, e := range f.Given {
		files = append(files, e.File)
	}
	cars := about(files)
	if slices.ContainsFunc(f.Appears, func(c change) bool { return strings.HasPrefix(c.Finds, "fleet.") }) {
		cars = everyCar()
	}
	was, before := demo(), whole().of(cars)
	if len(f.Given) > 0 {
		if was, err = was.change(f.Given...); err != nil {
			return nil, nil, err
		}
		if before, err = was.judged(cars); err != nil {
			return nil, nil, err
		}
	}
	is, err := was.change(f.edit)
	if err != nil {
		return nil, nil, err
	}
	after, err = is.judged(cars)
	return before, after, err
}

// TestFaults: what is wrong is found, and nothing else is.
func TestFaults(t *testing.T) {
	for name, f := range readVariants[fault](t, "faults") {
		t.Run(name, func(t *testing.T) {
			t.Parallel()
			before, after, err := f.judged()
			if err != nil {
				t.Fatal(err)
			}
			for _, line := range grave(before) {
				t.Error("before the fault: ", line)
			}
			appears, goes := compared(says(before), says(after))
			if diff := cmp.Diff(texted(f.Appears, f.File), linesOf(appears)); diff != "" {
				t.Errorf("appears (-listed +found):\n%s", diff)
			}
			if diff := cmp.Diff(texted(f.Goes, f.File), linesOf(goes)); diff != "" {
				t.Errorf("goes (-listed +found):\n%s", diff)
			}
			for i, c := range slices.Concat(f.Appears, f.Goes) {
				if i > 0 && c.Why == "" {
					t.Errorf("why %s%s?", c.Finds, c.Asks)
				}
			}
			if len(f.Appears) == 0 || f.Appears[0].Finds == "" {
				t.Error("what is found comes first")
			}
		})
	}
}

// notSeededYet are rules that no variant makes fire.
var notSeededYet = []string{}

// notOfTheDemo are areas whose rules speak of a baseline, which is no spec.
var notOfTheDemo = []string{"baseline"}

// TestFaultsAreMany: there are enough of them, most are plain, and each rule has
// its own.
func TestFaultsAreMany(t *testing.T) {
	all := readVariants[fault](t, "faults")
	plain, fires := 0, map[string]bool{}
	for _, f := range all {
		if len(f.Appears) == 1 && len(f.Goes) == 0 {
			plain++
		}
		for _, c := range f.Appears {
			rule, _, _ := strings.Cut(c.Finds, "/")
			fires[rule] = true
		}
	}
	t.Logf("%d variants, %d with one finding and nothing else, %d rules", len(all), plain, len(fires))
	if len(all) < 150 || plain < 100 {
		t.Errorf("%d variants, %d with one finding only; want 150 and 100", len(all), plain)
	}
	rules := slices.Concat(engine().Rules(), judge.Own())
	for _, r := range rules {
		if slices.Contains(notOfTheDemo, r.Area) {
			continue
		}
		if seeded, due := fires[r.ID], !slices.Contains(notSeededYet, r.ID); seeded != due {
			t.Errorf("%s: seeded %v, listed as not seeded yet %v", r.ID, seeded, !due)
		}
		delete(fires, r.ID)
	}
	for _, id := range slices.Sorted(maps.Keys(fires)) {
		if id != "" {
			t.Errorf("%s: there is no such rule", id)
		}
	}
}

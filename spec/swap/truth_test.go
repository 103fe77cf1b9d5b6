package swap

import (
	"os"
	"slices"
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
	"go.yaml.in/yaml/v3"

	"fitup/spec"
	"fitup/spec/tree"
)

// A truth is one swap of the demo as somebody worked it out on paper.
type truth struct {
	Driveline, From, Into string
	Interfaces            []handMade
}

// handMade is one interface: Of is the last words of the driveline's path, or of
// the car's where it begins with what the car's is.
type handMade struct {
	Kind, Of string
	Against  string // the car's path, where Of is at more than one interface
	Verdict  Verdict
	With     []string
	Because  string
}

// TestFitAgreesWithPaper holds what the program says of two swaps against what
// was worked out by hand before it was asked.
func TestFitAgreesWithPaper(t *testing.T) {
	demo := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../..")})
	total := 0
	for _, name := range []string{"bellows-into-haar", "fiddle-into-haar"} {
		t.Run(name, func(t *testing.T) {
			text, err := os.ReadFile("../../testdata/swaps/" + name + ".yaml")
			if err != nil {
				t.Fatal(err)
			}
			var paper truth
			if err := yaml.Unmarshal(text, &paper); err != nil {
				t.Fatal(err)
			}
			m, err := FromCar(demo, paper.From, paper.Into)
			if err != nil {
				t.Fatal(err)
			}
			if m.Driveline.Name != paper.Driveline {
				t.Fatalf("%s moves, and the paper is about %s", m.Driveline.Name, paper.Driveline)
			}
			fit := NewFit(m.Received, derived(m.Received), testTolerances)
			for _, hand := range paper.Interfaces {
				total++
				if hand.Because == "" {
					t.Errorf("%s %s: no reason", hand.Kind, hand.Of)
				}
				found := slices.DeleteFunc(slices.Clone(fit.Interfaces), func(i Interface) bool { return !hand.about(i) })
				if len(found) != 1 {
					t.Errorf("%s %s: found %d times", hand.Kind, hand.Of, len(found))
					continue
				}
				if found[0].Verdict != hand.Verdict {
					t.Errorf("%s\non paper %s: %s", told(found[0]), hand.Verdict, hand.Because)
				}
				if diff := gocmp.Diff(hand.With, adaptorNames(found[0].Chain)); hand.With != nil && diff != "" {
					t.Errorf("%s %s: adaptors (-paper +got):\n%s", hand.Kind, hand.Of, diff)
				}
			}
		})
	}
	if total < 40 {
		t.Errorf("%d interfaces on paper, want 40 at least", total)
	}
}

func (h handMade) about(i Interface) bool {
	ends := func(path string) bool {
		return path == h.Of || strings.HasSuffix(path, "."+h.Of) || strings.HasPrefix(path, h.Of+".")
	}
	return i.Kind == h.Kind && (h.Against == "" || h.Against == i.Car) && (h.Kind == ThrottleKind || ends(i.Driveline) || ends(i.Car))
}

func adaptorNames(c *Chain) []string {
	if c == nil {
		return nil
	}
	var names []string
	for _, a := range c.Adaptors {
		names = append(names, a.Name)
	}
	return names
}

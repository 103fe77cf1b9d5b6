package swap

import (
	"os"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/tree"
)

// TestFitOfTheDemo asks that both cars of the demo that run fit what is in them, but for what is shut on purpose.
func TestFitOfTheDemo(t *testing.T) {
	demo := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../..")})
	for car, want := range map[string][]string{
		"cars/mizzle.toml": {
			"port driveline.gate-out: left over: may stay open",
			"port driveline.vacuum: left over: capped: silicone cap and a spring clip, off when a servo wants it",
		},
		"cars/squall.toml": {},
	} {
		c, d := composed(t, demo, car)
		got := []string{}
		for _, i := range NewFit(c, d, testTolerances).Interfaces {
			if i.Verdict != Meets {
				got = append(got, told(i))
			}
		}
		if diff := gocmp.Diff(want, got); diff != "" {
			t.Errorf("%s: what does not meet (-want +got):\n%s", car, diff)
		}
	}
}

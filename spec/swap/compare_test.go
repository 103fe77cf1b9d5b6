package swap

import (
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
)

func TestCompare(t *testing.T) {
	edits := []string{
		// Pipit has a driveline of its own, with a smaller fuel port and a wider hose.
		`driveline = "none" -> driveline = "other.toml"`,
		`to = ["driveline.fuel-in", "female 37-flare"] -> to = ["driveline.fuel-in", "female 37-flare"]
[lines.hot]
hose = "0.3 m of water-38"
from = ["driveline.water-out", "38.5 mm hose"]
to = "open air"
[plugs.loom]
meets = ["driveline.loom", "size-24 key-W sockets connector"]
[pins.loom]
A = { gives = "computer supply" }
B = { gives = "fan request" }
[circuits.starter]
from = "electrics.posts.main"
to = ["driveline.starter", "M8 ring copper"]
[electrics.posts.main]
end = "M8 stud"`,
	}
	o := fleet(t, edits...)
	_, one := composed(t, o, "wagtail.toml")
	_, other := composed(t, o, "pipit.toml")
	var got []string
	comparison := Compare(one, other, testTolerances)
	for _, p := range comparison.Pairs {
		got = append(got, strings.TrimSuffix(p.Kind+" "+p.Name+": "+string(p.Likeness)+" "+strings.Join(p.Why, "; "), " "))
	}
	want := []string{
		"mount left: same",
		"mount right: only one",
		"port fuel-in: differs -8 female 37-flare against -6 female 37-flare",
		"port gauge: only one",
		"port loom: same",
		"port prop: only one",
		"port starter: same",
		"port steer-in: only one",
		"port steer-out: only one",
		"port water-in: only one",
		"port water-out: meets 38 mm hose and 38.5 mm hose",
		"pin loom.A: same",
		"pin loom.B: differs takes fan request against gives fan request",
	}
	if diff := gocmp.Diff(want, got); diff != "" {
		t.Errorf("(-want +got):\n%s", diff)
	}
	if diff := gocmp.Diff([]string{"mount left", "port loom", "port starter", "port water-out", "pin loom.A"}, comparison.CarriesOver()); diff != "" {
		t.Errorf("what carries over (-want +got):\n%s", diff)
	}
}

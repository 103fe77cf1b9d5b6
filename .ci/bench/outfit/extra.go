package outfit

import (
	"fmt"
	"math/rand/v2"
	"strings"
)

// A run is a kind of line that a car may have more of than the demo: both its ends
// are on parts of its own, so it disturbs nothing.
type run struct{ service, hose, port, half, make, max string }

var runs = []run{
	{"engine oil", "ptfe-4", "-4 male 37-flare", "female 37-flare", "13 N m", "7 bar"},
	{"coolant", "water-25", "25 mm bead aluminium", "25 mm hose", "", "1.8 bar"},
	{"gearbox oil", "oil-8", "-8 male 37-flare", "female 37-flare", "35 N m", "5 bar"},
	{"brake fluid", "ptfe-3", "-3 male 37-flare steel", "female 37-flare steel", "11 N m, steel-swivel, oiled", "90 bar"},
	{"manifold pressure", "ptfe-4", "-4 male 37-flare", "female 37-flare", "13 N m", "2 bar"},
}

// extraLine draws a line with a part at each end. The number keeps names apart.
func extraLine(r *rand.Rand, number int) string {
	kind := runs[r.IntN(len(runs))]
	y, x, apart := 150+r.IntN(300), -400-r.IntN(600), 300+r.IntN(900)
	end := kind.half
	clamps := ""
	if kind.make == "" {
		clamps = "clamps        = \"worm\"\n"
	} else {
		end += `", "` + kind.make
	}
	var b strings.Builder
	fmt.Fprintf(&b, "\n[parts.gives-%d]\n", number)
	fmt.Fprintf(&b, "ports.out = { end = \"%s\", at = \"%d, %d, 400 mm\", gives = \"%s\", max = \"%s\" }\n", kind.port, x, y, kind.service, kind.max)
	fmt.Fprintf(&b, "\n[parts.takes-%d]\n", number)
	fmt.Fprintf(&b, "ports.in = { end = \"%s\", at = \"%d, %d, 400 mm\", takes = \"%s\", max = \"%s\" }\n", kind.port, x-apart, y, kind.service, kind.max)
	fmt.Fprintf(&b, "\n[lines.extra-%d]\n", number)
	fmt.Fprintf(&b, "hose          = \"%.2f m of %s, 2024-%02d\"\n", 0.1+1.1*float64(apart)/1000, kind.hose, 1+r.IntN(12))
	fmt.Fprintf(&b, "from          = [\"parts.gives-%d.out\", \"%s\"]\n", number, end)
	fmt.Fprintf(&b, "to            = [\"parts.takes-%d.in\", \"%s\"]\n", number, end)
	fmt.Fprintf(&b, "%sclips         = \"250 mm\"\ntightest-bend = \"150 mm\"\nthrough       = \"none\"\nnear          = \"50 C\"\n", clamps)
	return b.String()
}

// extraCircuit draws a fused circuit with a load of its own.
func extraCircuit(r *rand.Rand, number int) string {
	load := 0.5 * float64(1+r.IntN(8))
	return fmt.Sprintf(`
[parts.load-%[1]d]
at = "-800, %[2]d, 500 mm"

[circuits.extra-%[1]d]
from               = "electrics.posts.main"
to                 = "parts.load-%[1]d"
wire               = "2.5 mm2"
length             = "%.1[3]f m"
return             = "wire"
load               = "%.1[4]f A"
fuse               = "10 A"
unfused            = "0.10 m"
run                = "free"
purpose            = "other"
dead-when-isolated = true
`, number, 100+r.IntN(300), 0.4+0.1*float64(r.IntN(16)), load)
}

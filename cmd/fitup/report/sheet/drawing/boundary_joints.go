package drawing

import (
	"cmp"
	"slices"
	"strings"

	"fitup/spec/document"
	"fitup/spec/swap"
)

// An opening is a joint that a cut opens, from the side that stays to the side that
// leaves.
type opening struct {
	swap.Joint
	group         string // the circuit, or what it is if nothing flows through it
	rank          int    // of the group
	stays, leaves string // what there is on either side
}

// openings are the joints of those names, sorted by what flows through them. The
// cut says which side of each goes.
func openings(d *document.Document, plan *swap.Plan, cut *swap.Cut, names []string) []opening {
	n := nameJoints(d)
	var all []opening
	for _, j := range plan.Network.Joints {
		if !slices.Contains(names, j.Name) {
			continue
		}
		o := opening{Joint: j}
		group, rank := n.group(j)
		halves := n.halves(j)
		o.group, o.rank, o.stays, o.leaves = clipped(group), rank, clipped(halves[0]), clipped(halves[1])
		if slices.Contains(cut.Leaves, j.Between[0]) {
			o.stays, o.leaves = o.leaves, o.stays
		}
		all = append(all, o)
	}
	slices.SortStableFunc(all, func(a, b opening) int { return cmp.Or(cmp.Compare(a.rank, b.rank), cmp.Compare(a.group, b.group)) })
	return all
}

// A namer finds how the halves of a joint are called.
type namer struct {
	joints map[string]*document.Joint
	met    map[string]string // path of what a mount or the end of a wire meets
}

func nameJoints(d *document.Document) namer {
	n := namer{joints: map[string]*document.Joint{}, met: map[string]string{}}
	for i := range d.Joints {
		n.joints[d.Joints[i].Path] = &d.Joints[i]
	}
	for i := range d.Circuits {
		c := &d.Circuits[i].Circuit
		n.met[c.From.Path], n.met[c.To.Path] = c.From.Port.V, c.To.Port.V
	}
	for i := range d.Mounts {
		n.met[d.Mounts[i].Path] = d.Mounts[i].Meets.V
	}
	return n
}

// Groups of joints that no fluid flows through, after the services.
const (
	wiresGroup  = "wires"
	linkedGroup = "rods, shafts"
	boltedGroup = "bolts"
)

// group sorts a joint by what flows through it, or else by what it is.
func (n namer) group(j swap.Joint) (name string, rank int) {
	table, _, _ := strings.Cut(j.Name, ".")
	switch {
	case j.Circuit != "":
		return circuitOf(j.Circuit)
	case table == "circuits" || table == "plugs":
		return wiresGroup, len(services) + 2
	case table == "rods" || table == "shafts":
		return linkedGroup, len(services) + 3
	}
	return boltedGroup, len(services) + 4
}

// halves call the two halves of a joint, in the order of the parts that it is
// between.
func (n namer) halves(j swap.Joint) [2]string {
	own := strings.TrimPrefix(j.Name, "driveline.")
	if meets, is := n.met[j.Name]; is {
		table, rest, _ := strings.Cut(own, ".")
		own, _, _ = strings.Cut(rest, ".")
		if table == "mounts" {
			own = "bracket " + own
		}
		return [2]string{own, strings.TrimPrefix(meets, "driveline.")}
	}
	if joint := n.joints[j.Name]; joint != nil && joint.There != nil {
		there := strings.TrimSuffix(joint.There.Path, ".end")
		part, port, _ := strings.Cut(strings.Replace(there, "ports.", ".", 1), "..")
		if part == "" || part == "driveline" {
			return [2]string{joint.Name, port}
		}
		return [2]string{joint.Name, partName(part) + " " + port}
	}
	return [2]string{partName(j.Between[0]), partName(j.Between[1])}
}

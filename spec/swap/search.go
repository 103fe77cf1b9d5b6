package swap

import (
	"cmp"
	"slices"

	"gonum.org/v1/gonum/graph/network"
	"gonum.org/v1/gonum/graph/simple"
)

// A search is branch and bound over the parts that may go either way. Parts held
// together by joints that are never opened go as one group.
type search struct {
	*index
	group []int   // of each part
	side  []Side  // of each group; Either until it is tried
	edges [][]int // joints of each group that lead to another
	free  []int   // groups to try, the one with most to lose first
	sharp []int   // of each access: the number of joints that pay for it, for the bound

	// What the groups tried so far cost.
	effort Seconds
	wet    int
	opened int
	users  []int // open joints behind each access

	best      *labels
	rootBound Seconds
}

// newSearch prepares a search in which some parts are held to a side beside
// those that the network holds.
func newSearch(x *index, held map[int]Side) (*search, error) {
	s := &search{index: x, group: make([]int, len(x.Parts)), users: make([]int, len(x.Access)), sharp: make([]int, len(x.Access))}
	sideOf := func(part int) Side {
		if side, is := held[part]; is {
			return side
		}
		return x.Parts[part].Side
	}
	groups := newGroups(len(x.Parts))
	for j, ends := range x.ends {
		if x.Joints[j].Never {
			groups.join(ends[0], ends[1])
		}
	}
	number := map[int]int{}
	var pinned []int // a part that holds each group to its side
	for i := range x.Parts {
		root := groups.of(i)
		g, known := number[root]
		if !known {
			g = len(s.side)
			number[root] = g
			s.side, pinned = append(s.side, Either), append(pinned, -1)
		}
		s.group[i] = g
		switch side := sideOf(i); {
		case side == Either || side == s.side[g]:
		case s.side[g] == Either:
			s.side[g], pinned[g] = side, i
		case side == Leaves:
			return nil, x.noCut(i, pinned[g])
		default:
			return nil, x.noCut(pinned[g], i)
		}
	}
	s.edges = make([][]int, len(s.side))
	for j, ends := range x.ends {
		a, b := s.group[ends[0]], s.group[ends[1]]
		if a != b {
			s.edges[a], s.edges[b] = append(s.edges[a], j), append(s.edges[b], j)
			for _, access := range x.behind[j] {
				s.sharp[access]++
			}
		}
	}
	for a, off := range x.off {
		if off {
			s.users[a]++
			s.effort += x.Access[a].Price
		}
	}
	s.settle()
	return s, nil
}

// noCut finds the shortest chain of joints that are never opened between two
// parts.
func (x *index) noCut(leaving, staying int) *NoCut {
	from := map[int]int{leaving: -1} // joint by which each part was reached
	for queue := []int{leaving}; len(queue) > 0; queue = queue[1:] {
		for j, ends := range x.ends {
			if !x.Joints[j].Never {
				continue
			}
			for k, end := range ends {
				if _, seen := from[ends[1-k]]; end == queue[0] && !seen {
					from[ends[1-k]] = j
					queue = append(queue, ends[1-k])
				}
			}
		}
	}
	e := &NoCut{Leaving: x.Parts[leaving].Name, Staying: x.Parts[staying].Name}
	for at := staying; at != leaving; {
		j := from[at]
		e.Joints = append(e.Joints, x.Joints[j].Name)
		at = x.ends[j][0] + x.ends[j][1] - at
	}
	slices.Reverse(e.Joints)
	return e
}

// settle gives a side to the groups that need no search, those that are joined
// to one side only or to none, and pays for the joints between settled groups.
func (s *search) settle() {
	joined := newGroups(len(s.side))
	for _, ends := range s.ends {
		joined.join(s.group[ends[0]], s.group[ends[1]])
	}
	leaves, stays := map[int]bool{}, map[int]bool{}
	for g, side := range s.side {
		leaves[joined.of(g)] = leaves[joined.of(g)] || side == Leaves
		stays[joined.of(g)] = stays[joined.of(g)] || side == Stays
	}
	weight := make([]Seconds, len(s.side))
	for g, side := range s.side {
		root := joined.of(g)
		switch {
		case side != Either:
		case !leaves[root]:
			s.side[g] = Stays
		case !stays[root]:
			s.side[g] = Leaves
		default:
			s.free = append(s.free, g)
			for _, j := range s.edges[g] {
				weight[g] += s.Joints[j].Effort
			}
		}
	}
	slices.SortStableFunc(s.free, func(a, b int) int { return cmp.Compare(weight[b], weight[a]) })
	for j, ends := range s.ends {
		one, other := s.side[s.group[ends[0]]], s.side[s.group[ends[1]]]
		if one != Either && other != Either && one != other {
			s.open(j, 1)
		}
	}
}

// open pays for an open joint, or takes it back.
func (s *search) open(j, by int) {
	joint := &s.Joints[j]
	s.effort += Seconds(by) * joint.Effort
	s.opened += by
	if joint.Wet {
		s.wet += by
	}
	for _, a := range s.behind[j] {
		was := s.users[a] > 0
		s.users[a] += by
		if is := s.users[a] > 0; is != was {
			s.effort += Seconds(by) * s.Access[a].Price
		}
	}
}

// try puts a group on a side, or takes it off again, and pays for its joints to
// the groups that have a side.
func (s *search) try(g int, side Side, by int) {
	for _, j := range s.edges[g] {
		far := s.group[s.ends[j][0]]
		if far == g {
			far = s.group[s.ends[j][1]]
		}
		if s.side[far] != Either && s.side[far] != side {
			s.open(j, by)
		}
	}
}

func (s *search) run() *labels {
	s.rootBound = s.bound()
	s.branch(0)
	return s.best
}

func (s *search) branch(depth int) {
	if s.tries++; s.tired() || s.best != nil && s.hopeless(depth) {
		return
	}
	if depth == len(s.free) {
		if found := s.found(); s.best == nil || found.compare(s.best) < 0 {
			s.best = found
		}
		return
	}
	g := s.free[depth]
	var cost [2]Seconds
	sides := [2]Side{Stays, Leaves}
	for i, side := range sides {
		before := s.effort
		s.try(g, side, 1)
		cost[i] = s.effort - before
		s.try(g, side, -1)
	}
	if cost[1] < cost[0] {
		sides[0], sides[1] = sides[1], sides[0]
	}
	for _, side := range sides {
		s.try(g, side, 1)
		s.side[g] = side
		s.branch(depth + 1)
		s.side[g] = Either
		s.try(g, side, -1)
	}
}

// hopeless reports whether no way to go on can be better than the best so far:
// first by what is spent, then by the greatest flow.
func (s *search) hopeless(depth int) bool {
	worse := func(least Seconds) bool {
		return cmp.Or(cmp.Compare(least, s.best.effort), cmp.Compare(s.wet, s.best.wet), cmp.Compare(s.opened, len(s.best.open))) > 0
	}
	if worse(s.effort) {
		return true
	}
	// The flow costs more than a few leaves of the tree do.
	const few = 3
	return len(s.free)-depth > few && worse(s.bound())
}

// bound is a lower bound of what the whole cut costs, as things stand: what is
// spent, and the greatest flow from what leaves to what stays through the joints
// that are not decided yet. The capacity of a joint is its effort and its share
// of the price of each access behind it that is not paid: as all that are opened
// of those that share it pay at most the whole, the bound holds.
func (s *search) bound() Seconds {
	capacity := map[[2]int64]Seconds{}
	const leaving, staying = 0, 1
	node := map[int]int64{}
	at := func(g int) int64 {
		switch s.side[g] {
		case Leaves:
			return leaving
		case Stays:
			return staying
		}
		if _, known := node[g]; !known {
			node[g] = int64(len(node) + 2)
		}
		return node[g]
	}
	for j, ends := range s.ends {
		a, b := s.group[ends[0]], s.group[ends[1]]
		if a == b || s.side[a] != Either && s.side[b] != Either {
			continue
		}
		c := s.Joints[j].Effort
		for _, access := range s.behind[j] {
			if s.users[access] == 0 {
				c += s.Access[access].Price / Seconds(s.sharp[access])
			}
		}
		from, to := at(a), at(b)
		capacity[[2]int64{from, to}] += c
		capacity[[2]int64{to, from}] += c
	}
	g := simple.NewWeightedDirectedGraph(0, 0)
	for id := range int64(len(node) + 2) {
		g.AddNode(simple.Node(id))
	}
	for ends, c := range capacity {
		g.SetWeightedEdge(simple.WeightedEdge{F: simple.Node(ends[0]), T: simple.Node(ends[1]), W: float64(c)})
	}
	return s.effort + Seconds(network.MaxFlowDinic(g, simple.Node(leaving), simple.Node(staying), -1))
}

// found is the cut as it stands, with every group on a side.
func (s *search) found() *labels {
	l := &labels{side: make([]Side, len(s.Parts)), effort: s.effort, wet: s.wet}
	for i, part := range s.Parts {
		l.side[i] = s.side[s.group[i]]
		if l.side[i] == Leaves {
			l.leaves = append(l.leaves, part.Name)
		}
	}
	for j, ends := range s.ends {
		if l.side[ends[0]] != l.side[ends[1]] {
			l.open = append(l.open, s.Joints[j].Name)
		}
	}
	slices.Sort(l.leaves)
	slices.Sort(l.open)
	return l
}

// groups keeps which of n things belong together.
type groups []int

func newGroups(n int) groups {
	g := make(groups, n)
	for i := range g {
		g[i] = i
	}
	return g
}

func (g groups) of(i int) int {
	for g[i] != i {
		g[i] = g[g[i]]
		i = g[i]
	}
	return i
}

func (g groups) join(a, b int) { g[g.of(a)] = g.of(b) }

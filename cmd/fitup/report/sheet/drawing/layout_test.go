package drawing

import (
	"fmt"
	"math"
	"math/rand/v2"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// TestSpread compares with places worked out by hand: the mean of what is pooled.
func TestSpread(t *testing.T) {
	inf := math.Inf(1)
	for _, c := range []struct {
		name           string
		wanted, widths []float64
		from, to       float64
		want           []float64
	}{
		{"room for both", []float64{0, 20}, []float64{4, 4}, -inf, inf, []float64{0, 20}},
		{"both want one place", []float64{10, 10}, []float64{4, 4}, -inf, inf, []float64{7, 13}},
		{"in the wrong order", []float64{20, 0}, []float64{4, 4}, -inf, inf, []float64{7, 13}},
		{"pushed by two", []float64{0, 0, 0}, []float64{2, 4, 6}, -inf, inf, []float64{-17.0 / 3, -2.0 / 3, 19.0 / 3}},
		{"at the lower bound", []float64{-5, 20}, []float64{4, 4}, 0, inf, []float64{2, 20}},
		{"at the upper bound", []float64{5, 20}, []float64{4, 4}, 0, 15, []float64{5, 13}},
		{"pushed back from the upper bound", []float64{12, 20}, []float64{4, 4}, 0, 15, []float64{7, 13}},
		{"no room at all", []float64{1, 1}, []float64{4, 4}, 0, 5, []float64{2, 8}},
	} {
		got := spread(c.wanted, c.widths, 2, c.from, c.to)
		close := cmp.Comparer(func(a, b float64) bool { return math.Abs(a-b) < 1e-9 })
		if diff := cmp.Diff(c.want, got, close); diff != "" {
			t.Errorf("%s: want -, got +\n%s", c.name, diff)
		}
	}
}

// ladder is a scheme of two rows of parts joined in the given order.
func ladder(to ...int) *scheme {
	s := &scheme{}
	n := len(to)
	for i := range 2 * n {
		s.cells = append(s.cells, cell{row: 2 * (i / n), need: Point{10, 5}})
	}
	for i, far := range to {
		label := len(s.cells)
		s.cells = append(s.cells, cell{row: 1, need: Point{10, 5}})
		s.wires = append(s.wires, wire{part: i, label: label}, wire{part: n + far, label: label, to: true})
	}
	return s
}

func TestOrderUntangles(t *testing.T) {
	for _, to := range [][]int{{0, 1, 2}, {2, 1, 0}, {1, 2, 0}, {3, 1, 0, 2}} {
		s := ladder(to...)
		s.settle(PaperWidth)
		if n := s.crossings(); n != 0 {
			t.Errorf("%v: %d crossings left, and none is needed", to, n)
		}
	}
}

// TestCrossingsAreCounted counts by hand: each pair of a reversed order crosses once.
func TestCrossingsAreCounted(t *testing.T) {
	s := ladder(2, 1, 0)
	s.rows = map[int][]int{0: {0, 1, 2}, 1: {6, 7, 8}, 2: {3, 4, 5}}
	if n := s.crossings(); n != 3 {
		t.Errorf("%d crossings, want 3", n)
	}
}

// TestTracks asks that level pieces share a height where they are apart, and that a
// wire which leaves its part where another comes down turns off first.
func TestTracks(t *testing.T) {
	for _, c := range []struct {
		name string
		from []float64 // where each wire leaves the parts
		to   []float64 // where it comes to its lettering
		want map[int]int
	}{
		{"apart", []float64{0, 20}, []float64{10, 30}, map[int]int{0: 0, 1: 0}},
		{"across each other", []float64{0, 5}, []float64{10, 15}, map[int]int{0: 0, 1: 1}},
		{"the second turns first", []float64{0, 10}, []float64{10, 30}, map[int]int{0: 1, 1: 0}},
		{"a straight one needs none", []float64{0, 20}, []float64{10, 20}, map[int]int{0: 0}},
	} {
		s := &scheme{cells: []cell{{row: 0, at: Box{Max: Point{X: 50}}}}}
		for i := range c.from {
			s.cells = append(s.cells, cell{row: 1, at: Box{Point{X: c.to[i]}, Point{X: c.to[i] + 4}}})
			s.wires = append(s.wires, wire{label: i + 1, x: c.from[i]})
		}
		if diff := cmp.Diff(c.want, s.tracks(side{0, true})); diff != "" {
			t.Errorf("%s: want -, got +\n%s", c.name, diff)
		}
	}
}

// TestRowsCountFromTheDriveline asks for the number of lines between a part and the
// driveline.
func TestRowsCountFromTheDriveline(t *testing.T) {
	line := func(from, to int) circuitLine {
		return circuitLine{from: circuitEnd{part: from}, to: circuitEnd{part: to}}
	}
	c := &circuit{
		parts: []circuitPart{
			{name: "driveline", kind: base}, {name: "filter"}, {name: "pump"}, {name: "tank"}, {name: "regulator"},
			{name: "turbo", kind: moved}, {name: "driven pump", kind: moved}, {name: "rack"},
			{name: "union"}, {name: "caliper"}, {name: "ring a"}, {name: "ring b"},
		},
		lines: []circuitLine{
			line(3, 2), line(2, 1), line(1, 0), line(0, 4), line(4, 3), // a loop by way of the driveline
			line(0, 5), line(6, 7), // within it, and from a pump of it
			line(8, 9), line(10, 11), line(11, 10), // away from it
		},
	}
	want := []int{0, 1, 2, 2, 1, -1, 0, 1, 1, 0, 0, 1}
	if diff := cmp.Diff(want, c.rows()); diff != "" {
		t.Errorf("rows, want -, got +\n%s", diff)
	}
	for i, l := range c.lines {
		if a, b := want[l.from.part], want[l.to.part]; a-b > 1 || b-a > 1 {
			t.Errorf("line %d spans rows %d and %d", i, a, b)
		}
	}
}

// TestAnyCircuitKeepsClear draws circuits that nobody would build, of the same seeds
// every time: loops, parts of the driveline beside it, lines between all of them.
func TestAnyCircuitKeepsClear(t *testing.T) {
	for seed := range uint64(200) {
		random := rand.New(rand.NewPCG(seed, 0))
		c := &circuit{parts: []circuitPart{{path: "driveline", name: "driveline", kind: base}}}
		for i := range 1 + random.IntN(10) {
			kind := carPart
			if random.IntN(5) == 0 {
				kind = moved
			}
			c.parts = append(c.parts, circuitPart{path: fmt.Sprint("part", i), name: fmt.Sprint("part ", i), kind: kind})
		}
		for i := range 1 + random.IntN(16) {
			end := func(port string) circuitEnd {
				return circuitEnd{part: random.IntN(len(c.parts)), port: fmt.Sprint(port, i)}
			}
			c.lines = append(c.lines, circuitLine{path: fmt.Sprint("line", i), name: fmt.Sprint("line-", i), made: []string{"-8", "bore 11.1 mm"}, from: end("out"), to: end("in")})
		}
		s := newSchematic(c, c.place(nil))
		drawn := Drawing{Name: fmt.Sprint("seed ", seed), Size: Point{s.width, s.height}, Marks: s.marks}
		checkClear(t, drawn)
		checkApart(t, drawn)
	}
}

// checkApart asks that no two lines of a drawing share a piece of their way.
func checkApart(t *testing.T, d Drawing) {
	t.Helper()
	ways := traitsOf(d.Marks).ways
	for i := range ways {
		for _, other := range ways[:i] {
			for _, a := range legs(ways[i]) {
				for _, b := range legs(other) {
					if along(a, b) > hair {
						t.Errorf("%s: two lines lie on each other at %v and %v", d.Name, a, b)
					}
				}
			}
		}
	}
}

// along is how long two straight pieces run on each other.
func along(a, b Box) float64 {
	wide := min(a.Max.X, b.Max.X) - max(a.Min.X, b.Min.X)
	high := min(a.Max.Y, b.Max.Y) - max(a.Min.Y, b.Min.Y)
	if wide < -hair || high < -hair {
		return 0
	}
	return max(wide, high)
}

package workings

import (
	"math"
	"math/rand/v2"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/optimize/convex/lp"
	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"
)

// near compares figures to a billionth.
var near = cmpopts.EquateApprox(0, 1e-9)

// dice gives the same cases on every run.
func dice(seed uint64) *rand.Rand { return rand.New(rand.NewPCG(seed, 2)) }

// somewhereAmong returns a point well inside the hull of points.
func somewhereAmong(d *rand.Rand, points []r2.Vec) r2.Vec {
	var sum r2.Vec
	total := 0.0
	for _, p := range points {
		w := 0.05 + d.Float64()
		sum, total = r2.Add(sum, r2.Scale(w, p)), total+w
	}
	return r2.Scale(1/total, sum)
}

// unbalance reports how far supports are from holding a weight: the error of
// the force and of the moment about the origin, as shares of the weight.
func unbalance(weight float64, centre r2.Vec, supports []r2.Vec, loads []float64) float64 {
	force, moment := -weight, r2.Scale(-weight, centre)
	for i, s := range supports {
		force += loads[i]
		moment = r2.Add(moment, r2.Scale(loads[i], s))
	}
	return max(math.Abs(force), r2.Norm(moment)) / weight
}

func TestSupportsConserve(t *testing.T) {
	d := dice(1)
	for range 300 {
		var supports []r2.Vec
		for range 3 + d.IntN(4) {
			supports = append(supports, r2.Vec{X: 3*d.Float64() - 4, Y: 1.8*d.Float64() - 0.9})
		}
		polygon, err := SupportPolygon(supports)
		if err != nil {
			t.Fatal(err)
		}
		centre := somewhereAmong(d, supports)
		weight := 1000 + 15000*d.Float64()
		if margin, _ := EdgeDistance(polygon, centre); margin < 0.01 {
			continue // too near a toppling car to ask for nine figures
		}
		loads, err := Reactions(weight, centre, supports)
		if err != nil {
			t.Fatalf("%v under %v: %v", supports, centre, err)
		}
		ways, err := RockingCases(weight, centre, supports)
		if err != nil || len(ways) == 0 {
			t.Fatalf("%v under %v: no rocking case, %v", supports, centre, err)
		}
		worst, err := WorstReactions(weight, centre, supports)
		if err != nil {
			t.Fatal(err)
		}
		for _, way := range append(ways, loads) {
			if off := unbalance(weight, centre, supports, way); off > 1e-9 {
				t.Errorf("%v under %v: %v is out of balance by %g", supports, centre, way, off)
			}
			for i, load := range way {
				if load < 0 || load > worst[i]*(1+1e-9) {
					t.Errorf("%v under %v: load %g is not from 0 to %g", supports, centre, load, worst[i])
				}
			}
		}
	}
}

// TestWorstReactionsAgainstLinearProgramme asks a general solver for the most
// that each support can be made to carry.
func TestWorstReactionsAgainstLinearProgramme(t *testing.T) {
	d := dice(2)
	for range 60 {
		var supports []r2.Vec
		for range 4 + d.IntN(3) {
			supports = append(supports, r2.Vec{X: 3 * d.Float64(), Y: 2 * d.Float64()})
		}
		centre := somewhereAmong(d, supports)
		worst, err := WorstReactions(1, centre, supports)
		if err != nil {
			t.Fatal(err)
		}
		balance := mat.NewDense(3, len(supports), nil)
		for i, s := range supports {
			balance.SetCol(i, []float64{1, s.X, s.Y})
		}
		for i := range supports {
			cost := make([]float64, len(supports))
			cost[i] = -1
			least, _, err := lp.Simplex(cost, balance, []float64{1, centre.X, centre.Y}, 1e-12, nil)
			if err != nil {
				t.Fatal(err)
			}
			if !agrees(worst[i], -least, 1e-7) {
				t.Errorf("support %d of %v under %v: got %.9g, the programme %.9g", i, supports, centre, worst[i], -least)
			}
		}
	}
}

var rectangle = []r2.Vec{{X: 0, Y: 0.6}, {X: 0, Y: -0.6}, {X: -2, Y: 0.6}, {X: -2, Y: -0.6}}

// TestRectangleOfStands: 1200 kg on four stands 2.0 m by 1.2 m with the centre
// 0.9 m behind the front two, on the middle line. Worked by hand: 330 kg on
// each front stand and 270 on each rear by the estimate; 600 on one front stand
// where only 60 and 540 stay on two others.
func TestRectangleOfStands(t *testing.T) {
	centre := r2.Vec{X: -0.9}
	loads, err := Reactions(1200, centre, rectangle)
	if diff := cmp.Diff([]float64{330, 330, 270, 270}, loads, near); diff != "" || err != nil {
		t.Errorf("estimate: %v\n%s", err, diff)
	}
	worst, err := WorstReactions(1200, centre, rectangle)
	if diff := cmp.Diff([]float64{600, 600, 540, 540}, worst, near); diff != "" || err != nil {
		t.Errorf("worst: %v\n%s", err, diff)
	}
	ways, err := RockingCases(1200, centre, rectangle)
	want := []float64{600, 60, 0, 540}
	if err != nil || !slices.ContainsFunc(ways, func(way []float64) bool { return cmp.Equal(want, way, near) }) {
		t.Errorf("rocking: %v, want %v among %v", err, want, ways)
	}
}

// TestStandsInLine: two rows of three, set down askew. The three of a row cannot
// carry the car alone, and no case with them may be made up out of rounding.
func TestStandsInLine(t *testing.T) {
	var supports []r2.Vec
	for _, x := range []float64{0, 1, 2} {
		for _, y := range []float64{-0.6, 0.6} {
			supports = append(supports, r2.Rotate(r2.Vec{X: x, Y: y}, 0.3, r2.Vec{}))
		}
	}
	centre := r2.Rotate(r2.Vec{X: 0.9, Y: 0.1}, 0.3, r2.Vec{})
	ways, err := RockingCases(1000, centre, supports)
	if err != nil || len(ways) == 0 {
		t.Fatalf("no case, %v", err)
	}
	for _, way := range ways {
		if off := unbalance(1000, centre, supports, way); !(off < 1e-9) {
			t.Errorf("%v is out of balance by %g", way, off)
		}
	}
}

// TestStandThatWouldPull: near one corner the equal springs would have the
// stand across pull the car down. It lets go, and three carry the car.
func TestStandThatWouldPull(t *testing.T) {
	loads, err := Reactions(1000, r2.Vec{X: -0.2, Y: 0.5}, rectangle)
	if err != nil {
		t.Fatal(err)
	}
	if loads[3] != 0 || min(loads[0], loads[1], loads[2]) <= 0 {
		t.Errorf("got %v, want nothing on the last stand and something on the others", loads)
	}
}

func TestSupportRefusals(t *testing.T) {
	line := []r2.Vec{{X: 0}, {X: 1}, {X: 2}}
	tests := map[string]struct {
		weight   float64
		centre   r2.Vec
		supports []r2.Vec
	}{
		"outside":       {1e4, r2.Vec{X: 0.1}, rectangle},
		"on the edge":   {1e4, r2.Vec{X: 0}, rectangle},
		"two stands":    {1e4, r2.Vec{X: -1}, rectangle[:2]},
		"in one line":   {1e4, r2.Vec{X: 1}, line},
		"one twice":     {1e4, r2.Vec{X: -1}, []r2.Vec{rectangle[0], rectangle[0], rectangle[2]}},
		"weightless":    {0, r2.Vec{X: -1}, rectangle},
		"no such place": {1e4, r2.Vec{X: math.NaN()}, rectangle},
		"lost stand":    {1e4, r2.Vec{X: -1}, append(slices.Clone(rectangle), r2.Vec{X: math.Inf(1)})},
		"thirteen":      {1e4, r2.Vec{X: -1}, append(slices.Clone(rectangle), make([]r2.Vec, 9)...)},
	}
	for name, c := range tests {
		if loads, err := Reactions(c.weight, c.centre, c.supports); err == nil {
			t.Errorf("%s: Reactions gave %v", name, loads)
		}
		if loads, err := WorstReactions(c.weight, c.centre, c.supports); err == nil {
			t.Errorf("%s: WorstReactions gave %v", name, loads)
		}
	}
}

func TestSupportPolygon(t *testing.T) {
	got, err := SupportPolygon(append(slices.Clone(rectangle), r2.Vec{X: -1}, r2.Vec{X: -1, Y: 0.6}, rectangle[1]))
	want := []r2.Vec{{X: -2, Y: -0.6}, {X: 0, Y: -0.6}, {X: 0, Y: 0.6}, {X: -2, Y: 0.6}}
	if diff := cmp.Diff(want, got); diff != "" || err != nil {
		t.Errorf("%v\n%s", err, diff)
	}
}

func TestEdgeDistance(t *testing.T) {
	polygon, err := SupportPolygon(rectangle)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct {
		p    r2.Vec
		want float64
	}{
		{r2.Vec{X: -1}, 0.6},
		{r2.Vec{X: -0.1}, 0.1},
		{r2.Vec{X: 0, Y: 0.2}, 0},
		{r2.Vec{X: 0.25}, -0.25},
		{r2.Vec{X: 0.3, Y: 1.0}, -0.5}, // past a corner
		{r2.Vec{X: -1, Y: -0.9}, -0.3},
	} {
		got, err := EdgeDistance(polygon, c.p)
		if err != nil || !agrees(got, c.want, 1e-12) {
			t.Errorf("%v: got %g, %v, want %g", c.p, got, err, c.want)
		}
	}
	if d, err := EdgeDistance(polygon[:2], r2.Vec{}); err == nil {
		t.Errorf("two corners: got %g", d)
	}
}

// TestLiftingShare: a hook ahead of the front stands draws the centre of what
// is left backwards. 1000 kg with its centre 0.5 m ahead of the rear edge and
// the hook 1.5 m ahead of it: the centre is over that edge when
// 1000 x 0.5 = pull x 1.5.
func TestLiftingShare(t *testing.T) {
	polygon, err := SupportPolygon(rectangle)
	if err != nil {
		t.Fatal(err)
	}
	whole, hook := Body{Mass: 1000, Centre: r3.Vec{X: -1.5}}, r2.Vec{X: -0.5}
	if pull, crosses, err := LiftingShare(whole, hook, 400, polygon); err != nil || !crosses || !agrees(pull, 1000./3, 1e-9) {
		t.Errorf("got %g, %v, %v, want %g", pull, crosses, err, 1000./3)
	}
	if pull, crosses, err := LiftingShare(whole, hook, 300, polygon); err != nil || crosses || pull != 300 {
		t.Errorf("a light pull: got %g, %v, %v", pull, crosses, err)
	}
	whole.Centre.X = 0.1
	if pull, crosses, err := LiftingShare(whole, hook, 300, polygon); err != nil || !crosses || pull != 0 {
		t.Errorf("outside from the start: got %g, %v, %v", pull, crosses, err)
	}
	for _, bad := range []float64{-1, 1000, math.NaN()} {
		if pull, _, err := LiftingShare(whole, hook, bad, polygon); err == nil {
			t.Errorf("pull of %g: got %g", bad, pull)
		}
	}
}

func TestCombineAndRemoveUndoEachOther(t *testing.T) {
	d := dice(3)
	random := func() Body {
		return Body{1 + 300*d.Float64(), r3.Vec{X: d.NormFloat64(), Y: d.NormFloat64(), Z: d.Float64()}, 0}
	}
	for range 100 {
		car, driveline := random(), random()
		both, err := Combine(car, driveline)
		if err != nil {
			t.Fatal(err)
		}
		rest, err := Remove(both, driveline)
		if diff := cmp.Diff(car, rest, cmpopts.EquateApprox(1e-9, 1e-9)); diff != "" || err != nil {
			t.Errorf("%v\n%s", err, diff)
		}
	}
}

// TestUncertaintyAddsUp: 800 kg known to 20 mm with 200 kg known to 10 mm is
// known to 18 mm; taken out again, the 800 kg are only known to 25 mm.
func TestUncertaintyAddsUp(t *testing.T) {
	part := Body{Mass: 200, Within: 0.010}
	both, err := Combine(Body{Mass: 800, Within: 0.020}, part)
	if err != nil || !agrees(both.Within, 0.018, 1e-12) {
		t.Errorf("combined: got %g, %v", both.Within, err)
	}
	rest, err := Remove(both, part)
	if err != nil || !agrees(rest.Within, 0.025, 1e-12) {
		t.Errorf("removed: got %g, %v", rest.Within, err)
	}
}

// TestCornersConserve: the four corners carry the weight and both moments.
func TestCornersConserve(t *testing.T) {
	w := Wheels{Base: 2.5, FrontTrack: 1.5, RearTrack: 1.44}
	c, err := CornerEstimate(9000, w, 1.1, 0.08)
	if err != nil {
		t.Fatal(err)
	}
	total := c.FrontLeft + c.FrontRight + c.RearLeft + c.RearRight
	pitch := (c.RearLeft + c.RearRight) * w.Base
	roll := (c.FrontLeft-c.FrontRight)*w.FrontTrack/2 + (c.RearLeft-c.RearRight)*w.RearTrack/2
	if !agrees(total, 9000, 1e-12) || !agrees(pitch, 9000*1.1, 1e-12) || !agrees(roll, 9000*0.08, 1e-12) {
		t.Errorf("%+v: total %g, pitch %g, roll %g", c, total, pitch, roll)
	}
}

// TestCentreOverOneLine: the other line carries nothing, which is no error.
func TestCentreOverOneLine(t *testing.T) {
	for _, c := range []struct{ behind, first, second float64 }{{0, 900, 0}, {2.4, 0, 900}, {0.8, 600, 300}} {
		first, second, err := TwoLineReactions(900, 2.4, c.behind)
		if err != nil || !agrees(first, c.first, 1e-12) || !agrees(second, c.second, 1e-12) {
			t.Errorf("%g m behind: got %g and %g, %v", c.behind, first, second, err)
		}
	}
}

// unbalanced returns the force that legs leave over, as a share of the weight.
func unbalanced(weight float64, hook r3.Vec, eyes []r3.Vec, tensions []float64) float64 {
	left := r3.Vec{Z: -weight}
	for i, eye := range eyes {
		left = r3.Add(left, r3.Scale(tensions[i], r3.Unit(r3.Sub(hook, eye))))
	}
	return r3.Norm(left) / weight
}

func TestLegsConserve(t *testing.T) {
	d := dice(4)
	for range 300 {
		var eyes []r3.Vec
		var plan []r2.Vec
		n := 2 + d.IntN(3)
		for i := range n { // spread round, so that no two fall together
			turn := (float64(i) + 0.6*d.Float64()) * 2 * math.Pi / float64(n)
			p := r2.Scale(0.2+0.4*d.Float64(), r2.Vec{X: math.Cos(turn), Y: math.Sin(turn)})
			plan = append(plan, p)
			eyes = append(eyes, r3.Vec{X: p.X, Y: p.Y, Z: 0.2 * d.Float64()})
		}
		over := somewhereAmong(d, plan)
		hook := r3.Vec{X: over.X, Y: over.Y, Z: 0.5 + d.Float64()}
		weight := 500 + 3000*d.Float64()
		tensions, err := LegTensions(weight, hook, eyes)
		if err != nil {
			t.Fatalf("%v under %v: %v", eyes, hook, err)
		}
		worst, err := WorstLegTensions(weight, hook, eyes)
		if err != nil {
			t.Fatalf("%v under %v: %v", eyes, hook, err)
		}
		if off := unbalanced(weight, hook, eyes, tensions); off > 1e-9 {
			t.Errorf("%v under %v: %v is out of balance by %g", eyes, hook, tensions, off)
		}
		for i, tension := range tensions {
			if tension < 0 || tension > worst[i]*(1+1e-9) {
				t.Errorf("%v under %v: tension %g is not from 0 to %g", eyes, hook, tension, worst[i])
			}
		}
	}
}

// TestUnequalLegs: 250 kg, eyes 0.70 m apart, the centre and so the hook 0.20 m
// from one and 0.35 m above. By moments each leg lifts its share of the span,
// 250 x 0.50/0.70 and 250 x 0.20/0.70, at its own slant.
func TestUnequalLegs(t *testing.T) {
	hook, eyes := r3.Vec{X: 0.20, Z: 0.35}, []r3.Vec{{}, {X: 0.70}}
	want := []float64{
		250 * 5 / 7. * math.Hypot(0.20, 0.35) / 0.35,
		250 * 2 / 7. * math.Hypot(0.50, 0.35) / 0.35,
	}
	for name, f := range map[string]func(float64, r3.Vec, []r3.Vec) ([]float64, error){
		"LegTensions": LegTensions, "WorstLegTensions": WorstLegTensions,
	} {
		got, err := f(250, hook, eyes)
		if diff := cmp.Diff(want, got, near); diff != "" || err != nil {
			t.Errorf("%s: %v\n%s", name, err, diff)
		}
	}
}

// TestShortLegTakesMore: of four legs of one kind the stiffer, shorter pair
// takes more. Two eyes 0.2 m and two 0.4 m from under the hook, at right angles,
// 1 m below it. By hand: the pairs stretch alike for the hook's settling d, so
// T = d cos(a)/L, and 2 T1 cos(a1) + 2 T2 cos(a2) is the weight.
func TestShortLegTakesMore(t *testing.T) {
	eyes := []r3.Vec{{X: 0.2}, {X: -0.2}, {Y: 0.4}, {Y: -0.4}}
	got, err := LegTensions(1000, r3.Vec{Z: 1}, eyes)
	if err != nil {
		t.Fatal(err)
	}
	l1, l2 := math.Hypot(0.2, 1), math.Hypot(0.4, 1)
	settle := 1000 / (2/(l1*l1*l1) + 2/(l2*l2*l2))
	want := []float64{settle / (l1 * l1), settle / (l1 * l1), settle / (l2 * l2), settle / (l2 * l2)}
	if diff := cmp.Diff(want, got, near); diff != "" {
		t.Error(diff)
	}
}

func TestLegRefusals(t *testing.T) {
	square := []r3.Vec{{X: 0.3, Y: 0.3}, {X: -0.3, Y: 0.3}, {X: -0.3, Y: -0.3}, {X: 0.3, Y: -0.3}}
	tests := map[string]struct {
		hook r3.Vec
		eyes []r3.Vec
	}{
		"one leg":                {r3.Vec{Z: 1}, square[:1]},
		"hook below":             {r3.Vec{Z: -1}, square},
		"hook outside four":      {r3.Vec{X: 0.5, Z: 1}, square},
		"hook outside three":     {r3.Vec{X: 0.3, Y: -0.3, Z: 1}, square[:3]},
		"hook off the pair":      {r3.Vec{X: 0, Y: 0.5, Z: 1}, square[:2]},
		"hook past the pair":     {r3.Vec{X: 0.4, Y: 0.3, Z: 1}, square[:2]},
		"both legs in one eye":   {r3.Vec{Z: 1}, []r3.Vec{{}, {}}},
		"hook that is not known": {r3.Vec{Z: math.NaN()}, square},
	}
	for name, c := range tests {
		if got, err := LegTensions(1000, c.hook, c.eyes); err == nil {
			t.Errorf("%s: LegTensions gave %v", name, got)
		}
		if got, err := WorstLegTensions(1000, c.hook, c.eyes); err == nil {
			t.Errorf("%s: WorstLegTensions gave %v", name, got)
		}
	}
	if got, err := LegTensions(0, r3.Vec{Z: 1}, square); err == nil {
		t.Errorf("no weight: got %v", got)
	}
}

// TestEyeAngle: an upright eye bolt under a leg that runs 0.50 m across and
// 0.35 m up is pulled 55 degrees off its axis.
func TestEyeAngle(t *testing.T) {
	got := must(t)(EyeAngle(r3.Vec{X: 0.70}, r3.Vec{X: 0.20, Z: 0.35}, r3.Vec{Z: 2}))
	if want := math.Atan2(0.50, 0.35); !agrees(got, want, 1e-12) {
		t.Errorf("got %g, want %g", got, want)
	}
	if got := must(t)(EyeAngle(r3.Vec{}, r3.Vec{Z: 1}, r3.Vec{Z: 1})); got != 0 {
		t.Errorf("straight out: got %g", got)
	}
}

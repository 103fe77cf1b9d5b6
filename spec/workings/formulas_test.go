package workings

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// must returns the value of a formula that is known to hold.
func must(t *testing.T) func(v float64, err error) float64 {
	return func(v float64, err error) float64 {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

func agrees(got, want, tolerance float64) bool {
	return math.Abs(got-want) <= tolerance*max(1, math.Abs(want))
}

// TestIdentities holds the formulas that have no published figure to what must
// be true of them: an inverse, a limit, an integral, a sum done by hand.
func TestIdentities(t *testing.T) {
	v := must(t)
	tests := map[string]struct{ got, want float64 }{
		"circle of 2 m":        {v(CircleArea(2)), math.Pi},
		"one dynamic pressure": {v(MinorDrop(1, 1000, 2)), 2000},
		"ten metres of water":  {v(HeadDrop(1000, 10)), 98066.5},
		"head gained":          {v(HeadDrop(1000, -10)), -98066.5},
		"duty":                 {v(InjectorDuty(0.06, 6, 0.0125)), 0.8},
		"115 minutes at 25 A":  {v(RunTime(25*115*60, 25)), 115 * 60},
		"tilt of a cube":       {v(TiltToTip(0.5, 0.5)), math.Pi / 4},
		"light stand":          {v(ToppleForce(125*StandardGravity, 0.110, 0.400)), 125 * StandardGravity * 0.275},
		"quarter turn out":     {v(ResidualAngle(0.03, 0.04, false)), 0.05},
		"in phase":             {v(ResidualAngle(0.03, 0.05, true)), 0.04},
		"chassis return":       {v(VoltageDrop(10, 0.01, 3, 0)), 0.3},
		"two factors":          {v(Derated(100, 0.85, 0.7)), 59.5},
		"beam past the load":   {v(BeamMoment(100, 4, 1, 3)), 100 * 1 * (4 - 3) / 4.},
		"no ethanol in it":     {v(MassAverage(0, 9, 14.7)), 14.7},
		"preload of K":         {v(PreloadForTorque(0.2, v(TorqueForPreload(0.2, 12e3, 0.01)), 0.01)), 12e3},
		"joint for good":       {v(Preload(1000, PermanentShare)), 900},
		"joint used again":     {v(Preload(1000, ReusedShare)), 750},
		"all on one line":      {v(CentreFromLines(0, 4500, 2.4)), 2.4},
		"no loss":              {v(OutputTorque(100, 3, 1)), 300},
		"empty pipe end":       {v(DarcyDrop(0.02, 0, 0.01, 745, 1)), 0},
	}
	for name, c := range tests {
		if !agrees(c.got, c.want, 1e-6) {
			t.Errorf("%s: got %.9g, want %.9g", name, c.got, c.want)
		}
	}
	low, high, err := PreloadBand(20e3, 0.3)
	if err != nil || low != 14e3 || high != 26e3 {
		t.Errorf("PreloadBand: got %g to %g, %v", low, high, err)
	}
}

// TestWhirlingOfSlicedShaft comes to the first whirling speed by another road.
// Dunkerley's sum over many small masses, sum of m d with d the deflection of
// the shaft under a unit load at the mass, is that of 1/w^2 over all speeds, and
// those of a uniform shaft are as 1, 4, 9, ...: so it is pi^4/90 times the first.
func TestWhirlingOfSlicedShaft(t *testing.T) {
	tube := Tube{0.0762, 0.0702}
	const length, e, density, slices = 1.2, 205e9, 7850.0, 4000
	w := must(t)(WhirlingSpeed(tube, length, e, density))
	area := math.Pi / 4 * (tube.Outer*tube.Outer - tube.Inner*tube.Inner)
	sum := 0.0
	for i := range slices {
		a := (float64(i) + 0.5) * length / slices
		b := length - a
		// A unit load at a deflects itself by a^2 b^2 / (3 E I L).
		sum += density * area * length / slices * a * a * b * b / (3 * e * tube.bend() * length)
	}
	if got, want := 1/sum, w*w*90/math.Pow(math.Pi, 4); !agrees(got/want, 1, 1e-5) {
		t.Errorf("Dunkerley's sum gives %.8g, the uniform shaft %.8g", got, want)
	}
}

// TestTorsionAgainstRings sums the torque of thin rings under a shear stress
// that grows with the radius.
func TestTorsionAgainstRings(t *testing.T) {
	tube := Tube{0.06, 0.04}
	const rings, most = 20000, 120e6
	torque := 0.0
	for i := range rings {
		r := 0.02 + (float64(i)+0.5)*0.01/rings
		torque += most * r / 0.03 * 2 * math.Pi * r * r * 0.01 / rings
	}
	if got := must(t)(TorsionStress(torque, tube, 0.06)); !agrees(got, most, 1e-6) {
		t.Errorf("got %.8g, want %.8g", got, float64(most))
	}
}

// TestColdFormedCorners checks the three steps of the standard's corner radii
// by their sizes, and that square corners flatter.
func TestColdFormedCorners(t *testing.T) {
	for _, c := range []struct{ wall, outer, inner float64 }{{0.006, 2, 1}, {0.008, 2.5, 1.5}, {0.012, 3, 2}} {
		s := ColdFormed(0.1, c.wall)
		want := SquareHollow{0.1, c.wall, c.outer * c.wall, c.inner * c.wall}
		if s != want {
			t.Errorf("wall %g: got %+v, want %+v", c.wall, s, want)
		}
		rounded, square := must(t)(s.Modulus()), must(t)(SquareHollow{Side: 0.1, Wall: c.wall}.Modulus())
		if rounded >= square {
			t.Errorf("wall %g: rounded modulus %g is not below the square one %g", c.wall, rounded, square)
		}
	}
}

// TestPipeDropAddsUp puts the three losses together by hand.
func TestPipeDropAddsUp(t *testing.T) {
	v := must(t)
	f, err := PipeDrop(Pipe{Bore: 0.01, Length: 3, Roughness: 2e-6, Losses: 4.5, Rise: 0.6}, Liquid{745, 0.0004}, 1e-4)
	if err != nil {
		t.Fatal(err)
	}
	want := v(DarcyDrop(f.Friction, 3, 0.01, 745, f.Velocity)) + v(MinorDrop(4.5, 745, f.Velocity)) + v(HeadDrop(745, 0.6))
	if !agrees(f.Drop, want, 1e-12) || !agrees(f.Friction, v(Colebrook(f.Reynolds, 2e-4)), 1e-12) {
		t.Errorf("got %+v, want a drop of %g", f, want)
	}
}

// TestChainLoss: coefficients worked out by hand, on the velocity in the line.
func TestChainLoss(t *testing.T) {
	for name, test := range map[string]struct {
		bore     float64
		adaptors []float64
		want     float64
	}{
		"none": {0.010, nil, 0},
		// As wide as the line: a union, and no step.
		"as wide": {0.010, []float64{0.010}, 0.08},
		// 3 to 2 and back: (1/2)(1 - 4/9) + (1 - 4/9)² + 0.08 is 0.66642, 81/16 times.
		"narrower": {3, []float64{2}, (5./18 + 25./81 + 0.08) * 81 / 16},
		// 2 to 4 and back, on the line as it is the narrower: (1 - 1/4)² + (1/2)(1 - 1/4);
		// the union at half the diameter's fourth power.
		"wider": {2, []float64{4}, 9./16 + 3./8 + 0.08/16},
		// 2 to 1, 1 to 2 and 2 to 2.
		"a second as wide as the line": {2, []float64{1, 2}, 16*(3./8+9./16+0.08) + 0.08},
	} {
		if got := must(t)(ChainLoss(test.bore, test.adaptors...)); !agrees(got, test.want, 1e-12) {
			t.Errorf("%s: %g, want %g", name, got, test.want)
		}
	}
}

// TestFrictionBetweenLaminarAndTurbulent: the larger factor is given where the
// flow may be either.
func TestFrictionBetweenLaminarAndTurbulent(t *testing.T) {
	for _, re := range []float64{2301, 3000, 3999} {
		if f := must(t)(Friction(re, 0)); f <= 64/re {
			t.Errorf("Re %g: %g is not above the laminar %g", re, f, 64/re)
		}
	}
	if f := must(t)(Friction(LaminarLimit, 0)); f != 64.0/LaminarLimit {
		t.Errorf("at the limit: got %g", f)
	}
}

// TestRefusals gives each formula input that no part can have.
func TestRefusals(t *testing.T) {
	inf, nan := math.Inf(1), math.NaN()
	two := func(v, w float64, err error) error {
		if err != nil && (v != 0 || w != 0) {
			return fmt.Errorf("refused, and yet gave %g and %g", v, w)
		}
		return err
	}
	one := func(v float64, err error) error { return two(v, 0, err) }
	whole := Body{Mass: 100, Centre: r3.Vec{X: 1}}
	body := func(_ Body, err error) error { return err }
	tests := map[string]error{
		"negative bore":              one(Velocity(1e-4, -0.01)),
		"no bore":                    one(Velocity(1e-4, 0)),
		"not a number":               one(Velocity(nan, 0.01)),
		"overflow":                   one(Velocity(1e300, 1e-300)),
		"no viscosity":               one(Reynolds(1000, 1, 0.01, 0)),
		"turbulent as laminar":       one(LaminarFriction(2301)),
		"still":                      one(LaminarFriction(0)),
		"laminar as turbulent":       one(Colebrook(1000, 0)),
		"negative length":            one(DarcyDrop(0.02, -1, 0.01, 745, 1)),
		"infinite rise":              one(HeadDrop(745, inf)),
		"negative loss":              one(MinorDrop(-1, 745, 1)),
		"step out that narrows":      one(SuddenExpansion(0.02, 0.01)),
		"step in that widens":        one(SuddenContraction(0.01, 0.02)),
		"step from nothing":          one(SuddenExpansion(0, 0.01)),
		"adaptor without a bore":     one(ChainLoss(0.01, 0)),
		"all loss":                   one(CrankPower(1e5, 1)),
		"more than all loss":         one(CrankPower(1e5, 1.5)),
		"106 per cent ethanol":       one(MassFraction(1.06, 789, 745)),
		"negative share":             one(MassAverage(-0.1, 9, 14.7)),
		"no consumption":             one(FuelMassFlow(1e5, 0)),
		"weightless fuel":            one(VolumeFlow(1, 0)),
		"weightless air":             one(MassFlow(1, 0)),
		"no pressure across":         one(InjectorFlow(1, 3e5, 0)),
		"no injectors":               one(InjectorDuty(1, 0, 1)),
		"no rise":                    one(MassFlowForRise(1, 4180, 0)),
		"no flow":                    one(RiseOfFlow(1, 0, 4180)),
		"face with no width":         one(WearRadius(0.1, 0.1)),
		"no faces":                   one(ClutchTorque(0, 0.3, 1e3, 0.1)),
		"no piston":                  one(CylinderPressure(1, 0)),
		"no slave":                   one(ReleaseTravel(0.01, 1e-4, 0)),
		"pitch over diameter":        one(MetricStressArea(0.005, 0.006)),
		"no pitch":                   one(UnifiedStressArea(0.005, 0)),
		"no class":                   one(ProofLoad(1e-5, 0)),
		"over proof":                 one(Preload(1e4, 1.1)),
		"no nut factor":              one(PreloadForTorque(0, 10, 0.01)),
		"negative preload":           one(TorqueForPreload(0.2, -1, 0.01)),
		"scatter of all":             two(PreloadBand(1e4, 1)),
		"no wall":                    one(TorsionStress(1, Tube{0.05, 0.05}, 0.05)),
		"stress outside":             one(TorsionStress(1, Tube{0.05, 0.04}, 0.06)),
		"shaft of nothing":           one(WhirlingSpeed(Tube{}, 1, 2e11, 7850)),
		"negative angle":             one(ResidualAngle(-0.1, 0.1, true)),
		"no ratio":                   one(RoadSpeed(100, 0, 0.3)),
		"gain from nothing":          one(OutputTorque(1, 4, 1.1)),
		"nothing to combine":         body(Combine()),
		"weightless body":            body(Combine(Body{})),
		"centre unknown":             body(Combine(Body{Mass: 1, Centre: r3.Vec{Y: nan}})),
		"negative doubt":             body(Combine(Body{Mass: 1, Within: -1})),
		"more than the whole":        body(Remove(whole, Body{Mass: 100})),
		"centre ahead of both":       two(TwoLineReactions(1e4, 2.4, -0.1)),
		"no load at all":             one(CentreFromLines(0, 0, 2)),
		"no track":                   func() error { _, err := CornerEstimate(1e4, Wheels{2.4, 0, 1.5}, 1, 0); return err }(),
		"centre beside the car":      func() error { _, err := CornerEstimate(1e4, Wheels{2.4, 1.5, 1.5}, 1, 0.8); return err }(),
		"tilt from outside":          one(TiltToTip(-0.1, 0.5)),
		"no stand":                   one(ToppleForce(1e3, 0.1, 0)),
		"hook under the eye":         one(LegAngle(r3.Vec{Z: 1}, r3.Vec{})),
		"eye at the hook":            one(EyeAngle(r3.Vec{}, r3.Vec{}, r3.Vec{Z: 1})),
		"eye with no axis":           one(EyeAngle(r3.Vec{}, r3.Vec{Z: 1}, r3.Vec{})),
		"wall over half":             one(HotFinished(0.05, 0.03).Modulus()),
		"zero wall":                  one(ColdFormed(0.05, 0).SecondMoment()),
		"corner over half":           one(SquareHollow{0.05, 0.004, 0.03, 0.004}.Modulus()),
		"load off the beam":          one(BeamMoment(1, 1, 1.1, 0.5)),
		"negative return":            one(VoltageDrop(1, 1, 1, -1)),
		"raised, not derated":        one(Derated(10, 1.2)),
		"no load on the battery":     one(RunTime(3600, 0)),
		"negative circle":            one(CircleArea(-1)),
		"pipe of no liquid":          func() error { _, err := PipeDrop(Pipe{Bore: 0.01, Length: 1}, Liquid{}, 1e-4); return err }(),
		"pipe of negative roughness": func() error { _, err := PipeDrop(Pipe{Bore: 0.01, Roughness: -1}, Liquid{745, 1e-3}, 1e-4); return err }(),
		"pipe of negative loss":      func() error { _, err := PipeDrop(Pipe{Bore: 0.01, Losses: -1}, Liquid{745, 1e-3}, 1e-4); return err }(),
		"pipe of no bore":            func() error { _, err := PipeDrop(Pipe{}, Liquid{745, 1e-3}, 1e-4); return err }(),
		"density that is not known":  one(HeadDrop(nan, 1)),
		"preload of no proof":        one(Preload(0, 0.75)),
	}
	for name, err := range tests {
		var out *RangeError
		if !errors.As(err, &out) {
			t.Errorf("%s: got %v, want a RangeError", name, err)
		}
	}
}

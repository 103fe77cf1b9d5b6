package workings

import (
	"math"
	"testing"

	"gonum.org/v1/gonum/spatial/r3"
)

// TestHang: the hook is where the legs say, the centre is below it, and the legs
// hold the weight with no force aside.
func TestHang(t *testing.T) {
	for _, c := range []struct {
		name    string
		centre  r3.Vec
		eyes    []r3.Vec
		lengths []float64
		hook    r3.Vec // by hand
		tilt    float64
	}{
		{
			// Eyes 0.8 m apart and 0.3 m above the centre, the hook 0.3 m above them:
			// legs of 0.5 m, a triangle of 3, 4 and 5.
			name: "two alike", eyes: []r3.Vec{{X: 0.4, Z: 0.3}, {X: -0.4, Z: 0.3}}, lengths: []float64{0.5, 0.5},
			hook: r3.Vec{Z: 0.6},
		},
		{
			// The same with the centre 0.1 m back: the hook stays over the middle of the
			// eyes, 0.6 m up, so the load tilts by atan(0.1/0.6).
			name: "centre off the middle", centre: r3.Vec{X: -0.1}, eyes: []r3.Vec{{X: 0.4, Z: 0.3}, {X: -0.4, Z: 0.3}}, lengths: []float64{0.5, 0.5},
			hook: r3.Vec{Z: 0.6}, tilt: math.Atan2(0.1, 0.6),
		},
		{
			// The eyes 0.3 m below the centre: it hangs upside down.
			name: "eyes too low", eyes: []r3.Vec{{X: 0.4, Z: -0.3}, {X: -0.4, Z: -0.3}}, lengths: []float64{0.5, 0.5},
			hook: r3.Vec{Z: -0.6}, tilt: math.Pi,
		},
		{
			// Three eyes on a circle of 0.4 m at the height of the centre.
			name: "three alike",
			eyes: []r3.Vec{{X: 0.4}, {X: -0.2, Y: 0.4 * math.Sqrt(0.75)}, {X: -0.2, Y: -0.4 * math.Sqrt(0.75)}}, centre: r3.Vec{Z: -0.2},
			lengths: []float64{0.5, 0.5, 0.5}, hook: r3.Vec{Z: 0.3},
		},
		{
			// Four eyes at the corners of 0.6 by 0.8 m, half a diagonal of 0.5 m, and the
			// hook 1.2 m over them: legs of 1.3 m.
			name:    "four alike",
			eyes:    []r3.Vec{{X: 0.4, Y: 0.3}, {X: 0.4, Y: -0.3}, {X: -0.4, Y: 0.3}, {X: -0.4, Y: -0.3}},
			centre:  r3.Vec{Z: -0.2},
			lengths: []float64{1.3, 1.3, 1.3, 1.3}, hook: r3.Vec{Z: 1.2},
		},
	} {
		t.Run(c.name, func(t *testing.T) {
			h, err := Hang(c.centre, c.eyes, c.lengths)
			if err != nil {
				t.Fatal(err)
			}
			if d := r3.Norm(r3.Sub(h.Hook, c.hook)); d > 1e-9 {
				t.Errorf("hook at %v, want %v", h.Hook, c.hook)
			}
			if math.Abs(h.Tilt()-c.tilt) > 1e-9 {
				t.Errorf("tilt %v, want %v", h.Tilt(), c.tilt)
			}
			centre := h.Level(c.centre)
			if math.Hypot(centre.X, centre.Y) > 1e-9 || centre.Z >= 0 {
				t.Errorf("the centre is at %v from the hook", centre)
			}
			var pull r3.Vec
			level := make([]r3.Vec, len(c.eyes))
			for i, eye := range c.eyes {
				level[i] = h.Level(eye)
				if d := r3.Norm(level[i]); math.Abs(d-c.lengths[i]) > 1e-9 {
					t.Errorf("leg %d is %v long", i, d)
				}
			}
			tensions, err := LegTensions(1000, r3.Vec{}, level)
			if err != nil {
				t.Fatal(err)
			}
			for i, tension := range tensions {
				pull = r3.Add(pull, r3.Scale(tension, r3.Unit(r3.Scale(-1, level[i]))))
			}
			if r3.Norm(r3.Sub(pull, r3.Vec{Z: 1000})) > 1e-6 {
				t.Errorf("the legs pull with %v", pull)
			}
		})
	}
}

func TestHangRefuses(t *testing.T) {
	apart := []r3.Vec{{X: 0.4, Z: 0.3}, {X: -0.4, Z: 0.3}}
	for name, c := range map[string]struct {
		eyes    []r3.Vec
		lengths []float64
	}{
		"legs too short to meet":  {apart, []float64{0.3, 0.3}},
		"one eye":                 {apart[:1], []float64{0.3}},
		"a length too few":        {apart, []float64{0.5}},
		"both eyes in one place":  {[]r3.Vec{{X: 0.4}, {X: 0.4}}, []float64{0.5, 0.5}},
		"the centre between them": {[]r3.Vec{{X: 0.4}, {X: -0.4}}, []float64{0.5, 0.5}},
		"three in a line":         {[]r3.Vec{{X: 0.4}, {X: 0.1}, {X: -0.4}}, []float64{0.5, 0.5, 0.5}},
		"four that do not agree":  {[]r3.Vec{{X: 0.4, Y: 0.3}, {X: 0.4, Y: -0.3}, {X: -0.4, Y: 0.3}, {X: -0.4, Y: -0.3}}, []float64{1.3, 1.0, 1.3, 1.3}},
	} {
		if h, err := Hang(r3.Vec{}, c.eyes, c.lengths); err == nil {
			t.Errorf("%s: hook at %v", name, h.Hook)
		}
	}
}

// TestReactionShares: mounts 0.2 and 0.3 m to either side of the crank, 500 N m:
// from their middle at 0.05 m both are 0.25 m off, and T/b is 1000 N.
func TestReactionShares(t *testing.T) {
	forces, err := ReactionShares(500, []float64{0.3, -0.2})
	if err != nil || math.Abs(forces[0]-1000) > 1e-9 || math.Abs(forces[1]+1000) > 1e-9 {
		t.Error(forces, err)
	}
	// A third on the middle line takes nothing.
	forces, err = ReactionShares(500, []float64{0.25, -0.25, 0})
	if err != nil || math.Abs(forces[0]-1000) > 1e-9 || math.Abs(forces[2]) > 1e-9 {
		t.Error(forces, err)
	}
	if _, err := ReactionShares(500, []float64{0.1, 0.1}); err == nil {
		t.Error("mounts all on one line hold a couple")
	}
}

// TestJointAngleLimit: the table's own figures; half way between two; and past its
// end, where 855 rad²/s² at 5000 rpm gives 2.7 degrees at 6000 and 2.0 at 8000.
func TestJointAngleLimit(t *testing.T) {
	for rpm, want := range map[float64]float64{3000: 5.0, 3500: 5.0, 4000: 4.2, 4250: 3.95, 4500: 3.7, 5000: 3.2, 6000: 2.7, 8000: 2.0} {
		got, err := JointAngleLimit(rpm * math.Pi / 30)
		if err != nil || math.Abs(got*180/math.Pi-want) > 0.04 {
			t.Errorf("%v rpm: %v degrees, want %v; %v", rpm, got*180/math.Pi, want, err)
		}
	}
}

func TestBendLoss(t *testing.T) {
	for angle, want := range map[float64]float64{0: 0, 45: 0.45, 90: 0.9, -90: 0.9, 150: 1.5} {
		if got, err := BendLoss(angle * math.Pi / 180); err != nil || math.Abs(got-want) > 1e-12 {
			t.Errorf("%v degrees: %v, want %v; %v", angle, got, want, err)
		}
	}
	if _, err := BendLoss(4); err == nil {
		t.Error("a bend of more than half a turn")
	}
}

package workings

import (
	"math"
	"slices"
	"testing"

	"github.com/google/go-cmp/cmp"
	"github.com/google/go-cmp/cmp/cmpopts"
	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"
)

var nearly = cmpopts.EquateApprox(0, 1e-9)

// comesOut is the car of [onStands] with a driveline of 300 kg that hangs from two
// eyes 0.4 m to either side of its centre and 0.3 m over it, by legs of 0.5 m.
func comesOut(says string) specs {
	return specs{
		car: onStands("driveline = \"driveline\"\n" + fit + "[support]\nwheels-down = \"none\"\nsling = \"pair\"\n" + says),
		driveline: lump + "[lift]\nfront = { at = \"500, 0, 350 mm\" }\nrear = { at = \"-300, 0, 350 mm\" }\n" +
			"[solids]\nblock = { box = [\"-100, -200, -50 mm\", \"300, 200, 250 mm\"] }\n",
		shop: standShop + "[slings.pair]\nlegs = { front = { length = \"500 mm\", to = \"front\" }, rear = { length = \"500 mm\", to = \"rear\" } }\n",
	}
}

func TestLayout(t *testing.T) {
	d, _ := comesOut("").derive(t)
	before := d.Encode()
	l := LayoutOf(d)
	if diff := cmp.Diff(before, d.Encode()); diff != "" {
		t.Errorf("laying out changed the document (-before +after):\n%s", diff)
	}
	for name, c := range map[string]struct{ got, want any }{
		"polygon": {l.Polygon, []r2.Vec{{X: -2, Y: -0.6}, {X: 0, Y: -0.6}, {X: 0, Y: 0.6}, {X: -2, Y: 0.6}}},
		"raise":   {l.Raise, Amount{Value: 0.3, Known: true}}, // pads at 0.1 m stand on saddles at 0.4
		"rear":    {l.RearAxle.At, r3.Vec{X: -2}},
		"wheel":   {l.Wheels[3], Place{Name: "rear-right", At: r3.Vec{X: -2, Y: -0.6}, Known: true}},
		"in":      {l.In.Centre, r3.Vec{X: -0.9, Z: 0.4}},
		"edge":    {l.In.Edge.Y * l.In.Edge.Y, 0.36}, // either side is as near
		// (1200 × 0.9 - 300 × 0.2) / 900 along, (1200 × 0.4 - 300 × 0.3) / 900 up.
		"out":       {l.Out.Centre, r3.Vec{X: -1.02 / 0.9, Z: 0.39 / 0.9}},
		"hanging":   {l.Hanging.Centre, l.Out.Centre},
		"height":    {l.In.Height, Amount{Value: 0.4, Known: true, Guessed: true}},
		"driveline": {l.Driveline.Centre, r3.Vec{X: -0.2, Z: 0.3}},
		"loads":     {slices.Sorted(slices.Values(l.Out.Loads)), []float64{195, 195, 255, 255}},
		"first":     {l.Taken[0].Margin, 0.6},
		"sure":      {l.Taken[0].Left, Amount{Value: 0.575, Known: true}},
		"last":      {slices.Sorted(slices.Values(l.Taken[sweep].Loads)), []float64{195, 195, 255, 255}},
		"eye":       {l.Slung.Eyes, []Place{{Name: "front", At: r3.Vec{X: 0.4, Z: -0.3}, Known: true}, {Name: "rear", At: r3.Vec{X: -0.4, Z: -0.3}, Known: true}}},
		"hangs":     {l.Slung.Centre, r3.Vec{Z: -0.6}},
		"corner":    {l.Slung.Solids[0].Corners[0], r3.Vec{X: -0.2, Y: -0.2, Z: -0.7}},
		"installed": {l.Leaving[0].Corners[0], r3.Vec{X: -0.4, Y: -0.2, Z: 0.2}},
	} {
		if diff := cmp.Diff(c.want, c.got, nearly); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
}

func TestLayoutWithWheelsDown(t *testing.T) {
	s := comesOut("")
	s.car = onStands("driveline = \"driveline\"\n" + fit + "[support]\nwheels-down = [\"rear-left\", \"rear-right\"]\n" +
		"[support.stands]\nfl = { stand = \"tall\", at = \"0, 600, 100 mm\", height = \"400 mm\" }\nfr = { stand = \"tall\", at = \"0, -600, 100 mm\", height = \"400 mm\" }\n")
	d, _ := s.derive(t)
	l := LayoutOf(d)
	var names []string
	for _, p := range l.Supports {
		names = append(names, p.Name)
	}
	if diff := cmp.Diff([]string{"fl", "fr", "rear-left", "rear-right"}, names); diff != "" {
		t.Errorf("supports (-want +got):\n%s", diff)
	}
	if diff := cmp.Diff([]float64{330, 330, 270, 270}, l.In.Loads, nearly); diff != "" {
		t.Errorf("loads (-want +got):\n%s", diff)
	}
}

func TestLayoutSaysWhatIsMissing(t *testing.T) {
	s := comesOut("")
	s.driveline = ""
	bay, _ := s.derive(t)
	if l := LayoutOf(bay); l.In.Known || l.Taken != nil || l.Slung.Known {
		t.Errorf("an empty bay has a driveline: %+v", l)
	}
	s = comesOut("")
	s.car = onStands("driveline = \"driveline\"\n" + fit + noWheels + "[support.stands]\nfl = { stand = \"tall\", at = \"?\" }\n")
	d, _ := s.derive(t)
	l := LayoutOf(d)
	if l.Polygon != nil || l.In.Loads != nil || l.Taken != nil {
		t.Errorf("one stand that has no place bears a car: %+v", l)
	}
	for name, c := range map[string]struct{ got, want []string }{
		"stand": {l.Supports[0].Missing, []string{"support.stands.fl.at"}},
		"raise": {l.Raise.Missing, []string{"support.stands.fl.height", "support.stands.fl.at"}},
		"sling": {l.Slung.Missing, []string{"support.sling"}},
	} {
		if diff := cmp.Diff(c.want, c.got); diff != "" {
			t.Errorf("%s (-want +got):\n%s", name, diff)
		}
	}
	if math.IsNaN(l.In.Centre.X) || !l.In.Known {
		t.Error("the centre of mass does not rest on the stands, and is not known")
	}
}

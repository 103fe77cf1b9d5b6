package drawing

import (
	"encoding/xml"
	"fmt"
	"os"
	"regexp"
	"strconv"
	"strings"
	"testing"

	"fitup/spec/document"
)

// A node is an element of an SVG file.
type node struct {
	XMLName  xml.Name
	Of       string  `xml:"data-of,attr"`
	D        string  `xml:"d,attr"`
	CX       float64 `xml:"cx,attr"`
	CY       float64 `xml:"cy,attr"`
	R        float64 `xml:"r,attr"`
	Text     string  `xml:",chardata"`
	Children []node  `xml:",any"`
}

// A sheet is a drawing read back from its file, with the scale that its own bar
// tells.
type sheet struct {
	t      *testing.T
	svg    node
	metres float64 // of the real thing, a mm
	origin Point   // where the real thing's origin is
}

func readBack(t *testing.T, d Drawing) sheet {
	t.Helper()
	s := sheet{t: t}
	if err := xml.Unmarshal([]byte(svgOf(t, d)), &s.svg); err != nil {
		t.Fatal(err)
	}
	bar := s.of("scale")
	half := points(t, bar.Children[0].D)
	var length, reduction float64
	if _, err := fmt.Sscanf(bar.Children[2].Children[0].Text, "0 to %g m, scale 1:%g,", &length, &reduction); err != nil {
		t.Fatal(err)
	}
	s.metres = length / 2 / (half[1].X - half[0].X)
	if !closeTo(s.metres, reduction/1000, 1e-4) {
		t.Errorf("%s: a mm is %g m by its scale bar, at 1:%g", d.Name, s.metres, reduction)
	}
	return s
}

// of is the first group that shows something.
func (s sheet) of(what string) node {
	s.t.Helper()
	var find func(n node) *node
	find = func(n node) *node {
		if n.Of == what {
			return &n
		}
		for _, c := range n.Children {
			if found := find(c); found != nil {
				return found
			}
		}
		return nil
	}
	if found := find(s.svg); found != nil {
		return *found
	}
	s.t.Fatalf("nothing in the drawing shows %q", what)
	return node{}
}

// real is where a point of the paper is: x forward, and y left of a plan or up of a
// side view, m.
func (s sheet) real(p Point, side bool) (x, y float64) {
	x, y = (s.origin.X-p.X)*s.metres, (p.Y-s.origin.Y)*s.metres
	if side {
		y = -y
	}
	return x, y
}

// lettering is all text below a node, line by line.
func (n node) lettering() []string {
	var out []string
	if n.XMLName.Local == "text" {
		return []string{n.Text}
	}
	for _, c := range n.Children {
		out = append(out, c.lettering()...)
	}
	return out
}

var coordinates = regexp.MustCompile(`[ML](-?[\d.]+) (-?[\d.]+)`)

func points(t *testing.T, d string) []Point {
	t.Helper()
	var out []Point
	for _, m := range coordinates.FindAllStringSubmatch(d, -1) {
		x, errX := strconv.ParseFloat(m[1], 64)
		y, errY := strconv.ParseFloat(m[2], 64)
		if errX != nil || errY != nil {
			t.Fatalf("path %q: %v, %v", d, errX, errY)
		}
		out = append(out, Point{x, y})
	}
	return out
}

// plans are the documents whose drawings are read back.
func plans(t *testing.T) map[string]*document.Document {
	out := map[string]*document.Document{"standing": derived(t, os.DirFS("testdata/standing"), "car.toml")}
	for _, car := range []string{"squall", "mizzle", "haar"} {
		out[car] = derived(t, os.DirFS(root), "cars/"+car+".toml")
	}
	return out
}

// TestPlanIsToScale measures the plan as a builder would, with a ruler and the
// scale bar, and compares with what is written and worked out.
func TestPlanIsToScale(t *testing.T) {
	const tolerance = 0.4e-3 // half of a hundredth of a mm at each end, at 1:40
	for name, d := range plans(t) {
		drawing, _ := Plan(d)
		s := readBack(t, drawing)
		zero := s.of("origin").Children[4]
		s.origin = Point{zero.CX, zero.CY}
		where := func(what string, p Point, x, y float64) {
			t.Helper()
			if gotX, gotY := s.real(p, false); !closeTo(gotX, x, tolerance) || !closeTo(gotY, y, tolerance) {
				t.Errorf("%s: %s is drawn at %.4f, %.4f m; it is at %.4f, %.4f", name, what, gotX, gotY, x, y)
			}
		}
		for i := range d.Stands {
			saddle := s.of(d.Stands[i].Path).Children[3]
			at := d.Stands[i].At.V.XYZ
			where("stand "+d.Stands[i].Name, Point{saddle.CX, saddle.CY}, at[0], at[1])
		}
		// Of four stands at the corners each is a corner of the polygon.
		for _, corner := range points(t, s.of("polygon").Children[0].D) {
			x, y := s.real(corner, false)
			found := false
			for i := range d.Stands {
				at := d.Stands[i].At.V.XYZ
				found = found || closeTo(x, at[0], tolerance) && closeTo(y, at[1], tolerance)
			}
			if !found {
				t.Errorf("%s: the polygon has a corner at %.4f, %.4f m, where no stand is", name, x, y)
			}
		}
		car := &d.Cars[0]
		axle := car.FrontAxle.V.XYZ
		centre := Point{axle[0] - car.Calc.AxleToMass.Value, axle[1] + car.Calc.FromCentre.Value}
		if d.Composition == document.EmptyBay {
			where("centre of mass, out", middleOf(points(t, s.of("mass out").Children[0].D)), centre.X, centre.Y)
			continue
		}
		in := s.of("mass in").Children[0]
		where("centre of mass, in", Point{in.CX, in.CY}, centre.X, centre.Y)
		lump := s.of("mass driveline").Children[0]
		x, y := s.real(Point{lump.CX, lump.CY}, false)
		mass, part := car.Calc.Mass.Value, d.Given.Weighed.Mass.V.SI
		// The rest balances the driveline about the centre of the whole.
		rest := Point{(mass*centre.X - part*x) / (mass - part), (mass*centre.Y - part*y) / (mass - part)}
		where("centre of mass, hanging", middleOf(points(t, s.of("mass hanging").Children[0].D)), rest.X, rest.Y)
	}
}

func middleOf(p []Point) Point { return around(p).Middle() }

// TestSideIsToScale measures the sling of the car whose figures can be worked out in
// the head, and the heights of everything.
func TestSideIsToScale(t *testing.T) {
	d := derived(t, os.DirFS("testdata/standing"), "car.toml")
	drawing, _ := Side(d)
	s := readBack(t, drawing)
	floor := points(t, s.of("floor").Children[1].D)[0].Y
	hook := s.of("hook").Children[0]
	s.origin = Point{hook.CX, floor}
	check := func(what string, got, want float64) {
		t.Helper()
		if !closeTo(got, want, 0.5e-3) {
			t.Errorf("%s is drawn at %.4f m, it is %.4f", what, got, want)
		}
	}
	_, height := s.real(Point{hook.CX, hook.CY}, true)
	check("hook", height, 2.2) // as high as it goes
	for name, ahead := range map[string]float64{"leg front": 0.4, "leg rear": -0.4} {
		eye := s.of(name).Children[1]
		x, z := s.real(Point{eye.CX, eye.CY}, true)
		check(name+", along", x, ahead)
		check(name+", up", z, 2.2-0.3)
	}
	lump := s.of("mass driveline").Children[0]
	_, z := s.real(Point{lump.CX, lump.CY}, true)
	check("driveline's centre", z, 2.2-0.6)
	saddle := points(t, s.of("support.stands.front-left").Children[0].D)[1]
	_, z = s.real(saddle, true)
	check("saddle", z, 0.4)
	in := s.of("mass in").Children[0]
	_, z = s.real(Point{in.CX, in.CY}, true)
	check("centre of mass, in", z, 0.4+0.3) // 0.4 m up on its wheels, raised by 0.3
	// The beam is 0.65 m up on wheels, raised by 0.3, and the driveline's lowest point
	// hangs 0.6 + 0.15 m below the hook. It lies behind the driveline, out of its way
	// up, so the floor is what the hook has to clear.
	needed := points(t, s.of("hook needed").Children[0].D)[0]
	_, z = s.real(needed, true)
	check("hook needed", z, d.Support[0].Calc.HookNeeded.Value)
}

var load = regexp.MustCompile(`(\d+) kg (in|hanging|out)\b`)

// TestLoadsSumToTheWeight adds up what is lettered at the supports.
func TestLoadsSumToTheWeight(t *testing.T) {
	docs := plans(t)
	docs["crowded"] = derived(t, os.DirFS("testdata/crowded"), "car.toml")
	for name, d := range docs {
		drawing, _ := Plan(d)
		s := readBack(t, drawing)
		sums, whole := map[string]int{}, map[string]int{}
		var visit func(n node)
		visit = func(n node) {
			text := strings.Join(n.lettering(), " ")
			switch {
			case strings.HasPrefix(n.Of, "support.stands"), strings.HasPrefix(n.Of, "wheel"):
				for _, m := range load.FindAllStringSubmatch(text, -1) {
					kg, _ := strconv.Atoi(m[1])
					sums[m[2]] += kg
				}
			case strings.HasPrefix(n.Of, "mass ") && n.Of != "mass driveline" && text != "":
				kg, _ := strconv.Atoi(strings.Fields(text[strings.Index(text, ": ")+2:])[0])
				whole[strings.TrimPrefix(n.Of, "mass ")] = kg
			}
			for _, c := range n.Children {
				visit(c)
			}
		}
		visit(s.svg)
		if len(sums) == 0 {
			t.Errorf("%s: no loads are lettered", name)
		}
		for state, sum := range sums {
			if sum != whole[state] {
				t.Errorf("%s: the loads with the driveline %s sum to %d kg of %d", name, state, sum, whole[state])
			}
		}
	}
}

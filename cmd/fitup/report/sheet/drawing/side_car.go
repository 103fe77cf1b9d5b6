package drawing

import (
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec/document"
	"fitup/spec/workings"
)

// body draws wheels, what stays in the car, and the driveline in its place.
func (s *sideView) body() {
	if r := s.car().TyreRadius; r.Given() {
		for _, w := range s.layout.Wheels {
			if !w.Known || strings.HasSuffix(w.Name, "right") { // behind the left one
				continue
			}
			look, at := wheelUp, s.raised(w.At)
			if s.isDown(w) {
				look, at = Look{Pen: Wide, Tone: Support}, w.At
			}
			s.add(Group{"wheel " + w.Name, []Mark{Circle{look, s.at(r3.Add(at, r3.Vec{Z: r.V.SI})), s.mm(r.V.SI)}}})
		}
	}
	for _, solid := range s.layout.Staying {
		s.add(Group{"solid " + solid.Name, []Mark{Path{Look: staying, Points: s.seen(solid, s.raised), Closed: true}}})
	}
	for _, solid := range s.layout.Leaving {
		outline := s.seen(solid, s.raised)
		s.add(Group{"solid driveline." + solid.Name, []Mark{Path{Look: leaving, Points: outline, Closed: true}}})
		s.later(label{of: "solid driveline." + solid.Name, at: around(outline).Middle(), over: true, lines: Wrap(solid.Name, 40, Lettering, 2), tone: Driveline})
	}
}

// seen is the outline of a solid where it is.
func (s *sideView) seen(solid workings.Solid, where func(r3.Vec) r3.Vec) []Point {
	moved := make([]r3.Vec, len(solid.Corners))
	for i, c := range solid.Corners {
		moved[i] = where(c)
	}
	return s.outline(moved)
}

// stands draws the stands, with the height of their saddles.
func (s *sideView) stands() {
	heights := map[float64]bool{}
	for i := range s.doc.Stands {
		stand, place := &s.doc.Stands[i], s.layout.Supports[i]
		height := stand.Height
		if !height.Given() {
			height = s.doc.Support[0].Saddle
		}
		x := s.x.high - s.x.length()/5 - 3*s.x.length()/5*float64(i/2%2)
		if place.Known {
			x = place.At.X
		}
		foot := s.at(r3.Vec{X: x})
		if !height.Given() {
			s.wants(foot.Plus(Point{0, -8}), "saddle height of stand "+stand.Name, []string{stand.Path + ".height"})
			continue
		}
		if !place.Known {
			s.wants(foot.Plus(Point{0, -8}), "place of stand "+stand.Name, place.Missing)
			continue
		}
		top, half := s.at(r3.Vec{X: x, Z: height.V.SI}), max(s.mm(stand.Kind.Reach.V.SI), 2)
		s.add(Group{stand.Path, []Mark{
			Path{Look: Look{Pen: Wide, Tone: Support, Fill: Paper}, Closed: true, Points: []Point{
				foot.Plus(Point{-half, 0}), top.Plus(Point{-1, 0}), top.Plus(Point{1, 0}), foot.Plus(Point{half, 0}),
			}},
			Line(Look{Pen: Wide, Tone: Support}, top.Plus(Point{-2, 0}), top.Plus(Point{2, 0})),
		}})
		s.say("The saddle of stand %s is %s high.", stand.Name, s.metres(height.V.SI))
		if !heights[height.V.SI] {
			heights[height.V.SI] = true
			edge := 14 + 8*float64(len(heights)-1)
			s.add(Dimension{From: top, To: Point{top.X, s.origin.Y}, Off: edge - top.X, Upright: true, Label: s.plain(height.V.SI), Tone: Support})
		}
	}
	if len(s.doc.Stands) > 0 && !s.layout.Raise.Known {
		s.wants(s.at(r3.Vec{X: (s.x.low + s.x.high) / 2, Z: 0.2}), "how far the car is raised", s.layout.Raise.Missing)
	}
	if len(s.doc.Stands) == 0 {
		s.wants(s.at(r3.Vec{X: (s.x.low + s.x.high) / 2}).Plus(Point{0, -8}), "stands", []string{"support.stands"})
	}
}

// masses draws how high the centre of mass lies with the driveline in and out.
func (s *sideView) masses() {
	for _, m := range []struct {
		of, text string
		mass     workings.Mass
		stage    string
		mark     func(Point) []Mark
	}{
		{"mass out", "driveline out", s.layout.Out, document.OutRaised, squareMark},
		{"mass in", "driveline in", s.layout.In, document.Raised, massMark},
	} {
		height := m.mass.Height
		if !height.Known {
			if m.mass.Known { // else the plan says what is wanted
				s.wants(s.at(s.raised(r3.Vec{X: m.mass.Centre.X, Z: 0.3})), "height of the centre of mass, "+m.text, height.Missing)
			}
			continue
		}
		centre, mass := s.raised(m.mass.Centre), about(m.mass.Guessed, s.kilograms(m.mass.Mass))
		at, calc := s.at(centre), s.calc(m.stage)
		s.add(Group{m.of, m.mark(at)})
		lines := []string{m.text + ": " + mass, about(height.Guessed, s.metres(centre.Z)) + " up"}
		if calc.Tilt.Known {
			lines[1] += ", tips at " + guess(calc.Tilt, degrees(calc.Tilt.Value))
		}
		s.later(label{of: m.of, at: at, clear: signReach, lines: lines, led: true})
		s.say("With the %s, %s on the supports; the centre of mass is %s.", m.text, mass, lines[1])
	}
}

package drawing

import (
	"math"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec/workings"
)

// reach is how far the base of a stand reaches from its axis, m; nothing where it
// is not said, and of a wheel.
func (p *planView) reach(support int) float64 {
	if support < len(p.doc.Stands) {
		return p.doc.Stands[support].Kind.Reach.V.SI
	}
	return 0
}

// supports draws stands and the wheels that are down, what each bears, and the area
// that they enclose.
func (p *planView) supports() {
	if len(p.layout.Supports) == 0 {
		p.wants(p.middle(), "stands", []string{"support.stands"})
		return
	}
	if p.layout.Polygon != nil {
		corners := make([]Point, len(p.layout.Polygon))
		for i, c := range p.layout.Polygon {
			corners[i] = p.at(r3.Vec{X: c.X, Y: c.Y})
		}
		p.add(Group{"polygon", []Mark{Path{Look: Look{Pen: Wide, Tone: Support, Fill: Tint}, Points: corners, Closed: true}}})
		p.say("The supports enclose the area between %s.", strings.Join(p.corners(), "; "))
	}
	loads := p.loads()
	for i, s := range p.layout.Supports {
		of, name := "wheel "+s.Name, s.Name+" wheel, down"
		if i < len(p.doc.Stands) {
			of, name = p.doc.Stands[i].Path, s.Name
		}
		if !s.Known {
			p.wants(p.corner(i), "stand "+s.Name, s.Missing)
			continue
		}
		at, half := p.at(s.At), max(p.mm(p.reach(i)), 2)
		if i < len(p.doc.Stands) {
			box := Around(at, 2*half, 2*half)
			look := Look{Tone: Support}
			p.add(Group{of, []Mark{
				Rectangle(Look{Pen: Wide, Tone: Support, Fill: Paper}, box),
				Line(look, box.Min, box.Max), Line(look, Point{box.Min.X, box.Max.Y}, Point{box.Max.X, box.Min.Y}),
				Circle{Look{Pen: Wide, Tone: Support, Fill: Solid}, at, 1},
			}})
		}
		lines := append(Wrap(name, 46, Lettering, 2), loads[i]...)
		p.later(label{of: of, at: at, clear: half, away: Point{0, math.Copysign(12, at.Y-p.middle().Y)}, lines: lines, tone: Support})
		p.say("%s at %s: %s.", capital(name), p.where(s.At.X, s.At.Y), strings.Join(loads[i], ", "))
	}
}

// loads are the lines under the name of each support.
func (p *planView) loads() [][]string {
	in, hanging, out := p.layout.In, p.layout.Hanging, p.layout.Out
	lines := make([][]string, len(p.layout.Supports))
	for _, m := range []struct {
		mass workings.Mass
		when string
	}{{in, "in"}, {hanging, "hanging"}, {out, "out"}} {
		if m.mass.Loads == nil || m.when == "hanging" && same(hanging, out) {
			continue
		}
		for i, text := range p.shares(m.mass.Loads, m.mass.Mass) {
			lines[i] = append(lines[i], about(m.mass.Guessed, text)+" "+m.when)
		}
	}
	for i := range lines {
		said := strings.Join(lines[i], ", ")
		if said == "" {
			said = "load not known"
		}
		lines[i] = []string{said}
		if i < len(p.doc.Stands) {
			c := &p.doc.Stands[i].Calc
			if c.Rocking.Known {
				lines[i] = append(lines[i], guess(c.Rocking, p.kilograms(c.Rocking.Value))+" if it rocks")
			}
			if c.Capacity.Known {
				lines[i] = append(lines[i], "rated "+guess(c.Capacity, p.kilograms(c.Capacity.Value)))
			} else {
				lines[i] = append(lines[i], "rating: "+measure(c.Capacity.Missing))
			}
		}
	}
	return lines
}

// corner is where a stand whose place nobody wrote is likely to be: by the order in
// which stands are written, all round.
func (p *planView) corner(i int) Point {
	x, y := p.x.high-p.x.length()/5, p.y.low+p.y.length()/4
	if i%4 >= 2 {
		x = p.x.low + p.x.length()/5
	}
	if i%2 == 0 {
		y = p.y.high - p.y.length()/4
	}
	return p.at(r3.Vec{X: x, Y: y})
}

// corners are the corners of the polygon in words.
func (p *planView) corners() []string {
	out := make([]string, len(p.layout.Polygon))
	for i, c := range p.layout.Polygon {
		out[i] = p.where(c.X, c.Y)
	}
	return out
}

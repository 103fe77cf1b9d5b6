package drawing

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// Room that the plan keeps round the car, mm.
const (
	laneLeft   = 9  // for the dimension of the front track
	laneRight  = 8  // of the rear one
	laneAbove  = 32 // for labels
	laneLabels = 24 // below, for labels
	laneBelow  = 20 // below these, for two dimension lines
	wheelWidth = 5  // of a tyre as it is drawn; its real width is in no spec
)

// Plan draws how a car stands, seen from above: its supports with what they bear,
// the area that they enclose, and where the centre of mass lies in it with the
// driveline in, hanging and out. The second result is false of a document without a
// car.
func Plan(d *document.Document) (Drawing, bool) {
	if len(d.Cars) == 0 {
		return Drawing{}, false
	}
	p := planView{scene: newScene(d, "plan", "as it stands, seen from above")}
	p.lay()
	p.axles()
	p.solids()
	p.supports()
	p.masses()
	p.dimensions()
	p.orientation()
	p.letter()
	return p.finish(p.key()), true
}

// A planView is the view from above while it is drawn.
type planView struct {
	scene
	x, y span // what is drawn of the car, m
}

// key explains the lines of the plan.
func (p *planView) key() []sample {
	wheels := sample{wheelUp, "wheel, off the floor or not"}
	var key []sample
	if len(p.doc.Support) > 0 {
		switch w := &p.doc.Support[0].Wheels; {
		case len(w.V) > 0:
			key = append(key, sample{wheelDown, "wheel down"})
			fallthrough
		case w.Said() == spec.None:
			wheels.text = "wheel off the floor"
		}
	}
	key = append(key, wheels)
	if len(p.layout.Staying) > 0 {
		key = append(key, sample{staying, "stays in the car"})
	}
	if len(p.layout.Leaving) > 0 {
		key = append(key, sample{leaving, "driveline"})
	}
	return key
}

// lay finds the room that the car takes, and the scale.
func (p *planView) lay() {
	p.x, p.y = nothing(), nothing()
	radius := p.car().TyreRadius.V.SI
	for _, w := range p.layout.Wheels {
		if w.Known {
			p.x.over(w.At.X-radius, w.At.X+radius)
			p.y.over(w.At.Y)
		}
	}
	for i, s := range p.layout.Supports {
		if s.Known {
			reach := p.reach(i)
			p.x.over(s.At.X-reach, s.At.X+reach)
			p.y.over(s.At.Y-reach, s.At.Y+reach)
		}
	}
	for _, m := range []workings.Mass{p.layout.In, p.layout.Hanging, p.layout.Out, p.layout.Driveline} {
		if m.Known {
			p.x.over(m.Centre.X)
			p.y.over(m.Centre.Y)
		}
	}
	for _, s := range slices.Concat(p.layout.Leaving, p.layout.Staying) {
		for _, c := range s.Corners {
			p.x.over(c.X)
			p.y.over(c.Y)
		}
	}
	if p.x.length() <= 0 || math.IsInf(p.x.low, 0) { // nothing has a place yet
		p.x, p.y = span{-2.5, 0}, span{-0.7, 0.7}
	}
	const width = PaperWidth - laneLeft - laneRight
	p.projection = projection{reduction: fit(p.x.length(), width)}
	spare := (width - p.mm(p.x.length())) / 2
	p.origin = Point{laneLeft + spare + p.mm(p.x.high), laneAbove - p.mm(p.y.low) + wheelWidth/2}
	p.plate.frame = Box{Max: Point{PaperWidth, p.origin.Y + p.mm(p.y.high) + wheelWidth/2 + laneLabels + laneBelow}}
}

// middle is where a word about the whole car goes.
func (p *planView) middle() Point {
	return p.at(r3.Vec{X: (p.x.low + p.x.high) / 2, Y: (p.y.low + p.y.high) / 2})
}

// top and bottom are how far up and down the paper the car reaches.
func (p *planView) top() float64    { return p.at(r3.Vec{Y: p.y.low}).Y - wheelWidth/2 }
func (p *planView) bottom() float64 { return p.at(r3.Vec{Y: p.y.high}).Y + wheelWidth/2 }

// axles draws the axle lines, the centre line and the wheels.
func (p *planView) axles() {
	centre := Look{Pen: Centre, Tone: Quiet}
	for _, axle := range []workings.Place{p.layout.FrontAxle, p.layout.RearAxle} {
		if axle.Known {
			x := p.at(axle.At).X
			p.add(Group{"axle " + axle.Name, []Mark{Line(centre, Point{x, p.top() - 3}, Point{x, p.bottom() + 3})}})
		}
	}
	middle := p.layout.FrontAxle.At.Y
	p.add(Group{"centre line", []Mark{Line(centre, Point{p.at(r3.Vec{X: p.x.high}).X - 2, p.at(r3.Vec{Y: middle}).Y}, Point{p.at(r3.Vec{X: p.x.low}).X + 2, p.at(r3.Vec{Y: middle}).Y})}})
	for _, w := range p.layout.Wheels {
		if !w.Known {
			continue
		}
		look := wheelUp
		if p.isDown(w) {
			look = wheelDown
		}
		tyre := Around(p.at(w.At), max(p.mm(2*p.car().TyreRadius.V.SI), wheelWidth), wheelWidth)
		p.add(Group{"wheel " + w.Name, []Mark{Rectangle(look, tyre)}})
		p.plate.taken = append(p.plate.taken, tyre)
	}
	where := p.x.high
	if p.layout.FrontAxle.Known {
		where = p.x.low
	}
	p.wants(p.at(r3.Vec{X: where, Y: (p.y.low + p.y.high) / 2}), "wheels", missingOf(p.layout.Wheels))
}

// solids draws the boxes that car and driveline take up.
func (p *planView) solids() {
	for _, solid := range p.layout.Staying {
		p.add(Group{"solid " + solid.Name, []Mark{Path{Look: staying, Points: p.outline(solid.Corners), Closed: true}}})
	}
	for _, solid := range p.layout.Leaving {
		outline := p.outline(solid.Corners)
		p.add(Group{"solid driveline." + solid.Name, []Mark{Path{Look: leaving, Points: outline, Closed: true}}})
		p.later(label{of: "solid driveline." + solid.Name, at: around(outline).Middle(), over: true, lines: Wrap(solid.Name, 40, Lettering, 2), tone: Driveline})
	}
}

// orientation marks the origin of the axes and the bonnet's end.
func (p *planView) orientation() {
	at := p.at(r3.Vec{})
	if p.plate.frame.has(at) && p.layout.FrontAxle.Known {
		ahead, left := at.Plus(Point{-8, 0}), at.Plus(Point{0, 8})
		p.add(Group{"origin", []Mark{
			Line(Look{}, at, ahead), arrowhead(ahead, Point{1, 0}, 1, Ink), Line(Look{}, at, left), arrowhead(left, Point{0, 1}, -1, Ink), Circle{Look{Fill: Paper}, at, 1},
		}})
		p.later(label{of: "origin", at: at, clear: 2, lines: []string{"origin"}, tone: Quiet, away: Point{-8, 8}})
	}
	p.front()
	p.say("x is forward of the origin and y to the left of it.")
}

// Looks that plan and side view share.
var (
	wheelUp   = Look{Pen: Phantom, Tone: Quiet}
	wheelDown = Look{Pen: Wide, Tone: Support, Fill: Hatch}
	staying   = Look{Tone: Quiet}
	leaving   = Look{Pen: Wide, Tone: Driveline, Fill: Tint}
)

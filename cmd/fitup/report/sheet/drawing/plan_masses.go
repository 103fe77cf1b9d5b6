package drawing

import (
	"fmt"
	"math"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec/document"
	"fitup/spec/workings"
)

// sameSpot is the distance in m below which two places are drawn as one.
const sameSpot = 0.5e-3

// same tells whether two masses would be drawn as one.
func same(a, b workings.Mass) bool {
	return a.Known && b.Known && math.Abs(a.Mass-b.Mass) < 0.05 && r3.Norm(r3.Sub(a.Centre, b.Centre)) < sameSpot
}

// A state is the centre of mass of the car at one stage.
type state struct {
	of, text string
	mass     workings.Mass
	calc     document.SupportCaseCalc
	mark     func(at Point) []Mark
	away     float64 // how much its label would rather stand below; above if negative
}

// states are the stages that the plan shows, those with the driveline out first: the
// marks of the others are drawn over theirs. One label is above and the others are
// below, as the marks may be close.
func (p *planView) states() []state {
	in, hanging, out := p.layout.In, p.layout.Hanging, p.layout.Out
	states := []state{{"mass out", "driveline out", out, p.calc(document.OutRaised), squareMark, 25}}
	if p.doc.Composition == document.CarWithDriveline {
		states = append(states,
			state{"mass hanging", "driveline hanging", hanging, p.allTaken(), diamondMark, 25},
			state{"mass in", "driveline in", in, p.calc(document.Raised), massMark, -25})
	}
	return states
}

// allTaken are the figures where all the driveline's weight is on the hook.
func (p *planView) allTaken() document.SupportCaseCalc {
	if len(p.layout.Taken) == 0 {
		return document.SupportCaseCalc{}
	}
	last := p.layout.Taken[len(p.layout.Taken)-1]
	return document.SupportCaseCalc{
		Margin: document.Figure{Value: last.Margin, Known: true, Guessed: p.layout.Hanging.Guessed},
		Unsure: document.Figure{Value: last.Margin - last.Left.Value, Known: last.Left.Known, Guessed: last.Left.Guessed},
	}
}

// masses draws the centre of mass at each stage, its way between them, and the
// least margin.
func (p *planView) masses() {
	in, hanging, out := p.layout.In, p.layout.Hanging, p.layout.Out
	if in.Known && hanging.Known {
		p.add(Group{"way of the mass", []Mark{Line(Look{Pen: Dashed}, p.at(in.Centre), p.at(hanging.Centre))}})
	}
	p.margin()
	if lump := p.layout.Driveline; lump.Known {
		at, mass := p.at(lump.Centre), about(lump.Guessed, p.kilograms(lump.Mass))
		p.add(Group{"mass driveline", crossMark(at)})
		p.later(label{of: "mass driveline", at: at, clear: 2.5, lines: []string{"driveline " + mass, "the hook goes over it"}, tone: Driveline})
		p.say("The centre of mass of the driveline, %s, is at %s; the hook goes over it.", mass, p.where(lump.Centre.X, lump.Centre.Y))
	}
	together := same(hanging, out)
	for _, s := range p.states() {
		switch {
		case !s.mass.Known:
			p.wants(p.middle(), "centre of mass, "+s.text, s.mass.Missing)
			continue
		case together && s.of == "mass hanging": // the label of the other says it
			p.add(Group{s.of, s.mark(p.at(s.mass.Centre))})
			continue
		case together && s.of == "mass out":
			s.text = "driveline hanging, and out"
		}
		p.state(s)
	}
}

// state draws one state with its label.
func (p *planView) state(s state) {
	at := p.at(s.mass.Centre)
	p.add(Group{s.of, s.mark(at)})
	p.plate.taken = append(p.plate.taken, Around(at, 2*signReach, 2*signReach))
	mass := about(s.mass.Guessed, p.kilograms(s.mass.Mass))
	lines := []string{s.text + ": " + mass}
	words := fmt.Sprintf("%s: %s on the supports, centre of mass at %s", capital(s.text), mass, p.where(s.mass.Centre.X, s.mass.Centre.Y))
	if s.calc.Margin.Known {
		lines = append(lines, p.inside(s.calc))
		words += ", " + lines[1]
	}
	p.later(label{of: s.of, at: at, clear: signReach, away: Point{0, s.away}, lines: lines, led: true})
	p.say("%s.", words)
}

// inside says how far the centre of mass lies inside the edge, and how sure that is.
func (p *planView) inside(c document.SupportCaseCalc) string {
	side, margin := "inside", c.Margin.Value
	if margin < 0 {
		side, margin = "OUTSIDE", -margin
	}
	text := guess(c.Margin, p.metres(margin)) + " " + side
	if c.Unsure.Known {
		text += ", unsure " + guess(c.Unsure, p.metres(c.Unsure.Value))
	}
	return text
}

// margin draws the distance to the edge at the stage where it is least.
func (p *planView) margin() {
	var least *state
	states := p.states()
	for i := range states {
		if s := &states[i]; s.mass.Known && s.calc.Margin.Known && (least == nil || s.calc.Margin.Value < least.calc.Margin.Value) {
			least = s
		}
	}
	if least == nil || p.layout.Polygon == nil {
		return
	}
	from, to := p.at(least.mass.Centre), p.at(r3.Vec{X: least.mass.Edge.X, Y: least.mass.Edge.Y})
	length := distance(from, to)
	if length < 2*arrowLength {
		return
	}
	along := Point{(to.X - from.X) / length, (to.Y - from.Y) / length}
	p.add(Group{"margin", []Mark{Line(Look{}, from, to), arrowhead(from, along, 1, Ink), arrowhead(to, along, -1, Ink)}})
	p.later(label{of: "margin", at: Point{(from.X + to.X) / 2, (from.Y + to.Y) / 2}, lines: []string{p.plain(math.Abs(least.calc.Margin.Value))}})
}

package drawing

import (
	"math"
	"slices"
	"strings"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
)

// hoist draws how high the hook goes, and says what hangs from the hook.
func (s *sideView) hoist() {
	sup := &s.doc.Support[0]
	if to := sup.Crane.HookTo; to.Given() {
		y, text := s.at(r3.Vec{Z: to.V.SI}).Y, "hook goes up to "+s.metres(to.V.SI)
		if room := s.headroom(); room.Given() {
			text += ", headroom " + s.metres(room.V.SI)
		}
		s.add(Group{"hook-to", []Mark{Line(Look{Pen: Dashed, Tone: Quiet}, Point{2, y}, Point{PaperWidth - 2, y})}})
		clear := Point{PaperWidth - 42, y} // on the side where the hook is not
		if s.at(s.hook).X > PaperWidth/2 {
			clear.X = 60
		}
		s.later(label{of: "hook-to", at: clear, lines: []string{text}, tone: Quiet})
		s.say("%s.", capital(text))
	}
	if s.hook == (r3.Vec{}) {
		return
	}
	at := s.at(s.hook)
	s.add(Group{"hook", []Mark{
		Circle{Look{Pen: Wide, Fill: Paper}, at, 1.4},
		Line(Look{Pen: Wide}, at.Plus(Point{0, -1.4}), at.Plus(Point{0, -5})),
	}})
	load, plate := s.known(sup.Calc.HookLoad, s.kilograms), s.known(sup.Calc.HookRated, s.kilograms)
	if boom := sup.Crane.Booms.Named[sup.Boom.V]; boom != nil && sup.Boom.Given() {
		plate += " at boom " + sup.Boom.V
		if boom.Reach.Given() {
			plate += ", " + s.metres(boom.Reach.V.SI) + " long"
		}
	}
	s.later(label{of: "hook", at: at, clear: 5, lines: wrapped([]string{"hook: " + load, "plate: " + plate}, 46), away: Point{12, 0}})
	s.say("On the hook, tackle and sling counted: %s; the hoist's plate says %s.", load, plate)
}

// headroom is the clear height over the work.
func (s *sideView) headroom() spec.Length {
	if len(s.doc.Shops) == 0 {
		return spec.Length{}
	}
	return s.doc.Shops[0].Room
}

// hookNeeded draws how high the hook has to go.
func (s *sideView) hookNeeded() {
	needed := s.doc.Support[0].Calc.HookNeeded
	if !needed.Known {
		if len(needed.Missing) > 0 {
			s.wants(s.at(r3.Vec{X: s.x.low, Z: s.high / 2}), "height that the hook needs", needed.Missing)
		}
		return
	}
	y := s.at(r3.Vec{Z: needed.Value}).Y
	from, edge := PaperWidth/2.0, PaperWidth-3.0
	s.add(Group{"hook needed", []Mark{
		Line(Look{Pen: Dashed}, Point{from, y}, Point{edge, y}),
		Dimension{From: Point{edge, y}, To: Point{edge, s.origin.Y}, Upright: true, Label: guess(needed, s.plain(needed.Value))},
	}})
	s.later(label{of: "hook needed", at: Point{edge - 24, y}, lines: []string{"hook at least this high"}})
	s.say("To clear what stays in the car the hook has to go up to %s.", guess(needed, s.metres(needed.Value)))
}

// sling draws the driveline as it hangs, with what each leg and eye bears.
func (s *sideView) sling() {
	slung := s.layout.Slung
	if s.hook == (r3.Vec{}) {
		s.wants(s.at(r3.Vec{X: s.layout.Driveline.Centre.X, Z: s.high * 0.7}), "how the driveline hangs", unique(slices.Concat(slung.Missing, s.layout.Driveline.Missing)))
		return
	}
	for _, solid := range slung.Solids {
		s.add(Group{"hanging " + solid.Name, []Mark{Path{Look: hanging, Points: s.seen(solid, s.slung), Closed: true}}})
	}
	hook, centre := s.at(s.hook), s.at(s.slung(slung.Centre))
	s.add(Group{"plumb line", []Mark{Line(Look{Pen: Centre, Tone: Driveline}, hook, centre)}})
	s.add(Group{"mass driveline", crossMark(centre)})
	lump := s.layout.Driveline
	s.later(label{of: "mass driveline", at: centre, clear: 2.5, lines: []string{"driveline " + about(lump.Guessed, s.kilograms(lump.Mass))}, tone: Driveline})
	for _, eye := range slung.Eyes {
		at := s.at(s.slung(eye.At))
		s.add(Group{"leg " + eye.Name, []Mark{Line(Look{Pen: Wide, Tone: Driveline}, hook, at), Circle{Look{Pen: Wide, Tone: Driveline, Fill: Paper}, at, 0.9}}})
		point := s.lift(eye.Name)
		if point == nil {
			continue
		}
		lines := []string{
			"eye " + eye.Name,
			"pull " + s.known(point.Calc.Tension, s.kilograms),
			"leg " + s.known(point.Calc.LegAngle, degrees) + " from level",
			s.known(point.Calc.EyePull, degrees) + " off the eye's axis",
		}
		if point.Rated.Given() {
			lines[1] += " of " + s.kilograms(point.Rated.V.SI)
		}
		s.later(label{of: point.Path, at: at, clear: 1, away: Point{math.Copysign(12, at.X-hook.X), 0}, lines: lines, tone: Driveline})
		s.say("%s.", capital(strings.Join(lines, ", ")))
	}
	if tilt := s.doc.Support[0].Calc.HangTilt; tilt.Known {
		s.say("The driveline hangs %s out of its own level.", guess(tilt, degrees(tilt.Value)))
	}
}

// lift is the lift point of a name.
func (s *sideView) lift(name string) *document.LiftPoint {
	for i := range s.doc.Lift {
		if s.doc.Lift[i].Name == name {
			return &s.doc.Lift[i]
		}
	}
	return nil
}

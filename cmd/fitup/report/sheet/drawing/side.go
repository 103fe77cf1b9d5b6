package drawing

import (
	"math"
	"slices"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
)

// Room that the side view keeps round the car, mm.
const (
	sideWidth  = 130 // that the car may take
	sideHeight = 120 // from the floor to the highest thing
	sideAbove  = 20  // for labels over it
	floorDepth = 3   // of the hatching below the floor
	headings   = 10  // between the view and the graphs
)

// Side draws how a car stands and how its driveline hangs, seen from the left, and
// below it how margin and loads change while the hoist takes the weight. The second
// result is false of a document without a car.
func Side(d *document.Document) (Drawing, bool) {
	if len(d.Cars) == 0 {
		return Drawing{}, false
	}
	s := sideView{scene: newScene(d, "side", "as it stands, seen from the left")}
	s.lay()
	s.floor()
	s.body()
	s.stands()
	s.masses()
	if s.lifts() {
		s.hoist()
		s.hookNeeded()
		s.sling()
	}
	s.letter()
	if s.lifts() {
		s.graphs()
	}
	return s.finish(s.key()), true
}

// A sideView is the view from the left while it is drawn. Heights are above the floor.
type sideView struct {
	scene
	x    span
	high float64 // the highest thing drawn, m
	hook r3.Vec  // where the hook is; at the origin where that is not known
}

// lifts tells whether a driveline is in the car that a hoist may take out.
func (s *sideView) lifts() bool {
	return s.doc.Composition == document.CarWithDriveline && len(s.doc.Support) > 0 && s.doc.Support[0].Lift.Said() != spec.None
}

// raised is where a point of the car is when it stands on its supports.
func (s *sideView) raised(v r3.Vec) r3.Vec { return r3.Add(v, r3.Vec{Z: s.layout.Raise.Value}) }

// slung is where a point of the driveline is when it hangs.
func (s *sideView) slung(v r3.Vec) r3.Vec { return r3.Add(s.hook, v) }

// lay finds the room that car, hook and hoist take, and the scale.
func (s *sideView) lay() {
	s.x, s.high = nothing(), 0.5
	over := func(v r3.Vec) {
		s.x.over(v.X)
		s.high = max(s.high, v.Z)
	}
	radius := s.car().TyreRadius.V.SI
	for _, w := range s.layout.Wheels {
		if w.Known {
			over(s.raised(r3.Add(w.At, r3.Vec{X: radius, Z: 2 * radius})))
			s.x.over(w.At.X - radius)
		}
	}
	for _, p := range s.layout.Supports {
		if p.Known {
			over(s.raised(p.At))
		}
	}
	for _, solid := range slices.Concat(s.layout.Leaving, s.layout.Staying) {
		for _, c := range solid.Corners {
			over(s.raised(c))
		}
	}
	if s.lifts() {
		s.hang()
		if h := s.doc.Support[0].Crane.HookTo; h.Given() {
			s.high = max(s.high, h.V.SI)
		}
		s.high = max(s.high, s.hook.Z, s.doc.Support[0].Calc.HookNeeded.Value)
		for _, solid := range s.layout.Slung.Solids {
			for _, c := range solid.Corners {
				s.x.over(s.slung(c).X)
			}
		}
	}
	if s.x.length() <= 0 || math.IsInf(s.x.low, 0) {
		s.x = span{-2.5, 0}
	}
	s.projection = projection{side: true, reduction: max(fit(s.x.length(), sideWidth), fit(s.high, sideHeight))}
	left := (PaperWidth - s.mm(s.x.length())) / 2
	s.origin = Point{left + s.mm(s.x.high), sideAbove + s.mm(s.high)}
	s.plate.frame = Box{Max: Point{PaperWidth, s.origin.Y + floorDepth + 1}}
}

// hang finds where the hook is drawn: as high as it goes where that is known, else
// as high as it has to go, and no lower than where it begins to lift.
func (s *sideView) hang() {
	lump := s.layout.Driveline
	if !s.layout.Slung.Known || !lump.Known {
		return
	}
	begins := s.raised(lump.Centre)
	s.hook = r3.Vec{X: begins.X, Z: begins.Z - s.layout.Slung.Centre.Z}
	if to := s.doc.Support[0].Crane.HookTo; to.Given() {
		s.hook.Z = to.V.SI
	} else if needed := s.doc.Support[0].Calc.HookNeeded; needed.Known {
		s.hook.Z = max(s.hook.Z, needed.Value)
	}
}

// floor draws what it stands on.
func (s *sideView) floor() {
	y := s.origin.Y
	s.add(Group{"floor", []Mark{
		Rectangle(Look{Pen: NoPen, Fill: Ground}, Box{Point{2, y}, Point{PaperWidth - 2, y + floorDepth}}),
		Line(Look{Pen: Wide}, Point{2, y}, Point{PaperWidth - 2, y}),
	}})
	s.front()
}

// key explains the lines of the side view.
func (s *sideView) key() []sample {
	key := []sample{{wheelUp, "wheel, as at ride height"}}
	if len(s.layout.Staying) > 0 {
		key = append(key, sample{staying, "stays in the car"})
	}
	if len(s.layout.Leaving) > 0 {
		key = append(key, sample{leaving, "driveline"})
	}
	if len(s.layout.Slung.Solids) > 0 {
		key = append(key, sample{hanging, "as it hangs"})
	}
	return key
}

// hanging is how the driveline is drawn where the hook brings it.
var hanging = Look{Pen: Phantom, Tone: Driveline}

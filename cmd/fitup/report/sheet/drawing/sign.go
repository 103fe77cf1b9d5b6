package drawing

import "math"

// The marks of a centre of mass differ in shape, not in colour: a car may have three
// of them on one point.

// signReach is how far such a mark reaches from its point, mm.
const signReach = 4.2

// massMark is a circle with two opposite quarters filled.
func massMark(at Point) []Mark {
	const r = 2.4
	marks := []Mark{Circle{Look{Pen: Wide, Fill: Paper}, at, r}}
	for _, from := range []float64{0, math.Pi} {
		quarter := Path{Look: Look{Pen: NoPen, Fill: Solid}, Points: []Point{at}, Closed: true}
		for i := range 7 {
			sin, cos := math.Sincos(from + float64(i)*math.Pi/12)
			quarter.Points = append(quarter.Points, at.Plus(Point{r * cos, r * sin}))
		}
		marks = append(marks, quarter)
	}
	return marks
}

// diamondMark is a square on its corner.
func diamondMark(at Point) []Mark {
	const r = signReach
	return []Mark{Path{Look: Look{Pen: Wide}, Points: []Point{at.Plus(Point{-r, 0}), at.Plus(Point{0, -r}), at.Plus(Point{r, 0}), at.Plus(Point{0, r})}, Closed: true}}
}

// squareMark is an upright square.
func squareMark(at Point) []Mark {
	return []Mark{Rectangle(Look{Pen: Wide}, Around(at, 5.6, 5.6))}
}

// crossMark is a cross in a circle: what hangs from a hook.
func crossMark(at Point) []Mark {
	const r = 2
	look := Look{Pen: Wide, Tone: Driveline}
	return []Mark{
		Circle{Look{Pen: Wide, Tone: Driveline, Fill: Paper}, at, r},
		Line(look, at.Plus(Point{-r, -r}), at.Plus(Point{r, r})), Line(look, at.Plus(Point{-r, r}), at.Plus(Point{r, -r})),
	}
}

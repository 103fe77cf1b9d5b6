package drawing

import "slices"

// A key explains the signs of a drawing: those that are in it.
type key struct {
	boundary, joint bool
	levels          []Flag // one of each level that is drawn
}

// flag notes that flags are drawn.
func (k *key) flag(flags []Flag) {
	for _, f := range flags {
		if !slices.ContainsFunc(k.levels, func(seen Flag) bool { return seen.Level == f.Level }) {
			k.levels = append(k.levels, Flag{Level: f.Level})
		}
	}
}

// An entry is one sign with what it means.
type entry struct {
	sign  func(at Point) []Mark // with its left top corner there, as high as a line of lettering
	width float64               // of the sign, mm
	means string
}

func (k *key) entries() []entry {
	var all []entry
	const middle = Lettering * leading / 2
	if k.boundary {
		const long = 14.0
		all = append(all, entry{func(at Point) []Mark {
			return []Mark{Line(boundaryLook, at.Plus(Point{0, middle}), at.Plus(Point{long, middle}))}
		}, long, "between the car, above, and the driveline"})
	}
	if k.joint {
		all = append(all, entry{func(at Point) []Mark {
			return []Mark{jointMark(at.Plus(Point{jointSize, middle}))}
		}, 2 * jointSize, "joint between them"})
	}
	slices.SortFunc(k.levels, func(a, b Flag) int { return int(b.Level) - int(a.Level) })
	for _, f := range k.levels {
		all = append(all, entry{f.marks, flagSize, f.kind()})
	}
	return all
}

// keyMarks explain signs below a height on paper of a width, and tell where that ends.
func keyMarks(entries []entry, y, width float64) ([]Mark, float64) {
	const apart, beside = 7.0, 1.5
	if len(entries) == 0 {
		return nil, y
	}
	var marks []Mark
	at := Point{edgePad, y + cellGap}
	for _, e := range entries {
		room := e.width + beside + Width(e.means, Lettering)
		if at.X > edgePad && at.X+room > width-edgePad {
			at = Point{edgePad, at.Y + Lettering*leading}
		}
		marks = append(marks, e.sign(at)...)
		marks = append(marks, Text{Tone: Quiet, Lines: []string{e.means}, At: at.Plus(Point{X: e.width + beside})})
		at.X += room + apart
	}
	return []Mark{Group{Of: "key", Marks: marks}}, at.Y + Lettering*leading
}

// boundaryLook is how the boundary between car and driveline is drawn: with the chain
// line that encloses an assembly in ISO 1219-1.
var boundaryLook = Look{Pen: Centre, Tone: Driveline}

// jointMark is a joint on the boundary.
func jointMark(at Point) Mark {
	return Circle{Look: Look{Tone: Driveline, Pen: Wide, Fill: Paper}, At: at, Radius: jointSize}
}

package drawing

import (
	"strings"

	"fitup/policies"
)

// A Flag is a finding, or what cannot be told, to be marked where it is.
type Flag struct {
	Sign    string         // by which the sheet's list calls it: "7"; may be empty
	Level   policies.Level // 0 for what cannot be told
	Subject string         // key path, as the document names it
	Says    string         // for the text equivalent
}

// tone of a flag.
func (f Flag) tone() Tone {
	switch f.Level {
	case policies.LevelDanger:
		return Danger
	case policies.LevelFault:
		return Fault
	case policies.LevelAdvice:
		return Advice
	}
	return Unknown
}

// kind is what a flag is, in a word or two.
func (f Flag) kind() string {
	if f.Level == 0 {
		return "cannot tell"
	}
	return f.Level.String()
}

const (
	flagSize = 3.6 // of the shape of a flag, mm
	flagGap  = 1.0 // between shape and sign
)

// width is the room that a flag takes along its line, mm.
func (f Flag) width() float64 { return flagSize + flagGap + Width(f.Sign, Lettering) }

// marks draw a flag with its left top corner at a place, as high as a line of
// lettering. Each level has a shape of its own: a triangle for a danger, a square
// for a fault, a disc for advice, and a query for what cannot be told.
func (f Flag) marks(at Point) []Mark {
	look, r := Look{Tone: f.tone(), Fill: Solid}, flagSize/2
	middle := at.Plus(Point{r, Lettering * leading / 2})
	b := Around(middle, flagSize, flagSize)
	var shape Mark
	switch f.Level {
	case policies.LevelDanger:
		shape = Path{Look: look, Closed: true, Points: []Point{{middle.X, b.Min.Y}, b.Max, {b.Min.X, b.Max.Y}}}
	case policies.LevelFault:
		shape = Rectangle(look, b)
	case policies.LevelAdvice:
		shape = Circle{Look: look, At: middle, Radius: r}
	default:
		shape = Text{Tone: Unknown, Lines: []string{"?"}, At: Point{middle.X, at.Y}, Anchor: Middle}
	}
	marks := []Mark{shape}
	if f.Sign != "" {
		marks = append(marks, Text{Tone: f.tone(), Lines: []string{f.Sign}, At: at.Plus(Point{X: flagSize + flagGap})})
	}
	return []Mark{Group{Of: f.Subject, Marks: marks}}
}

// under picks the flags that are about a path or something below it.
func under(flags []Flag, path string) []Flag {
	var found []Flag
	for _, f := range flags {
		if path != "" && within(f.Subject, path) {
			found = append(found, f)
		}
	}
	return found
}

// within tells whether a key path is another or lies below it.
func within(path, of string) bool {
	rest, found := strings.CutPrefix(path, of)
	return found && (rest == "" || rest[0] == '.' || rest[0] == '#')
}

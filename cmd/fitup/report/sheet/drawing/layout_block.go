package drawing

import "strings"

// A block is lettering with flags below it.
type block struct {
	lines  []string // the first names it
	titles int      // how many of the lines are the name
	flags  [][]Flag // in rows
}

// newBlock letters a name, what belongs to it and its flags. The name may be as wide
// as nameWidth, the rest as width, mm. What belongs to it is broken between the
// pieces that it comes in.
func newBlock(name string, more []string, flags []Flag, nameWidth, width float64) block {
	const most = 3 // lines of a name, and of a piece
	b := block{lines: Wrap(name, nameWidth, Lettering, most)}
	b.titles = len(b.lines)
	line := ""
	for _, piece := range more {
		joined := filled(", ", line, piece)
		if Width(joined, Lettering) > width {
			b.lines = append(b.lines, Wrap(line, width, Lettering, most)...)
			joined = piece
		}
		line = joined
	}
	b.lines = append(b.lines, Wrap(line, width, Lettering, most)...)
	room := 0.0
	for _, f := range flags {
		if w := f.width() + flagGap*2; w <= room {
			last := len(b.flags) - 1
			b.flags[last] = append(b.flags[last], f)
			room -= w
		} else {
			b.flags = append(b.flags, []Flag{f})
			room = width - f.width()
		}
	}
	return b
}

// size is the room that a block takes, mm.
func (b block) size() Point {
	size := Text{Lines: b.lines}.Box().Max
	for _, row := range b.flags {
		size.X = max(size.X, rowWidth(row))
		size.Y += Lettering * leading
	}
	return size
}

func rowWidth(row []Flag) float64 {
	width := -2 * flagGap
	for _, f := range row {
		width += f.width() + 2*flagGap
	}
	return width
}

// marks draw a block with its top at a place, which is its anchor.
func (b block) marks(at Point, anchor Anchor, tone Tone) []Mark {
	var marks []Mark
	for _, text := range []Text{{Tone: tone, Lines: b.lines[:b.titles]}, {Tone: Quiet, Lines: b.lines[b.titles:]}} {
		if len(text.Lines) > 0 {
			text.At, text.Anchor = at, anchor
			marks = append(marks, text)
			at.Y = text.Box().Max.Y
		}
	}
	for _, row := range b.flags {
		x := at.X
		switch anchor {
		case Middle:
			x -= rowWidth(row) / 2
		case End:
			x -= rowWidth(row)
		}
		for _, f := range row {
			marks = append(marks, f.marks(Point{x, at.Y})...)
			x += f.width() + 2*flagGap
		}
		at.Y += Lettering * leading
	}
	return marks
}

// clipped is a name as it is written where there is no room for a second line.
func clipped(name string) string {
	const widest = 40 // mm
	return strings.Join(Wrap(name, widest, Lettering, 1), "")
}

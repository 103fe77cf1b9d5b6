package drawing

import (
	"fmt"
	"slices"
	"strings"
	"unicode"
	"unicode/utf8"

	"fitup/spec/document"
	"fitup/spec/workings"
)

// A scene is a view of a car while it is drawn: what it is drawn from, and what has
// been drawn so far. Labels come last, where the marks have left room.
type scene struct {
	projection
	figures
	doc    *document.Document
	layout workings.Layout
	plate  plate
	out    Drawing
	labels []label
	wanted int // what has to be measured so far
}

// newScene begins a view of the car of a document.
func newScene(d *document.Document, name, view string) scene {
	return scene{
		figures: figuresOf(d), doc: d, layout: workings.LayoutOf(d),
		out: Drawing{Name: name, Title: capital(d.Cars[0].CarHead.Name.V) + " " + view},
	}
}

func (s *scene) car() *document.Car { return &s.doc.Cars[0] }

// add draws a mark.
func (s *scene) add(m Mark) {
	s.out.Marks = append(s.out.Marks, m)
	s.plate.draw(m)
}

// later keeps a label until all marks are drawn.
func (s *scene) later(l label) {
	if l.tone == "" {
		l.tone = Ink
	}
	s.labels = append(s.labels, l)
}

// say adds a sentence to the drawing's text.
func (s *scene) say(format string, args ...any) {
	s.out.Text = append(s.out.Text, fmt.Sprintf(format, args...))
}

// wants says at a place what has to be measured before something can be drawn
// there.
func (s *scene) wants(at Point, what string, paths []string) {
	if len(paths) == 0 {
		return
	}
	of := "measure " + what
	at = at.Plus(Point{0, 7 * float64(s.wanted%4)}) // several may want the same place
	s.wanted++
	s.add(Group{of, []Mark{Circle{Look{Pen: Dashed, Tone: Unknown, Fill: Paper}, at, 2}}})
	s.later(label{of: of, at: at, clear: 2, lines: Wrap("? "+what+": "+measure(paths), 62, Lettering, 6), tone: Unknown, led: true})
	s.say("%s is not known: %s.", capital(what), measure(paths))
}

// calc are the figures of one stage.
func (s *scene) calc(stage string) document.SupportCaseCalc {
	for i := range s.doc.Cases {
		if s.doc.Cases[i].Stage == stage {
			return s.doc.Cases[i].Calc
		}
	}
	return document.SupportCaseCalc{}
}

// isDown tells whether a wheel is left on the floor.
func (s *scene) isDown(wheel workings.Place) bool {
	return len(s.doc.Support) > 0 && slices.Contains(s.doc.Support[0].Wheels.V, wheel.Name)
}

// known is a figure in words, or what has to be measured for it.
func (s *scene) known(f document.Figure, as func(float64) string) string {
	switch {
	case f.Known:
		return guess(f, as(f.Value))
	case len(f.Missing) > 0:
		return measure(f.Missing)
	}
	return "not known"
}

// letter draws the labels. What says least goes last: it has to make do with the
// room that is left.
func (s *scene) letter() {
	slices.SortStableFunc(s.labels, func(a, b label) int { return rank(a) - rank(b) })
	s.out.Marks = append(s.out.Marks, s.plate.letter(s.labels)...)
	s.labels = nil
}

// rank is the order in which labels are placed.
func rank(l label) int {
	word, _, _ := strings.Cut(l.of, " ")
	if l.of == "mass driveline" { // of lesser weight than those of the car
		word = ""
	}
	switch word {
	case "margin":
		return 0
	case "mass", "measure":
		return 1
	case "solid", "origin":
		return 3
	}
	return 2
}

// front is the arrow that points to the front of the car.
func (s *scene) front() {
	tip := Point{laneLeft, 6}
	s.add(Group{"front", []Mark{
		Line(Look{Pen: Wide}, tip, tip.Plus(Point{14, 0})), arrowhead(tip, Point{1, 0}, 1.6, Ink),
		Text{Lines: []string{"front"}, At: tip.Plus(Point{16, -Heading * leading / 2}), Size: Heading},
	}})
	s.say("The front of the car is on the left.")
}

// A sample is a line of the key to a drawing.
type sample struct {
	look Look
	text string
}

// finish closes the drawing with its scale and the key to its lines.
func (s *scene) finish(key []sample) Drawing {
	at := Point{laneLeft, s.plate.frame.Max.Y + 4}
	s.out.Marks = append(s.out.Marks, s.bar(at, s.length()))
	at = at.Plus(Point{0, 6.5})
	for _, k := range key {
		const length = 11
		text := Text{Tone: Quiet, Lines: []string{k.text}, At: at.Plus(Point{length + 1.5, 0})}
		if text.Box().Max.X > PaperWidth {
			at = Point{laneLeft, at.Y + Lettering*leading + 0.5}
			text.At = at.Plus(Point{length + 1.5, 0})
		}
		box := Box{at.Plus(Point{0, 1}), at.Plus(Point{length, 4})}
		s.out.Marks = append(s.out.Marks, Group{"key", []Mark{Rectangle(k.look, box), text}})
		at.X = text.Box().Max.X + 4
	}
	s.out.Size = Point{PaperWidth, at.Y + Lettering*leading + 1}
	s.say("Drawn at a scale of 1:%g on a width of %d mm.", s.reduction, PaperWidth)
	return s.out
}

// where is a place in words, by the car's axes.
func (f figures) where(x, y float64) string {
	return fmt.Sprintf("x %s, y %s", f.metres(x), f.metres(y))
}

// missingOf is what has to be written for places to be known.
func missingOf(places []workings.Place) []string {
	var out []string
	for _, p := range places {
		out = append(out, p.Missing...)
	}
	return unique(out)
}

// unique drops what is said twice.
func unique(words []string) []string {
	var out []string
	for _, w := range words {
		if !slices.Contains(out, w) {
			out = append(out, w)
		}
	}
	return out
}

// capital is text as a sentence begins.
func capital(s string) string {
	r, n := utf8.DecodeRuneInString(s)
	if n == 0 {
		return s
	}
	return string(unicode.ToUpper(r)) + s[n:]
}

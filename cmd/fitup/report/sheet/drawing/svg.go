package drawing

import (
	"bytes"
	_ "embed"
	"fmt"
	"html/template"
	"io"
	"strconv"
	"strings"
	"sync"
)

// SVG writes the drawing: as an element for an HTML page that carries [Style], or
// standalone, as a file of its own. Everything that is not a mark goes through
// html/template, so that a name from a spec stays text.
func (d Drawing) SVG(w io.Writer, standalone bool) error {
	id := "drawing-" + d.Name
	v := view{
		ID: id, Standalone: standalone, Width: number(d.Size.X), Height: number(d.Size.Y),
		Title: printable(d.Title), Text: printable(strings.Join(d.Text, " ")), Elements: elements(d.Marks, id),
		Style: Style,
	}
	var out bytes.Buffer
	if standalone { // html/template would escape the declaration
		out.WriteString("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n")
	}
	if err := page().Execute(&out, v); err != nil {
		return fmt.Errorf("drawing %s: %w", d.Name, err)
	}
	_, err := w.Write(out.Bytes())
	return err
}

//go:embed style.css
var styleSheet string

// Style is the style sheet that a page with drawings has to carry once. Each colour
// is a custom property (--drawing-ink) that a page may set after it; the values are
// for light paper, and for dark where a screen's reader asks for it.
var Style = template.CSS(styleSheet)

// A view is a drawing as the template takes it.
type view struct {
	ID            string
	Standalone    bool
	Width, Height string
	Title, Text   string
	Elements      []element
	Style         template.CSS
}

// An element is one element of SVG: a path where D is set, a circle where R is, a
// line of text where Size is, else a group.
type element struct {
	Class  string
	D      string // of a path
	X, Y   string
	R      string // of a circle
	Line   string // of text
	Length string
	Size   string
	Anchor Anchor
	Turn   string // about its own place
	Of     string // of a group
	Within []element
	Fill   string // the pattern that it is filled with
}

func elements(marks []Mark, drawing string) []element {
	out := make([]element, len(marks))
	for i, m := range marks {
		out[i] = m.element(drawing)
	}
	return out
}

// number is a length in mm to a hundredth.
func number(v float64) string {
	s := strconv.FormatFloat(v, 'f', 2, 64)
	s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	if s == "-0" {
		return "0"
	}
	return s
}

// printable leaves out what XML 1.0 has no way to write.
func printable(s string) string {
	return strings.Map(func(r rune) rune {
		switch {
		case r == '\t', r == '\n', r == '\r', r >= 0x20 && r <= 0xD7FF, r >= 0xE000 && r <= 0xFFFD, r >= 0x10000:
			return r
		}
		return -1
	}, s)
}

func (l Look) element(drawing string) element {
	var class []string
	for _, word := range []string{string(l.Pen), string(l.Tone), string(l.Fill)} {
		if word != "" {
			class = append(class, word)
		}
	}
	e := element{Class: strings.Join(class, " ")}
	if l.Fill == Hatch || l.Fill == Ground {
		e.Fill = "url(#" + drawing + "-" + string(l.Fill) + ")"
	}
	return e
}

func (p Path) element(drawing string) element {
	e := p.Look.element(drawing)
	var d strings.Builder
	for i, at := range p.Points {
		command := " L"
		if i == 0 {
			command = "M"
		}
		d.WriteString(command + number(at.X) + " " + number(at.Y))
	}
	if p.Closed {
		d.WriteString(" Z")
	}
	e.D = d.String()
	return e
}

func (c Circle) element(drawing string) element {
	e := c.Look.element(drawing)
	e.X, e.Y, e.R = number(c.At.X), number(c.At.Y), number(c.Radius)
	return e
}

func (g Group) element(drawing string) element {
	return element{Of: printable(g.Of), Within: elements(g.Marks, drawing)}
}

func (d Dimension) element(drawing string) element {
	return element{Of: "dimension", Within: elements(d.marks(), drawing)}
}

// ascent is where the baseline of a line lies below its top, in sizes.
const ascent = 0.92

func (t Text) element(string) element {
	e := element{Class: string(t.Tone)}
	size := t.size()
	if t.Turned {
		x, y := number(t.At.X), number(t.At.Y)
		e.Within = []element{{
			Line: printable(t.Lines[0]), Length: number(Width(t.Lines[0], size)), Size: number(size), Anchor: Middle,
			X: x, Y: number(t.At.Y + size*(ascent-leading/2)), Turn: "rotate(-90 " + x + " " + y + ")",
		}}
		return e
	}
	anchor := t.Anchor
	if anchor == "" {
		anchor = Start
	}
	for i, line := range t.Lines {
		e.Within = append(e.Within, element{
			Line: printable(line), Length: number(Width(line, size)), Size: number(size), Anchor: anchor,
			X: number(t.At.X), Y: number(t.At.Y + size*(ascent+leading*float64(i))),
		})
	}
	return e
}

// page is parsed when it is first wanted, not at the start of every command.
var page = sync.OnceValue(func() *template.Template {
	return template.Must(template.New("svg").Parse(svgTemplate))
})

//go:embed svg.tmpl
var svgTemplate string

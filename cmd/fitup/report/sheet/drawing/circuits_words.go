package drawing

import (
	"slices"
	"strings"

	"fitup/spec/document"
)

// madeOf is what a line is made of, as its writer put it: size, bore, length and
// kind. A bore that is the size is said once.
func madeOf(l *document.Line) []string {
	var made []string
	size, bore := l.Kind.Size.V, l.Kind.Bore.Text
	if bore != "" && bore != size {
		bore = "bore " + bore
	}
	for _, text := range []string{size, bore, l.Hose.Length.Text, l.Hose.Kind.V} {
		if text != "" && !slices.Contains(made, text) {
			made = append(made, text)
		}
	}
	if len(made) == 0 {
		return []string{"hose not said"}
	}
	return made
}

// filled joins what is not empty.
func filled(with string, words ...string) string {
	var all []string
	for _, w := range words {
		if w != "" {
			all = append(all, w)
		}
	}
	return strings.Join(all, with)
}

// halfWords is one half of a joint: size, thread, gender, form and angle.
func halfWords(h *document.Half) string {
	if h == nil {
		return ""
	}
	thread, bend := "", ""
	if h.Thread != nil && h.Thread.Text != h.Size {
		thread = "(" + h.Thread.Text + ")"
	}
	if h.Bend.Given() && h.Bend.V.SI != 0 {
		bend = h.Bend.Text
	}
	return filled(" ", h.Size, thread, h.Gender.V, h.Form.V, bend)
}

// seatWords is the same without gender and angle, for which a drawing has no room:
// thread and form, or size and form where that is not the size of the line.
func seatWords(h *document.Half, size string) string {
	switch {
	case h == nil:
		return ""
	case h.Thread != nil:
		return filled(" ", h.Thread.Text, h.Form.V)
	case h.Size == size:
		return h.Form.V
	}
	return filled(" ", h.Size, h.Form.V)
}

// details is what is written below a line's name: what it is made of, and its ends.
func (l *circuitLine) details() []string {
	from, to := l.from.seat, l.to.seat
	switch {
	case from == to && from == "":
		return l.made
	case from == to:
		return append(slices.Clone(l.made), from+" ends")
	case from == "" || to == "":
		return append(slices.Clone(l.made), from+to+" end")
	}
	return append(slices.Clone(l.made), "from "+from, "to "+to)
}

// words tell what the drawing of a circuit shows, for somebody who cannot see it.
func (c *circuit) words(placed flagged) []string {
	var all []string
	for i := range c.lines {
		all = append(all, c.lineWords(&c.lines[i])+".")
	}
	for _, f := range placed.all() {
		all = append(all, f.words())
	}
	return all
}

func (c *circuit) lineWords(l *circuitLine) string {
	text := filled(" ", filled(": ", l.name, filled(", ", l.made...)), "from")
	if l.name == "" {
		text = "From"
	}
	text += " " + c.endWords(&l.from) + " to " + c.endWords(&l.to)
	if l.from.across || l.to.across {
		text += ", across the boundary between car and driveline"
	}
	return text
}

func (c *circuit) endWords(e *circuitEnd) string {
	part := c.parts[e.part]
	text := part.name
	if e.port != "" {
		text += ", " + e.port
	}
	if e.half != "" {
		text += " (" + e.half + ")"
	}
	return text
}

// words are the flag as a sentence.
func (f Flag) words() string {
	text := strings.ToUpper(f.kind()[:1]) + f.kind()[1:]
	return filled(" ", text, f.Sign) + " at " + filled(": ", f.Subject, strings.TrimSuffix(f.Says, ".")) + "."
}

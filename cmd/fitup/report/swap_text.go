package report

import "strings"

// SwapText prints a swap for the builder at the bench.
func SwapText(s *Swap, style Style) ([]byte, error) {
	s = s.seen(style.Shown)
	t := textCheck{Style: style, page: &page{width: style.Width, colour: style.Colour}}
	t.para(0, 2, "%s", t.paint(bold, s.headline()))
	colour := ""
	if len(s.Change.Appears)+len(s.Withheld) > 0 {
		colour = red
	}
	t.para(0, 2, "%s", t.paint(colour, s.verdict()))
	for _, danger := range s.dangers() {
		t.para(2, 4, "%s", t.paint(red, danger))
	}
	t.chapters(s.chapters())
	t.gap()
	t.para(0, 0, Closing)
	return []byte(t.String()), nil
}

func (t *textCheck) chapters(all []chapter) {
	for _, c := range all {
		t.gap()
		t.line("%s", t.paint(bold, c.title))
		t.line("%s", strings.Repeat("-", columns(c.title)))
		for i, p := range c.blocks {
			if i > 0 || p.heading != "" {
				t.gap()
			}
			if p.heading != "" {
				t.para(0, 2, "%s:", p.heading)
			}
			for _, r := range p.lines {
				t.para(2, 4, "%s", t.paint(r.colour, r.text))
				for _, note := range r.notes {
					t.para(6, 2, "%s", note)
				}
			}
			for _, f := range p.findings {
				t.finding(f)
			}
		}
	}
}

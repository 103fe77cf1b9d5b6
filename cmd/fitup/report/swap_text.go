package report

import "strings"

// SwapText prints a swap for the builder at the bench.
func SwapText(s *Swap, style Style) ([]byte, error) {
	s = s.seen(style.Shown)
	t := textCheck{Style: style, page: &page{width: style.Width, colour: style.Colour}}
	t.para(0, 2, "%s", t.paint(bold, s.Headline()))
	colour := ""
	if len(s.Change.Appears)+len(s.Withheld) > 0 {
		colour = red
	}
	t.para(0, 2, "%s", t.paint(colour, s.Verdict()))
	for _, danger := range s.dangers() {
		t.para(2, 4, "%s", t.paint(red, danger))
	}
	t.chapters(s.Chapters())
	t.gap()
	t.para(0, 0, Closing)
	return []byte(t.String()), nil
}

func (t *textCheck) chapters(all []Chapter) {
	for _, c := range all {
		t.gap()
		t.line("%s", t.paint(bold, c.Title))
		t.line("%s", strings.Repeat("-", columns(c.Title)))
		for i, p := range c.Blocks {
			if i > 0 || p.Heading != "" {
				t.gap()
			}
			if p.Heading != "" {
				t.para(0, 2, "%s:", p.Heading)
			}
			for _, r := range p.Lines {
				t.para(2, 4, "%s", t.paint(r.colour, r.Text))
				for _, note := range r.Notes {
					t.para(6, 2, "%s", note)
				}
			}
			for _, f := range p.Findings {
				t.finding(f)
			}
		}
	}
}

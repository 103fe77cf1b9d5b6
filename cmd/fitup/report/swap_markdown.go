package report

// SwapMarkdown prints a swap as Markdown. Nothing from a spec can be markup in it.
func SwapMarkdown(s *Swap, _ Style) ([]byte, error) {
	var m markdownCheck
	m.line("## %s", s.Headline())
	m.section("**%s**", s.Verdict())
	if dangers := s.dangers(); len(dangers) > 0 {
		m.WriteByte('\n')
		for _, danger := range dangers {
			m.line("- %s", danger)
		}
	}
	m.chapters(s.Chapters())
	m.section("%s", Closing)
	return []byte(m.String()), nil
}

func (m *markdownCheck) chapters(all []Chapter) {
	for _, c := range all {
		m.section("### %s", c.Title)
		for _, p := range c.Blocks {
			if p.Heading != "" {
				m.section("#### %s", p.Heading)
			}
			m.WriteByte('\n')
			for _, r := range p.Lines {
				m.line("- %s", r.Text)
				for _, note := range r.Notes {
					m.line("  - %s", note)
				}
			}
			for _, f := range p.Findings {
				m.finding(f)
			}
		}
	}
}

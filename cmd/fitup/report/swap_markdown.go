package report

// SwapMarkdown prints a swap as Markdown. Nothing from a spec can be markup in it.
func SwapMarkdown(s *Swap, _ Style) ([]byte, error) {
	var m markdownCheck
	m.line("## %s", s.headline())
	m.section("**%s**", s.verdict())
	if dangers := s.dangers(); len(dangers) > 0 {
		m.WriteByte('\n')
		for _, danger := range dangers {
			m.line("- %s", danger)
		}
	}
	m.chapters(s.chapters())
	m.section("%s", Closing)
	return []byte(m.String()), nil
}

func (m *markdownCheck) chapters(all []chapter) {
	for _, c := range all {
		m.section("### %s", c.title)
		for _, p := range c.blocks {
			if p.heading != "" {
				m.section("#### %s", p.heading)
			}
			m.WriteByte('\n')
			for _, r := range p.lines {
				m.line("- %s", r.text)
				for _, note := range r.notes {
					m.line("  - %s", note)
				}
			}
			for _, f := range p.findings {
				m.finding(f)
			}
		}
	}
}

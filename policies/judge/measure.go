package judge

import (
	"cmp"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
)

// wait notes what a rule waits for. Where either of two fields would do, the
// first is named: it is the one that the rule's author put first.
func (g *gatherer) wait(v *verdict, gap policies.Gap) {
	rule, _ := g.run.Engine.Rule(gap.Rule)
	danger := rule.Level == policies.LevelDanger
	if danger {
		g.report.Unjudged++
	}
	if gap.Collection != "" {
		g.note(v, document.CollectionKey(gap.Collection), rule.ID, danger, false)
		return
	}
	for _, need := range gap.Missing {
		first, _, _ := strings.Cut(need, "|")
		field := v.doc.Resolve(rule.Subject, gap.Subject, first)
		asked := field.Leaf != nil && field.Leaf.Said() == spec.Asked
		for _, path := range field.Missing {
			g.note(v, path, rule.ID, danger, asked)
		}
	}
}

func (g *gatherer) note(v *verdict, path, rule string, danger, asked bool) {
	at := v.locate(path)
	key := at.File + "|" + at.Path
	m := g.measures[key]
	if m == nil {
		m = &Measure{Location: at, Asked: asked}
		g.measures[key] = m
	}
	m.Subjects++
	if !slices.Contains(m.Rules, rule) {
		m.Rules = append(m.Rules, rule)
		if danger {
			m.Dangers++
		}
	}
}

// sortedMeasures puts first what would unlock most: dangers, then rules.
func sortedMeasures(measures map[string]*Measure) []Measure {
	out := make([]Measure, 0, len(measures))
	for _, m := range measures {
		slices.Sort(m.Rules)
		out = append(out, *m)
	}
	slices.SortFunc(out, func(a, b Measure) int {
		return cmp.Or(
			cmp.Compare(b.Dangers, a.Dangers), cmp.Compare(len(b.Rules), len(a.Rules)), cmp.Compare(b.Subjects, a.Subjects),
			strings.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), strings.Compare(a.Path, b.Path),
		)
	})
	return out
}

package judge

import (
	"cmp"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
)

// A want is one key that one rule waits for on one subject.
type want struct {
	Location
	rule          string
	danger, asked bool
}

// wants lists what a rule waits for. Where either of two fields would do, the
// first is named: it is the one that the rule's author put first.
func (v *verdict) wants(rule *policies.Rule, gap policies.Gap) []want {
	danger := rule.Level == policies.LevelDanger
	if gap.Collection != "" {
		return []want{{Location: v.locate(document.CollectionKey(gap.Collection)), rule: rule.ID, danger: danger}}
	}
	var out []want
	for _, need := range gap.Missing {
		first, _, _ := strings.Cut(need, "|")
		field := v.doc.Resolve(rule.Subject, gap.Subject, first)
		asked := field.Leaf != nil && field.Leaf.Said() == spec.Asked
		for _, path := range field.Missing {
			out = append(out, want{v.locate(path), rule.ID, danger, asked})
		}
	}
	return out
}

func (g *gatherer) note(w want) {
	key := w.File + "|" + w.Path
	m := g.measures[key]
	if m == nil {
		m = &Measure{Location: w.Location, Asked: w.asked}
		g.measures[key] = m
	}
	m.Subjects++
	if !slices.Contains(m.Rules, w.rule) {
		m.Rules = append(m.Rules, w.rule)
		if w.danger {
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

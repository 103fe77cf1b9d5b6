package main

import (
	"context"
	"slices"
	"strings"

	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/document"
)

// adapt judges the receiving car once more with the chains of the fit screwed in,
// and adds what is found only then to what the swap brings.
func (m *moving) adapt(ctx context.Context, s *report.Swap, run judge.Run) error {
	with := *m.Received
	with.Adaptors = s.Fit.Adaptors()
	if len(with.Adaptors) == 0 {
		return nil
	}
	judged, err := run.Judge(ctx, []*spec.Composition{&with})
	if err != nil {
		return err
	}
	plain, chained := joined(m.Received, s.Date), joined(&with, s.Date)
	for _, i := range s.Fit.Interfaces {
		if len(with.Adaptors[i.Car]) == 0 {
			continue
		}
		line := i.Car[:strings.LastIndex(i.Car, ".")]
		a := report.Adapted{
			End: i.Car, Estimate: i.Chain.Usual, Lost: lostBetween(plain, chained, line),
			Found: newOn(line, judged, s.Report), Mended: newOn(line, s.Report, judged), Unclear: newlyUnclear(line, judged, s.Report),
		}
		for n := range a.Found {
			if a.Estimate { // it rests on a figure from memory
				a.Found[n].Level = policies.LevelAdvice
			}
			s.Change.Appears = append(s.Change.Appears, judge.Turn{Finding: a.Found[n], Other: judge.Clear})
		}
		s.Adapted = append(s.Adapted, a)
	}
	return nil
}

// lostBetween is what a line loses in one document more than in another, in its
// ends and adaptors; nil if it is not worked out in both.
func lostBetween(less, more *document.Document, line string) *float64 {
	lost := func(d *document.Document) document.Figure {
		i := slices.IndexFunc(d.Lines, func(l document.Line) bool { return l.Path == line })
		return d.Lines[i].Calc.Minor
	}
	one, other := lost(less), lost(more)
	if !one.Known || !other.Known {
		return nil
	}
	by := other.Value - one.Value
	return &by
}

// newOn are the findings about a line that a report holds and another does not.
func newOn(line string, in, notIn *judge.Report) []judge.Finding {
	var found []judge.Finding
	for _, f := range in.Findings {
		known := slices.ContainsFunc(slices.Concat(notIn.Findings, notIn.Waived), func(of judge.Finding) bool { return of.Identity() == f.Identity() })
		if f.Subject == line && !known {
			found = append(found, f)
		}
	}
	return found
}

// newlyUnclear are the rules that cannot tell of a line in one report, and can in
// another.
func newlyUnclear(line string, in, notIn *judge.Report) []string {
	unclear := func(r *judge.Report) []string {
		var rules []string
		for _, account := range r.Accounts {
			for _, j := range account.Said {
				if slices.ContainsFunc(j.Unclear, func(l judge.Key) bool { return l.Path == line }) {
					rules = append(rules, j.Rule)
				}
			}
		}
		return rules
	}
	could := unclear(notIn)
	return slices.DeleteFunc(unclear(in), func(rule string) bool { return slices.Contains(could, rule) })
}

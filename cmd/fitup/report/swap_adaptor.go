package report

import (
	"fmt"
	"slices"
	"strings"

	"fitup/policies/judge"
	"fitup/spec/swap"
	"fitup/spec/unit"
)

// Adapted is a line of the receiving car as it is judged with a chain of adaptors
// in it.
type Adapted struct {
	End      string          // of the line, where the chain is
	Lost     *float64        // pressure that the chain costs at full flow, Pa; nil if it was not worked out
	Estimate bool            // the bore of an adaptor is the usual one, and nobody measured it
	Found    []judge.Finding // what is found only with the chain; of an estimate no more than advice
	Mended   []judge.Finding // what is found only without it
	Unclear  []string        // rules that can tell of the line without the chain only
}

// adaptedAt is what is known of the chain at an end.
func (s *Swap) adaptedAt(end string) (Adapted, bool) {
	i := slices.IndexFunc(s.Adapted, func(a Adapted) bool { return a.End == end })
	if i < 0 {
		return Adapted{}, false
	}
	return s.Adapted[i], true
}

// byAdaptor reports whether a finding is there only because of an adaptor.
func (s *Swap) byAdaptor(f judge.Finding) bool {
	return slices.ContainsFunc(s.Adapted, func(a Adapted) bool {
		return slices.ContainsFunc(a.Found, func(of judge.Finding) bool { return of.Identity() == f.Identity() })
	})
}

// chainNotes say what a chain of adaptors is made of, and what it costs.
func (s *Swap) chainNotes(end string, c *swap.Chain) []string {
	var notes []string
	for _, a := range c.Adaptors {
		from := "in the shop's drawer"
		if !a.Stock {
			from = "to buy"
		}
		text := fmt.Sprintf("%s, %s, %s", a.Name, a.Ends(), from)
		if a.Source != "" {
			text += " (" + SourceShort(a.Source, a.Clause) + ")"
		}
		notes = append(notes, text)
	}
	cost := "it adds " + count(c.Joints, "joint", "joints")
	if c.Adds != nil {
		cost += " and " + unit.Format(*c.Adds, unit.Length, "")
	}
	if c.Bore != nil {
		cost += "; least bore " + unit.Format(*c.Bore, unit.Length, "")
		if c.Usual {
			cost += ", as is usual: measure it"
		}
	}
	notes = append(notes, cost)
	if len(c.Unbored) > 0 {
		notes = append(notes, "bore not known, so what it loses is not: "+strings.Join(c.Unbored, ", "))
	}
	if a, is := s.adaptedAt(end); is {
		notes = append(notes, a.notes()...)
	}
	return notes
}

// notes say what the line rules make of the chain.
func (a Adapted) notes() []string {
	var notes []string
	if a.Lost != nil {
		text := "it loses " + unit.Format(*a.Lost, unit.Pressure, "mbar") + " at full flow"
		if a.Estimate {
			text += ", by usual bores"
		}
		notes = append(notes, text)
	}
	for _, f := range a.Found {
		notes = append(notes, fmt.Sprintf("with it, %s: %s [%s]", f.Level, f.Message, f.Rule))
	}
	for _, f := range a.Mended {
		notes = append(notes, fmt.Sprintf("with it, no longer: %s [%s]", f.Message, f.Rule))
	}
	if len(a.Unclear) > 0 {
		notes = append(notes, "cannot be told with it, for want of its bore: "+strings.Join(a.Unclear, ", "))
	}
	return notes
}

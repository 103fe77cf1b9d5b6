package sheet

import (
	"html/template"
	"slices"

	"fitup/cmd/fitup/report"
	"fitup/cmd/fitup/report/sheet/drawing"
)

// A view is a sheet as the template takes it.
type view struct {
	*Sheet
	Style    template.CSS
	Headline string // what nobody must miss
	Unjudged string
	Closing  string
	Cautions []report.Caution
	Alone    checklist        // what to see to before anything else
	Groups   []group          // of findings
	Gone     []report.Passage // findings that are no more
	Measures []measure
	Runs     []runsOut
	DueTally string

	// Of the work; none of them is there if nothing moves.
	Hanging *report.Chapter // how it stands and hangs
	Unsure  bool            // that is no plan, for want of figures: its drawings are not either
	Figured []found         // about that, on the way: neither before nor after it
	Wanted  []checklist     // parts to make or buy
	Fit     *report.Chapter // interface by interface
	Parts   *report.Chapter // where to part it
	Order   *report.Chapter // why there is no order; nil if there is one
	Ways    []way
	Stored  *checklist // energies, to be let go
	Left    *checklist // how the giving car is left
	Lists   []checklist

	Identity []entry
	Appendix appendix
}

// An entry is a line of a list of facts.
type entry struct{ Label, Text string }

func viewOf(s *Sheet) *view {
	v := &view{
		Sheet: s, Style: template.CSS(styleSheet) + drawing.Style, Closing: report.Closing,
		Headline: report.Tally(s.Check), Unjudged: report.Unjudged(s.Check),
		Cautions: report.CautionsFor(slices.Concat(s.Check.Findings, s.Check.WaivedDangers())),
		Groups:   groupsOf(s.Check), Measures: measuresOf(s.Check), Runs: runsOutOf(s.Due), DueTally: report.DueTally(s.Due),
		Identity: identityOf(s), Appendix: appendixOf(s), Alone: aloneIn(s.Shop),
	}
	if s.Work != nil {
		v.work(s.Work)
	}
	return v
}

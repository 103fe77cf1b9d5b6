package report

import (
	"fmt"
	"reflect"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/document"
	"fitup/spec/swap"
)

// A Swap is what `fitup swap` worked out: a driveline going into a car.
type Swap struct {
	Into, From, Driveline string // files; From is "" for a driveline on the bench
	Occupied              string // driveline that has to come out of Into first; "" for an empty bay
	Date                  time.Time
	Version               string // of the tool
	FailOn                string // fail level that held
	Config                string // configuration file; "" for none

	Fit      *swap.Fit
	Adapted  []Adapted       // lines that a chain of adaptors joins
	Change   *judge.Change   // what the swap does to the findings, its adaptors included
	Report   *judge.Report   // of the cars after it
	Out      *swap.Plan      // how it comes out of From; nil from the bench
	Vacate   *swap.Plan      // how Occupied comes out of Into; nil for an empty bay
	In       *swap.Plan      // how it goes into Into
	Standing []Standing      // each car while its driveline is moved
	Withheld []Withheld      // parts that are no plan, for want of figures
	Figured  []judge.Finding // findings about standing, hanging and rolling, before or after
	Parts    []string        // to print; nil for all

	shown func(file string) string // how a reader calls a file; nil for its name
}

// Standing is a car with the driveline that is moved out of it or into it.
type Standing struct {
	File, What string
	Document   *document.Document
}

// Withheld is a part that is not printed as a plan.
type Withheld struct {
	Part     string
	Why      []string
	Measures []judge.Measure
}

// SwapForms are all forms of a swap.
var SwapForms = []Form[*Swap]{
	{"text", "for a builder at the bench, the evening before", whole(SwapText)},
	{"json", "everything, for programs", whole(SwapJSON)},
	{"markdown", "for a page to print or to comment on", whole(SwapMarkdown)},
}

// Parts of a swap, in the order that they are printed in.
const (
	PartFit      = "fit"
	PartBreaks   = "breaks"
	PartParting  = "parting"
	PartOrder    = "order"
	PartLists    = "lists"
	PartStanding = "standing"
	PartHolds    = "holds"
)

// SwapParts are the names of the parts.
var SwapParts = []string{PartFit, PartBreaks, PartParting, PartOrder, PartLists, PartStanding, PartHolds}

// A Chapter is one part of a swap or comparison as a reader sees it.
type Chapter struct {
	Part   string // of a swap: PartFit and so on; "" for none of its parts
	Title  string
	Blocks []Passage
}

// A Passage is lines, or findings, below a heading.
type Passage struct {
	Heading  string
	Lines    []Remark
	Findings []judge.Finding
}

// A Remark is one line with what hangs under it.
type Remark struct {
	Text  string
	Notes []string

	colour string // at a terminal
}

func remarks(texts ...string) []Remark {
	return each(texts, func(text string) Remark { return Remark{Text: text} })
}

// Chapters lays the parts of a swap out, in their order.
func (s *Swap) Chapters() []Chapter {
	makers := map[string]func() Chapter{
		PartFit: s.fitting, PartBreaks: s.breaking, PartParting: s.parting, PartOrder: s.ordering,
		PartLists: s.listing, PartStanding: s.standing, PartHolds: s.holding,
	}
	var all []Chapter
	for _, name := range SwapParts {
		if len(s.Parts) > 0 && !slices.Contains(s.Parts, name) {
			continue
		}
		made := makers[name]()
		made.Part = name
		if i := slices.IndexFunc(s.Withheld, func(w Withheld) bool { return w.Part == name }); i >= 0 {
			made.Blocks = s.withheld(s.Withheld[i])
			if as := slices.IndexFunc(all, func(c Chapter) bool { return reflect.DeepEqual(c.Blocks, made.Blocks) }); as >= 0 {
				made.Blocks = []Passage{{Heading: withheldHeading, Lines: remarks("for the reasons given for the " + strings.ToLower(all[as].Title))}}
			}
		}
		all = append(all, made)
	}
	if rest := s.lessThanAll(); len(rest.Blocks) > 0 {
		all = append(all, rest)
	}
	return all
}

// lessThanAll says why the judgement is less than it could be, whatever parts are
// printed.
func (s *Swap) lessThanAll() Chapter {
	c := Chapter{Title: "What the judgement is the less for"}
	c.add("Taken away from it", TakenAway(s.Report.Taken))
	c.add("Broken rules", each(s.Report.Faults, func(f policies.Fault) string { return strings.TrimPrefix(f.Rule+": "+f.Message, ": ") }))
	return c
}

const withheldHeading = "Not printed as a plan"

// withheld says why a part is no plan, and what to measure.
func (s *Swap) withheld(w Withheld) []Passage {
	why := Passage{Heading: withheldHeading}
	why.Lines = remarks(w.Why...)
	measure := Passage{Heading: "What to measure, most wanted first"}
	for i, m := range w.Measures {
		if i == measuresShown {
			measure.Lines = append(measure.Lines, Remark{Text: fmt.Sprintf("and %d more", len(w.Measures)-i)})
			break
		}
		measure.Lines = append(measure.Lines, Remark{Text: s.place(m.Location) + " " + m.Path + ": " + Waits(m)})
	}
	return []Passage{why, measure}
}

// IsWithheld tells whether a part is not printed as a plan, for want of figures.
func (s *Swap) IsWithheld(part string) bool {
	return slices.ContainsFunc(s.Withheld, func(w Withheld) bool { return w.Part == part })
}

// Headline says what moves.
func (s *Swap) Headline() string {
	from := s.called(s.From)
	if from == "" {
		from = "the bench"
	}
	text := fmt.Sprintf("%s from %s into %s", s.called(s.Driveline), from, s.called(s.Into))
	if s.Occupied != "" {
		text += ", from which " + s.called(s.Occupied) + " has to come out first"
	}
	return text
}

// brings counts the findings that the swap brings, of a level.
func (s *Swap) brings(level policies.Level) int {
	n := 0
	for _, turn := range s.Change.Appears {
		if turn.Level == level {
			n++
		}
	}
	return n
}

// Verdict is the line that nobody must miss.
func (s *Swap) Verdict() string {
	text := fmt.Sprintf("The swap brings %s, %s and %s", count(s.brings(policies.LevelDanger), "danger", "dangers"),
		count(s.brings(policies.LevelFault), "fault", "faults"), count(s.brings(policies.LevelAdvice), "piece of advice", "pieces of advice"))
	if n := len(s.Withheld); n > 0 {
		text += fmt.Sprintf("; %s not printed as a plan: see what to measure", count(n, "part is", "parts are"))
	}
	return text + "."
}

// dangers are the findings that nobody must miss, a line each.
func (s *Swap) dangers() []string {
	var all []string
	for _, turn := range s.Change.Appears {
		if turn.Level == policies.LevelDanger {
			all = append(all, fmt.Sprintf("%s danger: %s [%s]", s.place(turn.Location), turn.Message, turn.Rule))
		}
	}
	return all
}

// called is what a reader calls a file.
func (s *Swap) called(file string) string {
	if s.shown == nil || file == "" {
		return file
	}
	return s.shown(file)
}

// place is a place as a reader's editor follows it.
func (s *Swap) place(l judge.Location) string {
	l.File = s.called(l.File)
	return PlaceText(l)
}

// seen is a swap with its files called as a reader calls them.
func (s *Swap) seen(shown func(file string) string) *Swap {
	seen := *s
	seen.shown = shown
	return &seen
}

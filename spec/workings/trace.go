package workings

import (
	"fitup/spec/document"
	"fitup/spec/unit"
)

// A Working is one computed number, as an engineer's notebook would show it.
type Working struct {
	Subject   string         `json:"subject"` // document path: "lines.fuel-feed"
	Name      string         `json:"name"`    // the figure's name there: "velocity"
	Value     float64        `json:"value"`   // SI; 0 unless Known
	Known     bool           `json:"known"`
	Dimension unit.Dimension `json:"dimension"`
	Unit      string         `json:"unit,omitempty"` // of the input written most like it; "" for the usual one
	Formula   string         `json:"formula"`        // "v = 4 Q / (π d²)"
	Inputs    []Input        `json:"inputs"`
	Source    string         `json:"source"` // key of policies/tables/sources
	Clause    string         `json:"clause,omitempty"`
	Missing   []string       `json:"missing,omitempty"` // document paths still to be written
	Guessed   bool           `json:"guessed,omitempty"`
	Note      string         `json:"note,omitempty"` // assumptions, validity, scatter
}

// An Input is one number that a working rests on: written in a spec, worked out
// before, or taken from a table.
type Input struct {
	Symbol    string         `json:"symbol"`
	Path      string         `json:"path,omitempty"` // where it is written; "" for a table's
	Value     float64        `json:"value"`          // SI; 0 for a position and for an unknown one
	Known     bool           `json:"known"`
	At        []float64      `json:"at,omitempty"` // a position, m
	Dimension unit.Dimension `json:"dimension,omitempty"`
	Unit      string         `json:"unit,omitempty"` // as written
	Text      string         `json:"text,omitempty"` // as written
	Guess     bool           `json:"guess,omitempty"`
	Source    string         `json:"source,omitempty"` // of a table's figure
	Clause    string         `json:"clause,omitempty"`

	missing []string // what would have to be written for it to be known
	guesses []string // the guesses that it is or rests on
	asked   bool     // written "?": it matters
}

// A Trace lists the workings of a document in the order in which they were done.
type Trace []Working

// Derive works out every figure of a document, fills them in, and returns the
// workings. What cannot be known for want of an input is left unknown, with the
// paths that would have to be written; what a formula refuses is left unknown
// with the reason as a note.
func Derive(d *document.Document) Trace {
	n := newNotebook(d)
	n.cars()
	n.axleLoads()
	n.engines()
	n.fuel()
	n.tunes()
	n.clutches()
	n.gearboxes()
	n.oil()
	n.cooling()
	n.lines()
	n.feed()
	n.joints()
	n.mounts()
	n.fastenings()
	n.shafts()
	n.circuits()
	n.electrics()
	n.support()
	n.lifting()
	n.dates()
	n.lives()
	n.parts()
	return n.trace
}

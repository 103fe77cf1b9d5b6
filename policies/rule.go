package policies

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
)

// A Rule is what its METADATA says of it.
type Rule struct {
	ID          string // AREA.NAME
	Area, Name  string
	Title       string
	Description string // why it matters
	Level       Level  // the highest of its cases, if it has cases
	Message     string // a template over Figures; empty if the rule has cases
	Cases       map[string]Case
	Subject     string   // the collection of the document that it judges
	Stages      []string // in which it holds
	Figures     map[string]Figure
	Fix         string
	Caution     string
	Rulebook    string // "workshop", or the rulebook that it comes from
	Confidence  Confidence
	Basis       Basis // of a danger
	Waivable    bool
	Formerly    []string // ids that it had before
	Sources     []Source
	Limits      map[string]Limit
	File        string // as it was loaded
	Own         bool   // a workshop's own rule
}

// A Case is one of several things that a rule may find.
type Case struct {
	Level   Level  `yaml:"level"`
	Message string `yaml:"message"`
	Caution string `yaml:"caution"`
}

// Case returns what the rule says in the named case, or in the only one that it
// has if the name is empty. The second result is false if there is no such case.
func (r *Rule) Case(name string) (Case, bool) {
	if name == "" && r.Cases == nil {
		return Case{Level: r.Level, Message: r.Message, Caution: r.Caution}, true
	}
	c, ok := r.Cases[name]
	c.Caution = cmp.Or(c.Caution, r.Caution)
	return c, ok
}

// CaseNames returns the names of the rule's cases, sorted; a rule without cases
// has the one case "".
func (r *Rule) CaseNames() []string {
	if r.Cases == nil {
		return []string{""}
	}
	return slices.Sorted(maps.Keys(r.Cases))
}

// A Figure is a value that a finding carries.
type Figure struct {
	// Dimension is that of a quantity in SI units, by its name in package unit,
	// or one of text, number, date and path.
	Dimension string `yaml:"dimension"`
	// Like is the field of the subject whose written unit the figure is printed
	// in, or several joined by `|`, of which the first that is written counts. If
	// empty, it is printed in the unit that the car prefers.
	Like string `yaml:"like"`
	// Unit is the unit that the figure is printed in, whatever anybody wrote: "%" for
	// a share, mm for a gap. It leaves nothing for Like to say.
	Unit string `yaml:"unit"`
}

// A Source is what a rule rests on: a key of package tables and the place in it.
type Source struct {
	Key    string `yaml:"ref"`
	Clause string `yaml:"description"`
}

// Level says how much a finding matters.
type Level int

const (
	LevelAdvice Level = iota + 1 // good practice
	LevelFault                   // will not fit, leaks, breaks or fails inspection
	LevelDanger                  // can hurt someone
)

var levels = []string{LevelAdvice: "advice", LevelFault: "fault", LevelDanger: "danger"}

func (l Level) String() string { return levels[l] }

// MarshalText writes the level as its name.
func (l Level) MarshalText() ([]byte, error) { return []byte(l.String()), nil }

// UnmarshalText reads a level by its name.
func (l *Level) UnmarshalText(text []byte) error {
	i := slices.Index(levels, string(text))
	if i < 1 {
		return fmt.Errorf("%q is no level: write danger, fault or advice", text)
	}
	*l = Level(i)
	return nil
}

// Confidence is the weakest of what a rule rests on.
type Confidence string

const (
	Published Confidence = "published" // a source that can be looked up
	Practice  Confidence = "practice"  // the trade does so, without a source
	Memory    Confidence = "memory"    // a figure that was not looked up
)

// Basis says whether a danger turns on a figure.
type Basis string

const (
	Threshold Basis = "threshold" // a limit was passed
	Hazard    Basis = "hazard"    // the thing itself, with no figure in dispute
)

// Stages are the states of a car that a rule may hold in, in the order that a
// car goes through them.
var Stages = []string{
	"rolling", "raised", "hoisting", "hanging", "out_raised", "out_stored",
	"trial_fit", "joined", "filled", "first_start", "event",
}

// Workshop is the rulebook that every car is held to.
const Workshop = "workshop"

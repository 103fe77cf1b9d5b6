package sheet

import (
	"fmt"

	"fitup/cmd/fitup/report"
)

// A checklist is lines to tick off.
type checklist struct {
	Heading string
	Lines   []tick
}

// A tick is one line of a checklist.
type tick struct {
	ID    string // of its box
	Text  string
	Notes []string
}

// add adds a line to a list whose boxes are called so.
func (c *checklist) add(of, text string, notes ...string) {
	c.Lines = append(c.Lines, tick{fmt.Sprintf("%s-%d", of, len(c.Lines)+1), text, notes})
}

// checklists makes lists of passages, with boxes called so.
func checklists(of string, passages []report.Passage) []checklist {
	var all []checklist
	for i, p := range passages {
		list := checklist{Heading: p.Heading}
		for _, r := range p.Lines {
			list.add(fmt.Sprintf("%s-%d", of, i+1), r.Text, r.Notes...)
		}
		all = append(all, list)
	}
	return all
}

// aloneIn is what to see to before anybody goes under a car.
func aloneIn(s Shop) checklist {
	list := checklist{Heading: "You work alone"}
	if s.Company {
		list.Heading = "Whoever works on it"
	}
	bottle := s.Extinguisher
	if bottle == "" {
		bottle = "where, is not written in the shop file"
	}
	list.add("alone", "somebody knows that you are under it, and when to come and look")
	list.add("alone", "a charged phone lies within reach of the floor")
	list.add("alone", "the extinguisher is within reach: "+bottle)
	return list
}

// storedOf are the energies to let go.
func storedOf(w *report.Swap) *checklist {
	list := &checklist{Heading: "Stored energy, let go and proved gone before a joint is opened"}
	for _, e := range w.Energies() {
		list.add("stored", e.File+": "+e.What+": "+e.LetGo, "proved: "+e.Proved)
	}
	return list
}

// leftOf is how a car is left that has given its driveline away; nil where it gets
// it back.
func leftOf(w *report.Swap) *checklist {
	if w.Out == nil || w.Out == w.In {
		return nil
	}
	list := &checklist{Heading: "How " + w.From + " is left"}
	for _, c := range w.Out.Finish {
		list.add("left", report.CheckText(c))
	}
	return list
}

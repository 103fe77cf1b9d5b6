package sheet

import (
	"strconv"

	"fitup/cmd/fitup/report"
	"fitup/cmd/fitup/report/sheet/drawing"
	"fitup/spec/document"
	"fitup/spec/swap"
)

// A Stood is a car while its driveline is moved.
type Stood struct {
	report.Standing
	Name string     // "giving", where there are several; else ""
	Out  *swap.Plan // how its driveline comes out; nil if none does
}

// Draw makes the drawings: of each car as its driveline is moved, of where it is
// parted, and of the circuits of the car with the driveline in it.
func (s *Sheet) Draw(stood []Stood, fitted Composed) {
	for _, st := range stood {
		add := func(to *[]drawing.Drawing, d drawing.Drawing) {
			if st.Name != "" {
				d.Name = st.Name + "-" + d.Name
			}
			*to = append(*to, d)
		}
		for _, look := range []func(*document.Document) (drawing.Drawing, bool){drawing.Plan, drawing.Side} {
			if d, ok := look(st.Document); ok {
				add(&s.Standing, d)
			}
		}
		if st.Out != nil {
			add(&s.Parting, drawing.Boundary(st.Document, st.Out))
			if next, ok := drawing.NextBest(st.Document, st.Out); ok {
				add(&s.Parting, next)
			}
		}
	}
	s.Circuits = drawing.Circuits(fitted.Document, s.flags(fitted))
}

// flags are the findings and the keys to measure as they are marked in the drawings
// of a document: with the numbers that they have on the sheet.
func (s *Sheet) flags(fitted Composed) []drawing.Flag {
	var all []drawing.Flag
	for _, n := range Number(s.Check) {
		if _, is := fitted.Prefix[n.File]; is {
			all = append(all, drawing.Flag{Sign: strconv.Itoa(n.Number), Level: n.Level, Subject: n.Subject, Says: n.Message})
		}
	}
	for _, m := range s.Check.Measures {
		if prefix, is := fitted.Prefix[m.File]; is {
			all = append(all, drawing.Flag{Subject: prefix + m.Path})
		}
	}
	return all
}

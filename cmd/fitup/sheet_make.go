package main

import (
	"bytes"
	"fmt"
	"slices"
	"strings"
	"time"

	"fitup/cmd/fitup/fleet"
	"fitup/cmd/fitup/report"
	"fitup/cmd/fitup/report/sheet"
	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/swap"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// making is what sheets are made by.
type making struct {
	judging
	by time.Time // last day to look ahead to for what runs out
}

// ofCar makes the sheet of one car, of which the driveline comes out and goes back
// in.
func (m making) ofCar(path, configFile string) (*sheet.Sheet, error) {
	specs, err := fleet.Open([]string{path}, configFile)
	if err != nil {
		return nil, err
	}
	if err := wrongIn(specs); err != nil {
		return nil, err
	}
	if len(specs.Compositions) != 1 || specs.Compositions[0].Car == nil {
		return nil, callErrorf("%s: this is not the file of a car; give that of one, or --driveline FILE --into CAR", path)
	}
	car := specs.Compositions[0]
	engine, err := specs.Config.Engine(m.ctx, m.choice)
	if err != nil {
		return nil, err
	}
	run := judge.Run{Engine: engine, Date: m.date, Heard: m.heard}
	found, err := run.Judge(m.ctx, specs.Compositions)
	if err != nil {
		return nil, err
	}
	found.Take(specs.Config.Taken(engine, m.choice))
	s := m.begin(specs, found, specs.Compositions, specs.Compositions)
	s.Title = called(car.Car)
	doc := joined(car, m.date)
	stood := sheet.Stood{Standing: report.Standing{File: car.Car.Name, Document: doc}}
	if car.Driveline == nil {
		s.NoWork = "there is no driveline in the car"
	} else {
		s.Title += ", with " + called(car.Driveline) + " in it"
		stood.What = "giving " + car.Driveline.Name
		if stood.Out, err = swap.NewPlan(car, doc, swap.Options{Weights: specs.Config.Effort}); err != nil {
			s.NoWork = err.Error()
		} else {
			s.Work = m.outAndIn(car, stood, found, engine)
		}
	}
	s.Draw([]sheet.Stood{stood}, composed(car, doc))
	return s, nil
}

// outAndIn is the move of a driveline out of a car and back in.
func (m making) outAndIn(c *spec.Composition, stood sheet.Stood, found *judge.Report, engine *policies.Engine) *report.Swap {
	w := &report.Swap{
		From: c.Car.Name, Into: c.Car.Name, Driveline: c.Driveline.Name, Date: m.date,
		Report: found, Fit: &swap.Fit{}, Change: &judge.Change{}, Out: stood.Out, In: stood.Out, Standing: []report.Standing{stood.Standing}, Figured: figured(found),
		Parts: []string{report.PartParting, report.PartOrder, report.PartLists, report.PartStanding, report.PartHolds},
	}
	w.Withheld = withheld(w, engine, found)
	return w
}

// ofSwap makes the sheet of a swap.
func (m making) ofSwap(o swapOptions) (*sheet.Sheet, error) {
	move, err := o.findMove()
	if err != nil {
		return nil, err
	}
	w, _, err := move.judge(m.judging)
	if err != nil {
		return nil, err
	}
	s := m.begin(move.specs, w.Report, move.after(), move.way())
	s.Work = w
	from := "the bench"
	if move.From != nil {
		from = called(move.From.Car)
	}
	s.Title = fmt.Sprintf("%s from %s into %s", called(move.Driveline), from, called(move.Into.Car))
	stood := standingIn(w)
	s.Draw(stood, composed(move.Received, stood[len(stood)-1].Document))
	return s, nil
}

// standingIn are the cars of a swap in the order in which it comes to them, the
// receiving one last.
func standingIn(w *report.Swap) []sheet.Stood {
	all := []sheet.Stood{{Name: "giving", Out: w.Out}, {Name: "vacating", Out: w.Vacate}, {Name: "receiving"}}
	all = slices.DeleteFunc(all, func(st sheet.Stood) bool { return st.Out == nil && st.Name != "receiving" })
	for i := range all {
		all[i].Standing = w.Standing[i]
	}
	return all
}

// begin makes what sheets of all kinds have: after are the compositions as they
// will be, worked those of which all figures are printed.
func (m making) begin(specs *fleet.Selection, found *judge.Report, after, worked []*spec.Composition) *sheet.Sheet {
	found.Read, found.Notes = specs.Read, specs.Notes
	s := &sheet.Sheet{
		Check: &report.Check{
			Report: found, Version: version(), Config: specs.Config.Name, ConfigDigest: specs.Config.Digest,
			FailOn: string(specs.Config.Fails(m.choice)), Rules: len(found.Asked),
		},
		Due: judge.DueBy(after, m.date, m.by),
	}
	for _, c := range slices.Concat(after, worked) {
		for _, f := range []*spec.File{c.Car, c.Driveline, c.Shop} {
			if f != nil && !slices.Contains(s.Files, f.Name) {
				s.Files = append(s.Files, f.Name)
			}
		}
		if c.Shop != nil {
			s.Shop.Company = c.Shop.Shop.Shop.Works.V == "with a second person"
			s.Shop.Extinguisher = c.Shop.Shop.Shop.Extinguisher.V
		}
	}
	s.Revision = revision(specs.Tree, s.Files)
	for _, c := range worked {
		book := sheet.Notebook{Composed: composed(c, document.Join(c, m.date)), Of: called(c.Car)}
		if c.Driveline != nil {
			book.Of += " with " + called(c.Driveline)
		}
		book.Trace = workings.Derive(book.Document)
		s.Notebooks = append(s.Notebooks, book)
	}
	return s
}

// composed is a composition with its document.
func composed(c *spec.Composition, doc *document.Document) sheet.Composed {
	f := sheet.Composed{Document: doc, Prefix: map[string]string{}}
	for _, part := range []struct {
		file   *spec.File
		prefix string
	}{{c.Car, ""}, {c.Driveline, "driveline."}, {c.Shop, "shop."}} {
		if part.file != nil {
			f.Prefix[part.file.Name] = part.prefix
		}
	}
	return f
}

// called is what the outfit calls a car or driveline.
func called(f *spec.File) string {
	name := f.Name
	switch {
	case f.Car != nil:
		name = f.Car.Car.Name.Or(name)
	case f.Driveline != nil:
		name = f.Driveline.Driveline.Name.Or(name)
	}
	return name
}

// revision says which revision of git files are of, and which of them are not as
// they were committed.
func revision(t *tree.Tree, files []string) string {
	repository, err := tree.OpenRepository(t.Root)
	if err != nil {
		return "no revision: not in git"
	}
	defer repository.Close()
	head, id, err := repository.Revision("HEAD")
	if err != nil {
		return "no revision: nothing is committed"
	}
	var other []string
	for _, name := range files {
		was, bad := head.Read(name)
		is, err := t.Read(name)
		if bad != nil || err != nil || !bytes.Equal(was, is) {
			other = append(other, name)
		}
	}
	text := "revision " + id[:12]
	if len(other) > 0 {
		text += ", not as committed: " + strings.Join(other, ", ")
	}
	return text
}

package report

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/spec/swap"
	"fitup/spec/unit"
)

// verdictOrder is that of the fit: what asks for work first.
var verdictOrder = []swap.Verdict{swap.Fouls, swap.MustBeMade, swap.Missing, swap.CannotTell, swap.WithAdaptor, swap.LeftOver, swap.Meets}

var verdictColours = map[swap.Verdict]string{
	swap.Fouls: red, swap.MustBeMade: magenta, swap.Missing: magenta, swap.CannotTell: magenta, swap.WithAdaptor: bold,
}

func (s *Swap) fitting() Chapter {
	c := Chapter{Title: "Fit"}
	var tallied []string
	for _, v := range verdictOrder {
		if n := s.Fit.Count(v); n > 0 {
			tallied = append(tallied, fmt.Sprintf("%s %d", v, n))
		}
	}
	total := count(len(s.Fit.Interfaces), "interface", "interfaces") + ": " + strings.Join(tallied, ", ")
	c.Blocks = append(c.Blocks, Passage{Lines: remarks(total)})
	for _, v := range verdictOrder {
		p := Passage{Heading: strings.ToUpper(string(v[:1])) + string(v[1:])}
		var short []string // of what needs no more said, by kind
		for _, i := range s.Fit.Interfaces {
			switch {
			case i.Verdict != v:
			case v == swap.Meets && len(i.Why) == 0, v == swap.LeftOver && i.Kind == swap.PinKind:
				if len(short) > 0 && strings.HasPrefix(short[len(short)-1], i.Kind+": ") {
					short[len(short)-1] += ", " + shortName(i.Name)
				} else {
					short = append(short, i.Kind+": "+shortName(i.Name))
				}
			default:
				p.Lines = append(p.Lines, s.interfaceRemark(i))
			}
		}
		p.Lines = append(p.Lines, remarks(short...)...)
		if len(p.Lines) > 0 {
			c.Blocks = append(c.Blocks, p)
		}
	}
	return c
}

// shortName is a name without the file that it is in.
func shortName(name string) string { return strings.TrimPrefix(name, "driveline.") }

func (s *Swap) interfaceRemark(i swap.Interface) Remark {
	r := Remark{Text: i.Kind + " " + shortName(i.Name), colour: verdictColours[i.Verdict]}
	if i.Car != "" && i.Car != i.Name {
		r.Text += " (" + i.Car + ")"
	}
	if len(i.Why) > 0 {
		r.Text += ": " + strings.Join(i.Why, "; ")
	}
	if i.Chain != nil {
		r.Notes = s.chainNotes(i.Car, i.Chain)
	}
	var figures []string
	for _, f := range i.Figures {
		figures = append(figures, f.Name+" "+unit.Format(f.Value, f.Dimension, ""))
	}
	if len(figures) > 0 && i.Kind != swap.RoomKind { // whose figure is in its reason
		r.Notes = append(r.Notes, strings.Join(figures, ", "))
	}
	return r
}

func (s *Swap) breaking() Chapter {
	c := Chapter{Title: "Breaks"}
	appears, adapted := Passage{Heading: "Appear because of the swap"}, Passage{Heading: "Appear because of an adaptor"}
	for _, level := range []policies.Level{policies.LevelDanger, policies.LevelFault, policies.LevelAdvice} {
		for _, turn := range s.Change.Appears {
			into := &appears
			if s.byAdaptor(turn.Finding) {
				into = &adapted
			}
			if turn.Level == level {
				into.Findings = append(into.Findings, turn.Finding)
			}
		}
	}
	if len(appears.Findings) == 0 {
		appears.Lines = remarks("nothing")
	}
	stays := Passage{Heading: "As before"}
	check := Check{Report: s.Report}
	for _, f := range check.Staying() {
		stays.Lines = append(stays.Lines, Remark{Text: fmt.Sprintf("%s %s: %s [%s]", s.place(f.Location), f.Level, f.Message, f.Rule)})
	}
	waived := Passage{Heading: "Dangers set aside by a waiver"}
	for _, f := range check.WaivedDangers() {
		waived.Lines = append(waived.Lines, Remark{Text: fmt.Sprintf("%s: %s [%s]: until %s: %s", s.place(f.Location), f.Message, f.Rule, f.Waiver.Until.Format(time.DateOnly), f.Waiver.Why)})
	}
	for _, p := range slices.Concat([]Passage{appears, adapted}, s.Gone(), []Passage{stays, waived}) {
		if len(p.Lines)+len(p.Findings) > 0 {
			c.Blocks = append(c.Blocks, p)
		}
	}
	return c
}

// Gone are the findings that were there before the swap and are not after it.
func (s *Swap) Gone() []Passage {
	mended, lost := Passage{Heading: "Mended"}, Passage{Heading: "Gone, but not mended"}
	for _, turn := range s.Change.Goes {
		text := fmt.Sprintf("%s %s: %s [%s]", s.place(turn.Location), turn.Level, turn.Message, turn.Rule)
		if turn.Other == judge.Clear {
			mended.Lines = append(mended.Lines, Remark{Text: text})
		} else {
			lost.Lines = append(lost.Lines, Remark{Text: string(turn.Other) + ": " + text})
		}
	}
	return slices.DeleteFunc([]Passage{mended, lost}, func(p Passage) bool { return len(p.Lines) == 0 })
}

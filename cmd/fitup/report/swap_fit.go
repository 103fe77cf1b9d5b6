package report

import (
	"fmt"
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
	swap.Fouls: red, swap.MustBeMade: yellow, swap.Missing: yellow, swap.CannotTell: yellow, swap.WithAdaptor: cyan,
}

func (s *Swap) fitting() chapter {
	c := chapter{title: "Fit"}
	var tallied []string
	for _, v := range verdictOrder {
		if n := s.Fit.Count(v); n > 0 {
			tallied = append(tallied, fmt.Sprintf("%s %d", v, n))
		}
	}
	total := count(len(s.Fit.Interfaces), "interface", "interfaces") + ": " + strings.Join(tallied, ", ")
	c.blocks = append(c.blocks, passage{lines: remarks(total)})
	for _, v := range verdictOrder {
		p := passage{heading: strings.ToUpper(string(v[:1])) + string(v[1:])}
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
				p.lines = append(p.lines, interfaceRemark(i))
			}
		}
		p.lines = append(p.lines, remarks(short...)...)
		if len(p.lines) > 0 {
			c.blocks = append(c.blocks, p)
		}
	}
	return c
}

// shortName is a name without the file that it is in.
func shortName(name string) string { return strings.TrimPrefix(name, "driveline.") }

func interfaceRemark(i swap.Interface) remark {
	r := remark{text: i.Kind + " " + shortName(i.Name), colour: verdictColours[i.Verdict]}
	if i.Car != "" && i.Car != i.Name {
		r.text += " (" + i.Car + ")"
	}
	if len(i.Why) > 0 {
		r.text += ": " + strings.Join(i.Why, "; ")
	}
	if i.Chain != nil {
		r.notes = chainNotes(i.Chain)
	}
	var figures []string
	for _, f := range i.Figures {
		figures = append(figures, f.Name+" "+unit.Format(f.Value, f.Dimension, ""))
	}
	if len(figures) > 0 && i.Kind != swap.RoomKind { // whose figure is in its reason
		r.notes = append(r.notes, strings.Join(figures, ", "))
	}
	return r
}

// chainNotes say what a chain of adaptors is made of, and what it costs.
func chainNotes(c *swap.Chain) []string {
	var notes []string
	for _, a := range c.Adaptors {
		from := "in the shop's drawer"
		if !a.Stock {
			from = "to buy"
		}
		text := fmt.Sprintf("%s, %s, %s", a.Name, a.Ends(), from)
		if a.Source != "" {
			text += " (" + sourceShort(a.Source, a.Clause) + ")"
		}
		notes = append(notes, text)
	}
	cost := "it adds " + count(c.Joints, "joint", "joints")
	if c.Adds != nil {
		cost += " and " + unit.Format(*c.Adds, unit.Length, "")
	}
	if c.Bore != nil {
		cost += "; least bore " + unit.Format(*c.Bore, unit.Length, "")
	}
	return append(notes, cost)
}

func (s *Swap) breaking() chapter {
	c := chapter{title: "Breaks"}
	appears := passage{heading: "Appear because of the swap"}
	for _, level := range []policies.Level{policies.LevelDanger, policies.LevelFault, policies.LevelAdvice} {
		for _, turn := range s.Change.Appears {
			if turn.Level == level {
				appears.findings = append(appears.findings, turn.Finding)
			}
		}
	}
	if len(appears.findings) == 0 {
		appears.lines = remarks("nothing")
	}
	mended, lost := passage{heading: "Mended"}, passage{heading: "Gone, but not mended"}
	for _, turn := range s.Change.Goes {
		text := fmt.Sprintf("%s %s: %s [%s]", s.place(turn.Location), turn.Level, turn.Message, turn.Rule)
		if turn.Other == judge.Clear {
			mended.lines = append(mended.lines, remark{text: text})
		} else {
			lost.lines = append(lost.lines, remark{text: string(turn.Other) + ": " + text})
		}
	}
	stays := passage{heading: "As before"}
	check := Check{Report: s.Report}
	for _, f := range check.staying() {
		stays.lines = append(stays.lines, remark{text: fmt.Sprintf("%s %s: %s [%s]", s.place(f.Location), f.Level, f.Message, f.Rule)})
	}
	waived := passage{heading: "Dangers set aside by a waiver"}
	for _, f := range check.waivedDangers() {
		waived.lines = append(waived.lines, remark{text: fmt.Sprintf("%s: %s [%s]: until %s: %s", s.place(f.Location), f.Message, f.Rule, f.Waiver.Until.Format(time.DateOnly), f.Waiver.Why)})
	}
	for _, p := range []passage{appears, mended, lost, stays, waived} {
		if len(p.lines)+len(p.findings) > 0 {
			c.blocks = append(c.blocks, p)
		}
	}
	return c
}

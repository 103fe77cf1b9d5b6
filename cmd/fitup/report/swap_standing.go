package report

import (
	"fmt"
	"strings"

	"fitup/spec/document"
	"fitup/spec/unit"
)

// Stages of a car that somebody is beside or under while it is worked on.
var standingStages = []struct{ stage, text string }{
	{document.Raised, "driveline in"},
	{document.Hoisting, "while the hook takes the weight, at its worst"},
	{document.OutRaised, "driveline out"},
}

// notLookedAt is what no figure of a spec can tell.
var notLookedAt = []string{
	"the floor under each stand, and whether the stands' feet lie flat",
	"cracks, bent parts and welds of stands, hoist, sling, eyes and dolly",
	"whether the hook is where the figures take it: over the centre of mass",
	"a jerk: figures are for a load that moves slowly",
	"what somebody leaning, pulling on a spanner or climbing in adds",
}

func (s *Swap) standing() Chapter {
	c := Chapter{Title: "How it stands and hangs"}
	for _, st := range s.Standing {
		c.Blocks = append(c.Blocks, st.passages(s.called(st.File))...)
	}
	if len(s.Figured) > 0 {
		c.Blocks = append(c.Blocks, Passage{Heading: "Found about this", Findings: s.Figured})
	}
	c.Blocks = append(c.Blocks, Passage{Heading: "Cautions", Lines: remarks("support: "+Cautions["support"], "lifting: "+Cautions["lifting"])})
	c.add("Not looked at", notLookedAt)
	return c
}

// amount is a figure as text; what is missing is said.
func amount(f document.Figure, d unit.Dimension, as string) string {
	switch {
	case !f.Known && len(f.Missing) > 0:
		return "not known (" + strings.Join(f.Missing, ", ") + ")"
	case !f.Known:
		return "not known"
	}
	text := unit.Format(f.Value, d, as)
	if f.Guessed {
		text = "~" + text
	}
	return text
}

// Of the figures, one that has nothing to be worked out from is left out: a car
// that is not lifted out upwards needs no height of the hook.
func wanted(f document.Figure) bool { return f.Known || len(f.Missing) > 0 }

func (st Standing) passages(file string) []Passage {
	d := st.Document
	car := Passage{Heading: file + ", " + st.What}
	for _, stage := range standingStages {
		for i := range d.Cases {
			if k := &d.Cases[i]; k.Stage == stage.stage && wanted(k.Calc.Margin) {
				r := Remark{Text: fmt.Sprintf("%s: %s on the supports; the centre of mass is %s inside their edge, its uncertainty taken off", stage.text,
					amount(k.Calc.Mass, unit.Mass, ""), amount(k.Calc.Left, unit.Length, "mm"))}
				if k.Calc.Tilt.Known {
					r.Notes = append(r.Notes, "goes over at a tilt of "+amount(k.Calc.Tilt, unit.Angle, "deg"))
				}
				if stage.stage == document.Hoisting && k.Calc.Share.Known {
					r.Notes = append(r.Notes, fmt.Sprintf("worst with %.0f %% of the driveline's weight on the hook", 100*k.Calc.Share.Value))
				}
				car.Lines = append(car.Lines, r)
			}
		}
	}
	for i := range d.Stands {
		car.Lines = append(car.Lines, standRemark(&d.Stands[i]))
	}
	hang := Passage{Heading: "On the hook and on the dolly"}
	for i := range d.Support {
		hang.Lines = append(hang.Lines, hookRemarks(&d.Support[i])...)
	}
	for i := range d.Lift {
		l := &d.Lift[i]
		hang.Lines = append(hang.Lines, Remark{Text: fmt.Sprintf("eye %s: pulls as %s; leg %s from level; %s off the eye's axis; %s above the centre of mass", l.Name,
			amount(l.Calc.Tension, unit.Mass, "kg"), amount(l.Calc.LegAngle, unit.Angle, "deg"), amount(l.Calc.EyePull, unit.Angle, "deg"), amount(l.Calc.AboveMass, unit.Length, "mm"))})
	}
	for i := range d.Castors {
		k := &d.Castors[i]
		hang.Lines = append(hang.Lines, Remark{Text: fmt.Sprintf("castor %s: %s; at most %s on an uneven floor", k.Name, amount(k.Calc.Load, unit.Mass, "kg"), amount(k.Calc.Rocking, unit.Mass, "kg"))})
	}
	if len(hang.Lines) == 0 {
		return []Passage{car}
	}
	return []Passage{car, hang}
}

func standRemark(s *document.Stand) Remark {
	r := Remark{Text: fmt.Sprintf("stand %s: %s in, %s out; from %s to %s, and %s if the car rocks; rated for %s", s.Name,
		amount(s.Calc.LoadIn, unit.Mass, "kg"), amount(s.Calc.LoadOut, unit.Mass, "kg"), amount(s.Calc.LoadLeast, unit.Mass, "kg"),
		amount(s.Calc.LoadMost, unit.Mass, "kg"), amount(s.Calc.Rocking, unit.Mass, "kg"), amount(s.Calc.Capacity, unit.Mass, "kg"))}
	if s.Calc.Push.Known {
		r.Notes = append(r.Notes, "a push of "+amount(s.Calc.Push, unit.Force, "N")+" at its saddle topples it when it bears least")
	}
	if s.Leaves {
		r.colour = red
		r.Notes = append(r.Notes, "it stands under something that comes off")
	}
	return r
}

func hookRemarks(s *document.Support) []Remark {
	all := remarks(fmt.Sprintf("hook: %s hangs from it, tackle and sling counted; its plate says %s at this boom", amount(s.Calc.HookLoad, unit.Mass, "kg"), amount(s.Calc.HookRated, unit.Mass, "kg")))
	for _, f := range []struct {
		text   string
		figure document.Figure
		d      unit.Dimension
		as     string
	}{
		{"hangs out of level by ", s.Calc.HangTilt, unit.Angle, "deg"},
		{"hook at least this high: ", s.Calc.HookNeeded, unit.Length, "mm"},
		{"saddles at least this high: ", s.Calc.Saddle, unit.Length, "mm"},
		{"dolly: centre of mass inside its castors by ", s.Calc.DollyEdge, unit.Length, "mm"},
		{"dolly: goes over at a tilt of ", s.Calc.DollyTips, unit.Angle, "deg"},
		{"dolly: goes over if one castor meets a step of ", s.Calc.DollyStep, unit.Length, "mm"},
	} {
		if wanted(f.figure) {
			all = append(all, Remark{Text: f.text + amount(f.figure, f.d, f.as)})
		}
	}
	return all
}

package sheet

import (
	"slices"
	"strings"
	"time"

	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/judge"
)

// A Numbered is a finding with the number that it has all over the sheet.
type Numbered struct {
	Number int
	judge.Finding
	Because bool // of the swap: it was not there before
}

// Number numbers what was found, by level and then by place.
func Number(c *report.Check) []Numbered {
	var all []Numbered
	for _, level := range levels {
		for _, of := range []struct {
			findings []judge.Finding
			because  bool
		}{{c.Fresh(), c.Change != nil}, {c.Staying(), false}} {
			for _, f := range of.findings {
				if f.Level == level.level {
					all = append(all, Numbered{len(all) + 1, f, of.because})
				}
			}
		}
	}
	return all
}

type levelShape struct {
	level       policies.Level
	title, mark string
}

// levels have a shape each, so that no reader depends on colour.
var levels = []levelShape{{policies.LevelDanger, "Dangers", "▲"}, {policies.LevelFault, "Faults", "■"}, {policies.LevelAdvice, "Advice", "●"}}

// A group is the findings of a level, or those set aside.
type group struct {
	Title    string
	Findings []found
}

// A found is a finding as the template takes it.
type found struct {
	Number               int // 0 for one that is set aside
	Level, Mark          string
	Message, Rule, Where string
	Lines                string // of the spec
	When                 string // in a swap: whether it was there before
	Notes                []entry
}

func groupsOf(c *report.Check) []group {
	var all []group
	numbered := Number(c)
	for _, level := range levels {
		g := group{Title: level.title}
		for _, n := range numbered {
			if n.Level != level.level {
				continue
			}
			f := foundOf(n.Finding, level.mark)
			f.Number = n.Number
			switch {
			case n.Because:
				f.When = "because of the swap"
			case c.Change != nil:
				f.When = "there before the swap"
			}
			g.Findings = append(g.Findings, f)
		}
		if len(g.Findings) > 0 {
			all = append(all, g)
		}
	}
	aside := group{Title: "Set aside by a waiver"}
	for _, f := range c.Waived {
		each := foundOf(f, "○")
		each.Level = "waived " + each.Level
		each.Notes = append([]entry{{"waived", "until " + f.Waiver.Until.Format(time.DateOnly) + ", " + report.PlaceText(f.Waiver.Location) + ": " + f.Waiver.Why}}, each.Notes...)
		aside.Findings = append(aside.Findings, each)
	}
	if len(aside.Findings) > 0 {
		all = append(all, aside)
	}
	return all
}

// onTheWay are those of some findings that are not on the sheet already.
func onTheWay(c *report.Check, figured []judge.Finding) []found {
	told := map[string]bool{}
	for _, f := range slices.Concat(c.Fresh(), c.Staying(), c.Waived) {
		told[f.Identity()] = true
	}
	var all []found
	for _, f := range figured {
		if !told[f.Identity()] {
			all = append(all, foundOf(f, markOf(f.Level)))
		}
	}
	return all
}

func markOf(level policies.Level) string {
	i := slices.IndexFunc(levels, func(l levelShape) bool { return l.level == level })
	return levels[i].mark
}

func foundOf(f judge.Finding, mark string) found {
	one := found{Level: f.Level.String(), Mark: mark, Message: f.Message, Rule: f.Rule, Where: report.PlaceText(f.Location), Lines: strings.TrimSpace(f.Excerpt)}
	for _, n := range report.Notes(f, func(file string) string { return file }) {
		text := n.Text
		if n.At != nil {
			text = report.PlaceText(*n.At) + " " + text
		}
		one.Notes = append(one.Notes, entry{n.Label, text})
	}
	return one
}

// A measure is a key to write so that more can be told.
type measure struct{ Path, Where, Waits string }

// measuresOf lists what is written but says too little, then the keys that rules
// wait for.
func measuresOf(c *report.Check) []measure {
	var all []measure
	for _, n := range c.Notes {
		all = append(all, measure{n.Path, report.PlaceText(n.Location), strings.TrimSuffix(n.Message+": "+n.Want, ": ")})
	}
	for _, m := range c.Measures {
		all = append(all, measure{m.Path, report.PlaceText(m.Location), report.Waits(m)})
	}
	return all
}

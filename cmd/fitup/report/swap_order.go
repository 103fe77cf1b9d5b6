package report

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"fitup/spec/document"
	"fitup/spec/swap"
	"fitup/spec/unit"
)

// A stretch is the steps of one car, one way.
type stretch struct {
	title string
	steps []swap.Step
}

func (s *Swap) stretches() []stretch {
	var all []stretch
	if s.Out != nil {
		all = append(all, stretch{"Out of " + s.called(s.From), s.Out.Remove})
	}
	if s.Vacate != nil {
		all = append(all, stretch{"Out of " + s.called(s.Into) + ": " + s.called(s.Occupied), s.Vacate.Remove})
	}
	return append(all, stretch{"Into " + s.called(s.Into), s.In.Refit})
}

func (s *Swap) ordering() chapter {
	c := chapter{title: "Order of work"}
	for _, each := range s.stretches() {
		number := map[string]int{}
		for i, step := range each.steps {
			number[step.Name] = i + 1
		}
		station := ""
		for i, step := range each.steps {
			if i == 0 || step.Station != station {
				station = step.Station
				c.blocks = append(c.blocks, passage{heading: each.title + ", " + station})
			}
			last := &c.blocks[len(c.blocks)-1]
			last.lines = append(last.lines, stepRemark(i+1, step, number))
		}
	}
	return c
}

func stepRemark(n int, step swap.Step, number map[string]int) remark {
	r := remark{text: fmt.Sprintf("%d. %s", n, step.Do)}
	if step.Hold {
		r = remark{text: fmt.Sprintf("%d. HOLD: %s", n, step.Do), colour: red}
	}
	if step.Torque != "" {
		r.text += ", " + step.Torque
	}
	if len(step.Tools) > 0 {
		r.notes = append(r.notes, "with: "+strings.Join(step.Tools, ", "))
	}
	r.notes = append(r.notes, step.Notes...)
	var whys []string
	first := map[string][]int{}
	for _, after := range step.After {
		if first[after.Why] == nil {
			whys = append(whys, after.Why)
		}
		first[after.Why] = append(first[after.Why], number[after.Before])
	}
	for _, why := range whys {
		r.notes = append(r.notes, "after "+ranges(first[why])+": "+why)
	}
	return r
}

// ranges writes numbers in order, with those in a row as one: "3, 5-9".
func ranges(numbers []int) string {
	slices.Sort(numbers)
	numbers = slices.Compact(numbers)
	var all []string
	for i := 0; i < len(numbers); {
		end := i
		for end+1 < len(numbers) && numbers[end+1] == numbers[end]+1 {
			end++
		}
		switch end - i {
		case 0:
			all = append(all, fmt.Sprint(numbers[i]))
		case 1:
			all = append(all, fmt.Sprint(numbers[i]), fmt.Sprint(numbers[end]))
		default:
			all = append(all, fmt.Sprintf("%d-%d", numbers[i], numbers[end]))
		}
		i = end + 1
	}
	return strings.Join(all, ", ")
}

func (s *Swap) listing() chapter {
	c := chapter{title: "Lists"}
	add := func(heading string, lines []string) {
		slices.Sort(lines)
		c.add(heading, slices.Compact(lines))
	}
	var tools, renew, caps, labels, inspect []string
	var fluids []string
	for _, out := range []*swap.Plan{s.Out, s.Vacate} {
		if out == nil {
			continue
		}
		for _, f := range out.Fluids {
			fluids = append(fluids, catchText(f))
		}
		caps = append(caps, each(out.Caps, func(c swap.Cap) string { return c.Subject + ": " + c.What })...)
		labels = append(labels, each(out.Labels, func(l swap.Label) string { return l.Subject + ": " + l.Text })...)
		inspect = append(inspect, each(out.Inspect, checkText)...)
	}
	for _, plan := range []*swap.Plan{s.Out, s.Vacate, s.In} {
		if plan != nil {
			tools = append(tools, each(plan.Tools, func(t swap.Tool) string { return t.Name })...)
			renew = append(renew, each(plan.Renew, func(r swap.Renewal) string { return r.What + ": " + r.Subject })...)
		}
	}
	add("Tools", tools)
	add("Fluids to catch", fluids)
	c.add("Fluids to fill", each(s.In.Fluids, fillText))
	add("Seals and the like to renew", renew)
	c.add("Torques of the refit", each(s.In.Torques, torqueText))
	add("To cap", caps)
	add("To label, both halves", labels)
	add("To look at while it is out", inspect)
	c.add("Lives, the most used first", lifeTexts(s.In.Life))
	c.add("Before and at the first start", each(s.In.Checks, checkText))
	c.add("Again when it is cold", each(s.In.Cold, checkText))
	c.add("Set-up, as mass has moved", each(s.In.SetUp, checkText))
	c.add("Before it competes", each(s.In.Event, checkText))
	return c
}

func (c *chapter) add(heading string, lines []string) {
	if len(lines) > 0 {
		c.blocks = append(c.blocks, passage{heading: heading, lines: remarks(lines...)})
	}
}

func checkText(c swap.Check) string {
	if c.Subject == "" {
		return c.What
	}
	return c.What + " (" + c.Subject + ")"
}

func catchText(f swap.Catch) string {
	text := f.Fluid + ": "
	if f.Known {
		text += "a tray for " + unit.Format(f.Volume, unit.Volume, "L")
	} else {
		text += "how much runs out is not known"
	}
	if f.Stays > 0 {
		text += "; " + unit.Format(f.Stays, unit.Volume, "L") + " stays in the driveline"
	}
	if len(f.Drains) > 0 {
		text += "; by " + strings.Join(f.Drains, ", ")
	}
	if len(f.At) > 0 {
		text += "; at " + strings.Join(f.At, ", ")
	}
	return text
}

func fillText(f swap.Catch) string {
	text := f.Fluid
	if f.Grade != "" {
		text += ", " + f.Grade
	}
	if f.Refill > 0 {
		text += ": " + unit.Format(f.Refill, unit.Volume, "L") + " from dry"
	} else {
		text += ": how much it takes is not known"
	}
	if len(f.Now) > 0 {
		text += "; now in it: " + strings.Join(f.Now, ", ")
	}
	return text
}

func torqueText(t swap.Torque) string {
	text := t.Subject + ": " + t.Torque.String()
	if t.Threads != "" {
		text += ", " + t.Threads
	}
	if t.By != "" {
		text += ", by " + t.By
	}
	if t.Wrench == "" {
		return text + "; no wrench in the shop is said to cover it"
	}
	return text + " (wrench " + t.Wrench + ")"
}

func lifeTexts(items []document.LifeItem) []string {
	var all []string
	for _, i := range items {
		switch share := i.Calc.Share; {
		case !share.Known:
			all = append(all, i.Path+": what is left cannot be told")
		default:
			all = append(all, fmt.Sprintf("%s: %.0f %% used, %s", i.Path, 100*share.Value, i.Calc.Left))
		}
	}
	return all
}

func (s *Swap) holding() chapter {
	c := chapter{title: "Hold points"}
	for _, each := range s.stretches() {
		p := passage{heading: each.title}
		for i, step := range each.steps {
			if step.Hold {
				r := remark{text: fmt.Sprintf("[ ] step %d, %s: %s", i+1, strings.TrimPrefix(step.Name, "hold: "), step.Do)}
				r.notes = []string{"signed ____________ at ______"}
				p.lines = append(p.lines, r)
			}
		}
		c.blocks = append(c.blocks, p)
	}
	stored := passage{heading: "Stored energy, let go and proved gone before a joint is opened; a fire system is pinned first and armed again last"}
	for _, e := range s.energies() {
		stored.lines = append(stored.lines, remark{text: s.called(e.file) + ": " + e.What, notes: []string{e.LetGo, "proved: " + e.Proved}})
	}
	c.blocks = append(c.blocks, stored)
	if s.Out != nil {
		c.add("How "+s.called(s.From)+" is left", each(s.Out.Finish, checkText))
	}
	return c
}

// ofRunning are the subjects of what only a driveline that has run stores: fuel
// pressure, and heat.
var ofRunning = []string{"driveline.ports", "cooling"}

// storedIn is something stored in a car.
type storedIn struct {
	file string
	swap.Energy
}

// energies lists what is stored in each car.
func (s *Swap) energies() []storedIn {
	var all []storedIn
	for _, of := range []struct {
		file string
		plan *swap.Plan
	}{{s.From, s.Out}, {s.Into, cmp.Or(s.Vacate, s.In)}} {
		if of.plan == nil {
			continue
		}
		for _, e := range of.plan.Energy {
			if of.plan == s.In && slices.Contains(ofRunning, e.Subject) {
				continue // nothing has run in an empty bay
			}
			all = append(all, storedIn{of.file, e})
		}
	}
	return all
}

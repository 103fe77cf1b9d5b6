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

// A Stretch is the steps of one car, one way.
type Stretch struct {
	Title string
	Steps []swap.Step
}

// Stretches are the steps, in the order in which it comes to the cars.
func (s *Swap) Stretches() []Stretch {
	var all []Stretch
	if s.Out != nil {
		all = append(all, Stretch{"Out of " + s.called(s.From), s.Out.Remove})
	}
	if s.Vacate != nil {
		all = append(all, Stretch{"Out of " + s.called(s.Into) + ": " + s.called(s.Occupied), s.Vacate.Remove})
	}
	return append(all, Stretch{"Into " + s.called(s.Into), s.In.Refit})
}

func (s *Swap) ordering() Chapter {
	c := Chapter{Title: "Order of work"}
	for _, each := range s.Stretches() {
		station := ""
		reasons := each.Reasons()
		for i, step := range each.Steps {
			if i == 0 || step.Station != station {
				station = step.Station
				c.Blocks = append(c.Blocks, Passage{Heading: each.Title + ", " + station})
			}
			last := &c.Blocks[len(c.Blocks)-1]
			last.Lines = append(last.Lines, stepRemark(i+1, step, reasons[i]))
		}
	}
	return c
}

func stepRemark(n int, step swap.Step, reasons []string) Remark {
	r := Remark{Text: fmt.Sprintf("%d. %s", n, step.Do)}
	if step.Hold {
		r = Remark{Text: fmt.Sprintf("%d. HOLD: %s", n, step.Do), colour: red}
	}
	if step.Torque != "" {
		r.Text += ", " + step.Torque
	}
	if len(step.Tools) > 0 {
		r.Notes = append(r.Notes, "with: "+strings.Join(step.Tools, ", "))
	}
	r.Notes = append(r.Notes, step.Notes...)
	r.Notes = append(r.Notes, reasons...)
	return r
}

// manySteps is how many steps have to wait for one, for the same reason, for that
// to be said once, at the one that they wait for.
const manySteps = 4

// A sequel says which steps come before or after one, and why.
type sequel struct {
	order, why string // order is "after" or "before"
	steps      []int
}

// Reasons say why each step stands where it does, a line a reason. Every
// constraint is told at one of its two steps.
func (s Stretch) Reasons() [][]string {
	number := map[string]int{}
	waiting := map[swap.Constraint]int{}
	shared := func(c swap.Constraint) swap.Constraint { return swap.Constraint{Before: c.Before, Why: c.Why} }
	for i, step := range s.Steps {
		number[step.Name] = i + 1
		for _, c := range step.After {
			waiting[shared(c)]++
		}
	}
	all := make([][]sequel, len(s.Steps))
	for i, step := range s.Steps {
		for _, c := range step.After {
			before := number[c.Before]
			if waiting[shared(c)] < manySteps {
				all[i] = withStep(all[i], "after", c.Why, before)
			} else {
				all[before-1] = withStep(all[before-1], "before", c.Why, i+1)
			}
		}
	}
	return each(all, func(reasons []sequel) []string {
		return each(reasons, func(r sequel) string { return r.order + " " + ranges(r.steps) + ": " + r.why })
	})
}

// withStep adds a step to the reason that says the same of others.
func withStep(reasons []sequel, order, why string, step int) []sequel {
	i := slices.IndexFunc(reasons, func(r sequel) bool { return r.order == order && r.why == why })
	if i < 0 {
		return append(reasons, sequel{order, why, []int{step}})
	}
	reasons[i].steps = append(reasons[i].steps, step)
	return reasons
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

// Headings of what has to be there before the work begins.
const (
	GetHeading   = "To make, change or buy"
	RenewHeading = "Seals and the like to renew"
)

func (s *Swap) listing() Chapter {
	c := Chapter{Title: "Lists"}
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
		inspect = append(inspect, each(out.Inspect, CheckText)...)
	}
	for _, plan := range []*swap.Plan{s.Out, s.Vacate, s.In} {
		if plan != nil {
			tools = append(tools, each(plan.Tools, func(t swap.Tool) string { return t.Name })...)
			renew = append(renew, each(plan.Renew, func(r swap.Renewal) string { return r.What + ": " + r.Subject })...)
		}
	}
	c.add(GetHeading, s.toGet())
	add("Tools", tools)
	add("Fluids to catch", fluids)
	c.add("Fluids to fill", each(s.In.Fluids, fillText))
	add(RenewHeading, renew)
	c.add("Torques of the refit", each(s.In.Torques, torqueText))
	add("To cap", caps)
	add("To label, both halves", labels)
	add("To look at while it is out", inspect)
	c.add("Lives, the most used first", lifeTexts(s.In.Life))
	c.add("Before and at the first start", each(s.In.Checks, CheckText))
	c.add("Again when it is cold", each(s.In.Cold, CheckText))
	c.add("Set-up, as mass has moved", each(s.In.SetUp, CheckText))
	c.add("Before it competes", each(s.In.Event, CheckText))
	return c
}

// toGet lists what has to be there before the driveline goes in: what is to be
// made or changed, and adaptors that are not in the drawer.
func (s *Swap) toGet() []string {
	if s.Fit == nil { // a sheet of one car
		return nil
	}
	var all []string
	for _, i := range s.Fit.Interfaces {
		switch i.Verdict {
		case swap.Fouls, swap.MustBeMade, swap.Missing:
			all = append(all, s.interfaceRemark(i).Text)
		case swap.WithAdaptor:
			for _, a := range i.Chain.Adaptors {
				if !a.Stock {
					all = append(all, "buy "+a.Name+", "+a.Ends()+", for "+i.Car)
				}
			}
		}
	}
	return all
}

func (c *Chapter) add(heading string, lines []string) {
	if len(lines) > 0 {
		c.Blocks = append(c.Blocks, Passage{Heading: heading, Lines: remarks(lines...)})
	}
}

// CheckText is a check in a line.
func CheckText(c swap.Check) string {
	if c.Subject == "" {
		return c.What
	}
	return c.What + " (" + c.Subject + ")"
}

func catchText(f swap.Catch) string {
	text, into := f.Fluid+": ", "a tray"
	if f.Fluid == "fuel" {
		into = "an approved container"
	}
	if f.Known {
		text += into + " for " + unit.Format(f.Volume, unit.Volume, "L")
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

func (s *Swap) holding() Chapter {
	c := Chapter{Title: "Hold points"}
	for _, each := range s.Stretches() {
		p := Passage{Heading: each.Title}
		for i, step := range each.Steps {
			if step.Hold {
				r := Remark{Text: fmt.Sprintf("[ ] step %d, %s: %s", i+1, strings.TrimPrefix(step.Name, "hold: "), step.Do)}
				r.Notes = []string{"signed ____________ at ______"}
				p.Lines = append(p.Lines, r)
			}
		}
		c.Blocks = append(c.Blocks, p)
	}
	stored := Passage{Heading: "Stored energy, let go and proved gone before a joint is opened; a fire system is pinned first and armed again last"}
	for _, e := range s.Energies() {
		stored.Lines = append(stored.Lines, Remark{Text: s.called(e.File) + ": " + e.What, Notes: []string{e.LetGo, "proved: " + e.Proved}})
	}
	c.Blocks = append(c.Blocks, stored)
	if s.Out != nil {
		c.add("How "+s.called(s.From)+" is left", each(s.Out.Finish, CheckText))
	}
	return c
}

// Stored is something stored in a car.
type Stored struct {
	File string
	swap.Energy
}

// Energies lists what is stored in each car.
func (s *Swap) Energies() []Stored {
	var all []Stored
	for _, of := range []struct {
		file string
		plan *swap.Plan
	}{{s.From, s.Out}, {s.Into, cmp.Or(s.Vacate, s.In)}} {
		if of.plan == nil {
			continue
		}
		for _, e := range of.plan.Energy {
			if of.plan == s.In && e.Running {
				continue // nothing has run in an empty bay
			}
			all = append(all, Stored{of.file, e})
		}
	}
	return all
}

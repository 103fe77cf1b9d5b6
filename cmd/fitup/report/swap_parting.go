package report

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"fitup/spec/swap"
	"fitup/spec/unit"
)

// weights says what the minutes are.
const weights = "Minutes are planning weights, by which ways of parting are compared; they promise nothing about how long the work takes."

func minutes(s swap.Seconds) string {
	return fmt.Sprintf("%.0f min", math.Ceil(float64(s)/60))
}

func (s *Swap) parting() Chapter {
	c := Chapter{Title: "Where to part it"}
	for _, p := range s.partings() {
		c.Blocks = append(c.Blocks, p.where...)
	}
	if len(c.Blocks) == 0 {
		c.Blocks = []Passage{{Lines: remarks("it is on the bench: there is nothing to part")}}
		return c
	}
	c.Blocks = append(c.Blocks, Passage{Lines: remarks(weights)})
	return c
}

// A partingOf is how one car is parted from its driveline.
type partingOf struct {
	file  string
	plan  *swap.Plan
	where []Passage
}

func (s *Swap) partings() []partingOf {
	var all []partingOf
	for _, p := range []partingOf{{file: s.From, plan: s.Out}, {file: s.Into, plan: s.Vacate}} {
		if p.plan != nil {
			p.where = whereToPart(s.called(p.file), p.plan)
			all = append(all, p)
		}
	}
	return all
}

func whereToPart(file string, plan *swap.Plan) []Passage {
	best := plan.Parting.Best
	open := Passage{Heading: fmt.Sprintf("%s: %s to open, %d of them wet, about %s", file, count(len(best.Open), "joint", "joints"), best.Wet, minutes(best.Effort))}
	if len(best.Open) == 0 {
		return []Passage{{Heading: file, Lines: remarks("nothing joins it to its driveline, as far as it is written")}}
	}
	open.Lines = remarks("open: " + strings.Join(best.Open, ", "))
	if len(best.Off) > 0 {
		open.Lines = append(open.Lines, Remark{Text: "off first: " + strings.Join(best.Off, ", ")})
	}
	if best.Spill > 0 {
		open.Lines = append(open.Lines, Remark{Text: "runs out at the joints, as far as it is known: " + unit.Format(best.Spill, unit.Volume, "")})
	}
	for _, t := range plan.Tied {
		text := "left on its lines: " + shortName(t.Part)
		if t.By != "" {
			text += ", tied by " + t.By
		}
		open.Lines = append(open.Lines, Remark{Text: text})
	}
	for _, circuit := range plan.NotOpened {
		open.Lines = append(open.Lines, Remark{Text: "leaves unopened: " + circuit})
	}
	for _, part := range plan.Parting.Loose {
		open.Lines = append(open.Lines, Remark{Text: "hangs on nothing that is held to a side, and stays: " + part})
	}
	passages := []Passage{open}
	if next := plan.Parting.Next; next != nil {
		other := Passage{Heading: "Next best, about " + minutes(next.Effort) + ", " + minutes(next.Effort-best.Effort) + " more"}
		other.Lines = remarks("goes the other way: " + strings.Join(each(plan.Parting.Turned, shortName), ", "))
		if more := without(next.Open, best.Open); len(more) > 0 {
			other.Lines = append(other.Lines, Remark{Text: "open besides: " + strings.Join(more, ", ")})
		}
		if less := without(best.Open, next.Open); len(less) > 0 {
			other.Lines = append(other.Lines, Remark{Text: "leave shut: " + strings.Join(less, ", ")})
		}
		passages = append(passages, other)
	}
	return passages
}

func without(all, some []string) []string {
	return slices.DeleteFunc(slices.Clone(all), func(name string) bool { return slices.Contains(some, name) })
}

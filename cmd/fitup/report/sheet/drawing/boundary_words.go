package drawing

import (
	"fmt"
	"math"
	"slices"
	"strconv"
	"strings"

	"fitup/spec/swap"
	"fitup/spec/unit"
)

// words tell what the drawing of the best way shows, for somebody who cannot see it.
func (b *boundary) words() []string {
	var all []string
	for _, o := range b.open {
		all = append(all, "Open "+o.words()+".")
	}
	return append(all, b.notes()...)
}

// wordsOfNext do the same for the next best way.
func (b *boundary) wordsOfNext() []string {
	all := []string{b.nextWords()}
	for _, o := range b.more {
		all = append(all, "Open besides "+o.words()+".")
	}
	for _, o := range b.less {
		all = append(all, "Leave shut "+o.words()+".")
	}
	return all
}

func (o *opening) words() string {
	text := fmt.Sprintf("%s, %s from %s: %s min", o.group, o.leaves, o.stays, minutesOf(o.Effort))
	switch {
	case !o.Wet:
		return text + ", dry"
	case o.Spill > 0:
		return text + ", wet, " + unit.Format(o.Spill, unit.Volume, "") + " runs out"
	}
	return text + ", wet, how much runs out is not measured"
}

// wholeMinutes writes the weight of a whole cut, as reports do.
func wholeMinutes(s swap.Seconds) string {
	return strconv.FormatFloat(math.Ceil(float64(s)/60), 'f', 0, 64)
}

// minutesOf writes a planning weight in minutes.
func minutesOf(s swap.Seconds) string {
	return strconv.FormatFloat(math.Round(float64(s)/6)/10, 'f', -1, 64)
}

// notes are what belongs to the cut beside its joints.
func (b *boundary) notes() []string {
	best := &b.plan.Parting.Best
	if len(best.Open) == 0 {
		return []string{"Nothing joins it to its driveline, as far as it is written."}
	}
	total := fmt.Sprintf("%d joints to open, %d of them wet; with what comes off first %s minutes, a planning weight and no promise",
		len(best.Open), best.Wet, wholeMinutes(best.Effort))
	if best.Spill > 0 {
		total += "; " + unit.Format(best.Spill, unit.Volume, "") + " runs out, as far as it is measured"
	}
	all := []string{total + "."}
	if len(best.Off) > 0 {
		var off []string
		for _, a := range b.plan.Network.Access {
			if slices.Contains(best.Off, a.Name) {
				off = append(off, a.Name+" "+minutesOf(a.Price)+" min")
			}
		}
		all = append(all, "Off first: "+strings.Join(off, ", ")+".")
	}
	for _, t := range b.plan.Tied {
		tied := t.By
		if tied != "" {
			tied = "tied by " + tied
		}
		all = append(all, "Left on its lines: "+filled(", ", partName(t.Part), tied)+".")
	}
	if len(b.plan.NotOpened) > 0 {
		all = append(all, "Not opened: "+strings.Join(b.plan.NotOpened, ", ")+".")
	}
	if loose := b.plan.Parting.Loose; len(loose) > 0 {
		all = append(all, "Hangs on nothing that is held to a side, and stays: "+strings.Join(loose, ", ")+".")
	}
	return all
}

// nextWords say what the next best way changes, and what it costs.
func (b *boundary) nextWords() string {
	var turned []string
	for _, name := range b.plan.Parting.Turned {
		turned = append(turned, partName(name))
	}
	more := wholeMinutes(b.plan.Parting.Next.Effort - b.plan.Parting.Best.Effort)
	return fmt.Sprintf("The other way goes: %s; %s minutes more.", strings.Join(turned, ", "), more)
}

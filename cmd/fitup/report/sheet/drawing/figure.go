package drawing

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"fitup/spec/document"
	"fitup/spec/unit"
)

// figures writes numbers in the units that a car is told in.
type figures struct{ inch bool }

func figuresOf(d *document.Document) figures {
	return figures{len(d.Cars) > 0 && d.Cars[0].Units.V == "inch"}
}

func (f figures) mass() string {
	if f.inch {
		return "lb"
	}
	return "kg"
}

func (f figures) length() string {
	if f.inch {
		return "in"
	}
	return "mm"
}

// metres writes a length with its unit.
func (f figures) metres(m float64) string { return unit.Format(m, unit.Length, f.length()) }

// plain is a length without its unit, which the line of the scale bar tells.
func (f figures) plain(m float64) string { return strings.TrimSuffix(f.metres(m), " "+f.length()) }

// kilograms writes a mass as a whole number with its unit, so that loads that are
// written beside it can sum to it.
func (f figures) kilograms(kg float64) string {
	return fmt.Sprintf("%.0f %s", in(f.mass(), kg), f.mass())
}

// in is an SI value as a number of a unit, for an axis or a sum.
func in(word string, si float64) float64 {
	one, _, err := unit.Convert("1", word)
	if err != nil {
		panic("drawing: " + err.Error()) // the units are those of figures
	}
	size, _ := one.Float64()
	return si / size
}

// shares writes loads as whole numbers that sum to the whole as it is written:
// each is rounded down, and what is then left of the whole goes to those that lost
// most (the method of largest remainders). Of equal losses the first gains.
func (f figures) shares(loads []float64, whole float64) []string {
	counts, order := make([]float64, len(loads)), make([]int, len(loads))
	left := math.Round(in(f.mass(), whole))
	for i, load := range loads {
		counts[i], order[i] = math.Floor(in(f.mass(), load)), i
		left -= counts[i]
	}
	lost := func(i int) float64 { return in(f.mass(), loads[i]) - counts[i] }
	slices.SortStableFunc(order, func(a, b int) int {
		switch d := lost(b) - lost(a); {
		case d > 1e-9:
			return 1
		case d < -1e-9:
			return -1
		}
		return 0
	})
	for _, i := range order {
		if left < 1 {
			break
		}
		counts[i]++
		left--
	}
	out := make([]string, len(counts))
	for i, c := range counts {
		out[i] = fmt.Sprintf("%.0f %s", c, f.mass())
	}
	return out
}

// guess marks a figure that rests on a guess, as specs do.
func guess(f document.Figure, text string) string { return about(f.Guessed, text) }

func about(guessed bool, text string) string {
	if guessed {
		return "~" + text
	}
	return text
}

// measure says which keys have to be written.
func measure(paths []string) string { return "measure " + strings.Join(paths, ", ") }

// degrees writes an angle with its unit.
func degrees(rad float64) string { return unit.Format(rad, unit.Angle, "deg") }

package main

import (
	"fmt"
	"io"
	"math"

	"golang.org/x/perf/benchmath"
)

// A row is one figure, beside what it should be.
type row struct {
	part   string // of the measurement
	what   string
	figure string
	target string // empty for none
	missed bool
}

// atMost is a row whose figure has an upper bound. The form prints both.
func atMost(part, what, form string, figure, bound float64) row {
	return row{part, what, fmt.Sprintf(form, figure), "at most " + fmt.Sprintf(form, bound), figure > bound}
}

// atLeast is a row whose figure has a lower bound.
func atLeast(part, what, form string, figure, bound float64) row {
	return row{part, what, fmt.Sprintf(form, figure), "at least " + fmt.Sprintf(form, bound), figure < bound}
}

func (r row) verdict() string {
	switch {
	case r.target == "":
		return ""
	case r.missed:
		return "missed"
	}
	return "met"
}

// printTable prints rows as a Markdown table.
func printTable(w io.Writer, rows []row) error {
	_, err := fmt.Fprint(w, "| | measured | figure | target | |\n|---|---|---|---|---|\n")
	for _, r := range rows {
		if err == nil {
			_, err = fmt.Fprintf(w, "| %s | %s | %s | %s | %s |\n", r.part, r.what, r.figure, r.target, r.verdict())
		}
	}
	return err
}

// seconds prints a median in the unit that suits it, with its bounds.
func seconds(s benchmath.Summary) string {
	text := fmt.Sprintf("%.1f s", s.Center)
	if s.Center < 2 {
		text = fmt.Sprintf("%.0f ms", 1000*s.Center)
	}
	if math.IsInf(s.Lo, 0) || math.IsInf(s.Hi, 0) {
		return text // too few calls
	}
	return text + " ± " + s.PctRangeString()
}

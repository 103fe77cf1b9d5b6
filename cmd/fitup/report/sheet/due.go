package sheet

import (
	"fmt"
	"strings"
	"time"

	"fitup/cmd/fitup/report"
	"fitup/policies/judge"
)

// A runsOut is a row of what runs out.
type runsOut struct {
	When, Left, What, By, Where string
	Past                        bool
}

// runsOutOf lists last days, then lives by use, then what cannot be told.
func runsOutOf(d *judge.Due) []runsOut {
	var all []runsOut
	add := func(i judge.DueItem, when, left, by string, past bool) {
		if i.Guessed {
			by += ", by a guess"
		}
		all = append(all, runsOut{when, left, i.What, by, report.PlaceText(i.Location), past})
	}
	for _, i := range d.Dated {
		add(i, i.Day.Format(time.DateOnly), report.LeftText(i, d.On), i.By, i.Days(d.On) < 0)
	}
	for _, i := range d.Used {
		add(i, fmt.Sprintf("%.0f %% used", 100*i.Share), report.LeftText(i, d.On), i.By, i.Share > 1)
	}
	for _, i := range d.Unknown {
		add(i, "cannot tell", "write "+strings.Join(i.Missing, ", "), i.By, false)
	}
	return all
}

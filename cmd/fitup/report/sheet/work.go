package sheet

import (
	"fmt"
	"strings"

	"fitup/cmd/fitup/report"
)

// work lays out what there is to do.
func (v *view) work(w *report.Swap) {
	for _, c := range w.Chapters() {
		switch c.Part {
		case report.PartFit:
			v.Fit = &c
		case report.PartBreaks:
			v.Headline, v.Gone = w.Verdict(), w.Gone()
		case report.PartParting:
			v.Parts = &c
		case report.PartStanding:
			v.Hanging, v.Unsure, v.Figured = &c, w.IsWithheld(report.PartStanding), onTheWay(v.Check, w.Figured)
		case report.PartLists:
			v.lists(c)
		case report.PartOrder:
			if w.IsWithheld(report.PartOrder) {
				v.Order = &c
			} else {
				v.Ways = waysOf(w)
			}
		case report.PartHolds:
			if !w.IsWithheld(report.PartHolds) {
				v.Stored, v.Left = storedOf(w), leftOf(w)
			}
		}
	}
}

// lists parts what has to be there before the work begins from what goes with it.
func (v *view) lists(c report.Chapter) {
	for _, list := range checklists("list", c.Blocks) {
		if list.Heading == report.GetHeading || list.Heading == report.RenewHeading {
			v.Wanted = append(v.Wanted, list)
		} else {
			v.Lists = append(v.Lists, list)
		}
	}
}

// A way is a driveline coming out of a car, or going into one.
type way struct {
	Title string
	Stops []stop
}

// A stop is what is done from one station before moving on.
type stop struct {
	Station string
	Steps   []step
}

// A step is one line of the order of work.
type step struct {
	ID     string
	Number int
	Do     string
	Hold   string // what it is to be signed for; "" if it is not
	Torque string
	Tools  string
	Notes  []string
	Why    string // why it stands where it does
}

func waysOf(w *report.Swap) []way {
	var all []way
	for i, s := range w.Stretches() {
		one, reasons := way{Title: s.Title}, s.Reasons()
		for j, each := range s.Steps {
			if n := len(one.Stops); n == 0 || one.Stops[n-1].Station != each.Station {
				one.Stops = append(one.Stops, stop{Station: each.Station})
			}
			line := step{
				ID: fmt.Sprintf("step-%d-%d", i+1, j+1), Number: j + 1, Do: each.Do, Torque: each.Torque,
				Tools: strings.Join(each.Tools, ", "), Notes: each.Notes, Why: strings.Join(reasons[j], "; "),
			}
			if each.Hold {
				line.Hold = strings.TrimPrefix(each.Name, "hold: ")
			}
			last := &one.Stops[len(one.Stops)-1]
			last.Steps = append(last.Steps, line)
		}
		all = append(all, one)
	}
	return all
}

package report

import (
	"fmt"
	"strings"
	"time"

	"fitup/policies/judge"
)

// DueForms are all forms of what runs out.
var DueForms = []Form[*judge.Due]{
	{"text", "for a reader at a terminal or on paper", whole(DueText)},
	{"json", "everything, for programs", whole(DueJSON)},
	{"ics", "last days for a calendar (RFC 5545)", whole(DueICS)},
}

// DueText prints what runs out, the soonest first.
func DueText(d *judge.Due, s Style) ([]byte, error) {
	p := &page{width: s.Width, colour: s.Colour}
	place := func(i judge.DueItem) ink {
		return p.paint(bold, fmt.Sprintf("%s:%d:", s.Shown(i.File), i.Line))
	}
	if len(d.Dated) > 0 {
		p.para(0, 0, "%s up to %s:", p.paint(bold, "Last days"), d.By.Format(time.DateOnly))
	}
	for _, i := range d.Dated {
		colour := ""
		switch days := i.Days(d.On); {
		case days < 0:
			colour = red
		case days == 0:
			colour = magenta
		}
		p.para(2, 4, "%s %s %s%s", p.paint(colour, i.Day.Format(time.DateOnly)+", "+LeftText(i, d.On)+":"), place(i), i.What, sayer(i))
	}
	if len(d.Used) > 0 {
		p.gap()
		p.para(0, 0, "%s, the most used first:", p.paint(bold, "Lives"))
	}
	for _, i := range d.Used {
		colour := ""
		if i.Share > 1 {
			colour = red
		}
		p.para(2, 4, "%s %s %s: %s%s", p.paint(colour, fmt.Sprintf("%.0f %% used:", 100*i.Share)), place(i), i.What, LeftText(i, d.On), sayer(i))
	}
	if len(d.Unknown) > 0 {
		p.gap()
		p.para(0, 0, "%s, as too little is written:", p.paint(bold, "Cannot tell"))
	}
	for _, i := range d.Unknown {
		p.para(2, 4, "%s %s: %s", place(i), i.What, wantText(i))
	}
	p.gap()
	p.para(0, 0, "%s.", DueTally(d))
	p.gap()
	p.para(0, 0, Closing)
	return []byte(p.String()), nil
}

// sayer says who gives a last day or life, where that is not the file itself.
func sayer(i judge.DueItem) string {
	text := ", by " + i.By
	switch i.By {
	case "", "file", "service", "waiver":
		text = ""
	case "label":
		text = ", by its label"
	case "hose kind":
		text = ", by the life of its kind"
	}
	if i.Guessed {
		text += ", resting on a guess"
	}
	return text
}

// wantText says what to write so that an item can be told.
func wantText(i judge.DueItem) string {
	if len(i.Missing) == 0 {
		return "no last day is on it, and no life is known for its standard"
	}
	return "write " + strings.Join(i.Missing, ", ")
}

// LeftText says how much is left of something on a day.
func LeftText(i judge.DueItem, on time.Time) string {
	switch days := i.Days(on); {
	case i.Left != "" && strings.HasSuffix(i.Left, " over"):
		return i.Left
	case i.Left != "":
		return i.Left + " left"
	case days < 0:
		return count(-days, "day past", "days past")
	case days == 0:
		return "today"
	default:
		return count(days, "day left", "days left")
	}
}

// DueTally counts what runs out.
func DueTally(d *judge.Due) string {
	if len(d.Dated)+d.Later+len(d.Used)+len(d.Unknown) == 0 {
		return fmt.Sprintf("On %s: nothing that runs out is written", d.On.Format(time.DateOnly))
	}
	text := fmt.Sprintf("On %s: %s up to %s", d.On.Format(time.DateOnly), count(len(d.Dated), "last day", "last days"), d.By.Format(time.DateOnly))
	if d.Later > 0 {
		text += fmt.Sprintf(" (%d later)", d.Later)
	}
	return text + fmt.Sprintf(", %s past or used up, %s, %s", count(d.Past(), "item", "items"), count(len(d.Used), "life by use", "lives by use"), count(len(d.Unknown), "item", "items")+" that cannot be told")
}

type (
	jsonDue struct {
		Version int           `json:"version"`
		On      string        `json:"on" jsonschema:"format=date" jsonschema_description:"day that is counted from"`
		By      string        `json:"by" jsonschema:"format=date" jsonschema_description:"day that is looked ahead to"`
		Dated   []jsonDueItem `json:"dated"`
		Later   int           `json:"later" jsonschema_description:"how many last days come after it"`
		Used    []jsonDueItem `json:"used"`
		Unknown []jsonDueItem `json:"unknown"`
		Closing string        `json:"closing"`
	}
	jsonDueItem struct {
		jsonPlace
		What    string   `json:"what"`
		Day     string   `json:"last_day,omitempty" jsonschema:"format=date"`
		Days    *int     `json:"days_left,omitempty"`
		By      string   `json:"by,omitempty"`
		Share   *float64 `json:"share_used,omitempty"`
		Left    string   `json:"left,omitempty"`
		Guessed bool     `json:"rests_on_a_guess"`
		Missing []string `json:"missing,omitempty"`
	}
)

// DueJSON prints what runs out, for programs.
func DueJSON(d *judge.Due, _ Style) ([]byte, error) {
	item := func(i judge.DueItem) jsonDueItem {
		out := jsonDueItem{jsonPlace: placeJSON(i.Location), What: i.What, By: i.By, Left: i.Left, Guessed: i.Guessed, Missing: i.Missing}
		if !i.Day.IsZero() {
			days := i.Days(d.On)
			out.Day, out.Days = i.Day.Format(time.DateOnly), &days
		}
		if i.Left != "" {
			out.Share = &i.Share
		}
		return out
	}
	return indented(jsonDue{
		jsonVersion, d.On.Format(time.DateOnly), d.By.Format(time.DateOnly),
		each(d.Dated, item), d.Later, each(d.Used, item), each(d.Unknown, item), Closing,
	})
}

package judge

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
	"fitup/spec/workings"
)

// Due is what runs out in a fleet.
type Due struct {
	On, By  time.Time // the day it is asked on, and how far it looks ahead
	Dated   []DueItem // with a last day up to By, also one that is past; the soonest first
	Later   int       // how many have a later one
	Used    []DueItem // with a life in hours, runs or the like; the most used first
	Unknown []DueItem // that have a date or life, of which too little is written
}

// A DueItem is one thing that runs out.
type DueItem struct {
	Location
	What    string    // "harness", "service of the fire system", "life of engine-oil"
	Day     time.Time // last day; zero for an item of Used or Unknown
	By      string    // who says so: the label, an authority, the file
	Share   float64   // of the life used; 0 for one of Dated or Unknown
	Left    string    // what is left of the life, in its own unit
	Guessed bool      // rests on a guess
	Missing []string  // keys that would have to be written, of an item of Unknown
}

// Days is how many days are left on a day; below nothing when it is past.
func (i DueItem) Days(on time.Time) int { return int(i.Day.Sub(on) / (24 * time.Hour)) }

// Past counts the items that have run out on the day it is asked on.
func (d *Due) Past() int {
	n := 0
	for _, i := range d.Dated {
		if i.Day.Before(d.On) {
			n++
		}
	}
	for _, i := range d.Used {
		if i.Share > 1 {
			n++
		}
	}
	return n
}

// DueBy tells what runs out in compositions by a day.
func DueBy(compositions []*spec.Composition, on, by time.Time) *Due {
	l := NewDueList(on, by)
	for _, c := range compositions {
		l.Add(c)
	}
	return l.Due()
}

// A DueList gathers what runs out, and keeps nothing else of the compositions.
type DueList struct{ gathered dueGatherer }

// NewDueList begins a list that is asked for on a day and looks ahead to another.
func NewDueList(on, by time.Time) *DueList {
	return &DueList{dueGatherer{due: &Due{On: on, By: by}, texts: newTexts(), seen: map[string]bool{}}}
}

// Add adds what runs out in a composition.
func (l *DueList) Add(c *spec.Composition) {
	g := &l.gathered
	doc := document.Join(c, g.due.On)
	workings.Derive(doc)
	g.verdict = &verdict{Composition: c, doc: doc, texts: g.texts}
	g.labels()
	g.hoses()
	g.lives()
	for _, file := range g.files() {
		for name, w := range waiversOf(file).All() {
			at := locate(file, "waivers."+name)
			g.dated(DueItem{Location: at, What: "waiver of " + w.Rule.V, Day: w.Until.V.Last(), By: "waiver"})
		}
	}
	g.verdict = nil
}

// Due is what was gathered, sorted.
func (l *DueList) Due() *Due {
	d := l.gathered.due
	place := func(a, b DueItem) int {
		return cmp.Or(strings.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column), strings.Compare(a.What, b.What))
	}
	slices.SortFunc(d.Dated, func(a, b DueItem) int { return cmp.Or(a.Day.Compare(b.Day), place(a, b)) })
	slices.SortFunc(d.Used, func(a, b DueItem) int { return cmp.Or(cmp.Compare(b.Share, a.Share), place(a, b)) })
	slices.SortFunc(d.Unknown, place)
	return d
}

type dueGatherer struct {
	*verdict // of the composition that is looked at
	due      *Due
	texts    *texts
	seen     map[string]bool // what several cars share is told once
}

func (g *dueGatherer) first(i DueItem) bool {
	key := i.File + "|" + i.Path + "|" + i.What
	known := g.seen[key]
	g.seen[key] = true
	return !known
}

func (g *dueGatherer) dated(i DueItem) {
	switch {
	case !g.first(i):
	case i.Day.After(g.due.By):
		g.due.Later++
	default:
		g.due.Dated = append(g.due.Dated, i)
	}
}

func (g *dueGatherer) unknown(path, what string, missing []string) {
	i := DueItem{Location: g.locate(path), What: what}
	for _, key := range missing {
		if at := g.locate(key).Path; !slices.Contains(i.Missing, at) {
			i.Missing = append(i.Missing, at)
		}
	}
	if g.first(i) {
		g.due.Unknown = append(g.due.Unknown, i)
	}
}

// labels are the safety items, with the day on the label or the life that an
// authority gives.
func (g *dueGatherer) labels() {
	for i := range g.doc.Dated {
		d := &g.doc.Dated[i]
		left, service := d.Calc.DaysLeft, d.Calc.ServiceLeft
		if d.State == spec.None {
			continue
		}
		if last, err := time.Parse(time.DateOnly, d.Calc.LastDay); left.Known && err == nil {
			g.dated(DueItem{Location: g.locate(d.Path), What: d.Kind, Day: last, By: d.Calc.By, Guessed: left.Guessed})
		}
		if service.Known {
			day := g.due.On.AddDate(0, 0, int(service.Value))
			g.dated(DueItem{Location: g.locate(d.Path), What: "service of the " + d.Kind, Day: day, By: "service", Guessed: service.Guessed})
		}
		if missing := slices.Concat(left.Missing, service.Missing); !left.Known && !service.Known && d.Calc.By == "" {
			g.unknown(d.Path, d.Kind, missing)
		}
	}
}

// hoses are the lines whose hose has a life from the date on it.
func (g *dueGatherer) hoses() {
	for i := range g.doc.Lines {
		l := &g.doc.Lines[i]
		if !l.Kind.Lasts.Given() {
			continue
		}
		what := "hose of " + l.Name
		if !l.Hose.Made.Given() {
			g.unknown(l.Path, what, g.doc.Resolve("lines", l.Path, "hose.made").Missing)
			continue
		}
		day := ofAge(l.Hose.Made.V, l.Kind.Lasts.V)
		g.dated(DueItem{Location: g.locate(l.Path), What: what, Day: day, By: "hose kind", Guessed: l.Hose.Made.Guess || l.Kind.Lasts.Guess})
	}
}

// ofAge is the day on which something made or fitted on a date is of an age.
func ofAge(from unit.Date, age unit.Quantity) time.Time {
	return from.First().AddDate(0, int(age.SI), 0)
}

// lives are the items with a life. One may have a last day and a use.
func (g *dueGatherer) lives() {
	for i := range g.doc.Life {
		l := &g.doc.Life[i]
		what, share := "life of "+l.Name, l.Calc.Share
		if l.State == spec.None {
			continue
		}
		counted, told := false, false
		for _, limit := range l.Lasts.V {
			if limit.Dimension != unit.Age {
				counted = true
			} else if l.Fitted.Given() {
				told = true
				g.dated(DueItem{Location: g.locate(l.Path), What: what, Day: ofAge(l.Fitted.V, limit.Quantity), By: "file", Guessed: l.Fitted.Guess || l.Lasts.Guess})
			}
		}
		switch {
		case share.Known && counted:
			item := DueItem{Location: g.locate(l.Path), What: "use of " + l.Name, By: "file", Share: share.Value, Left: l.Calc.Left, Guessed: share.Guessed}
			if g.first(item) {
				g.due.Used = append(g.due.Used, item)
			}
		case !share.Known && !told:
			g.unknown(l.Path, what, share.Missing)
		}
	}
}

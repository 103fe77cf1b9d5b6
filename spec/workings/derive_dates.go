package workings

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

const day = 24 * time.Hour

// today is the day that the document is judged on.
func (n *notebook) today() (time.Time, error) { return time.Parse(time.DateOnly, n.d.Date) }

func (n *notebook) daysSince(then time.Time) (float64, error) {
	now, err := n.today()
	if err != nil {
		return 0, err
	}
	return float64(now.Sub(then) / day), nil
}

// monthsSince counts whole months of the calendar.
func (n *notebook) monthsSince(then time.Time) (float64, error) {
	now, err := n.today()
	if err != nil {
		return 0, err
	}
	months := 12*(now.Year()-then.Year()) + int(now.Month()-then.Month())
	if now.Day() < then.Day() {
		months--
	}
	return float64(months), nil
}

func (n *notebook) daysUntil(then time.Time) (float64, error) {
	days, err := n.daysSince(then)
	return -days, err
}

// after is the last day of a number of calendar months counted from what a label
// gives: a day to the same day, a month to the end of a month, a year to the end
// of a year. A day that the last month lacks becomes its last.
func after(label unit.Date, months int) time.Time {
	month := label.Month
	if month == 0 {
		month = time.December
	}
	first := time.Date(label.Year, month+time.Month(months), 1, 0, 0, 0, 0, time.UTC)
	last := first.AddDate(0, 1, -1)
	if label.Day != 0 && label.Day < last.Day() {
		return first.AddDate(0, 0, label.Day-1)
	}
	return last
}

// itemOf is how the table of lives names each kind of safety item.
var itemOf = map[string]string{
	"harness": "harness", "seat": "seat", "helmet": "helmet", "window net": "net", "head restraint": "head-restraint",
	"hand extinguisher": "extinguisher", "fire system": "fire-system", "fuel cell": "bladder",
}

func (n *notebook) dates() {
	for i := range n.d.Dated {
		n.dated(&n.d.Dated[i])
	}
	for i := range n.d.Fuel {
		f := &n.d.Fuel[i]
		end := n.lastDay("bladder", &f.Cell.Standard, &f.Cell.Made, nil, &f.Cell.Until)
		n.work(end.step(&f.Calc.CellDays, n))
	}
}

func (n *notebook) dated(d *document.Dated) {
	end := n.lastDay(itemOf[d.Kind], &d.Standard, &d.Made, &d.Serviced, &d.Until)
	n.work(end.step(&d.Calc.DaysLeft, n))
	if d.Calc.DaysLeft.Known {
		d.Calc.LastDay, d.Calc.By = end.day.Format(time.DateOnly), end.by
	} else if end.open != nil {
		d.Calc.By = end.by // who takes it without a last day
	}
	if d.Kind == "hand extinguisher" || d.Kind == "fire system" {
		n.serviced(d)
	}
}

// An end is the last day of an item, and why.
type end struct {
	day     time.Time
	by      string // "label", or the authority whose life is used
	formula string
	source  string
	clause  string
	note    string
	in      []Input
	open    error // why there is no last day
}

func (e end) step(to *document.Figure, n *notebook) step {
	s := step{
		to: to, formula: e.formula + " - " + n.d.Date, source: e.source, clause: e.clause, note: e.note,
		in: e.in,
		by: always(n.daysUntil(e.day)),
	}
	if e.open != nil {
		s.by = always(0, e.open)
	}
	return s
}

// lastDay is the last day on a label, else the life that the authorities of the
// car, or failing them the body that issued the standard, give it from the day
// made or checked. Of several authorities the strictest counts. An authority may
// allow an item past its label, or may have ended a standard.
func (n *notebook) lastDay(item string, standard *spec.Text, made, checked *spec.Label, until *spec.LastDay) end {
	rows := n.livesOf(item, standard.V)
	label := n.said("until", until)
	if label.Known {
		e := end{day: until.V.Last(), by: "label", formula: "last day on the label", source: "common-practice", in: []Input{label}}
		if len(rows) == 0 {
			return e
		}
		lenient := slices.MinFunc(rows, func(a, b tables.SafetyDateRow) int { return cmp.Compare(a.GraceMonths, b.GraceMonths) })
		if lenient.GraceMonths > 0 {
			e.day, e.source, e.clause = after(until.V, lenient.GraceMonths), lenient.Source, lenient.Clause
			e.formula = fmt.Sprintf("last day on the label + %d months that %s allows", lenient.GraceMonths, lenient.Authority)
		}
		return e.endedBy(rows)
	}
	e := end{in: []Input{label}, formula: "last day on the label", source: "common-practice"}
	if label.asked { // there is a day, which may be the earlier one
		return e
	}
	if !standard.Given() {
		e.in = []Input{lacking("until", label.Path)}
		return e
	}
	for _, row := range rows {
		from := made
		if row.CountedFrom == "check" && checked != nil {
			if from = checked; !checked.Given() {
				from = made
			}
		}
		if row.LifeMonths == 0 || item == "extinguisher" {
			continue
		}
		counted := from.V
		if row.CountedFrom == "made-year-end" {
			counted = unit.Date{Year: counted.Year}
		}
		last := after(counted, row.LifeMonths)
		if e.by == "" || last.Before(e.day) {
			e = end{
				day: last, by: row.Authority, source: row.Source, clause: row.Clause, note: row.Note,
				formula: fmt.Sprintf("made + %d months for %s by %s", row.LifeMonths, row.Standard, row.Authority),
				in:      []Input{n.said("made", from)},
			}
		}
	}
	if e.by == "" && len(rows) > 0 {
		e.in, e.by, e.open = nil, rows[0].Authority, fmt.Errorf("%s takes %s without a last day", rows[0].Authority, rows[0].Standard)
	}
	return e.endedBy(rows)
}

// endedBy takes account of the day on which an authority stops taking a
// standard.
func (e end) endedBy(rows []tables.SafetyDateRow) end {
	for _, row := range rows {
		last, err := time.Parse(time.DateOnly, row.AcceptedUntil)
		if err != nil || e.by != "" && e.open == nil && !last.Before(e.day) {
			continue
		}
		e.day, e.by, e.source, e.clause, e.open = last, row.Authority, row.Source, row.Clause, nil
		e.formula = fmt.Sprintf("last day on which %s takes %s", row.Authority, row.Standard)
		e.in = slices.DeleteFunc(e.in, func(in Input) bool { return !in.Known })
	}
	return e
}

// livesOf lists the lives of a standard under the authorities that the car is
// held to, else under the body that issues the standard.
func (n *notebook) livesOf(item, standard string) []tables.SafetyDateRow {
	bare := strings.TrimPrefix(strings.TrimSpace(standard), "FIA ") // labels print it, people leave it out
	rows := append(tables.SafetyDates(item, bare), tables.SafetyDates(item, "FIA "+bare)...)
	held := n.authorities()
	own := slices.DeleteFunc(slices.Clone(rows), func(r tables.SafetyDateRow) bool { return !slices.Contains(held, r.Authority) })
	if len(own) > 0 {
		return own
	}
	issuer := "fia"
	if strings.HasPrefix(standard, "SFI") {
		issuer = "sfi"
	}
	return slices.DeleteFunc(slices.Clone(rows), func(r tables.SafetyDateRow) bool {
		return r.Authority != issuer || strings.HasPrefix(standard, "Snell")
	})
}

// authorities are those that publish the car's rulebooks, as the table of lives
// names them.
func (n *notebook) authorities() []string {
	var held []string
	for i := range n.d.Books {
		b := &n.d.Books[i]
		held = append(held, strings.ReplaceAll(strings.ToLower(b.Authority.V), " ", "-"))
	}
	if slices.Contains(n.d.Rulebooks, "appendix-j") {
		held = append(held, "fia")
	}
	return held
}

// serviced works out when an extinguisher is due: by the interval on the label
// of a fire system, else by that of the authority.
func (n *notebook) serviced(d *document.Dated) {
	last, from := n.said("serviced", &d.Serviced), &d.Serviced
	if !last.Known && !last.asked && d.Made.Given() {
		last, from = n.said("made", &d.Made), &d.Made
	}
	s := step{to: &d.Calc.ServiceLeft, source: "common-practice", in: []Input{last}}
	rows := n.livesOf("extinguisher", "any")
	var due time.Time
	if d.Kind == "fire system" && len(n.d.Fire) > 0 && n.d.Fire[0].Every.Given() {
		every := n.said("every", &n.d.Fire[0].Every)
		due = after(from.V, int(every.Value))
		s.formula, s.in = "day serviced, or else made, + interval on the label", append(s.in, every)
	} else if len(rows) > 0 {
		row := slices.MinFunc(rows, func(a, b tables.SafetyDateRow) int { return cmp.Compare(a.LifeMonths, b.LifeMonths) })
		due = after(from.V, row.LifeMonths)
		s.formula = fmt.Sprintf("day serviced, or else made, + %d months by %s", row.LifeMonths, row.Authority)
		s.source, s.clause = row.Source, row.Clause
	}
	s.formula += " - " + n.d.Date
	s.by = always(n.daysUntil(due))
	n.work(s)
}

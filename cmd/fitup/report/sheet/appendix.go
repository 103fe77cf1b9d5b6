package sheet

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"fitup/cmd/fitup/report"
	"fitup/policies/tables"
	"fitup/spec/workings"
)

// An appendix is the workings of the sheet.
type appendix struct {
	Books       []notebook
	Shown, Made int // workings
	Sources     []source
}

// A notebook is the workings of one car.
type notebook struct {
	Of       string
	Subjects []subject
}

// A subject is what was worked out of one thing.
type subject struct {
	Path    string
	Figures []figure
}

// A figure is one working.
type figure struct {
	Name, Value, Formula string
	Inputs               string
	Notes                string // what is missing, where the formula is from
}

// appendixOf lists the workings that the sheet rests on, or all of them. What is
// the same in two cars stands in the first.
func appendixOf(s *Sheet) appendix {
	var a appendix
	keys := map[string]bool{}
	for _, f := range slices.Concat(s.Check.Findings, s.Check.Waived) {
		for _, each := range f.Sources {
			keys[each.Key] = true
		}
	}
	told := map[string]bool{}
	for _, n := range s.Notebooks {
		book, basis := notebook{Of: n.Of}, s.restsOn(n.Composed)
		for _, w := range n.Trace {
			f := figureOf(w)
			id := fmt.Sprintf("%s %+v", w.Subject, f)
			if told[id] {
				continue
			}
			told[id] = true
			if a.Made++; !s.All && !bears(w.Subject, basis) {
				continue
			}
			a.Shown++
			keys[w.Source] = true
			for _, in := range w.Inputs {
				keys[in.Source] = true
			}
			book.add(w.Subject, f)
		}
		a.Books = append(a.Books, book)
	}
	a.Sources = cited(keys)
	return a
}

// add adds a figure to those of its subject.
func (b *notebook) add(path string, f figure) {
	if last := len(b.Subjects) - 1; last < 0 || b.Subjects[last].Path != path {
		b.Subjects = append(b.Subjects, subject{Path: path})
	}
	last := &b.Subjects[len(b.Subjects)-1]
	last.Figures = append(last.Figures, f)
}

func figureOf(w workings.Working) figure {
	f := figure{Name: strings.ReplaceAll(w.Name, "_", " "), Value: report.ValueText(w), Formula: w.Formula}
	inputs := make([]string, len(w.Inputs))
	for i, in := range w.Inputs {
		inputs[i] = report.InputValue(in)
	}
	f.Inputs = strings.Join(inputs, "; ")
	var notes []string
	for _, n := range []entry{{"", w.Note}, {"missing: ", strings.Join(w.Missing, ", ")}, {"", strings.TrimSpace(w.Source + " " + w.Clause)}} {
		if n.Text != "" {
			notes = append(notes, n.Label+n.Text)
		}
	}
	f.Notes = strings.Join(notes, "; ")
	return f
}

// A source is a publication that the sheet rests on.
type source struct{ Key, Title, Edition string }

// cited are the sources of some keys, by key.
func cited(keys map[string]bool) []source {
	var all []source
	for _, key := range slices.Sorted(maps.Keys(keys)) {
		if cited, ok := tables.Source(key); ok {
			all = append(all, source{key, cited.Title, cited.Edition})
		}
	}
	return all
}

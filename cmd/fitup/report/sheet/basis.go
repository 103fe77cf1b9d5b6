package sheet

import (
	"strings"

	"fitup/spec/swap"
)

// standsAndHangs are the subjects of which the figures of standing, hanging and
// rolling are worked out.
var standsAndHangs = []string{"car", "support", "shop", "driveline.lift"}

// restsOn are the subjects in a document that the sheet rests on: how the car
// stands and hangs, what was found, what could not be told, and what does not meet.
func (s *Sheet) restsOn(c Composed) []string {
	all := append([]string(nil), standsAndHangs...)
	for _, n := range Number(s.Check) {
		if _, is := c.Prefix[n.File]; is {
			all = append(all, n.Subject)
		}
	}
	for _, m := range s.Check.Measures {
		if prefix, is := c.Prefix[m.File]; is {
			all = append(all, prefix+m.Path)
		}
	}
	if s.Work == nil || s.Work.Fit == nil {
		return all
	}
	if _, is := c.Prefix[s.Work.Into]; is {
		for _, i := range s.Work.Fit.Interfaces {
			if i.Verdict != swap.Meets && i.Verdict != swap.LeftOver {
				all = append(all, i.Name, i.Car)
			}
		}
	}
	return all
}

// bears tells whether a working of a subject bears on one of some paths: it is of
// the same thing, of a part of it, or of what it is a part of. Of a table of things
// it does not.
func bears(subject string, paths []string) bool {
	for _, path := range paths {
		if path != "" && (within(subject, path) || strings.Contains(subject, ".") && within(path, subject)) {
			return true
		}
	}
	return false
}

// within tells whether a key path is another or lies below it.
func within(path, of string) bool {
	rest, found := strings.CutPrefix(path, of)
	return found && (rest == "" || rest[0] == '.' || rest[0] == '#')
}

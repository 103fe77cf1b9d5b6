package judge

import (
	"strings"

	"fitup/policies"
	"fitup/spec"
)

// main is the file that a composition is about.
func main(c *spec.Composition) *spec.File {
	if c.Car != nil {
		return c.Car
	}
	return c.Driveline
}

// file finds the file that a document path is in, and the key path within it.
func (v *verdict) file(path string) (*spec.File, string) {
	if rest, ok := strings.CutPrefix(path, "driveline."); ok && v.Driveline != nil {
		return v.Driveline, rest
	}
	if rest, ok := strings.CutPrefix(path, "shop."); ok && v.Shop != nil {
		return v.Shop, rest
	}
	return main(v.Composition), path
}

// locate turns a document path into a place in a file.
func (v *verdict) locate(path string) Location {
	file, key := v.file(path)
	return Location{File: file.Name, Path: v.one(key), Place: file.Place(file.Find(key))}
}

// locate finds the place of a key path. The path is copied: it may be part of the
// whole text of the file, which nobody is to keep for it.
func locate(file *spec.File, key string) Location {
	return Location{File: file.Name, Path: strings.Clone(key), Place: file.Place(file.Find(key))}
}

// place makes the finding of a report from what a rule found.
func (v *verdict) place(rule *policies.Rule, found policies.Finding) Finding {
	what, _ := rule.Case(found.Case)
	f := Finding{
		Rule: rule.ID, Case: v.one(found.Case), Level: what.Level, Subject: v.one(found.Subject), Location: v.locate(found.Subject),
		Fix: rule.Fix, Caution: what.Caution, Sources: rule.Sources, Rulebook: rule.Rulebook, Confidence: rule.Confidence,
	}
	if f.Caution == "" {
		f.Caution = rule.Caution
	}
	if found.At != "" {
		// The place is that of the field, but the finding stays known by its
		// subject.
		at := v.doc.Resolve(rule.Subject, found.Subject, found.At)
		if at.By != "" { // it is written in another file, and named in this one
			f.See = append(f.See, v.locate(at.Path))
			at.Path = at.By
		}
		if file, key := v.file(at.Path); file.Name == f.File {
			f.Place = file.Place(file.Find(key))
		}
	}
	for _, path := range found.Also {
		f.Also = append(f.Also, v.locate(path))
	}
	if v.Trial {
		f.With = v.Driveline.Name
	}
	file, _ := v.file(found.Subject)
	f.Excerpt = file.Line(f.Line)
	f.Figures = v.figures(rule, found)
	f.Message = fillIn(what.Message, f.Path, f.Figures)
	return f
}

// unitsOf is the author's choice of units for figures that nobody wrote.
func (v *verdict) unitsOf() string {
	if v.Car != nil {
		return v.Car.Car.Car.Units.V
	}
	return v.Driveline.Driveline.Driveline.Units.V
}

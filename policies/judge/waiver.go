package judge

import (
	"cmp"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/nearest"
)

// waive sets findings aside and returns the findings about waivers themselves.
// A waiver holds in its own file only, so what a shared file says is set aside
// there and nowhere else.
func (r *Run) waive(report *Report, files []*spec.File) {
	for _, file := range files {
		for name, w := range waiversOf(file).All() {
			r.apply(report, file, "waivers."+name, w)
		}
	}
}

func waiversOf(file *spec.File) *spec.Table[spec.Waiver] {
	switch file.Kind {
	case spec.KindCar:
		return &file.Car.Waivers
	case spec.KindDriveline:
		return &file.Driveline.Waivers
	}
	return &file.Shop.Waivers
}

func (r *Run) apply(report *Report, file *spec.File, path string, w *spec.Waiver) {
	say := func(rule *policies.Rule, key string, figures ...string) {
		report.Findings = append(report.Findings, ownFinding(rule, file, path+key, figures...))
	}
	rule, chosen := r.Engine.Rule(w.Rule.V)
	if !chosen {
		names := r.Engine.Names()
		if slices.Contains(names, w.Rule.V) {
			return // a rule that was not asked this time
		}
		near := ""
		if meant := nearest.To(w.Rule.V, names); meant != "" {
			near = "; did you mean " + meant + "?"
		}
		say(waiverUnknownRule, ".rule", "rule", w.Rule.V, "near", near)
		return
	}
	if rule.Level == policies.LevelDanger && !rule.Waivable {
		say(waiverRefused, ".rule", "rule", rule.ID)
		return
	}
	last := w.Until.V.Last()
	if r.Date.After(last) {
		say(waiverExpired, ".until", "rule", rule.ID, "day", last.Format(time.DateOnly))
		return
	}
	holds := Waiver{Location: locate(file, path), Rule: rule.ID, On: w.On.V, Why: w.Why.V, Until: last}
	report.Waivers = append(report.Waivers, holds)
	for _, subject := range w.On.V {
		key, _, _ := strings.Cut(subject, "#")
		if _, known := file.Key(key); !known {
			say(waiverUnknownSubject, ".on", "thing", subject)
			continue
		}
		if !setAside(report, rule.ID, file.Name, subject, holds) && r.Whole {
			say(waiverUnused, ".on", "rule", rule.ID, "thing", subject)
		}
	}
}

// setAside moves the findings of a rule on a subject from those in force to
// those waived, and tells whether there was any.
func setAside(report *Report, rule, file, subject string, w Waiver) bool {
	before := len(report.Waived)
	report.Findings = slices.DeleteFunc(report.Findings, func(f Finding) bool {
		if f.Rule != rule || f.File != file || f.Path != subject {
			return false
		}
		f.Waiver = &w
		report.Waived = append(report.Waived, f)
		return true
	})
	return len(report.Waived) > before
}

// ownFinding makes a finding of the tool's own; figures are name and text in
// turn.
func ownFinding(rule *policies.Rule, file *spec.File, path string, figures ...string) Finding {
	f := Finding{
		Rule: rule.ID, Level: rule.Level, Subject: path, Location: locate(file, path),
		Fix: rule.Fix, Sources: rule.Sources, Rulebook: rule.Rulebook, Confidence: rule.Confidence,
	}
	for i := 0; i+1 < len(figures); i += 2 {
		f.Figures = append(f.Figures, Figure{Name: figures[i], Value: figures[i+1], Dimension: "text", Text: figures[i+1]})
	}
	slices.SortFunc(f.Figures, func(a, b Figure) int { return cmp.Compare(a.Name, b.Name) })
	f.Excerpt = file.Line(f.Line)
	f.Message = fillIn(rule.Message, path, f.Figures)
	return f
}

package judge

import (
	"cmp"
	"slices"
	"time"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/nearest"
)

// waive sets findings aside and adds the findings about waivers themselves. A
// waiver holds in its own file only, so what a shared file says is set aside there
// and nowhere else.
func (r *Run) waive(report *Report, claims []claim) {
	type target struct{ rule, file, subject string }
	type cover struct {
		*Waiver
		on      spot
		subject string
		used    bool
	}
	var covers []*cover
	of := map[target]*cover{} // the first that there is
	for _, c := range claims {
		w := r.accept(report, c)
		if w == nil {
			continue
		}
		report.Waivers = append(report.Waivers, *w)
		for i, subject := range c.subjects {
			if c.unknown[i] {
				say(report, waiverUnknownSubject, c.on, "thing", subject)
				continue
			}
			covers = append(covers, &cover{Waiver: w, on: c.on, subject: subject})
			if t := (target{w.Rule, c.File, subject}); of[t] == nil {
				of[t] = covers[len(covers)-1]
			}
		}
	}
	report.Findings = slices.DeleteFunc(report.Findings, func(f Finding) bool {
		c := of[target{f.Rule, f.File, f.Path}]
		if c == nil {
			return false
		}
		c.used, f.Waiver = true, c.Waiver
		report.Waived = append(report.Waived, f)
		return true
	})
	for _, c := range covers {
		if !c.used && r.Whole {
			say(report, waiverUnused, c.on, "rule", c.Rule, "thing", c.subject)
		}
	}
}

// accept returns the waiver that a claim makes. If it makes none, that is found.
func (r *Run) accept(report *Report, c claim) *Waiver {
	rule, chosen := r.Engine.Rule(c.rule)
	if !chosen {
		names := r.Engine.Names()
		if slices.Contains(names, c.rule) {
			return nil // a rule that was not asked this time
		}
		near := ""
		if meant := nearest.To(c.rule, names); meant != "" {
			near = "; did you mean " + meant + "?"
		}
		say(report, waiverUnknownRule, c.named, "rule", c.rule, "near", near)
		return nil
	}
	if rule.Level == policies.LevelDanger && !rule.Waivable {
		say(report, waiverRefused, c.named, "rule", rule.ID)
		return nil
	}
	if r.Date.After(c.until) {
		say(report, waiverExpired, c.ends, "rule", rule.ID, "day", c.until.Format(time.DateOnly))
		return nil
	}
	return &Waiver{Location: c.Location, Rule: rule.ID, On: c.subjects, Why: c.why, Until: c.until}
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

// say adds a finding of the tool's own.
func say(report *Report, rule *policies.Rule, at spot, figures ...string) {
	report.Findings = append(report.Findings, ownFinding(rule, at, figures...))
}

// ownFinding makes a finding of the tool's own; figures are name and text in
// turn.
func ownFinding(rule *policies.Rule, at spot, figures ...string) Finding {
	f := Finding{
		Rule: rule.ID, Level: rule.Level, Subject: at.Path, Location: at.Location, Excerpt: at.excerpt,
		Fix: rule.Fix, Sources: rule.Sources, Rulebook: rule.Rulebook, Confidence: rule.Confidence,
	}
	for i := 0; i+1 < len(figures); i += 2 {
		f.Figures = append(f.Figures, Figure{Name: figures[i], Value: figures[i+1], Dimension: "text", Text: figures[i+1]})
	}
	slices.SortFunc(f.Figures, func(a, b Figure) int { return cmp.Compare(a.Name, b.Name) })
	f.Message = fillIn(rule.Message, at.Path, f.Figures)
	return f
}

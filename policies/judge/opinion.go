package judge

import (
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
)

// verdict is what the rules say of one composition, with the document that they
// said it of.
type verdict struct {
	*spec.Composition
	doc     *document.Document
	outcome policies.Outcome
	*texts
}

// opinion is what a report keeps of a verdict. It holds on to no file and no
// document, and to no text that is part of one.
type opinion struct {
	car, driveline string // names of their files; "" for none
	account        Account
	findings       []Finding
	wants          []want
	judged         int // judgements made
	unjudged       int // dangers that could not tell, by subject
	faults         []policies.Fault
	fitted         *spot   // where the car says which driveline is in it; nil if none is
	claims         []claim // what its files waive
}

// spot is a place in a file, with the line there.
type spot struct {
	Location
	excerpt string
}

func spotOf(file *spec.File, path string) spot {
	l := locate(file, path)
	return spot{l, file.Line(l.Line)}
}

// claim is one waiver as it is written, with what has to be known of its file.
type claim struct {
	spot
	named, ends, on spot // its keys rule, until and on
	rule, why       string
	subjects        []string
	unknown         []bool // of each subject: its file has none of that name
	until           time.Time
}

func (v *verdict) opinion(engine *policies.Engine) opinion {
	o := opinion{car: nameOf(v.Car), driveline: nameOf(v.Driveline), faults: v.outcome.Faults}
	guesses := map[string][]string{}
	for _, guess := range v.outcome.Guesses {
		rule, _ := engine.Rule(guess.Rule)
		key := guess.Rule + "|" + guess.Subject
		for _, need := range guess.Guessed {
			for _, path := range guessedPaths(v.doc.Resolve(rule.Subject, guess.Subject, need)) {
				if path = v.one(path); !slices.Contains(guesses[key], path) {
					guesses[key] = append(guesses[key], path)
				}
			}
		}
	}
	for _, found := range v.outcome.Findings {
		rule, _ := engine.Rule(found.Rule)
		f := v.place(rule, found)
		f.Guessed = guesses[found.Rule+"|"+found.Subject]
		o.findings = append(o.findings, f)
	}
	for _, gap := range v.outcome.CannotTell {
		rule, _ := engine.Rule(gap.Rule)
		if rule.Level == policies.LevelDanger {
			o.unjudged++
		}
		o.wants = append(o.wants, v.wants(rule, gap)...)
	}
	o.account = v.account(engine.IDs())
	for _, subjects := range v.outcome.Judged {
		o.judged += len(subjects)
	}
	if v.Car != nil && v.Driveline != nil && !v.Trial {
		at := spotOf(v.Car, "car.driveline")
		o.fitted = &at
	}
	for _, file := range v.files() {
		for name, w := range waiversOf(file).All() {
			o.claims = append(o.claims, claimOf(file, "waivers."+name, w))
		}
	}
	return o
}

// guessedPaths are the paths that somebody guessed at: of a figure, those of the
// values that it comes from.
func guessedPaths(f document.Field) []string {
	if f.Figure != nil && len(f.Figure.Guesses) > 0 {
		return f.Figure.Guesses
	}
	return []string{f.Path}
}

// files are those of the composition.
func (v *verdict) files() []*spec.File {
	return slices.DeleteFunc([]*spec.File{v.Car, v.Driveline, v.Shop}, func(f *spec.File) bool { return f == nil })
}

func nameOf(f *spec.File) string {
	if f == nil {
		return ""
	}
	return f.Name
}

func claimOf(file *spec.File, path string, w *spec.Waiver) claim {
	c := claim{
		spot: spotOf(file, path), named: spotOf(file, path+".rule"), ends: spotOf(file, path+".until"), on: spotOf(file, path+".on"),
		rule: strings.Clone(w.Rule.V), why: strings.Clone(w.Why.V), until: w.Until.V.Last(),
	}
	for _, subject := range w.On.V {
		key, _, _ := strings.Cut(subject, "#")
		_, known := file.Key(key)
		c.subjects, c.unknown = append(c.subjects, strings.Clone(subject)), append(c.unknown, !known)
	}
	return c
}

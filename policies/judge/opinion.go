package judge

import (
	"maps"
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
}

// opinion is what a report keeps of a verdict. It holds on to no file and no
// document, and to no text that is part of one.
type opinion struct {
	car, driveline string // names of their files; "" for none
	account        Account
	findings       []Finding
	wants          []want
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
		for _, need := range guess.Guessed {
			key := guess.Rule + "|" + guess.Subject
			guesses[key] = append(guesses[key], strings.Clone(v.doc.Resolve(rule.Subject, guess.Subject, need).Path))
		}
	}
	for _, found := range v.outcome.Findings {
		rule, _ := engine.Rule(found.Rule)
		f := v.place(rule, found)
		f.Guessed = guesses[found.Rule+"|"+found.Subject]
		o.findings = append(o.findings, f)
	}
	unclear := map[string][]Location{}
	for _, gap := range v.outcome.CannotTell {
		rule, _ := engine.Rule(gap.Rule)
		if rule.Level == policies.LevelDanger {
			o.unjudged++
		}
		o.wants = append(o.wants, v.wants(rule, gap)...)
		of := gap.Subject
		if gap.Collection != "" {
			of = document.CollectionKey(gap.Collection)
		}
		unclear[rule.ID] = append(unclear[rule.ID], v.locate(of))
	}
	o.account = Account{File: main(v.Composition).Name, Alone: v.Car == nil}
	if v.Trial {
		o.account.With = v.Driveline.Name
	}
	for _, rule := range slices.Sorted(maps.Keys(v.outcome.Judged)) {
		o.account.Judgements = append(o.account.Judgements, Judgement{Rule: rule, Subjects: len(v.outcome.Judged[rule]), Unclear: unclear[rule]})
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

// claimsOf lists the waivers of every file once, in the order met.
func claimsOf(opinions []opinion) []claim {
	var claims []claim
	seen := map[string]bool{} // files and paths
	for _, o := range opinions {
		for _, c := range o.claims {
			if key := c.File + "|" + c.Path; !seen[key] {
				seen[key] = true
				claims = append(claims, c)
			}
		}
	}
	return claims
}

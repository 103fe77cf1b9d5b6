package judge

import (
	"iter"

	"fitup/spec/document"
)

// An Account is what was made of one composition, rule by rule. A fleet has one for
// each car, so a rule that has nothing to say takes a byte of it.
type Account struct {
	File  string      // of the car, or of a driveline by itself
	With  string      // the driveline, when it is not the one fitted
	Alone bool        // it is a driveline by itself
	Rules []string    // ids of the rules that there were to ask, sorted; all accounts share them
	Reach []Reach     // of each of the rules
	Said  []Judgement // by rules that found something or could not tell, by id
}

// Reach is how far a rule came with a composition.
type Reach uint8

const (
	Outside Reach = iota // it is not of a stage, or of no rulebook, of the rule
	Idle                 // the rule held, and there was nothing for it to judge
	Applied              // the rule judged something
)

// A Judgement is what one rule made of one composition.
type Judgement struct {
	Rule    string   // id
	Applied bool     // there was something for it to judge
	Unclear []Key    // subjects that it could not tell of, or the collection of which nothing is said
	Found   []string // identities of its findings, in force or not
}

// A Key is something in a file, wherever it stands there.
type Key struct{ File, Path string }

// Judgements are those of all rules that held, by id.
func (a *Account) Judgements() iter.Seq[Judgement] {
	return func(yield func(Judgement) bool) {
		said := a.Said
		for i, reach := range a.Reach {
			j := Judgement{Rule: a.Rules[i], Applied: reach == Applied}
			if len(said) > 0 && said[0].Rule == j.Rule {
				j, said = said[0], said[1:]
			}
			if reach != Outside && !yield(j) {
				return
			}
		}
	}
}

// account tells what the rules made of the composition, save what they found. rules
// are their ids, sorted.
func (v *verdict) account(rules []string) Account {
	a := Account{Rules: rules, File: main(v.Composition).Name, Alone: v.Car == nil, Reach: make([]Reach, len(rules))}
	if v.Trial {
		a.With = v.Driveline.Name
	}
	unclear, speaks := map[string][]Key{}, map[string]bool{}
	for _, gap := range v.outcome.CannotTell {
		of := gap.Subject
		if gap.Collection != "" {
			of = document.CollectionKey(gap.Collection)
		}
		at := v.locate(of)
		unclear[gap.Rule], speaks[gap.Rule] = append(unclear[gap.Rule], Key{at.File, at.Path}), true
	}
	for _, found := range v.outcome.Findings {
		speaks[found.Rule] = true
	}
	for i, rule := range rules {
		subjects, held := v.outcome.Judged[rule]
		switch {
		case !held:
			continue
		case len(subjects) == 0:
			a.Reach[i] = Idle
		default:
			a.Reach[i] = Applied
		}
		if speaks[rule] {
			a.Said = append(a.Said, Judgement{Rule: rule, Applied: len(subjects) > 0, Unclear: unclear[rule]})
		}
	}
	return a
}

// find notes the identity of a finding of a rule, if the rule held.
func (a *Account) find(rule, identity string) {
	for i := range a.Said {
		if a.Said[i].Rule == rule {
			a.Said[i].Found = append(a.Said[i].Found, identity)
		}
	}
}

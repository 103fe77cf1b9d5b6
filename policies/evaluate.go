package policies

import (
	"bytes"
	"cmp"
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"maps"
	"slices"
	"strings"
	"sync"

	"github.com/open-policy-agent/opa/v1/ast"
	"github.com/open-policy-agent/opa/v1/rego"
	"github.com/open-policy-agent/opa/v1/topdown"
)

// An Outcome is what the rules say of one document. Each list is sorted.
type Outcome struct {
	Findings   []Finding
	CannotTell []Gap
	Guesses    []Guess
	Judged     map[string][]string // subjects by rule id, for every rule that held
	Faults     []Fault
}

// A Finding is what a rule found of one subject.
type Finding struct {
	Rule    string         `json:"rule"`
	Case    string         `json:"case"` // empty if the rule has no cases
	Subject string         `json:"subject"`
	At      string         `json:"at"`   // the field to point at; empty for the whole subject
	Also    []string       `json:"also"` // other subjects that it is about
	Figures map[string]any `json:"figures"`
}

// A Gap is a subject, or a whole collection, that a rule could not judge.
type Gap struct {
	Rule       string   `json:"rule"`
	Subject    string   `json:"subject"`
	Missing    []string `json:"missing"` // fields; `a|b` where either would do
	Collection string   `json:"collection"`
}

// A Guess is what a finding rests on although its author marked it as a guess.
type Guess struct {
	Rule    string   `json:"rule"`
	Subject string   `json:"subject"`
	Guessed []string `json:"guessed"`
}

// A Fault is something wrong with a rule, not with the car.
type Fault struct {
	Rule    string // empty if it is not known which
	Message string
}

// Evaluate asks every rule about a document. Its error is ctx's, or that the
// document cannot be read, or that the rules do not compile; a rule that fails is a
// Fault, and the others judge.
func (e *Engine) Evaluate(ctx context.Context, document any) (Outcome, error) {
	input, err := ast.InterfaceToValue(document)
	if err != nil {
		return Outcome{}, fmt.Errorf("document: %w", err)
	}
	said, err := e.askAll(ctx, input)
	if ctx.Err() != nil {
		return Outcome{}, ctx.Err()
	}
	if err := e.prepared(); err != nil {
		return Outcome{}, err
	}
	if err == nil && e.blame(&said) {
		return e.outcome(said), nil
	}
	return e.askOneByOne(ctx, input)
}

// askAll asks all panels at once, each as soon as it is ready.
func (e *Engine) askAll(ctx context.Context, input ast.Value) (reply, error) {
	replies, errs := make([]reply, len(e.panels)), make([]error, len(e.panels))
	var wait sync.WaitGroup
	for i, p := range e.panels {
		wait.Go(func() {
			if errs[i] = p.prepared(); errs[i] == nil {
				replies[i], errs[i] = e.ask(ctx, p.answering(), input)
			}
		})
	}
	wait.Wait()
	var all reply
	for _, said := range replies {
		all.add(said)
	}
	return all, errors.Join(errs...)
}

// askOneByOne asks each rule alone, to find the one that fails.
func (e *Engine) askOneByOne(ctx context.Context, input ast.Value) (Outcome, error) {
	var all reply
	for _, p := range e.panels {
		for id, registered := range p.registered() {
			said, err := e.askOne(ctx, p, id, registered, input)
			if err != nil {
				return Outcome{}, err
			}
			all.add(said)
		}
	}
	return e.outcome(all), nil
}

// askOne asks one rule of a panel. What fails is a fault of that rule; an error is
// ctx's. A rule that had to be stopped is asked no more: in a fleet it would have
// to be stopped for each car.
func (e *Engine) askOne(ctx context.Context, p *panel, id string, registered any, input ast.Value) (reply, error) {
	one, err := json.Marshal(map[string]any{id: registered})
	if err != nil {
		return reply{}, err
	}
	query, err := p.prepareQuery(ctx, fmt.Sprintf("data.fitup with data.registry as %s", one))
	if err != nil {
		return reply{}, err
	}
	said, err := e.ask(ctx, query, input)
	if ctx.Err() != nil {
		return reply{}, ctx.Err()
	}
	if _, stopped := errors.AsType[stopError](err); stopped {
		return reply{faults: []Fault{{id, err.Error() + "; it was not asked again"}}}, p.strike(ctx, id)
	}
	if err != nil {
		return reply{faults: []Fault{{id, err.Error()}}}, nil
	}
	for _, failed := range said.failed {
		said.faults = append(said.faults, Fault{id, located(failed)})
	}
	return said, nil
}

// A reply is what data.fitup holds, undecoded: an own rule may have put anything
// into its sets.
type reply struct {
	findings, cannotTell, guesses, strays []any
	judged                                map[string]any // a list by rule id

	failed []topdown.Error // built-in calls that failed, in silence otherwise
	faults []Fault
}

func (r *reply) add(o reply) {
	r.findings = append(r.findings, o.findings...)
	r.cannotTell = append(r.cannotTell, o.cannotTell...)
	r.guesses = append(r.guesses, o.guesses...)
	r.strays = append(r.strays, o.strays...)
	if r.judged == nil {
		r.judged = map[string]any{}
	}
	maps.Copy(r.judged, o.judged)
	r.failed = append(r.failed, o.failed...)
	r.faults = append(r.faults, o.faults...)
}

// ask runs one query under the engine's limits of time and memory.
func (e *Engine) ask(ctx context.Context, query rego.PreparedEvalQuery, input ast.Value) (reply, error) {
	ctx, stop := context.WithTimeoutCause(ctx, e.timeout, stopError{fmt.Sprintf("no answer within %v", e.timeout)})
	defer stop()
	ctx, stop = watchHeap(ctx, e.heap)
	defer stop()

	said, err := patiently(ctx, func() (reply, error) { return answer(ctx, query, input) })
	if topdown.IsCancel(err) {
		err = context.Cause(ctx)
	}
	return said, err
}

// answer is what one query says.
func answer(ctx context.Context, query rego.PreparedEvalQuery, input ast.Value) (reply, error) {
	var said reply
	results, err := query.Eval(ctx, rego.EvalParsedInput(input), rego.EvalBuiltinErrorList(&said.failed))
	switch {
	case topdown.IsCancel(err):
		return said, err
	case err != nil:
		return said, plainEval(err)
	case len(results) == 0:
		return said, errors.New("no answer")
	}
	answers := results[0].Expressions[0].Value.(map[string]any) // fitup.rego is a package: sets and an object
	said.findings, said.cannotTell = answers["findings"].([]any), answers["cannot_tell"].([]any)
	said.guesses, said.strays = answers["guesses"].([]any), answers["strays"].([]any)
	said.judged = answers["judged"].(map[string]any)
	return said, nil
}

// blame turns failed calls into faults of the rules that they stand in. It
// reports false if it cannot: the call stands in what rules share.
func (e *Engine) blame(said *reply) bool {
	for _, failed := range said.failed {
		if failed.Location == nil {
			return false
		}
		r, ok := e.byFile[failed.Location.File]
		if !ok {
			return false
		}
		said.faults = append(said.faults, Fault{r.id(), located(failed)})
	}
	return true
}

func located(e topdown.Error) string {
	text := strings.ReplaceAll(e.Message, "\n", ";")
	if e.Location == nil {
		return text
	}
	return fmt.Sprintf("%s:%d: %s", e.Location.File, e.Location.Row, text)
}

func plainEval(err error) error {
	if e, ok := errors.AsType[*topdown.Error](err); ok {
		return errors.New(located(*e))
	}
	return err
}

// outcome decodes, checks and sorts a reply.
func (e *Engine) outcome(said reply) Outcome {
	o := Outcome{Judged: map[string][]string{}, Faults: said.faults}
	for _, f := range decodeAll[Finding](said.findings, &o.Faults) {
		if err := e.checkFinding(f); err != nil {
			o.Faults = append(o.Faults, Fault{f.Rule, fmt.Sprintf("%s: finding on %s: %v", e.byID[f.Rule].file, f.Subject, err)})
			continue
		}
		o.Findings = append(o.Findings, f)
	}
	o.Findings = e.withoutFloods(o.Findings, &o.Faults)
	slices.SortFunc(o.Findings, func(a, b Finding) int {
		return cmp.Or(strings.Compare(a.Rule, b.Rule), strings.Compare(a.Subject, b.Subject), strings.Compare(a.Case, b.Case),
			slices.Compare(a.Also, b.Also), strings.Compare(a.At, b.At), strings.Compare(fmt.Sprint(a.Figures), fmt.Sprint(b.Figures)))
	})
	o.CannotTell = merged(decodeAll[Gap](said.cannotTell, &o.Faults),
		func(g Gap) [3]string { return [3]string{g.Rule, g.Subject, g.Collection} }, func(g *Gap) *[]string { return &g.Missing })
	o.Guesses = merged(decodeAll[Guess](said.guesses, &o.Faults),
		func(g Guess) [3]string { return [3]string{g.Rule, g.Subject} }, func(g *Guess) *[]string { return &g.Guessed })
	for id, list := range said.judged {
		subjects, ok := pathsIn(list.([]any))
		if !ok {
			o.Faults = append(o.Faults, Fault{id, fmt.Sprintf("%s: judges: a subject is no path", e.byID[id].file)})
			continue
		}
		o.Judged[id] = subjects // the set comes sorted
	}
	for _, s := range decodeAll[stray](said.strays, &o.Faults) {
		o.Faults = append(o.Faults, Fault{s.Rule, e.byID[s.Rule].file + ": " + s.fault(e.byID[s.Rule].subject)})
	}
	slices.SortFunc(o.Faults, func(a, b Fault) int {
		return cmp.Or(strings.Compare(a.Rule, b.Rule), strings.Compare(a.Message, b.Message))
	})
	o.Faults = slices.Compact(o.Faults)
	return o
}

// A stray is a subject that a rule should not have spoken of.
type stray struct{ Rule, Found, Judged string }

func (s stray) fault(collection string) string {
	if s.Found != "" {
		return short(s.Found) + ": found, but not judged"
	}
	return short(s.Judged) + ": judged, but not one of " + collection
}

// pathsIn turns a list into strings. It returns false if it holds anything else.
func pathsIn(list []any) ([]string, bool) {
	all := make([]string, len(list))
	for i, each := range list {
		var ok bool
		if all[i], ok = each.(string); !ok {
			return nil, false
		}
	}
	return all, true
}

// decodeAll decodes each of a list, or makes it a fault of the rule it names.
func decodeAll[T any](list []any, faults *[]Fault) []T {
	var all []T
	for _, one := range list {
		text, err := json.Marshal(one)
		if err != nil {
			panic(err) // it comes of JSON's values only
		}
		var v T
		decoder := json.NewDecoder(bytes.NewReader(text))
		decoder.DisallowUnknownFields()
		if err := decoder.Decode(&v); err != nil {
			var of struct{ Rule string }
			_ = json.Unmarshal(text, &of) // fitup.rego puts the rule there
			*faults = append(*faults, Fault{of.Rule, fmt.Sprintf("%s: %v", short(string(text)), err)})
			continue
		}
		all = append(all, v)
	}
	return all
}

// merged sorts, and joins the fields named for one subject: a rule may judge a
// subject for two reasons.
func merged[T any](all []T, about func(T) [3]string, fields func(*T) *[]string) []T {
	slices.SortFunc(all, func(a, b T) int {
		x, y := about(a), about(b)
		return slices.Compare(x[:], y[:])
	})
	var out []T
	for _, each := range all {
		if n := len(out); n > 0 && about(out[n-1]) == about(each) {
			list := fields(&out[n-1])
			*list = append(*list, *fields(&each)...)
			continue
		}
		out = append(out, each)
	}
	for i := range out {
		list := fields(&out[i])
		slices.Sort(*list)
		*list = slices.Compact(*list)
	}
	return out
}

// checkFinding holds a finding to what its rule's METADATA promises.
func (e *Engine) checkFinding(f Finding) error {
	r := e.byID[f.Rule].whole()
	if err := f.checkSize(); err != nil {
		return err
	}
	c, ok := r.Case(f.Case)
	if !ok {
		return fmt.Errorf("case %q is none of %q", f.Case, r.CaseNames())
	}
	for name, value := range f.Figures {
		figure, ok := r.Figures[name]
		if !ok {
			return fmt.Errorf("figure %q is not in METADATA", name)
		}
		switch value.(type) {
		case float64:
			ok = !slices.Contains([]string{"text", "date", "path"}, figure.Dimension)
		case string:
			ok = slices.Contains([]string{"text", "date", "path"}, figure.Dimension)
		default:
			ok = false
		}
		if !ok {
			return fmt.Errorf("figure %s: %v is no %s", name, value, figure.Dimension)
		}
	}
	for _, name := range Placeholders(c.Message) {
		if _, ok := f.Figures[name]; !ok && name != "subject" {
			return fmt.Errorf("figure %q of the message is missing", name)
		}
	}
	return nil
}

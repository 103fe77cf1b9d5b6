package judge

import (
	"cmp"
	"context"
	"maps"
	"runtime"
	"slices"
	"strings"
	"sync"
	"time"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/workings"
)

// A Run is the rules and the day that a fleet is judged by.
type Run struct {
	Engine  *policies.Engine // Start does without
	Date    time.Time
	Workers int // 0 for one a core
	// Fleet says that every car of the outfit is there, so that what only a
	// fleet shows can be told.
	Fleet bool
	// Whole says that every car of the outfit is judged by every rule, so that a
	// waiver nobody uses can be told.
	Whole bool
	// Heard, if it is given, is called when a composition has been judged, by
	// several goroutines.
	Heard func()
}

// Judge judges compositions. The report is the same whatever the number of
// workers. Its error is ctx's.
func (r *Run) Judge(ctx context.Context, compositions []*spec.Composition) (*Report, error) {
	s := r.Start(ctx, func() (*policies.Engine, error) { return r.Engine, nil })
	for _, c := range compositions {
		if err := s.Add(c); err != nil {
			break // Report tells it
		}
	}
	return s.Report()
}

// A Sitting judges compositions as they come. Of a composition nothing is kept but
// what the report says of it: a large fleet does not fit into memory.
type Sitting struct {
	*Run
	ctx   context.Context
	rules func() (*policies.Engine, error)
	given chan *spec.Composition
	wait  sync.WaitGroup
	texts *texts

	mu       sync.Mutex
	opinions []opinion
	err      error
}

// Start begins to judge by rules that may still be made meanwhile. End it with
// Report.
func (r *Run) Start(ctx context.Context, rules func() (*policies.Engine, error)) *Sitting {
	s := &Sitting{Run: r, ctx: ctx, rules: rules, given: make(chan *spec.Composition), texts: newTexts()}
	workers := r.Workers
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	for range workers {
		s.wait.Go(func() {
			for c := range s.given {
				s.hear(c)
			}
		})
	}
	return s
}

// Add gives a composition to be judged, and waits until a worker takes it. Its
// error is that of one given before.
func (s *Sitting) Add(c *spec.Composition) error {
	if err := s.failed(); err != nil {
		return err
	}
	s.given <- c
	return nil
}

func (s *Sitting) failed() error {
	s.mu.Lock()
	defer s.mu.Unlock()
	return cmp.Or(s.err, s.ctx.Err())
}

func (s *Sitting) hear(c *spec.Composition) {
	o, err := s.one(c)
	if s.Heard != nil {
		s.Heard()
	}
	s.mu.Lock()
	defer s.mu.Unlock()
	s.opinions = append(s.opinions, o)
	s.err = cmp.Or(s.err, err)
}

// Report waits until all that was given is judged, and tells of it in the order of
// cars and drivelines.
func (s *Sitting) Report() (*Report, error) {
	close(s.given)
	s.wait.Wait()
	var err error
	if s.Engine, err = s.rules(); err != nil {
		return nil, err
	}
	if err := s.failed(); err != nil {
		return nil, err
	}
	slices.SortFunc(s.opinions, func(a, b opinion) int {
		return cmp.Or(strings.Compare(a.car, b.car), strings.Compare(a.driveline, b.driveline))
	})
	return s.gather(s.opinions), nil
}

func (s *Sitting) one(c *spec.Composition) (opinion, error) {
	doc := document.Join(c, s.Date)
	workings.Derive(doc)
	encoded := doc.Value()
	engine, err := s.rules()
	if err != nil {
		return opinion{}, err
	}
	outcome, err := engine.Evaluate(s.ctx, encoded)
	if err != nil {
		return opinion{}, err
	}
	v := &verdict{c, doc, outcome, s.texts}
	return v.opinion(engine), nil
}

func (r *Run) gather(opinions []opinion) *Report {
	report := &Report{Date: r.Date, Digest: r.Engine.Digest(), Asked: r.Engine.IDs(), Describe: r.Engine.Rules}
	report.Faults = append(report.Faults, r.Engine.Faults()...)
	g := gatherer{
		report: report, shared: map[string]int{}, measures: map[string]*Measure{}, areas: map[string]bool{},
		fitted: map[string][]spot{}, claimed: map[Key]bool{},
	}
	for i := range opinions {
		g.add(opinions[i])
		opinions[i] = opinion{} // a report of a large fleet is not kept twice
	}
	g.finish()
	if r.Fleet {
		fitted(report, g.fitted)
	}
	r.waive(report, g.claims)
	sortFindings(report.Findings)
	sortFindings(report.Waived)
	return report
}

// gatherer puts the opinions of a run together.
type gatherer struct {
	report   *Report
	shared   map[string]int // identity of a finding in a shared file -> its index
	measures map[string]*Measure
	areas    map[string]bool
	fitted   map[string][]spot // by driveline, where cars say that it is in them
	claims   []claim           // the waivers of every file, each once, in the order met
	claimed  map[Key]bool
}

func (g *gatherer) add(o opinion) {
	for _, f := range o.findings {
		o.account.find(f.Rule, g.enter(f, o.car))
	}
	o.account.Rules = g.report.Asked
	for j := range o.account.Judgements() {
		if area, _, _ := strings.Cut(j.Rule, "."); j.Applied {
			g.areas[area] = true
		}
	}
	g.report.Judged += o.judged
	g.report.Accounts = append(g.report.Accounts, o.account)
	if o.fitted != nil {
		g.fitted[o.driveline] = append(g.fitted[o.driveline], *o.fitted)
	}
	for _, c := range o.claims {
		if key := (Key{c.File, c.Path}); !g.claimed[key] {
			g.claimed[key] = true
			g.claims = append(g.claims, c)
		}
	}
	for _, w := range o.wants {
		g.note(w)
	}
	g.report.Unjudged += o.unjudged
	g.report.Faults = append(g.report.Faults, o.faults...)
}

// enter adds a finding; one that lies wholly in a shared file is told once, with
// the cars that see it. It returns the identity that the finding is told under.
func (g *gatherer) enter(f Finding, car string) string {
	if car == "" || f.File == car || slices.ContainsFunc(f.Also, func(l Location) bool { return l.File == car }) {
		g.report.Findings = append(g.report.Findings, f)
		return f.Identity()
	}
	f.With = ""
	id := f.Identity()
	at, known := g.shared[id]
	if !known {
		at = len(g.report.Findings)
		g.shared[id] = at
		g.report.Findings = append(g.report.Findings, f)
	}
	shared := &g.report.Findings[at]
	if n := len(shared.SeenBy); n == 0 || shared.SeenBy[n-1] != car { // they come by car
		shared.SeenBy = append(shared.SeenBy, car)
	}
	return id
}

func (g *gatherer) finish() {
	g.report.Areas = slices.Sorted(maps.Keys(g.areas))
	g.report.Measures = sortedMeasures(g.measures)
	g.report.Faults = compactFaults(g.report.Faults)
}

func compactFaults(faults []policies.Fault) []policies.Fault {
	slices.SortFunc(faults, func(a, b policies.Fault) int {
		return strings.Compare(a.Rule+"\x00"+a.Message, b.Rule+"\x00"+b.Message)
	})
	return slices.Compact(faults)
}

// sortFindings puts findings in the order they are printed in: by file, then by
// place, then by rule.
func sortFindings(findings []Finding) {
	slices.SortStableFunc(findings, func(a, b Finding) int {
		return compareKeys(
			strings.Compare(a.File, b.File), a.Line-b.Line, a.Column-b.Column,
			strings.Compare(a.Rule, b.Rule), strings.Compare(a.Message, b.Message), strings.Compare(a.With, b.With),
		)
	})
}

func compareKeys(keys ...int) int {
	for _, k := range keys {
		if k != 0 {
			return k
		}
	}
	return 0
}

package judge

import (
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
	Engine  *policies.Engine
	Outfit  *spec.Outfit
	Date    time.Time
	Workers int // 0 for one a core
	// Fleet says that every car of the outfit is there, so that what only a
	// fleet shows can be told.
	Fleet bool
	// Whole says that every car of the outfit is judged by every rule, so that a
	// waiver nobody uses can be told.
	Whole bool
}

// Judge judges compositions. The report is the same whatever the number of
// workers. Its error is ctx's.
func (r *Run) Judge(ctx context.Context, compositions []*spec.Composition) (*Report, error) {
	opinions := make([]opinion, len(compositions))
	err := inParallel(ctx, len(compositions), r.Workers, func(i int) error {
		var err error
		opinions[i], err = r.one(ctx, compositions[i])
		return err
	})
	if err != nil {
		return nil, err
	}
	return r.gather(compositions, opinions), nil
}

// verdict is what the rules say of one composition, with the document that they
// said it of.
type verdict struct {
	*spec.Composition
	doc     *document.Document
	outcome policies.Outcome
}

// opinion is what a report keeps of a verdict. The document is not kept: a fleet
// has more of them than memory.
type opinion struct {
	findings []Finding
	wants    []want
	unjudged int // dangers that could not tell, by subject
	judged   int
	areas    map[string]bool
	faults   []policies.Fault
	unclear  map[string][]Location // by rule
	subjects map[string]int        // by rule, for every rule that held
}

func (r *Run) one(ctx context.Context, c *spec.Composition) (opinion, error) {
	doc := document.Join(c, r.Date)
	workings.Derive(doc)
	outcome, err := r.Engine.Evaluate(ctx, doc.Encode())
	if err != nil {
		return opinion{}, err
	}
	v := &verdict{c, doc, outcome}
	return v.opinion(r.Engine), nil
}

func (v *verdict) opinion(engine *policies.Engine) opinion {
	o := opinion{areas: map[string]bool{}, faults: v.outcome.Faults, unclear: map[string][]Location{}, subjects: map[string]int{}}
	guesses := map[string][]string{}
	for _, guess := range v.outcome.Guesses {
		rule, _ := engine.Rule(guess.Rule)
		for _, need := range guess.Guessed {
			key := guess.Rule + "|" + guess.Subject
			guesses[key] = append(guesses[key], v.doc.Resolve(rule.Subject, guess.Subject, need).Path)
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
		of := gap.Subject
		if gap.Collection != "" {
			of = document.CollectionKey(gap.Collection)
		}
		o.unclear[rule.ID] = append(o.unclear[rule.ID], v.locate(of))
	}
	for rule, subjects := range v.outcome.Judged {
		o.judged += len(subjects)
		o.subjects[rule] = len(subjects)
		if area, _, _ := strings.Cut(rule, "."); len(subjects) > 0 {
			o.areas[area] = true
		}
	}
	return o
}

// inParallel calls do for 0 to n-1 on several workers and returns the first
// error in order.
func inParallel(ctx context.Context, n, workers int, do func(i int) error) error {
	if workers <= 0 {
		workers = runtime.GOMAXPROCS(0)
	}
	errs := make([]error, n)
	next := make(chan int)
	var wait sync.WaitGroup
	for range min(workers, n) {
		wait.Go(func() {
			for i := range next {
				errs[i] = do(i)
			}
		})
	}
	for i := range n {
		if ctx.Err() != nil {
			break
		}
		next <- i
	}
	close(next)
	wait.Wait()
	if err := ctx.Err(); err != nil {
		return err
	}
	for _, err := range errs {
		if err != nil {
			return err
		}
	}
	return nil
}

func (r *Run) gather(compositions []*spec.Composition, opinions []opinion) *Report {
	report := &Report{Date: r.Date, Digest: r.Engine.Digest(), Asked: r.Engine.Rules()}
	report.Faults = append(report.Faults, r.Engine.Faults()...)
	g := gatherer{report: report, shared: map[string]int{}, measures: map[string]*Measure{}, areas: map[string]bool{}}
	for i, o := range opinions {
		g.add(compositions[i], o)
	}
	g.finish()
	if r.Fleet {
		fitted(report, compositions)
	}
	r.waive(report, filesOf(compositions))
	sortFindings(report.Findings)
	sortFindings(report.Waived)
	return report
}

// filesOf lists every file of the compositions once, in the order met.
func filesOf(compositions []*spec.Composition) []*spec.File {
	var files []*spec.File
	seen := map[*spec.File]bool{nil: true}
	for _, c := range compositions {
		for _, f := range []*spec.File{c.Car, c.Driveline, c.Shop} {
			if !seen[f] {
				seen[f] = true
				files = append(files, f)
			}
		}
	}
	return files
}

// gatherer puts the opinions of a run together.
type gatherer struct {
	report   *Report
	shared   map[string]int // identity of a finding in a shared file -> its index
	measures map[string]*Measure
	areas    map[string]bool
}

func (g *gatherer) add(c *spec.Composition, o opinion) {
	found := map[string][]string{}
	for _, f := range o.findings {
		found[f.Rule] = append(found[f.Rule], g.enter(f, c))
	}
	of := Account{File: main(c).Name, Alone: c.Car == nil}
	if c.Trial {
		of.With = c.Driveline.Name
	}
	for _, rule := range slices.Sorted(maps.Keys(o.subjects)) {
		of.Judgements = append(of.Judgements, Judgement{rule, o.subjects[rule], o.unclear[rule], found[rule]})
	}
	g.report.Accounts = append(g.report.Accounts, of)
	for _, w := range o.wants {
		g.note(w)
	}
	for area := range o.areas {
		g.areas[area] = true
	}
	g.report.Unjudged += o.unjudged
	g.report.Judged += o.judged
	g.report.Faults = append(g.report.Faults, o.faults...)
}

// enter adds a finding; one that lies wholly in a shared file is told once, with
// the cars that see it. It returns the identity that the finding is told under.
func (g *gatherer) enter(f Finding, c *spec.Composition) string {
	if c.Car == nil || f.File == c.Car.Name || slices.ContainsFunc(f.Also, func(l Location) bool { return l.File == c.Car.Name }) {
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
	if !slices.Contains(shared.SeenBy, c.Car.Name) {
		shared.SeenBy = append(shared.SeenBy, c.Car.Name)
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

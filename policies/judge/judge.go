package judge

import (
	"context"
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
	verdicts := make([]*verdict, len(compositions))
	err := inParallel(ctx, len(compositions), r.Workers, func(i int) error {
		v, err := r.one(ctx, compositions[i])
		verdicts[i] = v
		return err
	})
	if err != nil {
		return nil, err
	}
	return r.gather(verdicts), nil
}

// verdict is what the rules say of one composition.
type verdict struct {
	*spec.Composition
	doc     *document.Document
	trace   workings.Trace
	outcome policies.Outcome
}

func (r *Run) one(ctx context.Context, c *spec.Composition) (*verdict, error) {
	doc := document.Join(c, r.Date)
	trace := workings.Derive(doc)
	outcome, err := r.Engine.Evaluate(ctx, doc.Encode())
	return &verdict{c, doc, trace, outcome}, err
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

func (r *Run) gather(verdicts []*verdict) *Report {
	report := &Report{Date: r.Date, Digest: r.Engine.Digest(), Traces: map[string]workings.Trace{}}
	report.Faults = append(report.Faults, r.Engine.Faults()...)
	g := gatherer{run: r, report: report, shared: map[string]int{}, measures: map[string]*Measure{}, areas: map[string]bool{}}
	for _, v := range verdicts {
		g.add(v)
	}
	g.finish()
	if r.Fleet {
		fitted(report, compositionsOf(verdicts))
	}
	r.waive(report, filesOf(verdicts))
	sortFindings(report.Findings)
	sortFindings(report.Waived)
	return report
}

func compositionsOf(verdicts []*verdict) []*spec.Composition {
	out := make([]*spec.Composition, len(verdicts))
	for i, v := range verdicts {
		out[i] = v.Composition
	}
	return out
}

// filesOf lists every file of the verdicts once, in the order met.
func filesOf(verdicts []*verdict) []*spec.File {
	var files []*spec.File
	seen := map[*spec.File]bool{nil: true}
	for _, v := range verdicts {
		for _, f := range []*spec.File{v.Car, v.Driveline, v.Shop} {
			if !seen[f] {
				seen[f] = true
				files = append(files, f)
			}
		}
	}
	return files
}

// gatherer puts the verdicts of a run together.
type gatherer struct {
	run      *Run
	report   *Report
	shared   map[string]int // identity of a finding in a shared file -> its index
	measures map[string]*Measure
	areas    map[string]bool
}

func (g *gatherer) add(v *verdict) {
	g.report.Traces[v.main().Name] = v.trace
	guesses := map[string][]string{}
	for _, guess := range v.outcome.Guesses {
		rule, _ := g.run.Engine.Rule(guess.Rule)
		for _, need := range guess.Guessed {
			key := guess.Rule + "|" + guess.Subject
			guesses[key] = append(guesses[key], v.doc.Resolve(rule.Subject, guess.Subject, need).Path)
		}
	}
	for _, found := range v.outcome.Findings {
		rule, _ := g.run.Engine.Rule(found.Rule)
		f := v.place(rule, found)
		f.Guessed = guesses[found.Rule+"|"+found.Subject]
		g.enter(f, v)
	}
	for _, gap := range v.outcome.CannotTell {
		g.wait(v, gap)
	}
	for rule, subjects := range v.outcome.Judged {
		g.report.Judged += len(subjects)
		if len(subjects) > 0 {
			g.areas[rule[:strings.Index(rule, ".")]] = true
		}
	}
	g.report.Faults = append(g.report.Faults, v.outcome.Faults...)
}

// enter adds a finding; one that lies wholly in a shared file is told once, with
// the cars that see it.
func (g *gatherer) enter(f Finding, v *verdict) {
	if v.Car == nil || f.File == v.Car.Name || slices.ContainsFunc(f.Also, func(l Location) bool { return l.File == v.Car.Name }) {
		g.report.Findings = append(g.report.Findings, f)
		return
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
	if !slices.Contains(shared.SeenBy, v.Car.Name) {
		shared.SeenBy = append(shared.SeenBy, v.Car.Name)
	}
}

func (g *gatherer) finish() {
	r := g.report
	for area := range g.areas {
		r.Areas = append(r.Areas, area)
	}
	slices.Sort(r.Areas)
	r.Measures = sortedMeasures(g.measures)
	r.Faults = compactFaults(r.Faults)
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

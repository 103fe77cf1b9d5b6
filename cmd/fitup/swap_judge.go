package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"
	"time"

	"fitup/cmd/fitup/report"
	"fitup/policies"
	"fitup/policies/config"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/swap"
	"fitup/spec/workings"
)

func turnFails(fail config.FailLevel) func(judge.Turn) bool {
	return func(t judge.Turn) bool { return fail.Fails(t.Level) }
}

// judge judges both cars before and after a move, and plans it.
func (m *moving) judge(by judging) (*report.Swap, config.FailLevel, error) {
	ctx, choice, date := by.ctx, by.choice, by.date
	engine, err := m.specs.Config.Engine(ctx, choice)
	if err != nil {
		return nil, "", err
	}
	// Once it is in, it is the one fitted: the car is judged as it will stand.
	received := *m.Received
	received.Trial = false
	m.Received = &received

	run := judge.Run{Engine: engine, Date: date, Heard: by.heard}
	before, err := run.Judge(ctx, m.before())
	if err != nil {
		return nil, "", err
	}
	after, err := run.Judge(ctx, m.after())
	if err != nil {
		return nil, "", err
	}
	after.Change = judge.Compare(before, after, judge.Comparison{Since: "before the swap"})
	after.Take(m.specs.Config.Taken(engine, choice))
	fail := m.specs.Config.Fails(choice)
	s := &report.Swap{
		Into: m.Into.Car.Name, Driveline: m.Driveline.Name, Date: date, Version: version(), FailOn: string(fail), Config: m.specs.Config.Name,
		Report: after, Change: after.Change,
	}
	if m.Occupied != nil {
		s.Occupied = m.Occupied.Name
	}
	left, err := m.plan(s, engine, date)
	if err != nil {
		return nil, "", err
	}
	if err := m.adapt(ctx, s, run); err != nil {
		return nil, "", err
	}
	way, err := run.Judge(ctx, m.way())
	if err != nil {
		return nil, "", err
	}
	s.Figured = figured(way)
	s.Change.Appears = slices.DeleteFunc(s.Change.Appears, func(t judge.Turn) bool { return slices.Contains(left, t.Subject) })
	s.Withheld = withheld(s, engine, way)
	return s, fail, nil
}

// before are the compositions as they are. A driveline on the bench is judged by
// itself.
func (m *moving) before() []*spec.Composition {
	if m.From != nil {
		return []*spec.Composition{m.From, m.Into}
	}
	return []*spec.Composition{m.alone(m.Driveline), m.Into}
}

// after are the compositions as they will be.
func (m *moving) after() []*spec.Composition {
	all := []*spec.Composition{m.Received}
	if m.Given != nil {
		all = append(all, m.Given)
	}
	if m.Occupied != nil {
		all = append(all, m.alone(m.Occupied))
	}
	return all
}

// way are the compositions in which a driveline is lifted out or in. How a car
// stands without it is worked out while it is there, as the hook takes its weight:
// without it its mass is not known any more.
func (m *moving) way() []*spec.Composition {
	all := []*spec.Composition{m.Received}
	if m.From != nil {
		all = append(all, m.From)
	}
	if m.Occupied != nil {
		all = append(all, m.Into)
	}
	return all
}

func (m *moving) alone(driveline *spec.File) *spec.Composition {
	c, ok := m.specs.Outfit.Driveline(driveline.Name)
	if !ok { // it is in a composition already, so it can be read
		c = &spec.Composition{Driveline: driveline}
	}
	return c
}

// joined is the document of a composition with its workings.
func joined(c *spec.Composition, date time.Time) *document.Document {
	d := document.Join(c, date)
	workings.Derive(d)
	return d
}

// plan works out fit, parting and order. It returns the subjects of what does not
// go into the car, because it stays on its lines in the giving one: a finding of
// the receiving car about such a port is none.
func (m *moving) plan(s *report.Swap, engine *policies.Engine, date time.Time) (left []string, err error) {
	received := joined(m.Received, date)
	options := swap.Options{Weights: m.specs.Config.Effort, Held: swap.NeededBy(received)}
	var behind []string
	if m.From != nil {
		s.From = m.From.Car.Name
		doc := joined(m.From, date)
		if s.Out, err = swap.NewPlan(m.From, doc, options); err != nil {
			return nil, noPlan(m.specs, s.From, s.Driveline, err)
		}
		for _, tied := range s.Out.Tied {
			if strings.HasPrefix(tied.Part, "driveline.") {
				behind = append(behind, tied.Part)
			}
		}
		s.Standing = append(s.Standing, report.Standing{File: s.From, What: "giving " + s.Driveline, Document: doc})
	}
	if m.Occupied != nil {
		doc := joined(m.Into, date)
		if s.Vacate, err = swap.NewPlan(m.Into, doc, swap.Options{Weights: options.Weights}); err != nil {
			return nil, noPlan(m.specs, s.Into, s.Occupied, err)
		}
		s.Standing = append(s.Standing, report.Standing{File: s.Into, What: "giving " + s.Occupied, Document: doc})
	}
	s.Fit = swap.NewFit(m.Received, received, tolerances(engine), behind...)
	options.EmptyBay, options.Fit = m.Occupied == nil, s.Fit
	if s.Out != nil {
		options.Emptied = s.Out.Fluids
	}
	if s.In, err = swap.NewPlan(m.Received, received, options); err != nil {
		return nil, noPlan(m.specs, s.Into, s.Driveline, err)
	}
	s.Standing = append(s.Standing, report.Standing{File: s.Into, What: "receiving " + s.Driveline, Document: received})
	left = slices.Clone(behind)
	for i := range received.Ports {
		p := &received.Ports[i]
		on := "driveline." + strings.TrimPrefix(p.Port.On.V, "driveline.")
		if strings.HasPrefix(p.Path, "driveline.") && slices.Contains(behind, on) {
			left = append(left, p.Path)
		}
	}
	return left, nil
}

// tolerances are the limits of the rules that judge the same.
func tolerances(engine *policies.Engine) swap.Tolerances {
	limit := func(rule, name string) float64 {
		if r, is := engine.Rule(rule); is {
			return r.Limits[name].Value
		}
		return 0 // the rule is skipped: what is not alike does not meet
	}
	return swap.Tolerances{
		Offset: limit("mounts.offset", "most"), Spacing: limit("mounts.hole_spacing", "play"),
		Hose: limit("fittings.hose_fit", "off"), Band: limit("fittings.band_profile", "off"),
	}
}

// standingAreas are the areas whose rules judge how a car stands and a driveline
// hangs; orderAreas those that also say whether a step may be taken at all.
var (
	standingAreas = []string{"support", "lifting"}
	orderAreas    = []string{"support", "lifting", "fuel"}
	figuredAreas  = []string{"support", "lifting", "dolly"}
)

func inAreas(areas []string, rule string) bool {
	area, _, _ := strings.Cut(rule, ".")
	return slices.Contains(areas, area)
}

// figured are the findings about standing and hanging on the way.
func figured(way *judge.Report) []judge.Finding {
	return slices.DeleteFunc(slices.Concat(way.Findings, way.Waived), func(f judge.Finding) bool { return !inAreas(figuredAreas, f.Rule) })
}

// withheld tells which parts are no plan, because something that could be a danger
// on the way could not be judged or the way itself is not said.
func withheld(s *report.Swap, engine *policies.Engine, way *judge.Report) []report.Withheld {
	var all []report.Withheld
	for _, of := range []struct {
		part  string
		areas []string
		way   bool // the part follows the way out
	}{{report.PartOrder, orderAreas, true}, {report.PartStanding, standingAreas, false}, {report.PartHolds, orderAreas, true}} {
		w := report.Withheld{Part: of.part}
		if of.way {
			w.Why = unmarked(s)
		}
		rules := unjudged(engine, of.areas, way)
		if len(rules) > 0 {
			w.Why = append(w.Why, fmt.Sprintf("it rests on dangers that could not be judged: %s", strings.Join(rules, ", ")))
			w.Measures = measures(rules, way)
		}
		if len(w.Why) > 0 {
			all = append(all, w)
		}
	}
	return all
}

// unmarked says what the specs do not tell of the way out or in.
func unmarked(s *report.Swap) []string {
	var all []string
	for _, of := range []struct {
		file string
		plan *swap.Plan
	}{{s.From, s.Out}, {s.Into, s.Vacate}, {s.Into, s.In}} {
		if of.plan == nil {
			continue
		}
		for _, key := range of.plan.Unmarked {
			what := "what has to be off before it moves"
			if key == "mounts" {
				what = "what holds it"
			}
			all = append(all, fmt.Sprintf("%s does not say %s: write %s", of.file, what, key))
		}
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// unjudged are the rules of some areas that could find a danger and could not tell
// of something, by id.
func unjudged(engine *policies.Engine, areas []string, way *judge.Report) []string {
	var rules []string
	for _, account := range way.Accounts {
		for _, j := range account.Said {
			rule, is := engine.Rule(j.Rule)
			if is && rule.Level == policies.LevelDanger && len(j.Unclear) > 0 && inAreas(areas, j.Rule) {
				rules = append(rules, j.Rule)
			}
		}
	}
	slices.Sort(rules)
	return slices.Compact(rules)
}

// measures are the keys that rules wait for, most wanted first.
func measures(rules []string, way *judge.Report) []judge.Measure {
	var all []judge.Measure
	for _, m := range way.Measures {
		m.Rules = slices.DeleteFunc(slices.Clone(m.Rules), func(id string) bool { return !slices.Contains(rules, id) })
		if m.Dangers = len(m.Rules); m.Dangers > 0 {
			all = append(all, m)
		}
	}
	slices.SortStableFunc(all, func(a, b judge.Measure) int { return cmp.Compare(b.Dangers, a.Dangers) })
	return all
}

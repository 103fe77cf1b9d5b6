package document

import (
	"slices"
	"strings"

	"fitup/spec"
)

// safety lists the safety items of the car. An item of the driveline's has no
// place here: none travels with it.
func (j *joiner) safety(d *Document) {
	if j.car == nil || !j.car.Safety.Told() {
		return
	}
	s := &j.car.Safety
	d.Dated, d.TowEyes, d.Fire = []Dated{}, []TowEye{}, nil
	for _, item := range []struct {
		kind  string
		dated spec.Dated
	}{
		{"seat", s.Seat}, {"harness", s.Harness.Dated}, {"window net", s.WindowNet}, {"helmet", s.Helmet},
		{"head restraint", s.Restraint}, {"hand extinguisher", s.Hand.Dated}, {"fire system", s.Plumbed.Dated},
		{"fuel cell", fuelCellLabel(&j.car.Fuel.Cell)},
	} {
		if item.dated.Told() {
			name := item.dated.Path[strings.LastIndex(item.dated.Path, ".")+1:]
			d.Dated = append(d.Dated, Dated{Subject: Subject{item.dated.Path, name}, Dated: item.dated, Kind: item.kind})
		}
	}
	for _, eye := range []struct {
		name string
		spec.TowEye
	}{{"front", s.TowFront}, {"rear", s.TowRear}} {
		if eye.Told() {
			d.TowEyes = append(d.TowEyes, TowEye{Subject: Subject{eye.Path, eye.name}, TowEye: eye.TowEye})
		}
	}
	switch s.Plumbed.State {
	case spec.Given:
		d.Fire = []FireSystem{{Subject{s.Plumbed.Path, "fire-system"}, s.Plumbed}}
	case spec.None:
		d.Fire = []FireSystem{}
	}
}

// fuelCellLabel is the label of a bladder, which runs out like a harness.
func fuelCellLabel(cell *spec.FuelCell) spec.Dated {
	return spec.Dated{Node: cell.Node, Standard: cell.Standard, Made: cell.Made, Until: cell.Until}
}

// standing joins each stand in place with its kind in the shop, and sets up one
// case for every stage that the composition can stand in.
func (j *joiner) standing(d *Document) {
	if j.driveline != nil {
		fill(&d.Lift, &j.driveline.Lift, func(name string, l *spec.LiftPoint) LiftPoint {
			return LiftPoint{Subject: Subject{l.Path, name}, LiftPoint: *l, Tackle: j.sling()}
		})
	}
	if j.car == nil || !j.car.Support.Told() {
		return
	}
	s := j.car.Support
	support := Support{Subject: Subject{s.Path, "support"}, Support: s, StandCount: len(s.Points.Named), Unchocked: unchocked(&s), Tackle: j.sling(), Driveline: j.name}
	if j.fit != nil {
		support.Fit = *j.fit
	}
	if j.driveline != nil {
		support.Weighed = j.driveline.Weighed
	}
	if hoist := j.shop.Hoists.Named[s.Lift.V]; hoist != nil {
		support.Crane = *hoist
	}
	if dolly := j.shop.Dollies.Named[s.Dolly.V]; dolly != nil {
		support.Carrier = *dolly
		support.Locking, support.unlocked = locking(dolly)
		fill(&d.Castors, &dolly.Castors, func(name string, c *spec.Castor) Castor {
			return Castor{Subject: Subject{c.Path, name}, Castor: *c}
		})
	}
	d.Support = []Support{support}
	fill(&d.Stands, &j.car.Support.Points, func(name string, p *spec.StandPoint) Stand {
		stand := Stand{Subject: Subject{p.Path, name}, StandPoint: *p, Leaves: j.leaves(p.Under.V)}
		if kind := j.shop.Stands.Named[p.Stand.V]; kind != nil {
			stand.Kind = *kind
		}
		return stand
	})
	if d.Stands == nil {
		return
	}
	stages := []string{Raised, Hoisting}
	if j.driveline == nil {
		stages = nil
	}
	stages = append(stages, OutRaised)
	d.Cases = []SupportCase{}
	for _, stage := range stages {
		d.Cases = append(d.Cases, SupportCase{Subject: Subject{s.Path + "#" + strings.ReplaceAll(stage, "_", "-"), stage}, Stage: stage})
	}
}

// sling is the sling that the car's driveline hangs on; empty where none is named.
func (j *joiner) sling() spec.Sling {
	if j.car != nil {
		if sling := j.shop.Slings.Named[j.car.Support.Sling.V]; sling != nil {
			return *sling
		}
	}
	return spec.Sling{}
}

// gap puts a clearance beside what moves it: a gap from the driveline to what
// stays on the car opens and closes as the engine rocks.
func (j *joiner) gap(name string, g *spec.Gap) Gap {
	gap := Gap{Subject: Subject{g.Path, name}, Gap: *g}
	if j.fit != nil {
		gap.Fit = *j.fit
	}
	rocking := 0
	for _, thing := range g.Between.V {
		if strings.HasPrefix(thing, "driveline.") {
			rocking++
		}
	}
	gap.Moves = rocking == 1
	return gap
}

// unchocked lists the wheels left down that are not chocked; nil where either is
// not said.
func unchocked(s *spec.Support) []string {
	switch {
	case s.Wheels.State == spec.None:
		return []string{}
	case s.Wheels.State != spec.Given || s.Chocks.State == spec.Unsaid || s.Chocks.State == spec.Asked:
		return nil
	}
	loose := []string{}
	for _, wheel := range s.Wheels.V {
		if !slices.Contains(s.Chocks.V, wheel) {
			loose = append(loose, wheel)
		}
	}
	return loose
}

// locking counts the castors of a dolly that lock. While one of them does not say, it
// names what would have to be written instead.
func locking(dolly *spec.Dolly) (count *int, unsaid []string) {
	locks := 0
	for _, castor := range dolly.Castors.All() {
		switch {
		case castor.Locks.V:
			locks++
		case !castor.Locks.Given() && castor.Locks.State != spec.None:
			unsaid = append(unsaid, castor.Path+".locks")
		}
	}
	if len(unsaid) > 0 || len(dolly.Castors.Named) == 0 {
		return nil, unsaid
	}
	return &locks, nil
}

// leaves tells whether a thing goes with the driveline, or comes off before it.
func (j *joiner) leaves(thing string) bool {
	if strings.HasPrefix(thing, "driveline") {
		return true
	}
	return j.fit != nil && slices.Contains(j.fit.Behind.V, thing)
}

// upkeep lists lives, gaps, panels and histories.
func (j *joiner) upkeep(d *Document) {
	life := func(table *spec.Table[spec.LifeItem], clock spec.Clock) {
		fill(&d.Life, table, func(name string, l *spec.LifeItem) LifeItem {
			return LifeItem{Subject: Subject{l.Path, name}, LifeItem: *l, Clock: clock}
		})
	}
	history := func(table *spec.Table[spec.HistoryOf]) {
		fill(&d.History, table, func(name string, h *spec.HistoryOf) History { return History{Subject{h.Path, name}, *h} })
	}
	if j.driveline != nil {
		life(&j.driveline.Life, j.driveline.Clock)
		history(&j.driveline.History)
	}
	if j.car == nil {
		return
	}
	life(&j.car.Life, j.car.Clock)
	history(&j.car.History)
	fill(&d.Gaps, &j.car.Gaps, j.gap)
	fill(&d.Access, &j.car.Access, func(name string, a *spec.Access) Access { return Access{Subject{a.Path, name}, *a} })
}

package swap

import (
	"fmt"
	"slices"
	"strings"

	"fitup/spec/document"
)

// besideNotUnder warns where a mount that carries the weight is reached from
// below.
func (p *planner) besideNotUnder(station string, m *document.Mount) []string {
	if station != under || m.There.Light.V {
		return nil
	}
	return []string{"reach it from the side: nobody is under the driveline while the hook holds it"}
}

// lift takes the driveline out by the hoist.
func (p *planner) lift(s *sequence) {
	way := "out"
	if p.c.Fit != nil && p.c.Fit.Leaves.Given() {
		way = strings.Join(p.c.Fit.Leaves.V, ", then ")
	}
	for _, step := range []Step{
		{Name: stepWalk, Do: "walk round every joint between car and driveline: nothing holds them together but the mounts", Station: engineBay, Hold: true},
		{Name: stepSling, Do: "sling to the lift points, hook over the centre of mass", Station: engineBay, Subject: "driveline.lift", Notes: p.liftPoints()},
		{Name: stepTake, Do: "nobody under or beside it; stands looked at once more; then the hook takes the weight, a little at a time", Station: engineBay, Subject: "support", Hold: true},
		{Name: stepLastBolt, Do: "the hook carries it, it hangs level, and nobody is under it", Station: engineBay, Subject: "mounts", Hold: true},
		{Name: stepLift, Do: "lift it " + way, Station: engineBay, Subject: "fits." + p.d.Given.Driveline},
		{Name: stepStrap, Do: "set it down on its dolly, strap it, lock the castors", Station: bench, Subject: "support.dolly", Notes: p.dolly()},
		{Name: stepHook, Do: "strapped, castors locked, dolly does not rock", Station: bench, Subject: "support.dolly", Hold: true},
	} {
		s.add(step)
	}
	heavy := p.heavyMounts()
	carries := func(step Step) bool { return slices.Contains(heavy, step.Name) }
	s.all(func(step Step) bool { return opens(step) && !carries(step) }, stepWalk, "nothing may hold the driveline when it is lifted")
	s.all(func(step Step) bool { return strings.HasPrefix(step.Name, "off ") }, stepSling, "the way out is clear before anything hangs")
	s.before(stepWalk, stepSling, "nobody works at a joint below the hook")
	s.before(stepWalk, stepTake, "the hook pulls on whatever is still joined")
	s.before(stepSling, stepTake, "the weight is on the sling then")
	for i, mount := range heavy {
		s.before(stepTake, mount, "it carries the driveline until the hook does")
		if i < len(heavy)-1 {
			s.before(mount, stepLastBolt, "the last one waits")
		} else {
			s.before(stepLastBolt, mount, "from there on only the hook holds it")
		}
		s.before(mount, stepLift, "it holds the driveline")
	}
	s.before(stepTake, stepLastBolt, "the hook has to carry it")
	s.before(stepLastBolt, stepLift, "it is looked at before it moves")
	s.before(stepLift, stepStrap, "it has to be out")
	s.before(stepStrap, stepHook, "it must not fall off the dolly")
}

// liftPoints says where the eyes are.
func (p *planner) liftPoints() []string {
	var notes []string
	for name, point := range p.dl.Lift.All() {
		if point.Part.Given() {
			notes = append(notes, name+": on the "+point.Part.V)
		}
	}
	return notes
}

// dolly says what the dolly in use carries, and its straps.
func (p *planner) dolly() []string {
	if p.c.Shop == nil {
		return nil
	}
	dolly := p.c.Shop.Shop.Dollies.Named[p.car.Support.Dolly.V]
	var notes []string
	if dolly != nil && dolly.Rated.Given() {
		notes = append(notes, "rated for "+dolly.Rated.V.String())
	}
	if dolly != nil && dolly.Straps.Given() {
		notes = append(notes, fmt.Sprintf("%d straps", dolly.Straps.V))
	}
	return notes
}

// heavyMounts are the steps that undo what carries the driveline's weight.
func (p *planner) heavyMounts() []string {
	var found []string
	for _, name := range p.cut.Open {
		if m := p.joints[name].mount; m != nil && !m.There.Light.V {
			found = append(found, "open "+name)
		}
	}
	return found
}

package swap

import (
	"fmt"
	"slices"
	"strings"

	"fitup/spec/document"
)

func joins(s Step) bool { return strings.HasPrefix(s.Name, "join ") }

// Names of the steps of the refit that others are asked to come before or after.
const (
	stepIn        = "lift in"
	stepUnderBack = "hold: before going under again"
)

// refit puts the steps of putting the driveline in together: the removal
// backwards, then filling, proving and starting.
func (p *planner) refit() *sequence {
	s := &sequence{}
	s.add(Step{Name: stepTake, Do: "sling, lift points and stands looked at; nobody under it", Station: bench, Subject: "driveline.lift", Hold: true})
	s.add(Step{Name: stepIn, Do: "lift it in and line it up; no bolt is pulled to bring it there", Station: engineBay, Subject: "fits." + p.d.Given.Driveline})
	s.add(Step{Name: stepHook, Do: "every mount bolt is in by hand and run down; nothing hangs from the hook", Station: engineBay, Subject: "mounts", Hold: true})
	s.add(Step{Name: stepUnderBack, Do: "stands looked at once more with the driveline in; a firm push by hand with nobody under", Station: under, Subject: "support", Hold: true})
	s.before(stepTake, stepIn, "it hangs from then on")
	s.before(stepIn, stepHook, "the mounts have to carry it")
	s.before(stepHook, stepUnderBack, "the load on the stands has changed")
	for _, name := range slices.Backward(p.cut.Open) {
		p.joining(s, name)
	}
	for _, name := range slices.Backward(p.cut.Off) {
		p.panelOn(s, name)
	}
	for _, name := range p.cut.Open {
		for _, first := range p.joints[name].behind {
			s.before("join "+name, "on "+first, "it is behind "+plain(first))
			if mount := p.joints[name].mount; mount != nil && p.carries("join "+name) {
				s.before("torque "+mount.Path+".bolts", "on "+first, "it is behind "+plain(first))
			}
		}
	}
	for _, access := range p.net.Access {
		for _, outer := range access.Behind {
			s.before("on "+access.Name, "on "+outer, plain(access.Name)+" is behind "+plain(outer))
		}
		for _, name := range p.comesWith(access.Name) {
			if slices.Contains(p.cut.Off, access.Name) {
				s.before("on "+access.Name, "join "+name, "the hose goes on with it")
			}
		}
	}
	if p.options.EmptyBay {
		p.prepare(s)
	}
	for _, name := range p.heavyMounts() {
		mount := "join " + strings.TrimPrefix(name, "open ")
		s.before(stepIn, mount, "there is nothing to bolt yet")
		s.before(mount, stepHook, "the mounts have to carry it")
	}
	light := func(step Step) bool { return joins(step) && !p.carries(step.Name) }
	s.each(stepHook, light, "the driveline has to be where it stays")
	s.each(stepUnderBack, func(step Step) bool { return at(under)(step) && !p.carries(step.Name) }, "nobody goes under before the stands are looked at")
	p.fill(s)
	p.start(s)
	return s
}

// carries reports whether a step of the refit does up what carries the weight.
func (p *planner) carries(step string) bool {
	return slices.Contains(p.heavyMounts(), "open "+strings.TrimPrefix(step, "join "))
}

// joining makes one joint again.
func (p *planner) joining(s *sequence, name string) {
	from := p.joints[name]
	step := Step{Name: "join " + name, Subject: name, Station: p.stationOf(from.behind, "")}
	switch {
	case from.mount != nil:
		if from.mount.There.Light.V {
			step.Do = "bolt up " + from.mount.Name + " mount"
			p.tighten(&step, from.mount.Path+".bolts")
			break
		}
		step.Do = "run the bolts of " + from.mount.Name + " mount in by hand"
		step.Notes = append(step.Notes, p.besideNotUnder(step.Station, from.mount)...)
		p.fastener(&step, from.mount.Path+".bolts")
		p.torqueMount(s, from, step)
	case from.line != nil:
		step.Do = "clip " + plain(from.line.Path) + " back"
	case from.bolts != nil:
		step.Do = "bolt " + plain(from.part) + " on"
		if from.bolts.Told() {
			p.tighten(&step, from.bolts.Path)
		}
		if pump := p.dl.Pumps.Named[strings.TrimPrefix(from.part, "driveline.pumps.")]; pump != nil && pump.Driven.Given() {
			step.Notes = append(step.Notes, "driven by "+pump.Driven.V+": tension it")
		}
	case from.circuit != nil:
		step.Do = "put the wire on " + plain(from.there.Name)
		if from.end.Torque.Given() {
			p.torque(&step, Torque{Subject: from.end.Path, Torque: from.end.Torque.V})
		}
	default:
		p.makeJoint(&step, from)
	}
	step.Notes = append(step.Notes, p.misfits(name)...)
	s.add(step)
}

// torqueMount does the bolts of a mount up that were run in by hand, once all of
// them are in and nothing hangs from the hook.
func (p *planner) torqueMount(s *sequence, from *parted, by Step) {
	path := from.mount.Path + ".bolts"
	step := Step{Name: "torque " + path, Do: "bolts of " + from.mount.Name + " mount to torque", Subject: path, Station: by.Station}
	p.tighten(&step, path)
	s.add(step)
	s.before(stepHook, step.Name, "no bolt pulls the driveline into place")
}

// misfits says what has to be there, or made, before a joint can be.
func (p *planner) misfits(name string) []string {
	if p.options.Fit == nil {
		return nil
	}
	on := ""
	if j := p.joints[name].joint; j != nil {
		on = j.On
	}
	var notes []string
	for _, i := range p.options.Fit.Interfaces {
		if i.Car != name && (i.Kind != ReachKind || i.Car != on) {
			continue
		}
		why := strings.Join(i.Why, "; ")
		switch i.Verdict {
		case WithAdaptor:
			for _, a := range i.Chain.Adaptors {
				notes = append(notes, "between the two: "+a.Name+", "+a.Ends())
			}
		case MustBeMade:
			notes = append(notes, "to be made first: "+why)
		case CannotTell:
			notes = append(notes, "not known whether it meets: "+why)
		}
	}
	return notes
}

func (p *planner) makeJoint(step *Step, from *parted) {
	j := from.joint
	step.Do = fmt.Sprintf("join %s to %s", plain(j.On), plain(from.there.Name))
	p.loosened(step, j)
	switch j.Kind {
	case "plug":
		step.Do = "plug in " + j.Name
	case "shaft":
		step.Do = "bolt " + plain(j.On) + " to " + plain(from.there.Name) + ", to its marks"
		p.tighten(step, j.On+".bolts")
	}
	p.remade(step, j)
}

// remade notes the torque of a joint that is made again, and its seals.
func (p *planner) remade(step *Step, j *document.Joint) {
	if j.Meet.Torque.Given() {
		p.torque(step, Torque{Subject: j.Path, Torque: j.Meet.Torque.V, Threads: j.Wet})
	}
	p.renewed(j)
}

// panelOn puts back what was in the way.
func (p *planner) panelOn(s *sequence, name string) {
	step, held := p.inTheWay(name)
	step.Name, step.Do = "on "+name, "put "+plain(name)+" back"
	p.tighten(&step, held)
	for _, j := range p.jointsOff(name) {
		step.Notes = append(step.Notes, "closes "+j.Path)
		p.loosened(&step, j)
		p.remade(&step, j)
	}
	s.add(step)
	s.before(stepHook, step.Name, "the driveline is in")
}

package swap

import (
	"fmt"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
)

func at(station string) func(Step) bool {
	return func(s Step) bool { return s.Station == station && !s.Hold }
}

func opens(s Step) bool { return strings.HasPrefix(s.Name, "open ") }

// removal puts the steps of taking the driveline out together.
func (p *planner) removal() *sequence {
	s := &sequence{}
	p.makeSafe(s)
	p.standing(s)
	p.drains(s)
	p.panels(s)
	for _, name := range p.cut.Open {
		p.opening(s, name)
	}
	p.lift(s)
	p.safeFirst(s)
	return s
}

// panels takes off what is in the way.
func (p *planner) panels(s *sequence) {
	for _, name := range p.cut.Off {
		step, held := p.inTheWay(name)
		step.Name, step.Do = "off "+name, "take off "+plain(name)
		p.fastener(&step, held)
		for _, j := range p.jointsOff(name) {
			step.Notes = append(step.Notes, "opens "+j.Path)
			p.loosened(&step, j)
		}
		s.add(step)
		for _, open := range p.comesWith(name) {
			s.late("open "+open, step.Name, "it comes away with "+plain(name))
		}
		i := slices.IndexFunc(p.net.Access, func(a Access) bool { return a.Name == name })
		for _, first := range p.net.Access[i].Behind {
			s.late("off "+first, step.Name, plain(name)+" is behind "+plain(first))
		}
	}
}

// inTheWay is a step about a panel, or a part, that is in the way, with the key of
// what holds it. What is done there is left to say.
func (p *planner) inTheWay(name string) (step Step, held string) {
	step = Step{Station: engineBay, Subject: name}
	if panel := p.car.Access.Named[name]; panel != nil {
		step.Subject, step.Station = panel.Path, panel.Station.Or(engineBay)
		return step, panel.Path + ".held"
	}
	place := ""
	if part := p.parts[name]; part != nil {
		place = part.Place.V
	}
	step.Station = p.stationOf(p.behind(name), place)
	return step, name + ".held"
}

// comesWith are the joints at the driveline of hoses and pipes that come off with
// a part.
func (p *planner) comesWith(part string) []string {
	var found []string
	for _, name := range p.cut.Open {
		j := p.joints[name].joint
		if j == nil {
			continue
		}
		far := slices.ContainsFunc(p.d.Joints, func(other document.Joint) bool {
			port := p.met(&other)
			return other.On == j.On && port != nil && strings.HasPrefix(port.Path, part+".ports.")
		})
		if j.On == part || far {
			found = append(found, name)
		}
	}
	return found
}

// plain is a name as it is said: the last words of a path.
func plain(path string) string {
	words := strings.Split(strings.TrimPrefix(path, "driveline."), ".")
	if len(words) > 1 && slices.Contains([]string{"lines", "rods", "shafts", "plugs", "circuits", "pumps", "parts"}, words[0]) {
		words = words[1:]
	}
	return strings.ReplaceAll(strings.Join(words, " "), "-", " ")
}

// opening opens one joint of the cut.
func (p *planner) opening(s *sequence, name string) {
	from := p.joints[name]
	step := Step{Name: "open " + name, Subject: name, Station: p.stationOf(from.behind, "")}
	switch {
	case from.mount != nil:
		step.Do = "undo " + from.mount.Name + " mount"
		step.Notes = append(step.Notes, p.besideNotUnder(step.Station, from.mount)...)
		p.fastener(&step, from.mount.Path+".bolts")
		if from.mount.There.Light.V {
			step.Do = "unbolt " + from.mount.Name + " from its bracket"
		}
		if from.mount.Chassis.Given() && !from.mount.Chassis.V {
			step.Notes = append(step.Notes, "its bracket is no part of the chassis: it may come away with it")
		}
		for _, hangs := range from.mount.Carries.V {
			step.Notes = append(step.Notes, plain(hangs)+" hangs on this bracket")
		}
	case from.line != nil:
		step.Do = "unclip " + plain(from.line.Path) + ": it goes with the driveline"
	case from.bolts != nil:
		step.Do = "unbolt " + plain(from.part) + ", and tie it up at once: it stays on its lines, and nothing may hang on them"
		if from.bolts.Told() {
			p.fastener(&step, from.bolts.Path)
		}
		p.leftOnLines(&step, from.part)
	case from.circuit != nil:
		step.Do = "take the wire off " + plain(from.there.Name)
		p.tailed(&step, from.circuit)
	default:
		p.openJoint(&step, from)
	}
	s.add(step)
	for _, first := range from.behind {
		s.late("off "+first, step.Name, plain(first)+" is in the way")
	}
}

func (p *planner) tailed(step *Step, c *document.Circuit) {
	for _, end := range []spec.Meet{c.Circuit.From, c.Circuit.To} {
		name, onPost := strings.CutPrefix(end.Port.V, "electrics.posts.")
		if post := p.car.Electrics.Posts.Named[name]; onPost && post != nil && post.Dead.Given() {
			step.Notes = append(step.Notes, "it is dead when: "+post.Dead.V)
		}
	}
	if c.Circuit.Tail.Given() {
		step.Notes = append(step.Notes, "its end: "+c.Circuit.Tail.V)
	} else if c.Circuit.Purpose.V != "earth" {
		step.Notes = append(step.Notes, "insulate its end and tie it back")
	}
}

func (p *planner) openJoint(step *Step, from *parted) {
	j := from.joint
	step.Do = fmt.Sprintf("part %s at %s", plain(j.On), plain(from.there.Name))
	p.loosened(step, j)
	switch j.Kind {
	case "plug":
		step.Do = "unplug " + j.Name
		p.plan.Labels = append(p.plan.Labels, Label{Subject: j.On, Text: j.Name})
		step.Notes = append(step.Notes, "label both halves first")
	case "shaft":
		step.Do = "unbolt " + plain(j.On) + " at " + plain(from.there.Name)
		step.Notes = append(step.Notes, "mark both flanges for phase and place first; hang the shaft up, not on its joint")
		p.fastener(step, j.On+".bolts")
	case "line", "pipe":
		p.plan.Caps = append(p.plan.Caps, capsOf(j)...)
		if line := p.car.Lines.Named[j.Name]; j.Kind == "line" && line != nil && line.Passes.Given() {
			step.Notes = append(step.Notes, "through the bulkhead: "+line.Passes.V+"; a hole that it leaves is closed in metal")
		}
		if j.Service == "clutch fluid" {
			step.Notes = append(step.Notes, "nobody touches the pedal until it is joined again")
		}
	}
	if wet(j) {
		step.Notes = append(step.Notes, "tray under it, both halves capped at once")
	}
}

// capsOf are what closes the two halves of a joint.
func capsOf(j *document.Joint) []Cap {
	var caps []Cap
	for _, h := range []*document.Half{j.Here, j.There} {
		if h == nil || h.Form.V == "" || h.Valved.V {
			continue
		}
		kind := "cap for "
		if h.Gender.V == "female" || h.Form.V == "hose" || h.Form.V == "slip" {
			kind = "plug for "
		}
		caps = append(caps, Cap{Subject: strings.TrimSuffix(h.Path, ".end"), What: kind + endText(h)})
	}
	return caps
}

// leftOnLines says how a part that is unbolted and stays on its lines comes free,
// and by what it hangs then.
func (p *planner) leftOnLines(step *Step, part string) {
	tied := Tied{Part: part}
	for i := range p.d.Lines {
		l := &p.d.Lines[i]
		if l.Line.Tied.Given() && p.touches(l, part) && tied.By == "" {
			tied.By = l.Line.Tied.V
		}
	}
	if carPart := p.parts[part]; carPart != nil && carPart.Tied.Given() {
		tied.By = carPart.Tied.V
	}
	p.plan.Tied = append(p.plan.Tied, tied)
	pump := p.dl.Pumps.Named[strings.TrimPrefix(part, "driveline.pumps.")]
	if pump != nil && pump.Driven.Given() {
		step.Notes = append(step.Notes, "driven by "+pump.Driven.V+": slacken that first")
	}
	if tied.By != "" {
		step.Notes = append(step.Notes, tied.By)
	}
	if pump != nil && pump.Mass.Given() {
		step.Notes = append(step.Notes, "it weighs "+pump.Mass.V.String())
	}
}

func (p *planner) touches(l *document.Line, part string) bool {
	for _, end := range []*document.LineEnd{l.From, l.To} {
		if end != nil && end.Port != nil && p.lumpOf(end.Port) == part {
			return true
		}
	}
	return false
}

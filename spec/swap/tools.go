package swap

import (
	"maps"
	"slices"
	"strings"

	"fitup/policies/tables"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// fastener gives a step the tool of a fastening.
func (p *planner) fastener(step *Step, path string) {
	f := p.fastenings[path]
	if f == nil {
		return
	}
	if tool := toolFor(f); tool != "" {
		step.use(tool)
	}
	switch f.Lock.V {
	case "wire":
		step.use("side cutters")
	case "split-pin":
		step.use("pliers")
	case "tab-washer":
		step.use("flat chisel for the tab")
	}
}

func (s *Step) use(tool string) {
	if !slices.Contains(s.Tools, tool) {
		s.Tools = append(s.Tools, tool)
	}
}

// toolOf is the kind of tool for each head.
var toolOf = map[string]string{
	"hex": "spanner and socket", "small-hex": "spanner and socket", "flange-hex": "spanner and socket", "stud": "spanner and socket",
	"socket": "hex key", "button": "hex key", "countersunk": "hex key", "quarter-turn": "flat screwdriver", "rivet": "drill",
}

// toolFor is the tool of a fastening, with its size where that is known.
func toolFor(f *document.Fastening) string {
	size := ""
	if f.Calc.Spanner.Known {
		size = unit.Format(f.Calc.Spanner.Value, unit.Length, millimetresOrInches(f)) + " "
	}
	kind := toolOf[f.Head.V]
	switch {
	case kind == "":
		return ""
	case kind == "flat screwdriver" || kind == "drill":
		return kind
	case size == "":
		return kind + " to suit " + strings.TrimSpace(f.Thread.V.String()+" "+f.Head.V)
	}
	return size + kind
}

func millimetresOrInches(f *document.Fastening) string {
	if f.Thread.V.System == unit.Unified {
		return "in"
	}
	return "mm"
}

// loosened gives a step the tools of a joint.
func (p *planner) loosened(step *Step, j *document.Joint) {
	if j.Here == nil || j.There == nil {
		return
	}
	switch form := j.Here.Form.V; {
	case slices.Contains(threaded, form):
		size := flareNut(j)
		tool := size + "flare-nut spanner"
		if form == "banjo" || form == "taper-pipe" {
			tool = size + "spanner for " + endText(j.Here)
		} else if size == "" {
			tool += " for " + endText(j.Here)
		}
		if strings.Contains(j.Here.Metal+j.There.Metal, "aluminium") {
			tool += ", aluminium or soft-jawed"
		}
		step.use(tool)
		step.use("second spanner to hold the port")
	case form == "hose" || form == "bead" || form == "barb":
		step.use(strings.TrimSpace("driver for hose clamps " + p.clamp(j)))
	case form == "V-band":
		step.use("socket for the band's nut, soft hammer")
	case form == "slip":
		step.use("spanner for the pipe clamp")
	case form == "rod-end":
		step.use("two spanners for the rod end and its locknut")
	}
}

// clamp is the kind of clamp on a hose joint, as the joint, the line or the car
// says it.
func (p *planner) clamp(j *document.Joint) string {
	kind := j.Meet.Clamp.V
	for i := range p.d.Lines {
		if l := &p.d.Lines[i]; l.Path == j.On && kind == "" {
			kind = l.Clamps.V
		}
	}
	if kind == "" {
		kind = p.car.Usual.Clamp.V
	}
	if kind != "" {
		kind = "(" + kind + ")"
	}
	return kind
}

// flareNut is the size of a flare nut as its table writes it, "" where it does not
// know.
func flareNut(j *document.Joint) string {
	for _, h := range []*document.Half{j.Here, j.There} {
		if h.Dash == nil {
			continue
		}
		if row, known := tables.AcrossFlats("flare-nut", unit.Dash(*h.Dash).String()); known {
			return row.Written + " "
		}
	}
	return ""
}

// tighten gives a step the tool and torque of a fastening, and notes what is used
// once.
func (p *planner) tighten(step *Step, path string) {
	p.fastener(step, path)
	f := p.fastenings[path]
	if f == nil {
		return
	}
	if f.Torque.Given() {
		p.torque(step, Torque{Subject: path, Torque: f.Torque.V, Threads: f.Wet.V, By: f.By.V})
	}
	p.usedOnce(f)
}

// torque notes a torque with the smallest wrench of the shop that covers it.
func (p *planner) torque(step *Step, t Torque) {
	if shop := p.c.Shop; shop != nil {
		narrow := 0.0
		for name, wrench := range shop.Shop.Wrenches.All() {
			if r := wrench.Range; r.Given() && r.V.Holds(t.Torque.SI) && (t.Wrench == "" || r.V.High < narrow) {
				t.Wrench, narrow = name, r.V.High
			}
		}
	}
	if step.Torque == "" {
		step.Torque = t.Torque.String()
	} else {
		step.Torque += ", " + t.Torque.String() + " at " + plain(t.Subject)
	}
	if t.Wrench != "" {
		step.use("torque wrench " + t.Wrench)
	} else {
		step.use("torque wrench that covers " + t.Torque.String())
	}
	p.plan.Torques = append(p.plan.Torques, t)
}

// usedOnce notes what of a fastening has to be new.
func (p *planner) usedOnce(f *document.Fastening) {
	renew := func(what string) { p.plan.Renew = append(p.plan.Renew, Renewal{What: what, Subject: f.Path}) }
	if f.Once.V {
		renew("bolts, used once")
	}
	if f.Washer.Given() {
		renew(f.Washer.V)
	}
	if f.Nut.V == "nyloc-nut" {
		renew("nylon-insert nuts")
	}
	switch f.Lock.V {
	case "wire":
		renew("lock wire")
	case "split-pin":
		renew("split pins")
	case "tab-washer":
		renew("tab washers")
	case "thread-lock":
		renew("thread lock")
	}
}

// renewed notes the seals of a joint that has been opened.
func (p *planner) renewed(j *document.Joint) {
	renew := func(what string) { p.plan.Renew = append(p.plan.Renew, Renewal{What: what, Subject: j.Path}) }
	if j.Meet.Washers.Given() {
		renew(j.Meet.Washers.V)
		return
	}
	if j.There == nil {
		return
	}
	switch form := j.There.Form.V; form {
	case "banjo":
		renew("two washers for " + endText(j.There))
	case "O-ring-boss", "metric-O-ring":
		renew("O-ring for " + endText(j.There))
	case "washer-face":
		renew("washer for " + endText(j.There))
	case "V-band":
		renew("gasket, if its flanges take one")
	}
}

// tools gathers the tools of all steps.
func (p *planner) tools() {
	uses := map[string][]string{}
	for _, steps := range [][]Step{p.plan.Remove, p.plan.Refit} {
		for _, step := range steps {
			for _, tool := range step.Tools {
				if !slices.Contains(uses[tool], step.Subject) {
					uses[tool] = append(uses[tool], step.Subject)
				}
			}
		}
	}
	for _, tool := range slices.Sorted(maps.Keys(uses)) {
		p.plan.Tools = append(p.plan.Tools, Tool{Name: tool, For: uses[tool]})
	}
	slices.SortStableFunc(p.plan.Torques, func(a, b Torque) int { return strings.Compare(a.Subject, b.Subject) })
	sortByName(p.plan.Renew, func(r Renewal) string { return r.Subject + r.What })
	sortByName(p.plan.Caps, func(c Cap) string { return c.Subject })
	sortByName(p.plan.Labels, func(l Label) string { return l.Subject })
}

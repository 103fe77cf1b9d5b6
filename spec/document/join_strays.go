package document

// A stray is an end that meets something, and its author does not say what.
type stray struct {
	meeting
	service string // what comes in at its other end, as far as it is known
}

// settle tells of each port whether all ends that meet it are known. While one is
// not, the port is neither open for certain nor taken by one end only.
func (j *joiner) settle(ports []Port) {
	strays := j.strays()
	for i := range ports {
		p := &ports[i]
		for _, s := range strays {
			if s.mayMeet(p) {
				p.strays = append(p.strays, s.path+".port")
			}
		}
		if len(p.strays) == 0 {
			p.Settled = pointer(true)
		}
	}
}

func (j *joiner) strays() []stray {
	var all []stray
	for _, m := range j.meetings {
		if m.meet.Port.Given() || m.kind == "circuit" { // a power post takes many ends
			continue
		}
		s := stray{meeting: m}
		for _, other := range j.meetings {
			if port := j.port(other.meet.Port.V, other.owner); other.on == m.on && port != nil {
				s.service = port.Service
			}
		}
		all = append(all, s)
	}
	return all
}

// mayMeet tells whether the stray could belong to a port: within its reach, for
// what it carries, and made as the port is.
func (s stray) mayMeet(p *Port) bool {
	switch {
	case s.owner == ofDriveline && p.Owner == ofCar, s.owner == ofCar && p.Owner == ofDriveline && !p.Crosses:
		return false
	case s.service != "" && p.Service != "" && s.service != p.Service:
		return false
	}
	here, there := s.meet.End.Form, p.Half.Form
	return !here.Given() || !there.Given() || wayOf[here.V] == wayOf[there.V]
}

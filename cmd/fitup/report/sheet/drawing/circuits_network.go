package drawing

import (
	"cmp"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
)

// A circuit is the parts that one fluid goes through, and the lines between them.
type circuit struct {
	name  string
	rank  int // its place among the services
	parts []circuitPart
	lines []circuitLine
}

// A circuitPart is a thing with ports, or where a line ends without one.
type circuitPart struct {
	path string // key path; "" for an end that meets no part
	name string
	kind partKind
}

// A partKind is what a line can end at.
type partKind int

// The kinds.
const (
	carPart  partKind = iota
	base              // the driveline itself, or the bay that it is out of
	moved             // a part that goes with the driveline
	openAir           // no part: the line ends in the open
	notKnown          // nobody says what it meets
)

// leaves tells whether a part goes with the driveline.
func (k partKind) leaves() bool { return k == base || k == moved }

// A circuitLine is a hose, tube or joint between two parts. Pipes are parts: the
// joint at either end of one is a line that has no length.
type circuitLine struct {
	path, name string
	made       []string // what it is made of
	hose       string   // path of the hose kind
	from, to   circuitEnd
}

// A circuitEnd is one end of a line.
type circuitEnd struct {
	part   int
	path   string
	port   string // name of the port on its part
	meets  string // path of the port
	half   string // what this end of the line is
	seat   string // the same, short
	across bool   // it is a joint between car and driveline
	lacks  string // what is wrong with it so that nothing can be told; "" for nothing
}

// services are the circuits in the order in which they are drawn, with what goes
// through each. What is not here is a circuit by its own name.
var services = []struct {
	name    string
	carries []string
	system  string // key of its table in the car's file
}{
	{"fuel", []string{"fuel", "fuel vapour"}, "fuel"},
	{"engine oil", []string{"engine oil", "crankcase breath"}, "oil"},
	{"coolant", []string{"coolant", "water"}, "cooling"},
	{"clutch", []string{"clutch fluid"}, "clutch"},
	{"air", []string{"air", "charge air", "manifold pressure"}, "air"},
	{"exhaust", []string{"exhaust"}, "exhaust"},
	{"gearbox oil", []string{"gearbox oil", "axle oil"}, "gearbox"},
	{"steering", []string{"steering fluid"}, "steering"},
	{"brakes", []string{"brake fluid", "vacuum"}, "brakes"},
}

// serviceNotSaid is the circuit of lines of which nobody says what they carry.
const serviceNotSaid = "lines that nobody says the contents of"

// circuitOf names the circuit of a service, and its place among the others.
func circuitOf(service string) (name string, rank int) {
	for i, c := range services {
		if slices.Contains(c.carries, service) {
			return c.name, i
		}
	}
	if service == "" {
		return serviceNotSaid, len(services) + 1
	}
	return service, len(services)
}

// system is the key of the table that describes the circuit; "" if there is none.
func (c *circuit) system() string {
	if c.rank < len(services) {
		return services[c.rank].system
	}
	return ""
}

// circuitsOf sorts the lines and pipes of a document into circuits.
func circuitsOf(d *document.Document) []*circuit {
	n := network{document: d, byName: map[string]*circuit{}, ports: map[string]*document.Port{}}
	for i := range d.Ports {
		n.ports[d.Ports[i].Name] = &d.Ports[i]
	}
	for i := range d.Lines {
		n.addLine(&d.Lines[i])
	}
	for i := range d.Pipes {
		n.addPipe(&d.Pipes[i])
	}
	for i := range d.Ports {
		if p := &d.Ports[i]; p.Crosses && len(p.Joins) == 0 {
			n.addSpare(p)
		}
	}
	slices.SortStableFunc(n.circuits, func(a, b *circuit) int {
		return cmp.Or(cmp.Compare(a.rank, b.rank), cmp.Compare(a.name, b.name))
	})
	return n.circuits
}

// A network holds what the circuits of a document share while they are made.
type network struct {
	document *document.Document
	circuits []*circuit
	byName   map[string]*circuit
	ports    map[string]*document.Port // the car's and those that it meets, by reference
}

func (n *network) circuit(service string) *circuit {
	name, rank := circuitOf(service)
	c := n.byName[name]
	if c == nil {
		c = &circuit{name: name, rank: rank}
		n.byName[name] = c
		n.circuits = append(n.circuits, c)
	}
	return c
}

func (n *network) addLine(l *document.Line) {
	c := n.circuit(l.Service)
	line := circuitLine{path: l.Path, name: l.Name, made: madeOf(l), hose: l.Kind.Path}
	line.from = n.end(c, l.Owner, &l.Line.From, l.From, l.Path+".from", l.OpenAir.V, l.Kind.Size.V)
	line.to = n.end(c, l.Owner, &l.Line.To, l.To, l.Path+".to", l.OpenAir.V, l.Kind.Size.V)
	c.lines = append(c.lines, line)
}

// addPipe enters a pipe as a part, and what it is joined to at either end.
func (n *network) addPipe(p *document.ExhaustPipe) {
	c := n.circuit("exhaust")
	pipe := c.part(p.Path, carPart)
	for _, end := range []struct {
		meet *spec.Meet
		key  string
	}{{&p.From, "from"}, {&p.To, "to"}} {
		if end.meet.State == spec.Unsaid {
			continue // what it meets may be written at the other pipe
		}
		path := p.Path + "." + end.key
		far := n.end(c, "car", end.meet, n.pipeEnd(end.meet, path), path, "", "")
		own := circuitEnd{part: pipe, path: path, port: end.key}
		line := circuitLine{path: path, from: own, to: far}
		if end.key == "from" {
			line.from, line.to = far, own
		}
		c.lines = append(c.lines, line)
	}
}

// addSpare enters a port of the driveline for a fluid that nothing on the car meets.
func (n *network) addSpare(p *document.Port) {
	if _, rank := circuitOf(p.Service); rank >= len(services) {
		return
	}
	c := n.circuit(p.Service)
	far := circuitPart{name: "nothing meets it", kind: notKnown}
	switch {
	case p.Capped.Given():
		far = circuitPart{name: "nothing; capped: " + p.Capped.V, kind: openAir}
	case p.Open.V:
		far = circuitPart{name: "nothing; may stay open", kind: openAir}
	}
	line := circuitLine{path: p.Path, to: circuitEnd{part: c.add(far)}}
	line.from = circuitEnd{part: c.partOf(n.document, p), port: strings.TrimPrefix(p.Name, "driveline.")}
	line.from.half, line.from.seat = halfWords(&p.Half), seatWords(&p.Half, "")
	if p.Takes.Given() {
		line.from, line.to = line.to, line.from
	}
	c.lines = append(c.lines, line)
}

func (n *network) pipeEnd(meet *spec.Meet, path string) *document.LineEnd {
	end := &document.LineEnd{Path: path, Port: n.ports[meet.Port.V]}
	if meet.End.Told() {
		end.Half = document.HalfOf(meet.End)
	}
	return end
}

// end finds the part that an end meets, and enters it in the circuit.
func (n *network) end(c *circuit, owner string, meet *spec.Meet, at *document.LineEnd, path, leads, size string) circuitEnd {
	e := circuitEnd{path: path}
	if at != nil {
		e.half, e.seat = halfWords(at.Half), seatWords(at.Half, size)
	}
	reference := meet.Port.V
	e.across = owner == "car" && strings.HasPrefix(reference, "driveline.")
	switch {
	case at != nil && at.Port != nil:
		e.meets, e.port = at.Port.Path, at.Port.Name[strings.LastIndex(at.Port.Name, ".")+1:]
		e.part = c.partOf(n.document, at.Port)
	case reference == spec.OpenAir:
		e.part = c.add(circuitPart{name: strings.TrimSuffix("open air: "+leads, ": "), kind: openAir})
	case e.across:
		e.port = strings.TrimPrefix(reference, "driveline.")
		e.part = c.base(n.document)
		if n.document.Composition != document.EmptyBay {
			e.lacks = "the driveline has no such port"
		}
	case reference != "":
		e.part = c.add(circuitPart{name: reference, kind: notKnown})
		e.lacks = "no such port"
	default:
		e.part = c.add(circuitPart{name: "not said what it meets", kind: notKnown})
		e.lacks = "nobody says what it meets"
	}
	return e
}

// partOf is the part that a port is on: what its path says, unless it is on a pump
// or other part that may be unbolted by itself. The engine is the driveline.
func (c *circuit) partOf(d *document.Document, p *document.Port) int {
	path, _, _ := strings.Cut(p.Path, ".ports.")
	if p.Owner != "driveline" {
		return c.part(path, carPart)
	}
	if on := p.Port.On; on.Given() {
		path = "driveline." + strings.TrimPrefix(on.V, "driveline.")
	}
	if path == "driveline.engine" || path == "driveline" {
		return c.base(d)
	}
	return c.part(path, moved)
}

// base is the number of the driveline, or of the bay without one.
func (c *circuit) base(d *document.Document) int {
	i := c.part("driveline", base)
	c.parts[i].name = "driveline: " + d.Given.Driveline
	if d.Composition == document.EmptyBay {
		c.parts[i].name = "empty bay: no driveline is in it"
	}
	return i
}

// part is the number of a part, entered if it is not there yet.
func (c *circuit) part(path string, kind partKind) int {
	if i := slices.IndexFunc(c.parts, func(p circuitPart) bool { return p.path == path }); i >= 0 {
		return i
	}
	return c.add(circuitPart{path: path, name: partName(path), kind: kind})
}

func (c *circuit) add(p circuitPart) int {
	c.parts = append(c.parts, p)
	return len(c.parts) - 1
}

// partName is a part's key path without what only sorts it.
func partName(path string) string {
	path = strings.TrimPrefix(path, "driveline.")
	switch table, name, _ := strings.Cut(path, "."); table {
	case "parts", "lines":
		return name
	case "pumps":
		return name + " pump"
	}
	return strings.ReplaceAll(strings.Replace(path, ".pipes.", ".", 1), ".", " ")
}

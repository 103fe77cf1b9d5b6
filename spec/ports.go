package spec

import (
	"strings"
)

// A PortAt is a port with the ways to name it.
type PortAt struct {
	Path    string // key path in its file: fuel.cell.ports.feed
	Ref     string // as a line end names it: fuel.cell.feed, driveline.fuel-in
	Port    *Port
	Carries Choice[serviceWords] // what its system carries unless the port says otherwise
}

// An index finds what references may name in one file.
type index struct {
	ports  []PortAt
	byRef  map[string]PortAt
	posts  map[string]*Port  // power posts, as ports
	things map[string]string // key path by the name of each table that is there, and of what has a shorter name
}

// acrossPrefix begins the references to what is on the driveline.
const acrossPrefix = "driveline."

// Words that stand for an end with no port.
const (
	Chassis = "chassis"
	OpenAir = "open air"
)

func newIndex(f *File) index {
	x := index{byRef: map[string]PortAt{}, posts: map[string]*Port{}, things: map[string]string{}}
	systems := map[string]Choice[serviceWords]{}
	carries := func(f Field) bool { return f.Key == "carries" }
	f.walk(carries, func(path string, field Field, value any) {
		switch v := value.(type) {
		case *Choice[serviceWords]:
			if system, ok := strings.CutSuffix(path, ".carries"); ok {
				systems[system] = *v
			}
			return
		case Leaf, Collection:
			return
		case *Port:
			if owner, name, ok := cutPorts(path); ok && v.State != Unsaid {
				system, _, _ := strings.Cut(path, ".")
				at := PortAt{Path: path, Ref: owner + name, Port: v, Carries: systems[system]}
				x.ports = append(x.ports, at)
				x.byRef[at.Ref] = at
				x.things[at.Ref] = path
			}
			return
		case phrased: // a word about a thing, not a thing
			return
		case *Post:
			x.posts[path] = &Port{Node: v.Node, End: v.End, At: v.At}
		case *Channel:
			x.things[strings.Replace(path, ".channels.", ".", 1)] = path
		case *DriveMount:
			x.things[acrossPrefix+strings.TrimPrefix(path, "mounts.")] = path
		case *Access:
			x.things[strings.TrimPrefix(path, "access.")] = path
		}
		if n := nodeOf(value); n != nil && n.State != Unsaid {
			x.things[path] = path
		}
	})
	return x
}

// cutPorts takes the key path of a port apart into the beginning and the end of
// the reference to it.
func cutPorts(path string) (owner, name string, ok bool) {
	if name, ok := strings.CutPrefix(path, "ports."); ok {
		return acrossPrefix, name, true
	}
	owner, name, ok = strings.Cut(path, ".ports.")
	return owner + ".", name, ok
}

// Ports lists the ports that the file describes, in the order of the tables that
// hold them, then by name.
func (f *File) Ports() []PortAt { return f.index.ports }

// Port finds what the end of a line, circuit, rod, shaft or plug refers to, and
// the key path of it in this file: a port as PART.PORT, a power post, a channel
// as MODULE.CHANNEL, a pin, a whole part, and in a driveline's file its ports,
// then its mounts, as driveline.NAME. The port is nil, and the reference still
// good, where there is no description of an end: of a part, pin, channel or
// mount, and for the words "chassis" and "open air", which have no path either.
func (f *File) Port(ref string) (port *Port, path string, ok bool) {
	if ref == Chassis || ref == OpenAir {
		return nil, "", true
	}
	if at, ok := f.index.byRef[ref]; ok {
		return at.Port, at.Path, true
	}
	path, ok = f.Thing(ref)
	return f.index.posts[path], path, ok
}

// Thing finds the key path of what a name refers to: an access panel by its bare
// name, a port, or any table by its own key path. In a driveline's file a name
// may begin with "driveline.", as it does in a car's.
func (f *File) Thing(ref string) (path string, ok bool) {
	if path, ok = f.index.things[ref]; ok {
		return path, true
	}
	if own, found := strings.CutPrefix(ref, acrossPrefix); found && f.Kind == KindDriveline {
		path, ok = f.index.things[own]
	}
	return path, ok
}

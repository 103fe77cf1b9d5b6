package spec

import (
	"fmt"
	"maps"
	"slices"
	"strings"

	"fitup/spec/nearest"
	"fitup/spec/source"
)

// What a field may refer to stands in its `refers` tag:
//
//	port               a port, or open air
//	terminal           a port or part, or chassis
//	plug               a port
//	mount              the driveline's half of a mount
//	behind             an access panel by its bare name, anything else by its path
//	thing              anything in the file
//	thing or chassis   the same, or the word
//	thing or words     the same if it has a dot, else words
//	circuits, drains, sensors   one of that table
//	shop.NAME          one of that table in the shop file
//
// A reference from a car to its driveline is never dead here: which driveline is
// in the car is another matter, and rules judge it.

// deadReferences tells of references to nothing within the file.
func (f *File) deadReferences() []source.Problem {
	var problems []source.Problem
	f.references(func(path, refers, ref string) {
		if strings.HasPrefix(refers, "shop.") {
			return
		}
		if message, want := f.dead(refers, ref); message != "" {
			problems = append(problems, f.problem(path, want, "%s", message))
		}
	})
	for name := range f.pinSets() {
		if what, known := f.connectors(); !slices.Contains(known, name) {
			p := f.problem("pins."+name, oneOfThem(name, known, "the name of a "+what), "there is no %s %q for these pins", what, name)
			p.Span = f.key(p.Path)
			problems = append(problems, p)
		}
	}
	return problems
}

// deadInShop tells of references to nothing in the shop file.
func (f *File) deadInShop(shop *File) []source.Problem {
	lists := map[string][]string{
		"shop.hoses":   shop.Shop.Hoses.Names(),
		"shop.stands":  shop.Shop.Stands.Names(),
		"shop.hoists":  shop.Shop.Hoists.Names(),
		"shop.slings":  shop.Shop.Slings.Names(),
		"shop.dollies": shop.Shop.Dollies.Names(),
	}
	var problems []source.Problem
	f.references(func(path, refers, ref string) {
		if known, ok := lists[refers]; ok && !slices.Contains(known, ref) {
			table := strings.TrimPrefix(refers, "shop.")
			problems = append(problems, f.problem(path, oneOfThem(ref, known, "a name from there"),
				"%q is not in [%s] of %s", ref, table, shop.Name))
		}
	})
	return problems
}

// references calls visit for each reference that is given, with the path of its
// value.
func (f *File) references(visit func(path, refers, ref string)) {
	refers := func(f Field) bool { return f.Refers != "" }
	f.walk(refers, func(path string, field Field, value any) {
		if field.Refers == "" {
			return
		}
		switch v := value.(type) {
		case *Ref:
			if v.Given() {
				visit(path, field.Refers, v.V)
			}
		case *Names:
			for i, name := range v.V {
				visit(fmt.Sprintf("%s.%d", path, i), field.Refers, name)
			}
		case *Meet:
			if v.Port.Given() {
				visit(path+".port", field.Refers, v.Port.V)
			}
		}
	})
}

// dead says what is wrong with a reference, and what would be right; "" if
// nothing is.
func (f *File) dead(refers, ref string) (message, want string) {
	if f.Kind == KindCar && strings.HasPrefix(ref, acrossPrefix) {
		return "", ""
	}
	_, isThing := f.Thing(ref)
	_, isPort := f.index.byRef[ref]
	switch refers {
	case "mount":
		return fmt.Sprintf("%q is not on the driveline", ref), "driveline.NAME, with the name of the driveline's half"
	case "port", "plug":
		if isPort || refers == "port" && ref == OpenAir {
			return "", ""
		}
		if isThing {
			return fmt.Sprintf("%q is not a port", ref), f.portsOf(ref)
		}
		return fmt.Sprintf("there is no port %q", ref), nearestOf(ref, f.portRefs(), "a port as PART.PORT, or driveline.PORT")
	case "terminal":
		if isThing || ref == Chassis {
			return "", ""
		}
		return fmt.Sprintf("there is no terminal %q", ref), nearestOf(ref, append(f.thingNames(), Chassis), "a part, PART.PORT, pins.CONNECTOR.PIN or chassis")
	case "circuits":
		return f.notIn("circuit", ref, f.Car.Circuits.Names())
	case "drains":
		return f.notIn("drain plug", ref, f.Driveline.Drains.Names())
	case "sensors":
		if strings.HasPrefix(ref, "car.") {
			return "", ""
		}
		return f.notIn("sensor", ref, f.Driveline.Sensors.Names())
	case "thing or chassis":
		isThing = isThing || ref == Chassis
	case "thing or words":
		isThing = isThing || !refForm.MatchString(ref)
	}
	if isThing {
		return "", ""
	}
	if !strings.Contains(ref, ".") && refers == "behind" && f.Kind == KindDriveline {
		return fmt.Sprintf("%q is not a part of the driveline", ref), "the path of a part, such as parts.shield; panels are for each car to name"
	}
	if !strings.Contains(ref, ".") && refers == "behind" {
		return fmt.Sprintf("there is no access panel %q", ref), nearestOf(ref, f.Car.Access.Names(), "a name from [access], or the path of a part, such as cooling.radiator")
	}
	return fmt.Sprintf("there is no %q in this file", ref), nearestOf(ref, f.thingNames(), "the path of a part, such as cooling.radiator")
}

// nearestOf asks for the nearest of the known names, else says what is due.
func nearestOf(word string, known []string, due string) string {
	if near := nearest.To(word, known); near != "" {
		return fmt.Sprintf("did you mean %q?", near)
	}
	return due
}

// oneOfThem is nearestOf for a short list, which is told where none is near.
func oneOfThem(word string, known []string, due string) string {
	if 0 < len(known) && len(known) <= 6 {
		due += ": " + strings.Join(known, ", ")
	}
	return nearestOf(word, known, due)
}

func (f *File) notIn(what, ref string, known []string) (message, want string) {
	if slices.Contains(known, ref) {
		return "", ""
	}
	return fmt.Sprintf("there is no %s %q", what, ref), oneOfThem(ref, known, "the name of a "+what+" in this file")
}

// portsOf names the ports of a part.
func (f *File) portsOf(part string) string {
	var refs []string
	for _, at := range f.index.ports {
		if strings.HasPrefix(at.Ref, part+".") {
			refs = append(refs, at.Ref)
		}
	}
	if len(refs) == 0 {
		return fmt.Sprintf("give it a port: [%s.ports.NAME]", part)
	}
	return "one of its ports: " + strings.Join(refs, ", ")
}

func (f *File) portRefs() []string {
	refs := []string{OpenAir}
	for _, at := range f.index.ports {
		refs = append(refs, at.Ref)
	}
	return refs
}

func (f *File) thingNames() []string { return slices.Sorted(maps.Keys(f.index.things)) }

func (f *File) pinSets() map[string]*PinSet {
	switch f.Kind {
	case KindCar:
		return f.Car.Pins.Named
	case KindDriveline:
		return f.Driveline.Pins.Named
	}
	return nil
}

// connectors lists what pins may belong to, and what that is called.
func (f *File) connectors() (what string, names []string) {
	if f.Kind == KindCar {
		return "plug", f.Car.Plugs.Names()
	}
	return "port", f.Driveline.Ports.Names()
}

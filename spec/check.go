package spec

import (
	"reflect"
	"slices"

	"fitup/spec/source"
)

// check finds what no single value shows: keys that a table needs, and keys that
// contradict one another. A rating whose basis is left out becomes asked, and a bay
// of which nobody knows what is in it is remarked on. Values that were refused, as
// the problems so far tell, are not told of again.
func (f *File) check(sofar []source.Problem) []source.Problem {
	var problems []source.Problem
	f.walk(noLeaf, func(path string, _ Field, value any) {
		switch v := value.(type) {
		case Collection:
			return
		case *CarHead:
			if v.Driveline.Said() == Asked {
				f.Notes = append(f.Notes, f.problem(path+".driveline", `the file of the driveline, or "none"`, "the bay is judged as an empty one while nobody says what is in it"))
			}
		case *Stand:
			f.needsBasis(&v.Rated, v.Basis.State, path, `basis = "each" or "pair", as its label says`)
		case *Sling:
			f.needsBasis(&v.Rated, v.Basis.State, path, `basis = "leg" or "whole", as its label says`)
		case *Holes:
			if v.Wide.Given() && v.Apart.Given() && v.Wide.V.SI > v.Apart.V.SI {
				problems = append(problems, f.problem(path+".wide", "the long side first", "the short side, %s, is longer than the long one, %s", v.Wide.Text, v.Apart.Text))
			}
		case *Gap:
			if v.Between.Given() && len(v.Between.V) != 2 {
				problems = append(problems, f.problem(path+".between", `two names such as ["exhaust.pipes.front", "cabin floor"]`, "a gap is between two things, not %d", len(v.Between.V)))
			}
		case *Driveline:
			for name := range v.Mounts.All() {
				if v.Ports.Named[name] != nil {
					p := f.problem("mounts."+name, "another name, so that driveline."+name+" means one thing", "%q is the name of a port already", name)
					p.Span = f.key(p.Path)
					problems = append(problems, p)
				}
			}
		}
		if absent := missing(path, value, sofar); len(absent) > 0 {
			problems = append(problems, f.problem(path, "also due: "+inWords(absent), "[%s] does not say enough", path))
		}
	})
	return problems
}

// missing lists the required keys of a table that are not given.
func missing(path string, table any, sofar []source.Problem) []string {
	if n := nodeOf(table); n == nil || n.State == Unsaid {
		return nil
	}
	v := reflect.ValueOf(table).Elem()
	var absent []string
	for _, field := range fieldsOf(v.Type()) {
		if !field.Required || v.FieldByIndex(field.index).Addr().Interface().(Leaf).Said() == Given {
			continue
		}
		if !slices.ContainsFunc(sofar, func(p source.Problem) bool { return p.Path == join(path, field.Key) }) {
			absent = append(absent, field.Key)
		}
	}
	return absent
}

// needsBasis makes a rating that does not say for what an asked one.
func (f *File) needsBasis(rated *Mass, basis State, path, want string) {
	if rated.Given() && basis != Given {
		f.Notes = append(f.Notes, f.problem(path+".rated", want, "a rating of %s that does not say for what", rated.Text))
		rated.State = Asked
	}
}

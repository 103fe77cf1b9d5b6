package fleet

import (
	"cmp"
	"fmt"
	"io/fs"
	"slices"
	"strings"

	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/source"
	"fitup/spec/tree"
)

// A search goes from names to compositions.
type search struct {
	*Selection
	give    func(*spec.Composition) error
	passing bool     // what is given is not kept
	scope   []string // of the call

	met        map[string]metFile // every file that was read, by real name
	recent     []string           // those of them that the outfit still holds, if passing
	chosen     map[string]bool    // real names
	drivelines []string           // met in a folder
	asked      []string           // drivelines and shop files that were named
	scanned    []string           // every spec of the tree, once needed
	concerned  map[string]bool    // files with problems before the tree was scanned
	given      map[[2]string]bool // car and driveline of each composition
	judged     map[string]bool    // drivelines in any composition
	about      map[string]bool    // files in those that were given
}

// A metFile is what is kept of a file that was read.
type metFile struct {
	kind  spec.FileKind
	whole bool // it could be read as TOML
	notes []judge.Problem
}

// mostRecent is how many files an outfit holds on to while specs pass: enough for
// a shop file and the drivelines of a few cars.
const mostRecent = 16

func newSearch(c *Call, give func(*spec.Composition) error) *search {
	s := &search{
		Selection: &Selection{Tree: c.tree, Config: c.Config, Outfit: spec.NewOutfit(c.tree), Without: c.without},
		give:      give, scope: c.scope, met: map[string]metFile{}, chosen: map[string]bool{},
		given: map[[2]string]bool{}, judged: map[string]bool{}, about: map[string]bool{},
	}
	s.Outfit.Read = s.read
	return s
}

// read reads a file for the outfit.
func (s *search) read(t *tree.Tree, name string) (*spec.File, []source.Problem) {
	f, problems := spec.LoadFile(t, name)
	m := metFile{kind: f.Kind, whole: f.Root != nil}
	for _, n := range f.Notes {
		place := f.Place(n.Span)
		m.notes = append(m.notes, problem(spec.FileProblem{File: f.Name, Problem: n, Place: place, Excerpt: f.Line(place.Line)}))
	}
	s.met[f.Name] = m
	s.recent = append(s.recent, f.Name)
	return f, problems
}

// forget lets the outfit go of all but the last files, if they only pass.
func (s *search) forget() {
	for s.passing && len(s.recent) > mostRecent {
		s.Outfit.Forget(s.recent[0])
		s.recent = s.recent[1:]
	}
}

// kindOf is the kind of a file, which is read if it was not before.
func (s *search) kindOf(name string) spec.FileKind {
	m, known := s.met[name]
	if !known {
		m.kind = s.Outfit.Load(name).Kind
	}
	return m.kind
}

// run finds all that the call is about.
func (s *search) run(c *Call) error {
	for _, name := range c.names {
		if err := s.choose(name); err != nil {
			return err
		}
	}
	if len(s.chosen)+len(s.Unread) == 0 && !c.part {
		return CallError{fmt.Sprintf("no spec in %s", strings.Join(c.paths, ", ")),
			"a spec is a file NAME.toml with one of the tables [car], [driveline] and [shop]; `fitup new` prints one to start from"}
	}
	for _, name := range s.asked {
		if err := s.around(name); err != nil {
			return err
		}
	}
	for _, driveline := range s.drivelines {
		if !s.judged[driveline] {
			if err := s.alone(driveline); err != nil {
				return err
			}
		}
	}
	slices.Sort(s.Skipped)
	s.Skipped = slices.Compact(s.Skipped)
	s.Whole = s.Fleet && len(s.Skipped)+len(s.Unread)+len(s.Config.Exclude) == 0 && s.coversTree()
	s.tell()
	return nil
}

// choose takes in what is at a name: a spec, or all specs in a folder.
func (s *search) choose(name string) error {
	names, err := s.Tree.Specs(name, s.excluded())
	if len(names) == 0 && err != nil {
		return CallError{err.Error(), "give files and folders that can be read"}
	}
	s.unread(err)
	info, err := fs.Stat(s.Tree.FS, name)
	folder := err == nil && info.IsDir()
	s.Fleet = s.Fleet || folder
	// A car brings its driveline along, which then need not be read twice.
	slices.SortStableFunc(names, func(a, b string) int { return cmp.Compare(strings.Count(a, "/"), strings.Count(b, "/")) })
	for _, real := range names {
		if s.chosen[real] {
			continue
		}
		s.chosen[real] = true
		switch kind := s.kindOf(real); {
		case kind == spec.KindCar:
			if err := s.car(real); err != nil {
				return err
			}
		case kind == spec.KindDriveline && folder:
			s.drivelines = append(s.drivelines, real)
		case kind != 0 && !folder:
			s.asked = append(s.asked, real)
		}
		s.forget()
	}
	return nil
}

// unread notes the errors of a scan.
func (s *search) unread(err error) {
	if err == nil {
		return
	}
	if joined, ok := err.(interface{ Unwrap() []error }); ok {
		for _, each := range joined.Unwrap() {
			s.Unread = append(s.Unread, each.Error())
		}
		return
	}
	s.Unread = append(s.Unread, err.Error())
}

// car takes in a car with the driveline in it.
func (s *search) car(name string) error {
	c, ok := s.Outfit.Car(name)
	if !ok {
		s.Skipped = append(s.Skipped, name)
		return nil
	}
	return s.add(c)
}

// alone takes in a driveline by itself.
func (s *search) alone(name string) error {
	c, ok := s.Outfit.Driveline(name)
	if !ok {
		s.Skipped = append(s.Skipped, name)
		return nil
	}
	defer s.forget()
	return s.add(c)
}

// around adds the cars that a driveline or shop file is about.
func (s *search) around(name string) error {
	driveline := s.kindOf(name) == spec.KindDriveline
	s.Fleet = s.Fleet || driveline
	for _, car := range s.everySpec() {
		if s.kindOf(car) != spec.KindCar {
			continue
		}
		var found []*spec.Composition
		if driveline {
			found = s.Outfit.CarsFor(name, []string{car})
		} else if c, ok := s.Outfit.Car(car); ok && nameOf(c.Shop) == name {
			found = append(found, c)
		}
		for _, c := range found {
			if err := s.add(c); err != nil {
				return err
			}
		}
		s.forget()
	}
	if driveline && !s.judged[name] {
		return s.alone(name)
	}
	return nil
}

// excluded are the patterns of what is not looked at.
func (s *search) excluded() []string { return slices.Concat(s.Config.Exclude, s.Without) }

// add gives a composition, once, if it is about the scope: a driveline may be in
// cars elsewhere.
func (s *search) add(c *spec.Composition) error {
	key := [2]string{nameOf(c.Car), nameOf(c.Driveline)}
	if s.given[key] {
		return nil
	}
	s.given[key], s.judged[key[1]] = true, true
	files := slices.DeleteFunc([]string{key[0], key[1], nameOf(c.Shop)}, func(name string) bool { return name == "" })
	if !slices.ContainsFunc(files, s.inScope) {
		return nil
	}
	for _, name := range files {
		s.about[name] = true
	}
	return s.give(c)
}

// everySpec lists the specs of the tree.
func (s *search) everySpec() []string {
	if s.scanned == nil {
		s.concerned = map[string]bool{}
		for _, p := range s.Outfit.Problems() {
			s.concerned[p.File] = true
		}
		names, err := s.Tree.Specs(".", s.excluded())
		s.unread(err)
		s.scanned = names
	}
	return s.scanned
}

// coversTree reports whether no car or driveline of the tree is left out.
func (s *search) coversTree() bool {
	names, err := s.Tree.Specs(".", nil)
	return err == nil && !slices.ContainsFunc(names, func(name string) bool {
		if s.chosen[name] {
			return false
		}
		other, _ := spec.LoadFile(s.Tree, name) // not into the outfit, whose problems are told
		return other.Kind == spec.KindCar || other.Kind == spec.KindDriveline
	})
}

// tell counts what was read and says what is wrong with it.
func (s *search) tell() {
	about := map[string]bool{}
	for _, names := range []map[string]bool{s.chosen, s.about} {
		for name := range names {
			about[name] = true
		}
	}
	for name := range about {
		f := s.met[name]
		switch f.kind {
		case spec.KindCar:
			s.Read.Cars++
		case spec.KindDriveline:
			s.Read.Drivelines++
		case spec.KindShop:
			s.Read.Shops++
		}
		s.Notes = append(s.Notes, f.notes...)
	}
	slices.SortFunc(s.Notes, func(a, b judge.Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column), cmp.Compare(a.Message, b.Message))
	})
	for _, p := range s.Outfit.Problems() {
		// Of what was met only while cars were looked for, a car may be one that
		// the call is about, and so may a file that cannot be read; a TOML file of
		// some other program is none of our business.
		scanned := s.scanned != nil && !s.concerned[p.File] && !about[p.File]
		if f := s.met[p.File]; scanned && (f.kind != spec.KindCar && f.whole || !s.inScope(p.File)) {
			continue
		}
		s.Problems = append(s.Problems, problem(p))
	}
}

func problem(p spec.FileProblem) judge.Problem {
	return judge.Problem{
		Location: judge.Location{File: p.File, Path: p.Path, Place: p.Place},
		Message:  p.Message, Want: p.Want, Excerpt: p.Excerpt,
	}
}

func nameOf(f *spec.File) string {
	if f == nil {
		return ""
	}
	return f.Name
}

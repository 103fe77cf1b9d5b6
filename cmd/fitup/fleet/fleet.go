// Package fleet finds what a call is about: the specs that its paths name, the
// cars and drivelines that are to be judged for them, and the configuration.
package fleet

import (
	"cmp"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"
	"strings"

	"fitup/policies/config"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/source"
	"fitup/spec/tree"
)

// A Selection is what a call is about.
type Selection struct {
	Tree         *tree.Tree
	Config       *config.Config
	Outfit       *spec.Outfit
	Compositions []*spec.Composition // sorted by car, then driveline
	Read         judge.Read
	Problems     []judge.Problem
	Notes        []judge.Problem
	Skipped      []string // cars and drivelines that are not judged, because of problems
	Unread       []string // what could not be looked at, with the reason
	Without      []string // folders that are repositories of their own, and are not looked into
	Fleet        bool     // every car that the call is about is there
	Whole        bool     // every car and driveline of the tree is there
}

// A CallError says what is wrong with the paths of a call.
type CallError struct{ Problem, Want string }

func (e CallError) Error() string { return e.Problem + "; " + e.Want }

// NoConfig is given for the configuration's file to use none.
const NoConfig = "none"

// A Call is what paths name, with the configuration that holds for it, before
// any spec is read.
type Call struct {
	Config *config.Config
	tree   *tree.Tree
	paths  []string
	names  []string // of the paths in the tree

	without []string // folders that are repositories of their own
	part    bool     // only what a change touches, which may be nothing
	scope   []string // what the compositions have to be about; nil for no bounds
}

// Find finds what paths name. configFile is the configuration to use: "" is the
// nearest, NoConfig is none.
func Find(paths []string, configFile string) (*Call, error) {
	t, names, err := openTree(paths)
	if err != nil {
		return nil, err
	}
	c, err := configuration(t, names, paths, configFile)
	return &Call{Config: c, tree: t, paths: paths, names: names}, err
}

// Open finds what paths are about, and reads it.
func Open(paths []string, configFile string) (*Selection, error) {
	c, err := Find(paths, configFile)
	if err != nil {
		return nil, err
	}
	return c.Open()
}

// Open reads the specs that a call is about.
func (c *Call) Open() (*Selection, error) {
	f := &Selection{Tree: c.tree, Config: c.Config, Outfit: spec.NewOutfit(c.tree), Without: c.without}
	s := search{Selection: f, scope: c.scope, chosen: map[string]bool{}}
	for _, name := range c.names {
		if err := s.choose(name); err != nil {
			return nil, err
		}
	}
	if len(s.chosen)+len(f.Unread) == 0 && !c.part {
		return nil, CallError{fmt.Sprintf("no spec in %s", strings.Join(c.paths, ", ")),
			"a spec is a file NAME.toml with one of the tables [car], [driveline] and [shop]; `fitup new` prints one to start from"}
	}
	s.compose()
	s.keep()
	s.tell()
	return f, nil
}

// openTree opens the one tree that all paths are in.
func openTree(paths []string) (*tree.Tree, []string, error) {
	var first *tree.Tree
	var names []string
	for _, p := range paths {
		t, name, err := tree.Open(p)
		switch {
		case err != nil:
			return nil, nil, CallError{err.Error(), "give files and folders that can be read"}
		case first == nil:
			first = t
		case t.Root != first.Root:
			return nil, nil, CallError{fmt.Sprintf("%s and %s are not below one root", paths[0], p), "judge them in two calls"}
		}
		names = append(names, name)
	}
	return first, names, nil
}

// Configuration reads the configuration that Open would judge a path by.
func Configuration(path, configFile string) (*config.Config, error) {
	t, names, err := openTree([]string{path})
	if err != nil {
		return nil, err
	}
	return configuration(t, names, []string{path}, configFile)
}

// configuration reads the configuration that holds for all the names.
func configuration(t *tree.Tree, names, paths []string, file string) (*config.Config, error) {
	switch file {
	case NoConfig:
		return &config.Config{}, nil
	case "":
		nearest := config.Find(t, names[0])
		for i, name := range names {
			if config.Find(t, name) != nearest {
				return nil, CallError{fmt.Sprintf("%s and %s have two configurations", paths[0], paths[i]), "judge them in two calls, or choose one with --config"}
			}
		}
		if nearest == "" {
			return &config.Config{}, nil
		}
		return read(t, nearest)
	}
	own, name, err := tree.Open(file)
	if err != nil {
		return nil, CallError{err.Error(), "give --config a file, or none"}
	}
	if own.Root == t.Root {
		own = t
	}
	c, err := read(own, name)
	if err == nil && own != t && len(c.Exclude) > 0 {
		return nil, CallError{file + ": its exclude is about another root", "take it out, or move the file"}
	}
	return c, err
}

// read reads a configuration. One that cannot be read at all is a matter of the
// call.
func read(t *tree.Tree, name string) (*config.Config, error) {
	c, err := config.Read(t, name)
	if _, placed := err.(config.Problems); err != nil && !placed {
		return nil, CallError{err.Error(), "give --config a file, or none"}
	}
	return c, err
}

// A search goes from names to compositions.
type search struct {
	*Selection
	scope      []string        // of the call
	chosen     map[string]bool // real names
	cars       []string        // chosen
	drivelines []string        // met in a folder
	asked      []string        // drivelines and shop files that were named
	scanned    []string        // every spec of the tree, once needed
	concerned  map[string]bool // files with problems before the tree was scanned
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
	for _, real := range names {
		if s.chosen[real] {
			continue
		}
		s.chosen[real] = true
		switch kind := s.Outfit.Load(real).Kind; {
		case kind == spec.KindCar:
			s.cars = append(s.cars, real)
		case kind == spec.KindDriveline && folder:
			s.drivelines = append(s.drivelines, real)
		case kind != 0 && !folder:
			s.asked = append(s.asked, real)
		}
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

// compose puts together what is to be judged.
func (s *search) compose() {
	for _, car := range s.cars {
		if c, ok := s.Outfit.Car(car); ok {
			s.add(c)
		} else {
			s.Skipped = append(s.Skipped, car)
		}
	}
	for _, name := range s.asked {
		s.around(name)
	}
	for _, driveline := range s.drivelines {
		if !s.has(driveline) {
			s.alone(driveline)
		}
	}
	slices.SortFunc(s.Compositions, func(a, b *spec.Composition) int {
		return cmp.Or(cmp.Compare(nameOf(a.Car), nameOf(b.Car)), cmp.Compare(nameOf(a.Driveline), nameOf(b.Driveline)))
	})
	slices.Sort(s.Skipped)
	s.Skipped = slices.Compact(s.Skipped)
	s.Whole = s.Fleet && len(s.Skipped)+len(s.Unread)+len(s.Config.Exclude) == 0 && s.coversTree()
}

// around adds the cars that a driveline or shop file is about.
func (s *search) around(name string) {
	cars := s.everyCar()
	if s.Outfit.Load(name).Kind == spec.KindDriveline {
		s.Fleet = true
		for _, c := range s.Outfit.CarsFor(name, cars) {
			s.add(c)
		}
		if !s.has(name) {
			s.alone(name)
		}
		return
	}
	for _, car := range cars {
		if c, ok := s.Outfit.Car(car); ok && nameOf(c.Shop) == name {
			s.add(c)
		}
	}
}

// excluded are the patterns of what is not looked at.
func (s *search) excluded() []string { return slices.Concat(s.Config.Exclude, s.Without) }

func (s *search) alone(driveline string) {
	if c, ok := s.Outfit.Driveline(driveline); ok {
		s.add(c)
	} else {
		s.Skipped = append(s.Skipped, driveline)
	}
}

// add takes a composition in, once.
func (s *search) add(c *spec.Composition) {
	if !slices.ContainsFunc(s.Compositions, func(o *spec.Composition) bool { return o.Car == c.Car && o.Driveline == c.Driveline }) {
		s.Compositions = append(s.Compositions, c)
	}
}

// has reports whether a driveline is judged in any composition.
func (s *search) has(driveline string) bool {
	return slices.ContainsFunc(s.Compositions, func(c *spec.Composition) bool { return nameOf(c.Driveline) == driveline })
}

// everyCar lists the cars of the tree.
func (s *search) everyCar() []string {
	var cars []string
	for _, name := range s.everySpec() {
		if s.Outfit.Load(name).Kind == spec.KindCar {
			cars = append(cars, name)
		}
	}
	return cars
}

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
	about := map[*spec.File]bool{}
	for name := range s.chosen {
		about[s.Outfit.Load(name)] = true
	}
	for _, c := range s.Compositions {
		for _, f := range []*spec.File{c.Car, c.Driveline, c.Shop} {
			if f != nil {
				about[f] = true
			}
		}
	}
	for f := range about {
		switch f.Kind {
		case spec.KindCar:
			s.Read.Cars++
		case spec.KindDriveline:
			s.Read.Drivelines++
		case spec.KindShop:
			s.Read.Shops++
		}
		for _, n := range f.Notes {
			s.Notes = append(s.Notes, problem(f, n))
		}
	}
	slices.SortFunc(s.Notes, func(a, b judge.Problem) int {
		return cmp.Or(cmp.Compare(a.File, b.File), cmp.Compare(a.Line, b.Line), cmp.Compare(a.Column, b.Column), cmp.Compare(a.Message, b.Message))
	})
	for _, p := range s.Outfit.Problems() {
		f := s.Outfit.Load(p.File)
		// Of what was met only while cars were looked for, a car may be one that
		// the call is about, and so may a file that cannot be read; a TOML file of
		// some other program is none of our business.
		met := s.scanned != nil && !s.concerned[p.File] && !s.chosen[p.File] && !about[f]
		if met && (f.Kind != spec.KindCar && f.Root != nil || !s.inScope(f.Name)) {
			continue
		}
		s.Problems = append(s.Problems, problem(f, p.Problem))
	}
}

func problem(f *spec.File, p source.Problem) judge.Problem {
	place := f.Place(p.Span)
	return judge.Problem{
		Location: judge.Location{File: f.Name, Path: p.Path, Place: place},
		Message:  p.Message, Want: p.Want, Excerpt: f.Line(place.Line),
	}
}

func nameOf(f *spec.File) string {
	if f == nil {
		return ""
	}
	return f.Name
}

// Shown is how a file of the tree with a root is called from a folder, for
// editors that follow it. Both are absolute.
func Shown(root, name, folder string) string {
	shown, err := filepath.Rel(folder, filepath.Join(root, filepath.FromSlash(name)))
	if err != nil {
		return name
	}
	return filepath.ToSlash(shown)
}

// One opens a single car with the driveline in it, or a single driveline by
// itself. Its error is of type CallError, or the problems of the files.
func One(path string) (*spec.Composition, error) {
	t, name, err := tree.Open(path)
	if err != nil {
		return nil, CallError{err.Error(), "give the file of a car or driveline"}
	}
	if info, err := fs.Stat(t.FS, name); err == nil && info.IsDir() {
		return nil, CallError{path + ": this is a folder", "give the file of a car or driveline"}
	}
	outfit := spec.NewOutfit(t)
	for _, compose := range []func(string) (*spec.Composition, bool){outfit.Car, outfit.Driveline} {
		if c, ok := compose(name); ok {
			return c, nil
		}
	}
	if problems := outfit.Problems(); len(problems) > 0 {
		return nil, config.Problems{Root: t.Root, List: problems}
	}
	return nil, CallError{path + ": this is no car and no driveline", "give the file of one"}
}

// Driveline opens the file of a driveline.
func Driveline(path string) (*spec.File, error) {
	c, err := One(path)
	if err != nil {
		return nil, err
	}
	if c.Car != nil {
		return nil, CallError{path + ": this is the file of a car", "give that of a driveline"}
	}
	return c.Driveline, nil
}

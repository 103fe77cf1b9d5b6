// Package fleet finds what a call is about: the specs that its paths name, the
// cars and drivelines that are to be judged for them, and the configuration.
package fleet

import (
	"cmp"
	"fmt"
	"io/fs"
	"path/filepath"
	"slices"

	"fitup/policies/config"
	"fitup/policies/judge"
	"fitup/spec"
	"fitup/spec/tree"
)

// A Selection is what a call is about.
type Selection struct {
	Tree         *tree.Tree
	Config       *config.Config
	Outfit       *spec.Outfit
	Compositions []*spec.Composition // sorted by car, then driveline; none if they were given to Each
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

// Open reads the specs that a call is about, and keeps them all.
func (c *Call) Open() (*Selection, error) {
	var all []*spec.Composition
	s := newSearch(c, func(made *spec.Composition) error {
		all = append(all, made)
		return nil
	})
	if err := s.run(c); err != nil {
		return nil, err
	}
	slices.SortFunc(all, func(a, b *spec.Composition) int {
		return cmp.Or(cmp.Compare(nameOf(a.Car), nameOf(b.Car)), cmp.Compare(nameOf(a.Driveline), nameOf(b.Driveline)))
	})
	s.Compositions = all
	return s.Selection, nil
}

// Each reads the specs that a call is about, gives each composition as soon as it
// is read, and keeps none: a large fleet does not fit into memory. Its error may be
// that of give, which ends the reading.
func (c *Call) Each(give func(*spec.Composition) error) (*Selection, error) {
	s := newSearch(c, give)
	s.passing = true
	if err := s.run(c); err != nil {
		return nil, err
	}
	return s.Selection, nil
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

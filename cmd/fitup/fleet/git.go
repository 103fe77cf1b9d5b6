package fleet

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"maps"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/spec"
	"fitup/spec/tree"
)

// FindTyped finds what a text on standard input is about, as if it were saved in
// the file that it is for.
func FindTyped(file string, text io.Reader, configFile string) (*Call, error) {
	root, names, err := place([]string{file})
	if err != nil {
		return nil, err
	}
	t, name, err := root.WithText(names[0], text)
	if err != nil {
		return nil, CallError{err.Error(), "give --as the file of a spec, in a folder that is there"}
	}
	c, err := configuration(t, []string{name}, []string{file}, configFile)
	return &Call{Config: c, tree: t, paths: []string{file}, names: []string{name}}, err
}

// FindStaged finds what paths name in the index: what the next commit would
// hold. Close the repository when all is read.
func FindStaged(paths []string, configFile string) (*Call, *tree.Repository, error) {
	t, names, err := place(paths)
	if err != nil {
		return nil, nil, err
	}
	r, err := tree.OpenRepository(t.Root)
	if err != nil {
		return nil, nil, gitError(err)
	}
	index, err := r.Index()
	if err != nil {
		return nil, r, gitError(err)
	}
	c, err := configuration(index, names, paths, configFile)
	return &Call{Config: c, tree: index, paths: paths, names: names, without: index.Submodules()}, r, err
}

// gitError is an error about a repository. Its text says what would be right.
func gitError(err error) error {
	problem, want, _ := strings.Cut(err.Error(), "; ")
	return CallError{problem, want}
}

// place finds the tree that paths are in and what they are called there. A path
// need not be there: it may be in another state of the tree.
func place(paths []string) (*tree.Tree, []string, error) {
	var first *tree.Tree
	var names []string
	for _, p := range paths {
		at, rest := filepath.Clean(p), ""
		for {
			if _, err := os.Stat(at); err == nil || !errors.Is(err, fs.ErrNotExist) || at == filepath.Dir(at) {
				break
			}
			at, rest = filepath.Dir(at), path.Join(filepath.Base(at), rest)
		}
		t, name, err := tree.Open(at)
		switch {
		case err != nil:
			return nil, nil, CallError{err.Error(), "give files and folders that can be read"}
		case first == nil:
			first = t
		case t.Root != first.Root:
			return nil, nil, CallError{fmt.Sprintf("%s and %s are not below one root", paths[0], p), "judge them in two calls"}
		}
		names = append(names, path.Join(name, rest))
	}
	return first, names, nil
}

// A Change is a call at an earlier state, and as it is now.
type Change struct {
	Before, After *Call
	Since         string            // what the earlier state is called
	Moved         map[string]string // files by the name that they had
	SameRules     bool              // configuration and own rules are as they were

	repository *tree.Repository
	files      []tree.Change
}

// FindChange finds what has changed, of what paths name, since a revision: up to
// the work tree, or the index. Close it when all is read.
func FindChange(paths []string, configFile, revision string, staged bool) (*Change, error) {
	now, names, err := place(paths)
	if err != nil {
		return nil, err
	}
	c := &Change{Moved: map[string]string{}}
	if c.repository, err = tree.OpenRepository(now.Root); err != nil {
		return nil, gitError(err)
	}
	then, id, err := c.repository.Revision(revision)
	if err != nil {
		return c, gitError(fmt.Errorf("--since %w", err))
	}
	c.Since = revision
	if short := id[:12]; !strings.HasPrefix(revision, short) {
		c.Since += " (" + short + ")"
	}
	index, err := c.repository.Index()
	if err != nil {
		return c, gitError(err)
	}
	if staged {
		now = index
	}
	if c.files, err = c.repository.Changes(id, staged); err != nil {
		return c, gitError(err)
	}
	for _, f := range c.files {
		if f.Was != "" && f.Is != "" && f.Was != f.Is {
			c.Moved[f.Was] = f.Is
		}
	}
	old, err := configuration(then, c.then(names), paths, configFile)
	if err != nil {
		return c, CallError{fmt.Sprintf("at %s: %v", c.Since, err), "choose another configuration with --config, or none"}
	}
	c.Before = &Call{Config: old, tree: then, paths: paths, names: c.then(names), part: true}
	c.After = &Call{tree: now, paths: paths, names: names, part: true, without: index.Submodules()}
	if c.After.Config, err = configuration(now, names, paths, configFile); err != nil {
		return c, err
	}
	c.SameRules = c.Before.Config.Name == c.After.Config.Name && c.Before.Config.Digest == c.After.Config.Digest && !c.touchesRules()
	c.narrow(names)
	return c, nil
}

// Close ends the reading of the repository.
func (c *Change) Close() error { return c.repository.Close() }

// then tells what files were called before.
func (c *Change) then(names []string) []string {
	was := map[string]string{}
	for from, to := range c.Moved {
		was[to] = from
	}
	all := slices.Clone(names)
	for i, name := range all {
		if from, moved := was[name]; moved {
			all[i] = from
		}
	}
	return all
}

func (c *Change) touchesRules() bool {
	return slices.ContainsFunc(slices.Concat(c.Before.Config.Rules, c.After.Config.Rules), func(folder policies.Folder) bool {
		return slices.ContainsFunc(c.files, func(f tree.Change) bool { return within(f.Was, folder.Name) || within(f.Is, folder.Name) })
	})
}

// narrow leaves of a call what a change touches: the specs that have changed,
// and with a driveline or a shop file all cars that it is about. If rules, or
// links, have changed, that may be anything, and nothing is left out.
func (c *Change) narrow(names []string) {
	sides := []*Call{c.Before, c.After}
	if !c.SameRules || slices.ContainsFunc(c.files, c.isLink) {
		for _, side := range sides {
			side.names = slices.DeleteFunc(side.names, func(name string) bool {
				_, err := fs.Stat(side.tree.FS, name)
				return err != nil
			})
		}
		return
	}
	touched := [2]map[string]bool{{}, {}}
	for _, name := range names { // a file that is named is always looked at
		if path.Ext(name) == ".toml" {
			touched[0][c.then([]string{name})[0]], touched[1][name] = true, true
		}
	}
	for _, f := range c.files {
		if c.concerns(f, names) {
			touched[0][f.Was], touched[1][f.Is] = true, true
		}
	}
	for i, side := range sides {
		side.scope = [][]string{c.then(names), names}[i]
		side.names = side.there(touched[i])
	}
	c.swapped()
}

// concerns reports whether a file that has changed may be about what is asked:
// it is a spec in one of the folders, or a driveline or shop file anywhere.
func (c *Change) concerns(f tree.Change, names []string) bool {
	if path.Ext(f.Was) != ".toml" && path.Ext(f.Is) != ".toml" {
		return false
	}
	if slices.ContainsFunc(names, func(name string) bool { return within(f.Is, name) || within(f.Was, name) }) {
		return true
	}
	for _, state := range []struct {
		side *Call
		name string
	}{{c.Before, f.Was}, {c.After, f.Is}} {
		if state.name == "" {
			continue
		}
		file, _ := spec.LoadFile(state.side.tree, state.name)
		if file.Kind == spec.KindDriveline || file.Kind == spec.KindShop {
			return true
		}
	}
	return false
}

// isLink reports whether a change is about a link, which any reference may go
// through.
func (c *Change) isLink(f tree.Change) bool {
	was, _ := fs.Lstat(c.Before.tree.FS, f.Was)
	is, _ := fs.Lstat(c.After.tree.FS, f.Is)
	return was != nil && was.Mode().Type() == fs.ModeSymlink || is != nil && is.Mode().Type() == fs.ModeSymlink
}

// swapped adds the drivelines that a car lost or got: cars that have one, too,
// are then judged on both sides, and so is one that is left in no car.
func (c *Change) swapped() {
	fitted := func(side *Call, moved map[string]string) map[string]string {
		in := map[string]string{}
		for _, name := range side.names {
			car, _ := spec.LoadFile(side.tree, name)
			if car.Kind != spec.KindCar || !car.Car.Car.Driveline.Given() {
				continue
			}
			if driveline, err := tree.Join(car.Name, car.Car.Car.Driveline.V); err == nil {
				in[now(moved, car.Name)] = now(moved, driveline)
			}
		}
		return in
	}
	before, after := fitted(c.Before, c.Moved), fitted(c.After, nil)
	extra := map[string]bool{}
	for _, cars := range []map[string]string{before, after} {
		for car := range cars {
			if before[car] != after[car] {
				extra[before[car]], extra[after[car]] = true, true
			}
		}
	}
	extraThen := map[string]bool{}
	for name := range extra {
		extraThen[c.then([]string{name})[0]] = true
	}
	c.Before.names = union(c.Before.names, c.Before.there(extraThen))
	c.After.names = union(c.After.names, c.After.there(extra))
}

func now(moved map[string]string, name string) string {
	if to, ok := moved[name]; ok {
		return to
	}
	return name
}

func union(a, b []string) []string {
	all := slices.Concat(a, b)
	slices.Sort(all)
	return slices.Compact(all)
}

// there lists the names of which there is a spec in a call's tree, sorted.
func (c *Call) there(names map[string]bool) []string {
	var all []string
	for _, name := range slices.Sorted(maps.Keys(names)) {
		if name == "" || path.Ext(name) != ".toml" || tree.Hidden(name) || tree.Excluded(name, slices.Concat(c.Config.Exclude, c.without)) {
			continue
		}
		if info, err := fs.Lstat(c.tree.FS, name); err == nil && info.Mode().IsRegular() {
			all = append(all, name)
		}
	}
	return all
}

// within reports whether a name is a folder, or in it.
func within(name, folder string) bool {
	return name != "" && (folder == "." || name == folder || strings.HasPrefix(name, folder+"/"))
}

// inScope reports whether a file is one that the call is about.
func (s *search) inScope(file string) bool {
	return s.scope == nil || slices.ContainsFunc(s.scope, func(name string) bool { return within(file, name) })
}

// Gone tells files that are not in a selection's tree any more.
func (s *Selection) Gone(file string) bool {
	_, err := fs.Lstat(s.Tree.FS, file)
	return errors.Is(err, fs.ErrNotExist)
}

// NameOf is what a file on disk is called in reports: its path from the root.
func (s *Selection) NameOf(file string) string {
	full, err := filepath.Abs(file)
	if err != nil {
		return file
	}
	if folder, err := filepath.EvalSymlinks(filepath.Dir(full)); err == nil {
		full = filepath.Join(folder, filepath.Base(full))
	}
	name, err := filepath.Rel(s.Tree.Root, full)
	if err != nil {
		return file
	}
	return filepath.ToSlash(name)
}

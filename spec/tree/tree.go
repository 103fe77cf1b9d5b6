// Package tree says where specs come from: a work tree, a revision or the index
// of git, a map in memory, a text on standard input laid over any. Whatever the
// origin, names are slash-separated and relative to one root, and nothing outside
// it is read.
package tree

import (
	"errors"
	"fmt"
	"io"
	"io/fs"
	"os"
	"path"
	"path/filepath"
	"slices"
	"strings"

	"fitup/spec/source"
)

// ConfigName is the name of the configuration file, which also marks a root
// where there is no git.
const ConfigName = ".fitup.toml"

// maxLinks is how many links one name may go through, as in the kernel.
const maxLinks = 40

// A Tree is a set of files below one root. Any fs.FS serves; links are
// followed if it is an fs.ReadLinkFS.
type Tree struct {
	fs.FS
	Name string // what reports call it, such as "work tree"
	Root string // the folder on disk, or "" if there is none
}

// Open returns the work tree that holds start, a file or folder, and start's
// name in it. The root is the nearest folder upward that holds .git, else the
// nearest that holds a configuration file, else start's own folder.
func Open(start string) (*Tree, string, error) {
	info, err := os.Stat(start)
	if err != nil {
		return nil, "", plain(start, err)
	}
	folder, base := start, ""
	if !info.IsDir() {
		folder, base = filepath.Split(start)
	}
	// The folder's real place decides which root is above it. A file that is
	// a link keeps its name here, for Resolve to judge where it leads.
	if folder, err = filepath.Abs(folder); err != nil {
		return nil, "", err
	}
	if folder, err = filepath.EvalSymlinks(folder); err != nil {
		return nil, "", plain(start, err)
	}
	root := holder(folder, ".git")
	if root == "" {
		root = holder(folder, ConfigName)
	}
	if root == "" {
		root = folder
	}
	name, err := filepath.Rel(root, filepath.Join(folder, base))
	if err != nil {
		return nil, "", err
	}
	opened, err := os.OpenRoot(root)
	if err != nil {
		return nil, "", plain(root, err)
	}
	return &Tree{FS: opened.FS(), Name: "work tree", Root: root}, filepath.ToSlash(name), nil
}

// holder returns the nearest folder from folder upward that holds name, or "".
func holder(folder, name string) string {
	for {
		if _, err := os.Lstat(filepath.Join(folder, name)); err == nil {
			return folder
		}
		up := filepath.Dir(folder)
		if up == folder {
			return ""
		}
		folder = up
	}
}

// A refusal is an error of the file system in plain words. Its cause is kept
// for errors.Is, but neither system call nor full path reaches a report.
type refusal struct {
	text  string
	cause error
}

func (r refusal) Error() string { return r.text }
func (r refusal) Unwrap() error { return r.cause }

// plain words an error about the file of the given name.
func plain(name string, err error) error {
	switch {
	case errors.Is(err, fs.ErrNotExist):
		return refusal{name + ": there is no such file or folder", err}
	case errors.Is(err, fs.ErrPermission):
		return refusal{name + ": reading it is not permitted; give yourself the right to read it", err}
	}
	if pe, ok := errors.AsType[*fs.PathError](err); ok {
		return refusal{name + ": " + pe.Err.Error(), err}
	}
	return refusal{name + ": " + err.Error(), err}
}

// Resolve returns the real name of a file: the one under which it is found
// without going through a link. It refuses what is not a regular file and what
// leads out of the root.
func (t *Tree) Resolve(name string) (string, error) {
	real, mode, err := t.follow(name)
	if err != nil {
		return "", err
	}
	if !mode.IsRegular() {
		return "", fmt.Errorf("%s: this is a %s; a spec is a regular file", name, modeName(mode))
	}
	return real, nil
}

// follow walks a name step by step, through links, and returns the real name
// and what is there.
func (t *Tree) follow(name string) (real string, mode fs.FileMode, err error) {
	if !fs.ValidPath(name) {
		return "", 0, fmt.Errorf("%s: write a path below the root, with slashes and without . or .. in it", name)
	}
	real, mode = ".", fs.ModeDir
	steps := strings.Split(name, "/")
	for links := 0; len(steps) > 0; {
		step := path.Join(real, steps[0])
		info, err := fs.Lstat(t.FS, step)
		if err != nil {
			return "", 0, plain(name, err)
		}
		if info.Mode().Type() != fs.ModeSymlink {
			real, mode, steps = step, info.Mode(), steps[1:]
			continue
		}
		if links++; links > maxLinks {
			return "", 0, fmt.Errorf("%s: it goes through more than %d links; let one lead straight to the file", name, maxLinks)
		}
		target, err := fs.ReadLink(t.FS, step)
		if err != nil {
			return "", 0, plain(name, err)
		}
		if target = filepath.ToSlash(target); path.IsAbs(target) || filepath.IsAbs(target) {
			return "", 0, fmt.Errorf("%s: the link %s leads to an absolute path; use a relative link that stays inside the root, or the file itself", name, step)
		}
		next := path.Join(real, target)
		if !fs.ValidPath(next) {
			return "", 0, fmt.Errorf("%s: the link %s leads out of the root; use a link that stays inside it, or the file itself", name, step)
		}
		// What the link passes may itself be links, so the way begins anew.
		steps = append(strings.Split(next, "/"), steps[1:]...)
		real, mode = ".", fs.ModeDir
	}
	return real, mode, nil
}

func modeName(mode fs.FileMode) string {
	switch mode.Type() {
	case fs.ModeDir:
		return "folder"
	case fs.ModeNamedPipe:
		return "named pipe"
	case fs.ModeSocket:
		return "socket"
	default:
		return "device"
	}
}

// Read returns the text of a file, or of as much of it as shows that it is too
// large: at most one byte more than source.MaxSize.
func (t *Tree) Read(name string) ([]byte, error) {
	// Opening a named pipe would wait for its writer, so what it is comes first.
	real, err := t.Resolve(name)
	if err != nil {
		return nil, err
	}
	f, err := t.FS.Open(real)
	if err != nil {
		return nil, plain(name, err)
	}
	defer f.Close()
	text, err := io.ReadAll(io.LimitReader(f, source.MaxSize+1))
	if err != nil {
		return nil, plain(name, err)
	}
	return text, nil
}

// Specs returns the real names of all specs in a folder and the folders below
// it, sorted: every *.toml except what begins with a dot or is excluded. An
// exclude names a folder or file relative to the root, or is a path.Match
// pattern for one; a folder takes all below it along. Links are followed while
// they stay inside the root. A file named outright is returned whatever its
// name.
//
// What cannot be read is told in the error, joined, beside the names of all
// the rest.
func (t *Tree) Specs(dir string, exclude []string) ([]string, error) {
	for _, pattern := range exclude {
		if _, err := path.Match(pattern, ""); err != nil {
			return nil, fmt.Errorf("exclude %q: %w; write a folder, a file, or a pattern such as cars/old-*", pattern, err)
		}
	}
	real, mode, err := t.follow(dir)
	if err != nil {
		return nil, err
	}
	if !mode.IsDir() {
		if real, err = t.Resolve(dir); err != nil {
			return nil, err
		}
		return []string{real}, nil
	}
	s := scan{tree: t, exclude: exclude, seen: map[string]bool{}}
	s.folder(real)
	slices.Sort(s.names)
	return s.names, errors.Join(s.errs...)
}

// A scan collects the specs below a folder.
type scan struct {
	tree    *Tree
	exclude []string
	seen    map[string]bool // real names of folders and files, as links may lead to one twice
	names   []string
	errs    []error
}

func (s *scan) folder(real string) {
	if s.seen[real] {
		return
	}
	s.seen[real] = true
	entries, err := fs.ReadDir(s.tree.FS, real)
	if err != nil {
		s.errs = append(s.errs, plain(real, err))
	}
	for _, entry := range entries {
		name := path.Join(real, entry.Name())
		if strings.HasPrefix(entry.Name(), ".") || Excluded(name, s.exclude) {
			continue
		}
		spec := path.Ext(name) == ".toml"
		switch {
		case entry.IsDir() && !spec:
			s.folder(name)
		case entry.Type() == fs.ModeSymlink:
			s.link(name, spec)
		case spec:
			s.file(name)
		}
	}
}

// link follows a link to a folder, or to a file if it has the name of a spec.
func (s *scan) link(name string, spec bool) {
	real, mode, err := s.tree.follow(name)
	switch {
	case err != nil:
		if spec { // a link to anything else is none of our business
			s.errs = append(s.errs, err)
		}
	case Hidden(real) || Excluded(real, s.exclude):
	case mode.IsDir() && !spec:
		s.folder(real)
	case spec:
		s.file(name)
	}
}

func (s *scan) file(name string) {
	real, err := s.tree.Resolve(name)
	if err != nil {
		s.errs = append(s.errs, err)
	} else if !s.seen[real] {
		s.seen[real] = true
		s.names = append(s.names, real)
	}
}

// Hidden reports whether a name, or a folder above it, begins with a dot.
func Hidden(name string) bool {
	return strings.HasPrefix(name, ".") && name != "." || strings.Contains(name, "/.")
}

// Excluded reports whether a name, or a folder above it, fits one of the patterns
// that Specs takes.
func Excluded(name string, exclude []string) bool {
	for ; name != "."; name = path.Dir(name) {
		for _, pattern := range exclude {
			if ok, _ := path.Match(path.Clean(pattern), name); ok {
				return true
			}
		}
	}
	return false
}

// Join returns the name of a file that another refers to. A reference is
// relative to the folder of the file that holds it.
func Join(fromFile, ref string) (string, error) {
	switch {
	case ref == "":
		return "", errors.New("the reference is empty; name a file, relative to the folder of this one")
	case strings.Contains(ref, `\`):
		return "", fmt.Errorf("%q has a backslash; write /, which serves on every system", ref)
	case path.IsAbs(ref) || len(ref) > 1 && ref[1] == ':':
		return "", fmt.Errorf("%q is an absolute path; write it relative to the folder of %s", ref, fromFile)
	}
	name := path.Join(path.Dir(fromFile), ref)
	switch {
	case !fs.ValidPath(name):
		return "", fmt.Errorf("%q leads out of the root; name a file inside it", ref)
	case name == "." || strings.HasSuffix(ref, "/"):
		return "", fmt.Errorf("%q is a folder; name a file", ref)
	}
	return name, nil
}

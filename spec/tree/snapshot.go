package tree

import (
	"bytes"
	"errors"
	"io"
	"io/fs"
	"maps"
	"path"
	"slices"
	"strings"
	"time"
)

// Modes of entries, as git writes them.
const (
	gitLink      = "120000"
	gitSubmodule = "160000"
)

// errConflict is why a file in conflict cannot be read from the index.
var errConflict = errors.New("it is in conflict; settle it, and `git add` it")

// A snapshot is a file system of what git holds. A submodule, whose files are in
// another repository, is an empty folder.
type snapshot struct {
	texts *batch
	nodes map[string]*node
}

// A node is a file, link or folder of a snapshot. It is its own fs.FileInfo and
// fs.DirEntry.
type node struct {
	name     string // the last element
	mode     fs.FileMode
	id       string
	conflict bool
	own      bool // a submodule: a repository of its own
	below    []fs.DirEntry
	texts    *batch
}

var _ fs.ReadLinkFS = (*snapshot)(nil)
var _ fs.ReadDirFS = (*snapshot)(nil)

func newSnapshot(texts *batch) *snapshot {
	return &snapshot{texts, map[string]*node{".": {name: ".", mode: fs.ModeDir | 0o555}}}
}

// add takes an entry in, and the folders that it is in.
func (s *snapshot) add(name, mode, id string, conflict bool) {
	if known := s.nodes[name]; known != nil { // another stage of a conflict
		return
	}
	n := &node{name: path.Base(name), mode: 0o444, id: id, conflict: conflict, texts: s.texts}
	switch mode {
	case gitLink:
		n.mode = fs.ModeSymlink | 0o777
	case gitSubmodule:
		n.mode, n.own = fs.ModeDir|0o555, true
	}
	s.put(name, n)
}

func (s *snapshot) put(name string, n *node) {
	s.nodes[name] = n
	above := path.Dir(name)
	if s.nodes[above] == nil {
		s.put(above, &node{name: path.Base(above), mode: fs.ModeDir | 0o555})
	}
	s.nodes[above].below = append(s.nodes[above].below, n)
}

// mixed finds a name that stands for a file and for a folder, which git lists only
// from a repository that was made to hold one, or amid a conflict.
func (s *snapshot) mixed() (name string, found bool) {
	for _, name := range slices.Sorted(maps.Keys(s.nodes)) {
		if n := s.nodes[name]; len(n.below) > 0 && (n.own || !n.IsDir()) && !n.conflict {
			return name, true
		}
	}
	return "", false
}

// sort puts folders in the order that fs.ReadDir promises.
func (s *snapshot) sort() {
	for _, n := range s.nodes {
		slices.SortFunc(n.below, func(a, b fs.DirEntry) int { return strings.Compare(a.Name(), b.Name()) })
	}
}

// Submodules lists the folders of a tree from git that are repositories of
// their own, sorted. In any other tree there are none.
func (t *Tree) Submodules() []string {
	s, ok := t.FS.(*snapshot)
	if !ok {
		return nil
	}
	var all []string
	for name, n := range s.nodes {
		if n.own {
			all = append(all, name)
		}
	}
	slices.Sort(all)
	return all
}

// find returns the node of a name, without following a link.
func (s *snapshot) find(op, name string) (*node, error) {
	if !fs.ValidPath(name) {
		return nil, &fs.PathError{Op: op, Path: name, Err: fs.ErrInvalid}
	}
	if n := s.nodes[name]; n != nil {
		return n, nil
	}
	return nil, &fs.PathError{Op: op, Path: name, Err: fs.ErrNotExist}
}

// follow returns the node of a name, through links; a Tree checks first where
// they lead.
func (s *snapshot) follow(op, name string) (*node, error) {
	real, _, err := (&Tree{FS: s}).follow(name)
	if err != nil {
		return nil, &fs.PathError{Op: op, Path: name, Err: err}
	}
	return s.find(op, real)
}

func (s *snapshot) Lstat(name string) (fs.FileInfo, error) {
	n, err := s.find("lstat", name)
	if err != nil {
		return nil, err
	}
	return n, nil
}

func (s *snapshot) Stat(name string) (fs.FileInfo, error) {
	n, err := s.follow("stat", name)
	if err != nil {
		return nil, err
	}
	return n, nil
}

func (s *snapshot) ReadLink(name string) (string, error) {
	n, err := s.find("readlink", name)
	if err == nil && n.mode.Type() != fs.ModeSymlink {
		err = &fs.PathError{Op: "readlink", Path: name, Err: fs.ErrInvalid}
	}
	if err != nil {
		return "", err
	}
	text, _, err := n.text()
	return string(text), err
}

func (s *snapshot) ReadDir(name string) ([]fs.DirEntry, error) {
	n, err := s.follow("readdir", name)
	if err == nil && !n.IsDir() {
		err = &fs.PathError{Op: "readdir", Path: name, Err: errors.New("not a folder")}
	}
	if err != nil {
		return nil, err
	}
	return slices.Clone(n.below), nil
}

func (s *snapshot) Open(name string) (fs.File, error) {
	n, err := s.follow("open", name)
	if err != nil {
		return nil, err
	}
	if n.IsDir() {
		return &folderFile{openNode{strings.NewReader(""), n}, slices.Clone(n.below)}, nil
	}
	text, _, err := n.text()
	if err != nil {
		return nil, &fs.PathError{Op: "open", Path: name, Err: err}
	}
	return openNode{bytes.NewReader(text), n}, nil
}

// text is what a file or link holds, or the beginning of it, and its size.
func (n *node) text() ([]byte, int64, error) {
	if n.conflict {
		return nil, 0, errConflict
	}
	return n.texts.read(n.id)
}

// An openNode is an open file, or the folder within a folderFile.
type openNode struct {
	io.Reader
	node *node
}

func (o openNode) Stat() (fs.FileInfo, error) { return o.node, nil }
func (openNode) Close() error                 { return nil }

func (n *node) Name() string               { return n.name }
func (n *node) Mode() fs.FileMode          { return n.mode }
func (n *node) Type() fs.FileMode          { return n.mode.Type() }
func (n *node) IsDir() bool                { return n.mode.IsDir() }
func (*node) ModTime() time.Time           { return time.Time{} }
func (*node) Sys() any                     { return nil }
func (n *node) Info() (fs.FileInfo, error) { return n, nil }

// Size asks git. What cannot be read has none.
func (n *node) Size() int64 {
	if n.IsDir() {
		return 0
	}
	_, size, _ := n.text()
	return size
}

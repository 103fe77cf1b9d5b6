package tree

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"io/fs"
	"path"
	"slices"
	"strings"
	"time"

	"fitup/spec/source"
)

// WithText returns the tree with one file's text replaced, or added, by what r
// holds: an editor's unsaved text on standard input, say. What that file
// refers to is still found in the tree. It returns the file's real name in it.
func (t *Tree) WithText(name string, r io.Reader) (*Tree, string, error) {
	real, err := t.Resolve(name)
	if errors.Is(err, fs.ErrNotExist) { // not saved yet, but its folder has to be there
		var mode fs.FileMode
		if real, mode, err = t.follow(path.Dir(name)); err == nil && !mode.IsDir() {
			err = fmt.Errorf("%s: this is no folder; name a file in one", path.Dir(name))
		}
		real = path.Join(real, path.Base(name))
	}
	if err != nil {
		return nil, "", err
	}
	text, err := io.ReadAll(io.LimitReader(r, source.MaxSize+1))
	if err != nil {
		return nil, "", fmt.Errorf("%s: %w", name, err)
	}
	return &Tree{FS: overlay{t.FS, real, text}, Name: "standard input", Root: t.Root}, real, nil
}

// An overlay is a file system with one file replaced.
type overlay struct {
	base fs.FS
	name string
	text []byte
}

var _ fs.ReadLinkFS = overlay{}

func (o overlay) info() fs.FileInfo { return textInfo{path.Base(o.name), int64(len(o.text))} }

func (o overlay) Open(name string) (fs.File, error) {
	if name == o.name {
		return textFile{bytes.NewReader(o.text), o.info()}, nil
	}
	f, err := o.base.Open(name)
	if err != nil || name != path.Dir(o.name) {
		return f, err
	}
	entries, err := o.ReadDir(name)
	return &folderFile{f, entries}, err
}

func (o overlay) Lstat(name string) (fs.FileInfo, error) {
	if name == o.name {
		return o.info(), nil
	}
	return fs.Lstat(o.base, name)
}

func (o overlay) ReadLink(name string) (string, error) { return fs.ReadLink(o.base, name) }

func (o overlay) ReadDir(name string) ([]fs.DirEntry, error) {
	entries, err := fs.ReadDir(o.base, name)
	if name != path.Dir(o.name) {
		return entries, err
	}
	entry := fs.FileInfoToDirEntry(o.info())
	i, found := slices.BinarySearchFunc(entries, entry, func(a, b fs.DirEntry) int { return strings.Compare(a.Name(), b.Name()) })
	if found {
		entries[i] = entry
		return entries, err
	}
	return slices.Insert(entries, i, entry), err
}

// A textFile is an open text.
type textFile struct {
	*bytes.Reader
	info fs.FileInfo
}

func (f textFile) Stat() (fs.FileInfo, error) { return f.info, nil }
func (textFile) Close() error                 { return nil }

// A folderFile is the open folder of the text, with what is left to list.
type folderFile struct {
	fs.File
	left []fs.DirEntry
}

func (f *folderFile) ReadDir(n int) ([]fs.DirEntry, error) {
	if n > 0 && len(f.left) == 0 {
		return nil, io.EOF
	}
	if n <= 0 || n > len(f.left) {
		n = len(f.left)
	}
	next := f.left[:n:n]
	f.left = f.left[n:]
	return next, nil
}

// A textInfo describes a text as a regular file.
type textInfo struct {
	name string
	size int64
}

func (i textInfo) Name() string     { return i.name }
func (i textInfo) Size() int64      { return i.size }
func (textInfo) Mode() fs.FileMode  { return 0o444 }
func (textInfo) ModTime() time.Time { return time.Time{} }
func (textInfo) IsDir() bool        { return false }
func (textInfo) Sys() any           { return nil }

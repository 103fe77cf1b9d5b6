package tree

import (
	"errors"
	"io/fs"
	"os/exec"
	"path"
	"strings"
	"testing"
	"testing/fstest"
	"unicode/utf8"
)

// FuzzJoin follows any reference from any file. What is found lies below the root,
// and is where the reference says.
func FuzzJoin(f *testing.F) {
	for _, pair := range [][2]string{
		{"cars/a.toml", "shop/outfit.toml"}, {"cars/a.toml", "../x.toml"}, {"a.toml", "../x.toml"}, {"a.toml", "/etc/passwd"},
		{"a.toml", `c:\x`}, {"a.toml", "c:x"}, {"a.toml", "./c:x"}, {`\/0`, "0"}, {"a/b.toml", "./..//c.toml"}, {"a.toml", ""}, {"a.toml", "."}, {"a.toml", "x/"}, {"a/b", "../\x00"},
	} {
		f.Add(pair[0], pair[1])
	}
	f.Fuzz(func(t *testing.T, from, ref string) {
		if !fs.ValidPath(from) || from == "." {
			t.Skip("no name of a file")
		}
		name, err := Join(from, ref)
		if err != nil {
			if name != "" || err.Error() == "" {
				t.Errorf("Join(%q, %q) = %q, %v", from, ref, name, err)
			}
			return
		}
		if !fs.ValidPath(name) || name == "." {
			t.Errorf("Join(%q, %q) = %q", from, ref, name)
		}
		if strings.Contains(name, `\`) {
			return // it came of the folder's name; no reference can write it
		}
		if back, err := Join(from, "./"+strings.Repeat("../", strings.Count(from, "/"))+name); err != nil || back != name {
			t.Errorf("Join(%q, %q) = %q, and back %q, %v", from, ref, name, back, err)
		}
	})
}

// FuzzListing reads anything as what git lists. Each name that comes of it is a
// path below the root, and the folder that holds it lists it.
func FuzzListing(f *testing.F) {
	const id = "3b18e512dba79e4c8300dd08aeb37f8e728b8dad"
	for _, listed := range []string{
		"100644 blob " + id + "\tcars/a.toml\x00", "120000 blob " + id + "\tlink.toml\x00160000 commit " + id + "\tsub\x00",
		"100644 blob " + id + "\tsub/x.toml\x00100644 blob " + id + "\tsub\x00", "\t\x00", "a b c\t../../x\x00", "a b c\t/x\x00", "a b c\t\x00", "a b c\tx//y\x00a b c\t.git/config\x00",
	} {
		f.Add([]byte(listed))
	}
	f.Fuzz(func(t *testing.T, listed []byte) {
		r := &Repository{}
		r.texts.start = func() *exec.Cmd { panic("a text was asked for") }
		s, err := r.snapshot(listed, 2)
		if err != nil {
			return
		}
		for name := range s.nodes {
			if name == "." || !utf8.ValidString(name) {
				continue
			}
			if !fs.ValidPath(name) {
				t.Errorf("%q is no path", name)
			}
			below, err := s.ReadDir(path.Dir(name))
			found := false
			for _, entry := range below {
				found = found || entry.Name() == path.Base(name)
			}
			if err != nil || !found {
				t.Errorf("%s is not in its folder: %v, %v", name, below, err)
			}
		}
	})
}

// FuzzLinks follows any links. They end in a file below the root, or are refused.
func FuzzLinks(f *testing.F) {
	for _, links := range [][3]string{
		{"b.toml", "c.toml", "a.toml"}, {"b.toml", "a.toml", "b.toml"}, {"../x", "/etc/passwd", "cars/../.."}, {"cars", "cars/link", "."}, {"", "a.toml/x", "\x00"},
	} {
		f.Add(links[0], links[1], links[2])
	}
	f.Fuzz(func(t *testing.T, a, b, c string) {
		files := &Tree{FS: fstest.MapFS{
			"cars/real.toml": {Data: []byte("text")},
			"cars/a.toml":    {Data: []byte(a), Mode: fs.ModeSymlink | 0o777},
			"cars/b.toml":    {Data: []byte(b), Mode: fs.ModeSymlink | 0o777},
			"c.toml":         {Data: []byte(c), Mode: fs.ModeSymlink | 0o777},
		}}
		for _, name := range []string{"cars/a.toml", "cars/b.toml", "c.toml"} {
			real, err := files.Resolve(name)
			if err == nil && real != "cars/real.toml" {
				t.Errorf("%s is %s", name, real)
			}
			if text, bad := files.Read(name); (bad == nil) != (err == nil) || bad == nil && string(text) != "text" {
				t.Errorf("%s reads %q, %v; it resolved with %v", name, text, bad, err)
			}
		}
		names, err := files.Specs(".", nil)
		if err == nil && len(names) != 1 {
			t.Errorf("specs %q", names)
		}
		if err != nil && errors.Is(err, fs.ErrInvalid) {
			t.Errorf("error %v", err)
		}
	})
}

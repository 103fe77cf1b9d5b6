package tree

import (
	"errors"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"testing/iotest"

	"fitup/spec/source"

	"github.com/google/go-cmp/cmp"
)

// fleet is a small set of files; a text that begins with "-> " is a link.
var fleet = map[string]string{
	".git/config.toml":            "hidden",
	"cars/.fitup.toml":            "config",
	"cars/a.toml":                 "car a",
	"cars/b.toml":                 "car b",
	"cars/notes.md":               "notes",
	"cars/drivelines/one.toml":    "driveline one",
	"cars/old-2024/c.toml":        "car c",
	"cars/old-2025/deep/d.toml":   "car d",
	"cars/.scratch/e.toml":        "car e",
	"cars/linked.toml":            "-> drivelines/one.toml",
	"cars/loop":                   "-> ../cars",
	"cars/shelf":                  "-> ../shared/drivelines",
	"shared/drivelines/two.toml":  "driveline two",
	"shared/drivelines/twin.toml": "-> two.toml",
	"outside.toml":                "not below cars",
}

// trees returns the fleet from a folder, from memory, with one text laid over,
// and from git, which have to be the same in every way.
func trees(t *testing.T) map[string]*Tree {
	t.Helper()
	root := folder(t, fleet)
	disk, name, err := Open(filepath.Join(root, "cars"))
	if err != nil {
		t.Fatal(err)
	}
	if name != "cars" || disk.Root != root || disk.Name != "work tree" {
		t.Errorf("Open says %q in %q at %s", name, disk.Name, disk.Root)
	}
	memory := fstest.MapFS{}
	for name, text := range fleet {
		if target, ok := strings.CutPrefix(text, "-> "); ok {
			memory[name] = &fstest.MapFile{Data: []byte(target), Mode: fs.ModeSymlink | 0o777}
		} else {
			memory[name] = &fstest.MapFile{Data: []byte(text), Mode: 0o644}
		}
	}
	less := fstest.MapFS{}
	for name, file := range memory {
		if name != "cars/b.toml" {
			less[name] = file
		}
	}
	less["cars/a.toml"] = &fstest.MapFile{Data: []byte("car a as saved")}
	laid, _, err := (&Tree{FS: less}).WithText("cars/b.toml", strings.NewReader("car b"))
	if err != nil {
		t.Fatal(err)
	}
	if laid, _, err = laid.WithText("cars/loop/a.toml", strings.NewReader("car a")); err != nil {
		t.Fatal(err)
	}
	all := map[string]*Tree{"folder": disk, "memory": {FS: memory, Name: "memory"}, "overlay": laid}
	if _, err := exec.LookPath("git"); err == nil {
		maps.Copy(all, gitTrees(t))
	}
	return all
}

// folder writes files and links below a new folder and returns its real path.
func folder(t *testing.T, files map[string]string) string {
	t.Helper()
	root, err := filepath.EvalSymlinks(t.TempDir())
	if err != nil {
		t.Fatal(err)
	}
	for name, text := range files {
		at := filepath.Join(root, filepath.FromSlash(name))
		if err := os.MkdirAll(filepath.Dir(at), 0o755); err != nil {
			t.Fatal(err)
		}
		if target, ok := strings.CutPrefix(text, "-> "); ok {
			err = os.Symlink(target, at)
		} else {
			err = os.WriteFile(at, []byte(text), 0o644)
		}
		if err != nil {
			t.Fatal(err)
		}
	}
	return root
}

func TestSpecs(t *testing.T) {
	for origin, tr := range trees(t) {
		for _, c := range []struct {
			name, dir string
			exclude   []string
			want      []string
		}{
			{"all", "cars", nil, []string{
				"cars/a.toml", "cars/b.toml", "cars/drivelines/one.toml", "cars/old-2024/c.toml", "cars/old-2025/deep/d.toml",
				"shared/drivelines/two.toml"}},
			{"root", ".", []string{"cars"}, []string{"outside.toml", "shared/drivelines/two.toml"}},
			{"pattern for folders", "cars", []string{"cars/old-*", "shared/"}, []string{"cars/a.toml", "cars/b.toml", "cars/drivelines/one.toml"}},
			{"files", "cars", []string{"cars/[ab].toml", "./cars/drivelines", "cars/shelf", "cars/linked.toml"},
				[]string{"cars/old-2024/c.toml", "cars/old-2025/deep/d.toml"}},
			{"through a link", "cars/shelf", nil, []string{"shared/drivelines/two.toml"}},
			{"a file", "cars/.fitup.toml", []string{"cars"}, []string{"cars/.fitup.toml"}},
			{"a link to a file", "cars/linked.toml", nil, []string{"cars/drivelines/one.toml"}},
			{"a hidden folder", "cars/.scratch", nil, []string{"cars/.scratch/e.toml"}},
		} {
			t.Run(origin+"/"+c.name, func(t *testing.T) {
				got, err := tr.Specs(c.dir, c.exclude)
				if err != nil {
					t.Error(err)
				}
				if diff := cmp.Diff(c.want, got); diff != "" {
					t.Error(diff)
				}
			})
		}
	}
}

func TestRead(t *testing.T) {
	for origin, tr := range trees(t) {
		for _, c := range []struct{ name, real, text, err string }{
			{"cars/a.toml", "cars/a.toml", "car a", ""},
			{"cars/b.toml", "cars/b.toml", "car b", ""},
			{"cars/linked.toml", "cars/drivelines/one.toml", "driveline one", ""},
			{"cars/loop/loop/linked.toml", "cars/drivelines/one.toml", "driveline one", ""},
			{"cars/shelf/twin.toml", "shared/drivelines/two.toml", "driveline two", ""},
			{"cars/absent.toml", "", "", "cars/absent.toml: there is no such file or folder"},
			{"cars/shelf/absent.toml", "", "", "cars/shelf/absent.toml: there is no such file or folder"},
			{"cars/shelf", "", "", "cars/shelf: this is a folder; a spec is a regular file"},
			{"../a.toml", "", "", "../a.toml: write a path below the root, with slashes and without . or .. in it"},
			{"/cars/a.toml", "", "", "/cars/a.toml: write a path below the root, with slashes and without . or .. in it"},
		} {
			t.Run(origin+"/"+c.name, func(t *testing.T) {
				real, err := tr.Resolve(c.name)
				if diff := cmp.Diff([]string{c.real, c.err}, []string{real, message(err)}); diff != "" {
					t.Error(diff)
				}
				text, err := tr.Read(c.name)
				if diff := cmp.Diff([]string{c.text, c.err}, []string{string(text), message(err)}); diff != "" {
					t.Error(diff)
				}
				if strings.HasSuffix(c.name, "absent.toml") && !errors.Is(err, fs.ErrNotExist) {
					t.Error("the cause is lost")
				}
			})
		}
	}
}

func message(err error) string {
	if err == nil {
		return ""
	}
	return err.Error()
}

// TestPermissionDenied holds what root cannot try on a real folder.
func TestPermissionDenied(t *testing.T) {
	tr := &Tree{FS: denied{fstest.MapFS{"shut.toml": {Data: []byte("x")}, "open.toml": {Data: []byte("x")}}}}
	const want = "shut.toml: reading it is not permitted; give yourself the right to read it"
	if _, err := tr.Read("shut.toml"); message(err) != want || !errors.Is(err, fs.ErrPermission) {
		t.Error(err)
	}
	if text, err := tr.Read("open.toml"); string(text) != "x" || err != nil {
		t.Error(text, err)
	}
}

// denied refuses to open shut.toml.
type denied struct{ fstest.MapFS }

func (d denied) Open(name string) (fs.File, error) {
	if name == "shut.toml" {
		return nil, &fs.PathError{Op: "open", Path: name, Err: fs.ErrPermission}
	}
	return d.MapFS.Open(name)
}

func TestBadPattern(t *testing.T) {
	_, err := (&Tree{FS: fstest.MapFS{}}).Specs(".", []string{"[a"})
	if want := `exclude "[a": syntax error in pattern; write a folder, a file, or a pattern such as cars/old-*`; message(err) != want {
		t.Error(err)
	}
}

func TestReadStopsAtTheLimit(t *testing.T) {
	big := []byte(strings.Repeat("#", source.MaxSize+100))
	tr := &Tree{FS: fstest.MapFS{"big.toml": {Data: big}}}
	if text, err := tr.Read("big.toml"); len(text) != source.MaxSize+1 || err != nil {
		t.Error(len(text), err)
	}
	laid, name, err := tr.WithText("new.toml", strings.NewReader(string(big)))
	if err != nil {
		t.Fatal(err)
	}
	if text, err := laid.Read(name); len(text) != source.MaxSize+1 || err != nil {
		t.Error(len(text), err)
	}
}

// TestRoot holds which folder is the root, and what start is called in it.
func TestRoot(t *testing.T) {
	root := folder(t, map[string]string{
		"repo/.git":                 "gitdir: elsewhere", // a linked work tree has a file there
		"repo/cars/.fitup.toml":     "",
		"repo/cars/deep/a.toml":     "a",
		"repo/cars/deep/link.toml":  "-> a.toml",
		"plain/.fitup.toml":         "",
		"plain/cars/deep/a.toml":    "a",
		"plain/cars/.fitup.toml":    "",
		"bare/cars/a.toml":          "a",
		"elsewhere/to-repo":         "-> ../repo/cars",
		"elsewhere/into-repo.toml":  "-> ../repo/cars/deep/a.toml",
		"elsewhere/beside/here.txt": "",
	})
	for _, c := range []struct{ start, root, name string }{
		{"repo/cars/deep/a.toml", "repo", "cars/deep/a.toml"},
		{"repo/cars/deep/link.toml", "repo", "cars/deep/link.toml"},
		{"repo/cars", "repo", "cars"},
		{"repo", "repo", "."},
		{"repo/cars/../cars/deep/", "repo", "cars/deep"},
		{"plain/cars/deep/a.toml", "plain/cars", "deep/a.toml"},
		{"bare/cars/a.toml", "bare/cars", "a.toml"},
		{"bare/cars", "bare/cars", "."},
		{"elsewhere/to-repo/deep", "repo", "cars/deep"},
		{"elsewhere/into-repo.toml", "elsewhere", "into-repo.toml"},
	} {
		tr, name, err := Open(filepath.Join(root, c.start))
		if err != nil {
			t.Errorf("%s: %v", c.start, err)
			continue
		}
		if want := filepath.Join(root, c.root); tr.Root != want || name != c.name {
			t.Errorf("%s is %s in %s, want %s in %s", c.start, name, tr.Root, c.name, want)
		}
	}
	t.Chdir(filepath.Join(root, "repo/cars"))
	if tr, name, err := Open("deep/a.toml"); err != nil || name != "cars/deep/a.toml" || tr.Root != filepath.Join(root, "repo") {
		t.Error(name, err)
	}
	if _, _, err := Open("absent/a.toml"); message(err) != "absent/a.toml: there is no such file or folder" {
		t.Error(err)
	}
}

func TestWithText(t *testing.T) {
	root := folder(t, map[string]string{".git/HEAD": "", "cars/a.toml": "saved", "cars/link.toml": "-> a.toml", "cars/pipe": ""})
	disk, _, err := Open(root)
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []struct{ name, real, err string }{
		{"cars/a.toml", "cars/a.toml", ""},
		{"cars/link.toml", "cars/a.toml", ""},
		{"cars/new.toml", "cars/new.toml", ""},
		{"new.toml", "new.toml", ""},
		{"absent/new.toml", "", "absent: there is no such file or folder"},
		{"cars", "", "cars: this is a folder; a spec is a regular file"},
	} {
		tr, real, err := disk.WithText(c.name, strings.NewReader("typed"))
		if real != c.real || message(err) != c.err {
			t.Errorf("%s is %q, %v", c.name, real, err)
		}
		if err != nil {
			continue
		}
		if text, err := tr.Read(c.name); string(text) != "typed" || err != nil {
			t.Errorf("%s reads %q, %v", c.name, text, err)
		}
		if tr.Root != root || tr.Name != "standard input" {
			t.Errorf("%s is in %q at %s", c.name, tr.Name, tr.Root)
		}
	}
	if _, _, err := disk.WithText("cars/a.toml", iotest.ErrReader(errors.New("broken off"))); message(err) != "cars/a.toml: broken off" {
		t.Error(err)
	}
	laid, _, err := (&Tree{FS: fstest.MapFS{"cars/a.toml": {Data: []byte("saved")}, "cars/z/z.toml": {}}}).WithText("cars/m.toml", strings.NewReader("typed"))
	if err != nil {
		t.Fatal(err)
	}
	if err := fstest.TestFS(laid.FS, "cars/a.toml", "cars/m.toml", "cars/z/z.toml"); err != nil {
		t.Error(err)
	}
}

func TestJoin(t *testing.T) {
	for _, c := range []struct{ from, ref, want, err string }{
		{"cars/a.toml", "drivelines/one.toml", "cars/drivelines/one.toml", ""},
		{"cars/a.toml", "../shop.toml", "shop.toml", ""},
		{"cars/a.toml", "./b.toml", "cars/b.toml", ""},
		{"a.toml", "x/../b.toml", "b.toml", ""},
		{"cars/a.toml", "", "", "the reference is empty; name a file, relative to the folder of this one"},
		{"cars/a.toml", "/etc/a.toml", "", `"/etc/a.toml" is an absolute path; write it relative to the folder of cars/a.toml`},
		{"cars/a.toml", "C:/a.toml", "", `"C:/a.toml" is an absolute path; write it relative to the folder of cars/a.toml`},
		{"cars/a.toml", `shop\a.toml`, "", `"shop\\a.toml" has a backslash; write /, which serves on every system`},
		{"cars/a.toml", "../../a.toml", "", `"../../a.toml" leads out of the root; name a file inside it`},
		{"a.toml", "..", "", `".." leads out of the root; name a file inside it`},
		{"cars/a.toml", "..", "", `".." is a folder; name a file`},
		{"cars/a.toml", "shop/", "", `"shop/" is a folder; name a file`},
	} {
		got, err := Join(c.from, c.ref)
		if got != c.want || message(err) != c.err {
			t.Errorf("Join(%q, %q) is %q, %v; want %q, %s", c.from, c.ref, got, err, c.want, c.err)
		}
	}
}

package tree

import (
	"bytes"
	"errors"
	"io/fs"
	"os"
	"os/exec"
	"path/filepath"
	"runtime"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/spec/source"
)

// needGit leaves a test out where there is no git, and keeps the settings of
// whoever runs it away.
func needGit(t *testing.T) {
	t.Helper()
	if _, err := exec.LookPath("git"); err != nil {
		t.Skip("git is not installed")
	}
	for _, name := range []string{"GIT_DIR", "GIT_WORK_TREE", "GIT_INDEX_FILE"} {
		if value, set := os.LookupEnv(name); set {
			os.Unsetenv(name)
			t.Cleanup(func() { os.Setenv(name, value) })
		}
	}
	t.Setenv("GIT_CONFIG_GLOBAL", os.DevNull)
	t.Setenv("GIT_CONFIG_NOSYSTEM", "1")
	for _, who := range []string{"AUTHOR", "COMMITTER"} {
		t.Setenv("GIT_"+who+"_NAME", "Bench")
		t.Setenv("GIT_"+who+"_EMAIL", "bench@example.org")
	}
}

// git runs git in a folder and returns what it prints.
func git(t *testing.T, folder string, args ...string) string {
	t.Helper()
	out, err := exec.Command("git", append([]string{"-C", folder}, args...)...).CombinedOutput()
	if err != nil {
		t.Fatalf("git %q: %v\n%s", args, err, out)
	}
	return strings.TrimSpace(string(out))
}

// repository makes a repository with files, all committed, and returns its root.
func repository(t *testing.T, files map[string]string) string {
	t.Helper()
	needGit(t)
	root := folder(t, files)
	git(t, root, "init", "-q", "-b", "main")
	commit(t, root)
	return root
}

func commit(t *testing.T, root string) {
	t.Helper()
	git(t, root, "add", "--all")
	git(t, root, "commit", "-q", "--allow-empty", "-m", "work")
}

func opened(t *testing.T, root string) *Repository {
	t.Helper()
	r, err := OpenRepository(root)
	if err != nil {
		t.Fatal(err)
	}
	t.Cleanup(func() {
		if err := r.Close(); err != nil {
			t.Error(err)
		}
	})
	return r
}

// gitTrees returns the fleet as a revision and as the index hold it.
func gitTrees(t *testing.T) map[string]*Tree {
	t.Helper()
	files := map[string]string{}
	for name, text := range fleet {
		if !strings.HasPrefix(name, ".git/") {
			files[name] = text
		}
	}
	root := repository(t, files)
	if err := os.RemoveAll(filepath.Join(root, "cars")); err != nil { // the work tree is not read
		t.Fatal(err)
	}
	r := opened(t, root)
	then, _, err := r.Revision("main")
	if err != nil {
		t.Fatal(err)
	}
	index, err := r.Index()
	if err != nil {
		t.Fatal(err)
	}
	return map[string]*Tree{"revision": then, "index": index}
}

func TestSnapshotIsAFileSystem(t *testing.T) {
	for origin, tr := range gitTrees(t) {
		if err := fstest.TestFS(tr.FS, "cars/a.toml", "cars/linked.toml", "cars/shelf", "outside.toml", "cars/drivelines/one.toml"); err != nil {
			t.Errorf("%s: %v", origin, err)
		}
	}
}

func TestRevisions(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "first"})
	first := git(t, root, "rev-parse", "HEAD")
	git(t, root, "tag", "-a", "-m", "shakedown", "shakedown")
	git(t, root, "branch", "side")
	write(t, root, "a.toml", "second")
	commit(t, root)
	git(t, root, "checkout", "-q", "--detach", "side")
	write(t, root, "a.toml", "aside")
	commit(t, root)
	write(t, root, "a.toml", "staged")
	git(t, root, "add", "a.toml")
	write(t, root, "a.toml", "typed")

	r := opened(t, root)
	for _, c := range []struct{ rev, want string }{
		{"main", "second"}, {"HEAD", "aside"}, {"HEAD~1", "first"}, {"shakedown", "first"}, {first[:8], "first"},
		{"main...HEAD", "first"}, {"main...", "first"}, {"...main", "first"}, {"side...main", "first"},
	} {
		then, _, err := r.Revision(c.rev)
		if err != nil {
			t.Errorf("%s: %v", c.rev, err)
			continue
		}
		if text, err := then.Read("a.toml"); string(text) != c.want || err != nil {
			t.Errorf("%s reads %q, %v; want %q", c.rev, text, err, c.want)
		}
	}
	if _, id, err := r.Revision("main...HEAD"); id != first || err != nil {
		t.Errorf("the branches parted at %s, %v; want %s", id, err, first)
	}
	index, err := r.Index()
	if err != nil {
		t.Fatal(err)
	}
	if text, err := index.Read("a.toml"); string(text) != "staged" || err != nil {
		t.Errorf("the index reads %q, %v", text, err)
	}
	const range_ = ` is a range; name one revision, or write A...B for the last commit that two share`
	for rev, want := range map[string]string{
		"nowhere":       "nowhere: git knows no such revision; `git fetch` it, or name a branch, a tag or a commit that `git log` shows",
		"main:a.toml":   "main:a.toml: git knows no such revision; `git fetch` it, or name a branch, a tag or a commit that `git log` shows",
		"main..HEAD":    `"main..HEAD"` + range_,
		"a...b...c":     `"a...b...c"` + range_,
		"--output=x":    `"--output=x" is no revision; name a branch, a tag or a commit`,
		"-":             `"-" is no revision; name a branch, a tag or a commit`,
		"":              `"" is no revision; name a branch, a tag or a commit`,
		"main\nHEAD":    `"main\nHEAD" is no revision; name a branch, a tag or a commit`,
		"main...absent": "absent: git knows no such revision; `git fetch` it, or name a branch, a tag or a commit that `git log` shows",
	} {
		if _, _, err := r.Revision(rev); message(err) != want {
			t.Errorf("%q:\n got %v\nwant %s", rev, err, want)
		}
	}
	if _, err := os.Stat(filepath.Join(root, "x")); err == nil {
		t.Error("a revision passed for an option")
	}
}

func TestRevisionsWithoutACommonCommit(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "one"})
	git(t, root, "checkout", "-q", "--orphan", "other")
	write(t, root, "a.toml", "another")
	commit(t, root)
	_, _, err := opened(t, root).Revision("main...other")
	if want := "main...other: the two share no commit; name one revision to compare with"; message(err) != want {
		t.Error(err)
	}
}

func TestNoRepository(t *testing.T) {
	needGit(t)
	plainFolder := folder(t, map[string]string{"a.toml": ""})
	bare := folder(t, nil)
	git(t, bare, "init", "-q", "--bare")
	below := filepath.Join(repository(t, map[string]string{"cars/a.toml": ""}), "cars")
	for root, want := range map[string]string{
		plainFolder: plainFolder + " is in no git repository; begin one with `git init`, or compare nothing",
		bare:        bare + " is a bare repository, with no files of its own; clone it and work in the clone",
		below:       below + " is not the top of a work tree for git; unset GIT_DIR and GIT_WORK_TREE, or begin there",
	} {
		if _, err := OpenRepository(root); message(err) != want {
			t.Errorf("got %v\nwant %s", err, want)
		}
	}
	t.Setenv("PATH", t.TempDir())
	if _, err := OpenRepository(below); message(err) != "git is not found; install it, or put it on the PATH" || !errors.Is(err, exec.ErrNotFound) {
		t.Error(err)
	}
}

func TestUnbornBranch(t *testing.T) {
	needGit(t)
	root := folder(t, map[string]string{"a.toml": "typed"})
	git(t, root, "init", "-q")
	git(t, root, "add", "a.toml")
	r := opened(t, root)
	if _, _, err := r.Revision("HEAD"); message(err) != "HEAD: there is no commit yet; commit once, and compare with that" {
		t.Error(err)
	}
	index, err := r.Index()
	if err != nil {
		t.Fatal(err)
	}
	if text, err := index.Read("a.toml"); string(text) != "typed" || err != nil {
		t.Error(text, err)
	}
}

func TestShallowClone(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "first"})
	git(t, root, "branch", "old")
	write(t, root, "a.toml", "second")
	commit(t, root)
	shallow := filepath.Join(folder(t, nil), "clone")
	git(t, root, "clone", "-q", "--depth", "1", "--branch", "main", "file://"+root, shallow)
	r := opened(t, shallow)
	if then, _, err := r.Revision("HEAD"); err != nil {
		t.Error(err)
	} else if text, err := then.Read("a.toml"); string(text) != "second" || err != nil {
		t.Error(text, err)
	}
	const remedy = "this clone is shallow and lacks history: `git fetch --unshallow` (in CI: check out with the whole history), and fetch the branch by its name"
	for _, rev := range []string{"old", "HEAD~1"} {
		if _, _, err := r.Revision(rev); message(err) != rev+": git knows no such revision; "+remedy {
			t.Error(err)
		}
	}
}

func TestIndexInConflict(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "first", "b.toml": "beside"})
	git(t, root, "checkout", "-q", "-b", "side")
	write(t, root, "a.toml", "aside")
	commit(t, root)
	git(t, root, "checkout", "-q", "main")
	write(t, root, "a.toml", "second")
	commit(t, root)
	if err := exec.Command("git", "-C", root, "merge", "-q", "side").Run(); err == nil {
		t.Fatal("the merge should have stopped")
	}
	index, err := opened(t, root).Index()
	if err != nil {
		t.Fatal(err)
	}
	names, err := index.Specs(".", nil)
	if diff := cmp.Diff([]string{"a.toml", "b.toml"}, names); diff != "" || err != nil {
		t.Error(diff, err)
	}
	if _, err := index.Read("a.toml"); message(err) != "a.toml: it is in conflict; settle it, and `git add` it" {
		t.Error(err)
	}
}

func TestSubmodule(t *testing.T) {
	inner := repository(t, map[string]string{"in.toml": "inner"})
	root := repository(t, map[string]string{"a.toml": "outer"})
	git(t, root, "-c", "protocol.file.allow=always", "submodule", "--quiet", "add", inner, "sub")
	commit(t, root)
	then, _, err := opened(t, root).Revision("HEAD")
	if err != nil {
		t.Fatal(err)
	}
	names, err := then.Specs(".", nil)
	if diff := cmp.Diff([]string{"a.toml"}, names); diff != "" || err != nil {
		t.Error(diff, err)
	}
	if diff := cmp.Diff([]string{"sub"}, then.Submodules()); diff != "" {
		t.Error(diff)
	}
	if _, err := then.Read("sub/in.toml"); message(err) != "sub/in.toml: there is no such file or folder" {
		t.Error(err)
	}
}

// hostile names, each of a file that says its own name.
var hostile = []string{"-rf.toml", "--stdin.toml", "a b.toml", "a\tb.toml", "line\nbreak.toml", "ma\u00dfe.toml", "quo\"te.toml", "*.toml", ":(glob)x.toml", "HEAD", "a\\b.toml"}

func TestHostileNames(t *testing.T) {
	if runtime.GOOS == "windows" {
		t.Skip("such names cannot be made there")
	}
	files := map[string]string{}
	for _, name := range hostile {
		files[name] = "text of " + name
	}
	root := repository(t, files)
	notUTF8 := "latin\xe9.toml"
	if err := os.WriteFile(filepath.Join(root, notUTF8), []byte("x"), 0o644); err != nil {
		t.Logf("this file system takes no such name: %v", err)
		notUTF8 = ""
	}
	commit(t, root)
	r := opened(t, root)
	then, id, err := r.Revision("main")
	if err != nil {
		t.Fatal(err)
	}
	disk, _, err := Open(root)
	if err != nil {
		t.Fatal(err)
	}
	for _, name := range hostile {
		if text, err := then.Read(name); string(text) != "text of "+name || err != nil {
			t.Errorf("%q reads %q, %v", name, text, err)
		}
	}
	fromDisk, diskErr := disk.Specs(".", nil)
	fromGit, gitErr := then.Specs(".", nil)
	if diff := cmp.Diff(fromDisk, fromGit); diff != "" {
		t.Error(diff)
	}
	if diff := cmp.Diff(message(diskErr), message(gitErr)); diff != "" {
		t.Error(diff)
	}
	if notUTF8 != "" && gitErr == nil {
		t.Error("a name that is not UTF-8 is passed over in silence")
	}
	for _, name := range hostile {
		write(t, root, name, "changed")
	}
	changes, err := r.Changes(id, false)
	if err != nil {
		t.Fatal(err)
	}
	var got []string
	for _, c := range changes {
		got = append(got, c.Is)
	}
	want := slices.Sorted(slices.Values(hostile))
	if diff := cmp.Diff(want, got); diff != "" {
		t.Error(diff)
	}
}

func TestChanges(t *testing.T) {
	long := strings.Repeat("a line that stays as it is\n", 20)
	root := repository(t, map[string]string{
		".gitignore": "private.toml\n", "kept.toml": "kept", "edited.toml": "one", "gone.toml": "to go",
		"moved from.toml": long, "sub/staged.toml": "one", "link.toml": "-> kept.toml",
	})
	write(t, root, "edited.toml", "two")
	write(t, root, "sub/staged.toml", "two")
	git(t, root, "add", "sub/staged.toml")
	git(t, root, "mv", "moved from.toml", "moved to.toml")
	write(t, root, "moved to.toml", long+"and one more\n")
	git(t, root, "add", "moved to.toml")
	git(t, root, "rm", "-q", "gone.toml")
	write(t, root, "new.toml", "new")
	write(t, root, "private.toml", "mine")
	if err := os.Remove(filepath.Join(root, "link.toml")); err != nil {
		t.Fatal(err)
	}
	write(t, root, "link.toml", "no link any more")
	if later := time.Now().Add(time.Hour); os.Chtimes(filepath.Join(root, "kept.toml"), later, later) != nil {
		t.Fatal("no time can be set") // a file written again as it was has not changed
	}

	r := opened(t, root)
	_, id, err := r.Revision("HEAD")
	if err != nil {
		t.Fatal(err)
	}
	staged := []Change{{"gone.toml", ""}, {"moved from.toml", "moved to.toml"}, {"sub/staged.toml", "sub/staged.toml"}}
	all := []Change{
		{"gone.toml", ""}, {"edited.toml", "edited.toml"}, {"link.toml", "link.toml"}, {"moved from.toml", "moved to.toml"},
		{"", "new.toml"}, {"sub/staged.toml", "sub/staged.toml"},
	}
	for _, c := range []struct {
		staged bool
		want   []Change
	}{{true, staged}, {false, all}} {
		got, err := r.Changes(id, c.staged)
		if diff := cmp.Diff(c.want, got); diff != "" || err != nil {
			t.Errorf("staged %t: %v\n%s", c.staged, err, diff)
		}
	}
}

// TestNothingIsWritten compares all of a repository, and what is in it, before
// and after it was read.
func TestNothingIsWritten(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "one", "b.toml": "two"})
	write(t, root, "a.toml", "three")
	before := everything(t, root)
	r := opened(t, root)
	then, id, err := r.Revision("main")
	if err != nil {
		t.Fatal(err)
	}
	index, err := r.Index()
	if err != nil {
		t.Fatal(err)
	}
	if _, err := r.Changes(id, false); err != nil {
		t.Fatal(err)
	}
	for _, tr := range []*Tree{then, index} {
		if _, err := tr.Read("a.toml"); err != nil {
			t.Error(err)
		}
	}
	if diff := cmp.Diff(before, everything(t, root)); diff != "" {
		t.Error(diff)
	}
}

func everything(t *testing.T, root string) map[string]string {
	t.Helper()
	all := map[string]string{}
	err := fs.WalkDir(os.DirFS(root), ".", func(name string, entry fs.DirEntry, err error) error {
		if err != nil || entry.IsDir() {
			return err
		}
		text, err := os.ReadFile(filepath.Join(root, name))
		all[name] = string(text)
		return err
	})
	if err != nil {
		t.Fatal(err)
	}
	return all
}

func TestLargeObject(t *testing.T) {
	big := strings.Repeat("#", source.MaxSize+100)
	root := repository(t, map[string]string{"big.toml": big, "next.toml": "next", "empty.toml": ""})
	then, _, err := opened(t, root).Revision("main")
	if err != nil {
		t.Fatal(err)
	}
	if text, err := then.Read("big.toml"); len(text) != source.MaxSize+1 || err != nil {
		t.Error(len(text), err)
	}
	if info, err := fs.Stat(then.FS, "big.toml"); err != nil || info.Size() != int64(len(big)) {
		t.Error(info, err)
	}
	for name, want := range map[string]string{"next.toml": "next", "empty.toml": ""} {
		if text, err := then.Read(name); string(text) != want || err != nil {
			t.Errorf("%s reads %q, %v", name, text, err)
		}
	}
}

// TestLostObject is a repository that lacks a text, as one that was copied in
// part; what it has can still be read.
func TestLostObject(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "lost", "b.toml": "kept"})
	id := git(t, root, "rev-parse", "HEAD:a.toml")
	if err := os.Remove(filepath.Join(root, ".git", "objects", id[:2], id[2:])); err != nil {
		t.Fatal(err)
	}
	then, _, err := opened(t, root).Revision("main")
	if err != nil {
		t.Fatal(err)
	}
	if _, err := then.Read("a.toml"); message(err) != "a.toml: git has not got object "+id+"; `git fetch` what the clone left out, or try `git fsck`" {
		t.Error(err)
	}
	if text, err := then.Read("b.toml"); string(text) != "kept" || err != nil {
		t.Error(text, err)
	}
}

func TestClosedRepository(t *testing.T) {
	root := repository(t, map[string]string{"a.toml": "one"})
	r, err := OpenRepository(root)
	if err != nil {
		t.Fatal(err)
	}
	then, _, err := r.Revision("main")
	if err != nil {
		t.Fatal(err)
	}
	if text, err := then.Read("a.toml"); !bytes.Equal(text, []byte("one")) || err != nil {
		t.Fatal(text, err)
	}
	if err := r.Close(); err != nil {
		t.Fatal(err)
	}
	if _, err := then.Read("a.toml"); !errors.Is(err, os.ErrClosed) {
		t.Error(err)
	}
}

func write(t *testing.T, root, name, text string) {
	t.Helper()
	if err := os.WriteFile(filepath.Join(root, filepath.FromSlash(name)), []byte(text), 0o644); err != nil {
		t.Fatal(err)
	}
}

package main

import (
	"bytes"
	"context"
	"encoding/json"
	"errors"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"fitup/spec/swap"
	"fitup/spec/tree"
)

// demo copies the demo into a folder and goes there.
func demo(t *testing.T) {
	t.Helper()
	work := t.TempDir()
	if err := os.CopyFS(filepath.Join(work, "cars"), os.DirFS(filepath.Join("..", "..", "cars"))); err != nil {
		t.Fatal(err)
	}
	t.Chdir(work)
}

// call runs the program and returns what it prints.
func call(t *testing.T, want int, args ...string) string {
	t.Helper()
	var out, said bytes.Buffer
	root := newRoot()
	root.SetArgs(args)
	root.SetOut(&out)
	root.SetErr(&said)
	if code := run(context.Background(), root); code != want {
		t.Fatalf("%s: exit code %d, want %d\n%s%s", strings.Join(args, " "), code, want, out.String(), said.String())
	}
	return out.String()
}

func read(t *testing.T, file string) string {
	t.Helper()
	text, err := os.ReadFile(file)
	if err != nil {
		t.Fatal(err)
	}
	return string(text)
}

var cars = []string{filepath.Join("cars", "haar.toml"), filepath.Join("cars", "mizzle.toml"), filepath.Join("cars", "squall.toml")}

// Written there and back, every pair of cars has the bytes and the findings that
// it began with.
func TestSwapAndBack(t *testing.T) {
	demo(t)
	const day = "2026-11-25"
	was := map[string]string{}
	for _, file := range cars {
		was[file] = read(t, file)
	}
	before := call(t, exitGood, "check", "cars", "--on", day, "--format", "json")
	for _, pair := range []struct {
		one, other string
		back       int // exit code: a way that is withheld one way is so back
	}{{"mizzle", "haar", exitGood}, {"squall", "haar", exitFindings}, {"mizzle", "squall", exitFindings}} {
		one, other := filepath.Join("cars", pair.one+".toml"), filepath.Join("cars", pair.other+".toml")
		call(t, exitFindings, "swap", "--from", one, "--into", other, "--on", day, "--write")
		if read(t, one) == was[one] || read(t, other) == was[other] {
			t.Fatalf("%v: a file is as it was", pair)
		}
		if during := call(t, exitFindings, "check", "cars", "--on", day, "--format", "json"); during == before {
			t.Errorf("%v: the findings are what they were", pair)
		}
		call(t, pair.back, "swap", "--from", other, "--into", one, "--on", day, "--write")
		for _, file := range cars {
			if diff := cmp.Diff(was[file], read(t, file)); diff != "" {
				t.Errorf("%v: %s is another there and back:\n%s", pair, file, diff)
			}
		}
	}
	if after := call(t, exitGood, "check", "cars", "--on", day, "--format", "json"); after != before {
		t.Error(cmp.Diff(before, after))
	}
}

// The demo's swap is a plan: nothing is withheld, an adaptor solves a joint, a
// circuit leaves unopened because its pump is unbolted, and what stays behind with
// the pump is no finding.
func TestSwapDemo(t *testing.T) {
	demo(t)
	var s struct {
		Withheld []any
		Fit      []struct {
			Name, Verdict string
			Adaptors      []any
		}
		Parting []struct {
			Circuits_unopened []string
			Best              struct{ Open []string }
		}
		Appears []struct{ Subject string }
		Order   []struct{ Steps []struct{ Hold bool } }
	}
	said := call(t, exitFindings, "swap", "--from", cars[1], "--into", cars[0], "--on", "2026-11-25", "--format", "json")
	if err := json.Unmarshal([]byte(said), &s); err != nil {
		t.Fatal(err)
	}
	adapted := 0
	for _, i := range s.Fit {
		if i.Verdict == string(swap.WithAdaptor) {
			adapted += len(i.Adaptors)
		}
	}
	if len(s.Withheld) != 0 || adapted == 0 || len(s.Order) != 2 {
		t.Errorf("%d parts withheld, %d adaptors, %d cars", len(s.Withheld), adapted, len(s.Order))
	}
	if diff := cmp.Diff([]string{"steering fluid"}, s.Parting[0].Circuits_unopened); diff != "" {
		t.Error(diff)
	}
	for _, f := range s.Appears {
		if strings.HasPrefix(f.Subject, "driveline.ports.steer") {
			t.Errorf("a finding about %s, which stays behind with its pump", f.Subject)
		}
	}
}

// A figure that a danger on the way depends on is asked for instead of a plan.
func TestSwapWithholds(t *testing.T) {
	demo(t)
	text := read(t, cars[1])
	const key = "\nfront-left  = \""
	if !strings.Contains(text, key) {
		t.Fatalf("the demo does not say %s", key)
	}
	without := strings.Replace(text, key, "\nfront-left  = \"?\" # \"", 1)
	if err := os.WriteFile(cars[1], []byte(without), 0o600); err != nil {
		t.Fatal(err)
	}
	said := call(t, exitFindings, "swap", "--from", cars[1], "--into", cars[0], "--on", "2026-11-25", "--part", "order", "--part", "standing", "--part", "holds")
	for _, want := range []string{"3 parts are not", "Not printed as a plan", "What to measure", "weighing.front-left"} {
		if !strings.Contains(said, want) {
			t.Errorf("%q is not said in\n%s", want, said)
		}
	}
	for _, never := range []string{"HOLD", "1. ", "on the supports"} {
		if strings.Contains(said, never) {
			t.Errorf("%q is said, though withheld", never)
		}
	}
}

// A page for people never calls anything safe, and no line of the text is wider
// than a page, save what editors follow.
func TestSwapPages(t *testing.T) {
	demo(t)
	call(t, exitFindings, "swap", "--from", cars[1], "--into", cars[2], "--on", "2026-11-25", "--format", "text=swap.txt", "--format", "markdown=swap.md")
	for _, page := range []string{"swap.txt", "swap.md"} {
		for _, word := range strings.FieldsFunc(read(t, page), func(r rune) bool { return !('a' <= r && r <= 'z' || 'A' <= r && r <= 'Z') }) {
			if strings.EqualFold(word, "safe") {
				t.Errorf("%s says %q", page, word)
			}
		}
	}
	for line := range strings.Lines(read(t, "swap.txt")) {
		if line = strings.TrimSuffix(line, "\n"); len([]rune(line)) > usualWidth && !strings.HasSuffix(line, "]") {
			t.Errorf("%d columns: %s", len([]rune(line)), line)
		}
	}
}

// A rename that fails leaves both files as they were, or says what stands.
func TestExchangeUndone(t *testing.T) {
	no := errors.New("no room")
	for _, test := range []struct {
		name  string
		fails map[int]bool // by the number of the rename
		undo  bool         // both are as they were
		says  []string
	}{
		{"first", map[int]bool{1: true}, true, []string{"no room", "nothing is changed"}},
		{"second", map[int]bool{2: true}, true, []string{"no room", "the change of mizzle.toml is undone"}},
		{"second and the undoing", map[int]bool{2: true, 3: true}, false, []string{"mizzle.toml is changed and haar.toml is not", "its old text is in"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			folder := t.TempDir()
			const one, other = "[car]\nname = \"A\"\ndriveline = \"a.toml\" # in\n", "\xef\xbb\xbf[car]\r\nname = \"B\"\r\ndriveline  =  'none'\r\n"
			for name, text := range map[string]string{"mizzle.toml": one, "haar.toml": other} {
				if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o640); err != nil {
					t.Fatal(err)
				}
			}
			pair, err := exchangeOf(&tree.Tree{FS: os.DirFS(folder), Root: folder}, "mizzle.toml", "haar.toml")
			if err != nil {
				t.Fatal(err)
			}
			n := 0
			err = pair.write(func(from, to string) error {
				if n++; test.fails[n] {
					return no
				}
				return os.Rename(from, to)
			})
			if !errors.Is(err, no) {
				t.Fatalf("error %v", err)
			}
			for _, says := range test.says {
				if !strings.Contains(err.Error(), says) {
					t.Errorf("%q is not said: %v", says, err)
				}
			}
			same := read(t, filepath.Join(folder, "mizzle.toml")) == one
			if same != test.undo || read(t, filepath.Join(folder, "haar.toml")) != other {
				t.Errorf("the files are as they were: %v, want %v", same, test.undo)
			}
			left, err := filepath.Glob(filepath.Join(folder, ".*"))
			if err != nil || (len(left) == 0) != test.undo {
				t.Errorf("left beside the files: %v %v", left, err)
			}
			if test.undo {
				return
			}
			if read(t, left[0]) != one {
				t.Errorf("%s holds %q", left[0], read(t, left[0]))
			}
		})
	}
}

// An exchange changes two values and not a byte more; made twice it is undone.
func TestExchange(t *testing.T) {
	folder := t.TempDir()
	was := map[string]string{
		"a.toml": "[car]\nname = \"A\"\ndriveline = \"x.toml\" # in\n",
		"b.toml": "\xef\xbb\xbf[car]\r\nname = \"B\"\r\ndriveline  =  'none'\r\n",
	}
	is := map[string]string{
		"a.toml": "[car]\nname = \"A\"\ndriveline = 'none' # in\n",
		"b.toml": "\xef\xbb\xbf[car]\r\nname = \"B\"\r\ndriveline  =  \"x.toml\"\r\n",
	}
	for name, text := range was {
		if err := os.WriteFile(filepath.Join(folder, name), []byte(text), 0o640); err != nil {
			t.Fatal(err)
		}
	}
	files := &tree.Tree{FS: os.DirFS(folder), Root: folder}
	for i, want := range []map[string]string{is, was} {
		pair, err := exchangeOf(files, "a.toml", "b.toml")
		if err == nil {
			err = pair.write(os.Rename)
		}
		if err != nil {
			t.Fatal(err)
		}
		for name, text := range want {
			info, err := os.Stat(filepath.Join(folder, name))
			if err != nil || info.Mode().Perm() != 0o640 {
				t.Errorf("%s: %v %v", name, info.Mode(), err)
			}
			if got := read(t, filepath.Join(folder, name)); got != text {
				t.Errorf("time %d, %s: %q, want %q", i+1, name, got, text)
			}
		}
	}
}

// A file that somebody saves meanwhile is left alone.
func TestExchangeMeanwhile(t *testing.T) {
	folder := t.TempDir()
	for _, name := range []string{"a.toml", "b.toml"} {
		if err := os.WriteFile(filepath.Join(folder, name), []byte("[car]\ndriveline = \"none\"\n"), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	pair, err := exchangeOf(&tree.Tree{FS: os.DirFS(folder), Root: folder}, "a.toml", "b.toml")
	if err != nil {
		t.Fatal(err)
	}
	const saved = "[car]\nname = \"saved\"\ndriveline = \"none\"\n"
	if err := os.WriteFile(filepath.Join(folder, "b.toml"), []byte(saved), 0o600); err != nil {
		t.Fatal(err)
	}
	if err := pair.write(os.Rename); err == nil || !strings.Contains(err.Error(), "b.toml has changed meanwhile") {
		t.Errorf("error %v", err)
	}
	if read(t, filepath.Join(folder, "b.toml")) != saved {
		t.Error("what was saved is gone")
	}
}

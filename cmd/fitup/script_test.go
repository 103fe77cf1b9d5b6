package main

import (
	"bytes"
	"errors"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"path/filepath"
	"strconv"
	"testing"

	"github.com/rogpeppe/go-internal/testscript"
)

var update = flag.Bool("update", false, "rewrite the golden parts of the scripts")

func TestMain(m *testing.M) {
	testscript.Main(m, map[string]func(){"fitup": main})
}

// TestScripts runs the program from end to end, as its user does. Each script
// says in its first lines what it shows. The rules in scripts/own are there as
// own, so that the scripts do not turn on the wording of the built-in rules.
func TestScripts(t *testing.T) {
	testscript.Run(t, testscript.Params{
		Dir:                 filepath.Join("..", "..", "testdata", "scripts"),
		UpdateScripts:       *update,
		RequireExplicitExec: true,
		RequireUniqueNames:  true,
		Setup: func(env *testscript.Env) error {
			env.Setenv("NO_COLOR", "")
			for name, value := range gitSettings {
				env.Setenv(name, value)
			}
			return os.CopyFS(filepath.Join(env.WorkDir, "own"), os.DirFS(filepath.Join("..", "..", "testdata", "scripts", "own")))
		},
		Condition: func(name string) (bool, error) {
			if name != "root" {
				return false, fmt.Errorf("unknown condition %q", name)
			}
			return os.Getuid() == 0, nil
		},
		Cmds: scriptCommands,
	})
}

// scriptCommands are what a script may do beside what testscript knows.
var scriptCommands = map[string]func(*testscript.TestScript, bool, []string){
	"exits":   exits,
	"large":   large,
	"most":    mostLines,
	"narrow":  narrow,
	"unpaint": unpaint,
}

// gitSettings make commits, and so their ids, the same for everybody.
var gitSettings = map[string]string{
	"GIT_CONFIG_GLOBAL": os.DevNull, "GIT_CONFIG_NOSYSTEM": "1",
	"GIT_AUTHOR_NAME": "Bench", "GIT_AUTHOR_EMAIL": "bench@example.org", "GIT_AUTHOR_DATE": "2026-03-01T12:00:00Z",
	"GIT_COMMITTER_NAME": "Bench", "GIT_COMMITTER_EMAIL": "bench@example.org", "GIT_COMMITTER_DATE": "2026-03-01T12:00:00Z",
}

// exits CODE PROGRAM [ARG...] runs a program and asks for its exit code.
func exits(ts *testscript.TestScript, _ bool, args []string) {
	want, err := strconv.Atoi(args[0])
	ts.Check(err)
	got := 0
	if err := ts.Exec(args[1], args[2:]...); err != nil {
		exit, ok := errors.AsType[*exec.ExitError](err)
		if !ok {
			ts.Fatalf("%v", err)
		}
		got = exit.ExitCode()
	}
	if got != want {
		ts.Fatalf("exit code %d, want %d", got, want)
	}
}

// large FILE BYTES makes a file of that size that is good TOML.
func large(ts *testscript.TestScript, _ bool, args []string) {
	size, err := strconv.Atoi(args[1])
	ts.Check(err)
	line := []byte("# a remark that says nothing\n")
	text := append([]byte("[car]\nname = \"large\"\n"), bytes.Repeat(line, size/len(line)+1)...)
	ts.Check(os.WriteFile(ts.MkAbs(args[0]), text[:size], 0o600))
}

// most FILE N asks for a file of at most N lines.
func mostLines(ts *testscript.TestScript, _ bool, args []string) {
	most, err := strconv.Atoi(args[1])
	ts.Check(err)
	if n := bytes.Count([]byte(ts.ReadFile(args[0])), []byte("\n")); n > most {
		ts.Fatalf("%s has %d lines, more than %d", args[0], n, most)
	}
}

// narrow FILE N asks for a file with no line of more than N characters, save the
// first lines of findings, which are kept whole.
func narrow(ts *testscript.TestScript, _ bool, args []string) {
	most, err := strconv.Atoi(args[1])
	ts.Check(err)
	for line := range bytes.Lines([]byte(ts.ReadFile(args[0]))) {
		if n := len(bytes.Runes(bytes.TrimSuffix(line, []byte("\n")))); n > most && !bytes.HasSuffix(bytes.TrimSpace(line), []byte("]")) {
			ts.Fatalf("%s has a line of %d characters: %s", args[0], n, line)
		}
	}
}

// unpaint FILE NEW writes escape characters as ESC, so that colours can be
// compared.
func unpaint(ts *testscript.TestScript, _ bool, args []string) {
	text := bytes.ReplaceAll([]byte(ts.ReadFile(args[0])), []byte("\x1b"), []byte("ESC"))
	ts.Check(os.WriteFile(ts.MkAbs(args[1]), text, 0o600))
}

//go:build linux

package main

import (
	"bytes"
	"fmt"
	"io"
	"os"
	"os/exec"
	"path/filepath"
	"slices"
	"strings"
	"sync"
	"syscall"
	"testing"
	"time"

	"golang.org/x/sys/unix"
)

// slowRule does not answer before it is stopped.
const slowRule = `# METADATA
# title: A rule that counts for ever
# description: It makes a run long.
# related_resources:
#   - {ref: common-practice, description: this workshop's own}
# custom:
#   level: fault
#   subject: lines
#   stages: [out_stored]
#   message: "{subject} is long"
#   figures: {}
#   fix: cut it
#   rulebook: workshop
#   confidence: practice
package rules.own.slow

digits := ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "a", "b", "c", "d", "e", "f"]

judges contains {"subject": line.path, "needs": []} if some line in input.lines

findings contains {"subject": line.path, "figures": {}} if {
	some line in input.lines
	some a in digits; some b in digits; some c in digits; some d in digits
	some e in digits; some f in digits; some g in digits; some h in digits
	concat("", [a, b, c, d, e, f, g, h]) == line.path
}
`

// slowCall is a check that takes long, in a folder of its own.
func slowCall(t *testing.T) *exec.Cmd {
	t.Helper()
	return slowCommand(t, "check", "blue.toml", "--rules", "rules", "--only", "own", "--format", "json=report.json")
}

// slowCommand is a call of the program in a folder where a rule takes long.
func slowCommand(t *testing.T, args ...string) *exec.Cmd {
	t.Helper()
	dir := t.TempDir()
	for name, text := range map[string]string{
		".git/HEAD": "", "rules/slow.rego": slowRule, "four.toml": "[driveline]\nname = \"Four\"\n",
		"blue.toml": "[car]\nname = \"Blue\"\ndriveline = \"none\"\n\n[lines.feed]\nhose = \"4 m of ptfe-8\"\n",
	} {
		if err := os.MkdirAll(filepath.Dir(filepath.Join(dir, name)), 0o755); err != nil {
			t.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o644); err != nil {
			t.Fatal(err)
		}
	}
	self, err := os.Executable()
	if err != nil {
		t.Fatal(err)
	}
	program := filepath.Join(t.TempDir(), "fitup") // by whose name it is the program, see TestMain
	if err := os.Symlink(self, program); err != nil {
		t.Fatal(err)
	}
	cmd := exec.Command(program, args...)
	cmd.Dir = dir
	cmd.SysProcAttr = &syscall.SysProcAttr{Setpgid: true}
	return cmd
}

// A screen is a terminal to write to, and what was written.
type screen struct {
	terminal *os.File
	mu       sync.Mutex
	text     bytes.Buffer
}

func newScreen(t *testing.T) *screen {
	t.Helper()
	master, err := os.OpenFile("/dev/ptmx", os.O_RDWR|syscall.O_NOCTTY, 0)
	if err != nil {
		t.Skipf("no terminal to be had: %v", err)
	}
	t.Cleanup(func() { master.Close() })
	if err := unix.IoctlSetPointerInt(int(master.Fd()), unix.TIOCSPTLCK, 0); err != nil {
		t.Fatal(err)
	}
	n, err := unix.IoctlGetInt(int(master.Fd()), unix.TIOCGPTN)
	if err != nil {
		t.Fatal(err)
	}
	s := &screen{}
	if s.terminal, err = os.OpenFile(fmt.Sprintf("/dev/pts/%d", n), os.O_RDWR|syscall.O_NOCTTY, 0); err != nil {
		t.Skipf("no terminal to be had: %v", err)
	}
	t.Cleanup(func() { s.terminal.Close() })
	go io.Copy(s, master)
	return s
}

func (s *screen) Write(text []byte) (int, error) {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.Write(text)
}

func (s *screen) String() string {
	s.mu.Lock()
	defer s.mu.Unlock()
	return s.text.String()
}

// left is what of one line is still to be seen.
func (s *screen) left() string {
	text := s.String()
	for _, back := range []string{"\r", "\x1b[2K", "\x1b[K"} {
		if i := strings.LastIndex(text, back); i >= 0 {
			text = text[i+len(back):]
		}
	}
	return strings.TrimSpace(text)
}

// await waits until something is true.
func await(t *testing.T, what string, is func() bool) {
	t.Helper()
	for end := time.Now().Add(30 * time.Second); !is(); time.Sleep(10 * time.Millisecond) {
		if time.Now().After(end) {
			t.Fatalf("%s: not within half a minute", what)
		}
	}
}

// TestProgress shows that a long run tells a terminal that it goes on, and that
// Ctrl-C then ends it at once: nothing is left on the screen and no file half
// written.
func TestProgress(t *testing.T) {
	for _, test := range []struct {
		name string
		args []string
		make func(t *testing.T, dir string) // what more has to be there
		want string
	}{
		{"check", []string{"check", "blue.toml", "--rules", "rules", "--only", "own", "--format", "json=report.json"}, nil, "fitup: judging"},
		{"check --since", []string{"check", "blue.toml", "--rules", "rules", "--only", "own", "--since", "HEAD", "--format", "json=report.json"}, commitAndChange, "fitup: judging"},
		{"swap", []string{"swap", "--driveline", "four.toml", "--into", "blue.toml", "--rules", "rules", "--format", "json=report.json"}, nil, "fitup: judging"},
		{"sheet", []string{"sheet", "blue.toml", "--rules", "rules", "-o", "sheet.html"}, nil, "fitup: judging"},
		{"due", []string{"due", "many", "--format", "json=report.json"}, makeMany, "fitup: reading"},
	} {
		t.Run(test.name, func(t *testing.T) {
			cmd, screen := slowCommand(t, test.args...), newScreen(t)
			if test.make != nil {
				test.make(t, cmd.Dir)
			}
			cmd.Stderr = screen.terminal
			cmd.Env = append(os.Environ(), "TERM=xterm")
			if err := cmd.Start(); err != nil {
				t.Fatal(err)
			}
			await(t, "progress", func() bool { return strings.Contains(screen.String(), test.want) })
			interrupted(t, cmd)
			await(t, "an empty line", func() bool { return screen.left() == "" })
		})
	}
}

// commitAndChange makes a revision of a folder, and a change since.
func commitAndChange(t *testing.T, dir string) {
	t.Helper()
	if err := os.RemoveAll(filepath.Join(dir, ".git")); err != nil { // which only marks the root
		t.Fatal(err)
	}
	for _, args := range [][]string{{"init", "-q"}, {"add", "."}, {"-c", "user.name=a", "-c", "user.email=a@example.org", "commit", "-qm", "before"}} {
		git := exec.Command("git", args...)
		git.Dir = dir
		if said, err := git.CombinedOutput(); err != nil {
			t.Fatalf("git %q: %v: %s", args, err, said)
		}
	}
	blue, err := os.OpenFile(filepath.Join(dir, "blue.toml"), os.O_APPEND|os.O_WRONLY, 0)
	if err != nil {
		t.Fatal(err)
	}
	defer blue.Close()
	if _, err := blue.WriteString("through = \"cabin\"\n"); err != nil {
		t.Fatal(err)
	}
}

// largestSpec is a car with as many entries as one may have.
func largestSpec() []byte {
	b := bytes.NewBufferString("[car]\nname = \"Blue\"\ndriveline = \"none\"\n\n")
	for i := range 4900 { // four entries each
		fmt.Fprintf(b, "[lines.feed-%d]\nhose    = \"4 m of ptfe-8\"\nthrough = \"cabin\"\n\n", i)
	}
	return b.Bytes()
}

// makeMany writes large cars that take some time to read.
func makeMany(t *testing.T, dir string) {
	t.Helper()
	if err := os.Mkdir(filepath.Join(dir, "many"), 0o755); err != nil {
		t.Fatal(err)
	}
	text := largestSpec()
	for i := range 40 {
		if err := os.WriteFile(filepath.Join(dir, "many", fmt.Sprintf("car-%d.toml", i)), text, 0o644); err != nil {
			t.Fatal(err)
		}
	}
}

// TestNoProgress shows that nothing is said where nobody looks: to a pipe, or to a
// terminal that cannot take it back.
func TestNoProgress(t *testing.T) {
	for name, start := range map[string]func(*exec.Cmd) func() string{
		"pipe": func(cmd *exec.Cmd) func() string {
			var said bytes.Buffer
			cmd.Stderr = &said
			return said.String
		},
		"dumb terminal": func(cmd *exec.Cmd) func() string {
			screen := newScreen(t)
			cmd.Stderr = screen.terminal
			cmd.Env = append(os.Environ(), "TERM=dumb")
			return screen.String
		},
	} {
		t.Run(name, func(t *testing.T) {
			cmd := slowCall(t)
			said := start(cmd)
			if err := cmd.Start(); err != nil {
				t.Fatal(err)
			}
			time.Sleep(2 * longRun)
			interrupted(t, cmd)
			if said := said(); said != "" {
				t.Errorf("it said %q", said)
			}
		})
	}
}

// interrupted sends what Ctrl-C sends, and wants the program to end as it should.
func interrupted(t *testing.T, cmd *exec.Cmd) {
	t.Helper()
	start := time.Now()
	if err := syscall.Kill(-cmd.Process.Pid, syscall.SIGINT); err != nil {
		t.Fatal(err)
	}
	cmd.Wait()
	if code := cmd.ProcessState.ExitCode(); code != exitInterrupted {
		t.Errorf("exit code %d, want %d", code, exitInterrupted)
	}
	if took := time.Since(start); took > 2*time.Second {
		t.Errorf("it took %v to end", took)
	}
	entries, err := os.ReadDir(cmd.Dir)
	if err != nil {
		t.Fatal(err)
	}
	for _, e := range entries {
		if name := e.Name(); !slices.Contains([]string{".git", "rules", "many", "blue.toml", "four.toml"}, name) {
			t.Errorf("it left %s behind", name)
		}
	}
}

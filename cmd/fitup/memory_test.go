//go:build linux && !race

// The race detector takes memory and time of its own, many times those of the program.

package main

import (
	"bytes"
	"os"
	"path/filepath"
	"strings"
	"syscall"
	"testing"
)

// mostMemory is what the program may take at its worst: what a runner of a free
// plan has, with room for git and the rest.
const mostMemory = 768 << 20

// greedyRules are rules that ask for more than there is: what the body of their
// findings says, and what is said of them.
var greedyRules = map[string]struct{ body, want string }{
	"keeps all": {`count({concat("", [a, b, c, d, e, f, g]) | ` + manyDigits + `; some f in digits; some g in digits}) == 1; text := "x"`,
		"rule broken: own.slow: "}, // for time or memory
	"finds a million": {manyDigits + `; text := concat("", [a, b, c, d, e])`,
		"rule broken: own.slow: "},
	"finds all it may": {`some a in digits; some b in digits; some c in digits; text := concat("", [a, b, c, "` + strings.Repeat("x", 3800) + `"])`,
		"xxxxxxxx"},
	"finds one in a novel": {`text := "` + strings.Repeat("x", 60_000) + `"`,
		"the most is 4096"},
	"makes a long array": {`count(array.concat([1 | ` + manyDigits + `], [1 | ` + manyDigits + `])) == 1; text := "x"`,
		"the array would have"},
}

const manyDigits = `some a in digits; some b in digits; some c in digits; some d in digits; some e in digits`

// TestMemory runs the program with rules and specs that ask for all there is. It
// stays within bounds, names the rule, and lets the others judge.
func TestMemory(t *testing.T) {
	if testing.Short() {
		t.Skip("takes a while")
	}
	for name, rule := range greedyRules {
		t.Run(name, func(t *testing.T) {
			cmd := slowCall(t)
			head, _, _ := strings.Cut(slowRule, "findings contains")
			head = strings.NewReplacer("figures: {}", "figures: {text: {dimension: text}}", "{subject} is long", "{subject}: {text}").Replace(head)
			text := head + "findings contains {\"subject\": line.path, \"figures\": {\"text\": text}} if {\n\tsome line in input.lines\n\t" + rule.body + "\n}\n"
			if err := os.WriteFile(filepath.Join(cmd.Dir, "rules", "slow.rego"), []byte(text), 0o644); err != nil {
				t.Fatal(err)
			}
			own, err := filepath.Abs(filepath.Join("..", "..", "testdata", "scripts", "own"))
			if err != nil {
				t.Fatal(err)
			}
			cmd.Args = append(cmd.Args, "--rules", own)
			for _, form := range []string{"sarif", "junit", "github", "markdown"} {
				cmd.Args = append(cmd.Args, "--format", form+"="+filepath.Join(t.TempDir(), form))
			}
			cmd.Args = append(cmd.Args, "--format", "text")
			var out bytes.Buffer
			cmd.Stdout, cmd.Stderr = &out, os.Stderr
			_ = cmd.Run()
			if size := peak(cmd.ProcessState); size > mostMemory {
				t.Errorf("it took %d MiB", size>>20)
			}
			said := out.String()
			if !strings.Contains(said, "[own.hose_length]") {
				t.Errorf("another rule did not judge: %.2000s", said)
			}
			if !strings.Contains(flat(said), rule.want) {
				t.Errorf("said of the rule: %.2000s, want %q", said, rule.want)
			}
			if code := cmd.ProcessState.ExitCode(); code != exitTool && (code != exitFindings || name != "finds all it may") {
				t.Errorf("exit code %d: %.2000s", code, said)
			}
			t.Logf("%d MiB", peak(cmd.ProcessState)>>20)
		})
	}
}

// TestMemoryOfLargestSpec runs the program on a spec that is as large as one may be,
// with something wrong in all of it.
func TestMemoryOfLargestSpec(t *testing.T) {
	if testing.Short() {
		t.Skip("takes a while")
	}
	cmd := slowCall(t)
	if err := os.WriteFile(filepath.Join(cmd.Dir, "blue.toml"), largestSpec(), 0o644); err != nil {
		t.Fatal(err)
	}
	cmd.Args = []string{cmd.Args[0], "check", "blue.toml", "--all"}
	for _, form := range []string{"json", "sarif", "junit", "github", "markdown"} {
		cmd.Args = append(cmd.Args, "--format", form+"="+filepath.Join(t.TempDir(), form))
	}
	cmd.Args = append(cmd.Args, "--format", "text")
	var out bytes.Buffer
	cmd.Stdout, cmd.Stderr = &out, &out
	_ = cmd.Run()
	if size := peak(cmd.ProcessState); size > mostMemory {
		t.Errorf("it took %d MiB", size>>20)
	}
	if code := cmd.ProcessState.ExitCode(); code != exitFindings && code != exitGood {
		t.Errorf("exit code %d: %.2000s", code, out.String())
	}
	t.Logf("%d MiB", peak(cmd.ProcessState)>>20)
}

// flat is a text without its line breaks.
func flat(text string) string { return strings.Join(strings.Fields(text), " ") }

// peak is the most memory that a process had, in bytes.
func peak(state *os.ProcessState) int64 {
	return state.SysUsage().(*syscall.Rusage).Maxrss << 10
}

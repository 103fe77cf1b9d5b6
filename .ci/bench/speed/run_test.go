package main

import (
	"bytes"
	"strings"
	"testing"
	"time"
)

func TestRun(t *testing.T) {
	var said bytes.Buffer
	took, err := call{argv: []string{"sh", "-c", "echo $WORD; exit 1"}, env: []string{"WORD=found"}, output: &said}.run(t.Context())
	if err != nil {
		t.Errorf("exit code 1 says that something was found: %v", err)
	}
	if said.String() != "found\n" {
		t.Errorf("it said %q", said.String())
	}
	if took.wall <= 0 || took.peak < 1<<16 {
		t.Errorf("it took %+v", took)
	}
	for _, script := range []string{"exit 2", "echo wrong >&2; exit 1"} {
		if _, err := (call{argv: []string{"sh", "-c", script}}).run(t.Context()); err == nil {
			t.Errorf("%s is no failure", script)
		}
	}
}

func TestAlternate(t *testing.T) {
	var said bytes.Buffer
	say := func(word string) call { return call{argv: []string{"echo", word}, output: &said} }
	costs, err := alternate(t.Context(), 3, say("a"), say("b"))
	if err != nil {
		t.Fatal(err)
	}
	if got := strings.Fields(said.String()); strings.Join(got, "") != "ababab" {
		t.Errorf("called in the order %v", got)
	}
	if len(costs) != 2 || len(costs[0]) != 3 || len(costs[1]) != 3 {
		t.Errorf("costs %v", costs)
	}
}

func TestMedian(t *testing.T) {
	costs := []cost{{wall: 9 * time.Second}, {wall: time.Second}, {wall: 2 * time.Second}}
	if got := median(costs, wall).Center; got != 2 {
		t.Errorf("the median of 9, 1 and 2 s is %v", got)
	}
	if got := seconds(median(costs, wall)); got != "2.0 s" {
		t.Errorf("printed as %q", got)
	}
}

func TestTable(t *testing.T) {
	var said bytes.Buffer
	rows := []row{
		{part: "a", what: "plain", figure: "3 ms"},
		atMost("a", "short", "%.0f ms", 80, 75),
		atLeast("d", "gain", "%.1f", 0.9, 0.8),
	}
	if err := printTable(&said, rows); err != nil {
		t.Fatal(err)
	}
	want := `| | measured | figure | target | |
|---|---|---|---|---|
| a | plain | 3 ms |  |  |
| a | short | 80 ms | at most 75 ms | missed |
| d | gain | 0.9 | at least 0.8 | met |
`
	if said.String() != want {
		t.Errorf("printed:\n%s", said.String())
	}
}

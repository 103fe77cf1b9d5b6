package swap

import (
	"errors"
	"fmt"
	"math/rand/v2"
	"slices"
	"strings"
	"testing"

	gocmp "github.com/google/go-cmp/cmp"
)

func TestOrder(t *testing.T) {
	tasks := func(lines ...string) (list []Task) {
		for _, line := range lines {
			name, station, _ := strings.Cut(line, "@")
			list = append(list, Task{name, station})
		}
		return list
	}
	before := func(pairs ...string) (list []Constraint) {
		for _, pair := range pairs {
			one, other, _ := strings.Cut(pair, "<")
			list = append(list, Constraint{one, other, "because"})
		}
		return list
	}
	for _, test := range []struct {
		name        string
		tasks       []Task
		constraints []Constraint
		want        string
		err         string
	}{
		{name: "nothing"},
		{name: "as given", tasks: tasks("a@bay", "b@bay", "c@bay"), want: "a b c"},
		{name: "a constraint turns two round", tasks: tasks("a@bay", "b@bay"), constraints: before("b<a"), want: "b a"},
		{name: "stay while there is work", tasks: tasks("a@bay", "b@under", "c@bay", "d@under"), want: "a c b d"},
		{name: "go where most can be done", tasks: tasks("a@bay", "b@under", "c@under"), want: "b c a"},
		{name: "come back when it must be", tasks: tasks("a@bay", "b@under", "c@bay"), constraints: before("a<b", "b<c"), want: "a b c"},
		{name: "a run counts what it frees", tasks: tasks("x@cabin", "y@cabin", "a@bay", "b@bay", "c@bay"), constraints: before("a<b", "b<c", "c<x"), want: "a b c x y"},
		{name: "a task without a station", tasks: tasks("a@", "b@bay"), want: "a b"},
		{name: "a cycle", tasks: tasks("a@bay", "b@bay", "c@bay", "d@bay"), constraints: before("d<a", "a<b", "b<c", "c<a"),
			err: "no order can satisfy all of these: a before b (because); b before c (because); c before a (because)"},
		{name: "the shorter of two cycles", tasks: tasks("a@", "b@", "c@"), constraints: before("a<b", "b<c", "c<a", "c<b"),
			err: "no order can satisfy all of these: b before c (because); c before b (because)"},
		{name: "a task before itself", tasks: tasks("a@bay"), constraints: before("a<a"), err: "no order can satisfy all of these: a before a (because)"},
		{name: "no such task", tasks: tasks("a@bay"), constraints: before("a<b"), err: "a before b (because): one of them is not a task"},
		{name: "twice", tasks: tasks("a@bay", "a@under"), err: `there are two of the task "a"`},
	} {
		t.Run(test.name, func(t *testing.T) {
			got, err := Order(test.tasks, test.constraints)
			said := ""
			if err != nil {
				said = err.Error()
			}
			if diff := gocmp.Diff([]string{test.want, test.err}, []string{strings.Join(got, " "), said}); diff != "" {
				t.Errorf("order, error (-want +got):\n%s", diff)
			}
		})
	}
}

// TestOrderKeepsEveryConstraint tries random graphs: every constraint is kept,
// nothing is lost, no move to another station could have waited, and a cycle is
// a real one.
func TestOrderKeepsEveryConstraint(t *testing.T) {
	const graphs = 2400
	random := rand.New(rand.NewPCG(5, 2026))
	var sorted, cyclic int
	for g := range graphs {
		var tasks []Task
		var constraints []Constraint
		for i := range 1 + random.IntN(14) {
			tasks = append(tasks, Task{fmt.Sprint("task", i), fmt.Sprint("station", random.IntN(4))})
		}
		// Constraints that follow a hidden order, and now and then one that need not.
		hidden := random.Perm(len(tasks))
		for range random.IntN(2*len(tasks) + 1) {
			a, b := random.IntN(len(tasks)), random.IntN(len(tasks))
			if a == b || hidden[a] > hidden[b] && random.IntN(25) > 0 {
				continue
			}
			constraints = append(constraints, Constraint{tasks[a].Name, tasks[b].Name, fmt.Sprint("reason", len(constraints))})
		}
		order, err := Order(tasks, constraints)
		var cycle Cycle
		switch {
		case errors.As(err, &cycle):
			cyclic++
			checkCycle(t, cycle, constraints)
		case err != nil:
			t.Fatalf("graph %d: %v", g, err)
		default:
			sorted++
			checkOrder(t, order, tasks, constraints)
		}
	}
	if sorted < 2000 || cyclic < 50 {
		t.Errorf("too few of a kind to mean much: %d sorted, %d with a cycle", sorted, cyclic)
	}
}

func checkOrder(t *testing.T, order []string, tasks []Task, constraints []Constraint) {
	t.Helper()
	place := map[string]int{}
	for i, name := range order {
		place[name] = i
	}
	if len(order) != len(tasks) || len(place) != len(tasks) {
		t.Fatalf("%d tasks went in and %v came out", len(tasks), order)
	}
	station := map[string]string{}
	for _, task := range tasks {
		station[task.Name] = task.Station
	}
	for _, c := range constraints {
		if place[c.Before] >= place[c.After] {
			t.Fatalf("%v is not kept in %v", c, order)
		}
	}
	for i := 1; i < len(order); i++ {
		here := station[order[i-1]]
		if station[order[i]] == here {
			continue
		}
		for _, later := range order[i:] {
			waits := slices.ContainsFunc(constraints, func(c Constraint) bool { return c.After == later && place[c.Before] >= i })
			if station[later] == here && !waits {
				t.Fatalf("%s could have been done before leaving %s: %v", later, here, order)
			}
		}
	}
}

func checkCycle(t *testing.T, cycle Cycle, constraints []Constraint) {
	t.Helper()
	if len(cycle) == 0 {
		t.Fatal("a cycle of nothing")
	}
	for i, c := range cycle {
		if !slices.Contains(constraints, c) {
			t.Fatalf("%v was never asked for", c)
		}
		if next := cycle[(i+1)%len(cycle)]; c.After != next.Before {
			t.Fatalf("%v does not lead to %v", c, next)
		}
	}
}

func TestOrderIsStable(t *testing.T) {
	tasks := []Task{{"a", "bay"}, {"b", "under"}, {"c", "bay"}, {"d", "cabin"}, {"e", "under"}}
	constraints := []Constraint{{"a", "e", ""}, {"d", "c", ""}}
	first, err := Order(tasks, constraints)
	if err != nil {
		t.Fatal(err)
	}
	for range 20 {
		again, _ := Order(tasks, constraints)
		if diff := gocmp.Diff(first, again); diff != "" {
			t.Fatal(diff)
		}
	}
}

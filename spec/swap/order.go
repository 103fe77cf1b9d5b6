package swap

import (
	"fmt"
	"slices"
	"strings"
)

// A Task is one thing to do, as far as its order matters.
type Task struct {
	Name    string
	Station string // where the builder stands to do it
}

// A Constraint says that one task comes before another, and why.
type Constraint struct {
	Before, After string
	Why           string
}

func (c Constraint) String() string {
	return fmt.Sprintf("%s before %s (%s)", c.Before, c.After, c.Why)
}

// A Cycle is a chain of constraints of which each begins with the task that the
// one before it ends with, and the first with the one that the last ends with.
type Cycle []Constraint

func (c Cycle) Error() string {
	said := make([]string, len(c))
	for i, each := range c {
		said[i] = each.String()
	}
	return "no order can satisfy all of these: " + strings.Join(said, "; ")
}

// Order sorts tasks so that every constraint is kept, and the builder stays at
// one station as long as there is something to do there. To move on, it takes
// the station where most can be done in one go, and of equals the one whose task
// stands first. Within a station tasks keep the order they are given in as far
// as constraints allow. Where none can be kept, the error is a Cycle, the
// shortest there is; else it tells of a task that does not exist or stands
// twice.
func Order(tasks []Task, constraints []Constraint) ([]string, error) {
	at, err := positions("task", tasks, func(t Task) string { return t.Name })
	if err != nil {
		return nil, err
	}
	q := queue{tasks: tasks, after: make([][]int, len(tasks)), waits: make([]int, len(tasks)), done: make([]bool, len(tasks))}
	for _, c := range constraints {
		before, known := at[c.Before]
		after, alsoKnown := at[c.After]
		if !known || !alsoKnown {
			return nil, fmt.Errorf("%v: one of them is not a task", c)
		}
		q.after[before] = append(q.after[before], after)
		q.waits[after]++
	}
	var order []string
	var station string
	for len(order) < len(tasks) {
		next := q.ready(station)
		if next < 0 {
			var ok bool
			if station, ok = q.longest(); !ok {
				return nil, shortestCycle(len(tasks), constraints, at)
			}
			next = q.ready(station)
		}
		q.do(next)
		order = append(order, tasks[next].Name)
		station = tasks[next].Station
	}
	return order, nil
}

// A queue is the work that is left.
type queue struct {
	tasks []Task
	after [][]int
	waits []int // of each task: the constraints that hold it back
	done  []bool
}

// ready is the first task that can be done at a station; -1 if none can.
func (q *queue) ready(station string) int {
	for i, t := range q.tasks {
		if t.Station == station && q.waits[i] == 0 && !q.done[i] {
			return i
		}
	}
	return -1
}

func (q *queue) do(i int) {
	q.done[i] = true
	for _, next := range q.after[i] {
		q.waits[next]--
	}
}

// longest is the station where most can be done in one go; ok is false if
// nothing can be done anywhere.
func (q *queue) longest() (station string, ok bool) {
	most := 0
	tried := map[string]bool{}
	for i, t := range q.tasks {
		if q.waits[i] > 0 || q.done[i] || tried[t.Station] {
			continue
		}
		tried[t.Station] = true
		if n := q.runAt(t.Station); n > most {
			station, most = t.Station, n
		}
	}
	return station, most > 0
}

// runAt is how many tasks could be done at a station without leaving it.
func (q *queue) runAt(station string) int {
	trial := queue{tasks: q.tasks, after: q.after, waits: slices.Clone(q.waits), done: slices.Clone(q.done)}
	for n := 0; ; n++ {
		next := trial.ready(station)
		if next < 0 {
			return n
		}
		trial.do(next)
	}
}

// shortestCycle finds the shortest chain of constraints that closes on itself,
// and of equals the one that the constraints give first.
func shortestCycle(tasks int, constraints []Constraint, at map[string]int) Cycle {
	from := make([][]int, tasks) // constraints that begin with each task
	for i, c := range constraints {
		from[at[c.Before]] = append(from[at[c.Before]], i)
	}
	var shortest Cycle
	for first, c := range constraints {
		reached := map[int]int{at[c.After]: -1} // constraint by which each task was reached
		for line := []int{at[c.After]}; len(line) > 0; line = line[1:] {
			for _, i := range from[line[0]] {
				end := at[constraints[i].After]
				if _, seen := reached[end]; !seen {
					reached[end] = i
					line = append(line, end)
				}
			}
		}
		start := at[c.Before]
		if _, closes := reached[start]; !closes {
			continue
		}
		cycle := Cycle{constraints[first]}
		for i := reached[start]; i >= 0; i = reached[at[constraints[i].Before]] {
			cycle = append(cycle, constraints[i])
		}
		slices.Reverse(cycle[1:])
		if shortest == nil || len(cycle) < len(shortest) {
			shortest = cycle
		}
	}
	return shortest
}

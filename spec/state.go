package spec

import (
	"iter"
	"maps"
	"slices"
)

// State tells what the author of a spec said of a value.
type State int

const (
	Unsaid State = iota // the key is left out
	Asked               // "?": it matters, and is not measured yet
	None                // "none": looked, there is none
	Given               // a value
)

// Node is embedded in every table of a spec. It holds the state of the table
// itself, for where an author writes `hand-extinguisher = "none"`, and the
// table's own key path, which begins with "driveline." or "shop." in a file of
// that kind.
type Node struct {
	State State  `spec:"-"`
	Path  string `spec:"-"`
}

func (n *Node) node() *Node { return n }

// Told reports whether the table is there with content to judge.
func (n Node) Told() bool { return n.State == Given }

// Table is a collection of named tables, such as `[lines.NAME]`.
type Table[T any] struct {
	State State
	Named map[string]*T
}

// Collection is any Table, for code that does not care what it holds.
type Collection interface {
	Said() State
	Names() []string
	Item(name string) any // pointer to the named table

	say(State)
	add(name string) any // pointer to a new table of that name
}

// Said is the state of the collection as a whole.
func (t *Table[T]) Said() State { return t.State }

// Names are the names in it, sorted, so that nothing depends on map order.
func (t *Table[T]) Names() []string { return slices.Sorted(maps.Keys(t.Named)) }

// Item is a pointer to the table of that name, which must exist.
func (t *Table[T]) Item(name string) any { return t.Named[name] }

func (t *Table[T]) say(s State) { t.State = s }

func (t *Table[T]) add(name string) any {
	if t.Named == nil {
		t.Named = map[string]*T{}
	}
	t.Named[name] = new(T)
	return t.Named[name]
}

// All yields the named tables in order of name.
func (t *Table[T]) All() iter.Seq2[string, *T] {
	return func(yield func(string, *T) bool) {
		for _, name := range t.Names() {
			if !yield(name, t.Named[name]) {
				return
			}
		}
	}
}

package source

import (
	"strconv"
	"strings"
)

// kind tells how a node of the text came to be, which decides what may still
// be added to it.
type kind int

const (
	scalar        kind = iota
	array              // [1, 2]: closed
	inlineTable        // {a = 1}: closed
	dottedTable        // made by a dotted key: grows by dotted keys and by headers of tables below it
	implicitTable      // named on the way in a header: may still get a header of its own
	explicitTable      // has its own header
	tableArray         // made by [[name]]
)

// A node is a table, an array or a value, with the places where it is written.
type node struct {
	kind     kind
	key      Span // its name where it was first written; empty for an array's element
	whole    Span // the value, with its brackets or quotes; of a table its header, with brackets; else empty
	inside   Span // the characters of a one-line string without escapes, which map one to one; else empty
	children map[string]*node
	elements []*node
}

// add gives a table a new child.
func (n *node) add(name string, child *node) *node {
	if n.children == nil {
		n.children = map[string]*node{}
	}
	n.children[name] = child
	return child
}

// child returns what a step of a path leads to, or nil.
func (n *node) child(step string) *node {
	if n.kind != array && n.kind != tableArray {
		return n.children[step]
	}
	i, err := strconv.Atoi(step)
	if err != nil || i < 0 || i >= len(n.elements) || strconv.Itoa(i) != step {
		return nil
	}
	return n.elements[i]
}

// span returns the best place of a node: value or header, else key.
func (n *node) span() Span {
	if n.whole != (Span{}) {
		return n.whole
	}
	return n.key
}

// lookup follows a key path. It returns the node, or nil; and the place of the
// last node on the way that has one.
func (f *File) lookup(path string) (found *node, near Span) {
	n := f.root
	for step := range strings.SplitSeq(path, ".") {
		if n = n.child(step); n == nil {
			return nil, near
		}
		if s := n.span(); s != (Span{}) {
			near = s
		}
	}
	return n, near
}

// Key returns the place of the last name of a key path, where it was first
// written. Elements of an array have no key.
func (f *File) Key(path string) (Span, bool) {
	n, _ := f.lookup(path)
	if n == nil || n.key == (Span{}) {
		return Span{}, false
	}
	return n.key, true
}

// Find returns the place of a subject: a key path, which may end in #word for
// a word of the string that stands there. It always resolves: to the word,
// else the value or the table's header, else the key, else the same of the
// nearest table that is written, else the start of the text.
func (f *File) Find(path string) Span {
	path, word, _ := strings.Cut(path, "#")
	n, near := f.lookup(path)
	if n == nil || word == "" || n.inside == (Span{}) {
		return near
	}
	start := findWord(string(f.Text[n.inside.Start:n.inside.End]), word)
	if start < 0 {
		return near
	}
	start += n.inside.Start
	return Span{start, start + len(word)}
}

// Word returns the place of a part of the string at a path, given as byte
// offsets into the decoded string. A string with escapes or over several lines
// does not map one to one to its text: its whole value is returned, and so it
// is for offsets that are not within the string.
func (f *File) Word(path string, start, end int) Span {
	n, near := f.lookup(path)
	if n == nil || start < 0 || start > end || end > n.inside.End-n.inside.Start || n.inside == (Span{}) {
		return near
	}
	return Span{n.inside.Start + start, n.inside.Start + end}
}

// findWord returns where a word stands in a phrase: the first time that it
// stands alone, else the first time that it stands at all, else -1.
func findWord(phrase, word string) int {
	const between = " \t,;"
	for at := 0; ; {
		i := strings.Index(phrase[at:], word)
		if i < 0 {
			return strings.Index(phrase, word)
		}
		start, end := at+i, at+i+len(word)
		if (start == 0 || strings.IndexByte(between, phrase[start-1]) >= 0) &&
			(end == len(phrase) || strings.IndexByte(between, phrase[end]) >= 0) {
			return start
		}
		at = start + 1
	}
}

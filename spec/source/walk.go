package source

import (
	"bytes"
	"fmt"
	"regexp"
	"strconv"
	"strings"
	"unicode/utf8"

	"github.com/BurntSushi/toml"
	"github.com/pelletier/go-toml/v2/unstable"
)

// A walker goes through a text once, records the place of everything, and
// checks it against the limits and against TOML 1.0's rules for keys and
// tables.
type walker struct {
	file     *File
	text     []byte
	table    *node  // where keys go: the table of the last header
	path     string // its path
	depth    int    // names and element numbers in its path
	entries  int
	last     int // end of the last expression that was read
	problems []Problem
}

// walk fills f.root and returns what is wrong.
func walk(f *File) []Problem {
	w := &walker{file: f, text: f.Text, table: f.root}
	var p unstable.Parser
	p.Reset(f.Text)
	for w.entries <= MaxEntries && p.NextExpression() {
		switch e := p.Expression(); e.Kind {
		case unstable.KeyValue:
			w.keyValue(e, w.table, w.path, w.depth)
			w.last = rangeSpan(e.Raw).End
		case unstable.Table, unstable.ArrayTable:
			w.header(e)
		}
	}
	if err := p.Error(); err != nil {
		w.problems = append(w.problems, syntaxProblem(w.text, w.last, err))
	}
	return w.problems
}

func rangeSpan(r unstable.Range) Span {
	return Span{int(r.Offset), int(r.Offset + r.Length)}
}

func (w *walker) problem(path string, at Span, want, message string, args ...any) {
	w.problems = append(w.problems, Problem{Path: path, Span: at, Message: fmt.Sprintf(message, args...), Want: want})
}

// line tells where a node was first written.
func (w *walker) line(n *node) int {
	if n.key == (Span{}) {
		return w.file.index.line(n.whole.Start)
	}
	return w.file.index.line(n.key.Start)
}

// count counts a key or element, and reports whether the text may hold it.
func (w *walker) count(at Span) bool {
	w.entries++
	if w.entries == MaxEntries+1 {
		w.problem("", at, "fewer entries, or several files", "the file has more than %d keys and array elements", MaxEntries)
	}
	return w.entries <= MaxEntries
}

// deep reports whether a path is too deep, and says so.
func (w *walker) deep(path string, depth int, at Span) bool {
	if depth <= MaxDepth {
		return false
	}
	w.problem(path, at, "named tables, each under a header of its own", "this is nested more than %d levels deep", MaxDepth)
	return true
}

// A part is one name of a dotted key.
type part struct {
	name string
	at   Span
}

var nameForm = regexp.MustCompile(`^[A-Za-z0-9_-]+$`)

// key reads the names of a key or header. It returns where the last one ends
// even if they are refused.
func (w *walker) key(it unstable.Iterator, path string) (parts []part, end int, ok bool) {
	ok = true
	start := -1
	number := 0
	for it.Next() {
		p := part{string(it.Node().Data), rangeSpan(it.Node().Raw)}
		if start < 0 {
			start = p.at.Start
		}
		end = p.at.End
		if number++; number > MaxParts || !ok {
			continue
		}
		if ok = w.name(p, path) && w.count(p.at); ok {
			parts = append(parts, p)
		}
	}
	if number > MaxParts {
		w.problem(path, Span{start, end}, fmt.Sprintf("at most %d names with dots between them", MaxParts),
			"the key has %d names", number)
		ok = false
	}
	return parts, end, ok
}

func (w *walker) name(p part, path string) bool {
	switch {
	case p.name == "":
		w.problem(path, p.at, "write names with letters, digits and hyphens", "the name is empty")
	case utf8.RuneCountInString(p.name) > MaxName:
		w.problem(path, p.at, fmt.Sprintf("names of at most %d characters", MaxName), "the name is too long")
	case !nameForm.MatchString(p.name):
		w.problem(path, p.at, "write names with letters, digits and hyphens", "%q is not a name", p.name)
	default:
		return true
	}
	return false
}

func join(path, step string) string {
	if path == "" {
		return step
	}
	return path + "." + step
}

// header opens the table of a [name] or the next element of [[name]].
func (w *walker) header(e *unstable.Node) {
	parts, end, ok := w.key(e.Key(), "")
	first := e.Child().Raw.Offset
	start := bytes.LastIndexByte(w.text[:first], '[')
	end += bytes.IndexByte(w.text[end:], ']') + 1
	if e.Kind == unstable.ArrayTable {
		start, end = start-1, end+1
	}
	w.last = end

	// Whatever is wrong with a header, the keys below it are still checked, in
	// a table that belongs to nothing.
	w.table, w.path, w.depth = &node{kind: explicitTable}, "", 0
	if !ok {
		return
	}
	n, path, depth := w.file.root, "", 0
	for i, p := range parts {
		path, depth = join(path, p.name), depth+1
		next := n.children[p.name]
		last := i == len(parts)-1
		switch {
		case last && e.Kind == unstable.ArrayTable:
			next, ok = w.tableElement(n, next, p, path, Span{start, end})
		case last:
			next, ok = w.ownTable(n, next, p, path, Span{start, end})
		case next == nil:
			next = n.add(p.name, &node{kind: implicitTable, key: p.at})
		case next.kind == scalar || next.kind == array || next.kind == inlineTable:
			w.closed(next, p, path)
			ok = false
		}
		if !ok {
			w.path, w.depth = path, depth
			return
		}
		n = next
		if n.kind == tableArray {
			path, depth = join(path, strconv.Itoa(len(n.elements)-1)), depth+1
			n = n.elements[len(n.elements)-1]
		}
		if w.deep(path, depth, p.at) {
			return
		}
	}
	w.table, w.path, w.depth = n, path, depth
}

// ownTable gives a table its header.
func (w *walker) ownTable(parent, n *node, p part, path string, header Span) (*node, bool) {
	switch {
	case n == nil:
		return parent.add(p.name, &node{kind: explicitTable, key: p.at, whole: header}), true
	case n.kind == implicitTable:
		n.kind, n.key, n.whole = explicitTable, p.at, header
		return n, true
	case n.kind == explicitTable:
		w.problem(path, p.at, "put its keys under that header, or give this table another name",
			"[%s] already has a header, on line %d", path, w.line(n))
	case n.kind == dottedTable:
		w.problem(path, p.at, fmt.Sprintf("write all its keys with dots, or all below [%s]", path),
			"%q is already made by a dotted key, on line %d", path, w.line(n))
	case n.kind == tableArray:
		w.problem(path, p.at, fmt.Sprintf("[[%s]]", path),
			"%q is already an array of tables, from line %d", path, w.line(n))
	default:
		w.closed(n, p, path)
	}
	return nil, false
}

// tableElement adds an element to an array of tables.
func (w *walker) tableElement(parent, n *node, p part, path string, header Span) (*node, bool) {
	switch {
	case n == nil:
		n = parent.add(p.name, &node{kind: tableArray, key: p.at, whole: header})
	case n.kind == tableArray:
	case n.kind == scalar || n.kind == array || n.kind == inlineTable:
		w.closed(n, p, path)
		return nil, false
	default:
		w.problem(path, p.at, fmt.Sprintf("[%s.NAME] for a table below it", path),
			"%q is already a table, from line %d", path, w.line(n))
		return nil, false
	}
	n.elements = append(n.elements, &node{kind: explicitTable, key: p.at, whole: header})
	return n, true
}

// closed tells that nothing can be added to a value.
func (w *walker) closed(n *node, p part, path string) {
	switch n.kind {
	case inlineTable:
		w.problem(path, p.at, fmt.Sprintf("write all its keys inside the braces, or all below [%s]", path),
			"%q is an inline table, closed on line %d", path, w.line(n))
	case array:
		w.problem(path, p.at, "write all its elements inside the brackets",
			"%q is an array, closed on line %d", path, w.line(n))
	default:
		w.problem(path, p.at, "a value or a table under one name, not both",
			"%q is a value, set on line %d, and cannot hold keys", path, w.line(n))
	}
}

// keyValue sets a key in a table and reports whether all of its value could
// be followed.
func (w *walker) keyValue(e *unstable.Node, table *node, path string, depth int) bool {
	parts, end, ok := w.key(e.Key(), path)
	for i, p := range parts {
		if !ok {
			break
		}
		path, depth = join(path, p.name), depth+1
		next := table.children[p.name]
		last := i == len(parts)-1
		switch {
		case w.deep(path, depth, p.at):
			return false
		case next == nil && last:
			table = table.add(p.name, &node{key: p.at})
		case next == nil:
			table = table.add(p.name, &node{kind: dottedTable, key: p.at})
		case last:
			w.problem(path, p.at, "each key once", "%q is already set, on line %d", p.name, w.line(next))
			ok = false
		case next.kind == dottedTable:
			table = next
		case next.kind == implicitTable || next.kind == explicitTable || next.kind == tableArray:
			w.problem(path, p.at, "write the key below that header",
				"%q has a header of its own, on line %d", path, w.line(next))
			ok = false
		default:
			w.closed(next, p, path)
			ok = false
		}
	}
	if !ok { // what is wrong inside the value is still worth telling
		table = &node{}
	}
	end += bytes.IndexByte(w.text[end:], '=') + 1
	for w.text[end] == ' ' || w.text[end] == '\t' {
		end++
	}
	_, followed := w.value(e.Value(), table, end, path, depth)
	return followed
}

// value records the value that begins at start, and returns where it ends. Of
// arrays and inline tables the parser tells no end, so their brackets are
// found by stepping over what stands between their elements. It returns false
// if it went too deep or too far to tell.
func (w *walker) value(v *unstable.Node, n *node, start int, path string, depth int) (end int, ok bool) {
	switch v.Kind {
	case unstable.Array:
		n.kind = array
		end, ok = w.array(v, n, start, path, depth)
	case unstable.InlineTable:
		n.kind = inlineTable
		end, ok = w.inline(v, n, start, path, depth)
	default:
		end, ok = rangeSpan(v.Raw).End, true
		w.scalar(v, n, path)
	}
	if ok {
		n.whole = Span{start, end}
	}
	return end, ok
}

func (w *walker) array(v *unstable.Node, n *node, start int, path string, depth int) (end int, ok bool) {
	at := start + 1
	for it := v.Children(); it.Next(); {
		at, _ = w.between(at)
		here := Span{at, at + 1}
		element := &node{}
		step := join(path, strconv.Itoa(len(n.elements)))
		n.elements = append(n.elements, element)
		if w.deep(step, depth+1, here) || !w.count(here) {
			return 0, false
		}
		if at, ok = w.value(it.Node(), element, at, step, depth+1); !ok {
			return 0, false
		}
	}
	at, _ = w.between(at)
	return at + 1, true
}

func (w *walker) inline(v *unstable.Node, n *node, start int, path string, depth int) (end int, ok bool) {
	at, comma := start+1, -1
	lines := false
	for it := v.Children(); it.Next(); {
		e := rangeSpan(it.Node().Raw)
		lines = lines || bytes.IndexByte(w.text[at:e.Start], '\n') >= 0
		if !w.keyValue(it.Node(), n, path, depth) {
			return 0, false
		}
		at = e.End
	}
	end, comma = w.between(at)
	lines = lines || bytes.IndexByte(w.text[at:end], '\n') >= 0
	end++
	// The parser follows TOML 1.1 here; 1.0 is what every editor reads.
	switch {
	case lines:
		w.problem(path, firstLine(w.text, Span{start, end}),
			fmt.Sprintf("all of it on one line, or its keys below [%s]", path), "an inline table cannot run over several lines")
	case comma >= 0:
		w.problem(path, Span{comma, comma + 1}, "no comma after the last key", "a comma before } is one too many")
	}
	return end, true
}

// between steps over blanks, line ends, comments and commas. It returns where
// the next thing begins, and the last comma, or -1.
func (w *walker) between(at int) (next, comma int) {
	comma = -1
	for {
		switch w.text[at] {
		case '#':
			at += bytes.IndexByte(w.text[at:], '\n')
		case ',':
			comma = at
		case ' ', '\t', '\r', '\n':
		default:
			return at, comma
		}
		at++
	}
}

func (w *walker) scalar(v *unstable.Node, n *node, path string) {
	at := rangeSpan(v.Raw)
	raw := w.text[at.Start:at.End]
	if v.Kind == unstable.String {
		if len(v.Data) > MaxString {
			w.problem(path, firstLine(w.text, at), fmt.Sprintf("at most %d bytes", MaxString), "the string is too long")
		}
		if bytes.Equal(raw[1:len(raw)-1], v.Data) {
			n.inside = Span{at.Start + 1, at.End - 1}
		}
		return
	}
	// The parser takes any digits for a date or number; the decoder knows
	// which exist, and is asked about each by itself so that all are told.
	var alone map[string]any
	if _, err := toml.Decode("v = "+string(raw), &alone); err == nil {
		return
	}
	switch v.Kind {
	case unstable.Integer:
		w.problem(path, at, "text in quotes, if it is a label", "the number %s is too large", clip(string(raw)))
	case unstable.Float:
		w.problem(path, at, "a number such as 12.5", "%s is not a number", clip(string(raw)))
	default:
		w.problem(path, at, "a date such as 2027-05-31, or text in quotes", "there is no date or time %s", clip(string(raw)))
	}
}

// firstLine cuts a span at the end of its first line.
func firstLine(text []byte, s Span) Span {
	if i := bytes.IndexByte(text[s.Start:s.End], '\n'); i >= 0 {
		s.End = s.Start + len(bytes.TrimRight(text[s.Start:s.Start+i], "\r"))
	}
	return s
}

// clip shortens text that is quoted in a message.
func clip(s string) string {
	const most = 40
	if utf8.RuneCountInString(s) <= most {
		return s
	}
	return strings.ToValidUTF8(string([]rune(s)[:most]), "") + "..."
}

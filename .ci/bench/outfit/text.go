package outfit

import (
	"regexp"
	"slices"
	"strings"
)

// A text is a spec as blocks, so that a part of it can be taken out or added and
// the rest stays as its author wrote it.
type text []block

// A block is what stands from one table header to the next. The first block of a
// text has no header.
type block struct {
	path    string // of the table
	header  string // the line as written
	entries []entry
}

// An entry is a key with its value, over as many lines as it takes, or what is no
// key: a comment or a blank line.
type entry struct{ key, text string }

var (
	headerLine = regexp.MustCompile(`^\[([a-z0-9.-]+)\]`)
	keyLine    = regexp.MustCompile(`^([A-Za-z0-9.-]+) *=`)
	looseLine  = regexp.MustCompile(`^(#.*)?\n?$`)
)

func parse(spec string) text {
	t := text{{}}
	for line := range strings.Lines(spec) {
		if m := headerLine.FindStringSubmatch(line); m != nil {
			t = append(t, block{path: m[1], header: line})
			continue
		}
		last := &t[len(t)-1]
		switch m := keyLine.FindStringSubmatch(line); {
		case m != nil:
			last.entries = append(last.entries, entry{m[1], line})
		case len(last.entries) == 0 || looseLine.MatchString(line):
			last.entries = append(last.entries, entry{"", line})
		default:
			last.entries[len(last.entries)-1].text += line
		}
	}
	return t
}

func (t text) String() string {
	var all strings.Builder
	for _, b := range t {
		all.WriteString(b.header)
		for _, e := range b.entries {
			all.WriteString(e.text)
		}
	}
	return all.String()
}

// things lists the paths of what stands in the named collections, as a table of
// its own or as an inline table, in the order written.
func (t text) things(collections []string) []string {
	var paths []string
	for _, b := range t {
		if parent, _, ok := cutLast(b.path); ok && slices.Contains(collections, parent) {
			paths = append(paths, b.path)
		}
		if !slices.Contains(collections, b.path) {
			continue
		}
		for _, e := range b.entries {
			if e.key != "" {
				name, _, _ := strings.Cut(e.key, ".")
				paths = append(paths, b.path+"."+name)
			}
		}
	}
	return slices.Compact(paths)
}

// without takes out what has the path, and all below it.
func (t text) without(path string) text {
	below := func(p string) bool { return p == path || strings.HasPrefix(p, path+".") }
	var rest text
	for _, b := range t {
		if below(b.path) {
			continue
		}
		b.entries = slices.DeleteFunc(slices.Clone(b.entries), func(e entry) bool {
			return e.key != "" && below(b.path+"."+e.key)
		})
		rest = append(rest, b)
	}
	return rest
}

// cutLast cuts a path before its last name.
func cutLast(path string) (parent, name string, ok bool) {
	i := strings.LastIndexByte(path, '.')
	if i < 0 {
		return "", path, false
	}
	return path[:i], path[i+1:], true
}

// words counts how often each name stands in specs, whoever it is the name of.
func words(specs ...string) map[string]int {
	count := map[string]int{}
	for _, spec := range specs {
		for _, word := range word.FindAllString(spec, -1) {
			count[word]++
		}
	}
	return count
}

var word = regexp.MustCompile(`[A-Za-z0-9-]+`)

package spec

import (
	"strings"

	"fitup/spec/source"
)

// An origin is where the words stand that a phrase gave to a key: a stretch of
// the string at a key path, in bytes.
type origin struct {
	path       string
	start, end int
}

// Find returns the place of a subject in the file's text. Beside the paths that
// source.File.Find takes, it resolves the keys that a phrase stands for, either
// way: "mounts.left.bolts.torque" and "mounts.left.bolts#torque" are the words
// of the torque. Names as rules write them, with underscores, serve too.
func (f *File) Find(path string) source.Span {
	path = strings.ReplaceAll(path, "_", "-")
	if key, word, ok := strings.Cut(path, "#"); ok {
		if o, ok := f.origins[join(key, word)]; ok {
			return f.File.Word(o.path, o.start, o.end)
		}
		if _, spoken := f.origin(key); !spoken {
			return f.File.Find(path)
		}
		path = key
	}
	if o, ok := f.origin(path); ok {
		return f.File.Word(o.path, o.start, o.end)
	}
	return f.File.Find(path)
}

// origin finds the words that a path, or the nearest table above it, came from.
func (f *File) origin(path string) (origin, bool) {
	for path != "" {
		if o, ok := f.origins[path]; ok {
			return o, true
		}
		path = path[:max(0, strings.LastIndexByte(path, '.'))]
	}
	return origin{}, false
}

// word returns the place of part of the value at a key path, in bytes of the
// value.
func (f *File) word(path string, start, end int) source.Span {
	if o, ok := f.origins[path]; ok { // a value may be longer than its words: "76.2" is read as "76.2 mm"
		return f.File.Word(o.path, min(o.start+start, o.end), min(o.start+end, o.end))
	}
	return f.File.Word(path, start, end)
}

// key returns the place of the name at the end of a key path.
func (f *File) key(path string) source.Span {
	if span, ok := f.Key(path); ok {
		return span
	}
	return f.Find(path)
}

// spoken makes the long form of the phrase at a path, and remembers where the
// words of each key stand.
func (f *File) spoken(path string, said []wording) map[string]any {
	table := make(map[string]any, len(said))
	outer, inPhrase := f.origins[path]
	for _, w := range said {
		o := origin{path, w.start, w.end}
		if w.element != "" {
			o.path = join(path, w.element)
		}
		if inPhrase {
			o = origin{outer.path, outer.start + w.start, outer.start + w.end}
		}
		f.origins[join(path, w.key)] = o
		table[w.key] = w.value
	}
	return table
}

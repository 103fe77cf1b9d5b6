// Package source reads one TOML text and remembers where everything in it
// stands.
//
// A text is walked and checked before it is decoded: the decoder merges tables
// that TOML 1.0 keeps apart, and a small hostile text can make it ask for
// gigabytes, so it only ever sees what the walk has passed. The walk records
// the place of each key and value, which is how a finding, many steps later,
// gets its line and column.
package source

import (
	"bytes"
	"cmp"
	"errors"
	"fmt"
	"slices"
	"strings"
	"unicode/utf8"

	"github.com/BurntSushi/toml"
)

// What a text may hold. A spec written by hand stays far below all of them;
// they are there so that no text costs more than a moment to read.
const (
	MaxSize    = 1 << 20 // bytes in a text
	MaxDepth   = 16      // names and element numbers in the path of a value
	MaxParts   = 8       // names in one dotted key or table header
	MaxEntries = 20000   // keys and array elements in a text
	MaxString  = 4096    // bytes in a string
	MaxName    = 48      // characters in one name of a key
)

// A Problem is a shape error: what is wrong, and what would be right.
type Problem struct {
	Path    string // key path of what is wrong, or of the table that holds it
	Span    Span   // where it stands
	Message string // what is wrong
	Want    string // what would be right; may be empty
}

// A File is one text that was read.
type File struct {
	Name string         // the name it goes by in reports
	Text []byte         // the text, without its byte order mark; nil if it was too large
	BOM  bool           // whether a byte order mark stood before the text
	Root map[string]any // the decoded text; nil if Parse told of a problem

	root  *node
	index index
}

// Parse checks and decodes a text in TOML 1.0; what 1.1 adds to it is refused
// in tables and let pass in times and escapes. All problems of the text are told at once,
// in the order of their places; only a syntax error hides what follows it. The
// file is never nil, so that a place can be told for each problem; its Root is
// nil unless there are none.
func Parse(name string, text []byte) (*File, []Problem) {
	f := &File{Name: name, root: &node{kind: explicitTable}}
	if len(text) > MaxSize {
		f.index = newIndex(nil)
		return f, []Problem{{
			Message: fmt.Sprintf("the file is larger than %d KiB", MaxSize>>10),
			Want:    "a spec written by hand, split into car, driveline and shop",
		}}
	}
	f.Text, f.BOM = bytes.CutPrefix(text, []byte("\xef\xbb\xbf"))
	f.index = newIndex(f.Text)
	if at := invalidUTF8(f.Text); at >= 0 {
		return f, []Problem{{
			Span:    Span{at, at + 1},
			Message: fmt.Sprintf("byte 0x%02x is not UTF-8 text", f.Text[at]),
			Want:    "a file saved as UTF-8",
		}}
	}

	problems := walk(f)
	if len(problems) == 0 {
		if _, err := toml.Decode(string(f.Text), &f.Root); err != nil {
			f.Root = nil
			problems = append(problems, decodeProblem(f, err))
		}
	}
	slices.SortStableFunc(problems, func(a, b Problem) int { return cmp.Compare(a.Span.Start, b.Span.Start) })
	return f, problems
}

// invalidUTF8 returns the offset of the first byte that is not part of a
// character, or -1.
func invalidUTF8(text []byte) int {
	if utf8.Valid(text) {
		return -1
	}
	for at := 0; ; {
		r, n := utf8.DecodeRune(text[at:])
		if r == utf8.RuneError && n <= 1 {
			return at
		}
		at += n
	}
}

// decodeProblem places an error of the decoder. The walk is meant to have
// found everything that the decoder refuses, so this is seldom seen.
func decodeProblem(f *File, err error) Problem {
	p := Problem{Message: "this cannot be decoded: " + err.Error()}
	if pe, ok := errors.AsType[toml.ParseError](err); ok {
		start := min(max(pe.Position.Start, 0), len(f.Text))
		p.Span = Span{start, min(start+max(pe.Position.Len, 0), len(f.Text))}
		p.Message = "this cannot be decoded: " + strings.TrimSuffix(pe.Message, ".")
	}
	return p
}

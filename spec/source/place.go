package source

import (
	"bytes"
	"sort"
)

// A Span is a stretch of text in byte offsets, counted after a byte order mark
// was taken off. End is one past the last byte.
type Span struct{ Start, End int }

// A Place is a span as an editor counts it: lines and columns from 1, columns
// in characters (code points), and the end one past the last character.
type Place struct{ Line, Column, EndLine, EndColumn int }

// blockSize is how many bytes share one entry of index.characters.
const blockSize = 1024

// An index turns byte offsets into lines and columns at a cost that depends on
// neither the length of the text nor that of the line.
type index struct {
	text       []byte
	lines      []int // offset at which each line begins
	characters []int // characters that begin before each block of blockSize bytes
}

func newIndex(text []byte) index {
	x := index{text: text, lines: []int{0}}
	count := 0
	for i, b := range text {
		if i%blockSize == 0 {
			x.characters = append(x.characters, count)
		}
		if begins(b) {
			count++
		}
		if b == '\n' {
			x.lines = append(x.lines, i+1)
		}
	}
	x.characters = append(x.characters, count)
	return x
}

// begins reports whether b is the first byte of a character in UTF-8.
func begins(b byte) bool { return b&0xC0 != 0x80 }

// line returns the line that holds an offset, from 1.
func (x *index) line(at int) int {
	return sort.SearchInts(x.lines, at+1)
}

// charactersBefore counts the characters that begin before an offset.
func (x *index) charactersBefore(at int) int {
	block := at / blockSize
	count := x.characters[block]
	for _, b := range x.text[block*blockSize : at] {
		if begins(b) {
			count++
		}
	}
	return count
}

func (x *index) position(at int) (line, column int) {
	at = min(max(at, 0), len(x.text))
	line = x.line(at)
	return line, x.charactersBefore(at) - x.charactersBefore(x.lines[line-1]) + 1
}

// Place tells where a span stands. Offsets outside the text are taken as its
// start or end.
func (f *File) Place(s Span) Place {
	var p Place
	p.Line, p.Column = f.index.position(s.Start)
	p.EndLine, p.EndColumn = f.index.position(max(s.Start, s.End))
	return p
}

// Line returns line n of the text, from 1, without its line end; "" if there
// is no such line.
func (f *File) Line(n int) string {
	if n < 1 || n > len(f.index.lines) {
		return ""
	}
	line, _, _ := bytes.Cut(f.Text[f.index.lines[n-1]:], []byte("\n"))
	return string(bytes.ToValidUTF8(bytes.TrimSuffix(line, []byte("\r")), []byte("\uFFFD")))
}

package report

import (
	"bytes"
	"encoding/json"
	"io"
	"iter"
	"strings"
)

// jsonIndent is what each level of JSON is indented by.
const jsonIndent = "  "

// writeJSON writes a value as JSON on lines. Of the lists that it holds, the empty
// ones with the given keys are filled in an element at a time: they grow with a
// fleet, and are never all there as values or as text. encoding/json cannot do it: it
// makes the whole text first.
func writeJSON(w io.Writer, v any, lists map[string]iter.Seq[any]) error {
	text, err := json.MarshalIndent(v, "", jsonIndent)
	if err != nil {
		return err
	}
	for line := range bytes.Lines(append(text, '\n')) {
		// A text has no line end of its own, so a line that begins with a key is one.
		key, rest, isList := strings.Cut(strings.TrimLeft(string(line), " "), `": []`)
		list := lists[strings.TrimPrefix(key, `"`)]
		if !isList || list == nil {
			if _, err := w.Write(line); err != nil {
				return err
			}
			continue
		}
		indent := string(line[:bytes.IndexByte(line, '"')])
		if err := writeList(w, indent, indent+key+`": [`, list, "]"+rest); err != nil {
			return err
		}
	}
	return nil
}

// writeList writes what begins a list, its elements, and what ends it.
func writeList(w io.Writer, indent, begin string, list iter.Seq[any], end string) error {
	before := begin + "\n"
	for each := range list {
		text, err := json.MarshalIndent(each, indent+jsonIndent, jsonIndent)
		if err != nil {
			return err
		}
		if _, err := io.WriteString(w, before+indent+jsonIndent+string(text)); err != nil {
			return err
		}
		before = ",\n"
	}
	if before == ",\n" { // there were elements
		begin = "\n" + indent
	}
	_, err := io.WriteString(w, begin+end)
	return err
}

// itself converts nothing.
func itself[T any](one T) T { return one }

// lazily converts a list, each when its turn comes.
func lazily[A, B any](all []A, convert func(A) B) iter.Seq[any] {
	return func(yield func(any) bool) {
		for _, one := range all {
			if !yield(convert(one)) {
				return
			}
		}
	}
}

// chain is one list after the other.
func chain(lists ...iter.Seq[any]) iter.Seq[any] {
	return func(yield func(any) bool) {
		for _, list := range lists {
			for one := range list {
				if !yield(one) {
					return
				}
			}
		}
	}
}

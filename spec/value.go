package spec

import (
	"fmt"
	"slices"
	"strconv"
	"strings"
	"time"

	"fitup/spec/unit"
)

// Value is one written value in one of the four states. V holds only when State
// is Given. Text is what the author wrote, without the mark of a guess.
type Value[T any, G grammar[T]] struct {
	State State
	Guess bool // written with "~": estimated, not measured
	Text  string
	V     T
}

// A grammar reads one kind of value and says what it looks like in the document
// that rules see. Its zero value is ready to use.
type grammar[T any] interface {
	// Read takes the TOML value: string, int64, float64, bool, time.Time,
	// []any or map[string]any. A *unit.Error gives the place of a bad word
	// within a string.
	Read(raw any) (T, error)
	// Document is the value as rules see it: SI numbers, strings, arrays.
	Document(T) any
	// Kind names the form in messages and schemas.
	Kind() Kind
}

// Kind describes a form of value to people and to schema makers.
type Kind struct {
	Name      string         // "length", "thread", "one of a list"
	Example   string         // a value that loads
	Words     []string       // the closed list, for a choice
	Dimension unit.Dimension // for quantities
	Pattern   func() string  // of a written value, or of each of a list; nil where only the loader knows
	TOML      string         // TOML/JSON type of the written value: "string", "number", "integer", "boolean", "array"
	Document  string         // JSON type in the document: "number", "string", "boolean", "positions", "strings", "range", "position"
}

// Given reports whether there is a value to work with.
func (v Value[T, G]) Given() bool { return v.State == Given }

// Or returns the value, or alternative where none is given.
func (v Value[T, G]) Or(alternative T) T {
	if v.State == Given {
		return v.V
	}
	return alternative
}

// Usually returns the value, or what is usual where nothing is said. One that is
// asked is not known, whatever is usual.
func (v Value[T, G]) Usually(usual T) T {
	if v.State == Asked {
		var unknown T
		return unknown
	}
	return v.Or(usual)
}

// Decode reads a TOML value into v; see decode.go for who calls it.
func (v *Value[T, G]) Decode(raw any) error {
	*v = Value[T, G]{}
	if text, ok := raw.(string); ok {
		if state, ok := stateWords[text]; ok {
			v.State = state
			return nil
		}
	}
	if list, ok := raw.([]any); ok && len(list) == 0 {
		return &unit.Error{Problem: "the list is empty", Want: `what is in it, or "none" if there is nothing`}
	}
	var g G
	plain, marks := unmarked(raw, g.Kind)
	read, err := g.Read(plain)
	if err != nil {
		return pastMarks(err, marks)
	}
	v.State, v.V, v.Text = Given, read, asWritten(plain)
	v.Guess = slices.Max(marks) > 0
	return nil
}

// unmarked takes the "~" of a guess off a value, or off each element of a list.
// It returns how many bytes it took off each.
func unmarked(raw any, kind func() Kind) (plain any, marks []int) {
	switch raw := raw.(type) {
	case string:
		text, found := strings.CutPrefix(raw, "~")
		if !found {
			return raw, []int{0}
		}
		text = strings.TrimLeft(text, " ")
		return unquoted(text, kind().TOML), []int{len(raw) - len(text)}
	case []any:
		list, marks := make([]any, len(raw)), make([]int, max(1, len(raw)))
		for i, each := range raw {
			list[i] = each
			if text, ok := each.(string); ok {
				element, n := unmarked(text, kind)
				list[i], marks[i] = element, n[0]
			}
		}
		return list, marks
	}
	return raw, []int{0}
}

// unquoted gives the guess of a plain number or flag the TOML type that it has
// without the mark: there is no other way to write one than in quotes.
func unquoted(text, tomlType string) any {
	switch tomlType {
	case "integer", "number":
		if n, err := strconv.ParseInt(text, 10, 64); err == nil {
			return n
		}
		if n, err := strconv.ParseFloat(text, 64); err == nil && tomlType == "number" {
			return n
		}
	case "boolean":
		if text == "true" || text == "false" {
			return text == "true"
		}
	}
	return text
}

// pastMarks moves the place of a bad word past the "~" that was cut off.
func pastMarks(err error, marks []int) error {
	switch bad := err.(type) {
	case *elementError:
		return &elementError{bad.Index, pastMarks(bad.Err, marks[bad.Index:])}
	case *unit.Error:
		moved := *bad
		moved.Start += marks[0]
		moved.End += marks[0]
		return &moved
	}
	return err
}

// asWritten is a value's text: what stands between the quotes, or the bare
// number, flag or date; "" for a list.
func asWritten(raw any) string {
	switch raw := raw.(type) {
	case string:
		return raw
	case time.Time:
		return raw.Format(time.DateOnly)
	case int64, float64, bool:
		return fmt.Sprint(raw)
	case []any:
		each := make([]string, len(raw))
		for i, item := range raw {
			each[i] = asWritten(item)
		}
		return strings.Join(each, "; ")
	}
	return ""
}

// Leaf is what decoding, the document and schemas need of any Value.
type Leaf interface {
	Decode(raw any) error
	Said() State
	Guessed() bool
	Written() (text, unit string)
	Document() any
	Kind() Kind
}

// Said is the state of the value.
func (v *Value[T, G]) Said() State { return v.State }

// Guessed reports whether the author marked it "~".
func (v *Value[T, G]) Guessed() bool { return v.Guess }

// Kind describes the form of the value.
func (v *Value[T, G]) Kind() Kind { var g G; return g.Kind() }

// Document is the value as rules see it; only for a given value.
func (v *Value[T, G]) Document() any { var g G; return g.Document(v.V) }

// Written is the text as written and the author's unit, for messages.
func (v *Value[T, G]) Written() (text, unitSymbol string) {
	switch q := any(v.V).(type) {
	case unit.Quantity:
		return v.Text, q.Unit
	case unit.Range:
		return v.Text, q.Unit
	case unit.At:
		return v.Text, q.Value.Unit
	case unit.Position:
		return v.Text, q.Unit
	}
	return v.Text, ""
}

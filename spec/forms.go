package spec

import (
	"fmt"
	"regexp"
	"strings"
	"time"

	"fitup/spec/nearest"
	"fitup/spec/unit"
)

// Forms of value that are not plain quantities.
type (
	Text     = Value[string, text]
	Flag     = Value[bool, flag]
	Number   = Value[float64, number]
	Whole    = Value[int, whole]
	Numbers  = Value[[]float64, numbers]
	Label    = Value[unit.Date, label[made]]  // a date, or the month or year a label gives; read as the first day
	LastDay  = Value[unit.Date, label[until]] // the same, read as the last day
	Position = Value[unit.Position, position]
	Box      = Value[[2]unit.Position, box]
	Thread   = Value[unit.Thread, thread]
	Size     = Value[string, size] // a size as the trade names it: -8, 38 mm, 3/8-24, size-24
	Wire     = Value[unit.Wire, wire]
	Names    = Value[[]string, names] // one name or a list of names of things in this file
	Ref      = Value[string, ref]     // the name of one thing
	Life     = Value[[]Span, life]
)

// Choice is a word from a closed list.
type Choice[W vocabulary] = Value[string, choice[W]]

// Choices is one or more words from a closed list.
type Choices[W vocabulary] = Value[[]string, choices[W]]

type text struct{}

func (text) Read(raw any) (string, error) { return needText(raw, "text in quotes") }
func (text) Document(s string) any        { return s }
func (text) Kind() Kind {
	return Kind{Name: "text", Example: "text", TOML: "string", Document: "string"}
}

type flag struct{}

func (flag) Read(raw any) (bool, error) {
	if b, ok := raw.(bool); ok {
		return b, nil
	}
	return false, wrongType(raw, "true or false, without quotes")
}
func (flag) Document(b bool) any { return b }
func (flag) Kind() Kind {
	return Kind{Name: "true or false", Example: "true", TOML: "boolean", Document: "boolean"}
}

type number struct{}

func (number) Read(raw any) (float64, error) {
	switch n := raw.(type) {
	case int64:
		return finite(float64(n))
	case float64:
		return finite(n)
	}
	return 0, wrongType(raw, "a plain number, without quotes or unit")
}
func (number) Document(n float64) any { return n }
func (number) Kind() Kind {
	return Kind{Name: "number", Example: "1.5", TOML: "number", Document: "number"}
}

func finite(n float64) (float64, error) {
	if n-n != 0 {
		return 0, &unit.Error{Problem: "not a number to calculate with", Want: "write a plain number such as 1.5"}
	}
	if n < 0 {
		return 0, &unit.Error{Problem: "a number below nothing", Want: "write it without a sign"}
	}
	return n, nil
}

type whole struct{}

func (whole) Read(raw any) (int, error) {
	if n, ok := raw.(int64); ok && n >= 0 && n < 1<<31 {
		return int(n), nil
	}
	return 0, wrongType(raw, "a whole number, without quotes")
}
func (whole) Document(n int) any { return n }
func (whole) Kind() Kind {
	return Kind{Name: "whole number", Example: "2", TOML: "integer", Document: "number"}
}

type numbers struct{}

func (numbers) Read(raw any) ([]float64, error) {
	list, ok := raw.([]any)
	if !ok {
		return nil, wrongType(raw, "a list of plain numbers such as [2.8, 2.0, 1.0]")
	}
	out := make([]float64, len(list))
	for i, each := range list {
		n, err := number{}.Read(each)
		if err != nil {
			return nil, inList(err, true, i)
		}
		out[i] = n
	}
	return out, nil
}
func (numbers) Document(ns []float64) any {
	out := make([]any, len(ns))
	for i, n := range ns {
		out[i] = n
	}
	return out
}
func (numbers) Kind() Kind {
	return Kind{Name: "list of numbers", Example: "[2.8, 2.0, 1.0]", TOML: "array", Document: "numbers"}
}

// labelled says how a month or a year on a label becomes a day.
type labelled interface{ Day(unit.Date) time.Time }

type (
	made  struct{}
	until struct{}
)

func (made) Day(d unit.Date) time.Time  { return d.First() }
func (until) Day(d unit.Date) time.Time { return d.Last() }

type label[L labelled] struct{}

func (label[L]) Read(raw any) (unit.Date, error) {
	switch v := raw.(type) {
	case time.Time:
		return unit.ParseDate(v.Format(time.DateOnly))
	case string:
		return unit.ParseDate(v)
	}
	return unit.Date{}, wrongType(raw, "a date such as 2025-03-14, or what the label gives: \"2025-03\" or \"2025\"")
}
func (label[L]) Document(d unit.Date) any { var l L; return l.Day(d).Format(time.DateOnly) }
func (label[L]) Kind() Kind {
	return Kind{Name: "date", Example: "2025-03", Pattern: unit.DatePattern, TOML: "date or string", Document: "string"}
}

type position struct{}

func (position) Read(raw any) (unit.Position, error) {
	s, err := needText(raw, "three distances in one string such as \"-391, 216, 277 mm\"")
	if err != nil {
		return unit.Position{}, err
	}
	return unit.ParsePosition(s)
}
func (position) Document(p unit.Position) any { return []any{p.XYZ[0], p.XYZ[1], p.XYZ[2]} }
func (position) Kind() Kind {
	return Kind{Name: "position", Example: "-391, 216, 277 mm", Dimension: unit.Length, Pattern: unit.PositionPattern, TOML: "string", Document: "position"}
}

type box struct{}

func (box) Read(raw any) ([2]unit.Position, error) {
	list, ok := raw.([]any)
	if !ok || len(list) != 2 {
		return [2]unit.Position{}, wrongType(raw, "two opposite corners such as [\"0, -230, -130 mm\", \"590, 250, 520 mm\"]")
	}
	var corners [2]unit.Position
	for i, each := range list {
		p, err := position{}.Read(each)
		if err != nil {
			return corners, inList(err, true, i)
		}
		corners[i] = p
	}
	return corners, nil
}
func (box) Document(b [2]unit.Position) any {
	return []any{position{}.Document(b[0]), position{}.Document(b[1])}
}
func (box) Kind() Kind {
	return Kind{Name: "box", Example: "[\"0, -230, -130 mm\", \"590, 250, 520 mm\"]", Dimension: unit.Length, Pattern: unit.PositionPattern, TOML: "array", Document: "positions"}
}

type thread struct{}

func (thread) Read(raw any) (unit.Thread, error) {
	s, err := needText(raw, "a thread such as \"M10x1.5\" or \"3/8-24\"")
	if err != nil {
		return unit.Thread{}, err
	}
	return unit.ParseThread(s)
}

// Document gives rules the parts of a thread apart, so that they compare
// figures and never text.
func (thread) Document(t unit.Thread) any {
	return map[string]any{"system": string(t.System), "major": t.Major, "pitch": t.Pitch, "text": t.String()}
}
func (thread) Kind() Kind {
	return Kind{Name: "thread", Example: "M10x1.5", TOML: "string", Document: "thread"}
}

// size reads what a fitting or hose is sold as. It is kept as text: what it
// measures depends on the form of the end.
type size struct{}

var sizeForm = regexp.MustCompile(`^(?:size-\d+|M\d+(?:\.\d+)?)$`)

func (size) Read(raw any) (string, error) {
	s, err := needText(raw, "a size such as \"-8\", \"38 mm\", \"3/8-24\" or \"size-24\"")
	if err != nil {
		return "", err
	}
	if strings.HasPrefix(s, "-") {
		_, err := unit.ParseDash(s)
		return s, err
	}
	if sizeForm.MatchString(s) {
		return s, nil
	}
	if _, err := unit.ParsePositive(s, unit.Length); err == nil {
		return s, nil
	}
	if _, err := unit.ParseThread(s); err == nil {
		return s, nil
	}
	return "", &unit.Error{Text: s, End: len(s), Problem: fmt.Sprintf("%q is not a size", s), Want: "write it like -8, 38 mm, M10x1, 3/8-24, 1/8-27 NPT or size-24"}
}
func (size) Document(s string) any { return s }
func (size) Kind() Kind {
	return Kind{Name: "size", Example: "-8", TOML: "string", Document: "string"}
}

type wire struct{}

func (wire) Read(raw any) (unit.Wire, error) {
	s, err := needText(raw, "a wire size such as \"2.5 mm2\" or \"18 AWG\"")
	if err != nil {
		return unit.Wire{}, err
	}
	return unit.ParseWire(s)
}
func (wire) Document(w unit.Wire) any { return w.Area }
func (wire) Kind() Kind {
	return Kind{Name: "wire size", Example: "2.5 mm2", Dimension: unit.Area, Pattern: unit.WirePattern, TOML: "string", Document: "number"}
}

type names struct{}

func (names) Read(raw any) ([]string, error) {
	list, isList := raw.([]any)
	if !isList {
		list = []any{raw}
	}
	out := make([]string, len(list))
	for i, each := range list {
		s, err := needText(each, "a name in quotes, or a list of names")
		if err != nil {
			return nil, inList(err, isList, i)
		}
		out[i] = s
	}
	return out, nil
}
func (names) Document(list []string) any {
	out := make([]any, len(list))
	for i, s := range list {
		out[i] = s
	}
	return out
}
func (names) Kind() Kind {
	return Kind{Name: "one or more names", Example: "bonnet", TOML: "string or array", Document: "strings"}
}

type ref struct{}

func (ref) Read(raw any) (string, error) { return needText(raw, "the name of a thing, in quotes") }
func (ref) Document(s string) any        { return s }
func (ref) Kind() Kind {
	return Kind{Name: "name", Example: "driveline.fuel-in", TOML: "string", Document: "string"}
}

// Span is an amount of use or time: running hours, runs, or days since a date.
type Span struct {
	unit.Quantity
	Dimension unit.Dimension // unit.Count, unit.Duration (running time) or unit.Age (calendar time)
}

// life reads what a part lasts, or a clock when it was fitted: one span or a
// list. Of several limits the first used up counts.
type life struct{}

func (life) Read(raw any) ([]Span, error) {
	list, isList := raw.([]any)
	if !isList {
		list = []any{raw}
	}
	out := make([]Span, 0, len(list))
	for i, each := range list {
		span, err := readSpan(each)
		if err != nil {
			return nil, inList(err, isList, i)
		}
		out = append(out, span)
	}
	return out, nil
}

func readSpan(raw any) (Span, error) {
	s, err := needText(raw, `a life such as "40 h", "120 runs" or "2 years"`)
	if err != nil {
		return Span{}, err
	}
	for _, d := range []unit.Dimension{unit.Count, unit.Age} {
		if q, err := unit.ParseNonNegative(s, d); err == nil {
			return Span{q, d}, nil
		}
	}
	q, err := unit.ParseNonNegative(s, unit.Duration)
	return Span{q, unit.Duration}, err
}

func spanPattern() string {
	return unit.Count.Pattern(false) + "|" + unit.Age.Pattern(false) + "|" + unit.Duration.Pattern(false)
}

func (life) Document(spans []Span) any {
	out := make([]any, len(spans))
	for i, s := range spans {
		out[i] = map[string]any{"dimension": string(s.Dimension), "value": s.SI, "text": s.Text}
	}
	return out
}
func (life) Kind() Kind {
	return Kind{Name: "life", Example: "40 h", Pattern: spanPattern, TOML: "string or array", Document: "lives"}
}

type choice[W vocabulary] struct{}

func (choice[W]) Read(raw any) (string, error) {
	var w W
	s, err := textOr(raw, func() string { return "one of " + inWords(w.Words()) })
	if err != nil {
		return "", err
	}
	for _, word := range w.Words() {
		if s == word {
			return s, nil
		}
	}
	return "", unknownWord(s, w.Words())
}
func (choice[W]) Document(s string) any { return s }
func (choice[W]) Kind() Kind {
	var w W
	return Kind{Name: "one of a list", Example: w.Words()[0], Words: w.Words(), TOML: "string", Document: "string"}
}

type choices[W vocabulary] struct{}

func (choices[W]) Read(raw any) ([]string, error) {
	list, isList := raw.([]any)
	if !isList {
		list = []any{raw}
	}
	out := make([]string, 0, len(list))
	for i, each := range list {
		s, err := choice[W]{}.Read(each)
		if err != nil {
			return nil, inList(err, isList, i)
		}
		out = append(out, s)
	}
	return out, nil
}
func (choices[W]) Document(list []string) any { return names{}.Document(list) }
func (choices[W]) Kind() Kind {
	k := choice[W]{}.Kind()
	k.Name, k.TOML, k.Document = "one or more of a list", "string or array", "strings"
	return k
}

// unknownWord says which word was meant, or lists the choices.
func unknownWord(word string, known []string) *unit.Error {
	e := &unit.Error{Text: word, End: len(word)}
	if e.Problem, e.Want = notUsed(word, known); e.Want == "" {
		e.Want = "one of " + inWords(known)
	}
	return e
}

// hidden are words that hide a choice on which a joint depends. Unlike a unit
// that hides one, they are refused: nothing can be said of such a joint.
var hidden = map[string]string{
	"flare": "37-flare or 45-flare? they share threads in some sizes and leak on one another",
	"AN":    "37-flare, and the size as -8",
	"JIC":   "37-flare, and the size as -8",
	"NPT":   "taper-pipe, after a size such as 1/8-27 NPT",
}

// notUsed tells of a word outside a closed list. What was meant is "" if no word
// is near.
func notUsed(word string, known []string) (problem, meant string) {
	if way, ok := hidden[word]; ok {
		return fmt.Sprintf("%q alone does not say which", word), way
	}
	if near := nearest.To(word, known); near != "" {
		meant = fmt.Sprintf("did you mean %q?", near)
	}
	if meant == "" && '0' <= word[0] && word[0] <= '9' {
		return fmt.Sprintf("%q means nothing here", word), ""
	}
	return fmt.Sprintf("%q is not a word used here", word), meant
}

func inWords(list []string) string {
	quoted := make([]string, len(list))
	for i, s := range list {
		quoted[i] = `"` + s + `"`
	}
	return strings.Join(quoted, ", ")
}

func needText(raw any, want string) (string, error) {
	return textOr(raw, func() string { return want })
}

// textOr is needText for a want that costs more to make than the text to read.
func textOr(raw any, want func() string) (string, error) {
	if s, ok := raw.(string); ok {
		if strings.TrimSpace(s) == "" {
			return "", &unit.Error{Problem: "there is nothing in the quotes", Want: "a value, or leave the key out"}
		}
		return s, nil
	}
	return "", wrongType(raw, want())
}

// wrongType tells what was found in TOML's own words.
func wrongType(raw any, want string) error {
	return &unit.Error{Problem: "found " + tomlName(raw), Want: want}
}

func tomlName(raw any) string {
	switch v := raw.(type) {
	case string:
		return fmt.Sprintf("the text %q", v)
	case int64, float64:
		return fmt.Sprintf("the bare number %v", v)
	case bool:
		return fmt.Sprintf("%v", v)
	case time.Time:
		return "a date"
	case []any:
		return fmt.Sprintf("a list of %d", len(v))
	case []map[string]any:
		return "an array of tables"
	case map[string]any:
		return "a table"
	}
	return fmt.Sprintf("%T", raw)
}

// elementError is an error in one element of a list, so that it is placed
// there.
type elementError struct {
	Index int
	Err   error
}

func (e *elementError) Error() string { return e.Err.Error() }
func (e *elementError) Unwrap() error { return e.Err }

func inList(err error, isList bool, i int) error {
	if !isList {
		return err
	}
	return &elementError{Index: i, Err: err}
}

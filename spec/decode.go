package spec

import (
	"cmp"
	"errors"
	"fmt"
	"maps"
	"reflect"
	"regexp"
	"slices"
	"strings"

	"fitup/spec/nearest"
	"fitup/spec/source"
	"fitup/spec/unit"
)

// A decoding turns the map of one file into its types and collects everything
// that is wrong with it. A value that is wrong is left out, and all the rest is
// still decoded.
type decoding struct {
	file     *File
	problems []source.Problem
	notes    []source.Problem
}

// located is a raw value with its key path.
type located struct {
	path string
	raw  any
}

// decode fills the types from the file's map. It returns the problems of the
// file, and notes on values that hide a choice and were therefore loaded as
// asked.
func decode(f *File, to any) (problems, notes []source.Problem) {
	d := &decoding{file: f}
	d.value(located{"", f.Root}, to)
	tellPaths(f.Kind.owner(), "", to)
	return d.problems, d.notes
}

// tellPaths tells each table its path, said or not.
func tellPaths(owner, path string, value any) {
	switch value := value.(type) {
	case Leaf:
	case Collection:
		for _, name := range value.Names() {
			tellPaths(owner, join(path, name), value.Item(name))
		}
	default:
		if n := nodeOf(value); n != nil {
			n.Path = owner + path
		}
		v := reflect.ValueOf(value).Elem()
		for _, f := range fieldsOf(v.Type()) {
			if !f.leaf { // most are, and a path costs
				tellPaths(owner, join(path, f.Key), v.FieldByIndex(f.index).Addr().Interface())
			}
		}
	}
}

// value decodes into a pointer to a Leaf, a Collection or a table type.
func (d *decoding) value(in located, to any) {
	switch to := to.(type) {
	case Leaf:
		d.leaf(to, in)
	case Collection:
		d.collection(to, in)
	default:
		d.table(reflect.ValueOf(to).Elem(), in)
	}
}

// leaf decodes one value. A word that hides a choice makes it asked: somebody
// has to say which is meant, but nothing written is wrong.
func (d *decoding) leaf(value Leaf, in located) {
	err := value.Decode(in.raw)
	if bad, ok := errors.AsType[*unit.Error](err); ok && bad.HidesChoice {
		if value.Decode("?") == nil {
			d.notes = append(d.notes, d.wrong(in, err))
			return
		}
	}
	if err != nil {
		d.problems = append(d.problems, d.wrong(in, err))
	}
}

// wrong places the error of a value: at the bad word, else at the value.
func (d *decoding) wrong(in located, err error) source.Problem {
	path, raw := in.path, in.raw
	if element, ok := errors.AsType[*elementError](err); ok {
		path = join(path, fmt.Sprint(element.Index))
		if list, ok := raw.([]any); ok {
			raw = list[element.Index]
		}
	}
	p := source.Problem{Path: in.path, Span: d.file.Find(path), Message: err.Error()}
	if bad, ok := errors.AsType[*unit.Error](err); ok {
		p.Message, p.Want = bad.Problem, bad.Want
		if _, isText := raw.(string); isText && bad.End > bad.Start {
			p.Span = d.file.word(path, bad.Start, bad.End)
		}
	}
	return p
}

func (d *decoding) problem(path string, at source.Span, want, message string, args ...any) {
	d.problems = append(d.problems, source.Problem{Path: path, Span: at, Message: fmt.Sprintf(message, args...), Want: want})
}

// stateWords are written in place of a value or a whole table.
var stateWords = map[string]State{"?": Asked, "none": None}

var (
	nameForm = regexp.MustCompile(`^[a-z0-9][a-z0-9-]{0,47}$`)
	pinForm  = regexp.MustCompile(`^[A-Za-z0-9]{1,8}$`)
	reserved = []string{"driveline", "car", "shop", "none"}
)

// collection decodes a Table[T]: its state, or the named tables below it.
func (d *decoding) collection(c Collection, in located) {
	switch raw := in.raw.(type) {
	case string:
		if state, ok := stateWords[raw]; ok {
			c.say(state)
			return
		}
	case map[string]any:
		c.say(Given)
		for _, name := range slices.Sorted(maps.Keys(raw)) {
			if path := join(in.path, name); d.name(path, name, c) {
				d.value(located{path, raw[name]}, c.add(name))
			}
		}
		return
	}
	d.problem(in.path, d.file.Find(in.path),
		fmt.Sprintf("[%s.NAME] for each of them, or \"none\" if there is none", in.path), "found %s", tomlName(in.raw))
}

// name checks the name that an author gave to a table.
func (d *decoding) name(path, name string, of Collection) bool {
	_, isPin := of.(*Table[Pin])
	switch {
	case isPin:
		if !pinForm.MatchString(name) {
			d.problem(path, d.file.key(path), "up to 8 letters and digits, as the connector prints them", "%q is not the name of a pin", name)
			return false
		}
	case slices.Contains(reserved, name):
		d.problem(path, d.file.key(path), "another name", "%q has a meaning of its own in references", name)
		return false
	case !nameForm.MatchString(name):
		d.problem(path, d.file.key(path), "small letters, digits and hyphens, such as "+plainName(name), "%q is not a name", name)
		return false
	}
	return true
}

// plainName is the nearest thing to a name that is one.
func plainName(name string) string {
	plain := strings.Trim(strings.Map(func(r rune) rune {
		switch {
		case 'a' <= r && r <= 'z' || '0' <= r && r <= '9':
			return r
		case 'A' <= r && r <= 'Z':
			return r - 'A' + 'a'
		}
		return '-'
	}, name), "-")
	return cmp.Or(plain, "front-left")
}

// table decodes a struct: a phrase becomes its long form, unknown keys are told
// and dropped.
func (d *decoding) table(to reflect.Value, in located) {
	node := nodeOf(to.Addr().Interface())
	raw, isTable := in.raw.(map[string]any)
	if text, ok := in.raw.(string); ok && in.path != "" {
		if state, ok := stateWords[text]; ok && node != nil {
			node.State = state
			return
		}
	}
	if phrase, ok := to.Addr().Interface().(phrased); ok && !isTable {
		said, err := phrase.phrase(in.raw)
		if err != nil {
			d.problems = append(d.problems, d.wrong(in, err))
			return
		}
		raw, isTable = d.file.spoken(in.path, said), true
	}
	fields := fieldsOf(to.Type())
	if !isTable {
		d.problem(in.path, d.file.Find(in.path), tableDue(in.path, fields), "found %s", tomlName(in.raw))
		return
	}

	if node != nil {
		node.State = Given
	}
	for _, key := range slices.Sorted(maps.Keys(raw)) {
		path := join(in.path, key)
		i := slices.IndexFunc(fields, func(f Field) bool { return f.Key == key })
		if i < 0 {
			d.unknownKey(path, key, in.path, fields)
			continue
		}
		d.value(located{path, raw[key]}, to.FieldByIndex(fields[i].index).Addr().Interface())
	}
}

func tableDue(path string, fields []Field) string {
	known := keys(fields)
	if len(known) > 4 {
		known = known[:4]
	}
	due := fmt.Sprintf("a table [%s] with keys such as %s", path, strings.Join(known, ", "))
	if slices.ContainsFunc(fields, func(f Field) bool { return f.Required }) { // it cannot be left out
		return due
	}
	return due + ", or \"none\" if there is none"
}

func (d *decoding) unknownKey(path, key, table string, fields []Field) {
	want := ""
	if near := nearest.To(key, keys(fields)); near != "" {
		want = fmt.Sprintf("did you mean %q?", near)
	} else if owner := d.ownerOf(key); table == "" && owner != 0 {
		want = fmt.Sprintf("it belongs in the %s file", owner)
	} else {
		want = "its keys are " + strings.Join(keys(fields), ", ")
	}
	where := fmt.Sprintf("[%s]", table)
	if table == "" {
		where = fmt.Sprintf("a %s file", d.file.Kind)
	}
	d.problem(path, d.file.key(path), want, "%q is not a key of %s", key, where)
}

// ownerOf tells which other kind of file has a table of that name.
func (d *decoding) ownerOf(table string) FileKind {
	for _, kind := range fileKinds {
		if kind != d.file.Kind && slices.Contains(keys(fieldsOf(kind.typ())), table) {
			return kind
		}
	}
	return 0
}

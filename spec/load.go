package spec

import (
	"cmp"
	"fmt"
	"reflect"
	"slices"
	"strings"

	"fitup/spec/nearest"
	"fitup/spec/source"
	"fitup/spec/tree"
)

// FileKind says what a file describes. It is zero for a file that does not say.
type FileKind int

// The kinds of file, by the table that each must have.
const (
	KindCar FileKind = iota + 1
	KindDriveline
	KindShop
)

var fileKinds = []FileKind{KindCar, KindDriveline, KindShop}

// String is the table that makes a file one of its kind.
func (k FileKind) String() string {
	return [...]string{"spec", "car", "driveline", "shop"}[k]
}

// owner begins the paths of everything in a file of that kind where files are
// judged together; a car's own paths begin with nothing.
func (k FileKind) owner() string {
	if k == KindCar {
		return ""
	}
	return k.String() + "."
}

func (k FileKind) typ() reflect.Type {
	switch k {
	case KindCar:
		return reflect.TypeFor[Car]()
	case KindDriveline:
		return reflect.TypeFor[Driveline]()
	case KindShop:
		return reflect.TypeFor[Shop]()
	}
	panic("spec: a file of no kind has no type")
}

// A File is one spec file. Of Car, Driveline and Shop the one of its kind is
// set, as far as the text could be read.
type File struct {
	*source.File
	Kind      FileKind
	Car       *Car
	Driveline *Driveline
	Shop      *Shop

	// Notes are on values that are written but hide a choice, such as a rating
	// that does not say for what. They count as asked.
	Notes []source.Problem

	origins map[string]origin // words that a phrase gave to a key path
	index   index
}

// LoadFile reads one file of a tree and checks it by itself: text, types and
// references within the file. The problems are in the order of their places. The
// file is never nil; with problems it holds what could be read.
func LoadFile(t *tree.Tree, name string) (*File, []source.Problem) {
	text, err := t.Read(name)
	if err != nil {
		parsed, _ := source.Parse(name, nil)
		return &File{File: parsed}, []source.Problem{{Message: withoutName(err, name)}}
	}
	parsed, problems := source.Parse(name, text)
	f := &File{File: parsed, origins: map[string]origin{}}
	if len(problems) > 0 {
		return f, problems
	}
	if problems = f.findKind(); len(problems) > 0 {
		return f, problems
	}
	problems, f.Notes = decode(f, f.root())
	f.index = newIndex(f)
	problems = append(problems, f.check(problems)...)
	problems = append(problems, f.deadReferences()...)
	sortProblems(problems)
	sortProblems(f.Notes)
	return f, problems
}

// withoutName is the text of an error that begins with the name of the file it
// is about, less that name: a report prints it already.
func withoutName(err error, name string) string {
	return strings.TrimPrefix(err.Error(), name+": ")
}

func sortProblems(problems []source.Problem) {
	slices.SortStableFunc(problems, func(a, b source.Problem) int {
		return cmp.Or(cmp.Compare(a.Span.Start, b.Span.Start), cmp.Compare(a.Message, b.Message))
	})
}

// findKind sets the kind of a file, and makes the value of its type.
func (f *File) findKind() []source.Problem {
	var found []FileKind
	for _, kind := range fileKinds {
		if _, ok := f.Root[kind.String()]; ok {
			found = append(found, kind)
		}
	}
	switch {
	case len(found) == 0:
		return []source.Problem{f.noKind()}
	case len(found) > 1:
		slices.SortFunc(found, func(a, b FileKind) int {
			return cmp.Compare(f.key(a.String()).Start, f.key(b.String()).Start)
		})
		var problems []source.Problem
		for _, second := range found[1:] {
			problems = append(problems, source.Problem{
				Path: second.String(), Span: f.key(second.String()),
				Message: fmt.Sprintf("[%s] in the file of a %s", second, found[0]),
				Want:    fmt.Sprintf("one of [car], [driveline] and [shop]; move [%s] and what belongs to it to a file of its own", second),
			})
		}
		return problems
	}
	f.Kind = found[0]
	switch f.Kind {
	case KindCar:
		f.Car = &Car{}
	case KindDriveline:
		f.Driveline = &Driveline{}
	case KindShop:
		f.Shop = &Shop{}
	}
	return nil
}

func (f *File) noKind() source.Problem {
	p := source.Problem{Message: "none of the tables [car], [driveline] and [shop] is here", Want: "the one that says what the file describes, with a name in it"}
	names := make([]string, 0, len(f.Root))
	for name := range f.Root {
		names = append(names, name)
	}
	slices.SortFunc(names, func(a, b string) int { return cmp.Compare(f.key(a).Start, f.key(b).Start) })
	for _, name := range names {
		if near := nearest.To(name, []string{"car", "driveline", "shop"}); near != "" {
			p.Path, p.Span, p.Want = name, f.key(name), fmt.Sprintf("did you mean [%s]?", near)
			break
		}
	}
	return p
}

// root is a pointer to the value of the file's kind.
func (f *File) root() any {
	switch f.Kind {
	case KindCar:
		return f.Car
	case KindDriveline:
		return f.Driveline
	case KindShop:
		return f.Shop
	}
	panic("spec: a file of no kind has no root")
}

// Walk is Walk over the file, less what would be below a table that is not said.
func (f *File) Walk(visit func(path string, field Field, value any)) { f.walk(anyLeaf, visit) }

// walk is Walk for those leaves only that are wanted.
func (f *File) walk(wanted func(Field) bool, visit func(path string, field Field, value any)) {
	if f.Kind == 0 {
		return
	}
	walk("", Field{}, f.root(), wanted, func(path string, field Field, value any) bool {
		visit(path, field, value)
		n := nodeOf(value)
		return n == nil || n.State != Unsaid
	})
}

// problem is a problem at the value of a key path.
func (f *File) problem(path, want, message string, args ...any) source.Problem {
	return source.Problem{Path: path, Span: f.Find(path), Message: fmt.Sprintf(message, args...), Want: want}
}

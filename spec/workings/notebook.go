package workings

import (
	"reflect"
	"slices"
	"strings"
	"sync"

	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// A notebook is where the workings of one document are done. It knows where each
// value and figure of the document stands, so that a derivation names them by
// their address and no path is written twice.
type notebook struct {
	d      *document.Document
	tables []table
	cells  map[uintptr]cell         // by address, which no value leaves while d is there
	page   map[*document.Figure]int // index in trace
	trace  Trace
}

// A table is where the fields of one struct stand.
type table struct {
	*shape
	subject, path string
	whole         bool // it is missing: all that it would hold has its path
}

// A cell is one field of a table. A car that says much has some fifteen thousand,
// of which the workings ask for a fifth.
type cell struct{ table, field int32 }

// A place is where a value or figure stands.
type place struct {
	table, key string
	dimension  unit.Dimension // of a figure
}

func (p place) path() string { return join(p.table, p.key) }

func join(table, key string) string {
	if table == "" || key == "" {
		return table + key
	}
	return table + "." + key
}

func newNotebook(d *document.Document) *notebook {
	n := &notebook{d: d, page: map[*document.Figure]int{}, cells: make(map[uintptr]cell, 1<<14)}
	n.enter(reflect.ValueOf(d).Elem(), "", "", false)
	return n
}

// elsewhere is where a table would be written that a composition lacks.
var elsewhere = map[reflect.Type]string{
	reflect.TypeFor[spec.CarHead]():           "car",
	reflect.TypeFor[spec.Weighing]():          "weighing",
	reflect.TypeFor[spec.FuelCell]():          "fuel.cell",
	reflect.TypeFor[spec.FinalDrive]():        "final-drive",
	reflect.TypeFor[spec.Engine]():            "driveline.engine",
	reflect.TypeFor[spec.Tune]():              "driveline.tune",
	reflect.TypeFor[spec.Needs]():             "driveline.needs",
	reflect.TypeFor[spec.Clutch]():            "driveline.clutch",
	reflect.TypeFor[spec.Gearbox]():           "driveline.gearbox",
	reflect.TypeFor[spec.DrivelineWeighing](): "driveline.weighing",
	reflect.TypeFor[spec.Fit]():               "fits",
}

// named is where a subject names a thing in the shop file: if the thing is not
// there, that is what has to be written.
var named = map[reflect.Type]string{
	reflect.TypeFor[spec.HoseKind](): "hose.kind",
	reflect.TypeFor[spec.Stand]():    "stand",
	reflect.TypeFor[spec.Hoist]():    "hoist",
	reflect.TypeFor[spec.Sling]():    "sling",
	reflect.TypeFor[spec.Dolly]():    "dolly",
}

// enter notes the place of every value and figure below v, which stands at a
// path within the subject of a collection. All that is below a thing which is
// missing whole has the path of that thing.
func (n *notebook) enter(v reflect.Value, subject, path string, whole bool) {
	if v.Kind() == reflect.Pointer {
		if !v.IsNil() {
			n.enter(v.Elem(), subject, path, whole)
		}
		return
	}
	switch value := v.Addr().Interface().(type) {
	case spec.Collection:
		for _, name := range value.Names() {
			n.enter(reflect.ValueOf(value.Item(name)), subject, join(path, name), whole)
		}
		return
	case *document.Figure, spec.Leaf:
		return
	case *[]document.Port: // no working starts from a port: lines and joints hold theirs
		return
	}
	switch v.Kind() {
	case reflect.Slice:
		for i := range v.Len() {
			n.enter(v.Index(i), subject, path, whole)
		}
	case reflect.Struct:
		shape := shapeOf(v.Type())
		own, ok := shape.ownPath(v)
		if own != "" {
			path = own
			if shape.subject {
				subject = own
			}
		} else if at, absent := named[v.Type()]; ok && absent {
			path, whole = join(subject, at), true
		} else if at, absent := elsewhere[v.Type()]; ok && absent {
			path = at
			if at == "fits" { // each driveline has its own
				path = join(at, n.d.Given.Driveline)
			}
		}
		n.enterFields(v, subject, path, whole)
	}
}

func (n *notebook) enterFields(v reflect.Value, subject, path string, whole bool) {
	at := table{shapeOf(v.Type()), subject, path, whole}
	n.tables = append(n.tables, at)
	index, begin := int32(len(n.tables)-1), v.Addr().Pointer()
	for i, f := range at.fields {
		if f.kind != isTable {
			n.cells[begin+f.offset] = cell{index, int32(i)}
			continue
		}
		switch field := v.Field(f.index); {
		case f.embedded:
			n.enterFields(field, subject, path, whole)
		case whole, f.key == "calc":
			n.enter(field, subject, path, whole)
		default:
			n.enter(field, subject, join(path, f.key), false)
		}
	}
}

// placeOf finds the place of a value or figure by the pointer to it.
func (n *notebook) placeOf(pointer any) (place, bool) {
	c, ok := n.cells[reflect.ValueOf(pointer).Pointer()]
	if !ok {
		return place{}, false
	}
	t := n.tables[c.table]
	switch f := t.fields[c.field]; {
	case f.kind == isFigure:
		return place{t.subject, f.key, f.dimension}, true
	case t.whole:
		return place{table: t.path}, true
	default:
		return place{table: t.path, key: f.key}, true
	}
}

// A shape is what enter needs to know of a struct type.
type shape struct {
	path    []int // index of its path; nil if it carries none
	subject bool  // it is an element of a collection
	fields  []shapeField
}

const (
	isTable = iota
	isLeaf
	isFigure
)

type shapeField struct {
	index     int
	offset    uintptr
	key       string
	kind      int
	embedded  bool
	dimension unit.Dimension
}

// ownPath is the path that an object carries. The second result is false if its
// type carries none.
func (s *shape) ownPath(v reflect.Value) (string, bool) {
	if s.path == nil {
		return "", false
	}
	return v.FieldByIndex(s.path).String(), true
}

var shapes sync.Map // reflect.Type -> *shape

func shapeOf(t reflect.Type) *shape {
	if known, ok := shapes.Load(t); ok {
		return known.(*shape)
	}
	s := new(shape)
	if f, ok := t.FieldByName("Path"); ok && f.Type.Kind() == reflect.String {
		s.path = f.Index
	}
	_, s.subject = t.FieldByName("Subject")
	for i := range t.NumField() {
		f := t.Field(i)
		if !f.IsExported() {
			continue
		}
		field := shapeField{index: i, offset: f.Offset, embedded: f.Anonymous, dimension: unit.Dimension(f.Tag.Get("dim"))}
		field.key = f.Tag.Get("spec")
		if field.key == "" {
			field.key = strings.ReplaceAll(f.Tag.Get("json"), "_", "-")
		}
		switch {
		case f.Type == reflect.TypeFor[document.Figure]():
			field.kind, field.key = isFigure, f.Tag.Get("json")
		case reflect.PointerTo(f.Type).Implements(reflect.TypeFor[spec.Leaf]()):
			field.kind = isLeaf
		default:
			switch f.Type.Kind() {
			case reflect.Struct, reflect.Slice, reflect.Pointer:
			default:
				continue
			}
		}
		s.fields = append(s.fields, field)
	}
	shapes.Store(t, s)
	return s
}

// said is a value of the spec as an input. A pair such as "360 kW at 6900 rpm"
// gives its first number.
func (n *notebook) said(symbol string, leaf spec.Leaf) Input {
	at, ok := n.placeOf(leaf)
	if !ok {
		panic("workings: " + symbol + " is a value outside the document")
	}
	in := Input{Symbol: symbol, Path: at.path(), Dimension: leaf.Kind().Dimension}
	switch leaf.Said() {
	case spec.None:
		in.Text = "none"
		return in
	case spec.Unsaid, spec.Asked:
		in.missing, in.asked = []string{in.Path}, leaf.Said() == spec.Asked
		return in
	}
	in.Known, in.Guess = true, leaf.Guessed()
	if in.Guess {
		in.guesses = []string{in.Path}
	}
	in.Text, in.Unit = leaf.Written()
	switch v := leaf.Document().(type) {
	case float64:
		in.Value = v
	case int:
		in.Value = float64(v)
	case []any:
		if first, ok := v[0].(float64); ok { // no list is empty
			in.Value = first
		}
	}
	return in
}

// orNothing is a value of the spec of which "none" is nothing at all.
func (n *notebook) orNothing(symbol string, leaf spec.Leaf) Input {
	in := n.said(symbol, leaf)
	in.Known = in.Known || leaf.Said() == spec.None
	return in
}

// at is a written position as an input, and the position.
func (n *notebook) at(symbol string, p *spec.Position) (Input, r3.Vec) {
	in := n.said(symbol, p)
	in.Value = 0
	if !in.Known {
		return in, r3.Vec{}
	}
	x := p.V.XYZ
	in.At = x[:]
	return in, r3.Vec{X: x[0], Y: x[1], Z: x[2]}
}

// worked is a figure, worked out before, as an input.
func (n *notebook) worked(symbol string, f *document.Figure) Input {
	at, ok := n.placeOf(f)
	if !ok {
		panic("workings: " + symbol + " is a figure outside the document")
	}
	in := Input{
		Symbol: symbol, Path: at.path(), Value: f.Value, Known: f.Known, Dimension: at.dimension, Guess: f.Guessed,
		missing: f.Missing, guesses: f.Guesses,
	}
	if i, ok := n.page[f]; ok {
		in.Unit = n.trace[i].Unit
	}
	return in
}

// tabled is a figure from a table as an input.
func tabled(symbol string, value float64, d unit.Dimension, source, clause string) Input {
	return Input{Symbol: symbol, Value: value, Known: true, Dimension: d, Source: source, Clause: clause}
}

// standsFor is a written word as the figure that a table has for it.
func (in Input) standsFor(value float64, d unit.Dimension, source, clause string) Input {
	in.Value, in.Dimension, in.Source, in.Clause = value, d, source, clause
	return in
}

// lacking is an input that is not known until the paths are written.
func lacking(symbol string, paths ...string) Input { return Input{Symbol: symbol, missing: paths} }

// under gives an input another symbol.
func (in Input) under(symbol string) Input {
	in.Symbol = symbol
	return in
}

// first returns the first of several inputs that is known. One that is asked for
// comes before what would stand in for it. If none is known it returns the first, so
// that its path is told as missing.
func first(inputs ...Input) Input {
	for _, in := range inputs {
		if in.Known || in.asked {
			return in
		}
	}
	return inputs[0]
}

// A step is one working about to be done.
type step struct {
	to             *document.Figure
	formula        string
	source, clause string
	note           string
	unit           string // to print in; "" for that of the first input of the figure's dimension
	in             []Input
	by             func(x []float64) (float64, error) // the values of in, in order
}

// The functions below make a formula of a number of arguments into what a step
// asks for.

func one(f func(a float64) (float64, error)) func([]float64) (float64, error) {
	return func(x []float64) (float64, error) { return f(x[0]) }
}

func two(f func(a, b float64) (float64, error)) func([]float64) (float64, error) {
	return func(x []float64) (float64, error) { return f(x[0], x[1]) }
}

func three(f func(a, b, c float64) (float64, error)) func([]float64) (float64, error) {
	return func(x []float64) (float64, error) { return f(x[0], x[1], x[2]) }
}

func four(f func(a, b, c, d float64) (float64, error)) func([]float64) (float64, error) {
	return func(x []float64) (float64, error) { return f(x[0], x[1], x[2], x[3]) }
}

// same takes an input over as it is.
func same(x []float64) (float64, error) { return x[0], nil }

// highest takes the greatest input.
func highest(x []float64) (float64, error) { return slices.Max(x), nil }

func product(x []float64) (float64, error) {
	p := 1.0
	for _, v := range x {
		p *= v
	}
	return result("product", p)
}

func sum(x []float64) (float64, error) {
	s := 0.0
	for _, v := range x {
		s += v
	}
	return result("sum", s)
}

func difference(a, b float64) (float64, error) { return result("difference", a-b) }

func quotient(a, b float64) (float64, error) {
	if err := positive("divisor", b); err != nil {
		return 0, err
	}
	return result("quotient", a/b)
}

// always gives a value that was worked out together with others.
func always(v float64, err error) func([]float64) (float64, error) {
	return func([]float64) (float64, error) { return v, err }
}

// work does a step: it fills in the figure and writes the working down. A figure
// is unknown if an input is, guessed if an input is.
func (n *notebook) work(s step) {
	at, ok := n.placeOf(s.to)
	if !ok {
		panic("workings: " + s.formula + " goes to a figure outside the document")
	}
	w := Working{
		Subject: at.table, Name: at.key, Dimension: at.dimension,
		Formula: s.formula, Inputs: s.in, Source: s.source, Clause: s.clause, Note: s.note, Unit: s.unit,
	}
	w.Known = true
	values := make([]float64, len(s.in))
	var guesses []string
	for i, in := range s.in {
		values[i] = in.Value
		w.Known = w.Known && in.Known
		w.Guessed = w.Guessed || in.Guess
		w.Missing = withPaths(w.Missing, in.missing)
		guesses = withPaths(guesses, in.guesses)
		if w.Unit == "" && in.Dimension == w.Dimension {
			w.Unit = in.Unit
		}
	}
	if w.Known {
		v, err := s.by(values)
		if err == nil {
			v, err = result(strings.ReplaceAll(at.key, "_", " "), v)
		}
		if err != nil {
			w.Known = false
			w.note(err.Error())
		} else {
			w.Value = v
		}
	}
	w.Guessed = w.Guessed && w.Known
	n.page[s.to] = len(n.trace)
	n.trace = append(n.trace, w)
	*s.to = document.Figure{Value: w.Value, Known: w.Known, Guessed: w.Guessed, Missing: w.Missing}
	if w.Guessed {
		s.to.Guesses = guesses
	}
}

// withPaths adds the paths that are not there yet.
func withPaths(all, more []string) []string {
	for _, path := range more {
		if !slices.Contains(all, path) {
			all = append(all, path)
		}
	}
	return all
}

func (w *Working) note(text string) {
	if w.Note != "" {
		w.Note += "; "
	}
	w.Note += text
}

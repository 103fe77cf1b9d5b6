package workings

import (
	"math"
	"os"
	"reflect"
	"slices"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/policies/tables"
	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/unit"
)

// whole loads the pair of files that says something of every key.
func whole(t *testing.T) *document.Document {
	t.Helper()
	o := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../testdata/whole")})
	c, ok := o.Car("car.toml")
	if !ok {
		t.Fatal(o.Problems())
	}
	return document.Join(c, time.Date(2025, 9, 20, 0, 0, 0, 0, time.UTC))
}

// compositions are documents between which every figure is worked out.
func compositions(t *testing.T) map[string]*document.Document {
	standing, _ := specs{car: onStands("driveline = \"driveline\"\n" + fit + noWheels), driveline: lump, shop: standShop}.derive(t)
	rest, _ := specs{
		car: "[fits.it]\nfile = \"driveline.toml\"\nat = \"-640, 0, 250 mm\"\nnose-up = \"1 deg\"\n" +
			"[oil]\ncarries = \"engine oil\"\ntank.ports.out = { end = \"-12 male 37-flare\", at = \"-900, 0, 300 mm\" }\n" +
			"[lines.feed]\nhose = \"1 m of h12\"\nfrom = [\"oil.tank.out\", \"female 37-flare\"]\nto = [\"driveline.oil-in\", \"female 37-flare\"]\n" +
			"[circuits.pump]\nwire = \"2.5 mm2\"\nlength = \"2 m\"\nload = \"10 A\"\nreturn = \"wire\"\n" +
			"[safety]\nhand-extinguisher = { serviced = \"2025-01\" }\n",
		driveline: "[ports]\noil-in = { end = \"-12 male 37-flare\", at = \"100, 0, 0 mm\", takes = \"engine oil\" }\n[pumps.oil]\nflow = \"10 L/min at 6000 rpm\"\n",
		shop:      hoseShop,
	}.derive(t)
	next := whole(t)
	Derive(next)
	hangs, _ := whatHangs.derive(t)
	beneath := whatHangs
	beneath.car = strings.Replace(beneath.car, `["up", "forward"]`, `"down"`, 1)
	out, _ := beneath.derive(t)
	served, _ := systems.derive(t)
	parts, _ := singleParts.derive(t)
	return map[string]*document.Document{
		"whole": next, "standing": standing, "rest": rest, "hangs": hangs, "beneath": out, "systems": served, "parts": parts,
	}
}

// TestEveryFigureIsWorkedOut: no figure of the document is left to nobody.
func TestEveryFigureIsWorkedOut(t *testing.T) {
	done := map[string]bool{}
	for _, d := range compositions(t) {
		n := newNotebook(d)
		names := map[*document.Figure]string{}
		figuresOf(reflect.ValueOf(d).Elem(), "", names)
		for f, name := range names {
			if _, ok := n.placeOf(f); !ok {
				t.Errorf("%s: the notebook does not know it", name)
			}
			done[name] = done[name] || f.Known
		}
	}
	for name, known := range done {
		if !known {
			t.Errorf("%s: known in no composition", name)
		}
	}
	if len(done) < 60 {
		t.Errorf("%d figures found", len(done))
	}
}

// figuresOf names the figures below v by type and field.
func figuresOf(v reflect.Value, in string, names map[*document.Figure]string) {
	switch v.Kind() {
	case reflect.Pointer:
		if !v.IsNil() {
			figuresOf(v.Elem(), in, names)
		}
	case reflect.Slice:
		for i := range v.Len() {
			figuresOf(v.Index(i), in, names)
		}
	case reflect.Struct:
		if f, ok := v.Addr().Interface().(*document.Figure); ok {
			names[f] = in
			return
		}
		for i := range v.NumField() {
			if f := v.Type().Field(i); f.IsExported() {
				figuresOf(v.Field(i), v.Type().Name()+"."+f.Name, names)
			}
		}
	}
}

// TestTrace: every working says how it was come by, from sources that exist; what
// is unknown says why; what rests on a guess says so.
func TestTrace(t *testing.T) {
	for name, d := range compositions(t) {
		for _, w := range Derive(d) {
			where := name + ": " + w.Subject + " " + w.Name
			if w.Subject == "" || w.Name == "" || w.Formula == "" {
				t.Errorf("%s: %+v", where, w)
			}
			if _, ok := tables.Source(w.Source); !ok {
				t.Errorf("%s: source %q is not in policies/tables/sources", where, w.Source)
			}
			if math.IsNaN(w.Value) || math.IsInf(w.Value, 0) || !w.Known && w.Value != 0 {
				t.Errorf("%s: %g", where, w.Value)
			}
			if w.Dimension != "" && !w.Dimension.Known() {
				t.Errorf("%s: no dimension %q", where, w.Dimension)
			}
			if w.Unit != "" && !slices.Contains(w.Dimension.Units(), w.Unit) {
				t.Errorf("%s: %q is no unit of %s", where, w.Unit, w.Dimension)
			}
			guessed, unknown := false, false
			for _, in := range w.Inputs {
				guessed = guessed || in.Guess
				unknown = unknown || !in.Known
				if in.Path == "" && in.Source == "" && in.Known {
					t.Errorf("%s: %s comes from nowhere", where, in.Symbol)
				}
				if in.Source != "" {
					if _, ok := tables.Source(in.Source); !ok {
						t.Errorf("%s: %s: source %q is not in policies/tables/sources", where, in.Symbol, in.Source)
					}
				}
			}
			if w.Known && (w.Guessed != guessed || unknown || len(w.Missing) > 0) {
				t.Errorf("%s: guessed %v of inputs %v, missing %v", where, w.Guessed, guessed, w.Missing)
			}
			if !w.Known && !unknown && w.Note == "" {
				t.Errorf("%s: unknown, and nobody says why", where)
			}
		}
	}
}

// TestNothingSaid: a car and a driveline of which nothing is known give nothing,
// and every gap names what is to be written.
func TestNothingSaid(t *testing.T) {
	for name, s := range map[string]specs{
		"nothing": {car: "[fuel]\n[oil]\n[clutch]\n[weighing]\n[support]\n[electrics]\n[safety]\nseat = {}\n", driveline: "[engine]\n[tune]\n[gearbox]\n[clutch]\n"},
		"empty":   {car: "[fuel]\n[support.stands.x]\n"},
		"alone":   {driveline: "[engine]\n[lift.x]\n"},
	} {
		_, trace := s.derive(t)
		for _, w := range trace {
			if w.Known || w.Guessed || len(w.Missing) == 0 || strings.Contains(strings.Join(w.Missing, " "), "..") {
				t.Errorf("%s: %s %s: %+v", name, w.Subject, w.Name, w)
			}
		}
	}
}

func TestDeriveTwice(t *testing.T) {
	for name, d := range compositions(t) {
		first := Derive(d)
		if diff := cmp.Diff(first, Derive(d), cmp.AllowUnexported(Input{})); diff != "" {
			t.Errorf("%s, the second time: %s", name, diff)
		}
	}
	first := Derive(whole(t))
	if diff := cmp.Diff(first, Derive(whole(t)), cmp.AllowUnexported(Input{})); diff != "" {
		t.Errorf("another reading of the same files: %s", diff)
	}
}

func BenchmarkDerive(b *testing.B) {
	o := spec.NewOutfit(&tree.Tree{FS: os.DirFS("../testdata/whole")})
	c, _ := o.Car("car.toml")
	d := document.Join(c, time.Date(2025, 9, 20, 0, 0, 0, 0, time.UTC))
	for b.Loop() {
		Derive(d)
	}
}

// TestInputs: what an input tells of where it is from.
func TestInputs(t *testing.T) {
	_, trace := specs{car: "wheelbase = \"~94 in\"\n[weighing]\nfront-left = \"600 lb\"\nfront-right = \"600 lb\"\nrear-left = \"600 lb\"\nrear-right = \"600 lb\"\n"}.derive(t)
	w, _ := trace.find("car mass_behind_front")
	got := w.Inputs[4]
	want := Input{Symbol: "L", Path: "car.wheelbase", Value: 94 * 0.0254, Known: true, Dimension: unit.Length, Unit: "in", Text: "94 in", Guess: true, guesses: []string{"car.wheelbase"}}
	if diff := cmp.Diff(want, got, cmp.AllowUnexported(Input{})); diff != "" {
		t.Error(diff)
	}
	if w.Unit != "in" || !w.Guessed {
		t.Errorf("unit %q, guessed %v", w.Unit, w.Guessed)
	}
	if m, _ := trace.find("car mass"); m.Unit != "lb" || m.Guessed {
		t.Errorf("mass in %q, guessed %v", m.Unit, m.Guessed)
	}
}

package workings

import (
	"encoding/csv"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"slices"
	"strconv"
	"strings"
	"testing"

	"gonum.org/v1/gonum/spatial/r2"
	"gonum.org/v1/gonum/spatial/r3"

	"fitup/spec/unit"
)

// A record is one row of a table made with libraries from outside, by column.
type record struct {
	t    *testing.T
	line string
	cell map[string]string
}

// reference reads a table of testdata/published/reference, where make.py tells
// how it was made.
func reference(t *testing.T, name string, least int) []record {
	t.Helper()
	f, err := os.Open(filepath.Join("..", "..", "testdata", "published", "reference", name+".csv"))
	if err != nil {
		t.Fatal(err)
	}
	defer f.Close()
	in := csv.NewReader(f)
	in.Comment = '#'
	rows, err := in.ReadAll()
	if err != nil {
		t.Fatal(err)
	}
	if len(rows) <= least {
		t.Fatalf("%s: %d rows; %d were made", name, len(rows)-1, least)
	}
	var records []record
	for _, row := range rows[1:] {
		r := record{t: t, line: name + " " + strings.Join(row, ","), cell: map[string]string{}}
		for i, column := range rows[0] {
			r.cell[column] = row[i]
		}
		records = append(records, r)
	}
	return records
}

func (r record) number(text string) float64 {
	v, err := strconv.ParseFloat(text, 64)
	if err != nil {
		r.t.Fatalf("%s: %v", r.line, err)
	}
	return v
}

func (r record) get(column string) float64 {
	text, ok := r.cell[column]
	if !ok {
		r.t.Fatalf("%s: no column %q", r.line, column)
	}
	return r.number(text)
}

// list reads a cell of several numbers.
func (r record) list(column string) []float64 {
	var list []float64
	for _, text := range strings.Split(r.cell[column], ";") {
		list = append(list, r.number(text))
	}
	return list
}

// points reads a cell of several places.
func (r record) points(column string) []r3.Vec {
	var list []r3.Vec
	for _, text := range strings.Split(r.cell[column], ";") {
		p := [3]float64{}
		for i, word := range strings.Fields(text) {
			p[i] = r.number(word)
		}
		list = append(list, r3.Vec{X: p[0], Y: p[1], Z: p[2]})
	}
	return list
}

func (r record) plan(column string) []r2.Vec {
	var list []r2.Vec
	for _, p := range r.points(column) {
		list = append(list, r2.Vec{X: p.X, Y: p.Y})
	}
	return list
}

// near fails unless got is want to within the absolute tolerance.
func (r record) near(what string, got float64, err error, want, tolerance float64) {
	r.t.Helper()
	if err != nil {
		r.t.Errorf("%s: %s: %v", r.line, what, err)
	} else if !(math.Abs(got-want) <= tolerance) {
		r.t.Errorf("%s: %s is %v; the library has %v", r.line, what, got, want)
	}
}

// close is near, with a relative tolerance, for the figure in a column.
func (r record) close(column string, got float64, err error, tolerance float64) {
	r.t.Helper()
	want := r.get(column)
	r.near(column, got, err, want, tolerance*math.Abs(want))
}

func (r record) all(column string, got []float64, err error, tolerance float64) {
	r.t.Helper()
	want := r.list(column)
	if err == nil && len(got) != len(want) {
		err = fmt.Errorf("%d figures for %d", len(got), len(want))
	}
	if err != nil {
		r.t.Errorf("%s: %s: %v", r.line, column, err)
		return
	}
	for i := range want {
		r.near(column, got[i], nil, want[i], tolerance)
	}
}

func TestReferenceUnits(t *testing.T) {
	seen := map[unit.Dimension][]string{}
	for _, r := range reference(t, "units", 150) {
		d := unit.Dimension(r.cell["dimension"])
		seen[d] = append(seen[d], r.cell["unit"])
		q, err := unit.Parse(r.cell["value"]+" "+r.cell["unit"], d)
		r.close("gnu_units", q.SI, err, r.get("tolerance"))
		if r.cell["pint"] != "" {
			r.close("pint", q.SI, err, r.get("tolerance"))
		}
	}
	for _, d := range unit.Dimensions() {
		if d == unit.Age || d == unit.Count { // no physical unit
			continue
		}
		for _, symbol := range d.Units() {
			if d == unit.Ratio && symbol != "%" { // the plain number
				continue
			}
			if !slices.Contains(seen[d], symbol) {
				t.Errorf("%s in %s is in no row of units.csv", d, symbol)
			}
		}
	}
}

func TestReferenceWire(t *testing.T) {
	for _, r := range reference(t, "wire", 44) {
		w, err := unit.ParseWire(r.cell["awg"] + " AWG")
		d := math.Sqrt(4 * w.Area / math.Pi)
		r.close("gnu_units", d, err, 1e-8)
		r.near("fluids", d, err, r.get("fluids"), 0.0013e-3)
	}
}

func TestReferenceFriction(t *testing.T) {
	formulas := map[string]func(reynolds, roughness float64) (float64, error){"laminar": Friction, "Colebrook": Colebrook}
	for _, r := range reference(t, "friction", 50) {
		f, err := formulas[r.cell["formula"]](r.get("reynolds"), r.get("roughness"))
		r.close("friction", f, err, 1e-8)
	}
}

func TestReferenceDrops(t *testing.T) {
	for _, r := range reference(t, "drops", 80) {
		f, err := PipeDrop(
			Pipe{Bore: r.get("bore"), Length: r.get("length"), Roughness: r.get("roughness"), Losses: r.get("losses"), Rise: r.get("rise")},
			Liquid{Density: r.get("density"), Viscosity: r.get("viscosity")},
			r.get("flow"),
		)
		r.close("reynolds", f.Reynolds, err, 1e-8)
		r.near("drop", f.Drop, err, r.get("drop"), max(1e-7*math.Abs(r.get("drop")), 1e-3))
	}
}

func TestReferenceSupports(t *testing.T) {
	for _, r := range reference(t, "supports", 60) {
		weight, centre, at := r.get("weight"), r.plan("centre")[0], r.plan("supports")
		tolerance := 2e-6 * weight
		elastic, err := Reactions(weight, centre, at)
		r.all("elastic", elastic, err, tolerance)
		most, err := WorstReactions(weight, centre, at)
		r.all("worst", most, err, tolerance)
		polygon, err := SupportPolygon(at)
		if err != nil {
			t.Fatal(err)
		}
		margin, err := EdgeDistance(polygon, centre)
		r.close("margin", margin, err, 1e-6)
	}
}

func TestReferenceSlings(t *testing.T) {
	for _, r := range reference(t, "slings", 45) {
		weight, hook, eyes := r.get("weight"), r.points("hook")[0], r.points("eyes")
		tolerance := 1e-5 * weight
		if len(eyes) == 2 {
			tolerance = 1e-4 * weight
		}
		tensions, err := LegTensions(weight, hook, eyes)
		r.all("tensions", tensions, err, tolerance)
		most, err := WorstLegTensions(weight, hook, eyes)
		r.all("worst", most, err, tolerance)
	}
}

func TestReferenceHanging(t *testing.T) {
	for _, r := range reference(t, "hanging", 24) {
		eyes := r.points("eyes")
		h, err := Hang(r.points("centre")[0], eyes, r.list("lengths"))
		r.near("tilt", h.Tilt(), err, r.get("tilt"), 2e-4)
		level := make([]r3.Vec, len(eyes))
		for i, eye := range eyes {
			level[i] = h.Level(eye)
		}
		tensions, err := LegTensions(1000, r3.Vec{}, level)
		r.all("tensions", tensions, err, 0.5)
	}
}

func TestReferenceWhirling(t *testing.T) {
	for _, r := range reference(t, "whirling", 30) {
		w, err := WhirlingSpeed(Tube{Outer: r.get("outer"), Inner: r.get("inner")}, r.get("length"), r.get("modulus"), r.get("density"))
		r.close("speed", w, err, 5e-6)
	}
}

func TestReferenceBeams(t *testing.T) {
	for _, r := range reference(t, "beams", 30) {
		m, err := BeamMoment(r.get("load"), r.get("span"), r.get("at"), r.get("place"))
		r.close("moment", m, err, 1e-6)
	}
}

func TestReferenceClutch(t *testing.T) {
	for _, r := range reference(t, "clutch", 30) {
		radius, err := WearRadius(r.get("outer"), r.get("inner"))
		if err != nil {
			t.Fatal(err)
		}
		wear, err := ClutchTorque(int(r.get("faces")), r.get("friction"), r.get("clamp"), radius)
		r.close("wear", wear, err, 1e-8)
	}
}

func TestReferenceSections(t *testing.T) {
	kinds := map[string]func(side, wall float64) SquareHollow{"hot": HotFinished, "cold": ColdFormed}
	for _, r := range reference(t, "sections", 32) {
		s := kinds[r.cell["kind"]](r.get("side")/1000, r.get("wall")/1000)
		bend, err := s.SecondMoment()
		r.close("second_moment", bend*1e12, err, 2e-7)
	}
}

func TestReferenceTorsion(t *testing.T) {
	for _, r := range reference(t, "torsion", 20) {
		shaft := Tube{Outer: r.get("outer"), Inner: r.get("inner")}
		stress, err := TorsionStress(r.get("torque"), shaft, shaft.Outer)
		r.close("stress", stress, err, 1e-8)
	}
}

package drawing

import (
	"os"
	"strconv"
	"testing"

	"fitup/spec/document"
)

// height is where a value is on the axis of a chart, by the figures beside it.
func height(t *testing.T, marks []Mark, value float64) float64 {
	t.Helper()
	var at, figure []float64
	for _, m := range marks {
		if text, ok := m.(Text); ok && text.Anchor == End {
			v, err := strconv.ParseFloat(text.Lines[0], 64)
			if err != nil {
				t.Fatal(err)
			}
			at, figure = append(at, text.Box().Middle().Y), append(figure, v)
		}
	}
	last := len(at) - 1
	if last < 1 {
		t.Fatal("the chart has no figures at its axis")
	}
	return at[0] + (at[last]-at[0])*(value-figure[0])/(figure[last]-figure[0])
}

// drawnLine are the points of one line of a chart.
func drawnLine(t *testing.T, marks []Mark, of string) []Point {
	t.Helper()
	for _, m := range marks {
		if g, ok := m.(Group); ok && g.Of == of {
			return g.Marks[0].(Path).Points
		}
	}
	t.Fatalf("the chart has no line %q", of)
	return nil
}

func TestChartLinesStandByTheirAxis(t *testing.T) {
	for name, values := range map[string][2]float64{"above": {120, 430}, "through nothing": {-35, 80}, "below": {-12, -3}, "level": {7, 7}, "nothing": {0, 0}} {
		c := chart{title: "a", box: Box{Point{20, 10}, Point{70, 50}}, right: 100, lines: []line{{of: "one", name: "one", points: []Point{{0, values[0]}, {100, values[1]}}}}}
		marks, _ := c.draw()
		points := drawnLine(t, marks, "one")
		for i, x := range []float64{20, 70} {
			if want := height(t, marks, values[i]); !closeTo(points[i].Y, want, 1e-9) || points[i].X != x {
				t.Errorf("%s: %g is drawn at %v, the axis has it at %g, %g", name, values[i], points[i], x, want)
			}
			if !c.box.has(points[i]) {
				t.Errorf("%s: %g is drawn at %v, outside the chart", name, values[i], points[i])
			}
		}
	}
}

// TestRangeEndsWhereTheStagesAre holds the ends of the range to what was worked out
// for the stages there.
func TestRangeEndsWhereTheStagesAre(t *testing.T) {
	for _, car := range []string{"squall", "mizzle"} {
		d := derived(t, os.DirFS(root), "cars/"+car+".toml")
		s := newScene(d, "side", "")
		first, last := s.layout.Taken[0], s.layout.Taken[len(s.layout.Taken)-1]
		in, hoisting := s.calc(document.Raised), s.calc(document.Hoisting)
		if !closeTo(first.Margin, in.Margin.Value, 1e-9) || !closeTo(first.Left.Value, in.Left.Value, 1e-9) {
			t.Errorf("%s: the range begins at %g m, at least %g; raised it is %g, %g", car, first.Margin, first.Left.Value, in.Margin.Value, in.Left.Value)
		}
		worst := min(first.Left.Value, last.Left.Value)
		if !closeTo(worst, hoisting.Left.Value, 1e-9) {
			t.Errorf("%s: the range comes down to %g m, hoisting to %g", car, worst, hoisting.Left.Value)
		}
		for i := range d.Stands {
			if c := d.Stands[i].Calc; !closeTo(first.Loads[i], c.LoadIn.Value, 1e-9) {
				t.Errorf("%s: stand %s bears %g kg where the range begins, %g with the driveline in", car, d.Stands[i].Name, first.Loads[i], c.LoadIn.Value)
			}
		}
	}
}

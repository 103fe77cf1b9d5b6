package drawing

import (
	"encoding/xml"
	"errors"
	"io"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

// svgOf writes a drawing as a file and checks that it is well-formed XML.
func svgOf(t *testing.T, d Drawing) string {
	t.Helper()
	var out strings.Builder
	if err := d.SVG(&out, true); err != nil {
		t.Fatal(err)
	}
	decoder := xml.NewDecoder(strings.NewReader(out.String()))
	for {
		if _, err := decoder.Token(); errors.Is(err, io.EOF) {
			return out.String()
		} else if err != nil {
			t.Fatalf("%v in\n%s", err, out.String())
		}
	}
}

func TestHostileWordsStayText(t *testing.T) {
	hostile := "</title></svg><script>alert(1)</script>\x00\x1b\"'&]]>"
	d := Drawing{Name: "plan", Title: hostile, Text: []string{hostile}, Size: Point{100, 50}, Marks: []Mark{
		Group{Of: hostile, Marks: []Mark{Text{Lines: []string{hostile}}, Dimension{To: Point{40, 0}, Label: hostile}}},
	}}
	tame := d
	tame.Title, tame.Text = "title", []string{"text"}
	tame.Marks = []Mark{Group{Of: "of", Marks: []Mark{Text{Lines: []string{"line"}}, Dimension{To: Point{40, 0}, Label: "label"}}}}
	elements := func(svg string) (names []string) {
		decoder := xml.NewDecoder(strings.NewReader(svg))
		for {
			token, err := decoder.Token()
			if err != nil {
				return names
			}
			if start, ok := token.(xml.StartElement); ok {
				names = append(names, start.Name.Local)
			}
		}
	}
	if diff := cmp.Diff(elements(svgOf(t, tame)), elements(svgOf(t, d))); diff != "" {
		t.Errorf("elements of the tame drawing (-) and of the hostile one (+):\n%s", diff)
	}
}

func TestWrap(t *testing.T) {
	ten := Width("mmmmmmmmmm", 1)
	for _, c := range []struct {
		text string
		most int
		want []string
	}{
		{"", 3, nil},
		{"short", 3, []string{"short"}},
		{"mmmm mmmm mmmm", 3, []string{"mmmm mmmm", "mmmm"}},
		{"mmmm mmmmm-mmmm", 3, []string{"mmmm", "mmmmm-mmmm"}},
		{"mmmmmmm-mmmmmmm", 3, []string{"mmmmmmm-", "mmmmmmm"}},
		{"mmmmmmmmmmmmmmm", 3, []string{"mmmmmmmmmm", "mmmmm"}},
		{"mmmmmmmm mmmmmmmm mmmmmmmm", 2, []string{"mmmmmmmm", "mmmmmmmm…"}},
	} {
		if diff := cmp.Diff(c.want, Wrap(c.text, ten, 1, c.most)); diff != "" {
			t.Errorf("Wrap(%q): want -, got +\n%s", c.text, diff)
		}
	}
}

func TestDimensionReachesItsPoints(t *testing.T) {
	for _, c := range []struct {
		name string
		d    Dimension
		want [2]Point // ends of the dimension line
	}{
		{"above", Dimension{From: Point{10, 30}, To: Point{60, 30}, Off: -8}, [2]Point{{10, 22}, {60, 22}}},
		{"from right to left", Dimension{From: Point{60, 30}, To: Point{10, 40}, Off: -8}, [2]Point{{10, 22}, {60, 22}}},
		{"upright", Dimension{From: Point{10, 30}, To: Point{14, 80}, Off: 9, Upright: true}, [2]Point{{19, 30}, {19, 80}}},
		{"no room between", Dimension{From: Point{10, 30}, To: Point{12, 30}, Off: 5}, [2]Point{{4, 35}, {18, 35}}},
	} {
		line := c.d.marks()[2].(Path)
		if diff := cmp.Diff(c.want[:], line.Points); diff != "" {
			t.Errorf("%s: want -, got +\n%s", c.name, diff)
		}
	}
}

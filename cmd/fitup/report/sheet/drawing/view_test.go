package drawing

import (
	"io/fs"
	"math"
	"os"
	"slices"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

const root = "../../../../.."

// derived is the document of a car with the driveline that is in it.
func derived(t *testing.T, folder fs.FS, car string) *document.Document {
	t.Helper()
	outfit := spec.NewOutfit(&tree.Tree{FS: folder})
	c, ok := outfit.Car(car)
	if !ok || len(outfit.Problems()) > 0 {
		t.Fatalf("%s: %v", car, outfit.Problems())
	}
	d := document.Join(c, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
	workings.Derive(d)
	return d
}

// edited is a folder of testdata with words in its files exchanged, as
// strings.NewReplacer takes them.
func edited(t *testing.T, folder string, words ...string) fs.FS {
	t.Helper()
	out := fstest.MapFS{}
	for _, name := range []string{"car.toml", "abacus.toml", "shop.toml"} {
		text, err := os.ReadFile("testdata/" + folder + "/" + name)
		if err != nil {
			t.Fatal(err)
		}
		out[name] = &fstest.MapFile{Data: []byte(strings.NewReplacer(words...).Replace(string(text)))}
	}
	return out
}

// drawn are both views of a car.
func drawn(d *document.Document) []Drawing {
	plan, _ := Plan(d)
	side, _ := Side(d)
	return []Drawing{plan, side}
}

// spare are arrangements of the car of testdata/standing in which something is not
// written, with what each drawing must then ask for.
var spare = map[string]struct {
	words      []string // exchanged in the specs
	plan, side string
}{
	"stands":         {[]string{"[support.stands]\n", "[gaps]\n", "{ stand = \"tall\", at = \"0, 500, 100 mm\" }", "{}", "{ stand = \"tall\", at = \"0, -500, 100 mm\" }", "{}", "{ stand = \"tall\", at = \"-2000, 500, 100 mm\" }", "{}", "{ stand = \"tall\", at = \"-2000, -500, 100 mm\" }", "{}"}, "support.stands", "support.stands"},
	"place of one":   {[]string{"at = \"0, 500, 100 mm\"", "at = \"?\""}, "support.stands.front-left.at", "support.stands.front-left.at"},
	"weighing":       {[]string{"front-left  = \"330 kg\"\n", ""}, "weighing.front-left", "weighing.front-left"},
	"height":         {[]string{"height      = \"400 mm\"\n", ""}, "", "weighing.height"},
	"wheelbase":      {[]string{"wheelbase   = \"2000 mm\"\n", ""}, "car.wheelbase", "car.wheelbase"},
	"driveline mass": {[]string{"mass   = \"300 kg\"\n", ""}, "driveline.weighing.mass", "driveline.weighing.mass"},
	"rating":         {[]string{"rated      = \"1000 kg\"\n", ""}, "shop.stands.tall.rated", ""},
	"saddle":         {[]string{"saddle-height = \"400 mm\"\n", ""}, "", "support.stands.front-left.height"},
	"leg":            {[]string{"length = \"500 mm\", to = \"rear\"", "to = \"rear\""}, "", "shop.slings.pair.legs.rear.length"},
	"all":            {[]string{"[support]", "[gaps]\n#", "wheels-down   = \"none\"", "", "hoist         =", "#", "boom          =", "#", "sling         =", "#", "saddle-height =", "#", "[support.stands]\n", "", "front-left  = {", "#", "front-right = {", "#", "rear-left   = {", "#", "rear-right  = {", "#"}, "support.stands", "support.stands"},
	"way out":        {[]string{"[solids]\nbeam", "[gaps]\n#"}, "", "solids"},
}

func TestMissingFiguresAreAskedFor(t *testing.T) {
	for name, c := range spare {
		views := drawn(derived(t, edited(t, "standing", c.words...), "car.toml"))
		for i, want := range []string{c.plan, c.side} {
			var lettered []string
			for _, text := range textsOf(views[i].Marks) {
				lettered = append(lettered, strings.Join(text.Lines, " "))
			}
			all := strings.Join(lettered, "\n")
			if want == "" {
				if strings.Contains(all, "measure ") {
					t.Errorf("%s: the %s asks for something in\n%s", name, views[i].Name, all)
				}
				continue
			}
			if !strings.Contains(strings.ReplaceAll(all, " ", ""), strings.ReplaceAll(want, " ", "")) {
				t.Errorf("%s: the %s does not ask for %s in\n%s", name, views[i].Name, want, all)
			}
			if !slices.ContainsFunc(views[i].Text, func(s string) bool { return strings.Contains(s, "measure ") && strings.Contains(s, want) }) {
				t.Errorf("%s: the words of the %s do not ask for %s: %q", name, views[i].Name, want, views[i].Text)
			}
		}
	}
}

func TestLabelsHaveRoom(t *testing.T) {
	folders := map[string]fs.FS{"crowded": os.DirFS("testdata/crowded"), "in inches": edited(t, "crowded", "name        =", "units = \"inch\"\nname        =")}
	for name, c := range spare {
		folders["without "+name] = edited(t, "standing", c.words...)
	}
	views := map[string][]Drawing{}
	for name, folder := range folders {
		views[name] = drawn(derived(t, folder, "car.toml"))
	}
	for _, car := range []string{"squall", "mizzle", "haar"} {
		views[car] = drawn(derived(t, os.DirFS(root), "cars/"+car+".toml"))
	}
	for name, pair := range views {
		for _, d := range pair {
			texts := textsOf(d.Marks)
			for i, a := range texts {
				if !d.Frame().Holds(a.Box()) {
					t.Errorf("%s, %s: %q leaves the frame: %v in %v", name, d.Name, a.Lines, a.Box(), d.Size)
				}
				for _, b := range texts[:i] {
					if a.Box().Meets(b.Box()) {
						t.Errorf("%s, %s: %q lies on %q", name, d.Name, a.Lines, b.Lines)
					}
				}
			}
		}
	}
}

func TestDrawingsAreTheSameEachTime(t *testing.T) {
	folder := os.DirFS("testdata/crowded")
	once, again := drawn(derived(t, folder, "car.toml")), drawn(derived(t, folder, "car.toml"))
	for i := range once {
		if diff := cmp.Diff(svgOf(t, once[i]), svgOf(t, again[i])); diff != "" {
			t.Errorf("%s, once (-) and again (+):\n%s", once[i].Name, diff)
		}
	}
}

// TestBareCar draws a car of which nothing is written but its name.
func TestBareCar(t *testing.T) {
	folder := fstest.MapFS{"car.toml": &fstest.MapFile{Data: []byte("[car]\nname = \"Bare\"\n")}}
	for _, d := range drawn(derived(t, folder, "car.toml")) {
		if !slices.ContainsFunc(d.Text, func(s string) bool { return strings.Contains(s, "measure support.stands") }) {
			t.Errorf("the %s does not ask for stands: %q", d.Name, d.Text)
		}
		svgOf(t, d)
	}
}

func TestNoCarNoView(t *testing.T) {
	var d document.Document
	if _, ok := Plan(&d); ok {
		t.Error("a plan was drawn without a car")
	}
	if _, ok := Side(&d); ok {
		t.Error("a side view was drawn without a car")
	}
}

func closeTo(got, want, tolerance float64) bool { return math.Abs(got-want) <= tolerance }

// textsOf are all lettering among marks, also that of dimensions.
func textsOf(marks []Mark) []Text {
	var out []Text
	for _, m := range marks {
		switch m := m.(type) {
		case Text:
			out = append(out, m)
		case Dimension:
			out = append(out, m.figure())
		case Group:
			out = append(out, textsOf(m.Marks)...)
		}
	}
	return out
}

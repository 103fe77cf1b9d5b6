package document

import (
	"testing"
	"testing/fstest"
	"time"

	"fitup/spec"
	"fitup/spec/tree"

	"github.com/google/go-cmp/cmp"
)

const (
	car = `
[car]
name = "Tern"
driveline = "four.toml"
shop = "shop.toml"
[usual]
metal = "aluminium"
[fuel]
carries = "fuel"
cell = { filled-with = "E85", ports.feed = "-8 male 37-flare" }
[lines.feed]
hose = "2.1 m of braid-8, 2024-02"
from = ["fuel.cell.feed", "female 37-flare 90deg"]
to = ["driveline.fuel-in", "female 37-flare steel"]
clips = "~300 mm"
sleeve = "?"
[mounts.left]
meets = "driveline.left"
holes = "2 x 10.5 mm clear, 70 mm apart fore-aft"
bolts = "2 x M10x1.5x35 10.9 hex, 50 N m, wire"
`
	driveline = `
[driveline]
name = "Four"
[ports]
fuel-in = { end = "-8 male 37-flare", takes = "fuel", max = "5 bar" }
[mounts.left]
holes = "2 x M10x1.5 tapped 25 mm, 70 mm apart fore-aft"
`
	shop = `
[shop]
name = "Barn"
[hoses]
braid-8 = { size = "-8", liner = "PTFE", bore = "10.3 mm", rated = "130 bar" }
`
)

func joined(t *testing.T) *Document {
	t.Helper()
	tr := &tree.Tree{FS: fstest.MapFS{
		"tern.toml": {Data: []byte(car)}, "four.toml": {Data: []byte(driveline)}, "shop.toml": {Data: []byte(shop)},
	}}
	outfit := spec.NewOutfit(tr)
	outfit.Load("tern.toml")
	for _, p := range outfit.Problems() {
		t.Fatal(p.Error())
	}
	c, ok := outfit.Car("tern.toml")
	if !ok {
		t.Fatal("the car did not load")
	}
	return Join(c, time.Date(2026, 11, 25, 0, 0, 0, 0, time.UTC))
}

// at follows keys and element numbers into an encoded document.
func at(t *testing.T, v any, steps ...any) any {
	t.Helper()
	for _, step := range steps {
		switch s := step.(type) {
		case string:
			v = v.(map[string]any)[s]
		case int:
			v = v.([]any)[s]
		}
	}
	return v
}

func TestJoinPutsHalvesTogether(t *testing.T) {
	doc := joined(t).Encode()
	for _, test := range []struct {
		what  string
		steps []any
		want  any
	}{
		{"composition", []any{"composition"}, "car with driveline"},
		{"service from the ports", []any{"lines", 0, "service"}, "fuel"},
		{"fuel from the tank", []any{"lines", 0, "fuel"}, "E85"},
		{"fluid as the table names it", []any{"lines", 0, "fluid"}, "e85"},
		{"hose kind from the shop", []any{"lines", 0, "kind", "rated"}, 13e6},
		{"hose kind's own path", []any{"lines", 0, "kind", "path"}, "shop.hoses.braid-8"},
		{"length in metres", []any{"lines", 0, "hose", "length"}, 2.1},
		{"a guess is named", []any{"lines", 0, "guessed"}, []any{"clips"}},
		{"a question is named", []any{"lines", 0, "asked"}, []any{"sleeve"}},
		{"size of an end from the hose", []any{"lines", 0, "to", "half", "size"}, "-8"},
		{"own metal before the usual one", []any{"lines", 0, "to", "half", "metal"}, "steel"},
		{"usual metal", []any{"lines", 0, "from", "half", "metal"}, "aluminium"},
		{"thread from form and dash", []any{"lines", 0, "to", "half", "thread", "text"}, "3/4-16"},
		{"the port across", []any{"lines", 0, "to", "port", "path"}, "driveline.ports.fuel-in"},
		{"pressure in pascal", []any{"lines", 0, "to", "port", "max"}, 5e5},
		{"both halves of a mount", []any{"mounts", 0, "there", "holes", "depth"}, 0.025},
		{"a joint across", []any{"joints", 1, "boundary"}, true},
		{"who joins a port", []any{"ports", 0, "joined_by"}, []any{"lines.feed.to"}},
		{"fastening in its place", []any{"fastenings", 0, "holds"}, "the driveline at left"},
	} {
		if diff := cmp.Diff(test.want, at(t, doc, test.steps...)); diff != "" {
			t.Errorf("%s (-want +got):\n%s", test.what, diff)
		}
	}
}

func TestUnmentionedCollectionsAreNamed(t *testing.T) {
	d := joined(t)
	want := map[string]bool{"stands": true, "life": true, "lines": false, "mounts": false, "fuel": false}
	got := map[string]bool{}
	for _, name := range d.Unknown {
		got[name] = true
	}
	for name, unknown := range want {
		if got[name] != unknown {
			t.Errorf("%s unknown: %v, want %v", name, got[name], unknown)
		}
	}
}

func TestResolveLeadsToTheKey(t *testing.T) {
	d := joined(t)
	d.Lines[0].Calc.Velocity.Missing = []string{"driveline.pumps"}
	for _, test := range []struct {
		collection, subject, field string
		path                       string
		missing                    []string
		unit                       string
	}{
		{"lines", "lines.feed", "clips", "lines.feed.clips", []string{"lines.feed.clips"}, "mm"},
		{"lines", "lines.feed", "kind.rated", "shop.hoses.braid-8.rated", []string{"shop.hoses.braid-8.rated"}, "bar"},
		{"lines", "lines.feed", "kind.bend", "shop.hoses.braid-8.bend", []string{"shop.hoses.braid-8.bend"}, ""},
		{"lines", "lines.feed", "to.port.hot", "driveline.ports.fuel-in.hot", []string{"driveline.ports.fuel-in.hot"}, ""},
		{"lines", "lines.feed", "calc.velocity", "lines.feed.velocity", []string{"driveline.pumps"}, ""},
		{"mounts", "mounts.left", "there.at", "driveline.mounts.left.at", []string{"driveline.mounts.left.at"}, ""},
	} {
		got := d.Resolve(test.collection, test.subject, test.field)
		if got.Path != test.path {
			t.Errorf("%s %s leads to %s, want %s", test.subject, test.field, got.Path, test.path)
		}
		if diff := cmp.Diff(test.missing, got.Missing); diff != "" {
			t.Errorf("%s %s missing (-want +got):\n%s", test.subject, test.field, diff)
		}
		unit := ""
		if got.Leaf != nil {
			_, unit = got.Leaf.Written()
		}
		if unit != test.unit {
			t.Errorf("%s %s is written in %q, want %q", test.subject, test.field, unit, test.unit)
		}
	}
}

package workings_test

import (
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/source"
	"fitup/spec/tree"
	"fitup/spec/workings"
)

// FuzzLoader loads any text as a car, beside a driveline and a shop file that are
// good, and works out what can be. What is wrong has a place in the text, is told
// alike each time, and no figure that rules see is without a value.
func FuzzLoader(f *testing.F) {
	for _, name := range []string{"mizzle.toml", "haar.toml", "squall.toml"} {
		text, err := os.ReadFile(filepath.Join("..", "..", "cars", name))
		if err != nil {
			f.Fatal(err)
		}
		for _, part := range parts(string(text)) {
			f.Add("[car]\nname = \"A\"\ndriveline = \"driveline.toml\"\nshop = \"shop.toml\"\n" + part)
		}
	}
	for _, text := range []string{
		"", "[car]\nname = \"A\"\ndriveline = \"car.toml\"", "[car]\nname = \"A\"\nshop = \"../../shop.toml\"", "[shop]\nname = \"?\"",
		"[car]\nname = \"A\"\n[lines.a]\nhose = \"~1e9 km of ?\"\n[lines.b]\nfrom = \"lines.a\"\nto = \"lines.b\"",
		"[driveline]\nname = \"none\"\n[parts.none]\nmass = \"-0 kg\"", "car = 1\n[shop]", "[car]\nname = \"A\"\n[mounts]\na = \"none\"\n[mounts.b]\n",
	} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		outfit, problems := load(text)
		for _, p := range problems {
			of := outfit.Load(p.File)
			if p.Message == "" || p.Span.Start < 0 || p.Span.Start > p.Span.End || p.Span.End > len(of.Text) || p.Place.Line < 1 || p.Place.Column < 1 {
				t.Errorf("%s: problem %+v at %+v in a text of %d bytes", p.File, p.Problem, p.Place, len(of.Text))
			}
		}
		_, again := load(text)
		if diff := cmp.Diff(problems, again); diff != "" {
			t.Errorf("told another time otherwise:\n%s", diff)
		}
		file := outfit.Load("cars/car.toml")
		file.Walk(func(path string, _ spec.Field, _ any) {
			if s := file.Find(path); s.Start < 0 || s.Start > s.End || s.End > len(file.Text) {
				t.Errorf("%s stands at %v in a text of %d bytes", path, s, len(file.Text))
			}
		})
		for _, compose := range []func(string) (*spec.Composition, bool){outfit.Car, outfit.Driveline} {
			if c, ok := compose("cars/car.toml"); ok {
				joined := document.Join(c, time.Date(2026, 3, 1, 0, 0, 0, 0, time.UTC))
				workings.Derive(joined)
				finite(t, "", joined.Encode())
			}
		}
	})
}

// parts are the tables of a text that begin with one name, each with their kin.
func parts(text string) (parts []string) {
	last := ""
	for _, table := range strings.SplitAfter(text, "\n\n") {
		name, _, _ := strings.Cut(strings.TrimLeft(table, "["), ".")
		switch {
		case strings.HasPrefix(table, "[car"):
		case len(parts) > 0 && name == last && strings.HasPrefix(table, "["):
			parts[len(parts)-1] += table
		default:
			parts, last = append(parts, table), name
		}
	}
	return parts
}

// load loads a text as a car.
func load(text string) (*spec.Outfit, []spec.FileProblem) {
	outfit := spec.NewOutfit(&tree.Tree{FS: fstest.MapFS{
		"cars/car.toml": {Data: []byte(text)},
		"cars/driveline.toml": {Data: []byte("[driveline]\nname = \"D\"\nshop = \"shop.toml\"\n" +
			"[engine]\nmass = \"150 kg\"\n[ports.fuel-in]\nend = \"-6 male 37-flare\"\ntakes = \"fuel\"\n" +
			"[mounts.left]\nat = \"0, 200, 100 mm\"\nholes = \"2 x 10.5 mm clear, 70 mm apart fore-aft\"\n")},
		"cars/shop.toml": {Data: []byte("[shop]\nname = \"S\"\n[hoses.ptfe-8]\nliner = \"PTFE\"\nbore = \"10.3 mm\"\nrated = \"100 bar\"\n")},
	}})
	outfit.Load("cars/car.toml")
	return outfit, outfit.Problems()
}

// finite tells of a number that is none.
func finite(t *testing.T, path string, value any) {
	t.Helper()
	switch v := value.(type) {
	case float64:
		if math.IsNaN(v) || math.IsInf(v, 0) {
			t.Errorf("%s is %v", path, v)
		}
	case map[string]any:
		for name, each := range v {
			finite(t, path+"."+name, each)
		}
	case []any:
		for _, each := range v {
			finite(t, path+"[]", each)
		}
	}
}

// FuzzPhrases reads any text where a phrase may stand. A problem lies within the
// text, and what is taken is taken the same way from its parts in a table.
func FuzzPhrases(f *testing.F) {
	for i, text := range []string{
		"2.95 m of ptfe-8, 2023-02", "4 x M10x1.5 tapped 22 mm, 110 x 80 mm, long-side fore-aft", "2 x M10x1.5x35 10.9 hex, 50 N m, wire",
		"-8 male 37-flare 90deg steel", "? of ?", "~34 in of ptfe-8", ", ,", "none", "?", "\u202e\x01", "1 x 1 x 1 x 1", "-8 -8",
	} {
		f.Add(i, text)
	}
	keys := []string{"lines.x.hose", "mounts.x.holes", "mounts.x.bolts", "lines.x.from.end", "lines.x.near.y", "oil.tank.drain", "wires.x.size"}
	f.Fuzz(func(t *testing.T, i int, phrase string) {
		key := keys[((i%len(keys))+len(keys))%len(keys)]
		text := "[car]\nname = \"A\"\n[" + key[:len(key)-len(filepath.Ext(key))] + "]\n" + filepath.Ext(key)[1:] + " = '"
		start := len(text)
		text += phrase + "'\n"
		file, problems := spec.LoadFile(&tree.Tree{FS: fstest.MapFS{"car.toml": {Data: []byte(text)}}}, "car.toml")
		if _, wrong := source.Parse("car.toml", []byte(text)); len(wrong) > 0 {
			return // no string of TOML
		}
		for _, p := range problems {
			if p.Message == "" || p.Span.Start < 0 || p.Span.Start > p.Span.End || p.Span.End > len(file.Text) {
				t.Errorf("%q as %s: problem %+v", phrase, key, p)
			}
			if inside := p.Span.Start > start && p.Span.End < start+len(phrase); inside && p.Path == "" {
				t.Errorf("%q as %s: a problem of a word without a path: %+v", phrase, key, p)
			}
		}
	})
}

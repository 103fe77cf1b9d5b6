package fleet

import (
	"fmt"
	"slices"
	"testing"
	"testing/fstest"

	"github.com/google/go-cmp/cmp"

	"fitup/policies/config"
	"fitup/spec"
	"fitup/spec/tree"
)

// outfitOf is a folder of cars, each with a driveline and all with one shop file;
// besides, a car that is broken, a driveline on the bench and a file of no kind.
func outfitOf(cars int) fstest.MapFS {
	files := fstest.MapFS{}
	write := func(name, text string, args ...any) {
		files[name] = &fstest.MapFile{Data: fmt.Appendf(nil, text, args...)}
	}
	write("shop/shop.toml", "[shop]\nname = \"Shop\"\n")
	for i := range cars {
		write(fmt.Sprintf("cars/c%d.toml", i), "[car]\nname = \"C%d\"\nshop = \"../shop/shop.toml\"\ndriveline = \"../drivelines/d%[1]d.toml\"\n", i)
		write(fmt.Sprintf("drivelines/d%d.toml", i), "[driveline]\nname = \"D%d\"\nshop = \"../shop/shop.toml\"\n", i)
	}
	write("cars/broken.toml", "[car]\nname = 3\n")
	write("drivelines/bench.toml", "[driveline]\nname = \"Bench\"\n")
	write("other.toml", "x = 1\n")
	return files
}

// TestEach: a fleet that passes is the same as one that is kept, and no more of it
// is held at a time than a few files.
func TestEach(t *testing.T) {
	const cars = 3 * mostRecent
	for name, paths := range map[string][]string{
		"all":         {"."},
		"cars":        {"cars"},
		"a car":       {"cars/c3.toml"},
		"a driveline": {"drivelines/d7.toml", "drivelines/bench.toml"},
		"a shop file": {"shop/shop.toml"},
		"twice":       {"cars/c3.toml", ".", "drivelines/d3.toml"},
	} {
		t.Run(name, func(t *testing.T) {
			call := &Call{Config: &config.Config{}, tree: &tree.Tree{FS: outfitOf(cars)}, paths: paths, names: paths}
			kept, err := call.Open()
			if err != nil {
				t.Fatal(err)
			}
			var passed []string
			var s *search
			s = newSearch(call, func(c *spec.Composition) error {
				passed = append(passed, nameOf(c.Car)+" "+nameOf(c.Driveline))
				if len(s.recent) > mostRecent+5 { // a car, its driveline and the shop file, twice
					t.Errorf("%d files are held", len(s.recent))
				}
				return nil
			})
			s.passing = true
			if err := s.run(call); err != nil {
				t.Fatal(err)
			}
			var all []string
			for _, c := range kept.Compositions {
				all = append(all, nameOf(c.Car)+" "+nameOf(c.Driveline))
			}
			slices.Sort(all)
			slices.Sort(passed)
			if len(all) == 0 {
				t.Error("nothing to judge")
			}
			if diff := cmp.Diff(all, passed); diff != "" {
				t.Errorf("kept (-) and passed (+)\n%s", diff)
			}
			type told struct{ Read, Problems, Notes, Skipped, Unread, Fleet, Whole any }
			of := func(s *Selection) told {
				return told{s.Read, s.Problems, s.Notes, s.Skipped, s.Unread, s.Fleet, s.Whole}
			}
			if diff := cmp.Diff(of(kept), of(s.Selection)); diff != "" {
				t.Errorf("told of what is kept (-) and of what passed (+)\n%s", diff)
			}
		})
	}
}

package judge

import (
	"fmt"
	"testing"
	"testing/fstest"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/tree"
)

// dueIn tells what runs out in the cars of a fleet given as files by name.
func dueIn(t *testing.T, by string, files map[string]string) *Due {
	t.Helper()
	all := fstest.MapFS{}
	for name, text := range files {
		all[name] = &fstest.MapFile{Data: []byte(text)}
	}
	outfit := spec.NewOutfit(&tree.Tree{FS: all})
	var cars []*spec.Composition
	for _, name := range []string{"a.toml", "b.toml"} {
		if _, there := all[name]; there {
			if c, ok := outfit.Car(name); ok {
				cars = append(cars, c)
			}
		}
	}
	for _, p := range outfit.Problems() {
		t.Fatal(p.Error())
	}
	return DueBy(cars, day("2026-11-25"), day(by))
}

// ofDue prints what is due in the form that tests compare.
func ofDue(d *Due) []string {
	var out []string
	for _, i := range d.Dated {
		out = append(out, fmt.Sprintf("%s %d %s:%d %s (%s) guessed=%t", i.Day.Format(time.DateOnly), i.Days(d.On), i.File, i.Line, i.What, i.By, i.Guessed))
	}
	for _, i := range d.Used {
		out = append(out, fmt.Sprintf("%.2f %s:%d %s, left %s", i.Share, i.File, i.Line, i.What, i.Left))
	}
	for _, i := range d.Unknown {
		out = append(out, fmt.Sprintf("? %s:%d %s %v", i.File, i.Line, i.What, i.Missing))
	}
	return out
}

func TestDue(t *testing.T) {
	const head = "[car]\nname = \"Tern\"\n"
	for _, test := range []struct {
		name, by, text string
		want           []string
		later, past    int
	}{
		{"the last day on a label", "2027-12-31", "[safety]\nharness = { until = 2026-11-24 }\nhelmet = { until = \"2027\" }\nseat = { until = 2028-01-01 }\n", []string{
			"2026-11-24 -1 a.toml:4 harness (label) guessed=false",
			"2027-12-31 401 a.toml:5 helmet (label) guessed=false"}, 1, 1},
		{"a last day is not past on it", "2026-11-25", "[safety]\nharness = { until = 2026-11-25 }\n", []string{
			"2026-11-25 0 a.toml:4 harness (label) guessed=false"}, 0, 0},
		{"a guess", "2027-12-31", "[safety]\nseat = { until = \"~2027-06\" }\n", []string{
			"2027-06-30 217 a.toml:4 seat (label) guessed=true"}, 0, 0},
		{"nothing on the label", "2027-12-31", "[safety]\nharness = { standard = \"?\", until = \"?\" }\nseat = \"none\"\n", []string{
			"? a.toml:4 harness [safety.harness.until]"}, 0, 0},
		{"lives", "2028-01-01", "[clock]\nread = 2026-11-20\nrun-time = \"30 h\"\nruns = \"120 runs\"\n" +
			"[life.belt]\nfitted = 2024-01-15\nlasts = \"3 years\"\n" +
			"[life.oil]\nfitted = 2026-01-01\nat = \"20 h\"\nlasts = \"8 h\"\n" +
			"[life.rods]\nat = \"0 runs\"\nlasts = \"240 runs\"\n" +
			"[life.pads]\nlasts = \"50 runs\"\nat = \"?\"\n", []string{
			"2027-01-15 51 a.toml:7 life of belt (file) guessed=false",
			"1.25 a.toml:10 use of oil, left 2 h over",
			"0.50 a.toml:14 use of rods, left 120 runs",
			"? a.toml:17 life of pads [life.pads.at]"}, 0, 1},
		{"a waiver", "2027-01-01", "[waivers.w]\nrule = \"lines.age\"\non = \"car\"\nwhy = \"ordered\"\nuntil = 2026-12-01\n", []string{
			"2026-12-01 6 a.toml:3 waiver of lines.age (waiver) guessed=false"}, 0, 0},
	} {
		t.Run(test.name, func(t *testing.T) {
			d := dueIn(t, test.by, map[string]string{"a.toml": head + test.text})
			if diff := cmp.Diff(test.want, ofDue(d)); diff != "" {
				t.Errorf("-want +got:\n%s", diff)
			}
			if d.Later != test.later || d.Past() != test.past {
				t.Errorf("%d later and %d past, want %d and %d", d.Later, d.Past(), test.later, test.past)
			}
		})
	}
}

func TestDueOfWhatCarsShareIsToldOnce(t *testing.T) {
	const shop = "[shop]\nname = \"Barn\"\n[hoses]\nrubber = { bore = \"8 mm\", lasts = \"5 years\" }\n"
	const driveline = "[driveline]\nname = \"Four\"\nshop = \"shop.toml\"\n[lines.feed]\nhose = { kind = \"rubber\", made = 2022-03-01 }\n[lines.back]\nhose = { kind = \"rubber\" }\n"
	d := dueIn(t, "2027-12-31", map[string]string{"shop.toml": shop, "four.toml": driveline, "a.toml": car("four.toml", ""), "b.toml": car("four.toml", "")})
	want := []string{
		"2027-03-01 96 four.toml:4 hose of feed (hose kind) guessed=false",
		"? four.toml:6 hose of back [lines.back.hose.made]",
	}
	if diff := cmp.Diff(want, ofDue(d)); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

package swap

import (
	"slices"
	"strings"
	"testing"
	"testing/fstest"

	gocmp "github.com/google/go-cmp/cmp"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/tree"
	"fitup/spec/unit"
)

// testTolerances are those of a test, not of any rule.
var testTolerances = Tolerances{Offset: 0.003, Spacing: 0.00075, Hose: 0.001, Band: 0.0005}

// ends loads phrases as the ends of adaptors in a shop file, as an author would
// write them.
func ends(t *testing.T, phrases ...string) []*document.Half {
	t.Helper()
	var text strings.Builder
	text.WriteString("[shop]\nname = \"Barn\"\n[adaptors]\n")
	for i, phrase := range phrases {
		name := string(rune('a' + i))
		if strings.HasPrefix(phrase, "{") {
			text.WriteString(name + " = { one = " + phrase + " }\n")
		} else {
			text.WriteString(name + " = { one = \"" + phrase + "\" }\n")
		}
	}
	file, problems := spec.LoadFile(&tree.Tree{FS: fstest.MapFS{"barn.toml": {Data: []byte(text.String())}}}, "barn.toml")
	for _, p := range problems {
		t.Fatalf("%s: %s\n%s", p.Message, p.Want, &text)
	}
	var halves []*document.Half
	for i := range phrases {
		h := document.HalfOf(file.Shop.Adaptors.Named[string(rune('a'+i))].One)
		h.Owner = []string{"car", "driveline"}[i%2]
		halves = append(halves, h)
	}
	return halves
}

func TestMeet(t *testing.T) {
	for _, test := range []struct{ one, other, want string }{
		{"-8 female 37-flare", "-8 male 37-flare", "meets"},
		{"-8 female 37-flare", "-6 male 37-flare", "thread 3/4-16 against 9/16-18"},
		{"-8 male 37-flare", "-8 male 37-flare", "both male"},
		{"-8 female 45-flare", "-8 male 37-flare", "45-flare against 37-flare; seat of 45 deg against 37 deg"},
		{"-8 male 37-flare", "-8 female O-ring-boss", "37-flare against O-ring-boss"},
		{"3/8-24 male banjo", "M10x1 female banjo", "thread 3/8-24 against M10x1, which goes in slack"},
		{"M10x1 male banjo", "3/8-24 female banjo", "thread M10x1 against 3/8-24, which starts and jams"},
		{"1/8-27 NPT male taper-pipe", "1/8-27 NPT female taper-pipe", "meets"},
		{"female 37-flare", "-8 male 37-flare", "? size of the car's end"},
		{"-8 female 37-flare", "-8 37-flare", "? gender of the driveline's end"},
		{"-8", "-8 male 37-flare", "? form of the car's end"},
		{"38 mm hose", "38 mm bead", "meets"},
		{"1 1/2 in hose", "38 mm bead", "meets"},
		{"38 mm hose", "39.1 mm bead", "size 38 mm against 39.1 mm"},
		{"38 mm hose", "39 mm bead", "meets"},
		{"38 mm hose", "38 mm hose", "hose against hose"},
		{"-8 hose", "12 mm barb", "? one measure for both ends: -8 and 12 mm"},
		{"-8 hose", "-8 barb", "meets"},
		{"-8 hose", "-10 barb", "size -8 against -10"},
		{"76 mm male slip", "76 mm female slip", "meets"},
		{"M8 ring", "M8 stud", "meets"},
		{"M8 ring", "M8x1.25 stud", "meets"},
		{"M6 ring", "M8 stud", "size M6 against M8"},
		{"size-24 key-W sockets connector", "size-24 key-W pins connector", "meets"},
		{"size-24 key-N sockets connector", "size-24 key-W pins connector", "key N against W"},
		{"size-20 key-W pins connector", "size-24 key-W pins connector", "size size-20 against size-24; both pins"},
		{"-4 female dry-break family-lever", "-4 male dry-break family-push", "family lever against push"},
		{"M8x1.25 female rod-end", "M8x1.25 male rod", "meets"},
		{"M8x1.25 female rod-end", "M6x1 male rod", "thread M8x1.25 against M6x1"},
		{"65 mm female flange", "65 mm male flange", "meets"},
		{"{ size = \"76 mm\", form = \"V-band\", gender = \"female\", family = \"round-40\", outside = \"92.5 mm\" }",
			"{ size = \"76 mm\", form = \"V-band\", gender = \"male\", family = \"round-40\", outside = \"92.0 mm\" }", "meets"},
		{"{ size = \"76 mm\", form = \"V-band\", gender = \"female\", family = \"flat-20\", outside = \"92.5 mm\" }",
			"{ size = \"76 mm\", form = \"V-band\", gender = \"male\", family = \"round-40\", outside = \"91.9 mm\" }",
			"profile flat-20 against round-40; outside diameter 92.5 mm against 91.9 mm"},
		{"{ size = \"76 mm\", form = \"V-band\", gender = \"female\", family = \"round-40\" }",
			"{ size = \"76 mm\", form = \"V-band\", gender = \"male\", family = \"round-40\", outside = \"91.9 mm\" }", "? outside diameter of the car's end"},
		{"-8 female 37-flare", "38 mm bead", "37-flare against bead"},
	} {
		t.Run(test.one+" and "+test.other, func(t *testing.T) {
			halves := ends(t, test.one, test.other)
			got := testTolerances.Meet(halves[0], halves[1])
			said := strings.Join(got.Differs, "; ")
			if len(got.Unknown) > 0 {
				said = strings.TrimPrefix(said+"; ? "+strings.Join(got.Unknown, ", "), "; ")
			}
			if got.Meets {
				said += "meets"
			}
			if said != test.want {
				t.Errorf("got %q, want %q", said, test.want)
			}
			if back := testTolerances.Meet(halves[1], halves[0]); back.Meets != got.Meets || len(back.Unknown) != len(got.Unknown) {
				t.Errorf("the other way round it is %+v", back)
			}
		})
	}
}

func TestJoinByAdaptors(t *testing.T) {
	file, problems := spec.LoadFile(&tree.Tree{FS: fstest.MapFS{"barn.toml": {Data: []byte(`
[shop]
name = "Barn"
[adaptors]
eight-down-to-six = { one = "-8 female 37-flare", other = "-6 male 37-flare", adds = "34 mm", bore = "7.6 mm", have = 2 }
three-to-ten      = { one = "M10x1 male banjo", other = "-3 male 37-flare", adds = "20 mm" }
dry-half          = { one = "-4 female dry-break family-lever", other = "-4 male 37-flare", adds = "40 mm" }
used-up           = { one = "-16 female 37-flare", other = "-6 male 37-flare", have = 0 }
`)}}}, "barn.toml")
	if len(problems) > 0 {
		t.Fatal(problems)
	}
	shop := file.Shop
	for _, test := range []struct {
		name, car, driveline string
		want                 []string // NAME, ENDS, from the car to the driveline
		adds                 string   // mm; "" if not known
		buy                  int
	}{
		{"from the drawer", "-6 female 37-flare", "-8 male 37-flare", []string{"eight-down-to-six, -6 male 37-flare to -8 female 37-flare"}, "34", 0},
		{"a standard reducer, turned to fit", "-8 female 37-flare", "-10 male 37-flare", []string{"flare reducer, -8 male 37-flare to -10 female 37-flare"}, "", 1},
		{"two of one gender", "-8 female 37-flare", "-8 female 37-flare", []string{"flare union, -8 male 37-flare to -8 male 37-flare"}, "", 1},
		{"flare into a boss", "-8 female 37-flare", "-10 female O-ring-boss", []string{"flare to O-ring boss, -8 male 37-flare to -10 male O-ring-boss"}, "", 1},
		{"flare into pipe", "-6 female 37-flare", "1/4-18 NPT female taper-pipe", []string{"flare to male pipe, -6 male 37-flare to 1/4-18 NPT male taper-pipe"}, "", 1},
		{"stock before the standard form", "-3 female 37-flare", "M10x1 female banjo", []string{"three-to-ten, -3 male 37-flare to M10x1 male banjo"}, "20", 0},
		{"a chain of two", "-6 female 37-flare", "-10 female O-ring-boss", []string{"flare to O-ring boss, -6 male 37-flare to -10 male O-ring-boss"}, "", 1},
		{"down two sizes", "-10 female 37-flare", "-5 female O-ring-boss", nil, "", 0},
		{"a reducer and a boss stud", "-3 female 37-flare", "-6 female O-ring-boss", []string{
			"flare reducer, -3 male 37-flare to -4 female 37-flare", "flare to O-ring boss, -4 male 37-flare to -6 male O-ring-boss"}, "", 2},
		{"a hose one size over the bead", "32 mm hose", "38 mm bead", []string{
			"hose joiner, 32 mm bead to 32 mm bead", "stepped coupling hose, 32 mm hose to 38 mm hose"}, "", 2},
		{"dry-break by the drawer", "-4 female 37-flare", "-4 male dry-break family-lever", []string{"dry-half, -4 male 37-flare to -4 female dry-break"}, "40", 0},
		{"no adaptor for a band", "76 mm female slip", "{ size = \"76 mm\", form = \"V-band\", gender = \"male\", family = \"round-40\", outside = \"92.5 mm\" }", nil, "", 0},
		{"none left", "-20 male 37-flare", "-3 female 37-flare", nil, "", 0},
	} {
		t.Run(test.name, func(t *testing.T) {
			halves := ends(t, test.car, test.driveline)
			got := NewDrawer(shop).Join(halves[0], halves[1], testTolerances)
			var names []string
			adds := ""
			if got != nil {
				for _, a := range got.Adaptors {
					names = append(names, a.Name+", "+a.Ends())
				}
				if got.Joints != len(got.Adaptors) || len(got.Buy) != test.buy {
					t.Errorf("%d joints more, %d to buy: %+v", got.Joints, len(got.Buy), got.Buy)
				}
				if got.Adds != nil {
					adds = strings.TrimSuffix(strings.TrimSpace(fmtMillimetres(*got.Adds)), " mm")
				}
			}
			if diff := gocmp.Diff(append([]string{test.adds}, test.want...), append([]string{adds}, names...)); diff != "" {
				t.Errorf("length, chain (-want +got):\n%s", diff)
			}
		})
	}
}

// TestChainsHold checks every pair of standard ends: the links of a chain meet,
// a chain is never longer than it need be, and turned round it is as long.
func TestChainsHold(t *testing.T) {
	var all []*document.Half
	seen := map[string]bool{}
	for _, a := range NewDrawer(nil) {
		for _, h := range []*document.Half{a.One, a.Other} {
			if text := endText(h); !seen[text] {
				seen[text] = true
				all = append(all, h)
			}
		}
	}
	slices.SortFunc(all, func(a, b *document.Half) int { return strings.Compare(endText(a), endText(b)) })
	drawer := NewDrawer(nil)
	found := 0
	for i, car := range all {
		for j, driveline := range all[i:] {
			if j%5 != 0 || testTolerances.Meet(car, driveline).Meets {
				continue
			}
			chain := drawer.Join(car, driveline, testTolerances)
			back := drawer.Join(driveline, car, testTolerances)
			if (chain == nil) != (back == nil) || chain != nil && chain.Joints != back.Joints {
				t.Fatalf("%s to %s and back differ", endText(car), endText(driveline))
			}
			if chain == nil {
				continue
			}
			found++
			at := car
			for _, a := range chain.Adaptors {
				if !testTolerances.Meet(at, a.One).Meets {
					t.Fatalf("%s does not meet %s", endText(at), endText(a.One))
				}
				at = a.Other
			}
			if !testTolerances.Meet(at, driveline).Meets || len(chain.Adaptors) > 2 {
				t.Fatalf("the chain from %s to %s ends at %s", endText(car), endText(driveline), endText(at))
			}
		}
	}
	if found < 50 {
		t.Errorf("only %d chains were looked at", found)
	}
}

func fmtMillimetres(m float64) string { return unit.Format(m, unit.Length, "mm") }

package judge

import (
	"fmt"
	"strings"
	"testing"
	"time"

	"github.com/google/go-cmp/cmp"

	"fitup/policies"
)

const (
	bare  = "[driveline]\nname = \"Four\"\n"
	short = "[lines.vent]\nhose = \"0.5 m of braid\"\nsleeve = \"short\"\n"
)

func with(name string) string { return strings.ReplaceAll(short, "vent", name) }

// told prints a change in the form that tests compare.
func told(c *Change) []string {
	var out []string
	for _, turn := range c.Appears {
		out = append(out, fmt.Sprintf("+ %s %s %s: %s", turn.Rule, turn.File, turn.Path, turn.Other))
	}
	for _, turn := range c.Goes {
		out = append(out, fmt.Sprintf("- %s %s %s: %s", turn.Rule, turn.File, turn.Path, turn.Other))
	}
	for _, id := range c.Stays {
		out = append(out, "= "+id)
	}
	for _, s := range c.Shifts {
		sign := "<"
		if s.Back {
			sign = ">"
		}
		out = append(out, fmt.Sprintf("%s %s: %s", sign, s.Kind, s.What))
	}
	return out
}

const waiverOfVent = "[waivers.w]\nrule = \"own.short\"\non = \"lines.vent\"\nwhy = \"new one ordered\"\nuntil = 2027-01-01\n"

func TestCompare(t *testing.T) {
	fleet := func(files ...string) map[string]string {
		all := map[string]string{"four.toml": bare}
		for i := 0; i < len(files); i += 2 {
			all[files[i]] = files[i+1]
		}
		return all
	}
	for _, test := range []struct {
		name          string
		before, after map[string]string
		how           Comparison
		want          []string
	}{
		{"nothing", fleet("a.toml", car("four.toml", short)), fleet("a.toml", car("four.toml", "\n"+short)), Comparison{},
			[]string{"= own.short||a.toml|lines.vent"}},
		{"breaks and mends", fleet("a.toml", car("four.toml", with("vent"))), fleet("a.toml", car("four.toml", with("feed")+"[lines.vent]\nhose = \"0.5 m of braid\"\nsleeve = \"long\"\n")), Comparison{},
			[]string{"+ own.short a.toml lines.feed: not found", "- own.short a.toml lines.vent: not found"}},
		{"the subject is taken off", fleet("a.toml", car("four.toml", with("vent")+"[lines.feed]\nhose = \"1 m of braid\"\n")), fleet("a.toml", car("four.toml", "[lines.feed]\nhose = \"1 m of braid\"\n")), Comparison{},
			[]string{"- own.short a.toml lines.vent: not found"}},
		{"taking the figure out mends nothing", fleet("a.toml", car("four.toml", short)), fleet("a.toml", car("four.toml", strings.Replace(short, "0.5 m", "?", 1))), Comparison{},
			[]string{"- own.short a.toml lines.vent: could not be told"}},
		{"taking all lines out mends nothing", fleet("a.toml", car("four.toml", short)), fleet("a.toml", car("four.toml", "")), Comparison{},
			[]string{"- own.short a.toml lines.vent: could not be told"}},
		{"writing the figure down breaks nothing", fleet("a.toml", car("four.toml", strings.Replace(short, "0.5 m", "?", 1))), fleet("a.toml", car("four.toml", short)), Comparison{},
			[]string{"+ own.short a.toml lines.vent: could not be told"}},
		{"the driveline is out", fleet("a.toml", car("four.toml", short)), fleet("a.toml", car("none", short)), Comparison{},
			[]string{"- own.short a.toml lines.vent: outside its stage and rulebooks"}},
		{"a waiver is added", fleet("a.toml", car("four.toml", short)), fleet("a.toml", car("four.toml", short+waiverOfVent)), Comparison{},
			[]string{"- own.short a.toml lines.vent: set aside by a waiver", "< waiver: own.short on lines.vent in a.toml until 2027-01-01"}},
		{"a waiver is taken out", fleet("a.toml", car("four.toml", short+waiverOfVent)), fleet("a.toml", car("four.toml", short)), Comparison{},
			[]string{"+ own.short a.toml lines.vent: set aside by a waiver", "> waiver: own.short on lines.vent in a.toml until 2027-01-01"}},
		{"a waiver moves with its file", fleet("a.toml", car("four.toml", short+waiverOfVent)), fleet("b.toml", car("four.toml", short+waiverOfVent)), Comparison{Moved: map[string]string{"a.toml": "b.toml"}},
			nil},
		{"a car is moved", fleet("a.toml", car("four.toml", short)), fleet("b.toml", car("four.toml", short)), Comparison{Moved: map[string]string{"a.toml": "b.toml"}},
			[]string{"= own.short||b.toml|lines.vent"}},
		{"a driveline is moved", map[string]string{"a.toml": car("old.toml", ""), "old.toml": four}, map[string]string{"a.toml": car("four.toml", ""), "four.toml": four}, Comparison{Moved: map[string]string{"old.toml": "four.toml"}},
			[]string{"= own.short||four.toml|lines.feed"}},
		{"a moved car is mended", fleet("a.toml", car("four.toml", short)), fleet("b.toml", car("four.toml", strings.Replace(short, "0.5 m", "?", 1))), Comparison{Moved: map[string]string{"a.toml": "b.toml"}},
			[]string{"- own.short a.toml lines.vent: could not be told"}},
		{"a car is new, and gone", fleet("a.toml", car("four.toml", short)), fleet("b.toml", car("four.toml", short)), Comparison{},
			[]string{"+ own.short b.toml lines.vent: not found", "- own.short a.toml lines.vent: not found"}},
		{"it could not be judged before", fleet("b.toml", car("none", "")), fleet("a.toml", car("four.toml", short), "b.toml", car("none", "")), Comparison{NotBefore: []string{"a.toml"}},
			[]string{"+ own.short a.toml lines.vent: not judged, as a file cannot be read"}},
		{"it cannot be judged now", fleet("a.toml", car("four.toml", short)), fleet(), Comparison{NotNow: []string{"a.toml"}},
			[]string{"- own.short a.toml lines.vent: not judged, as a file cannot be read"}},
		{"a second car sees it", map[string]string{"a.toml": car("four.toml", ""), "four.toml": four}, map[string]string{"a.toml": car("four.toml", ""), "b.toml": car("four.toml", ""), "four.toml": four}, Comparison{},
			[]string{"+ fleet.fitted_twice a.toml car.driveline: not found", "+ fleet.fitted_twice b.toml car.driveline: not found", "= own.short||four.toml|lines.feed"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			got := told(Compare(judged(t, 1, test.before), judged(t, 1, test.after), test.how))
			if diff := cmp.Diff(test.want, got); diff != "" {
				t.Errorf("-want +got:\n%s", diff)
			}
		})
	}
}

// What a configuration takes away is not in the specs; here it is laid on two
// reports of one fleet.
func TestCompareTaken(t *testing.T) {
	files := map[string]string{"a.toml": car("four.toml", short), "four.toml": bare}
	for _, test := range []struct {
		name string
		do   func(r *Report)
		want []string
	}{
		{"a limit is loosened", func(r *Report) {
			r.Taken.Loosened = []policies.Loosened{{Limit: "lines.age.most", Was: "5 years", Is: "9 years", Looser: true}}
			r.Digest = "another"
		}, []string{"= own.short||a.toml|lines.vent", "< limit loosened: lines.age.most is 9 years, looser than 5 years"}},
		{"a rule is skipped", func(r *Report) {
			r.Taken.Skipped, r.Asked, r.Findings = []string{"own.short (.fitup.toml)"}, nil, nil
			r.Asked = append(r.Asked, "own.deadly")
		}, []string{"- own.short a.toml lines.vent: not asked", "< rule skipped: own.short (.fitup.toml)"}},
		{"an own rule is deleted", func(r *Report) { r.Asked, r.Findings = r.Asked[:1], nil },
			[]string{"- own.short a.toml lines.vent: not asked", "< rule gone: own.short"}},
		{"an own rule is rewritten", func(r *Report) { r.Digest = "another" },
			[]string{"= own.short||a.toml|lines.vent", "< rules changed: the workshop's own rules or limits are not what they were"}},
		{"less fails", func(r *Report) { r.Taken.FailOn = "never (.fitup.toml)" },
			[]string{"= own.short||a.toml|lines.vent", "< fails only from: never (.fitup.toml)"}},
		{"a baseline", func(r *Report) { r.Covered, r.Findings = r.Findings, nil },
			[]string{"- own.short a.toml lines.vent: covered by the baseline"}},
	} {
		t.Run(test.name, func(t *testing.T) {
			before, after := judged(t, 1, files), judged(t, 1, files)
			test.do(after)
			if diff := cmp.Diff(test.want, told(Compare(before, after, Comparison{}))); diff != "" {
				t.Errorf("-want +got:\n%s", diff)
			}
		})
	}
}

func TestJudgements(t *testing.T) {
	report := judged(t, 1, map[string]string{
		"a.toml": car("four.toml", short+"[lines.feed]\nhose = \"? of braid\"\n"), "four.toml": bare,
	})
	vent, feed := "own.short||a.toml|lines.vent", "lines.feed"
	var got []string
	for j := range report.Accounts[0].Judgements() {
		at := ""
		for _, l := range j.Unclear {
			at += l.Path
		}
		got = append(got, fmt.Sprintf("%s %s %t unclear=%s found=%s", report.Accounts[0].File, j.Rule, j.Applied, at, strings.Join(j.Found, ",")))
	}
	want := []string{
		"a.toml own.deadly true unclear=" + feed + " found=",
		"a.toml own.short true unclear=" + feed + " found=" + vent,
	}
	if diff := cmp.Diff(want, got); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
}

func day(text string) time.Time {
	d, err := time.Parse(time.DateOnly, text)
	if err != nil {
		panic(err)
	}
	return d
}

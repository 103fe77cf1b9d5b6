package judge

import (
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"
)

const deadly = "[lines.hot]\nhose = \"0.5 m of braid\"\nsleeve = \"deadly\"\n"

func none(string) bool { return false }

// TestBaselineWritten holds the file to the byte: nobody should see a change in
// it that no change of the fleet has made.
func TestBaselineWritten(t *testing.T) {
	report := judged(t, 1, map[string]string{
		"a.toml": car("four.toml", with("vent")+with("feed")+deadly), "four.toml": bare,
	})
	b := NewBaseline("old.txt", report)
	want := `# Findings that were there when fitup was taken up, one a line: rule, case, file
# and subject. They are set aside until the last day. A danger never is.
# fitup check --baseline FILE --write-baseline takes out what has been mended.

until 2027-05-25

own.short||a.toml|lines.feed
own.short||a.toml|lines.vent
`
	if diff := cmp.Diff(want, string(b.Text())); diff != "" {
		t.Errorf("-want +got:\n%s", diff)
	}
	read, err := ReadBaseline("old.txt", b.Text())
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(want, string(read.Text())); diff != "" {
		t.Errorf("read and written again (-want +got):\n%s", diff)
	}
}

func TestBaselineOfHostileNames(t *testing.T) {
	for _, id := range []string{"r.s||a\nb.toml|lines.x", "r.s||\u202egnp.toml|x", "r.s||a\xffb.toml|x", `r.s||"q\".toml|x`, "r.s||# a.toml|x", "r.s|| a.toml|x"} {
		b := &Baseline{Until: day("2027-01-01"), Last: []string{id}}
		read, err := ReadBaseline("b.txt", b.Text())
		if err != nil {
			t.Errorf("%q: %v", id, err)
			continue
		}
		if diff := cmp.Diff([]string{id}, read.Last); diff != "" {
			t.Error(diff)
		}
	}
}

func TestBaselineApplied(t *testing.T) {
	const (
		vent = "own.short||a.toml|lines.vent\n"
		feed = "own.short||a.toml|lines.feed\n"
	)
	for _, test := range []struct {
		name, until, entries string
		whole                bool
		gone                 func(string) bool
		want                 []string
		covered              int
		last                 []string
	}{
		{"covers on its last day", "2026-11-25", vent, false, none,
			[]string{"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]"}, 1, []string{vent}},
		{"runs out the day after", "2026-11-24", vent, false, none, []string{
			"a.toml:6:9: fault: lines.vent is 0.5 m long [own.short]",
			"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]",
			"old.txt:1:1: fault: the baseline ran out on 2026-11-24: what it covered is in force again (1) [baseline.expired]"}, 0, []string{vent}},
		{"never covers a danger", "2027-01-01", vent + "own.deadly||a.toml|lines.hot\n", false, none, []string{
			"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]",
			"old.txt:3:1: fault: own.deadly||a.toml|lines.hot is a danger, and no baseline covers one [baseline.danger]"}, 1, []string{vent}},
		{"an entry that is mended", "2027-01-01", feed + vent, false, none, []string{
			"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]",
			"old.txt:2:1: advice: nothing is found any more of own.short||a.toml|lines.feed [baseline.stale]"}, 1, []string{vent}},
		{"an entry of a car that was not judged", "2027-01-01", vent + "own.short||b.toml|lines.vent\n", false, none,
			[]string{"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]"}, 1, []string{vent, "own.short||b.toml|lines.vent\n"}},
		{"an entry of a file that several cars share", "2027-01-01", vent + "own.short||four.toml|lines.vent\n", false, none,
			[]string{"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]"}, 1, []string{vent, "own.short||four.toml|lines.vent\n"}},
		{"the same, when all was judged", "2027-01-01", vent + "own.short||four.toml|lines.vent\n", true, none, []string{
			"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]",
			"old.txt:3:1: advice: nothing is found any more of own.short||four.toml|lines.vent [baseline.stale]"}, 1, []string{vent}},
		{"an entry of a file that is gone", "2027-01-01", vent + "own.short||z.toml|lines.vent\n", false, func(file string) bool { return file == "z.toml" }, []string{
			"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]",
			"old.txt:3:1: advice: nothing is found any more of own.short||z.toml|lines.vent [baseline.stale]"}, 1, []string{vent}},
		{"an entry of a rule that was not asked", "2027-01-01", vent + "lines.age||a.toml|lines.vent\n", false, none,
			[]string{"a.toml:9:9: danger: lines.hot is 0.5 m long [own.deadly]"}, 1, []string{"lines.age||a.toml|lines.vent\n", vent}},
	} {
		t.Run(test.name, func(t *testing.T) {
			report := judged(t, 1, map[string]string{"a.toml": car("four.toml", short+deadly), "four.toml": bare})
			b, err := ReadBaseline("old.txt", []byte("until "+test.until+"\n"+test.entries))
			if err != nil {
				t.Fatal(err)
			}
			b.Apply(report, test.whole, test.gone)
			if diff := cmp.Diff(test.want, lines(report.Findings)); diff != "" {
				t.Errorf("-want +got:\n%s", diff)
			}
			if len(report.Covered) != test.covered || report.Baseline != b {
				t.Errorf("%d covered, want %d", len(report.Covered), test.covered)
			}
			var last []string
			for _, id := range b.Last {
				last = append(last, id+"\n")
			}
			if diff := cmp.Diff(test.last, last); diff != "" {
				t.Errorf("what is left (-want +got):\n%s", diff)
			}
		})
	}
}

// A waived finding keeps its entry: the waiver may be taken out first.
func TestBaselineOfAWaivedFinding(t *testing.T) {
	report := judged(t, 1, map[string]string{"a.toml": car("four.toml", short+waiverOfVent), "four.toml": bare})
	b, err := ReadBaseline("old.txt", []byte("until 2027-01-01\nown.short||a.toml|lines.vent\n"))
	if err != nil {
		t.Fatal(err)
	}
	b.Apply(report, true, none)
	if len(report.Findings) != 0 || len(report.Covered) != 0 || len(b.Last) != 1 {
		t.Errorf("in force %v, %d covered, left %q", lines(report.Findings), len(report.Covered), b.Last)
	}
}

func TestBadBaseline(t *testing.T) {
	for _, test := range []struct{ text, want string }{
		{"", "it has no last day; write a line such as: until 2027-03-31"},
		{"# none\n\n", "it has no last day; write a line such as: until 2027-03-31"},
		{"until soon", `line 1: "soon" is no day; write one such as 2027-03-31`},
		{"until 2027-02-30\n", `line 1: "2027-02-30" is no day; write one such as 2027-03-31`},
		{"until 2027-03-31\r\nuntil 2027-04-01\r\n", "line 2: a second last day; line 1 has one"},
		{"until 2027-03-31\nfuel feed\n", `line 2: "fuel feed" is no finding; --write-baseline writes them`},
		{"until 2027-03-31\na|b|c|\"\n", `line 2: "a|b|c|\"" is no finding; --write-baseline writes them`},
		{"<<<<<<< HEAD\nuntil 2027-03-31\n", "line 1: a mark of a conflict; keep the lines of both sides and take the marks out"},
	} {
		_, err := ReadBaseline("b.txt", []byte(test.text))
		if err == nil || err.Error() != test.want {
			t.Errorf("%q:\n got %v\nwant %s", test.text, err, test.want)
		}
	}
	if _, err := ReadBaseline("b.txt", []byte(strings.ReplaceAll("until 2027-03-31\na.b||x.toml|y\na.b||x.toml|y\n", "\n", "\r\n"))); err != nil {
		t.Errorf("a merge may leave a line twice: %v", err)
	}
}

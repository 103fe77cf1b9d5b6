package policies

import (
	"cmp"
	"fmt"
	"strings"
	"testing"
	"testing/fstest"
	"time"

	diff "github.com/google/go-cmp/cmp"
)

// digits is a list to count with: some few of it make many.
const digits = `
digits := ["0", "1", "2", "3", "4", "5", "6", "7", "8", "9", "a", "b", "c", "d", "e", "f"]
`

// each is a chain of lines NAME1 := ..., NAME2 := ... of which each is made of the
// one before, written as %[1]s.
func each(name, first, line string, n int) string {
	var b strings.Builder
	fmt.Fprintf(&b, "\n%s0 := %s\n", name, first)
	for i := range n {
		fmt.Fprintf(&b, "%s%d := %s\n", name, i+1, fmt.Sprintf(line, fmt.Sprint(name, i)))
	}
	return b.String()
}

// found is a set of findings that holds figure under some conditions.
func found(figure, conditions string) string {
	return fmt.Sprintf("\nfindings contains {\"subject\": line.path, \"figures\": {\"length\": %s}} if {\n\tsome line in input.lines\n\t%s\n}\n", figure, conditions)
}

const (
	fourDeep = "some a in digits; some b in digits; some c in digits; some d in digits"
	shared   = "[a | " + fourDeep + "]"
	wide     = "[a | " + fourDeep + "; some e in [1, 2, 3, 4]]"
)

// hostile are rules that would take all time or memory there is, each with what is
// said of it, and the patience that is needed to hear it.
var hostile = map[string]struct {
	text, want string
	patience   time.Duration // a minute if it is not given
}{
	"unfolds as it is read": {text: each("x", "[input.date]", "[%[1]s, %[1]s]", 40) + found("1", "x40 == x39"),
		want: "x15 unfolds to more than 100000 values"},
	"unfolds through names": {text: each("x", "[input.date]", "[a | a = [b, b]; b = %[1]s]", 40) + found("1", "x40 == x39"),
		want: "unfolds to more than 100000 values"},
	"unfolds in a function": {text: "\ntwice(x) := [x, x]\n" + each("x", "input.date", "twice(twice(%[1]s))", 20) + found("1", "x20 == 1"),
		want: "unfolds to more than 100000 values"},
	"unfolds its answer": {text: digits + each("x", shared, "[%[1]s, %[1]s]", 11) + found("x11", "true"),
		want: "the objects hold more than 100000 values"},
	"unfolds whom it judges": {text: digits + each("x", shared, "[%[1]s, %[1]s]", 11) + "\njudges contains {\"subject\": x11, \"needs\": []}",
		want: "the answer is too large"},
	"compares for ever": {text: digits + each("x", wide, "[%[1]s, %[1]s]", 12) + each("y", wide, "[%[1]s, %[1]s]", 12) + found("1", "x12 == y12"),
		want: "no answer within 5s", patience: 5 * time.Second},
	"asks for ever": {text: digits + found("1", fourDeep+"; some e in digits; some f in digits; some g in digits; a == \"x\""),
		want: "no answer within 5s", patience: 5 * time.Second},
	"compiles for ever": {text: "\nx := " + strings.Repeat("{1 | ", 60) + "true" + strings.Repeat("}", 60),
		want: "bench/failing.rego:1: it does not compile within 2s", patience: 2 * time.Second},
	"is nested": {text: "\nx := " + strings.Repeat("[", 5000) + strings.Repeat("]", 5000),
		want: "this is nested more than 64 deep"},
	"is a long sum": {text: "\nx := 1" + strings.Repeat(" + 1", 10000),
		want: "this is nested more than 64 deep"},
	"is a large file": {text: strings.Repeat("\n# a remark that says nothing", 3000),
		want: "it is larger than 64 KiB"},
	"makes a long text": {text: each("s", `"sixteen letters."`, `concat("", [%[1]s, %[1]s, %[1]s, %[1]s, %[1]s])`, 6) + found("s6", "true"),
		want: "the text would have 250000 bytes; the most is 65536"},
	"makes a long number": {text: each("m", "99999999999999999999", "%[1]s * %[1]s", 12) + found("m12", "true"),
		want: "the number would have 1280 characters; the most is 1024"},
	"makes a long array": {text: digits + each("a", shared, "array.concat(%[1]s, %[1]s)", 9) + found("1", "count(a9) == 0"),
		want: "the array would have 131072 elements; the most is 100000"},
	"finds a hundred thousand": {text: digits + found("n", "some n, _ in many") + "\nmany := [a | " + fourDeep + "; some e in [1, 2]]\n",
		want: "the answer is too large"},
	"finds too many": {text: digits + found("n", "some n, _ in many") + "\nmany := " + shared + "\n",
		want: "bench/failing.rego: 65536 findings in one document; the most is 10000"},
	"tells a novel": {text: found(`"`+strings.Repeat("x", 5000)+`"`, "true"),
		want: "its texts have 5016 bytes; the most is 4096"},
	"METADATA of aliases": {want: "METADATA"},
}

// TestHostileRules stops each in time, names it, and lets the others judge.
func TestHostileRules(t *testing.T) {
	for name, test := range hostile {
		t.Run(name, func(t *testing.T) {
			text := ownRule("failing", test.text)
			if test.text == "" {
				bomb := "#   figures: &a0 {length: {dimension: length}}\n"
				for i := range 12 {
					bomb += fmt.Sprintf("#   b%d: &a%d [*a%d%s]\n", i, i+1, i, strings.Repeat(fmt.Sprintf(", *a%d", i), 9))
				}
				text = strings.Replace(text, "#   figures:", bomb+"#   figures:", 1)
			}
			start := time.Now()
			e := newEngine(t, Options{Only: []string{"own"}, Own: ownFolder(map[string]string{"failing.rego": text}), Timeout: cmp.Or(test.patience, time.Minute)})
			got := evaluate(t, e, joined(line("feed", 3)))
			if took := time.Since(start); test.patience > 0 && took > 10*test.patience {
				t.Errorf("it took %v", took)
			}
			said := fmt.Sprint(e.Faults(), got.Faults)
			for _, f := range append(e.Faults(), got.Faults...) {
				if f.Rule != "own.failing" || len(f.Message) > 400 {
					t.Errorf("fault %q", f)
				}
			}
			if !strings.Contains(said, test.want) {
				t.Errorf("faults %s, want %q", said, test.want)
			}
			if wrong := diff.Diff([]Finding{longFinding}, onlyOf("own.whole", got.Findings)); wrong != "" {
				t.Errorf("the whole rule's findings (-want +got)\n%s", wrong)
			}
		})
	}
}

func onlyOf(rule string, findings []Finding) (only []Finding) {
	for _, f := range findings {
		if f.Rule == rule {
			only = append(only, f)
		}
	}
	return only
}

// TestStoppedRuleIsNotAskedAgain bounds what a fleet costs.
func TestStoppedRuleIsNotAskedAgain(t *testing.T) {
	text := ownRule("failing", digits+found("1", fourDeep+"; some e in digits; some f in digits; some g in digits; a == \"x\""))
	e := newEngine(t, Options{Only: []string{"own"}, Own: ownFolder(map[string]string{"failing.rego": text}), Timeout: 4 * time.Second})
	document := joined(line("feed", 3))
	want := []Fault{{"own.failing", "no answer within 4s; it was not asked again"}}
	if wrong := diff.Diff(want, evaluate(t, e, document).Faults); wrong != "" {
		t.Fatalf("the first document's faults (-want +got)\n%s", wrong)
	}
	start := time.Now()
	for range 100 {
		got := evaluate(t, e, document)
		if wrong := diff.Diff([]Finding{longFinding}, got.Findings); wrong != "" || len(got.Faults) > 0 {
			t.Fatalf("later faults %q, findings (-want +got)\n%s", got.Faults, wrong)
		}
	}
	if took := time.Since(start); took > 20*time.Second {
		t.Errorf("100 documents more took %v", took)
	}
}

// TestMostOwnRules leaves out, by name, what is beyond the number.
func TestMostOwnRules(t *testing.T) {
	folder := Folder{"bench", fstest.MapFS{}}
	for i := range mostOwnRules + 2 {
		name := fmt.Sprintf("r%03d", i)
		folder.FS.(fstest.MapFS)[name+".rego"] = &fstest.MapFile{Data: []byte(ownRule(name, ""))}
	}
	e := &Engine{}
	list, err := e.list(Options{Only: []string{"own"}, Own: []Folder{folder}})
	if err != nil || len(list) != mostOwnRules {
		t.Errorf("%d rules, %v", len(list), err)
	}
	want := []Fault{
		{"own.r100", "bench/r100.rego:1: not read; a workshop has at most 100 rules of its own"},
		{"own.r101", "bench/r101.rego:1: not read; a workshop has at most 100 rules of its own"},
	}
	if wrong := diff.Diff(want, e.Faults()); wrong != "" {
		t.Errorf("faults (-want +got)\n%s", wrong)
	}
}

// TestHonestRules holds the bounds of own rules against the built-in ones: none of
// them comes near.
func TestHonestRules(t *testing.T) {
	list, err := builtInFiles()
	if err != nil {
		t.Fatal(err)
	}
	for _, f := range list {
		m := f.load()
		if m.err != nil {
			t.Fatal(m.err)
		}
		if err := checkUnfolded(m.parsed); err != nil {
			t.Error(err)
		}
		if size := len(m.text); size > mostRuleSize/2 {
			t.Errorf("%s has %d bytes", f.file, size)
		}
	}
}

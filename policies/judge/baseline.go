package judge

import (
	"errors"
	"fmt"
	"maps"
	"slices"
	"strconv"
	"strings"
	"time"

	"fitup/policies"
	"fitup/spec/source"
)

// A Baseline lists the findings that were there when a workshop took the tool
// up. Until its last day they are set aside, so that what is new stands out. It
// covers a finding by its identity, never a danger, and it only ever shrinks.
//
// As a file it is lines: remarks that begin with "#", one line `until DAY`, and
// one line for each finding, which is its identity with what could not stand on
// a line written as in a Go string.
type Baseline struct {
	Name  string    // of the file
	Until time.Time // last day
	Last  []string  // identities, sorted: those that are left after Apply

	lines map[string]int // of each identity; 0 in one that was not read
	until int            // line of the last day
	text  []string
}

// baselineHead begins every baseline.
const baselineHead = `# Findings that were there when fitup was taken up, one a line: rule, case, file
# and subject. They are set aside until the last day. A danger never is.
# fitup check --baseline FILE --write-baseline takes out what has been mended.
`

// baselineMonths is how long a new baseline lasts unless its author writes
// another day.
const baselineMonths = 6

// ReadBaseline reads the text of a baseline, which reports call by a name. Its
// error names the line.
func ReadBaseline(name string, text []byte) (*Baseline, error) {
	b := &Baseline{Name: name, lines: map[string]int{}}
	for line := range strings.Lines(string(text)) {
		b.text = append(b.text, strings.TrimRight(line, "\r\n"))
	}
	for i, line := range b.text {
		if err := b.read(i+1, strings.TrimSpace(line)); err != nil {
			return nil, fmt.Errorf("line %d: %w", i+1, err)
		}
	}
	if b.until == 0 {
		return nil, errors.New("it has no last day; write a line such as: until 2027-03-31")
	}
	b.Last = slices.Sorted(maps.Keys(b.lines))
	return b, nil
}

func (b *Baseline) read(n int, line string) error {
	day, isDay := strings.CutPrefix(line, "until ")
	switch {
	case line == "" || strings.HasPrefix(line, "#"):
	case isDay && b.until != 0:
		return fmt.Errorf("a second last day; line %d has one", b.until)
	case isDay:
		last, err := time.Parse(time.DateOnly, strings.TrimSpace(day))
		if err != nil {
			return fmt.Errorf("%q is no day; write one such as 2027-03-31", strings.TrimSpace(day))
		}
		b.Until, b.until = last, n
	case strings.HasPrefix(line, "<<<<<<<") || strings.HasPrefix(line, "=======") || strings.HasPrefix(line, ">>>>>>>"):
		return fmt.Errorf("a mark of a conflict; keep the lines of both sides and take the marks out")
	default:
		id, err := strconv.Unquote(`"` + line + `"`)
		if err != nil || strings.Count(id, "|") < 3 {
			return fmt.Errorf("%q is no finding; --write-baseline writes them", line)
		}
		if b.lines[id] == 0 {
			b.lines[id] = n
		}
	}
	return nil
}

// NewBaseline covers the findings of a report that are in force, save dangers,
// until six months after its date.
func NewBaseline(name string, r *Report) *Baseline {
	b := &Baseline{Name: name, Until: r.Date.AddDate(0, baselineMonths, 0), lines: map[string]int{}}
	for _, f := range r.Findings {
		if coverable(&f) {
			b.lines[f.Identity()] = 0
		}
	}
	b.Last = slices.Sorted(maps.Keys(b.lines))
	return b
}

// coverable reports whether a baseline may cover a finding: no danger, and
// nothing about waivers and baselines themselves.
func coverable(f *Finding) bool {
	area, _, _ := strings.Cut(f.Rule, ".")
	return f.Level != policies.LevelDanger && area != baselineStale.Area && area != waiverUnused.Area
}

// Text is the file of a baseline, the same for the same findings.
func (b *Baseline) Text() []byte {
	var text strings.Builder
	fmt.Fprintf(&text, "%s\nuntil %s\n\n", baselineHead, b.Until.Format(time.DateOnly))
	for _, id := range b.Last {
		quoted := strconv.QuoteToGraphic(id)
		text.WriteString(quoted[1:len(quoted)-1] + "\n")
	}
	return []byte(text.String())
}

// Apply sets the findings of a report aside that the baseline covers, and adds
// findings about the baseline itself: that its last day is past, that it names a
// danger, and entries with nothing to cover. Those it strikes from Last.
//
// A car's own findings would show whenever it is judged; those of a file that
// several share only if all was judged. whole says that it was, and gone tells
// files that are not there any more.
func (b *Baseline) Apply(r *Report, whole bool, gone func(file string) bool) {
	r.Baseline = b
	used := map[string]bool{}
	dangers := map[string]bool{}
	past := r.Date.After(b.Until)
	var kept []Finding
	for _, f := range r.Findings {
		id := f.Identity()
		_, listed := b.lines[id]
		switch {
		case !listed:
			kept = append(kept, f)
			continue
		case !coverable(&f):
			dangers[id] = true
			kept = append(kept, f)
			continue
		}
		used[id] = true
		if past {
			kept = append(kept, f)
		} else {
			r.Covered = append(r.Covered, f)
		}
	}
	r.Findings = kept
	for _, f := range r.Waived { // a waiver may be taken out again
		used[f.Identity()] = true
	}
	if past {
		r.Findings = append(r.Findings, b.finding(baselineExpired, "until", b.until, "day", b.Until.Format(time.DateOnly), "count", strconv.Itoa(len(used))))
	}
	rules, cars := map[string]bool{}, map[string]bool{}
	for _, rule := range slices.Concat(r.Asked, ownIDs()) {
		rules[rule] = true
	}
	for _, o := range r.Accounts {
		cars[o.File] = cars[o.File] || !o.Alone
	}
	shows := func(id string) bool {
		parts := strings.SplitN(id, "|", 4)
		rule, file, rest := parts[0], parts[2], parts[3]
		alone := cars[file] && rules[rule] && !strings.HasPrefix(rule, fittedTwice.Area+".") && !strings.Contains(rest, "|with ")
		return whole || alone || gone(file)
	}
	b.Last = slices.DeleteFunc(b.Last, func(id string) bool {
		switch {
		case used[id]:
			return false
		case dangers[id]:
			r.Findings = append(r.Findings, b.finding(baselineRefused, id, b.lines[id], "finding", id))
			return true
		case !shows(id):
			return false
		}
		r.Findings = append(r.Findings, b.finding(baselineStale, id, b.lines[id], "finding", id))
		return true
	})
	sortFindings(r.Findings)
}

// WithoutStale leaves out what is said of entries that have been taken out of
// their baseline.
func WithoutStale(findings []Finding) []Finding {
	return slices.DeleteFunc(findings, func(f Finding) bool {
		return f.Rule == baselineStale.ID || f.Rule == baselineRefused.ID
	})
}

func (b *Baseline) finding(rule *policies.Rule, path string, line int, figures ...string) Finding {
	f := Finding{
		Rule: rule.ID, Level: rule.Level, Subject: "baseline",
		Fix: rule.Fix, Sources: rule.Sources, Rulebook: rule.Rulebook, Confidence: rule.Confidence,
	}
	for i := 0; i+1 < len(figures); i += 2 {
		f.Figures = append(f.Figures, Figure{Name: figures[i], Value: figures[i+1], Dimension: "text", Text: figures[i+1]})
	}
	slices.SortFunc(f.Figures, func(a, b Figure) int { return strings.Compare(a.Name, b.Name) })
	if line > 0 {
		f.Excerpt = b.text[line-1]
	}
	width := len([]rune(f.Excerpt))
	f.Location = Location{File: b.Name, Path: path, Place: source.Place{Line: line, Column: 1, EndLine: line, EndColumn: width + 1}}
	f.Message = fillIn(rule.Message, f.Path, f.Figures)
	return f
}

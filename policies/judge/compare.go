package judge

import (
	"cmp"
	"fmt"
	"maps"
	"slices"
	"strings"
	"time"

	"fitup/policies"
)

// A Change is what became of the findings of an earlier state of a fleet.
type Change struct {
	Since   string   // what the earlier state is called
	Appears []Turn   // findings in force that were not; Other is how they stood before
	Goes    []Turn   // findings that were in force, as they stood; Other is what is said of them now
	Stays   []string // identities of findings in force before and now, by their files now; sorted
	Known   []string // identities of all that there was before, in force or not, and of problems; sorted
	Shifts  []Shift  // what takes more, or less, away from the judgement than before
	// Unread are files that could not be read or judged before, by their names
	// now, sorted: whatever is found in them now appears.
	Unread []string
}

// A Turn is a finding that is in force on one side of a change only.
type Turn struct {
	Finding
	Other Standing // on the other side
}

// Standing is how a finding that is not in force stands.
type Standing string

const (
	Clear     Standing = "not found"                            // the rule judged it and found nothing, or it is not there
	SetAside  Standing = "set aside by a waiver"                // Waived
	Covered   Standing = "covered by the baseline"              // Covered
	Unclear   Standing = "could not be told"                    // what the rule needs is not written
	NotHeld   Standing = "outside its stage and rulebooks"      // the rule did not hold
	NotAsked  Standing = "not asked"                            // the rule was skipped, or was not there
	NotJudged Standing = "not judged, as a file cannot be read" // an error in it, or in one that it needs
)

// A Shift is one thing that a judgement is the less for on one side of a change.
type Shift struct {
	Kind  ShiftKind
	What  string
	Back  bool     // it was so before, and is no more
	Place Location // of a waiver
}

// ShiftKind says what has been taken away.
type ShiftKind string

const (
	LimitLoosened  ShiftKind = "limit loosened"
	RuleSkipped    ShiftKind = "rule skipped"
	RuleGone       ShiftKind = "rule gone"
	RulesOnly      ShiftKind = "no rules but"
	SpecExcluded   ShiftKind = "spec excluded"
	FailLowered    ShiftKind = "fails only from"
	WaiverHolds    ShiftKind = "waiver"
	RulesDifferent ShiftKind = "rules changed"
)

// A Comparison is what has to be known of two states beside their reports.
type Comparison struct {
	Since     string
	Moved     map[string]string // files by the name that they had, where that is another
	NotBefore []string          // cars and drivelines that could not be judged before
	NotNow    []string          // and now
}

// Compare tells what became of the findings of the earlier report. Findings are
// the same if their identities are, with files by their names now.
func Compare(before, after *Report, c Comparison) *Change {
	was, is := newSide(before, c.Moved, c.NotBefore), newSide(after, nil, c.NotNow)
	change := &Change{Since: c.Since, Shifts: shifts(before, after, c.Moved), Unread: slices.Sorted(maps.Keys(was.notJudged))}
	left := map[string]int{} // of the findings before, by identity: a rule may find two of one
	for _, f := range before.Findings {
		left[was.identity(f)]++
	}
	for _, f := range after.Findings {
		id := is.identity(f)
		if left[id] > 0 {
			left[id]--
			change.Stays = append(change.Stays, id)
			continue
		}
		change.Appears = append(change.Appears, Turn{f, was.standing(f)})
	}
	for _, f := range before.Findings {
		if id := was.identity(f); left[id] > 0 {
			left[id]--
			change.Goes = append(change.Goes, Turn{f, is.standing(was.moved(f))})
		}
	}
	for _, f := range slices.Concat(before.Findings, before.Waived, before.Covered) {
		change.Known = append(change.Known, was.identity(f))
	}
	for _, p := range slices.Concat(before.Problems, before.Notes) {
		p.File = was.name(p.File)
		change.Known = append(change.Known, p.Identity())
	}
	slices.Sort(change.Stays)
	slices.Sort(change.Known)
	return change
}

// A side is a report, looked up by what findings are about. Files are called as
// they are now.
type side struct {
	names     map[string]string
	waived    map[string]bool // identities
	covered   map[string]bool
	asked     map[string]bool // rules
	main      map[string]bool // files of compositions
	held      map[string]bool // rule and file of a composition
	unclear   map[string]bool // rule, file and path of a subject or collection
	notJudged map[string]bool // files
}

func newSide(r *Report, names map[string]string, notJudged []string) *side {
	s := &side{
		names: names, waived: map[string]bool{}, covered: map[string]bool{}, asked: map[string]bool{}, main: map[string]bool{},
		held: map[string]bool{}, unclear: map[string]bool{}, notJudged: map[string]bool{},
	}
	for _, f := range r.Waived {
		s.waived[s.identity(f)] = true
	}
	for _, f := range r.Covered {
		s.covered[s.identity(f)] = true
	}
	for _, rule := range slices.Concat(r.Asked, ownIDs()) {
		s.asked[rule] = true
	}
	for i := range r.Accounts {
		file := s.name(r.Accounts[i].File)
		s.main[file] = true
		for j := range r.Accounts[i].Judgements() {
			s.held[j.Rule+"|"+file] = true
			for _, l := range j.Unclear {
				s.unclear[j.Rule+"|"+s.name(l.File)+"|"+l.Path] = true
			}
		}
	}
	for _, file := range notJudged {
		s.notJudged[s.name(file)] = true
	}
	for _, p := range r.Problems {
		s.notJudged[s.name(p.File)] = true
	}
	return s
}

func (s *side) name(file string) string { return cmp.Or(s.names[file], file) }

// moved is a finding with its files called as they are now.
func (s *side) moved(f Finding) Finding {
	f.File, f.With = s.name(f.File), s.name(f.With)
	f.Also, f.SeenBy = slices.Clone(f.Also), slices.Clone(f.SeenBy)
	for i := range f.Also {
		f.Also[i].File = s.name(f.Also[i].File)
	}
	for i := range f.SeenBy {
		f.SeenBy[i] = s.name(f.SeenBy[i])
	}
	return f
}

func (s *side) identity(f Finding) string {
	if len(s.names) > 0 {
		f = s.moved(f)
	}
	return f.Identity()
}

// standing is how a finding that is in force on the other side stands on this.
func (s *side) standing(f Finding) Standing {
	id := f.Identity()
	switch {
	case s.waived[id]:
		return SetAside
	case s.covered[id]:
		return Covered
	case !s.asked[f.Rule]:
		return NotAsked
	}
	files := slices.Concat([]string{f.File, f.With}, f.SeenBy)
	for _, also := range f.Also {
		files = append(files, also.File)
	}
	judged, held := false, false
	for _, file := range files {
		if s.notJudged[file] {
			return NotJudged
		}
		judged = judged || s.main[file]
		held = held || s.held[f.Rule+"|"+file]
	}
	// What is not told of a collection is not told of anything in it.
	for path := f.Path; path != ""; path = path[:max(0, strings.LastIndexAny(path, ".#"))] {
		if s.unclear[f.Rule+"|"+f.File+"|"+path] {
			return Unclear
		}
	}
	if judged && !held && !isOwn(f.Rule) {
		return NotHeld
	}
	return Clear
}

func isOwn(rule string) bool {
	return slices.ContainsFunc(Own(), func(r *policies.Rule) bool { return r.ID == rule })
}

// shifts tells what takes away more, or less, than before.
func shifts(before, after *Report, moved map[string]string) []Shift {
	was, is := taken(before, moved), taken(after, nil)
	var all []Shift
	for _, s := range is {
		if !slices.ContainsFunc(was, s.same) {
			all = append(all, s)
		}
	}
	for _, s := range was {
		if !slices.ContainsFunc(is, s.same) {
			s.Back = true
			all = append(all, s)
		}
	}
	for _, rule := range before.Asked {
		there := slices.Contains(after.Asked, rule)
		area, _, _ := strings.Cut(rule, ".")
		skipped := slices.ContainsFunc(after.Taken.Skipped, func(said string) bool {
			name, _, _ := strings.Cut(said, " ")
			return name == rule || name == area
		})
		if !there && !skipped {
			all = append(all, Shift{Kind: RuleGone, What: rule})
		}
	}
	// The built-in rules are the same on both sides, so what else differs is a
	// limit or a rule of the workshop's own.
	told := func(s Shift) bool { return s.Kind == LimitLoosened || s.Kind == RuleSkipped || s.Kind == RuleGone }
	if before.Digest != after.Digest && !slices.ContainsFunc(all, told) {
		all = append(all, Shift{Kind: RulesDifferent, What: "the workshop's own rules or limits are not what they were"})
	}
	return all
}

func (s Shift) same(o Shift) bool { return s.Kind == o.Kind && s.What == o.What }

// taken lists what a report is the less for.
func taken(r *Report, moved map[string]string) []Shift {
	var all []Shift
	for _, l := range r.Taken.Loosened {
		all = append(all, Shift{Kind: LimitLoosened, What: fmt.Sprintf("%s is %s, looser than %s", l.Limit, l.Is, l.Was)})
	}
	for _, list := range []struct {
		kind  ShiftKind
		names []string
	}{{RuleSkipped, r.Taken.Skipped}, {RulesOnly, r.Taken.Only}, {SpecExcluded, r.Taken.Excluded}} {
		for _, name := range list.names {
			all = append(all, Shift{Kind: list.kind, What: name})
		}
	}
	if r.Taken.FailOn != "" {
		all = append(all, Shift{Kind: FailLowered, What: r.Taken.FailOn})
	}
	for _, w := range r.Waivers {
		file := cmp.Or(moved[w.File], w.File)
		for _, subject := range w.On {
			what := fmt.Sprintf("%s on %s in %s until %s", w.Rule, subject, file, w.Until.Format(time.DateOnly))
			all = append(all, Shift{Kind: WaiverHolds, What: what, Place: w.Location})
		}
	}
	return all
}

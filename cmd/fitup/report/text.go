package report

import (
	"cmp"
	"fmt"
	"io"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
	"fitup/policies/tables"
)

// measuresShown is how many keys to measure are printed unless all are wanted.
const measuresShown = 10

// Text prints a check for the builder at the bench: what can hurt first, then
// what else is wrong by file, then what to measure, and what was not judged.
func Text(w io.Writer, c *Check, s Style) error {
	t := textCheck{Check: c, Style: s, page: &page{width: s.Width, colour: s.Colour, to: w}}
	t.first()
	t.dangers()
	t.files()
	t.change()
	t.waived()
	t.unclear()
	t.measure()
	t.taken()
	t.faults()
	t.counts()
	t.cautions()
	t.gap()
	t.para(0, 0, Closing)
	return t.end()
}

type textCheck struct {
	*Check
	Style
	*page

	told map[string]judge.Location // where fix and source of a rule are printed
}

// first is the line that nobody must miss.
func (t *textCheck) first() {
	var parts []string
	if n := t.count(policies.LevelDanger); n > 0 {
		parts = append(parts, count(n, "danger", "dangers")+" found")
	}
	if n := len(t.WaivedDangers()); n > 0 {
		parts = append(parts, count(n, "danger", "dangers")+" waived")
	}
	if text := Unjudged(t.Check); text != "" {
		parts = append(parts, text)
	}
	if len(parts) > 0 {
		t.para(0, 0, "%s.", t.paint(red, strings.Join(parts, ", ")))
	}
}

// dangers prints what can hurt.
func (t *textCheck) dangers() {
	for _, f := range t.Fresh() {
		if f.Level == policies.LevelDanger {
			t.finding(f)
		}
	}
}

// files prints what else is wrong, file by file.
func (t *textCheck) files() {
	// Both lists are sorted by file.
	problems, found := t.Problems, t.Fresh()
	for len(problems)+len(found) > 0 {
		if len(found) == 0 || len(problems) > 0 && problems[0].File <= found[0].File {
			t.problem("error", red, problems[0])
			problems = problems[1:]
			continue
		}
		if found[0].Level != policies.LevelDanger {
			t.finding(found[0])
		}
		found = found[1:]
	}
	if len(t.Skipped)+len(t.Unread) > 0 {
		t.gap()
	}
	for _, name := range t.Skipped {
		t.para(0, 2, "not judged: %s: an error in it, or in a file that it needs", t.Shown(name))
	}
	for _, what := range t.Unread {
		t.para(0, 2, "not read: %s", what)
	}
}

// at is a place as editors follow it.
func (t *textCheck) at(l judge.Location) ink {
	return t.paint(bold, fmt.Sprintf("%s:%d:%d:", t.Shown(l.File), l.Line, l.Column))
}

// headline is the first line of a finding or error.
func (t *textCheck) headline(format string, args ...any) {
	t.gap()
	if t.Whole {
		t.line(format, args...)
		return
	}
	t.para(0, 4, format, args...)
}

func (t *textCheck) problem(word, colour string, p judge.Problem) {
	message := p.Message
	if p.Want != "" {
		message += ": " + p.Want
	}
	t.headline("%s %s: %s", t.at(p.Location), t.paint(colour, word), message)
	t.excerpt(p.Location, p.Excerpt)
}

var levelColours = map[policies.Level]string{policies.LevelDanger: red, policies.LevelFault: magenta, policies.LevelAdvice: bold}

func (t *textCheck) finding(f judge.Finding) {
	t.headline("%s %s: %s [%s]", t.at(f.Location), t.paint(levelColours[f.Level], f.Level.String()), f.Message, f.Rule)
	t.excerpt(f.Location, f.Excerpt)
	notes := t.untold(f, Notes(f, t.Shown))
	for _, n := range notes {
		if n.At != nil {
			t.item(2, n.Label+":", "%s %s", t.at(*n.At), n.Text)
		} else {
			t.itemOf(n.Label, n.Text)
		}
	}
}

// untold leaves of notes what is not yet told: of one rule that finds the same in
// thirty places, fix and source are printed at the first.
func (t *textCheck) untold(f judge.Finding, notes []Note) []Note {
	isShared := func(n Note) bool { return n.Label == "fix" || n.Label == "source" }
	said := f.Rule
	for _, n := range notes {
		if isShared(n) {
			said += "|" + n.Text
		}
	}
	first, told := t.told[said]
	if !told {
		if t.told == nil {
			t.told = map[string]judge.Location{}
		}
		t.told[said] = f.Location
		return notes
	}
	first.File = t.Shown(first.File)
	return append(slices.DeleteFunc(notes, isShared), Note{Label: "fix and source", Text: "as at " + PlaceText(first)})
}

func (t *textCheck) itemOf(label, text string) {
	if text != "" {
		t.item(2, label+":", "%s", text)
	}
}

// excerpt prints the line of a file with a mark under what is meant. Of a long
// line it prints what is around the mark.
func (t *textCheck) excerpt(l judge.Location, text string) {
	if strings.TrimSpace(text) == "" {
		return
	}
	var shown, mark strings.Builder
	start, end := l.Column, max(l.EndColumn, l.Column+1)
	if l.EndLine > l.Line {
		end = len(text) + 1
	}
	for i, r := range []rune(text) {
		piece := Plain(string(r))
		shown.WriteString(piece)
		sign := " "
		if i+1 >= start && i+1 < end {
			sign = "^"
		}
		mark.WriteString(strings.Repeat(sign, columns(piece)))
	}
	line, under := window([]rune(shown.String()), []rune(mark.String()), t.width-len("      | "))
	t.line("%5d | %s", l.Line, ink(line))
	if under = strings.TrimRight(under, " "); under != "" {
		t.line("      | %s", t.paint(red, under))
	}
}

// window cuts a line and the mark under it to a width, around the mark's start.
func window(line, mark []rune, width int) (string, string) {
	if len(line) <= width {
		return string(line), string(mark)
	}
	from := max(0, slices.Index(mark, '^')-width/2)
	from = min(from, len(line)-width)
	to := from + width
	cutLine, cutMark := slices.Clone(line[from:to]), slices.Clone(mark[from:to])
	if from > 0 {
		cutLine[0], cutMark[0] = '…', ' '
	}
	if to < len(line) {
		cutLine[width-1], cutMark[width-1] = '…', ' '
	}
	return string(cutLine), string(cutMark)
}

// waived prints the dangers that somebody set aside.
func (t *textCheck) waived() {
	for _, f := range t.WaivedDangers() {
		t.headline("%s %s: %s [%s]", t.at(f.Location), t.paint(red, "waived danger"), f.Message, f.Rule)
		t.item(2, "waived:", "until %s, %s %s", f.Waiver.Until.Format(time.DateOnly), t.at(f.Waiver.Location), f.Waiver.Why)
		t.itemOf("caution", f.Caution)
	}
}

// unclear prints what is written but says too little.
func (t *textCheck) unclear() {
	for _, n := range t.Notes {
		t.problem("unclear", magenta, n)
	}
}

// measure prints what to write so that more can be told.
func (t *textCheck) measure() {
	if len(t.Measures) == 0 {
		return
	}
	t.gap()
	t.para(0, 0, "%s, most wanted first:", t.paint(bold, "What to measure"))
	shown := t.Measures
	if !t.All && len(shown) > measuresShown {
		shown = shown[:measuresShown]
	}
	for _, m := range shown {
		asked := ""
		if m.Asked {
			asked = " (written \"?\")"
		}
		t.para(2, 4, "%s %s%s: %s", t.at(m.Location), m.Path, asked, Waits(m))
	}
	if left := len(t.Measures) - len(shown); left > 0 {
		t.para(2, 4, "and %d more: --all shows them", left)
	}
}

// taken says what was not judged because somebody chose so.
func (t *textCheck) taken() {
	if t.Taken.Nothing() {
		return
	}
	t.gap()
	t.para(0, 0, "%s:", t.paint(bold, "Taken away from this judgement"))
	for _, each := range TakenAway(t.Taken) {
		word, what, _ := strings.Cut(each, ": ")
		t.item(2, word+":", "%s", what)
	}
}

// faults prints what broke in the tool.
func (t *textCheck) faults() {
	if len(t.Faults) > 0 {
		t.gap()
	}
	for _, f := range t.Faults {
		t.para(0, 2, "%s %s: %s", t.paint(red, "rule broken:"), cmp.Or(f.Rule, "one of the rules"), f.Message)
	}
}

// counts is the line of figures.
func (t *textCheck) counts() {
	t.gap()
	t.para(0, 0, "%s", ReadText(t.Check))
	if text := changeTally(t.Check); text != "" {
		t.para(0, 0, "%s", text)
	}
	last := Tally(t.Check)
	if text := Unjudged(t.Check); text != "" {
		last += " " + sentences(text) // said at the top too, which may be out of sight
	}
	t.para(0, 0, "%s", last)
}

// cautions prints the usual cautions of the areas that a danger stands in.
func (t *textCheck) cautions() {
	for i, c := range CautionsFor(slices.Concat(t.Findings, t.WaivedDangers())) {
		if i == 0 {
			t.gap()
			t.para(0, 0, "%s:", t.paint(bold, "Before you go near"))
		}
		t.item(2, c.Area+":", "%s", c.Text)
	}
}

// SourcesShort names what a rule rests on, in a line.
func SourcesShort(sources []policies.Source, confidence policies.Confidence) string {
	var all []string
	for _, s := range sources {
		all = append(all, SourceShort(s.Key, s.Clause))
	}
	// Of two editions the one may say no more than the other.
	less := func(short string) bool {
		return slices.ContainsFunc(all, func(long string) bool {
			return strings.HasPrefix(long, short+",") || strings.HasPrefix(long, short+":")
		})
	}
	text := strings.Join(slices.DeleteFunc(slices.Clone(all), less), "; ")
	if confidence == policies.Memory && !strings.HasPrefix(text, "from memory") {
		text = "from memory: " + text
	}
	return text
}

// SourceShort names a source by its short title and the clause.
func SourceShort(key, clause string) string {
	cited, ok := tables.Source(key)
	title := cited.Title
	switch {
	case !ok:
		title = key
	case cited.Kind == "practice":
		title = "common practice"
	case cited.Kind == "memory":
		title = "from memory"
	case cited.Kind == "standard" || cited.Kind == "regulation":
		title, _, _ = strings.Cut(title, ", ") // its number; the name follows
	}
	if clause == "" {
		return title
	}
	return title + ": " + clause
}

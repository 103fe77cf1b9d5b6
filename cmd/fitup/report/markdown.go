package report

import (
	"fmt"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
)

// markdownMost is how many bytes a summary may have: a comment on GitHub takes
// 65,536 characters.
const markdownMost = 60_000

// Markdown prints a check for a job summary, or a comment on a change: dangers
// first. Nothing from a spec can be markup in it.
func Markdown(c *Check, _ Style) ([]byte, error) {
	m := markdownCheck{Check: c}
	m.line("## fitup: %s", ink(strings.TrimSuffix(Tally(c), ".")))
	if text := Unjudged(c); text != "" {
		m.section("**%s.**", ink(text))
	}
	if c.Change != nil {
		m.section("%s", changeTally(c))
	}
	m.problems()
	m.findings()
	m.change()
	m.waived()
	m.measure()
	m.list("Taken away from this judgement", TakenAway(c.Taken))
	m.section("%s", ReadText(c))
	m.section("%s", Closing)
	return []byte(m.String()), nil
}

type markdownCheck struct {
	*Check
	strings.Builder
}

// line writes a line; whatever is put in it is escaped, save what has type ink.
func (m *markdownCheck) line(format string, args ...any) {
	for i, arg := range args {
		switch arg := arg.(type) {
		case string:
			args[i] = markdown(arg)
		case ink:
			args[i] = string(arg)
		}
	}
	fmt.Fprintf(m, format+"\n", args...)
}

// section is a line with an empty one above it.
func (m *markdownCheck) section(format string, args ...any) {
	m.WriteByte('\n')
	m.line(format, args...)
}

func (m *markdownCheck) full() bool { return m.Len() > markdownMost }

func (m *markdownCheck) list(title string, all []string) {
	if len(all) == 0 {
		return
	}
	m.section("### %s\n", ink(title))
	for i, each := range all {
		if m.full() {
			m.line("- and %d more", len(all)-i)
			return
		}
		m.line("- %s", each)
	}
}

func (m *markdownCheck) problems() {
	var all []string
	for _, f := range m.Faults {
		all = append(all, "a rule is broken: "+strings.TrimPrefix(f.Rule+": "+f.Message, ": "))
	}
	for _, what := range m.Unread {
		all = append(all, "not read: "+what)
	}
	for _, name := range m.Skipped {
		all = append(all, "not judged: "+name+": an error in it, or in a file that it needs")
	}
	if len(m.Problems)+len(all) == 0 {
		return
	}
	m.section("### Errors\n")
	for _, p := range m.Problems {
		if m.full() {
			break
		}
		m.line("- %s %s", code(PlaceText(p.Location)), strings.TrimSuffix(p.Message+": "+p.Want, ": "))
	}
	for _, each := range all {
		if m.full() {
			m.line("- and more")
			break
		}
		m.line("- %s", each)
	}
}

var markdownTitles = []struct {
	level policies.Level
	title string
}{{policies.LevelDanger, "Dangers"}, {policies.LevelFault, "Faults"}, {policies.LevelAdvice, "Advice"}}

func (m *markdownCheck) findings() {
	found := m.Fresh()
	for _, of := range markdownTitles {
		title, left := of.title, 0
		for _, f := range found {
			switch {
			case f.Level != of.level:
				continue
			case m.full():
				left++
				continue
			case title != "":
				m.section("### %s\n", ink(title))
				title = ""
			}
			m.finding(f)
		}
		if left > 0 {
			m.line("- and %s more, for which there is no room here", ink(count(left, "finding", "findings")))
		}
	}
}

func (m *markdownCheck) finding(f judge.Finding) {
	m.line("- %s %s (%s)", code(PlaceText(f.Location)), f.Message, code(f.Rule))
	m.item("caution", f.Caution)
	m.item("fix", f.Fix)
	m.item("source", SourcesShort(f.Sources, f.Confidence))
	m.item("rests on a guess", strings.Join(f.Guessed, ", "))
	m.item("on trial with", f.With)
	m.item("seen by", strings.Join(f.SeenBy, ", "))
}

func (m *markdownCheck) item(word, text string) {
	if text != "" {
		m.line("  - %s: %s", ink(word), text)
	}
}

// change is what a change does beside what it breaks.
func (m *markdownCheck) change() {
	if m.Change == nil {
		return
	}
	var mended, lost, shifts []string
	for _, turn := range m.Change.Goes {
		text := PlaceText(turn.Location) + " " + turn.Message + " [" + turn.Rule + "]"
		if turn.Other == judge.Clear {
			mended = append(mended, text)
		} else {
			lost = append(lost, string(turn.Other)+": "+text)
		}
	}
	for _, s := range m.Change.Shifts {
		shifts = append(shifts, shiftText(s))
	}
	m.list("Mended", mended)
	m.list("Gone, but not mended", lost)
	m.list("How this is judged has changed", shifts)
}

func (m *markdownCheck) waived() {
	var all []string
	for _, f := range m.WaivedDangers() {
		all = append(all, fmt.Sprintf("%s %s [%s]: until %s: %s", PlaceText(f.Location), f.Message, f.Rule, f.Waiver.Until.Format(time.DateOnly), f.Waiver.Why))
	}
	m.list("Waived dangers", all)
}

func (m *markdownCheck) measure() {
	var all []string
	for i, each := range m.Measures {
		if i == measuresShown {
			all = append(all, fmt.Sprintf("and %d more", len(m.Measures)-i))
			break
		}
		all = append(all, fmt.Sprintf("%s %s: %s", PlaceText(each.Location), each.Path, Waits(each)))
	}
	m.list("What to measure, most wanted first", all)
	var unclear []string
	for _, n := range m.Notes {
		unclear = append(unclear, fmt.Sprintf("%s %s: %s", PlaceText(n.Location), n.Message, n.Want))
	}
	m.list("Unclear", unclear)
}

// markdownMarks are the characters that can be, or begin, markup in GitHub
// Flavored Markdown: all of ASCII's punctuation may be escaped there.
const markdownMarks = "\\`*_[]<>&~|!$:.+-=)"

// markdown is a text that is no markup: neither Markdown nor HTML, no link, no
// mention, no reference to an issue.
func markdown(text string) string {
	var b strings.Builder
	for _, r := range Plain(text) {
		switch {
		case r == '@' || r == '#': // GitHub looks for names and numbers after escapes are gone, but not in code
			b.WriteString("`" + string(r) + "`")
		case strings.ContainsRune(markdownMarks, r):
			b.WriteString(`\` + string(r))
		default:
			b.WriteRune(r)
		}
	}
	return b.String()
}

// code is a text as it is written: between more backticks than it has.
func code(text string) ink {
	text = Plain(text)
	fence, run := "`", 0
	for _, r := range text {
		if run++; r != '`' {
			run = 0
		}
		for len(fence) <= run {
			fence += "`"
		}
	}
	if strings.HasPrefix(text, "`") || strings.HasSuffix(text, "`") || strings.HasPrefix(text, " ") && strings.HasSuffix(text, " ") {
		text = " " + text + " "
	}
	return ink(fence + text + fence)
}

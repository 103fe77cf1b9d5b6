package report

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
)

// Words that several forms share. All are escaped: a form adds to that what its
// own syntax asks for.

// label puts a word before a text; nothing before nothing.
func label(word, text string) string {
	if text == "" {
		return ""
	}
	return word + ": " + text
}

// flat is a text on one line.
func flat(text string) string { return strings.Join(strings.Fields(text), " ") }

// sentences makes a sentence of each text that is not empty, and a line of each
// sentence.
func sentences(texts ...string) string {
	var all []string
	for _, text := range texts {
		if text = strings.TrimSpace(Plain(text)); text == "" {
			continue
		}
		if first := text[0]; 'a' <= first && first <= 'z' && !strings.ContainsAny(strings.Fields(text)[0], "._-") {
			text = strings.ToUpper(text[:1]) + text[1:]
		}
		if !strings.ContainsAny(text[len(text)-1:], ".!?") {
			text += "."
		}
		all = append(all, text)
	}
	return strings.Join(all, "\n")
}

// Tally counts what a check found, in a sentence. Where nothing was judged it
// does not say that there are no dangers.
func Tally(c *Check) string {
	var parts []string
	if n := len(c.Problems); n > 0 {
		parts = append(parts, count(n, "error", "errors"))
		if c.Judged == 0 {
			return parts[0] + "; nothing was judged."
		}
	}
	parts = append(parts, count(c.count(policies.LevelDanger), "danger", "dangers"),
		count(c.count(policies.LevelFault), "fault", "faults"), count(c.count(policies.LevelAdvice), "piece of advice", "pieces of advice"))
	if n := len(c.Waived); n > 0 {
		waived := count(n, "finding", "findings") + " waived"
		if dangers := len(c.WaivedDangers()); dangers > 0 {
			waived += " (" + count(dangers, "danger", "dangers") + ")"
		}
		parts = append(parts, waived)
	}
	if n := len(c.Covered); n > 0 {
		parts = append(parts, count(n, "finding", "findings")+" covered by the baseline")
	}
	if n := len(c.Measures); n > 0 {
		parts = append(parts, count(n, "key", "keys")+" to measure")
	}
	line := strings.Join(parts, ", ")
	return strings.ToUpper(line[:1]) + line[1:] + "."
}

// Unjudged says how many dangers could not be judged; "" for none.
func Unjudged(c *Check) string {
	if c.Unjudged == 0 {
		return ""
	}
	return count(c.Unjudged, "danger", "dangers") + " could not be judged: see what to measure"
}

// Waits says what waits for a key.
func Waits(m judge.Measure) string {
	switch {
	case len(m.Rules) == 1 && m.Dangers > 0:
		return m.Rules[0] + " waits (danger)"
	case len(m.Rules) == 1:
		return m.Rules[0] + " waits"
	case m.Dangers > 0:
		return fmt.Sprintf("%d rules wait (%s)", len(m.Rules), count(m.Dangers, "danger", "dangers"))
	}
	return fmt.Sprintf("%d rules wait", len(m.Rules))
}

// TakenAway lists what a configuration or flags took away, a line each.
func TakenAway(t judge.Taken) []string {
	var all []string
	for _, l := range t.Loosened {
		word := "limit"
		if l.Level == policies.LevelDanger {
			word = "limit of a danger"
		}
		all = append(all, fmt.Sprintf("%s: %s is %s, looser than %s", word, l.Limit, l.Is, l.Was))
	}
	for _, list := range []struct {
		word  string
		names []string
	}{{"rules skipped", t.Skipped}, {"no rules but", t.Only}, {"specs excluded", t.Excluded}, {"waivers", t.Waived}} {
		all = append(all, label(list.word, strings.Join(list.names, ", ")))
	}
	all = append(all, label("fails only from", t.FailOn))
	return slices.DeleteFunc(all, func(s string) bool { return s == "" })
}

// shiftText says how a change takes more away, or less.
func shiftText(s judge.Shift) string {
	word := "taken away by this change"
	if s.Back {
		word = "given back by this change"
	}
	return fmt.Sprintf("%s: %s: %s", word, s.Kind, s.What)
}

// Worst is the highest level of what a reader is told of; 0 with nothing.
func (c *Check) Worst() policies.Level {
	var worst policies.Level
	for _, f := range c.Fresh() {
		worst = max(worst, f.Level)
	}
	return worst
}

// Staying are the findings in force that a change leaves as they were.
func (c *Check) Staying() []judge.Finding {
	if c.Change == nil {
		return nil
	}
	left := map[string]int{}
	for _, id := range c.Change.Stays {
		left[id]++
	}
	var all []judge.Finding
	for _, f := range c.Findings {
		if id := f.Identity(); left[id] > 0 {
			left[id]--
			all = append(all, f)
		}
	}
	return all
}

// Fresh are the findings in force that a reader is told of: all, or those that a
// change brings.
func (c *Check) Fresh() []judge.Finding {
	if c.Change == nil {
		return c.Findings
	}
	all := make([]judge.Finding, len(c.Change.Appears))
	for i, turn := range c.Change.Appears {
		all[i] = turn.Finding
	}
	return all
}

// changeTally counts what a change does, in a sentence; "" without one.
func changeTally(c *Check) string {
	if c.Change == nil {
		return ""
	}
	if c.Read.Specs() == 0 && len(c.Change.Goes) == 0 {
		return fmt.Sprintf("Since %s: no spec has changed.", c.Change.Since)
	}
	mended := 0
	for _, turn := range c.Change.Goes {
		if turn.Other == judge.Clear {
			mended++
		}
	}
	text := fmt.Sprintf("Since %s: %s, %s, %s", c.Change.Since, count(len(c.Change.Appears), "finding appears", "findings appear"),
		count(mended, "finding is mended", "findings are mended"), count(len(c.Change.Stays), "finding stays", "findings stay"))
	if lost := len(c.Change.Goes) - mended; lost > 0 {
		text += ", " + count(lost, "finding is gone but not mended", "findings are gone but not mended")
	}
	return text + "."
}

// ReadText says what was read and judged, in a sentence.
func ReadText(c *Check) string {
	r := c.Read
	return fmt.Sprintf("%s read (%s, %s, %s); %s by %s on %s.",
		count(r.Specs(), "spec", "specs"), count(r.Cars, "car", "cars"), count(r.Drivelines, "driveline", "drivelines"), count(r.Shops, "shop file", "shop files"),
		count(c.Judged, "judgement", "judgements"), count(c.Rules, "rule", "rules"), c.Date.Format(time.DateOnly))
}

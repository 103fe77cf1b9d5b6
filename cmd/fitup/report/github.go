package report

import (
	"fmt"
	"slices"
	"strings"
	"time"

	"fitup/policies"
	"fitup/policies/judge"
)

// annotationsShown is how many annotations of a kind the runner of GitHub
// Actions keeps of one step; it drops the rest without a word.
const annotationsShown = 10

// An annotation is one workflow command of GitHub Actions.
type annotation struct {
	kind  string // error, warning or notice
	at    judge.Location
	title string
	text  string // made by lines
}

var annotationKinds = []string{"error", "warning", "notice"}

var annotationOf = map[policies.Level]string{policies.LevelDanger: "error", policies.LevelFault: "warning", policies.LevelAdvice: "notice"}

// GitHub prints a check as workflow commands, which GitHub Actions shows beside
// the lines of a change: errors first. What would be dropped is printed to the
// log instead.
func GitHub(c *Check, _ Style) ([]byte, error) {
	var out strings.Builder
	shown, all := map[string]int{}, annotations(c)
	var left []annotation
	for _, kind := range annotationKinds {
		for _, a := range all {
			switch {
			case a.kind != kind:
			case shown[kind] == annotationsShown:
				left = append(left, a)
			default:
				shown[kind]++
				out.WriteString(a.command() + "\n")
			}
		}
	}
	if len(left) > 0 {
		fmt.Fprintf(&out, "Not annotated, as only %d of a kind are kept: %s.\n", annotationsShown, cut(left))
	}
	for _, a := range left {
		first, _, _ := strings.Cut(a.text, "\n")
		fmt.Fprintf(&out, "- %s: %s: %s\n", logText(PlaceText(a.at)), logText(a.title), logText(first))
	}
	for _, line := range []string{changeTally(c), Tally(c), Closing} {
		if line != "" {
			out.WriteString(logText(line) + "\n")
		}
	}
	return []byte(out.String()), nil
}

// cut counts annotations by kind.
func cut(left []annotation) string {
	var parts []string
	for _, kind := range annotationKinds {
		n := 0
		for _, a := range left {
			if a.kind == kind {
				n++
			}
		}
		if n > 0 {
			parts = append(parts, count(n, kind, kind+"s"))
		}
	}
	return strings.Join(parts, ", ")
}

func annotations(c *Check) []annotation {
	var all []annotation
	for _, f := range c.Faults {
		all = append(all, annotation{kind: "error", title: strings.TrimSuffix("rule broken: "+f.Rule, ": "), text: lines(f.Message)})
	}
	for _, p := range c.Problems {
		all = append(all, annotation{"error", p.Location, "error", lines(p.Message, label("wanted", p.Want))})
	}
	for _, name := range c.Skipped {
		all = append(all, annotation{kind: "error", at: judge.Location{File: name}, title: "not judged", text: "an error in it, or in a file that it needs"})
	}
	for _, what := range c.Unread {
		all = append(all, annotation{kind: "error", title: "not read", text: lines(what)})
	}
	found := slices.Clone(c.Fresh())
	slices.SortStableFunc(found, func(a, b judge.Finding) int { return int(b.Level - a.Level) })
	for _, f := range found {
		text := lines(f.Message, label("caution", f.Caution), label("fix", f.Fix), label("source", SourcesShort(f.Sources, f.Confidence)))
		all = append(all, annotation{annotationOf[f.Level], f.Location, f.Level.String() + ": " + f.Rule, text})
	}
	if text := Unjudged(c); text != "" {
		all = append(all, annotation{kind: "warning", title: "cannot tell", text: text})
	}
	for _, n := range c.Notes {
		all = append(all, annotation{"warning", n.Location, "unclear", lines(n.Message, label("wanted", n.Want))})
	}
	for _, f := range c.WaivedDangers() {
		text := lines(f.Message, "until "+f.Waiver.Until.Format(time.DateOnly)+": "+f.Waiver.Why, label("caution", f.Caution))
		all = append(all, annotation{"warning", f.Location, "waived danger: " + f.Rule, text})
	}
	var taken []string
	if c.Change != nil {
		for _, s := range c.Change.Shifts {
			taken = append(taken, shiftText(s))
		}
	}
	if taken = append(taken, TakenAway(c.Taken)...); len(taken) > 0 {
		all = append(all, annotation{kind: "warning", title: "taken away from this judgement", text: lines(taken...)})
	}
	return all
}

// lines joins texts that are not empty, each on a line.
func lines(texts ...string) string {
	var all []string
	for _, text := range texts {
		if text != "" {
			all = append(all, Plain(text))
		}
	}
	return strings.Join(all, "\n")
}

// command is the workflow command of an annotation. Columns are dropped by the
// runner unless they are on one line; it counts them from 1, and the last is
// included.
func (a annotation) command() string {
	var properties []string
	add := func(name, value string) { properties = append(properties, name+"="+propertyText(value)) }
	if a.at.File != "" {
		add("file", a.at.File)
	}
	if a.at.Line > 0 {
		add("line", fmt.Sprint(a.at.Line))
		add("endLine", fmt.Sprint(max(a.at.Line, a.at.EndLine)))
		if a.at.Line == a.at.EndLine {
			add("col", fmt.Sprint(a.at.Column))
			add("endColumn", fmt.Sprint(max(a.at.Column, a.at.EndColumn-1)))
		}
	}
	add("title", a.title)
	return "::" + a.kind + " " + strings.Join(properties, ",") + "::" + messageText(a.text)
}

var (
	messageEscapes  = strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A")
	propertyEscapes = strings.NewReplacer("%", "%25", "\r", "%0D", "\n", "%0A", ":", "%3A", ",", "%2C")
)

// messageText escapes the message of a command; its lines are escaped already.
func messageText(text string) string { return messageEscapes.Replace(unhashed(text)) }

// propertyText escapes the value of a property.
func propertyText(text string) string { return propertyEscapes.Replace(unhashed(Plain(text))) }

// logText is a text that is no command wherever it stands on a line.
func logText(text string) string { return unhashed(Plain(text)) }

// unhashed breaks the older form of a command, ##[name], which the runner finds
// in the middle of a line too.
func unhashed(text string) string { return strings.ReplaceAll(text, "##[", "## [") }

// PlaceText is a place as editors follow it.
func PlaceText(at judge.Location) string {
	switch {
	case at.File == "":
		return "fitup"
	case at.Line == 0:
		return at.File
	}
	return fmt.Sprintf("%s:%d:%d", at.File, at.Line, at.Column)
}

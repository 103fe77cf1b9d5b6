package report

import (
	"encoding/json"
	"slices"
	"strings"

	"fitup/spec"
	"fitup/spec/unit"
	"fitup/spec/workings"
)

// A Notebook is the workings of one car, with what was understood of its bench
// phrases.
type Notebook struct {
	Of       string // what the car or driveline is called
	Trace    workings.Trace
	Phrases  []Phrase
	Document map[string]any // exactly what rules see
}

// A Phrase is a bench phrase and what was understood of it.
type Phrase struct {
	Path string
	Said string
	Read []Understood
}

// Understood is one key that a phrase gave.
type Understood struct{ Key, Text string }

// NotebookForms are the forms that workings can be printed in.
var NotebookForms = []Form[*Notebook]{
	{"text", "an engineer's notebook", whole(NotebookText)},
	{"json", "every number with its formula, inputs and source", whole(NotebookJSON)},
	{"input", "exactly what rules see; stock OPA takes it as input", whole(NotebookInput)},
}

// NotebookText prints workings as an engineer's notebook has them.
func NotebookText(n *Notebook, s Style) ([]byte, error) {
	p := &page{width: s.Width, colour: s.Colour}
	p.para(0, 2, "Workings of %s", n.Of)
	subject := ""
	for _, w := range n.Trace {
		if w.Subject != subject {
			subject = w.Subject
			p.gap()
			p.line("%s", p.paint(bold, subject))
		}
		p.working(w)
	}
	if len(n.Phrases) > 0 {
		p.gap()
		p.line("%s", p.paint(bold, "Phrases, as they were understood"))
	}
	for _, phrase := range n.Phrases {
		parts := make([]string, len(phrase.Read))
		for i, u := range phrase.Read {
			parts[i] = u.Key + " = " + u.Text
		}
		p.para(2, 2, `%s = "%s"`, phrase.Path, phrase.Said)
		p.para(6, 0, "%s", strings.Join(parts, ", "))
	}
	p.gap()
	p.para(0, 0, Closing)
	return []byte(p.String()), nil
}

// ValueText is what was worked out, and whether it can be relied on.
func ValueText(w workings.Working) string {
	switch {
	case !w.Known:
		return "not known"
	case w.Guessed:
		return unit.Format(w.Value, w.Dimension, w.Unit) + " (rests on a guess)"
	}
	return unit.Format(w.Value, w.Dimension, w.Unit)
}

func (p *page) working(w workings.Working) {
	colour := ""
	if !w.Known {
		colour = magenta
	}
	p.para(2, 4, "%s = %s", strings.ReplaceAll(w.Name, "_", " "), p.paint(colour, ValueText(w)))
	if w.Formula != "" {
		p.para(6, 4, "%s", w.Formula)
	}
	for _, in := range w.Inputs {
		p.para(6, 4, "%s", InputText(in))
	}
	if w.Source != "" {
		p.item(6, "source:", "%s", SourceShort(w.Source, w.Clause))
	}
	if w.Note != "" {
		p.item(6, "note:", "%s", w.Note)
	}
	if len(w.Missing) > 0 {
		p.item(6, "missing:", "%s", strings.Join(w.Missing, ", "))
	}
}

// InputText is a number that a working rests on, and where it is from.
func InputText(in workings.Input) string {
	from := in.Path
	if in.Source != "" {
		from = SourceShort(in.Source, in.Clause)
	}
	if from != "" {
		from = "  (" + from + ")"
	}
	return InputValue(in) + from
}

// InputValue is a number that a working rests on: as written, or in what unit it
// was taken.
func InputValue(in workings.Input) string {
	text := in.Text
	switch {
	case !in.Known:
		text = "?"
	case in.Source != "" && in.Dimension != "" && text != "": // a table's figure, with the row it is from
		text = unit.Format(in.Value, in.Dimension, in.Unit) + " for " + text
	case text == "":
		text = unit.Format(in.Value, in.Dimension, in.Unit)
	}
	if in.Guess {
		text = "~" + text
	}
	return in.Symbol + " = " + text
}

// NotebookJSON prints the trace, for programs.
func NotebookJSON(n *Notebook, _ Style) ([]byte, error) {
	trace := n.Trace
	if trace == nil {
		trace = workings.Trace{}
	}
	return indented(trace)
}

// NotebookInput prints exactly what rules see. Stock OPA takes it as input.
func NotebookInput(n *Notebook, _ Style) ([]byte, error) {
	text, err := json.MarshalIndent(n.Document, "", "  ")
	return append(text, '\n'), err
}

// Narrow keeps what is about one subject, or what is below it.
func (n *Notebook) Narrow(subject string) {
	about := func(path string) bool {
		rest, ok := strings.CutPrefix(path, subject)
		return ok && (rest == "" || rest[0] == '.' || rest[0] == '#' || strings.HasSuffix(subject, "."))
	}
	n.Trace = slices.DeleteFunc(n.Trace, func(w workings.Working) bool { return !about(w.Subject) && !about(w.Subject+"."+w.Name) })
	n.Phrases = slices.DeleteFunc(n.Phrases, func(p Phrase) bool { return !about(p.Path) })
}

// Subjects lists what a notebook holds anything about.
func (n *Notebook) Subjects() []string {
	var all []string
	for _, w := range n.Trace {
		all = append(all, w.Subject)
	}
	for _, p := range n.Phrases {
		all = append(all, p.Path)
	}
	slices.Sort(all)
	return slices.Compact(all)
}

// Understand lists the bench phrases of a file and what was understood of each.
// prefix stands before the paths.
func Understand(f *spec.File, prefix string) []Phrase {
	var all []Phrase
	f.Walk(func(path string, _ spec.Field, value any) {
		_, isLeaf := value.(spec.Leaf)
		said, isText := written(f.Root, path).(string)
		if isLeaf || !isText {
			return
		}
		phrase := Phrase{Path: prefix + path, Said: said}
		spec.Walk("", value, func(key string, _ spec.Field, part any) {
			if leaf, ok := part.(spec.Leaf); ok && leaf.Said() == spec.Given {
				text, _ := leaf.Written()
				if leaf.Guessed() {
					text = "~" + text
				}
				phrase.Read = append(phrase.Read, Understood{key, text})
			}
		})
		if len(phrase.Read) > 0 {
			all = append(all, phrase)
		}
	})
	return all
}

// written is the decoded value at a key path, or nil.
func written(root map[string]any, path string) any {
	var value any = root
	for step := range strings.SplitSeq(path, ".") {
		table, ok := value.(map[string]any)
		if !ok {
			return nil
		}
		value = table[step]
	}
	return value
}

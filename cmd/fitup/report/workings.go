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
	{"text", "an engineer's notebook", NotebookText},
	{"json", "every number with its formula, inputs and source", NotebookJSON},
	{"input", "exactly what rules see; stock OPA takes it as input", NotebookInput},
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

func (p *page) working(w workings.Working) {
	value := p.paint(yellow, "not known")
	if w.Known {
		value = ink(Plain(unit.Format(w.Value, w.Dimension, w.Unit)))
	}
	guess := ""
	if w.Guessed {
		guess = " (rests on a guess)"
	}
	p.para(2, 4, "%s = %s%s", strings.ReplaceAll(w.Name, "_", " "), value, guess)
	if w.Formula != "" {
		p.para(6, 4, "%s", w.Formula)
	}
	for _, in := range w.Inputs {
		p.para(6, 4, "%s", p.input(in))
	}
	if w.Source != "" {
		p.item(6, "source:", "%s", sourceShort(w.Source, w.Clause))
	}
	if w.Note != "" {
		p.item(6, "note:", "%s", w.Note)
	}
	if len(w.Missing) > 0 {
		p.item(6, "missing:", "%s", strings.Join(w.Missing, ", "))
	}
}

// input prints a number that a working rests on: as written, where, and in what
// unit if it is not as written.
func (p *page) input(in workings.Input) ink {
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
	from := in.Path
	if in.Source != "" {
		from = sourceShort(in.Source, in.Clause)
	}
	if from != "" {
		from = "  (" + from + ")"
	}
	return ink(sprintf("%s = %s%s", in.Symbol, text, from))
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

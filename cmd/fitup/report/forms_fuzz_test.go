package report

import (
	"bytes"
	"encoding/json"
	"encoding/xml"
	"io"
	"slices"
	"strings"
	"testing"
	"unicode/utf8"

	"fitup/policies"
	"fitup/policies/judge"
)

// FuzzForms puts any text wherever a stranger's may stand in a report, and prints
// it in each form. It stays text: the structure is that of a harmless word.
func FuzzForms(f *testing.F) {
	for _, text := range []string{
		forged, forgedFile, "", " ", "\n", "::error::x", "##[group]x", "%25%0A", "]]>", "<!--", "`", "``` \n```", "|", "\\|", "[x](y)", "![x](y)",
		"\ufeff", "\u2066", "&amp;", "\x1b]8;;x\x07", "https://example.org", "a@b", "@team", "#1", "\xf0\x9f", "1. x", "- x", "# x", "> x", "---", "=== x",
	} {
		f.Add(text)
	}
	usual := map[string][]byte{} // of a harmless word
	for _, form := range CheckForms {
		usual[form.Name] = printed(f, form.Print, strangers("word"))
	}
	f.Fuzz(func(t *testing.T, text string) {
		if strings.TrimSpace(text) == "" {
			t.Skip("no text")
		}
		strange := strangers(text)
		for _, form := range CheckForms {
			got := printed(t, form.Print, strange)
			if !utf8.Valid(got) {
				t.Errorf("%s is not UTF-8", form.Name)
			}
			switch form.Name {
			case "json", "sarif":
				if !json.Valid(got) {
					t.Errorf("%s is not JSON", form.Name)
				}
				continue
			case "junit":
				if shape, want := elements(t, got), elements(t, usual[form.Name]); !slices.Equal(shape, want) {
					t.Errorf("%s has elements %q, not %q", form.Name, shape, want)
				}
			case "github":
				commands, _ := readCommands(t, got)
				if want, _ := readCommands(t, usual[form.Name]); len(commands) != len(want) {
					t.Errorf("%s has %d commands, not %d", form.Name, len(commands), len(want))
				}
			case "markdown":
				for _, mark := range []string{"<", "](", "!["} {
					if n, want := unescaped(got, mark), unescaped(usual[form.Name], mark); n != want {
						t.Errorf("%s has %d of %q, not %d:\n%s", form.Name, n, mark, want, got)
					}
				}
			}
			for _, r := range string(got) {
				if r != '\n' && forges(r) {
					t.Errorf("%s has the character %U", form.Name, r)
				}
			}
		}
	})
}

// strangers is a report in which each text that is not the tool's own is this one.
func strangers(text string) *Check {
	c := rich()
	c.Findings[0].Message, c.Findings[0].Excerpt, c.Findings[0].Path, c.Findings[0].Subject = text, text, text, text
	c.Findings[0].File, c.Findings[0].With = "x"+text, "x"+text
	c.Findings[1].SeenBy, c.Findings[1].Guessed = []string{text}, []string{text}
	c.Waived[0].Waiver.Why = text
	c.Problems[0].Message, c.Problems[0].Want, c.Problems[0].Excerpt = text, text, text
	c.Faults = []policies.Fault{{Rule: "own.mine", Message: text}}
	c.Measures = []judge.Measure{{Location: at("x"+text, 5, 1, 2, text), Rules: []string{"lines.age"}, Subjects: 1}}
	c.Taken.Excluded, c.Taken.Skipped = []string{text}, []string{text}
	c.Taken.Loosened[0].Is = text
	c.Unread, c.Skipped = []string{text}, []string{text}
	for i := range c.Accounts {
		for k, said := range c.Accounts[i].Said {
			if said.Rule == "own.mine" {
				c.Accounts[i].Said[k].Found = []string{c.Findings[0].Identity()}
			}
		}
	}
	mine := policies.Rule{ID: "own.mine", Area: "own", Name: "mine", Level: policies.LevelFault, Title: text, Description: text, Fix: text, Caution: text,
		Rulebook: policies.Workshop, Confidence: policies.Practice, Sources: []policies.Source{{Key: "common-practice", Clause: text}}}
	described := c.Describe()
	c.Describe = func() []*policies.Rule { return append(slices.Clone(described[:3]), &mine) }
	return c
}

// elements are the elements of XML, in their order.
func elements(t *testing.T, text []byte) (names []string) {
	decoder := xml.NewDecoder(bytes.NewReader(text))
	for {
		token, err := decoder.Token()
		if err == io.EOF {
			return names
		}
		if err != nil {
			t.Errorf("not XML: %v", err)
			return nil
		}
		if start, ok := token.(xml.StartElement); ok {
			names = append(names, start.Name.Local)
		}
	}
}

// unescaped counts a mark of Markdown outside code and where no backslash takes its
// meaning away.
func unescaped(text []byte, mark string) (n int) {
	for line := range strings.Lines(string(text)) {
		for at := 0; at < len(line); {
			switch rest := line[at:]; {
			case rest[0] == '\\':
				at += 2
			case rest[0] == '`':
				ticks := len(rest) - len(strings.TrimLeft(rest, "`"))
				at += ticks + codeEnd(rest[ticks:], ticks)
			default:
				if strings.HasPrefix(rest, mark) {
					n++
				}
				at++
			}
		}
	}
	return n
}

// codeEnd is where code ends that so many backticks began: behind as many, or at
// once if there are none and it is no code.
func codeEnd(text string, ticks int) int {
	for at := 0; at < len(text); {
		run := len(text[at:]) - len(strings.TrimLeft(text[at:], "`"))
		if run == ticks {
			return at + run
		}
		at += max(run, 1)
	}
	return 0
}

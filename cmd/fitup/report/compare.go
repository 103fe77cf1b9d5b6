package report

import (
	"fmt"
	"strings"

	"fitup/spec/swap"
)

// A Compared is what `fitup compare` found: two cars, interface by interface.
type Compared struct {
	One, Other string // files
	*swap.Comparison
}

// CompareForms are all forms of a comparison.
var CompareForms = []Form[*Compared]{
	{"text", "for a reader at a terminal or on paper", whole(CompareText)},
	{"json", "everything, for programs", whole(CompareJSON)},
	{"markdown", "for a page to print or to comment on", whole(CompareMarkdown)},
}

// likenessOrder is that of a comparison: what asks for work first.
var likenessOrder = []swap.Likeness{swap.Differs, swap.OnlyOne, swap.Unknown, swap.Carries, swap.Same}

var likenessTitles = map[swap.Likeness]string{
	swap.Differs: "Differ: what fits the one does not fit the other", swap.OnlyOne: "Only in one",
	swap.Unknown: "Cannot tell", swap.Carries: "Differ, and each meets the driveline in the other", swap.Same: "The same",
}

// Chapters lays a comparison out.
func (c *Compared) chapters() []Chapter {
	var tallied []string
	pairs := Chapter{Title: "Interfaces"}
	for _, likeness := range likenessOrder {
		p := Passage{Heading: likenessTitles[likeness]}
		var short []string
		n := 0
		for _, pair := range c.Pairs {
			if pair.Likeness != likeness {
				continue
			}
			n++
			switch {
			case likeness == swap.Same && len(short) > 0 && strings.HasPrefix(short[len(short)-1], pair.Kind+": "):
				short[len(short)-1] += ", " + pair.Name
			case likeness == swap.Same:
				short = append(short, pair.Kind+": "+pair.Name)
			default:
				p.Lines = append(p.Lines, c.pair(pair))
			}
		}
		if p.Lines = append(p.Lines, remarks(short...)...); n > 0 {
			tallied = append(tallied, fmt.Sprintf("%s %d", likeness, n))
			pairs.Blocks = append(pairs.Blocks, p)
		}
	}
	pairs.Blocks = append([]Passage{{Lines: remarks(count(len(c.Pairs), "interface", "interfaces") + ": " + strings.Join(tallied, ", "))}}, pairs.Blocks...)
	over := fmt.Sprintf("%d of %s: what is the same, and what differs and yet meets both; nothing is done to it when a driveline moves",
		len(c.CarriesOver()), count(len(c.Pairs), "interface", "interfaces"))
	return []Chapter{pairs, {Title: "Carries over", Blocks: []Passage{{Lines: remarks(over)}}}}
}

func (c *Compared) pair(p swap.Pair) Remark {
	text := p.Kind + " " + p.Name
	switch {
	case p.Other == "":
		text += ": " + c.One + ", " + p.One
	case p.One == "":
		text += ": " + c.Other + ", " + p.Other
	case len(p.Why) > 0:
		text += ": " + strings.Join(p.Why, "; ")
	}
	return Remark{Text: text}
}

// CompareText prints a comparison.
func CompareText(c *Compared, style Style) ([]byte, error) {
	called := *c
	called.One, called.Other = style.Shown(c.One), style.Shown(c.Other)
	t := textCheck{Style: style, page: &page{width: style.Width, colour: style.Colour}}
	t.para(0, 2, "%s", t.paint(bold, called.One+" against "+called.Other))
	t.chapters(called.chapters())
	t.gap()
	t.para(0, 0, Closing)
	return []byte(t.String()), nil
}

// CompareMarkdown prints a comparison as Markdown. Nothing from a spec can be
// markup in it.
func CompareMarkdown(c *Compared, _ Style) ([]byte, error) {
	var m markdownCheck
	m.line("## %s against %s", c.One, c.Other)
	m.chapters(c.chapters())
	m.section("%s", Closing)
	return []byte(m.String()), nil
}

type (
	jsonCompared struct {
		Version     int        `json:"version"`
		One         string     `json:"one"`
		Other       string     `json:"other"`
		Pairs       []jsonPair `json:"interfaces"`
		CarriesOver []string   `json:"carries_over"`
		Closing     string     `json:"closing"`
	}
	jsonPair struct {
		Kind     string   `json:"kind"`
		Name     string   `json:"name"`
		One      string   `json:"one,omitempty"`
		Other    string   `json:"other,omitempty"`
		Likeness string   `json:"likeness" jsonschema:"enum=same,enum=meets,enum=differs,enum=only one,enum=cannot tell" jsonschema_description:"meets: they differ, and each meets the driveline that is in the other"`
		Why      []string `json:"why"`
	}
)

// CompareJSON prints a comparison, for programs.
func CompareJSON(c *Compared, _ Style) ([]byte, error) {
	return indented(jsonCompared{
		jsonVersion, c.One, c.Other,
		each(c.Pairs, func(p swap.Pair) jsonPair {
			return jsonPair{p.Kind, p.Name, p.One, p.Other, string(p.Likeness), list(p.Why)}
		}),
		list(c.CarriesOver()), Closing,
	})
}

package spec

import (
	"fmt"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"fitup/spec/unit"
)

// phrased is a table type that can be written as a bench phrase: a string, or
// for a Meet a list of strings, that stands for its long form. A phrase is only
// ever turned into that table, so both are read and checked by the same code.
type phrased interface {
	phrase(raw any) ([]wording, error)
	phrasing() phrasing
}

// A wording is what a phrase says of one key.
type wording struct {
	key        string
	value      any    // as the long form has it
	element    string // number of the string in a list; else ""
	start, end int    // bytes of its words in the string
}

// A phrasing is the grammar of one kind of phrase: what may stand in it, in any
// order, with blanks or commas between.
type phrasing struct {
	due     string // what the phrase gives, for messages
	example string
	forms   []form
}

// A form is one thing that a phrase may say: a pattern, a word, or, once in a
// phrase, a quantity.
type form struct {
	// look is a pattern whose groups are named after keys, with "_" for "-".
	// Its group "unit", else the field of that name, is the unit of every bare
	// number in it.
	look *regexp.Regexp
	unit string
	// alone is set where look has to fill all of what stands between commas.
	alone bool

	key       string
	words     []string       // a closed list for key; with look, its fixed words
	dimension unit.Dimension // that of a quantity for key
	value     string         // what it means, where it is not its own words
}

// Parts of patterns. A number may be a guess, and a length unknown.
const (
	aNumber  = `~?(?:(?:\d+[ -])?\d+/\d+|\d+(?:\.\d+)?)`
	aLength  = `(?:` + aNumber + ` ?(?:mm|cm|m|in|ft)|\?)`
	aCount   = `(?P<count>~?\d+|\?) ?x `
	aMetric  = `M\d+(?:\.\d+)?x\d+(?:\.\d+)?`
	anInch   = `(?:#?\d+|\d+[ -]\d+/\d+|\d+/\d+) ?- ?\d+(?:\.5)?(?: ?UN[A-Z]*)?`
	aPipe    = `(?:\d+(?:[ -]\d+)?(?:/\d+)?(?:-\d+(?:\.5)?)? ?NPTF?|(?:G|Rc|R) ?\d+(?:/\d+)?)`
	aNominal = `M\d+(?:\.\d+)?`
)

func looks(pattern string, words ...string) form {
	return form{look: regexp.MustCompile(`^(?:` + pattern + `)`), words: words}
}

func alone(pattern string, words ...string) form {
	f := looks(pattern, words...)
	f.alone = true
	return f
}

func oneOf(key string, list vocabulary) form     { return form{key: key, words: list.Words()} }
func means(word, key, value string) form         { return form{key: key, words: []string{word}, value: value} }
func quantity(key string, d unit.Dimension) form { return form{key: key, dimension: d} }
func (f form) in(symbol string) form             { f.unit = symbol; return f }
func (f form) meaning(value string) form         { f.value = value; return f }

// read finds what a phrase says. Every word must belong to a form, and no key
// may be said twice.
func (p phrasing) read(raw any) ([]wording, error) {
	text, ok := raw.(string)
	if !ok {
		return nil, wrongType(raw, fmt.Sprintf("%s such as %q, or a table", p.due, p.example))
	}
	var said []wording
	for at := skipBetween(text, 0); at < len(text); at = skipBetween(text, at) {
		found, length := p.match(text, at)
		if length == 0 {
			return nil, p.unknown(text, at)
		}
		for _, w := range found {
			if slices.ContainsFunc(said, func(s wording) bool { return s.key == w.key }) {
				return nil, &unit.Error{Text: text, Start: w.start, End: w.end,
					Problem: fmt.Sprintf("%q says the %s a second time", text[w.start:w.end], w.key), Want: "say it once"}
			}
		}
		said = append(said, found...)
		at += length
	}
	if len(said) == 0 {
		return nil, &unit.Error{Text: text, End: len(text), Problem: "there is nothing in the quotes", Want: fmt.Sprintf("%s such as %q", p.due, p.example)}
	}
	return said, nil
}

func skipBetween(text string, at int) int {
	for at < len(text) && isBetween(text[at]) {
		at++
	}
	return at
}

func isBetween(c byte) bool { return c == ' ' || c == '\t' || c == ',' }

func wordLength(text string) int {
	if i := strings.IndexAny(text, " \t,"); i >= 0 {
		return i
	}
	return len(text)
}

// match reads one thing at text[at:]. Of several patterns and words that fit the
// longest holds, and of equals the first. Where none fits, a number is taken for
// the quantity that the phrase has, if any, with all up to the next comma if no
// part of that is a unit: then the error is about the unit.
func (p phrasing) match(text string, at int) (said []wording, length int) {
	for _, f := range p.forms {
		if found, n := f.match(text, at); n > length {
			said, length = found, n
		}
	}
	if length > 0 {
		return said, length
	}
	i := slices.IndexFunc(p.forms, func(f form) bool { return f.dimension != "" })
	if i < 0 {
		return nil, 0
	}
	length = quantityLength(text[at:], p.forms[i].dimension)
	if length == 0 {
		value := valueForm.FindStringSubmatchIndex(text[at:])
		if value == nil || value[2] >= 0 && p.knows(text, at+value[2]) {
			return nil, 0
		}
		length = value[1]
	}
	return []wording{p.forms[i].says(text, at, length)}, length
}

// valueForm is a number and what may be its unit.
var valueForm = regexp.MustCompile(`^` + aNumber + `(?:$|,| ?([^\s,\d][^,]*))`)

// knows reports whether some form fits at text[at:].
func (p phrasing) knows(text string, at int) bool {
	return slices.ContainsFunc(p.forms, func(f form) bool { _, n := f.match(text, at); return n > 0 })
}

// match reads a pattern or a word.
func (f form) match(text string, at int) ([]wording, int) {
	if f.look != nil {
		return f.matchLook(text, at)
	}
	n := wordLength(text[at:])
	if !slices.Contains(f.words, text[at:at+n]) {
		return nil, 0
	}
	return []wording{f.says(text, at, n)}, n
}

// says is the wording of a form that fills one key.
func (f form) says(text string, at, length int) wording {
	value := text[at : at+length]
	if f.value != "" {
		value = f.value
	}
	return wording{key: f.key, value: longForm(f.key, value), start: at, end: at + length}
}

func (f form) matchLook(text string, at int) ([]wording, int) {
	m := f.look.FindStringSubmatchIndex(text[at:])
	if m == nil || m[1] == 0 {
		return nil, 0
	}
	end := at + m[1]
	if end < len(text) && !isBetween(text[end]) && !isBetween(text[end-1]) {
		return nil, 0
	}
	if f.alone && !standsAlone(text, at, end) {
		return nil, 0
	}
	symbol := f.unit
	if i := f.look.SubexpIndex("unit"); i >= 0 && m[2*i] >= 0 {
		symbol = text[at+m[2*i] : at+m[2*i+1]]
	}
	var said []wording
	for i, name := range f.look.SubexpNames() {
		if name == "" || name == "unit" || m[2*i] < 0 {
			continue
		}
		w := wording{key: strings.ReplaceAll(name, "_", "-"), start: at + m[2*i], end: at + m[2*i+1]}
		value := text[w.start:w.end]
		switch {
		case f.value != "":
			value = f.value
		case symbol != "" && bareNumber.MatchString(value):
			value += " " + symbol
		}
		w.value = longForm(w.key, value)
		said = append(said, w)
	}
	return said, m[1]
}

var bareNumber = regexp.MustCompile(`^` + aNumber + `$`)

// standsAlone reports whether text[start:end] is all that stands between two
// commas.
func standsAlone(text string, start, end int) bool {
	before := strings.TrimRight(text[:start], " \t")
	after := strings.TrimLeft(text[end:], " \t")
	return (before == "" || strings.HasSuffix(before, ",")) && (after == "" || strings.HasPrefix(after, ","))
}

// longForm gives the words of a key the TOML type that its long form has.
func longForm(key, text string) any {
	switch key {
	case "count":
		if n, err := strconv.ParseInt(text, 10, 64); err == nil {
			return n
		}
	case "use-once", "valved", "never-open":
		return true
	}
	if strings.HasPrefix(text, "? ") { // an unknown quantity, with the unit that tells which
		return "?"
	}
	return text
}

// quantityLength is the length of the longest value of a dimension that text
// begins with, up to a comma.
func quantityLength(text string, d unit.Dimension) int {
	part, _, _ := strings.Cut(text, ",")
	for end := len(part); end > 0; end = strings.LastIndexAny(part[:end], " \t") {
		value := strings.Replace(strings.TrimPrefix(part[:end], "~"), "? ", "1 ", 1)
		if _, err := unit.Parse(value, d); err == nil {
			return end
		}
	}
	return 0
}

// unknown tells that the word at text[at:] has no meaning in the phrase.
func (p phrasing) unknown(text string, at int) error {
	end := at + wordLength(text[at:])
	e := &unit.Error{Text: text, Start: at, End: end}
	var known []string
	for _, f := range p.forms {
		known = append(known, f.words...)
	}
	if e.Problem, e.Want = notUsed(text[at:end], known); e.Want == "" {
		e.Want = fmt.Sprintf("%s such as %q", p.due, p.example)
	}
	return e
}

package policies

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"iter"
	"maps"
	"regexp"
	"slices"
	"strconv"
	"strings"

	"go.yaml.in/yaml/v3"

	"fitup/policies/tables"
	"fitup/spec/unit"
)

// metadata is the METADATA block of a rule. OPA lets a misspelt key pass, so it
// is read here, with every key known and every value checked.
type metadata struct {
	Title       string   `yaml:"title"`
	Description string   `yaml:"description"`
	Sources     []Source `yaml:"related_resources"`
	Custom      custom   `yaml:"custom"`
}

type custom struct {
	Level      Level             `yaml:"level"`
	Message    string            `yaml:"message"`
	Cases      map[string]Case   `yaml:"cases"`
	Subject    string            `yaml:"subject"`
	Stages     []string          `yaml:"stages"`
	Figures    map[string]Figure `yaml:"figures"`
	Fix        string            `yaml:"fix"`
	Caution    string            `yaml:"caution"`
	Rulebook   string            `yaml:"rulebook"`
	Confidence Confidence        `yaml:"confidence"`
	Basis      Basis             `yaml:"basis"`
	Waivable   *bool             `yaml:"waivable"`
	Formerly   []string          `yaml:"formerly"`
}

// readMetadata reads the METADATA block of the rule in file. Its errors name the
// file and the key.
func readMetadata(file string, text []byte) (metadata, error) {
	lines, line, ok := metadataBlock(text)
	if !ok {
		return metadata{}, fmt.Errorf("%s:1: no METADATA before the package", file)
	}
	var m metadata
	decoder := yaml.NewDecoder(bytes.NewReader(bytes.Join(slices.Collect(lines), nil)))
	decoder.KnownFields(true)
	if err := decoder.Decode(&m); err != nil && err != io.EOF {
		return m, placed(err, file, line, "METADATA: ")
	}
	if err := m.check(); err != nil {
		return m, prefixed(err, fmt.Sprintf("%s:%d: METADATA", file, line))
	}
	return m, nil
}

// metadataBlock returns the lines of YAML in the METADATA comment that stands before
// the package, each with its end, and the line that the comment begins on.
func metadataBlock(text []byte) (lines iter.Seq[[]byte], line int, ok bool) {
	n, at, begin := 0, 0, 0
	for row := range bytes.Lines(text) {
		n++
		at += len(row)
		switch {
		case bytes.Equal(bytes.TrimRight(row, "\r\n"), []byte("# METADATA")):
			line, begin, ok = n, at, true
		case bytes.HasPrefix(row, []byte("package ")):
			return uncommented(text[begin:at]), line, ok
		}
	}
	return nil, 0, false
}

// uncommented yields the lines that are comments, without what makes them so.
func uncommented(text []byte) iter.Seq[[]byte] {
	return func(yield func([]byte) bool) {
		for row := range bytes.Lines(text) {
			if comment, ok := bytes.CutPrefix(row, []byte("#")); ok && !yield(bytes.TrimPrefix(comment, []byte(" "))) {
				return
			}
		}
	}
}

var (
	yamlLine    = regexp.MustCompile(`(?:yaml: )?line (\d+): `)
	yamlUnknown = regexp.MustCompile(`field (\S+) not found in type \S+`)
)

// placed turns the decoder's lines, which count from start, into the file's.
func placed(err error, file string, start int, where string) error {
	texts := []string{err.Error()}
	if t, ok := errors.AsType[*yaml.TypeError](err); ok {
		texts = t.Errors
	}
	var all []error
	for _, text := range texts {
		line := start
		if m := yamlLine.FindStringSubmatch(text); m != nil {
			n, _ := strconv.Atoi(m[1]) // the pattern has digits only
			line, text = start+n, strings.Replace(text, m[0], "", 1)
		}
		text = yamlUnknown.ReplaceAllString(text, "unknown key $1")
		all = append(all, fmt.Errorf("%s:%d: %s%s", file, line, where, text))
	}
	return errors.Join(all...)
}

func prefixed(err error, prefix string) error {
	var all []error
	for text := range strings.Lines(err.Error()) {
		all = append(all, fmt.Errorf("%s: %s", prefix, strings.TrimSuffix(text, "\n")))
	}
	return errors.Join(all...)
}

// check tells everything that is missing or wrong in m.
func (m *metadata) check() error {
	c := &m.Custom
	var all problems
	all.need("title", m.Title)
	all.need("description", m.Description)
	all.need("custom.subject", c.Subject)
	all.need("custom.fix", c.Fix)
	all.need("custom.rulebook", c.Rulebook)
	all.oneOf("custom.confidence", string(c.Confidence), string(Published), string(Practice), string(Memory))

	if len(m.Sources) == 0 {
		all.add("related_resources: missing: name at least one source")
	}
	for _, s := range m.Sources {
		if _, ok := tables.Source(s.Key); !ok {
			all.add("related_resources: no source %q in policies/tables/sources", s.Key)
		}
	}
	if len(c.Stages) == 0 {
		all.add("custom.stages: missing: name the stages that the rule holds in")
	}
	for i, stage := range c.Stages {
		all.oneOf("custom.stages", stage, Stages...)
		if slices.Contains(c.Stages[:i], stage) {
			all.add("custom.stages: %s twice", stage)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(c.Figures)) {
		f := c.Figures[name]
		d := unit.Dimension(f.Dimension)
		if !plainFigure(f.Dimension) && !d.Known() {
			all.add("custom.figures.%s.dimension: %q is none of text, number, date, path and the dimensions of spec/unit", name, f.Dimension)
		}
		switch {
		case f.Unit != "" && f.Like != "":
			all.add("custom.figures.%s: it has both like and unit; keep one", name)
		case f.Unit != "" && !d.Known():
			all.add("custom.figures.%s.unit: %s has no units; leave it out", name, f.Dimension)
		case f.Unit != "" && !slices.Contains(d.Units(), f.Unit):
			all.add("custom.figures.%s.unit: %q is no unit of %s; write one of %s", name, f.Unit, f.Dimension, strings.Join(d.Units(), ", "))
		}
	}
	m.checkCases(&all)
	return all.join()
}

// checkCases checks what a rule finds: level, message, and what a danger asks
// for besides.
func (m *metadata) checkCases(all *problems) {
	c := &m.Custom
	cases := map[string]Case{"": {Level: c.Level, Message: c.Message}}
	if c.Cases != nil {
		cases = c.Cases
		if c.Level != 0 || c.Message != "" {
			all.add("custom.level, custom.message: each case has its own")
		}
	}
	danger := false
	used := map[string]bool{}
	for _, name := range slices.Sorted(maps.Keys(cases)) {
		key, one := "custom.", cases[name]
		if name != "" {
			key = "custom.cases." + name + "."
		}
		if one.Level == 0 {
			all.add("%slevel: missing: write danger, fault or advice", key)
		}
		all.need(key+"message", one.Message)
		for _, p := range Placeholders(one.Message) {
			used[p] = true
			if _, ok := c.Figures[p]; !ok && p != "subject" {
				all.add("%smessage: {%s} is no figure of the rule", key, p)
			}
		}
		if one.Level == LevelDanger {
			danger = true
			if one.Caution == "" && c.Caution == "" {
				all.add("%scaution: missing: a danger carries one", key)
			}
		}
		if one.Level > LevelAdvice && c.Confidence == Memory {
			all.add("%slevel: %s from memory: advice at most", key, one.Level)
		}
	}
	for _, name := range slices.Sorted(maps.Keys(c.Figures)) {
		if !used[name] {
			all.add("custom.figures.%s: in no message", name)
		}
	}
	switch {
	case danger:
		all.oneOf("custom.basis", string(c.Basis), string(Threshold), string(Hazard))
		if c.Basis == Threshold && c.Confidence != Published {
			all.add("custom.confidence: %s: a danger on a threshold rests on a published source", c.Confidence)
		}
	case c.Basis != "":
		all.add("custom.basis: only a danger has one")
	case c.Waivable != nil && !*c.Waivable:
		all.add("custom.waivable: only a danger may not be waived")
	}
}

// rule makes the Rule of a METADATA block.
func (m *metadata) rule(area, name, file string) *Rule {
	c := &m.Custom
	r := &Rule{
		ID: area + "." + name, Area: area, Name: name, File: file,
		Title: m.Title, Description: strings.TrimSpace(m.Description), Sources: m.Sources,
		Level: c.Level, Message: c.Message, Cases: c.Cases, Subject: c.Subject, Stages: c.Stages,
		Figures: c.Figures, Fix: c.Fix, Caution: c.Caution, Rulebook: c.Rulebook,
		Confidence: c.Confidence, Basis: c.Basis, Waivable: c.Waivable == nil || *c.Waivable,
		Formerly: c.Formerly, Own: area == ownArea,
	}
	for _, one := range c.Cases {
		r.Level = max(r.Level, one.Level)
	}
	return r
}

var placeholder = regexp.MustCompile(`\{(\w+)\}`)

// Placeholders returns the names in braces in a message, in their order.
func Placeholders(message string) []string {
	var names []string
	for _, m := range placeholder.FindAllStringSubmatch(message, -1) {
		names = append(names, m[1])
	}
	return names
}

func plainFigure(dimension string) bool {
	return slices.Contains([]string{"text", "number", "date", "path"}, dimension)
}

// problems collects what is wrong, so that all of it is told at once.
type problems []error

func (p *problems) add(format string, args ...any) { *p = append(*p, fmt.Errorf(format, args...)) }

func (p *problems) need(key, value string) {
	if strings.TrimSpace(value) == "" {
		p.add("%s: missing", key)
	}
}

func (p *problems) oneOf(key, value string, allowed ...string) {
	switch {
	case slices.Contains(allowed, value):
	case value == "":
		p.add("%s: missing: one of %s", key, strings.Join(allowed, ", "))
	default:
		p.add("%s: %q is none of %s", key, value, strings.Join(allowed, ", "))
	}
}

func (p problems) join() error { return errors.Join(p...) }

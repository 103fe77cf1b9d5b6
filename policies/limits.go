package policies

import (
	"bytes"
	"fmt"
	"io"
	"maps"
	"slices"
	"strings"

	"go.yaml.in/yaml/v3"

	"fitup/policies/tables"
	"fitup/spec/unit"
)

// A Limit is a threshold that a rule reads as
// data.rules.AREA.limits.RULE.NAME.value.
type Limit struct {
	Value   float64 `yaml:"value"`   // in Unit
	Unit    string  `yaml:"unit"`    // SI; "1" for a ratio or a count
	Written string  `yaml:"written"` // the same, as its source has it
	Looser  string  `yaml:"looser"`  // "up" or "down": which way finds less
	Why     string  `yaml:"why"`
	Source  string  `yaml:"source"` // a key of package tables
	Clause  string  `yaml:"clause"`
	Was     string  `yaml:"-"` // as written before a workshop set its own; "" if it did not

	dimension unit.Dimension
}

// Dimension is that of the limit's value.
func (l Limit) Dimension() unit.Dimension { return l.dimension }

// Loosened is a limit that a workshop set for itself.
type Loosened struct {
	Limit   string // AREA.RULE.NAME
	Rule    string // the id of the rule that reads it
	Level   Level  // of that rule
	Was, Is string // as written
	Looser  bool   // finds less than before; otherwise stricter
}

// limits are those of one area: by rule, then by name.
type limits map[string]map[string]Limit

// readLimits reads an area's data.yaml. Its errors name the file and the key.
func readLimits(file string, text []byte) (limits, error) {
	var content struct {
		Limits limits `yaml:"limits"`
	}
	decoder := yaml.NewDecoder(bytes.NewReader(text))
	decoder.KnownFields(true)
	if err := decoder.Decode(&content); err != nil && err != io.EOF {
		return nil, placed(err, file, 0, "")
	}
	var all problems
	for _, rule := range slices.Sorted(maps.Keys(content.Limits)) {
		for _, name := range slices.Sorted(maps.Keys(content.Limits[rule])) {
			limit := content.Limits[rule][name]
			key := fmt.Sprintf("%s: limits.%s.%s.", file, rule, name)
			all.oneOf(key+"looser", limit.Looser, "up", "down")
			all.need(key+"why", limit.Why)
			if _, ok := tables.Source(limit.Source); !ok {
				all.add("%ssource: no source %q in policies/tables/sources", key, limit.Source)
			}
			var err error
			if limit.dimension, err = limit.findDimension(); err != nil {
				all.add("%s%w", key, err)
			}
			content.Limits[rule][name] = limit
		}
	}
	return content.Limits, all.join()
}

// findDimension finds the dimension in which what is written is the value.
// Several may share the SI unit: gauge pressure, absolute pressure and stress.
func (l Limit) findDimension() (unit.Dimension, error) {
	known := false
	for _, d := range unit.Dimensions() {
		if si := d.SI(); si != l.Unit && (si != "" || l.Unit != "1") {
			continue
		}
		known = true
		if q, err := unit.Parse(l.Written, d); err == nil && q.SI == l.Value {
			return d, nil
		}
	}
	if !known {
		return "", fmt.Errorf("unit: %q is no SI unit", l.Unit)
	}
	return "", fmt.Errorf("written: %q is not %v %s", l.Written, l.Value, l.Unit)
}

// set replaces the limit named RULE.NAME of the area by what an author wrote.
func (l limits) set(area, name, text string) (Loosened, error) {
	rule, short, _ := strings.Cut(name, ".")
	limit, ok := l[rule][short]
	if !ok {
		return Loosened{}, fmt.Errorf("there is no limit %s.%s", area, name)
	}
	q, err := unit.Parse(text, limit.dimension)
	if err != nil {
		return Loosened{}, fmt.Errorf("limit %s.%s: %w", area, name, err)
	}
	change := Loosened{
		Limit: area + "." + name, Rule: area + "." + rule, Was: limit.Written, Is: q.Text,
		Looser: limit.Looser == "up" && q.SI > limit.Value || limit.Looser == "down" && q.SI < limit.Value,
	}
	limit.Value, limit.Written, limit.Was = q.SI, q.Text, limit.Written
	l[rule][short] = limit
	return change, nil
}

// data is what rules read of the limits.
func (l limits) data() map[string]any {
	byRule := make(map[string]any, len(l))
	for rule, named := range l {
		byName := make(map[string]any, len(named))
		for name, limit := range named {
			byName[name] = map[string]any{
				"value": limit.Value, "unit": limit.Unit, "written": limit.Written, "looser": limit.Looser,
				"why": limit.Why, "source": limit.Source, "clause": limit.Clause,
			}
		}
		byRule[rule] = byName
	}
	return byRule
}

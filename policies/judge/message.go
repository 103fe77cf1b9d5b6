package judge

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/spec/unit"
)

// inchUnits are what a car that asks for inch units is told in, where the author
// wrote no unit. Other dimensions have no inch unit in use on a car.
var inchUnits = map[unit.Dimension]string{
	unit.Length: "in", unit.Area: "in2", unit.Volume: "gal(US)", unit.Mass: "lb", unit.Force: "lbf",
	unit.Pressure: "psi", unit.Torque: "lbf ft", unit.Temperature: "F", unit.Speed: "ft/s",
}

// figures prints the figures of a finding, each in the unit of the field that
// it is like, else in the units that the car asks for.
func (v *verdict) figures(rule *policies.Rule, found policies.Finding) []Figure {
	var out []Figure
	for name, value := range found.Figures {
		kind := rule.Figures[name]
		f := Figure{Name: v.one(name), Value: value, Dimension: kind.Dimension}
		f.Text = v.print(rule, found.Subject, kind, value)
		out = append(out, f)
	}
	slices.SortFunc(out, func(a, b Figure) int { return strings.Compare(a.Name, b.Name) })
	return out
}

func (v *verdict) print(rule *policies.Rule, subject string, kind policies.Figure, value any) string {
	si, isNumber := value.(float64)
	if number, ok := value.(interface{ Float64() (float64, error) }); ok {
		si, _ = number.Float64()
		isNumber = true
	}
	dimension := unit.Dimension(kind.Dimension)
	switch {
	case isNumber && dimension.Known():
		return unit.Format(si, dimension, cmp.Or(kind.Unit, v.unitLike(rule, subject, kind.Like, dimension)))
	case isNumber:
		return unit.Format(si, unit.Ratio, "") // a plain number: its figures, no more than can be meant
	}
	switch list := value.(type) {
	case []any:
		words := make([]string, len(list))
		for i, w := range list {
			words[i] = fmt.Sprint(w)
		}
		return strings.Join(words, ", ")
	}
	return fmt.Sprint(value)
}

// unitLike is the unit to print a figure in.
func (v *verdict) unitLike(rule *policies.Rule, subject, like string, dimension unit.Dimension) string {
	for way := range strings.SplitSeq(like, "|") {
		if leaf := v.doc.Resolve(rule.Subject, subject, way).Leaf; leaf != nil {
			if _, symbol := leaf.Written(); symbol != "" && slices.Contains(dimension.Units(), symbol) {
				return symbol
			}
		}
	}
	if v.unitsOf() == "inch" {
		return inchUnits[dimension]
	}
	return ""
}

// fillIn puts the figures into a message.
func fillIn(message, subject string, figures []Figure) string {
	pairs := []string{"{subject}", subject}
	for _, f := range figures {
		pairs = append(pairs, "{"+f.Name+"}", f.Text)
	}
	return strings.NewReplacer(pairs...).Replace(message)
}

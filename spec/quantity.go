package spec

import (
	"fmt"

	"fitup/spec/unit"
)

// dim is a dimension as a type, so that a length cannot be assigned where a
// pressure is due and the schema knows the unit of each key.
type dim interface{ Dimension() unit.Dimension }

type (
	lengthDim      struct{}
	areaDim        struct{}
	volumeDim      struct{}
	massDim        struct{}
	forceDim       struct{}
	pressureDim    struct{}
	absoluteDim    struct{}
	torqueDim      struct{}
	powerDim       struct{}
	temperatureDim struct{}
	angleDim       struct{}
	rotationDim    struct{}
	flowDim        struct{}
	massFlowDim    struct{}
	currentDim     struct{}
	voltageDim     struct{}
	chargeDim      struct{}
	durationDim    struct{}
	ageDim         struct{}
	ratioDim       struct{}
	countDim       struct{}
	consumptionDim struct{}
)

func (lengthDim) Dimension() unit.Dimension      { return unit.Length }
func (areaDim) Dimension() unit.Dimension        { return unit.Area }
func (volumeDim) Dimension() unit.Dimension      { return unit.Volume }
func (massDim) Dimension() unit.Dimension        { return unit.Mass }
func (forceDim) Dimension() unit.Dimension       { return unit.Force }
func (pressureDim) Dimension() unit.Dimension    { return unit.Pressure }
func (absoluteDim) Dimension() unit.Dimension    { return unit.AbsolutePressure }
func (torqueDim) Dimension() unit.Dimension      { return unit.Torque }
func (powerDim) Dimension() unit.Dimension       { return unit.Power }
func (temperatureDim) Dimension() unit.Dimension { return unit.Temperature }
func (angleDim) Dimension() unit.Dimension       { return unit.Angle }
func (rotationDim) Dimension() unit.Dimension    { return unit.RotationalSpeed }
func (flowDim) Dimension() unit.Dimension        { return unit.VolumeFlow }
func (massFlowDim) Dimension() unit.Dimension    { return unit.MassFlow }
func (currentDim) Dimension() unit.Dimension     { return unit.Current }
func (voltageDim) Dimension() unit.Dimension     { return unit.Voltage }
func (chargeDim) Dimension() unit.Dimension      { return unit.Charge }
func (durationDim) Dimension() unit.Dimension    { return unit.Duration }
func (ageDim) Dimension() unit.Dimension         { return unit.Age }
func (ratioDim) Dimension() unit.Dimension       { return unit.Ratio }
func (countDim) Dimension() unit.Dimension       { return unit.Count }
func (consumptionDim) Dimension() unit.Dimension { return unit.FuelConsumption }

// Quantities that cannot be below nothing, and those that can.
type (
	Length      = Value[unit.Quantity, amount[lengthDim]]
	Area        = Value[unit.Quantity, amount[areaDim]]
	Volume      = Value[unit.Quantity, amount[volumeDim]]
	Mass        = Value[unit.Quantity, amount[massDim]]
	Force       = Value[unit.Quantity, amount[forceDim]]
	Pressure    = Value[unit.Quantity, amount[pressureDim]]
	Torque      = Value[unit.Quantity, amount[torqueDim]]
	Power       = Value[unit.Quantity, amount[powerDim]]
	Rotation    = Value[unit.Quantity, amount[rotationDim]]
	VolumeFlow  = Value[unit.Quantity, amount[flowDim]]
	MassFlow    = Value[unit.Quantity, amount[massFlowDim]]
	Current     = Value[unit.Quantity, amount[currentDim]]
	Voltage     = Value[unit.Quantity, amount[voltageDim]]
	Charge      = Value[unit.Quantity, amount[chargeDim]]
	Duration    = Value[unit.Quantity, amount[durationDim]]
	Age         = Value[unit.Quantity, amount[ageDim]]
	Ratio       = Value[unit.Quantity, amount[ratioDim]]
	Count       = Value[unit.Quantity, amount[countDim]]
	Consumption = Value[unit.Quantity, amount[consumptionDim]]

	Vacuum      = Value[unit.Quantity, signed[pressureDim]]
	Temperature = Value[unit.Quantity, signed[temperatureDim]]
	Angle       = Value[unit.Quantity, signed[angleDim]]
)

// Ranges and pairs of quantities.
type (
	PressureRange = Value[unit.Range, span[pressureDim]]
	AbsoluteRange = Value[unit.Range, span[absoluteDim]]
	TorqueRange   = Value[unit.Range, span[torqueDim]]
	LengthRange   = Value[unit.Range, span[lengthDim]]

	PowerAtSpeed    = Value[unit.At, at[powerDim, rotationDim]]
	TorqueAtSpeed   = Value[unit.At, at[torqueDim, rotationDim]]
	FlowAtSpeed     = Value[unit.At, at[flowDim, rotationDim]]
	FlowsAtPressure = Value[[]unit.At, curve[flowDim, pressureDim]]
)

// amount reads a quantity of at least zero.
type amount[D dim] struct{}

func (amount[D]) Read(raw any) (unit.Quantity, error) {
	var d D
	text, err := quantityText(raw, d.Dimension())
	if err != nil {
		return unit.Quantity{}, err
	}
	return unit.ParseNonNegative(text, d.Dimension())
}
func (amount[D]) Document(q unit.Quantity) any { return q.SI }
func (amount[D]) Kind() Kind                   { var d D; return quantityKind(d.Dimension(), false) }

// signed reads a quantity that may be negative.
type signed[D dim] struct{}

func (signed[D]) Read(raw any) (unit.Quantity, error) {
	var d D
	text, err := quantityText(raw, d.Dimension())
	if err != nil {
		return unit.Quantity{}, err
	}
	return unit.Parse(text, d.Dimension())
}
func (signed[D]) Document(q unit.Quantity) any { return q.SI }
func (signed[D]) Kind() Kind {
	var d D
	k := quantityKind(d.Dimension(), true)
	k.Name = "signed " + k.Name
	return k
}

// span reads "0 to 10 bar".
type span[D dim] struct{}

func (span[D]) Read(raw any) (unit.Range, error) {
	var d D
	text, err := textOr(raw, func() string { return "a range such as \"0 to 10 " + firstUnit(d.Dimension()) + "\"" })
	if err != nil {
		return unit.Range{}, err
	}
	return unit.ParseRange(text, d.Dimension())
}
func (span[D]) Document(r unit.Range) any { return []any{r.Low, r.High} }
func (span[D]) Kind() Kind {
	var d D
	return Kind{
		Name: "range of " + string(d.Dimension()), Example: "0 to 10 " + firstUnit(d.Dimension()),
		Dimension: d.Dimension(), Pattern: func() string { return unit.RangePattern(d.Dimension()) }, TOML: "string", Document: "pair",
	}
}

// at reads "360 kW at 6900 rpm".
type at[A, B dim] struct{}

func (at[A, B]) Read(raw any) (unit.At, error) {
	var a A
	var b B
	text, err := textOr(raw, func() string { return "two quantities such as \"" + atExample(a.Dimension(), b.Dimension()) + "\"" })
	if err != nil {
		return unit.At{}, err
	}
	return unit.ParseAt(text, a.Dimension(), b.Dimension())
}
func (at[A, B]) Document(p unit.At) any { return []any{p.Value.SI, p.At.SI} }
func (at[A, B]) Kind() Kind {
	var a A
	var b B
	return Kind{
		Name: string(a.Dimension()) + " at " + string(b.Dimension()), Example: atExample(a.Dimension(), b.Dimension()),
		Dimension: a.Dimension(), Pattern: func() string { return unit.AtPattern(a.Dimension(), b.Dimension()) }, TOML: "string", Document: "pair",
	}
}

// curve reads one point or a list of points, each "A at B".
type curve[A, B dim] struct{}

func (curve[A, B]) Read(raw any) ([]unit.At, error) {
	var point at[A, B]
	list, isList := raw.([]any)
	if !isList {
		list = []any{raw}
	}
	points := make([]unit.At, 0, len(list))
	for i, each := range list {
		p, err := point.Read(each)
		if err != nil {
			return nil, inList(err, isList, i)
		}
		points = append(points, p)
	}
	return points, nil
}
func (curve[A, B]) Document(points []unit.At) any {
	out := make([]any, len(points))
	for i, p := range points {
		out[i] = at[A, B]{}.Document(p)
	}
	return out
}
func (curve[A, B]) Kind() Kind {
	k := at[A, B]{}.Kind()
	k.Name, k.Document = "one or more of "+k.Name, "pairs"
	k.TOML = "string or array"
	return k
}

func quantityKind(d unit.Dimension, signed bool) Kind {
	return Kind{
		Name: string(d), Example: "1 " + firstUnit(d),
		Dimension: d, Pattern: func() string { return d.Pattern(signed) }, TOML: "string", Document: "number",
	}
}

func firstUnit(d unit.Dimension) string { return d.Units()[0] }

func atExample(a, b unit.Dimension) string {
	return "1 " + firstUnit(a) + " at 1 " + firstUnit(b)
}

func quantityText(raw any, d unit.Dimension) (string, error) {
	return textOr(raw, func() string {
		example := "1"
		switch raw.(type) {
		case int64, float64:
			example = fmt.Sprint(raw)
		}
		return "a " + string(d) + " with its unit in quotes, such as \"" + example + " " + firstUnit(d) + "\""
	})
}

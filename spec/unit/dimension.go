// Package unit reads the physical values of a spec and writes them again.
//
// A value is read and converted as an exact fraction and rounded once, to the
// nearest float64 in SI. Two ways of writing one value, such as "1 in" and
// "25.4 mm", therefore compare equal, and so does a value that just meets a
// limit written in another unit.
//
// The package also reads the forms that have no plain unit: dash sizes,
// threads, wire gauges, positions, ranges, one value at another, and label
// dates. Every error is an *Error, which names the offending word by its span.
package unit

import (
	"math/big"
	"slices"
	"strings"
)

// A Dimension is a kind of quantity. Kinds that share an SI unit but must never
// be taken for one another (gauge and absolute pressure, torque and energy,
// a temperature and a difference of two) are dimensions of their own.
type Dimension string

const (
	Length                Dimension = "length"
	Area                  Dimension = "area"
	Volume                Dimension = "volume"
	SecondMoment          Dimension = "second_moment" // of area
	Mass                  Dimension = "mass"
	MassPerLength         Dimension = "mass_per_length"
	Force                 Dimension = "force"
	Pressure              Dimension = "pressure" // above the atmosphere; also stress
	AbsolutePressure      Dimension = "absolute_pressure"
	Torque                Dimension = "torque"
	Energy                Dimension = "energy"
	SpecificEnergy        Dimension = "specific_energy" // heating value
	SpecificHeat          Dimension = "specific_heat"
	Power                 Dimension = "power"
	Temperature           Dimension = "temperature" // kept in kelvin
	TemperatureDifference Dimension = "temperature_difference"
	Angle                 Dimension = "angle"
	RotationalSpeed       Dimension = "rotational_speed"
	Speed                 Dimension = "speed"
	Acceleration          Dimension = "acceleration"
	VolumeFlow            Dimension = "volume_flow"
	MassFlow              Dimension = "mass_flow"
	Density               Dimension = "density"
	KinematicViscosity    Dimension = "kinematic_viscosity"
	DynamicViscosity      Dimension = "dynamic_viscosity"
	Current               Dimension = "current"
	Voltage               Dimension = "voltage"
	Resistance            Dimension = "resistance"
	ResistancePerLength   Dimension = "resistance_per_length"
	Charge                Dimension = "charge"
	Duration              Dimension = "duration"
	Age                   Dimension = "age" // of the calendar: counted in months, which have no fixed length
	Ratio                 Dimension = "ratio"
	Stiffness             Dimension = "stiffness"
	FuelConsumption       Dimension = "fuel_consumption" // per unit of work
	Count                 Dimension = "count"            // of runs, events or heat cycles
)

// SI returns the symbol of the unit that values of d are kept in, or "" for a
// ratio or an unknown dimension.
func (d Dimension) SI() string { return kinds[d].si }

// Units returns the symbols that Parse accepts for d, the most usual first. A
// ratio needs no symbol: its list begins with "".
func (d Dimension) Units() []string {
	var symbols []string
	for _, u := range kinds[d].units {
		symbols = append(symbols, u.symbol)
	}
	return symbols
}

// Known reports whether d is one of the dimensions of this package.
func (d Dimension) Known() bool { _, ok := kinds[d]; return ok }

// Dimensions returns every dimension, in a fixed order.
func Dimensions() []Dimension { return slices.Clone(order) }

// name is d in prose, with its article: "an absolute pressure".
func (d Dimension) name() string {
	name := strings.ReplaceAll(string(d), "_", " ")
	if strings.ContainsRune("aeiou", rune(name[0])) {
		return "an " + name
	}
	return "a " + name
}

// due asks for a value of dimension d.
func (d Dimension) due() string { return d.name() + " is due, in " + oneOf(d.Units()) }

// A measure is one unit: SI value = written value × factor + zero.
type measure struct {
	symbol  string
	factor  *big.Rat
	zero    *big.Rat // nil where the scale starts at nought
	aliases []string
}

// find returns the unit of d that is written as word.
func (d Dimension) find(word string) (measure, bool) {
	for _, u := range kinds[d].units {
		if word == u.symbol || slices.Contains(u.aliases, word) {
			return u, true
		}
	}
	return measure{}, false
}

// spelling maps the ways of typing one unit onto one: N·m, N*m and N m; mm²,
// mm^2 and mm2; °C and C.
var spelling = strings.NewReplacer(
	"·", " ", "⋅", " ", "*", " ", "-", " ", "²", "2", "³", "3", "⁴", "4", "^", "",
	"µ", "u", "μ", "u", "Ω", "ohm", "Ω", "ohm", "°C", "C", "°F", "F", "°", "deg",
)

func spell(word string) string {
	return strings.ReplaceAll(strings.ReplaceAll(strings.Join(strings.Fields(spelling.Replace(word)), " "), " /", "/"), "/ ", "/")
}

// choices lists the words that mean two things, with what to write instead.
var choices = map[string][]string{
	"hp":         {"kW", "PS (735.5 W)", "hp imperial (745.7 W)"},
	"bhp":        {"kW", "PS (735.5 W)", "hp imperial (745.7 W)"},
	"horsepower": {"kW", "PS (735.5 W)", "hp imperial (745.7 W)"},
	"gal":        {"L", "US gal (3.785 L)", "imp gal (4.546 L)"},
	"gallon":     {"L", "US gal (3.785 L)", "imp gal (4.546 L)"},
	"gallons":    {"L", "US gal (3.785 L)", "imp gal (4.546 L)"},
	"pt":         {"L", "US pt (0.473 L)", "imp pt (0.568 L)"},
	"pint":       {"L", "US pt (0.473 L)", "imp pt (0.568 L)"},
	"pints":      {"L", "US pt (0.473 L)", "imp pt (0.568 L)"},
	"qt":         {"L", "US qt (0.946 L)", "imp qt (1.137 L)"},
	"quart":      {"L", "US qt (0.946 L)", "imp qt (1.137 L)"},
	"quarts":     {"L", "US qt (0.946 L)", "imp qt (1.137 L)"},
	"fl oz":      {"mL", "US fl oz (29.57 mL)", "imp fl oz (28.41 mL)"},
	"gph":        {"L/h", "US gal/h", "imp gal/h"},
	"gpm":        {"L/min", "US gal/min", "imp gal/min"},
	"gal/h":      {"L/h", "US gal/h", "imp gal/h"},
	"gal/min":    {"L/min", "US gal/min", "imp gal/min"},
	"lb/gal":     {"kg/L", "lb/US gal", "lb/imp gal"},
	"ton":        {"t (1000 kg)", "short ton (907.2 kg)", "long ton (1016 kg)"},
	"tons":       {"t (1000 kg)", "short ton (907.2 kg)", "long ton (1016 kg)"},
	"cwt":        {"kg", "lb"},
	"mil":        {"thou (0.0254 mm)", "mm"},
	"mils":       {"thou (0.0254 mm)", "mm"},
}

// exact reads a product of exact factors: "2 /3" is two thirds. It panics on
// anything else, since it reads only the table in units.go.
func exact(product string) *big.Rat {
	value := big.NewRat(1, 1)
	for _, word := range strings.Fields(product) {
		digits, inverse := strings.CutPrefix(word, "/")
		f, ok := new(big.Rat).SetString(digits)
		if !ok {
			panic("unit: bad factor " + product)
		}
		if inverse {
			f.Inv(f)
		}
		value.Mul(value, f)
	}
	return value
}

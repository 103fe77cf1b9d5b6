package unit

import (
	"errors"
	"fmt"
	"math/big"
	"strings"
	"testing"
)

// TestFactors holds each unit against a factor known from outside. Those of
// NIST SP 811 (2008) appendix B.8 are printed to seven figures, and are exact
// where a plain decimal stands here; the rest are definitions.
func TestFactors(t *testing.T) {
	for _, c := range []struct {
		text string
		d    Dimension
		want string // exact, in SI
	}{
		{"1 mm", Length, "0.001"},
		{"1 cm", Length, "0.01"},
		{"1 m", Length, "1"},
		{"1 km", Length, "1000"},
		{"1 in", Length, "0.0254"},
		{"1 ft", Length, "0.3048"},
		{"1 thou", Length, "0.0000254"},
		{"1 in2", Area, "0.00064516"},
		{"1 ft2", Area, "0.09290304"},
		{"1 mm2", Area, "0.000001"},
		{"1 cm2", Area, "0.0001"},
		{"1 L", Volume, "0.001"},
		{"1 cc", Volume, "0.000001"},
		{"1 in3", Volume, "0.000016387064"},
		{"1 US gal", Volume, "0.003785411784"},
		{"1 imp gal", Volume, "0.00454609"},
		{"1 US qt", Volume, "0.000946352946"},
		{"1 US pt", Volume, "0.000473176473"},
		{"1 imp pt", Volume, "0.00056826125"},
		{"1 US fl oz", Volume, "0.0000295735295625"},
		{"1 imp fl oz", Volume, "0.0000284130625"},
		{"1 g", Mass, "0.001"},
		{"1 t", Mass, "1000"},
		{"1 lb", Mass, "0.45359237"},
		{"1 oz", Mass, "0.028349523125"},
		{"1 short ton", Mass, "907.18474"},
		{"1 long ton", Mass, "1016.0469088"},
		{"1 lbf", Force, "4.4482216152605"},
		{"1 kgf", Force, "9.80665"},
		{"1 daN", Force, "10"},
		{"1 bar", Pressure, "100000"},
		{"1 kPa", Pressure, "1000"},
		{"1 MPa", Pressure, "1000000"},
		{"1 N/mm2", Pressure, "1000000"},
		{"1 kgf/cm2", Pressure, "98066.5"},
		{"1 mbar absolute", AbsolutePressure, "100"},
		{"1 N m", Torque, "1"},
		{"1 kgf m", Torque, "9.80665"},
		{"1 kWh", Energy, "3600000"},
		{"1 Btu", Energy, "1055.05585262"},
		{"1 PS", Power, "735.49875"},
		{"20 °C", Temperature, "293.15"},
		{"-40 F", Temperature, "233.15"},
		{"212 F", Temperature, "373.15"},
		{"0 K", Temperature, "0"},
		{"9 F", TemperatureDifference, "5"},
		{"6 C", TemperatureDifference, "6"},
		{"1 mph", Speed, "0.44704"},
		{"36 km/h", Speed, "10"},
		{"1 g", Acceleration, "9.80665"},
		{"60 L/min", VolumeFlow, "0.001"},
		{"3600 L/h", VolumeFlow, "0.001"},
		{"60000000 cc/min", VolumeFlow, "1"},
		{"60 US gal/min", VolumeFlow, "0.003785411784"},
		{"3600 imp gal/h", VolumeFlow, "0.00454609"},
		{"1 cfm", VolumeFlow, "0.0004719474432"},
		{"3600 lb/h", MassFlow, "0.45359237"},
		{"1 g/cc", Density, "1000"},
		{"1 cSt", KinematicViscosity, "0.000001"},
		{"1 cP", DynamicViscosity, "0.001"},
		{"1 Ah", Charge, "3600"},
		{"1.5 h", Duration, "5400"},
		{"2 years", Age, "24"},
		{"85 %", Ratio, "0.85"},
		{"0.85", Ratio, "0.85"},
		{"3.9:1", Ratio, "3.9"},
		{"1 N/mm", Stiffness, "1000"},
		{"3600 g/kWh", FuelConsumption, "0.000001"},
		{"3 runs", Count, "3"},
		{"3 1/2 in", Length, "0.0889"},
		{"3-1/2 in", Length, "0.0889"},
		{"1/8in", Length, "0.003175"},
		{"+2 mm", Length, "0.002"},
		{"-2 mm", Length, "-0.002"},
		{"1 mohm/m", ResistancePerLength, "0.001"},
		{"1 Btu/lb", SpecificEnergy, "2326"}, // NIST SP 811 B.8: Btu(IT)/lb
	} {
		q, err := Parse(c.text, c.d)
		if err != nil {
			t.Errorf("Parse(%q, %s): %v", c.text, c.d, err)
			continue
		}
		exactly, _ := new(big.Rat).SetString(c.want)
		if want, _ := exactly.Float64(); q.SI != want {
			t.Errorf("Parse(%q, %s) = %v, want %v", c.text, c.d, q.SI, want)
		}
	}
}

// TestPrintedFactors holds the units whose factor does not end against the
// figures of NIST SP 811 (2008) appendix B.8, to the last digit printed there.
func TestPrintedFactors(t *testing.T) {
	for _, c := range []struct {
		text string
		d    Dimension
		want string
	}{
		{"1 psi", Pressure, "6.894757e+03"},
		{"1 inHg", Pressure, "3.386389e+03"},
		{"1 inH2O", Pressure, "2.490889e+02"},
		{"1 lbf ft", Torque, "1.355818e+00"},
		{"1 lbf in", Torque, "1.129848e-01"},
		{"1 hp imperial", Power, "7.456999e+02"},
		{"1 Btu/h", Power, "2.930711e-01"},
		{"1 deg", Angle, "1.745329e-02"},
		{"1 rpm", RotationalSpeed, "1.047198e-01"},
		{"1 lb/ft3", Density, "1.601846e+01"},
		{"1 lb/US gal", Density, "1.198264e+02"},
		{"1 lb/imp gal", Density, "9.977637e+01"},
		{"1 lbf/in", Stiffness, "1.751268e+02"},
		{"1 lb/h", MassFlow, "1.259979e-04"},
		{"1 lb/min", MassFlow, "7.559873e-03"},
		{"1 US gal/min", VolumeFlow, "6.309020e-05"},
		{"1 lb/ft", MassPerLength, "1.488164e+00"},
		{"1 in4", SecondMoment, "4.162314e-07"},
		{"1 lb/(hp h)", FuelConsumption, "1.689659e-07"},
	} {
		q, err := Parse(c.text, c.d)
		if err != nil {
			t.Errorf("Parse(%q, %s): %v", c.text, c.d, err)
			continue
		}
		if got := fmt.Sprintf("%.6e", q.SI); got != c.want {
			t.Errorf("Parse(%q, %s) = %s, want %s", c.text, c.d, got, c.want)
		}
	}
}

func TestOneValueInTwoUnits(t *testing.T) {
	for _, c := range []struct {
		a, b string
		d    Dimension
	}{
		{"1 in", "25.4 mm", Length},
		{"24 in", "609.6 mm", Length},
		{"3/8 in", "9.525 mm", Length},
		{"1 bar", "100 kPa", Pressure},
		{"1 bar", "0.1 MPa", Pressure},
		{"212 °F", "100 C", Temperature},
		{"392 F", "473.15 K", Temperature},
		{"12 lbf in", "1 ft lbf", Torque},
		{"50 N·m", "50 Nm", Torque},
		{"2.5 mm²", "0.025 cm2", Area},
		{"1 mm^2", "1 mm2", Area},
		{"180 deg", "180°", Angle},
		{"1 L/min", "1000 cc/min", VolumeFlow},
		{"1000 lb", "453.59237 kg", Mass},
		{"0.85", "85 %", Ratio},
	} {
		a, errA := Parse(c.a, c.d)
		b, errB := Parse(c.b, c.d)
		if errA != nil || errB != nil {
			t.Errorf("%q, %q: %v, %v", c.a, c.b, errA, errB)
		} else if a.SI != b.SI {
			t.Errorf("%q is %v, %q is %v", c.a, a.SI, c.b, b.SI)
		}
	}
}

func TestParseErrors(t *testing.T) {
	for _, c := range []struct {
		text  string
		d     Dimension
		word  string // what the span covers
		want  string // how the message begins
		hides bool
	}{
		{"5", Length, "5", "a number with no unit: a length is due, in mm, cm, m, in, ft", false},
		{"5 bar", Length, "bar", "bar is a pressure: a length is due, in mm, ", false},
		{"5 lb", Force, "lb", "lb is a mass: a force is due, in N, kN, ", false},
		{"5 kg", Force, "kg", "kg is a mass: ", false},
		{"5 N", Mass, "N", "N is a force: ", false},
		{"20 lb/h", VolumeFlow, "lb/h", "lb/h is a mass flow: a volume flow is due, in L/min, ", false},
		{"2 bar", AbsolutePressure, "bar", "bar is a pressure: an absolute pressure is due, in bar absolute, ", false},
		{"2 bar absolute", Pressure, "bar absolute", "bar absolute is an absolute pressure: ", false},
		{"12 MM", Length, "MM", `unknown unit "MM": did you mean mm? `, false},
		{"12 milimetres", Pressure, "milimetres", `unknown unit "milimetres": a pressure is due, in bar, `, false},
		{"300 hp", Power, "hp", "hp hides a choice: write kW, PS (735.5 W) or hp imperial (745.7 W)", true},
		{"300 bhp", Power, "bhp", "bhp hides a choice: ", true},
		{"10 Gallons", Volume, "Gallons", "Gallons hides a choice: write L, US gal (3.785 L) or imp gal (4.546 L)", true},
		{"2 ton", Mass, "ton", "ton hides a choice: ", true},
		{"2 pint", Volume, "pint", "pint hides a choice: ", true},
		{"wide", Length, "wide", "no number here: a length is due, in mm", false},
		{"", Length, "", "no number here: ", false},
		{"NaN mm", Length, "NaN", "no number here: ", false},
		{"Inf mm", Length, "Inf", "no number here: ", false},
		{"1e400 mm", Length, "1e400", "a number with an exponent: ", false},
		{"12,5 mm", Length, "12,5", "a comma inside a number: ", false},
		{"1.2.3 mm", Length, "1.2.3", "not a number: ", false},
		{"1/0 in", Length, "1/0", "a fraction over nought: ", false},
		{strings.Repeat("9", 400) + " mm", Length, strings.Repeat("9", 400), "too many figures: ", false},
		{"-300 °C", Temperature, "-300 °C", "lower than there is: ", false},
		{"-1 bar absolute", AbsolutePressure, "-1 bar absolute", "lower than there is: ", false},
		{"5 %", Length, "%", "% is a ratio: ", false},
	} {
		_, err := Parse(c.text, c.d)
		var e *Error
		if !errors.As(err, &e) {
			t.Errorf("Parse(%q, %s): %v, want an error at %q", c.text, c.d, err, c.word)
			continue
		}
		if got := e.Text[e.Start:e.End]; got != c.word {
			t.Errorf("Parse(%q, %s): error at %q, want %q", c.text, c.d, got, c.word)
		}
		if !strings.HasPrefix(e.Error(), c.want) {
			t.Errorf("Parse(%q, %s): %q, want %q", c.text, c.d, e, c.want)
		}
		if e.HidesChoice != c.hides {
			t.Errorf("Parse(%q, %s): HidesChoice = %v", c.text, c.d, e.HidesChoice)
		}
	}
}

func TestSigns(t *testing.T) {
	for _, c := range []struct {
		text                  string
		d                     Dimension
		nonNegative, positive bool
	}{
		{"5 mm", Length, true, true},
		{"0 mm", Length, true, false},
		{"-5 mm", Length, false, false},
		{"-5 °C", Temperature, true, true},
	} {
		if _, err := ParseNonNegative(c.text, c.d); (err == nil) != c.nonNegative {
			t.Errorf("ParseNonNegative(%q): %v", c.text, err)
		}
		if _, err := ParsePositive(c.text, c.d); (err == nil) != c.positive {
			t.Errorf("ParsePositive(%q): %v", c.text, err)
		}
	}
}

func TestFormat(t *testing.T) {
	for _, c := range []struct {
		si   float64
		d    Dimension
		unit string
		want string
	}{
		{0.0125, Length, "mm", "12.5 mm"},
		{0.0125, Length, "", "12.5 mm"},
		{0.0125, Length, "furlong", "12.5 mm"},
		{0.0254, Length, "in", "1 in"},
		{13200, Force, "N", "13200 N"},
		{13234.6, Force, "N", "13235 N"},
		{0.09996, Length, "mm", "100 mm"},
		{0.0000000012, Length, "m", "0.0000000012 m"},
		{278.15, Temperature, "", "5 °C"},
		{373.15, Temperature, "F", "212 °F"},
		{0.85, Ratio, "%", "85 %"},
		{0.85, Ratio, "", "0.85"},
		{3.9, Ratio, ":1", "3.9:1"},
		{-0.391, Length, "mm", "-391 mm"},
		{0, Pressure, "bar", "0 bar"},
		{-1e-320, Length, "mm", "0 mm"},
		{745.6998715822702, Power, "hp imperial", "1 hp imperial"},
		{2.5, Dimension("beauty"), "", "2.5"},
	} {
		if got := Format(c.si, c.d, c.unit); got != c.want {
			t.Errorf("Format(%v, %s, %q) = %q, want %q", c.si, c.d, c.unit, got, c.want)
		}
	}
}

// TestRoundTrip: what Format writes, Parse reads, and Format writes it again
// unchanged, in every unit of every dimension.
func TestRoundTrip(t *testing.T) {
	for _, d := range Dimensions() {
		for _, symbol := range d.Units() {
			for _, n := range []string{"0", "0.00123", "0.5", "1", "12.5", "99.95", "345", "13200", "1234567"} {
				text := strings.Replace(strings.TrimSpace(n+" "+symbol), " :1", ":1", 1)
				q, err := Parse(text, d)
				if err != nil {
					t.Fatalf("Parse(%q, %s): %v", text, d, err)
				}
				if q.Unit != symbol {
					t.Errorf("Parse(%q, %s).Unit = %q", text, d, q.Unit)
				}
				once := Format(q.SI, d, symbol)
				again, err := Parse(once, d)
				if err != nil {
					t.Fatalf("Parse(%q, %s): %v", once, d, err)
				}
				if twice := Format(again.SI, d, symbol); twice != once {
					t.Errorf("%q is written %q, then %q", text, once, twice)
				}
			}
		}
	}
}

// TestUnitsAreDistinct: no word means two units of one dimension, every
// dimension is listed once, and the first unit listed is metric.
func TestUnitsAreDistinct(t *testing.T) {
	if len(order) != len(kinds) {
		t.Errorf("%d dimensions listed, %d defined", len(order), len(kinds))
	}
	for _, d := range order {
		if !d.Known() {
			t.Errorf("%s is listed and not defined", d)
		}
		seen := map[string]string{}
		for _, m := range kinds[d].units {
			for _, word := range append([]string{m.symbol}, m.aliases...) {
				if other, ok := seen[word]; ok {
					t.Errorf("%s: %q is both %s and %s", d, word, other, m.symbol)
				}
				seen[word] = m.symbol
				if found, ok := d.find(spell(word)); !ok || found.symbol != m.symbol {
					t.Errorf("%s: %q is spelt %q and then not found", d, word, spell(word))
				}
				if ways, ok := choices[strings.ToLower(word)]; ok {
					t.Errorf("%s: %q is a unit and hides a choice of %v", d, word, ways)
				}
			}
		}
	}
}

func TestConvert(t *testing.T) {
	got, d, err := Convert("14.5", "psi")
	if err != nil || d != Pressure {
		t.Fatalf("Convert: %v, %v", d, err)
	}
	// 1 psi = 0.45359237 × 9.80665 / 0.0254² Pa
	want := new(big.Rat).Quo(exact("14.5 0.45359237 9.80665"), exact("0.0254 0.0254"))
	if got.Cmp(want) != 0 {
		t.Errorf("14.5 psi = %s, want %s", got, want)
	}
	for _, c := range [][2]string{{"x", "mm"}, {"1 2", "mm"}, {"1", "hp"}, {"1", "smoot"}} {
		if _, _, err := Convert(c[0], c[1]); err == nil {
			t.Errorf("Convert(%q, %q): no error", c[0], c[1])
		}
	}
}

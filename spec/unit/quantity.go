package unit

import (
	"math"
	"math/big"
	"regexp"
	"strconv"
	"strings"

	"fitup/spec/nearest"
)

// A Quantity is one value as the author wrote it.
type Quantity struct {
	SI   float64 // in the SI unit of its dimension
	Unit string  // the author's unit, by its usual symbol
	Text string  // as written
}

func (q Quantity) String() string { return q.Text }

// Parse reads one value of dimension d: a number, then a unit.
//
//	value  = [ "+" | "-" ] number unit
//	number = digits [ "." digits ] | [ digits ( " " | "-" ) ] digits "/" digits
//
// The unit may follow at once or after a space; only a ratio does without.
// A value below absolute zero or absolute vacuum is refused.
func Parse(text string, d Dimension) (Quantity, error) {
	q, e := parse(text, 0, len(text), d)
	if e != nil {
		return Quantity{}, e
	}
	return q, nil
}

// ParseNonNegative is Parse for a value that has no sign, such as a length of
// hose.
func ParseNonNegative(text string, d Dimension) (Quantity, error) {
	q, err := Parse(text, d)
	if err == nil && strings.HasPrefix(strings.TrimSpace(text), "-") && d != Temperature {
		return Quantity{}, wholly(text, "a value below nought", d.name()+" of nought or more is due")
	}
	return q, err
}

// ParsePositive is Parse for a value that must be more than nought, such as a
// bore.
func ParsePositive(text string, d Dimension) (Quantity, error) {
	q, err := ParseNonNegative(text, d)
	if err == nil && q.SI <= 0 {
		return Quantity{}, wholly(text, "nothing at all", d.name()+" of more than nought is due")
	}
	return q, err
}

// Convert returns value, in the given unit, as an exact fraction of the SI unit
// of the unit's dimension. A symbol that two dimensions share is read as that
// of the first in Dimensions.
func Convert(value, unit string) (*big.Rat, Dimension, error) {
	text := value + " " + unit
	n, end, e := number(text, 0, len(value))
	if e != nil {
		return nil, "", e
	}
	if end != len(value) {
		return nil, "", fault(text, end, len(value), "a number ends here", "write the number alone")
	}
	for _, d := range order {
		if m, ok := d.find(spell(unit)); ok {
			return m.si(n), d, nil
		}
	}
	return nil, "", unknownUnit(text, len(value), len(text), "")
}

// parse reads the value in text[start:end].
func parse(text string, start, end int, d Dimension) (Quantity, *Error) {
	start, end = trim(text, start, end)
	n, at, e := number(text, start, end)
	if e != nil {
		if e.Want == "" {
			e.Want = d.due()
		}
		return Quantity{}, e
	}
	return quantity(text, start, at, end, n, d)
}

// quantity joins a number with the unit in text[at:end].
func quantity(text string, start, at, end int, n *big.Rat, d Dimension) (Quantity, *Error) {
	m, e := unitAt(text, start, at, end, d)
	if e != nil {
		return Quantity{}, e
	}
	si, e := rounded(text, start, end, m, n, d)
	if e != nil {
		return Quantity{}, e
	}
	return Quantity{SI: si, Unit: m.symbol, Text: text[start:end]}, nil
}

// rounded is the one place where a value stops being exact.
func rounded(text string, start, end int, m measure, n *big.Rat, d Dimension) (float64, *Error) {
	si := m.si(n)
	if si.Sign() < 0 && (d == Temperature || d == AbsolutePressure) {
		return 0, fault(text, start, end, "lower than there is", d.name()+" starts at absolute nought")
	}
	f, _ := si.Float64()
	return f, nil
}

func (m measure) si(n *big.Rat) *big.Rat {
	si := new(big.Rat).Mul(n, m.factor)
	if m.zero != nil {
		si.Add(si, m.zero)
	}
	return si
}

// digits bounds the figures of one number: enough for any measurement, and
// small enough that no value overflows a float64.
const digits = 30

var numberForm = regexp.MustCompile(`^([+-]?)(?:(?:(\d+)[ -])?(\d+)/(\d+)|(\d+(?:\.\d+)?))`)

// number reads the number at the start of text[start:end] and returns where it
// stops.
func number(text string, start, end int) (*big.Rat, int, *Error) {
	start, _ = trim(text, start, end)
	m := numberForm.FindStringSubmatch(text[start:end])
	if m == nil {
		word := wordEnd(text, start, end)
		return nil, 0, fault(text, start, word, "no number here", "")
	}
	at := start + len(m[0])
	if len(m[0]) > digits {
		return nil, 0, fault(text, start, at, "too many figures", "write at most "+strconv.Itoa(digits))
	}
	if at < end {
		rest := text[at:end]
		switch {
		case rest[0] == ',':
			return nil, 0, fault(text, start, wordEnd(text, at, end), "a comma inside a number", "write the decimal point, and no thousands mark")
		case exponent.MatchString(rest):
			return nil, 0, fault(text, start, wordEnd(text, at, end), "a number with an exponent", "write the figure out")
		case rest[0] == '.' || '0' <= rest[0] && rest[0] <= '9':
			return nil, 0, fault(text, start, wordEnd(text, at, end), "not a number", "write it like 12.5 or 3 1/2")
		}
	}
	value := new(big.Rat)
	if m[4] != "" {
		over, _ := new(big.Int).SetString(m[3], 10)
		under, _ := new(big.Int).SetString(m[4], 10)
		if under.Sign() == 0 {
			return nil, 0, fault(text, start, at, "a fraction over nought", "write a number")
		}
		value.SetFrac(over, under)
		if m[2] != "" {
			whole, _ := new(big.Rat).SetString(m[2])
			value.Add(value, whole)
		}
	} else {
		value.SetString(m[5])
	}
	if m[1] == "-" {
		value.Neg(value)
	}
	return value, at, nil
}

var exponent = regexp.MustCompile(`^[eE][+-]?\d`)

func wordEnd(text string, start, end int) int {
	if i := strings.IndexAny(text[start:end], " \t"); i >= 0 {
		return start + i
	}
	return end
}

// unitAt reads text[at:end] as a unit of d; start is where the number began.
func unitAt(text string, start, at, end int, d Dimension) (measure, *Error) {
	at, end = trim(text, at, end)
	if m, ok := d.find(spell(text[at:end])); ok {
		return m, nil
	}
	if at == end {
		return measure{}, fault(text, start, end, "a number with no unit", d.due())
	}
	return measure{}, unknownUnit(text, at, end, d)
}

// unknownUnit explains why text[start:end] is no unit of d. An empty d stands
// for any dimension.
func unknownUnit(text string, start, end int, d Dimension) *Error {
	start, end = trim(text, start, end)
	word := text[start:end]
	if ways, ok := choices[strings.ToLower(spell(word))]; ok {
		e := fault(text, start, end, word+" hides a choice", "write "+oneOf(ways))
		e.HidesChoice = true
		return e
	}
	var known []string
	for _, other := range order {
		if _, ok := other.find(spell(word)); ok && d != "" {
			return fault(text, start, end, word+" is "+other.name(), d.due())
		}
		if other == d || d == "" {
			for _, m := range kinds[other].units {
				known = append(known, m.symbol)
				known = append(known, m.aliases...)
			}
		}
	}
	want := "write a unit"
	if d != "" {
		want = d.due()
	}
	if n := nearest.To(word, known); n != "" {
		for _, dim := range order {
			if m, ok := dim.find(n); ok && (dim == d || d == "") {
				want = "did you mean " + m.symbol + "? " + want
				break
			}
		}
	}
	return fault(text, start, end, "unknown unit "+said(word), want)
}

// Format writes an SI value of dimension d in the given unit, to about three
// significant figures and never coarser than a whole number: "12.5 mm",
// "13200 N". With an empty or unknown unit it takes the most usual one of d.
func Format(si float64, d Dimension, unit string) string {
	m, ok := d.find(unit)
	if !ok {
		if len(kinds[d].units) == 0 {
			return plain(si)
		}
		m = kinds[d].units[0]
	}
	v := new(big.Rat)
	if v.SetFloat64(si) == nil { // infinite, or not a number
		return strconv.FormatFloat(si, 'g', -1, 64)
	}
	if m.zero != nil {
		v.Sub(v, m.zero)
	}
	f, _ := v.Quo(v, m.factor).Float64()
	switch m.symbol {
	case "":
		return plain(f)
	case ":1":
		return plain(f) + ":1"
	}
	return plain(f) + " " + m.symbol
}

// plain writes v to three figures, without an exponent.
func plain(v float64) string {
	const figures = 3
	if v == 0 {
		return "0"
	}
	decimals := max(0, figures-1-int(math.Floor(math.Log10(math.Abs(v)))))
	s := strconv.FormatFloat(v, 'f', decimals, 64)
	if strings.Contains(s, ".") {
		s = strings.TrimRight(strings.TrimRight(s, "0"), ".")
	}
	if s == "-0" {
		return "0"
	}
	return s
}

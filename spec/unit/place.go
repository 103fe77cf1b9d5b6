package unit

import "strings"

// A Position is a point, in metres along the spec's three axes.
type Position struct {
	XYZ  [3]float64
	Unit string
	Text string
}

func (p Position) String() string { return p.Text }

// ParsePosition reads three numbers and one unit of length: "-391, 216, 277 mm".
func ParsePosition(text string) (Position, error) {
	parts := strings.Split(text, ",")
	if len(parts) != 3 {
		return Position{}, wholly(text, "a position has three numbers", "write it like -391, 216, 277 mm")
	}
	last := strings.LastIndex(text, ",") + 1
	end := len(text)
	z, at, e := number(text, last, end)
	if e != nil {
		return Position{}, numberDue(e)
	}
	m, e := unitAt(text, last, at, end, Length)
	if e != nil {
		return Position{}, e
	}
	p := Position{Unit: m.symbol, Text: strings.TrimSpace(text)}
	p.XYZ[2], _ = m.si(z).Float64()
	start := 0
	for i, part := range parts[:2] {
		stop := start + len(part)
		n, at, e := number(text, start, stop)
		if e != nil {
			return Position{}, numberDue(e)
		}
		if from, to := trim(text, at, stop); from != to {
			return Position{}, fault(text, from, to, "a unit inside a position", "the unit stands once, at the end")
		}
		p.XYZ[i], _ = m.si(n).Float64()
		start = stop + 1
	}
	return p, nil
}

func numberDue(e *Error) *Error {
	if e.Want == "" {
		e.Want = "a number is due"
	}
	return e
}

// A Range runs from Low to High, both in SI.
type Range struct {
	Low, High float64
	Unit      string
	Text      string
}

func (r Range) String() string { return r.Text }

// Holds reports whether v lies in r, ends included.
func (r Range) Holds(v float64) bool { return r.Low <= v && v <= r.High }

// ParseRange reads two values of d, the lower first: "0 to 10 bar". The unit
// may stand once, at the end, or after both numbers.
func ParseRange(text string, d Dimension) (Range, error) {
	before, after, ok := strings.Cut(text, " to ")
	if !ok {
		return Range{}, wholly(text, "not a range", "write it like 0 to 10, with a unit: "+d.due())
	}
	high, e := parse(text, len(before)+len(" to "), len(text), d)
	if e != nil {
		return Range{}, e
	}
	n, at, e := number(text, 0, len(before))
	if e != nil {
		return Range{}, numberDue(e)
	}
	m, _ := d.find(high.Unit)
	if from, to := trim(text, at, len(before)); from != to {
		if m, e = unitAt(text, 0, at, len(before), d); e != nil {
			return Range{}, e
		}
	}
	low, e := rounded(text, 0, len(before), m, n, d)
	if e != nil {
		return Range{}, e
	}
	if low > high.SI {
		return Range{}, wholly(text, "a range that runs backwards", "write "+strings.TrimSpace(after)+" last only if it is the higher")
	}
	return Range{Low: low, High: high.SI, Unit: high.Unit, Text: strings.TrimSpace(text)}, nil
}

// An At is one value that holds at another.
type At struct {
	Value, At Quantity
	Text      string
}

func (a At) String() string { return a.Text }

// ParseAt reads a value of d at a value of at: "360 kW at 6900 rpm".
func ParseAt(text string, d, at Dimension) (At, error) {
	before, _, ok := strings.Cut(text, " at ")
	if !ok {
		return At{}, wholly(text, "a value with nothing that it holds at", d.name()+" at "+at.name()+" is due")
	}
	value, e := parse(text, 0, len(before), d)
	if e != nil {
		return At{}, e
	}
	where, e := parse(text, len(before)+len(" at "), len(text), at)
	if e != nil {
		return At{}, e
	}
	return At{Value: value, At: where, Text: strings.TrimSpace(text)}, nil
}

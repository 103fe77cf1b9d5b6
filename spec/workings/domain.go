package workings

import (
	"fmt"
	"math"
)

// StandardGravity is the conventional acceleration of free fall in m/s2.
// Source: nist-sp-811.
const StandardGravity = 9.80665

// A RangeError says that a formula was given, or led to, a value it does not
// hold for.
type RangeError struct {
	Name  string  // what the value is, as the trade calls it
	Value float64 // in SI
	Want  string  // what would be right
}

func (e *RangeError) Error() string {
	return fmt.Sprintf("%s is %.6g; it must be %s", e.Name, e.Value, e.Want)
}

// The checks below return nil or a *RangeError, so that a formula can list
// what it asks of its input in one cmp.Or.

func number(name string, v float64) error {
	if math.IsNaN(v) || math.IsInf(v, 0) {
		return &RangeError{name, v, "a finite number"}
	}
	return nil
}

func positive(name string, v float64) error {
	if !(v > 0) || math.IsInf(v, 0) {
		return &RangeError{name, v, "above zero"}
	}
	return nil
}

func notNegative(name string, v float64) error {
	if !(v >= 0) || math.IsInf(v, 0) {
		return &RangeError{name, v, "zero or more"}
	}
	return nil
}

// within accepts low <= v <= high.
func within(name string, v, low, high float64) error {
	if !(v >= low && v <= high) {
		return &RangeError{name, v, fmt.Sprintf("from %.6g to %.6g", low, high)}
	}
	return nil
}

// fraction accepts 0 < v <= 1.
func fraction(name string, v float64) error {
	if !(v > 0 && v <= 1) {
		return &RangeError{name, v, "above zero and at most one"}
	}
	return nil
}

// below accepts 0 <= v < limit, for an inner diameter or radius under an outer one.
func below(name string, v float64, limitName string, limit float64) error {
	if !(v >= 0 && v < limit) {
		return &RangeError{name, v, fmt.Sprintf("zero or more and less than the %s, %.6g", limitName, limit)}
	}
	return nil
}

// result lets a value out of a formula only if it is a number: extreme input
// that passes the checks one by one can still overflow together.
func result(name string, v float64) (float64, error) {
	if err := number(name, v); err != nil {
		return 0, err
	}
	return v, nil
}

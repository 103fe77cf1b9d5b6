package swap

import (
	"fmt"
	"math"

	"fitup/spec"
)

// bolted adds in what two hole patterns differ, and the bolts that go through
// them.
func (m *Meeting) bolted(car, driveline spec.Holes, bolts spec.Fastening, tol Tolerances) {
	m.flanges(car, driveline, tol)
	tapped := 0
	for _, half := range []struct {
		owner string
		holes spec.Holes
	}{{"car", car}, {"driveline", driveline}} {
		switch {
		case half.holes.Thread.Given():
			tapped++
			if bolts.Thread.Given() && !bolts.Thread.V.Equal(half.holes.Thread.V) {
				m.Differs = append(m.Differs, fmt.Sprintf("bolts %s into the %s's %s", bolts.Thread.V, half.owner, half.holes.Thread.V))
			}
		case half.holes.Clear.Given():
			if bolts.Thread.Given() && bolts.Thread.V.Major > half.holes.Clear.V.SI {
				m.Differs = append(m.Differs, fmt.Sprintf("bolts %s through the %s's holes of %s", bolts.Thread.V, half.owner, half.holes.Clear.V))
			}
		default:
			m.Unknown = append(m.Unknown, "size of the "+half.owner+"'s holes")
		}
	}
	if tapped == 2 {
		m.Differs = append(m.Differs, "both halves are tapped")
	}
	if !bolts.Thread.Given() {
		m.Unknown = append(m.Unknown, "thread of the bolts")
	}
	m.Meets = len(m.Differs) == 0 && len(m.Unknown) == 0
}

// flanges adds in what two hole patterns differ: number, spacing, bolt circle
// and pilot. A pattern of one hole has no spacing.
func (m *Meeting) flanges(car, driveline spec.Holes, tol Tolerances) {
	if !car.Told() {
		m.Unknown = append(m.Unknown, "holes of the car's half")
	}
	if !driveline.Told() {
		m.Unknown = append(m.Unknown, "holes of the driveline's half")
	}
	if !car.Told() || !driveline.Told() {
		m.Meets = false
		return
	}
	switch {
	case !car.Count.Given() || !driveline.Count.Given():
		m.Unknown = append(m.Unknown, "number of holes")
	case car.Count.V != driveline.Count.V:
		m.Differs = append(m.Differs, fmt.Sprintf("%d holes against %d", car.Count.V, driveline.Count.V))
	}
	spaced := false
	for _, pair := range []struct {
		what     string
		one, two spec.Length
	}{
		{"holes", car.Apart, driveline.Apart}, {"short side", car.Wide, driveline.Wide},
		{"bolt circle", car.Circle, driveline.Circle}, {"pilot", car.Pilot, driveline.Pilot},
	} {
		switch {
		case pair.one.Given() && pair.two.Given():
			spaced = spaced || pair.what != "pilot"
			const roundOff = 1e-9
			if math.Abs(pair.one.V.SI-pair.two.V.SI) > tol.Spacing+roundOff {
				m.Differs = append(m.Differs, fmt.Sprintf("%s %s against %s", pair.what, pair.one.V, pair.two.V))
			}
		case pair.one.Given() != pair.two.Given() && pair.what != "pilot":
			m.Unknown = append(m.Unknown, pair.what+" of one half")
			spaced = true
		}
	}
	if !spaced && max(car.Count.V, driveline.Count.V) > 1 {
		m.Unknown = append(m.Unknown, "spacing of the holes")
	}
	if car.Along.Given() && driveline.Along.Given() && car.Along.V != driveline.Along.V {
		m.Differs = append(m.Differs, fmt.Sprintf("%s against %s", car.Along.V, driveline.Along.V))
	}
	m.Meets = len(m.Differs) == 0 && len(m.Unknown) == 0
}

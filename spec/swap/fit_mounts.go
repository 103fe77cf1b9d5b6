package swap

import (
	"fmt"
	"math"
	"strings"

	"fitup/spec"
	"fitup/spec/document"
	"fitup/spec/unit"
)

// mounts holds each bracket of the car against the face that it meets, and names
// the faces that no bracket meets.
func (f *fitter) mounts() {
	met := map[string]bool{}
	for n := range f.d.Mounts {
		m := &f.d.Mounts[n]
		i := Interface{Kind: MountKind, Name: m.Name, Car: m.Path}
		if m.There == nil {
			i.Verdict = LeftOver
			i.Why = []string{"the driveline has no mount " + strings.TrimPrefix(m.Meets.V, "driveline.")}
			f.add(i)
			continue
		}
		i.Driveline = m.There.Path
		met[m.There.Path] = true
		var meeting Meeting
		meeting.bolted(m.Holes, m.There.Holes, m.Bolts, f.tol)
		f.offset(&i, m, &meeting)
		i.settle(meeting)
		f.add(i)
	}
	for name, there := range f.driveline.Mounts.All() {
		if !met[there.Path] {
			f.add(Interface{Kind: MountKind, Name: name, Driveline: there.Path, Verdict: Missing, Why: []string{"the car has no bracket for it"}})
		}
	}
}

func (f *fitter) offset(i *Interface, m *document.Mount, meeting *Meeting) {
	offset := m.Calc.Offset
	switch {
	case m.There.Light.V:
	case !offset.Known:
		meeting.Unknown = append(meeting.Unknown, "how far the two patterns are apart: write "+strings.Join(offset.Missing, ", "))
	default:
		i.Figures = append(i.Figures, Figure{"offset", offset.Value, unit.Length})
		if offset.Value > f.tol.Offset {
			said := millimetres(offset.Value) + " apart"
			if m.Calc.Towards != "" {
				said += ", the driveline's to the " + m.Calc.Towards
			}
			meeting.Differs = append(meeting.Differs, said)
		}
	}
}

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

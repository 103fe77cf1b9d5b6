package unit

import "math"

// Near says how two threads that are not the same come to be joined all the
// same, and what then goes wrong.
type Near struct {
	Effect NearEffect

	Major   float64 // male less female major diameter, m
	Pitch   float64 // difference of pitch, as a share of the coarser
	Overlap float64 // flank overlap, as a share of the female's own: 1 is full
}

// A NearEffect is what becomes of a near match.
type NearEffect string

const (
	Jams   NearEffect = "jams"   // starts, binds, and strips if it is forced
	Slack  NearEffect = "slack"  // goes in and holds by the tips of its flanks
	Tapers NearEffect = "tapers" // the same thread, but one half tapers
)

// Bounds of a near match. They are a workshop judgement, drawn so that the
// pairs known in the trade fall inside: no standard sets any.
const (
	nearMajor   = 0.7e-3 // m
	nearPitch   = 0.08
	looseLow    = 0.20
	looseHigh   = 0.90
	loosePitch  = 0.10
	oneDiameter = 0.1e-3 // m: what the eye and a spanner take for one size
	roundOff    = 1e-9   // far below any tolerance, far above float64 noise
)

// NearMatch reports whether the male thread can be started in the female one
// although they differ. Three kinds of pair count:
//
//   - major diameters within 0.7 mm and pitches within 8 %;
//   - a smaller male whose flanks overlap the female's by 20 to 90 %, with
//     pitches within 10 %: it goes in slack, and is the one most often missed;
//   - one diameter to the eye, within 0.1 mm, in two pitches.
//
// Like threads, and threads of opposite hand, are no near match.
func NearMatch(male, female Thread) (Near, bool) {
	if male.Equal(female) || male.Left != female.Left {
		return Near{}, false
	}
	n := Near{
		Major: male.Major - female.Major,
		Pitch: math.Abs(male.Pitch-female.Pitch) / math.Max(male.Pitch, female.Pitch),
	}
	minor, depth := internal(female)
	n.Overlap = (male.Major - minor) / (2 * depth)

	within := func(v, limit float64) bool { return v <= limit+roundOff }
	apart := math.Abs(n.Major)
	switch slack := n.Overlap >= looseLow-roundOff && n.Overlap <= looseHigh+roundOff; {
	case apart <= roundOff && n.Pitch <= roundOff:
		n.Effect = Tapers
	case slack && within(n.Pitch, loosePitch) && n.Major < 0:
		n.Effect = Slack
	case within(apart, nearMajor) && within(n.Pitch, nearPitch), within(apart, oneDiameter):
		n.Effect = Jams
	default:
		return Near{}, false
	}
	return n, true
}

// internal returns the minor diameter of a female thread and the radial depth
// of its full flank, both in metres: ISO 68-1 and ASME B1.1 give 0.54127 P,
// ISO 228-1 and ISO 7-1 0.64033 P. An NPT mouth is reckoned by ASME B1.20.1,
// from its pitch diameter at the gauge plane, with a depth of 0.8 P.
func internal(t Thread) (minor, depth float64) {
	switch t.System {
	case NPT:
		const (
			inchInMetres = 0.0254
			taper        = 1.0 / 16
			handTurns    = 4.4 // hand engagement L1 of 4.1 to 4.75 turns, table 2 of the standard
		)
		small := t.Major - (0.05*t.Major/inchInMetres+1.1)*t.Pitch
		depth = 0.8 * t.Pitch
		return small + taper*handTurns*t.Pitch - depth, depth
	case G, R:
		depth = 0.64033 * t.Pitch
	default:
		depth = 5 * math.Sqrt(3) / 16 * t.Pitch
	}
	return t.Major - 2*depth, depth
}

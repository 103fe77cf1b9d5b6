package swap

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"fitup/spec/document"
	"fitup/spec/unit"
)

// Tolerances are how far two halves may differ and still meet. The figures are
// limits of rules, and whoever asks hands them in.
type Tolerances struct {
	Offset  float64 // m: between the centres of a mount's two patterns
	Spacing float64 // m: between two distances of holes
	Hose    float64 // m: between a hose and what it goes over, and of slip joints
	Band    float64 // m: between the outside diameters of two band flanges
}

// A Meeting says whether two halves meet.
type Meeting struct {
	Meets   bool
	Differs []string // in what they differ, in words; some of it may be known before all is
	Unknown []string // what is not said, in words
}

// threaded forms meet their own kind, male in female, by thread.
var threaded = []string{"37-flare", "45-flare", "inverted-flare", "bubble-flare", "O-ring-boss", "metric-O-ring", "washer-face", "taper-pipe", "banjo"}

// partners are the forms that a form meets, beside its own where that is there.
var partners = map[string][]string{
	"hose": {"bead", "barb", "plain-tube"}, "bead": {"hose"}, "barb": {"hose"}, "plain-tube": {"hose", "slip"},
	"slip": {"slip", "plain-tube"}, "V-band": {"V-band"}, "flange": {"flange"}, "spline": {"spline"},
	"dry-break": {"dry-break"}, "push-connector": {"push-connector"}, "connector": {"connector"},
	"stud": {"ring"}, "ring": {"stud"}, "blade": {"blade"}, "rod": {"rod-end"}, "rod-end": {"rod", "rod-end"},
}

// Meet reports whether two halves go together: form, gender, thread or size,
// seat, family and key, as each form asks. Torque, metal and rating are not its
// business.
func (tol Tolerances) Meet(a, b *document.Half) Meeting {
	m := &meeting{a: a, b: b}
	one, other := a.Form.V, b.Form.V
	if !m.said("form", one, other) {
		return m.done()
	}
	if one != other && !slices.Contains(partners[one], other) {
		m.differs("%s against %s", one, other)
		m.seats()
		if slices.Contains(threaded, one) && slices.Contains(threaded, other) {
			m.threads()
		}
		return m.done()
	}
	switch one {
	case "hose", "bead", "barb", "plain-tube":
		if one == other {
			m.differs("%s against %s", one, other)
		}
		m.diameters(tol.Hose)
	case "slip":
		m.genders()
		m.diameters(tol.Hose)
	case "V-band":
		m.words("profile", a.Family.V, b.Family.V)
		m.lengths("outside diameter", length(a.Outer.Given(), a.Outer.V.SI), length(b.Outer.Given(), b.Outer.V.SI), tol.Band)
		m.genders()
	case "flange":
		m.genders()
		m.diameters(tol.Hose)
	case "dry-break", "push-connector":
		m.words("family", a.Family.V, b.Family.V)
		m.sizes()
		m.genders()
		m.keys()
	case "connector":
		m.sizes()
		m.genders()
		m.keys()
	case "spline", "blade":
		m.sizes()
		m.genders()
	case "stud", "ring":
		m.words("size", nominal(a.Size), nominal(b.Size))
	case "rod", "rod-end":
		m.threads()
		m.genders()
	default: // threaded
		m.genders()
		m.threads()
		m.seats()
	}
	return m.done()
}

// A meeting is a Meeting in the making.
type meeting struct {
	a, b *document.Half
	Meeting
}

func (m *meeting) done() Meeting {
	m.Meets = len(m.Differs) == 0 && len(m.Unknown) == 0
	return m.Meeting
}

func (m *meeting) differs(format string, args ...any) {
	m.Differs = append(m.Differs, fmt.Sprintf(format, args...))
}

// said notes what is missing of a pair of words.
func (m *meeting) said(what, one, other string) bool {
	switch {
	case one == "" && other == "":
		m.Unknown = append(m.Unknown, what+" of both ends")
	case one == "":
		m.Unknown = append(m.Unknown, what+" of the "+m.a.Owner+"'s end")
	case other == "":
		m.Unknown = append(m.Unknown, what+" of the "+m.b.Owner+"'s end")
	}
	return one != "" && other != ""
}

// words asks for two words to be the same.
func (m *meeting) words(what, one, other string) {
	if m.said(what, one, other) && one != other {
		m.differs("%s %s against %s", what, one, other)
	}
}

func (m *meeting) sizes() { m.words("size", m.a.Size, m.b.Size) }

// keys asks for the same keying, and none on both sides will do.
func (m *meeting) keys() {
	if one, other := m.a.Key.V, m.b.Key.V; one != other {
		m.differs("key %s against %s", orNone(one), orNone(other))
	}
}

func orNone(word string) string {
	if word == "" {
		return "none"
	}
	return word
}

func (m *meeting) genders() {
	if one, other := m.a.Gender.V, m.b.Gender.V; m.said("gender", one, other) && one == other {
		m.differs("both %s", one)
	}
}

func (m *meeting) seats() {
	if one, other := m.a.Seat, m.b.Seat; one != nil && other != nil && *one != *other {
		m.differs("seat of %s against %s", degrees(*one), degrees(*other))
	}
}

func degrees(rad float64) string { return unit.Format(rad, unit.Angle, "deg") }

// threads compares the two threads, else the two sizes, and says what becomes of
// a pair that can be started all the same.
func (m *meeting) threads() {
	one, other := m.a.Thread, m.b.Thread
	if one == nil || other == nil {
		m.sizes()
		return
	}
	if one.Text == other.Text {
		return
	}
	first, err := unit.ParseThread(one.Text)
	second, err2 := unit.ParseThread(other.Text)
	if err != nil || err2 != nil || first.Equal(second) {
		return // two ways to write one thread
	}
	male, female := first, second
	if m.a.Gender.V == "female" {
		male, female = second, first
	}
	said := ""
	if near, is := unit.NearMatch(male, female); is {
		said = ", which starts and " + string(near.Effect)
		if near.Effect == unit.Slack {
			said = ", which goes in slack"
		}
	}
	m.differs("thread %s against %s%s", one.Text, other.Text, said)
}

// diameters compares a hose and what it goes over, or two pipes: by diameter, or
// by dash where both are sized so.
func (m *meeting) diameters(within float64) {
	a, b := m.a, m.b
	switch {
	case a.Dash != nil && b.Dash != nil:
		if *a.Dash != *b.Dash {
			m.differs("size -%d against -%d", *a.Dash, *b.Dash)
		}
	case a.Dash != nil || b.Dash != nil:
		m.Unknown = append(m.Unknown, "one measure for both ends: "+a.Size+" and "+b.Size)
	default:
		m.lengths("size", a.Diameter, b.Diameter, within)
	}
}

func (m *meeting) lengths(what string, one, other *float64, within float64) {
	word := func(v *float64) string {
		if v == nil {
			return ""
		}
		return millimetres(*v)
	}
	const roundOff = 1e-9
	if m.said(what, word(one), word(other)) && math.Abs(*one-*other) > within+roundOff {
		m.differs("%s %s against %s", what, word(one), word(other))
	}
}

func length(given bool, v float64) *float64 {
	if !given {
		return nil
	}
	return &v
}

// nominal is the size of a stud that a ring is sized by: M8 of M8x1.25.
func nominal(size string) string {
	before, _, _ := strings.Cut(size, "x")
	return before
}

package workings

import (
	"cmp"
	"math"
	"slices"
)

// LaminarLimit is the Reynolds number up to which flow in a round bore is
// taken as laminar. Source: cengel-fluid-mechanics.
const LaminarLimit = 2300

// CircleArea returns the area in m2 of a circle, A = pi d^2 / 4, from its
// diameter in m.
func CircleArea(diameter float64) (float64, error) {
	if err := positive("diameter", diameter); err != nil {
		return 0, err
	}
	return result("area", math.Pi/4*diameter*diameter)
}

// Velocity returns the mean velocity in m/s, v = 4 Q / (pi d^2), of a flow in
// m3/s through a full round bore in m. Source: cengel-fluid-mechanics.
func Velocity(flow, bore float64) (float64, error) {
	if err := cmp.Or(notNegative("flow", flow), positive("bore", bore)); err != nil {
		return 0, err
	}
	return result("velocity", flow/(math.Pi/4*bore*bore))
}

// Reynolds returns the Reynolds number, Re = rho v d / mu, from density in
// kg/m3, velocity in m/s, bore in m and dynamic viscosity in Pa s.
// Source: cengel-fluid-mechanics.
func Reynolds(density, velocity, bore, viscosity float64) (float64, error) {
	if err := cmp.Or(positive("density", density), notNegative("velocity", velocity),
		positive("bore", bore), positive("viscosity", viscosity)); err != nil {
		return 0, err
	}
	return result("Reynolds number", density*velocity*bore/viscosity)
}

// LaminarFriction returns the Darcy friction factor of laminar flow,
// f = 64 / Re. It holds for 0 < Re <= [LaminarLimit] in a round bore, smooth or
// rough. Source: cengel-fluid-mechanics.
func LaminarFriction(reynolds float64) (float64, error) {
	if err := cmp.Or(positive("Reynolds number", reynolds),
		within("Reynolds number", reynolds, 0, LaminarLimit)); err != nil {
		return 0, err
	}
	return result("friction factor", 64/reynolds)
}

// Colebrook returns the Darcy friction factor of turbulent flow,
// 1/sqrt(f) = -2 log10(r/3.7 + 2.51/(Re sqrt(f))), solved to the last bit.
// roughness is the relative one, wall roughness over bore, 0 to 0.05. The
// equation was fitted for Re from 4000 to 1e8; it is let down to
// [LaminarLimit] because [Friction] uses it there as the upper estimate.
// Source: colebrook-1939.
func Colebrook(reynolds, roughness float64) (float64, error) {
	if err := cmp.Or(within("Reynolds number", reynolds, LaminarLimit, 1e8),
		within("relative roughness", roughness, 0, 0.05)); err != nil {
		return 0, err
	}
	// It begins at Haaland's explicit form. Source: haaland-1983.
	x := -1.8 * math.Log10(math.Pow(roughness/3.7, 1.11)+6.9/reynolds)
	for range 60 { // a contraction: about eight rounds settle it
		next := -2 * math.Log10(roughness/3.7+2.51*x/reynolds)
		if next == x {
			break
		}
		x = next
	}
	return result("friction factor", 1/(x*x))
}

// Friction returns the Darcy friction factor for any Reynolds number above
// zero: [LaminarFriction] up to [LaminarLimit], [Colebrook] above. Between 2300
// and 4000 the flow may be either; the turbulent value, the larger, is given so
// that a drop is not told too small. Source: cengel-fluid-mechanics.
func Friction(reynolds, roughness float64) (float64, error) {
	if reynolds <= LaminarLimit {
		return LaminarFriction(reynolds)
	}
	return Colebrook(reynolds, roughness)
}

// DarcyDrop returns the pressure lost to wall friction in Pa,
// dp = f (L/d) rho v^2 / 2, from the Darcy friction factor, length and bore in
// m, density in kg/m3 and velocity in m/s. Full round bore, steady flow,
// constant density. Source: cengel-fluid-mechanics.
func DarcyDrop(friction, length, bore, density, velocity float64) (float64, error) {
	if err := cmp.Or(positive("friction factor", friction), notNegative("length", length),
		positive("bore", bore), positive("density", density), notNegative("velocity", velocity)); err != nil {
		return 0, err
	}
	return result("pressure drop", friction*length/bore*density*velocity*velocity/2)
}

// MinorDrop returns the pressure in Pa lost in fittings, bends and entries,
// dp = K rho v^2 / 2, where K is the sum of their loss coefficients.
// Source: cengel-fluid-mechanics.
func MinorDrop(coefficient, density, velocity float64) (float64, error) {
	if err := cmp.Or(notNegative("loss coefficient", coefficient), positive("density", density),
		notNegative("velocity", velocity)); err != nil {
		return 0, err
	}
	return result("pressure drop", coefficient*density*velocity*velocity/2)
}

// Loss coefficients of the ends of a line, to be summed for [MinorDrop].
// Source: cengel-fluid-mechanics (table 8-4; turbulent flow, from memory).
const (
	EntryLoss   = 0.5  // out of a tank or chamber by a sharp edge
	ExitLoss    = 1.0  // into one: all the velocity is lost
	ElbowLoss   = 0.9  // a screwed bend of a right angle
	AdaptorLoss = 0.08 // a screwed union
)

// BendLoss returns the loss coefficient of a screwed bend by its angle in rad, in
// proportion to that of a right angle: [ElbowLoss]. Swept ends lose less.
// Source: cengel-fluid-mechanics.
func BendLoss(angle float64) (float64, error) {
	if err := within("angle of a bend", math.Abs(angle), 0, math.Pi); err != nil {
		return 0, err
	}
	return result("loss coefficient", ElbowLoss*math.Abs(angle)/(math.Pi/2))
}

// SuddenExpansion returns the loss coefficient of a step from a narrow bore to a
// wide one, both in m, K = (1 - (d/D)^2)^2, on the velocity in the narrow one.
// Source: crane-tp-410.
func SuddenExpansion(narrow, wide float64) (float64, error) {
	if err := stepped(narrow, wide); err != nil {
		return 0, err
	}
	lost := 1 - narrow*narrow/(wide*wide)
	return result("loss coefficient", lost*lost)
}

// SuddenContraction returns the loss coefficient of a step from a wide bore to a
// narrow one, both in m, K = (1 - (d/D)^2) / 2, on the velocity in the narrow one.
// Source: crane-tp-410.
func SuddenContraction(wide, narrow float64) (float64, error) {
	if err := stepped(narrow, wide); err != nil {
		return 0, err
	}
	return result("loss coefficient", (1-narrow*narrow/(wide*wide))/2)
}

func stepped(narrow, wide float64) error {
	return cmp.Or(positive("narrow bore", narrow), within("narrow bore", narrow, 0, wide))
}

// ChainLoss returns the loss coefficient of adaptors that are screwed together in a
// line, all bores in m and in the order of the flow: [AdaptorLoss] in each, and the
// step from each bore to the next by [SuddenContraction] or [SuddenExpansion]. It
// is on the velocity in the line: K of a narrow bore d counts (bore/d)^4 there.
// Beyond the last the flow is taken to have the line's bore again.
// Source: crane-tp-410; cengel-fluid-mechanics for the adaptors themselves.
func ChainLoss(bore float64, adaptors ...float64) (float64, error) {
	total, last := 0.0, bore
	add := func(k, at float64) { total += k * math.Pow(bore/at, 4) }
	for _, next := range append(slices.Clone(adaptors), bore) {
		step, narrow := SuddenContraction, next
		if next > last {
			step, narrow = SuddenExpansion, last
		}
		k, err := step(last, next)
		if err != nil {
			return 0, err
		}
		add(k, narrow)
		last = next
	}
	for _, each := range adaptors {
		add(AdaptorLoss, each)
	}
	return result("loss coefficient", total)
}

// HeadDrop returns the pressure in Pa that a liquid loses in climbing a rise in
// m, dp = rho g z; a fall is a negative rise and gains pressure.
// Source: cengel-fluid-mechanics.
func HeadDrop(density, rise float64) (float64, error) {
	if err := cmp.Or(positive("density", density), number("rise", rise)); err != nil {
		return 0, err
	}
	return result("pressure drop", density*StandardGravity*rise)
}

// A Pipe is a hose or tube between two ends.
type Pipe struct {
	Bore      float64 // m
	Length    float64 // m
	Roughness float64 // of the wall, m; 0 for a smooth liner
	Losses    float64 // sum of the loss coefficients of fittings and bends
	Rise      float64 // outlet above inlet, m
}

// A Liquid is what flows in it.
type Liquid struct {
	Density   float64 // kg/m3
	Viscosity float64 // dynamic, Pa s
}

// A PipeFlow is what [PipeDrop] worked out on the way to the drop.
type PipeFlow struct {
	Velocity float64 // m/s
	Reynolds float64
	Friction float64 // Darcy
	Drop     float64 // Pa, inlet less outlet
}

// PipeDrop returns the pressure that a flow in m3/s loses between the ends of
// a pipe: [DarcyDrop] with [Friction], [MinorDrop] and [HeadDrop] together.
// Entrance length is left out, so a short line loses a little more.
// Source: cengel-fluid-mechanics.
func PipeDrop(p Pipe, l Liquid, flow float64) (PipeFlow, error) {
	if err := cmp.Or(positive("flow", flow), positive("bore", p.Bore),
		notNegative("roughness", p.Roughness)); err != nil {
		return PipeFlow{}, err
	}
	v, err := Velocity(flow, p.Bore)
	if err != nil {
		return PipeFlow{}, err
	}
	re, err := Reynolds(l.Density, v, p.Bore, l.Viscosity)
	if err != nil {
		return PipeFlow{}, err
	}
	f, err := Friction(re, p.Roughness/p.Bore)
	if err != nil {
		return PipeFlow{}, err
	}
	wall, err := DarcyDrop(f, p.Length, p.Bore, l.Density, v)
	if err != nil {
		return PipeFlow{}, err
	}
	fittings, err := MinorDrop(p.Losses, l.Density, v)
	if err != nil {
		return PipeFlow{}, err
	}
	head, err := HeadDrop(l.Density, p.Rise)
	if err != nil {
		return PipeFlow{}, err
	}
	drop, err := result("pressure drop", wall+fittings+head)
	return PipeFlow{v, re, f, drop}, err
}

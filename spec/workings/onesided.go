package workings

import (
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r3"
)

// Stands only push and sling legs only pull. Both carry a load of three
// components (weight and two moments, or three forces) through members that
// each act in one fixed direction with a force of zero or more:
//
//	sum(R_i v_i) = load,  R_i >= 0
//
// Three members settle that by statics alone. More do not: how they share it
// depends on stiffness, and in the worst case on which of them barely touch.

// slack is the share of the largest force that counts as nothing.
const slack = 1e-9

// mostMembers bounds the enumerations below.
const mostMembers = 12

// members are one-sided members, each with its direction and its stiffness on
// any one scale.
type members struct {
	direction []r3.Vec
	stiffness []float64
}

// elastic returns the forces if the load is rigid and each member springs with
// its stiffness: R_i = k_i v_i.q in those that carry, v_i.q <= 0 in those that
// have let go. That set is unique, so it is found by trying every set, the
// whole first.
func (m members) elastic(load r3.Vec) ([]float64, bool) {
	n := len(m.direction)
	for set := 1<<n - 1; set > 0; set-- {
		q, ok := m.settle(load, set)
		if !ok {
			continue
		}
		forces := make([]float64, n)
		tolerance := slack * r3.Norm(load)
		for i, v := range m.direction {
			f := m.stiffness[i] * r3.Dot(v, q)
			carries := set>>i&1 == 1
			if carries && f < -tolerance || !carries && f > tolerance {
				ok = false
				break
			}
			if carries {
				forces[i] = max(f, 0)
			}
		}
		if ok {
			return forces, true
		}
	}
	return nil, false
}

// settle returns the movement q of the load on the members of a set, which is
// not settled if they leave it free to move.
func (m members) settle(load r3.Vec, set int) (r3.Vec, bool) {
	k := mat.NewSymDense(3, nil)
	for i, v := range m.direction {
		if set>>i&1 == 1 {
			k.SymRankOne(k, m.stiffness[i], mat.NewVecDense(3, []float64{v.X, v.Y, v.Z}))
		}
	}
	var c mat.Cholesky
	if !c.Factorize(k) || c.Cond() > 1e14 {
		return r3.Vec{}, false
	}
	var q mat.VecDense
	if err := c.SolveVecTo(&q, mat.NewVecDense(3, []float64{load.X, load.Y, load.Z})); err != nil {
		return r3.Vec{}, false
	}
	return r3.Vec{X: q.AtVec(0), Y: q.AtVec(1), Z: q.AtVec(2)}, true
}

// threes returns every way in which three members alone carry the load. The
// largest force that equilibrium allows in a member is in one of them: they
// are the corners of the feasible set, so this is its linear programme solved
// by looking at them all.
func (m members) threes(load r3.Vec) [][]float64 {
	var ways [][]float64
	n := len(m.direction)
	for a := range n {
		for b := a + 1; b < n; b++ {
			for c := b + 1; c < n; c++ {
				u, v, w := m.direction[a], m.direction[b], m.direction[c]
				det := r3.Dot(u, r3.Cross(v, w))
				if math.Abs(det) < slack*r3.Norm(u)*r3.Norm(v)*r3.Norm(w) {
					continue // in one plane: they cannot hold it
				}
				ra := r3.Dot(load, r3.Cross(v, w)) / det
				rb := r3.Dot(u, r3.Cross(load, w)) / det
				rc := r3.Dot(u, r3.Cross(v, load)) / det
				if min(ra, rb, rc) < -slack*max(ra, rb, rc) {
					continue
				}
				way := make([]float64, n)
				way[a], way[b], way[c] = max(ra, 0), max(rb, 0), max(rc, 0)
				ways = append(ways, way)
			}
		}
	}
	return ways
}

// most returns, member by member, the largest force in any of the ways.
func most(ways [][]float64) []float64 {
	if len(ways) == 0 {
		return nil
	}
	out := make([]float64, len(ways[0]))
	for _, way := range ways {
		for i, f := range way {
			out[i] = max(out[i], f)
		}
	}
	return out
}

package workings

import (
	"cmp"
	"fmt"
	"math"

	"gonum.org/v1/gonum/mat"
	"gonum.org/v1/gonum/spatial/r3"
)

// A Hanging is a load at rest under a hook: it has turned until its centre of
// mass is below the hook. Positions are in the load's own axes, m.
type Hanging struct {
	Hook r3.Vec // where the hook is
	Up   r3.Vec // which way is up, of length one
	turn r3.Mat // from the load's axes to level ones
}

// Hang returns how a load hangs from sling legs of given lengths in m, each from
// the hook to one eye. The hook of two legs comes into the plane of both eyes and
// the centre of mass; three settle it by their lengths; more must agree to a
// hundredth. Where the eyes lie below the centre, up is down: the load has rolled
// over. Source: statics.
func Hang(centre r3.Vec, eyes []r3.Vec, lengths []float64) (Hanging, error) {
	if err := cmp.Or(point("centre of mass", centre), within("number of legs", float64(len(eyes)), 2, mostMembers),
		within("number of leg lengths", float64(len(lengths)), float64(len(eyes)), float64(len(eyes)))); err != nil {
		return Hanging{}, err
	}
	for i, eye := range eyes {
		if err := cmp.Or(point("eye", eye), positive("length of a leg", lengths[i])); err != nil {
			return Hanging{}, err
		}
	}
	hook, err := hookOfTwo(centre, eyes, lengths)
	if len(eyes) > 2 {
		hook, err = hookOfMore(centre, eyes, lengths)
	}
	if err != nil {
		return Hanging{}, err
	}
	if err := positive("height of the hook over the centre of mass", r3.Norm(r3.Sub(hook, centre))); err != nil {
		return Hanging{}, err
	}
	up := r3.Unit(r3.Sub(hook, centre))
	ahead := r3.Sub(r3.Vec{X: 1}, r3.Scale(up.X, up))
	if r3.Norm(ahead) < 0.1 { // it hangs on end: any level axis will do
		ahead = r3.Sub(r3.Vec{Y: 1}, r3.Scale(up.Y, up))
	}
	ahead = r3.Unit(ahead)
	left := r3.Cross(up, ahead)
	return Hanging{hook, up, *r3.NewMat([]float64{
		ahead.X, ahead.Y, ahead.Z, left.X, left.Y, left.Z, up.X, up.Y, up.Z,
	})}, nil
}

// Level returns where a point of the load is in level axes with the hook at the
// origin, z up.
func (h Hanging) Level(p r3.Vec) r3.Vec { return h.turn.MulVec(r3.Sub(p, h.Hook)) }

// Tilt returns the angle in rad by which the load hangs out of its own level.
func (h Hanging) Tilt() float64 { return math.Acos(min(max(h.Up.Z, -1), 1)) }

var errLegs = fmt.Errorf("sling legs of these lengths do not meet over these eyes")

func hookOfTwo(centre r3.Vec, eyes []r3.Vec, lengths []float64) (r3.Vec, error) {
	between := r3.Sub(eyes[1], eyes[0])
	apart := r3.Norm(between)
	if apart < slack {
		return r3.Vec{}, fmt.Errorf("the two eyes must be apart")
	}
	along := r3.Unit(between)
	foot := (lengths[0]*lengths[0] - lengths[1]*lengths[1] + apart*apart) / (2 * apart)
	above := lengths[0]*lengths[0] - foot*foot
	below := r3.Add(eyes[0], r3.Scale(foot, along))
	away := r3.Sub(below, centre)
	away = r3.Sub(away, r3.Scale(r3.Dot(away, along), along))
	if above <= 0 || r3.Norm(away) < slack {
		return r3.Vec{}, errLegs
	}
	return r3.Add(below, r3.Scale(math.Sqrt(above), r3.Unit(away))), nil
}

// hookOfMore finds the point that is at the given distances from three eyes or
// more, by Newton's method on the least squares.
func hookOfMore(centre r3.Vec, eyes []r3.Vec, lengths []float64) (r3.Vec, error) {
	var middle r3.Vec
	longest := 0.0
	for i, eye := range eyes {
		middle = r3.Add(middle, r3.Scale(1/float64(len(eyes)), eye))
		longest = max(longest, lengths[i])
	}
	normal := r3.Cross(r3.Sub(eyes[1], eyes[0]), r3.Sub(eyes[2], eyes[0]))
	if r3.Norm(normal) < slack {
		return r3.Vec{}, fmt.Errorf("three eyes must not lie in one line")
	}
	if r3.Dot(normal, r3.Sub(middle, centre)) < 0 {
		normal = r3.Scale(-1, normal)
	}
	hook := r3.Add(middle, r3.Scale(longest, r3.Unit(normal)))
	slope, miss := mat.NewDense(len(eyes), 3, nil), mat.NewVecDense(len(eyes), nil)
	for range 60 {
		for i, eye := range eyes {
			leg := r3.Sub(hook, eye)
			miss.SetVec(i, lengths[i]-r3.Norm(leg))
			leg = r3.Unit(leg)
			slope.SetRow(i, []float64{leg.X, leg.Y, leg.Z})
		}
		var move mat.VecDense
		if err := move.SolveVec(slope, miss); err != nil {
			return r3.Vec{}, errLegs
		}
		step := r3.Vec{X: move.AtVec(0), Y: move.AtVec(1), Z: move.AtVec(2)}
		hook = r3.Add(hook, step)
		if r3.Norm(step) < slack*longest {
			break
		}
	}
	for i, eye := range eyes {
		if math.Abs(r3.Norm(r3.Sub(hook, eye))-lengths[i]) > 0.01*longest {
			return r3.Vec{}, errLegs
		}
	}
	return hook, nil
}

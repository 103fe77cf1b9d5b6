package swap

import (
	"fmt"

	"fitup/spec"
)

// A Move is a driveline going from where it is into a car: what has to be judged
// before it and after.
type Move struct {
	Driveline *spec.File

	// The receiving car: as it is, and with the incoming driveline.
	Into, Received *spec.Composition
	// The giving car: as it is, and with an empty bay. Both are nil for a driveline
	// that is in no car.
	From, Given *spec.Composition
	// Occupied is the driveline that has to come out of the receiving car first;
	// nil for an empty bay.
	Occupied *spec.File
}

// A CannotMove says why there is no such move. What is wrong within the files
// themselves is among the outfit's problems.
type CannotMove struct {
	Path   string // key path in File; "" if it is about the file as a whole
	File   string
	Reason string
}

func (e *CannotMove) Error() string {
	if e.Path == "" {
		return e.File + ": " + e.Reason
	}
	return fmt.Sprintf("%s: %s: %s", e.File, e.Path, e.Reason)
}

// FromCar is the move of the driveline in one car into another.
func FromCar(o *spec.Outfit, from, into string) (*Move, error) {
	giving, ok := o.Car(from)
	if !ok {
		return nil, unusable(o, from, spec.KindCar)
	}
	if giving.Driveline == nil {
		return nil, &CannotMove{Path: "car.driveline", File: giving.Car.Name, Reason: "there is no driveline in it to give"}
	}
	receiving, ok := o.Car(into)
	if !ok {
		return nil, unusable(o, into, spec.KindCar)
	}
	if receiving.Car == giving.Car {
		return nil, &CannotMove{File: giving.Car.Name, Reason: "gives and receives; name two cars"}
	}
	m, err := move(o, giving.Driveline, receiving)
	if err != nil {
		return nil, err
	}
	m.From = giving
	m.Given = &spec.Composition{Car: giving.Car, Shop: giving.Shop}
	return m, nil
}

// FromBench is the move of a driveline that is in no car into one.
func FromBench(o *spec.Outfit, driveline, into string) (*Move, error) {
	alone, ok := o.Driveline(driveline)
	if !ok {
		return nil, unusable(o, driveline, spec.KindDriveline)
	}
	receiving, ok := o.Car(into)
	if !ok {
		return nil, unusable(o, into, spec.KindCar)
	}
	return move(o, alone.Driveline, receiving)
}

func move(o *spec.Outfit, driveline *spec.File, receiving *spec.Composition) (*Move, error) {
	m := &Move{Driveline: driveline, Into: receiving}
	if receiving.Driveline == driveline {
		return nil, &CannotMove{Path: "car.driveline", File: receiving.Car.Name, Reason: driveline.Name + " is in it already"}
	}
	m.Occupied = receiving.Driveline
	before := len(o.Problems())
	if accepted := o.CarsFor(driveline.Name, []string{receiving.Car.Name}); len(accepted) == 1 {
		m.Received = accepted[0]
		return m, nil
	}
	if problems := o.Problems(); len(problems) > before {
		return nil, &CannotMove{File: receiving.Car.Name, Reason: "it and " + driveline.Name + " do not belong together: see what is wrong with the files"}
	}
	// The car says nothing of this driveline: it may still be looked at.
	m.Received = &spec.Composition{Car: receiving.Car, Driveline: driveline, Shop: receiving.Shop, Trial: true}
	return m, nil
}

func unusable(o *spec.Outfit, name string, want spec.FileKind) error {
	if f := o.Load(name); f.Kind != 0 && f.Kind != want {
		return &CannotMove{File: name, Reason: fmt.Sprintf("it is the file of a %s, and that of a %s is wanted", f.Kind, want)}
	}
	return &CannotMove{File: name, Reason: "it, or a file that it needs, cannot be used: see what is wrong with it"}
}

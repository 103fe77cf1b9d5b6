package swap

import (
	"cmp"
	"fmt"

	"fitup/spec"
	"fitup/spec/document"
)

// pins holds the two halves of every connector against each other, way by way.
func (f *fitter) pins() {
	for n := range f.d.Pins {
		p := &f.d.Pins[n]
		i := Interface{Kind: PinKind, Name: p.Connector + "." + p.Name, Verdict: Meets}
		var here, there string
		if p.Here != nil {
			i.Car, here = p.Here.Path, pinText(p.Here)
		}
		if p.There != nil {
			i.Driveline, there = p.There.Path, pinText(p.There)
		}
		switch {
		case p.There == nil:
			i.Verdict, i.Why = LeftOver, []string{"the driveline's half has no wire here: the car " + cmp.Or(here, "does not say what for")}
			if p.Here.Takes.Given() {
				i.Verdict = Missing
			}
		case p.Here == nil:
			i.Verdict, i.Why = Missing, []string{"the car's half has no wire here: the driveline " + cmp.Or(there, "does not say what for")}
		case here == "" || there == "":
			i.Verdict, i.Why = CannotTell, []string{"not said: what the pin gives or takes"}
		case !pinsMeet(p.Here, p.There):
			i.Verdict, i.Why = MustBeMade, []string{fmt.Sprintf("the car %s and the driveline %s", here, there)}
		}
		f.add(i)
	}
}

func pinText(p *spec.Pin) string {
	switch {
	case p.Gives.Given():
		return "gives " + p.Gives.V
	case p.Takes.Given():
		return "takes " + p.Takes.V
	case p.Both.Given():
		return "has " + p.Both.V
	}
	return ""
}

func pinsMeet(a, b *spec.Pin) bool {
	return a.Gives.V == b.Takes.V && a.Takes.V == b.Gives.V && a.Both.V == b.Both.V
}

// sensors are those that the map expects, on either side.
func (f *fitter) sensors() {
	for n := range f.d.Sensors {
		s := &f.d.Sensors[n]
		i := Interface{Kind: SensorKind, Name: s.Name, Driveline: s.Path, Verdict: Meets}
		if s.On == "car" {
			i.Car = "sensors." + s.Name
		}
		switch {
		case s.Present == nil:
			i.Verdict, i.Why = CannotTell, []string{"not said: the sensors of the " + s.On}
		case !*s.Present:
			i.Verdict, i.Why = Missing, []string{"the map expects it on the " + s.On}
		}
		f.add(i)
	}
}

func (f *fitter) throttle() {
	var m meeting
	m.a, m.b = &document.Half{Owner: "car"}, &document.Half{Owner: "driveline"}
	m.words("throttle", f.car.Car.Throttle.V, f.driveline.Engine.Throttle.V)
	i := Interface{Kind: ThrottleKind, Name: "throttle", Driveline: "driveline.engine.throttle", Car: "car.throttle"}
	i.settle(m.done())
	f.add(i)
}

package document

import "fitup/spec"

// gear lists what the car is lifted, held and tightened with. Stands, hoist and
// sling count where this car names them; jacks and wrenches serve every car.
func (j *joiner) gear(d *Document) {
	d.Gear = []Gear{}
	for i := range d.Lift {
		l := &d.Lift[i]
		d.Gear = append(d.Gear, Gear{Subject: l.Subject, Kind: "lift point", Marked: l.Marked})
	}
	if j.car == nil || j.shop.Shop.Path == "" {
		return
	}
	d.Shops = []Shop{{Subject{j.shop.Shop.Path, "shop"}, j.shop.Shop}}
	s := &j.car.Support
	if hoist := j.shop.Hoists.Named[s.Lift.V]; hoist != nil {
		d.Gear = append(d.Gear, Gear{Subject: Subject{hoist.Path, s.Lift.V}, Kind: "hoist", Checked: hoist.Checked})
	}
	if sling := j.shop.Slings.Named[s.Sling.V]; sling != nil {
		d.Gear = append(d.Gear, Gear{Subject: Subject{sling.Path, s.Sling.V}, Kind: "sling", Checked: sling.Checked, Marked: sling.Marked})
	}
	inPlace := map[string]bool{}
	for _, point := range s.Points.All() {
		inPlace[point.Stand.V] = true
	}
	for name, stand := range j.shop.Stands.All() {
		if inPlace[name] {
			d.Gear = append(d.Gear, Gear{Subject: Subject{stand.Path, name}, Kind: "stand", Checked: stand.Checked})
		}
	}
	for name, jack := range j.shop.Jacks.All() {
		d.Gear = append(d.Gear, Gear{Subject: Subject{jack.Path, name}, Kind: "jack", Checked: jack.Checked})
	}
	for name, wrench := range j.shop.Wrenches.All() {
		d.Gear = append(d.Gear, Gear{Subject: Subject{wrench.Path, name}, Kind: "torque wrench", Calibrated: wrench.Calibrated})
	}
}

// reaches tells whether a torque wrench of the shop reaches a torque; nil where
// either is not said.
func (j *joiner) reaches(torque *spec.Torque) *bool {
	if !torque.Given() || j.shop.Wrenches.State != spec.Given {
		return nil
	}
	known := true
	for _, wrench := range j.shop.Wrenches.All() {
		r := wrench.Range.V
		if wrench.Range.Given() && r.Low <= torque.V.SI && torque.V.SI <= r.High {
			return pointer(true)
		}
		known = known && wrench.Range.Given()
	}
	if !known {
		return nil
	}
	return pointer(false)
}

// weighings lists the last weighing of the car and that of the driveline.
func (j *joiner) weighings(d *Document) {
	if j.car != nil && j.car.Weighing.Told() {
		w := &j.car.Weighing
		d.Weighed = append(d.Weighed, Weighed{Subject{w.Path, "weighing"}, ofCar, w.Unsure})
	}
	if j.driveline != nil && j.driveline.Weighed.Told() {
		w := &j.driveline.Weighed
		d.Weighed = append(d.Weighed, Weighed{Subject{w.Path, "weighing"}, ofDriveline, w.Unsure})
	}
}

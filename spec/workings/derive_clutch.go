package workings

import "fitup/spec"

func (n *notebook) clutches() {
	for i := range n.d.Clutch {
		c := &n.d.Clutch[i]
		slave := n.said("A_s", &c.Slave.SlaveArea)
		release := n.said("F", &c.Slave.Release)
		n.work(step{
			to:      &c.Calc.MasterArea,
			formula: "A_m = (π/4) d²", source: "openstax-college-physics",
			in: []Input{n.said("d", &c.Master.Bore)},
			by: one(CircleArea),
		})
		master := n.worked("A_m", &c.Calc.MasterArea)
		n.work(step{
			to:      &c.Calc.Ratio,
			formula: "r = A_s / A_m", source: "openstax-college-physics",
			in: []Input{slave, master},
			by: two(quotient),
		})
		stroke, formula := n.said("x_m", &c.Master.Stop), "x_s = x_m A_m / A_s, x_m at the pedal stop"
		if c.Master.Stop.Said() == spec.None {
			stroke, formula = n.said("x_m", &c.Master.Stroke), "x_s = x_m A_m / A_s, x_m the full stroke"
		}
		n.work(step{
			to:      &c.Calc.FullTravel,
			formula: formula, source: "openstax-college-physics",
			note: "air and swelling of the hose left out: the most that the slave can move",
			in:   []Input{stroke, master, slave},
			by:   three(ReleaseTravel),
		})
		n.work(step{
			to:      &c.Calc.Pressure,
			formula: "p = F / A_s", source: "openstax-college-physics",
			in: []Input{release, slave},
			by: two(CylinderPressure),
		})
		n.work(step{
			to:      &c.Calc.PedalForce,
			formula: "F_p = F / (r i)", source: "openstax-college-physics", note: "friction and return springs left out",
			in: []Input{release, n.worked("r", &c.Calc.Ratio), n.said("i", &c.Master.Pedal)},
			by: three(PedalForce),
		})
		n.work(step{
			to:      &c.Calc.Capacity,
			formula: "T = 2 z μ F_c (D + d) / 4, uniform wear", source: "shigley-9e", clause: "chapter 16",
			note: "run-in faces, no fade: an organic lining loses friction when it is hot",
			in: []Input{
				n.said("z", &c.Slave.Plates), n.said("μ", &c.Slave.Friction), n.said("F_c", &c.Slave.Clamp),
				n.said("D", &c.Slave.Outer), n.said("d", &c.Slave.Inner),
			},
			by: func(x []float64) (float64, error) {
				radius, err := WearRadius(x[3]/2, x[4]/2)
				if err != nil {
					return 0, err
				}
				return ClutchTorque(2*int(x[0]), x[1], x[2], radius)
			},
		})
		torque := lacking("T", "driveline.engine")
		if len(n.d.Engines) > 0 {
			torque = n.said("T", &n.d.Engines[0].Torque)
		}
		n.work(step{to: &c.Calc.EngineTorque, formula: "T as declared", source: "common-practice", in: []Input{torque}, by: same})
	}
}

package tables

// A TorqueBandRow is the tightening torque of one flare joint, N m.
type TorqueBandRow struct {
	Dash int     `yaml:"dash"`
	Low  float64 `yaml:"low"`
	High float64 `yaml:"high"`
	Row  `yaml:",inline"`
}

var flareTorque = load[TorqueBandRow]("flare_torque")

// FlareTorque returns the torque band of a dash size in one make-up, such as
// "machined-swivel".
func FlareTorque(makeUp string, dash int) (TorqueBandRow, bool) {
	return flareTorque().find(func(r TorqueBandRow) bool { return r.Set == makeUp && r.Dash == dash })
}

// FlareMakeUps returns the make-ups that have a torque table, with what each is.
func FlareMakeUps() map[string]Set { return flareTorque().Sets }

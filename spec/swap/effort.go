package swap

import "fitup/policies/tables"

// Weights are planning weights that a workshop sets for itself, by set and name
// of the table of efforts: "joint.37-flare", "fixing.hex", "extra.wet". What is
// not set is the table's.
type Weights map[string]Seconds

// of looks a weight up. A name that neither has weighs as "unknown" does in its
// set, where there is one.
func (w Weights) of(set, name string) Seconds {
	for _, name := range []string{name, "unknown"} {
		if own, is := w[set+"."+name]; is {
			return own
		}
		if row, is := tables.Effort(set, name); is {
			return Seconds(row.Seconds)
		}
	}
	return 0
}

package tables

// A WireResistanceRow is the highest resistance of one conductor at 20 °C.
type WireResistanceRow struct {
	AWG        string  `yaml:"awg"`        // empty for metric sizes
	Area       float64 `yaml:"area"`       // m²
	Resistance float64 `yaml:"resistance"` // ohm/m
	Row        `yaml:",inline"`
}

// An AmpacityRow is the continuous current of one wire, or a factor on it.
type AmpacityRow struct {
	AWG        string  `yaml:"awg"`
	Area       float64 `yaml:"area"`       // m²
	Insulation float64 `yaml:"insulation"` // rated temperature, K
	Current    float64 `yaml:"current"`    // A
	Factor     float64 `yaml:"factor"`
	Row        `yaml:",inline"`
}

var (
	wireResistance = load[WireResistanceRow]("wire_resistance")
	ampacity       = load[AmpacityRow]("ampacity")
)

// sameArea is the least part of a row's area that a wire must have to count as
// that size: areas in the tables are rounded to four figures.
const sameArea = 0.999

// WireResistance returns the row of a set ("plain", "tinned", "aircraft") for a
// conductor area in m²: the largest size that is no larger.
func WireResistance(set string, area float64) (row WireResistanceRow, ok bool) {
	for _, r := range wireResistance().Rows {
		if r.Set == set && area >= r.Area*sameArea && r.Area > row.Area {
			row, ok = r, true
		}
	}
	return row, ok
}

// Ampacity returns the current of a conductor area in m², laid "free" or in a
// "bundle", in insulation rated for a temperature in K: the largest size and the
// highest rating that are no higher.
func Ampacity(laid string, area, insulation float64) (row AmpacityRow, ok bool) {
	for _, r := range ampacity().Rows {
		if r.Set != laid || area < r.Area*sameArea || insulation < r.Insulation {
			continue
		}
		if !ok || r.Area > row.Area || r.Area == row.Area && r.Insulation > row.Insulation {
			row, ok = r, true
		}
	}
	return row, ok
}

// HotBayFactor returns what an engine bay leaves of the current of a wire laid
// free, for insulation rated for a temperature in K.
func HotBayFactor(insulation float64) (row AmpacityRow, ok bool) {
	for _, r := range ampacity().Rows {
		if r.Set == "hot bay" && insulation >= r.Insulation && r.Insulation > row.Insulation {
			row, ok = r, true
		}
	}
	return row, ok
}

package tables

// A NutFactorRow is the nut factor of one state of the threads.
type NutFactorRow struct {
	Threads string  `yaml:"threads"`
	Factor  float64 `yaml:"factor"`
	Row     `yaml:",inline"`
}

// An ElasticRow is the stiffness and density of one metal.
type ElasticRow struct {
	Metal   string  `yaml:"metal"`
	Modulus float64 `yaml:"modulus"` // Young's, Pa
	Density float64 `yaml:"density"` // kg/m³
	Row     `yaml:",inline"`
}

var (
	nutFactors = load[NutFactorRow]("nut_factor")
	elastic    = load[ElasticRow]("elastic")
)

// NutFactor returns K of T = K F d for threads that are "dry", "oiled" or coated
// with "anti-seize".
func NutFactor(threads string) (NutFactorRow, bool) {
	return nutFactors().find(func(r NutFactorRow) bool { return r.Threads == threads })
}

// Elastic returns the stiffness of a metal.
func Elastic(metal string) (ElasticRow, bool) {
	return elastic().find(func(r ElasticRow) bool { return r.Metal == metal })
}

package tables

// An AdaptorRow is one standard form of adaptor with the pairs of sizes that it
// is made in. The genders of a hose, bead or barb are empty.
type AdaptorRow struct {
	Form        string     `yaml:"form"` // its name in the trade
	OneForm     string     `yaml:"one_form"`
	OneGender   string     `yaml:"one_gender"`
	OtherForm   string     `yaml:"other_form"`
	OtherGender string     `yaml:"other_gender"`
	Sizes       [][]string `yaml:"sizes"` // one and other
	Row         `yaml:",inline"`
}

// An EffortRow is one planning weight.
type EffortRow struct {
	Name    string `yaml:"name"`
	Seconds int    `yaml:"seconds"`
	Row     `yaml:",inline"`
}

var (
	adaptors = load[AdaptorRow]("adaptors")
	effort   = load[EffortRow]("effort")
)

// Adaptors returns the standard forms of adaptor, in the order of the table.
func Adaptors() []AdaptorRow { return adaptors().all(func(AdaptorRow) bool { return true }) }

// Effort returns the planning weight of a name in the set "joint" (a form of
// end), "fixing" (a head of fastener) or "extra".
func Effort(set, name string) (EffortRow, bool) {
	return effort().find(func(r EffortRow) bool { return r.Set == set && r.Name == name })
}

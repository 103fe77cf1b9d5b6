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

// A FittingBoreRow is what one size of fitting end is usually drilled to; its set
// is the form.
type FittingBoreRow struct {
	Size string  `yaml:"size"` // a dash, or a thread
	Bore float64 `yaml:"bore"` // m
	Row  `yaml:",inline"`
}

// An EffortRow is one planning weight.
type EffortRow struct {
	Name    string `yaml:"name"`
	Seconds int    `yaml:"seconds"`
	Row     `yaml:",inline"`
}

var (
	adaptors    = load[AdaptorRow]("adaptors")
	fittingBore = load[FittingBoreRow]("fitting_bore")
	effort      = load[EffortRow]("effort")
)

// Adaptors returns the standard forms of adaptor, in the order of the table.
func Adaptors() []AdaptorRow { return adaptors().all(func(AdaptorRow) bool { return true }) }

// FittingBore returns the usual bore of an end, by its form and its size as a dash
// ("-8") or a thread ("1/4-18 NPT").
func FittingBore(form, size string) (FittingBoreRow, bool) {
	return fittingBore().find(func(r FittingBoreRow) bool { return r.Set == form && r.Size == size })
}

// Effort returns the planning weight of a name in the set "joint" (a form of
// end), "fixing" (a head of fastener) or "extra".
func Effort(set, name string) (EffortRow, bool) {
	return effort().find(func(r EffortRow) bool { return r.Set == set && r.Name == name })
}

package tables

// A StrengthRow is a property class or grade of bolt within a span of diameters.
type StrengthRow struct {
	Class   string  `yaml:"class"`
	Over    float64 `yaml:"over"`  // diameter, m; 0 for no bound
	UpTo    float64 `yaml:"up_to"` // diameter, m; 0 for no bound
	Proof   float64 `yaml:"proof"` // Pa
	Tensile float64 `yaml:"tensile"`
	Yield   float64 `yaml:"yield"`

	TensileConfidence string `yaml:"tensile_confidence"` // of tensile and yield, where it differs
	Row               `yaml:",inline"`
}

// A BoltTorqueRow is the tightening torque of one thread and class.
type BoltTorqueRow struct {
	Thread   string  `yaml:"thread"`
	Class    string  `yaml:"class"`
	Friction float64 `yaml:"friction"` // 0 where the set's name says it
	Torque   float64 `yaml:"torque"`   // N m
	Preload  float64 `yaml:"preload"`  // N; 0 where the source gives none
	Row      `yaml:",inline"`
}

// An EngagementRow is the least thread engagement in one metal.
type EngagementRow struct {
	Material  string  `yaml:"material"`
	Class     string  `yaml:"class"`
	Diameters float64 `yaml:"diameters"`
	Row       `yaml:",inline"`
}

// A SpannerRow is the spanner or key of one size of head.
type SpannerRow struct {
	Size        string  `yaml:"size"`         // "M10", "3/8" or "-8"
	AcrossFlats float64 `yaml:"across_flats"` // m
	Row         `yaml:",inline"`
}

var (
	propertyClass = load[StrengthRow]("property_class")
	boltTorque    = load[BoltTorqueRow]("bolt_torque")
	engagement    = load[EngagementRow]("engagement")
	spanners      = load[SpannerRow]("spanners")
)

// BoltStrength returns the stresses of a class ("8.8") or grade ("grade-8") at a
// nominal diameter in metres.
func BoltStrength(class string, diameter float64) (StrengthRow, bool) {
	return propertyClass().find(func(r StrengthRow) bool {
		return r.Class == class && diameter > r.Over && (r.UpTo == 0 || diameter <= r.UpTo)
	})
}

// BoltTorques returns the rows of a set ("steel-0.14", "cast-aluminium",
// "vdi-2230-fine") for a thread and class; the last set has one a friction.
func BoltTorques(set, thread, class string) []BoltTorqueRow {
	return boltTorque().all(func(r BoltTorqueRow) bool { return r.Set == set && r.Thread == thread && r.Class == class })
}

// Engagement returns the least engagement from a set ("class", "thumb",
// "insert", "eye-bolt"); class is "" where the set does not distinguish it.
func Engagement(set, material, class string) (EngagementRow, bool) {
	return engagement().find(func(r EngagementRow) bool {
		return r.Set == set && r.Material == material && r.Class == class
	})
}

// EngagementFactors returns what a fine thread and a dynamic load multiply the
// figures of the set "class" by.
func EngagementFactors() (fine, dynamic float64) {
	f := engagement().Factors
	return f["fine"], f["dynamic"]
}

// AcrossFlats returns the spanner for a kind of head, such as "iso-hex", and a
// size.
func AcrossFlats(head, size string) (SpannerRow, bool) {
	return spanners().find(func(r SpannerRow) bool { return r.Set == head && r.Size == size })
}

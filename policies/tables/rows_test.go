package tables

import (
	"maps"
	"slices"
)

// Rows of tables that only rules read, for the tests of their figures.

// A HoseBoreRow is the bore of one dash size of hose in one construction.
type HoseBoreRow struct {
	Dash int     `yaml:"dash"`
	Bore float64 `yaml:"bore"` // m
	Row  `yaml:",inline"`
}

// A HoseBendRow is one dash size of aircraft rubber hose.
type HoseBendRow struct {
	Dash       int     `yaml:"dash"`
	BendRadius float64 `yaml:"bend_radius"` // least, m
	Bore       float64 `yaml:"bore"`        // m
	Outside    float64 `yaml:"outside"`     // diameter, m
	Operating  float64 `yaml:"operating"`   // Pa
	Burst      float64 `yaml:"burst"`       // least, Pa
	Proof      float64 `yaml:"proof"`       // most, Pa
	Hottest    float64 `yaml:"hottest"`     // K
	Coldest    float64 `yaml:"coldest"`     // K
	Row        `yaml:",inline"`
}

// An OilGradeRow is one engine oil grade at working temperature.
type OilGradeRow struct {
	Grade         string  `yaml:"grade"`
	KinematicLow  float64 `yaml:"kinematic_low"`  // at 100 °C, m²/s
	KinematicHigh float64 `yaml:"kinematic_high"` // not reached
	HighShear     float64 `yaml:"high_shear"`     // least, at 150 °C, Pa s
	Row           `yaml:",inline"`
}

// A MaterialRow is what a material does in a group of fluids.
type MaterialRow struct {
	Material string `yaml:"material"`
	Fluid    string `yaml:"fluid"`   // a group of the table fluids
	Verdict  string `yaml:"verdict"` // good, limited or unfit
	Row      `yaml:",inline"`
}

// A HoseKindRow is one standard type of hose. Injection and InTank are nil where
// the type's scope does not settle it.
type HoseKindRow struct {
	Kind        string  `yaml:"kind"`
	Uses        string  `yaml:"uses"`
	Injection   *bool   `yaml:"injection"` // may carry injection pressure
	InTank      *bool   `yaml:"in_tank"`   // may lie in fuel
	Pressure    float64 `yaml:"pressure"`  // rated, Pa; 0 not known
	Temperature float64 `yaml:"temperature"`

	PressureConfidence    string `yaml:"pressure_confidence"`
	TemperatureConfidence string `yaml:"temperature_confidence"`
	Row                   `yaml:",inline"`
}

// A VelocityRow is the range of fluid velocity for a service, m/s.
type VelocityRow struct {
	Service string  `yaml:"service"`
	Low     float64 `yaml:"low"`
	High    float64 `yaml:"high"`
	Row     `yaml:",inline"`
}

var (
	hoseBore  = load[HoseBoreRow]("hose_bore")
	hoseBend  = load[HoseBendRow]("hose_bend")
	oilGrades = load[OilGradeRow]("oil_grades")
	materials = load[MaterialRow]("materials")
	hoseKinds = load[HoseKindRow]("hose_kinds")
	velocity  = load[VelocityRow]("velocity")
)

// HoseBore returns the bore of a hose of the construction "tube-equivalent" or
// "full-bore".
func HoseBore(construction string, dash int) (HoseBoreRow, bool) {
	return hoseBore().find(func(r HoseBoreRow) bool { return r.Set == construction && r.Dash == dash })
}

// HoseBend returns the data of an aircraft rubber hose.
func HoseBend(dash int) (HoseBendRow, bool) {
	return hoseBend().find(func(r HoseBendRow) bool { return r.Dash == dash })
}

// FluidNames returns the names of all fluids, in the order of the table.
func FluidNames() []string {
	var names []string
	for _, r := range fluids().Rows {
		names = append(names, r.Fluid)
	}
	return names
}

// OilGrade returns a grade by its number at working temperature: "40".
func OilGrade(grade string) (OilGradeRow, bool) {
	return oilGrades().find(func(r OilGradeRow) bool { return r.Grade == grade })
}

// Compatibility returns what a material does in a fluid, by way of the fluid's
// group.
func Compatibility(material, fluid string) (MaterialRow, bool) {
	if f, ok := Fluid(fluid); ok {
		fluid = f.Group
	}
	return materials().find(func(r MaterialRow) bool { return r.Material == material && r.Fluid == fluid })
}

// HoseKind returns a type of hose, such as "J30R9".
func HoseKind(kind string) (HoseKindRow, bool) {
	return hoseKinds().find(func(r HoseKindRow) bool { return r.Kind == kind })
}

// Velocity returns the range for a service from a set ("handbook", "maker",
// "coolant").
func Velocity(set, service string) (VelocityRow, bool) {
	return velocity().find(func(r VelocityRow) bool { return r.Set == set && r.Service == service })
}

// Data is every table by name.
func Data() map[string]any { return Named(Names()) }

// SourceKeys are all keys of sources, sorted.
func SourceKeys() []string { return slices.Sorted(maps.Keys(sources())) }

package tables

// All figures are in SI unless a field says otherwise. The second result is
// false where the table has no such row.

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

// A TorqueBandRow is the tightening torque of one flare joint, N m.
type TorqueBandRow struct {
	Dash int     `yaml:"dash"`
	Low  float64 `yaml:"low"`
	High float64 `yaml:"high"`
	Row  `yaml:",inline"`
}

var (
	hoseBore    = load[HoseBoreRow]("hose_bore")
	hoseBend    = load[HoseBendRow]("hose_bend")
	flareTorque = load[TorqueBandRow]("flare_torque")
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

// FlareTorque returns the torque band of a dash size in one make-up, such as
// "machined-swivel".
func FlareTorque(makeUp string, dash int) (TorqueBandRow, bool) {
	return flareTorque().find(func(r TorqueBandRow) bool { return r.Set == makeUp && r.Dash == dash })
}

// FlareMakeUps returns the make-ups that have a torque table, with what each is.
func FlareMakeUps() map[string]Set { return flareTorque().Sets }

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

// A FuelRow is one fuel. Shares of alcohol are by volume.
type FuelRow struct {
	Fuel         string  `yaml:"fuel"`
	Ethanol      float64 `yaml:"ethanol"`
	EthanolLow   float64 `yaml:"ethanol_low"` // of what is sold under the name; 0 where it does not vary
	EthanolHigh  float64 `yaml:"ethanol_high"`
	Methanol     float64 `yaml:"methanol"`
	Density      float64 `yaml:"density"`       // kg/m³
	HeatingValue float64 `yaml:"heating_value"` // lower, J/kg
	AirFuel      float64 `yaml:"air_fuel"`      // stoichiometric, by mass
	Row          `yaml:",inline"`
}

// A FuelConsumptionRow is a band of brake specific fuel consumption, kg/J.
type FuelConsumptionRow struct {
	Fuel      string  `yaml:"fuel"`
	Induction string  `yaml:"induction"` // natural or boosted
	Low       float64 `yaml:"low"`
	High      float64 `yaml:"high"`
	Row       `yaml:",inline"`
}

// A FluidRow is one fluid that a line can carry.
type FluidRow struct {
	Fluid      string  `yaml:"fluid"`
	Family     string  `yaml:"family"`      // fuel, oil, coolant, brake, hydraulic or air
	Base       string  `yaml:"base"`        // glycol, silicone, mineral or water; may be empty
	Group      string  `yaml:"group"`       // the fluid that Compatibility judges it as
	DryBoiling float64 `yaml:"dry_boiling"` // least, K; brake fluids
	WetBoiling float64 `yaml:"wet_boiling"`
	Row        `yaml:",inline"`
}

// A FluidPropertyRow is what is known of a fluid at one temperature; 0 is not
// known.
type FluidPropertyRow struct {
	Fluid         string  `yaml:"fluid"`
	Temperature   float64 `yaml:"temperature"`   // K
	Density       float64 `yaml:"density"`       // kg/m³
	KinematicLow  float64 `yaml:"kinematic_low"` // m²/s
	KinematicHigh float64 `yaml:"kinematic_high"`
	Dynamic       float64 `yaml:"dynamic"`       // Pa s
	SpecificHeat  float64 `yaml:"specific_heat"` // J/(kg K)
	Row           `yaml:",inline"`
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

var (
	fuels           = load[FuelRow]("fuels")
	fuelConsumption = load[FuelConsumptionRow]("fuel_consumption")
	fluids          = load[FluidRow]("fluids")
	fluidProperties = load[FluidPropertyRow]("fluid_properties")
	oilGrades       = load[OilGradeRow]("oil_grades")
	materials       = load[MaterialRow]("materials")
)

// Fuel returns a fuel by name: petrol, E10, E85, ethanol,
// methanol or diesel.
func Fuel(name string) (FuelRow, bool) {
	return fuels().find(func(r FuelRow) bool { return r.Fuel == name })
}

// FuelConsumption returns the band at full power; induction is "natural" or
// "boosted".
func FuelConsumption(fuel, induction string) (FuelConsumptionRow, bool) {
	return fuelConsumption().find(func(r FuelConsumptionRow) bool { return r.Fuel == fuel && r.Induction == induction })
}

// Fluid returns a fluid by name.
func Fluid(name string) (FluidRow, bool) {
	return fluids().find(func(r FluidRow) bool { return r.Fluid == name })
}

// FluidNames returns the names of all fluids, in the order of the table.
func FluidNames() []string {
	var names []string
	for _, r := range fluids().Rows {
		names = append(names, r.Fluid)
	}
	return names
}

// FluidProperties returns what is known of a fluid, a row a temperature.
func FluidProperties(fluid string) []FluidPropertyRow {
	return fluidProperties().all(func(r FluidPropertyRow) bool { return r.Fluid == fluid })
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
	hoseKinds = load[HoseKindRow]("hose_kinds")
	velocity  = load[VelocityRow]("velocity")
)

// HoseKind returns a type of hose, such as "J30R9".
func HoseKind(kind string) (HoseKindRow, bool) {
	return hoseKinds().find(func(r HoseKindRow) bool { return r.Kind == kind })
}

// Velocity returns the range for a service from a set ("handbook", "maker",
// "coolant").
func Velocity(set, service string) (VelocityRow, bool) {
	return velocity().find(func(r VelocityRow) bool { return r.Set == set && r.Service == service })
}

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

// A SafetyDateRow is the life of one standard of safety item under one
// authority. Spans are in calendar months; 0 is none.
type SafetyDateRow struct {
	Item              string `yaml:"item"`
	Standard          string `yaml:"standard"`
	Authority         string `yaml:"authority"`
	LifeMonths        int    `yaml:"life_months"`
	CountedFrom       string `yaml:"counted_from"` // made, made-year-end or check
	GraceMonths       int    `yaml:"grace_months"` // that the authority allows past the label
	RecertifiedMonths int    `yaml:"recertified_months"`
	AcceptedUntil     string `yaml:"accepted_until"` // last day for the standard, as 2023-12-31
	Label             string `yaml:"label"`          // what the label says
	Row               `yaml:",inline"`
}

var safetyDates = load[SafetyDateRow]("safety_dates")

// SafetyDates returns the lives of a standard of item, a row an authority.
func SafetyDates(item, standard string) []SafetyDateRow {
	return safetyDates().all(func(r SafetyDateRow) bool { return r.Item == item && r.Standard == standard })
}

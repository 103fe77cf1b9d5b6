package tables

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

var (
	fuels           = load[FuelRow]("fuels")
	fuelConsumption = load[FuelConsumptionRow]("fuel_consumption")
	fluids          = load[FluidRow]("fluids")
	fluidProperties = load[FluidPropertyRow]("fluid_properties")
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

// FluidProperties returns what is known of a fluid, a row a temperature.
func FluidProperties(fluid string) []FluidPropertyRow {
	return fluidProperties().all(func(r FluidPropertyRow) bool { return r.Fluid == fluid })
}

package document

import "fitup/spec"

// Car is the car itself.
type Car struct {
	Subject
	spec.CarHead
	Weighing spec.Weighing   `json:"weighing" doc:"last weighing"`
	SetUp    spec.SetUp      `json:"set_up" doc:"last set-up"`
	Firewall spec.Firewall   `json:"firewall" doc:"wall between engine and cockpit"`
	Cage     spec.Cage       `json:"cage" doc:"roll cage"`
	Safety   spec.Safety     `json:"safety" doc:"the safety equipment"`
	Final    spec.FinalDrive `json:"final_drive" doc:"the axle"`
	Fitted   string          `json:"fitted" doc:"file name of the driveline that is in it, without folder and ending"`
	Calc     CarCalc         `json:"calc" doc:"computed"`
}

// CarCalc holds the car's computed figures.
type CarCalc struct {
	Mass       Figure `json:"mass" doc:"total of the four scales" dim:"mass"`
	With       Figure `json:"mass_with_driveline" doc:"mass with the driveline that is in it" dim:"mass"`
	Changed    Figure `json:"mass_since_set_up" doc:"how far that is from the mass it was set up with" dim:"mass"`
	FrontShare Figure `json:"front_share" doc:"share on the front axle" dim:"ratio"`
	AxleToMass Figure `json:"mass_behind_front" doc:"centre of mass behind the front axle" dim:"length"`
	FromCentre Figure `json:"mass_left" doc:"centre of mass left of the centreline" dim:"length"`
	Front      Figure `json:"front_axle" doc:"front axle load with the driveline in" dim:"mass"`
	Rear       Figure `json:"rear_axle" doc:"rear axle load with the driveline in" dim:"mass"`
	FrontOut   Figure `json:"front_axle_out" doc:"front axle load with the driveline out" dim:"mass"`
	RearOut    Figure `json:"rear_axle_out" doc:"rear axle load with the driveline out" dim:"mass"`
	FLOut      Figure `json:"front_left_out" doc:"what the front left wheel carries with the driveline out" dim:"mass"`
	FROut      Figure `json:"front_right_out" doc:"what the front right wheel carries with the driveline out" dim:"mass"`
	RLOut      Figure `json:"rear_left_out" doc:"what the rear left wheel carries with the driveline out" dim:"mass"`
	RROut      Figure `json:"rear_right_out" doc:"what the rear right wheel carries with the driveline out" dim:"mass"`
}

// Book is one rulebook that the car names.
type Book struct {
	Subject
	spec.Rulebook
}

// Engine is the engine.
type Engine struct {
	Subject
	spec.Engine
	Tune spec.Tune    `json:"tune" doc:"the map"`
	Car  spec.CarHead `json:"car" doc:"the car that it is in"`
	Calc EngineCalc   `json:"calc" doc:"computed"`
}

// EngineCalc holds the engine's computed figures.
type EngineCalc struct {
	Displacement Figure `json:"displacement" doc:"swept volume" dim:"volume"`
	Power        Figure `json:"power" doc:"power at the crank" dim:"power"`
	FuelMassFlow Figure `json:"fuel_mass_flow" doc:"fuel at full power" dim:"mass_flow"`
	FuelFlow     Figure `json:"fuel_flow" doc:"fuel at full power" dim:"volume_flow"`
}

// Tune is the map beside what is fitted.
type Tune struct {
	Subject
	spec.Tune
	Engine spec.Engine   `json:"engine" doc:"the engine fitted"`
	Cell   spec.FuelCell `json:"cell" doc:"the car's fuel cell"`
	Calc   TuneCalc      `json:"calc" doc:"computed"`
}

// TuneCalc holds what follows from the map and the tank.
type TuneCalc struct {
	MapEthanol  Figure `json:"map_ethanol" doc:"ethanol by volume that the map was made for" dim:"ratio"`
	TankEthanol Figure `json:"tank_ethanol" doc:"ethanol by volume of what is in the tank" dim:"ratio"`
}

// Fuel is the fuel system of the car beside the engine that it feeds.
type Fuel struct {
	Subject
	spec.CarFuel
	Engine spec.Engine `json:"engine" doc:"the engine fed"`
	Tune   spec.Tune   `json:"tune" doc:"the map"`
	Needs  spec.Needs  `json:"needs" doc:"what the driveline asks for"`
	Calc   FuelCalc    `json:"calc" doc:"computed"`
}

// FuelCalc holds the fuel system's computed figures.
type FuelCalc struct {
	Ethanol  Figure `json:"ethanol" doc:"ethanol by volume of what is in the tank" dim:"ratio"`
	Alcohol  Figure `json:"alcohol" doc:"alcohol of either kind by volume" dim:"ratio"`
	Pressure Figure `json:"rail_pressure" doc:"rail pressure at full boost" dim:"pressure"`
	Demand   Figure `json:"demand" doc:"fuel at full power" dim:"volume_flow"`
	Pump     Figure `json:"pump_flow" doc:"pump flow at rail pressure" dim:"volume_flow"`
	Loss     Figure `json:"feed_loss" doc:"pressure lost between pump and engine at the pump's flow" dim:"pressure"`
	Fed      Figure `json:"fed_flow" doc:"pump flow at rail pressure and that loss together" dim:"volume_flow"`
	Margin   Figure `json:"margin" doc:"pump flow over demand" dim:"ratio"`
	Return   Figure `json:"return_flow" doc:"what goes back to the tank at full power" dim:"volume_flow"`
	Across   Figure `json:"injector_pressure" doc:"rail less manifold at full boost" dim:"pressure"`
	Injector Figure `json:"injector_flow" doc:"static flow of one injector at that pressure" dim:"volume_flow"`
	Duty     Figure `json:"injector_duty" doc:"share of the time that the injectors stand open at full power" dim:"ratio"`
	AirFuel  Figure `json:"air_fuel" doc:"stoichiometric air to fuel by mass, of what is in the tank" dim:"ratio"`
	CellDays Figure `json:"cell_days_left" doc:"days of life left in the bladder"`
}

// FuelPart is a part that fuel goes through, in the words of a fuel filter: what
// it is made of, what its seals are, and the fuels that it is approved for.
type FuelPart struct {
	Subject
	spec.FuelFilter
	Fuel    string `json:"fuel" doc:"fuel in the tank now"`
	Alcohol Figure `json:"alcohol" doc:"alcohol of either kind by volume in that fuel" dim:"ratio"`
}

// Oil is the oil system of the car beside the engine that it serves.
type Oil struct {
	Subject
	spec.CarOil
	Engine spec.Engine `json:"engine" doc:"the engine served"`
	Needs  spec.Needs  `json:"needs" doc:"what the driveline asks for"`
	Calc   OilCalc     `json:"calc" doc:"computed"`
}

// OilCalc holds the oil system's computed figures.
type OilCalc struct {
	Displacement Figure `json:"displacement" doc:"swept volume" dim:"volume"`
	Rise         Figure `json:"rise" doc:"rise of the oil through the engine at the pump's flow" dim:"temperature_difference"`
	Shed         Figure `json:"shed_share" doc:"what the cooler sheds over what it must" dim:"ratio"`
}

// Cooling is the cooling system of the car beside what the driveline asks.
type Cooling struct {
	Subject
	spec.CarCooling
	Engine spec.Engine `json:"engine" doc:"the engine cooled"`
	Needs  spec.Needs  `json:"needs" doc:"what the driveline asks for"`
	Calc   CoolingCalc `json:"calc" doc:"computed"`
}

// CoolingCalc holds the cooling system's computed figures.
type CoolingCalc struct {
	Rise Figure `json:"rise" doc:"rise of the coolant through the engine at the pump's flow" dim:"temperature_difference"`
	Flow Figure `json:"flow_needed" doc:"coolant flow for a rise of 6 K" dim:"volume_flow"`
	Shed Figure `json:"shed_share" doc:"what the radiator sheds over what it must" dim:"ratio"`
}

// Cooler is a radiator or an oil cooler.
type Cooler struct {
	Subject
	spec.Cooler
	Kind  string     `json:"kind" doc:"radiator, oil cooler or gearbox cooler"`
	Needs spec.Needs `json:"needs" doc:"what the driveline asks for"`
	Calc  CoolerCalc `json:"calc" doc:"computed"`
}

// CoolerCalc holds what a cooler has to bear.
type CoolerCalc struct {
	Pressure Figure `json:"pressure" doc:"highest working pressure of the lines that meet it" dim:"pressure"`
}

// CatchTank is a catch tank.
type CatchTank struct {
	Subject
	spec.CatchTank
	Kind string `json:"kind" doc:"oil or coolant"`
}

// ExhaustPipe is a piece of the exhaust.
type ExhaustPipe struct {
	Subject
	spec.ExhaustPipe
}

// Clutch is both sides of the clutch hydraulics.
type Clutch struct {
	Subject
	spec.CarClutch
	Slave spec.Clutch `json:"slave" doc:"the driveline's half"`
	Calc  ClutchCalc  `json:"calc" doc:"computed"`
}

// ClutchCalc holds the clutch's computed figures.
type ClutchCalc struct {
	MasterArea   Figure `json:"master_area" doc:"area of the master cylinder" dim:"area"`
	Ratio        Figure `json:"ratio" doc:"slave area over master area" dim:"ratio"`
	FullTravel   Figure `json:"full_travel" doc:"slave travel at the pedal stop, or at full stroke without one" dim:"length"`
	Pressure     Figure `json:"pressure" doc:"line pressure at the release force" dim:"pressure"`
	PedalForce   Figure `json:"pedal_force" doc:"force at the pedal to release" dim:"force"`
	Capacity     Figure `json:"capacity" doc:"torque that the clutch carries, uniform wear" dim:"torque"`
	EngineTorque Figure `json:"engine_torque" doc:"peak engine torque" dim:"torque"`
}

// Brakes is the part of the brakes that a swap may touch.
type Brakes struct {
	Subject
	spec.CarBrakes
	Clutch spec.CarClutch `json:"clutch" doc:"the clutch pedal's side, which may share the reservoir"`
	Needs  spec.Needs     `json:"needs" doc:"what the driveline gives and asks"`
}

// Gearbox is the gearbox beside the axle it turns.
type Gearbox struct {
	Subject
	spec.Gearbox
	Engine spec.Engine     `json:"engine" doc:"the engine"`
	Final  spec.FinalDrive `json:"final_drive" doc:"the axle"`
	Calc   GearboxCalc     `json:"calc" doc:"computed"`
}

// GearboxCalc holds the torque that gearbox and axle have to bear.
type GearboxCalc struct {
	Asked      Figure `json:"asked" doc:"peak engine torque with the gearbox's own margin" dim:"torque"`
	AxleTorque Figure `json:"axle_torque" doc:"peak engine torque through the lowest gear: what reaches the axle's input" dim:"torque"`
	RoadSpeed  Figure `json:"road_speed" doc:"road speed at the limiter in the highest gear" dim:"speed"`
}

// Package document is what the rules see: a car with the driveline that is in
// it, joined half to half, as one JSON-like value.
//
// Join puts a composition together; spec/workings then fills in every Calc;
// Encode makes the value and Schema describes it. A field holds a value of one
// type or is absent. Every object says in `none`, `asked` and `guessed` which of
// its fields were written "none", "?" and with "~"; a rule whose need is absent
// or asked cannot tell, and one whose need is guessed says so.
//
// Paths are key paths. One that begins with `driveline.` or `shop.` is in that
// file, any other in the car's.
package document

import "fitup/spec"

// Compositions that a document can be made of.
const (
	CarWithDriveline = "car with driveline"
	EmptyBay         = "empty bay"
	DrivelineAlone   = "driveline alone"
)

// Stages as rules name them in METADATA.
const (
	Rolling    = "rolling"
	Raised     = "raised"
	Hoisting   = "hoisting"
	Hanging    = "hanging"
	OutRaised  = "out_raised"
	OutStored  = "out_stored"
	TrialFit   = "trial_fit"
	Joined     = "joined"
	Filled     = "filled"
	FirstStart = "first_start"
	Event      = "event"
)

// StagesOf are the stages that one composition can speak for.
var StagesOf = map[string][]string{
	CarWithDriveline: {Rolling, Raised, Hoisting, TrialFit, Joined, Filled, FirstStart, Event},
	EmptyBay:         {OutRaised, OutStored},
	DrivelineAlone:   {Hanging, OutStored},
}

// Document is one composition, joined. Collections that the spec does not
// mention are nil and named in Unknown; those written "none" are empty. The key
// tag names the table that would have to be written.
type Document struct {
	Date        string   `json:"date" doc:"day that dates are judged on"`
	Composition string   `json:"composition" doc:"car with driveline, empty bay, or driveline alone"`
	Stages      []string `json:"stages" doc:"stages that this composition can speak for"`
	Rulebooks   []string `json:"rulebooks" doc:"rulebooks that it is held to"`
	Unknown     []string `json:"unknown" doc:"collections that the spec does not mention"`

	Cars     []Car      `json:"cars" key:"car" doc:"the car, alone in its list"`
	Books    []Book     `json:"books" key:"rulebooks" doc:"rulebooks that the car names, with their editions"`
	Engines  []Engine   `json:"engines" key:"driveline.engine" doc:"the engine, alone in its list"`
	Tunes    []Tune     `json:"tunes" key:"driveline.tune" doc:"the map, beside what is fitted"`
	Fuel     []Fuel     `json:"fuel" key:"fuel" doc:"the fuel system, alone in its list"`
	Oil      []Oil      `json:"oil" key:"oil" doc:"the oil system, alone in its list"`
	Cooling  []Cooling  `json:"cooling" key:"cooling" doc:"the cooling system, alone in its list"`
	Clutch   []Clutch   `json:"clutch" key:"clutch" doc:"clutch hydraulics, both sides, alone in its list"`
	Brakes   []Brakes   `json:"brakes" key:"brakes" doc:"brake parts, alone in their list"`
	Gearbox  []Gearbox  `json:"gearbox" key:"driveline.gearbox" doc:"the gearbox beside the final drive, alone in its list"`
	Electric []Electric `json:"electrics" key:"electrics" doc:"battery, isolator and what the engine asks of them, alone in its list"`

	FuelParts []FuelPart    `json:"fuel_parts" key:"fuel" doc:"every part that fuel goes through"`
	Coolers   []Cooler      `json:"coolers" key:"cooling" doc:"radiator and oil coolers, beside the heat that comes with the driveline"`
	Catch     []CatchTank   `json:"catch_tanks" key:"oil.catch-tank" doc:"catch tanks of oil and coolant"`
	Pipes     []ExhaustPipe `json:"exhaust_pipes" key:"exhaust.pipes" doc:"every piece of the exhaust"`

	Ports       []Port       `json:"ports" key:"driveline.ports" doc:"every port, with what joins it"`
	Joints      []Joint      `json:"joints" key:"lines" doc:"every joint, both halves"`
	Lines       []Line       `json:"lines" key:"lines" doc:"every hose and tube"`
	Mounts      []Mount      `json:"mounts" key:"mounts" doc:"every mount, both halves"`
	DriveMounts []DriveMount `json:"drive_mounts" key:"driveline.mounts" doc:"every mount of the driveline, with what meets it"`
	Shafts      []Shaft      `json:"shafts" key:"shafts" doc:"shafts"`
	Flanges     []Flange     `json:"flanges" key:"shafts" doc:"both ends of every shaft, beside the port that each meets"`
	Rods        []Rod        `json:"rods" key:"rods" doc:"rods and cables"`
	Looms       []Loom       `json:"looms" key:"plugs" doc:"every plug, beside the driveline's half"`
	Pins        []Pin        `json:"pins" key:"pins" doc:"every pin, both halves"`
	Circuits    []Circuit    `json:"circuits" key:"circuits" doc:"power wires and earths"`
	Modules     []Module     `json:"modules" key:"electrics.modules" doc:"power modules and fuse boxes"`
	Poles       []Pole       `json:"live_poles" key:"electrics" doc:"the battery's pole and every power post"`
	Sensors     []Expected   `json:"expected_sensors" key:"driveline.tune.expects" doc:"every sensor that the tune expects"`
	Fastenings  []Fastening  `json:"fastenings" key:"fasteners" doc:"every fastening, wherever it is written"`

	Dated   []Dated       `json:"dated_items" key:"safety" doc:"safety items with a date on them"`
	TowEyes []TowEye      `json:"tow_eyes" key:"safety" doc:"towing eyes"`
	Fire    []FireSystem  `json:"fire_systems" key:"safety.fire-system" doc:"the plumbed-in fire system"`
	Ballast []Ballast     `json:"ballast" key:"ballast" doc:"pieces of ballast"`
	Weighed []Weighed     `json:"weighings" key:"weighing" doc:"the last weighing of the car, and of the driveline"`
	Shops   []Shop        `json:"shops" key:"car.shop" doc:"the workshop, alone in its list"`
	Gear    []Gear        `json:"gear" key:"support" doc:"what lifts and holds car and driveline, the points that it hangs from, and the torque wrenches"`
	Stands  []Stand       `json:"stands" key:"support.stands" doc:"stands in place"`
	Support []Support     `json:"support" key:"support" doc:"how the car stands, alone in its list"`
	Cases   []SupportCase `json:"support_cases" key:"support.stands" doc:"how it stands, one element a stage"`
	Lift    []LiftPoint   `json:"lift_points" key:"driveline.lift" doc:"points that the driveline may hang from"`
	Castors []Castor      `json:"castors" key:"support.dolly" doc:"castors of the dolly in use"`
	Life    []LifeItem    `json:"life" key:"life" doc:"items with a life"`
	Gaps    []Gap         `json:"gaps" key:"gaps" doc:"measured clearances"`
	Access  []Access      `json:"access" key:"access" doc:"panels and parts in the way"`
	History []History     `json:"history" key:"history" doc:"what parts have been through"`

	Given Given // for the workings; rules do not see it
}

// Given is what the workings need of the specs beside the collections. A table
// of a file that is not there is empty.
type Given struct {
	Driveline      string // the driveline's file name, without folder and ending
	Fit            spec.Fit
	Weighed        spec.DrivelineWeighing
	Masses         spec.Table[spec.MassAt] // the driveline's
	CarMasses      spec.Table[spec.MassAt]
	Pumps          spec.Table[spec.Pump]
	Solids         spec.Table[spec.Solid] // the driveline's
	CarSolids      spec.Table[spec.Solid]
	Usual          spec.Usual // the car's
	DrivelineUsual spec.Usual
}

// Subject is what every element of a collection has.
type Subject struct {
	Path string `json:"path" doc:"key path, by file"`
	Name string `json:"name" doc:"its name"`
}

// Figure is a computed number. An unknown one is absent from the document.
type Figure struct {
	Value   float64
	Known   bool
	Guessed bool     // rests on a guess
	Missing []string // paths that would have to be written first
}

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

// Electric is battery and isolator beside what the engine asks of them.
type Electric struct {
	Subject
	spec.CarElectrics
	Car      spec.CarHead `json:"car" doc:"the car"`
	Engine   spec.Engine  `json:"engine" doc:"the engine"`
	Supplies []string     `json:"supplies" doc:"circuits that carry power, by name"`
	Unkilled []string     `json:"unkilled" doc:"circuits that carry power and that the isolator does not open, the fire system aside"`
	Earths   []string     `json:"earths" doc:"circuits of purpose earth that cross to the driveline"`
	Calc     ElectricCalc `json:"calc" doc:"computed"`

	undecided []string // what would tell of more circuits whether it does
	unearthed []string // what would tell of more earths whether they cross
}

// ElectricCalc holds the balance of supply and load.
type ElectricCalc struct {
	Load     Figure `json:"load" doc:"steady loads together" dim:"current"`
	Share    Figure `json:"alternator_share" doc:"steady loads over the alternator's rating" dim:"ratio"`
	RunTime  Figure `json:"run_time" doc:"how long the battery alone carries the steady loads" dim:"duration"`
	Isolated Figure `json:"isolated" doc:"steady current that the isolator must bear: the greater of loads and alternator" dim:"current"`
}

// Half is one half of a joint, with what its form implies.
type Half struct {
	spec.End
	Path     string   `json:"path" doc:"where this half is written"`
	Owner    string   `json:"owner" doc:"car or driveline"`
	Dash     *int     `json:"dash" doc:"dash size"`
	Diameter *float64 `json:"diameter" doc:"diameter of a bead, hose, pipe or band" dim:"length"`
	Thread   *Thread  `json:"thread" doc:"thread, given or implied by form and dash"`
	Seat     *float64 `json:"seat_angle" doc:"half angle of a cone" dim:"angle"`
	Seal     string   `json:"seal" doc:"what seals it, given or implied by the form"`
	Metal    string   `json:"metal" doc:"metal, given or usual in its file"`
	Size     string   `json:"size" doc:"size, given or that of the hose"`
}

// Thread is a thread as rules compare it.
type Thread struct {
	System string  `json:"system" doc:"metric, unified or a pipe thread"`
	Major  float64 `json:"major" doc:"major diameter" dim:"length"`
	Pitch  float64 `json:"pitch" doc:"pitch" dim:"length"`
	Text   string  `json:"text" doc:"as it is written"`
}

// Port is a port with what joins it.
type Port struct {
	Subject
	spec.Port
	Half    Half     `json:"half" doc:"its end, with what the form implies"`
	Owner   string   `json:"owner" doc:"car or driveline"`
	Service string   `json:"service" doc:"what it carries: its own word, or its system's"`
	Joins   []string `json:"joined_by" doc:"paths of the ends that meet it"`
	Settled *bool    `json:"settled" doc:"every end that may meet it says which port it meets"`
	Crosses bool     `json:"boundary" doc:"a port that the car has to meet"`

	strays []string // the ends that keep it from being settled
}

// Joint is two halves that meet.
type Joint struct {
	Subject
	Kind     string    `json:"kind" doc:"line, plug, rod, shaft, pipe or circuit"`
	Way      string    `json:"way" doc:"of a line: thread, clamp, coupling, mixed, or not said while the form of a half is not; of a plug: connector"`
	On       string    `json:"on" doc:"path of the line, plug, rod, shaft, pipe or circuit"`
	Boundary bool      `json:"boundary" doc:"one half is on the driveline, one on the car"`
	Service  string    `json:"service" doc:"what goes through it"`
	Fuel     string    `json:"fuel" doc:"fuel in the tank now, for a joint that fuel goes through"`
	Here     *Half     `json:"here" doc:"the half of the line, plug, rod or shaft"`
	There    *Half     `json:"there" doc:"the port that it meets"`
	Meet     spec.Meet `json:"meet" doc:"torque, make-up and washers of this joint"`
	Tapped   string    `json:"tapped" doc:"metal that a union screws into"`
	MakeUp   string    `json:"make_up" doc:"how the joint is made: its own word, or the usual one"`
	Wet      string    `json:"threads" doc:"dry or oiled: its own word, or the usual one"`
	Calc     JointCalc `json:"calc" doc:"computed"`
}

// JointCalc holds a joint's computed figures.
type JointCalc struct {
	ThreadMatch string `json:"thread_match" doc:"same, near or apart, for two threads that meet"`
	NearEffect  string `json:"near_effect" doc:"what a near match does: starts and jams, or goes in slack"`
	TorqueLeast Figure `json:"torque_least" doc:"least torque of the named table" dim:"torque"`
	TorqueMost  Figure `json:"torque_most" doc:"most torque of the named table" dim:"torque"`
	Spanner     Figure `json:"spanner" doc:"across the flats of its nut, of a flare joint" dim:"length"`
}

// LineEnd is one end of a line with the port that it meets.
type LineEnd struct {
	Path string `json:"path" doc:"where this end is written"`
	Half *Half  `json:"half" doc:"what this end of the line is"`
	Port *Port  `json:"port" doc:"the port that it meets"`

	// Adaptors are screwed in between, from the line to the port. Rules see what
	// they cost, in the line's figures.
	Adaptors []*spec.Adaptor

	open bool // it ends in the open air
}

// Line is a hose or tube, with both ports.
type Line struct {
	Subject
	spec.Line
	Owner    string        `json:"owner" doc:"car or driveline"`
	Boundary bool          `json:"boundary" doc:"it joins the car to the driveline"`
	Service  string        `json:"service" doc:"what it carries, from its ports"`
	Flow     string        `json:"pumped_by" doc:"what moves its fluid: pump, suction, gravity, pressure, return or nothing"`
	Injected *bool         `json:"injected" doc:"it carries fuel to injectors, under their pressure; absent where the engine's injectors are not said"`
	From     *LineEnd      `json:"from" doc:"where the flow comes in"`
	To       *LineEnd      `json:"to" doc:"where the flow goes out"`
	Kind     spec.HoseKind `json:"kind" by:"hose.kind" doc:"the hose kind, from the shop file"`
	Pump     spec.Pump     `json:"pump" doc:"the driveline's pump that it leads to, for a suction line"`
	Fuel     string        `json:"fuel" doc:"fuel in the tank now, for a fuel line"`
	Ethanol  Figure        `json:"ethanol" doc:"ethanol by volume of that fuel" dim:"ratio"`
	Clamp    string        `json:"clamped_by" doc:"kind of clamp at its ends: its own word, or the usual one"`
	Fluid    string        `json:"fluid" doc:"the fluid as the compatibility table names it"`
	Liner    string        `json:"liner_material" doc:"the liner as the compatibility table names it"`
	Calc     LineCalc      `json:"calc" doc:"computed"`
}

// LineCalc holds a line's computed figures.
type LineCalc struct {
	Pressure    Figure `json:"pressure" doc:"highest working pressure" dim:"pressure"`
	Rating      Figure `json:"rating" doc:"rated working pressure, or a quarter of the burst pressure" dim:"pressure"`
	Temperature Figure `json:"temperature" doc:"highest temperature of fluid or surroundings" dim:"temperature"`
	Flow        Figure `json:"flow" doc:"flow through it" dim:"volume_flow"`
	Velocity    Figure `json:"velocity" doc:"mean velocity in its hose" dim:"speed"`
	Fastest     Figure `json:"velocity_most" doc:"mean velocity at its narrowest: in its hose, or in an adaptor" dim:"speed"`
	Reynolds    Figure `json:"reynolds" doc:"Reynolds number" dim:"ratio"`
	Drop        Figure `json:"pressure_drop" doc:"pressure lost along it" dim:"pressure"`
	Minor       Figure `json:"minor_loss" doc:"pressure lost in its ends and adaptors" dim:"pressure"`
	Climb       Figure `json:"climb" doc:"pressure that its climb takes; a fall gives" dim:"pressure"`
	Inlet       Figure `json:"inlet_pressure" doc:"pressure at the pump's inlet, at the end of a suction line; below the atmosphere negative" dim:"pressure"`
	Age         Figure `json:"age" doc:"whole months since the hose was made" dim:"age"`
	Straight    Figure `json:"straight" doc:"straight distance between its ports" dim:"length"`
	Slack       Figure `json:"slack" doc:"length of hose and adaptors beyond the straight distance" dim:"length"`
	SlackNeeded Figure `json:"slack_needed" doc:"length that movement of the engine and shortening under pressure ask for" dim:"length"`
}

// Mount is both halves of a mount.
type Mount struct {
	Subject
	spec.CarMount
	There *spec.DriveMount `json:"there" doc:"the driveline's half"`
	Calc  MountCalc        `json:"calc" doc:"computed"`
}

// MountCalc holds a mount's computed figures.
type MountCalc struct {
	Offset     Figure `json:"offset" doc:"distance between the two patterns' centres" dim:"length"`
	Towards    string `json:"offset_towards" doc:"which way the driveline's pattern lies from the car's"`
	Engagement Figure `json:"engagement" doc:"thread engaged" dim:"length"`
	Bottoms    Figure `json:"bottoms_by" doc:"bolt end past the full thread; above nothing it bottoms" dim:"length"`
	Rest       Figure `json:"rest_load" doc:"what it carries of the driveline at rest" dim:"force"`
	Reaction   Figure `json:"reaction" doc:"up or down, from the driveline's torque reaction in the lowest gear" dim:"force"`
	BoltShear  Figure `json:"bolt_shear" doc:"across each bolt, at rest and in the lowest gear together" dim:"force"`
	BoltPull   Figure `json:"bolt_pull" doc:"along each bolt, in the lowest gear less its rest" dim:"force"`
	Diameters  Figure `json:"engagement_diameters" doc:"thread engaged, in diameters" dim:"ratio"`
}

// DriveMount is the driveline's half of a mount with the brackets that meet it.
type DriveMount struct {
	Subject
	spec.DriveMount
	MetBy   []string `json:"met_by" doc:"paths of the car's mounts that meet it"`
	Settled *bool    `json:"settled" doc:"every mount of the car says which mount it meets"`

	strays []string // the mounts of the car that keep it from being settled
}

// Shaft is a shaft with both ends.
type Shaft struct {
	Subject
	spec.Shaft
	Engine  spec.Engine  `json:"engine" doc:"the engine"`
	Gearbox spec.Gearbox `json:"gearbox" doc:"the gearbox"`
	Calc    ShaftCalc    `json:"calc" doc:"computed"`
}

// ShaftCalc holds a shaft's computed figures.
type ShaftCalc struct {
	TopSpeed  Figure `json:"top_speed" doc:"at the rev limit in the highest gear" dim:"rotational_speed"`
	Whirling  Figure `json:"whirling" doc:"first whirling speed, uniform beam on simple supports" dim:"rotational_speed"`
	Share     Figure `json:"whirling_share" doc:"top speed over whirling speed" dim:"ratio"`
	Torque    Figure `json:"torque" doc:"peak engine torque through the lowest gear, at this shaft" dim:"torque"`
	Stress    Figure `json:"torsion_stress" doc:"at its surface under that torque" dim:"pressure"`
	Angle     Figure `json:"joint_angle" doc:"the greater of its joint angles" dim:"angle"`
	Unequal   Figure `json:"angle_difference" doc:"how far its two joint angles differ" dim:"angle"`
	Residual  Figure `json:"residual_angle" doc:"the one cross joint that would turn as unevenly as its two do" dim:"angle"`
	AngleMost Figure `json:"joint_angle_most" doc:"angle that a cross joint may run at at its top speed" dim:"angle"`
}

// Flange is one end of a shaft beside what it is bolted to.
type Flange struct {
	Subject
	Shaft string     `json:"shaft" doc:"the shaft"`
	Holes spec.Holes `json:"holes" doc:"holes of the shaft's flange"`
	Port  *Port      `json:"port" doc:"what it is bolted to"`
}

// Rod is a rod or cable with both ends.
type Rod struct {
	Subject
	spec.Rod
	Port  *Port      `json:"port" doc:"the driveline's half"`
	Lever spec.Lever `json:"lever" doc:"the gear lever, where the rod comes from it"`
}

// Pin is one way of a connector, both halves.
type Pin struct {
	Subject
	Connector string    `json:"connector" doc:"the connector"`
	Here      *spec.Pin `json:"here" doc:"the car's half"`
	There     *spec.Pin `json:"there" doc:"the driveline's half"`
}

// Loom is the plug at the end of a loom, beside its mate.
type Loom struct {
	Subject
	spec.Plug
	Port *Port    `json:"port" doc:"the driveline's half"`
	Calc LoomCalc `json:"calc" doc:"computed"`
}

// LoomCalc holds how far a loom has to reach.
type LoomCalc struct {
	Distance Figure `json:"distance" doc:"straight distance between the places of both halves" dim:"length"`
	Reach    Figure `json:"reach" doc:"loom tails of both halves together" dim:"length"`
}

// Module is a power module or fuse box.
type Module struct {
	Subject
	spec.PowerModule
	Calc ModuleCalc `json:"calc" doc:"computed"`
}

// ModuleCalc holds what a module feeds.
type ModuleCalc struct {
	Load Figure `json:"load" doc:"steady loads of the circuits that it feeds, together" dim:"current"`
}

// Pole is where a live conductor stands bare unless something covers it.
type Pole struct {
	Subject
	Cover spec.Text `json:"cover" doc:"what covers it"`
}

// Circuit is a power wire or earth.
type Circuit struct {
	Subject
	spec.Circuit
	Owner    string      `json:"owner" doc:"car or driveline"`
	Boundary bool        `json:"boundary" doc:"one end is on the driveline"`
	Feeds    string      `json:"feeds" doc:"what it feeds whose current is written there: fuel pump, lift pump, fan, pin or starter"`
	Calc     CircuitCalc `json:"calc" doc:"computed"`
}

// CircuitCalc holds a circuit's computed figures.
type CircuitCalc struct {
	Resistance Figure `json:"resistance" doc:"out, and back where it returns by wire" dim:"resistance"`
	Drop       Figure `json:"drop" doc:"voltage lost at the steady load" dim:"voltage"`
	PeakDrop   Figure `json:"peak_drop" doc:"voltage lost at the highest current" dim:"voltage"`
	Ampacity   Figure `json:"ampacity" doc:"what the wire carries as it is installed" dim:"current"`
	Protected  Figure `json:"protection" doc:"its fuse, or the channel that feeds it" dim:"current"`
	Draws      Figure `json:"draws" doc:"current that the thing at its end draws" dim:"current"`
}

// Expected is a sensor that the tune expects.
type Expected struct {
	Subject
	On      string       `json:"on" doc:"car or driveline"`
	Present *bool        `json:"present" doc:"it is fitted there; absent where that file says nothing of sensors"`
	Sensor  *spec.Sensor `json:"sensor" doc:"what is fitted"`
	Tune    spec.Tune    `json:"tune" doc:"the map"`
}

// Fastening is one set of fasteners in its place.
type Fastening struct {
	Subject
	spec.Fastening
	Holds    string        `json:"holds" doc:"what it holds"`
	Critical bool          `json:"critical" doc:"somebody is hurt if it lets go"`
	Tapped   string        `json:"tapped" doc:"metal it is screwed into, where it is"`
	Hot      *float64      `json:"hot" doc:"highest temperature there" dim:"temperature"`
	Undone   bool          `json:"undone" doc:"it comes undone when the driveline leaves"`
	Wrench   *bool         `json:"wrench" doc:"a torque wrench of the shop reaches its torque; absent where either is not said"`
	Calc     FasteningCalc `json:"calc" doc:"computed"`
}

// FasteningCalc holds a fastening's computed figures.
type FasteningCalc struct {
	StressArea  Figure `json:"stress_area" doc:"tensile stress area of one" dim:"area"`
	ProofLoad   Figure `json:"proof_load" doc:"proof load of one" dim:"force"`
	TorqueLeast Figure `json:"torque_least" doc:"least sound torque for thread, class and lubrication" dim:"torque"`
	TorqueMost  Figure `json:"torque_most" doc:"most sound torque for thread, class and lubrication" dim:"torque"`
	Engagement  Figure `json:"engagement" doc:"thread engaged" dim:"length"`
	Diameters   Figure `json:"engagement_diameters" doc:"thread engaged, in diameters" dim:"ratio"`
	Needed      Figure `json:"engagement_needed" doc:"diameters asked for by metal and class" dim:"ratio"`
	Preload     Figure `json:"preload" doc:"what its torque aims at" dim:"force"`
	PreloadLow  Figure `json:"preload_least" doc:"the least that its torque may give" dim:"force"`
	PreloadHigh Figure `json:"preload_most" doc:"the most that its torque may give" dim:"force"`
	Spanner     Figure `json:"spanner" doc:"across the flats of its head, or of its socket" dim:"length"`
}

// Dated is a safety item with a date.
type Dated struct {
	Subject
	spec.Dated
	Kind string    `json:"kind" doc:"harness, seat, helmet, window net, head restraint, hand extinguisher, fire system or fuel cell"`
	Calc DatedCalc `json:"calc" doc:"computed"`
}

// DatedCalc holds what follows from a label.
type DatedCalc struct {
	DaysLeft    Figure `json:"days_left" doc:"days until its last day, below nothing when past"`
	LastDay     string `json:"last_day" doc:"its last day"`
	ServiceLeft Figure `json:"service_days_left" doc:"days until its service is due"`
	By          string `json:"by" doc:"the label, or the authority whose life is used"`
}

// TowEye is a towing eye.
type TowEye struct {
	Subject
	spec.TowEye
	Calc TowEyeCalc `json:"calc" doc:"computed"`
}

// TowEyeCalc holds what an eye has to pull.
type TowEyeCalc struct {
	Weight Figure `json:"weight" doc:"weight of the car as it was on the scales" dim:"force"`
}

// Ballast is a piece of ballast.
type Ballast struct {
	Subject
	spec.Ballast
}

// Weighed is a weighing: of the car, or of the driveline.
type Weighed struct {
	Subject
	Of     string      `json:"of" doc:"car or driveline"`
	Unsure spec.Length `json:"unsure" doc:"how far the centre of mass may be from the figures"`
}

// Shop is the workshop.
type Shop struct {
	Subject
	spec.ShopHead
}

// Gear is something that car or driveline is lifted, held or tightened with. It is
// looked over from time to time, and says what it bears.
type Gear struct {
	Subject
	Kind       string     `json:"kind" doc:"hoist, sling, stand, jack, torque wrench or lift point"`
	Marked     spec.Flag  `json:"marked" doc:"carries its limit, of a sling or lift point"`
	Checked    spec.Label `json:"checked" doc:"day of its last examination"`
	Calibrated spec.Label `json:"calibrated" doc:"day of the last calibration, of a torque wrench"`
	Calc       GearCalc   `json:"calc" doc:"computed"`
}

// GearCalc holds how long ago gear was looked over.
type GearCalc struct {
	Age Figure `json:"age" doc:"whole months since it was examined or calibrated" dim:"age"`
}

// FireSystem is the plumbed-in fire system.
type FireSystem struct {
	Subject
	spec.FireSystem
}

// Support is how the car stands.
type Support struct {
	Subject
	spec.Support
	StandCount int         `json:"stand_count" doc:"stands in place"`
	Unchocked  []string    `json:"unchocked" doc:"wheels that are down and not chocked; absent where either is not said"`
	Tackle     spec.Sling  `json:"tackle" by:"sling" doc:"the sling in use, from the shop file"`
	Crane      spec.Hoist  `json:"crane" by:"hoist" doc:"the hoist in use, from the shop file"`
	Carrier    spec.Dolly  `json:"carrier" by:"dolly" doc:"the dolly in use, from the shop file"`
	Driveline  string      `json:"driveline" doc:"the driveline fitted"`
	Fit        spec.Fit    `json:"fit" doc:"what is true of the car with this driveline"`
	Calc       SupportCalc `json:"calc" doc:"computed"`
}

// SupportCalc holds what hangs from the hoist, and what it may.
type SupportCalc struct {
	HookLoad   Figure `json:"hook_load" doc:"driveline, tackle and sling" dim:"mass"`
	HookRated  Figure `json:"hook_rated" doc:"plate figure of the hoist at the boom position in use" dim:"mass"`
	HangTilt   Figure `json:"hang_tilt" doc:"tilt of the driveline as it hangs" dim:"angle"`
	HookNeeded Figure `json:"hook_needed" doc:"height of the hook that lifts the driveline over what stays in the car" dim:"length"`
	Saddle     Figure `json:"saddle_needed" doc:"height of the saddles that lets the driveline out beneath on its dolly" dim:"length"`
	DollyEdge  Figure `json:"dolly_margin" doc:"driveline's centre of mass inside the castors, all turned inwards" dim:"length"`
	DollyTips  Figure `json:"dolly_tilt" doc:"tilt at which driveline and dolly go over" dim:"angle"`
	DollyStep  Figure `json:"dolly_step" doc:"step under one castor that tilts them so far" dim:"length"`
	DollyFrame Figure `json:"dolly_stress" doc:"bending stress of one frame tube with the whole weight at its middle" dim:"pressure"`
}

// Stand is one stand in its place.
type Stand struct {
	Subject
	spec.StandPoint
	Kind   spec.Stand `json:"kind" by:"stand" doc:"the stand, from the shop file"`
	Leaves bool       `json:"leaves" doc:"it stands under something that comes off in the swap"`
	Calc   StandCalc  `json:"calc" doc:"computed"`
}

// StandCalc holds a stand's computed figures.
type StandCalc struct {
	Capacity  Figure `json:"capacity" doc:"load that one stand is rated for" dim:"mass"`
	LoadIn    Figure `json:"load_in" doc:"load with the driveline in" dim:"mass"`
	LoadOut   Figure `json:"load_out" doc:"load with the driveline out" dim:"mass"`
	LoadMost  Figure `json:"load_most" doc:"highest elastic load at any stage" dim:"mass"`
	LoadLeast Figure `json:"load_least" doc:"lowest elastic load at any stage" dim:"mass"`
	Rocking   Figure `json:"rocking" doc:"highest load when the car rocks on three stands" dim:"mass"`
	Push      Figure `json:"push" doc:"push at the saddle that topples the stand at its lowest load" dim:"force"`
}

// SupportCase is how the car stands in one stage.
type SupportCase struct {
	Subject
	Stage string          `json:"stage" doc:"the stage"`
	Calc  SupportCaseCalc `json:"calc" doc:"computed"`
}

// SupportCaseCalc holds the stability of one stage.
type SupportCaseCalc struct {
	Mass   Figure `json:"mass" doc:"mass on the supports" dim:"mass"`
	Margin Figure `json:"margin" doc:"least distance of the centre of mass inside the edge, before its uncertainty" dim:"length"`
	Unsure Figure `json:"unsure" doc:"uncertainty of the centre of mass" dim:"length"`
	Left   Figure `json:"margin_left" doc:"margin with the uncertainty taken off; below nothing it may tip" dim:"length"`
	Tilt   Figure `json:"tilt" doc:"tilt at which it tips, with the uncertainty taken off" dim:"angle"`
	Share  Figure `json:"at_share" doc:"share of the driveline's weight on the hoist where the margin is least" dim:"ratio"`
}

// LiftPoint is a point the driveline may hang from.
type LiftPoint struct {
	Subject
	spec.LiftPoint
	Tackle spec.Sling    `json:"tackle" doc:"the sling in use, from the shop file"`
	Calc   LiftPointCalc `json:"calc" doc:"computed"`
}

// LiftPointCalc holds a lift point's computed figures.
type LiftPointCalc struct {
	AboveMass Figure `json:"above_mass" doc:"height of the point above the driveline's centre of mass" dim:"length"`
	Diameters Figure `json:"depth_diameters" doc:"thread engaged, in diameters" dim:"ratio"`
	Needed    Figure `json:"depth_needed" doc:"diameters asked of an eye bolt in that metal" dim:"ratio"`
	LegAngle  Figure `json:"leg_angle" doc:"of its sling leg, from the horizontal" dim:"angle"`
	Tension   Figure `json:"tension" doc:"of its sling leg; of four or more the worst" dim:"mass"`
	EyePull   Figure `json:"eye_pull" doc:"between its sling leg and straight up in the driveline's axes, the axis of an eye bolt" dim:"angle"`
}

// Castor is one castor of the dolly in use.
type Castor struct {
	Subject
	spec.Castor
	Calc CastorCalc `json:"calc" doc:"computed"`
}

// CastorCalc holds what a castor carries.
type CastorCalc struct {
	Load    Figure `json:"load" doc:"what it carries of the driveline" dim:"mass"`
	Rocking Figure `json:"rocking" doc:"the most it carries on an uneven floor" dim:"mass"`
}

// LifeItem is an item with a life.
type LifeItem struct {
	Subject
	spec.LifeItem
	Clock spec.Clock   `json:"clock" doc:"the clock it counts on"`
	Calc  LifeItemCalc `json:"calc" doc:"computed"`
}

// LifeItemCalc holds what is left of a life. Only the limits that the item has
// are there.
type LifeItemCalc struct {
	Share Figure `json:"share" doc:"share of the life used, by the limit nearest its end" dim:"ratio"`
	Left  string `json:"left" doc:"what is left, in the words of that limit"`
}

// Gap is a measured clearance.
type Gap struct {
	Subject
	spec.Gap
	Moves bool     `json:"moves" doc:"one of the two rocks with the driveline, and the other stays"`
	Fit   spec.Fit `json:"fit" doc:"what is true of the car with this driveline"`
}

// Access is a panel or part in the way.
type Access struct {
	Subject
	spec.Access
}

// History is what a part has been through.
type History struct {
	Subject
	spec.HistoryOf
}

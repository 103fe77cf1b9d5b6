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
	Guesses []string // paths of the guesses that it rests on, as far as they are written
	Missing []string // paths that would have to be written first
}

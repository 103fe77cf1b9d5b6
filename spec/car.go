package spec

// Car is one car file: everything that stays when the driveline leaves.
type Car struct {
	Car       CarHead         `spec:"car" doc:"who the car is and which driveline is in it now"`
	Clock     Clock           `spec:"clock" doc:"the car's own count; touch only this after an event"`
	Rulebooks Table[Rulebook] `spec:"rulebooks" doc:"editions of the rulebooks that the car is held to"`
	Fits      Table[Fit]      `spec:"fits" doc:"what is true of this car with one driveline, by that driveline's file name; kept while it is lent"`
	Usual     Usual           `spec:"usual" doc:"what a thing is made of where nothing is said; never that it exists"`

	Mounts Table[CarMount] `spec:"mounts" doc:"the car's half of each place that carries the driveline"`
	Lines  Table[Line]     `spec:"lines" doc:"hoses and tubes, each between two ports"`
	Plugs  Table[Plug]     `spec:"plugs" doc:"the car's half of each multi-pin connector"`
	Pins   Table[PinSet]   `spec:"pins" doc:"what each pin of the car's half gives or takes, by connector"`
	Rods   Table[Rod]      `spec:"rods" doc:"shift and throttle rods and cables"`
	Shafts Table[Shaft]    `spec:"shafts" doc:"propshafts and drive shafts"`

	Fuel     CarFuel     `spec:"fuel" doc:"what holds and moves fuel on the car"`
	Oil      CarOil      `spec:"oil" doc:"engine oil parts on the car"`
	Cooling  CarCooling  `spec:"cooling" doc:"coolant parts on the car"`
	Air      CarAir      `spec:"air" doc:"intake and charge-air parts on the car"`
	Exhaust  CarExhaust  `spec:"exhaust" doc:"exhaust parts on the car"`
	Clutch   CarClutch   `spec:"clutch" doc:"clutch pedal and master cylinder"`
	Brakes   CarBrakes   `spec:"brakes" doc:"brake parts, as far as they share anything with the driveline"`
	Gearbox  CarGearbox  `spec:"gearbox" doc:"gearbox oil parts and lever on the car"`
	Steering CarSteering `spec:"steering" doc:"steering hydraulics on the car"`
	Final    FinalDrive  `spec:"final-drive" doc:"axle or transaxle that the propshaft turns"`
	Parts    Table[Part] `spec:"parts" doc:"any other part with ports, mass or a fixing: tees, manifolds, bulkhead unions"`

	Electrics CarElectrics     `spec:"electrics" doc:"battery, isolator, posts and power modules"`
	Circuits  Table[Circuit]   `spec:"circuits" doc:"feeds and earths: wire, length, load and fuse"`
	Sensors   Table[Sensor]    `spec:"sensors" doc:"sensors fitted to the car"`
	Fasteners Table[Fastener]  `spec:"fasteners" doc:"fasteners that matter and belong to no joint above"`
	Safety    Safety           `spec:"safety" doc:"safety items as their labels read"`
	Ballast   Table[Ballast]   `spec:"ballast" doc:"ballast pieces and how they are held"`
	Weighing  Weighing         `spec:"weighing" doc:"the last weighing of the whole car"`
	Masses    Table[MassAt]    `spec:"masses" doc:"parts whose mass and place are known"`
	Set       SetUp            `spec:"set-up" doc:"last recorded set-up, for what to check after mass has moved"`
	Support   Support          `spec:"support" doc:"how the car stands while it is worked on"`
	Access    Table[Access]    `spec:"access" doc:"what must come off before what, and how it is held"`
	Solids    Table[Solid]     `spec:"solids" doc:"what the driveline must miss, as boxes"`
	Gaps      Table[Gap]       `spec:"gaps" doc:"clearances measured with the driveline in"`
	Life      Table[LifeItem]  `spec:"life" doc:"items with a life, on the car's clock"`
	History   Table[HistoryOf] `spec:"history" doc:"what a part has been through that its next user must know"`
	Waivers   Table[Waiver]    `spec:"waivers" doc:"findings set aside, with the reason and the last day"`
}

// CarHead names the car.
type CarHead struct {
	Node
	Name       Text                  `spec:"name" required:"true" doc:"what the outfit calls the car"`
	Use        Choice[useWords]      `spec:"use" doc:"what it competes in"`
	Stage      Choice[stageWords]    `spec:"stage" doc:"the state the car is in today"`
	Driveline  Ref                   `spec:"driveline" doc:"file of the driveline fitted now, or none for an empty bay"`
	Shop       Ref                   `spec:"shop" doc:"the shop file whose hoses, stands and hoist this car uses"`
	Rulebooks  Names                 `spec:"rulebooks" doc:"rulebooks that the car is held to beside workshop practice"`
	Units      Choice[unitsWords]    `spec:"units" doc:"units for figures that nobody wrote, such as a computed load"`
	Origin     Text                  `spec:"origin" doc:"where the axes start; x forward, y left, z up (ISO 8855)"`
	FrontAxle  Position              `spec:"front-axle" doc:"the point on the ground below the middle of the front axle line, in the car's axes"`
	Wheelbase  Length                `spec:"wheelbase" doc:"front to rear axle line"`
	TrackFront Length                `spec:"track-front" doc:"between front tyre centres"`
	TrackRear  Length                `spec:"track-rear" doc:"between rear tyre centres"`
	TyreRadius Length                `spec:"tyre-radius" doc:"loaded radius of the driven tyres"`
	GroundGap  Length                `spec:"ground-clearance" doc:"lowest sprung point at ride height"`
	Closed     Flag                  `spec:"closed" doc:"has a roof, so an outside isolator handle is asked for"`
	MinMass    Mass                  `spec:"minimum-mass" doc:"class minimum mass"`
	Noise      Text                  `spec:"noise" doc:"last noise reading and limit"`
	Papers     Text                  `spec:"papers" doc:"log book or passport and class entered"`
	Throttle   Choice[throttleWords] `spec:"throttle" doc:"what the car gives the engine: a cable or pedal sensors"`
}

// Rulebook is a published set of rules in the edition that the car was built to.
type Rulebook struct {
	Node
	Authority Text `spec:"authority" doc:"who publishes it"`
	Article   Text `spec:"article" doc:"article, chapter or group that applies"`
	Edition   Text `spec:"edition" doc:"edition or year that the car is held to"`
	Event     Text `spec:"event-edition" doc:"edition that the next event runs under"`
}

// Clock is a file's own count of use. Items with a life in the same file count
// on it.
type Clock struct {
	Node
	Read  Label    `spec:"read" doc:"day on which the count was read"`
	Runs  Count    `spec:"runs" doc:"timed runs so far"`
	Hours Duration `spec:"run-time" doc:"hours run so far"`
}

// Usual gives materials for things whose material is not said. It may say what a
// thing is made of, never that it is there.
type Usual struct {
	Node
	Metal     Choice[metalWords]       `spec:"metal" doc:"metal of fittings"`
	MakeUp    Choice[makeUpWords]      `spec:"make-up" doc:"how flare joints are made up, which picks the torque table"`
	Wet       Choice[lubricationWords] `spec:"flare-threads" doc:"flare nuts go on dry or oiled"`
	Clamp     Text                     `spec:"clamp" doc:"kind of hose clamp"`
	Seals     Choice[sealMaterial]     `spec:"seals" doc:"rubber of seals in fittings"`
	Insulated Temperature              `spec:"wire-rated" doc:"temperature rating of wire insulation"`
	Installed Choice[installWords]     `spec:"wire-run" doc:"how most wires run: free, in a bundle, or in a hot bay"`
}

// Fit holds what is true of one car with one driveline.
type Fit struct {
	Node
	File     Ref                     `spec:"file" doc:"the driveline's file"`
	At       Position                `spec:"at" doc:"where the driveline's datum lands, in the car's axes"`
	NoseUp   Angle                   `spec:"nose-up" doc:"tilt of the crank line, front up positive"`
	Measured Label                   `spec:"measured" doc:"day of the measurement"`
	Leaves   Choices[directionWords] `spec:"leaves" doc:"the way out, in order"`
	Behind   Names                   `spec:"behind" refers:"behind" doc:"what must be off before the driveline can leave"`
	Rocks    Length                  `spec:"rocks" doc:"how far the engine moves on its mounts under torque"`
	Last     Label                   `spec:"last-in" doc:"when this driveline was last in this car"`
}

// SetUp is the last recorded set-up.
type SetUp struct {
	Node
	Date    Label  `spec:"date" doc:"day of the set-up"`
	Mass    Mass   `spec:"mass" doc:"mass of the car as set up"`
	Front   Length `spec:"ride-height-front" doc:"front ride height"`
	Rear    Length `spec:"ride-height-rear" doc:"rear ride height"`
	Toe     Text   `spec:"toe" doc:"toe, as the builder notes it"`
	Camber  Text   `spec:"camber" doc:"camber, as the builder notes it"`
	Balance Text   `spec:"brake-balance" doc:"brake balance, as the builder notes it"`
}

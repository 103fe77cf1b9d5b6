package spec

// Driveline is one driveline file: everything that leaves on the pallet. It
// names no car, so it does not change when it moves.
type Driveline struct {
	Driveline DrivelineHead     `spec:"driveline" doc:"which driveline this is and where it is measured from"`
	Clock     Clock             `spec:"clock" doc:"the driveline's own count; it follows it from car to car"`
	Usual     Usual             `spec:"usual" doc:"what a thing is made of where nothing is said"`
	Engine    Engine            `spec:"engine" doc:"the engine"`
	Turbo     Turbo             `spec:"turbo" doc:"turbocharger or supercharger"`
	Clutch    Clutch            `spec:"clutch" doc:"the clutch itself and its release"`
	Gearbox   Gearbox           `spec:"gearbox" doc:"the gearbox"`
	Ports     Table[Port]       `spec:"ports" doc:"every place where the car must meet the driveline"`
	Mounts    Table[DriveMount] `spec:"mounts" doc:"the driveline's half of each mount"`
	Pins      Table[PinSet]     `spec:"pins" doc:"what each pin of the driveline's half gives or takes, by connector"`
	Lines     Table[Line]       `spec:"lines" doc:"hoses with both ends on the driveline"`
	Lift      Table[LiftPoint]  `spec:"lift" doc:"points it may be hung from"`
	Weighed   DrivelineWeighing `spec:"weighing" doc:"the driveline on the scale"`
	Masses    Table[MassAt]     `spec:"masses" doc:"its parts' masses, added up and held against the scale"`
	Solids    Table[Solid]      `spec:"solids" doc:"the room it takes, as boxes"`
	Pumps     Table[Pump]       `spec:"pumps" doc:"pumps that it drives"`
	Fluids    Table[Fluid]      `spec:"fluids" doc:"what it holds and how much stays in it"`
	Drains    Table[Drain]      `spec:"drains" doc:"drain plugs"`
	Needs     Needs             `spec:"needs" doc:"what it asks of any car"`
	Sensors   Table[Sensor]     `spec:"sensors" doc:"sensors that travel with it"`
	Tune      Tune              `spec:"tune" doc:"what the engine computer's map believes"`
	Circuits  Table[Circuit]    `spec:"circuits" doc:"wires with both ends on the driveline"`
	Parts     Table[Part]       `spec:"parts" doc:"any other part with ports or mass"`
	Fasteners Table[Fastener]   `spec:"fasteners" doc:"fasteners that matter and belong to no joint above"`
	Life      Table[LifeItem]   `spec:"life" doc:"items with a life, on the driveline's clock"`
	History   Table[HistoryOf]  `spec:"history" doc:"what a part has been through that its next user must know"`
	Waivers   Table[Waiver]     `spec:"waivers" doc:"findings about this file set aside"`
}

// DrivelineHead names the driveline.
type DrivelineHead struct {
	Node
	Name  Text               `spec:"name" required:"true" doc:"what the outfit calls it"`
	Shop  Ref                `spec:"shop" doc:"the shop file it shares with the cars that take it"`
	Datum Text               `spec:"datum" doc:"the point its positions start from"`
	Units Choice[unitsWords] `spec:"units" doc:"units for figures that nobody wrote"`
}

// Engine is the engine itself.
type Engine struct {
	Node
	Layout       Text                   `spec:"layout" doc:"cylinders, how they lie, and the exhaust side"`
	Cylinders    Whole                  `spec:"cylinders" doc:"number of cylinders"`
	Bore         Length                 `spec:"bore" doc:"cylinder bore"`
	Stroke       Length                 `spec:"stroke" doc:"crank stroke"`
	Displacement Volume                 `spec:"displacement" doc:"swept volume, where bore and stroke are not given"`
	PowerCrank   PowerAtSpeed           `spec:"power-crank" doc:"power at the crank"`
	PowerWheels  PowerAtSpeed           `spec:"power-wheels" doc:"power measured at the wheels"`
	WheelLoss    Ratio                  `spec:"wheel-loss" doc:"share lost between crank and wheels, as assumed"`
	Torque       TorqueAtSpeed          `spec:"torque" doc:"peak torque"`
	RevLimit     Rotation               `spec:"rev-limit" doc:"where the limiter cuts"`
	Induction    Choice[inductionWords] `spec:"induction" doc:"how it breathes"`
	Boost        Pressure               `spec:"boost" doc:"boost above atmosphere"`
	Rotation     Choice[rotationWords]  `spec:"rotation" doc:"of the crank, seen from the front of the engine"`
	Throttle     Choice[throttleWords]  `spec:"throttle" doc:"what works the throttle"`
	Closure      Choice[closureWords]   `spec:"throttle-closes" doc:"what shuts the throttle"`
	Fuel         Choice[fuelWords]      `spec:"fuel" doc:"fuel that it is built for"`
	Consumption  Consumption            `spec:"consumption" doc:"brake-specific fuel consumption at full power"`
	Injectors    Injectors              `spec:"injectors" doc:"injectors: number, and flow at a pressure"`
	Thermostat   Temperature            `spec:"thermostat" doc:"opening temperature"`
	Cranking     Current                `spec:"cranking" doc:"starter current while cranking"`
	Alternator   Current                `spec:"alternator" doc:"rated output"`
	Breather     Choice[closedWords]    `spec:"breather" doc:"closed to the intake or open to a catch tank"`
	OilCapacity  Volume                 `spec:"oil-capacity" doc:"engine oil to fill from dry"`
	Mass         Mass                   `spec:"mass" doc:"dry mass"`
	Ports        Table[Port]            `spec:"ports" doc:"ports that only the driveline's own lines use"`
}

type closedWords struct{}

func (closedWords) Words() []string { return []string{"closed", "open"} }

// Injectors is a set of fuel injectors.
//
// Phrase: "5 x 1050 mL/min at 3.0 bar"; the number may be left out, and "measured
// with n-heptane" added.
type Injectors struct {
	Node
	Count    Whole      `spec:"count" doc:"number of injectors"`
	Flow     VolumeFlow `spec:"flow" doc:"static flow of one"`
	Pressure Pressure   `spec:"pressure" doc:"fuel pressure at which the flow was measured"`
	Fluid    Text       `spec:"measured-with" doc:"fluid of the flow bench"`
}

// Turbo is a turbocharger or supercharger.
type Turbo struct {
	Node
	Frame Text        `spec:"frame" doc:"frame size: small, mid, large"`
	Limit Rotation    `spec:"limit" doc:"shaft speed limit"`
	Ports Table[Port] `spec:"ports" doc:"oil and water ports"`
}

// Clutch is the clutch itself.
type Clutch struct {
	Node
	Plates    Whole                `spec:"plates" doc:"driven plates"`
	Lining    Text                 `spec:"lining" doc:"lining material"`
	Outer     Length               `spec:"outer" doc:"outer diameter of the lining"`
	Inner     Length               `spec:"inner" doc:"inner diameter of the lining"`
	Clamp     Force                `spec:"clamp" doc:"clamp load of the cover"`
	Friction  Number               `spec:"friction" doc:"coefficient of friction of the lining"`
	SlaveArea Area                 `spec:"slave-area" doc:"working area of the slave or concentric slave"`
	Frees     Length               `spec:"frees-at" doc:"slave travel that frees the plates"`
	Travel    Length               `spec:"travel-max" doc:"slave travel that its maker allows"`
	Release   Force                `spec:"release" doc:"force at the bearing to release"`
	Seals     Choice[sealMaterial] `spec:"seals" doc:"rubber of the slave's seals"`
}

// Gearbox is the gearbox.
type Gearbox struct {
	Node
	Layout Text        `spec:"kind" doc:"speeds, engagement, in line or transaxle"`
	Ratios Numbers     `spec:"ratios" doc:"from lowest gear to highest"`
	Rated  Torque      `spec:"rated" doc:"input torque that its maker rates"`
	Shock  Ratio       `spec:"shock" doc:"margin asked for over engine torque"`
	Output Text        `spec:"output" doc:"what the output is"`
	Ports  Table[Port] `spec:"ports" doc:"ports that only the driveline's own lines use"`
}

// Pump is a pump that the driveline turns.
type Pump struct {
	Node
	Driven Text              `spec:"driven" doc:"belt, gear or shaft that turns it"`
	Flow   FlowAtSpeed       `spec:"flow" doc:"flow at a pump or engine speed"`
	Relief Pressure          `spec:"relief" doc:"pressure at which its relief valve opens"`
	Inlet  Vacuum            `spec:"inlet-least" doc:"least pressure it needs at its inlet, below atmosphere negative"`
	Stages Whole             `spec:"stages" doc:"scavenge stages"`
	Goes   Choice[goesWords] `spec:"goes" doc:"with the driveline, with the car, or either way"`
	Bolts  Fastening         `spec:"bolts" doc:"what holds it"`
	Mass   Mass              `spec:"mass" doc:"mass of the pump"`
}

// Fluid is one fluid of the driveline.
type Fluid struct {
	Node
	Grade Text   `spec:"grade" doc:"grade or specification"`
	Stays Volume `spec:"stays-in" doc:"what stays in the driveline when it is drained"`
	Fill  Volume `spec:"fill" doc:"what it takes to fill from dry"`
	Drain Ref    `spec:"drain" refers:"drains" doc:"the drain plug that lets it out"`
}

// Drain is a drain plug.
type Drain struct {
	Node
	Plug Fastening `spec:"plug" doc:"the plug: thread, key, torque, washer"`
	At   Position  `spec:"at" doc:"where it is"`
}

// Needs is what the driveline asks of any car.
type Needs struct {
	Node
	OilTank   Volume   `spec:"oil-tank" doc:"least volume of a dry-sump tank"`
	HeatWater Power    `spec:"heat-coolant" doc:"heat that the radiator must shed"`
	HeatOil   Power    `spec:"heat-oil" doc:"heat that the oil cooler must shed"`
	HeatBox   Power    `spec:"heat-gearbox" doc:"heat that the gearbox cooler must shed"`
	Air       MassFlow `spec:"air" doc:"intake air at full power"`
	FuelRail  Pressure `spec:"fuel-pressure" doc:"rail pressure over manifold that the tune wants"`
	Servo     Flag     `spec:"gives-vacuum" doc:"has a source of vacuum for a brake servo"`
}

// Sensor is a sensor, on the driveline or on the car.
type Sensor struct {
	Node
	Measures Text          `spec:"kind" doc:"what kind of sensor"`
	Range    PressureRange `spec:"range" doc:"gauge pressure range"`
	Absolute AbsoluteRange `spec:"range-absolute" doc:"absolute pressure range"`
	Thread   Thread        `spec:"thread" doc:"thread it screws in by"`
	Into     Ref           `spec:"in" refers:"thing" doc:"the port or part that it sits in"`
	Torque   Torque        `spec:"torque" doc:"tightening torque"`
}

// Tune is what the engine computer's map believes.
type Tune struct {
	Node
	File      Text                  `spec:"file" doc:"name of the map"`
	Injectors Injectors             `spec:"injectors" doc:"injectors that the map was made for"`
	Pressure  Pressure              `spec:"base-fuel-pressure" doc:"rail over manifold that the map was made for"`
	Manifold  AbsoluteRange         `spec:"manifold" doc:"range of the manifold sensor that the map was made for"`
	Fuel      Choice[fuelWords]     `spec:"fuel" doc:"fuel that the map was made for"`
	Ethanol   Ratio                 `spec:"ethanol" doc:"ethanol by volume that the map was made for"`
	FlexFuel  Flag                  `spec:"follows-fuel" doc:"a sensor tells the map what fuel is in the line"`
	RevLimit  Rotation              `spec:"rev-limit" doc:"limiter of the map"`
	Boost     Pressure              `spec:"boost" doc:"boost that the map asks for"`
	Throttle  Choice[throttleWords] `spec:"throttle" doc:"throttle that the map works"`
	Expects   Names                 `spec:"expects" refers:"sensors" doc:"sensors that the map needs; car.NAME for one on the car"`
}

// LiftPoint is a place the driveline may be hung from.
type LiftPoint struct {
	Node
	At     Position            `spec:"at" doc:"where the eye is, in the driveline's axes"`
	Rated  Mass                `spec:"rated" doc:"working load limit marked on it, for a straight pull"`
	Marked Flag                `spec:"marked" doc:"the limit is stamped on it"`
	Thread Thread              `spec:"thread" doc:"thread of an eye bolt"`
	Depth  Length              `spec:"depth" doc:"thread engaged in the part"`
	Into   Choice[tappedWords] `spec:"into" doc:"metal that it is screwed into"`
	Bolts  Fastening           `spec:"bolts" doc:"what holds a bracket"`
	Part   Text                `spec:"on" doc:"the part it is on"`
}

package spec

// CarFuel is the fuel system on the car.
type CarFuel struct {
	Node
	Carries   Choice[serviceWords] `spec:"carries" doc:"what every port here carries unless it says otherwise"`
	Cell      FuelCell             `spec:"cell" doc:"fuel cell or tank"`
	Pump      FuelPump             `spec:"pump" doc:"main pump"`
	Lift      FuelPump             `spec:"lift-pump" doc:"pump that feeds a surge pot"`
	Filter    FuelFilter           `spec:"filter" doc:"filter after the pump"`
	Strainer  FuelFilter           `spec:"strainer" doc:"filter before the pump"`
	Regulator FuelRegulator        `spec:"regulator" doc:"pressure regulator"`
	Surge     FuelCell             `spec:"surge-pot" doc:"surge pot"`
	FlexFuel  Part                 `spec:"fuel-sensor" doc:"sensor of the ethanol share"`
}

// FuelCell is a tank, bladder or surge pot.
type FuelCell struct {
	Part
	Standard  Text                 `spec:"standard" doc:"standard on its label"`
	Made      Label                `spec:"made" doc:"date on its label"`
	Until     LastDay              `spec:"until" doc:"last day on its label, or its recertification"`
	Filled    Choice[fuelWords]    `spec:"filled-with" doc:"fuel in it now"`
	Ethanol   Ratio                `spec:"ethanol" doc:"ethanol by volume of what is in it now, as tested"`
	Tested    Label                `spec:"ethanol-tested" doc:"day of that test"`
	VentValve Text                 `spec:"vent-valve" doc:"valve that shuts the vent when the car is over, or none"`
	Seals     Choice[sealMaterial] `spec:"seals" doc:"rubber of its seals"`
	Walled    Flag                 `spec:"walled-off" doc:"a liquid-tight metal wall or case parts it from the cockpit"`
}

// FuelPump is an electric fuel pump.
type FuelPump struct {
	Part
	Flow   FlowsAtPressure      `spec:"flow" doc:"flow at a pressure; more than one point makes a curve"`
	At     Voltage              `spec:"at-volts" doc:"voltage of those points"`
	Draws  Current              `spec:"draws" doc:"current at working pressure"`
	Relief Pressure             `spec:"relief" doc:"its own relief valve"`
	Seals  Choice[sealMaterial] `spec:"seals" doc:"rubber of its seals"`
	Fuels  Choices[fuelWords]   `spec:"approved-for" doc:"fuels that its maker approves"`
	InTank Flag                 `spec:"in-tank" doc:"works inside the tank"`
	Stops  Text                 `spec:"stops" doc:"what stops it when the engine stops"`
}

// FuelFilter is a fuel filter.
type FuelFilter struct {
	Part
	Element Text                 `spec:"element" doc:"mesh and material of the element"`
	Changed Label                `spec:"changed" doc:"day the element was changed"`
	Fuels   Choices[fuelWords]   `spec:"approved-for" doc:"fuels that its maker approves"`
	Seals   Choice[sealMaterial] `spec:"seals" doc:"rubber of its seals"`
}

// FuelRegulator is a fuel pressure regulator.
type FuelRegulator struct {
	Part
	Base    Pressure             `spec:"base" doc:"pressure it holds with nothing on its reference"`
	Follows Flag                 `spec:"follows-manifold" doc:"adds manifold pressure one for one"`
	Fuels   Choices[fuelWords]   `spec:"approved-for" doc:"fuels that its maker approves"`
	Seals   Choice[sealMaterial] `spec:"seals" doc:"rubber of its seals"`
}

// CarOil is the engine oil system on the car.
type CarOil struct {
	Node
	Carries     Choice[serviceWords] `spec:"carries" doc:"what every port here carries unless it says otherwise"`
	Tank        OilTank              `spec:"tank" doc:"dry-sump tank"`
	Cooler      Cooler               `spec:"cooler" doc:"oil cooler"`
	Filter      Part                 `spec:"filter" doc:"remote filter"`
	Catch       CatchTank            `spec:"catch-tank" doc:"catch tank for the breather"`
	Accumulator Accumulator          `spec:"accumulator" doc:"pressure accumulator"`
}

// OilTank is a dry-sump tank.
type OilTank struct {
	Part
	Fill Volume `spec:"fill" doc:"oil in it when it is at its mark, engine running and hot"`
}

// Cooler is a heat exchanger.
type Cooler struct {
	Part
	Sheds Power    `spec:"sheds" doc:"heat it sheds at speed"`
	Rated Pressure `spec:"rated" doc:"working pressure of its core"`
}

// CatchTank is a catch tank.
type CatchTank struct {
	Part
	Level   Flag  `spec:"level-visible" doc:"the level can be seen from outside"`
	Vents   Text  `spec:"vents" doc:"where it vents to"`
	Emptied Label `spec:"emptied" doc:"day it was last emptied"`
}

// Accumulator stores oil under pressure.
type Accumulator struct {
	Part
	Pressure Pressure `spec:"pressure" doc:"gas pre-charge"`
	Valve    Text     `spec:"valve" doc:"how it is shut off"`
	Vented   Flag     `spec:"vented-first" doc:"let down before any oil line is opened"`
}

// CarCooling is the coolant system on the car.
type CarCooling struct {
	Node
	Carries  Choice[serviceWords] `spec:"carries" doc:"what every port here carries unless it says otherwise"`
	Radiator Cooler               `spec:"radiator" doc:"radiator"`
	Header   Header               `spec:"header" doc:"header or expansion tank"`
	Fan      Fan                  `spec:"fan" doc:"electric fan"`
	Heater   Part                 `spec:"heater" doc:"cabin heater, or none"`
	Catch    CatchTank            `spec:"catch-tank" doc:"overflow bottle"`
}

// Header is a header tank.
type Header struct {
	Part
	Cap Pressure `spec:"cap" doc:"pressure at which its cap opens"`
}

// Fan is an electric fan.
type Fan struct {
	Part
	Draws Current     `spec:"draws" doc:"running current"`
	On    Temperature `spec:"on-at" doc:"temperature at which it starts"`
}

// CarAir is the intake on the car.
type CarAir struct {
	Node
	Carries     Choice[serviceWords] `spec:"carries" doc:"what every port here carries unless it says otherwise"`
	Box         Part                 `spec:"box" doc:"air box and filter"`
	Intercooler Cooler               `spec:"intercooler" doc:"charge-air cooler"`
}

// CarExhaust is the exhaust on the car.
type CarExhaust struct {
	Node
	Carries Choice[serviceWords] `spec:"carries" doc:"what every port here carries"`
	Pipes   Table[ExhaustPipe]   `spec:"pipes" doc:"pipes and silencers, from the engine back"`
}

// ExhaustPipe is one piece of the exhaust.
type ExhaustPipe struct {
	Part
	From   Meet   `spec:"from" refers:"port" doc:"the end towards the engine"`
	To     Meet   `spec:"to" refers:"port" doc:"the end towards the tail"`
	Length Length `spec:"length" doc:"its length"`
	Wrap   Text   `spec:"wrap" doc:"wrap or shield, or none"`
}

// CarClutch is the clutch pedal side.
type CarClutch struct {
	Node
	Carries Choice[serviceWords]   `spec:"carries" doc:"what every port here carries"`
	Fluid   Choice[hydraulicWords] `spec:"fluid" doc:"fluid in the reservoir"`
	Master  Master                 `spec:"master" doc:"master cylinder"`
}

type hydraulicWords struct{}

func (hydraulicWords) Words() []string {
	return []string{"DOT 3", "DOT 4", "DOT 5.1", "DOT 5 silicone", "mineral"}
}

// Master is a master cylinder with its pedal.
type Master struct {
	Part
	Bore   Length               `spec:"bore" doc:"cylinder bore"`
	Stroke Length               `spec:"stroke" doc:"full stroke"`
	Stop   Length               `spec:"stop" doc:"stroke at which the pedal stop holds it"`
	Pedal  Number               `spec:"pedal" doc:"lever ratio of the pedal, to 1"`
	Seals  Choice[sealMaterial] `spec:"seals" doc:"rubber of its seals"`
}

// CarBrakes is the part of the brakes that a swap may touch.
type CarBrakes struct {
	Node
	Carries   Choice[serviceWords]   `spec:"carries" doc:"what every port here carries"`
	Fluid     Choice[hydraulicWords] `spec:"fluid" doc:"fluid in the reservoir"`
	Servo     Servo                  `spec:"servo" doc:"brake servo, or none"`
	Seals     Choice[sealMaterial]   `spec:"seals" doc:"rubber of its seals"`
	Reservoir Part                   `spec:"reservoir" doc:"fluid reservoir, if the clutch shares it"`
}

// Servo is a brake servo.
type Servo struct {
	Part
	Source Choice[servoWords] `spec:"source" doc:"what it is driven by"`
	Check  Flag               `spec:"check-valve" doc:"has its check valve"`
}

type servoWords struct{}

func (servoWords) Words() []string { return []string{"manifold", "pump", "electric"} }

// CarGearbox is what the car has for the gearbox.
type CarGearbox struct {
	Node
	Carries Choice[serviceWords] `spec:"carries" doc:"what every port here carries"`
	Cooler  Cooler               `spec:"cooler" doc:"gearbox oil cooler"`
	Lever   Lever                `spec:"lever" doc:"gear lever"`
}

// Lever is a gear lever.
type Lever struct {
	Part
	Throw Length `spec:"throw" doc:"travel at its foot"`
}

// CarSteering is the steering hydraulics.
type CarSteering struct {
	Node
	Carries   Choice[serviceWords] `spec:"carries" doc:"what every port here carries"`
	Reservoir Part                 `spec:"reservoir" doc:"fluid reservoir"`
	Rack      Part                 `spec:"rack" doc:"steering rack"`
}

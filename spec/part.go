package spec

// Part is anything with a place, a mass, ports or contents. The parts of each
// system embed it.
type Part struct {
	Node
	At       Position           `spec:"at" doc:"where it is"`
	Room     Box                `spec:"box" doc:"the room it takes, as two opposite corners"`
	Mass     Mass               `spec:"mass" doc:"its mass, empty"`
	Holds    Volume             `spec:"holds" doc:"what it can hold"`
	Contents Text               `spec:"contents" doc:"what is in it now, which need not be what it carries"`
	Amount   Volume             `spec:"amount" doc:"how much is in it now"`
	Metal    Choice[metalWords] `spec:"metal" doc:"what it is made of"`
	Held     Fastening          `spec:"held" doc:"what holds it"`
	Behind   Names              `spec:"behind" refers:"behind" doc:"what must be off before it can be reached"`
	Drain    Fastening          `spec:"drain" doc:"its drain plug, or none"`
	Goes     Choice[goesWords]  `spec:"goes" doc:"with the driveline, with the car, or either way"`
	Tied     Text               `spec:"tied" doc:"how it is tied up when left on its lines"`
	Place    Choice[placeWords] `spec:"place" doc:"the compartment it is in"`
	Ports    Table[Port]        `spec:"ports" doc:"its ports"`
}

// HistoryOf is what a part has been through.
type HistoryOf struct {
	Node
	Of      Ref   `spec:"of" refers:"thing" doc:"the part"`
	Failed  Label `spec:"served-failed-engine" doc:"day an engine failed upstream of it"`
	Flushed Label `spec:"flushed" doc:"day it was flushed or stripped and cleaned after that"`
	Crash   Label `spec:"in-crash" doc:"day of an accident it was in"`
	Note    Text  `spec:"note" doc:"anything else its next user must know"`
}

// MassAt is a mass at a place.
type MassAt struct {
	Node
	Mass   Mass     `spec:"mass" doc:"its mass"`
	At     Position `spec:"at" doc:"its centre of mass"`
	Leaves Flag     `spec:"leaves" doc:"comes off the car before the driveline is lifted"`
}

// Ballast is a piece of ballast.
type Ballast struct {
	Node
	Mass  Mass      `spec:"mass" doc:"its mass"`
	At    Position  `spec:"at" doc:"where it is"`
	Bolts Fastening `spec:"bolts" doc:"what holds it"`
	Plate Area      `spec:"plate" doc:"area of each backing plate"`
}

// Solid is a room taken, as a box.
type Solid struct {
	Node
	Room    Box         `spec:"box" doc:"two opposite corners"`
	Hot     Temperature `spec:"hot" doc:"temperature of its surface"`
	KeepOff Length      `spec:"keep-off" doc:"distance that other things must keep"`
	PartOf  Names       `spec:"part-of" refers:"behind" doc:"what it comes off with"`
}

// Gap is a clearance measured on the car.
type Gap struct {
	Node
	Between Names       `spec:"between" refers:"thing or words" doc:"the two things"`
	Is      Length      `spec:"is" doc:"distance measured with the driveline in"`
	Shield  Text        `spec:"shield" doc:"shield or sleeve between them, or none"`
	Hot     Temperature `spec:"hot" doc:"temperature of the hotter one"`
}

// Access is a panel or part that must come off to reach others.
type Access struct {
	Node
	Held    Fastening            `spec:"held" doc:"what holds it"`
	Station Choice[stationWords] `spec:"from" doc:"where the builder stands"`
	Behind  Names                `spec:"behind" refers:"behind" doc:"what must be off before it"`
	Minutes Duration             `spec:"takes" doc:"time to take it off, where it is known"`
}

// LifeItem is an item with a life, counted on the clock of the file it is in.
type LifeItem struct {
	Node
	Fitted Label `spec:"fitted" doc:"day it was fitted"`
	At     Life  `spec:"at" doc:"the clock when it was fitted"`
	Lasts  Life  `spec:"lasts" doc:"what it lasts; the first limit reached counts"`
	Of     Ref   `spec:"of" refers:"thing" doc:"the part it is about"`
}

// Waiver sets a finding aside.
type Waiver struct {
	Node
	Rule  Text    `spec:"rule" required:"true" doc:"the rule's id"`
	On    Names   `spec:"on" required:"true" doc:"subjects, as a finding prints them"`
	Why   Text    `spec:"why" required:"true" doc:"the reason"`
	Until LastDay `spec:"until" required:"true" doc:"the last day on which it holds"`
}

package spec

// Safety is the safety equipment, as exactly as each label says it.
type Safety struct {
	Node
	Cage      Cage         `spec:"cage" doc:"roll cage or hoop"`
	Seat      Dated        `spec:"seat" doc:"driver's seat"`
	Harness   Harness      `spec:"harness" doc:"driver's harness"`
	WindowNet Dated        `spec:"window-net" doc:"window net, or none"`
	Plumbed   FireSystem   `spec:"fire-system" doc:"plumbed-in fire system, or none"`
	Hand      Extinguisher `spec:"hand-extinguisher" doc:"hand-held extinguisher, or none"`
	Helmet    Dated        `spec:"helmet" doc:"driver's helmet"`
	Restraint Dated        `spec:"head-restraint" doc:"frontal head restraint"`
	TowFront  TowEye       `spec:"tow-front" doc:"front towing eye"`
	TowRear   TowEye       `spec:"tow-rear" doc:"rear towing eye"`
	Firewall  Firewall     `spec:"firewall" doc:"wall between engine and cockpit"`
}

// Dated is an item whose label gives a standard and a date.
type Dated struct {
	Node
	Standard Text      `spec:"standard" doc:"standard on the label, as it is printed"`
	Made     Label     `spec:"made" doc:"date made"`
	Until    LastDay   `spec:"until" doc:"last day of validity on the label"`
	Serviced Label     `spec:"serviced" doc:"day of the last service or inspection"`
	Fixing   Fastening `spec:"fixing" doc:"what holds it"`
}

// Harness is a driver's harness.
type Harness struct {
	Dated
	Points  Whole     `spec:"points" doc:"number of straps to the chassis"`
	Slope   Angle     `spec:"shoulder-slope" doc:"shoulder straps back and down from the seat, below horizontal"`
	Anchors Fastening `spec:"anchors" doc:"anchor bolts"`
	Shared  Names     `spec:"anchors-shared-with" doc:"what else an anchor bolt holds, or none"`
}

// Extinguisher is a hand-held extinguisher.
type Extinguisher struct {
	Dated
	Agent  Choice[agentWords] `spec:"agent" doc:"what is in it"`
	Holds  Volume             `spec:"volume" doc:"volume of foam"`
	Charge Mass               `spec:"charge" doc:"mass of gas or powder"`
	Straps Whole              `spec:"straps" doc:"metal straps that hold it"`
	Reach  Flag               `spec:"reachable-belted" doc:"the belted driver reaches it"`
}

// FireSystem is a plumbed-in fire system.
type FireSystem struct {
	Dated
	Agent   Choice[agentWords]   `spec:"agent" doc:"what is in it"`
	Every   Age                  `spec:"every" doc:"service interval on its label"`
	Nozzles Names                `spec:"nozzles" doc:"where its nozzles are"`
	Pin     Choice[pinWords]     `spec:"state" doc:"made safe with its pin, or armed"`
	Pulls   Choices[handleWords] `spec:"handles" doc:"where it is set off from"`
}

type pinWords struct{}

func (pinWords) Words() []string { return []string{"pinned", "armed"} }

// Cage is a roll cage.
type Cage struct {
	Node
	Standard Text `spec:"standard" doc:"homologation or certificate"`
	Main     Tube `spec:"main-tube" doc:"tube of the main hoop"`
	Others   Tube `spec:"other-tube" doc:"tube of the other members"`
	Padding  Text `spec:"padding" doc:"padding where the helmet can reach, by its standard"`
}

// TowEye is a towing eye or strap.
type TowEye struct {
	Node
	Inside Length `spec:"inside" doc:"inside diameter"`
	Colour Text   `spec:"colour" doc:"its colour"`
	Marked Text   `spec:"marked" doc:"arrow or word that shows it"`
	On     Text   `spec:"on" doc:"the structure it is fixed to"`
	Rated  Force  `spec:"rated" doc:"load it is rated for"`
	Behind Names  `spec:"behind" refers:"behind" doc:"what covers it"`
}

// Firewall is the wall between engine and cockpit.
type Firewall struct {
	Node
	Made  Text  `spec:"made-of" doc:"material and thickness"`
	Holes Names `spec:"open-holes" doc:"holes that are open now, or none"`
}

// Weighing is the last weighing of the whole car on four scales.
type Weighing struct {
	Node
	Date       Label  `spec:"date" doc:"day of the weighing"`
	FrontLeft  Mass   `spec:"front-left" doc:"scale under the front left wheel"`
	FrontRight Mass   `spec:"front-right" doc:"scale under the front right wheel"`
	RearLeft   Mass   `spec:"rear-left" doc:"scale under the rear left wheel"`
	RearRight  Mass   `spec:"rear-right" doc:"scale under the rear right wheel"`
	Driveline  Text   `spec:"driveline" doc:"driveline that was in it, by file name, or none"`
	Fuel       Volume `spec:"fuel" doc:"fuel that was in it"`
	Driver     Flag   `spec:"driver" doc:"with the driver"`
	Height     Length `spec:"height" doc:"height of the centre of mass above the ground"`
	HeightBy   Text   `spec:"height-by" doc:"how the height was found"`
	Unsure     Length `spec:"unsure" doc:"how far the centre of mass may be from the figures, any way"`
}

// DrivelineWeighing is the driveline on the scale.
type DrivelineWeighing struct {
	Node
	Mass   Mass     `spec:"mass" doc:"as lifted, drained"`
	Date   Label    `spec:"date" doc:"day of the weighing"`
	At     Position `spec:"at" doc:"its centre of mass, in its own axes, where it was measured"`
	Unsure Length   `spec:"unsure" doc:"how far the centre of mass may be from the figures, any way"`
}

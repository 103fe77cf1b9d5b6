package spec

// Support is how a car stands while it is worked on.
type Support struct {
	Node
	Floor  Choice[floorWords] `spec:"floor" doc:"the floor it stands on"`
	Points Table[StandPoint]  `spec:"stands" doc:"stands in place, by corner"`
	Wheels Names              `spec:"wheels-down" doc:"wheels left on the floor, or none"`
	Chocks Names              `spec:"chocked" doc:"wheels that are chocked"`
	HeldBy Names              `spec:"held-by" doc:"anything else that holds the car up: a jack, an air jack, a hoist, a two-post lift"`
	Lift   Ref                `spec:"hoist" refers:"shop.hoists" doc:"hoist in the shop file that takes the driveline"`
	Boom   Text               `spec:"boom" doc:"boom position in use, as its plate names it"`
	Sling  Ref                `spec:"sling" refers:"shop.slings" doc:"sling in the shop file"`
	Dolly  Ref                `spec:"dolly" refers:"shop.dollies" doc:"dolly in the shop file that the driveline goes on"`
	Frame  Text               `spec:"frame" doc:"frame that carries the car where the driveline is part of its structure"`
	Prop   Text               `spec:"prop" doc:"prop under a car on a two-post lift"`
	Saddle Length             `spec:"saddle-height" doc:"height of the saddles above the floor as set"`
}

// StandPoint is one stand in its place.
type StandPoint struct {
	Node
	Stand      Ref      `spec:"stand" refers:"shop.stands" doc:"kind of stand, in the shop file"`
	At         Position `spec:"at" doc:"the pad it stands under, at ride height"`
	Under      Ref      `spec:"under" refers:"thing or chassis" doc:"what it stands under: chassis, or the name of a part, driveline.NAME for one that leaves"`
	Structural Flag     `spec:"structural" doc:"the pad carries the car by design"`
	Height     Length   `spec:"height" doc:"saddle height as set"`
}

// Shop is the shop file: what the workshop has, shared by every car.
type Shop struct {
	Shop     ShopHead        `spec:"shop" doc:"whose workshop it is"`
	Hoses    Table[HoseKind] `spec:"hoses" doc:"kinds of hose that lines are made from"`
	Stands   Table[Stand]    `spec:"stands" doc:"axle stands"`
	Jacks    Table[Jack]     `spec:"jacks" doc:"jacks"`
	Hoists   Table[Hoist]    `spec:"hoists" doc:"engine hoists"`
	Slings   Table[Sling]    `spec:"slings" doc:"slings and load levellers"`
	Dollies  Table[Dolly]    `spec:"dollies" doc:"engine dollies"`
	Adaptors Table[Adaptor]  `spec:"adaptors" doc:"adaptors in stock"`
	Wrenches Table[Wrench]   `spec:"torque-wrenches" doc:"torque wrenches"`
	Waivers  Table[Waiver]   `spec:"waivers" doc:"findings about this file set aside"`
}

// ShopHead names the shop.
type ShopHead struct {
	Node
	Name         Text                 `spec:"name" required:"true" doc:"whose workshop"`
	Room         Length               `spec:"headroom" doc:"clear height over the work"`
	Floor        Choice[floorWords]   `spec:"floor" doc:"its floor"`
	Extinguisher Text                 `spec:"extinguisher" doc:"what is within reach of the work, or none"`
	Works        Choice[companyWords] `spec:"works" doc:"alone or with a second person"`
}

type companyWords struct{}

func (companyWords) Words() []string { return []string{"alone", "with a second person"} }

// HoseKind is a kind of hose.
type HoseKind struct {
	Node
	Size     Size                  `spec:"size" doc:"size as it is sold: -8, 38 mm"`
	Liner    Choice[linerWords]    `spec:"liner" doc:"what touches the fluid"`
	Cover    Choice[coverWords]    `spec:"cover" doc:"reinforcement and cover"`
	Bore     Length                `spec:"bore" doc:"inside diameter, measured or declared"`
	Rated    Pressure              `spec:"rated" doc:"rated working pressure"`
	Burst    Pressure              `spec:"burst" doc:"burst pressure, where no working pressure is given"`
	Bend     Length                `spec:"bend" doc:"least bend radius declared for it"`
	Hot      Temperature           `spec:"hot" doc:"highest temperature it is rated for"`
	Cold     Temperature           `spec:"cold" doc:"lowest temperature it is rated for"`
	Standard Text                  `spec:"standard" doc:"standard printed on it, such as SAE J30 R9"`
	Fuels    Choices[fuelWords]    `spec:"approved-for" doc:"fuels that its maker approves"`
	Fluids   Choices[serviceWords] `spec:"for" doc:"what its maker sells it for"`
	Vacuum   Flag                  `spec:"holds-suction" doc:"does not pull flat"`
	Lasts    Age                   `spec:"lasts" doc:"life from the date on it"`
}

// Stand is an axle stand. A rating is worth nothing until it says each or pair.
type Stand struct {
	Node
	Rated   Mass               `spec:"rated" doc:"rated load"`
	Basis   Choice[basisWords] `spec:"basis" doc:"each or pair"`
	Height  LengthRange        `spec:"height" doc:"lowest and highest saddle"`
	Lock    Choice[lockWords]  `spec:"lock" doc:"what locks its height"`
	Reach   Length             `spec:"base-reach" doc:"from its axis to the nearest tipping edge of its base"`
	Checked Label              `spec:"checked" doc:"day it was last looked over"`
	Count   Whole              `spec:"have" doc:"how many there are"`
}

// Jack is a jack. It lifts; it never holds.
type Jack struct {
	Node
	Rated   Mass   `spec:"rated" doc:"rated load"`
	Lifts   Length `spec:"lifts-to" doc:"highest saddle"`
	Checked Label  `spec:"checked" doc:"day it was last looked over"`
}

// Hoist is an engine hoist. Its rating falls as the boom goes out.
type Hoist struct {
	Node
	Booms   Table[Boom] `spec:"booms" doc:"plate figures, by boom position"`
	HookTo  Length      `spec:"hook-to" doc:"highest hook"`
	Legs    Length      `spec:"legs-need" doc:"clear height that its legs need"`
	Tackle  Mass        `spec:"tackle" doc:"mass of hook, leveller and chains"`
	Checked Label       `spec:"checked" doc:"day of the last thorough examination"`
}

// Boom is the plate figure for one boom position.
type Boom struct {
	Node
	Reach Length `spec:"reach" doc:"boom length"`
	Rated Mass   `spec:"rated" doc:"load on the plate for this position"`
}

// Sling is a sling or leveller.
type Sling struct {
	Node
	Legs    Table[Leg]         `spec:"legs" doc:"its legs, by lift point"`
	Rated   Mass               `spec:"rated" doc:"working load limit of one leg"`
	Basis   Choice[legBasis]   `spec:"basis" doc:"what the rating is for"`
	Kind    Choice[slingWords] `spec:"kind" doc:"what it is"`
	Marked  Flag               `spec:"marked" doc:"carries its limit and number"`
	Checked Label              `spec:"checked" doc:"day of the last thorough examination"`
	Mass    Mass               `spec:"mass" doc:"its mass"`
}

type legBasis struct{}

func (legBasis) Words() []string { return []string{"leg", "whole"} }

type slingWords struct{}

func (slingWords) Words() []string {
	return []string{"chain", "webbing", "wire rope", "leveller", "lashing strap"}
}

// Leg is one leg of a sling.
type Leg struct {
	Node
	Length Length `spec:"length" doc:"hook to eye"`
	To     Text   `spec:"to" doc:"lift point it goes to"`
}

// Dolly is an engine dolly.
type Dolly struct {
	Node
	Rated   Mass          `spec:"rated" doc:"rated load of the whole dolly"`
	Castors Table[Castor] `spec:"castors" doc:"its castors"`
	Frame   Tube          `spec:"frame" doc:"tube of its frame"`
	Carries Names         `spec:"carries" doc:"drivelines that it has saddles for, by file name"`
	Straps  Whole         `spec:"straps" doc:"straps that hold the driveline down"`
}

// Castor is one castor.
type Castor struct {
	Node
	At    Position `spec:"at" doc:"where it is, in the axes of the driveline on it"`
	Rated Mass     `spec:"rated" doc:"rated load"`
	Trail Length   `spec:"trail" doc:"distance from pivot to contact"`
	Locks Flag     `spec:"locks" doc:"has a brake"`
}

// Adaptor is a fitting in stock that joins two ends that do not meet.
type Adaptor struct {
	Node
	One   End    `spec:"one" doc:"one end"`
	Other End    `spec:"other" doc:"the other end"`
	Adds  Length `spec:"adds" doc:"length it adds"`
	Have  Whole  `spec:"have" doc:"how many there are"`
	Bore  Length `spec:"bore" doc:"its bore"`
}

// Wrench is a torque wrench.
type Wrench struct {
	Node
	Range      TorqueRange `spec:"range" doc:"its range"`
	Calibrated Label       `spec:"calibrated" doc:"day of its last calibration"`
}

package spec

// End is what one half of a joint is, as you see it with the joint apart.
//
// Phrase: size, gender, form, angle of the fitting, metal, in any order:
// "-8 male 37-flare", "female 37-flare 90deg steel", "38 mm bead",
// "1/8-27 NPT male taper-pipe", "M10x1 female banjo", "size-24 key-N pins connector".
// It may also have a word for the seal, "straight", "valved" and "family-NAME". A
// size left out of a hose end is the size of the hose.
type End struct {
	Node
	Size     Size                `spec:"size" doc:"size as the trade names it: -8, 38 mm, 3/8-24, size-24"`
	Form     Choice[formWords]   `spec:"form" doc:"how it seals or holds"`
	Gender   Choice[genderWords] `spec:"gender" doc:"which half it is"`
	Bend     Angle               `spec:"bend" doc:"angle of the fitting, 0 for straight"`
	Metal    Choice[metalWords]  `spec:"metal" doc:"what it is made of"`
	Thread   Thread              `spec:"thread" doc:"its thread, where the size does not give it"`
	Seal     Choice[sealWords]   `spec:"seal" doc:"what seals it, where the form does not say"`
	Family   Text                `spec:"family" doc:"series of a coupling or profile of a band; only halves of one family meet"`
	Outer    Length              `spec:"outside" doc:"outside diameter of a band flange or a bead"`
	Key      Text                `spec:"key" doc:"keying of a connector or coupling"`
	Valved   Flag                `spec:"valved" doc:"a coupling half that shuts itself"`
	Approved Text                `spec:"approved" doc:"fuel or fluid that its maker approves it for"`
}

// Port is one end on a part. Pressure and heat are written here, where they
// arise.
//
// Phrase: that of an End.
type Port struct {
	Node
	End     End                    `spec:"end" doc:"its form and size"`
	At      Position               `spec:"at" doc:"where it is"`
	Faces   Choice[directionWords] `spec:"faces" doc:"which way it points"`
	Gives   Text                   `spec:"gives" doc:"what comes out of it"`
	Takes   Text                   `spec:"takes" doc:"what goes into it"`
	Both    Text                   `spec:"both" doc:"what goes either way"`
	Max     Pressure               `spec:"max" doc:"highest pressure that arises here"`
	Hot     Temperature            `spec:"hot" doc:"highest temperature that arises here"`
	Under   End                    `spec:"under-it" doc:"the port beneath an adaptor that stays screwed in"`
	Spills  Volume                 `spec:"spills" doc:"what runs out when it is opened"`
	Open    Flag                   `spec:"may-stay-open" doc:"needs no mate"`
	Purpose Choice[purposeWords]   `spec:"purpose" doc:"why it may stand open or unused"`
	Capped  Text                   `spec:"capped" doc:"cap or plug that closes it"`
	Holes   Holes                  `spec:"holes" doc:"hole pattern of a flange"`
	Stroke  Length                 `spec:"stroke" doc:"travel of a rod"`
	Tail    Length                 `spec:"tail" doc:"length of a loom or hose tail"`
	On      Ref                    `spec:"on" refers:"thing" doc:"the part it is on, where that part may be unbolted instead"`
	Tapped  Choice[tappedWords]    `spec:"tapped" doc:"metal that a union or banjo screws into"`
	Load    Current                `spec:"load" doc:"current at an electrical port"`
}

// Meet is the car's half of a joint at one end of a line, rod or shaft.
//
// Phrase: ["where", "what", "torque and lubrication"]; the last two may be left
// out, and then the brackets too. The last may also have the make-up, "two copper
// washers", "T-bolt clamp" and "never-open".
type Meet struct {
	Node
	Port    Ref                      `spec:"port" doc:"the port it meets: part.port here, driveline.port across"`
	End     End                      `spec:"end" doc:"what this end of the line is"`
	Torque  Torque                   `spec:"torque" doc:"tightening torque"`
	MakeUp  Choice[makeUpWords]      `spec:"make-up" doc:"how the joint is made, which picks the torque table"`
	Wet     Choice[lubricationWords] `spec:"threads" doc:"dry or oiled"`
	Washers Text                     `spec:"washers" doc:"washers or O-rings that it needs new"`
	Clamp   Text                     `spec:"clamp" doc:"hose clamp"`
	Never   Flag                     `spec:"never-open" doc:"this joint is not to be parted for a swap"`
}

// Holes is a hole pattern.
//
// Phrase: "4 x M10x1.5 tapped 22 mm, 110 x 80 mm, long-side fore-aft",
// "2 x 10.5 mm clear, 70 mm apart fore-aft", "6 x 10.1 mm clear, on 84 mm circle".
// It may also have "into cast-iron", "30 mm pilot" and "no pilot".
type Holes struct {
	Node
	Count  Whole               `spec:"count" doc:"number of holes"`
	Clear  Length              `spec:"clear" doc:"diameter of plain holes"`
	Thread Thread              `spec:"thread" doc:"thread of tapped holes"`
	Depth  Length              `spec:"depth" doc:"full thread in a tapped hole"`
	Apart  Length              `spec:"apart" doc:"distance between two holes, or the long side of four"`
	Wide   Length              `spec:"wide" doc:"the short side of four"`
	Circle Length              `spec:"circle" doc:"diameter of the bolt circle"`
	Along  Choice[axisWords]   `spec:"along" doc:"axis of the row or of the long side"`
	Into   Choice[tappedWords] `spec:"into" doc:"metal of tapped holes"`
	Pilot  Length              `spec:"pilot" doc:"diameter of the centring spigot"`
}

// CarMount is the car's half of a mount: bracket, rubber, bolts and torque.
type CarMount struct {
	Node
	Meets   Ref       `spec:"meets" refers:"mount" doc:"the driveline's half"`
	At      Position  `spec:"at" doc:"centre of its pattern, in the car's axes"`
	Holes   Holes     `spec:"holes" doc:"holes in the bracket"`
	Bolts   Fastening `spec:"bolts" doc:"what holds the driveline to it"`
	Grip    Length    `spec:"grip" doc:"thickness that the bolts pass through, washers included"`
	Rubber  Text      `spec:"rubber" doc:"bush or sandwich, with its hardness, or none"`
	Moves   Length    `spec:"moves" doc:"movement that the rubber allows"`
	Behind  Names     `spec:"behind" refers:"behind" doc:"what must be off before it can be reached"`
	Carries Names     `spec:"carries" refers:"thing" doc:"car parts that hang on this bracket"`
	Chassis Flag      `spec:"on-chassis" doc:"the bracket is part of the chassis and stays"`
}

// DriveMount is the driveline's half of a mount: the face and its holes.
type DriveMount struct {
	Node
	At    Position               `spec:"at" doc:"centre of its pattern, in the driveline's axes"`
	Faces Choice[directionWords] `spec:"faces" doc:"which way its face looks"`
	Holes Holes                  `spec:"holes" doc:"its holes"`
	Tail  Length                 `spec:"tail" doc:"loom length of a box that hangs on the car"`
	Light Flag                   `spec:"light" doc:"carries a box or bracket, not the driveline's weight"`
}

// Line is a hose or tube between two ports. It never says what it carries: its
// two ends do.
type Line struct {
	Node
	Hose     HoseRun               `spec:"hose" doc:"length, kind and date of the hose"`
	From     Meet                  `spec:"from" refers:"port" doc:"the end that takes the flow in"`
	To       Meet                  `spec:"to" refers:"port" doc:"the end that lets the flow out"`
	OpenAir  Text                  `spec:"ends" doc:"where an open end leads, such as under the sill"`
	Through  Choices[throughWords] `spec:"through" doc:"compartments it runs through"`
	Clips    Length                `spec:"clips" doc:"longest free run between clips, or none"`
	Tightest Length                `spec:"tightest-bend" doc:"tightest bend radius as fitted, to the centre line"`
	Suction  Flag                  `spec:"suction" doc:"it must not pull flat"`
	Falls    Choice[fallWords]     `spec:"falls" doc:"how a gravity drain falls"`
	Climbs   Choice[fallWords]     `spec:"climbs" doc:"how a bleed line climbs"`
	Near     Temperature           `spec:"near" doc:"highest temperature of the air or part beside it"`
	Sleeve   Text                  `spec:"sleeve" doc:"heat or fire sleeve, or none"`
	Bonded   Flag                  `spec:"bonded" doc:"metal parts are earthed to the chassis"`
	Behind   Names                 `spec:"behind" refers:"behind" doc:"what must be off before its ends can be reached"`
	Clamps   Text                  `spec:"clamps" doc:"kind of clamp at both ends"`
	Tied     Text                  `spec:"tied" doc:"how it is tied back when a part is left on it"`
	Working  Pressure              `spec:"working" doc:"working pressure, where its ports do not say"`
	Passes   Text                  `spec:"bulkhead" doc:"how it passes a bulkhead"`
}

// HoseRun is a length of hose.
//
// Phrase: "2.95 m of ptfe-8, 2023-02": length, kind, month made.
type HoseRun struct {
	Node
	Length Length `spec:"length" doc:"cut length between the ends"`
	Kind   Ref    `spec:"kind" refers:"shop.hoses" doc:"the hose kind, in the shop file"`
	Made   Label  `spec:"made" doc:"date on the hose, not the day it was fitted"`
}

// Plug is the car's half of a multi-pin connector.
type Plug struct {
	Node
	Meets  Meet     `spec:"meets" refers:"plug" doc:"the driveline's half"`
	At     Position `spec:"at" doc:"where it is clipped"`
	Behind Names    `spec:"behind" refers:"behind" doc:"what must be off before it can be reached"`
	Tail   Length   `spec:"tail" doc:"loom from here to where it is fixed"`
}

// PinSet is what each pin of a connector gives or takes.
type PinSet = Table[Pin]

// Pin is one way of a connector.
type Pin struct {
	Node
	Gives Text    `spec:"gives" doc:"signal or supply that comes out of it"`
	Takes Text    `spec:"takes" doc:"signal or supply that goes into it"`
	Both  Text    `spec:"both" doc:"signal that goes either way"`
	Load  Current `spec:"load" doc:"current that it draws"`
	Wire  Wire    `spec:"wire" doc:"wire behind it"`
}

// Rod is a shift rod, throttle rod or cable.
type Rod struct {
	Node
	From   Meet                 `spec:"from" refers:"port" doc:"one end"`
	To     Meet                 `spec:"to" refers:"port" doc:"the other end"`
	Length Length               `spec:"length" doc:"between centres"`
	Lock   Choice[lockingWords] `spec:"lock" doc:"what keeps it from turning"`
	Cable  Flag                 `spec:"cable" doc:"a cable, which bends: it need only be long enough"`
	Behind Names                `spec:"behind" refers:"behind" doc:"what must be off before it can be reached"`
}

// Shaft is a propshaft or drive shaft.
type Shaft struct {
	Node
	From       Meet               `spec:"from" refers:"port" doc:"driveline end"`
	To         Meet               `spec:"to" refers:"port" doc:"axle end"`
	Holes      Holes              `spec:"holes" doc:"flange holes at each end"`
	Bolts      Fastening          `spec:"bolts" doc:"bolts at each end"`
	Grip       Length             `spec:"grip" doc:"flange thickness that the bolts pass through"`
	Tube       Tube               `spec:"tube" doc:"tube size"`
	Length     Length             `spec:"length" doc:"face to face at ride height"`
	Joints     Choice[jointWords] `spec:"joints" doc:"kind of joint at its ends"`
	Slip       LengthRange        `spec:"slip" doc:"travel left inwards (negative) and outwards"`
	Mass       Mass               `spec:"mass" doc:"its mass"`
	Hoops      Whole              `spec:"hoops" doc:"hoops around it"`
	Behind     Names              `spec:"behind" refers:"behind" doc:"what must be off before it can be reached"`
	AngleFront Angle              `spec:"angle-front" doc:"joint angle at the driveline end"`
	AngleRear  Angle              `spec:"angle-rear" doc:"joint angle at the axle end"`
	Phased     Flag               `spec:"phased" doc:"its two yokes are in one plane"`
}

// Tube is a round or square tube.
//
// Phrase: "76.2 x 1.65 mm steel", "45 x 2.5 mm cold-drawn steel"; a bar is a tube
// without a hole, "25 x 12.5 mm steel".
type Tube struct {
	Node
	Outer Length             `spec:"outer" doc:"outside diameter or side"`
	Wall  Length             `spec:"wall" doc:"wall thickness"`
	Metal Choice[metalWords] `spec:"metal" doc:"what it is made of"`
	Drawn Choice[drawnWords] `spec:"made" doc:"how the tube was made"`
}

type drawnWords struct{}

func (drawnWords) Words() []string {
	return []string{"cold-drawn", "welded", "hot-finished", "cold-formed"}
}

// FinalDrive is the axle or transaxle.
type FinalDrive struct {
	Part
	Ratio   Number                `spec:"ratio" doc:"final drive ratio"`
	NoseUp  Angle                 `spec:"nose-up" doc:"tilt of its input"`
	Oil     Volume                `spec:"oil" doc:"what it holds"`
	Rated   Torque                `spec:"rated" doc:"input torque that its maker rates"`
	Wants   Choice[rotationWords] `spec:"turns" doc:"rotation of its input, seen from the front"`
	HubHeld Flag                  `spec:"shaft-clamps-hub" doc:"a drive shaft clamps the wheel bearing, so the car must not roll without it"`
}

// Fastening is a set of like bolts, studs or screws.
//
// Phrase: "2 x M10x1.5x35 10.9 hex, 50 N m, wire": count, thread and length,
// class, head, then torque, locking and lubrication in any order. It may also have
// a nut, "into cast-aluminium", "16 mm engaged", "13 mm across-flats", "18x24 copper
// washer" and "use-once".
type Fastening struct {
	Node
	Count   Whole                    `spec:"count" doc:"how many"`
	Thread  Thread                   `spec:"thread" doc:"their thread"`
	Length  Length                   `spec:"length" doc:"length under the head"`
	Class   Choice[classWords]       `spec:"class" doc:"property class or grade"`
	Head    Choice[headWords]        `spec:"head" doc:"head"`
	Across  Length                   `spec:"across-flats" doc:"hexagon or socket, where it is not the usual one"`
	Torque  Torque                   `spec:"torque" doc:"tightening torque"`
	By      Text                     `spec:"torque-by" doc:"who gives the torque, where it is a maker's own figure"`
	Wet     Choice[lubricationWords] `spec:"threads" doc:"dry, oiled or coated"`
	Lock    Choice[lockingWords]     `spec:"lock" doc:"what keeps them from turning"`
	Nut     Choice[nutWords]         `spec:"nut" doc:"nut, where they do not go into a tapped hole"`
	Into    Choice[tappedWords]      `spec:"into" doc:"metal that they are screwed into"`
	Engaged Length                   `spec:"engaged" doc:"thread engaged"`
	Washer  Text                     `spec:"washer" doc:"sealing washer"`
	Once    Flag                     `spec:"use-once" doc:"new ones each time"`
	Maker   Text                     `spec:"what" doc:"a special fastener that no class describes"`
}

// Fastener is a fastening that belongs to no joint.
type Fastener struct {
	Node
	Bolts    Fastening   `spec:"bolts" doc:"the fastening"`
	Holds    Text        `spec:"holds" doc:"what it holds"`
	Critical Flag        `spec:"critical" doc:"somebody is hurt if it lets go"`
	Hot      Temperature `spec:"hot" doc:"highest temperature there"`
	Grip     Length      `spec:"grip" doc:"thickness clamped"`
	Behind   Names       `spec:"behind" refers:"behind" doc:"what must be off before it can be reached"`
}

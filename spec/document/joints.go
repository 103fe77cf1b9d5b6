package document

import "fitup/spec"

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
	Port   *Port      `json:"port" doc:"the driveline's half"`
	Worked *Port      `json:"worked_by" doc:"the car's half: a pedal, a lever"`
	Lever  spec.Lever `json:"lever" doc:"the gear lever, where the rod comes from it"`
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

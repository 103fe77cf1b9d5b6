package spec

// CarElectrics is what feeds and isolates.
type CarElectrics struct {
	Node
	Battery    Battery            `spec:"battery" doc:"battery"`
	Isolator   Isolator           `spec:"isolator" doc:"main switch"`
	Alternator Flag               `spec:"total-loss" doc:"runs without an alternator"`
	Posts      Table[Post]        `spec:"posts" doc:"power posts and studs"`
	Modules    Table[PowerModule] `spec:"modules" doc:"power modules and fuse boxes, by channel"`
}

// Battery is the battery.
type Battery struct {
	Part
	Holds  Charge  `spec:"capacity" doc:"capacity at the 20 hour rate"`
	Cranks Current `spec:"cranks" doc:"cranking current that it gives"`
	Sealed Flag    `spec:"sealed" doc:"dry or sealed, or in a sealed box"`
	Cover  Text    `spec:"cover" doc:"cover over its live pole"`
}

// Isolator is the main switch.
type Isolator struct {
	Part
	Kills   Names                `spec:"kills" refers:"circuits" doc:"circuits that it opens"`
	Handles Choices[handleWords] `spec:"handles" doc:"where it can be worked from"`
	Stops   Flag                 `spec:"stops-engine" doc:"stops a running engine, proved with the engine running"`
	Steady  Current              `spec:"steady" doc:"continuous rating"`
	Burst   Current              `spec:"cranking" doc:"rating for cranking"`
	Marked  Text                 `spec:"marked" doc:"how it is marked outside"`
}

type handleWords struct{}

func (handleWords) Words() []string {
	return []string{"cockpit", "outside left", "outside right", "scuttle left", "scuttle right", "roll hoop"}
}

// Post is a power post.
type Post struct {
	Node
	At    Position `spec:"at" doc:"where it is"`
	End   End      `spec:"end" doc:"its stud"`
	Dead  Text     `spec:"dead-when" doc:"when it is dead"`
	Cover Text     `spec:"cover" doc:"insulating cover, or none"`
}

// PowerModule is a power module or fuse box.
type PowerModule struct {
	Part
	Rated    Current        `spec:"rated" doc:"total rating"`
	Channels Table[Channel] `spec:"channels" doc:"its channels"`
}

// Channel is one protected output.
type Channel struct {
	Node
	Trips Current `spec:"trips" doc:"fuse or trip current"`
	Feeds Text    `spec:"feeds" doc:"what it feeds"`
}

// Circuit is one wire that carries power or an earth.
type Circuit struct {
	Node
	From      Meet                 `spec:"from" refers:"terminal" doc:"supply end"`
	To        Meet                 `spec:"to" refers:"terminal" doc:"load end"`
	Wire      Wire                 `spec:"wire" doc:"conductor size"`
	Length    Length               `spec:"length" doc:"one way"`
	Return    Choice[returnWords]  `spec:"return" doc:"through the chassis or through a wire of the same size"`
	Load      Current              `spec:"load" doc:"steady current"`
	Peak      Current              `spec:"peak" doc:"highest current"`
	Fuse      Current              `spec:"fuse" doc:"fuse or channel, or none"`
	FromFuse  Length               `spec:"unfused" doc:"wire between the supply and its fuse"`
	Run       Choice[installWords] `spec:"run" doc:"how it runs"`
	Insulated Temperature          `spec:"rated" doc:"temperature rating of its insulation"`
	Purpose   Choice[circuitWords] `spec:"purpose" doc:"what it does"`
	Behind    Names                `spec:"behind" refers:"behind" doc:"what must be off before its end can be reached"`
	Tail      Text                 `spec:"tail-when-out" doc:"what becomes of its end when the driveline is out"`
	Switched  Flag                 `spec:"dead-when-isolated" doc:"the isolator opens it"`
}

type returnWords struct{}

func (returnWords) Words() []string { return []string{"chassis", "wire"} }

type circuitWords struct{}

func (circuitWords) Words() []string {
	return []string{"starter", "charging", "earth", "engine computer", "ignition", "fuel pump", "fan", "lights", "wipers", "fire system", "data", "other"}
}

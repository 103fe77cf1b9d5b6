package spec

// A vocabulary is a closed list of words that a value may take, so that a typing
// slip is caught at the word. The first column is what is written; what the
// words mean to the trade stands in the `doc` tag of the key that uses them.
type vocabulary interface{ Words() []string }

type (
	useWords         struct{}
	stageWords       struct{}
	unitsWords       struct{}
	formWords        struct{}
	genderWords      struct{}
	metalWords       struct{}
	sealWords        struct{}
	directionWords   struct{}
	axisWords        struct{}
	serviceWords     struct{}
	purposeWords     struct{}
	headWords        struct{}
	lockingWords     struct{}
	lubricationWords struct{}
	classWords       struct{}
	linerWords       struct{}
	coverWords       struct{}
	inductionWords   struct{}
	fuelWords        struct{}
	basisWords       struct{}
	floorWords       struct{}
	lockWords        struct{}
	tappedWords      struct{}
	stationWords     struct{}
	goesWords        struct{}
	nutWords         struct{}
	makeUpWords      struct{}
	rotationWords    struct{}
	placeWords       struct{}
	throughWords     struct{}
	jointWords       struct{}
	installWords     struct{}
	throttleWords    struct{}
	closureWords     struct{}
	sealMaterial     struct{}
	fallWords        struct{}
	agentWords       struct{}
)

func (useWords) Words() []string {
	return []string{"hill climb", "sprint", "circuit", "rally", "trial", "road"}
}

// stageWords are the states a car is in during the job, in the job's order.
func (stageWords) Words() []string {
	return []string{
		"rolling", "raised", "hoisting", "hanging", "out and raised", "out and stored",
		"trial fit", "joined", "filled", "first start", "event",
	}
}
func (unitsWords) Words() []string { return []string{"metric", "inch"} }

// formWords are the forms of an end. "flare" alone is not among them: 37 and 45
// degree cones share threads in six sizes and leak on one another.
func (formWords) Words() []string {
	return []string{
		"37-flare", "45-flare", "inverted-flare", "bubble-flare",
		"O-ring-boss", "metric-O-ring", "washer-face", "taper-pipe", "banjo",
		"bead", "barb", "hose", "plain-tube",
		"V-band", "slip", "flange", "spline", "dry-break", "push-connector",
		"connector", "stud", "ring", "blade", "rod", "rod-end",
	}
}
func (genderWords) Words() []string { return []string{"male", "female", "pins", "sockets"} }
func (metalWords) Words() []string {
	return []string{
		"aluminium", "anodised-aluminium", "cast-aluminium", "steel", "plated-steel", "stainless",
		"cast-iron", "brass", "copper", "bronze", "titanium", "zinc", "nylon", "carbon",
	}
}
func (sealWords) Words() []string {
	return []string{"cone", "O-ring", "washer", "taper", "clamp", "gasket", "metal-face", "coupling"}
}
func (directionWords) Words() []string {
	return []string{"forward", "back", "left", "right", "up", "down"}
}
func (axisWords) Words() []string { return []string{"fore-aft", "across", "upright"} }

// serviceWords are what a port or line may carry.
func (serviceWords) Words() []string {
	return []string{
		"fuel", "fuel vapour", "engine oil", "gearbox oil", "axle oil", "coolant", "brake fluid",
		"clutch fluid", "steering fluid", "crankcase breath", "air", "charge air",
		"manifold pressure", "vacuum", "exhaust", "water", "extinguishant", "compressed air",
	}
}

// purposeWords say why a port may stand open or unused.
func (purposeWords) Words() []string {
	return []string{"vent", "drain", "reference", "breather", "spare", "fill"}
}
func (headWords) Words() []string {
	return []string{"hex", "small-hex", "flange-hex", "socket", "button", "countersunk", "stud", "quarter-turn", "press-stud", "rivet"}
}
func (nutWords) Words() []string {
	return []string{"nut", "nyloc-nut", "all-metal-locknut", "castle-nut", "anchor-nut", "rivet-nut"}
}
func (lockingWords) Words() []string {
	return []string{"wire", "thread-lock", "tab-washer", "split-pin", "locknut", "jam-nut", "spring-washer", "serrated", "unlocked"}
}
func (lubricationWords) Words() []string {
	return []string{"dry", "oiled", "anti-seize", "thread-lock-wet", "waxed"}
}

// classWords are property classes of ISO 898-1 and ISO 3506-1 and grades of
// SAE J429.
func (classWords) Words() []string {
	return []string{
		"4.6", "4.8", "5.6", "5.8", "6.8", "8.8", "9.8", "10.9", "12.9",
		"A2-70", "A4-70", "A4-80", "grade-2", "grade-5", "grade-8", "special",
	}
}
func (linerWords) Words() []string {
	return []string{"PTFE", "conductive-PTFE", "nitrile", "hydrogenated-nitrile", "fluorocarbon", "EPDM", "chloroprene", "silicone", "fluorosilicone", "nylon", "metal"}
}
func (coverWords) Words() []string {
	return []string{"stainless-braid", "textile-braid", "rubber", "two-wire", "wire-wound", "fabric-ply", "bare"}
}
func (inductionWords) Words() []string {
	return []string{"naturally aspirated", "turbocharged", "supercharged"}
}
func (fuelWords) Words() []string {
	return []string{"petrol", "E10", "E85", "ethanol", "methanol", "diesel"}
}
func (basisWords) Words() []string { return []string{"each", "pair"} }
func (floorWords) Words() []string {
	return []string{"hard and level", "hard and sloping", "tarmac", "gravel", "grass"}
}
func (lockWords) Words() []string {
	return []string{"pin", "ratchet and pin", "ratchet", "screw"}
}

// tappedWords are metals that a thread is cut in. By tensile strength mild-steel is up
// to 400 MPa, steel up to 600, and heat-treated-steel, of which crankshafts and hubs
// are, over 800.
func (tappedWords) Words() []string {
	return []string{"steel", "mild-steel", "heat-treated-steel", "cast-iron", "aluminium", "cast-aluminium", "magnesium", "bronze", "insert"}
}
func (stationWords) Words() []string {
	return []string{"outside front", "outside rear", "under", "cabin", "engine bay", "bench"}
}
func (goesWords) Words() []string     { return []string{"driveline", "car", "either"} }
func (makeUpWords) Words() []string   { return []string{"soft-tube", "machined-swivel", "steel-swivel"} }
func (rotationWords) Words() []string { return []string{"clockwise", "anticlockwise"} }
func (placeWords) Words() []string {
	return []string{"cockpit", "boot", "engine bay", "under floor", "outside"}
}
func (throughWords) Words() []string {
	return []string{"cabin", "boot", "wheel arch", "under floor"}
}
func (jointWords) Words() []string {
	return []string{"cross", "constant-velocity", "rubber-coupling", "rigid"}
}
func (installWords) Words() []string  { return []string{"free", "bundle", "hot bay"} }
func (throttleWords) Words() []string { return []string{"cable", "electronic"} }
func (closureWords) Words() []string {
	return []string{"external springs", "factory electronic", "internal spring"}
}
func (sealMaterial) Words() []string {
	return []string{"nitrile", "EPDM", "fluorocarbon", "SBR", "natural-rubber", "hydrogenated-nitrile", "PTFE", "silicone"}
}
func (fallWords) Words() []string { return []string{"all the way", "with a low spot", "level"} }
func (agentWords) Words() []string {
	return []string{"foam", "gas", "powder", "water mist"}
}

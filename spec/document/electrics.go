package document

import "fitup/spec"

// Electric is battery and isolator beside what the engine asks of them.
type Electric struct {
	Subject
	spec.CarElectrics
	Car      spec.CarHead `json:"car" doc:"the car"`
	Engine   spec.Engine  `json:"engine" doc:"the engine"`
	Supplies []string     `json:"supplies" doc:"circuits that carry power, by name"`
	Unkilled []string     `json:"unkilled" doc:"circuits that carry power and that the isolator does not open, the fire system aside"`
	Earths   []string     `json:"earths" doc:"circuits of purpose earth that cross to the driveline"`
	Calc     ElectricCalc `json:"calc" doc:"computed"`

	undecided []string // what would tell of more circuits whether it does
	unearthed []string // what would tell of more earths whether they cross
}

// ElectricCalc holds the balance of supply and load.
type ElectricCalc struct {
	Load     Figure `json:"load" doc:"steady loads together" dim:"current"`
	Share    Figure `json:"alternator_share" doc:"steady loads over the alternator's rating" dim:"ratio"`
	RunTime  Figure `json:"run_time" doc:"how long the battery alone carries the steady loads" dim:"duration"`
	Isolated Figure `json:"isolated" doc:"steady current that the isolator must bear: the greater of loads and alternator" dim:"current"`
}

// Pin is one way of a connector, both halves.
type Pin struct {
	Subject
	Connector string    `json:"connector" doc:"the connector"`
	Here      *spec.Pin `json:"here" doc:"the car's half"`
	There     *spec.Pin `json:"there" doc:"the driveline's half"`
}

// Loom is the plug at the end of a loom, beside its mate.
type Loom struct {
	Subject
	spec.Plug
	Port *Port    `json:"port" doc:"the driveline's half"`
	Calc LoomCalc `json:"calc" doc:"computed"`
}

// LoomCalc holds how far a loom has to reach.
type LoomCalc struct {
	Distance Figure `json:"distance" doc:"straight distance between the places of both halves" dim:"length"`
	Reach    Figure `json:"reach" doc:"loom tails of both halves together" dim:"length"`
}

// Module is a power module or fuse box.
type Module struct {
	Subject
	spec.PowerModule
	Calc ModuleCalc `json:"calc" doc:"computed"`
}

// ModuleCalc holds what a module feeds.
type ModuleCalc struct {
	Load Figure `json:"load" doc:"steady loads of the circuits that it feeds, together" dim:"current"`
}

// Pole is where a live conductor stands bare unless something covers it.
type Pole struct {
	Subject
	Cover spec.Text `json:"cover" doc:"what covers it"`
}

// Circuit is a power wire or earth.
type Circuit struct {
	Subject
	spec.Circuit
	Owner    string      `json:"owner" doc:"car or driveline"`
	Boundary bool        `json:"boundary" doc:"one end is on the driveline"`
	Feeds    string      `json:"feeds" doc:"what it feeds whose current is written there: fuel pump, lift pump, fan, pin or starter"`
	Calc     CircuitCalc `json:"calc" doc:"computed"`
}

// CircuitCalc holds a circuit's computed figures.
type CircuitCalc struct {
	Resistance Figure `json:"resistance" doc:"out, and back where it returns by wire" dim:"resistance"`
	Drop       Figure `json:"drop" doc:"voltage lost at the steady load" dim:"voltage"`
	PeakDrop   Figure `json:"peak_drop" doc:"voltage lost at the highest current" dim:"voltage"`
	Ampacity   Figure `json:"ampacity" doc:"what the wire carries as it is installed" dim:"current"`
	Protected  Figure `json:"protection" doc:"its fuse, or the channel that feeds it" dim:"current"`
	Draws      Figure `json:"draws" doc:"current that the thing at its end draws" dim:"current"`
}

// Expected is a sensor that the tune expects.
type Expected struct {
	Subject
	On      string       `json:"on" doc:"car or driveline"`
	Present *bool        `json:"present" doc:"it is fitted there; absent where that file says nothing of sensors"`
	Sensor  *spec.Sensor `json:"sensor" doc:"what is fitted"`
	Tune    spec.Tune    `json:"tune" doc:"the map"`
}

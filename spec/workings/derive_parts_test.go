package workings

import "testing"

// singleParts is a car of which little is said beyond the parts that are judged one
// by one.
var singleParts = specs{
	car: `
[fits.it]
file = "driveline.toml"
at = "-600, 0, 250 mm"
nose-up = "0 deg"
[fuel]
carries = "fuel"
cell = { filled-with = "E85", ethanol = "80 %" }
pump = { draws = "9.5 A", seals = "nitrile" }
[oil]
carries = "engine oil"
cooler = { rated = "10 bar", ports.in = { end = "-12 male 37-flare" } }
[cooling]
fan = { draws = "16 A" }
[lines.oil]
hose = "1 m of h12"
from = ["driveline.oil-out", "female 37-flare"]
to = ["oil.cooler.in", "female 37-flare"]
[plugs.loom]
meets = ["driveline.loom", "sockets connector"]
at = "-600, 0, 550 mm"
tail = "0.1 m"
[pins.loom]
A = { gives = "computer supply" }
[electrics.modules.box.channels]
1 = { trips = "15 A" }
2 = { trips = "20 A" }
[circuits]
pump = { from = "electrics.modules.box.1", to = "fuel.pump", load = "9 A" }
fan = { from = "electrics.modules.box.2", to = "cooling.fan", load = "15 A" }
computer = { from = "chassis", to = "pins.loom.A", load = "8 A" }
lift = { from = "chassis", to = "chassis", load = "4 A" }
[safety]
tow-front = { inside = "60 mm" }
[weighing]
front-left = "250 kg"
front-right = "250 kg"
rear-left = "250 kg"
rear-right = "250 kg"
driver = false
driveline = "driveline"
[set-up]
mass = "985 kg"
[support]
sling = "chain"
hoist = "small"
`,
	driveline: `
[ports]
oil-out = { end = "-12 male 37-flare", gives = "engine oil", max = "8 bar" }
loom = { end = "pins connector", at = "0, 400, 0 mm", tail = "0.5 m" }
[pins.loom]
A = { takes = "computer supply", load = "8 A" }
`,
	shop: hoseShop + `
[slings.chain]
checked = 2025-03-01
[hoists.small]
legs-need = "120 mm"
[torque-wrenches.small]
calibrated = 2024-09-30
`,
}

func TestDeriveParts(t *testing.T) {
	// The loom runs 400 mm across and 300 mm up, 500 mm straight; the module feeds
	// 9 A and 15 A; a thousand kilograms weigh 9806.65 N; from 1 March to 20 September
	// are six whole months, and from 30 September eleven.
	derivation{specs: singleParts, want: map[string]string{
		"fuel.pump alcohol":              "80 %",
		"oil.cooler pressure":            "8 bar",
		"plugs.loom distance":            "500 mm",
		"plugs.loom reach":               "0.6 m",
		"electrics.modules.box load":     "24 A",
		"circuits.pump draws":            "9.5 A",
		"circuits.fan draws":             "16 A",
		"circuits.computer draws":        "8 A",
		"circuits.lift draws":            "absent",
		"safety.tow-front weight":        "9806.65 N",
		"car mass_with_driveline":        "missing car.wheelbase car.track-front car.track-rear",
		"shop.slings.chain age":          "6 months",
		"shop.torque-wrenches.small age": "11 months",
		"shop.hoists.small age":          "missing shop.hoists.small.checked",
	}}.run(t)
}

// A car of 1000 kg that was set up at 985 kg has changed by 15 kg.
func TestDeriveMassSinceSetUp(t *testing.T) {
	sized := singleParts
	sized.car = "wheelbase = \"2.4 m\"\ntrack-front = \"1.4 m\"\ntrack-rear = \"1.4 m\"\n" + sized.car
	derivation{specs: sized, want: map[string]string{
		"car mass_with_driveline": "1000 kg", "car mass_since_set_up": "15 kg",
	}}.run(t)
}

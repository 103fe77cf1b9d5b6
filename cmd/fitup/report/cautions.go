package report

import (
	"maps"
	"slices"
	"strings"

	"fitup/policies"
	"fitup/policies/judge"
)

// Cautions are the usual cautions of each area of rules, printed when a danger
// stands in it. They are common practice in the trade.
var Cautions = map[string]string{
	"ballast":   "ballast that comes loose is a missile: it is bolted through to structure or it is left at home.",
	"brakes":    "do not move the car under its own power until the pedal has been held hard and has not sunk; brake fluid that has been opened to air goes in the waste.",
	"cage":      "a cage that is not sound is not raced; its builder or a licensed inspector decides.",
	"clutch":    "keep fingers out of the release mechanism while anybody can reach the pedal; a hydraulic line may let go under a hard pedal.",
	"coolant":   "never open a hot system: let it cool to the hand, cover the cap with a cloth and let the pressure off first.",
	"dolly":     "keep feet clear and push low and slowly; a driveline on castors goes over on a step no higher than a finger.",
	"driveline": "chock the wheels and keep clear of anything that turns; nobody stands in line with a shaft that runs.",
	"electrics": "open the isolator, take the battery's earth off first and put it on last; keep metal off the live pole and flames off the battery.",
	"exhaust":   "let it go cold before you touch it; never run an engine in a closed room.",
	"fasteners": "hold the load with something else before you undo or try a fastener that carries it.",
	"fire":      "have an extinguisher for fuel fires within reach, and somebody with you who can use it.",
	"fittings":  "let the pressure out of a line before you open a joint; a fine jet of oil or fuel goes through skin and is a matter for a hospital.",
	"fuel":      "no flame, spark or hot lamp near; air the room, isolate the battery, let the rail pressure off into a rag and have an extinguisher at hand.",
	"lifting":   "nobody under or beside a hung load; take the weight a little, look at every leg and eye, then lift; keep the load low when it moves.",
	"lines":     "let the pressure out and let it cool before you touch a line; wear eye protection.",
	"mounts":    "the driveline's weight is taken by the hoist or a stand before the last mount is undone.",
	"oil":       "hot oil burns the skin: let it cool, and let a pressurised accumulator down first.",
	"recovery":  "keep people out of the line of a rope or strap under load.",
	"safety":    "a belt, extinguisher or seat that is out of date or damaged is not driven with.",
	"support":   "never go under a car that only a jack or hoist holds; chock it, set it on stands on firm level ground, push it by hand with nobody under it, never rock it, and set it down again if anything shifts.",
	"tune":      "do not load the engine until map and fuel agree: a lean engine can burn a piston and spill hot oil.",
}

// A Caution is what to mind near what belongs to one area of rules.
type Caution struct{ Area, Text string }

// CautionsFor are the usual cautions of the areas in which a danger stands.
func CautionsFor(findings []judge.Finding) []Caution {
	areas := map[string]bool{}
	for _, f := range findings {
		if f.Level == policies.LevelDanger {
			area, _, _ := strings.Cut(f.Rule, ".")
			areas[area] = true
		}
	}
	var all []Caution
	for _, area := range slices.Sorted(maps.Keys(areas)) {
		if text := Cautions[area]; text != "" {
			all = append(all, Caution{area, text})
		}
	}
	return all
}

# METADATA
# title: No towing eye at one end
# description: |
#   A car without an eye is dragged out by whatever the hook catches.
# related_resources:
#   - ref: fia-253
#     description: "art. 10: an eye at the front and one at the rear"
# custom:
#   cases:
#     front: {level: fault, message: "the car has no towing eye in front"}
#     rear: {level: fault, message: "the car has no towing eye behind"}
#   subject: cars
#   stages: [event]
#   figures: {}
#   fix: fit an eye or a strap to load-bearing structure at that end, and mark it
#   rulebook: appendix-j
#   confidence: published
package rules.recovery.eye_missing

judges contains {"subject": car.path, "needs": ["safety.tow_front", "safety.tow_rear"]} if some car in input.cars

findings contains {"subject": car.path, "at": "safety.tow_front", "case": "front", "figures": {}} if {
	some car in input.cars
	"tow_front" in car.safety.none
}

findings contains {"subject": car.path, "at": "safety.tow_rear", "case": "rear", "figures": {}} if {
	some car in input.cars
	"tow_rear" in car.safety.none
}

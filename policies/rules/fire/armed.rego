# METADATA
# title: Fire system pinned at the event, or armed in the workshop
# description: |
#   A system with its pin in does nothing when the driver pulls the handle. One
#   that is armed while arms and spanners are near its cable goes off in a face.
# related_resources:
#   - ref: motorsport-uk-ncr
#     description: "chapter 7 appendix 6 art. 4.1: armed whenever the car competes"
#   - ref: common-practice
#     description: the pin goes in before work begins
# custom:
#   cases:
#     pinned: {level: danger, message: "the fire system is pinned, and the car is at the event"}
#     live: {level: advice, message: "the fire system is armed while the car is being worked on"}
#   subject: cars
#   stages: [raised, hoisting, out_raised, trial_fit, joined, filled, first_start, event]
#   figures: {}
#   fix: pin it before work, and pull the pin before the car leaves its place at the event
#   caution: do not drive with the pin in; have a second person confirm that the system is armed
#   rulebook: workshop
#   confidence: practice
#   basis: hazard
#   waivable: false
package rules.fire.armed

work := {"raised", "hoisting", "hanging", "out and raised", "trial fit", "joined", "filled"}

judges contains {"subject": car.path, "needs": ["stage", "safety.fire_system.state"]} if some car in input.cars

findings contains {"subject": car.path, "at": "safety.fire_system.state", "case": "pinned", "figures": {}} if {
	some car in input.cars
	car.stage == "event"
	car.safety.fire_system.state == "pinned"
}

findings contains {"subject": car.path, "at": "safety.fire_system.state", "case": "live", "figures": {}} if {
	some car in input.cars
	car.stage in work
	car.safety.fire_system.state == "armed"
}

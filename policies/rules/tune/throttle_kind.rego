# METADATA
# title: Throttle, pedal and map that are not of one kind
# description: |
#   A cable pulls nothing on a throttle with a motor, and pedal sensors move
#   no lever. A map that drives a motor does nothing with a cable, and one
#   that expects a cable leaves a motor shut.
# related_resources:
#   - ref: common-practice
#     description: pedal, throttle and map are of one kind
# custom:
#   cases:
#     map:
#       level: fault
#       message: "the map is for a throttle that is {other}; the engine's is {fitted}"
#     pedal:
#       level: fault
#       message: "the car's pedal is for a throttle that is {other}; the engine's is {fitted}"
#   subject: engines
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     fitted: {dimension: text}
#     other: {dimension: text}
#   fix: fit the pedal and load the map for this throttle, and try that it shuts from each position
#   rulebook: workshop
#   confidence: practice
#   formerly: [tune.pedal_kind]
package rules.tune.throttle_kind

judges contains {"subject": engine.path, "needs": ["throttle", "tune.throttle", "car.throttle"]} if some engine in input.engines

findings contains {
	"subject": engine.path,
	"at": "tune.throttle",
	"case": "map",
	"figures": {"fitted": engine.throttle, "other": engine.tune.throttle},
} if {
	some engine in input.engines
	engine.throttle != engine.tune.throttle
}

findings contains {
	"subject": engine.path,
	"at": "car.throttle",
	"case": "pedal",
	"figures": {"fitted": engine.throttle, "other": engine.car.throttle},
} if {
	some engine in input.engines
	engine.throttle != engine.car.throttle
}

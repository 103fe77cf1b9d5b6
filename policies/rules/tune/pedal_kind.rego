# METADATA
# title: Pedal that does not work this throttle
# description: |
#   A cable pulls nothing on a throttle with a motor, and pedal sensors move no
#   lever.
# related_resources:
#   - ref: common-practice
#     description: pedal and throttle are of one kind
# custom:
#   level: fault
#   subject: electrics
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the car's pedal is for a {pedal} throttle; the engine's is {engine}"
#   figures:
#     pedal: {dimension: text}
#     engine: {dimension: text}
#   fix: fit the pedal and its sensors or cable for this engine, and try that the throttle shuts from each position
#   rulebook: workshop
#   confidence: practice
package rules.tune.pedal_kind

judges contains {"subject": electric.path, "needs": ["car.throttle", "engine.throttle"]} if {
	some electric in input.electrics
}

findings contains {
	"subject": electric.path,
	"at": "car.throttle",
	"also": [electric.engine.path],
	"figures": {"pedal": electric.car.throttle, "engine": electric.engine.throttle},
} if {
	some electric in input.electrics
	electric.car.throttle != electric.engine.throttle
}

# METADATA
# title: Map for another kind of throttle
# description: |
#   A map that drives a throttle motor does nothing with a cable, and one that
#   expects a cable leaves a motor shut.
# related_resources:
#   - ref: common-practice
#     description: the map works the throttle that is fitted
# custom:
#   level: fault
#   subject: tunes
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the map is for a {map} throttle; the engine's is {engine}"
#   figures:
#     map: {dimension: text}
#     engine: {dimension: text}
#   fix: load the map for this throttle
#   rulebook: workshop
#   confidence: practice
package rules.tune.throttle_kind

judges contains {"subject": tune.path, "needs": ["throttle", "engine.throttle"]} if some tune in input.tunes

findings contains {
	"subject": tune.path,
	"at": "throttle",
	"also": [tune.engine.path],
	"figures": {"map": tune.throttle, "engine": tune.engine.throttle},
} if {
	some tune in input.tunes
	tune.throttle != tune.engine.throttle
}

# METADATA
# title: Limiter above the engine's limit
# description: |
#   A limiter that cuts later than the engine was built for lets valves meet
#   pistons on the first missed gear.
# related_resources:
#   - ref: common-practice
#     description: the limiter is set for the engine that is fitted
# custom:
#   level: fault
#   subject: tunes
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the map cuts at {map}; the engine is built for {engine}"
#   figures:
#     map: {dimension: rotational_speed, like: rev_limit}
#     engine: {dimension: rotational_speed, like: engine.rev_limit}
#   fix: lower the limiter in the map
#   rulebook: workshop
#   confidence: practice
package rules.tune.rev_limit

judges contains {"subject": tune.path, "needs": ["rev_limit", "engine.rev_limit"]} if some tune in input.tunes

findings contains {
	"subject": tune.path,
	"at": "rev_limit",
	"also": [tune.engine.path],
	"figures": {"map": tune.rev_limit, "engine": tune.engine.rev_limit},
} if {
	some tune in input.tunes
	tune.rev_limit > tune.engine.rev_limit
}

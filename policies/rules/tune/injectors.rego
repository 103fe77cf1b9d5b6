# METADATA
# title: Injectors that the map was not made for
# description: |
#   The map counts fuel by how long an injector is open. With larger ones the
#   engine drowns, with smaller ones it runs lean at full load and burns its
#   pistons.
# related_resources:
#   - ref: common-practice
#     description: the map is made for the injectors that are fitted
# custom:
#   cases:
#     count: {level: fault, message: "the map was made for {mapped} injectors; {fitted} are fitted"}
#     flow: {level: fault, message: "the map was made for injectors of {mapped_flow}; those fitted flow {fitted_flow}"}
#     bench: {level: advice, message: "the map's injectors were measured at {mapped_at} and those fitted at {fitted_at}: their flows do not compare"}
#   subject: tunes
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     mapped: {dimension: number}
#     fitted: {dimension: number}
#     mapped_flow: {dimension: volume_flow, like: injectors.flow}
#     fitted_flow: {dimension: volume_flow, like: injectors.flow}
#     mapped_at: {dimension: pressure, like: injectors.pressure}
#     fitted_at: {dimension: pressure, like: injectors.pressure}
#   fix: load the map for these injectors, or fit the injectors of this map
#   rulebook: workshop
#   confidence: practice
package rules.tune.injectors

import data.rules.tune.limits.injectors as limits

judges contains {
	"subject": tune.path,
	"needs": [
		"injectors.count", "engine.injectors.count",
		"injectors.flow", "engine.injectors.flow",
		"injectors.pressure", "engine.injectors.pressure",
	],
} if {
	some tune in input.tunes
}

findings contains {
	"subject": tune.path,
	"at": "injectors.count",
	"also": [tune.engine.path],
	"case": "count",
	"figures": {"mapped": tune.injectors.count, "fitted": tune.engine.injectors.count},
} if {
	some tune in input.tunes
	tune.injectors.count != tune.engine.injectors.count
}

findings contains {
	"subject": tune.path,
	"at": "injectors.flow",
	"also": [tune.engine.path],
	"case": "flow",
	"figures": {"mapped_flow": tune.injectors.flow, "fitted_flow": tune.engine.injectors.flow},
} if {
	some tune in input.tunes
	tune.injectors.pressure == tune.engine.injectors.pressure
	abs(tune.engine.injectors.flow - tune.injectors.flow) > limits.flow.value * tune.injectors.flow
}

findings contains {
	"subject": tune.path,
	"at": "injectors.pressure",
	"also": [tune.engine.path],
	"case": "bench",
	"figures": {"mapped_at": tune.injectors.pressure, "fitted_at": tune.engine.injectors.pressure},
} if {
	some tune in input.tunes
	tune.injectors.pressure != tune.engine.injectors.pressure
}

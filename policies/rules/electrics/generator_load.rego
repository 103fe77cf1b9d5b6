# METADATA
# title: Little left of the alternator
# description: |
#   An alternator that already gives nearly all it has cannot charge the
#   battery as well, least of all hot and at low speed. What the car draws
#   stays with the car; the alternator comes with the driveline.
# related_resources:
#   - ref: faa-ac-43.13-1b
#     description: "par. 11-35: continuous load at most four fifths of the rated output"
# custom:
#   level: advice
#   subject: electrics
#   stages: [trial_fit, joined, filled, first_start, event]
#   message: "the car draws {load} all the time, and the alternator gives {alternator}"
#   figures:
#     load: {dimension: current, like: engine.alternator}
#     alternator: {dimension: current, like: engine.alternator}
#   fix: fit a larger alternator or draw less; or charge the battery between runs
#   rulebook: workshop
#   confidence: published
package rules.electrics.generator_load

import data.rules.electrics.limits.generator_load as limits

# A car without an alternator lives on its battery.
judges contains {"subject": electric.path, "needs": ["calc.load", "calc.alternator_share"]} if {
	some electric in input.electrics
	not electric.total_loss == true
}

findings contains {
	"subject": electric.path,
	"also": [electric.engine.path],
	"figures": {"load": electric.calc.load, "alternator": electric.engine.alternator},
} if {
	some electric in input.electrics
	not electric.total_loss == true
	electric.calc.alternator_share > limits.share.value
}

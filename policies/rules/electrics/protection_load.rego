# METADATA
# title: Fuse too near the load it carries
# description: |
#   A fuse that carries more than four fifths of its rating day in, day out
#   ages and blows one day with nothing wrong. One that is smaller than the
#   load blows at once.
# related_resources:
#   - ref: common-practice
#     description: steady load at most four fifths of the rating
# custom:
#   cases:
#     tight:
#       level: advice
#       message: "{subject} carries {load} all the time through a fuse of {fuse}"
#     under:
#       level: fault
#       message: "{subject} carries {load} all the time, and its fuse is only {fuse}"
#   subject: circuits
#   stages: [trial_fit, joined, filled, first_start, event]
#   figures:
#     load: {dimension: current, like: load}
#     fuse: {dimension: current, like: fuse|load}
#   fix: fit the next larger fuse if the wire bears it, else a larger wire as well
#   rulebook: workshop
#   confidence: practice
package rules.electrics.protection_load

import data.rules.electrics.limits.protection_load as limits

judges contains {"subject": circuit.path, "needs": ["load", "calc.protection|fuse"]} if some circuit in input.circuits

findings contains {
	"subject": circuit.path,
	"at": "fuse",
	"case": "tight",
	"figures": {"load": circuit.load, "fuse": circuit.calc.protection},
} if {
	some circuit in input.circuits
	circuit.load > limits.share.value * circuit.calc.protection
	circuit.load <= circuit.calc.protection
}

findings contains {
	"subject": circuit.path,
	"at": "fuse",
	"case": "under",
	"figures": {"load": circuit.load, "fuse": circuit.calc.protection},
} if {
	some circuit in input.circuits
	circuit.load > circuit.calc.protection
}
